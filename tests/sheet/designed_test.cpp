// A project that says how it is made: steps, thread and refusals are read from its design carried out.
#include "making/boxes.hpp"
#include "making/things.hpp"
#include <turncloth.hpp>
#include <turncloth/making/work_plan.hpp>
#include <turncloth/making/work_words.hpp>
#include <turncloth/sheet/json.hpp>
#include <turncloth/sheet/made_as.hpp>

#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <vector>

using namespace things;

namespace {

/// The roll of things.hpp with its pieces: cut as its design has them.
project<inch> roll_project(const making<inch>& design) {
    project<inch> p("Tool roll", {20_in, 16_in});
    auto& outer = p.add({"outer", "canvas", panel(p.finished(), all_round(self_binding("1/2"_in, "1/8"_in)))});
    for (const char* name : {"wadding", "back", "lining"})
        p.add({name, "cotton", panel(p.finished())}).lies_inside(outer);
    p.add({"tools", "canvas",
           panel(finished_size(20_in, 8_in), {double_turned_hem("3/8"_in, "5/8"_in, "1/8"_in), {}, {}, {}})});
    p.add(sewing<inch>{stitch(301), {}, {1, 4}, 500_in});
    return p.made_as(design);
}

std::vector<sheet_reason> reasons(const project<inch>& p) {
    try {
        static_cast<void>(sheet_of(p));
        return {};
    } catch (const sheet_error& refused) {
        return refused.reasons();
    }
}

length<inch> figure_of(const sheet<inch>& s, const std::string& what) {
    for (const auto& d : s.notions.back().details())
        if (d.what == what)
            return d.amount.value();
    return {};
}

} // namespace

// The list by hand of tests/making/stitched_test.cpp: 250 in of rows. At 5/2 and a quarter more 781 1/4 in, two spools of
// 500 in.
TEST_CASE("thread is that of every row of the design") {
    const auto s = sheet_of(roll_project(tool_roll(true).design));
    CHECK(figure_of(s, "rows of stitching, with their ends") == 250_in);
    CHECK(figure_of(s, "thread, with waste") == "781 1/4"_in);
    CHECK(s.notions.back().details()[2].count == 2);
}

// Of the roll's rows those through the tape are sewn with a chainstitch and one more by hand. By hand: 72 + 4 = 76 in of
// the 250, and 20 in besides.
TEST_CASE("thread is counted stitch by stitch, and hand sewing apart") {
    const tool_roll roll(true);
    making<inch> d("roll");
    for (const auto& p : roll.design.parts())
        d.cut(p);
    for (const auto& l : roll.design.layings())
        d.add(l);
    for (const auto& c : roll.design.creases())
        d.add(c);
    for (const auto& c : roll.design.snips())
        d.add(c);
    for (auto r : roll.design.rows()) {
        if (r.along.on.index == roll.tape.index)
            r.stitch = stitch(401);
        d.add(r);
    }
    auto hand = sewn(roll.lining, edge::top, "6 1/2"_in, {roll.lining, roll.back});
    hand.by_hand = true;
    d.add(hand);
    const auto s = sheet_of(roll_project(d));
    REQUIRE(s.notions.size() == 2);
    CHECK(s.notions[0].name() == "thread, stitch 401 of ISO 4915, two-thread chainstitch");
    CHECK(s.notions[0].details()[0].amount.value() == 76_in);
    CHECK(s.notions[0].details()[2].what == "sewn by hand besides");
    CHECK(s.notions[0].details()[2].amount.value() == 20_in);
    CHECK(s.notions[1].details()[0].amount.value() == 174_in);
}

// By hand in tests/making/seams_test.cpp: 140 in by machine, and the gap of 8 in that it is turned out through.
TEST_CASE("a gap that is closed by hand is hand sewing, and no machine's thread") {
    project<inch> p("Seed bag", {16_in, 9_in});
    p.add({"base board", "board", panel(finished_size(15_in, "1 1/2"_in))});
    p.add(sewing<inch>{stitch(301), {}, {1, 4}, 500_in});
    const auto s = sheet_of(p.made_as(lined_bag({.w = 16_in, .h = 9_in, .d = 2_in, .s = "1/2"_in}).design));
    CHECK(figure_of(s, "rows of stitching, with their ends") == 140_in);
    CHECK(figure_of(s, "sewn by hand besides") == 8_in);
}

TEST_CASE("the steps are those of the design, after what the project prepares") {
    const tool_roll roll(true);
    auto p = roll_project(roll.design);
    p.prepare("Wash the canvas.");
    const auto s = sheet_of(p);
    const auto plan = work_plan_of(roll.design);
    REQUIRE(s.steps.groups.size() == plan.groups.size() + 1);
    CHECK(sentence_of(s.steps, s.steps.groups[1]) == "Wash the canvas.");
    for (std::size_t i = 1; i < plan.groups.size(); ++i)
        CHECK(sentence_of(s.steps, s.steps.groups[i + 1]) == sentence_of(plan, plan.groups[i]));
}

