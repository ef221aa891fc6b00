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

#include <turncloth/measure/error.hpp>
#include <turncloth/measure/please.hpp>

#include <bit>
#include <compare>
#include <concepts>
#include <cstddef>
#include <cstdint>
#include <limits>
#include <string>
#include <utility>

namespace turncloth {

namespace detail {

// Hold any product of two 64-bit integers, and the sum of two such products.
__extension__ typedef __int128 int128;
__extension__ typedef unsigned __int128 uint128;

constexpr std::uint64_t magnitude(std::int64_t n) noexcept {
    return n < 0 ? std::uint64_t{0} - static_cast<std::uint64_t>(n) : static_cast<std::uint64_t>(n);
}

/// Greatest common divisor by halving and subtracting; gcd(0, b) = b. The trailing zeros of the difference are counted
/// before it is known which operand is larger: |a - b| has as many as a - b.
constexpr std::uint64_t gcd(std::uint64_t a, std::uint64_t b) noexcept {
    if (a == 0)
        return b;
    if (b == 0)
        return a;
    const int shared = std::countr_zero(a | b);
    a >>= std::countr_zero(a);
    b >>= std::countr_zero(b);
    while (a != b) {
        const std::uint64_t difference = a - b;
        const int halvings = std::countr_zero(difference);
        b = a < b ? a : b;
        a = (a > b ? difference : std::uint64_t{0} - difference) >> halvings;
    }
    return a << shared;
}

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
    constexpr fraction(Integer whole) : numerator_(static_cast<std::int64_t>(whole)) {
        if (!std::in_range<std::int64_t>(whole))
            does_not_fit_64_bits(std::to_string(whole));
    }

    template <std::floating_point Real,
              class Please = please::write_approximate_with_a_graduation_to_make_a_fraction_of_a_double>
    fraction(Real) = delete;

    /// numerator / denominator, brought to lowest terms.
    /// Throws zero_denominator_error; overflow_error where a sign cannot be moved to the numerator.
    constexpr fraction(std::int64_t numerator, std::int64_t denominator) {
        if (denominator == 0)
            denominator_is_zero(numerator);
        // Magnitudes, since the shared factor itself may be 2^63 and a sign may have to change.
        const std::uint64_t over = detail::magnitude(numerator), under = detail::magnitude(denominator);
        const std::uint64_t shared = detail::gcd(over, under);
        *this = made((numerator < 0) != (denominator < 0), over / shared, under / shared);
    }

    friend constexpr std::int64_t numerator(fraction x) noexcept { return x.numerator_; }
    friend constexpr std::int64_t denominator(fraction x) noexcept { return x.denominator_; }

    friend constexpr bool operator==(fraction, fraction) noexcept = default;

    /// Cross products of 64-bit integers fit 128 bits, so a comparison has no case that fails.
    friend constexpr std::strong_ordering operator<=>(fraction x, fraction y) noexcept {
        const auto left = detail::int128{x.numerator_} * y.denominator_;
        const auto right = detail::int128{y.numerator_} * x.denominator_;
        return left < right ? std::strong_ordering::less
                            : (left > right ? std::strong_ordering::greater : std::strong_ordering::equal);
    }

    friend constexpr fraction operator+(fraction x) noexcept { return x; }

    friend constexpr fraction operator-(fraction x) {
        return made(x.numerator_ > 0, detail::magnitude(x.numerator_), detail::magnitude(x.denominator_));
    }

    friend constexpr fraction operator+(fraction x, fraction y) {
        fraction sum;
        return on_a_ruler(x, y) && ruler_sum(x, y, false, sum) ? sum : general_sum(x, y, false);
    }

    friend constexpr fraction operator-(fraction x, fraction y) {
        fraction difference;
        return on_a_ruler(x, y) && ruler_sum(x, y, true, difference) ? difference : general_sum(x, y, true);
    }

    friend constexpr fraction operator*(fraction x, fraction y) {
        fraction product;
        return on_a_ruler(x, y) && ruler_product(x, y, product) ? product
                                                                : general_product(x, y.numerator_, y.denominator_);
    }

    /// Throws zero_denominator_error too.
    friend constexpr fraction operator/(fraction x, fraction y) {
        if (y.numerator_ == 0)
            division_by_zero();
        return general_product(x, y.denominator_, y.numerator_);
    }

    constexpr fraction& operator+=(fraction y) { return *this = *this + y; }
    constexpr fraction& operator-=(fraction y) { return *this = *this - y; }
    constexpr fraction& operator*=(fraction y) { return *this = *this * y; }
    constexpr fraction& operator/=(fraction y) { return *this = *this / y; }

    /// 1 / x. Throws zero_denominator_error for zero.
    friend constexpr fraction reciprocal(fraction x) { return fraction(1) / x; }

private:
    struct lowest_terms {};
    constexpr fraction(lowest_terms, std::int64_t n, std::int64_t d) noexcept : numerator_(n), denominator_(d) {}

    // Not constexpr, so that a constant expression that needs one does not compile, and the compiler prints its name.
    [[noreturn, gnu::cold]] static void does_not_fit_64_bits(const std::string& value) {
        detail::refuse<overflow_error>(value +
                                       " does not fit a fraction: numerator and denominator are 64-bit integers");
    }

    [[noreturn, gnu::cold]] static void denominator_is_zero(std::int64_t numerator) {
        detail::refuse<zero_denominator_error>(std::to_string(numerator) +
                                               "/0 is not a number: the denominator must not be zero");
    }
    [[noreturn, gnu::cold]] static void division_by_zero() {
        detail::refuse<zero_denominator_error>("division by zero: the divisor must not be zero");
    }

