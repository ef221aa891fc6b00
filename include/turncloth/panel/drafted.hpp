// Drafted values made of exact ones, and exact ones of drafted values.
//
//   drafted(l)                      the double nearest to a length; points, lines and polygons are in polygon.hpp
//   exactly(l)  exactly(p)          the double itself as a fraction, nothing rounded; of a point, both coordinates
//   on_graduation(l, step, ties)    the nearest multiple of a step, which may be in another unit; of a point, both
//
//   exactly(drafted_length_of<inch>(12.625)) == "12 5/8"_in;
//   on_graduation(drafted_length_of<centimetre>(1), "1/16"_in, ties::to_even) == "3/8"_in;
//
// A length that is a whole number of 64ths of an inch, or of any power of two, comes back from a drafting as it was. One
// of tenths of a centimetre does not: a double holds no tenth, and `exactly` says what it holds instead. Not part of
// turncloth.hpp.
#ifndef TURNCLOTH_PANEL_DRAFTED_HPP
#define TURNCLOTH_PANEL_DRAFTED_HPP

#include <turncloth/measure/irrational.hpp>
#include <turncloth/panel/polygon.hpp>

#include <bit>
#include <cstdint>
#include <limits>

namespace turncloth {

template <length_unit Unit>
constexpr drafted_length<Unit> drafted(length<Unit> l) {
    return drafted_length_of<Unit>(to_double(l.value()));
}

/// Throws overflow_error where 64 bits do not hold the double as a fraction, range_error where it is not finite.
template <length_unit Unit>
constexpr length<Unit> exactly(drafted_length<Unit> l) {
    const double real = l.value();
    auto [m, exponent] = detail::binary_parts_of(real);
    if (m == 0)
        return {};
    const int zeros = std::countr_zero(static_cast<std::uint64_t>(m));
    m >>= zeros;
    exponent += zeros;
    constexpr int most = 62; // a power of two that is a denominator, or what a whole number is multiplied by
    if (exponent < -most || exponent > most ||
        (exponent > 0 && m > (std::numeric_limits<std::int64_t>::max() >> exponent)))
        detail::refuse<overflow_error>("a fraction of 64-bit integers does not hold the double " + std::to_string(real),
                                       refusal{fault::does_not_fit, "a drafted length", amount_of(real)});
    const std::int64_t over = exponent > 0 ? m << exponent : m,
                       under = std::int64_t{1} << (exponent < 0 ? -exponent : 0);
    return length_of<Unit>({real < 0 ? -over : over, under});
}

template <length_unit Unit>
constexpr point<Unit> exactly(const point<Unit, double>& p) {
    return {exactly(p.x), exactly(p.y)};
}

/// The ruler's rule for halves holds where a double says that it is a half. Throws range_error for a step not above
/// zero or a length that is not finite, overflow_error where 64 bits do not hold the result.
template <length_unit To, length_unit Unit>
constexpr length<To> on_graduation(drafted_length<Unit> l, length<To> step, ties halfway = ties::to_even) {
    // The step is brought to the unit of the double, exactly, so that the double itself is what is compared.
    const fraction own_step = as<Unit>(step).value();
    const approximation half = approximate(l.value(), own_step / 2);
    const fraction number =
        half.error == 0 ? nearest_to(half.value, own_step, halfway) : approximate(l.value(), own_step).value;
    return as<To>(length_of<Unit>(number));
}

template <length_unit To, length_unit Unit>
constexpr point<To> on_graduation(const point<Unit, double>& p, length<To> step, ties halfway = ties::to_even) {
    return {on_graduation(p.x, step, halfway), on_graduation(p.y, step, halfway)};
}

} // namespace turncloth

#endif
