// Thread: how much a length of seam takes, by its stitch.
//
//   stitch_type{number, name, ratio}    an ISO 4915 stitch type: thread used, over the length of the seam
//   stitch(301)                         one of those listed here; a ratio of your own is a stitch_type of your own
//   seam_run<U>{type, sewn, count, overrun}     seams sewn alike
//   thread_for(runs)  with_waste(l, part)  spools(l, on_one)
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
#include <turncloth/notions/error.hpp>

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

    friend constexpr bool operator==(const stitch_type&, const stitch_type&) = default;
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
    refuse<thread_error>({"no thread ratio is listed for stitch type ", number, ": there are ", known},
                         {.kind = fault::missing, .what = "a stitch type that is listed", .given = number});
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
constexpr length<Unit> with_ends(const seam_run<Unit>& r) {
    require_not_negative<thread_error>(r.sewn, "the length of a seam");
    require_not_negative<thread_error>(r.overrun, "what is sewn over at a seam's end");
    require_at_least<thread_error>(r.count, std::int64_t{0}, "the number of seams");
    require_at_least<thread_error>(r.type.ratio, fraction(1), "the thread of a stitch, over the length of its seam,");
    return (r.sewn + r.overrun * 2) * r.count;
}

} // namespace detail

/// Throws thread_error for a negative length or number, or a ratio below one.
template <length_unit Unit>
constexpr length<Unit> thread_for(std::span<const seam_run<Unit>> runs) {
    length<Unit> sum;
    for (const seam_run<Unit>& r : runs)
        sum += detail::with_ends(r) * r.type.ratio;
    return sum;
}

/// More by a part of itself, for tails, bobbins and breaks. Throws thread_error for a part below zero.
template <length_unit Unit>
constexpr length<Unit> with_waste(length<Unit> thread, fraction part) {
    require_not_negative<thread_error>(part, "the part for waste");
    return thread * (part + 1);
}

/// How many spools hold it.
template <length_unit Unit>
constexpr std::int64_t spools(length<Unit> thread, length<Unit> on_one) {
    require_not_negative<thread_error>(thread, "the length of thread");
    require_more_than_zero<thread_error>(on_one, "the length on a spool");
    return ceil(ratio_of(thread, on_one));
}

} // namespace turncloth

#endif
