// Webbing: what is published, at compile time; strips of paper bent round in whole parts at random, backwards too; and what is
// refused.
#include "reference.hpp"
#include <turncloth/measure/read.hpp>
#include <turncloth/notions/webbing.hpp>

#include <doctest/doctest.h>

using namespace turncloth;
using reference::exact;
using reference::facts;
using reference::message;

namespace {

// US Army TM 10-1670-279-23&P p. 2-59 (published): 20 in of webbing, marked 5 in from each end, its ends joined with a lap of 5 in:
// 10 in between the marks, a ring of 15 in.
static_assert(spliced_round(20_in, 5_in) == 15_in && free_of_splice(20_in, 5_in) == 10_in);
static_assert(splice_length(15_in, 5_in).value() == 20_in);
// US Army TM 10-1670-281-23&P par. 2-33 (published): 8 3/4 in doubled, sewn 1/4 in from its ends: 4 3/8 in doubled, 8 1/4 in round
// the inside.
static_assert(loop_flat<inch>("8 3/4"_in, {.row = "1/4"_in}) == "4 3/8"_in);
static_assert(loop_inside<inch>("8 3/4"_in, {.row = "1/4"_in}) == "8 1/4"_in);
static_assert(loop_cut<inch>("8 1/4"_in, {.row = "1/4"_in}).value() == "8 3/4"_in);
// US Army TM 10-8340-208-13 (published): the chape of a ring cut 5 in, its ends folded 1/2 in. So it lies 2 in long (by hand).
static_assert(loop_flat<inch>(5_in, {.row = "1/4"_in, .under = "1/2"_in}) == 2_in);
static_assert(loop_inside<inch>(5_in, {.row = "1/4"_in, .under = "1/2"_in}) == "3 1/2"_in);
// By hand: 2 in out and back, 1 in down twice, 1/2 in under twice.
static_assert(loop_on_edge<inch>({.stands = 2_in, .sewn = 1_in, .under = "1/2"_in}).value() == 7_in);

} // namespace

TEST_CASE("rings and loops of webbing are found again, and their parts are all of what was cut") {
    reference::sampler random(431);
    while (random.another_of(3'000)) {
        const length<inch> lap = random.inches(6), round = lap + random.inches(40);
        const length<inch> cut = splice_length(round, lap).value();
        CHECK(spliced_round(cut, lap) == round);
        CHECK(free_of_splice(cut, lap) + lap + lap == cut);
        CHECK(free_of_splice(cut, lap) + lap == round); // once where it lies twice
        const doubled_ends<inch> ends{.row = random.inches(3), .under = random.inches(2)};
        const length<inch> inside = random.inches(30), whole = loop_cut(inside, ends).value();
        CHECK(loop_inside(whole, ends) == inside);
        CHECK(loop_flat(whole, ends) == inside / 2 + ends.row);
        CHECK(exact(whole) == exact(inside) + 2 * exact(ends.row) + 2 * exact(ends.under));
        const length<inch> sewn = ends.under + random.inches(3), stands = random.inches(9);
        const length<inch> on_edge = loop_on_edge<inch>({stands, sewn, ends.under}).value();
        CHECK(loop_flat(on_edge, {.row = sewn, .under = ends.under}) == stands + sewn);
    }
}

TEST_CASE("webbing that its own ends use up is refused with both figures") {
    CHECK(message<webbing_error>([] { spliced_round(10_in, 5_in); }) ==
          "webbing cut 10 in is used up by a lap of 5 in, which takes it at both ends");
    CHECK(facts<webbing_error>([] { free_of_splice(9_in, 5_in); }) ==
          "too small: the cut length of webbing, given 9 in, least 10 in");
    CHECK(message<webbing_error>([] { splice_length(5_in, 5_in); }) ==
          "a ring 5 in round has no room for a lap of 5 in");
    CHECK(facts<webbing_error>([] { splice_length(9_in, 0_in); }) ==
          "too small: the lap of a splice, given 0 in, least 0 in");
    CHECK(message<webbing_error>([] { loop_inside<inch>(2_in, {.row = "1/2"_in, .under = "1/2"_in}); }) ==
          "webbing cut 2 in makes no loop: its ends take 2 in");
    CHECK(facts<webbing_error>([] { loop_flat<inch>(1_in, {.row = "1/2"_in, .under = "1/2"_in}); }) ==
          "too small: the cut length of webbing, given 1 in, least 2 in");
    CHECK(facts<webbing_error>([] { loop_cut<inch>(1_in, {}); }) ==
          "too small: the distance of a row from the ends of a loop, given 0 in, least 0 in");
    CHECK(message<webbing_error>([] { loop_on_edge<inch>({.stands = 2_in, .sewn = "1/2"_in, .under = 1_in}); }) ==
          "what is folded under at the end of a loop, 1 in, goes on beyond what is sewn down, 1/2 in");
    CHECK(loop_on_edge<inch>({.stands = 2_in, .sewn = 1_in, .under = 1_in}).value() == 8_in);
}
