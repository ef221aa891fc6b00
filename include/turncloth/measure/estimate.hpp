// Values known to a bound, and rounded only where the bound allows.
//
//   class estimate                       a number not below zero, between m - r and m + r units of its last place
//   estimate(x)  arctangent(x)           of a fraction x >= 0, to 62 bits or better; so are pi() and inverse_pi(), 1 / pi
//   a + b   a * b   square_root(a)       carry their bounds along
//   e.value()  e.bound()                 as doubles: the truth is within bound() of value()
//   e.on(step, rounding)                 the graduation below, above or nearest; rounded(e, length, rounding) a length
//   undecided_error                      the bound reaches over a border between two graduations
//
//   constexpr estimate round_a_rod = pi() * estimate({3, 4});                  // 2.35619...
//   static_assert(rounded(round_a_rod, "1/16"_in, rounding::up) == "2 3/8"_in);
//
// Whole-number arithmetic throughout: the same to the last bit on every machine and in constant expressions, whatever a
// compiler is told about floating point.
#ifndef TURNCLOTH_MEASURE_ESTIMATE_HPP
#define TURNCLOTH_MEASURE_ESTIMATE_HPP

#include <turncloth/measure/irrational.hpp>

#include <array>
#include <bit>
#include <cstddef>
#include <cstdint>
#include <string>

namespace turncloth {

/// A value whose bound does not tell on which side of a border it lies.
class undecided_error : public error {
public:
    using error::error;
};

namespace detail {

// Below, a *share* is a 128-bit number f that stands for f / 2^128, a value in [0, 1).

/// The product of two shares, rounded down: the upper half of 256 bits, from four products of halves.
constexpr uint128 share_product(uint128 a, uint128 b) noexcept {
    const auto a1 = static_cast<std::uint64_t>(a >> 64), a0 = static_cast<std::uint64_t>(a);
    const auto b1 = static_cast<std::uint64_t>(b >> 64), b0 = static_cast<std::uint64_t>(b);
    const uint128 upper = uint128{a1} * b0, lower = uint128{a0} * b1;
    const uint128 carried =
        (uint128{a0} * b0 >> 64) + static_cast<std::uint64_t>(upper) + static_cast<std::uint64_t>(lower);
    return uint128{a1} * b1 + (upper >> 64) + (lower >> 64) + (carried >> 64);
}

/// n / d as a share, rounded down, for n < d: two steps of a long division in base 2^64.
constexpr uint128 share(std::uint64_t n, std::uint64_t d) noexcept {
    const uint128 first = (uint128{n} << 64) / d, rest = (uint128{n} << 64) % d;
    return first << 64 | (rest << 64) / d;
}

/// 2^power as a double, for -1022 <= power <= 1023.
constexpr double power_of_two(int power) noexcept {
    return bits_as<double>(static_cast<std::uint64_t>(power + 1023) << 52);
}

/// The upper 64 bits of a number, counted from its highest bit that is set.
struct upper_bits {
    std::uint64_t bits; ///< highest bit set, or zero for zero
    int shift;          ///< the number is bits 2^shift, and less than 2^shift more
    bool exact;         ///< and nothing more
};

constexpr upper_bits upper_bits_of(uint128 n) noexcept {
    const auto high = static_cast<std::uint64_t>(n >> 64);
    if (high == 0) {
        const auto low = static_cast<std::uint64_t>(n);
        return low == 0 ? upper_bits{0, 0, true}
                        : upper_bits{low << std::countl_zero(low), -std::countl_zero(low), true};
    }
    const int shift = 64 - std::countl_zero(high);
    const auto bits = static_cast<std::uint64_t>(n >> shift);
    return {bits, shift, uint128{bits} << shift == n};
}

/// The largest r with r * r <= n, for n >= 2^126. Doubles find a start: y is brought to 1 / sqrt(x), x in [1, 4), from
/// a line that is within a tenth of it, by y (3 - x y^2) / 2, which makes an error e into 3/2 e^2. One step in whole
/// numbers, and the last unit is settled by comparing squares, so the result does not rest on the doubles.
constexpr std::uint64_t root_of_wide(uint128 n) noexcept {
    const double x = static_cast<double>(static_cast<std::uint64_t>(n >> 64)) * power_of_two(-62);
    double y = 1.09 - x / 6;
    for (int step = 0; step < 4; ++step)
        y *= 1.5 - 0.5 * x * y * y;
    constexpr auto largest = ~std::uint64_t{0};
    const double start = x * y * power_of_two(63);
    std::uint64_t root = start < power_of_two(64) ? static_cast<std::uint64_t>(start) : largest;
    const auto off = static_cast<int128>(n - uint128{root} * root); // below 2^127, as the start is within 2^-40
    const auto nearer =
        static_cast<int128>(root) + static_cast<int128>(static_cast<double>(off) * y * power_of_two(-64));
    root = nearer > static_cast<int128>(largest) ? largest : static_cast<std::uint64_t>(nearer);
    while (uint128{root} * root > n)
        --root;
    while (root != largest && uint128{root + 1} * (root + 1) <= n)
        ++root;
    return root;
}

} // namespace detail

/// A number not below zero, known to within a bound: (m +- r) 2^exponent, where m is zero or has its highest bit set.
/// Each operation takes the widest that its operands allow, and one unit for its own rounding.
class estimate {
public:
    constexpr estimate() noexcept = default;

