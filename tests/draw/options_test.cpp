// Every drawing on every paper and for a screen: what is drawn lies on the paper asked for, can be read, and a screen is
// told no scale; what is too large to draw is refused.
#include "draw/picture.hpp"
#include <turncloth/design/json.hpp>
#include <turncloth/design/project_of.hpp>
#include <turncloth/draw/finished.hpp>
#include <turncloth/draw/folded.hpp>
#include <turncloth/draw/lay.hpp>
#include <turncloth/draw/outline.hpp>
#include <turncloth/draw/piece.hpp>
#include <turncloth/draw/step.hpp>
#include <turncloth/draw/stock.hpp>
#include <turncloth/sheet/on_ruler.hpp>

#include <doctest/doctest.h>

#include <algorithm>
#include <fstream>
#include <iterator>
#include <string>
#include <utility>
#include <vector>

using namespace turncloth;
using namespace turncloth::drawn;

namespace {

sheet_piece<inch> squared() {
    project<inch> p("Kneeling pad", finished_size(45_in, 46_in));
    p.add({"cover", "cotton", panel(p.finished(), all_round(seam("1/2"_in)))})
        .mark("row", edge::top, divided<finished_edge>(46_in, 46))
        .mark("column", edge::left, divided<finished_edge>(45_in, 46));
    return first_of(p);
}

sheet_cloth<inch> mats(length<inch> width, length<inch> height) {
    project<inch> p("Mats", finished_size(width, height));
    p.add({"mat", "felt", panel(p.finished())}).count(3);
    return cloth_for<inch>(sheet_of(p), "felt", {.width = 60_in, .selvedge = "1/2"_in},
                           purchase_rules<inch>{.straightening = 1_in, .sold = eighths_of_a_yard<inch>});
}

/// One of each kind.
std::vector<page> all_drawings(const drawing_options& options) {
    const auto hem = all_round(double_turned_hem("1/4"_in, "1/2"_in));
    std::vector<page> all;
    for (const auto& size : {finished_size(2_in, 1_in), finished_size(60_in, 1_in), finished_size(120_in, 90_in)})
        all.push_back(page_of(plain(size.width(), size.height(), all_round(seam("1/4"_in))), {}, options));
    all.push_back(page_of(squared(), {}, options));
    all.push_back(page_of(roll_outer(), {}, options));
    all.push_back(page_of(mats(18_in, 9_in), {}, options));
    all.push_back(page_of(mats(40_in, 70_in), {}, options));
    for (page& p : pages_of(stock_for<inch>("ribbon", {{"tie", 25_in, 8}, {"loop", 5_in, 9}}, {{108_in}}), {}, options))
        all.push_back(std::move(p));
    const outline<inch> gusset({drafted_point<inch>(0, 0), drafted_point<inch>(12, 0), drafted_point<inch>(0, 8)},
                               {edge_allowance<inch>{drafted_length_of<inch>(0.5), drafted_length_of<inch>(0)}});
    all.push_back(page_of(gusset, {.name = "gusset"}, {}, options));
    all.push_back(page_of(fold_panel(panel(finished_size(15_in, 12_in), hem), all_corners(stacked<inch>())),
                          {.name = "napkin"}, {}, options));
    return all;
}

bool says_a_scale(const page& p) {
    return p.description.find("scale") != std::string::npos ||
           std::any_of(p.words.begin(), p.words.end(), [](const page_words& w) {
               return w.text.find("scale") != std::string::npos || w.text.find("100 %") != std::string::npos ||
                      w.text.find("mm long") != std::string::npos;
           });
}

} // namespace

TEST_CASE("every drawing lies on the paper asked for, can be read there, and states its scale") {
    for (const paper on : {paper::a4, paper::letter, paper::custom(12_in, 18_in), paper::custom(420_mm, 594_mm)}) {
        CAPTURE(on.wide());
        for (const page& p : all_drawings({.project = "Tool roll", .on = on})) {
            INFO(p.title);
            CHECK(std::min(p.width, p.height) == on.narrow());
            CHECK(std::max(p.width, p.height) == on.wide());
            CHECK(says_a_scale(p));
            check_legible(picture(p));
        }
    }
}

// Of two units the second stands in brackets; the drawings of steps and of the finished thing are a project file's.
TEST_CASE("each drawing that stands by itself has metric lengths first where its language has them first") {
    const language metric_first("xx", {.decimal_mark = ",", .metric_first = true}, {{"scale", "scale"}});
    const drawing_options plain_options, read{.words = &metric_first};
    const auto count = [](const page& p, const char* unit) {
        return std::count_if(p.words.begin(), p.words.end(),
                             [&](const page_words& w) { return w.text.find(unit) != std::string::npos; });
    };
    std::vector<page> english = all_drawings(plain_options), foreign = all_drawings(read);
    std::ifstream in("examples/designs/peg_bag.json", std::ios::binary);
    const project_design bag = read_design(std::string(std::istreambuf_iterator<char>(in), {}));
    const auto s = sheet_of(project_of(bag, finished_size(14_in, 12_in)));
    for (const auto& [options, all] : {std::pair(&plain_options, &english), std::pair(&read, &foreign)}) {
        for (page& p : pages_of_finished(s, {}, *options))
            all->push_back(std::move(p));
        for (step_page& p : pages_of_steps(s, {}, {}, *options))
            all->push_back(std::move(p.page));
    }
    REQUIRE(english.size() == foreign.size());
    std::size_t both = 0;
    for (std::size_t i = 0; i < english.size(); ++i) {
        INFO(english[i].title);
        CHECK(count(english[i], " in)") == 0);
        CHECK(count(foreign[i], " cm)") == 0);
        CHECK((count(english[i], " cm)") > 0) == (count(foreign[i], " in)") > 0));
        both += count(foreign[i], " in)") > 0 ? 1 : 0;
    }
    CHECK(both > 20);
}