    /// The one gate to 64 bits for results that may be too large: over / under in lowest terms, with its sign.
    static constexpr fraction made(bool negative, detail::uint128 over, detail::uint128 under) {
        constexpr auto largest = static_cast<std::uint64_t>(std::numeric_limits<std::int64_t>::max());
        if (over > largest + (negative ? 1U : 0U) || under > largest)
            does_not_fit_64_bits("the result of an exact calculation");
        const auto size = static_cast<std::uint64_t>(over);
        return fraction(lowest_terms{}, static_cast<std::int64_t>(negative ? std::uint64_t{0} - size : size),
                        static_cast<std::int64_t>(under));
    }

    /// True where both denominators are powers of two: halves, quarters, ... as on an inch ruler, and whole numbers.
    static constexpr bool on_a_ruler(fraction x, fraction y) noexcept {
        return ((x.denominator_ & (x.denominator_ - 1)) | (y.denominator_ & (y.denominator_ - 1))) == 0;
    }

    /// Ruler fractions need no division: the larger denominator serves both, and what is shared between the sum and it
    /// is a power of two, found by counting trailing zeros. False where 64 bits do not hold an intermediate value.
    static constexpr bool ruler_sum(fraction x, fraction y, bool subtract, fraction& sum) noexcept {
        const std::int64_t common = x.denominator_ > y.denominator_ ? x.denominator_ : y.denominator_;
        std::int64_t left = 0, right = 0, total = 0;
        bool lost = __builtin_mul_overflow(x.numerator_, common >> zeros(x.denominator_), &left);
        lost |= __builtin_mul_overflow(y.numerator_, common >> zeros(y.denominator_), &right);
        lost |= subtract ? __builtin_sub_overflow(left, right, &total) : __builtin_add_overflow(left, right, &total);
        const int shared = zeros(total | common); // common is not 0
        sum = fraction(lowest_terms{}, total >> shared, common >> shared);
        return !lost;
    }

    static constexpr bool ruler_product(fraction x, fraction y, fraction& product) noexcept {
        std::int64_t n = 0, d = 0;
        bool lost = __builtin_mul_overflow(x.numerator_, y.numerator_, &n);
        lost |= __builtin_mul_overflow(x.denominator_, y.denominator_, &d);
        const int shared = zeros(n | d);
        product = fraction(lowest_terms{}, n >> shared, d >> shared);
        return !lost;
    }

    static constexpr int zeros(std::int64_t n) noexcept { return std::countr_zero(static_cast<std::uint64_t>(n)); }

    /// a/b + c/d with g = gcd(b, d): the sum is t / (b/g * d), t = a (d/g) + c (b/g), and only factors of g can still
    /// be shared, since a prime of b/g divides neither a (lowest terms) nor d/g, and likewise for d/g. |t| < 2^127.
    static constexpr fraction general_sum(fraction x, fraction y, bool subtract) {
        const std::uint64_t g = detail::gcd(detail::magnitude(x.denominator_), detail::magnitude(y.denominator_));
        const std::uint64_t b = detail::magnitude(x.denominator_) / g, d = detail::magnitude(y.denominator_) / g;
        const detail::int128 left = detail::int128{x.numerator_} * d, right = detail::int128{y.numerator_} * b;
        const detail::int128 total = subtract ? left - right : left + right;
        const bool negative = total < 0;
        const auto size = static_cast<detail::uint128>(negative ? -total : total);
        // Divisions of 128 bits are slow, and seldom needed.
        const auto low = static_cast<std::uint64_t>(size);
        const bool is_low = low == size;
        const std::uint64_t shared = detail::gcd(is_low ? low % g : static_cast<std::uint64_t>(size % g), g);
        return made(negative, is_low ? low / shared : size / shared,
                    detail::uint128{b} * (detail::magnitude(y.denominator_) / shared));
    }

    /// x * n/d for n/d in lowest terms, d of either sign but not 0. Reduced crosswise before multiplying, so that the
    /// products are in lowest terms already.
    static constexpr fraction general_product(fraction x, std::int64_t n, std::int64_t d) {
        const std::uint64_t a = detail::magnitude(x.numerator_), b = detail::magnitude(x.denominator_);
        const std::uint64_t first = detail::gcd(a, detail::magnitude(d));
        const std::uint64_t second = detail::gcd(detail::magnitude(n), b);
        return made(((x.numerator_ < 0) != (n < 0)) != (d < 0),
                    detail::uint128{a / first} * (detail::magnitude(n) / second),
                    detail::uint128{b / second} * (detail::magnitude(d) / first));
    }

    std::int64_t numerator_ = 0;
    std::int64_t denominator_ = 1;
};

constexpr bool is_whole(fraction x) noexcept { return denominator(x) == 1; }

constexpr fraction abs(fraction x) { return numerator(x) < 0 ? -x : x; }

/// The largest whole number not above x.
constexpr std::int64_t floor(fraction x) noexcept {
    const std::int64_t toward_zero = numerator(x) / denominator(x);
    return toward_zero - (numerator(x) % denominator(x) < 0 ? 1 : 0);
}

/// The smallest whole number not below x.
constexpr std::int64_t ceil(fraction x) noexcept {
    const std::int64_t toward_zero = numerator(x) / denominator(x);
    return toward_zero + (numerator(x) % denominator(x) > 0 ? 1 : 0);
}

/// The nearest double up to the rounding of two conversions and one division (under 2 units in the last place).
constexpr double to_double(fraction x) noexcept {
    return static_cast<double>(numerator(x)) / static_cast<double>(denominator(x));
}

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
