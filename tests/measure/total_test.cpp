// Long sums: at compile time, and against GMP over random runs of every kind of fraction.
#include "against_gmp.hpp"
#include <turncloth/measure/read.hpp>
#include <turncloth/measure/total.hpp>

#include <doctest/doctest.h>

#include <array>
#include <optional>
#include <vector>

using namespace turncloth;
using against_gmp::largest;
using against_gmp::lowest;

namespace {

static_assert(total(std::array<fraction, 0>{}) == 0);
static_assert(total(std::array{fraction(1, 3), fraction(1, 6), fraction(1, 2)}) == 1);
static_assert(total(std::array{fraction(1, 64), fraction(3, 8), fraction(-1, 4)}) == fraction(9, 64));
static_assert(total(std::array{"2 1/2"_in, "3/8"_in, "2 1/2"_in}) == "5 3/8"_in);
static_assert(total(std::array{2.5_cm, 0.1_cm}) == 2.6_cm);
static_assert(total(std::array{2_in * 3_in, 1_in * 1_in}) == 7_in * 1_in);

// On the way it may be larger than what fits in the end.
static_assert(total(std::array{fraction(largest), fraction(largest), fraction(lowest), fraction(lowest)}) == -2);
static_assert(total(std::array{fraction(lowest), fraction(1, std::int64_t{1} << 62),
                               fraction(-1, std::int64_t{1} << 62)}) == lowest);
static_assert(total(std::array{fraction(1, std::int64_t{1} << 62), fraction(1, std::int64_t{1} << 62)}) ==
              fraction(1, std::int64_t{1} << 61));
// A denominator that no smaller room would hold, and halves and thirds that have none in common: each has its own.
static_assert(total(std::array{fraction(1, largest)}) == fraction(1, largest));
static_assert(total(std::array{fraction(1, std::int64_t{1} << 62), fraction(1, 4'052'555'153'018'976'267), // 3^39
                               fraction(-1, 4'052'555'153'018'976'267)}) == fraction(1, std::int64_t{1} << 62));

// The places that widths add up to.
static_assert([] {
    running_total<length<inch>> place;
    place += "7/8"_in;
    const bool first = place.value() == "7/8"_in;
    place += "1 3/8"_in;
    const bool second = place.value() == "2 1/4"_in;
    place -= "1/3"_in;
    return first && second && place.value() == "1 11/12"_in;
}());

static_assert([] {
    graduated_total sum("1/64"_in);
    sum += 50;
    sum -= 10;
    return sum.count() == 40 && sum.value() == "5/8"_in;
}());

/// Added and taken away by turns as `signs` says, and the same by GMP; nothing where it is refused.
struct both {
    std::optional<fraction> given;
    mpq_class expected;
};

template <class Next>
both sum_of(int count, std::uint64_t signs, Next next) {
    both sums{fraction(0), 0};
    running_total sum;
    for (int i = 0; i < count; ++i) {
        const fraction x = next();
        const bool minus = (signs >> (i % 64) & 1) != 0;
        sums.expected += minus ? mpq_class(-against_gmp::exact(x)) : against_gmp::exact(x);
        try {
            if (sums.given)
                minus ? sum -= x : sum += x;
        } catch (const overflow_error&) {
            sums.given.reset();
        }
    }
    try {
        if (sums.given)
            sums.given = sum.value();
    } catch (const overflow_error&) {
        sums.given.reset();
    }
    return sums;
}

} // namespace

TEST_CASE("sums of what rulers show and people type are those of GMP, and none is refused") {
    against_gmp::sampler random(1202);
    while (random.another_of(2'000)) {
        const bool on_rulers = random.bits() % 2 == 0;
        const both sums = sum_of(static_cast<int>(random.between(0, 300)), random.bits(), [&] {
            if (on_rulers)
                return random.on_a_ruler();
            constexpr std::array<std::int64_t, 6> parts = {1, 8, 10, 12, 25, 127};
            return fraction(random.between(-10'000, 10'000),
                            parts[static_cast<std::size_t>(random.between(0, parts.size() - 1))]);
        });
        CHECK(sums.given.has_value());
        if (sums.given)
            CHECK(against_gmp::same(*sums.given, sums.expected));
    }
}

TEST_CASE("sums of any fractions are those of GMP or refused, and what does not fit is always refused") {
    against_gmp::sampler random(1494);
    int given = 0, refused = 0;
    while (random.another_of(50'000)) {
        const std::int64_t kind = random.between(0, 3);
        const both sums = sum_of(static_cast<int>(random.between(1, 8)), random.bits(), [&] {
            if (kind == 0)
                return fraction(random.near_overflow());
            if (kind == 1) // halves of every size
                return fraction(static_cast<std::int64_t>(random.bits()) >> random.between(0, 63),
                                std::int64_t{1} << random.between(0, 62));
            return kind == 2 ? random.of_any_size() : random.awkward();
        });
        (sums.given ? given : refused) += 1;
        if (sums.given && !against_gmp::same(*sums.given, sums.expected))
            FAIL_CHECK("the sum is not that of GMP");
    }
    CHECK(given > 10'000);
    CHECK(refused > 5'000);
}

TEST_CASE("a sum of halves is refused only where it does not fit") {
    against_gmp::sampler random(1614);
    int refused = 0;
    while (random.another_of(20'000)) {
        const both sums = sum_of(static_cast<int>(random.between(1, 4)), random.bits(), [&] {
            return fraction(static_cast<std::int64_t>(random.bits()) >> random.between(0, 3),
                            std::int64_t{1} << random.between(0, 4));
        });
        CHECK(sums.given.has_value() == against_gmp::fits(sums.expected));
        refused += !sums.given.has_value();
    }
    CHECK(refused > 1'000);
}

TEST_CASE("each place in a row is the sum of what stands before it") {
    against_gmp::sampler random(1845);
    while (random.another_of(1'000)) {
        running_total<length<inch>> place;
        length<inch> plain;
        for (int i = 0; i < 20; ++i) {
            const length<inch> width = random.inches(60);
            place += width;
            plain += width;
            CHECK(place.value() == plain);
        }
    }
}

TEST_CASE("what passes 64 bits is refused") {
    CHECK_THROWS_WITH_AS(total(std::array{fraction(largest), fraction(1)}),
                         "the result of an exact calculation does not fit a fraction: numerator and denominator are "
                         "64-bit integers",
                         overflow_error);
    CHECK_THROWS_AS(total(std::array{fraction(1, largest), fraction(1, largest - 1)}), overflow_error);
    CHECK_THROWS_AS(total(std::vector<fraction>(5, largest)), overflow_error);
    CHECK_THROWS_AS(total(std::vector<fraction>(5, fraction(largest, 3))), overflow_error);
    graduated_total sum(fraction(1, 64));
    sum += largest;
    CHECK(sum.value() == fraction(largest, 64));
    CHECK_THROWS_AS(sum += 1, overflow_error);
    sum -= largest;
    sum += lowest;
    CHECK_THROWS_AS(sum -= 1, overflow_error);
    CHECK(sum.count() == lowest);
    CHECK_THROWS_AS(graduated_total(0_in), range_error);
    CHECK_THROWS_AS(graduated_total(fraction(-1, 8)), range_error);
    graduated_total yards(36_in);
    yards += largest;
    CHECK_THROWS_AS(yards.value(), overflow_error);
}
