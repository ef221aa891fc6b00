// sheet/project.hpp and sheet/sheet.hpp: one call works a project out, refuses what would spoil cloth with every
// reason, and says what may not be meant.
#include "../vectors.hpp"
#include <turncloth.hpp>
#include <turncloth/making/work_words.hpp>

#include <doctest/doctest.h>

#include <cstdint>
#include <limits>
#include <optional>
#include <string>
#include <vector>

using namespace turncloth;

namespace {

piece<inch> flat(const std::string& name, length<inch> width, length<inch> height) {
    return {name, "canvas", panel(finished_size(width, height))};
}

/// The reasons for which a project is refused; none where it is not.
std::vector<sheet_reason> all_reasons(const project<inch>& p) {
    try {
        static_cast<void>(sheet_of(p));
        return {};
    } catch (const sheet_error& refused) {
        return refused.reasons();
    }
}

/// Their sentences.
std::vector<std::string> reasons(const project<inch>& p) {
    std::vector<std::string> all;
    for (const sheet_reason& r : all_reasons(p))
        all.push_back(r.sentence);
    return all;
}

/// Its steps in sentences.
std::vector<std::string> said_in(const sheet<inch>& s) {
    std::vector<std::string> all;
    for (const work_group<inch>& g : s.steps.groups)
        all.push_back(sentence_of(s.steps, g));
    return all;
}

bool is(const std::optional<amount>& found, std::int64_t numerator, std::int64_t denominator = 1) {
    return found && found->numerator == numerator && found->denominator == denominator && found->unit == "in";
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
    z.opening.margin = 5_in; // both its lines and its tape cannot be worked out, for one reason
    CHECK(with(z) ==
          std::vector<std::string>{"the zipper on front: margins of 5 in leave no opening in a width of 10 in"});
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

TEST_CASE("tape that ends exactly on the seam line can be sewn, but is said") {
    project<inch> p("pocket", finished_size(10_in, 6_in));
    p.add(flat("front", 10_in, 6_in));
    auto z = cut_from_a_roll("front", {at<finished_edge>(2_in)});
    z.opening.beyond = z.opening.margin;
    p.add(z);
    CHECK(sheet_of(p).warnings ==
          std::vector<std::string>{
              "the tape of a zipper on front ends exactly on the seam line: keep a little away from it"});
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
    CHECK(places(s.pieces[0], line_kind::mark, "where the backing meets it") ==
          std::vector<length<inch>>{10_in, 20_in, 30_in, 40_in});
    CHECK(places(s.pieces[1], line_kind::mark, "where the film meets it") ==
          std::vector<length<inch>>{7_in, 14_in, 21_in, 28_in});
    REQUIRE(s.meetings.size() == 1);
    CHECK(s.meetings[0].marks.fullness() == fraction(10, 7));
    CHECK(s.meetings[0].marks.surplus(4) == 3_in);

    p.add(meeting<inch>{"film", "backing", edge::left, 13_in, "13 1/8"_in, 2});
    // What the marks refuse is a reason like any other.
    REQUIRE(reasons(p).size() == 1);
    CHECK(reasons(p)[0].find("the meeting of film and backing: ") == 0);
    CHECK(all_reasons(p)[0].piece == "film");
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
                         "mat cannot be made as designed: it has no pieces", sheet_error);
    CHECK_THROWS_WITH_AS(flat("mat", 1_in, 1_in).count(0),
                         "the number of mat to cut must be from 1 to 100000: it was 0", range_error);
}

TEST_CASE("what one number asks for without end is refused at once, and as much as a sheet tells is made") {
    constexpr std::int64_t endless = 1'000'000'000;
    auto mat = flat("mat", 1000_in, 20_in);
    CHECK_THROWS_WITH_AS(mat.mark("rows", edge::left, divided<finished_edge>(1000_in, endless)),
                         "the number of marks in a row on mat must be at most 10000: it was 999999999", range_error);
    CHECK(mat.marks().empty());
    CHECK_THROWS_AS(mat.pleated(edge::left, pleating<inch>(pleat::knife, 9_in, endless, "1/8"_in)), range_error);
    const eyelet_row<inch> very_many{
        spaced<finished_edge>(endless, 0_in, 9_in), at<finished_edge>(1_in), {"1/4"_in, "1/2"_in}};
    CHECK_THROWS_AS(mat.eyelets(very_many), range_error);
    CHECK_THROWS_AS(listed("eyelets", very_many), range_error);
    CHECK_THROWS_AS(mat.count(100'001), range_error);
    CHECK_THROWS_AS(mat.count(std::numeric_limits<std::int64_t>::max()), range_error);

    project<inch> p("bag", finished_size(1000_in, 20_in));
    p.add(mat.mark("rows", edge::left, divided<finished_edge>(1000_in, most_in_a_row)).count(most_cut_alike));
    p.add(flat("back", 1000_in, 20_in));
    p.add(meeting<inch>{"mat", "back", edge::left, 1000_in, 1000_in, most_in_a_row});
    CHECK(sheet_of(p).pieces[0].lines.size() == 2 * (most_in_a_row - 1));
    p.add(meeting<inch>{"mat", "back", edge::top, 20_in, 20_in, endless});
    p.add(flat("wadding", 1000_in, 20_in)).lies_inside(p.pieces()[1]).count(1001);
    p.add(flat("lining", 1000_in, 20_in)).lies_inside(p.pieces()[0]).count(most_cut_alike);
    CHECK(reasons(p) == std::vector<std::string>{
                            "at most 1000 of wadding lie inside back: there would be 1001 in one",
                            "the meeting of mat and back: the number of spans of a meeting must be at most 10000: "
                            "it was 1000000000"});
}

TEST_CASE("a sheet has a largest number of each thing that a project adds, refused by its name") {
    const auto with = [](const auto& add, int n) {
        project<inch> p("mat", finished_size(10_in, 16_in));
        p.add(flat("mat", 10_in, 16_in));
        for (int i = 0; i < n; ++i)
            add(p, "no. " + std::to_string(i));
        return p;
    };
    const auto as_many = [](const std::string& what, std::int64_t most, std::int64_t n) {
        return std::vector<std::string>{"it has at most " + std::to_string(most) + " " + what + ": there are " +
                                        std::to_string(n)};
    };
    const auto cut = [](auto& p, const std::string& name) { p.add(flat(name, 10_in, 16_in)); };
    CHECK(reasons(with(cut, 1000)) == as_many("different pieces", 1000, 1001));
    CHECK(sheet_of(with(cut, 99)).pieces.size() == 100);
    const auto step = [](auto& p, const std::string& name) { p.prepare(name); };
    CHECK(reasons(with(step, 1001)) == as_many("preparations", 1000, 1001));
    const auto told = [](auto& p, const std::string& name) { p.caution(name, caution::work::cutting); };
    CHECK(reasons(with(told, 1001)) == as_many("cautions", 1000, 1001));
    const auto placed = [](auto& p, const std::string&) {
        p.add(placing<inch>{"mat", "mat", at<finished_edge>(0_in), at<finished_edge>(0_in)});
    };
    CHECK(reasons(with(placed, 1001)) == as_many("placings", 1000, 1001));
    const auto zipped = [](auto& p, const std::string&) {
        zipper<inch> z{"mat",
                       edge::top,
                       {},
                       {10_in, "3/4"_in, "1/2"_in},
                       "1/2"_in,
                       "1/4"_in,
                       zipper_supply<inch>::from_roll(180_in)};
        z.centres.assign(501, at<finished_edge>(1_in));
        p.add(z);
    };
    CHECK(reasons(with(zipped, 2)) == as_many("zippers", 1000, 1002));
    const auto met = [](auto& p, const std::string&) {
        p.add(meeting<inch>{"mat", "mat", edge::left, 10_in, 10_in, most_in_a_row});
    };
    CHECK(reasons(with(met, 11)) == as_many("marks on its pieces", 100'000, 110'000));
    try {
        sheet_of(with(step, 1001));
    } catch (const sheet_error& refused) {
        CHECK(refused.facts().kind == fault::too_large);
        CHECK(refused.facts().what == "preparations");
        CHECK(refused.facts().most->numerator == 1000);
    }
}

TEST_CASE("every caution that the work calls for is given once, in the order of the work") {
    using enum caution::work;
    const auto of = [](const project<inch>& p) {
        std::vector<caution::work> all;
        for (const sheet_caution& c : sheet_of(p).cautions)
            all.push_back(c.at);
        return all;
    };
    project<inch> p("mat", finished_size(10_in, 16_in));
    auto& mat = p.add(flat("mat", 10_in, 16_in));
    p.caution("Keep it dry.", using_it);
    CHECK(of(p) == std::vector{cutting, pinning, using_it});
    CHECK(sheet_of(p).cautions.back() == sheet_caution{using_it, "Keep it dry."});
    CHECK(to_text(sheet_of(p)).find("\n  - in use: Keep it dry.\n  Local codes") != std::string::npos);
    p.add(flat("window", 5_in, 5_in)).of_film();
    p.add(flat("second window", 5_in, 5_in)).of_film();
    CHECK(of(p) == std::vector{buying, cutting, pinning, pressing, stitching, using_it});
    p.add(cut_from_a_roll("mat", {at<finished_edge>(2_in)})); // needles, cut ends, small parts
    CHECK(of(p) == std::vector{buying, cutting, pinning, pressing, stitching, zippers, zippers, using_it, using_it});
    const ribbon_tie<inch> tie{
        .across = 10_in, .from = 0, .to = 0, .loop = {}, .free_at_start = 8_in, .free_at_end = 8_in, .turned = {}};
    p.add(listed("tie", 2, tie)).add(listed("second tie", 1, tie));
    CHECK(of(p).size() == 10);
    p.add(flat("lining", 10_in, 16_in)).lies_inside(mat); // many layers
    p.add({"flap", "waxed canvas", panel(finished_size(5_in, 5_in), all_round(single_turned_hem(1_in)))});
    CHECK(of(p).size() == 12);
    p.add({"strap", "canvas", panel(finished_size(5_in, 5_in), all_round(single_turned_hem(1_in)))}); // an iron
    CHECK(of(p).size() == 13);
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
    CHECK(reasons(p).back() == "pocket is to be sewn onto front, which is not in the project");
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

TEST_CASE("thread is counted by the rows that are sewn, a seam of two pieces once") {
    // By hand: two pieces cut 11 x 6 in. Each has one seam of 6 in, shared, and a hem of 11 in. The stitches run 1/2 in over
    // at both ends of a row. Hems: 2 x 12 = 24 in. Seam: 2 x 7 / 2 = 7 in. 31 in at 5/2 (stitch 301; value from memory).
    project<inch> p("banner", finished_size(10_in, 5_in));
    edges<inch> finishes;
    finishes.left = seam(1_in);
    finishes.bottom = single_turned_hem(1_in);
    p.add({"half", "canvas", panel(p.finished(), finishes)}).count(2);
    const auto thread = [&](fraction waste) {
        auto q = p;
        q.add(sewing<inch>{stitch(301), "1/2"_in, waste, 50_in});
        return sheet_of(q).notions.back().details();
    };
    CHECK(thread(0)[0].amount.value() == 31_in);
    CHECK(thread(0)[1].amount.value() == "77 1/2"_in);
    CHECK(thread({1, 10})[1].amount.value() == "85 1/4"_in); // and a tenth
    CHECK(thread({1, 10})[2].count == 2);
    project<inch> bare("mat", finished_size(1_in, 1_in));
    bare.add(flat("mat", 1_in, 1_in));
    bare.add(sewing<inch>{stitch(301), {}, 0, 50_in});
    CHECK(sheet_of(bare).warnings == std::vector<std::string>{"no stitching is sewn with stitch 301"});
    bare.add(sewing<inch>{stitch(401), {}, 0, 50_in});
    CHECK(reasons(bare) == std::vector<std::string>{"thread is asked for twice, and every row is sewn once"});
}

TEST_CASE("a figure of thread says which rows it leaves out, where a project does not state them") {
    // The bag's sides of 6 in are one seam of two halves; the flap, 5 in along its joined top, meets nothing as long.
    project<inch> p("bag", finished_size(8_in, 6_in));
    edges<inch> sides;
    sides.left = sides.right = seam("1/2"_in);
    p.add({"half", "canvas", panel(p.finished(), sides)}).count(2);
    p.add(sewing<inch>{stitch(301), {}, 0, 500_in});
    CHECK(sheet_of(p).warnings.empty());
    edges<inch> joined;
    joined.top = seam("1/2"_in);
    p.add({"flap", "canvas", panel(finished_size(5_in, 3_in), joined)});
    p.add({"pocket", "canvas", panel(finished_size(4_in, 3_in), all_round(single_turned_hem("1/2"_in)))});
    p.add(placing<inch>{"pocket", "half", at<finished_edge>(1_in), at<finished_edge>(1_in)}).add(notion<inch>("cord"));
    CHECK(
        sheet_of(p).warnings ==
        std::vector<std::string>{
            "the thread holds the rows of the pieces' own finishes, zippers and seams, and leaves out what is sewn in "
            "these steps, of which no row is stated: Sew the pocket onto each half. Add the cord.",
            "the thread holds half a row for the top edge of flap, which joins no other edge of its length"});
}

// By hand: a pocket that finishes 4 x 3 in, hemmed all round, sewn on by two rows of 3 in and one of 4: 10 in, and with 1/2 in
// over at both ends of each 13 in. Two halves are cut, so that two pockets come to lie so where two are cut. Its four hems are
// 5 + 5 in before the others are turned and 4 + 4 in after, or the contrary: that is what is there without its placing. One
// whose top is to be joined and lies raw is sewn on by rows longer by its allowance.
TEST_CASE("a placing whose rows are named is in the thread and in its step, as often as its piece is placed") {
    const auto bag = [](std::int64_t pockets, bool sewn, bool raw_top) {
        project<inch> p("bag", finished_size(8_in, 6_in));
        p.add(flat("half", 8_in, 6_in)).count(2);
        edges<inch> hems = all_round(single_turned_hem("1/2"_in));
        if (raw_top)
            hems.top = seam("1/4"_in);
        p.add({"pocket", "canvas", panel(finished_size(4_in, 3_in), hems)}).count(pockets);
        placing<inch> on{"pocket", "half", at<finished_edge>(1_in), at<finished_edge>(1_in)};
        if (sewn) {
            on.sewn = {edge::left, edge::right, edge::bottom};
            on.inset = "1/8"_in;
        }
        return p.add(on).add(sewing<inch>{stitch(301), "1/2"_in, 0, 500_in});
    };
    const auto rows = [](const project<inch>& p) { return sheet_of(p).notions.back().details()[0].amount.value(); };
    CHECK(rows(bag(1, true, false)) - rows(bag(1, false, false)) == 13_in);
    CHECK(rows(bag(2, true, false)) - rows(bag(2, false, false)) == 26_in);
    CHECK(rows(bag(3, true, false)) - rows(bag(3, false, false)) == 26_in); // one is left over
    CHECK(rows(bag(1, true, true)) - rows(bag(1, false, true)) == "13 1/2"_in);
    CHECK(sheet_of(bag(1, true, false)).warnings.empty());
    CHECK(sheet_of(bag(1, false, false)).warnings.size() == 1);
    CHECK(said_in(sheet_of(bag(1, true, false)))[2] ==
          "Sew the pocket onto each half: a row 1/8 in inside the left, right and bottom edges of the pocket.");
}

TEST_CASE("rows of a placing that cannot be sewn are refused, each with its edge") {
    project<inch> p("bag", finished_size(8_in, 6_in));
    p.add(flat("half", 8_in, 6_in));
    p.add(flat("pocket", 4_in, 3_in)).count(3);
    placing<inch> on{"pocket", "half", at<finished_edge>(1_in), at<finished_edge>(1_in)};
    on.sewn = {edge::left, edge::top, edge::left};
    on.inset = 3_in; // which is less than the pocket is wide
    p.add(on);
    on.sewn = {edge::bottom};
    on.inset = 0_in;
    p.add(on);
    CHECK(reasons(p) ==
          std::vector<std::string>{
              "a row that sews pocket onto half runs 3 in inside its top edge, and it finishes 3 in that way",
              "a row that sews pocket onto half runs along its left edge twice",
              "a row that sews pocket onto half runs 0 in inside its bottom edge, and it finishes 3 in that way"});
    const auto all = all_reasons(p);
    REQUIRE(all.size() == 3);
    CHECK(all[0].facts.kind == fault::too_large);
    CHECK(all[1].facts.kind == fault::repeated);
    CHECK(all[2].facts.kind == fault::too_small);
    CHECK(all[2].facts.where == "pocket");
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
    const auto steps = said_in(sheet_of(p));
    REQUIRE(steps.size() == 8);
    CHECK(steps[0] == "Cut every piece, and mark it while it is flat: folds, stitching and marks.");
    // 1/2 in is turned and stitched on its very edge.
    CHECK(steps[1] ==
          "With the wrong side of each pocket up, turn the left and right edges over by 1/2 in, and press. "
          "Stitch 1/2 in from each folded edge: rows of 5 in, through 2 layers. Turn the top and bottom edges "
          "over by 1/2 in, and press. Stitch 1/2 in from each folded edge: rows of 5 in, through 2 to 4 "
          "layers. Check each pocket: 5 x 4 in.");
    CHECK(steps[2] == "Sew each pocket onto the lining.");
    CHECK(steps[3] ==
          "Lay the lining, right side up, on the wrong side of the outer, 1 in inside its edges all round.");
    CHECK(steps[4].rfind("With the wrong side of the outer up, turn all four edges over by 1/2 in, and press. Turn the "
                         "folded left and right edges over by 1/2 in, and press. ",
                         0) == 0);
    CHECK(steps[5] == "Add the cord.");
    CHECK(steps[6] == "Sew the remaining seams of the gusset.");
    CHECK(steps[7] == "Add the bow.");
}

TEST_CASE("a film whose ends come to the finished edges goes on after these are turned") {
    project<inch> p("hanging", finished_size(13_in, 35_in));
    p.add(flat("film", 13_in, 50_in));
    p.add({"backing", "canvas", panel(p.finished(), all_round(single_turned_hem(1_in)))});
    auto part = p;
    p.add(meeting<inch>{"film", "backing", edge::top, 50_in, 35_in, 5});
    const auto steps = said_in(sheet_of(p));
    CHECK(steps[1].rfind("With the wrong side of the backing up, turn the left and right edges over by 1 in", 0) == 0);
    CHECK(steps[2] == "Sew the film to the backing, mark to mark.");
    CHECK(steps.size() == 3);
    part.add(meeting<inch>{"film", "backing", edge::top, 42_in, 28_in, 4});
    CHECK(said_in(sheet_of(part))[1] == "Sew the film to the backing, mark to mark.");
}

TEST_CASE("a bound piece finishes as asked when its turn of cloth is given to the layers") {
    // By hand: 1/2 + 1/2 in and 1/8 in for the turn, which the second fold shares: it is made at 1 1/16 in. Cut 22 1/4 in
    // wide; the felt lies 1 1/8 in inside that; bound, 20 in. Of the 9/16 in turned last 1/16 goes round the felt, and the row
    // is 1/8 in within the 1/2 that lies flat.
    project<inch> p("mat", finished_size(20_in, 12_in));
    auto& outer =
        p.add({"outer", "canvas", panel(p.finished(), all_round(self_binding("1/2"_in, "1/8"_in, "1/8"_in)))});
    p.add(flat("felt", 20_in, 12_in)).lies_inside(outer);
    const auto s = sheet_of(p);
    REQUIRE(s.steps.groups.size() == 3);
    CHECK(s.steps.groups[1].steps[0].places[0].across.at == std::vector<length<inch>>{"1 1/8"_in});
    const auto& bound = s.steps.groups[2];
    CHECK(bound.check->width == 20_in);
    CHECK(bound.check->height == 12_in);
    REQUIRE(bound.steps.size() == 5);
    CHECK(bound.steps[1].places[0].turned == "9/16"_in);
    CHECK(bound.steps[1].places[0].goes_round == "1/16"_in);
    CHECK(bound.steps[2].places[0].across.at == std::vector<length<inch>>{"3/8"_in});
    CHECK(bound.steps[4].places[0].sewn == 20_in);
    CHECK(bound.steps[4].places[0].least == 4); // the outer, its binding folded over twice, and the felt
}

TEST_CASE("finishes whose lengths have no common denominator are turned by name") {
    project<inch> p("mat", finished_size(length_of<inch>({30011, 1009}), length_of<inch>({20011, 1013})));
    const auto hem = [](fraction depth) { return single_turned_hem(length_of<inch>(depth), length_of<inch>({1, 8})); };
    p.add({"mat", "linen",
           panel(p.finished(), {hem({1009, 1013}), hem({2003, 1999}), hem({1543, 1531}), hem({877, 883})})});
    CHECK(said_in(sheet_of(p))[1] == "Turn and stitch all four edges of the mat.");
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

TEST_CASE("what a notion refuses is one reason among all, and each reason can be acted on without reading it") {
    // One piece has a zipper whose tape is caught, one a zipper that is not sold so long, one a mark off it.
    project<inch> p("pockets", finished_size(10_in, 6_in));
    p.add(flat("front", 10_in, 6_in)).mark("middle", edge::left, at<cut_edge>("10 1/4"_in));
    p.add(flat("back", 10_in, 6_in));
    auto caught = cut_from_a_roll("front", {at<finished_edge>(2_in)});
    caught.opening.beyond = "3/4"_in;
    auto long_ = cut_from_a_roll("back", {at<finished_edge>(2_in)});
    long_.supply = zipper_supply<inch>::made_up({7_in}, "1/2"_in, "1/2"_in);
    p.add(caught).add(long_);
    p.add(sewing<inch>{stitch(301), {}, 0, {}}); // a spool of nothing
    const auto all = all_reasons(p);
    REQUIRE(all.size() == 4);
    CHECK(all[0].piece == "front");
    CHECK(all[0].measured_from == edge::left);
    CHECK(all[0].facts.kind == fault::too_large);
    CHECK(is(all[0].facts.given, 41, 4));
    CHECK(is(all[0].facts.most, 10));
    CHECK(all[1].piece == "front");
    CHECK(all[1].facts.kind == fault::no_room);
    CHECK(is(all[1].facts.given, 3, 4));
    CHECK(is(all[1].facts.most, 1, 2));
    CHECK(all[2].piece == "back");
    CHECK(all[2].facts.where == "back");
    CHECK(all[2].sentence.find("the zipper on back: ") == 0);
    CHECK(all[3].piece.empty());
    CHECK(all[3].sentence.find("thread for stitch 301: ") == 0);
    try {
        static_cast<void>(sheet_of(p));
    } catch (const error& refused) { // as a program that knows no sheets sees it
        CHECK(refused.facts().kind == fault::too_large);
    }
}

TEST_CASE("a zipper without a supply, and layers that disagree, are told apart by their facts") {
    auto p = bound_over(finished_size(10_in, 15_in));
    auto z = cut_from_a_roll("outer", {at<finished_edge>(2_in)});
    z.supply = {};
    p.add(z);
    const auto all = all_reasons(p);
    REQUIRE(all.size() == 2);
    CHECK(all[0].facts.kind == fault::disagree);
    CHECK(is(all[0].facts.given, 15));
    CHECK(is(all[0].facts.most, 16));
    CHECK(all[1].facts.kind == fault::missing);
    CHECK(all[1].facts.what == "a supply of zippers");
    CHECK(all[1].piece == "outer");
}

TEST_CASE("a piece lies inside neither itself nor what lies inside it") {
    project<inch> p("mat", finished_size(10_in, 6_in));
    auto& self = p.add(flat("self", 10_in, 6_in));
    self.lies_inside(self);
    auto &a = p.add(flat("a", 10_in, 6_in)), &b = p.add(flat("b", 10_in, 6_in)), &c = p.add(flat("c", 10_in, 6_in));
    a.lies_inside(b);
    b.lies_inside(c);
    CHECK(reasons(p) == std::vector<std::string>{"self is said to lie inside itself"});
    c.lies_inside(a);
    CHECK(reasons(p) == std::vector<std::string>{"self is said to lie inside itself",
                                                 "a is said to lie inside b, which itself lies inside it",
                                                 "b is said to lie inside c, which itself lies inside it",
                                                 "c is said to lie inside a, which itself lies inside it"});
}

TEST_CASE(
    "names: none is missing, of several lines, or quoted without end; what could be misread is in quotation marks") {
    project<inch> p("mat", finished_size(10_in, 6_in));
    p.add(flat("", 1_in, 1_in));
    p.add(flat("two\nlines", 1_in, 1_in));
    p.add(flat("front, back", 1_in, 1_in));
    p.add(flat("front, back", 1_in, 1_in));
    p.add(flat("top", 1_in, 1_in));
    p.add(flat("top", 1_in, 1_in));
    CHECK(reasons(p) == std::vector<std::string>{"a piece has no name",
                                                 "the name of a piece is one line of plain text: \"two lines\" is not",
                                                 "two pieces are named \"front, back\"",
                                                 "two pieces are named \"top\""});
    const std::string endless(10'000'000, 'x');
    project<inch> q(endless, finished_size(10_in, 6_in));
    q.add(flat(endless.c_str(), 1_in, 1_in)).mark(endless, edge::top, at<cut_edge>(2_in));
    try {
        static_cast<void>(sheet_of(q));
        FAIL_CHECK("the mark is off its piece");
    } catch (const sheet_error& refused) {
        CHECK(std::string(refused.what()).size() < 500);
    }
    CHECK(detail::excerpt("a\xC3\xA9" + std::string(57, 'b') + "\xC3\xA9z") ==
          "a\xC3\xA9" + std::string(57, 'b') + "...");
}

TEST_CASE("a mark may lie at an edge only, and film is marked in its allowances alone") {
    project<inch> p("pocket", finished_size(24_in, 5_in));
    const auto turned = single_turned_hem("1/2"_in);
    p.add({"film", "clear film", panel(finished_size(30_in, 5_in), {turned, turned, seam("3/8"_in), turned})})
        .of_film();
    auto& strip = p.add(flat("strip", 24_in, 5_in));
    strip.mark("middle", edge::left, at<cut_edge>(12_in), {{edge::bottom, 1_in}});
    p.add(meeting<inch>{"film", "strip", edge::left, 30_in, 24_in, 2});
    const auto s = sheet_of(p);
    const auto& on_film = s.pieces[0].lines.back();
    REQUIRE(on_film.only.size() == 2);
    CHECK(on_film.only[0].at == edge::top);
    CHECK(on_film.only[0].size == "1/2"_in);
    CHECK(on_film.only[1].at == edge::bottom);
    CHECK(on_film.only[1].size == "3/8"_in);
    CHECK(s.pieces[1].lines.back().only.empty()); // cloth takes a chalk line right across
    const std::string text = to_text(s, inch_ruler(16));
    CHECK(text.find("left edge, mark where the strip meets it: 15 1/2 in, marked only along 1/2 in at the top edge and "
                    "along 3/8 in at "
                    "the bottom edge\n") != std::string::npos);
    CHECK(text.find("left edge, mark middle: 12 in, marked only along 1 in at the bottom edge\n") != std::string::npos);

    strip.mark("side", edge::left, at<cut_edge>(12_in), {{edge::left, 1_in}});
    strip.mark("long", edge::left, at<cut_edge>(12_in), {{edge::top, "5 1/8"_in}});
    const auto all = all_reasons(p);
    REQUIRE(all.size() == 2);
    CHECK(all[0].facts.kind == fault::unsuitable);
    CHECK(all[1].facts.kind == fault::too_large);
    CHECK(is(all[1].facts.given, 41, 8));
    CHECK(is(all[1].facts.most, 5));
    CHECK(all[1].measured_from == edge::top);
}

TEST_CASE("a pleated piece has every crease and placement line, and finishes smaller by what its pleats take up") {
    // Box pleats by hand: each takes 4 x 1 in and shows 4 in, so its cloth is 8 in: back at 1, fold at 2, fold at 6, back
    // at 7, brought to 0 and 8. Three of them, with 1/2 in seams at both ends: 12 + 12 + 2 x 1/2 = 25 in cut.
    project<inch> p("cover", finished_size(12_in, 6_in));
    edges<inch> ends;
    ends.left = ends.right = seam("1/2"_in);
    p.add({"flounce", "canvas", panel(finished_size(24_in, 6_in), ends)})
        .pleated(edge::left, pleats_near(pleat::box, 12_in, {.width = 4_in, .depth = 1_in}));
    const auto s = sheet_of(p);
    CHECK(s.pieces[0].cut == cut_size(25_in, 6_in));
    CHECK(s.pieces[0].finished == finished_size(12_in, 6_in));
    CHECK(places(s.pieces[0], line_kind::fold, "front of the pleat") ==
          std::vector<length<inch>>{"2 1/2"_in, "6 1/2"_in, "10 1/2"_in, "14 1/2"_in, "18 1/2"_in, "22 1/2"_in});
    CHECK(places(s.pieces[0], line_kind::fold, "back of the pleat") ==
          std::vector<length<inch>>{"1 1/2"_in, "7 1/2"_in, "9 1/2"_in, "15 1/2"_in, "17 1/2"_in, "23 1/2"_in});
    CHECK(places(s.pieces[0], line_kind::placement, "of the pleat") ==
          std::vector<length<inch>>{"1/2"_in, "8 1/2"_in, "8 1/2"_in, "16 1/2"_in, "16 1/2"_in, "24 1/2"_in});
    const auto text = to_text(s, inch_ruler(16));
    CHECK(text.find("finishes 12 x 6 in when it is pleated\n") != std::string::npos);
    CHECK(text.find("left edge, fold front of the pleat: 2 1/2 in, folded and brought to 1/2 in\n") !=
          std::string::npos);
    CHECK(said_in(s)[1] == "Lay the pleats of the flounce, fold to placement line, and tack them.");

    p.add(flat("short", "23 7/8"_in, 6_in))
        .pleated(edge::left, pleats_near(pleat::box, 12_in, {.width = 4_in, .depth = 1_in}));
    const auto all = all_reasons(p);
    REQUIRE(all.size() == 1);
    CHECK(all[0].facts.kind == fault::no_room);
    CHECK(is(all[0].facts.given, 24));
    CHECK(is(all[0].facts.most, 191, 8));
}

TEST_CASE("corners are cut out of a panel of a box, which then finishes as the box does") {
    // 16 + 2 + 2 x 1/2 by 10 + 2 + 2 x 1/2, a square of half the depth.
    project<inch> p("pad", finished_size(16_in, 10_in));
    const auto shape = panel<inch>::from_cut(cut_size(19_in, 13_in), all_round(seam("1/2"_in)));
    p.add({"panel", "canvas", shape}).count(2).corners_cut_out(1_in, "1/2"_in);
    const auto s = sheet_of(p);
    CHECK(s.pieces[0].corner == 1_in);
    CHECK(s.pieces[0].depth == 2_in);
    CHECK(s.pieces[0].finished == finished_size(16_in, 10_in));
    for (const auto& row : s.pieces[0].lines) { // the seams end where the corners are cut out
        CHECK(row.begins == 1_in);
        CHECK(row.ends == (row.parallel_to == edge::top || row.parallel_to == edge::bottom ? 18_in : 12_in));
    }
    CHECK(to_text(s, inch_ruler(16))
              .find("cut a square of 1 in out of each corner; two make a box of 16 x 10 in, 2 in "
                    "deep\n") != std::string::npos);
    p.add({"open", "canvas", panel(finished_size(16_in, 10_in))}).corners_cut_out(1_in, "1/2"_in);
    CHECK(reasons(p) ==
          std::vector<std::string>{"the corners of open cannot be cut out: all four edges need one seam"});
}

TEST_CASE("eyelets are listed centre by centre, each rounded from its own place: a first and a step would drift") {
    // Rims of 3/4 in, 1 in from the edges of 200 in: the outer centres are 197 1/4 in apart. At most 8 in from one to the
    // next takes 25 steps of 7.89 in, to the sixteenth 7 7/8; 25 of those end 3/8 in short of 198 5/8 in.
    project<inch> p("wind break", finished_size(200_in, 30_in));
    const auto hem = double_turned_hem("3/8"_in, "3/4"_in, "1/8"_in);
    auto& sheet_ =
        p.add({"sheet", "canvas", panel(p.finished(), {heading("2 1/2"_in, "1/2"_in, "1/8"_in), hem, hem, hem})});
    const auto row = eyelets(sheet_.shape(), 26, {"3/8"_in, "3/4"_in}, {.margin = 1_in, .clear = "1/4"_in});
    sheet_.eyelets(row);
    p.add(listed("eyelets", row));
    const auto s = sheet_of(p);
    REQUIRE(s.pieces[0].eyelets.size() == 1);
    REQUIRE(s.pieces[0].eyelets[0].from_left.size() == 26);
    CHECK(s.pieces[0].eyelets[0].from_left.back() == "199 3/4"_in); // 1 1/8 in further from the cut edge
    const auto text = to_text(s, inch_ruler(16));
    CHECK(text.find("centres, from the finished left edge: 1 3/8 in, 9 1/4 in, 17 1/8 in, ") != std::string::npos);
    CHECK(text.find(" 198 5/8 in\n") != std::string::npos);
    CHECK(text.find(
              "eyelets, holes of 3/8 in with rims of 3/4 in: centres 4 3/16 in from the top edge, and from the left "
              "edge 2 1/2 in, ") != std::string::npos);
}

TEST_CASE("a name made while the program runs outlives its project on the sheet") {
    const auto made = [] {
        project<inch> p("Seed bags", {10_in, 8_in});
        const auto hem = finish<inch>(p.keep("hem of bag number " + std::to_string(1'000'000)))
                             .allows(1_in)
                             .folds_at(1_in)
                             .stitched_at("1 7/8"_in)
                             .reaches(1_in);
        p.add({"bag", "calico", panel(p.finished(), all_round(hem))});
        return sheet_of(p);
    }();
    CHECK(to_text(made.pieces[0].width) == "12 in = 10 in finished + 2 x 1 in hem of bag number 1000000");
}

TEST_CASE("a piece that has no size, or no room for its finishes, is named") {
    try {
        static_cast<void>(
            piece<inch>("base half", "canvas", finished_size(9_in, "1/2"_in), all_round(single_turned_hem("3/4"_in))));
        FAIL_CHECK("hems of 3/4 in do not go into 1/2 in");
    } catch (const finish_error& refused) {
        CHECK(std::string(refused.what()).find("base half: ") == 0);
        CHECK(refused.facts().where == "base half");
    }
    try {
        static_cast<void>(piece<inch>("film strip", "film", {9_in, -"1/4"_in}, all_round(single_turned_hem(1_in))));
        FAIL_CHECK("nothing is -1/4 in high");
    } catch (const size_error& refused) {
        CHECK(std::string(refused.what()) ==
              "film strip: a finished size must be more than zero each way: it was 9 in wide and -1/4 in high");
        CHECK(refused.facts().where == "film strip");
        CHECK(is(refused.facts().given, -1, 4));
    }
    CHECK_THROWS_WITH_AS(inch_ruler(0), "an inch on a ruler has at least 1 part: it was 0", range_error);
}
