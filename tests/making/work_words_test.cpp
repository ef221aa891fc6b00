// Steps in sentences: what a maker reads, and that each part of it can be said otherwise.
#include "../vectors.hpp"
#include "making/boxes.hpp"
#include "making/things.hpp"
#include "making/walked.hpp"
#include <turncloth/making/binding_strips.hpp>
#include <turncloth/making/work_plan.hpp>
#include <turncloth/making/work_words.hpp>

#include <doctest/doctest.h>

#include <algorithm>
#include <fstream>
#include <iterator>
#include <set>
#include <string>
#include <utility>
#include <vector>

using namespace things;
using std::string;

namespace {

std::vector<string> sentences(const making<inch>& d, const wording& w = {}) {
    const auto plan = work_plan_of(d);
    std::vector<string> all;
    for (const auto& g : plan.groups)
        all.push_back(sentence_of(plan, g, w));
    return all;
}

/// Everything that a plan can hold, so that every phrase is said.
making<inch> of_every_kind() {
    making<inch> d("sampler");
    const cut_part mat = d.cut({.name = "mat", .width = 20_in, .height = 15_in}),
                   card = d.cut({.name = "card", .width = 4_in, .height = 3_in, .count = 5}),
                   under = d.cut({.name = "under", .width = 3_in, .height = 3_in});
    d.add(crease<inch>{.across = corner_line<inch>{mat, edge::left, edge::top, 1_in}});
    d.add(crease<inch>{.at = line(mat, edge::left, 1_in)});
    d.add(snip<inch>{.at = line(mat, edge::bottom, 2_in)});
    const surplus ways[] = {surplus::ease, surplus::pleat, surplus::gather, surplus::tuck};
    for (const std::int64_t k : {0, 1, 2, 3})
        d.add(laying<inch>{.piece = card[k],
                           .on = mat,
                           .left = 4_in * k - 1_in,
                           .top = 3_in + 1_in * k,
                           .fit = {.taken_up = ways[k], .spans = k == 3 ? 2 : 1, .of_piece = 4_in, .on = 3_in}});
    d.add(laying<inch>{.piece = under, .on = mat, .left = 15_in, .top = 10_in, .beneath = true});
    auto hand = sewn(under, edge::top, 1_in, {under, mat});
    hand.by_hand = true;
    hand.overrun = "1/4"_in;
    d.add(hand);
    auto part = sewn(card[0], edge::top, 1_in, {card[0], mat});
    part.along.begins = 1_in;
    part.along.ends = 2_in;
    d.add(part);
    for (const spot_kind kind : {spot_kind::eyelet, spot_kind::bar_tack, spot_kind::snap, spot_kind::button,
                                 spot_kind::tie_end, spot_kind::tie_middle, spot_kind::cross})
        d.add(spot<inch>{.what = kind,
                         .along = line(mat, edge::bottom, 1_in + "1/4"_in * static_cast<std::int64_t>(kind)),
                         .places = row<cut_edge, inch>(at<cut_edge>(3_in), 2_in, 2),
                         .through = {mat}});
    for (const closed_by by : {closed_by::hand, closed_by::zipper, closed_by::tie, closed_by::nothing}) {
        const auto m = d.add(mouth<inch>{.name = "mouth", .at = {line(mat, edge::top, 1_in)}, .by = by});
        d.add(moment{moment_kind::close, m.index});
    }
    const auto pocket = d.add(compartment<inch>{.name = "pocket", .between = {mat, under}, .mouths = {{0}}});
    d.add(contents<inch>{.what = "seed", .width = 1_in, .height = 1_in, .depth = 1_in, .into = pocket, .by = {0}});
    d.add(moment{moment_kind::turn_out, 0});
    d.add(moment{moment_kind::put_in, 0});
    d.add(moment{moment_kind::fold, 0});
    d.add(moment{moment_kind::roll, 0});
    return d;
}

/// A seam to three edges, two of them one; like rows one beyond another; a row across an edge; a filling to be folded; a
/// fold round a thickness; an eased seam, with marks and without.
void add_sewn(work_plan<inch>& plan) {
    const auto add = [&](work_verb verb) -> work_step<inch>& {
        work_step<inch>& s = plan.groups.emplace_back().steps.emplace_back();
        s.verb = verb;
        s.what = "foam";
        return s;
    };
    const auto on = [](cut_part p, edge e, std::vector<length<inch>> at) {
        return seen_distances<inch>{{p, e, false}, std::move(at)};
    };
    const cut_part flounce{0, 0}, cover{1, 0};
    work_step<inch>& seam = add(work_verb::seam);
    seam.what.clear();
    seam.through = {cover};
    seam.left_open = {{"gap", {cover, edge::top, false}, on(cover, edge::left, {2_in, 3_in})},
                      {"vent", {cover, edge::left, false}, on(cover, edge::top, {5_in, 6_in})}};
    for (const auto& [e, begins] :
         {std::pair(edge::top, 1_in), std::pair(edge::top, 4_in), std::pair(edge::left, 1_in)})
        seam.places.push_back({.piece = flounce,
                               .across = on(flounce, edge::top, {1_in}),
                               .meets = on(cover, e, {1_in}),
                               .meets_along = on(cover, e == edge::top ? edge::left : edge::top, {begins, 7_in})});
    work_step<inch>& one_edge = add(work_verb::seam);
    one_edge.what.clear();
    one_edge.straight = true;
    for (const std::int64_t k : {0, 1, 2})
        one_edge.places.push_back({.piece = {0, k % 2},
                                   .across = on({0, k % 2}, edge::top, {1_in}),
                                   .meets = on(cover, edge::top, {1_in}),
                                   .meets_along = on(cover, edge::left, {1_in * k, 1_in * k + 1_in})});
    for (const auto& [begins, ends] : {std::pair(1_in, 2_in), std::pair(3_in, 4_in)}) {
        work_step<inch>& row = begins == 1_in ? add(work_verb::sew) : plan.groups.back().steps[0];
        row.places.push_back({.piece = cover,
                              .across = on(cover, edge::top, {1_in}),
                              .along = on(cover, edge::left, {begins, ends}),
                              .sewn = 1_in});
    }
    add(work_verb::sew).places = {{.piece = cover,
                                   .side = edge::left,
                                   .across = on(cover, edge::left, {2_in}),
                                   .along = on(cover, edge::top, {"-1/4"_in, "1/2"_in})}};
    for (const std::int64_t folds : {1, 2})
        add(work_verb::put_in).folds = folds;
    add(work_verb::fold).places = {
        {.piece = cover, .across = on(cover, edge::top, {}), .turned = "3/4"_in, .goes_round = "1/8"_in}};
    for (const bool marked : {true, false}) {
        work_place<inch>& eased = add(work_verb::seam).places.emplace_back();
        eased = {.piece = flounce,
                 .across = on(flounce, edge::top, {1_in}),
                 .meets = on(cover, edge::top, {1_in}),
                 .marks = on(flounce, edge::left, {}),
                 .meets_marks = on(cover, edge::right, {}),
                 .surplus = "1/4"_in};
        if (marked) {
            eased.marks.at = {5_in};
            eased.meets_marks.at = {4_in};
        }
        plan.groups.back().steps[0].what.clear();
    }
}

/// Steps that a project adds: they need no design.
work_plan<inch> of_a_project() {
    work_plan<inch> plan;
    plan.parts = {{"flounce", 2}, {"cover", 1}};
    const auto add = [&](work_verb verb, bool many = false) {
        work_step<inch> s;
        s.verb = verb;
        s.what = "cord";
        s.on = {1, 0};
        s.once_more = many;
        s.places = {{.piece = {0, 0}}};
        plan.groups.emplace_back().steps.push_back(s);
    };
    for (const work_verb verb :
         {work_verb::prepare, work_verb::pleat, work_verb::join, work_verb::apply, work_verb::lay, work_verb::zipper,
          work_verb::close_up, work_verb::add, work_verb::hem})
        add(verb);
    add(work_verb::zipper, true);
    work_group<inch>& laid = plan.groups.emplace_back();
    laid.every_copy = true;
    laid.pieces = {{0, 0}};
    laid.steps.emplace_back().verb = work_verb::lay;
    laid.steps[0].on = {1, 0};
    laid.steps[0].places.push_back({.piece = {0, 0},
                                    .across = {{{1, 0}, edge::left, false}, {1_in}},
                                    .along = {{{1, 0}, edge::top, false}, {2_in}},
                                    .own_left = {{0, 0}, edge::left, false},
                                    .own_top = {{0, 0}, edge::top, true}});
    work_group<inch> with = laid;
    with.steps[0].carries_beneath = true;
    add_sewn(plan);
    work_step<inch> again;
    again.verb = work_verb::fold;
    for (const edge e : all_edges)
        again.places.push_back({.piece = {1, 0}, .side = e, .across = {{{1, 0}, e, true}, {}}, .turned = 1_in});
    plan.groups.emplace_back().steps.push_back(again);
    add(work_verb::apply);
    plan.groups.back().steps[0].width = "1/8"_in;
    add(work_verb::handwork);
    plan.groups.push_back(with);
    with.steps[0].carries = true;
    plan.groups.push_back(with);
    return plan;
}

/// A tape laid on a base, then a row, before which the work is turned over or not.
work_plan<inch> tape_on_base(bool turned_over, bool film, surplus taken_up) {
    work_plan<inch> plan{.parts = {{"base"}, {"tape"}}};
    work_step<inch> lay{.verb = work_verb::lay}, sew{.verb = work_verb::sew};
    lay.on = {0, 0};
    lay.film = film;
    lay.fit.taken_up = taken_up;
    lay.places.push_back({.piece = {1, 0},
                          .across = {{{0, 0}, edge::left, false}, {1_in}},
                          .along = {{{0, 0}, edge::top, false}, {2_in}},
                          .own_left = {{1, 0}, edge::left, false},
                          .own_top = {{1, 0}, edge::top, false}});
    sew.places.push_back({.piece = {0, 0},
                          .across = {{{0, 0}, edge::top, false}, {3_in}},
                          .end_to_end = {0, 0},
                          .sewn = 9_in,
                          .least = 2,
                          .most = 2});
    sew.turned_over = turned_over;
    plan.groups.push_back({.steps = {lay, sew}});
    return plan;
}

} // namespace

