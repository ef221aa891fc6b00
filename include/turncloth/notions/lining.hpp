// The lining of a bag with a flat base, and what stiffens that base between the two.
//
//   lining_in(bag, thickness)            the size inside of its outer: smaller on every side by what the outer is thick
//   bag_round(lining, thickness)         the same backwards
//   rim_surplus(thickness)               by how much the outer's rim is longer: it is eased onto the lining's
//   stiffener_in(lining, ease)           width and depth of a board for the base
//   gap_for(stiffener, thickness, ease)  the gap that lets it through, end on
//
//   constexpr boxed_size tote(14_in, 9_in, 6_in); // its face as it stands, and from front to back
//   static_assert(lining_in(tote, "1/8"_in) == boxed_size<inch>("13 3/4"_in, "8 7/8"_in, "5 3/4"_in));
//
// By paper. A box of card that stands in another of the same size buckles: two walls and the thickness of both lie between its
// sides, one base lies under it, and nothing lies above its open top. So it is smaller by twice the thickness from side to side
// and from front to back, once from rim to base, and by eight times round the rim.
#ifndef TURNCLOTH_NOTIONS_LINING_HPP
#define TURNCLOTH_NOTIONS_LINING_HPP

#include <turncloth/notions/boxed.hpp>
#include <turncloth/panel/size.hpp>

#include <algorithm>

namespace turncloth {

namespace detail {

template <length_unit Unit>
constexpr length<Unit> left_inside(length<Unit> of, length<Unit> taken, const char* what) {
    if (taken >= of)
        refuse<boxed_error>({what, " of ", of, " leaves no room for a lining: the outer takes ", taken},
                            {.kind = fault::too_small, .what = what, .given = of, .least = taken});
    return of - taken;
}

} // namespace detail

/// Throws boxed_error for a negative thickness, and where nothing is left inside.
template <length_unit Unit>
constexpr boxed_size<Unit> lining_in(const boxed_size<Unit>& bag, length<Unit> thickness) {
    require_not_negative<boxed_error>(thickness, "the thickness of an outer");
    return {detail::left_inside(bag.width(), thickness * 2, "the width of a bag"),
            detail::left_inside(bag.height(), thickness, "the height of a bag"),
            detail::left_inside(bag.depth(), thickness * 2, "the depth of a bag")};
}
template <length_unit Unit>
constexpr boxed_size<Unit> bag_round(const boxed_size<Unit>& lining, length<Unit> thickness) {
    require_not_negative<boxed_error>(thickness, "the thickness of an outer");
    return {lining.width() + thickness * 2, lining.height() + thickness, lining.depth() + thickness * 2};
}

/// Each of the four sides of a rim is longer by twice the thickness.
template <length_unit Unit>
constexpr length<Unit> rim_surplus(length<Unit> thickness) {
    require_not_negative<boxed_error>(thickness, "the thickness of an outer");
    return thickness * 8;
}

/// Smaller than the base each way by `ease`, so that its corners do not press on the seams.
template <length_unit Unit>
constexpr finished_size<Unit> stiffener_in(const boxed_size<Unit>& lining, length<Unit> ease) {
    require_not_negative<boxed_error>(ease, "the ease of a stiffener");
    return {detail::left_inside(lining.width(), ease, "the width of a base"),
            detail::left_inside(lining.depth(), ease, "the depth of a base")};
}

/// A slit goes round what passes it: half the girth of its end, which is a side and the thickness, whichever side is the shorter.
template <length_unit Unit>
constexpr figure<Unit> gap_for(const finished_size<Unit>& stiffener, length<Unit> thickness, length<Unit> ease) {
    require_more_than_zero<boxed_error>(thickness, "the thickness of a stiffener");
    require_not_negative<boxed_error>(ease, "the ease of a gap");
    figure<Unit> f;
    f.plus(std::min(stiffener.width(), stiffener.height()), "stiffener's shorter side")
        .plus(thickness, "its thickness");
    return f.plus_any(1, ease, "ease");
}

} // namespace turncloth

#endif
