// What a project says of its own making, as operations: cut, laid, zipped and finished as its pieces say, and no more.
#include "../vectors.hpp"
#include "at_random.hpp"
#include "making/outcome.hpp"
#include "making/things.hpp"
#include "refused.hpp"
#include <turncloth/making/work_words.hpp>
#include <turncloth/sheet/made_as.hpp>
#include <turncloth/sheet/making.hpp>
#include <turncloth/sheet/making_of.hpp>
#include <turncloth/sheet/text.hpp>

#include <doctest/doctest.h>

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <string>
#include <utility>
#include <vector>

using namespace things;

namespace {

std::string faults_of(const making<inch>& d) {
    std::string all;
    for (const making_fault& f : execute(d).faults)
        all += f.sentence + "\n";
    return all;
}

/// things::tool_roll as a project: its pieces, the place of its tool pockets, and its zippers.
project<inch> roll_project() {
    project<inch> p("tool roll", {20_in, 16_in});
    auto& outer = p.add({"outer", "canvas", panel(p.finished(), all_round(self_binding("1/2"_in, "1/8"_in)))});
    for (const char* name : {"wadding", "back", "lining"})
        p.add({name, "cotton", panel(p.finished())}).lies_inside(outer);
    p.add({"tools", "canvas",
           panel(finished_size(20_in, 8_in), {double_turned_hem("3/8"_in, "5/8"_in, "1/8"_in), {}, {}, {}})});
    p.add(placing<inch>{"tools", "lining", {}, at<finished_edge>(8_in)});
    p.add(zipper<inch>{.on = "lining",
                       .from = edge::top,
                       .centres = {at<finished_edge>("1 3/4"_in), at<finished_edge>(4_in)},
                       .opening = {.across = 20_in, .margin = "1 1/2"_in, .beyond = "1/2"_in},
                       .rows = "1/2"_in,
                       .slit = "1/4"_in,
                       .supply = zipper_supply<inch>::from_roll(180_in)});
    return p;
}

} // namespace

TEST_CASE("the tool roll begun by its project is the tool roll from the operations alone") {
    auto roll = making_of(roll_project());
    const auto lining = roll.part("lining"), back = roll.part("back"), tools = roll.part("tools");
    making<inch>& d = roll.design;
    d.lips("1/4"_in);
    const length<inch> step = 19_in / 6;
    d.add(stitching<inch>{.along = tools.line(edge::left, at<cut_edge>(1_in)),
                          .through = {tools, lining},
                          .each = {at<cut_edge>("1/2"_in + step), step, 5}});
    for (const length<inch>& down : {"7 3/4"_in, 3_in})
        d.add(stitching<inch>{.along = lining.line(edge::top, at<finished_edge>(down)), .through = {lining, back}});
    const mouth_handle top =
        d.add(mouth<inch>{.name = "top of the tools", .at = {tools.line(edge::top, place<finished_edge, inch>())}});
    d.add(tool_pockets(lining, tools, top));
    REQUIRE(roll.zippers.size() == 1);
    CHECK(roll.zippers[0].mouths.size() == 2);
    CHECK(outcome_of(d) == outcome_of(tool_roll(true).design));
}

// Felt stays whole where it is cut; a coaster of it is warned of where nothing says so. By hand: four edges.
TEST_CASE("an edge left raw is warned of unless its piece is of a cloth that does not fray") {
    for (const bool frays : {true, false}) {
        project<inch> p("coaster", {4_in, 4_in});
        auto& coaster = p.add({"coaster", "wool felt", panel(p.finished())});
        if (!frays)
            coaster.does_not_fray();
        CHECK(coaster.frays() == frays);
        CHECK_FALSE(coaster.is_film());
        const auto s = sheet_of(p.made_as(making_of(p).design));
        REQUIRE(s.warnings.size() == (frays ? 4 : 0));
        if (frays)
            CHECK(s.warnings[0] == "the top edge of coaster is left raw in sight, and its cloth frays");
    }
}