// Followed with paper, scissors and pins; the figures are those of work_plan_test.cpp.
TEST_CASE("a pocket is hemmed, laid and divided in words that can be followed") {
    const auto all = sentences(tool_roll(true).design);
    REQUIRE(all.size() > 5);
    CHECK(all[3] ==
          "With the wrong side of the tools up, turn the top edge over by 3/8 in, and press. Turn that edge over "
          "again by 5/8 in, and press. Stitch 1/2 in from the folded edge: a row of 20 in, through 3 layers. "
          "Check the tools: 20 x 8 in.");
    CHECK(all[4] ==
          "Lay the tools, right side up, on the right side of the lining, its cut left edge level with the cut "
          "left edge of the lining and its folded top edge 8 in from the cut top edge of the lining. Sew 5 rows "
          "through the tools and the lining, 3 2/3, 6 5/6, 10, 13 1/6 and 16 1/3 in from the cut left edge of "
          "the tools, from edge to edge of the tools: each 8 in long, through 2 to 4 layers.");
}

TEST_CASE("steps with several copies name each where its place differs, and are rounded to a ruler") {
    const organiser o(3);
    const auto rounded = sentences(o.design, {.by = inch_ruler(16)});
    const string& strips = rounded[3];
    CHECK(strips.rfind(
              "For each film, one after another: lay the film, wrong side up, on the right side of the backing, its "
              "top toward you, its folded left edge level with the folded left edge of the backing and its cut "
              "bottom edge 10 5/8 in (film 1), 18 5/8 in (film 2) and 26 5/8 in (film 3) from the cut top edge "
              "of the backing.",
              0) == 0);
    CHECK(strips.find(" 1/8, 6 11/16, 13 5/16 and 19 7/8 in from the folded left edge of the backing,") !=
          string::npos);
    const auto both = sentences(o.design, {.by = ruler{}});
    CHECK(
        both[3].find(" 1/8 in (0.3 cm), 6 11/16 in (17 cm), 13 5/16 in (33.8 cm) and 19 7/8 in (50.5 cm) from the ") !=
        string::npos);
    CHECK(both[2].find("Check the backing: 20 x 29 in (50.8 x 73.7 cm).") != string::npos);
}

