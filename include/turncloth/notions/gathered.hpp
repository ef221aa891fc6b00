// A mouth gathered into a neck, as of a sack that is tied up: once round the neck, and the tie that must reach round it.
//
//   gathered_neck<U>{round, thickness, packed}     the way round the mouth as it lies open; of the cloth; how close it lies
//   neck_girth(neck, step, rounding)               once round it where it is drawn together in the hand
//   round_for_neck(girth, {.thickness, .packed}, step, rounding)    the mouth that makes so thick a neck
//   neck_tie<U>{girth, bow, extra}  tie_working(tie)    the ribbon that goes round it once, a figure: tie_round (tie.hpp)
//   girth_reached(cut, bow, extra)                 backwards, what a tie that is cut already goes round
//   require_reaches(tie, cut)                      refuses a tie that is cut too short for this neck
//   gathering_error                                what cannot be gathered, and why
//
//   constexpr gathered_neck<inch> sack{20_in, "1/32"_in, {1, 2}};
//   static_assert(neck_girth(sack, "1/8"_in, rounding::up) == 4_in); // 2 x the root of pi x 20 x 1/32 / (1/2) = 3.963 in
//
// By paper. Gather a strip round with its folds lying close, and cut across it: the cut shows as much cloth as the strip's own
// edge does, round x thickness, with air between the folds. Where the cloth is `packed` of the whole, 1/2 say, the neck is a
// circle of round x thickness / packed, and its girth twice the root of pi times that. How close cloth lies depends on the cloth
// and on the hand. Common practice: cotton drawn together by hand is about half air; drawn together on a scrap, and a thread laid
// round, it is known. A neck that is filled, or tied lower down where the sack is wider, is thicker.
#ifndef TURNCLOTH_NOTIONS_GATHERED_HPP
#define TURNCLOTH_NOTIONS_GATHERED_HPP

#include <turncloth/measure/estimate.hpp>
#include <turncloth/notions/tie.hpp>

namespace turncloth {

/// Cloth that cannot be gathered so.
class gathering_error : public notion_error {
public:
    using notion_error::notion_error;
};

template <length_unit Unit>
struct gathered_cloth {
    length<Unit> thickness; ///< of one layer
    fraction packed;        ///< the part of the neck that is cloth, the rest being air: more than 0, at most 1
};

template <length_unit Unit>
struct gathered_neck {
    length<Unit> round; ///< once round the mouth, as it lies open
    length<Unit> thickness;
    fraction packed;
};

namespace detail {

template <length_unit Unit>
constexpr void require_sound(const gathered_cloth<Unit>& c) {
    require_more_than_zero<gathering_error>(c.thickness, "the thickness of gathered cloth");
    require_more_than_zero<gathering_error>(c.packed, "the part of a neck that is cloth");
    require_at_most<gathering_error>(c.packed, fraction(1), "the part of a neck that is cloth");
}

/// Of cloth that goes round less than that no fold closes up: its neck would be wider than its mouth. With g = 2 sqrt(pi r t / p)
/// it is less than r just where r is more than 4 pi t / p.
template <length_unit Unit>
constexpr void require_gathers(length<Unit> round, const gathered_cloth<Unit>& c) {
    require_sound(c);
    require_more_than_zero<gathering_error>(round, "the way round a mouth");
    if (const length<Unit> least = c.thickness * 4 * pi_above / c.packed; round < least)
        refuse<gathering_error>(
            {"a mouth ", round, " round does not gather in cloth ", c.thickness, " thick"},
            {.kind = fault::too_small, .what = "the way round a mouth", .given = round, .least = least});
}

} // namespace detail

/// Throws gathering_error for cloth of no thickness, for a part that is not within 0 and 1, or for a mouth too narrow to be
/// gathered, and undecided_error; so does the next.
template <length_unit Unit>
constexpr length<Unit> neck_girth(const gathered_neck<Unit>& n, length<Unit> step, rounding wanted) {
    detail::require_gathers(n.round, gathered_cloth<Unit>{n.thickness, n.packed});
    const estimate section(4 * n.round.value() * n.thickness.value() / n.packed);
    return rounded(square_root(pi() * section), step, wanted);
}

/// Down, it makes a neck that a tie for that girth goes round.
template <length_unit Unit>
constexpr length<Unit> round_for_neck(length<Unit> girth, const gathered_cloth<Unit>& c, length<Unit> step,
                                      rounding wanted) {
    detail::require_sound(c);
    require_more_than_zero<gathering_error>(girth, "the girth of a neck");
    const fraction g = girth.value();
    const length<Unit> round =
        rounded(inverse_pi() * estimate(g * g * c.packed / (4 * c.thickness.value())), step, wanted);
    detail::require_gathers(round, c);
    return round;
}

/// A tie that goes once round a neck and is tied in a bow.
template <length_unit Unit>
struct neck_tie {
    length<Unit> girth; ///< of the neck
    tied_bow<Unit> bow;
    tie_extra<Unit> extra = {};
};

/// Throws as tie_round.
template <length_unit Unit>
constexpr figure<Unit> tie_working(const neck_tie<Unit>& t) {
    return tie_round(t.girth, 1, t.bow, t.extra);
}

/// Throws tie_error where its bow and its ends use the tie up, and as tie_round.
template <length_unit Unit>
constexpr length<Unit> girth_reached(length<Unit> cut, const tied_bow<Unit>& bow, const tie_extra<Unit>& extra) {
    const length<Unit> once = length_of<Unit>(1), taken = tie_round(once, 1, bow, extra).value() - once;
    if (cut <= taken)
        detail::refuse<tie_error>(
            {"a tie of ", cut, " reaches round nothing: its bow and its ends take ", taken},
            {.kind = fault::too_small, .what = "the length of a tie", .given = cut, .least = taken});
    return cut - taken;
}

/// Throws tie_error where a tie of that length does not go round the neck and leave its bow.
template <length_unit Unit>
constexpr void require_reaches(const neck_tie<Unit>& t, length<Unit> cut) {
    if (const length<Unit> needed = tie_working(t).value(); cut < needed)
        detail::refuse<tie_error>(
            {"a tie of ", cut, " does not reach: round a neck of ", t.girth, ", with its bow, it takes ", needed},
            {.kind = fault::too_small, .what = "the length of a tie", .given = cut, .least = needed});
}

} // namespace turncloth

#endif
