// Webbing: rings spliced of one length, loops sewn through both ends, and ends that are folded under.
//
//   splice_length(round, lap)                a ring whose ends lie over each other by `lap`: what to cut, a figure
//   spliced_round(cut, lap)                  the same backwards;  free_of_splice(cut, lap)  between the two laid-over ends
//   loop_inside(cut, {.row, .under})         a length doubled, sewn across at `row` from its ends: once round the inside
//   loop_cut(inside, ends)                   backwards: what to cut, a figure
//   loop_flat(cut, ends)                     how long such a loop lies, from its fold to its ends
//   webbing_loops<U>{stands, sewn, under}    loops on an edge: loop_on_edge(l) what to cut of each, a figure
//   webbing_error                            webbing that its own ends use up, and why
//
//   static_assert(spliced_round(30_in, 3_in) == 27_in && free_of_splice(30_in, 3_in) == 24_in);
//
// By a strip of paper. Ends laid over each other lie twice on the ring, so once too often: it is shorter by the lap. Doubled, it
// goes out and back: a loop is twice as long as it lies, and its inside ends at the row, on either half. What is folded under
// at an end lies on itself, so it is cut besides, once for each end.
#ifndef TURNCLOTH_NOTIONS_WEBBING_HPP
#define TURNCLOTH_NOTIONS_WEBBING_HPP

#include <turncloth/measure/working.hpp>
#include <turncloth/notions/error.hpp>

namespace turncloth {

/// Webbing that makes no loop.
class webbing_error : public notion_error {
public:
    using notion_error::notion_error;
};

template <length_unit Unit>
constexpr figure<Unit> splice_length(length<Unit> round, length<Unit> lap) {
    require_more_than_zero<webbing_error>(lap, "the lap of a splice");
    if (round <= lap)
        detail::refuse<webbing_error>({"a ring ", round, " round has no room for a lap of ", lap},
                                      {.kind = fault::too_small, .what = "a ring", .given = round, .least = lap});
    return figure<Unit>().plus(round, "round").plus(lap, "lap");
}

namespace detail {

template <length_unit Unit>
constexpr void require_to_splice(length<Unit> cut, length<Unit> lap) {
    require_more_than_zero<webbing_error>(lap, "the lap of a splice");
    if (cut <= lap * 2)
        refuse<webbing_error>(
            {"webbing cut ", cut, " is used up by a lap of ", lap, ", which takes it at both ends"},
            {.kind = fault::too_small, .what = "the cut length of webbing", .given = cut, .least = lap * 2});
}

} // namespace detail

/// Throws webbing_error where the lap takes all of it.
template <length_unit Unit>
constexpr length<Unit> spliced_round(length<Unit> cut, length<Unit> lap) {
    detail::require_to_splice(cut, lap);
    return cut - lap;
}
/// Of one thickness.
template <length_unit Unit>
constexpr length<Unit> free_of_splice(length<Unit> cut, length<Unit> lap) {
    detail::require_to_splice(cut, lap);
    return cut - lap * 2;
}

/// The ends of a doubled length, one on the other.
template <length_unit Unit>
struct doubled_ends {
    length<Unit> row;        ///< across both, from where they end as they lie
    length<Unit> under = {}; ///< folded under at each
};

namespace detail {

template <length_unit Unit>
constexpr void require_sound(const doubled_ends<Unit>& e) {
    require_more_than_zero<webbing_error>(e.row, "the distance of a row from the ends of a loop");
    require_not_negative<webbing_error>(e.under, "what is folded under at an end of webbing");
}
template <length_unit Unit>
constexpr void require_loop(length<Unit> cut, const doubled_ends<Unit>& e) {
    require_sound(e);
    const length<Unit> taken = (e.row + e.under) * 2;
    if (cut <= taken)
        refuse<webbing_error>(
            {"webbing cut ", cut, " makes no loop: its ends take ", taken},
            {.kind = fault::too_small, .what = "the cut length of webbing", .given = cut, .least = taken});
}

} // namespace detail

template <length_unit Unit>
constexpr figure<Unit> loop_cut(length<Unit> inside, const doubled_ends<Unit>& e) {
    require_more_than_zero<webbing_error>(inside, "the inside of a loop");
    detail::require_sound(e);
    figure<Unit> f;
    f.plus(inside, "round the inside").plus_times(2, {e.row}, "to the row");
    return f.plus_any(2, e.under, "folded under");
}
/// Throws webbing_error for a length that its ends use up.
template <length_unit Unit>
constexpr length<Unit> loop_inside(length<Unit> cut, const doubled_ends<Unit>& e) {
    detail::require_loop(cut, e);
    return cut - (e.row + e.under) * 2;
}
template <length_unit Unit>
constexpr length<Unit> loop_flat(length<Unit> cut, const doubled_ends<Unit>& e) {
    detail::require_loop(cut, e);
    return cut / 2 - e.under;
}

/// Doubled, both ends sewn down one on the other at an edge.
template <length_unit Unit>
struct webbing_loops {
    length<Unit> stands;     ///< out beyond the edge, as it lies flat
    length<Unit> sewn;       ///< down on what it hangs from, below that edge
    length<Unit> under = {}; ///< folded under at each end
};

template <length_unit Unit>
constexpr figure<Unit> loop_on_edge(const webbing_loops<Unit>& l) {
    require_more_than_zero<webbing_error>(l.stands, "what stands out of a loop");
    require_more_than_zero<webbing_error>(l.sewn, "what is sewn down of a loop");
    require_not_negative<webbing_error>(l.under, "what is folded under at an end of webbing");
    if (l.under > l.sewn)
        detail::refuse<webbing_error>(
            {"what is folded under at the end of a loop, ", l.under, ", goes on beyond what is sewn down, ", l.sewn},
            {.kind = fault::too_large,
             .what = "what is folded under at an end of webbing",
             .given = l.under,
             .most = l.sewn});
    figure<Unit> f;
    f.plus_times(2, {l.stands}, "standing out").plus_times(2, {l.sewn}, "sewn down");
    return f.plus_any(2, l.under, "folded under");
}

} // namespace turncloth

#endif
