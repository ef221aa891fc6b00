// The words of every choice in a design beside those of its making, and what a record is.
//
//   words_of(edge{})              in the order of its values; the first is the one of a member that may be left out
//   record_of<Self, Record>       a record, read or written
#ifndef TURNCLOTH_DESIGN_DETAIL_CHOICES_HPP
#define TURNCLOTH_DESIGN_DETAIL_CHOICES_HPP

#include <turncloth/design/project_design.hpp>
#include <turncloth/making/choices.hpp>

#include <array>
#include <concepts>
#include <string_view>
#include <type_traits>

namespace turncloth::detail {

using turncloth::words_of;

constexpr auto words_of(design_units) { return std::array<std::string_view, 3>{"both", "inches", "centimetres"}; }
constexpr auto words_of(on_the_ruler) {
    return std::array<std::string_view, 5>{"nearest", "halves", "step", "half steps", "exact"};
}
constexpr auto words_of(design_datum) {
    return std::array<std::string_view, 3>{"finished edge", "cut edge", "stitching"};
}
constexpr auto words_of(corner_shape) {
    return std::array<std::string_view, 5>{"mitred", "squared to edge before", "squared to edge after",
                                           "reflected in edge before", "reflected in edge after"};
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

/// A record, read or written.
template <class Self, class Record>
concept record_of = std::same_as<std::remove_const_t<Self>, Record>;

} // namespace turncloth::detail

#endif
