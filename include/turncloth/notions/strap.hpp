// Straps and handles: what to cut of them, where they are sewn on, and the crossed boxes that hold their ends.
//
//   cut_to_fold_in_four(finished)         both edges to the middle, then folded in half: cut width, a figure
//   cut_to_turn_out(finished, seam)       sewn along one side, right side in, and turned out: cut width, a figure
//   finished_folded_in_four(cut)   finished_turned_out(cut, seam)                         the same backwards
//   free_of_handle(drop, {.apart, .over}, step, rounding)     strap between its sewn ends; drop_of_handle(free, ...) backwards
//   strap_length(free, {.sewn, .turned})  cut length, a figure; free_of_strap(cut, ends)  backwards
//   strap_places(across, {.apart, .width})     where the left edges of two straps lie, side by side
//   crossed_box<U>{width, height}  box_in_strap(width, sewn, inset)  box_stitching(b, ...)  box_in_one_row(b, ...)
//   boxed_straps<U>                       straps alike, folded in four and held by boxes: what a project lists
//   strap_error                           what cannot be folded, reached or sewn, and why
//
//   static_assert(cut_to_fold_in_four("1 1/2"_in).value() == 6_in);
//   static_assert(free_of_handle<inch>(12_in, {.apart = 10_in}, "1/8"_in, rounding::up) == 26_in);
//
// By paper. A strip folded with both edges to its middle and then along its middle is a quarter as wide, four layers thick. A
// handle drawn up over a hook, or over a flat thing `over` wide, goes straight from either end to it: two sloping sides.
#ifndef TURNCLOTH_NOTIONS_STRAP_HPP
#define TURNCLOTH_NOTIONS_STRAP_HPP

#include <turncloth/measure/estimate.hpp>
#include <turncloth/measure/place.hpp>
#include <turncloth/measure/working.hpp>
#include <turncloth/notions/error.hpp>
#include <turncloth/panel/finish.hpp>

#include <algorithm>
#include <array>

