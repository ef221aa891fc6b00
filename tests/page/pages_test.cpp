// page/pages.hpp: on A4, Letter and other papers nothing of a document is lost, cut, parted or beyond the margins.
#include "at_random.hpp"
#include <turncloth/measure/read.hpp>
#include <turncloth/page/pages.hpp>

#include <doctest/doctest.h>

#include <algorithm>
#include <cstddef>
#include <string>
#include <vector>

using namespace turncloth;

namespace {

using in_cell = document::in_cell;

/// An outline that can be found again by its pen.
page picture_of(double width, double height) {
    page p{.width = width, .height = height};
    p.draw_closed({"picture", 0.4}, page_area{0, 0, width, height});
    return p;
}

/// Words that occur once, so that each is found again.
class unique_words {
public:
    explicit unique_words(at_random::sampler& random) : random_(random) {}
    std::string some(unsigned most) {
        std::string all;
        for (unsigned n = 1 + below(most); n > 0; --n)
            all.append(all.empty() ? "" : " ").append(std::string(below(5), 'm')).append(next());
        return all;
    }
    unsigned below(unsigned n) { return static_cast<unsigned>(random_() % n); }
    unsigned given() const { return count_; }
    static std::string name(unsigned i) { return "q" + std::to_string(i) + "q"; }

private:
    std::string next() { return name(count_++); }
    at_random::sampler& random_;
    unsigned count_ = 0;
};

document::table table_of(unique_words& words) {
    document::table t{words.some(8), {}, {}};
    const unsigned columns = 1 + words.below(3);
    for (unsigned i = 0; i < columns; ++i)
        t.columns.push_back(words.some(2));
    for (unsigned rows = words.below(40); rows > 0; --rows) {
        t.rows.emplace_back();
        for (unsigned i = 0; i < columns; ++i)
            t.rows.back().push_back({words.some(6)});
    }
    return t;
}

document::block block_of(unique_words& words) {
    switch (words.below(8)) {
    case 0:
        return document::heading{words.some(6), static_cast<int>(2 + words.below(3))};
    case 1:
        return document::list{{words.some(30), words.some(3)}};
    case 2:
        return document::ticks{{words.some(30), words.some(3)}};
    case 3:
        return document::blanks{{words.some(3), words.some(3)}};
    case 4:
        return document::caution{words.some(1), {words.some(40), words.some(9)}, words.below(2) == 0};
    case 5:
        return table_of(words);
    case 6:
        return document::drawing{picture_of(10.0 + words.below(190), 10.0 + words.below(290)), {}, words.some(9)};
    default:
        return document::paragraph{words.some(150)};
    }
}

struct random_document {
    document made;
    unsigned words;
};

random_document document_at_random(at_random::sampler& random) {
    unique_words words(random);
    document d{.title = words.some(5), .subtitle = words.some(5), .foot = words.some(1)};
    for (unsigned n = 5 + words.below(20); n > 0; --n)
        d.add(block_of(words));
    document::steps steps;
    for (unsigned n = words.below(9); n > 0; --n) {
        steps.all.emplace_back();
        for (unsigned k = words.below(5); k > 0; --k)
            steps.all.back().blocks.push_back(block_of(words));
    }
    d.add(steps);
    return {d, words.given()};
}

std::string all_words(const std::vector<page>& pages) {
    std::string all;
    for (const page& p : pages)
        for (const page_words& w : p.words)
            all += w.text + "|";
    return all;
}
std::size_t times(const std::string& what, const std::string& in) {
    std::size_t n = 0;
    for (auto at = in.find(what); at != std::string::npos; at = in.find(what, at + 1))
        ++n;
    return n;
}
/// Of a document with no drawing, on one paper.
std::vector<std::vector<std::string>> lines_of(const std::vector<page>& pages) {
    std::vector<std::vector<std::string>> all;
    for (const page& p : pages) {
        all.emplace_back();
        for (const page_words& w : p.words)
            all.back().push_back(w.text);
    }
    return all;
}

const paper papers[] = {paper::a4, paper::letter, paper::custom(140_mm, 150_mm)};

} // namespace

