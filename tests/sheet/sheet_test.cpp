// sheet/project.hpp and sheet/sheet.hpp: one call works a project out, refuses what would spoil cloth with every
// reason, and says what may not be meant.
#include <turncloth.hpp>

#include <doctest/doctest.h>

#include <string>
#include <vector>

using namespace turncloth;

namespace {

piece<inch> flat(const char* name, length<inch> width, length<inch> height) {
    return {name, "canvas", panel(finished_size(width, height))};
}

/// The reasons for which a project is refused; none where it is not.
std::vector<std::string> reasons(const project<inch>& p) {
    try {
        static_cast<void>(sheet_of(p));
        return {};
    } catch (const sheet_error& refused) {
        return refused.reasons();
    }
}

std::vector<length<inch>> places(const sheet_piece<inch>& p, line_kind kind, const std::string& what) {
    std::vector<length<inch>> found;
    for (const auto& l : p.lines)
        if (l.kind == kind && l.what == what)
            found.push_back(l.from_cut_edge.value());
    return found;
}

/// Common practice: an outer of 12 x 18 in goes over inners of 10 x 16 in, two folds of 1/2 in on every side.
project<inch> bound_over(const finished_size<inch>& inner) {
    project<inch> p("mat", finished_size(10_in, 16_in));
    auto& outer = p.add({"outer", "canvas", panel(p.finished(), all_round(self_binding("1/2"_in)))});
    p.add({"inner", "felt", panel(inner)}).count(2).lies_inside(outer);
    return p;
}

zipper<inch> cut_from_a_roll(const char* on, std::vector<place<finished_edge, inch>> centres) {
    return {on,
            edge::top,
            std::move(centres),
            {10_in, "1/2"_in, "1/4"_in},
            "1/2"_in,
            "1/4"_in,
            zipper_supply<inch>::from_roll(100_in)};
}

} // namespace

TEST_CASE("a self-bound mat is cut two inches larger than its inner layers, and folded at half an inch and an inch") {
    const auto s = sheet_of(bound_over(finished_size(10_in, 16_in)));
    CHECK(s.pieces[0].cut == cut_size(12_in, 18_in));
    CHECK(s.pieces[1].cut == cut_size(10_in, 16_in));
    CHECK(s.pieces[1].made_from.count() == 2);
    CHECK(to_text(s.pieces[0].width) == "12 in = 10 in finished + 2 x (1/2 + 1/2) in self-binding");
    const std::vector<length<inch>> folds = {"1/2"_in, 1_in, "1/2"_in, 1_in, "1/2"_in, 1_in, "1/2"_in, 1_in};
    CHECK(places(s.pieces[0], line_kind::fold, "self-binding") == folds);
}

TEST_CASE("the long edges are worked before the short ones") { // common practice
    const auto tall = sheet_of(bound_over(finished_size(10_in, 16_in)));
    CHECK(tall.pieces[0].lines.front().parallel_to == edge::left);
    project<inch> p("strip", finished_size(16_in, 10_in));
    p.add({"strip", "canvas", panel(p.finished(), all_round(single_turned_hem(1_in)))});
    CHECK(sheet_of(p).pieces[0].lines.front().parallel_to == edge::top);
}

TEST_CASE("inner layers that disagree with the outer one are refused with both sizes") {
    CHECK(reasons(bound_over(finished_size(10_in, 15_in))) ==
          std::vector<std::string>{"inner is cut 10 x 15 in, but outer, round which it lies, finishes 10 x 16 in"});
    CHECK(reasons(bound_over(finished_size(11_in, 16_in))).size() == 1);
}

TEST_CASE("a hanging's pocket marks run from the heading's stitching") {
    // Common practice: a backing cut 15 x 45 in with a 4 in heading and 1 in hems on the other sides finishes 13 x 40
    // in; from the heading's stitching the marks fall at 7, 14, 21, 28 and 35 in, with 1 in to spare.
    const auto hem = single_turned_hem(1_in);
    const auto shape = panel<inch>::from_cut(cut_size(15_in, 45_in), {heading(4_in), hem, hem, hem});
    CHECK(shape.finished() == finished_size(13_in, 40_in));
    const auto marks = every<stitched_line>(7_in, 36_in); // 40 in less the 4 in above the stitching
    CHECK(marks.to_spare == 1_in);
    project<inch> p("hanging", shape.finished());
    p.add({"backing", "canvas", shape}).mark("pocket", edge::top, marks.marks);
    // The heading's raw edge lies 4 in below the fold, 8 in from the cut edge, and is stitched there.
    CHECK(places(sheet_of(p).pieces[0], line_kind::mark, "pocket") ==
          std::vector<length<inch>>{15_in, 22_in, 29_in, 36_in, 43_in});
    CHECK(sheet_of(p).warnings.empty());
}