    /// Exact where 64 bits hold it, else to one unit. Throws range_error for x < 0.
    constexpr explicit estimate(fraction x) {
        require_not_negative<range_error>(x, "a number that is estimated");
        if (x == 0)
            return;
        // The numerator moved up to bit 126 leaves a quotient of at least 64 bits.
        const auto n = static_cast<std::uint64_t>(numerator(x)), d = static_cast<std::uint64_t>(denominator(x));
        const int up = 63 + std::countl_zero(n);
        const detail::uint128 dividend = detail::uint128{n} << up;
        const detail::upper_bits q = detail::upper_bits_of(dividend / d);
        *this = {q.bits, q.exact && dividend % d == 0 ? 0U : 1U, q.shift - up};
    }

    /// (m +- r) 2^exponent for an m with its highest bit set, or for zero with r = 0.
    constexpr estimate(std::uint64_t m, std::uint64_t r, int exponent) noexcept : m_(m), r_(r), exponent_(exponent) {}

    /// A share, known to `off` units of 2^-128, times 2^exponent.
    static constexpr estimate of_share(detail::uint128 f, std::uint64_t off, int exponent) noexcept {
        const detail::upper_bits u = detail::upper_bits_of(f);
        // Shifting right makes `off` smaller, rounded up here; one unit more for the bits that were dropped.
        const std::uint64_t r = u.shift > 63 ? (off != 0U) : (u.shift > 0 ? (off >> u.shift) + 1 : off << -u.shift);
        return {u.bits, r + (u.exact ? 0U : 1U), exponent - 128 + u.shift};
    }

    constexpr double value() const noexcept { return scaled(static_cast<double>(m_)); }
    /// Of what is unknown, and of rounding m to a double (half a unit of 53 bits is 2^10 units of 64).
    constexpr double bound() const noexcept { return m_ == 0 ? 0.0 : scaled(static_cast<double>(r_ + 1024)); }

    friend constexpr estimate operator*(const estimate& a, const estimate& b) noexcept {
        if (a.m_ == 0 || b.m_ == 0)
            return {};
        // (m + r)(n + s) = mn + (ms + nr + rs), where r and s are far below 2^32 (each operation adds a few units).
        const detail::uint128 product = detail::uint128{a.m_} * b.m_;
        const detail::uint128 off =
            detail::uint128{a.m_} * b.r_ + detail::uint128{b.m_} * a.r_ + detail::uint128{a.r_} * b.r_;
        const detail::upper_bits u = detail::upper_bits_of(product);
        const auto units = static_cast<std::uint64_t>(off >> u.shift) + (off != 0 ? 1U : 0U);
        return {u.bits, units + (u.exact ? 0U : 1U), a.exponent_ + b.exponent_ + u.shift};
    }

