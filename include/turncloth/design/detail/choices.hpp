// The words of every choice in a design, and what a record is.
//
//   words_of(edge{})              in the order of its values; the first is the one of a member that may be left out
//   record_of<Self, Record>       a record, read or written
#ifndef TURNCLOTH_DESIGN_DETAIL_CHOICES_HPP
#define TURNCLOTH_DESIGN_DETAIL_CHOICES_HPP

#include <turncloth/design/project_design.hpp>

#include <array>
#include <concepts>
#include <string_view>
#include <type_traits>

namespace turncloth::detail {

constexpr auto words_of(edge) { return std::array<std::string_view, 4>{"top", "right", "bottom", "left"}; }
constexpr auto words_of(design_units) { return std::array<std::string_view, 3>{"both", "inches", "centimetres"}; }
constexpr auto words_of(on_the_ruler) {
    return std::array<std::string_view, 5>{"nearest", "halves", "step", "half steps", "exact"};
}
constexpr auto words_of(design_datum) {
    return std::array<std::string_view, 3>{"finished edge", "cut edge", "stitching"};
}
constexpr auto words_of(caution::work) {
    return std::array<std::string_view, 9>{"buying",  "cutting", "pinning", "pressing", "stitching",
                                           "zippers", "eyelets", "filling", "using it"};
}

constexpr auto words_of(sold_as) { return std::array<std::string_view, 3>{"not sold", "as told", "off a roll"}; }
constexpr auto words_of(pleat) { return std::array<std::string_view, 3>{"knife", "box", "inverted"}; }
constexpr auto words_of(design_begins) {
    return std::array<std::string_view, 3>{"as the project says", "with pieces cut", "with nothing"};
}
constexpr auto words_of(face) { return std::array<std::string_view, 2>{"right", "wrong"}; }
constexpr auto words_of(surplus) {
    return std::array<std::string_view, 5>{"nothing", "easing", "tucks", "pleats", "gathers"};
}
constexpr auto words_of(beyond_seam) { return std::array<std::string_view, 3>{"flat", "quarter", "back"}; }
constexpr auto words_of(turncloth::pressed) {
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

/// A record, read or written.
template <class Self, class Record>
concept record_of = std::same_as<std::remove_const_t<Self>, Record>;

} // namespace turncloth::detail

#endif