// A square that is cut up into triangles has no edge of its own in what is made; one that is not has four (by hand).
TEST_CASE("a piece that is cut up into others is bought, and none of its edges is looked for") {
    for (const bool cut_up : {true, false}) {
        project<inch> p("square", {4_in, 4_in});
        auto& square = p.add({"square", "cotton", panel(p.finished())});
        if (cut_up)
            square.cut_up();
        CHECK(square.is_cut_up() == cut_up);
        CHECK(square.frays());
        const auto s = sheet_of(p.made_as(making_of(p).design));
        CHECK(s.pieces.size() == 1);
        CHECK(s.warnings.size() == (cut_up ? 0 : 4));
    }
}

// From the operations alone: a pocket cut 5 x 4 1/2 in, its sides and foot turned by 1/2 in, its top twice by 1/2 in, lies with
// its finished edges 2 and 3 in from those of a front cut 12 x 9 in, so its cut edges 1 1/2 and 2 in from them; it is held by
// a row 1/8 in inside three finished edges, 5/8 in from the cut ones.
TEST_CASE("a piece that is placed is held by the rows that its placing names, as by the operations alone") {
    project<inch> p("bag", {12_in, 9_in});
    p.add({"front", "canvas", panel(p.finished())});
    const auto turned = single_turned_hem("1/2"_in, "1/4"_in);
    p.add(
        {"pocket", "canvas",
         panel(finished_size(4_in, 3_in), {double_turned_hem("1/2"_in, "1/2"_in, "1/8"_in), turned, turned, turned})});
    placing<inch> on{"pocket", "front", at<finished_edge>(2_in), at<finished_edge>(3_in)};
    on.sewn = {edge::left, edge::right, edge::bottom};
    on.inset = "1/8"_in;
    p.add(on);
    making<inch> d("bag");
    const cut_part front = d.cut({.name = "front", .cloth = {.name = "canvas"}, .width = 12_in, .height = 9_in});
    const cut_part pocket = d.cut({.name = "pocket", .cloth = {.name = "canvas"}, .width = 5_in, .height = "4 1/2"_in});
    d.add(laying<inch>{.piece = pocket, .on = front, .left = "1 1/2"_in, .top = 2_in});
    for (const edge e : on.sewn)
        d.add(sewn(pocket, e, "5/8"_in, {pocket, front}));
    const auto hem = [&](edge e, const std::vector<length<inch>>& folds, length<inch> row) {
        for (const length<inch>& in : folds)
            d.add(crease<inch>{.at = line(pocket, e, in)});
        d.add(sewn(pocket, e, row, {pocket}));
    };
    hem(edge::left, {"1/2"_in}, "3/4"_in);
    hem(edge::right, {"1/2"_in}, "3/4"_in);
    hem(edge::top, {"1/2"_in, 1_in}, "1 3/8"_in);
    hem(edge::bottom, {"1/2"_in}, "3/4"_in);
    CHECK(faults_of(d) == "");
    CHECK(outcome_of(making_of(p).design) == outcome_of(d));
    std::vector<length<inch>> through_both;
    for (const auto& r : execute(d).rows)
        if (r.walls.size() == 2)
            through_both.push_back(r.sewn);
    std::sort(through_both.begin(), through_both.end());
    CHECK(through_both == std::vector<length<inch>>{3_in, 3_in, 4_in});
}

