// Integers of a few bits that notice when a step leaves their range, and every fraction made of them.
//
//   narrow<Bits>                         a Width for detail::rational
//   whole_of<Bits>  count_of<Bits>       its integers, signed and unsigned
//   check_every_pair<Bits>()             every operation and comparison of every two fractions, against int
//
// What is undefined, or would be lost, at 64 bits raises `left_range`: a signed sum, product or negation outside its
// range, a shift of bits that matter or by too many, a division by zero, a lowest number over -1, trailing zeros of zero.
// Unsigned differences and sums wrap as they do there.
#ifndef TURNCLOTH_TESTS_MEASURE_NARROW_HPP
#define TURNCLOTH_TESTS_MEASURE_NARROW_HPP

#include <turncloth/measure/detail/rational.hpp>

#include <doctest/doctest.h>

#include <compare>
#include <numeric>
#include <vector>

namespace narrow_integers {

inline bool left_range = false;
inline bool did_not_fit = false;

inline void require(bool holds) {
    if (!holds)
        left_range = true;
}

template <int Bits>
struct count_of;

template <int Bits>
struct whole_of {
    static constexpr int highest = (1 << (Bits - 1)) - 1, lowest = -highest - 1;
    int value = 0;

    constexpr whole_of() = default;
    constexpr explicit whole_of(int n) : value(n) { require(n >= lowest && n <= highest); }
    template <int Other>
    constexpr explicit whole_of(whole_of<Other> n) : whole_of(n.value) {}
    template <int Other> // modular, as C++20 has it
    constexpr explicit whole_of(count_of<Other> n);

    friend constexpr auto operator<=>(whole_of, whole_of) = default;
    friend constexpr whole_of operator+(whole_of a, whole_of b) { return whole_of(a.value + b.value); }
    friend constexpr whole_of operator-(whole_of a, whole_of b) { return whole_of(a.value - b.value); }
    friend constexpr whole_of operator*(whole_of a, whole_of b) { return whole_of(a.value * b.value); }
    friend constexpr whole_of operator-(whole_of a) { return whole_of(-a.value); }
    friend constexpr whole_of operator&(whole_of a, whole_of b) { return whole_of(a.value & b.value); }
    friend constexpr whole_of operator|(whole_of a, whole_of b) { return whole_of(a.value | b.value); }
    friend constexpr whole_of operator/(whole_of a, whole_of b) {
        require(b.value != 0);
        return whole_of(b.value == 0 ? 0 : a.value / b.value);
    }
    friend constexpr whole_of operator%(whole_of a, whole_of b) {
        require(b.value != 0 && !(a.value == lowest && b.value == -1));
        return whole_of(b.value == 0 ? 0 : a.value % b.value);
    }
    friend constexpr whole_of operator>>(whole_of a, int by) {
        require(by >= 0 && by < Bits);
        return whole_of(a.value >> by);
    }
};

template <int Bits>
struct count_of {
    static constexpr unsigned all = (1U << Bits) - 1;
    unsigned value = 0;

    constexpr count_of() = default;
    constexpr explicit count_of(int n) : value(static_cast<unsigned>(n)) { require(n >= 0 && value <= all); }
    constexpr explicit count_of(bool one) : value(one ? 1 : 0) {}
    template <int Other>
    constexpr explicit count_of(whole_of<Other> n) : value(static_cast<unsigned>(n.value) & all) {}
    template <int Other> // no bit that matters is ever cut off
    constexpr explicit count_of(count_of<Other> n) : value(n.value & all) {
        require(value == n.value || did_not_fit);
    }

    friend constexpr auto operator<=>(count_of, count_of) = default;
    friend constexpr count_of operator+(count_of a, count_of b) { return wrapped(a.value + b.value); }
    friend constexpr count_of operator-(count_of a, count_of b) { return wrapped(a.value - b.value); }
    friend constexpr count_of operator*(count_of a, count_of b) {
        require(a.value * b.value <= all);
        return wrapped(a.value * b.value);
    }
    friend constexpr count_of operator&(count_of a, count_of b) { return wrapped(a.value & b.value); }
    friend constexpr count_of operator|(count_of a, count_of b) { return wrapped(a.value | b.value); }
    friend constexpr count_of operator^(count_of a, count_of b) { return wrapped(a.value ^ b.value); }
    friend constexpr count_of operator/(count_of a, count_of b) {
        require(b.value != 0);
        return wrapped(b.value == 0 ? 0 : a.value / b.value);
    }
    friend constexpr count_of operator%(count_of a, count_of b) {
        require(b.value != 0);
        return wrapped(b.value == 0 ? 0 : a.value % b.value);
    }
    friend constexpr count_of operator>>(count_of a, int by) {
        require(by >= 0 && by < Bits);
        return wrapped(a.value >> by);
    }
    friend constexpr count_of operator<<(count_of a, int by) {
        require(by >= 0 && by < Bits && (a.value << by) <= all);
        return wrapped(a.value << by);
    }

private:
    static constexpr count_of wrapped(unsigned n) {
        count_of result;
        result.value = n & all;
        return result;
    }
};

template <int Bits>
template <int Other>
constexpr whole_of<Bits>::whole_of(count_of<Other> n) {
    const auto kept = static_cast<int>(n.value & ((1U << Bits) - 1));
    value = kept > highest ? kept - (1 << Bits) : kept;
}

template <int Bits>
struct narrow {
    using whole = whole_of<Bits>;
    using count = count_of<Bits>;
    using wide = whole_of<2 * Bits>;
    using wide_count = count_of<2 * Bits>;
    static constexpr int bits = Bits;