TEST_CASE("a mark off the piece is refused, a mark in a hem is said") {
    project<inch> p("mat", finished_size(10_in, 16_in));
    auto& mat = p.add({"mat", "canvas", panel(p.finished(), all_round(single_turned_hem(1_in)))});
    mat.mark("in the hem", edge::top, at<cut_edge>("1/2"_in)).mark("on the fold", edge::top, at<cut_edge>(1_in));
    mat.mark("at the far fold", edge::top, at<cut_edge>(17_in))
        .mark("in the far hem", edge::top, at<cut_edge>("17 1/2"_in));
    const auto s = sheet_of(p);
    REQUIRE(s.warnings.size() == 2);
    CHECK(s.warnings[0] == "the mark \"in the hem\" of mat, 1/2 in from the cut top edge, lies in what is turned under "
                           "or taken by a seam");
    CHECK(s.warnings[1].find("in the far hem") != std::string::npos);

    mat.mark("last", edge::left, at<cut_edge>(12_in));
    CHECK(reasons(p).empty());
    mat.mark("past", edge::left, at<cut_edge>("12 1/8"_in)).mark("before", edge::left, at<finished_edge>("-1 1/8"_in));
    CHECK(
        reasons(p) ==
        std::vector<std::string>{
            "the mark \"past\" of mat, 12 1/8 in from the cut left edge, is off the piece, which is cut 12 in that way",
            "the mark \"before\" of mat, -1/8 in from the cut left edge, is off the piece, which is cut 12 in that "
            "way"});
}

TEST_CASE("zippers by quarter folds and one below the top: four pockets on a panel of 10 by 16 in") { // common practice
    project<inch> p("wall pockets", finished_size(10_in, 16_in));
    p.add({"front", "canvas", panel(p.finished(), all_round(self_binding("1/2"_in)))});
    std::vector<place<finished_edge, inch>> centres = {at<finished_edge>("1 1/2"_in)};
    for (const auto& quarter : halved<finished_edge>(16_in, 2))
        centres.push_back(quarter);
    p.add(cut_from_a_roll("front", centres));
    const auto s = sheet_of(p);
    // Each is stitched 1/4 in above and below 1 1/2, 4, 8 and 12 in from the finished edge, which is 1 in from the cut
    // edge.
    CHECK(places(s.pieces[0], line_kind::stitching, "zipper") ==
          std::vector<length<inch>>{"2 1/4"_in, "2 3/4"_in, "4 3/4"_in, "5 1/4"_in, "8 3/4"_in, "9 1/4"_in, "12 3/4"_in,
                                    "13 1/4"_in});
    CHECK(places(s.pieces[0], line_kind::slit, "slit behind the zipper").size() == 8);
    // An opening of 9 in on 10 in across begins 1/2 in from the finished edge, 1 1/2 in from the cut one; the tape's
    // stitching goes on for 1/4 in at both ends.
    const auto& stitching = s.pieces[0].lines[12];
    CHECK(stitching.what == "zipper");
    CHECK(stitching.begins == "1 1/4"_in);
    CHECK(stitching.ends == "10 3/4"_in);

    REQUIRE(s.notions.size() == 1);
    const auto& d = s.notions[0].details();
    CHECK(d[0].count == 4);
    CHECK(d[1].amount.value() == 9_in);
    CHECK(d[2].amount.value() == "9 1/2"_in); // 9 in and 1/4 in of tape at both ends
    CHECK(d[3].count == 4);
    CHECK(d[4].count == 1);
    CHECK(d[6].amount.value() == 62_in); // 100 - 4 x 9 1/2
}

TEST_CASE("several like pieces need a zipper each") {
    project<inch> p("pockets", finished_size(10_in, 6_in));
    p.add(flat("front", 10_in, 6_in)).count(3);
    p.add(cut_from_a_roll("front", {at<finished_edge>(2_in), at<finished_edge>(4_in)}));
    CHECK(sheet_of(p).notions[0].details()[0].count == 6);
}

