// Widths and strips joined: against published tents, curtains and skirts; against widths laid down and sewn on one by
// one, flat and in the round, for thousands of sizes; what each kind of join takes; and what is refused.
#include "reference.hpp"
#include <turncloth/measure/read.hpp>
#include <turncloth/notions/joining.hpp>

#include <doctest/doctest.h>

using namespace turncloth;
using reference::exact;
using reference::facts;
using reference::message;

namespace {

// A. R. Bond, The Scientific American Boy, "The canvas tent" (published): widths of 30 in lapped 1 in make 9 ft 9 in
// with four.
constexpr auto tent = cloth_widths(117_in, {.width = 30_in, .join = 1_in}, joined::flat);
static_assert(tent.count == 4);
static_assert(tent.joins == 3);
static_assert(tent.made_up.value() == 117_in);
static_assert(tent.left_over == 0_in);
// Sewn to a ring the same four lap once more, and give 9 ft 8 in: for 9 ft 9 in a fifth is needed.
static_assert(cloth_widths(117_in, {.width = 30_in, .join = 1_in}, joined::in_the_round).count == 5);
static_assert(cloth_widths(116_in, {.width = 30_in, .join = 1_in}, joined::in_the_round).joins == 4);
// General how-to pages (published): 65 in with 2 1/4 times fullness from cloth of 54 in takes 3 widths; 84 in with 2
// 1/2 times and 15 in more takes 5. With seams of 1/2 in, that is 1 in to each join, still 3 and 5 (derived).
static_assert(cloth_widths("146 1/4"_in, {.width = 54_in, .join = 0_in}, joined::flat).count == 3);
static_assert(cloth_widths("146 1/4"_in, {.width = 54_in, .join = 1_in}, joined::flat).count == 3);
static_assert(cloth_widths(225_in, {.width = 54_in, .join = 0_in}, joined::flat).count == 5);
static_assert(cloth_widths(225_in, {.width = 54_in, .join = 1_in}, joined::flat).count == 5);
// A textbook problem (published): a quilt's back of 102 in from cloth of 44 in takes 3 widths; still 3 with seams.
static_assert(cloth_widths(102_in, {.width = 44_in, .join = 1_in}, joined::flat).count == 3);
// A school mathematics page (published): two curtains of 112 in from cloth of 54 in take 3 widths each, or 5 shared.
static_assert(cloth_widths(112_in, {.width = 54_in, .join = 0_in}, joined::flat).count == 3);
static_assert(cloth_widths(224_in, {.width = 54_in, .join = 0_in}, joined::flat).count == 5);
// US Army TM 10-1670-279-23&P, p. 2-59 (published): webbing of 20 in whose ends overlap by 5 in is a loop 15 in round.
constexpr auto sling = cloth_widths(15_in, {.width = 20_in, .join = 5_in}, joined::in_the_round);
static_assert(sling.count == 1);
static_assert(sling.joins == 1);
static_assert(sling.made_up.value() == 15_in);
// One width needs no join, unless it is closed to a ring.
static_assert(cloth_widths(30_in, {.width = 30_in, .join = 1_in}, joined::flat).joins == 0);
static_assert(cloth_widths(29_in, {.width = 30_in, .join = 1_in}, joined::in_the_round).joins == 1);
static_assert(cloth_widths(30_in, {.width = 30_in, .join = 1_in}, joined::in_the_round).count == 2);
// However little a join leaves of a width, one that is enough by itself is not called two.
static_assert(cloth_widths("1/2"_in, {.width = 4_in, .join = 3_in}, joined::flat).count == 1);

// Joins (derived): 2 a straight, the width on the diagonal, 2 sqrt(2) a between slanting ends: for 1/4 in 0.7071 in.
static_assert(join_loss<inch>(join::straight, {.width = 2_in, .allowance = "1/4"_in}, "1/16"_in) == "1/2"_in);
static_assert(join_loss<inch>(join::diagonal, {.width = 2_in, .allowance = "1/4"_in}, "1/16"_in) == 2_in);
static_assert(join_loss<inch>(join::slanting, {.width = 2_in, .allowance = "1/4"_in}, "0.0001"_in) ==
              "0.7072"_in); // rounded up
static_assert(join_loss<inch>(join::slanting, {.width = 2_in, .allowance = "1/4"_in}, "1/16"_in) == "3/4"_in);

} // namespace

