// Square roots, diagonals, multiples of pi and doubles on a graduation, against whole-number arithmetic of GMP.
#include "against_gmp.hpp"
#include <turncloth/measure/irrational.hpp>
#include <turncloth/measure/read.hpp>

#include <doctest/doctest.h>

#include <array>
#include <bit>
#include <cmath>
#include <limits>
#include <string>

using namespace turncloth;

namespace {

constexpr std::array every_rounding = {rounding::down, rounding::up, rounding::nearest};

// A square's diagonal, 1.41421..., on rulers; and one that is a whole number (3, 4, 5).
static_assert(square_root(2, {1, 64}, rounding::nearest) == fraction(91, 64));
static_assert(square_root(2, {1, 10}, rounding::down) == fraction(14, 10));
static_assert(square_root(2, {1, 10}, rounding::up) == fraction(15, 10));
static_assert(diagonal(3_in, 4_in, "1/8"_in, rounding::down) == 5_in);
static_assert(diagonal(3_in, 4_in, "1/8"_in, rounding::up) == 5_in);
static_assert(diagonal("12"_in, "18"_in, "1/8"_in, rounding::up) == "21 3/4"_in); // 21.633...
// A half between two graduations goes to the even one: sqrt(2.25) = 1 1/2, sqrt(6.25) = 2 1/2.
static_assert(square_root({9, 4}, 1, rounding::nearest) == 2);
static_assert(square_root({25, 4}, 1, rounding::nearest) == 2);
static_assert(square_root(0, {1, 8}, rounding::up) == 0);
static_assert(square_root(against_gmp::largest, 1, rounding::down) == 3037000499); // OEIS A000196 at 2^63 - 1

// pi = 3.14159265358979...
static_assert(times_pi(1, {1, 1000000}, rounding::down) == fraction(3141592, 1000000));
static_assert(times_pi(1, {1, 1000000}, rounding::up) == fraction(3141593, 1000000));
static_assert(times_pi(-1, {1, 1000}, rounding::down) == fraction(-3142, 1000));
static_assert(times_pi(0, {1, 8}, rounding::up) == 0);
static_assert(times_pi(1_in, "1/64"_in, rounding::nearest) == "201/64"_in);

static_assert(approximate(0.1, {1, 10}).value == fraction(1, 10));
static_assert(approximate(0.1 + 0.2, {1, 10}).value == fraction(3, 10)); // 0.30000000000000004
static_assert(approximate(-2.5, 1).value == -2);
static_assert(approximate(3.5, 1).value == 4);
static_assert(approximate(12.51, {1, 4}).value == fraction(25, 2));
static_assert(approximate(12.51, {1, 4}).error < -0.0099);
static_assert(approximate(-0.0, 1).value == 0);
static_assert(approximate(-0.0, 1).error == 0.0);
static_assert(approximate(12.5, {1, 8}).error == 0.0);
static_assert(approximate(1.0, {1, against_gmp::largest}).value == 1); // as many steps as there can be

std::string text(fraction x) { return std::to_string(numerator(x)) + "/" + std::to_string(denominator(x)); }

/// sqrt(x) on a multiple of step: the whole number r of steps with (2r - 1)^2 <= 4 x / step^2 <= (2r + 1)^2, or the
/// one below or above the root, found with the integer square root of GMP.
mpq_class expected_root(const mpq_class& x, const mpq_class& step, rounding wanted) {
    const mpq_class square = x / (step * step);
    const mpz_class whole = against_gmp::floor(square);
    mpz_class root;
    mpz_sqrt(root.get_mpz_t(), whole.get_mpz_t());
    const mpz_class next = root + 1;
    if (square == root * root || wanted == rounding::down)
        return root * step;
    if (wanted == rounding::up)
        return next * step;
    const mpq_class half = mpq_class(2 * root + 1, 2), middle = half * half;
    const bool goes_up = square > middle || (square == middle && mpz_odd_p(root.get_mpz_t()));
    return mpq_class(goes_up ? next : root) * step;
}

/// pi to 50 digits (OEIS A000796), which is far more than the borders of these graduations need.
const mpq_class& pi() {
    static const mpq_class value(mpz_class("314159265358979323846264338327950288419716939937510"),
                                 mpz_class("100000000000000000000000000000000000000000000000000"));
    return value;
}

mpq_class expected_nearest(const mpq_class& x, const mpq_class& step) {
    const mpq_class steps = x / step;
    const mpz_class below = against_gmp::floor(steps);
    const mpq_class twice = 2 * (steps - below);
    const bool goes_up = twice > 1 || (twice == 1 && mpz_odd_p(below.get_mpz_t()));
    return mpq_class(below + (goes_up ? 1 : 0)) * step;
}

mpq_class expected_on_side(const mpq_class& x, const mpq_class& step, rounding wanted) {
    if (wanted == rounding::nearest)
        return expected_nearest(x, step);
    return mpq_class(wanted == rounding::down ? against_gmp::floor(x / step) : against_gmp::ceil(x / step)) * step;
}

void check_root(fraction x, fraction step) {
    for (const rounding wanted : every_rounding) {
        const mpq_class expected = expected_root(against_gmp::exact(x), against_gmp::exact(step), wanted);
        if (!against_gmp::same(square_root(x, step, wanted), expected))
            FAIL("root of ", text(x), " by ", text(step));
    }
}

/// A double, any of them, on a graduation: what its exact value gives, or overflow_error exactly where that does not
/// fit.
void check_approximate(double real, fraction step) {
    const mpq_class x(real), s = against_gmp::exact(step);
    const mpq_class expected = expected_nearest(x, s);
    try {
        const auto [value, error] = approximate(real, step);
        const double exact_error = mpq_class(expected - x).get_d();
        const double unit = std::numeric_limits<double>::epsilon() * (std::abs(real) + std::abs(exact_error));
        if (!against_gmp::fits(expected) || !against_gmp::same(value, expected) ||
            std::abs(error - exact_error) > 4 * unit)
            FAIL(real, " by ", text(step), " gives ", text(value), " with an error of ", error);
    } catch (const overflow_error&) {
        if (against_gmp::fits(expected))
            FAIL(real, " by ", text(step), " is refused");
    }
}

} // namespace