    static constexpr int trailing_zeros(count n) {
        require(n.value != 0);
        return n.value == 0 ? 0 : __builtin_ctz(n.value);
    }
    static void does_not_fit() { did_not_fit = true; }
};

/// Every fraction of so many bits: -2^(Bits - 1) to 2^(Bits - 1) - 1 over 1 to 2^(Bits - 1) - 1, in lowest terms.
template <int Bits>
std::vector<turncloth::detail::rational<narrow<Bits>>> every_fraction() {
    using whole = whole_of<Bits>;
    std::vector<turncloth::detail::rational<narrow<Bits>>> all;
    for (int n = whole::lowest; n <= whole::highest; ++n)
        for (int d = 1; d <= whole::highest; ++d)
            if (std::gcd(n, d) == 1)
                all.push_back({whole(n), whole(d)});
    return all;
}

/// Whether an operation gave n / d, d not 0: in lowest terms where those fit, and `did_not_fit` where they do not. A result
/// is compared by cross products and by whether its terms share a factor, which needs no division by what they share.
template <int Bits>
class judge {
public:
    judge() : coprime_(std::size_t{1} << (2 * Bits)) {
        for (int n = 0; n < 1 << Bits; ++n)
            for (int d = 0; d < 1 << Bits; ++d)
                coprime_[index(n, d)] = std::gcd(n, d) == 1;
    }

    template <class Operation>
    bool agrees(Operation operation, int n, int d) const {
        did_not_fit = false;
        const auto [over, under] = operation();
        if (did_not_fit)
            return !fits(n, d) && !left_range;
        const int p = over.value, q = under.value;
        return q > 0 && p * d == n * q && coprime_[index(p < 0 ? -p : p, q)] && !left_range;
    }

private:
    static std::size_t index(int n, int d) { return static_cast<std::size_t>(n) << Bits | static_cast<std::size_t>(d); }

    static bool fits(int n, int d) {
        const int shared = std::gcd(n, d), sign = d < 0 ? -1 : 1, over = sign * (n / shared),
                  under = sign * (d / shared);
        return over >= whole_of<Bits>::lowest && over <= whole_of<Bits>::highest && under <= whole_of<Bits>::highest;
    }

    std::vector<char> coprime_;
};

template <int Bits>
bool right_for(const judge<Bits>& judge, turncloth::detail::rational<narrow<Bits>> x,
               turncloth::detail::rational<narrow<Bits>> y) {
    using rational = turncloth::detail::rational<narrow<Bits>>;
    const int a = x.over.value, b = x.under.value, c = y.over.value, d = y.under.value;
    return judge.agrees([&] { return rational::sum(x, y); }, a * d + c * b, b * d) &&
           judge.agrees([&] { return rational::difference(x, y); }, a * d - c * b, b * d) &&
           judge.agrees([&] { return rational::product(x, y); }, a * c, b * d) &&
           (c == 0 || judge.agrees([&] { return rational::quotient(x, y); }, a * d, b * c)) &&
           rational::is_below(x, y) == (a * d < c * b) && (x == y) == (a * d == c * b) && !left_range;
}

/// Every n / d, and the operations of one fraction.
template <int Bits>
void check_each() {
    using rational = turncloth::detail::rational<narrow<Bits>>;
    using whole = whole_of<Bits>;
    const judge<Bits> judge;
    left_range = false;
    for (int n = whole::lowest; n <= whole::highest; ++n)
        for (int d = whole::lowest; d <= whole::highest; ++d)
            if (d != 0 && !judge.agrees([&] { return rational::reduced(whole(n), whole(d)); }, n, d))
                FAIL_CHECK(n, " over ", d);
    for (const rational x : every_fraction<Bits>()) {
        const int n = x.over.value, d = x.under.value, down = n >= 0 ? n / d : -((-n + d - 1) / d);
        if (!judge.agrees([&] { return rational::negative(x); }, -n, d) || rational::floor_of(x).value != down ||
            rational::ceil_of(x).value != down + (n % d != 0 ? 1 : 0) || left_range)
            FAIL_CHECK(n, "/", d);
    }
}

template <int Bits>
void check_every_pair() {
    const judge<Bits> judge;
    const auto all = every_fraction<Bits>();
    left_range = false;
    int wrong = 0;
    for (const auto x : all)
        for (const auto y : all)
            if (!right_for<Bits>(judge, x, y) && ++wrong < 10) {
                FAIL_CHECK(x.over.value, "/", x.under.value, " and ", y.over.value, "/", y.under.value,
                           left_range ? ": a step leaves its range" : "");
                left_range = false;
            }
    CHECK(wrong == 0);
}

} // namespace narrow_integers

#endif