TEST_CASE("which way edges are named is said where a wrong side lies up, and only there") {
    making<inch> d("mat");
    const cut_part mat = d.cut({.name = "mat", .width = 9_in, .height = 9_in});
    d.add(sewn(mat, edge::left, 1_in, {mat}));
    CHECK(preface_of(work_plan_of(d)).empty());
    d.add(crease<inch>{.at = line(mat, edge::top, "1/2"_in)});
    CHECK(preface_of(work_plan_of(d)) == std::vector<string>{string(phrases::orientation.english)});
}

TEST_CASE("how rows end is said once where all end alike") {
    making<inch> d("mat");
    const cut_part mat = d.cut({.name = "mat", .width = 9_in, .height = 9_in});
    auto row = sewn(mat, edge::left, 1_in, {mat});
    row.overrun = "1/2"_in;
    d.add(row);
    const auto plan = work_plan_of(d);
    CHECK(preface_of(plan) == std::vector<string>{"Sew back over 1/2 in at both ends of every row."});
    CHECK(sentences_of(plan, plan.groups[1]).size() == 1);
    row.along.in = at<cut_edge>(2_in);
    row.overrun = "1/4"_in;
    d.add(row);
    const auto unlike = work_plan_of(d);
    CHECK(preface_of(unlike).empty());
    CHECK(sentence_of(unlike, unlike.groups[2]).find(" Sew back over 1/4 in at both ends.") != string::npos);
}

