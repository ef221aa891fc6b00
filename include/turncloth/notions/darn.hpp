// A darn, thread by thread: how many rows each way, how far apart, and what thread they take.
//
//   darn<U>{worn, reach, apart, loop}        what is thin or gone, and how it is filled
//   apart_by_threads(threads, over, every)   the distance of rows that follow every so many threads of the cloth
//   darn_down(d)  darn_across(d)             the rows of one way: darn_rows<U>, with count, apart and each
//   row_thread(rows, loop)                   what they take, a figure
//   needlefuls_for(rows, loop, {.cut, .tail})       how many rows a needleful makes, how many needlefuls, and their thread
//   darn_error                               what cannot be darned so, and why
//
//   constexpr darn<inch> d{.worn = {2_in, 1_in}, .reach = "1/2"_in, .apart = "1/8"_in};
//   static_assert(darn_down(d).count == 25 && darn_down(d).each == 2_in);
//
// By pencil on squared paper. Rows begin and end beyond what is worn, in sound cloth, so each is twice that reach longer. Rows at
// both sides of a span are one more than the spaces between them, and those are as many as keep rows no further apart than asked.
// One thread goes down and comes back: between two rows it goes once across their space, and leaves a loop for what it shrinks.
#ifndef TURNCLOTH_NOTIONS_DARN_HPP
#define TURNCLOTH_NOTIONS_DARN_HPP

#include <turncloth/measure/working.hpp>
#include <turncloth/notions/error.hpp>
#include <turncloth/panel/size.hpp>

#include <cstdint>

namespace turncloth {

/// A darn that cannot be made.
class darn_error : public notion_error {
public:
    using notion_error::notion_error;
};

template <length_unit Unit>
struct darn {
    finished_size<Unit> worn;
    length<Unit> reach;     ///< beyond it into sound cloth, on every side
    length<Unit> apart;     ///< from row to row, at most
    length<Unit> loop = {}; ///< left at each turn
};

/// Cloth that counts `threads` over a length, a row at `every` so many of them.
template <length_unit Unit>
constexpr length<Unit> apart_by_threads(std::int64_t threads, length<Unit> over, std::int64_t every) {
    require_more_than_zero<darn_error>(over, "the length that threads are counted over");
    require_at_least<darn_error>(threads, std::int64_t{1}, "the number of threads");
    require_at_least<darn_error>(every, std::int64_t{1}, "the number of threads from row to row");
    return over * fraction(every) / fraction(threads);
}

/// Rows side by side.
template <length_unit Unit>
struct darn_rows {
    std::int64_t count;
    length<Unit> apart; ///< from one to the next, exact: they fill their span
    length<Unit> each;  ///< how long
};

namespace detail {

template <length_unit Unit>
constexpr darn_rows<Unit> darn_one_way(const darn<Unit>& d, length<Unit> side, length<Unit> along) {
    require_more_than_zero<darn_error>(d.reach, "the reach of a darn");
    require_more_than_zero<darn_error>(d.apart, "the distance of two rows");
    require_not_negative<darn_error>(d.loop, "the loop at a turn");
    const length<Unit> span = side + d.reach * 2;
    if (d.apart > side)
        refuse<darn_error>(
            {"rows ", d.apart, " apart do not fill what is worn ", side, " across"},
            {.kind = fault::too_large, .what = "the distance of two rows", .given = d.apart, .most = side});
    const std::int64_t spaces = ceil(ratio_of(span, d.apart));
    return {numerator(fraction(spaces) + 1), span / fraction(spaces), along + d.reach * 2};
}

} // namespace detail

/// Those that run down, side by side across what is worn. Throws darn_error for rows further apart than that is wide.
template <length_unit Unit>
constexpr darn_rows<Unit> darn_down(const darn<Unit>& d) {
    return detail::darn_one_way(d, d.worn.width(), d.worn.height());
}
template <length_unit Unit>
constexpr darn_rows<Unit> darn_across(const darn<Unit>& d) {
    return detail::darn_one_way(d, d.worn.height(), d.worn.width());
}

template <length_unit Unit>
constexpr figure<Unit> row_thread(const darn_rows<Unit>& rows, length<Unit> loop) {
    require_at_least<darn_error>(rows.count, std::int64_t{1}, "the number of rows");
    require_not_negative<darn_error>(loop, "the loop at a turn");
    figure<Unit> f;
    f.plus_times(rows.count, {rows.each}, "row of thread");
    if (rows.count > 1)
        f.plus_times(fraction(rows.count) - 1, {rows.apart}, "to the next row")
            .plus_any(fraction(rows.count) - 1, loop, "loop");
    return f;
}

/// A thread as long as is cut, and what each of its ends takes beyond its rows, as no knot is made.
template <length_unit Unit>
struct needleful {
    length<Unit> cut;
    length<Unit> tail;
};

template <length_unit Unit>
struct needlefuls {
    std::int64_t rows; ///< that one makes; the last makes what is left
    std::int64_t count;
    length<Unit> thread; ///< of all together, as they are cut
};

/// Throws darn_error for one that does not make a row.
template <length_unit Unit>
constexpr needlefuls<Unit> needlefuls_for(const darn_rows<Unit>& rows, length<Unit> loop, const needleful<Unit>& n) {
    require_not_negative<darn_error>(n.tail, "the end of a needleful");
    require_at_least<darn_error>(rows.count, std::int64_t{1}, "the number of rows");
    require_not_negative<darn_error>(loop, "the loop at a turn");
    const length<Unit> least = rows.each + n.tail * 2, turn = rows.apart + loop;
    if (n.cut < least)
        detail::refuse<darn_error>(
            {"a needleful of ", n.cut, " does not make one row of ", rows.each, " with ends of ", n.tail},
            {.kind = fault::too_small, .what = "a needleful", .given = n.cut, .least = least});
    const std::int64_t made = floor(ratio_of(n.cut - n.tail * 2 + turn, rows.each + turn));
    const std::int64_t count = ceil(fraction(rows.count) / fraction(made));
    return {made, count, n.cut * fraction(count)};
}

} // namespace turncloth

#endif
