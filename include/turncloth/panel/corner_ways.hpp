// Which way to make the corners of a hemmed piece, by the layers that its rows then go through.
//
//   corner_ways(piece, allowance, step)      stacked, folded to a mitre, mitred and trimmed: each with its most layers
//   corner_within(piece, most, allowance, step)     the first of these that stays within so many
//   corner_error                             none does
//
//   const panel napkin(finished_size(16_in, 16_in), all_round(double_turned_hem("1/4"_in, 1_in)));
//   corner_within(napkin, 6, "1/4"_in, "1/16"_in).way.is_mitred   // stacked, its rows go through 9
//
// By paper. Fold one edge over the other, each n times: n + 1 layers lie on n + 1. Fold the corner across first, and the two hems
// lie side by side, one mitre beside the other; trimmed, what would lie inside them is gone. How many that is depends on the
// hems, so each way is folded here and its layers are counted along every row. Not part of turncloth.hpp.
#ifndef TURNCLOTH_PANEL_CORNER_WAYS_HPP
#define TURNCLOTH_PANEL_CORNER_WAYS_HPP

#include <turncloth/panel/made_up.hpp>

#include <algorithm>
#include <array>
#include <cstddef>
#include <cstdint>
#include <type_traits>

namespace turncloth {

/// One way for all four corners, and the most layers that a row along any edge goes through.
template <length_unit Unit>
struct corner_layers {
    corner_way<Unit> way;
    std::size_t most = 0;
};

namespace detail {

template <length_unit Unit>
corner_layers<Unit> layers_of(const panel<Unit>& piece, const corner_way<Unit>& way) {
    const folded_panel<Unit> made(piece, all_corners(way));
    corner_layers<Unit> found{way};
    for (const edge e : {edge::left, edge::right, edge::top, edge::bottom})
        for (const auto& row : piece.finish_of(e).stitching())
            found.most = std::max(found.most, made.most_layers_in_row(e, row).layers);
    return found;
}

} // namespace detail

/// The easiest to sew comes first. Throws corner_error for edges that are not turned, and as mitre (corner.hpp) and
/// folded_panel do where a mitre has no room.
template <length_unit Unit>
std::array<corner_layers<Unit>, 3> corner_ways(const panel<Unit>& piece, std::type_identity_t<length<Unit>> allowance,
                                               std::type_identity_t<length<Unit>> step) {
    return {detail::layers_of(piece, stacked<Unit>()), detail::layers_of(piece, mitred<Unit>()),
            detail::layers_of(piece, mitred<Unit>(allowance, step))};
}

/// Throws corner_error where none stays within them.
template <length_unit Unit>
corner_layers<Unit> corner_within(const panel<Unit>& piece, std::size_t most,
                                  std::type_identity_t<length<Unit>> allowance,
                                  std::type_identity_t<length<Unit>> step) {
    std::size_t fewest = 0;
    for (const corner_layers<Unit>& each : corner_ways(piece, allowance, step)) {
        if (each.most <= most)
            return each;
        fewest = fewest == 0 ? each.most : std::min(fewest, each.most);
    }
    const auto asked = static_cast<std::int64_t>(most), least = static_cast<std::int64_t>(fewest);
    detail::refuse<corner_error>({"no corner of these hems stays within ", asked, " layers: the fewest are ", least},
                                 {.kind = fault::too_small,
                                  .what = "the most layers of a corner",
                                  .given = fraction(asked),
                                  .least = fraction(least)});
}

} // namespace turncloth

#endif
