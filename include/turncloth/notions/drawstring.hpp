// Cords and elastic that draw up a casing round a mouth: how much to cut, and how far a cord then hangs out.
//
//   round_flat(width)                        once round the mouth of a bag that lies flat, its finished width there and back
//   cord_length(round, {.beyond, .knot})     one cord, once round and out where it went in: a figure
//   round_of_cord(cut, ends)                 the mouth that such a cord goes round
//   loop_drawn(round, closed, ends)          the loop that hangs out when the mouth is drawn up to `closed` round
//   round_for_loop(loop, closed, ends)       backwards: the largest mouth whose cord hangs out no further
//   elastic_length(round, {.stretch, .ease, .overlap})    what to cut of an elastic, a figure
//   stretched_to(cut, elastic)               how far it opens; fullness_of(round, elastic) casing over elastic at rest
//   channel_for(flat, ease)                  between the rows of a casing, for what lies flat in it
//   drawstring_error                         what does not go round, does not draw up, or hangs out too far
//
//   static_assert(cord_length<inch>(round_flat(12_in), {.beyond = 1_in}).value() == 26_in);
//
// Both ways: two cords, one in and out at each side; each goes once round, so either end draws all of the mouth. An elastic is
// cut so short that the mouth opens right out at the stretch that its maker states, and no shorter.
#ifndef TURNCLOTH_NOTIONS_DRAWSTRING_HPP
#define TURNCLOTH_NOTIONS_DRAWSTRING_HPP

#include <turncloth/measure/working.hpp>
#include <turncloth/notions/error.hpp>

