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
// overflow_error where the number of steps or the result does not fit.
#ifndef TURNCLOTH_MEASURE_ROUNDING_HPP
#define TURNCLOTH_MEASURE_ROUNDING_HPP

#include <turncloth/measure/length.hpp>

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

/// How many steps x is, not necessarily a whole number.
constexpr fraction steps_in(fraction x, fraction step) {
    if (step <= 0)
        refuse<range_error>("a graduation must be more than zero: it was " + std::to_string(numerator(step)) +
                                (is_whole(step) ? std::string() : "/" + std::to_string(denominator(step))),
                            refusal{fault::too_small, "a graduation", amount_of(step), amount_of(fraction(0))});
    return x / step;
}

constexpr bool half_goes_up(std::int64_t below, ties rule) noexcept {
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

constexpr fraction down_to(fraction x, fraction step) { return floor(detail::steps_in(x, step)) * step; }

constexpr fraction up_to(fraction x, fraction step) { return ceil(detail::steps_in(x, step)) * step; }

/// Divide by the step, round the quotient to a whole number, multiply again (the rule of IS 2:1960 for any step).
constexpr fraction nearest_to(fraction x, fraction step, ties rule = ties::to_even) {
    const fraction steps = detail::steps_in(x, step);
    const std::int64_t below = floor(steps);
    const fraction rest = steps - below;
    const bool goes_up = rest > fraction(1, 2) || (rest == fraction(1, 2) && detail::half_goes_up(below, rule));
    return (fraction(below) + (goes_up ? 1 : 0)) * step;
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