TEST_CASE("widths laid down and joined one by one are as many, flat and in the round") {
    reference::sampler random(1913);
    int differ = 0;
    for (const int i : random.cases(5'000)) {
        const length<inch> needed = random.inches(300), width = random.inches(50) + 4_in;
        const length<inch> join = i % 4 == 0 ? length<inch>() : random.inches(3);
        std::int64_t flat = 1, ring = 1;
        length<inch> laid = width, closed = width - join; // a ring's last edge is joined to its first
        for (; laid < needed; laid = laid + width - join)
            ++flat;
        for (; closed < needed; closed = closed + width - join)
            ++ring;
        const auto as_flat = cloth_widths(needed, {.width = width, .join = join}, joined::flat);
        const auto as_ring = cloth_widths(needed, {.width = width, .join = join}, joined::in_the_round);
        CHECK(as_flat.count == flat);
        CHECK(as_flat.joins == flat - 1);
        CHECK(as_flat.made_up.value() == laid);
        CHECK(as_flat.left_over == laid - needed);
        CHECK(as_ring.count == ring);
        CHECK(as_ring.joins == ring);
        CHECK(as_ring.made_up.value() == closed);
        CHECK(as_ring.left_over == closed - needed);
        differ += flat != ring;
    }
    CHECK(differ > 50);
}

TEST_CASE("the sum of the widths can be read") {
    CHECK(to_text(tent.made_up) == "117 in = 4 x 30 in widths - 3 x 1 in joins");
    CHECK(to_text(cloth_widths(50_in, {.width = 30_in, .join = 1_in}, joined::flat).made_up) ==
          "59 in = 2 x 30 in widths - 1 in join");
    CHECK(to_text(cloth_widths(20_in, {.width = 30_in, .join = 1_in}, joined::flat).made_up) == "30 in = 30 in width");
}

TEST_CASE("the join of slanting ends takes the root of eight allowances, rounded up by less than a graduation") {
    reference::sampler random(1885);
    while (random.another_of(2'000)) {
        const length<centimetre> a = random.centimetres(3);
        const reference::real steps = sqrt(reference::real(8)) * exact(a) * 10;
        CHECK(exact(join_loss<centimetre>(join::slanting, {.width = 9_cm, .allowance = a}, "0.1"_cm)) * 10 ==
              ceil(steps));
    }
}

TEST_CASE("what cannot be joined says why") {
    const auto widths = [](length<centimetre> needed, length<centimetre> width, length<centimetre> join) {
        return [=] { return cloth_widths(needed, {.width = width, .join = join}, joined::flat); };
    };
    CHECK(message<joining_error>(widths(100_cm, 2_cm, 2_cm)) ==
          "each join takes 2 cm, which is all of a width of 2 cm");
    CHECK(facts<joining_error>(widths(100_cm, 2_cm, 2_cm)) == "no room: what a join takes, given 2 cm, most 2 cm");
    CHECK(facts<joining_error>(widths(0_cm, 90_cm, 2_cm)) ==
          "too small: the length to make up, given 0 cm, least 0 cm");
    CHECK(facts<joining_error>(widths(100_cm, 0_cm, 2_cm)) == "too small: a width of cloth, given 0 cm, least 0 cm");
    CHECK(facts<joining_error>(widths(100_cm, 90_cm, "-1"_cm)) ==
          "too small: what a join takes, given -1 cm, least 0 cm");
    const auto diagonal = [] {
        return join_loss<inch>(join::diagonal, {.width = 1_in, .allowance = "5/8"_in}, "1/8"_in);
    };
    CHECK(message<joining_error>(diagonal) ==
          "a diagonal join of strips 1 in wide has no room for an allowance of 5/8 in");
    CHECK(facts<joining_error>(diagonal) == "no room: the allowance of a join, given 5/8 in, most 1/2 in");
    CHECK(facts<joining_error>([] {
              return join_loss<inch>(join::straight, {.width = 0_in, .allowance = "1/4"_in}, "1/8"_in);
          }) == "too small: the width of a strip, given 0 in, least 0 in");
    CHECK(facts<joining_error>([] {
              return join_loss<inch>(join::straight, {.width = 1_in, .allowance = 0_in}, "1/8"_in);
          }) == "too small: the allowance of a join, given 0 in, least 0 in");
    CHECK_THROWS_AS(join_loss<inch>(join::slanting, {.width = 1_in, .allowance = "1/4"_in}, 0_in), range_error);
}