TEST_CASE("no word of a document is lost, and everything lies within the margins of every page") {
    constexpr double margin = 15, slack = 0.7; // half of the heaviest line
    at_random::sampler random(61);
    for (const int i : random.cases(12)) {
        const paper& on = papers[i % 3];
        const auto [made, words] = document_at_random(random);
        const auto pages = pages_of(made, on);
        const page_area room{margin - slack, margin - slack, on.narrow() - 2 * (margin - slack),
                             on.wide() - 2 * (margin - slack)};
        const detail::lettering by;
        for (const page& p : pages) {
            CHECK(p.width == on.narrow());
            CHECK(p.height == on.wide());
            for (const page_words& w : p.words)
                if (!detail::within(detail::covered_by(w, by), room))
                    FAIL_CHECK(w.text << " at " << w.at.x << ", " << w.at.y);
            for (const page_stroke& s : p.strokes)
                for (const page_point& at : s.points)
                    if (!detail::within(page_area{at.x, at.y, 0, 0}, room))
                        FAIL_CHECK(s.with.means.text());
        }
        std::string all = all_words(pages);
        all.erase(std::remove(all.begin(), all.end(), '|'), all.end()); // a long word may be broken
        for (unsigned k = 0; k < words; ++k)
            CHECK(times(unique_words::name(k), all) >= 1);
    }
}

TEST_CASE("words do not lie on one another") {
    const detail::lettering by;
    at_random::sampler random(62);
    for (const int n : random.cases(4)) {
        for (const page& p : pages_of(document_at_random(random).made, papers[n % 2]))
            for (std::size_t i = 0; i < p.words.size(); ++i)
                for (std::size_t k = i + 1; k < p.words.size(); ++k)
                    if (!detail::apart(detail::covered_by(p.words[i], by), detail::covered_by(p.words[k], by)))
                        FAIL_CHECK(p.words[i].text << " / " << p.words[k].text);
    }
}

TEST_CASE("each page says which it is of how many, and has the document's foot and an inch that is one") {
    document d{.title = "Roll", .foot = "Roll, 21 x 13 in"};
    for (int i = 0; i < 120; ++i)
        d.add(document::paragraph{"A sentence."});
    const auto pages = pages_of(d);
    REQUIRE(pages.size() > 2);
    for (std::size_t i = 0; i < pages.size(); ++i) {
        const std::string all = all_words({pages[i]});
        CHECK(times("page " + std::to_string(i + 1) + " of " + std::to_string(pages.size()) + "|", all) == 1);
        CHECK(times("Roll, 21 x 13 in|", all) == 1);
        const auto bar = std::find_if(pages[i].strokes.begin(), pages[i].strokes.end(),
                                      [](const page_stroke& s) { return s.with.means == stroke_name("test bar"); });
        REQUIRE(bar != pages[i].strokes.end());
        CHECK(bar->points[2].x - bar->points[1].x == doctest::Approx(25.4)); // 1 in, by its definition
    }
}

TEST_CASE("where centimetres are read the bar at the foot of a page is of centimetres") {
    document d{.title = "Roll", .bar = document::test_bar::three_centimetres};
    d.add(document::paragraph{"A sentence."});
    const auto pages = pages_of(d);
    const auto bar = std::find_if(pages[0].strokes.begin(), pages[0].strokes.end(),
                                  [](const page_stroke& s) { return s.with.means == stroke_name("test bar"); });
    REQUIRE(bar != pages[0].strokes.end());
    CHECK(bar->points[2].x - bar->points[1].x == doctest::Approx(30));
    CHECK(times("3 cm at 100 %|", all_words(pages)) == 1);
    CHECK(times("1 in", all_words(pages)) == 0);
}

TEST_CASE("a caution keeps within its box, as long as its bold word may be") {
    const detail::lettering by{nullptr};
    document d{.title = "Roll"};
    std::string sentence = "a";
    for (std::size_t i = 0; i < 60; ++i) // each a letter longer: some first line is as full as it can be
        d.add(document::caution{"Check before you cut, and again", {sentence += std::string(i % 3 + 1, 'm') + " of"}});
    for (const page& p : pages_of(d)) {
        const double right = p.width - detail::document_margin - 2.5;
        for (const page_words& w : p.words)
            if (w.at.y < p.height - detail::document_margin - detail::document_foot)
                CHECK_MESSAGE(w.at.x + by.width(w.text, w.size, w.bold) <= right + 1e-6, w.text);
    }
}

