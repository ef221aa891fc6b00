// Rounding to the graduation of a ruler: the direction and the step are named at every call.
//
//   down_to(x, step)   up_to(x, step)     the multiple of step not above x, not below x
//   nearest_to(x, step, ties)             the multiple nearest to x; ties say what a half does
//   ties::to_even, away_from_zero, ...    what a half does
//
//   up_to("2 3/16"_in, "1/8"_in) == "2 1/4"_in;                      // what to buy
//   nearest_to("9.525"_mm, "0.01"_mm, ties::to_even) == "9.52"_mm;   // what an instrument shows
//
// For fractions and for lengths alike. Each throws range_error for a step that is not above zero, and
// overflow_error where the result does not fit; the number of steps may be larger than 64 bits hold.
#ifndef TURNCLOTH_MEASURE_ROUNDING_HPP
#define TURNCLOTH_MEASURE_ROUNDING_HPP

#include <turncloth/measure/length.hpp>

#include <cstdint>
#include <string>

namespace turncloth {

/// Where a value goes that lies exactly halfway between two graduations.
enum class ties {
    to_even,        ///< to the even multiple: the rule of NIST SP 811 (2008) B.7.1, which favours neither side
    away_from_zero, ///< the rule of everyday arithmetic
    toward_zero,
    up,
    down
};

namespace detail {

constexpr void require_step(fraction step) {
    if (step <= 0)
        refuse<range_error>("a graduation must be more than zero: it was " + std::to_string(numerator(step)) +
                                (is_whole(step) ? std::string() : "/" + std::to_string(denominator(step))),
                            refusal{fault::too_small, "a graduation", amount_of(step), amount_of(fraction(0))});
}

/// How many steps x is, not necessarily a whole number.
constexpr fraction steps_in(fraction x, fraction step) {
    require_step(step);
    return x / step;
}

/// x / step = below + rest / of, with 0 <= rest < of < 2^126.
struct divided_steps {
    int128 below, rest, of;
};

constexpr divided_steps divide_steps(fraction x, fraction step) {
    require_step(step);
    const int128 over = int128{numerator(x)} * denominator(step), of = int128{denominator(x)} * numerator(step);
    const int128 below = over / of, rest = over % of;
    return rest < 0 ? divided_steps{below - 1, rest + of, of} : divided_steps{below, rest, of};
}

/// The factor that a count of steps shares with the step's denominator, and that alone can bring a large count into
/// 64 bits.
constexpr std::int64_t shared_factor(int128 count, fraction step) noexcept {
    const auto rest = magnitude(static_cast<std::int64_t>(count % denominator(step)));
    return static_cast<std::int64_t>(
        greatest_common_divisor<width_64>(rest, static_cast<std::uint64_t>(denominator(step))));
}

constexpr bool multiple_fits(int128 count, fraction step) noexcept {
    const int128 over = count / shared_factor(count, step);
    return fits(over) && fits(over * numerator(step));
}

/// count * step, for a step above zero. Throws overflow_error.
constexpr fraction multiple(int128 count, fraction step) {
    if (fits(count))
        return fraction(static_cast<std::int64_t>(count)) * step;
    const std::int64_t shared = shared_factor(count, step);
    if (!multiple_fits(count, step))
        width_64::does_not_fit();
    return fraction(static_cast<std::int64_t>(count / shared), denominator(step) / shared) * numerator(step);
}

constexpr bool half_goes_up(int128 below, ties rule) noexcept {
    switch (rule) {
    case ties::to_even:
        return below % 2 != 0;
    case ties::away_from_zero:
        return below >= 0;
    case ties::toward_zero:
        return below < 0;
    case ties::up:
        return true;
    case ties::down:
        break;
    }
    return false;
}

} // namespace detail

constexpr fraction down_to(fraction x, fraction step) {
    return detail::multiple(detail::divide_steps(x, step).below, step);
}

constexpr fraction up_to(fraction x, fraction step) {
    const detail::divided_steps steps = detail::divide_steps(x, step);
    return detail::multiple(steps.below + (steps.rest > 0 ? 1 : 0), step);
}

/// Divide by the step, round the quotient to a whole number, multiply again (the rule of IS 2:1960 for any step).
constexpr fraction nearest_to(fraction x, fraction step, ties rule = ties::to_even) {
    const auto [below, rest, of] = detail::divide_steps(x, step);
    const bool goes_up = 2 * rest > of || (2 * rest == of && detail::half_goes_up(below, rule));
    return detail::multiple(below + (goes_up ? 1 : 0), step);
}

template <length_unit Unit>
constexpr length<Unit> down_to(length<Unit> l, length<Unit> step) {
    return length_of<Unit>(down_to(l.value(), step.value()));
}

template <length_unit Unit>
constexpr length<Unit> up_to(length<Unit> l, length<Unit> step) {
    return length_of<Unit>(up_to(l.value(), step.value()));
}

template <length_unit Unit>
constexpr length<Unit> nearest_to(length<Unit> l, length<Unit> step, ties rule = ties::to_even) {
    return length_of<Unit>(nearest_to(l.value(), step.value(), rule));
}

} // namespace turncloth

#endif
