// estimate: values known to a bound. At compile time; then against Boost.Multiprecision (100 digits) over many random
// inputs: the truth is always within the bound, and a graduation is given only where it is the right one.
#include "at_random.hpp"
#include <turncloth/measure/estimate.hpp>
#include <turncloth/measure/read.hpp>

#include <boost/math/constants/constants.hpp>
#include <boost/multiprecision/cpp_bin_float.hpp>
#include <doctest/doctest.h>
#include <gmpxx.h>

#include <array>
#include <cmath>
#include <cstdint>
#include <limits>

using namespace turncloth;
using real = boost::multiprecision::cpp_bin_float_100;

namespace {

// Exact fractions stay exact, and only then may a value lie on a graduation.
static_assert(estimate(fraction(3, 4)).value() == 0.75);
static_assert(estimate(fraction(3, 4)).on({1, 4}, rounding::up) == fraction(3, 4));
static_assert(estimate().value() == 0);
static_assert(estimate().bound() == 0);
static_assert(estimate().on({1, 8}, rounding::up) == 0);
static_assert(estimate(fraction(5, 8)).on({1, 4}, rounding::nearest) ==
              fraction(1, 2)); // a half goes to the even multiple
static_assert(estimate(fraction(7, 8)).on({1, 4}, rounding::nearest) == 1);
static_assert((estimate(fraction(1, 2)) + estimate(fraction(1, 4))).on({1, 4}, rounding::up) == fraction(3, 4));
static_assert((estimate(fraction(3, 2)) * estimate(fraction(5, 4))).on({1, 8}, rounding::up) == fraction(15, 8));
static_assert(square_root(estimate(fraction(9, 4))).on({1, 2}, rounding::up) == fraction(3, 2));
static_assert(square_root(estimate(2)).on({1, 64}, rounding::nearest) == fraction(91, 64)); // 1.41421... = 90.5097 / 64
static_assert(pi().on({1, 100}, rounding::down) == fraction(314, 100));
static_assert(pi().on({1, 100}, rounding::up) == fraction(315, 100));
static_assert(inverse_pi().on({1, 1000}, rounding::nearest) == fraction(318, 1000)); // 0.3183098...
static_assert(arctangent(0).value() == 0);
static_assert((arctangent(1) * estimate(4)).on({1, 100000}, rounding::nearest) == fraction(314159, 100000));
static_assert(rounded(pi() * estimate({3, 4}), "1/16"_in, rounding::up) == "2 3/8"_in);
static_assert(rounded(pi() * estimate({3, 4}), "1/16"_in, rounding::down) == "2 5/16"_in);

real exact(fraction x) { return real(numerator(x)) / denominator(x); }

class sampler : public at_random::sampler {
public:
    using at_random::sampler::sampler;

