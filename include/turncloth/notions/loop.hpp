// Loops, casings and pockets that hold a rod or a box of a given size.
//
//   loop_for_rod(diameter, stitched, step, side)      a ribbon over a rod that lies on a flat backing
//   casing_for_rod(diameter, ease, step, side)        two layers of equal width, sewn at both sides: the width between
//   rod_for_casing(width, step, side)                 the thickest rod that a casing takes
//   loop_over_box(box, stitched, step, side)          a ribbon over a box that lies on a flat backing
//   pocket_for_box(box, ease, above)                  a flat pocket of two layers: its width and height, two figures
//   box_for_pocket(width, depth, ease)                the width of the widest box of that depth that goes in
//   loop_error                                        a size of nothing, an ease that is negative
//
//   constexpr auto dibber = loop_for_rod("3/4"_in, "3/8"_in, "1/8"_in, side::above);
//   static_assert(dibber == 2_in);   // stitched 3/8 in to each side of the middle
//
// All lengths are between rows of stitching, along the ribbon, for a ribbon of no thickness pulled tight.
#ifndef TURNCLOTH_NOTIONS_LOOP_HPP
#define TURNCLOTH_NOTIONS_LOOP_HPP

#include <turncloth/measure/estimate.hpp>
#include <turncloth/measure/working.hpp>
#include <turncloth/notions/error.hpp>

#include <string>

namespace turncloth {

/// A loop, casing or pocket that cannot hold anything.
class loop_error : public notion_error {
public:
    using notion_error::notion_error;
};

/// The ribbon between two rows of stitching, each `stitched` from the line on which a rod of this diameter touches the
/// backing. With r the rod's radius and h = `stitched`: a straight of h leads from each row to the rod (both tangents
/// from a point are equal, and one of them lies along the backing), and between them the ribbon turns by 2 pi - 4
/// atan(h / r) = 4 atan(r / h). So 2 h + 4 r atan(r / h); with both rows on the line itself the whole way round, 2 pi
/// r.
template <length_unit Unit>
constexpr estimate loop_of_rod(length<Unit> diameter, length<Unit> stitched) {
    require_more_than_zero<loop_error>(diameter, "the diameter of a rod");
    require_not_negative<loop_error>(stitched, "the distance of stitching from the middle of a loop");
    const fraction r = diameter.value() / 2, h = stitched.value();
    if (h == 0)
        return pi() * estimate(diameter.value());
    return estimate(2 * h) + estimate(4 * r) * arctangent(r / h);
}

/// The same on a graduation; `side::above` for a rod that must go in. Throws loop_error, undecided_error.
template <length_unit Unit>
constexpr length<Unit> loop_for_rod(length<Unit> diameter, length<Unit> stitched, length<Unit> step, side wanted) {
    return rounded(loop_of_rod(diameter, stitched), step, wanted);
}

/// The width, lying flat, of a tube of two equal layers round a rod: half its circumference, and ease. (A quarter inch
/// more than a flat ribbon or elastic is common practice: Oregon State University Extension, 4-H 320-36, Casings.)
template <length_unit Unit>
constexpr length<Unit> casing_for_rod(length<Unit> diameter, length<Unit> ease, length<Unit> step, side wanted) {
    require_more_than_zero<loop_error>(diameter, "the diameter of a rod");
    require_not_negative<loop_error>(ease, "the ease of a casing");
    return rounded(pi() * estimate(diameter.value() / 2) + estimate(ease.value()), step, wanted);
}

/// The diameter of the rod that fills a flat tube of this width: 2 width / pi.
template <length_unit Unit>
constexpr length<Unit> rod_for_casing(length<Unit> width, length<Unit> step, side wanted) {
    require_more_than_zero<loop_error>(width, "the width of a casing");
    return rounded(inverse_pi() * estimate(2 * width.value()), step, wanted);
}

/// A box that must be held: standing in a pocket, or lying on a backing with its height along the ribbon's edges.
template <length_unit Unit>
struct boxed_thing {
    length<Unit> width, depth;
    length<Unit> height = {}; ///< a loop asks for none
};

/// The ribbon between two rows of stitching, each `stitched` beyond a side of the box: over the box, and from each
/// upper edge to the backing by the hypotenuse of depth and `stitched`. Throws loop_error, undecided_error.
template <length_unit Unit>
constexpr length<Unit> loop_over_box(const boxed_thing<Unit>& box, length<Unit> stitched, length<Unit> step,
                                     side wanted) {
    require_more_than_zero<loop_error>(box.width, "the width of a box");
    require_more_than_zero<loop_error>(box.depth, "the depth of a box");
    require_not_negative<loop_error>(stitched, "the distance of stitching from a box");
    const fraction d = box.depth.value(), h = stitched.value();
    return rounded(estimate(box.width.value()) + square_root(estimate(4 * (d * d + h * h))), step, wanted);
}

/// A flat pocket that holds a box.
template <length_unit Unit>
struct pocket_sizes {
    figure<Unit> width;  ///< between the side seams, lying flat
    figure<Unit> height; ///< from the bottom seam to the opening, lying flat
};

/// Two equal layers sewn at the sides and the bottom. Round the box they must reach 2 (width + depth), so each is width
/// + depth wide, and ease; the bottom seam lies along the middle of the box's base, so half the depth is taken from the
/// height. `above` is how far the pocket goes on above the box, below zero where the box must stand out.
template <length_unit Unit>
constexpr pocket_sizes<Unit> pocket_for_box(const boxed_thing<Unit>& box, length<Unit> ease, length<Unit> above) {
    require_more_than_zero<loop_error>(box.width, "the width of a box");
    require_more_than_zero<loop_error>(box.depth, "the depth of a box");
    require_more_than_zero<loop_error>(box.height, "the height of a box");
    require_not_negative<loop_error>(ease, "the ease of a pocket");
    if (box.height + above <= length<Unit>())
        detail::refuse<loop_error>("a pocket must cover some of the box: of " + to_text(box.height) + " it leaves " +
                                       to_text(-above) + " bare",
                                   refusal{.kind = fault::too_small,
                                           .what = "how far a pocket goes on above its box",
                                           .given = amount_of(above),
                                           .least = amount_of(-box.height)});
    figure<Unit> width, height;
    width.plus(box.width, "the box's width").plus(box.depth, "its depth");
    if (ease.value() != 0)
        width.plus(ease, "ease");
    height.plus(box.height, "the box's height").plus_times(fraction(1, 2), {box.depth}, "its depth");
    if (above.value() != 0)
        height.plus_times(above.value() < 0 ? -1 : 1, {abs(above)}, above.value() < 0 ? "left bare" : "above it");
    return {width, height};
}

/// The width of the widest box of this depth that goes into a flat pocket. Throws loop_error where none does.
template <length_unit Unit>
constexpr length<Unit> box_for_pocket(length<Unit> pocket_width, length<Unit> depth, length<Unit> ease) {
    require_more_than_zero<loop_error>(depth, "the depth of a box");
    require_not_negative<loop_error>(ease, "the ease of a pocket");
    if (pocket_width <= depth + ease)
        detail::refuse<loop_error>("a pocket " + to_text(pocket_width) + " wide has no room for a box " +
                                       to_text(depth) + " deep with an ease of " + to_text(ease),
                                   refusal{.kind = fault::too_small,
                                           .what = "the width of a pocket",
                                           .given = amount_of(pocket_width),
                                           .least = amount_of(depth + ease)});
    return pocket_width - depth - ease;
}

} // namespace turncloth

#endif
