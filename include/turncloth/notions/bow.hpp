// The bow that a fuller piece makes over a span: how far it stands off, and how full it must be to stand off so far.
//
//   bow_height(arc, chord, step, rounding)      the greatest distance of the fuller piece from the span beneath
//   arc_for_bow(chord, height, step, rounding)  the length to cut for a wanted height
//   bow_error                                   an arc shorter than its chord, or a length of nothing
//
//   constexpr auto seeds = bow_height(8_in, 6_in, "1/8"_in, rounding::nearest); // how thick a packet the pocket takes
//   static_assert(seeds == "2 1/4"_in);
//
// The model is the arc of a circle: what a limp piece does that is pushed out evenly from behind. A stiff film, hardly
// fuller than its span, makes a wave instead and stands off 4 in 100 higher (2 / pi against sqrt(3/8) of the root of
// chord times surplus).
#ifndef TURNCLOTH_NOTIONS_BOW_HPP
#define TURNCLOTH_NOTIONS_BOW_HPP

#include <turncloth/measure/estimate.hpp>
#include <turncloth/notions/error.hpp>

#include <array>
#include <cstddef>
#include <cstdint>
#include <string>

namespace turncloth {

/// A bow that cannot be.
class bow_error : public notion_error {
public:
    using notion_error::notion_error;
};

namespace detail {

// With x half the angle of the arc, 0 < x <= pi:
//
//   chord / arc = sin x / x          height / (arc / 2) = (1 - cos x) / x
//
// In y = x^2 both are series that lose no digits where the bow is small:
//
//   F(y) = 1 - sin x / x = y T(y)    T = 1/3! - y/5! + y^2/7! - ...     F(y) = (arc - chord) / arc is to be solved
//   (1 - cos x) / x = sqrt(y) C(y)   C = 1/2! - y/4! + y^2/6! - ...
//
// F grows from 0 to 1 at pi^2, where its slope has come down from 1/6 to 1/(2 pi^2) = 0.0507, and |F''| <= 1/60. As y <
// 16, v = y / 16 is a share, and T and C are sums of (-v)^k a_k with a_k = 16^k / (2k + 3)! or 16^k / (2k + 2)!.

inline constexpr std::size_t bow_terms = 18;

/// 1/2, 16/4!, ... for a first factor of 2; 1/6, 16/5!, ... for 3. Each as a share, within 5 units: an error is carried
/// on by at most 16/12 once, then by less than 16/30, and each division adds one.
constexpr std::array<uint128, bow_terms> bow_coefficients(unsigned factor) noexcept {
    std::array<uint128, bow_terms> all{};
    all[0] = share(1, factor == 2 ? 2 : 6);
    for (std::size_t k = 1; k < all.size(); ++k) {
        factor += 2;
        const unsigned by = (factor - 1) * factor;
        all[k] = all[k - 1] / by * 16 + all[k - 1] % by * 16 / by;
    }
    return all;
}
inline constexpr auto bow_t = bow_coefficients(3), bow_c = bow_coefficients(2);

struct bow_sums {
    uint128 t, c; ///< T and C, as shares
};

/// No difference falls below zero, as v a_(k+1) < a_k (v < 0.63 and a_(k+1) / a_k <= 16/12), and as much holds rounded
/// down. The terms alternate and shrink, and the first one left out is below 2^-88. The upper ten are summed in 64
/// bits: a step adds at most 2 units of 2^-64 to what came shrunk by v from the step before, 6 in all, which the eight
/// steps to come shrink by v^8 < 1/40. Those add 6 units of 2^-128 each, under 17 in all.
constexpr bow_sums bow_series(uint128 v) noexcept {
    constexpr std::size_t wide_terms = 8;
    const auto upper = [](uint128 f) { return static_cast<std::uint64_t>(f >> 64); };
    std::uint64_t t = 0, c = 0;
    for (std::size_t k = bow_terms; k-- > wide_terms;) {
        t = upper(bow_t[k]) - upper(uint128{upper(v)} * t);
        c = upper(bow_c[k]) - upper(uint128{upper(v)} * c);
    }
    bow_sums sums{uint128{t} << 64, uint128{c} << 64};
    for (std::size_t k = wide_terms; k-- > 0;) {
        sums.t = bow_t[k] - share_product(v, sums.t);
        sums.c = bow_c[k] - share_product(v, sums.c);
    }
    return sums;
}

/// T, F' = sum of (-y)^k (k + 1) / (2k + 3)! and -C' = sum of (-y)^k (k + 1) / (2k + 4)!, as doubles: for a start, and
/// for small corrections.
struct bow_slopes {
    double t, f, c;
};

constexpr std::array<bow_slopes, 13> terms_of_bow_slopes() noexcept {
    std::array<bow_slopes, 13> all{};
    double factorial = 6; // (2k + 3)!
    for (std::size_t k = 0; k < all.size(); ++k) {
        const auto n = static_cast<double>(2 * k + 4);
        all[k] = {1 / factorial, (n / 2 - 1) / factorial, (n / 2 - 1) / (factorial * n)};
        factorial *= n * (n + 1);
    }
    return all;
}
inline constexpr std::array<bow_slopes, 13> bow_slope_terms = terms_of_bow_slopes();

constexpr bow_slopes bow_slopes_at(double y) noexcept {
    bow_slopes s{0, 0, 0};
    for (std::size_t k = bow_slope_terms.size(); k-- > 0;)
        s = {bow_slope_terms[k].t - y * s.t, bow_slope_terms[k].f - y * s.f, bow_slope_terms[k].c - y * s.c};
    return s;
}

/// F(y) = q for 0 < q <= 1. The start is the quotient of second degrees that has the solution's first three terms at 0,
/// y = 6 q + 9/5 q^2 + 144/175 q^3, and its value and slope at 1, pi^2 and 2 pi^2. It is within 5 in ten thousand, and
/// two steps of Newton's rule make that 2^-43 or better.
constexpr double bow_start(double q) noexcept {
    double y = 6 * q * (1 + q * (0.05927232 * q - 0.7403819)) / (1 + q * (0.234244 * q - 1.040382));
    for (int step = 0; step < 2; ++step) {
        const bow_slopes s = bow_slopes_at(y);
        y -= (y * s.t - q) / s.f;
    }
    return y;
}

/// A double in [0, 16) as a share of 16, and back.
constexpr uint128 share_of_16(double y) noexcept {
    const binary_parts parts = binary_parts_of(y); // of a double that is 2^-61 or more, so that nothing is dropped
    return static_cast<uint128>(parts.m) << (parts.exponent + 124);
}
constexpr double sixteen_times(uint128 v) noexcept { return static_cast<double>(v) * power_of_two(-124); }

/// (1 - cos x) / x where 1 - sin x / x = q, 0 < q <= 1.
///
/// One step of Newton's rule in 128 bits, from a residual that is small by measurement, not by trust: with |F(y) - q|
/// <= 2^-36 q the step dy is at most 2^-34 y, and what it leaves out is below (1/60) / (2 * 0.0507) dy^2 < 2^-67 y. F
/// itself is off by 17 v + 2 units of 2^-124 (T, the product, q), which dy turns into at most 18 + 512 v units of v;
/// and by what the upper terms' 64 bits leave out, 16 v (6/40) 2^-64 at the most, which is below 2^-62 v. C moves along
/// with dy, to within 2^-71, and is off by less than 2^-66 for its own upper terms.
constexpr estimate bow_over_half_arc(fraction q) {
    const auto n = static_cast<std::uint64_t>(numerator(q)), d = static_cast<std::uint64_t>(denominator(q));
    const uint128 wanted = n == d ? uint128{1} << 124 : share(n, d) >> 4; // in units of 2^-124, as v T is
    uint128 v = share_of_16(bow_start(to_double(q)));
    for (;;) {
        const bow_sums sums = bow_series(v);
        const bow_slopes slopes = bow_slopes_at(sixteen_times(v));
        const auto residual = static_cast<int128>(share_product(v, sums.t)) - static_cast<int128>(wanted);
        const bool small = (residual < 0 ? -residual : residual) <= static_cast<int128>(wanted >> 36) + 64;
        const double dv = -static_cast<double>(residual) / slopes.f; // 2^-124 / 16 is the unit of v
        v += static_cast<uint128>(static_cast<int128>(dv));
        if (!small)
            continue;
        const uint128 c = sums.c - static_cast<uint128>(static_cast<int128>(16 * slopes.c * dv));
        const std::uint64_t off_v = 18 + static_cast<std::uint64_t>(v >> 61);
        return square_root(estimate::of_share(v, off_v, 4)) * estimate::of_share(c, std::uint64_t{1} << 62, 0);
    }
}

template <length_unit Unit>
constexpr void require_bow(length<Unit> arc, length<Unit> chord) {
    require_more_than_zero<bow_error>(arc, "the length of a bow");
    require_between<bow_error>(length<Unit>(), chord, arc, "the span of a bow", "the bow's own length");
}

/// The height of the bow of `arc` over `chord`, in the unit of both: within 0.53 of the last place of a double. With no
/// chord it is a ring, arc / pi across. Throws bow_error unless 0 <= chord <= arc and arc > 0.
template <length_unit Unit>
constexpr estimate bow_height_of(length<Unit> arc, length<Unit> chord) {
    require_bow(arc, chord);
    if (arc == chord)
        return {};
    return estimate(arc.value() / 2) * bow_over_half_arc((arc - chord).value() / arc.value());
}

} // namespace detail

/// The height of the bow of `arc` over `chord`, on a ruler's graduation. With no chord it is a ring, arc / pi across.
/// Throws bow_error unless 0 <= chord <= arc and arc > 0; undecided_error where the bound does not tell which graduation.
template <length_unit Unit>
constexpr length<Unit> bow_height(length<Unit> arc, length<Unit> chord, length<Unit> step, rounding wanted) {
    return rounded(detail::bow_height_of(arc, chord), step, wanted);
}

namespace detail {

/// The arc of a bow `height` high over `chord`: 4 r atan(2 height / chord), on the radius r = (chord^2 / 4 + height^2)
/// / (2 height). Throws bow_error unless both are more than zero.
template <length_unit Unit>
constexpr estimate arc_of_bow(length<Unit> chord, length<Unit> height) {
    require_more_than_zero<bow_error>(chord, "the span of a bow");
    require_more_than_zero<bow_error>(height, "the height of a bow");
    const fraction c = chord.value(), h = height.value();
    return estimate((c * c / 4 + h * h) / h * 2) * arctangent(2 * h / c);
}

} // namespace detail

/// How long to cut a piece that must stand off `height` over `chord`; rounded up, it stands off at least so far.
/// Throws bow_error unless both are more than zero, and undecided_error.
template <length_unit Unit>
constexpr length<Unit> arc_for_bow(length<Unit> chord, length<Unit> height, length<Unit> step, rounding wanted) {
    return rounded(detail::arc_of_bow(chord, height), step, wanted);
}

} // namespace turncloth

#endif