TEST_CASE("every phrase has a key of its own and stands in the list") {
    std::set<std::string_view> keys;
    for (const phrase& p : all_phrases) {
        CHECK(keys.insert(p.key).second);
        CHECK_FALSE(p.english.empty());
    }
    // As they are written: a name, a brace and a key.
    std::ifstream in("include/turncloth/making/phrases.hpp");
    const string source{std::istreambuf_iterator<char>(in), {}};
    const std::size_t from = source.find("namespace phrases"), to = source.find("} // namespace phrases");
    std::size_t written = 0;
    for (std::size_t at = source.find("{\"", from); at < to; at = source.find("{\"", at + 1))
        written += source[at - 1] != ' ';
    for (std::size_t at = source.find("{\n", from); at < to; at = source.find("{\n", at + 1))
        written += source[at - 1] != ' ';
    CHECK(written == all_phrases.size());
}

TEST_CASE("every phrase is said somewhere, and a table says it otherwise") {
    wording otherwise;
    for (const phrase& p : all_phrases) {
        string text = "<" + string(p.key) + ">";
        for (std::size_t open = p.english.find('{'); open != string::npos; open = p.english.find('{', open + 1))
            text += p.english.substr(open, p.english.find('}', open) + 1 - open);
        otherwise.table.push_back({string(p.key), text});
    }
    string all;
    const auto say = [&](const work_plan<inch>& plan) {
        for (const string& sentence : preface_of(plan, otherwise))
            all += sentence;
        for (const auto& g : plan.groups)
            for (const bool in_lines : {false, true}) {
                otherwise.in_lines = in_lines;
                all += sentence_of(plan, g, otherwise);
            }
    };
    making<inch> ended("ended");
    const cut_part mat = ended.cut({.name = "mat", .width = 9_in, .height = 9_in});
    auto row = sewn(mat, edge::left, 1_in, {mat});
    row.overrun = "1/2"_in;
    ended.add(row);
    zipped_pad pad({.w = 16_in, .h = 9_in, .d = 2_in, .s = "1/2"_in});
    pad.design.add(moment{moment_kind::turn_out, pad.zip.index});
    for (const making<inch>& d : {tool_roll(true).design, organiser().design, of_every_kind(), ended, pad.design})
        say(work_plan_of(d));
    auto one_way = work_plan_of(pad.design);
    for (auto& g : one_way.groups)
        for (work_step<inch>& step : g.steps)
            step.pressed = pressed::to_one;
    say(one_way);
    say(of_a_project());
    say(tape_on_base(true, true, surplus::none));
    work_step<inch> corner{.verb = work_verb::slit};
    corner.places.push_back({.piece = {0, 0},
                             .across = {{{0, 0}, edge::left, false}, {1_in}},
                             .along = {{{0, 0}, edge::top, false}, {0_in, 1_in}},
                             .corner = true});
    say({.parts = {{"base"}}, .groups = {{.steps = {corner}}}});
    corner.verb = work_verb::fold;
    corner.once_more = true;
    work_step<inch> cut_out{.verb = work_verb::seam};
    cut_out.places.push_back({.piece = {0, 0},
                              .across = {{{0, 0}, edge::left, false, edge::top}, {1_in}},
                              .meets = {{{0, 0}, edge::top, false, edge::left}, {1_in}}});
    cut_out.left_open = {{"gap", {{0, 0}, edge::left, false, edge::top}, {{{0, 0}, edge::top, false}, {1_in, 2_in}}}};
    say({.parts = {{"base"}}, .groups = {{.steps = {corner}}, {.steps = {cut_out}}}});
    for (const phrase& p : all_phrases)
        CHECK_MESSAGE(all.find("<" + string(p.key) + ">") != string::npos, string(p.key));
    // Nothing is left of the English but names, numbers and units.
    CHECK(all.find("edge of") == string::npos);
    CHECK(all.find("Sew") == string::npos);
    CHECK(all.find('{') == string::npos);
}