namespace turncloth {

/// A cord or an elastic that does not do.
class drawstring_error : public notion_error {
public:
    using notion_error::notion_error;
};

template <length_unit Unit>
constexpr length<Unit> round_flat(length<Unit> width) {
    require_more_than_zero<drawstring_error>(width, "the width of a mouth");
    return width * 2;
}

/// What a cord has beyond its way round.
template <length_unit Unit>
struct cord_ends {
    length<Unit> beyond;    ///< each of its two ends, out of the casing, as the mouth lies open
    length<Unit> knot = {}; ///< in the knot that joins them: tie one, mark it, and measure
};

namespace detail {

template <length_unit Unit>
constexpr void require_sound(const cord_ends<Unit>& ends) {
    require_more_than_zero<drawstring_error>(ends.beyond, "the end of a cord beyond its casing");
    require_not_negative<drawstring_error>(ends.knot, "the cord in a knot");
}

} // namespace detail

template <length_unit Unit>
constexpr figure<Unit> cord_length(length<Unit> round, const cord_ends<Unit>& ends) {
    require_more_than_zero<drawstring_error>(round, "the way round a mouth");
    detail::require_sound(ends);
    figure<Unit> f;
    f.plus(round, "round the mouth").plus_times(2, {ends.beyond}, "end beyond the casing");
    return f.plus_any(1, ends.knot, "knot");
}

/// Throws drawstring_error for a cord that its ends use up.
template <length_unit Unit>
constexpr length<Unit> round_of_cord(length<Unit> cut, const cord_ends<Unit>& ends) {
    detail::require_sound(ends);
    const length<Unit> taken = ends.beyond * 2 + ends.knot;
    if (cut <= taken)
        detail::refuse<drawstring_error>(
            {"a cord of ", cut, " goes round nothing: its ends and its knot take ", taken},
            {.kind = fault::too_small, .what = "the length of a cord", .given = cut, .least = taken});
    return cut - taken;
}

/// The loop that its two ends make with the knot, all round it: what went round the mouth and no longer does, and both ends.
template <length_unit Unit>
constexpr length<Unit> loop_drawn(length<Unit> round, length<Unit> closed, const cord_ends<Unit>& ends) {
    require_more_than_zero<drawstring_error>(round, "the way round a mouth");
    detail::require_sound(ends);
    require_between<drawstring_error>(length<Unit>(), closed, round, "what a mouth is drawn up to",
                                      "the way round it as it lies open");
    return round - closed + ends.beyond * 2;
}

/// Throws drawstring_error where the ends alone hang out further than that, even as the mouth lies open.
template <length_unit Unit>
constexpr length<Unit> round_for_loop(length<Unit> loop, length<Unit> closed, const cord_ends<Unit>& ends) {
    detail::require_sound(ends);
    require_not_negative<drawstring_error>(closed, "what a mouth is drawn up to");
    if (loop < ends.beyond * 2)
        detail::refuse<drawstring_error>(
            {"a loop of ", loop, " is used up by its two ends, which have ", ends.beyond,
             " each beyond the casing as the mouth lies open"},
            {.kind = fault::too_small, .what = "the loop of a cord", .given = loop, .least = ends.beyond * 2});
    return loop - ends.beyond * 2 + closed;
}

/// An elastic in a casing.
template <length_unit Unit>
struct elastic {
    fraction stretch;          ///< so many times its own length at the most, as its maker states
    length<Unit> ease = {};    ///< longer, so that it need not be stretched to the most
    length<Unit> overlap = {}; ///< of its two ends, sewn one on the other
};

namespace detail {

template <length_unit Unit>
constexpr void require_sound(const elastic<Unit>& e) {
    if (e.stretch <= 1)
        refuse<drawstring_error>(
            {"an elastic that stretches to ", e.stretch, " of its length does not stretch"},
            {.kind = fault::too_small, .what = "the stretch of an elastic", .given = e.stretch, .least = fraction(1)});
    require_not_negative<drawstring_error>(e.ease, "the ease of an elastic");
    require_not_negative<drawstring_error>(e.overlap, "the overlap of an elastic's ends");
}

/// As it lies joined, and draws at nothing.
template <length_unit Unit>
constexpr length<Unit> at_rest(length<Unit> round, const elastic<Unit>& e) {
    require_more_than_zero<drawstring_error>(round, "the way round a mouth");
    require_sound(e);
    const length<Unit> rest = round / e.stretch + e.ease;
    if (rest >= round)
        refuse<drawstring_error>({"an elastic of ", rest, " does not draw up a mouth of ", round, ": its ease of ",
                                  e.ease, " leaves it slack"},
                                 {.kind = fault::too_large,
                                  .what = "the ease of an elastic",
                                  .given = e.ease,
                                  .most = round - round / e.stretch});
    return rest;
}

} // namespace detail

/// Exact; it is rounded up to where the scissors can cut, never down, as it would not open out.
template <length_unit Unit>
constexpr figure<Unit> elastic_length(length<Unit> round, const elastic<Unit>& e) {
    static_cast<void>(detail::at_rest(round, e));
    figure<Unit> f;
    f.plus_times(fraction(1) / e.stretch, {round}, "round the mouth");
    return f.plus_any(1, e.ease, "ease").plus_any(1, e.overlap, "overlap");
}

/// Its ends overlapped, and stretched to the most. Throws drawstring_error for one that its overlap uses up.
template <length_unit Unit>
constexpr length<Unit> stretched_to(length<Unit> cut, const elastic<Unit>& e) {
    detail::require_sound(e);
    if (cut <= e.overlap)
        detail::refuse<drawstring_error>(
            {"an elastic cut ", cut, " is used up by the overlap of its ends, ", e.overlap},
            {.kind = fault::too_small, .what = "the cut length of an elastic", .given = cut, .least = e.overlap});
    return (cut - e.overlap) * e.stretch;
}

template <length_unit Unit>
constexpr fraction fullness_of(length<Unit> round, const elastic<Unit>& e) {
    return ratio_of(round, detail::at_rest(round, e));
}

/// A casing at least a quarter inch wider than what runs in it is common practice (Oregon State University Extension, 4-H
/// 320-36, Casings).
template <length_unit Unit>
constexpr length<Unit> channel_for(length<Unit> flat, length<Unit> ease) {
    require_more_than_zero<drawstring_error>(flat, "the width of what runs in a casing");
    require_more_than_zero<drawstring_error>(ease, "the ease of a casing");
    return flat + ease;
}

/// Cords alike, one in and out at a place each.
template <length_unit Unit>
struct drawstrings {
    length<Unit> round; ///< the mouth, as it lies open
    cord_ends<Unit> ends;
    length<Unit> closed; ///< to which the cloth lets itself be drawn up: gather it in the hand, and measure round it
};

} // namespace turncloth

#endif
