// Bounding rectangles along the grain, and the cloth they need; the parts of pages and of lines.
#include "at_random.hpp"
#include "cloth.hpp"
#include "drafting_file.hpp"
#include "tiling.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <random>
#include <string>

using namespace drafting;

namespace {

made_piece piece_of(const std::string& grain, const std::string& rest = "cut: 2\n") {
    return read_drafting("title: T\nunit: cm\npiece: p\nmaterial: m\ngrain: " + grain + "\n" + rest +
                         "all edges: raw\ncorner: 0; 0\ncorner: 30; 0\ncorner: 30; 10\ncorner: 0; 10\n")
        .pieces[0];
}

} // namespace

TEST_CASE("the bounding rectangle lies along the grain") {
    CHECK(bounding_size(piece_of("5; 2; 5; 8")) == cut_size<millimetre>(300_mm, 100_mm));
    CHECK(bounding_size(piece_of("2; 5; 8; 5")) == cut_size<millimetre>(100_mm, 300_mm));
    // On the bias 30 x 10 lies within (30 + 10) / sqrt 2 each way, 282.842... mm, up to the next tenth (geometry).
    CHECK(bounding_size(piece_of("2; 2; 8; 8")) == cut_size<millimetre>("282.9"_mm, "282.9"_mm));
}

TEST_CASE("the cloth is the least for its rectangles, each material by itself, and turned only where allowed") {
    const auto length_for = [](const std::string& turn) {
        const made_drafting d{"T", drafted_in::centimetres, {piece_of("5; 2; 5; 8", "cut: 2\n" + turn)}};
        const auto lays = laid_out(d, {.width = 210_mm}).lays;
        REQUIRE(lays.size() == 1);
        return lays[0].laid.length;
    };
    // 30 cm across does not go on 21 cm; turned, two lie side by side on 20.
    CHECK_THROWS_WITH(length_for(""), "piece \"p\" is 11 13/16 in (30 cm) across its grain, 3 9/16 in (9 cm) more than "
                                      "the usable width of 8 1/4 in (21 cm): with \"turn: allowed\" it would fit");
    CHECK(length_for("turn: allowed\n") == 300_mm);
    made_drafting two{"T", drafted_in::centimetres, {piece_of("5; 2; 5; 8"), piece_of("5; 2; 5; 8")}};
    two.pieces[1].material = "other";
    const auto lays = laid_out(two, {.width = 620_mm, .selvedge = 5_mm, .gap = 10_mm}).lays;
    REQUIRE(lays.size() == 2);
    CHECK(lays[0].material == "m");
    CHECK(lays[1].material == "other");
    CHECK(lays[1].pieces == std::vector<std::size_t>{1});
    CHECK(lays[0].laid.length == 100_mm); // 300 + 10 + 300 on 610
    CHECK(laid_out(two, {.width = 619_mm, .selvedge = 5_mm, .gap = 10_mm}).lays[0].laid.length == 210_mm);
}

// By hand: A4 less margins of 7 mm, heading and foot shows 269 mm, and two rows that share 16 mm show 522.
TEST_CASE("a piece of half a metre is on two rows of A4, without slivers") {
    CHECK(tiling({0, 0, 180, 518}, paper::a4).rows() == 2);
    CHECK(tiling({0, 0, 180, 522}, paper::a4).rows() == 2);
    CHECK(tiling({0, 0, 180, 523}, paper::a4).rows() == 3);
}

TEST_CASE("parts cover the whole, neighbours share the overlap, and every spot keeps its place on the page") {
    at_random::seeded<std::mt19937> any(5);
    std::uniform_real_distribution<double> size(1, 3000), at(-500, 500);
    for (const int round : any.cases(2000)) {
        const paper& on = round % 2 == 0 ? paper::a4 : paper::letter;
        const page_area extent{at(any), at(any), size(any), size(any)};
        const tiling t(extent, on);
        const page_area first = t.part(0, 0), last = t.part(t.rows() - 1, t.columns() - 1);
        REQUIRE(first.x <= extent.x + 1e-9);
        REQUIRE(first.y <= extent.y + 1e-9);
        REQUIRE(last.right() >= extent.right() - 1e-9);
        REQUIRE(last.bottom() >= extent.bottom() - 1e-9);
        if (t.columns() > 1) { // and no page is one too many
            REQUIRE(t.part(0, t.columns() - 2).right() < extent.right());
            REQUIRE(t.part(0, 0).right() - t.part(0, 1).x == doctest::Approx(overlap));
            REQUIRE(t.joint_right(0) == doctest::Approx(t.part(0, 1).x + overlap / 2));
        }
        if (t.rows() > 1)
            REQUIRE(t.part(t.rows() - 2, 0).bottom() < extent.bottom());
        const page_point p = t.on_page(0, 0, {first.x, first.y});
        REQUIRE(p.x >= margin);
        REQUIRE(p.y >= margin);
        REQUIRE(t.on_page(0, 0, {first.right(), first.bottom()}).x <= on.narrow() - margin + 1e-9);
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
                for (const run& part : clipped(corners, true, w))
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
    const auto runs = clipped({{-10, 5}, {30, 5}, {30, 30}}, false, {0, 0, 20, 20});
    REQUIRE(runs.size() == 1);
    CHECK(runs[0].from_start == doctest::Approx(10));
    CHECK(shows({{-50, -50}, {90, -50}, {90, 90}, {-50, 90}}, {0, 0, 20, 20})); // all round it
    CHECK_FALSE(shows({{-50, -50}, {-10, -50}, {-10, 90}}, {0, 0, 20, 20}));
}
