// Rounded marks: the nearest graduation by GMP over random spans in inches and centimetres, parts that add up, the
// drift of stepping against direct summation, and every refusal.
#include "../measure/against_gmp.hpp"
#include <turncloth/marks/rounded.hpp>
#include <turncloth/measure/read.hpp>

#include <doctest/doctest.h>

#include <algorithm>
#include <array>
#include <set>

using namespace turncloth;
using against_gmp::exact;
using against_gmp::sampler;

namespace {

struct strip_end {};

template <length_unit Unit>
using rounded = rounded_division<strip_end, Unit>;

// By hand. 20 in by seven: 2 6/7, 5 5/7, 8 4/7, 11 3/7, 14 2/7, 17 1/7, in eighths 22.86, 45.71, 68.57, 91.43, 114.29,
// 137.14 of them.
constexpr rounded<inch> sevenths(20_in, 7, "1/8"_in);
static_assert(sevenths.size() == 6);
static_assert(sevenths[0] == at<strip_end>("2 7/8"_in));
static_assert(sevenths[1] == at<strip_end>("5 3/4"_in));
static_assert(sevenths[2] == at<strip_end>("8 5/8"_in));
static_assert(sevenths[3] == at<strip_end>("11 3/8"_in));
static_assert(sevenths[4] == at<strip_end>("14 1/4"_in));
static_assert(sevenths[5] == at<strip_end>("17 1/8"_in));
static_assert(sevenths.part(0) == "2 7/8"_in);
static_assert(sevenths.part(2) == "2 7/8"_in);
static_assert(sevenths.part(3) == "2 3/4"_in);
static_assert(sevenths.part(6) == "2 7/8"_in);
static_assert(sevenths.exact()[0] == at<strip_end>(length_of<inch>({20, 7})));
// 68 4/7 and 91 3/7 eighths are the farthest off: 3/7 of 1/8 in.
static_assert(sevenths.farthest_off() == length_of<inch>({3, 56}));

// A half goes to the even graduation: 5 cm in four, by half centimetres: 2.5, 5, 7.5 of them.
constexpr rounded<centimetre> halves(5_cm, 4, 0.5_cm);
static_assert(halves[0] == at<strip_end>(1_cm));
static_assert(halves[1] == at<strip_end>(2.5_cm));
static_assert(halves[2] == at<strip_end>(4_cm));
static_assert(halves.farthest_off() == 0.25_cm);

// What is on the ruler is not moved; a single part has no marks, however coarse the ruler.
static_assert(rounded<inch>(16_in, 4, "1/16"_in).farthest_off() == 0_in);
static_assert(rounded<inch>("1/4"_in, 1, 1_in).empty());
static_assert(rounded<inch>("1/4"_in, 1, 1_in).part(0) == "1/4"_in);
static_assert(rounded<inch>().empty());
// Parts of exactly one graduation can be told apart.
static_assert(rounded<inch>(1_in, 8, "1/8"_in)[6] == at<strip_end>("7/8"_in));

// Stepping: 20 in by seven as 2 7/8 in steps gains 1/56 in a step, 1/8 in over all.
constexpr auto steps = stepped("2 6/7"_in, "1/8"_in);
static_assert(steps.spacing == "2 7/8"_in);
static_assert(steps.per_step == length_of<inch>({1, 56}));
static_assert(steps.drift(7) == "1/8"_in);
static_assert(steps.drift(0) == 0_in);
static_assert(stepped(3.14_cm, 0.1_cm).drift(10) == -0.4_cm);

/// The whole number nearest to q, half to even.
mpz_class nearest_whole(const mpq_class& q) {
    mpz_class below = against_gmp::floor(q);
    const mpq_class rest = q - below;
    const mpq_class half(1, 2);
    if (rest > half || (rest == half && mpz_odd_p(below.get_mpz_t())))
        ++below;
    return below;
}

template <length_unit Unit>
void check_against_gmp(sampler& random, const std::vector<fraction>& graduations) {
    int checked = 0;
    for (int i = 0; i < 3000; ++i) {
        const fraction span = abs(i % 2 == 0 ? random.on_a_ruler() : random.awkward()) + fraction(1, 16);
        const std::int64_t parts = random.between(1, 60);
        const fraction graduation =
            graduations[static_cast<std::size_t>(random.between(0, static_cast<std::int64_t>(graduations.size()) - 1))];
        if (span / parts < graduation && parts > 1)
            continue;
        ++checked;
        const rounded<Unit> marks(length_of<Unit>(span), parts, length_of<Unit>(graduation));
        REQUIRE(marks.size() == parts - 1);
        mpq_class before = 0, sum = 0, farthest = 0;
        for (std::int64_t k = 0; k < marks.size(); ++k) {
            const mpq_class ideal = exact(span) * (k + 1) / parts;
            const mpq_class mark = exact(marks[k].from_datum().value());
            REQUIRE(exact(marks.exact()[k].from_datum().value()) == ideal);
            REQUIRE(mark == nearest_whole(ideal / exact(graduation)) * exact(graduation));
            REQUIRE(2 * abs(mark - ideal) <= exact(graduation));
            REQUIRE(mark > before);
            REQUIRE(exact(marks.part(k).value()) == mark - before);
            farthest = std::max<mpq_class>(farthest, abs(mark - ideal));
            before = mark;
        }
        REQUIRE(before < exact(span));
        for (std::int64_t k = 0; k <= marks.size(); ++k)
            sum += exact(marks.part(k).value());
        REQUIRE(sum == exact(span));
        REQUIRE(exact(marks.farthest_off().value()) == farthest);
    }
    CHECK(checked > 1000);
}

} // namespace

