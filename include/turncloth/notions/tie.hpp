// Ribbon for ties, and how thick a roll is that a tie must go round.
//
//   ribbon_tie<U>{across, from, to, loop, free_at_start, free_at_end, turned}   sewn on across a piece of any size
//     ribbon_working(t)  ribbon(t)                 what to cut, with what it is the sum of
//     where_sewn(t)  marks_on_ribbon(t)            places on the piece; places on the ribbon
//   rolled<U>{strip, thickness, core_diameter}     a strip or stack rolled up, round a core or round nothing
//     roll_diameter(r, step, rounding)  roll_girth(r, step, rounding)  across it and round it
//   tied_bow<U>{loop, tail, knot}   tie_round(girth, times, bow, {.ease, .turned})   ribbon round a roll, tied in a bow
//   waist_tie<U>{waist, casing, bow, turned, hold}   round a wearer, through a casing at the waist
//     waist_tie_length(t)  ends_beyond(tie, casing, hold)   what to cut; how far it comes out at either end
//   tie_error                                      what cannot be tied, and why
//
//   constexpr ribbon_tie<inch> t{12_in, {1, 4}, 1, "1 1/2"_in, {}, 3_in, "1/4"_in};
//   static_assert(ribbon(t) == "15 1/2"_in); // 9 in run, 2 x 1 1/2 in loop, 3 in free end, 2 x 1/4 in turned under
#ifndef TURNCLOTH_NOTIONS_TIE_HPP
#define TURNCLOTH_NOTIONS_TIE_HPP

#include <turncloth/measure/estimate.hpp>
#include <turncloth/measure/place.hpp>
#include <turncloth/measure/working.hpp>
#include <turncloth/notions/error.hpp>
#include <turncloth/panel/finish.hpp>

#include <cstdint>
#include <string>

