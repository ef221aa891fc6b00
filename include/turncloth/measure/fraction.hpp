// Exact numbers.
//
//   class fraction                    numerator / denominator, lowest terms, denominator > 0
//   + - * / += -= *= /= unary -       exact, or overflow_error; never a wrong result
//   == <=>                            exact and never overflows
//   numerator(x) denominator(x) is_whole(x) abs(x) reciprocal(x) floor(x) ceil(x) to_double(x)
//
//   constexpr fraction hem = fraction(1, 4) + fraction(3, 8);   // 5/8
//   static_assert(hem * 2 == fraction(5, 4));
//
// An operation throws overflow_error exactly when its true result, in lowest terms, does not fit 64-bit integers; in a
// constant expression it then does not compile. A floating-point number does not convert: see irrational.hpp for
// `approximate`, which asks to which graduation.
#ifndef TURNCLOTH_MEASURE_FRACTION_HPP
#define TURNCLOTH_MEASURE_FRACTION_HPP

#include <turncloth/measure/detail/bits.hpp>
#include <turncloth/measure/detail/please.hpp>
#include <turncloth/measure/detail/rational.hpp>
#include <turncloth/measure/error.hpp>

#include <compare>
#include <concepts>
#include <cstddef>
#include <cstdint>
#include <limits>
#include <string>
#include <utility>

namespace turncloth {

namespace detail {

/// The integers of a fraction.
struct width_64 {
    using whole = std::int64_t;
    using count = std::uint64_t;
    using wide = int128;
    using wide_count = uint128;
    static constexpr int bits = 64;

    static constexpr int trailing_zeros(count n) noexcept { return detail::trailing_zeros(n); }

    // Not constexpr, so that a constant expression that needs it does not compile, and the compiler prints its name.
    // Out of line, as every operation calls it.
    [[noreturn, gnu::cold, gnu::noinline]] static void does_not_fit() { detail::refuse<overflow_error>(sentence()); }
    [[noreturn, gnu::cold, gnu::noinline]] static void does_not_fit(const std::string& value) {
        detail::refuse<overflow_error>(sentence(value));
    }
    static std::string sentence(const std::string& value = "the result of an exact calculation") {
        return value + " does not fit a fraction: numerator and denominator are 64-bit integers";
    }
};

constexpr std::uint64_t magnitude(std::int64_t n) noexcept { return magnitude_of<width_64>(n); }

constexpr bool fits(int128 n) noexcept {
    return n >= std::numeric_limits<std::int64_t>::min() && n <= std::numeric_limits<std::int64_t>::max();
}

} // namespace detail

/// An exact rational number. Trivially copyable; its invariant (lowest terms, denominator above zero) cannot be broken
/// from outside, so equality is equality of members.
class fraction {
public:
    constexpr fraction() noexcept = default;

    /// Whole numbers convert without ceremony. Throws overflow_error for an unsigned value above the signed range.
    template <std::integral Integer>
        requires(!std::same_as<Integer, bool>)
    constexpr fraction(Integer whole) : terms_{static_cast<std::int64_t>(whole), 1} {
        if (!std::in_range<std::int64_t>(whole))
            detail::width_64::does_not_fit(std::to_string(whole));
    }

    template <std::floating_point Real,
              class Please = please::write_approximate_with_a_graduation_to_make_a_fraction_of_a_double>
    fraction(Real) = delete;

    /// numerator / denominator, brought to lowest terms.
    /// Throws zero_denominator_error; overflow_error where a sign cannot be moved to the numerator.
    constexpr fraction(std::int64_t numerator, std::int64_t denominator) {
        if (denominator == 0)
            denominator_is_zero(numerator);
        terms_ = terms::reduced(numerator, denominator);
    }

    friend constexpr std::int64_t numerator(fraction x) noexcept { return x.terms_.over; }
    friend constexpr std::int64_t denominator(fraction x) noexcept { return x.terms_.under; }

    friend constexpr bool operator==(fraction, fraction) noexcept = default;