TEST_CASE("a made-up zipper is listed with its new stop and its cut, or as sold") {
    project<inch> p("pocket", finished_size(10_in, 6_in));
    p.add(flat("front", 10_in, 6_in));
    auto z = cut_from_a_roll("front", {at<finished_edge>(2_in)});
    z.supply = zipper_supply<inch>::made_up({7_in, 12_in, 9_in}, "1/2"_in, "1/2"_in);
    p.add(z);
    const auto as_sold = sheet_of(p).notions[0].details();
    REQUIRE(as_sold.size() == 3);
    CHECK(as_sold[2].amount.value() == 9_in);

    project<inch> q("pocket", finished_size(10_in, 6_in));
    q.add(flat("front", 10_in, 6_in));
    z.supply.lengths_sold = {7_in, 12_in};
    q.add(z);
    const auto cut = sheet_of(q).notions[0].details();
    REQUIRE(cut.size() == 5);
    CHECK(cut[2].amount.value() == 12_in);
    CHECK(cut[3].amount.value() == 9_in);
    CHECK(cut[4].amount.value() == "9 1/2"_in);
}

TEST_CASE("zippers that cannot be sewn are refused") {
    const auto with = [](zipper<inch> z) {
        project<inch> p("pocket", finished_size(10_in, 6_in));
        p.add({"front", "canvas", panel(p.finished(), all_round(seam("1/2"_in)))});
        p.add(std::move(z));
        return reasons(p);
    };
    const auto sound = cut_from_a_roll("front", {at<finished_edge>(2_in)});
    CHECK(with(sound).empty());

    auto z = sound;
    z.opening.beyond = "3/4"_in;
    CHECK(with(z) == std::vector<std::string>{"the tape of a zipper on front reaches 1/4 in into the seams"});
    z = sound;
    z.opening.across = 11_in;
    CHECK(with(z) == std::vector<std::string>{"a zipper 11 in across is wider than front, which finishes 10 in"});
    z = sound;
    z.on = "back";
    CHECK(with(z) == std::vector<std::string>{"a zipper is put on back, which is not in the project"});
    z = sound;
    z.centres.clear();
    CHECK(with(z) == std::vector<std::string>{"a zipper is put on front without a place"});
    z = sound;
    z.centres = {at<finished_edge>("1/4"_in),
                 at<finished_edge>("5 3/4"_in)}; // stitched 1/4 in to either side: just on it
    CHECK(with(z).empty());
    z.centres = {at<finished_edge>("1/8"_in), at<finished_edge>("5 7/8"_in)};
    CHECK(with(z).size() == 2);
    z.centres = {at<finished_edge>(2_in), at<finished_edge>("2 1/2"_in)};
    CHECK(with(z).empty());
    z.centres = {at<finished_edge>(2_in), at<finished_edge>("2 3/8"_in)};
    CHECK(with(z) == std::vector<std::string>{
                         "two zippers on front are only 3/8 in apart, less than the 1/2 in that each is stitched"});
}

TEST_CASE("tape that ends on the very seam can be sewn, but is said") {
    project<inch> p("pocket", finished_size(10_in, 6_in));
    p.add(flat("front", 10_in, 6_in));
    auto z = cut_from_a_roll("front", {at<finished_edge>(2_in)});
    z.opening.beyond = z.opening.margin;
    p.add(z);
    CHECK(sheet_of(p).warnings ==
          std::vector<std::string>{"the tape of a zipper on front ends on the very seam: keep a little away"});
}

TEST_CASE("a zipper may run down a piece as well as across it") {
    project<inch> p("pocket", finished_size(6_in, 10_in));
    p.add({"front", "canvas", panel(p.finished(), all_round(seam(1_in)))});
    auto z = cut_from_a_roll("front", {at<finished_edge>(3_in)});
    z.from = edge::left;
    p.add(z);
    const auto s = sheet_of(p);
    CHECK(places(s.pieces[0], line_kind::stitching, "zipper") == std::vector<length<inch>>{"3 3/4"_in, "4 1/4"_in});
    CHECK(s.pieces[0].lines.back().begins == "1 1/2"_in);
    CHECK(s.pieces[0].lines.back().ends == "10 1/2"_in);
}