namespace turncloth {

/// Datum: the end of a ribbon as it was cut off, where its loop or its first free end is.
struct ribbon_end {};

/// A tie that cannot be made.
class tie_error : public notion_error {
public:
    using notion_error::notion_error;
};

/// A ribbon sewn across a piece from one fraction of its finished length to another. It starts with a loop or with a
/// free end or with neither, and goes on beyond the run as a free end.
template <length_unit Unit>
struct ribbon_tie {
    length<Unit> across;        ///< the finished length that the ribbon lies along
    fraction from = 0;          ///< where the sewn run starts: {1, 4} is the quarter mark
    fraction to = 1;            ///< where it ends: 1 is the opposite edge; equal to `from` for a tie sewn at one line
    length<Unit> loop;          ///< how far the loop stands out from where the run starts; zero for none
    length<Unit> free_at_start; ///< zero for none
    length<Unit> free_at_end;   ///< zero for none
    length<Unit> turned;        ///< turned under at each of the two cut ends; zero for ends that are sealed
};

namespace detail {

template <length_unit Unit>
constexpr void require_sound(const ribbon_tie<Unit>& t) {
    require_more_than_zero<tie_error>(t.across, "the length that a ribbon lies along");
    require_not_negative<tie_error>(t.loop, "the loop of a tie");
    require_not_negative<tie_error>(t.free_at_start, "the free end at the start of a tie");
    require_not_negative<tie_error>(t.free_at_end, "the free end of a tie");
    require_not_negative<tie_error>(t.turned, "what is turned under at a ribbon's end");
    require_between<tie_error>(fraction(0), t.to, fraction(1), "where a ribbon's run ends",
                               "as a fraction of the length");
    require_between<tie_error>(fraction(0), t.from, t.to, "where a ribbon's run starts", "which is where it ends");
    if (t.loop.value() > 0 && t.free_at_start.value() > 0)
        refuse<tie_error>(
            {"a ribbon starts with a loop or with a free end, not both: they were ", t.loop, " and ", t.free_at_start},
            {.kind = fault::unsuitable,
             .what = "the free end at the start of a tie",
             .given = t.free_at_start,
             .most = length<Unit>()});
}

} // namespace detail

/// The ribbon to cut. Throws tie_error for a negative part, fractions out of order, or a ribbon of nothing.
template <length_unit Unit>
constexpr figure<Unit> ribbon_working(const ribbon_tie<Unit>& t) {
    detail::require_sound(t);
    figure<Unit> f;
    if (t.to > t.from)
        f.plus_times(t.to - t.from, {t.across}, "run");
    f.plus_any(2, t.loop, "loop");
    f.plus_any(1, t.free_at_start, "free end at the start");
    f.plus_any(1, t.free_at_end, "free end");
    if (f.terms().empty())
        detail::refuse<tie_error>({"a tie needs a run, a loop or a free end: all were nothing"},
                                  {.kind = fault::missing, .what = "a run, a loop or a free end"});
    f.plus_any(2, t.turned, "turned under");
    return f;
}

template <length_unit Unit>
constexpr length<Unit> ribbon(const ribbon_tie<Unit>& t) {
    return ribbon_working(t).value();
}

/// On the piece, from its finished edge at the tie's start. Places before the edge are below zero.
template <length_unit Unit>
struct tie_on_piece {
    place<finished_edge, Unit> reaches_from; ///< where the loop or the free end at the start comes to
    place<finished_edge, Unit> sewn_from, sewn_to;
    place<finished_edge, Unit> reaches_to; ///< where the free end comes to
};

template <length_unit Unit>
constexpr tie_on_piece<Unit> where_sewn(const ribbon_tie<Unit>& t) {
    detail::require_sound(t);
    const auto from = at<finished_edge>(t.across * t.from), to = at<finished_edge>(t.across * t.to);
    return {from - t.loop - t.free_at_start, from, to, to + t.free_at_end};
}

/// On the ribbon, lying flat, from its cut end.
template <length_unit Unit>
struct tie_on_ribbon {
    place<ribbon_end, Unit> turned_at;      ///< the crease of the first turned end
    place<ribbon_end, Unit> loop_folded_at; ///< the far end of the loop
    place<ribbon_end, Unit> sewn_from;      ///< brought to where the run starts; the loop closes here
    place<ribbon_end, Unit> sewn_to;
    place<ribbon_end, Unit> other_turned_at; ///< the crease of the other turned end
};

template <length_unit Unit>
constexpr tie_on_ribbon<Unit> marks_on_ribbon(const ribbon_tie<Unit>& t) {
    detail::require_sound(t);
    const auto turned = at<ribbon_end>(t.turned);
    const auto from = turned + t.loop * 2 + t.free_at_start;
    const auto to = from + t.across * (t.to - t.from);
    return {turned, turned + t.loop, from, to, to + t.free_at_end};
}

/// A strip, or a stack of layers counted as one thickness, rolled up tightly.
template <length_unit Unit>
struct rolled {
    length<Unit> strip; ///< its length
    length<Unit> thickness;
    length<Unit> core_diameter = {}; ///< of what it is rolled round; zero for nothing
};

namespace detail {

/// Half of what a roll measures across. The model: the area of its section is kept, so R^2 = r^2 + length * thickness /
/// pi on a core of radius r.
///
/// What the model leaves out. A line at that rate of growth, an Archimedean spiral from r outward with a = thickness /
/// 2 pi, is longer than its circles, and reaches the same length at a radius S with R^2 - S^2 = 2 (integral from r to S
/// of sqrt(u^2 + a^2) - u) <= a^2 (1/2 + asinh(S / a)). As R >= thickness, R - S is below thickness / 25. The cloth
/// itself lies half its thickness to each side of such a line that starts at r + thickness / 2; its very end stands out
/// furthest, and no more than one thickness beyond R.
///
/// Throws tie_error for a length or thickness of nothing, a negative core, or a strip that does not go round once (a
/// length below pi (core_diameter + thickness)).
template <length_unit Unit>
constexpr estimate roll_radius_of(const rolled<Unit>& r) {
    require_more_than_zero<tie_error>(r.strip, "the length that is rolled up");
    require_more_than_zero<tie_error>(r.thickness, "the thickness that is rolled up");
    require_not_negative<tie_error>(r.core_diameter, "the diameter of a roll's core");
    if (const length<Unit> once = (r.core_diameter + r.thickness) * detail::pi_above; r.strip < once)
        detail::refuse<tie_error>(
            {"a length of ", r.strip, " does not go once round a core ", r.core_diameter, " across at a thickness of ",
             r.thickness},
            {.kind = fault::too_small, .what = "the length that is rolled up", .given = r.strip, .least = once});
    const fraction radius = r.core_diameter.value() / 2;
    const estimate kept = estimate(r.strip.value() * r.thickness.value()) * inverse_pi();
    return square_root(estimate(radius * radius) + kept);
}

} // namespace detail

/// Across the roll. Throws tie_error for a length or thickness of nothing, a negative core, or a strip that does not go
/// round once, and undecided_error; so does the next.
template <length_unit Unit>
constexpr length<Unit> roll_diameter(const rolled<Unit>& r, length<Unit> step, rounding wanted) {
    return rounded(detail::roll_radius_of(r) * estimate(2), step, wanted);
}

/// Once round the roll.
template <length_unit Unit>
constexpr length<Unit> roll_girth(const rolled<Unit>& r, length<Unit> step, rounding wanted) {
    return rounded(detail::roll_radius_of(r) * pi() * estimate(2), step, wanted);
}

/// A bow of two loops and two tails, measured as it lies when tied.
template <length_unit Unit>
struct tied_bow {
    length<Unit> loop; ///< from the knot to the end of the loop
    length<Unit> tail; ///< from the knot to the end
    length<Unit> knot; ///< ribbon in the knot: tie one, mark it, and measure
};

/// What a tie takes beside its way round and its bow.
template <length_unit Unit>
struct tie_extra {
    length<Unit> ease = {};   ///< to get a finger under
    length<Unit> turned = {}; ///< turned under at each of the two cut ends
};

/// Ribbon that goes `times` round a girth and is tied in a bow. Throws tie_error
/// for less than once, a girth of nothing, or a negative part.
template <length_unit Unit>
constexpr figure<Unit> tie_round(length<Unit> girth, std::int64_t times, const tied_bow<Unit>& bow,
                                 const tie_extra<Unit>& extra) {
    require_more_than_zero<tie_error>(girth, "the girth that a tie goes round");
    require_at_least<tie_error>(times, std::int64_t{1}, "how often a tie goes round");
    require_not_negative<tie_error>(bow.loop, "the loop of a bow");
    require_not_negative<tie_error>(bow.tail, "the tail of a bow");
    require_not_negative<tie_error>(bow.knot, "the ribbon in a knot");
    require_not_negative<tie_error>(extra.ease, "the ease of a tie");
    require_not_negative<tie_error>(extra.turned, "what is turned under at a ribbon's end");
    figure<Unit> f;
    f.plus_times(times, {girth}, "round");
    f.plus_any(4, bow.loop, "loops, there and back");
    f.plus_any(2, bow.tail, "tails");
    f.plus_any(1, bow.knot, "knot");
    f.plus_any(1, extra.ease, "ease");
    f.plus_any(2, extra.turned, "turned under");
    return f;
}

/// Of an apron: it runs through the casing, on round whoever wears it, and is tied where its ends meet.
template <length_unit Unit>
struct waist_tie {
    length<Unit> waist;  ///< the largest that it is for
    length<Unit> casing; ///< from end to end: the finished width of what hangs on it
    tied_bow<Unit> bow;
    length<Unit> turned = {}; ///< under at each of its two cut ends
    length<Unit> hold;        ///< of either end, beyond the casing, to take hold of: shorter, it slips in
};

/// At either end alike, as it lies drawn through. Throws tie_error for a tie that does not come out so far.
template <length_unit Unit>
constexpr length<Unit> ends_beyond(length<Unit> tie, length<Unit> casing, length<Unit> hold) {
    require_more_than_zero<tie_error>(casing, "the length of a casing");
    require_more_than_zero<tie_error>(hold, "the end of a tie beyond its casing");
    if (const length<Unit> least = casing + hold * 2; tie < least)
        detail::refuse<tie_error>(
            {"a tie of ", tie, " is too short for a casing of ", casing, ": with ", hold,
             " to hold at either end it is ", least},
            {.kind = fault::too_small, .what = "the length of a tie", .given = tie, .least = least});
    return (tie - casing) / 2;
}

/// Throws tie_error for a casing that goes round the waist, for a tie too short for its casing, and as tie_round.
template <length_unit Unit>
constexpr figure<Unit> waist_tie_length(const waist_tie<Unit>& t) {
    figure<Unit> cut = tie_round<Unit>(t.waist, 1, t.bow, {.turned = t.turned});
    if (t.casing >= t.waist)
        detail::refuse<tie_error>(
            {"a casing of ", t.casing, " goes all round a waist of ", t.waist, " and leaves nothing to tie"},
            {.kind = fault::too_large, .what = "the length of a casing", .given = t.casing, .most = t.waist});
    static_cast<void>(ends_beyond(cut.value() - t.turned * 2, t.casing, t.hold));
    return cut;
}

} // namespace turncloth

#endif
