// Thread against a list by hand of every row of the things, with its length.
#include "making/things.hpp"
#include <turncloth/making/stitched.hpp>
#include <turncloth/making/work_plan.hpp>

#include <doctest/doctest.h>

using namespace things;

// The roll, in inches, in the order of work:
//   two rows along each zipper's tape, 18 long                                   4 x 18 = 72
//   a row across each of its ends, as wide as the tape                           4 x 1  =  4
//   the hem of the tools, from cut edge to cut edge                                     = 20
//   five dividers, from the pockets' fold to the foot: 9 - 1                     5 x 8  = 40
//   between the zippers and at the middle fold, across the lining                2 x 20 = 40
//   the binding: left and right while the top and foot are turned once, 18 - 2 x 1/2     2 x 17 = 34
//   its top and foot, as wide as it finishes                                     2 x 20 = 40
TEST_CASE("the rows of the roll are those listed by hand") {
    const tool_roll roll(true);
    const auto all = stitched_in(work_plan_of(roll.design));
    CHECK(all.by_machine() == 250_in);
    CHECK(all.by_hand == length<inch>());
    // Lockstitch, 5/2 of the seam's length (notions/thread.hpp).
    CHECK(thread_for<inch>(all.runs) == 625_in);
}

// The organiser, in inches:
//   the backing's sides, raw: 2 x 22 1/8; its foot and its heading, as wide as it finishes: 2 x 20      84 1/4
//   of each strip: its sides, raw, 2 x 4 7/8; its top, 22 5/8; its foot in tucks, 20; four sides of
//   columns, 4 each                                                                          2 x 68 3/8 = 136 3/4
TEST_CASE("the rows of the organiser are those listed by hand") {
    const organiser o;
    const auto all = stitched_in(work_plan_of(o.design));
    CHECK(all.by_machine() == 221_in);
}

TEST_CASE("what is closed by hand takes no machine's thread, and ends are sewn over") {
    making<inch> d("mat");
    const cut_part top = d.cut({.name = "top", .width = 10_in, .height = 8_in});
    auto by_machine = sewn(top, edge::top, 1_in, {top}), hand = sewn(top, edge::left, 1_in, {top});
    by_machine.overrun = "1/2"_in;
    hand.by_hand = true;
    d.add(by_machine);
    d.add(hand);
    const auto all = stitched_in(work_plan_of(d));
    CHECK(all.by_hand == 8_in);
    REQUIRE(all.runs.size() == 1);
    CHECK(thread_for<inch>(all.runs) == "27 1/2"_in); // 5/2 x (10 + 2 x 1/2)
}
