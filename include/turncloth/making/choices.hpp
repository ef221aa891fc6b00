// The words of every choice in a making, as files write them.
//
//   words_of(face{})      in the order of its values: "right", "wrong"
//   word_of(face::wrong)  "wrong"
//
// The first is the one of a member that may be left out.
#ifndef TURNCLOTH_MAKING_CHOICES_HPP
#define TURNCLOTH_MAKING_CHOICES_HPP

#include <turncloth/making/compartments.hpp>
#include <turncloth/panel/panel.hpp>

#include <array>
#include <cstddef>
#include <string_view>

namespace turncloth {

constexpr auto words_of(edge) { return std::array<std::string_view, 4>{"top", "right", "bottom", "left"}; }
constexpr auto words_of(face) { return std::array<std::string_view, 2>{"right", "wrong"}; }
constexpr auto words_of(surplus) {
    return std::array<std::string_view, 5>{"nothing", "easing", "tucks", "pleats", "gathers"};
}
constexpr auto words_of(beyond_seam) { return std::array<std::string_view, 3>{"flat", "quarter", "back"}; }
constexpr auto words_of(pressed) {
    return std::array<std::string_view, 4>{"open", "to one", "to the other", "not at all"};
}
constexpr auto words_of(snip_kind) { return std::array<std::string_view, 2>{"slit", "clip"}; }
constexpr auto words_of(spot_kind) {
    return std::array<std::string_view, 7>{"eyelet", "bar-tack", "snap", "button", "tie end", "tie middle", "cross"};
}
constexpr auto words_of(closed_by) {
    return std::array<std::string_view, 6>{"nothing", "lap", "zipper", "hand", "fastening", "tie"};
}
constexpr auto words_of(moment_kind) {
    return std::array<std::string_view, 5>{"turn out", "put in", "close", "fold", "roll"};
}

template <class Choice>
constexpr std::string_view word_of(Choice c) {
    return words_of(c)[static_cast<std::size_t>(c)];
}

} // namespace turncloth

#endif
