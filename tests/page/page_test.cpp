// page/page.hpp, page/svg.hpp, page/paper.hpp: a page is data, and the one writer puts down all of it and no more.
#include "../vectors.hpp"
#include <turncloth/measure/read.hpp>
#include <turncloth/page/paper.hpp>
#include <turncloth/page/svg.hpp>

#include <doctest/doctest.h>
#include <pugixml.hpp>

#include <limits>
#include <string>

using namespace turncloth;

// ISO 216: A4 is 210 x 297 mm. ANSI/ASME Y14.1: size A is 8 1/2 x 11 in.
static_assert(paper::a4.narrow() == 210);
static_assert(paper::a4.wide() == 297);
static_assert(paper::letter.narrow() == 8.5 * 25.4);
static_assert(paper::letter.wide() == 11 * 25.4);
static_assert(paper::custom(12_in, 18_in) == paper::custom(18_in, 12_in));
static_assert(paper::a4.fitted() != paper::a4);
static_assert(paper::a4.fitted().is_fitted());

namespace {

page small_page() {
    page p{.width = 50, .height = 40, .title = "a <b>", .description = "& so on"};
    p.draw({"cut", 0.6}, {{1, 2}, {3, 4}});
    p.draw({"cut", 0.6}, {{5, 6}, {7, 8}, {9, 10}});
    p.draw_closed({"fold", 0.4, {3, 1.5}}, page_area{10, 20, 4, 3});
    p.draw({"dot", 0.7}, {{12, 13}});
    p.strokes.push_back({{"joint", 0.2, {1, 1.5}, 0.4}, {{0, 0}, {9, 0}}, false, 2.5});
    p.write({10, 11}, "12 < 13", 3, set_from::end).bold = true;
    p.write({20, 21}, "upward", 2.6, set_from::middle).turned = 90;
    return p;
}

} // namespace

TEST_CASE("every stroke is written in a group of its meaning, with its pen, and every word where it stands") {
    pugi::xml_document d;
    REQUIRE(d.load_string(to_svg(small_page()).c_str(), pugi::parse_full));
    const auto root = d.document_element();
    CHECK(std::string(root.attribute("width").value()) == "50mm");
    CHECK(std::string(root.attribute("viewBox").value()) == "0 0 50 40");
    CHECK(std::string(root.child("title").text().get()) == "a <b>");
    CHECK(std::string(root.child("desc").text().get()) == "& so on");
    const auto group = [&](const char* name) {
        const auto found = d.select_nodes(("//g[@class='" + std::string(name) + "']").c_str());
        REQUIRE(found.size() == 1);
        return found[0].node();
    };
    const auto cut = group("cut"), fold = group("fold"), joint = group("joint");
    CHECK(std::string(cut.attribute("stroke-width").value()) == "0.6");
    CHECK(cut.attribute("stroke-dasharray").empty());
    CHECK(std::string(cut.child("line").attribute("y2").value()) == "4");
    CHECK(std::string(cut.child("polyline").attribute("points").value()) == "5,6 7,8 9,10");
    CHECK(std::string(fold.attribute("stroke-dasharray").value()) == "3 1.5");
    CHECK(std::string(fold.child("polygon").attribute("points").value()) == "10,20 14,20 14,23 10,23");
    CHECK(std::string(group("dot").child("circle").attribute("r").value()) == "0.35");
    CHECK(std::string(joint.attribute("stroke").value()) == "#666"); // 0.4 of the way from black to white
    CHECK(std::string(joint.attribute("stroke-dashoffset").value()) == "2.5");
    const auto words = d.select_nodes("//text");
    REQUIRE(words.size() == 2);
    CHECK(std::string(words[0].node().text().get()) == "12 < 13");
    CHECK(std::string(words[0].node().attribute("text-anchor").value()) == "end");
    CHECK(std::string(words[0].node().attribute("font-weight").value()) == "bold");
    CHECK(std::string(words[1].node().attribute("transform").value()) == "rotate(-90 20 21)");
    CHECK(words[1].node().attribute("font-weight").empty());
}

TEST_CASE("a number that no page can hold is refused, with the limit") {
    for (const double x :
         {1.1e12, -1.1e12, std::numeric_limits<double>::infinity(), std::numeric_limits<double>::quiet_NaN()}) {
        page p;
        p.draw({"cut", 0.6}, {{0, 0}, {x, 0}});
        CHECK_THROWS_AS(to_svg(p), range_error);
    }
    CHECK(detail::number(1e12) == "1000000000000");
}

TEST_CASE("a side of paper is from 120 mm to 2 m") {
    CHECK_NOTHROW(paper::custom(120_mm, 2000_mm));
    CHECK_THROWS_WITH_AS(paper::custom(119_mm, 300_mm), "a side of paper must be from 120 to 2000 mm: it was 119 mm",
                         range_error);
    CHECK_THROWS_AS(paper::custom(300_mm, 2001_mm), range_error);
}

namespace {

/// Every character half as wide as it is high.
struct typewriter final : text_measure {
    double width_of(std::string_view text, double size, bool) const override {
        return static_cast<double>(text.size()) * size / 2;
    }
};

} // namespace

TEST_CASE("words are measured by whoever paints them, where a measure is given") {
    const typewriter by_hand;
    const detail::lettering by(&by_hand);
    CHECK(by.width("twelve", 4) == 12);
    CHECK(by.wrapped("one two three", 4, 16) == std::vector<std::string>{"one two", "three"});
    CHECK(by.shortened("a long word", 4, 12) == "a l..."); // six characters of 2 mm
}

TEST_CASE("of a text of any length so much is set as is stated, without long work") {
    const detail::lettering by;
    std::string words;
    while (words.size() < 30'000'000)
        words += "words and ";
    const auto lines = by.wrapped(words, 3, 60, 3);
    REQUIRE(lines.size() == 3);
    CHECK(lines[2].substr(lines[2].size() - 3) == "...");
    CHECK(by.shortened(std::string(30'000'000, 'W'), 3, 1e9).size() == detail::longest_text + 3);
    // 3 x 10^7 times a width of 100 hundredths of 1 mm: more than 32 bits hold in hundredths.
    CHECK(by.width(std::string(30'000'000, 'W'), 1) == 30'000'000);
    std::string all;
    for (const std::string& line : by.wrapped(words.substr(0, 9000), 3, 60, 1000))
        all += (all.empty() ? "" : " ") + line;
    CHECK(all == words.substr(0, 8999)); // but for the blank at the end
}
