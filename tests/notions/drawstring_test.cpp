// Cords and elastic: what is published, at compile time; there and back at random; what hangs out, laid out by hand; and what is
// refused.
#include "reference.hpp"
#include <turncloth/measure/read.hpp>
#include <turncloth/notions/drawstring.hpp>

#include <doctest/doctest.h>

using namespace turncloth;
using reference::facts;
using reference::message;

namespace {

// Ontario Teachers' Manual, Household Science, sewing (published): a bag of 12 x 18 in; two tapes, each twice the width and 2 in
// more: 26 in each, 52 in all.
static_assert(cord_length<inch>(round_flat(12_in), {.beyond = 1_in}).value() == 26_in);
static_assert(cord_length<inch>(round_flat(12_in), {.beyond = 1_in}).value() * 2 == 52_in);
static_assert(cord_length<inch>(round_flat(12_in), {.beyond = 1_in, .knot = 1_in}).value() == 27_in);
// US Army TM 10-8400-203-23 p. 82 (published): a cord cut 30 in, one end folded 1/2 in, the other knotted up to 5/8 in from its
// end; so used up: 28 7/8 in are left (derived).
static_assert(round_of_cord<inch>(30_in, {.beyond = "9/16"_in}) == "28 7/8"_in);
// Oregon State University Extension, 4-H 320-36 (published): a casing 1/4 in (6 mm) wider than what runs in it.
static_assert(channel_for(1_in, "1/4"_in) == "1 1/4"_in);

// By hand. A mouth of 24 in drawn up to 4: 20 in come out, and 1 in of either end was out already.
static_assert(loop_drawn<inch>(24_in, 4_in, {.beyond = 1_in}) == 22_in);
static_assert(loop_drawn<inch>(24_in, 24_in, {.beyond = 1_in}) == 2_in);
static_assert(round_for_loop<inch>(22_in, 4_in, {.beyond = 1_in}) == 24_in);
// An elastic that stretches to 9/5 of its length (by hand): 10 in open to 18. With 1 in of ease and 1/2 in of overlap, 11 1/2 in.
constexpr elastic<inch> soft{.stretch = {9, 5}, .ease = 1_in, .overlap = "1/2"_in};
static_assert(elastic_length(18_in, soft).value() == "11 1/2"_in);
static_assert(stretched_to("11 1/2"_in, soft) == "19 4/5"_in);
static_assert(fullness_of(18_in, soft) == fraction(18, 11));
static_assert(elastic_length<inch>(18_in, {.stretch = 2, .overlap = 1_in}).value() == 10_in); // 18 / 2 + 1

} // namespace

TEST_CASE("a cord and an elastic are found again from what they go round") {
    reference::sampler random(331);
    while (random.another_of(3'000)) {
        const length<inch> round = random.inches(60), closed = round * fraction(random.between(0, 8), 8);
        const cord_ends<inch> ends{random.inches(4), random.inches(3)};
        CHECK(round_of_cord(cord_length(round, ends).value(), ends) == round);
        CHECK(round_for_loop(loop_drawn(round, closed, ends), closed, ends) == round);
        // However far it is drawn, the cord is in the casing, in the loop or in the knot.
        CHECK(closed + loop_drawn(round, closed, ends) + ends.knot == cord_length(round, ends).value());
        const elastic<inch> e{fraction(random.between(9, 24), 8), {}, random.inches(1)};
        CHECK(stretched_to(elastic_length(round, e).value(), e) == round);
        CHECK(fullness_of(round, e) == e.stretch);
        const elastic<inch> eased{e.stretch, (round - round / e.stretch) / 2, e.overlap};
        CHECK(stretched_to(elastic_length(round, eased).value(), eased) > round);
        CHECK(fullness_of(round, eased) < e.stretch);
        CHECK(fullness_of(round, eased) > 1);
    }
}

TEST_CASE("what does not go round, does not draw up or hangs out too far is refused with its figures") {
    CHECK(message<drawstring_error>([] { round_of_cord<inch>(4_in, {.beyond = "1 1/2"_in, .knot = 1_in}); }) ==
          "a cord of 4 in goes round nothing: its ends and its knot take 4 in");
    CHECK(facts<drawstring_error>([] { round_of_cord<inch>(3_in, {.beyond = "1 1/2"_in, .knot = 1_in}); }) ==
          "too small: the length of a cord, given 3 in, least 4 in");
    CHECK(message<drawstring_error>([] { loop_drawn<inch>(24_in, 25_in, {.beyond = 1_in}); }) ==
          "what a mouth is drawn up to must be from 0 to 24 in, the way round it as it lies open: it was 25 in");
    CHECK(
        message<drawstring_error>([] { round_for_loop<inch>("1 3/4"_in, 4_in, {.beyond = 1_in}); }) ==
        "a loop of 1 3/4 in is used up by its two ends, which have 1 in each beyond the casing as the mouth lies open");
    CHECK(facts<drawstring_error>([] { round_for_loop<inch>("1 3/4"_in, 4_in, {.beyond = 1_in}); }) ==
          "too small: the loop of a cord, given 7/4 in, least 2 in");
    CHECK(round_for_loop<inch>(2_in, 4_in, {.beyond = 1_in}) == 4_in);
    CHECK(message<drawstring_error>([] { elastic_length<inch>(18_in, {.stretch = 1}); }) ==
          "an elastic that stretches to 1 of its length does not stretch");
    CHECK(message<drawstring_error>([] {
              elastic_length<inch>(18_in, {.stretch = {9, 5}, .ease = 8_in});
          }) == "an elastic of 18 in does not draw up a mouth of 18 in: its ease of 8 in leaves it slack");
    CHECK(facts<drawstring_error>([] {
              elastic_length<inch>(18_in, {.stretch = {9, 5}, .ease = 9_in});
          }) == "too large: the ease of an elastic, given 9 in, most 8 in");
    CHECK(message<drawstring_error>([] { stretched_to<inch>(1_in, {.stretch = 2, .overlap = 1_in}); }) ==
          "an elastic cut 1 in is used up by the overlap of its ends, 1 in");
    CHECK(facts<drawstring_error>([] { cord_length<inch>(9_in, {}); }) ==
          "too small: the end of a cord beyond its casing, given 0 in, least 0 in");
    CHECK(facts<drawstring_error>([] { round_flat(0_in); }) ==
          "too small: the width of a mouth, given 0 in, least 0 in");
    CHECK(facts<drawstring_error>([] { channel_for(1_in, 0_in); }) ==
          "too small: the ease of a casing, given 0 in, least 0 in");
}