TEST_CASE("marks of a longer piece meet those of a shorter one, and both are marked") {
    // Common practice: 50 in marked every 10 in meets 35 in marked every 7 in; fullness 10/7, 3 in over in each span.
    project<inch> p("hanging", finished_size(13_in, 35_in));
    p.add(flat("film", 13_in, 50_in));
    p.add(flat("backing", 13_in, 35_in));
    p.add(meeting<inch>{"film", "backing", edge::top, 50_in, 35_in, 5});
    const auto s = sheet_of(p);
    CHECK(places(s.pieces[0], line_kind::mark, "meets backing") ==
          std::vector<length<inch>>{10_in, 20_in, 30_in, 40_in});
    CHECK(places(s.pieces[1], line_kind::mark, "meets film") == std::vector<length<inch>>{7_in, 14_in, 21_in, 28_in});
    REQUIRE(s.meetings.size() == 1);
    CHECK(s.meetings[0].marks.fullness() == fraction(10, 7));
    CHECK(s.meetings[0].marks.surplus(4) == 3_in);

    p.add(meeting<inch>{"film", "backing", edge::left, 13_in, "13 1/8"_in, 2});
    CHECK_THROWS_AS(sheet_of(p), marks_error);
}

TEST_CASE("a meeting off a piece, or on none, is refused") {
    project<inch> p("hanging", finished_size(13_in, 35_in));
    p.add(flat("film", 13_in, 49_in));
    p.add(flat("backing", 13_in, 35_in));
    p.add(meeting<inch>{"film", "backing", edge::top, 50_in, 35_in, 5});
    p.add(meeting<inch>{"film", "back", edge::left, 13_in, 13_in, 2});
    CHECK(reasons(p) == std::vector<std::string>{"the spans marked on film need 50 in, but it finishes 49 in",
                                                 "a meeting is put on back, which is not in the project"});
}

TEST_CASE("everything wrong is said at once") {
    auto p = bound_over(finished_size(10_in, 15_in));
    p.add(flat("outer", 1_in, 1_in));
    p.add(flat("pocket", 1_in, 1_in)).lies_inside(flat("nothing", 1_in, 1_in));
    CHECK(reasons(p) ==
          std::vector<std::string>{"two pieces are named outer",
                                   "inner is cut 10 x 15 in, but outer, round which it lies, finishes 10 x 16 in",
                                   "pocket is said to lie inside nothing, which is not in the project"});
    CHECK_THROWS_WITH_AS(sheet_of(project<inch>("mat", finished_size(1_in, 1_in))),
                         "mat cannot be made so: it has no pieces", sheet_error);
    CHECK_THROWS_WITH_AS(flat("mat", 1_in, 1_in).count(0), "at least one mat must be cut: it was 0", range_error);
}

TEST_CASE("film, zippers, ties and blades bring their cautions once each, after the project's own") {
    project<inch> p("mat", finished_size(10_in, 16_in));
    p.add(flat("mat", 10_in, 16_in));
    p.caution("Keep it dry.");
    CHECK(sheet_of(p).cautions.size() == 3);
    CHECK(sheet_of(p).cautions.front() == "Keep it dry.");
    p.add(flat("window", 5_in, 5_in)).of_film();
    p.add(flat("second window", 5_in, 5_in)).of_film();
    CHECK(sheet_of(p).cautions.size() == 4);
    p.add(cut_from_a_roll("mat", {at<finished_edge>(2_in)}));
    CHECK(sheet_of(p).cautions.size() == 5);
    const ribbon_tie<inch> tie{
        .across = 10_in, .from = 0, .to = 0, .loop = {}, .free_at_start = 8_in, .free_at_end = 8_in, .turned = {}};
    p.add(listed("tie", 2, tie)).add(listed("second tie", 1, tie));
    CHECK(sheet_of(p).cautions.size() == 6);
}

