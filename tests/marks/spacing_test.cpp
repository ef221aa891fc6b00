// Things spaced along an edge: published worked examples, things laid down one by one with GMP over random sizes, and
// every refusal.
#include "../measure/against_gmp.hpp"
#include <turncloth/marks/spacing.hpp>
#include <turncloth/measure/read.hpp>

#include <doctest/doctest.h>

#include <limits>

using namespace turncloth;
using against_gmp::exact;
using against_gmp::sampler;

namespace {

struct strip_end {};

// NIMI, Dress Making (Trade Practical 2), p. 209: 39 cm less 1.5 cm at each end is 36; 36 / 1.2 is 30 gaps, 31 tucks.
constexpr auto tucks = spaced_from_margins<strip_end>(31, 0_cm, 39_cm, 1.5_cm);
static_assert(tucks.gap() == 1.2_cm);
static_assert(tucks.size() == 31);
static_assert(tucks.margin() == 1.5_cm);
static_assert(tucks.width() == 0_cm);
static_assert(tucks.centres()[0] == at<strip_end>(1.5_cm));
static_assert(tucks.centres()[30] == at<strip_end>(37.5_cm));
// The same page: 28 cm with ends of 2 cm, 15 gaps and 16 tucks: 24 / 15 is 1.6 cm from tuck to tuck.
static_assert(spaced_from_margins<strip_end>(16, 0_cm, 28_cm, 2_cm).gap() == 1.6_cm);

// By hand: three things of 2 in on 18 in leave 12.
constexpr auto equal = spaced<strip_end>(3, 2_in, 18_in); // four gaps of 3
static_assert(equal.gap() == 3_in);
static_assert(equal.margin() == 3_in);
static_assert(equal.width() == 2_in);
static_assert(equal.size() == 3);
static_assert(equal.starts()[0] == at<strip_end>(3_in));
static_assert(equal.centres()[1] == at<strip_end>(9_in));
static_assert(equal.ends()[2] == at<strip_end>(15_in));
constexpr auto margins = spaced_from_margins<strip_end>(3, 2_in, 18_in, 1_in); // two gaps of 5
static_assert(margins.gap() == 5_in);
static_assert(margins.margin() == 1_in);
static_assert(margins.starts()[1] == at<strip_end>(8_in));
constexpr auto centred = spaced_centred<strip_end>(3, 2_in, 18_in, 1_in); // two gaps of 1, ten left for the margins
static_assert(centred.gap() == 1_in);
static_assert(centred.margin() == 5_in);
static_assert(centred.ends()[2] == at<strip_end>(13_in));
constexpr auto in_spans = spaced_in_spans<strip_end>(3, 2_in, 18_in); // the middles of 0 to 6, 6 to 12, 12 to 18
static_assert(in_spans.centres()[0] == at<strip_end>(3_in));
static_assert(in_spans.centres()[1] == at<strip_end>(9_in));
static_assert(in_spans.centres()[2] == at<strip_end>(15_in));
static_assert(in_spans.gap() == 4_in);
static_assert(in_spans.margin() == 2_in);

// A single thing lies in the middle, and things that fill the length have no gaps.
static_assert(spaced<strip_end>(1, 2_in, 5_in).centres()[0] == at<strip_end>("2 1/2"_in));
static_assert(spaced_centred<strip_end>(1, 2_in, 5_in, 9_in).starts()[0] == at<strip_end>("1 1/2"_in));
static_assert(spaced_in_spans<strip_end>(1, 2_in, 5_in).ends()[0] == at<strip_end>("3 1/2"_in));
static_assert(spaced<strip_end>(4, 2_in, 8_in).gap() == 0_in);
static_assert(spaced_from_margins<strip_end>(2, 3_in, 10_in, 2_in).gap() == 0_in);
static_assert(spaced_centred<strip_end>(2, 3_in, 10_in, 4_in).margin() == 0_in);
static_assert(spaced_centred<strip_end>(2, 3_in, 10_in, 0_in).margin() == 2_in);

/// Lays the things down one by one, and comes out at the far end.
void check_laid_down(const spacing<strip_end, inch>& s, std::int64_t n, fraction width, fraction along) {
    REQUIRE(s.size() == n);
    REQUIRE(s.width().value() == width);
    REQUIRE(s.starts().size() == n);
    REQUIRE(s.centres().size() == n);
    REQUIRE(s.ends().size() == n);
    REQUIRE(s.gap() >= 0_in);
    REQUIRE(s.margin() >= 0_in);
    mpq_class at = exact(s.margin().value());
    for (std::int64_t k = 0; k < n; ++k) {
        at += k == 0 ? mpq_class(0) : exact(s.gap().value());
        REQUIRE(exact(s.starts()[k].from_datum().value()) == at);
        REQUIRE(exact(s.centres()[k].from_datum().value()) == at + exact(width) / 2);
        at += exact(width);
        REQUIRE(exact(s.ends()[k].from_datum().value()) == at);
    }
    REQUIRE(at + exact(s.margin().value()) == exact(along));
}

} // namespace