TEST_CASE("a text is filled place by place, and what is not given stands as it was") {
    const phrase p{"test", "from {a} to {b}, {a}"};
    CHECK(said(p, {{"a", "1"}, {"b", "{a}"}}) == "from 1 to {a}, 1");
    CHECK(said(p, {{"b", "2"}}) == "from {a} to 2, {a}");
    CHECK(said(p, {}, {{"test", "{b"}}) == "{b");
    CHECK(said(p, {{"b", "2"}}, {{"test", ""}}) == "");
}

// Moments and what a project adds, said in short.
TEST_CASE("what a project adds to its flat work is said by name") {
    const auto plan = of_a_project();
    const auto say = [&](std::size_t i) { return sentence_of(plan, plan.groups[i]); };
    CHECK(say(0) == "Cord"); // a sentence of the designer's
    CHECK(say(1) == "Lay the pleats of each flounce, fold to placement line, and tack them.");
    CHECK(say(2) == "Sew each flounce to the cover, mark to mark.");
    CHECK(say(3) == "Sew each flounce onto the cover.");
    CHECK(say(4) == "Lay each flounce on the cover.");
    CHECK(say(5) == "Sew the zipper to each flounce, then open the slit behind it.");
    CHECK(say(6) == "Sew the remaining seams of each flounce.");
    CHECK(say(7) == "Add the cord.");
    CHECK(say(10) ==
          "Lay one flounce, right side up, on the wrong side of the cover, its cut left edge 1 in from the cut left "
          "edge of the cover and its folded top edge 2 in from the cut top edge of the cover.");
    CHECK(
        say(11) ==
        "With right sides together, sew these edges to each other, 1 in from the cut edges, and leave the gap open in "
        "the cut top edge of the cover, from 2 to 3 in off its cut left edge and the vent open in the cut left edge of "
        "the cover, from 5 to 6 in off its cut top edge: 0 in in all, through 0 layers. Bring together the cut top "
        "edge of flounce 1 and the cut top edge of the cover from 1 "
        "to 7 in off its cut left edge; the cut top edge of flounce 1 and the cut top edge of the cover from 4 to 7 in "
        "off its cut left edge; the cut top edge of flounce 1 and the cut left edge of the cover. Turn each corner "
        "where the seam lines cross, with the needle down.");
    // Of three pairs or more each has a line of its own, where that is asked for, and what follows goes on after them.
    const auto in_lines = [&](std::size_t i) { return sentence_of(plan, plan.groups[i], wording{.in_lines = true}); };
    const string paired = in_lines(11), along = in_lines(12);
    CHECK(
        paired.substr(paired.find("Bring")) ==
        "Bring together:\nthe cut top edge of flounce 1 and the cut top edge of the cover from 1 to 7 in off its cut "
        "left edge\nthe cut top edge of flounce 1 and the cut top edge of the cover from 4 to 7 in off its cut left "
        "edge\nthe cut top edge of flounce 1 and the cut left edge of the cover\nTurn each corner where the seam lines "
        "cross, with the needle down.");
    CHECK(along.substr(along.find("Measured")) ==
          "Measured from the cut left edge of the cover, its cut top edge takes:\nthe cut top edge of flounce 1 from 0 "
          "to "
          "1 in\nthe cut top edge of flounce 2 from 1 to 2 in\nthe cut top edge of flounce 1 from 2 to 3 in\n");
    CHECK(say(12).find('\n') == string::npos);
    CHECK(say(13) ==
          "Sew a row through the cover, 1 in from the cut top edge of the cover, from 1 to 2 in and from 3 to "
          "4 in off the cut left edge of the cover: 1 in each, through 0 layers.");
    CHECK(say(14).find("from 1/4 on one side to 1/2 in on the other side of the cut top edge of the cover") !=
          string::npos);
    CHECK(say(15) == "Put in the foam, folded in half, and let it open out inside.");
    CHECK(say(16) == "Put in the foam, folded in half 2 times, and let it open out inside.");
    CHECK(say(8) == "Turn and stitch the top edge of each flounce.");
    CHECK(say(plan.groups.size() - 3) == "cord"); // as it is given
    const string under = say(plan.groups.size() - 2), both = say(plan.groups.size() - 1);
    CHECK(under.rfind("Lay one flounce, with what lies under it, right side up, on the wrong side of the cover, ", 0) ==
          0);
    CHECK(both.rfind("Lay one flounce, with what lies on it and under it, right side up, on the wrong side of ", 0) ==
          0);
    CHECK(say(plan.groups.size() - 4) ==
          "Sew each flounce onto the cover: a row 1/8 in inside the top edge of each flounce.");
    CHECK(say(9) == "Sew the zippers to each flounce, then open the slits behind them.");
}