// What lies under a row is named from the places of the project; what is met is found by carrying the work out.
TEST_CASE("a finish's rows go through all that was placed where they run, and through nothing else") {
    at_random::sampler random(83);
    while (random.another_of(60)) {
        const finished_size<inch> size(random.inches(12) + 10_in, random.inches(12) + 10_in);
        project<inch> p("mat", size);
        const std::int64_t bound = random.between(0, 2); // by itself, by strips, or not at all
        const finish<inch> edge = bound == 0   ? self_binding(1_in, "1/4"_in)
                                  : bound == 1 ? separate_binding(1_in)
                                               : finish<inch>();
        auto& outer = p.add({"outer", "canvas", panel(size, all_round(edge))});
        auto& lining = p.add({"lining", "cotton", panel(size)}).lies_inside(outer);
        if (random.between(0, 1) == 0)
            p.add({"wadding", "wadding", panel(size)}).lies_inside(outer);
        for (int k = 0; k < 3; ++k) {
            const finished_size<inch> pocket(random.inches(6) + 3_in, random.inches(6) + 3_in);
            const std::string name = "pocket " + std::to_string(k + 1);
            p.add({name, "cotton", panel(pocket, {single_turned_hem("1/2"_in, "1/4"_in), {}, {}, {}})});
            const auto some = [&](const length<inch>& room) { return room * fraction(random.between(0, 4), 4); };
            p.add(placing<inch>{name, lining.name(), at<finished_edge>(some(size.width() - pocket.width())),
                                at<finished_edge>(some(size.height() - pocket.height()))});
        }
        if (bound == 1)
            p.add(edge_binding<inch>{.on = "outer",
                                     .material = "canvas",
                                     .finished = 1_in,
                                     .allowance = {.seam = 1_in},
                                     .inset = "1/4"_in,
                                     .turned_in = "1/2"_in});
        CHECK(faults_of(making_of(p).design) == "");
    }
}

namespace {

/// things::mat of 12 x 9 in, bound 1/2 in wide, as tests/making/shorthands_test.cpp works it out by hand.
project<inch> bound_mat() {
    project<inch> p("mat", {12_in, 9_in});
    p.add({"mat", "wadded cotton", panel(p.finished(), all_round(separate_binding("1/2"_in)))});
    p.add(edge_binding<inch>{.on = "mat",
                             .material = "canvas",
                             .finished = "1/2"_in,
                             .allowance = {.seam = "3/8"_in, .turn = "1/8"_in},
                             .inset = "1/16"_in,
                             .turned_in = "3/4"_in});
    p.add(sewing<inch>{stitch(301), {}, {1, 10}, 1000_in});
    return p;
}

std::vector<std::string> reasons_of(const project<inch>& p) {
    std::vector<std::string> all;
    if (const auto made = try_sheet_of(p); !made)
        for (const sheet_reason& r : made.refused().reasons())
            all.push_back(r.sentence);
    return all;
}

length<inch> detail_of(const sheet<inch>& s, std::size_t notion, std::size_t detail) {
    return s.notions.at(notion).details().at(detail).amount.value();
}

} // namespace

TEST_CASE("a binding that a project names is the binding from the operations alone") {
    making<inch> d("mat");
    bind_all_round<inch>(d,
                         cut_for(d, "mat",
                                 panel<inch>(finished_size(12_in, 9_in), all_round(separate_binding("1/2"_in))),
                                 {.cloth = {.name = "wadded cotton"}}),
                         {.cloth = {.name = "canvas"},
                          .finished = "1/2"_in,
                          .allowance = {.seam = "3/8"_in, .turn = "1/8"_in},
                          .inset = "1/16"_in,
                          .turned_in = "3/4"_in});
    CHECK(making_of(bound_mat()).design == d);
}

