// Values that no fraction holds, brought to a graduation correctly.
//
//   square_root(x, step, rounding)  sqrt(x) on the graduation below, above or nearest, decided by whole numbers alone
//   diagonal(a, b, step, rounding)  of a rectangle a by b
//   times_pi(x, step, rounding)     pi x, between two fractions that bound pi
//   approximate(real, step)         a double on a graduation, with the error that made
//
//   square_root(2, {1, 64}, rounding::nearest) == fraction(91, 64);
//   diagonal("12"_in, "18"_in, "1/8"_in, rounding::up) == "21 3/4"_in;   // a strap that must reach
#ifndef TURNCLOTH_MEASURE_IRRATIONAL_HPP
#define TURNCLOTH_MEASURE_IRRATIONAL_HPP

#include <turncloth/measure/detail/bits.hpp>
#include <turncloth/measure/require.hpp>
#include <turncloth/measure/rounding.hpp>

#include <cstdint>
#include <limits>
#include <string>

namespace turncloth {

/// Which graduation is wanted of a value that lies between two.
enum class rounding { down, up, nearest };

namespace detail {

/// The largest r with r * r <= n, for n >= 0, one binary digit at a time.
constexpr std::int64_t whole_root(std::int64_t n) noexcept {
    std::uint64_t rest = static_cast<std::uint64_t>(n), root = 0;
    for (std::uint64_t digit = std::uint64_t{1} << 62; digit != 0; digit >>= 2) {
        const bool set = rest >= root + digit;
        if (set)
            rest -= root + digit;
        root = (root >> 1) + (set ? digit : 0);
    }
    return static_cast<std::int64_t>(root);
}

} // namespace detail

/// sqrt(x) on a multiple of `step`, for x >= 0. With n/d = x / step^2 and r = floor(sqrt(floor(n/d))), r <= sqrt(n/d)
/// < r + 1, and sqrt(n/d) is above r + 1/2 exactly where 4 n/d is above (2r + 1)^2; a half goes to the even multiple.
/// Throws range_error for x < 0, overflow_error where x / step^2 does not fit.
constexpr fraction square_root(fraction x, fraction step, rounding wanted) {
    require_not_negative<range_error>(x, "a number whose square root is taken");
    const fraction square = detail::steps_in(detail::steps_in(x, step), step);
    const std::int64_t root = detail::whole_root(floor(square));
    const detail::int128 n = numerator(square), d = denominator(square);
    const bool exact = detail::int128{root} * root * d == n;
    const detail::int128 odd = detail::int128{2} * root + 1;
    // (2r + 1)^2 d could pass 128 bits, so the quotient is compared and then the remainder.
    const detail::int128 quotient = 4 * n / d, remainder = 4 * n % d, halfway = odd * odd;
    const bool past_half = quotient > halfway || (quotient == halfway && (remainder > 0 || root % 2 != 0));
    const bool goes_up = !exact && (wanted == rounding::up || (wanted == rounding::nearest && past_half));
    return (fraction(root) + (goes_up ? 1 : 0)) * step;
}

/// The diagonal of a rectangle, on a graduation. Throws range_error for a negative side, and as square_root.
template <length_unit Unit>
constexpr length<Unit> diagonal(length<Unit> a, length<Unit> b, length<Unit> step, rounding wanted) {
    require_not_negative<range_error>(a, "a side of a rectangle");
    require_not_negative<range_error>(b, "a side of a rectangle");
    return length_of<Unit>(square_root(a.value() * a.value() + b.value() * b.value(), step.value(), wanted));
}

namespace detail {
// Two neighbouring convergents of the continued fraction of pi (3; 7, 15, 1, 292, ...): below and above it, and
// 1 / (78256779 * 131002976), about 1e-16, apart.
inline constexpr fraction pi_below = {245850922, 78256779};
inline constexpr fraction pi_above = {411557987, 131002976};

constexpr fraction on_side(fraction x, fraction step, rounding wanted) {
    return wanted == rounding::down ? down_to(x, step)
                                    : (wanted == rounding::up ? up_to(x, step) : nearest_to(x, step));
}

/// What `on_graduation` makes of both bounds of pi, `of` being what pi is multiplied by, or divided into.
template <class Number, class Worked>
constexpr auto by_pi(const Number& of, Worked on_graduation) {
    const auto low = on_graduation(pi_below), high = on_graduation(pi_above);
    if (low != high)
        refuse<overflow_error>(
            {"pi times ", of, " lies too near a border between two graduations to tell them apart in 64 bits"},
            {.kind = fault::does_not_fit, .what = "a multiple of pi", .given = of});
    return low;
}
} // namespace detail

/// pi * x on a multiple of `step`. Where both bounds of pi lead to one graduation that graduation is right; otherwise
/// the value lies within about 1e-16 x of the border, and overflow_error says that 64 bits cannot tell. Throws
/// range_error for a step not above zero, overflow_error also where x times a bound does not fit: |x| from 3e10 on.
constexpr fraction times_pi(fraction x, fraction step, rounding wanted) {
    return detail::by_pi(x, [&](fraction pi) { return detail::on_side(x * pi, step, wanted); });
}

template <length_unit Unit>
constexpr length<Unit> times_pi(length<Unit> l, length<Unit> step, rounding wanted) {
    return length_of<Unit>(times_pi(l.value(), step.value(), wanted));
}

/// A double brought to a graduation, and what that changed.
struct approximation {
    fraction value;
    double error; ///< value minus the double, to the precision of doubles
};

namespace detail {

/// |real| = m 2^exponent with whole m below 2^53.
struct binary_parts {
    std::int64_t m;
    int exponent;
};

constexpr binary_parts binary_parts_of(double real) {
    static_assert(std::numeric_limits<double>::is_iec559 && sizeof(double) == sizeof(std::uint64_t));
    const auto bits = bits_as<std::uint64_t>(real);
    const auto field = static_cast<int>(bits >> 52 & 0x7FF);
    const std::uint64_t tail = bits & ((std::uint64_t{1} << 52) - 1);
    if (field == 0x7FF)
        refuse<range_error>("a measurement must be a finite number",
                            refusal{fault::unsuitable, "a measurement", amount_of(real)});
    if (field == 0)
        return {static_cast<std::int64_t>(tail), -1074};
    return {static_cast<std::int64_t>(tail | std::uint64_t{1} << 52), field - 1075};
}

[[noreturn, gnu::cold]] inline void refuse_large(double real) {
    refuse<overflow_error>("the number is too large for a fraction of 64-bit integers: it was " + std::to_string(real),
                           refusal{fault::does_not_fit, "a measurement", amount_of(real)});
}

/// The whole number nearest to x / step; a half goes to the even one. Below 2^127, as |x| is below 2^64.
constexpr int128 nearest_steps(double x, fraction step) {
    const binary_parts real = binary_parts_of(x);
    // From 2^64 on no multiple fits: a step stays below 2^63, so the nearest is less than 2^62 away.
    if (real.exponent > 11)
        refuse_large(x);
    // With a negative exponent both sides are scaled by a power of two. Of it, at most 2^63 goes to the divisor, which
    // then stays below 2^126; the rest is taken from the dividend, where a lost digit can only matter to a tie.
    const int down = real.exponent < 0 ? -real.exponent : 0;
    const int lost = down > 63 ? down - 63 : 0;
    const int128 whole = (int128{real.m} << (real.exponent > 0 ? real.exponent : 0)) * denominator(step);
    const int128 dividend = lost > 126 ? 0 : whole >> lost;
    const bool sticky = lost > 126 ? whole != 0 : (dividend << lost) != whole;
    const int128 divisor = int128{numerator(step)} << (down - lost);
    const int128 below = dividend / divisor, twice_rest = 2 * (dividend % divisor);
    const bool goes_up = twice_rest > divisor || (twice_rest == divisor && (sticky || below % 2 != 0));
    const int128 size = below + (goes_up ? 1 : 0);
    return x < 0 ? -size : size; // before anything is checked, since -2^63 fits and 2^63 does not
}

} // namespace detail

/// The multiple of `step` nearest to a double, found exactly (a half goes to the even multiple), and the error that
/// made. Throws range_error for a step not above zero or a number that is not finite, overflow_error where the
/// multiple does not fit.
constexpr approximation approximate(double real, fraction step) {
    detail::require_step(step);
    const detail::int128 steps = detail::nearest_steps(real, step);
    if (!detail::multiple_fits(steps, step))
        detail::refuse_large(real);
    const fraction value = detail::multiple(steps, step);
    return {value, to_double(value) - real};
}

} // namespace turncloth

#endif