TEST_CASE("a piece sewn onto another is marked there, and must lie on it") {
    project<inch> p("wall tidy", finished_size(12_in, 9_in));
    const auto hem = all_round(single_turned_hem(1_in));
    p.add({"back", "canvas", panel(p.finished(), hem)});
    p.add({"pocket", "canvas", panel(finished_size(5_in, 4_in), hem)}).count(2);
    const auto put = [&](length<inch> x, length<inch> y) {
        p.add(placing<inch>{"pocket", "back", at<finished_edge>(x), at<finished_edge>(y)});
    };
    put(1_in, 2_in);
    put(6_in, 2_in); // edge on edge does not overlap
    const auto s = sheet_of(p);
    CHECK(s.warnings.empty());
    CHECK(places(s.pieces[0], line_kind::mark, "left edge of pocket") == std::vector<length<inch>>{2_in, 7_in});
    CHECK(places(s.pieces[0], line_kind::mark, "top edge of pocket") == std::vector<length<inch>>{3_in, 3_in});
    const auto& top = s.pieces[0].lines.back();
    CHECK(top.begins == 7_in); // 6 in from the finished edge, 1 in from the cut edge
    CHECK(top.ends == 12_in);

    put("6 1/2"_in, 5_in); // 4 in high, it just reaches the foot; it overlaps the second
    CHECK(sheet_of(p).warnings ==
          std::vector<std::string>{"pocket and pocket overlap on back", "pocket is placed 3 times, but 2 are cut"});
    put("7 1/8"_in, 0_in);
    CHECK(reasons(p) ==
          std::vector<std::string>{"pocket, which finishes 5 x 4 in, is placed 7 1/8 in from the left and 0 in from "
                                   "the top of back, and does not lie on it: that finishes 12 x 9 in"});
    p.add(placing<inch>{"pocket", "front", at<finished_edge>(1_in), at<finished_edge>(1_in)});
    CHECK(reasons(p).back() == "pocket is placed on front, but both must be in the project");
}

TEST_CASE("spans given one by one must fill what they are marked on") {
    project<inch> p("tool roll", finished_size(20_in, 9_in));
    p.add({"lining", "canvas", panel(p.finished(), all_round(seam("1/2"_in)))});
    p.add(span_list<inch>{"between tools", "lining", edge::left, {3_in, "4 1/2"_in, "12 1/2"_in}});
    CHECK(places(sheet_of(p).pieces[0], line_kind::mark, "between tools") ==
          std::vector<length<inch>>{"3 1/2"_in, 8_in});
    p.add(span_list<inch>{"across", "lining", edge::top, {4_in, 4_in}});
    p.add(span_list<inch>{"none", "lining", edge::top, {9_in, 0_in}});
    p.add(span_list<inch>{"lost", "cover", edge::top, {9_in}});
    CHECK(reasons(p) ==
          std::vector<std::string>{"the spans of \"across\" on lining add up to 8 in, but it finishes 9 in",
                                   "a span of \"none\" on lining must be more than zero: it was 0 in",
                                   "spans are marked on cover, which is not in the project"});
}

TEST_CASE("what does not reach is refused with what is missing") {
    project<inch> p("tool roll", finished_size(20_in, 9_in));
    p.add(flat("roll", 20_in, 9_in));
    p.add(must_reach<inch>{"the tie", 18_in, 18_in});
    CHECK(reasons(p).empty());
    p.add(must_reach<inch>{"the flap", 3_in, "3 1/4"_in});
    CHECK(reasons(p) == std::vector<std::string>{"the flap is 3 in, 1/4 in short of the 3 1/4 in that it must reach"});
}

TEST_CASE("thread is counted by the rows that a stitch sews, a seam of two pieces once") {
    // By hand: two pieces cut 11 x 6 in. Each has one seam of 6 in, shared, and a hem of 11 in. The stitches run 1/2 in over
    // at both ends of a row. Hems: 2 x 12 = 24 in. Seam: 2 x 7 / 2 = 7 in. At 5/2 (stitch 301; value from memory): 60 and 17 1/2 in.
    project<inch> p("banner", finished_size(10_in, 5_in));
    edges<inch> finishes;
    finishes.left = seam(1_in);
    finishes.bottom = single_turned_hem(1_in);
    p.add({"half", "canvas", panel(p.finished(), finishes)}).count(2);
    const auto thread = [&](stitched_rows rows, fraction waste) {
        auto q = p;
        q.add(sewing<inch>{rows, stitch(301), "1/2"_in, waste, 50_in});
        return sheet_of(q).notions.back().details();
    };
    CHECK(thread(stitched_rows::hemming, 0)[0].amount.value() == 24_in);
    CHECK(thread(stitched_rows::hemming, 0)[1].amount.value() == 60_in);
    CHECK(thread(stitched_rows::joining, 0)[1].amount.value() == "17 1/2"_in);
    CHECK(thread(stitched_rows::all, {1, 10})[1].amount.value() == "85 1/4"_in); // 77 1/2 and a tenth
    CHECK(thread(stitched_rows::all, {1, 10})[2].count == 2);
    project<inch> bare("mat", finished_size(1_in, 1_in));
    bare.add(flat("mat", 1_in, 1_in));
    bare.add(sewing<inch>{stitched_rows::all, stitch(301), {}, 0, 50_in});
    CHECK(sheet_of(bare).warnings == std::vector<std::string>{"no stitching is sewn with stitch 301"});
}