    friend constexpr estimate operator+(const estimate& a, const estimate& b) noexcept {
        if (a.m_ == 0 || b.m_ == 0)
            return a.m_ == 0 ? b : a;
        const estimate &large = a.exponent_ < b.exponent_ ? b : a, &small = a.exponent_ < b.exponent_ ? a : b;
        const int down = large.exponent_ - small.exponent_;
        if (down > 63)
            return {large.m_, large.r_ + 1 + (small.r_ >> 32), large.exponent_};
        const std::uint64_t moved = small.m_ >> down;
        const std::uint64_t dropped = (moved << down) != small.m_ ? 1U : 0U;
        const std::uint64_t r = large.r_ + (small.r_ >> down) + (down > 0 && small.r_ != 0 ? 1U : 0U) + dropped;
        const detail::uint128 sum = detail::uint128{large.m_} + moved;
        const detail::upper_bits u = detail::upper_bits_of(sum);
        return u.shift == 0 ? estimate(u.bits, r, large.exponent_)
                            : estimate(u.bits, r / 2 + (r % 2) + (u.exact ? 0U : 1U), large.exponent_ + 1);
    }

    /// With M = m 2^k brought to 126 bits or more, sqrt(M + d) - sqrt(M) is below d / (2 sqrt(M)) <= r, as sqrt(M) is
    /// 2^63 or more and d = r 2^k with k <= 64; downward it is under one unit more. One unit for rounding.
    friend constexpr estimate square_root(const estimate& a) noexcept {
        if (a.m_ == 0)
            return {};
        const int up = (a.exponent_ & 1) != 0 ? 63 : 64; // an even power of two remains
        const detail::uint128 wide = detail::uint128{a.m_} << up;
        const std::uint64_t root = detail::root_of_wide(wide);
        const bool exact = detail::uint128{root} * root == wide && a.r_ == 0;
        return {root, exact ? 0U : a.r_ + 2, (a.exponent_ - up) / 2};
    }

    /// The multiple of `step` on one side of the truth, or nearest to it. Both ends of what the truth can be must lead
    /// to it: undecided_error where they do not, range_error for a step not above zero, overflow_error where the result
    /// does not fit.
    constexpr fraction on(fraction step, rounding wanted) const {
        detail::require_step(step);
        const std::int64_t low = steps(detail::uint128{m_} - r_, step, wanted);
        const std::int64_t high = steps(detail::uint128{m_} + r_, step, wanted);
        if (low != high)
            detail::refuse<undecided_error>(
                std::to_string(value()) + " is known to within " + std::to_string(r_ + 1) +
                    " parts in 2^63, and that is too near a border between two graduations to tell them apart",
                refusal{fault::does_not_fit, "an estimate", amount_of(value())});
        return fraction(low) * step;
    }

private:
    constexpr double scaled(double units) const noexcept {
        // In two steps, as the power alone may be out of the range of doubles.
        const int half = exponent_ / 2;
        return units * detail::power_of_two(half) * detail::power_of_two(exponent_ - half);
    }

    /// n 2^exponent / step, rounded exactly. n d < 2^65 2^63.
    constexpr std::int64_t steps(detail::uint128 n, fraction step, rounding wanted) const {
        const detail::uint128 scaled_up = n * static_cast<std::uint64_t>(denominator(step));
        const auto by = static_cast<std::uint64_t>(numerator(step));
        const int down = -exponent_;
        if (n == 0)
            return 0;
        if (down < 1)
            detail::refuse<overflow_error>(
                std::to_string(value()) + " does not fit a fraction: numerator and denominator are 64-bit integers",
                refusal{fault::does_not_fit, "an estimate", amount_of(value())});
        // Twice the quotient, rounded down, and whether anything was dropped: enough for all three sides.
        const detail::uint128 halves = down > 128 ? 0 : (scaled_up >> (down - 1)) / by;
        const bool dropped = down > 128 || halves * by << (down - 1) != scaled_up;
        const detail::uint128 below = halves / 2;
        const bool odd = (halves & 1) != 0;
        const bool up = wanted == rounding::up ? odd || dropped
                                               : wanted == rounding::nearest && odd && (dropped || (below & 1) != 0);
        if (below >= detail::uint128{1} << 62)
            detail::refuse<overflow_error>(
                std::to_string(value()) + " does not fit a fraction: numerator and denominator are 64-bit integers",
                refusal{fault::does_not_fit, "an estimate", amount_of(value())});
        return static_cast<std::int64_t>(below) + (up ? 1 : 0);
    }

