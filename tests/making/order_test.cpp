// The order of making is a consequence: the same operations, entered in whatever order, give the same steps.
#include "making/boxes.hpp"
#include "making/in_order.hpp"
#include "making/random_design.hpp"
#include <turncloth/making/work_plan.hpp>
#include <turncloth/making/work_words.hpp>

#include <doctest/doctest.h>

#include <algorithm>
#include <string>

using namespace things;

namespace {

std::string order_of(const making<inch>& d) {
    std::string all;
    try {
        for (const making_step& s : steps_of(d))
            all += described(d, s.what) + "\n";
        return all;
    } catch (const making_error& refused) {
        return std::string("a circle: ") + refused.what();
    }
}

/// As a maker reads them.
std::string printed(const making<inch>& d) {
    std::string all;
    try {
        const work_plan<inch> plan = work_plan_of(d);
        for (const work_group<inch>& g : plan.groups)
            all += sentence_of(plan, g) + "\n";
    } catch (const making_error& refused) {
        return std::string("a circle: ") + refused.what();
    }
    return all;
}

void check_same(const making<inch>& d, const std::string& order, const std::string& steps) {
    REQUIRE(order_of(d) == order);
    REQUIRE(printed(d) == steps);
}

} // namespace

TEST_CASE("for 400 random projects any order of entry gives the same steps") {
    sampler any(11);
    int circles = 0;
    while (any.another_of(400)) {
        const making<inch> d = random_design(any);
        const std::string first = order_of(d), steps = printed(d);
        circles += first.rfind("a circle", 0) == 0;
        for (int k = 0; k < 3; ++k)
            check_same(entered_anew(d, any), first, steps);
    }
    CHECK(circles < 300); // many rows of random projects run under what must lie there already
}

TEST_CASE("the things of the demonstration have one order, however they are entered") {
    sampler any(12);
    for (const making<inch>& d : {tool_roll(true).design, tool_roll(false).design, organiser(3).design})
        while (any.another_of(20))
            check_same(entered_anew(d, any), order_of(d), printed(d));
}

TEST_CASE("what is boxed has one order, however it is entered") {
    sampler any(13);
    const box_asked size{.w = 16_in, .h = 9_in, .d = 2_in, .s = "1/2"_in};
    zipped_pad pad(size);
    pad.design.add(moment{moment_kind::turn_out, pad.zip.index});
    for (const making<inch>& d : {pad.design, six_pieces(size).design, lined_bag(size).design})
        while (any.another_of(20)) {
            making<inch> again = entered_anew(d, any);
            check_same(entered_anew(again, any), order_of(again), printed(again));
        }
}

// By hand: nothing of the roll of today goes through lining and back alone, so the back is laid when the binding needs
// it, and the lining last before the wadding. A row through those two must be sewn before the wadding lies under the
// back, so the lining goes onto the back first, and the two together onto the wadding: of five layings one moves.
TEST_CASE("a row through two layers more moves exactly the laying that it must") {
    const auto layings = [](const making<inch>& d) {
        std::string all;
        for (const making_step& s : steps_of(d))
            if (s.what.kind == operation_kind::laying)
                all += name_of(d, d.layings()[s.what.index].piece) + ", ";
        return all;
    };
    tool_roll roll(false);
    CHECK(layings(roll.design) == "zipper 1, zipper 2, tools, back, lining, wadding, ");
    roll.design.add(sewn(roll.lining, edge::top, "7 3/4"_in, {roll.lining, roll.back}));
    CHECK(layings(roll.design) == "zipper 1, zipper 2, tools, lining, back, wadding, ");
}

TEST_CASE("work that must be done both before and after is a circle") {
    making<inch> d("pocket");
    const cut_part back = d.cut({.name = "back", .width = 10_in, .height = 10_in});
    const cut_part lining = d.cut({.name = "lining", .width = 10_in, .height = 10_in});
    const cut_part pocket = d.cut({.name = "pocket", .width = 4_in, .height = 4_in});
    d.add(laying<inch>{.piece = lining, .on = back});
    d.add(laying<inch>{.piece = pocket, .on = lining, .left = 3_in, .top = 3_in});
    d.add(sewn(pocket, edge::bottom, "1/4"_in, {pocket, lining}));
    CHECK(order_of(d) == "the laying of pocket\nthe row on pocket, 1/4 in from its bottom edge\n"
                         "the laying of lining\n");
    // A row through lining and back under the pocket needs the back, and the pocket's row must not go through it.
    d.add(sewn(lining, edge::top, 5_in, {lining, back}));
    CHECK(order_of(d).rfind("a circle", 0) == 0);
}

TEST_CASE("of two folds from one edge the outer comes first, and before each row the turning that it holds") {
    const making<inch> d = organiser(1).design;
    const auto steps = steps_of(d);
    const auto position = [&](operation_kind kind, std::size_t i) {
        return std::find_if(steps.begin(), steps.end(),
                            [&](const making_step& s) {
                                return s.what == operation{kind, i};
                            }) -
               steps.begin();
    };
    for (std::size_t e = 0; e < 4; ++e) {
        CHECK(position(operation_kind::crease, 2 * e) < position(operation_kind::crease, 2 * e + 1));
        CHECK(position(operation_kind::crease, 2 * e + 1) < position(operation_kind::stitching, e));
    }
}

// By paper: a front of two strips, the lower lapped over the upper, lies on a larger back whose edges are brought over it. Only the
// upper lies on the back itself; what is turned over the lower's foot still waits until both are there.
TEST_CASE("a binding waits for all that lies on what it lies on, as of a front that is joined of pieces") {
    making<inch> d("hanging");
    const auto back = d.cut({.name = "back", .width = 24_in, .height = 24_in}),
               upper = d.cut({.name = "upper", .width = 20_in, .height = 11_in}),
               lower = d.cut({.name = "lower", .width = 20_in, .height = 10_in});
    d.add(laying<inch>{.piece = back, .up = face::wrong});
    const auto bound = d.add(sewn(back, edge::bottom, "2 3/4"_in, {back, lower})),
               over = d.add(crease<inch>{.at = line(back, edge::bottom, 2_in), .over = true}),
               turned_in = d.add(crease<inch>{.at = line(back, edge::bottom, 1_in), .over = true}),
               laid = d.add(laying<inch>{.piece = upper, .on = back, .left = 2_in, .top = 2_in}),
               lapped = d.add(laying<inch>{.piece = lower, .on = upper, .top = 10_in}),
               joined = d.add(sewn(lower, edge::top, "1/4"_in, {lower, upper}));
    things::order made(d);
    CHECK(made.comes({lapped, joined, laid, over, bound}));
    CHECK(made.comes({turned_in, over}));
}
