// Bar-tacks: the thread of close stitches to and fro across a short line, which hold where a seam is pulled.
//
//   bar_tack<U>{.along, .across, .stitches}   how long the bar is, how wide, and how many stitches lie across it
//   sewn_in_bar(bar, step)                    what its stitches come to, up to a step; thread is that at its stitch's ratio
//   bar_of_box(width, height, stitches)  can_be_sewn(bar)
//   stitches_along(along, apart)              how many it takes, so far apart at the most
//   bar_tack_error                            a bar of nothing
//
//   static_assert(sewn_in_bar(bar_tack<inch>{4_in, "1/4"_in, 12}, "1/16"_in) == 5_in);
//
// By paper. Draw the zigzag on a strip as wide as the bar, and go on beside it with the strip turned over at its edge at every stitch:
// all stitches lie on one straight line then, across as many strips as there are stitches. So they come to the diagonal of a
// rectangle, the bar long and all of its widths wide. Bars of 28 and of 42 stitches are common practice.
#ifndef TURNCLOTH_NOTIONS_BAR_TACK_HPP
#define TURNCLOTH_NOTIONS_BAR_TACK_HPP

#include <turncloth/measure/irrational.hpp>
#include <turncloth/notions/error.hpp>

#include <cstdint>
#include <type_traits>

namespace turncloth {

/// A bar-tack that cannot be sewn.
class bar_tack_error : public notion_error {
public:
    using notion_error::notion_error;
};

template <length_unit Unit>
struct bar_tack {
    length<Unit> along, across;
    std::int64_t stitches;

    friend constexpr bool operator==(const bar_tack&, const bar_tack&) = default;
};

inline constexpr std::int64_t most_stitches_of_a_bar = 1'000;

/// It runs along the longer side of its box.
template <length_unit Unit>
constexpr bar_tack<Unit> bar_of_box(length<Unit> width, length<Unit> height, std::int64_t stitches) {
    return width < height ? bar_tack<Unit>{height, width, stitches} : bar_tack<Unit>{width, height, stitches};
}

template <length_unit Unit>
constexpr bool can_be_sewn(const bar_tack<Unit>& b) {
    return b.across.value() > 0 && b.along >= b.across && b.stitches >= 1 && b.stitches <= most_stitches_of_a_bar;
}

/// Throws bar_tack_error for a bar of nothing, for none or more than `most_stitches_of_a_bar`, and for one that is wider than long.
template <length_unit Unit>
constexpr length<Unit> sewn_in_bar(const bar_tack<Unit>& b, std::type_identity_t<length<Unit>> step) {
    require_more_than_zero<bar_tack_error>(b.across, "the width of a bar-tack");
    require_at_least<bar_tack_error>(b.along, b.across, "the length of a bar-tack");
    require_between<bar_tack_error>(std::int64_t{1}, b.stitches, most_stitches_of_a_bar,
                                    "the number of a bar-tack's stitches");
    return diagonal(b.across * b.stitches, b.along, step, rounding::up);
}

/// Throws bar_tack_error for a length or a distance of nothing, and for more stitches than `most_stitches_of_a_bar`.
template <length_unit Unit>
constexpr std::int64_t stitches_along(length<Unit> along, std::type_identity_t<length<Unit>> apart) {
    require_more_than_zero<bar_tack_error>(along, "the length of a bar-tack");
    require_more_than_zero<bar_tack_error>(apart, "what a bar-tack's stitches lie apart");
    const std::int64_t n = ceil(ratio_of(along, apart));
    require_at_most<bar_tack_error>(n, most_stitches_of_a_bar, "the number of a bar-tack's stitches");
    return n;
}

} // namespace turncloth

#endif
