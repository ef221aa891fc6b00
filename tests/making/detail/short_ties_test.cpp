// Whether a tie goes round what is rolled up. By hand: a roll's section keeps the area of its layers, so its girth is 2 pi R
// with pi R^2 = length x thickness. 20 in of 1/16 in: R = 0.6308, girth 3.963, on sixteenths 3 15/16 in at least; 10 in of it:
// R = 0.4460, girth 2.802, 2 3/4 in. What is folded back is shorter and thicker, and as much round.
#include "making/things.hpp"
#include <turncloth/making/fastenings.hpp>

#include <doctest/doctest.h>

#include <string>
#include <vector>

using namespace things;

namespace {

struct tied {
    edge from = edge::left;
    length<inch> tie{}, thick = "1/16"_in;
    bool rolled = true, flap = false;
};

std::vector<making_fault> faults_of(const tied& t) {
    making<inch> d("roll");
    const auto roll =
        cut_for(d, "roll", panel<inch>({20_in, 10_in}, {}), {.cloth = {.name = "canvas", .thickness = t.thick}});
    sew_tie(d, roll, {.from = t.from, .in = at<finished_edge>(1_in), .along = at<finished_edge>(2_in), .tie = t.tie},
            {roll});
    if (t.flap)
        d.add(crease<inch>{.at = line(roll, edge::right, 5_in), .over = true});
    if (t.rolled)
        d.add(moment{moment_kind::roll, 0});
    return execute(d).faults;
}

} // namespace

TEST_CASE("a tie that does not go round what is rolled up is refused with both lengths") {
    for (const bool flap : {false, true}) {
        const auto faults = faults_of({.tie = "3 7/8"_in, .flap = flap});
        REQUIRE(faults.size() == 1);
        CHECK(faults[0].sentence == "the tie on roll is 3 7/8 in long, and does not go round it rolled up, 3 15/16 in");
        CHECK(faults[0].facts.kind == fault::too_small);
        CHECK(faults[0].facts.what == "a tie");
        CHECK(faults_of({.tie = "3 15/16"_in, .flap = flap}).empty());
    }
    CHECK(faults_of({.from = edge::top, .tie = "2 11/16"_in}).size() == 1);
    CHECK(faults_of({.from = edge::top, .tie = "2 3/4"_in}).empty());
    CHECK(faults_of({.from = edge::bottom, .tie = "2 11/16"_in}).size() == 1);
}

TEST_CASE("a tie is not judged where its length, the cloth's thickness or the rolling up is not stated") {
    CHECK(faults_of({}).empty());
    CHECK(faults_of({.tie = 1_in, .thick = {}}).empty());
    CHECK(faults_of({.tie = 1_in, .rolled = false}).empty());
}
