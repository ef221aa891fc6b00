// fraction: its invariant and its arithmetic, at compile time, and against GMP over a million random pairs.
#include "against_gmp.hpp"
#include <turncloth/measure/fraction.hpp>

#include <doctest/doctest.h>

#include <array>
#include <cmath>
#include <string>
#include <type_traits>
#include <unordered_set>

using namespace turncloth;
using against_gmp::largest;
using against_gmp::lowest;

namespace {

// Lowest terms and a denominator above zero, however it is made.
static_assert(numerator(fraction(6, 8)) == 3);
static_assert(denominator(fraction(6, 8)) == 4);
static_assert(numerator(fraction(6, -8)) == -3);
static_assert(denominator(fraction(6, -8)) == 4);
static_assert(numerator(fraction(-6, -8)) == 3);
static_assert(denominator(fraction(-6, -8)) == 4);
static_assert(numerator(fraction(0, -5)) == 0);
static_assert(denominator(fraction(0, -5)) == 1);
static_assert(fraction() == 0);
static_assert(fraction(7) == fraction(7, 1));
static_assert(fraction(7U) == 7);
static_assert(fraction(lowest, lowest) == 1);
static_assert(fraction(lowest, -2) == fraction(std::int64_t{1} << 62));
static_assert(numerator(fraction(lowest, largest)) == lowest);
static_assert(denominator(fraction(lowest, largest)) == largest);
static_assert(std::is_trivially_copyable_v<fraction>);
static_assert(std::is_nothrow_default_constructible_v<fraction>);
static_assert(sizeof(fraction) == 16);

// Whole numbers convert; nothing that could lose its exactness or its meaning does.
static_assert(std::is_convertible_v<int, fraction> && std::is_convertible_v<unsigned long, fraction>);
static_assert(!std::is_constructible_v<fraction, double> && !std::is_constructible_v<fraction, float>);
static_assert(!std::is_constructible_v<fraction, bool> && !std::is_constructible_v<fraction, const char*>);
static_assert(!std::is_convertible_v<fraction, double> && !std::is_convertible_v<fraction, std::int64_t>);

// The arithmetic of school, on the fast way (powers of two below) and on the general one.
static_assert(fraction(1, 4) + fraction(3, 8) == fraction(5, 8));
static_assert(fraction(5, 16) - fraction(13, 16) == fraction(-1, 2));
static_assert(fraction(3, 8) * fraction(4) == fraction(3, 2));
static_assert(fraction(3, 8) / fraction(-3, 4) == fraction(-1, 2));
static_assert(fraction(1, 3) + fraction(1, 6) == fraction(1, 2));
static_assert(fraction(5, 12) - fraction(1, 6) == fraction(1, 4));
static_assert(fraction(9, 10) * fraction(-5, 27) == fraction(-1, 6));
static_assert(fraction(2, 3) / fraction(4, 9) == fraction(3, 2));
static_assert(-fraction(1, 3) == fraction(-1, 3));
static_assert(+fraction(1, 3) == fraction(1, 3));
static_assert(reciprocal(fraction(-2, 3)) == fraction(-3, 2));
static_assert(abs(fraction(-2, 3)) == fraction(2, 3));
static_assert(abs(fraction(2, 3)) == fraction(2, 3));
static_assert(is_whole(fraction(4, 2)));
static_assert(!is_whole(fraction(4, 3)));
static_assert(to_double(fraction(-3, 4)) == -0.75);
static_assert([] {
    fraction x = 1;
    x += fraction(1, 2);
    x *= 4;
    x -= fraction(1, 3);
    x /= 2;
    return x == fraction(17, 6);
}());

// Order, also where cross products pass 64 bits.
static_assert(fraction(1, 3) < fraction(1, 2));
static_assert(fraction(-1, 2) < fraction(-1, 3));
static_assert(fraction(1, 2) <= fraction(2, 4));
static_assert(fraction(largest, largest - 1) < fraction(largest - 1, largest - 2));
static_assert(fraction(lowest, largest) < fraction(lowest + 2, largest));
static_assert(fraction(lowest) < fraction(1, largest));
static_assert(std::is_same_v<decltype(fraction() <=> fraction()), std::strong_ordering>);

static_assert(floor(fraction(7, 2)) == 3);
static_assert(floor(fraction(-7, 2)) == -4);
static_assert(floor(fraction(-8, 2)) == -4);
static_assert(ceil(fraction(7, 2)) == 4);
static_assert(ceil(fraction(-7, 2)) == -3);
static_assert(ceil(fraction(8, 2)) == 4);

// The edge of 64 bits is reached, and not left, by each operation.
static_assert(fraction(largest) + fraction(lowest) == -1);
static_assert(fraction(lowest) + fraction(largest) == -1);
static_assert(fraction(largest) - fraction(largest, 1) == 0);
static_assert(fraction(-1) - fraction(largest) == fraction(lowest));
static_assert(fraction(std::int64_t{1} << 62, 3) * -6 == fraction(lowest));
static_assert(fraction(1, largest) * fraction(largest) == 1);
static_assert(fraction(lowest) * fraction(1, 2) == lowest / 2);
static_assert(fraction(lowest) / fraction(lowest, 3) == 3);
static_assert(fraction(lowest) / fraction(lowest) == 1);
static_assert(-fraction(largest) == fraction(lowest + 1));
static_assert(reciprocal(fraction(-largest)) == fraction(-1, largest));

/// Whether one operation agrees with GMP: the exact result where its lowest terms fit, overflow_error where not.
template <class Operation>
bool agrees(Operation operation, const mpq_class& expected) {
    const bool expected_to_fit = against_gmp::fits(expected);
    try {
        const fraction result = operation();
        return expected_to_fit && against_gmp::same(result, expected);
    } catch (const overflow_error&) {
        return !expected_to_fit;
    }
}

/// The first operation that does not agree, or nothing.
const char* disagreement(fraction x, fraction y) {
    static mpq_class p, q, r;
    against_gmp::assign(p, x);
    against_gmp::assign(q, y);
    r = p + q;
    if (!agrees([&] { return x + y; }, r))
        return "+";
    r = p - q;
    if (!agrees([&] { return x - y; }, r))
        return "-";
    r = p * q;
    if (!agrees([&] { return x * y; }, r))
        return "*";
    if (q != 0) {
        r = p / q;
        if (!agrees([&] { return x / y; }, r))
            return "/";
    }
    const int order = cmp(p, q);
    if ((x < y) != (order < 0) || (x > y) != (order > 0) || (x == y) != (order == 0) || (x <= y) != (order <= 0) ||
        (x >= y) != (order >= 0) || (x <=> y) != (order <=> 0))
        return "compare";
    return nullptr;
}

std::string text(fraction x) { return std::to_string(numerator(x)) + "/" + std::to_string(denominator(x)); }

void check(fraction x, fraction y) {
    if (const char* wrong = disagreement(x, y))
        FAIL(text(x), " ", wrong, " ", text(y), " differs from GMP");
}

} // namespace

