// The arithmetic of fractions, written once for integers of any width.
//
//   rational<Width>                     over / under in lowest terms, under > 0
//   reduced(n, d)                       any n / d, d not 0         sum, difference, product, quotient, negative
//   order(x, y)  floor_of(x)  ceil_of(x)
//   width_64                            what `fraction` is made of: 64 bits, and 128 for products
//
//   rational<width_64>::sum({1, 4}, {3, 8}) == rational<width_64>{5, 8}
//
// A Width names its integers: `whole` and its unsigned `count` of so many `bits`, `wide` and `wide_count` of twice as
// many, and says what becomes of a result that does not fit. No step leaves its integer's range, whatever the operands:
// the tests hold that, and every result, for every pair of 8-bit fractions with integers that notice; tests/proofs has the
// same bounds at 64 bits for a solver. An internal header of fraction.hpp.
#ifndef TURNCLOTH_MEASURE_DETAIL_RATIONAL_HPP
#define TURNCLOTH_MEASURE_DETAIL_RATIONAL_HPP

#include <turncloth/measure/detail/wide.hpp>

#include <compare>
#include <cstdint>

namespace turncloth::detail {

template <class Width>
constexpr bool is_negative(typename Width::whole n) noexcept {
    return n < typename Width::whole{0};
}

/// n without its sign, for the lowest n too.
template <class Width>
constexpr typename Width::count magnitude_of(typename Width::whole n) noexcept {
    using count = typename Width::count;
    return is_negative<Width>(n) ? count{0} - static_cast<count>(n) : static_cast<count>(n);
}

/// Greatest common divisor of a and b, both above 0, by halving and subtracting until nothing but 1 can be left. Without a
/// branch on which operand is larger, as that cannot be predicted: `sign` is all ones where the difference is below zero
/// (the operands have lost their top bit by then), and |a - b| = (a - b ^ sign) - sign, which ends in as many noughts as
/// a - b.
template <class Width>
constexpr typename Width::count binary_gcd(typename Width::count a, typename Width::count b) noexcept {
    using whole = typename Width::whole;
    using count = typename Width::count;
    const int shared = Width::trailing_zeros(a | b);
    a = a >> Width::trailing_zeros(a);
    b = b >> Width::trailing_zeros(b);
    while (b != count{1} && a != b) {
        const count difference = a - b;
        const count sign = static_cast<count>(static_cast<whole>(difference) >> (Width::bits - 1));
        b = a < b ? a : b;
        a = ((difference ^ sign) - sign) >> Width::trailing_zeros(difference);
    }
    return b << shared;
}

/// The same for any a and for b above 0: one remainder first brings operands of unlike size together.
template <class Width>
constexpr typename Width::count greatest_common_divisor(typename Width::count a, typename Width::count b) noexcept {
    using count = typename Width::count;
    if (b == count{1})
        return b;
    a = a % b;
    return a == count{0} ? b : binary_gcd<Width>(a, b);
}

template <class Width>
struct rational {
    using whole = typename Width::whole;
    using count = typename Width::count;
    using wide = typename Width::wide;
    using wide_count = typename Width::wide_count;

    whole over, under;

    friend constexpr bool operator==(rational, rational) noexcept = default;

    /// n / d for any d but 0. By magnitudes, since the shared factor itself may be 2^(bits - 1) and a sign may have to
    /// change.
    static constexpr rational reduced(whole n, whole d) {
        const count above = magnitude(n), below = magnitude(d), shared = gcd(above, below);
        return made(is_negative<Width>(n) != is_negative<Width>(d), widened(above / shared), widened(below / shared));
    }

    /// Cross products fit the wide integers, so an order has no case that fails.
    static constexpr bool is_below(rational x, rational y) noexcept {
        return widened(x.over) * widened(y.under) < widened(y.over) * widened(x.under);
    }

    static constexpr rational negative(rational x) {
        return made(x.over > whole{0}, widened(magnitude(x.over)), widened(magnitude(x.under)));
    }

    static constexpr rational sum(rational x, rational y) {
        if (are_small(x, y)) [[likely]]
            return small_sum(x, y, x.over * y.under + y.over * x.under);
        return large_sum(x, y, widened(x.over) * widened(y.under) + widened(y.over) * widened(x.under));
    }

    static constexpr rational difference(rational x, rational y) {
        if (are_small(x, y)) [[likely]]
            return small_sum(x, y, x.over * y.under - y.over * x.under);
        return large_sum(x, y, widened(x.over) * widened(y.under) - widened(y.over) * widened(x.under));
    }

    static constexpr rational product(rational x, rational y) {
        if (are_small(x, y)) [[likely]] {
            const whole below = x.under * y.under;
            if (is_power_of_two(below))
                return halved(x.over * y.over, below);
        }
        return crosswise(x, y.over, y.under);
    }

    /// For y other than 0.
    static constexpr rational quotient(rational x, rational y) { return crosswise(x, y.under, y.over); }