// By hand: no tool 9 in long goes into a pocket 8 in high; a row through tools and back goes through the lining between
// them; and the flap falls short. A reason that is of a piece names it.
TEST_CASE("what is wrong with the making is refused with all else, each reason with its piece") {
    tool_roll roll(true);
    roll.design.add(compartment<inch>{.name = "long tool",
                                      .between = {roll.lining, roll.tools},
                                      .from_left = 1_in,
                                      .from_top = 12_in,
                                      .mouths = {roll.top},
                                      .least_width = 2_in,
                                      .least_height = 9_in});
    roll.design.add(sewn(roll.tools, edge::top, 8_in, {roll.tools, roll.back})); // it goes through the lining too
    auto p = roll_project(roll.design);
    p.add(must_reach<inch>{"the flap", 1_in, 2_in});
    const auto all = reasons(p);
    const auto has = [&](const std::string& words, fault kind, const std::string& piece) {
        return std::any_of(all.begin(), all.end(), [&](const sheet_reason& r) {
            return r.sentence.find(words) != std::string::npos && r.facts.kind == kind && r.piece == piece;
        });
    };
    CHECK(all[0].sentence.find("the flap") == 0);
    CHECK(has("\"long tool\" does not hold 2 in x 9 in", fault::no_room, ""));
    CHECK(has("goes through lining, and was not to", fault::disagree, "lining"));
}

TEST_CASE("a part is cut as its piece is, or is refused with both figures") {
    auto p = roll_project(tool_roll(true).design);
    making<inch> other("other");
    other.cut({.name = "outer", .width = 21_in, .height = 18_in});
    other.cut({.name = "back", .width = 20_in, .height = 16_in, .count = 2});
    p.made_as(other);
    const auto all = reasons(p);
    REQUIRE(all.size() == 2);
    CHECK(all[0].sentence == "outer is made as cut 21 x 18 in, but its sheet cuts it 22 x 18 in");
    CHECK(all[0].facts.kind == fault::disagree);
    CHECK(all[0].piece == "outer");
    CHECK(all[1].sentence == "back is made as cut 2 times, but its sheet cuts 1");
}

TEST_CASE("a design that has no order is refused with every arrow of its circle") {
    making<inch> d("circle");
    const cut_part back = d.cut({.name = "back", .width = 20_in, .height = 16_in}),
                   lining = d.cut({.name = "lining", .width = 20_in, .height = 16_in}),
                   pocket = d.cut({.name = "pocket", .width = 4_in, .height = 4_in});
    d.add(laying<inch>{.piece = lining, .on = back});
    d.add(laying<inch>{.piece = pocket, .on = lining, .left = 3_in, .top = 3_in});
    d.add(sewn(pocket, edge::bottom, "1/4"_in, {pocket, lining}));
    d.add(sewn(lining, edge::top, 5_in, {lining, back}));
    const auto all = reasons(roll_project(d));
    REQUIRE(all.size() > 1);
    for (const sheet_reason& r : all)
        CHECK(r.sentence.find(" comes before ") != std::string::npos);
}

TEST_CASE("a step in the designer's own words is a numbered step of the sheet and of its JSON, in its place") {
    tool_roll roll(true);
    const operation zipped{operation_kind::stitching, 0};
    const operation own = roll.design.add(handwork{"Press it for 1.5 min,\n{back} & all.", {roll.lining, roll.back}});
    roll.design.add(before{zipped, own});
    const auto s = sheet_of(roll_project(roll.design));
    std::size_t at = 0, rows = 0;
    while (at < s.steps.groups.size() && s.steps.groups[at].steps[0].verb != work_verb::handwork)
        for (const work_step<inch>& step : s.steps.groups[at++].steps)
            rows += static_cast<std::size_t>(std::count(step.stands_for.begin(), step.stands_for.end(), zipped));
    REQUIRE(at + 1 < s.steps.groups.size());
    CHECK(rows == 1);
    CHECK(to_text(s).find("\n  " + std::to_string(at + 1) + ". Press it for 1.5 min, {back} & all.\n") !=
          std::string::npos);
    const auto j = to_json(s)["steps"][at];
    CHECK(j["sentences"] == nlohmann::ordered_json{"Press it for 1.5 min, {back} & all."});
    CHECK(j["steps"].size() == 1);
    CHECK(j["steps"][0]["verb"] == "handwork");
    CHECK(j["steps"][0]["what"] == "Press it for 1.5 min,\n{back} & all.");
    CHECK(j["steps"][0]["places"].size() == 2);
    CHECK(j["steps"][0]["places"][1]["piece"] == "back");
}
