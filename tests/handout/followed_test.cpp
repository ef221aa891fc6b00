// What a maker reads of the project files, where following it with paper, scissors and pins had to stop before: each stretch that
// stays open names its edge, no figure follows a number of a piece, no line has two colons, and long lists stand line by line.
#include <turncloth.hpp>
#include <turncloth/design/json.hpp>
#include <turncloth/design/project_of.hpp>
#include <turncloth/handout/handout.hpp>
#include <turncloth/making/work_plan.hpp>
#include <turncloth/making/work_words.hpp>
#include <turncloth/page/html.hpp>
#include <turncloth/panel/typed_size.hpp>
#include <turncloth/sheet/on_ruler.hpp>

#include <doctest/doctest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <regex>
#include <string>
#include <vector>

using namespace turncloth;
using std::string;

namespace {

project_design read_file(const std::filesystem::path& path) {
    std::ifstream in(path, std::ios::binary);
    return read_design(string(std::istreambuf_iterator<char>(in), {}));
}

sheet<inch> sheet_at(const project_design& d, const finished_size<inch>& size) {
    return sheet_on_ruler(size, length_of<inch>({1, 16}),
                          [&](const auto& s, const auto& by) { return project_of(d, s, by); });
}
sheet<inch> sheet_in(const string& name, length<inch> width, length<inch> height) {
    return sheet_at(read_file("examples/designs/" + name + ".json"), finished_size<inch>(width, height));
}

std::vector<string> steps_in(const sheet<inch>& s) {
    std::vector<string> all;
    for (const auto& g : s.steps.groups)
        for (string& step : sentences_of(s.steps, g))
            all.push_back(std::move(step));
    return all;
}
const string* step_with(const std::vector<string>& all, const string& part) {
    const auto found =
        std::find_if(all.begin(), all.end(), [&](const string& s) { return s.find(part) != string::npos; });
    return found == all.end() ? nullptr : &*found;
}

/// The draught stopper with another mouth in the same seam.
making<inch> tube(bool second) {
    making<inch> d("tube");
    const cut_part one = d.cut({.name = "side", .width = 13_in, .height = 7_in, .count = 2}), other{one.index, 1};
    const auto line = [](cut_part on, edge from, length<inch> begins, length<inch> ends) {
        return chalk_line<inch>{.on = on, .from = from, .in = at<cut_edge>("1/2"_in), .begins = begins, .ends = ends};
    };
    d.add(seam_of<inch>{
        .one = {line(one, edge::top, "1/2"_in, "12 1/2"_in), line(one, edge::right, "1/2"_in, "6 1/2"_in),
                line(one, edge::bottom, "1/2"_in, "12 1/2"_in), line(one, edge::left, "1/2"_in, "6 1/2"_in)},
        .other = {line(other, edge::top, "1/2"_in, "12 1/2"_in), line(other, edge::left, "1/2"_in, "6 1/2"_in),
                  line(other, edge::bottom, "1/2"_in, "12 1/2"_in), line(other, edge::right, "1/2"_in, "6 1/2"_in)},
        .beyond = beyond_seam::back});
    d.add(mouth<inch>{.name = "gap", .at = {line(one, edge::top, 4_in, 8_in)}, .by = closed_by::hand});
    if (second)
        d.add(mouth<inch>{.name = "vent", .at = {line(other, edge::left, 2_in, 3_in)}, .by = closed_by::hand});
    return d;
}

} // namespace

