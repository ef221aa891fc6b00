// Boxed bags by their shorthand: what comes of them is what comes of the operations alone, and measures what was asked for.
#include "at_random.hpp"
#include "making/boxes.hpp"
#include "making/outcome.hpp"
#include <turncloth/making/boxed_corners.hpp>
#include <turncloth/making/executed.hpp>

#include <doctest/doctest.h>

#include <string>

using namespace things;

namespace {

boxed_panels<inch> panels(const box_asked& b, const char* name, bool has_rim = true) {
    return {.name = name, .inside = {b.w, b.h, b.d}, .seam = b.s, .has_rim = has_rim};
}

} // namespace

TEST_CASE("a lined bag built by the shorthand is the lined bag built from the operations alone") {
    at_random::sampler any(91);
    while (any.another_of(10)) {
        const box_asked b{.w = any.inches(10) + 8_in,
                          .h = any.inches(6) + 6_in,
                          .d = any.inches(3) + 1_in,
                          .s = any.inches(1) / 2 + "1/4"_in};
        making<inch> d("lined bag");
        const auto outer = sew_boxed_panels<inch>(d, panels(b, "outer")),
                   lining = sew_boxed_panels<inch>(d, panels(b, "lining"));
        join_rims(d, outer, lining);
        CHECK(outcome_of(d) == outcome_of(lined_bag(b, false).design));
        const auto gap = d.add(mouth<inch>{
            .name = "gap",
            .at = {span(lining.panels, edge::bottom, b.s, b.s + b.d / 2 + b.w / 4, b.s + b.d / 2 + b.w * 3 / 4)},
            .by = closed_by::hand});
        d.add(moment{moment_kind::turn_out, gap.index});
        d.add(moment{moment_kind::close, gap.index});
        const auto made = execute(d);
        CHECK(made.faults.empty());
        REQUIRE(made.boxed.boxes.size() == 1);
        CHECK(made.boxed.boxes[0].width == b.w);
        CHECK(made.boxed.boxes[0].height == b.h);
        CHECK(made.boxed.boxes[0].depth == b.d);
    }
}

// By hand: sides of 9 in from the raw top, 1/2 in more than up to a rim; base of 16, corners of 2.
TEST_CASE("a bag without a rim is sewn right up to its top, and one without a seam is refused") {
    const box_asked b{.w = 16_in, .h = 9_in, .d = 2_in, .s = "1/2"_in};
    making<inch> d("bag");
    const auto bag = sew_boxed_panels<inch>(d, panels(b, "bag", false));
    const auto made = execute(d);
    CHECK(made.faults.empty());
    const auto sewn = [&](const operation& o) {
        length<inch> sum;
        for (const row_met<inch>& r : made.rows)
            sum += r.what == o ? r.sewn : length<inch>();
        return sum;
    };
    CHECK(sewn(bag.sides[0]) == "9 1/2"_in);
    CHECK(sewn(bag.sides[1]) == "9 1/2"_in);
    CHECK(sewn(bag.base) == 16_in);
    CHECK(sewn(bag.corners[0]) == 2_in);
    CHECK(sewn(bag.corners[1]) == 2_in);
    CHECK_THROWS_AS(sew_boxed_panels<inch>(d, panels({.w = 16_in, .h = 9_in, .d = 2_in, .s = 0_in}, "bag")),
                    boxed_error);
}
