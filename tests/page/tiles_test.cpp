// page/tiles.hpp: a large page is parted so that nothing is missing, and joined again nothing is displaced.
#include "at_random.hpp"
#include <turncloth/page/tiles.hpp>

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <random>
#include <string>
#include <vector>

using namespace turncloth;

// By hand: A4 less margins of 7 mm, heading and foot shows 269 mm, and two rows that share 16 mm show 522.
TEST_CASE("a piece of half a metre is on two rows of A4, without slivers") {
    CHECK(tiles(180, 518, paper::a4).rows() == 2);
    CHECK(tiles(180, 522, paper::a4).rows() == 2);
    CHECK(tiles(180, 523, paper::a4).rows() == 3);
}

TEST_CASE("parts cover the whole, neighbours share the overlap, and every spot keeps its place on the page") {
    at_random::seeded<std::mt19937> any(5);
    std::uniform_real_distribution<double> size(1, 3000);
    for (const int round : any.cases(2000)) {
        const paper& on = round % 2 == 0 ? paper::a4 : paper::letter;
        const page_area extent{0, 0, size(any), size(any)};
        const tiles t(extent.width, extent.height, on);
        const page_area first = t.part(0, 0), last = t.part(t.rows() - 1, t.columns() - 1);
        REQUIRE(first.x <= extent.x + 1e-9);
        REQUIRE(first.y <= extent.y + 1e-9);
        REQUIRE(last.right() >= extent.right() - 1e-9);
        REQUIRE(last.bottom() >= extent.bottom() - 1e-9);
        if (t.columns() > 1) { // and no page is one too many
            REQUIRE(t.part(0, t.columns() - 2).right() < extent.right());
            REQUIRE(t.part(0, 0).right() - t.part(0, 1).x == doctest::Approx(tiles::overlap));
            REQUIRE(t.joint_right(0) == doctest::Approx(t.part(0, 1).x + tiles::overlap / 2));
        }
        if (t.rows() > 1)
            REQUIRE(t.part(t.rows() - 2, 0).bottom() < extent.bottom());
        const page_point p = t.on_page(0, 0)(page_point{first.x, first.y});
        REQUIRE(p.x >= tiles::margin);
        REQUIRE(p.y >= tiles::margin);
        REQUIRE(t.on_page(0, 0)(page_point{first.right(), first.bottom()}).x <= on.narrow() - tiles::margin + 1e-9);
    }
}

TEST_CASE("what is clipped of a line over all parts is the whole line, once where nothing overlaps") {
    at_random::seeded<std::mt19937> any(6);
    std::uniform_real_distribution<double> at(0, 100);
    while (any.another_of(2000)) {
        std::vector<page_point> corners;
        for (int i = 0; i < 5; ++i)
            corners.push_back({at(any), at(any)});
        double length = 0, clipped_length = 0;
        for (std::size_t i = 0; i < 5; ++i)
            length += std::hypot(corners[(i + 1) % 5].x - corners[i].x, corners[(i + 1) % 5].y - corners[i].y);
        for (int r = 0; r < 4; ++r)
            for (int c = 0; c < 5; ++c) {
                const page_area w{c * 20.0, r * 25.0, 20, 25};
                for (const page_stroke& part : detail::clipped(page_stroke{joining_pen, corners, true}, w))
                    for (std::size_t i = 0; i + 1 < part.points.size(); ++i) {
                        const page_point a = part.points[i], b = part.points[i + 1];
                        clipped_length += std::hypot(b.x - a.x, b.y - a.y);
                        REQUIRE(a.x >= w.x - 1e-9);
                        REQUIRE(b.y <= w.bottom() + 1e-9);
                    }
            }
        REQUIRE(clipped_length == doctest::Approx(length).epsilon(1e-9));
    }
    // Where a run begins along the line, for its dashes.
    const auto runs = detail::clipped(page_stroke{joining_pen, {{-10, 5}, {30, 5}, {30, 30}}}, {0, 0, 20, 20});
    REQUIRE(runs.size() == 1);
    CHECK(runs[0].dash_from == doctest::Approx(10));
}

TEST_CASE("a page shows where its lines are and where they enclose it, and no more than 400 are made") {
    const tiles t(1000, 1000, paper::a4);
    page whole{.width = 1000, .height = 1000};
    whole.draw_closed({"cut", 0.6}, page_area{1, 1, 998, 600});
    CHECK(t.shows(whole, 0, 2));
    CHECK(t.shows(whole, 1, 2));
    CHECK_FALSE(t.shows(whole, t.rows() - 1, 2));
    whole.draw({"grain", 0.25}, {{500, 900}, {500, 950}});
    CHECK(t.shows(whole, t.rows() - 1, 2));
    CHECK(parted(whole, t, {.name = "bed cover"}).size() == t.pages(whole));
    CHECK_THROWS_AS(tiles(1e6, 1e6, paper::a4), range_error);
    try {
        static_cast<void>(tiles(1e4, 1e4, paper::a4));
        FAIL("it was parted");
    } catch (const range_error& refused) {
        CHECK(refused.facts().most.value().numerator == 400);
    }
}

TEST_CASE("words are written whole, on a page that shows all of them") {
    const tiles t(400, 100, paper::a4);
    page whole{.width = 400, .height = 100};
    whole.draw_closed({"cut", 0.6}, page_area{1, 1, 398, 98});
    whole.write({30, 50}, "left", 3);
    whole.write({250, 50}, "right", 3);
    const auto parts = parted(whole, t, {.name = "strap"});
    REQUIRE(parts.size() == 3);
    const auto says = [](const page& p, const std::string& text) {
        return std::count_if(p.words.begin(), p.words.end(), [&](const page_words& w) { return w.text == text; });
    };
    CHECK((says(parts[0], "left") == 1 && says(parts[1], "left") == 0));
    CHECK((says(parts[0], "right") == 0 && says(parts[1], "right") == 1));
    CHECK((says(parts[1], "row 1, column 2 of 1 x 3") == 1 && says(parts[2], "strap") == 1));
}
