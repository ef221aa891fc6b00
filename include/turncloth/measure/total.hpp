// Long sums, brought to lowest terms once instead of at each step.
//
//   total(range)               of fractions, or of lengths in one unit; of nothing it is zero
//   class running_total<N>     += and -= as long as there is something to add; value() at any time, so also the places
//                              that widths in a row add up to
//   class graduated_total<N>   a count of graduations of one ruler, for those who count already
//
//   constexpr std::array strips = {"2 1/2"_in, "3/8"_in, "2 1/2"_in};
//   static_assert(total(strips) == "5 3/8"_in);
//
// Whatever is halved and halved again, as inches are, is added as a count of 2^-62 in 128 bits: no division, and no step
// that waits for a common factor to be found. Other denominators are brought to their least common one.
#ifndef TURNCLOTH_MEASURE_TOTAL_HPP
#define TURNCLOTH_MEASURE_TOTAL_HPP

#include <turncloth/measure/rounding.hpp>

#include <cstdint>
#include <iterator>
#include <type_traits>

namespace turncloth {

namespace detail {

/// Throws overflow_error, and leaves what was summed before as it was.
template <class Whole>
constexpr Whole checked_sum(Whole a, Whole b) {
    Whole sum = 0;
    if (overflows_plus(a, b, sum)) [[unlikely]]
        width_64::does_not_fit();
    return sum;
}

/// over / under, not in lowest terms, with the least common denominator of all that was added.
class common_total {
public:
    constexpr bool is_zero() const noexcept { return over_ == 0; }

    /// |n| <= 2^63, so what is added is below 2^126.
    constexpr void add(int128 n, std::int64_t d) {
        if (under_ % d != 0)
            bring_to(d);
        over_ = checked_sum(over_, n * (under_ / d));
    }

    constexpr fraction value() const { return multiple(over_, fraction(1, under_)); }

private:
    /// To a denominator that d divides.
    constexpr void bring_to(std::int64_t d) {
        const auto shared = static_cast<std::int64_t>(
            greatest_common_divisor<width_64>(static_cast<std::uint64_t>(under_), static_cast<std::uint64_t>(d)));
        const std::int64_t times = d / shared;
        std::int64_t under = 0;
        int128 over = 0;
        if (overflows_times(under_, times, under) || overflows_times(over_, int128{times}, over))
            width_64::does_not_fit();
        under_ = under;
        over_ = over;
    }

    int128 over_ = 0;
    std::int64_t under_ = 1;
};

/// A sum of fractions.
class fraction_total {
public:
    constexpr void add(int128 n, std::int64_t d) {
        if ((d & (d - 1)) != 0) [[unlikely]] {
            others_.add(n, d);
            return;
        }
        // |n| <= 2^63, so what is added is at most 2^125.
        const int finer = finest - width_64::trailing_zeros(static_cast<std::uint64_t>(d));
        halves_ = checked_sum(halves_, n * (std::int64_t{1} << finer));
    }

    constexpr fraction value() const {
        const fraction halves = halved();
        return others_.is_zero() ? halves : halves + others_.value();
    }

private:
    static constexpr int finest = 62; // no denominator is a higher power of two than 2^62

    constexpr fraction halved() const {
        const auto low = static_cast<std::uint64_t>(halves_);
        const int zeros = low == 0 ? finest : width_64::trailing_zeros(low);
        const int shared = zeros < finest ? zeros : finest;
        const int128 over = halves_ >> shared;
        if (!fits(over))
            width_64::does_not_fit();
        return fraction(static_cast<std::int64_t>(over), std::int64_t{1} << (finest - shared));
    }

    int128 halves_ = 0; // a count of 2^-62
    common_total others_;
};

/// The plain number in a fraction or a length, and a fraction or length of it.
template <class Number>
constexpr fraction bare_number_of(const Number& x) {
    if constexpr (std::is_same_v<Number, fraction>)
        return x;
    else
        return x.value();
}
template <class Number>
constexpr Number number_from(fraction x) {
    if constexpr (std::is_same_v<Number, fraction>)
        return x;
    else
        return Number::from_value(x);
}

} // namespace detail

/// A sum of fractions, lengths or areas in one unit that grows. Throws overflow_error where the sum does not fit, or what
/// is added over powers of two, or over other denominators, passes 2^64 by itself on the way; and where those others have
/// no common denominator within 64 bits. What cannot be added leaves the sum as it was.
template <class Number = fraction>
class running_total {
public:
    constexpr running_total& operator+=(const Number& x) {
        const fraction bare = detail::bare_number_of(x);
        sum_.add(numerator(bare), denominator(bare));
        return *this;
    }
    constexpr running_total& operator-=(const Number& x) {
        const fraction bare = detail::bare_number_of(x);
        sum_.add(-detail::int128{numerator(bare)}, denominator(bare));
        return *this;
    }

    /// In lowest terms.
    constexpr Number value() const { return detail::number_from<Number>(sum_.value()); }

private:
    detail::fraction_total sum_;
};

/// The sum of a range of fractions, or of lengths in one unit. Throws overflow_error as running_total does.
template <class Range>
constexpr auto total(const Range& range) {
    running_total<std::remove_cvref_t<decltype(*std::begin(range))>> sum;
    for (const auto& x : range)
        sum += x;
    return sum.value();
}

/// A sum of counts on one ruler: graduated_total("1/64"_in) += 40 is 5/8 in. Throws range_error for a graduation that is
/// not above zero, overflow_error where the count, or its value, does not fit.
template <class Number>
class graduated_total {
public:
    constexpr explicit graduated_total(const Number& graduation) : graduation_(graduation) {
        detail::require_step(detail::bare_number_of(graduation));
    }

    constexpr graduated_total& operator+=(std::int64_t graduations) {
        count_ = detail::checked_sum(count_, graduations);
        return *this;
    }
    constexpr graduated_total& operator-=(std::int64_t graduations) {
        std::int64_t less = 0;
        if (detail::overflows_minus(count_, graduations, less)) [[unlikely]]
            detail::width_64::does_not_fit();
        count_ = less;
        return *this;
    }

    constexpr std::int64_t count() const noexcept { return count_; }
    constexpr Number value() const {
        return detail::number_from<Number>(fraction(count_) * detail::bare_number_of(graduation_));
    }

private:
    Number graduation_;
    std::int64_t count_ = 0;
};

} // namespace turncloth

#endif