TEST_CASE("what goes onto a piece is finished before that piece's own edges are turned") { // common practice
    project<inch> p("tool roll", finished_size(20_in, 9_in));
    auto& outer = p.add({"outer", "canvas", panel(p.finished(), all_round(self_binding("1/2"_in)))});
    p.add(flat("lining", 20_in, 9_in)).lies_inside(outer);
    p.add({"pocket", "canvas", panel(finished_size(5_in, 4_in), all_round(single_turned_hem("1/2"_in)))}).count(2);
    p.add({"gusset", "canvas", panel(finished_size(5_in, 4_in), all_round(seam("1/2"_in)))});
    p.add(placing<inch>{"pocket", "lining", at<finished_edge>(1_in), at<finished_edge>(1_in)});
    p.add(placing<inch>{"pocket", "lining", at<finished_edge>(8_in), at<finished_edge>(1_in)});
    p.add(notion<inch>("bow")).add(notion<inch>("cord").before_seams());
    CHECK(order_of_making(p) ==
          std::vector<std::string>{"Cut every piece, and mark it while it is flat: folds, stitching, marks.",
                                   "Turn and stitch pocket: top, bottom, left and right.", "Add the cord.",
                                   "Sew pocket onto lining.",
                                   "Lay lining on outer. Turn and stitch outer: top, bottom, left and right.",
                                   "Sew the remaining seams of gusset.", "Add the bow."});
    CHECK(sheet_of(p).order == order_of_making(p));
}

TEST_CASE("a film whose ends come to the finished edges goes on after these are turned") {
    project<inch> p("hanging", finished_size(13_in, 35_in));
    p.add(flat("film", 13_in, 50_in));
    p.add({"backing", "canvas", panel(p.finished(), all_round(single_turned_hem(1_in)))});
    auto part = p;
    p.add(meeting<inch>{"film", "backing", edge::top, 50_in, 35_in, 5});
    CHECK(order_of_making(p)[1] == "Turn and stitch backing: left, right, top and bottom.");
    CHECK(order_of_making(p)[2] == "Sew film to backing, mark to mark.");
    CHECK(order_of_making(p).size() == 3);
    part.add(meeting<inch>{"film", "backing", edge::top, 42_in, 28_in, 4});
    CHECK(order_of_making(part)[1] == "Sew film to backing, mark to mark.");
}

TEST_CASE("what notions compute is listed with its working and its cautions") {
    // A ribbon over 12 in from its quarter: 9 in run, a loop of 2 x 1 1/2 in, 3 in beyond, 1/4 in turned at both ends.
    const auto tie = listed("tie", 2,
                            ribbon_tie<inch>{.across = 12_in,
                                             .from = {1, 4},
                                             .to = 1,
                                             .loop = "1 1/2"_in,
                                             .free_at_start = {},
                                             .free_at_end = 3_in,
                                             .turned = "1/4"_in});
    CHECK(tie.details()[0].count == 2);
    CHECK(tie.details()[1].amount.value() == "15 1/2"_in);
    CHECK(tie.details()[2].amount.value() == 3_in);
    CHECK(tie.details()[3].amount.value() == 12_in);
    CHECK(tie.details()[4].amount.value() == 31_in);
    CHECK(tie.cautions().size() == 1);
    const auto pleats = listed("flounce", pleats_near(pleat::knife, 30_in, {.width = 3_in, .depth = 1_in}));
    CHECK(pleats.details()[0].count == 10);
    CHECK(pleats.details()[3].amount.value() == 50_in); // 30 and 10 x 2 x 1
    CHECK_THROWS_AS(notion<inch>("hooks").number("hooks", 0), range_error);
}

TEST_CASE("the metric edition is worked out in its own unit") {
    project<centimetre> p("mat", finished_size(24_cm, 40_cm));
    p.add({"outer", "canvas", panel(p.finished(), all_round(self_binding(1.2_cm)))});
    CHECK(sheet_of(p).pieces[0].cut == cut_size(28.8_cm, 44.8_cm)); // 4 x 1.2 = 4.8 cm more each way
}