// By hand: 32 + 2 x 1/2 in wide, the gap of 4 in in its middle is 14 1/2 in from either cut edge.
TEST_CASE("a gap in a seam of four edges names its edge, and its four pairs stand line by line in the handout") {
    const sheet<inch> s = sheet_in("draught_stopper", 32_in, 4_in);
    const auto steps = steps_in(s);
    const string* sewn = step_with(steps, "With right sides together");
    REQUIRE(sewn != nullptr);
    CHECK(sewn->find("and leave the gap open in the cut top edge of side 1, from 14 1/2 to 18 1/2 in off its cut left "
                     "edge: 73 in in all, through 2 layers. Bring together ") != string::npos);
    const string html = to_html(handout_of(s, {}, {}));
    const std::size_t list = html.find("<li>the cut top edge of side 1 and the cut top edge of side 2</li>");
    REQUIRE(list != string::npos);
    CHECK(html.rfind("Bring together:</p>", list) != string::npos);
    CHECK(html.find("<li>the cut left edge of side 1 and the cut right edge of side 2</li>", list) <
          html.find("Turn each corner where the seam lines cross", list));
}

TEST_CASE("two stretches that one seam leaves open are both told of, each in the edge that it is measured along") {
    for (const bool second : {false, true}) {
        const auto plan = work_plan_of(tube(second));
        const string sewn = sentence_of(plan, plan.groups[1]);
        CHECK(sewn.find("leave the gap open in the cut top edge of side 1, from 4 to 8 in off its cut left edge") !=
              string::npos);
        CHECK((sewn.find(" and the vent open in the cut left edge of side 2, from 2 to 3 in off its cut top edge") !=
               string::npos) == second);
    }
}

// Followed with paper: once the tip is in, there is no corner to measure from.
TEST_CASE("a corner that is folded twice is measured the second time from where it lay") {
    const auto steps = steps_in(sheet_in("table_linen", 60_in, 44_in));
    const auto count = [&](const string& part) {
        return std::count_if(steps.begin(), steps.end(), [&](const string& s) { return s.find(part) != string::npos; });
    };
    CHECK(count("fold its top left corner over, across a line that meets both edges 2 1/2 in from the corner, ") == 1);
    CHECK(
        count("fold its top left corner over once more, across a line that meets both edges 5 in from where the corner "
              "was while it lay flat, ") == 1);
    CHECK(count(" from the corner, ") == 8); // of the tablecloth, and of each napkin
    CHECK(count(" over once more, ") == 8);
}

TEST_CASE("a draught stopper's thickness is told filled and flat, and no other size is looked for in the end") {
    // 4 pi = 12.566 in, in two sides up to a 1/4 in: 6 1/2 in each. 13 / pi = 4.138 in, 4 1/8 in on sixteenths.
    const sheet<inch> s = sheet_in("draught_stopper", 32_in, 4_in);
    CHECK(s.name == "Draught stopper, at least 4 in thick");
    const string text = to_text(s, inch_ruler(16));
    CHECK(text.find("  across it, sewn up flat and empty: 6 1/2 in\n") != string::npos);
    CHECK(text.find("  across it, filled until it is round: 4 1/8 in\n") != string::npos);
    const string html = to_html(handout_of(s, {}, {.by = inch_ruler(16)}));
    CHECK(html.find("about 4") != string::npos);
    CHECK(html.find("One diagonal") == string::npos);
    CHECK(to_html(handout_of(sheet_in("produce_bag", 12_in, 14_in), {}, {})).find("One diagonal") != string::npos);
}

TEST_CASE("in no project file does a figure follow a number that tells copies apart, or a line have two colons") {
    const std::regex two_numbers("[a-z] [0-9]+ [0-9]+( [0-9]+/[0-9]+)? in ");
    std::size_t files = 0, steps = 0;
    for (const auto& file : std::filesystem::directory_iterator("examples/designs")) {
        if (file.path().extension() != ".json")
            continue;
        CAPTURE(file.path().string());
        const project_design d = read_file(file.path());
        const sheet<inch> s = sheet_at(d, std::get<finished_size<inch>>(read_size(d.sizes.at(0))));
        for (const string& step : steps_in(s)) {
            CHECK_MESSAGE(!std::regex_search(step, two_numbers), step);
            ++steps;
        }
        for (const notion<inch>& n : s.notions)
            for (const auto& detail : n.details())
                CHECK_MESSAGE(detail.what.find(':') == string::npos, detail.what);
        ++files;
    }
    CHECK(files >= 13);
    CHECK(steps > 200);
}
