// Loops, casings and pockets that hold a rod or a box of a given size.
//
//   loop_for_rod({.diameter, .stitched}, step, rounding)  a ribbon over a rod that lies on a flat backing
//   casing_for_rod({.diameter, .ease}, step, rounding)    two equal layers sewn at both sides: the width between
//   rod_for_casing(width, step, rounding)                 the thickest rod that a casing takes
//   loop_over_box(box, stitched, step, rounding)          a ribbon over a box that lies on a flat backing
//   pocket_for_box(box, {.ease, .above})                  a flat pocket of two layers: its width and height, two figures
//   box_for_pocket(width, {.depth, .ease})                the width of the widest box of that depth that goes in
//   loop_error                                            a size of nothing, an ease that is negative
//
//   constexpr auto dibber = loop_for_rod<inch>({.diameter = "3/4"_in, .stitched = "3/8"_in}, "1/8"_in, rounding::up);
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

/// A rod under a ribbon, on a flat backing.
template <length_unit Unit>
struct rod_in_loop {
    length<Unit> diameter;
    length<Unit> stitched; ///< each row of stitching, from the line on which the rod touches the backing
};

namespace detail {

/// The ribbon between the two rows of stitching. With r the rod's radius and h = `stitched`: a straight of h leads from each row to the rod (both tangents
/// from a point are equal, and one of them lies along the backing), and between them the ribbon turns by 2 pi - 4
/// atan(h / r) = 4 atan(r / h). So 2 h + 4 r atan(r / h); with both rows on the line itself the whole way round, 2 pi
/// r.
template <length_unit Unit>
constexpr estimate loop_of_rod(const rod_in_loop<Unit>& rod) {
    require_more_than_zero<loop_error>(rod.diameter, "the diameter of a rod");
    require_not_negative<loop_error>(rod.stitched, "the distance of stitching from the middle of a loop");
    const fraction r = rod.diameter.value() / 2, h = rod.stitched.value();
    if (h == 0)
        return pi() * estimate(rod.diameter.value());
    return estimate(2 * h) + estimate(4 * r) * arctangent(r / h);
}

} // namespace detail

/// The ribbon between its two rows of stitching, on a graduation; `rounding::up` for a rod that must go in. Throws loop_error, undecided_error.
template <length_unit Unit>
constexpr length<Unit> loop_for_rod(const rod_in_loop<Unit>& rod, length<Unit> step, rounding wanted) {
    return rounded(detail::loop_of_rod(rod), step, wanted);
}

/// A rod in a casing.
template <length_unit Unit>
struct rod_in_casing {
    length<Unit> diameter;
    length<Unit> ease = {}; ///< in the flat width
};

/// The width, lying flat, of a tube of two equal layers round a rod: half its circumference, and ease. (A quarter inch
/// more than a flat ribbon or elastic is common practice: Oregon State University Extension, 4-H 320-36, Casings.)
template <length_unit Unit>
constexpr length<Unit> casing_for_rod(const rod_in_casing<Unit>& rod, length<Unit> step, rounding wanted) {
    require_more_than_zero<loop_error>(rod.diameter, "the diameter of a rod");
    require_not_negative<loop_error>(rod.ease, "the ease of a casing");
    return rounded(pi() * estimate(rod.diameter.value() / 2) + estimate(rod.ease.value()), step, wanted);
}

/// The diameter of the rod that fills a flat tube of this width: 2 width / pi.
template <length_unit Unit>
constexpr length<Unit> rod_for_casing(length<Unit> width, length<Unit> step, rounding wanted) {
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
                                     rounding wanted) {
    require_more_than_zero<loop_error>(box.width, "the width of a box");
    require_more_than_zero<loop_error>(box.depth, "the depth of a box");
    require_not_negative<loop_error>(stitched, "the distance of stitching from a box");
    const fraction d = box.depth.value(), h = stitched.value();
    return rounded(estimate(box.width.value()) + square_root(estimate(4 * (d * d + h * h))), step, wanted);
}

/// How a pocket holds a box.
template <length_unit Unit>
struct pocket_fit {
    length<Unit> ease = {};  ///< in the flat width
    length<Unit> above = {}; ///< how far it goes on above the box, below zero where the box must stand out
};

/// A flat pocket that holds a box.
template <length_unit Unit>
struct pocket_sizes {
    figure<Unit> width;  ///< between the side seams, lying flat
    figure<Unit> height; ///< from the bottom seam to the opening, lying flat
};

/// Two equal layers sewn at the sides and the bottom. Round the box they must reach 2 (width + depth), so each is width
/// + depth wide, and ease; the bottom seam lies along the middle of the box's base, so half the depth is taken from the
/// height.
template <length_unit Unit>
constexpr pocket_sizes<Unit> pocket_for_box(const boxed_thing<Unit>& box, const pocket_fit<Unit>& fit) {
    const length<Unit> ease = fit.ease, above = fit.above;
    require_more_than_zero<loop_error>(box.width, "the width of a box");
    require_more_than_zero<loop_error>(box.depth, "the depth of a box");
    require_more_than_zero<loop_error>(box.height, "the height of a box");
    require_not_negative<loop_error>(ease, "the ease of a pocket");
    if (box.height + above <= length<Unit>())
        detail::refuse<loop_error>(
            {"a pocket must cover some of the box: of ", box.height, " it leaves ", -above, " bare"},
            {.kind = fault::too_small,
             .what = "how far a pocket goes on above its box",
             .given = above,
             .least = -box.height});
    figure<Unit> width, height;
    width.plus(box.width, "the box's width").plus(box.depth, "its depth");
    width.plus_any(1, ease, "ease");
    height.plus(box.height, "the box's height").plus_times(fraction(1, 2), {box.depth}, "its depth");
    height.plus_any(above.value() < 0 ? -1 : 1, abs(above), above.value() < 0 ? label("left bare") : label("above it"));
    return {width, height};
}

/// What is known of a box for a pocket that is there already.
template <length_unit Unit>
struct box_in_pocket {
    length<Unit> depth;
    length<Unit> ease = {};
};

/// The width of the widest box of this depth that goes into a flat pocket. Throws loop_error where none does.
template <length_unit Unit>
constexpr length<Unit> box_for_pocket(length<Unit> pocket_width, const box_in_pocket<Unit>& box) {
    const length<Unit> depth = box.depth, ease = box.ease;
    require_more_than_zero<loop_error>(depth, "the depth of a box");
    require_not_negative<loop_error>(ease, "the ease of a pocket");
    if (pocket_width <= depth + ease)
        detail::refuse<loop_error>(
            {"a pocket ", pocket_width, " wide has no room for a box ", depth, " deep with an ease of ", ease},
            {.kind = fault::too_small, .what = "the width of a pocket", .given = pocket_width, .least = depth + ease});
    return pocket_width - depth - ease;
}

} // namespace turncloth

#endif