    static constexpr whole floor_of(rational x) noexcept {
        const whole toward_zero = x.over / x.under;
        return x.over % x.under < whole{0} ? toward_zero - whole{1} : toward_zero;
    }
    static constexpr whole ceil_of(rational x) noexcept {
        const whole toward_zero = x.over / x.under;
        return x.over % x.under > whole{0} ? toward_zero + whole{1} : toward_zero;
    }

private:
    static constexpr count magnitude(whole n) noexcept { return magnitude_of<Width>(n); }
    static constexpr count gcd(count a, count b) noexcept { return greatest_common_divisor<Width>(a, b); }
    static constexpr wide widened(whole n) noexcept { return static_cast<wide>(n); }
    static constexpr wide_count widened(count n) noexcept { return static_cast<wide_count>(n); }

    /// Numerators from -2^30 to 2^30 and denominators below 2^31 where there are 64 bits, as nearly all are: then the
    /// product of two parts, and the sum of two such products, are below 2^62. All four are tested at once.
    static constexpr bool are_small(rational x, rational y) noexcept {
        const count limit = count{1} << (Width::bits / 2 - 2);
        const count a = static_cast<count>(x.over) + limit, b = static_cast<count>(x.under);
        const count c = static_cast<count>(y.over) + limit, d = static_cast<count>(y.under);
        return (a | b | c | d) >> (Width::bits / 2 - 1) == count{0};
    }

    static constexpr bool is_power_of_two(whole n) noexcept { return (n & (n - whole{1})) == whole{0}; }

    /// The one gate for results that may be too large: above / below in lowest terms, with its sign.
    static constexpr rational made(bool below_zero, wide_count above, wide_count below) {
        const wide_count largest = widened((count{0} - count{1}) >> 1);
        if (above > largest + wide_count{below_zero} || below > largest)
            Width::does_not_fit();
        const count size = static_cast<count>(above);
        return {static_cast<whole>(below_zero ? count{0} - size : size), static_cast<whole>(below)};
    }

    /// n / d for a power of two d: they can only share a power of two, which is found by counting and needs no
    /// division.
    static constexpr rational halved(whole n, whole d) noexcept {
        const int shared = Width::trailing_zeros(static_cast<count>(n | d));
        return {n >> shared, d >> shared};
    }

    /// Brings total / below, the sum of a/b and c/d in lowest terms with total = a d + c b and below = b d, to lowest
    /// terms. With g = gcd(b, d) it is t / (b/g * d), t = a (d/g) + c (b/g), and only factors of g can still be shared,
    /// since a prime of b/g divides neither a nor d/g, and likewise for d/g.
    template <class Total>
    static constexpr void reduce_sum(Total& total, Total& below, whole b, whole d) noexcept {
        const count g = binary_gcd<Width>(static_cast<count>(b), static_cast<count>(d));
        if (g == count{1})
            return;
        const Total factor = static_cast<Total>(g);
        total = total / factor;
        below = below / factor;
        const count rest = magnitude(static_cast<whole>(total % factor));
        const count shared = rest == count{0} ? g : binary_gcd<Width>(rest, g);
        if (shared == count{1})
            return;
        total = total / static_cast<Total>(shared);
        below = below / static_cast<Total>(shared);
    }

    /// `total` is the numerator over the product of the denominators. That is a power of two exactly where both are:
    /// halves, quarters, ... as on an inch ruler.
    static constexpr rational small_sum(rational x, rational y, whole total) noexcept {
        whole below = x.under * y.under;
        if (is_power_of_two(below))
            return halved(total, below);
        reduce_sum(total, below, x.under, y.under);
        return {total, below};
    }

    /// The same for numbers of any size: |total| < 2^(2 bits - 1).
    static constexpr rational large_sum(rational x, rational y, wide total) {
        wide below = widened(x.under) * widened(y.under);
        reduce_sum(total, below, x.under, y.under);
        const bool below_zero = total < wide{0};
        return made(below_zero, static_cast<wide_count>(below_zero ? -total : total), static_cast<wide_count>(below));
    }

    /// x * n/d for n/d in lowest terms, d of either sign but not 0. Reduced crosswise before multiplying, so that the
    /// products are in lowest terms already.
    static constexpr rational crosswise(rational x, whole n, whole d) {
        count a = magnitude(x.over), b = magnitude(x.under), c = magnitude(n), e = magnitude(d);
        if (const count shared = gcd(a, e); shared != count{1}) {
            a = a / shared;
            e = e / shared;
        }
        if (const count shared = gcd(c, b); shared != count{1}) {
            c = c / shared;
            b = b / shared;
        }
        const bool below_zero = (is_negative<Width>(x.over) != is_negative<Width>(n)) != is_negative<Width>(d);
        return made(below_zero, widened(a) * widened(c), widened(b) * widened(e));
    }
};

} // namespace turncloth::detail

#endif