// By hand: strips 2 x 1/2 + 2 x 3/8 + 1/8 = 1 7/8 in wide, 9 in and 12 + 1/8 + 2 x 3/4 = 13 5/8 in long; all four 45 1/4 in.
// Sewn 2 x 2 x 9 + 2 x 2 x (12 + 1/8) = 84 1/2 in, and four ends of 1/2 in by hand.
TEST_CASE("the strips of a binding are cut as pieces, and its rows are in the thread, made by design or not") {
    for (const bool designed : {false, true}) {
        project<inch> p = bound_mat();
        if (designed)
            p.made_as(making_of(p).design);
        const auto s = sheet_of(p);
        REQUIRE(s.pieces.size() == 5);
        CHECK(s.pieces[1].made_from.name() == "binding, left");
        CHECK(s.pieces[1].cut == cut_size("1 7/8"_in, 9_in));
        CHECK(s.pieces[4].made_from.name() == "binding, bottom");
        CHECK(s.pieces[4].cut == cut_size("13 5/8"_in, "1 7/8"_in));
        CHECK(s.pieces[4].finished == finished_size(12_in, "1/2"_in));
        REQUIRE(s.notions.size() == 2);
        CHECK(s.notions[0].name() == "binding of the mat");
        CHECK(detail_of(s, 0, 0) == "1 7/8"_in);
        CHECK(s.notions[0].details()[1].count == 4);
        CHECK(detail_of(s, 0, 2) == "45 1/4"_in);
        CAPTURE(designed);
        CHECK(detail_of(s, 1, 0) == "84 1/2"_in);
        CHECK(detail_of(s, 1, 2) == 2_in);
        CHECK(s.warnings.empty());
    }
    const auto says = [](const sheet<inch>& s) {
        std::vector<std::string> all;
        for (const auto& g : s.steps.groups)
            all.push_back(sentence_of(s.steps, g));
        return all;
    };
    project<inch> p = bound_mat();
    const auto by_name = says(sheet_of(p));
    CHECK(by_name == says(sheet_of(p.made_as(making_of(p).design))));
    CHECK(by_name.size() > 8);
}

TEST_CASE("a binding of several copies of a layered piece has strips for each") {
    project<inch> p("mats", {12_in, 9_in});
    auto& outer = p.add({"outer", "canvas", panel(p.finished(), all_round(separate_binding("1/2"_in)))});
    outer.count(2);
    p.add({"wadding", "wadding", panel(p.finished())}).count(2).lies_inside(outer);
    p.add({"lining", "cotton", panel(p.finished())}).count(2).lies_inside(outer);
    edge_binding<inch> b = bound_mat().bindings()[0];
    b.on = "outer";
    b.allowance.turn = {};
    b.doubled = true;
    p.add(b);
    CHECK(sheet_of(p).pieces.back().made_from.count() == 2);
    p.made_as(making_of(p).design);
    const auto s = sheet_of(p);
    CHECK(s.pieces.back().made_from.count() == 2);
    CHECK(s.warnings.empty());
    // 4 x 1/2 + 2 x 3/8 in: folded double.
    CHECK(s.pieces.back().cut == cut_size("13 1/2"_in, "2 3/4"_in));
}

TEST_CASE("a binding and what is bound or made with it agree") {
    using sentences = std::vector<std::string>;
    const auto with = [](const auto& change) {
        project<inch> p("mat", {12_in, 9_in});
        edge_binding<inch> b = bound_mat().bindings()[0];
        finish<inch> edge = separate_binding("1/2"_in);
        change(p, b, edge);
        p.add({"mat", "canvas", panel(p.finished(), all_round(edge))});
        p.add(b);
        return reasons_of(p);
    };
    CHECK(with([](auto&, auto& b, auto&) { b.on = "rug"; }) ==
          sentences{"a binding is sewn to rug, which is not in the project"});
    CHECK(with([](auto&, auto&, auto& e) { e = single_turned_hem("1/2"_in); })[0] ==
          "the top edge of mat is bound in strips, and finished as a single-turned hem besides");
    CHECK(with([](auto&, auto&, auto& e) { e = separate_binding("3/8"_in); })[0] ==
          "the top edge of mat is finished for a binding of 3/8 in, and its strips are to show 1/2 in");
    CHECK(with([](auto&, auto& b, auto&) {
              b.edges = {edge::top, edge::left};
          })[0] == "strips that meet at a corner bind mat all round: name every edge, or no two that meet");
    CHECK(with([](auto&, auto& b, auto&) { b.turned_in = {}; }).size() == 1);
    CHECK(with([](auto& p, auto& b, auto&) {
              edge_binding<inch> again = b;
              again.edges = {edge::top};
              again.name = "second binding";
              p.add(again);
          })[0] == "the top edge of mat is bound twice");

    project<inch> p = bound_mat();
    making<inch> other("mat");
    cut_for(other, "mat", p.pieces()[0].shape());
    CHECK(reasons_of(project<inch>(p).made_as(other))[0] ==
          "the sheet cuts \"binding, left\", and no part of the making is named so");
    const auto made = making_of(p);
    for (const part<inch>& each : made.design.parts())
        if (each.name != "mat")
            other.cut({.name = each.name, .width = each.width - "1/8"_in, .height = each.height});
    const sentences said = reasons_of(p.made_as(other));
    CHECK(std::count(said.begin(), said.end(),
                     "\"binding, top\" is made as cut 13 1/2 x 1 7/8 in, but its sheet cuts it 13 5/8 x 1 7/8 in") ==
          1);
}