TEST_CASE("no heading ends a page, wherever it would fall") {
    for (int lines = 20; lines < 80; ++lines) {
        document d{.title = "Roll"};
        for (int i = 0; i < lines; ++i)
            d.add(document::paragraph{"line"});
        d.add(document::heading{"HEADING"}).add(document::heading{"HEADING", 3});
        if (lines % 2 == 0)
            d.add(document::paragraph{"what follows"});
        d.add(document::drawing{picture_of(60, 60), {}, "what follows"});
        for (const auto& page : lines_of(pages_of(d))) {
            REQUIRE(page.size() >= 3);
            CHECK(page[page.size() - 4] != "HEADING"); // the foot's words are the last three
        }
    }
}

TEST_CASE("a table that goes on has its head again, and no row is parted") {
    document d{.title = "Roll"};
    document::table t{"sizes", {"piece", "cut"}, {}};
    std::string longer;
    for (int i = 0; i < 30; ++i)
        longer += "word ";
    for (int i = 0; i < 60; ++i)
        t.rows.push_back({{"begins " + std::to_string(i) + "."}, {longer + "ends " + std::to_string(i) + "."}});
    const auto pages = lines_of(pages_of(d.add(t)));
    REQUIRE(pages.size() > 2);
    int rows = 0;
    for (const auto& page : pages) {
        std::string all;
        for (const std::string& line : page)
            all += line + " ";
        CHECK(times("piece cut ", all) == 1);
        for (int i = 0; i < 60; ++i) {
            const std::string n = std::to_string(i) + ".";
            rows += times("begins " + n, all) == 1;
            CHECK(times("begins " + n, all) == times("ends " + n, all));
        }
    }
    CHECK(rows == 60);
}

TEST_CASE("a row that is higher than a page is parted, and all of it is there") {
    document d{.title = "Roll"};
    std::string longest;
    for (int i = 0; i < 1500; ++i)
        longest += unique_words::name(static_cast<unsigned>(i)) + " ";
    const auto pages = pages_of(d.add(document::table{"sizes", {"piece", "cut"}, {{{"outer"}, {longest}}}}));
    const std::string all = all_words(pages);
    for (unsigned i = 0; i < 1500; ++i)
        CHECK(times(unique_words::name(i), all) == 1);
}

TEST_CASE("a drawing is whole, keeps its shape, is no larger than it was, and true to size where it must be") {
    for (const page_point size : {page_point{150, 170}, page_point{60, 30}, page_point{900, 20}, page_point{20, 900}})
        for (int lines = 0; lines < 50; lines += 7) {
            document d{.title = "Roll"};
            for (int i = 0; i < lines; ++i)
                d.add(document::paragraph{"line"});
            d.add(document::drawing{picture_of(size.x, size.y), {}, "drawn"});
            d.add(document::drawing{picture_of(100, 20), {}, "true", true});
            std::vector<page_stroke> found;
            for (const page& p : pages_of(d, paper::letter))
                for (const page_stroke& s : p.strokes)
                    if (s.with.means == stroke_name("picture"))
                        found.push_back(s);
            REQUIRE(found.size() == 2);
            const auto side = [](const page_stroke& s) {
                return page_point{s.points[1].x - s.points[0].x, s.points[2].y - s.points[1].y};
            };
            const page_point drawn = side(found[0]), exact = side(found[1]);
            CHECK(drawn.x / drawn.y == doctest::Approx(size.x / size.y));
            CHECK(drawn.x <= size.x);
            CHECK(exact.x == doctest::Approx(100));
            CHECK(exact.y == doctest::Approx(20));
        }
    document d{.title = "Roll"};
    CHECK_THROWS_AS(pages_of(d.add(document::drawing{picture_of(181, 20), {}, "true", true})), range_error);
}

TEST_CASE("a row of more or fewer cells than there are columns is refused on pages too") {
    document d{.title = "thing"};
    CHECK_THROWS_AS(pages_of(d.add(document::table{"sizes", {"piece"}, {{{"a"}, {"b"}}}})), range_error);
}