namespace turncloth {

/// A strap that cannot be made, or does not reach.
class strap_error : public notion_error {
public:
    using notion_error::notion_error;
};

template <length_unit Unit>
constexpr figure<Unit> cut_to_fold_in_four(length<Unit> finished) {
    require_more_than_zero<strap_error>(finished, "the finished width of a strap");
    return figure<Unit>().plus_times(4, {finished}, "finished");
}
template <length_unit Unit>
constexpr length<Unit> finished_folded_in_four(length<Unit> cut) {
    require_more_than_zero<strap_error>(cut, "the cut width of a strap");
    return cut / 4;
}

/// Folded in half along it, right side in, sewn `seam` from its edges, and turned right side out.
template <length_unit Unit>
constexpr figure<Unit> cut_to_turn_out(length<Unit> finished, length<Unit> seam) {
    require_more_than_zero<strap_error>(finished, "the finished width of a strap");
    require_more_than_zero<strap_error>(seam, "the seam along a strap");
    return figure<Unit>().plus_times(2, {finished}, "finished").plus_times(2, {seam}, "seam");
}
/// Throws strap_error for a strip that its own seam uses up.
template <length_unit Unit>
constexpr length<Unit> finished_turned_out(length<Unit> cut, length<Unit> seam) {
    require_more_than_zero<strap_error>(seam, "the seam along a strap");
    if (cut <= seam * 2)
        detail::refuse<strap_error>(
            {"a strap cut ", cut, " wide is used up by its seam, which takes ", seam, " of either edge"},
            {.kind = fault::too_small, .what = "the cut width of a strap", .given = cut, .least = seam * 2});
    return cut / 2 - seam;
}

/// A handle between two ends, drawn up. Its drop is from the line at which it leaves them up to what it hangs over.
template <length_unit Unit>
struct hung_handle {
    length<Unit> apart;     ///< from where it leaves one end to where it leaves the other
    length<Unit> over = {}; ///< how wide the thing is that it hangs over: a hand, a rail; nothing for a hook
};

namespace detail {

template <length_unit Unit>
constexpr void require_ends(const hung_handle<Unit>& h) {
    require_not_negative<strap_error>(h.apart, "the distance between the ends of a handle");
    require_not_negative<strap_error>(h.over, "the width of what a handle hangs over");
}

} // namespace detail

/// The strap between its two sewn ends: what it hangs over, and on either side the hypotenuse of the drop and of half the
/// difference of `apart` and `over`. Throws strap_error, undecided_error.
template <length_unit Unit>
constexpr length<Unit> free_of_handle(length<Unit> drop, const hung_handle<Unit>& h, length<Unit> step,
                                      rounding wanted) {
    require_more_than_zero<strap_error>(drop, "the drop of a handle");
    detail::require_ends(h);
    const fraction d = drop.value(), across = h.apart.value() - h.over.value();
    return rounded(estimate(h.over.value()) + square_root(estimate(4 * d * d + across * across)), step, wanted);
}

/// The drop of such a handle. Throws strap_error for one that does not reach from
/// one end to the other.
template <length_unit Unit>
constexpr length<Unit> drop_of_handle(length<Unit> free, const hung_handle<Unit>& h, length<Unit> step,
                                      rounding wanted) {
    detail::require_ends(h);
    const length<Unit> sloping = free - h.over, across = h.apart - h.over;
    if (sloping <= abs(across))
        detail::refuse<strap_error>({"a handle ", free, " long between its ends does not come up at all: its ends are ",
                                     h.apart, " apart, and it hangs over ", h.over},
                                    {.kind = fault::too_small,
                                     .what = "the free length of a handle",
                                     .given = free,
                                     .least = h.over + abs(across)});
    const fraction s = sloping.value(), a = across.value();
    return rounded(square_root(estimate((s - a) * (s + a) / 4)), step, wanted);
}

/// What each of its two ends takes.
template <length_unit Unit>
struct strap_ends {
    length<Unit> sewn;        ///< that lies on what it is sewn to
    length<Unit> turned = {}; ///< in or under at the raw end
};

namespace detail {

template <length_unit Unit>
constexpr void require_sound(const strap_ends<Unit>& ends) {
    require_more_than_zero<strap_error>(ends.sewn, "what is sewn down of a strap's end");
    require_not_negative<strap_error>(ends.turned, "what is turned in at a strap's end");
}

} // namespace detail

template <length_unit Unit>
constexpr figure<Unit> strap_length(length<Unit> free, const strap_ends<Unit>& ends) {
    require_more_than_zero<strap_error>(free, "the free length of a strap");
    detail::require_sound(ends);
    figure<Unit> f;
    f.plus(free, "free").plus_times(2, {ends.sewn}, "sewn down");
    return f.plus_any(2, ends.turned, "turned in");
}

/// What a strap of that cut length leaves between its sewn ends. Throws strap_error where its ends use it up.
template <length_unit Unit>
constexpr length<Unit> free_of_strap(length<Unit> cut, const strap_ends<Unit>& ends) {
    detail::require_sound(ends);
    const length<Unit> each = ends.sewn + ends.turned;
    if (cut <= each * 2)
        detail::refuse<strap_error>(
            {"a strap cut ", cut, " long is used up by its ends, which take ", each, " each"},
            {.kind = fault::too_small, .what = "the cut length of a strap", .given = cut, .least = each * 2});
    return cut - each * 2;
}

/// Two straps, or the two ends of one, on a piece.
template <length_unit Unit>
struct strap_pair {
    length<Unit> apart; ///< from middle to middle
    length<Unit> width;
};

/// Where their left edges lie, both equally far from the sides. Throws strap_error where they overlap or do not fit on it.
template <length_unit Unit>
constexpr std::array<place<finished_edge, Unit>, 2> strap_places(length<Unit> across, const strap_pair<Unit>& p) {
    require_more_than_zero<strap_error>(p.width, "the finished width of a strap");
    if (p.apart < p.width)
        detail::refuse<strap_error>(
            {"straps ", p.width, " wide lie one over the other where their middles are ", p.apart, " apart"},
            {.kind = fault::too_small, .what = "the distance between two straps", .given = p.apart, .least = p.width});
    if (p.apart + p.width > across)
        detail::refuse<strap_error>(
            {"straps ", p.width, " wide, their middles ", p.apart, " apart, do not fit on a piece ", across, " across"},
            {.kind = fault::does_not_fit,
             .what = "the distance between two straps",
             .given = p.apart,
             .most = across - p.width});
    const length<Unit> first = (across - p.apart - p.width) / 2;
    return {at<finished_edge>(first), at<finished_edge>(first + p.apart)};
}

/// Four rows, and two from corner to corner.
template <length_unit Unit>
struct crossed_box {
    length<Unit> width, height;
};

/// Within the end of a strap, `inset` from its edges, its end, and where it is free. Throws strap_error where nothing is left.
template <length_unit Unit>
constexpr crossed_box<Unit> box_in_strap(length<Unit> width, length<Unit> sewn, length<Unit> inset) {
    require_more_than_zero<strap_error>(inset, "the inset of a box");
    if (const length<Unit> narrower = std::min(width, sewn); inset * 2 >= narrower)
        detail::refuse<strap_error>(
            {"a box ", inset, " inside the end of a strap has no room: that is ", width, " wide, and ", sewn,
             " of it is sewn down"},
            {.kind = fault::too_large, .what = "the inset of a box", .given = inset, .most = narrower / 2});
    return {width - inset * 2, sewn - inset * 2};
}

namespace detail {

template <length_unit Unit>
constexpr estimate box_lines(const crossed_box<Unit>& b) {
    require_more_than_zero<strap_error>(b.width, "the width of a box");
    require_more_than_zero<strap_error>(b.height, "the height of a box");
    const fraction w = b.width.value(), h = b.height.value();
    return estimate(2 * (w + h)) + square_root(estimate(4 * (w * w + h * h)));
}

} // namespace detail

/// Its six rows, each sewn once.
template <length_unit Unit>
constexpr length<Unit> box_stitching(const crossed_box<Unit>& b, length<Unit> step, rounding wanted) {
    return rounded(detail::box_lines(b), step, wanted);
}
/// Sewn in one go, without lifting the needle. Three rows meet at each of its four corners, which is odd, so one row must be sewn
/// twice over, joining two of them: a shorter side is the least. Round all four, across, back along that side, across.
template <length_unit Unit>
constexpr length<Unit> box_in_one_row(const crossed_box<Unit>& b, length<Unit> step, rounding wanted) {
    return rounded(detail::box_lines(b) + estimate(std::min(b.width, b.height).value()), step, wanted);
}

/// Straps alike, each folded in four, and held at both ends by a box that lies `inset` within what is sewn down.
template <length_unit Unit>
struct boxed_straps {
    length<Unit> finished, free; ///< its width; what is left between its ends
    strap_ends<Unit> ends;
    length<Unit> inset;
    length<Unit> step; ///< that the stitching of a box is rounded up to
};

} // namespace turncloth

#endif