// Two mats of two layers each, and a pocket on each lining.
TEST_CASE("copies are shared out: each outer binds its own layers, and each lining has its own pocket") {
    project<inch> p("mats", {12_in, 9_in});
    auto& outer = p.add({"outer", "canvas", panel(p.finished(), all_round(self_binding("1/2"_in, "1/8"_in)))});
    outer.count(2);
    p.add({"wadding", "wadding", panel(p.finished())}).count(4).lies_inside(outer);
    p.add({"lining", "cotton", panel(p.finished())}).count(2).lies_inside(outer);
    p.add({"pocket", "cotton", panel(finished_size(4_in, 3_in))}).count(2);
    p.add(placing<inch>{"pocket", "lining", at<finished_edge>(0_in), at<finished_edge>(2_in)});
    p.add(sewing<inch>{stitch(401), "1/2"_in, {1, 10}, 1000_in});
    const auto made = making_of(p);
    CHECK(faults_of(made.design) == "");
    const auto done = execute(made.design);
    REQUIRE(done.rows.size() == 8);
    // Of each outer's rows all but one go through outer, two waddings and lining. The pocket at the left of the lining
    // lies at the right of the outer.
    for (const auto& r : done.rows) {
        const auto& row = made.design.rows()[r.what.index];
        CHECK(r.walls.size() == (row.along.from == edge::right ? 5 : 4));
        for (const cut_part& w : r.walls)
            CHECK(w.copy % 2 == row.along.on.copy);
        CHECK(row.stitch.number == 401);
        CHECK(row.overrun == "1/2"_in);
    }
}

// By hand, 20 x 18 in with eyelets in its heading: four hems, and layers at the eyelets two.
TEST_CASE("eyelets are set, and a strip that meets another piece is cut and left to its designer") {
    project<inch> p("organiser", {20_in, 18_in});
    const auto hem = double_turned_hem("3/8"_in, "3/4"_in, "1/8"_in);
    auto& backing =
        p.add({"backing", "canvas", panel(p.finished(), {heading("2 1/2"_in, "1/2"_in, "1/8"_in), hem, hem, hem})});
    backing.eyelets({{3, 1_in, "2 3/8"_in, 6_in}, at<finished_edge>(1_in), {"3/8"_in, 1_in}});
    p.add({"film strip", "clear film", panel(finished_size(22_in, 4_in), all_round(single_turned_hem("1/2"_in)))})
        .count(2)
        .of_film();
    p.add(meeting<inch>{"film strip", "backing", edge::left, 22_in, 20_in, 2});
    const auto made = making_of(p);
    CHECK(faults_of(made.design) == "");
    const auto done = execute(made.design);
    CHECK(done.rows.size() == 4);
    REQUIRE(done.spots.size() == 3);
    CHECK(done.spots[2].layers.size() == 2);
    CHECK(made.design.parts()[1].cloth.film);
    CHECK(made.design.parts()[1].count == 2);
}