TEST_CASE("rounded marks in inches are the nearest, within half a graduation, and their parts add up to the span") {
    sampler random(4201);
    check_against_gmp<inch>(random, {{1, 4}, {1, 8}, {1, 16}, {1, 32}, {1, 64}, {1, 10}});
}

TEST_CASE(
    "rounded marks in centimetres are the nearest, within half a graduation, and their parts add up to the span") {
    sampler random(4202);
    check_against_gmp<centimetre>(random, {1, {1, 2}, {1, 4}, {1, 10}, {1, 20}});
}

TEST_CASE("marks stay apart where the part is no less than the graduation") {
    // Tie upon tie: parts of 1, 1 1/2, 2 1/2, ... graduations.
    for (std::int64_t twice = 2; twice < 12; ++twice)
        for (std::int64_t parts = 2; parts < 30; ++parts) {
            const rounded<inch> marks(length_of<inch>(fraction(twice, 2) * parts), parts, 1_in);
            REQUIRE(std::ranges::adjacent_find(marks, std::greater_equal<>()) == marks.end());
            REQUIRE(marks.front() > at<strip_end>(0_in));
            REQUIRE(marks.part(parts - 1) > 0_in);
        }
}

TEST_CASE("stepping the rounded spacing along drifts by what summing the steps gives") {
    sampler random(4203);
    while (random.another_of(2000)) {
        const fraction spacing = abs(random.awkward()) + 1;
        const fraction graduation(1, random.between(1, 32));
        const auto along = stepped(length_of<inch>(spacing), length_of<inch>(graduation));
        REQUIRE(exact(along.spacing.value()) == nearest_whole(exact(spacing) / exact(graduation)) * exact(graduation));
        mpq_class stepped_to = 0, place = 0;
        for (std::int64_t k = 1; k <= 40; ++k) {
            stepped_to += exact(along.spacing.value());
            place += exact(spacing);
            REQUIRE(exact(along.drift(k).value()) == stepped_to - place);
        }
    }
}

TEST_CASE("marking from the datum keeps within half a graduation where stepping drifts beyond it") {
    constexpr auto along = stepped("2 6/7"_in, "1/8"_in);
    CHECK(sevenths.farthest_off() <= "1/16"_in);
    CHECK(along.drift(6) > "1/16"_in);
}

TEST_CASE("a graduation too coarse for the parts is refused") {
    CHECK_THROWS_WITH_AS(rounded<inch>(1_in, 16, "1/8"_in),
                         "parts of 1/16 in cannot be told apart at a graduation of 1/8 in", marks_error);
    CHECK_THROWS_WITH_AS(rounded<centimetre>(2_cm, 25, 0.1_cm),
                         "parts of 0.08 cm cannot be told apart at a graduation of 0.1 cm", marks_error);
    // What would come of it: the first of two halves of 0.9 would fall on the end.
    CHECK_THROWS_AS(rounded<inch>("9/10"_in, 2, 1_in), marks_error);
}

