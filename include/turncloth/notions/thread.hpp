// Thread: how much a length of seam takes, by its stitch.
//
//   stitch_type{number, name, ratio}    an ISO 4915 stitch type: thread used, over the length of the seam
//   stitch(301)                         one of those listed here; a ratio of your own is a stitch_type of your own
//   seam_run<U>{type, sewn, count, overrun}     seams sewn alike
//   seam_length(runs, number)           sewn with one type of stitch
//   thread_for(runs)  with_waste(l, part)  spools(l, on_one)
//   stitching_of(panel)                 all rows of stitching of a panel's own finishes
//   thread_error                        a stitch not listed, a length that is negative
//
//   const seam_run<inch> sides[] = {{stitch(301), 20_in, 4, "1/2"_in}};
//   thread_for<inch>(sides) == 210_in;   // 5/2 x 4 x (20 + 2 x 1/2)
//
// Ratios are round figures of the trade. Measured ones differ by a fifth and more with stitch length, thickness of the
// cloth and tension: sew a sample and put your own in where it matters.
#ifndef TURNCLOTH_NOTIONS_THREAD_HPP
#define TURNCLOTH_NOTIONS_THREAD_HPP

#include <turncloth/measure/working.hpp>
#include <turncloth/notions/refusal.hpp>
#include <turncloth/panel/panel.hpp>

#include <array>
#include <cstdint>
#include <span>
#include <string>
#include <string_view>

namespace turncloth {

/// Thread that cannot be worked out.
class thread_error : public notion_error {
public:
    using notion_error::notion_error;
};

/// A stitch, numbered as in ISO 4915. `ratio` is of all its threads together.
struct stitch_type {
    int number;
    std::string_view name;
    fraction ratio;
};

/// Ratios as tabulated after H. Carr and B. Latham, The Technology of Clothing Manufacture (value from memory). Types
/// for which circulating tables disagree are left out.
inline constexpr std::array<stitch_type, 10> stitch_types = {{
    {301, "lockstitch", {5, 2}},
    {401, "two-thread chainstitch", {11, 2}},
    {406, "two-needle covering chainstitch", 18},
    {503, "two-thread overedge", 12},
    {504, "three-thread overedge", 14},
    {512, "four-thread overedge", 18},
    {516, "five-thread overedge and chainstitch", 20},
    {602, "four-thread cover", 25},
    {605, "five-thread cover", 28},
    {606, "flat seaming cover", 32},
}};

namespace detail {

[[noreturn]] inline void stitch_is_not_listed(int number) {
    std::string known;
    for (const stitch_type& s : stitch_types)
        known.append(known.empty() ? "" : ", ").append(std::to_string(s.number));
    refuse<thread_error>("no thread ratio is listed for stitch type " + std::to_string(number) + ": there are " +
                         known);
}

} // namespace detail

/// The listed stitch of that number. Throws thread_error with the numbers there are.
constexpr const stitch_type& stitch(int number) {
    for (const stitch_type& s : stitch_types)
        if (s.number == number)
            return s;
    detail::stitch_is_not_listed(number);
}

/// Seams of one length, sewn with one stitch.
template <length_unit Unit>
struct seam_run {
    stitch_type type;
    length<Unit> sewn;
    std::int64_t count = 1;
    length<Unit> overrun; ///< sewn back over, or beyond, at each of its two ends
};

namespace detail {

template <length_unit Unit>
constexpr length<Unit> stitched(const seam_run<Unit>& r) {
    not_negative<thread_error>(r.sewn, "the length of a seam");
    not_negative<thread_error>(r.overrun, "what is sewn over at a seam's end");
    at_least<thread_error>(r.count, 0, "the number of seams");
    if (r.type.ratio < 1)
        refuse<thread_error>("a stitch takes at least the seam's own length of thread: the ratio was " +
                             to_text(r.type.ratio));
    return (r.sewn + r.overrun * 2) * r.count;
}

} // namespace detail

/// Of all the runs sewn with a stitch of this number, their ends with them.
template <length_unit Unit>
constexpr length<Unit> seam_length(std::span<const seam_run<Unit>> runs, int number) {
    length<Unit> sum;
    for (const seam_run<Unit>& r : runs)
        if (r.type.number == number)
            sum += detail::stitched(r);
    return sum;
}

/// Throws thread_error for a negative length or number, or a ratio below one.
template <length_unit Unit>
constexpr length<Unit> thread_for(std::span<const seam_run<Unit>> runs) {
    length<Unit> sum;
    for (const seam_run<Unit>& r : runs)
        sum += detail::stitched(r) * r.type.ratio;
    return sum;
}

/// More by a part of itself, for tails, bobbins and breaks. Throws thread_error for a part below zero.
template <length_unit Unit>
constexpr length<Unit> with_waste(length<Unit> thread, fraction part) {
    if (part < 0)
        detail::refuse<thread_error>("waste must not be negative: it was " + to_text(part));
    return thread * (part + 1);
}

/// How many spools hold it.
template <length_unit Unit>
constexpr std::int64_t spools(length<Unit> thread, length<Unit> on_one) {
    detail::not_negative<thread_error>(thread, "the length of thread");
    detail::more_than_zero<thread_error>(on_one, "the length on a spool");
    return ceil(ratio(thread, on_one));
}

/// The rows of stitching that a panel's own finishes call for, each as long as the finished edge that it runs along. A
/// seam shared with another piece is counted on both: give it to the sheet once.
template <length_unit Unit>
constexpr length<Unit> stitching_of(const panel<Unit>& p) {
    length<Unit> sum;
    for (const edge e : all_edges) {
        const bool across = e == edge::top || e == edge::bottom;
        const length<Unit> along = across ? p.finished().width() : p.finished().height();
        sum += along * static_cast<std::int64_t>(p.finish_of(e).stitching().size());
    }
    return sum;
}

} // namespace turncloth

#endif