// From the operations alone: a bag of two sides cut 9 1/2 x 11 in, with seams of 1/2 in at the left, the right and the bottom and
// a hem of 1 in at the top. The rows of its sides run from the cut top to 1/2 in above the cut bottom, where the seam of
// the base crosses them, and that from 1/2 to 9 in: 10 1/2 + 10 1/2 + 8 1/2 in.
TEST_CASE("edges that are said to be sewn to each other are, copy to copy, as by the operations alone") {
    const auto join = seam("1/2"_in);
    const auto side =
        panel(finished_size("8 1/2"_in, "9 1/2"_in), {single_turned_hem(1_in, "1/8"_in), join, join, join});
    project<inch> p("bag", {"8 1/2"_in, "9 1/2"_in});
    p.add({"side", "canvas", side}).count(2);
    for (const auto& [e, other] : {std::pair(edge::left, edge::right), std::pair(edge::right, edge::left),
                                   std::pair(edge::bottom, edge::bottom)})
        p.add(edge_seam<inch>{
            .one = "side", .other = "side", .of_one = e, .of_other = other, .beyond = beyond_seam::back});
    making<inch> d("bag");
    const cut_part sides =
        d.cut({.name = "side", .cloth = {.name = "canvas"}, .width = "9 1/2"_in, .height = 11_in, .count = 2});
    for (const std::int64_t k : {0, 1}) {
        d.add(crease<inch>{.at = line(sides[k], edge::top, 1_in)});
        d.add(sewn(sides[k], edge::top, "1 7/8"_in, {sides[k]}));
    }
    const auto along = [&](std::int64_t k, edge e) {
        chalk_line<inch> l = line(sides[k], e, "1/2"_in);
        if (is_level(e))
            l.begins = "1/2"_in, l.ends = 9_in;
        else
            l.ends = "10 1/2"_in;
        return l;
    };
    d.add(seam_of<inch>{.one = {along(0, edge::left)}, .other = {along(1, edge::right)}, .beyond = beyond_seam::back});
    d.add(seam_of<inch>{.one = {along(0, edge::right)}, .other = {along(1, edge::left)}, .beyond = beyond_seam::back});
    d.add(
        seam_of<inch>{.one = {along(0, edge::bottom)}, .other = {along(1, edge::bottom)}, .beyond = beyond_seam::back});
    CHECK(faults_of(d) == "");
    CHECK(outcome_of(making_of(p).design) == outcome_of(d));
    length<inch> sewn_together;
    for (const auto& g : work_plan_of(d).groups)
        for (const auto& s : g.steps)
            if (s.verb == work_verb::seam)
                sewn_together += s.places[0].sewn;
    CHECK(sewn_together == "29 1/2"_in);
    const auto made = sheet_of(p.made_as(making_of(p).design));
    CHECK(to_text(made).find("sew the cut left edge of side 1 to the cut right edge of side 2") != std::string::npos);
}

// A flounce that finishes 20 in is gathered onto a front that finishes 10 in, in 5 parts: 4 in of it on 2 in of the front.
TEST_CASE("of two edges that differ the longer is taken up as its seam says, and is refused where it says nothing") {
    const auto pair = [](surplus taken_up) {
        project<inch> p("apron", {10_in, 8_in});
        p.add({"front", "cotton", panel(p.finished(), {{}, {}, seam("1/2"_in), {}})});
        p.add({"flounce", "cotton", panel(finished_size(20_in, 3_in), {seam("1/2"_in), {}, {}, {}})});
        p.add(edge_seam<inch>{.one = "flounce",
                              .other = "front",
                              .of_one = edge::top,
                              .of_other = edge::bottom,
                              .taken_up = taken_up,
                              .spans = 5,
                              .graduation = "1/8"_in});
        return p;
    };
    const auto made = making_of(pair(surplus::gather));
    REQUIRE(made.design.seams().size() == 1);
    const seam_of<inch>& s = made.design.seams()[0];
    CHECK((s.one[0].on == cut_part{1, 0} && s.other[0].on == cut_part{0, 0}));
    CHECK((s.taken_up == surplus::gather && s.spans == 5 && s.graduation == "1/8"_in));
    const auto plan = work_plan_of(made.design);
    const work_place<inch>& place = plan.groups.back().steps[0].places[0];
    CHECK(place.surplus == 10_in);
    CHECK(place.marks.at == std::vector{4_in, 8_in, 12_in, 16_in});
    CHECK(place.meets_marks.at == std::vector{2_in, 4_in, 6_in, 8_in});
    const std::string why =
        "the top edge of flounce is sewn to the bottom edge of front, and they finish 20 in and 10 in, "
        "with nothing that takes up the difference";
    CHECK(refused::message<making_error>([&] { making_of(pair(surplus::none)); }) == why);
    CHECK(refused::message<sheet_error>([&] { sheet_of(pair(surplus::none)); }).find(why) != std::string::npos);
}