TEST_CASE("square roots are right on every side, by the whole-number root of GMP") {
    against_gmp::sampler random(1637);
    while (random.another_of(50'000)) {
        const fraction step(1, std::int64_t{1} << random.between(0, 6));
        check_root(abs(random.on_a_ruler()), step);
        check_root(abs(random.awkward()), fraction(random.between(1, 30), random.between(1, 100)));
    }
}

TEST_CASE("square roots just beside a graduation or a half are not taken for it") {
    against_gmp::sampler random(1685);
    while (random.another_of(20'000)) {
        const std::int64_t root = random.between(1, 1'000'000'000);
        const fraction square = fraction(root) * root, between = square + root + fraction(1, 4); // (root + 1/2)^2
        const fraction little(1, 8);
        check_root(square, 1);
        check_root(square - little, 1);
        check_root(square + little, 1);
        check_root(between, 1);
        check_root(between - little, 1);
        check_root(between + little, 1);
    }
    for (std::int64_t root = 3037000490; root <= 3037000499; ++root)
        for (const std::int64_t off : {-1, 0, 1})
            check_root(root * root + off, 1);
    for (std::int64_t off = 0; off < 10; ++off)
        check_root(against_gmp::largest - off, 1);
}

TEST_CASE("diagonals are the roots of the sums of squares") {
    against_gmp::sampler random(570);
    while (random.another_of(20'000)) {
        const fraction a = abs(random.on_a_ruler()), b = abs(random.on_a_ruler());
        const mpq_class p = against_gmp::exact(a), q = against_gmp::exact(b);
        for (const rounding wanted : every_rounding) {
            const auto d = diagonal(length_of<inch>(a), length_of<inch>(b), "1/64"_in, wanted);
            if (!against_gmp::same(d.value(), expected_root(p * p + q * q, mpq_class(1, 64), wanted)))
                FAIL("diagonal of ", text(a), " by ", text(b));
        }
    }
}

TEST_CASE("multiples of pi are right on every side, by pi to fifty digits") {
    against_gmp::sampler random(1761);
    for (const int i : random.cases(50'000)) {
        const fraction x = i % 2 == 0 ? random.on_a_ruler() : random.awkward();
        const fraction step(1, i % 3 == 0 ? 10 : std::int64_t{1} << random.between(0, 6));
        for (const rounding wanted : every_rounding) {
            const mpq_class expected = expected_on_side(against_gmp::exact(x) * pi(), against_gmp::exact(step), wanted);
            if (!against_gmp::same(times_pi(x, step, wanted), expected))
                FAIL("pi times ", text(x), " by ", text(step));
        }
    }
}

TEST_CASE("doubles of a size that people measure are brought to their graduation exactly") {
    against_gmp::sampler random(1985);
    at_random::seeded<std::mt19937_64> bits(3);
    std::uniform_real_distribution<double> size(-1000, 1000);
    while (bits.another_of(50'000)) {
        check_approximate(size(bits), {1, std::int64_t{1} << random.between(0, 6)});
        check_approximate(size(bits), fraction(random.between(1, 1000), random.between(1, 1000)));
        check_approximate(static_cast<double>(random.between(-20'000, 20'000)) / 128, {1, 64}); // ties too
    }
}

TEST_CASE("doubles of any bits are brought to their graduation exactly, or refused where they do not fit") {
    against_gmp::sampler random(754);
    while (random.another_of(50'000)) {
        const double real = std::bit_cast<double>(random.bits());
        if (!std::isfinite(real))
            continue;
        check_approximate(real, {1, std::int64_t{1} << random.between(0, 62)});
        check_approximate(real, fraction(random.between(1, against_gmp::largest), random.between(1, 1000)));
    }
}

TEST_CASE("the smallest and the largest doubles, and those beside a tie, are no exception") {
    using limits = std::numeric_limits<double>;
    const std::array reals = {
        limits::denorm_min(), limits::min(), limits::max(), limits::epsilon(), 0.5, 1.5, 2.5, 0x1p62, 0x1p63,
        0x1.fffffffffffffp62, 0x1p-1000,     1e300};
    const std::array<fraction, 7> steps = {
        1, {1, 2}, {1, 64}, {1, against_gmp::largest}, against_gmp::largest, {against_gmp::largest, 2}, {3, 7}};
    for (const double real : reals)
        for (const double beside : {real, std::nextafter(real, 0.0), std::nextafter(real, 2 * real)})
            for (const fraction step : steps) {
                if (!std::isfinite(beside))
                    continue;
                check_approximate(beside, step);
                check_approximate(-beside, step);
            }
}

TEST_CASE("the lowest whole number of 64 bits is a value like any other") {
    CHECK(approximate(-0x1p63, 1).value == std::numeric_limits<std::int64_t>::min());
    CHECK_THROWS_AS(approximate(0x1p63, 1), overflow_error);
    // Whole multiples of 2^10 and 2^11 steps of 1 / (2^30 - 1) below 2^63 of them, as near as doubles come.
    const fraction step(1, (std::int64_t{1} << 30) - 1);
    for (double real = -0x1p63 / 0x3fffffffp0, end = real * 0.99999999999; real < end; real = std::nextafter(real, 0.0))
        check_approximate(real, step);
}

TEST_CASE("a double is refused only where its multiple does not fit, and not where the count of steps alone does not") {
    CHECK(approximate(0x1p62, {1, 8}).value == std::int64_t{1} << 62); // 2^65 steps
    CHECK(approximate(-0x1p63, {1, against_gmp::largest}).value == std::numeric_limits<std::int64_t>::min());
    CHECK_THROWS_WITH_AS(approximate(0x1p63, {1, 8}),
                         "the number is too large for a fraction of 64-bit integers: it was 9223372036854775808.000000",
                         overflow_error);
    // 3074457345618258603 steps, which fit: three times as much does not.
    CHECK_THROWS_WITH_AS(approximate(0x1p63, 3),
                         "the number is too large for a fraction of 64-bit integers: it was 9223372036854775808.000000",
                         overflow_error);
    // Doubles as near as they come to what just fits or just does not, by steps with and without a factor in common.
    against_gmp::sampler random(2038);
    while (random.another_of(200'000)) {
        const fraction large = random.near_overflow();
        const fraction step = large > 0 ? large : fraction(random.between(1, 64), random.between(1, 1 << 16));
        const double real = to_double(random.near_overflow());
        check_approximate(real, step);
        check_approximate(real, {random.between(1, 3), std::int64_t{1} << random.between(0, 62)});
    }
}

TEST_CASE("a double a hair above half a very small step is not taken for a tie") {
    // With x = 2^-63 (1 + 2^-52) and a step of 1 / (2^62 - 1023), x / step is 1/2 + (2^52 - 1023) / 2^115 (derived).
    const double above_half = std::nextafter(0x1p-63, 1.0);
    const fraction step(1, (std::int64_t{1} << 62) - 1023);
    CHECK(approximate(above_half, step).value == step);
    CHECK(approximate(0x1p-63, step).value == 0);
    check_approximate(above_half, step);
    check_approximate(0x1p-63, step);
}

TEST_CASE("what has no answer is refused") {
    const double infinite = std::numeric_limits<double>::infinity();
    CHECK_THROWS_AS(square_root(-1, {1, 8}, rounding::down), range_error);
    CHECK_THROWS_AS(square_root(2, 0, rounding::down), range_error);
    CHECK_THROWS_WITH_AS(diagonal(3_in, -(4_in), 1_in, rounding::up),
                         "a side of a rectangle must be zero or more: it was -4 in", range_error);
    CHECK_THROWS_AS(square_root(against_gmp::largest, {1, 8}, rounding::down), overflow_error);
    CHECK_THROWS_AS(times_pi(1, -1, rounding::down), range_error);
    CHECK_THROWS_AS(times_pi(against_gmp::largest, 1, rounding::down), overflow_error);
    // 78256779 pi is 245850922 and about 6e-9 more: no graduation near it can be told apart from one just beside it.
    CHECK_THROWS_AS(times_pi(78256779, {1, 1000000000}, rounding::down), overflow_error);
    CHECK_THROWS_AS(approximate(infinite, 1), range_error);
    CHECK_THROWS_AS(approximate(-infinite, 1), range_error);
    CHECK_THROWS_AS(approximate(std::numeric_limits<double>::quiet_NaN(), 1), range_error);
    CHECK_THROWS_AS(approximate(1.0, 0), range_error);
    CHECK_THROWS_AS(approximate(1e30, {1, 8}), overflow_error);
}
