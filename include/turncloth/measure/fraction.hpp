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
#include <turncloth/measure/detail/wide.hpp>
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

constexpr std::uint64_t magnitude(std::int64_t n) noexcept {
    return n < 0 ? std::uint64_t{0} - static_cast<std::uint64_t>(n) : static_cast<std::uint64_t>(n);
}

/// Greatest common divisor by halving and subtracting; gcd(0, b) = b. Without a branch on which operand is larger, as
/// that cannot be predicted: `sign` is all ones where the difference is below zero, and |a - b| = (a - b ^ sign) -
/// sign.
constexpr std::uint64_t gcd(std::uint64_t a, std::uint64_t b) noexcept {
    if (a == 0 || b == 0)
        return a | b;
    const int shared = trailing_zeros(a | b);
    a >>= trailing_zeros(a);
    b >>= trailing_zeros(b);
    while (a != b) {
        const std::uint64_t difference = a - b;
        const std::uint64_t sign = std::uint64_t{0} - static_cast<std::uint64_t>(a < b);
        b += difference & sign; // the smaller one
        a = ((difference ^ sign) - sign) >> trailing_zeros(difference);
    }
    return a << shared;
}

/// Brings total / under, the sum of a/b and c/d in lowest terms with total = a d + c b and under = b d, to lowest
/// terms. With g = gcd(b, d) it is t / (b/g * d), t = a (d/g) + c (b/g), and only factors of g can still be shared,
/// since a prime of b/g divides neither a nor d/g, and likewise for d/g.
template <class Whole>
constexpr void reduce_sum(Whole& total, Whole& under, std::int64_t b, std::int64_t d) noexcept {
    const auto g = static_cast<std::int64_t>(gcd(static_cast<std::uint64_t>(b), static_cast<std::uint64_t>(d)));
    if (g == 1)
        return;
    total /= g;
    const auto rest = static_cast<std::int64_t>(total % g);
    const auto shared = static_cast<std::int64_t>(gcd(magnitude(rest), static_cast<std::uint64_t>(g)));
    total /= shared;
    under /= Whole{g} * shared;
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
        if (are_small(x, y)) [[likely]]
            return small_sum(x, y, x.numerator_ * y.denominator_ + y.numerator_ * x.denominator_);
        return large_sum(x, y, wide(x.numerator_) * y.denominator_ + wide(y.numerator_) * x.denominator_);
    }

    friend constexpr fraction operator-(fraction x, fraction y) {
        if (are_small(x, y)) [[likely]]
            return small_sum(x, y, x.numerator_ * y.denominator_ - y.numerator_ * x.denominator_);
        return large_sum(x, y, wide(x.numerator_) * y.denominator_ - wide(y.numerator_) * x.denominator_);
    }

    friend constexpr fraction operator*(fraction x, fraction y) {
        if (are_small(x, y)) [[likely]] {
            const std::int64_t under = x.denominator_ * y.denominator_;
            if (is_power_of_two(under))
                return halved(x.numerator_ * y.numerator_, under);
        }
        return product(x, y.numerator_, y.denominator_);
    }

    /// Throws zero_denominator_error too.
    friend constexpr fraction operator/(fraction x, fraction y) {
        if (y.numerator_ == 0)
            division_by_zero();
        return product(x, y.denominator_, y.numerator_);
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

    /// Numerators from -2^30 to 2^30 and denominators below 2^31, as nearly all are: then the product of two parts, and
    /// the sum of two such products, are below 2^62. All four are tested at once.
    static constexpr bool are_small(fraction x, fraction y) noexcept {
        constexpr std::uint64_t limit = std::uint64_t{1} << 30;
        const std::uint64_t a = static_cast<std::uint64_t>(x.numerator_) + limit;
        const std::uint64_t c = static_cast<std::uint64_t>(y.numerator_) + limit;
        const auto b = static_cast<std::uint64_t>(x.denominator_), d = static_cast<std::uint64_t>(y.denominator_);
        return (a | b | c | d) >> 31 == 0;
    }

    static constexpr detail::int128 wide(std::int64_t n) noexcept { return n; }

    /// The one gate to 64 bits for results that may be too large: over / under in lowest terms, with its sign.
    static constexpr fraction made(bool negative, detail::uint128 over, detail::uint128 under) {
        constexpr auto largest = static_cast<std::uint64_t>(std::numeric_limits<std::int64_t>::max());
        if (over > largest + (negative ? 1U : 0U) || under > largest)
            does_not_fit_64_bits("the result of an exact calculation");
        const auto size = static_cast<std::uint64_t>(over);
        return fraction(lowest_terms{}, static_cast<std::int64_t>(negative ? std::uint64_t{0} - size : size),
                        static_cast<std::int64_t>(under));
    }

    static constexpr bool is_power_of_two(std::int64_t n) noexcept { return (n & (n - 1)) == 0; }

    /// n / d for a power of two d: they can only share a power of two, which is found by counting and needs no
    /// division.
    static constexpr fraction halved(std::int64_t n, std::int64_t d) noexcept {
        const int shared = detail::trailing_zeros(static_cast<std::uint64_t>(n | d));
        return fraction(lowest_terms{}, n >> shared, d >> shared);
    }

    /// `total` is the numerator over the product of the denominators. That is a power of two exactly where both are:
    /// halves, quarters, ... as on an inch ruler.
    static constexpr fraction small_sum(fraction x, fraction y, std::int64_t total) noexcept {
        std::int64_t under = x.denominator_ * y.denominator_;
        if (is_power_of_two(under))
            return halved(total, under);
        detail::reduce_sum(total, under, x.denominator_, y.denominator_);
        return fraction(lowest_terms{}, total, under);
    }

    /// The same for numbers of any size: |total| < 2^127.
    static constexpr fraction large_sum(fraction x, fraction y, detail::int128 total) {
        detail::int128 under = wide(x.denominator_) * y.denominator_;
        detail::reduce_sum(total, under, x.denominator_, y.denominator_);
        const bool negative = total < 0;
        return made(negative, static_cast<detail::uint128>(negative ? -total : total),
                    static_cast<detail::uint128>(under));
    }

    /// x * n/d for n/d in lowest terms, d of either sign but not 0. Reduced crosswise before multiplying, so that the
    /// products are in lowest terms already.
    static constexpr fraction product(fraction x, std::int64_t n, std::int64_t d) {
        const std::uint64_t a = detail::magnitude(x.numerator_), b = detail::magnitude(x.denominator_);
        const std::uint64_t c = detail::magnitude(n), e = detail::magnitude(d);
        const std::uint64_t first = detail::gcd(a, e), second = detail::gcd(c, b);
        return made(((x.numerator_ < 0) != (n < 0)) != (d < 0), detail::uint128{a / first} * (c / second),
                    detail::uint128{b / second} * (e / first));
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