    std::uint64_t m_ = 0, r_ = 0;
    int exponent_ = 0;
};

/// pi = 3.243F6A8885A308D3... in base 16.
constexpr estimate pi() noexcept { return {0xC90FDAA22168C234U, 1, -62}; }
/// 1 / pi = 0.517CC1B727220A94FE13... in base 16.
constexpr estimate inverse_pi() noexcept { return {0xA2F9836E4E441529U, 1, -65}; }

/// On a ruler's graduation. Throws as estimate::on.
template <length_unit Unit>
constexpr length<Unit> rounded(const estimate& e, length<Unit> step, rounding wanted) {
    return length_of<Unit>(e.on(step.value(), wanted));
}

namespace detail {

/// 1 / (2k + 1) as half shares (units of 2^-127), each rounded down.
constexpr std::array<uint128, 28> reciprocals_of_odd_numbers() noexcept {
    std::array<uint128, 28> all{};
    all[0] = uint128{1} << 127;
    for (std::size_t k = 1; k < all.size(); ++k)
        all[k] = share(1, 2 * k + 1) / 2;
    return all;
}
inline constexpr std::array<uint128, 28> odd_reciprocals = reciprocals_of_odd_numbers();

/// atan(u) / u for u^2 = w <= 0.1716, as half a share: the sum of (-w)^k / (2k + 1). The terms alternate and shrink, so
/// 28 of them leave less than 0.1716^28 / 57 < 2^-76. Each step adds less than 2 units to what came shrunk by w from
/// the step before: under 3 units in all.
constexpr uint128 arctangent_over(uint128 w) noexcept {
    uint128 t = 0;
    for (std::size_t k = odd_reciprocals.size(); k-- > 0;)
        t = odd_reciprocals[k] - share_product(w, t);
    return t;
}

/// atan(n / d) for n <= d and n / d <= sqrt(2) - 1, as half a share, to within 2^-75.
constexpr uint128 small_arctangent(std::uint64_t n, std::uint64_t d) noexcept {
    const uint128 u = n == 0 ? 0 : share(n, d);
    return share_product(u, arctangent_over(share_product(u, u)));
}

inline constexpr uint128 quarter_pi = uint128{0xC90FDAA22168C234U} << 64 | 0xC4C6628B80DC1CD1U; // as a share

} // namespace detail

/// atan(x) in radians. Throws range_error for x < 0.
///
/// Brought below sqrt(2) - 1 by atan(x) = pi/2 - atan(1/x) and atan(u) = pi/4 - atan((1 - u) / (1 + u)), exactly, since
/// x is a fraction; then the series above.
constexpr estimate arctangent(fraction x) {
    require_not_negative<range_error>(x, "a number whose arctangent is taken");
    const bool steep = x > 1;
    const auto over = static_cast<std::uint64_t>(numerator(x)), under = static_cast<std::uint64_t>(denominator(x));
    const std::uint64_t n = steep ? under : over, d = steep ? over : under; // n / d <= 1
    // n / d > sqrt(2) - 1 where (n + d)^2 > 2 d^2.
    const detail::uint128 sum = detail::uint128{n} + d;
    const bool folded = sum * sum > detail::uint128{2} * d * d;
    // Half shares; 1 unit of 2^-64 covers what each is off by.
    constexpr std::uint64_t off = std::uint64_t{1} << 60;
    if (folded) {
        const detail::uint128 rest = detail::small_arctangent(d - n, n + d);
        const detail::uint128 eighth = detail::quarter_pi / 2;
        return estimate::of_share(steep ? eighth + rest : eighth - rest, off, 1);
    }
    if (steep)
        return estimate::of_share(detail::quarter_pi - detail::small_arctangent(n, d), off, 1);
    if (n == 0)
        return {};
    // A small angle keeps its leading digits: the quotient is taken of the fraction itself.
    const detail::uint128 u = detail::share(n, d);
    return estimate(x) * estimate::of_share(detail::arctangent_over(detail::share_product(u, u)), off, 1);
}

} // namespace turncloth

#endif