    /// Above zero, of any size that 64 bits hold: as many small numbers as large ones.
    fraction of_any_size() { return {part(), part()}; }
    fraction of_cloth() { return {between(1, 100'000), between(1, 1000)}; }
    rounding any_rounding() {
        return std::array{rounding::down, rounding::up, rounding::nearest}[static_cast<std::size_t>(between(0, 2))];
    }

private:
    std::int64_t part() { return static_cast<std::int64_t>((*this)() >> between(1, 63)) | 1; }
};

/// The truth is within the bound, and the bound within a little more than half of a double's last place.
void check(const estimate& e, const real& truth, double units) {
    const real off = abs(real(e.value()) - truth);
    const double ulp = std::nextafter(e.value(), std::numeric_limits<double>::infinity()) - e.value();
    if (off > e.bound() || e.bound() > units * ulp)
        FAIL("the truth is ", truth.str(20), ", the estimate ", e.value(), " to within ", e.bound());
}

/// The graduation that a value of 100 digits leads to.
real on_graduation(const real& x, fraction step, rounding wanted) {
    const real steps = x / exact(step);
    return wanted == rounding::down ? floor(steps) : (wanted == rounding::up ? ceil(steps) : floor(steps + 0.5));
}

} // namespace

TEST_CASE("a fraction of any size is known to within half a double's last place and a little") {
    sampler random(1614);
    while (random.another_of(20'000)) {
        const fraction x = random.of_any_size();
        check(estimate(x), exact(x), 0.501);
    }
}

TEST_CASE("sums, products and roots carry bounds that hold") {
    sampler random(1685);
    while (random.another_of(20'000)) {
        const fraction x = random.of_any_size(), y = random.of_any_size(), z = random.of_cloth();
        check(estimate(x) + estimate(y), exact(x) + exact(y), 0.504);
        check(estimate(x) * estimate(y), exact(x) * exact(y), 0.504);
        check(square_root(estimate(x)), sqrt(exact(x)), 0.504);
        check(square_root(estimate(x) * estimate(z) + estimate(y)) * pi(),
              sqrt(exact(x) * exact(z) + exact(y)) * boost::math::constants::pi<real>(), 0.51);
    }
}

TEST_CASE("an arctangent is right to within its bound, for slopes of any size") {
    sampler random(1671);
    for (const int i : random.cases(5'000)) {
        const fraction x = i % 2 == 0 ? random.of_any_size() : random.of_cloth();
        check(arctangent(x), atan(exact(x)), 0.504);
    }
    // Round the borders of the two ways it is brought down: 1 and sqrt(2) - 1, whose convergents are 2/5, 5/12, 12/29,
    // ...
    for (const fraction x :
         {fraction(1), fraction(999'999, 1'000'000), fraction(1'000'001, 1'000'000), fraction(2, 5), fraction(5, 12),
          fraction(12, 29), fraction(29, 70), fraction(29, 12), fraction(12, 5),
          fraction(std::numeric_limits<std::int64_t>::max(), std::numeric_limits<std::int64_t>::max() - 1)})
        check(arctangent(x), atan(exact(x)), 0.504);
}

TEST_CASE("a graduation that is given is the right one, on each side") {
    sampler random(1772);
    int given = 0;
    while (random.another_of(20'000)) {
        const fraction x = random.of_cloth(), step = {random.between(1, 3), std::int64_t{1} << random.between(0, 20)};
        const rounding wanted = random.any_rounding();
        const estimate e = arctangent(x) * estimate(x);
        const real truth = on_graduation(atan(exact(x)) * exact(x), step, wanted);
        if (exact(e.on(step, wanted)) != truth * exact(step))
            FAIL(to_double(x), " is brought to the wrong multiple of ", to_double(step));
        ++given;
    }
    CHECK(given == 20'000);
}

TEST_CASE("at graduations near the last of 64 bits what is given is right, and much is given") {
    // Here every unit of every bound counts: a bound too small gives a wrong graduation, one too wide gives none.
    sampler random(1777);
    int given = 0, refused = 0;
    const auto check_fine = [&](const estimate& e, const real& truth) {
        const int power = static_cast<int>(floor(log2(truth))) - static_cast<int>(random.between(52, 61));
        if (power < -62 || power > -4)
            return;
        const fraction step = {1, std::int64_t{1} << -power};
        const rounding wanted = random.any_rounding();
        try {
            if (exact(e.on(step, wanted)) != on_graduation(truth, step, wanted) * exact(step))
                FAIL(truth.str(25), " is brought to the wrong multiple of 2^", power);
            ++given;
        } catch (const undecided_error&) {
            ++refused;
        }
    };
    while (random.another_of(4'000)) {
        const fraction x = random.of_cloth(), y = random.of_cloth();
        check_fine(estimate(x), exact(x));
        check_fine(square_root(estimate(x)), sqrt(exact(x)));
        check_fine(arctangent(x), atan(exact(x)));
        check_fine(estimate(x) * estimate(y) + estimate(y), exact(x) * exact(y) + exact(y));
        check_fine(pi() * estimate(x), boost::math::constants::pi<real>() * exact(x));
        check_fine(inverse_pi() * estimate(x), exact(x) / boost::math::constants::pi<real>());
    }
    CHECK(given > 15'000);
    CHECK(refused > 500);
    // A root that does not come out is not taken for one that does.
    CHECK_THROWS_AS(static_cast<void>(square_root(estimate(2)).on({1, std::int64_t{1} << 61}, rounding::up)),
                    undecided_error);
}

TEST_CASE("the 128-bit steps beneath are exact: products of shares, quotients and roots, against GMP") {
    sampler random(1991);
    const auto wide = [&] {
        const auto high = static_cast<std::uint64_t>(random.between(0, std::numeric_limits<std::int64_t>::max())) << 1;
        return detail::uint128{high} << 64 |
               static_cast<std::uint64_t>(random.between(std::numeric_limits<std::int64_t>::min(), -1));
    };
    const auto big = [](detail::uint128 n) -> mpz_class {
        return (mpz_class(static_cast<unsigned long>(n >> 64)) << 64) + static_cast<unsigned long>(n);
    };
    for (const int i : random.cases(20'000)) {
        const detail::uint128 a = wide() >> random.between(0, 100), b = wide();
        CHECK(big(detail::share_product(a, b)) == mpz_class(big(a) * big(b) >> 128));
        const auto d = static_cast<std::uint64_t>(b >> 64) | 1, n = static_cast<std::uint64_t>(a >> 64) % d;
        CHECK(big(detail::share(n, d)) ==
              (mpz_class(static_cast<unsigned long>(n)) << 128) / static_cast<unsigned long>(d));
        const detail::uint128 square =
            i % 3 == 0
                ? detail::uint128{d | std::uint64_t{1} << 63} * (d | std::uint64_t{1} << 63) - (i % 2 == 0 ? 0U : 1U)
                : b | detail::uint128{1} << 126;
        CHECK(mpz_class(static_cast<unsigned long>(detail::root_of_wide(square))) == sqrt(big(square)));
    }
    CHECK(detail::root_of_wide(~detail::uint128{0}) == ~std::uint64_t{0});
    CHECK(detail::root_of_wide(detail::uint128{1} << 126) == std::uint64_t{1} << 63);
    CHECK(detail::root_of_wide((detail::uint128{1} << 126) + 1) == std::uint64_t{1} << 63);
}

TEST_CASE("exact values on a border are decided, and estimates that straddle one are refused") {
    sampler random(1801);
    while (random.another_of(2'000)) {
        const fraction x = {random.between(1, 1 << 20), std::int64_t{1} << random.between(0, 10)};
        CHECK(estimate(x).on(x, rounding::down) == x);
        CHECK(estimate(x).on(x, rounding::up) == x);
        // The root of its square is the same number, but once pi and 1 / pi have passed it is known to a bound only.
        const estimate blurred = estimate(x) * pi() * inverse_pi();
        CHECK_THROWS_AS(static_cast<void>(blurred.on(x, rounding::down)), undecided_error);
        CHECK_THROWS_AS(static_cast<void>(blurred.on(x, rounding::up)), undecided_error);
        CHECK(blurred.on(x, rounding::nearest) == x);
        CHECK_THROWS_AS(static_cast<void>(blurred.on(x * 2, rounding::nearest)), undecided_error);
    }
}

TEST_CASE("what cannot be estimated says why") {
    CHECK_THROWS_WITH_AS(estimate(fraction(-1, 2)), "a number that is estimated must be zero or more: it was -1/2",
                         range_error);
    CHECK_THROWS_WITH_AS(arctangent(-1), "a number whose arctangent is taken must be zero or more: it was -1",
                         range_error);
    CHECK_THROWS_WITH_AS(static_cast<void>(pi().on(0, rounding::down)), "a graduation must be more than zero: it was 0",
                         range_error);
    CHECK_THROWS_WITH_AS(
        static_cast<void>((estimate(3) * pi() * inverse_pi()).on(1, rounding::down)),
        "3.000000 is known to within 5 parts in 2^63, and that is too near a border between two graduations to tell "
        "them apart",
        undecided_error);
    CHECK_THROWS_AS(static_cast<void>(estimate(std::int64_t{1} << 62).on({1, 2}, rounding::down)), overflow_error);
    CHECK_THROWS_AS(
        static_cast<void>((estimate(std::int64_t{1} << 62) * estimate(std::int64_t{1} << 62)).on(1, rounding::down)),
        overflow_error);
}
