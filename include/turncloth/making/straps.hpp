// A strap folded from one length of cloth, laid on a piece, and sewn to it in boxes with crosses.
//
//   strap_part<U> fold_strap(design, {.name, .cloth, .finished, .turned, .inset})
//                                           cut four times as wide; its ends and both edges turned in, folded, sewn round
//   lay_strap(design, strap, on, left, top)     its finished edges from the finished left and top edges of a piece
//   sew_box(design, strap, on, {.begins, .ends, .in})        a box of four rows, with a cross from corner to corner
//
//   const auto belt = fold_strap<inch>(design, {.name = "belt", .finished = {60_in, "1 1/2"_in}, .turned = "1/2"_in});
//   lay_strap(design, belt, back, -20_in, at<finished_edge>("1/2"_in));
//   sew_box<inch>(design, belt, back, {.begins = "20 1/4"_in, .ends = "21 1/2"_in, .in = "1/4"_in});
//
// Common practice: the raw ends are turned in first, then both long edges to the middle, then the strap is folded in half
// along it, so that it lies four layers thick and eight at its ends; it is sewn round near its edges, and held where it
// carries a load by a box with its diagonals.
#ifndef TURNCLOTH_MAKING_STRAPS_HPP
#define TURNCLOTH_MAKING_STRAPS_HPP

#include <turncloth/making/finishing.hpp>

#include <array>
#include <string>
#include <type_traits>

namespace turncloth {

template <length_unit Unit>
struct folded_strap {
    std::string name{};
    turncloth::cloth<Unit> cloth{};
    finished_size<Unit> finished; ///< as long as it is wide, and its width as its height
    length<Unit> turned{};        ///< in at each end
    length<Unit> inset{};         ///< of its rows, from its folded edges
};

template <length_unit Unit>
struct strap_part {
    cut_part part{};
    finished_size<Unit> finished;
    length<Unit> turned{};
    operator cut_part() const { return part; }

    /// On the cloth as it was cut: the strap lies in the third quarter of its height.
    length<Unit> top() const { return finished.height() * 2; }
    chalk_line<Unit> along(length<Unit> down) const {
        return {.on = part, .from = edge::top, .in = at<cut_edge>(top() + down)};
    }
    chalk_line<Unit> across(length<Unit> from_left) const {
        return {.on = part, .from = edge::left, .in = at<cut_edge>(turned + from_left)};
    }
};

/// Throws size_error for ends or an inset of nothing, and making_error for an inset that meets the other row.
template <length_unit Unit>
strap_part<Unit> fold_strap(making<Unit>& design, const std::type_identity_t<folded_strap<Unit>>& s) {
    require_more_than_zero<size_error>(s.turned, "what is turned in at the ends of a strap");
    require_more_than_zero<size_error>(s.inset, "the inset of a strap's rows");
    const length<Unit> long_ = s.finished.width(), wide = s.finished.height();
    if (s.inset * 2 >= wide)
        detail::refuse<making_error>({"the rows of a strap ", wide, " wide are to lie ", s.inset, " inside its edges"},
                                     {.kind = fault::too_large,
                                      .what = "the inset of a strap's rows",
                                      .given = s.inset,
                                      .most = wide / 2,
                                      .where = s.name});
    const strap_part<Unit> made{
        design.cut({.name = s.name, .cloth = s.cloth, .width = long_ + s.turned * 2, .height = wide * 4}), s.finished,
        s.turned};
    const auto turn_in = [&](edge e, length<Unit> by) {
        return design.add(crease<Unit>{.at = {.on = made.part, .from = e, .in = at<cut_edge>(by)}});
    };
    const std::array ends{turn_in(edge::left, s.turned), turn_in(edge::right, s.turned)};
    const std::array edges{turn_in(edge::top, wide), turn_in(edge::bottom, wide)};
    const operation folded = turn_in(edge::top, wide * 2);
    for (const operation& end : ends)
        for (const operation& e : edges)
            design.add(before{end, e, "the ends of a strap are turned in first"});
    for (const operation& e : edges)
        design.add(before{e, folded, "both edges of a strap lie inside it when it is folded"});
    for (const length<Unit>& down : {s.inset, wide - s.inset})
        design.add(stitching<Unit>{.along = made.along(down)});
    for (const edge e : {edge::left, edge::right}) {
        const operation end = design.add(stitching<Unit>{.along = {.on = made.part,
                                                                   .from = e,
                                                                   .in = at<cut_edge>(s.turned + s.inset),
                                                                   .begins = made.top() + s.inset,
                                                                   .ends = made.top() + wide - s.inset}});
        design.add(before{folded, end, "a strap is sewn when it is folded"});
    }
    return made;
}

/// `left` may be below zero: the strap then goes on beyond that edge.
template <length_unit Unit>
operation lay_strap(making<Unit>& design, const strap_part<Unit>& strap,
                    const std::type_identity_t<panel_part<Unit>>& on, std::type_identity_t<length<Unit>> left,
                    std::type_identity_t<length<Unit>> top) {
    return design.add(laying<Unit>{.piece = strap,
                                   .on = on,
                                   .up = on.up,
                                   .left = on.shape.finish_of(edge::left).allowance() + left - strap.turned,
                                   .top = on.shape.finish_of(edge::top).allowance() + top - strap.top()});
}

/// Along the strap from its finished left end; `in` from its long edges.
template <length_unit Unit>
struct strap_box {
    length<Unit> begins{}, ends{}, in{};
};

template <length_unit Unit>
void sew_box(making<Unit>& design, const strap_part<Unit>& strap, cut_part on,
             const std::type_identity_t<strap_box<Unit>>& b) {
    const length<Unit> upper = b.in, lower = strap.finished.height() - b.in;
    for (const length<Unit>& down : {upper, lower}) {
        stitching<Unit> level{.along = strap.along(down), .through = {strap, on}};
        level.along.begins = strap.turned + b.begins;
        level.along.ends = strap.turned + b.ends;
        design.add(level);
    }
    for (const length<Unit>& right : {b.begins, b.ends}) {
        stitching<Unit> upright{.along = strap.across(right), .through = {strap, on}};
        upright.along.begins = strap.top() + upper;
        upright.along.ends = strap.top() + lower;
        design.add(upright);
    }
    design.add(spot<Unit>{
        .what = spot_kind::cross,
        .along = strap.along(strap.finished.height() / 2),
        .places = row<cut_edge, Unit>(at<cut_edge>(strap.turned + (b.begins + b.ends) / 2), length<Unit>(), 1),
        .through = {strap, on},
        .width = b.ends - b.begins,
        .height = lower - upper});
}

} // namespace turncloth

#endif