TEST_CASE("a seam that is sewn by hand says so, and how far a machine sews back over says nothing of it") {
    making<inch> d("bag");
    const cut_part front = d.cut({.name = "front", .width = 6_in, .height = 5_in});
    const cut_part back = d.cut({.name = "back", .width = 6_in, .height = 5_in});
    const auto line = [](const cut_part& on, edge from) {
        return chalk_line<inch>{.on = on, .from = from, .in = at<cut_edge>("1/2"_in)};
    };
    d.add(seam_of<inch>{.one = {line(front, edge::top)}, .other = {line(back, edge::top)}, .by_hand = true});
    d.add(seam_of<inch>{.one = {line(front, edge::bottom)}, .other = {line(back, edge::bottom)}});
    d.sewn_by_machine(stitch(301), "1/4"_in);
    const auto plan = work_plan_of(d);
    std::string by_hand, by_machine;
    for (const auto& g : plan.groups)
        for (const string& s : sentences_of(plan, g))
            (s.find("top edge of front") != string::npos || s.find("top edge of the front") != string::npos
                 ? by_hand
                 : by_machine) += s;
    CHECK(by_hand.find("through 2 layers. Sew this by hand.") != string::npos);
    CHECK(by_hand.find("Sew back") == string::npos);
    CHECK(by_machine.find("by hand") == string::npos);
}