TEST_CASE("things laid down one by one with their gaps and margins come out at the far end") {
    sampler random(4301);
    for (const int i : random.cases(2000)) {
        const std::int64_t n = random.between(2, 40);
        const fraction width = i % 7 == 0 ? fraction(0) : abs(random.on_a_ruler()) / 16;
        const fraction margin = abs(random.on_a_ruler()) / 8, gap = abs(random.awkward()) / 100;
        const fraction along = width * n + margin * 2 + gap * (n - 1) + fraction(random.between(0, 40), 3);
        if (along == 0)
            continue;
        const auto w = length_of<inch>(width), l = length_of<inch>(along);

        const auto equal_gaps = spaced<strip_end>(n, w, l);
        check_laid_down(equal_gaps, n, width, along);
        REQUIRE(equal_gaps.gap() == equal_gaps.margin());

        const auto from_margins = spaced_from_margins<strip_end>(n, w, l, length_of<inch>(margin));
        check_laid_down(from_margins, n, width, along);
        REQUIRE(from_margins.margin().value() == margin);

        const auto about_the_middle = spaced_centred<strip_end>(n, w, l, length_of<inch>(gap));
        check_laid_down(about_the_middle, n, width, along);
        REQUIRE(about_the_middle.gap().value() == gap);

        const auto in_parts = spaced_in_spans<strip_end>(n, w, l);
        check_laid_down(in_parts, n, width, along);
        for (std::int64_t k = 0; k < n; ++k)
            REQUIRE(exact(in_parts.centres()[k].from_datum().value()) == exact(along) * (2 * k + 1) / (2 * n));
    }
}

TEST_CASE("n points have n - 1 gaps between them") {
    for (std::int64_t n = 2; n < 50; ++n)
        CHECK(spaced_from_margins<strip_end>(n, 0_in, length_of<inch>(n + 1), 1_in).gap() == 1_in);
}

TEST_CASE("things that do not fit are refused with what they need") {
    CHECK_THROWS_WITH_AS(spaced<strip_end>(5, 2_in, "9 1/2"_in),
                         "for 5 things 2 in wide, with margins of 0 in, 10 in is needed, which is 1/2 in more than the "
                         "9 1/2 in there is",
                         marks_error);
    CHECK_THROWS_WITH_AS(spaced_from_margins<strip_end>(3, 2.5_cm, 10_cm, 1.5_cm),
                         "for 3 things 2.5 cm wide, with margins of 1.5 cm, 10.5 cm is needed, which is 0.5 cm more "
                         "than the 10 cm there is",
                         marks_error);
    CHECK_THROWS_WITH_AS(
        spaced_in_spans<strip_end>(1, 2_in, 1_in),
        "for 1 thing 2 in wide, with margins of 0 in, 2 in is needed, which is 1 in more than the 1 in "
        "there is",
        marks_error);
    CHECK_THROWS_WITH_AS(spaced_centred<strip_end>(3, 2_in, 10_in, "2 1/2"_in),
                         "for 2 gaps of 2 1/2 in, 5 in is needed, which is 1 in more than the 4 in that the things "
                         "leave",
                         marks_error);
    CHECK_THROWS_WITH_AS(spaced_centred<strip_end>(2, 2_in, 5_in, 2_in),
                         "for 1 gap of 2 in, 2 in is needed, which is 1 in more than the 1 in that the things leave",
                         marks_error);
    CHECK_THROWS_AS(spaced_centred<strip_end>(3, 4_in, 10_in, 0_in), marks_error);
}

TEST_CASE("counts and lengths that make no sense are refused") {
    CHECK_THROWS_WITH_AS(spaced<strip_end>(0, 1_in, 10_in),
                         "the number of things to space must be at least 1: it was 0", marks_error);
    CHECK_THROWS_WITH_AS(spaced_in_spans<strip_end>(-2, 1_in, 10_in),
                         "the number of things to space must be at least 1: it was -2", marks_error);
    CHECK_THROWS_WITH_AS(spaced_centred<strip_end>(0, 1_in, 10_in, 1_in),
                         "the number of things to space must be at least 1: it was 0", marks_error);
    CHECK_THROWS_WITH_AS(spaced_from_margins<strip_end>(1, 1_in, 10_in, 1_in),
                         "the number of things to space from two margins must be at least 2: it was 1", marks_error);
    CHECK_THROWS_WITH_AS(spaced<strip_end>(3, 0_in, 0_in),
                         "the length to space things along must be more than zero: it was 0 in", marks_error);
    CHECK_THROWS_WITH_AS(spaced<strip_end>(3, -"1/2"_in, 10_in),
                         "the width of a thing must be zero or more: it was -1/2 in", marks_error);
    CHECK_THROWS_WITH_AS(spaced_from_margins<strip_end>(3, 1_in, 10_in, -2_in),
                         "the margin beside the outer things must be zero or more: it was -2 in", marks_error);
    CHECK_THROWS_WITH_AS(spaced_centred<strip_end>(3, 1_in, 10_in, -"1/4"_in),
                         "the gap between two things must be zero or more: it was -1/4 in", marks_error);
}

TEST_CASE("as many things as can be counted are refused for their number, not miscounted") {
    CHECK_THROWS_AS(spaced<strip_end>(std::numeric_limits<std::int64_t>::max(), 0_in, 1_in), overflow_error);
    CHECK_THROWS_AS(spaced<strip_end>(std::numeric_limits<std::int64_t>::max(), 2_in, 1_in), overflow_error);
}
