// Loose filling for a closed tube: how thick the tube stands, how much it holds, and what that weighs.
//
//   stuffed_tube<U>{girth, along}              closed at both ends, and stuffed until it is round
//   tube_across(girth, step, rounding)         how thick it stands; girth_of_tube(across, step, rounding) backwards
//   tube_cut_round(girth, seam)                what to cut, the way round: a figure
//   tube_holds(tube, step, rounding)           a number of cubes of the unit, at the most
//   filling_sample<U>{width, height, depth, weight}    a box of the filling, pressed in as it will be, on your own scales
//   weight_of_cube(sample)                     of a cubic inch of it, or of a cubic centimetre
//   weight_to_fill(tube, cube, step, rounding)    at the most, in what the sample was weighed in
//   length_filled(weight, girth, cube, step)   how long a tube so much fills, at the least
//   loose_filling<U>                           a tube and its sample: what a project lists
//   filling_error                              what holds nothing, and why
//
//   static_assert(tube_holds<inch>({.girth = 22_in, .along = 6_in}, 1, rounding::down) == 231);
//
// By paper. A strip of paper g long bent to a ring is g / pi across, and encloses g^2 / (4 pi), more than any other shape of it.
// So a tube holds at most g^2 / (4 pi) times its length; where its ends are sewn flat it holds a little less, so that what is
// bought by these figures is enough.
#ifndef TURNCLOTH_NOTIONS_FILLING_HPP
#define TURNCLOTH_NOTIONS_FILLING_HPP

#include <turncloth/measure/estimate.hpp>
#include <turncloth/measure/working.hpp>
#include <turncloth/notions/error.hpp>

namespace turncloth {

/// A tube that cannot be sewn or filled.
class filling_error : public notion_error {
public:
    using notion_error::notion_error;
};

template <length_unit Unit>
struct stuffed_tube {
    length<Unit> girth; ///< once round it
    length<Unit> along; ///< from end to end
};

/// Throws filling_error, and what estimates throw for a step of nothing.
template <length_unit Unit>
constexpr length<Unit> tube_across(length<Unit> girth, length<Unit> step, rounding wanted) {
    require_more_than_zero<filling_error>(girth, "the girth of a tube");
    return rounded(inverse_pi() * estimate(girth.value()), step, wanted);
}
template <length_unit Unit>
constexpr length<Unit> girth_of_tube(length<Unit> across, length<Unit> step, rounding wanted) {
    require_more_than_zero<filling_error>(across, "the thickness of a tube");
    return rounded(pi() * estimate(across.value()), step, wanted);
}

template <length_unit Unit>
constexpr figure<Unit> tube_cut_round(length<Unit> girth, length<Unit> seam) {
    require_more_than_zero<filling_error>(girth, "the girth of a tube");
    require_more_than_zero<filling_error>(seam, "the seam of a tube");
    figure<Unit> f;
    return f.plus(girth, "girth").plus_times(2, {seam}, "seam");
}

namespace detail {

template <length_unit Unit>
constexpr estimate most_in(const stuffed_tube<Unit>& t) {
    require_more_than_zero<filling_error>(t.girth, "the girth of a tube");
    require_more_than_zero<filling_error>(t.along, "the length of a tube");
    const fraction g = t.girth.value();
    return inverse_pi() * estimate(g * g * t.along.value() / 4);
}

} // namespace detail

template <length_unit Unit>
constexpr fraction tube_holds(const stuffed_tube<Unit>& t, fraction step, rounding wanted) {
    return detail::most_in(t).on(step, wanted);
}

/// Filling differs: fill a box with it, press it as firm as it will be in the tube, and weigh what is in it.
template <length_unit Unit>
struct filling_sample {
    length<Unit> width, height, depth; ///< of the box, inside
    fraction weight;
};

/// What a cube of the unit, a cubic inch or a cubic centimetre, weighs of it.
template <length_unit Unit>
constexpr fraction weight_of_cube(const filling_sample<Unit>& s) {
    require_more_than_zero<filling_error>(s.width, "the width of a box of filling");
    require_more_than_zero<filling_error>(s.height, "the height of a box of filling");
    require_more_than_zero<filling_error>(s.depth, "the depth of a box of filling");
    require_more_than_zero<filling_error>(s.weight, "the weight of a box of filling");
    return s.weight / (s.width.value() * s.height.value() * s.depth.value());
}

namespace detail {

constexpr void require_weight(fraction cube) {
    require_more_than_zero<filling_error>(cube, "the weight of a cube of filling");
}

} // namespace detail

/// `cube` is what a cube of the unit weighs of it.
template <length_unit Unit>
constexpr fraction weight_to_fill(const stuffed_tube<Unit>& t, fraction cube, fraction step, rounding wanted) {
    detail::require_weight(cube);
    return (detail::most_in(t) * estimate(cube)).on(step, wanted);
}

/// Down to the step, so that the tube is full. Throws filling_error where that is nothing.
template <length_unit Unit>
constexpr length<Unit> length_filled(fraction weight, length<Unit> girth, fraction cube, length<Unit> step) {
    require_more_than_zero<filling_error>(weight, "the weight of a filling");
    require_more_than_zero<filling_error>(girth, "the girth of a tube");
    detail::require_weight(cube);
    const fraction g = girth.value();
    const length<Unit> filled = rounded(pi() * estimate(4 * weight / (cube * g * g)), step, rounding::down);
    if (filled.value() == 0)
        detail::refuse<filling_error>(
            {"a filling that weighs ", weight, " fills less than ", step, " of a tube ", girth, " round"},
            {.kind = fault::too_small, .what = "the weight of a filling", .given = weight});
    return filled;
}

template <length_unit Unit>
struct loose_filling {
    stuffed_tube<Unit> tube;
    fraction cube;     ///< what a cube of the unit weighs of it, in ounces or in grams
    length<Unit> step; ///< that the thickness is rounded to
};

} // namespace turncloth

#endif