// By paper: with the wrong side of the mat up, the strip is laid on it, sewn, and folded outward; turned over once, it is
// brought over the edge and sewn down. Of each of the four strips the next begins with the side that must be up.
TEST_CASE("a binding is turned over once for each strip, between its first fold and the fold over the edge") {
    making<inch> d("mat");
    bind_all_round<inch>(d, cut_for(d, "mat", panel<inch>({12_in, 9_in}, all_round(separate_binding("1/2"_in)))),
                         {.finished = "1/2"_in,
                          .allowance = {.seam = "3/8"_in, .turn = "1/8"_in},
                          .inset = "1/16"_in,
                          .turned_in = "3/4"_in});
    CHECK(walk(d) == 4);
    int strips = 0;
    for (const string& s : sentences(d)) {
        CAPTURE(s);
        if (s.find("lay the \"binding, left\"") == string::npos)
            continue;
        ++strips;
        const auto at = [&](const char* words) { return s.find(words); };
        CHECK(at("With the wrong side of the mat up, lay") < at("Sew a row"));
        CHECK(at("Sew a row") < at("Fold the \"binding, left\" over along the row just sewn"));
        CHECK(at("over along the row just sewn") < at("Turn the work over. Turn that edge over again"));
        CHECK(at("Turn the work over. Turn that edge over again") < s.rfind("Sew a row"));
    }
    CHECK(strips == 1);
}

TEST_CASE("what is only laid is held before the work is turned over, and not where it stays as it lies or is pinned") {
    const auto told = [](bool turned_over, bool film, surplus taken_up) {
        const work_plan<inch> plan = tape_on_base(turned_over, film, taken_up);
        return sentences_of(plan, plan.groups[0]);
    };
    CHECK(told(true, false, surplus::none)[0].ends_with("2 in from the cut top edge of the base. Pin it in place."));
    CHECK(told(true, false, surplus::none)[1].starts_with("Turn the work over. "));
    CHECK(told(true, true, surplus::none)[0].ends_with("of the base. Clip it in place."));
    CHECK(told(false, false, surplus::none)[0].ends_with("2 in from the cut top edge of the base."));
    CHECK(told(true, false, surplus::ease)[0].find("in place") == std::string::npos);
}

// A strip of 6 x 29 in, its ends turned in by 1/4 in and then folded in four: it lies 1 1/2 in wide from 3 in on, and the
// edges that were cut lie inside. A panel laid on its wrong side covers it from 20 in down, so its folded top edge, 1/4 in
// down, is in sight, 19 3/4 in above; the panel's left edge, at 9 in beyond, is 12 in from the fold at 3 in.
TEST_CASE("what is laid on a folded strap is measured from its folds, not from the cut edges that they hide") {
    making<inch> d("bag");
    const cut_part strap = d.cut({.name = "strap", .width = 6_in, .height = 29_in});
    const cut_part panel = d.cut({.name = "panel", .width = 20_in, .height = 12_in});
    const auto fold = [&](edge from, length<inch> in) {
        return d.add(crease<inch>{.at = chalk_line<inch>{.on = strap, .from = from, .in = at<cut_edge>(in)}});
    };
    const auto top = fold(edge::top, "1/4"_in), bottom = fold(edge::bottom, "1/4"_in),
               right = fold(edge::right, "1 1/2"_in), left = fold(edge::left, "1 1/2"_in),
               four = fold(edge::left, 3_in);
    for (const auto& [first, then] : {std::pair{top, right}, {bottom, right}, {right, left}, {left, four}})
        d.add(before{first, then, "the ends lie inside"});
    const auto laid = d.add(laying<inch>{.piece = panel, .on = strap, .left = -9_in, .top = 20_in, .beneath = true});
    d.add(before{four, laid, "the strap is folded first"});
    const auto plan = work_plan_of(d);
    string all;
    for (const auto& g : plan.groups)
        for (const string& s : sentences_of(plan, g))
            all += s + "\n";
    CHECK_MESSAGE(
        all.find("its cut left edge 12 in beyond the folded left edge of the strap and its cut top edge 19 3/4 in "
                 "from the folded top edge of the strap") != string::npos,
        all);
}
