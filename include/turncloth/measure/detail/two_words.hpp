// Whole numbers of 128 bits made of two 64-bit words, for a compiler that has none of its own; see wide.hpp.
//
//   two_words<true>  two_words<false>      with a sign, in two's complement, and without one
//
//   static_assert(two_words<true>(-7) / 2 == -3 && two_words<false>(1) << 100 > ~std::uint64_t{0});
//
// Everything that the library does with such numbers, and in constant expressions: arithmetic, bits, order, and to and from
// narrower integers and doubles. A narrower integer converts by itself, as it does to a wider one.
#ifndef TURNCLOTH_MEASURE_DETAIL_TWO_WORDS_HPP
#define TURNCLOTH_MEASURE_DETAIL_TWO_WORDS_HPP

#include <turncloth/measure/detail/bits.hpp>

#include <bit>
#include <compare>
#include <concepts>
#include <cstdint>

namespace turncloth::detail {

/// Two's complement in two 64-bit words: each operation is the one of the compiler's 128-bit numbers, bit for bit, but for
/// signed results beyond 127 bits, which those leave undefined and these let wrap.
template <bool Signed>
class two_words {
public:
    constexpr two_words() noexcept = default;
    template <std::integral Whole>
    constexpr two_words(Whole n) noexcept // implicit, as a narrower number is wherever a wider one is wanted
        : low_(static_cast<std::uint64_t>(n)),
          high_(std::signed_integral<Whole> && n < Whole{} ? ~std::uint64_t{0} : 0) {}
    constexpr explicit two_words(two_words<!Signed> n) noexcept : low_(n.low_), high_(n.high_) {}
    constexpr explicit two_words(double d) noexcept;

    template <std::integral Whole>
    constexpr explicit operator Whole() const noexcept {
        return static_cast<Whole>(low_);
    }
    constexpr explicit operator bool() const noexcept { return (low_ | high_) != 0; }
    constexpr explicit operator double() const noexcept;

    friend constexpr two_words operator~(two_words a) noexcept { return words(~a.low_, ~a.high_); }
    friend constexpr two_words operator+(two_words a, two_words b) noexcept {
        const std::uint64_t low = a.low_ + b.low_;
        return words(low, a.high_ + b.high_ + (low < a.low_ ? 1U : 0U));
    }
    friend constexpr two_words operator-(two_words a) noexcept { return ~a + 1; }
    friend constexpr two_words operator-(two_words a, two_words b) noexcept { return a + -b; }
    friend constexpr two_words operator*(two_words a, two_words b) noexcept {
        two_words product = of_words(a.low_, b.low_);
        product.high_ += a.low_ * b.high_ + a.high_ * b.low_;
        return product;
    }
    friend constexpr two_words operator/(two_words a, two_words b) noexcept {
        positive rest = a.size();
        const positive quotient = divided(rest, b.size());
        return two_words(a.is_negative() != b.is_negative() ? -quotient : quotient);
    }
    friend constexpr two_words operator%(two_words a, two_words b) noexcept {
        positive rest = a.size();
        divided(rest, b.size());
        return two_words(a.is_negative() ? -rest : rest);
    }

    friend constexpr two_words operator&(two_words a, two_words b) noexcept {
        return words(a.low_ & b.low_, a.high_ & b.high_);
    }
    friend constexpr two_words operator|(two_words a, two_words b) noexcept {
        return words(a.low_ | b.low_, a.high_ | b.high_);
    }
    template <std::integral Count>
    friend constexpr two_words operator<<(two_words a, Count by) noexcept {
        if (by == 0)
            return a;
        return by < 64 ? words(a.low_ << by, a.high_ << by | a.low_ >> (64 - by)) : words(0, a.low_ << (by - 64));
    }
    template <std::integral Count>
    friend constexpr two_words operator>>(two_words a, Count by) noexcept {
        if (by == 0)
            return a;
        const std::uint64_t sign = a.is_negative() ? ~std::uint64_t{0} : 0;
        if (by < 64)
            return words(a.low_ >> by | a.high_ << (64 - by), a.high_ >> by | (sign << 1) << (63 - by));
        const auto rest = by - 64;
        return words(rest == 0 ? a.high_ : a.high_ >> rest | (sign << 1) << (63 - rest), sign);
    }

