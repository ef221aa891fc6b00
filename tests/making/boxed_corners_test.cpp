// Boxed bags by their shorthand: what comes of them is what comes of the operations alone, and measures what was asked for.
#include "at_random.hpp"
#include "making/boxes.hpp"
#include "making/outcome.hpp"
#include <turncloth/making/boxed_corners.hpp>
#include <turncloth/making/executed.hpp>
#include <turncloth/making/work_plan.hpp>
#include <turncloth/making/work_words.hpp>

#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <vector>

using namespace things;

namespace {

std::string sentences(const std::vector<making_fault>& found) {
    std::string all;
    for (const making_fault& f : found)
        all.append(all.empty() ? "" : "; ").append(f.sentence);
    return all;
}

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

// By hand: the outer is 1/8 in thick, so the lining is 1/4, 1/8 and 1/4 in smaller; 14 in of each rim meet 13 1/2 in, and the seam
// is as long as the shorter, 27 in. The lining alone holds what is between its walls.
TEST_CASE("a smaller lining is let in at the rim, keeps its own size, and holds as much as that") {
    const auto made_with = [](length<inch> lining_depth, length<inch> holds, surplus taken_up) {
        making<inch> d("lined bag");
        const auto outer =
            sew_boxed_panels<inch>(d, panels({.w = 10_in, .h = 8_in, .d = 4_in, .s = "1/2"_in}, "outer"));
        const auto lining = sew_boxed_panels<inch>(
            d, panels({.w = "9 3/4"_in, .h = "7 7/8"_in, .d = lining_depth, .s = "1/2"_in}, "lining"));
        join_rims(d, outer, lining, taken_up);
        const auto gap = d.add(mouth<inch>{
            .name = "gap", .at = {span(lining.panels, edge::bottom, "1/2"_in, 4_in, 9_in)}, .by = closed_by::hand});
        d.add(moment{moment_kind::turn_out, gap.index});
        d.add(moment{moment_kind::close, gap.index});
        d.add(compartment<inch>{.name = "inside",
                                .between = {lining.panels[0], lining.panels[1]},
                                .from_left = 5_in,
                                .from_top = 3_in,
                                .mouths = {gap},
                                .least_width = holds,
                                .least_height = "7 7/8"_in,
                                .least_depth = lining_depth});
        return execute(d);
    };
    const auto made = made_with("3 3/4"_in, "9 3/4"_in, surplus::ease);
    CHECK(sentences(made.faults) == "");
    REQUIRE(made.boxed.boxes.size() == 1);
    CHECK(made.boxed.boxes[0].width == 10_in);
    CHECK(made.boxed.boxes[0].height == 8_in);
    CHECK(made.boxed.boxes[0].depth == 4_in);
    CHECK_FALSE(made.boxed.boxes[0].open);
    REQUIRE(made.boxed.marks.size() == 2);
    CHECK(made.boxed.marks[0].one_is_longer);
    CHECK(made.boxed.marks[0].marks.mark_on_long(2) == at<long_piece>(7_in));
    CHECK(made.boxed.marks[0].marks.mark_on_short(2) == at<short_piece>("6 3/4"_in));
    CHECK(std::count_if(made.rows.begin(), made.rows.end(), [](const row_met<inch>& r) { return r.sewn == 27_in; }) ==
          1);
    CHECK(sentences(made_with("3 3/4"_in, 10_in, surplus::ease).faults) ==
          "the compartment \"inside\" does not hold 10 x 7 7/8 x 3 3/4 in: inside it is 9 3/4 x 7 7/8 x 3 3/4 in");
    CHECK(sentences(made_with(4_in, "9 3/4"_in, surplus::ease).faults) == ""); // as deep as the outer, and less wide
    CHECK_THROWS_AS(made_with("3 3/4"_in, "9 3/4"_in, surplus::none), making_error);
}

// Both panels lie on the table in one, rim beyond rim, as a strap sewn to both wants them: their quarter turns are no flat work.
TEST_CASE("a panel that lies beside the other for what is sewn to both is seamed into the box as ever") {
    const box_asked b{.w = 16_in, .h = 9_in, .d = 2_in, .s = "1/2"_in};
    making<inch> d("bag");
    const auto bag = sew_boxed_panels<inch>(d, panels(b, "bag", false));
    const auto alone = execute(d);
    d.add(laying<inch>{
        .piece = bag.panels[1], .on = bag.panels[0], .top = -4_in - bag.from.height(), .upside_down = true});
    const auto made = execute(d);
    CHECK(sentences(made.faults) == "");
    CHECK(made.steps.size() == alone.steps.size() + 1);
    REQUIRE(made.boxed.boxes.size() == 1);
    CHECK(made.boxed.boxes[0].width == 16_in);
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

// By paper, a bag of 16 x 9 x 2 in with seams of 1/2 in: its panels are cut 16 + 2 + 1 = 19 in wide and 1/2 + 9 + 1 + 1/2 = 11 in
// high. Squares of 2 / 2 = 1 in come out of their lower corners (common practice: half the depth, with one allowance
// throughout), so that the seam across a corner, 1 1/2 in from where the edges would meet, lies 1/2 in from those that are cut.
TEST_CASE("the corners of a boxed bag are cut out first of all, and the seams across them are measured from there") {
    const box_asked b{.w = 16_in, .h = 9_in, .d = 2_in, .s = "1/2"_in};
    const auto said = [&](bool cut_out) {
        making<inch> d("bag");
        boxed_panels<inch> from = panels(b, "bag", false);
        from.cut_out = cut_out;
        sew_boxed_panels<inch>(d, from);
        for (const making_fault& f : execute(d).raw_edges) // its rim, and no corner
            CHECK(f.sentence.rfind("the top edge of bag ", 0) == 0);
        const auto plan = work_plan_of(d);
        std::vector<std::string> all;
        for (const auto& g : plan.groups)
            all.push_back(sentence_of(plan, g));
        return all;
    };
    const std::vector<std::string> cut = said(true), whole = said(false);
    REQUIRE(cut.size() == whole.size() + 2);
    for (const std::size_t k : {0U, 1U}) {
        const std::string side = k == 0 ? "left" : "right";
        CHECK(cut[1 + k] == "For each bag, one after another: cut the bottom " + side +
                                " corner out of the bag: 1 in from its cut bottom edge and 1 in from its cut " + side +
                                " edge.");
    }
    const auto has = [](const std::string& text, const char* part) { return text.find(part) != std::string::npos; };
    CHECK(has(cut.back(), ", 1/2 in from the cut edges: 2 in in all, through 2 layers."));
    CHECK(has(whole.back(), ", 1 1/2 in from the cut edges: 2 in in all, through 2 layers."));
    // With a corner cut out, four edges are "left" or "bottom" ones: those in the corner are told by their corner.
    CHECK(has(cut.back(),
              "the bottom edge in the bottom right corner cut out of bag 1 and the right edge in the bottom right "
              "corner cut out of bag 1; the bottom edge in the bottom left corner cut out of bag 2 and "));
    CHECK(has(whole.back(), "the cut bottom edge of bag 1 and the cut right edge of bag 1; "));
    CHECK(has(cut[3], "sew the cut left edge of bag 1 to the cut right edge of bag 2, "));
}

// A mat of 12 x 9 in with a corner of 2 x 3 in cut out lies raw there; hemmed edges do not make it less so.
TEST_CASE("a corner that is cut out of a piece whose edges are in no seam is raw") {
    making<inch> d("mat");
    const cut_part mat = d.cut({.name = "mat", .width = 12_in, .height = 9_in});
    d.add(snip<inch>{.at = span(mat, edge::top, 1_in, 9_in, 12_in), .width = 2_in});
    const auto plan = work_plan_of(d);
    CHECK(sentence_of(plan, plan.groups.back()) ==
          "Cut the top right corner out of the mat: 2 in from its cut top edge and 3 in from its cut right edge.");
    bool raw = false;
    for (const making_fault& f : execute(d).raw_edges)
        raw |= f.facts.what == "a raw edge of a slit";
    CHECK(raw);
    making<inch> upright("mat"); // the same from its right edge
    const cut_part same = upright.cut({.name = "mat", .width = 12_in, .height = 9_in});
    upright.add(snip<inch>{.at = span(same, edge::right, "1 1/2"_in, 0_in, 2_in), .width = 3_in});
    const auto other = work_plan_of(upright);
    CHECK(sentence_of(other, other.groups.back()) ==
          "Cut the top right corner out of the mat: 3 in from its cut right edge and 2 in from its cut top edge.");
    making<inch> slit("mat"); // within the piece it is a slit
    const cut_part third = slit.cut({.name = "mat", .width = 12_in, .height = 9_in});
    slit.add(snip<inch>{.at = span(third, edge::top, "1 1/8"_in, 9_in, 12_in), .width = 2_in});
    const auto last = work_plan_of(slit);
    CHECK(sentence_of(last, last.groups.back()).rfind("With the wrong side of the mat up, cut through it", 0) == 0);
}