    friend constexpr bool operator<(fraction x, fraction y) noexcept { return terms::is_below(x.terms_, y.terms_); }
    friend constexpr bool operator>(fraction x, fraction y) noexcept { return y < x; }
    friend constexpr bool operator<=(fraction x, fraction y) noexcept { return !(y < x); }
    friend constexpr bool operator>=(fraction x, fraction y) noexcept { return !(x < y); }
    friend constexpr std::strong_ordering operator<=>(fraction x, fraction y) noexcept {
        return x == y  ? std::strong_ordering::equal
               : x < y ? std::strong_ordering::less
                       : std::strong_ordering::greater;
    }

    friend constexpr fraction operator+(fraction x) noexcept { return x; }
    friend constexpr fraction operator-(fraction x) { return fraction(terms::negative(x.terms_)); }
    friend constexpr fraction operator+(fraction x, fraction y) { return fraction(terms::sum(x.terms_, y.terms_)); }
    friend constexpr fraction operator-(fraction x, fraction y) {
        return fraction(terms::difference(x.terms_, y.terms_));
    }
    friend constexpr fraction operator*(fraction x, fraction y) { return fraction(terms::product(x.terms_, y.terms_)); }

    /// Throws zero_denominator_error too.
    friend constexpr fraction operator/(fraction x, fraction y) {
        if (y.terms_.over == 0)
            division_by_zero();
        return fraction(terms::quotient(x.terms_, y.terms_));
    }

    constexpr fraction& operator+=(fraction y) { return *this = *this + y; }
    constexpr fraction& operator-=(fraction y) { return *this = *this - y; }
    constexpr fraction& operator*=(fraction y) { return *this = *this * y; }
    constexpr fraction& operator/=(fraction y) { return *this = *this / y; }

    /// 1 / x. Throws zero_denominator_error for zero.
    friend constexpr fraction reciprocal(fraction x) { return fraction(1) / x; }

private:
    using terms = detail::rational<detail::width_64>;
    constexpr explicit fraction(terms lowest) noexcept : terms_(lowest) {}

    // Not constexpr, so that a constant expression that needs one does not compile, and the compiler prints its name.
    [[noreturn, gnu::cold]] static void denominator_is_zero(std::int64_t numerator) {
        detail::refuse<zero_denominator_error>(std::to_string(numerator) +
                                               "/0 is not a number: the denominator must not be zero");
    }
    [[noreturn, gnu::cold]] static void division_by_zero() {
        detail::refuse<zero_denominator_error>("division by zero: the divisor must not be zero");
    }

    terms terms_{0, 1};
};

constexpr bool is_whole(fraction x) noexcept { return denominator(x) == 1; }

constexpr fraction abs(fraction x) { return numerator(x) < 0 ? -x : x; }

/// The largest whole number not above x.
constexpr std::int64_t floor(fraction x) noexcept {
    return detail::rational<detail::width_64>::floor_of({numerator(x), denominator(x)});
}

/// The smallest whole number not below x.
constexpr std::int64_t ceil(fraction x) noexcept {
    return detail::rational<detail::width_64>::ceil_of({numerator(x), denominator(x)});
}

/// The nearest double up to the rounding of two conversions and one division (under 2 units in the last place).
constexpr double to_double(fraction x) noexcept {
    return static_cast<double>(numerator(x)) / static_cast<double>(denominator(x));
}

/// As the data of a refusal.
constexpr amount amount_of(fraction x) { return {numerator(x), denominator(x), to_double(x), {}}; }

} // namespace turncloth

template <>
struct std::hash<turncloth::fraction> {
    std::size_t operator()(turncloth::fraction x) const noexcept {
        // A lowest-terms value has one representation; the multiplier (2^64 / golden ratio) spreads small numbers.
        const auto mixed =
            static_cast<std::uint64_t>(numerator(x)) * 0x9E3779B97F4A7C15U ^ static_cast<std::uint64_t>(denominator(x));
        return std::hash<std::uint64_t>{}(mixed ^ (mixed >> 32));
    }
};

#endif
