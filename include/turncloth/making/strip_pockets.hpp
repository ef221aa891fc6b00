// Rows of pockets from strips that are longer than what they are sewn to: each strip sewn by its foot, its fullness in
// tucks, then turned up over its own allowance and sewn down between the pockets.
//
//   strip_pockets<U>{strip, on, feet, span, columns, sides}
//   std::vector<mouth_handle> sew_strips(design, pockets)      the mouth of each strip, at its upper edge
//
//   sew_strips<inch>(design, {.strip = film, .on = backing, .feet = {at<finished_edge>(8_in)}, .span = 20_in,
//                             .columns = 3, .sides = {row<finished_edge, inch>(...)}});
//
// The strip lies wrong side up with its top edge toward the foot of what it is sewn to, right sides together; turned up
// along its seam it shows its right side and hides its allowance, which is why its foot is no hem.
#ifndef TURNCLOTH_MAKING_STRIP_POCKETS_HPP
#define TURNCLOTH_MAKING_STRIP_POCKETS_HPP

#include <turncloth/making/finishing.hpp>

#include <cstddef>
#include <cstdint>
#include <type_traits>
#include <vector>

namespace turncloth {

/// Each strip finishes as wide as its panel and meets `span` of what it is sewn to, from its finished left edge on, in
/// equal columns. `sides` are the rows between the columns and beside the outer ones, from that edge; a row of no places
/// adds nothing.
template <length_unit Unit>
struct strip_pockets {
    panel_part<Unit> strip, on;
    std::vector<place<finished_edge, Unit>> feet{}; ///< from its finished top edge; one for each strip cut
    length<Unit> span{};
    std::int64_t columns = 1;
    std::vector<row<finished_edge, Unit>> sides{};
    length<Unit> graduation{}; ///< of the ruler that the marks between columns are for; zero where they are exact
};

namespace detail {

template <length_unit Unit>
void sew_foot(making<Unit>& design, const strip_pockets<Unit>& p, const panel_part<Unit>& strip, length<Unit> down) {
    const panel<Unit>& shape = strip.shape;
    const length<Unit> across = shape.finished().width();
    // Face to face and upside down at once, its own left edge lies at the left again.
    design.add(laying<Unit>{.piece = strip,
                            .on = p.on,
                            .up = face::wrong,
                            .left = p.on.shape.finish_of(edge::left).allowance(),
                            .top = down - shape.finish_of(edge::bottom).allowance(),
                            .fit = {.taken_up = across > p.span ? surplus::tuck : surplus::none,
                                    .spans = p.columns,
                                    .begins = shape.finish_of(edge::left).allowance(),
                                    .of_piece = across,
                                    .on = p.span,
                                    .graduation = p.graduation},
                            .upside_down = true});
    const chalk_line<Unit> seam = strip.line(edge::bottom, place<finished_edge, Unit>());
    design.add(stitching<Unit>{.along = seam, .through = {strip, p.on}});
    design.add(crease<Unit>{
        .at = {.on = strip, .from = edge::top, .in = at<cut_edge>(shape.cut().height() - seam.in.from_datum())},
        .over = true});
}

template <length_unit Unit>
void sew_sides(making<Unit>& design, const strip_pockets<Unit>& p, const panel_part<Unit>& strip, length<Unit> down,
               const row<finished_edge, Unit>& side) {
    const row<cut_edge, Unit> at = p.on.places(edge::left, side);
    if (at.size() == 0)
        return;
    stitching<Unit> rows{.along = p.on.line(edge::left, at[0]), .through = {p.on, strip}, .each = at};
    rows.along.begins = down - strip.shape.finished().height();
    rows.along.ends = down;
    design.add(rows);
}

} // namespace detail

/// Throws making_error where strips and feet are not of one number.
template <length_unit Unit>
std::vector<mouth_handle> sew_strips(making<Unit>& design, const strip_pockets<Unit>& p) {
    const std::int64_t cut = design.parts()[p.strip.part.index].count;
    if (cut != static_cast<std::int64_t>(p.feet.size()))
        detail::refuse<making_error>("strips are sewn at one foot each: " + std::to_string(cut) + " are cut for " +
                                         std::to_string(p.feet.size()) + " feet",
                                     refusal{.kind = fault::disagree,
                                             .what = "the feet of strips",
                                             .given = amount_of(p.feet.size()),
                                             .least = amount_of(cut),
                                             .most = amount_of(cut)});
    std::vector<mouth_handle> tops;
    for (std::size_t k = 0; k < p.feet.size(); ++k) {
        const panel_part<Unit> strip = p.strip[static_cast<std::int64_t>(k)];
        const length<Unit> down = p.on.shape.from_cut_edge(edge::top, p.feet[k]).from_datum();
        finish_edges(design, panel_part<Unit>{strip.part, strip.shape, face::wrong});
        detail::sew_foot(design, p, strip, down);
        for (const row<finished_edge, Unit>& side : p.sides)
            detail::sew_sides(design, p, strip, down, side);
        tops.push_back(
            design.add(mouth<Unit>{.name = "top", .at = {strip.line(edge::top, place<finished_edge, Unit>())}}));
    }
    return tops;
}

TURNCLOTH_ONCE(std::vector<mouth_handle> sew_strips(making<inch>&, const strip_pockets<inch>&));
TURNCLOTH_ONCE(std::vector<mouth_handle> sew_strips(making<centimetre>&, const strip_pockets<centimetre>&));

} // namespace turncloth

#endif