TEST_CASE("edges that cannot be sewn to each other are refused, in a making and on a sheet, with why") {
    const auto why = [](edge_seam<inch> s, std::int64_t fronts, std::int64_t backs) {
        project<inch> p("bag", {10_in, 8_in});
        p.add({"front", "cotton", panel(p.finished(), {{}, {}, seam("1/2"_in), seam("1/2"_in)})}).count(fronts);
        p.add({"back", "cotton", panel(p.finished(), {french_seam("1/4"_in, "3/8"_in), {}, seam("1/2"_in), {}})})
            .count(backs);
        p.add(s);
        const std::string said = refused::message<making_error>([&] { making_of(p); });
        CHECK_MESSAGE(refused::message<sheet_error>([&] { sheet_of(p); }).find(said) != std::string::npos, said);
        return said.substr(said.find(", and") + 1);
    };
    const edge base = edge::bottom, top = edge::top;
    CHECK(why({"front", "back", base, top}, 1, 1) == " and the finish of the top edge of back is no plain seam");
    CHECK(why({"front", "back", top, base}, 1, 1) == " and the finish of the top edge of front is no plain seam");
    CHECK(why({"front", "back", base, base}, 2, 1) == " and 2 and 1 of them are cut");
    CHECK(why({"front", "front", base, base}, 3, 1) == " and 3 of it cannot be sewn together by twos");
    CHECK(why({"front", "front", base, base}, 1, 1) == " and that is one and the same edge");
}

TEST_CASE("what a project does not tell of is refused by its name") {
    const auto refused = [](const project<inch>& p) {
        try {
            static_cast<void>(making_of(p));
            return refusal{};
        } catch (const making_error& e) {
            return e.facts();
        }
    };
    auto p = roll_project();
    p.add(placing<inch>{"tools", "outer", {}, {}});
    CHECK(refused(p).kind == fault::unsuitable);
    CHECK(refused(p).where == "tools");
    auto joined = roll_project();
    joined.add(edge_seam<inch>{"tools", "lid", edge::top, edge::top});
    CHECK(refused(joined).where == "lid");
    CHECK(refused::message<sheet_error>([&] { sheet_of(joined); }).find("lid, which is not in the project") !=
          std::string::npos);
    auto q = roll_project();
    zipper<inch> other = q.zippers()[0];
    other.on = "sleeve";
    q.add(other);
    CHECK(refused(q).kind == fault::missing);
    CHECK(refused(q).where == "sleeve");
    auto r = roll_project();
    zipper<inch> upright = r.zippers()[0];
    upright.from = edge::left;
    r.add(upright);
    CHECK(refused(r).kind == fault::unsuitable);
    CHECK(refused(r).where == "lining");
}