TEST_CASE("a page fitted to its content is no higher than need be, and as wide as its paper") {
    const auto whole = all_drawings({}), fitted = all_drawings({.on = paper::a4.fitted()});
    REQUIRE(whole.size() == fitted.size());
    std::size_t lower = 0;
    for (std::size_t i = 0; i < whole.size(); ++i) {
        INFO(whole[i].title);
        CHECK((fitted[i].width == 210 || fitted[i].width == 297)); // ISO 216, A4
        CHECK(fitted[i].height <= (fitted[i].width == 210 ? 297 : 210));
        lower += fitted[i].height < whole[i].height - 20 ? 1 : 0;
        check_legible(picture(fitted[i]));
    }
    CHECK(lower >= 4);
}

TEST_CASE("for a screen the lettering is larger, and neither a scale nor how to print is stated") {
    for (const page& p : all_drawings({.for_screen = true})) {
        INFO(p.title);
        CHECK_FALSE(says_a_scale(p));
        CHECK(std::none_of(p.strokes.begin(), p.strokes.end(),
                           [](const page_stroke& s) { return s.with.means == stroke_name("scale"); }));
        for (const page_words& w : p.words)
            CHECK(w.size >= 3.5);
        for (const page_stroke& s : p.strokes)
            for (const page_point& at : s.points)
                CHECK((at.x >= 0 && at.y >= 0 && at.x <= p.width && at.y <= p.height));
    }
}

TEST_CASE("on a screen a drawing is no wider than its paper is narrow, and as large as its words leave it") {
    for (const page& p : all_drawings({.for_screen = true}))
        CHECK(p.width == doctest::Approx(210)); // ISO 216, A4
    // Half as long again: only at a scale that no ruler has do both fill the same width.
    const auto share = [](length<inch> width) {
        const page drawn = page_of(plain(width, 11_in), {}, {.for_screen = true});
        const auto cut = std::find_if(drawn.strokes.begin(), drawn.strokes.end(),
                                      [](const page_stroke& s) { return s.with.means == stroke_name("cut"); });
        REQUIRE(cut != drawn.strokes.end());
        const auto [first, last] = std::minmax_element(
            cut->points.begin(), cut->points.end(), [](const page_point& a, const page_point& b) { return a.x < b.x; });
        return (last->x - first->x) / drawn.width;
    };
    CHECK(share(40_in) > 0.6);
    CHECK(share(60_in) == doctest::Approx(share(40_in)).epsilon(0.03));
}

TEST_CASE("a lay that is short and wide lies on its side, one that is long stands upright") {
    const page wide = page_of(mats(18_in, 9_in)), tall = page_of(mats(40_in, 70_in));
    CHECK(wide.width > wide.height);
    CHECK(tall.height > tall.width);
}

TEST_CASE("what is over a kilometre long is not drawn, and the refusal says so") {
    const auto strip = [](length<inch> width) { return plain(width, 2_in); };
    CHECK_NOTHROW(page_of(strip(39370_in))); // 999.998 m
    for (const length<inch>& width : {39371_in, length_of<inch>(1'000'000'000'000)})
        try {
            static_cast<void>(page_of(strip(width)));
            FAIL("it was drawn");
        } catch (const range_error& refused) {
            CHECK(refused.facts().kind == fault::too_large);
            CHECK(refused.facts().most.value().numerator == 1'000'000);
        }
    CHECK_THROWS_AS(pages_of(stock_for<inch>("tape", {{"end", 40000_in, 1}}, {{50000_in}})), range_error);
}

namespace {

/// Its words one after another, as they were set in lines.
std::string all_words(const page& drawn) {
    std::string all;
    for (const page_words& w : drawn.words)
        all += w.text + " ";
    return all;
}

} // namespace

TEST_CASE("a drawing of a sheet on its ruler says what the sheet says, and of any other that each figure is rounded") {
    const auto s = sheet_on_ruler<inch>({18_in, 9_in}, "1/16"_in, [](const auto& asked, const ruled<inch>& by) {
        project<inch> p("Mats", by.given(asked));
        p.add({"mat", "felt", panel(p.finished(), all_round(seam(by.given("1/2"_in))))}).count(3);
        return p;
    });
    const auto lay =
        cloth_for<inch>(s, "felt", {.width = 60_in}, purchase_rules<inch>{.sold = eighths_of_a_yard<inch>});
    const std::string worked = "worked out on a ruler of 1/16 in, so that what is printed of pieces adds up",
                      exact = "each from the exact length",
                      converted = "Centimetres beside them are converted from these, each rounded to 0.1 cm.";
    const auto says = [](const page& drawn, const std::string& words) {
        return all_words(drawn).find(words) != std::string::npos;
    };
    for (const page& both : {page_of(s.pieces[0]), page_of(lay)}) {
        CHECK(says(both, worked));
        CHECK(says(both, converted));
        CHECK_FALSE(says(both, exact));
    }
    for (const page& alone : {page_of(s.pieces[0], inch_ruler(16)), page_of(lay, inch_ruler(16))}) {
        CHECK(says(alone, worked));
        CHECK_FALSE(says(alone, converted));
    }
    for (const page& other :
         {page_of(s.pieces[0], inch_ruler(8)), page_of(lay, inch_ruler(8)), page_of(mats(18_in, 9_in))})
        CHECK(says(other, exact));
}