TEST_CASE("a graduation of nothing is refused before a mark is read") {
    CHECK_THROWS_WITH_AS(rounded<inch>(10_in, 3, 0_in), "a graduation must be more than zero: it was 0", range_error);
    CHECK_THROWS_WITH_AS(rounded<inch>(10_in, 1, -"1/8"_in), "a graduation must be more than zero: it was -1/8",
                         range_error);
    CHECK_THROWS_WITH_AS(stepped(1_in, 0_in), "a graduation must be more than zero: it was 0", range_error);
}

TEST_CASE("a rounded division refuses what a division refuses, and parts that it does not have") {
    CHECK_THROWS_WITH_AS(rounded<inch>(0_in, 3, "1/8"_in), "a span to divide must be more than zero: it was 0 in",
                         marks_error);
    CHECK_THROWS_WITH_AS(rounded<inch>(1_in, 0, "1/8"_in),
                         "the number of parts must be from 1 to 4611686018427387904: it was 0", marks_error);
    CHECK_THROWS_WITH_AS(sevenths.part(7), "a part of a span must be numbered from 0 to 6: it was 7", marks_error);
    CHECK_THROWS_WITH_AS(sevenths.part(-1), "a part of a span must be numbered from 0 to 6: it was -1", marks_error);
}

TEST_CASE("a spacing that cannot be stepped along is refused") {
    CHECK_THROWS_WITH_AS(stepped(0_in, "1/8"_in), "the distance between marks must be more than zero: it was 0 in",
                         marks_error);
    CHECK_THROWS_WITH_AS(stepped("1/16"_in, "1/8"_in),
                         "a distance between marks of 1/16 in rounds to nothing at a graduation of 1/8 in",
                         marks_error);
    CHECK(stepped("3/32"_in, "1/8"_in).spacing == "1/8"_in);
}

TEST_CASE("how far a mark of a billion is off is known at once, and is what the farthest of few shows") {
    // Parts of 1 1/16 in on 1/8 in are 8 1/2 graduations: every second mark is halfway between two, 1/16 in off.
    CHECK(rounded<inch>(length_of<inch>({17'000'000'000, 16}), 1'000'000'000, "1/8"_in).farthest_off() == "1/16"_in);
    // Parts of 4/3 graduations: a third off at most. Three marks reach both remainders, and so do many.
    for (const std::int64_t parts : {4, 5, 7, 1000})
        CHECK(rounded<inch>(length_of<inch>({4 * parts, 3}), parts, 1_in).farthest_off() == length_of<inch>({1, 3}));
    // Parts of 1 in and a 10^8-th: each mark is a 10^8-th further off, and the last of 10^7 the farthest.
    CHECK(rounded<inch>(length_of<inch>({1'000'000'010'000'000, 100'000'000}), 10'000'000, 1_in).farthest_off() ==
          length_of<inch>({9'999'999, 100'000'000}));
    // Parts of 1 in and 3/5500000: of 2749998 and 2750001 parts of 5500000, the latter is nearer to half.
    CHECK(rounded<inch>(length_of<inch>({22'000'012, 11}), 2'000'000, 1_in).farthest_off() ==
          length_of<inch>({2'749'999, 5'500'000}));
}

TEST_CASE("the first multiple that leaves a remainder within bounds is the one that counting up finds") {
    sampler random(4207);
    while (random.another_of(20'000)) {
        const std::int64_t modulus = random.between(2, 400), by = random.between(0, modulus - 1);
        const std::int64_t low = random.between(1, modulus - 1), high = random.between(low, modulus - 1);
        std::int64_t first = 0; // remainders come again after `modulus` multiples
        for (std::int64_t k = 1; k < modulus && first == 0; ++k)
            if (k * by % modulus >= low && k * by % modulus <= high)
                first = k;
        REQUIRE(detail::first_multiple_within({by, modulus}, low, high) == first);
    }
    // Near the end of 64 bits, and against GMP: one remainder has one multiple, the inverse times it.
    const std::int64_t prime = 9'223'372'036'854'775'783; // the largest prime below 2^63
    while (random.another_of(2000)) {
        const std::int64_t by = random.between(1, prime - 1), rest = random.between(1, prime - 1);
        const std::int64_t k = detail::first_multiple_within({by, prime}, rest, rest);
        REQUIRE(k > 0);
        REQUIRE(k < prime);
        REQUIRE(mpz_class(exact(k).get_num() * exact(by).get_num() % exact(prime).get_num()) == exact(rest).get_num());
    }
}