TEST_CASE("a million random pairs give what GMP gives, and overflow exactly where its lowest terms do not fit") {
    against_gmp::sampler random(1959);
    while (random.another_of(1'000'000))
        check(random.mixed(), random.mixed());
    int refused = 0;
    while (random.another_of(50'000)) {
        const fraction x = random.near_overflow(), y = random.near_overflow();
        check(x, y);
        try {
            static_cast<void>(x + y);
        } catch (const overflow_error&) {
            ++refused;
        }
    }
    CHECK(refused > 5'000);          // the border is crossed
    CHECK(50'000 - refused > 5'000); // and kept
}

TEST_CASE("results near the border of 64 bits that reduce to something small are given, not refused") {
    against_gmp::sampler random(1824);
    int met = 0;
    while (random.another_of(20'000)) {
        // A partner is made for x, with which the result is a chosen simple number.
        const fraction x = random.bits() % 2 == 0 ? random.near_overflow() : random.of_any_size();
        const fraction simple = random.awkward();
        const mpq_class p = against_gmp::exact(x), s = against_gmp::exact(simple);
        for (const mpq_class& partner :
             {mpq_class(s - p), mpq_class(p - s), mpq_class(p == 0 ? s : s / p), mpq_class(s == 0 ? p : p / s)}) {
            if (!against_gmp::fits(partner))
                continue;
            check(x, fraction(partner.get_num().get_si(), partner.get_den().get_si()));
            ++met;
        }
    }
    CHECK(met > 20'000);
}

TEST_CASE("every pair of the extreme values gives what GMP gives") {
    const std::array edges = {lowest,           lowest + 1,       lowest / 2,
                              std::int64_t{-2}, std::int64_t{-1}, std::int64_t{0},
                              std::int64_t{1},  std::int64_t{2},  std::int64_t{1} << 62,
                              largest - 1,      largest};
    std::unordered_set<fraction> values;
    for (const std::int64_t n : edges)
        for (const std::int64_t d : edges)
            if (d > 0)
                values.insert(fraction(n, d));
    CHECK(values.size() > 40);
    for (const fraction x : values)
        for (const fraction y : values)
            check(x, y);
}

TEST_CASE("floor, ceil, sign and reciprocal are those of GMP") {
    against_gmp::sampler random(1893);
    while (random.another_of(200'000)) {
        const fraction x = random.mixed();
        const mpq_class q = against_gmp::exact(x);
        if (against_gmp::floor(q) != floor(x) || against_gmp::ceil(q) != ceil(x) || !agrees([&] { return -x; }, -q) ||
            !agrees([&] { return abs(x); }, abs(q)) ||
            (q != 0 && !agrees([&] { return reciprocal(x); }, mpq_class(1 / q))))
            FAIL(text(x), " differs from GMP");
    }
}

TEST_CASE("a fraction is brought to lowest terms as GMP brings it, or refused where the sign has no place to go") {
    against_gmp::sampler random(1791);
    for (const int i : random.cases(200'000)) {
        const auto part = [&] { return static_cast<std::int64_t>(random.bits()) >> random.between(0, 63); };
        const std::int64_t n = i % 7 == 0 ? lowest : part(), d = i % 5 == 0 ? lowest : part();
        if (d == 0)
            continue;
        mpq_class expected(n, 1);
        expected /= d;
        if (!agrees([&] { return fraction(n, d); }, expected))
            FAIL(n, "/", d, " differs from GMP");
    }
}

TEST_CASE("as a double a fraction is within two units of the last place") {
    against_gmp::sampler random(754);
    while (random.another_of(100'000)) {
        const fraction x = random.mixed();
        const double nearest = against_gmp::exact(x).get_d(); // GMP truncates, which is less than one unit
        const double unit = std::abs(std::nextafter(nearest, 2 * nearest) - nearest);
        if (std::abs(to_double(x) - nearest) > 2 * unit)
            FAIL(text(x), " gives ", to_double(x));
    }
}

TEST_CASE("equal values hash alike, and a ruler's graduations do not share a hash") {
    const std::hash<fraction> hash;
    CHECK(hash(fraction(6, 8)) == hash(fraction(3, 4)));
    CHECK(hash(fraction(1, 2) - fraction(1, 2)) == hash(fraction()));
    std::unordered_set<std::size_t> hashes;
    for (int n = -6400; n <= 6400; ++n)
        hashes.insert(hash(fraction(n, 64)));
    CHECK(hashes.size() == 12801);
}

TEST_CASE("what is refused says why") {
    CHECK_THROWS_WITH_AS(fraction(1, 0), "1/0 is not a number: the denominator must not be zero",
                         zero_denominator_error);
    CHECK_THROWS_WITH_AS(fraction(3) / 0, "division by zero: the divisor must not be zero", zero_denominator_error);
    CHECK_THROWS_WITH_AS(reciprocal(fraction(0)), "division by zero: the divisor must not be zero",
                         zero_denominator_error);
    CHECK_THROWS_WITH_AS(fraction(18446744073709551615U),
                         "18446744073709551615 does not fit a fraction: numerator and denominator are 64-bit integers",
                         overflow_error);
    CHECK_THROWS_WITH_AS(
        fraction(largest) + 1,
        "the result of an exact calculation does not fit a fraction: numerator and denominator are 64-bit integers",
        overflow_error);
    CHECK_THROWS_AS(-fraction(lowest), error);
    CHECK_THROWS_AS(fraction(1, lowest), overflow_error);
}

TEST_CASE("an operation that is refused leaves its left side as it was") {
    fraction x = largest;
    CHECK_THROWS_AS(x += 1, overflow_error);
    CHECK_THROWS_AS(x /= 0, zero_denominator_error);
    CHECK(x == largest);
}