    constexpr two_words& operator+=(two_words b) noexcept { return *this = *this + b; }
    constexpr two_words& operator-=(two_words b) noexcept { return *this = *this - b; }
    constexpr two_words& operator*=(two_words b) noexcept { return *this = *this * b; }
    constexpr two_words& operator/=(two_words b) noexcept { return *this = *this / b; }
    constexpr two_words& operator%=(two_words b) noexcept { return *this = *this % b; }
    template <std::integral Count>
    constexpr two_words& operator<<=(Count by) noexcept {
        return *this = *this << by;
    }
    template <std::integral Count>
    constexpr two_words& operator>>=(Count by) noexcept {
        return *this = *this >> by;
    }
    constexpr two_words& operator++() noexcept { return *this += 1; }
    constexpr two_words& operator--() noexcept { return *this -= 1; }

    friend constexpr bool operator==(two_words, two_words) noexcept = default;
    friend constexpr std::strong_ordering operator<=>(two_words a, two_words b) noexcept {
        if (a.is_negative() != b.is_negative())
            return a.is_negative() ? std::strong_ordering::less : std::strong_ordering::greater;
        return a.high_ != b.high_ ? a.high_ <=> b.high_ : a.low_ <=> b.low_;
    }

private:
    friend class two_words<!Signed>;
    using positive = two_words<false>;

    static constexpr two_words words(std::uint64_t low, std::uint64_t high) noexcept {
        two_words n;
        n.low_ = low;
        n.high_ = high;
        return n;
    }
    constexpr bool is_negative() const noexcept { return Signed && high_ >> 63 != 0; }
    constexpr positive size() const noexcept { return positive(is_negative() ? -*this : *this); }

    /// The whole product of two words, from four products of their halves.
    static constexpr two_words of_words(std::uint64_t a, std::uint64_t b) noexcept {
        constexpr std::uint64_t half = 0xFFFF'FFFFU;
        const std::uint64_t low = (a & half) * (b & half), upper = (a >> 32) * (b & half),
                            lower = (a & half) * (b >> 32);
        const std::uint64_t middle = (low >> 32) + (upper & half) + (lower & half); // below 3 * 2^32
        return words(middle << 32 | (low & half),
                     (a >> 32) * (b >> 32) + (upper >> 32) + (lower >> 32) + (middle >> 32));
    }

    /// How many bits the number has, up to the highest that is set.
    static constexpr int bits_of(positive n) noexcept {
        return 128 - (n.high_ != 0 ? std::countl_zero(n.high_) : 64 + std::countl_zero(n.low_));
    }

    /// The quotient of a / b, and leaves the rest in a: by hand, in base 2. The divisor is brought under the highest bit
    /// and taken off wherever it goes.
    static constexpr positive divided(positive& a, positive b) noexcept {
        if (a.high_ == 0 && b.high_ == 0) {
            const std::uint64_t quotient = a.low_ / b.low_;
            a.low_ %= b.low_;
            return quotient;
        }
        positive quotient = 0;
        for (int shift = bits_of(a) - bits_of(b); shift >= 0; --shift)
            if (const positive there = b << shift; there <= a) {
                a -= there;
                quotient = quotient | positive(1) << shift;
            }
        return quotient;
    }

    std::uint64_t low_ = 0, high_ = 0;
};

/// Rounded to the nearest double, as the compiler's own conversion is: the upper 64 bits, of which the last says whether
/// anything lies below them, are converted by the machine, and a power of two loses nothing.
template <bool Signed>
constexpr two_words<Signed>::operator double() const noexcept {
    const positive n = size();
    const int over = bits_of(n) - 64;
    double d = 0;
    if (over <= 0) {
        d = static_cast<double>(n.low_);
    } else {
        const std::uint64_t below = (n.low_ << (64 - over)) != 0 ? 1 : 0;
        d = static_cast<double>((n >> over).low_ | below) *
            bits_as<double>(static_cast<std::uint64_t>(over + 1023) << 52);
    }
    return is_negative() ? -d : d;
}

/// Toward zero, for a finite double whose whole part fits.
template <bool Signed>
constexpr two_words<Signed>::two_words(double d) noexcept {
    const auto bits = bits_as<std::uint64_t>(d);
    const int exponent = static_cast<int>(bits >> 52 & 0x7FFU) - 1075; // of the lowest of 53 bits
    const positive whole = (bits & 0xF'FFFF'FFFF'FFFFU) | std::uint64_t{1} << 52;
    const positive size = exponent >= 0 ? whole << exponent : exponent > -53 ? whole >> -exponent : positive(0);
    *this = two_words(bits >> 63 != 0 ? -size : size);
}

} // namespace turncloth::detail

#endif