// By paper, and by cloth of that thickness: of width + width + turn, the last fold lies half of the turn outside the
// finished edge, and the other half goes round it. What is measured from that edge then is as the finish says it.
TEST_CASE("what is measured from an edge that went round a thickness is measured in cloth of that thickness") {
    at_random::sampler any(31);
    while (any.another_of(60)) {
        const length<inch> width = any.inches(1) + "1/2"_in, inset = "1/8"_in, turn = any.inches(1) + "1/16"_in;
        const finished_size<inch> size(any.inches(10) + 8_in, any.inches(10) + 8_in);
        project<inch> p("mat", size);
        auto& outer = p.add({"outer", "canvas", panel(size, all_round(self_binding(width, inset, turn)))});
        p.add({"wadding", "wadding", panel(size)}).lies_inside(outer);
        for (const bool designed : {false, true}) {
            if (designed)
                p.made_as(making_of(p).design);
            const auto groups = sheet_of(p).steps.groups;
            const auto& g = groups.back();
            REQUIRE(g.check);
            CHECK(g.check->width == size.width());
            CHECK(g.check->height == size.height());
            std::vector<work_place<inch>> sewn;
            for (const auto& s : g.steps)
                for (const auto& place : s.places) {
                    const bool last = s.verb == work_verb::fold && place.across.from.folded;
                    CHECK(place.goes_round == (last ? turn / 2 : 0_in));
                    if (last)
                        CHECK(place.turned - place.goes_round == width);
                    if (s.verb != work_verb::sew)
                        continue;
                    CHECK(place.across.at == std::vector<length<inch>>{width - inset});
                    sewn.push_back(place);
                }
            // Edges bound first are sewn while the others are turned once, those bound last at their finished length.
            REQUIRE(sewn.size() == 4);
            const auto along = [&](edge e) { return is_level(e) ? size.width() : size.height(); };
            CHECK(sewn[0].sewn == along(sewn[0].side) + (width + turn) * 2);
            CHECK(sewn[3].sewn == along(sewn[3].side));
        }
    }
}

// By paper: a mat finishes 8 x 10 in, its top and bottom turned 1/2 in twice round cloth that takes up 1/8 in. Flat, a last
// fold lies 1/16 in outside its edge; in cloth of that thickness a row ends at the edge: 3 in below the top one runs on for
// 7 in to the bottom, and one from the top is 4 in long. Their cut edge is 1 1/8 in further out.
TEST_CASE(
    "a row that stops at one turned edge is as long, and as far from the other, as cloth of that thickness has it") {
    project<inch> p("mat", finished_size(8_in, 10_in));
    edges<inch> finishes;
    finishes.top = finishes.bottom = self_binding("1/2"_in, "1/8"_in, "1/8"_in);
    p.add({"mat", "canvas", panel(p.finished(), finishes)});
    auto made = making_of(p);
    for (const bool down : {true, false}) {
        stitching<inch> row{
            .along = {.on = made.part("mat"), .from = edge::left, .in = at<cut_edge>(down ? 3_in : 5_in)}};
        (down ? row.along.begins : row.along.ends) = "1 1/8"_in + (down ? 3_in : 4_in);
        const operation sewn = made.design.add(row);
        for (std::size_t i = 0; i < made.design.creases().size(); ++i)
            made.design.add(before{{operation_kind::crease, i}, sewn});
    }
    p.made_as(made.design);
    const auto groups = sheet_of(p).steps.groups;
    std::vector<work_place<inch>> rows;
    for (const auto& g : groups)
        for (const auto& s : g.steps)
            for (const auto& place : s.places)
                if (s.verb == work_verb::sew && place.side == edge::left)
                    rows.push_back(place);
    REQUIRE(rows.size() == 2);
    const bool first = rows[0].sewn == 7_in;
    const auto &to_bottom = rows[first ? 0 : 1], &from_top = rows[first ? 1 : 0];
    CHECK(to_bottom.sewn == 7_in);
    CHECK(to_bottom.along.at == std::vector<length<inch>>{3_in, 10_in});
    CHECK(to_bottom.ends_on == seen_edge{made.part("mat"), edge::bottom, true});
    CHECK(from_top.sewn == 4_in);
    CHECK(from_top.along.at == std::vector<length<inch>>{0_in, 4_in});
    CHECK_FALSE(from_top.ends_on.of.is_given());
}
