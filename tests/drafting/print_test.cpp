// The printed pages are measured: paper, test squares, true scale across joined pages, and that nothing is missing.
#include "drafting/measured.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

TEST_CASE("pages have the size of their paper, to the point's hundredth") {
    const workshop w;
    for (const known_paper& on : papers) {
        REQUIRE(w.run("'" TURNCLOTH_DRAFTING_FILES "/kneeling_pad.json' --replace --out pad.pdf --paper " +
                      std::string(on.option))
                    .status == 0);
        const auto sizes = w.page_sizes("pad.pdf");
        CHECK(sizes.size() > 10);
        for (const auto& [width, height] : sizes) {
            // A drawing may lie on its side.
            CHECK(std::abs(std::min(width, height) - on.width / 25.4 * 72) < 0.01);
            CHECK(std::abs(std::max(width, height) - on.height / 25.4 * 72) < 0.01);
        }
    }
}

TEST_CASE("the test squares measure 50 mm and 2 in each way, and every other page has 50 mm at its foot") {
    const workshop w;
    for (const known_paper& on : papers) {
        REQUIRE(w.run("'" TURNCLOTH_DRAFTING_FILES "/trug_liner.json' --replace --out trug.pdf --paper " +
                      std::string(on.option))
                    .status == 0);
        const auto pages = w.pages("trug.pdf");
        const auto squares = pages[0].of(test_square_pen);
        REQUIRE(squares.size() == 2);
        const double sides[] = {50, 50.8};
        for (std::size_t k = 0; k < 2; ++k) {
            const points& p = squares[k].points;
            REQUIRE(squares[k].closed);
            REQUIRE(p.size() == 4);
            for (std::size_t i = 0; i < 4; ++i)
                CHECK(std::abs(apart(p[i], p[(i + 1) % 4]) - sides[k]) < 0.05);
            CHECK(std::abs(apart(p[0], p[2]) - sides[k] * std::sqrt(2)) < 0.05); // and it is square
        }
        std::size_t with_foot = 0;
        for (const printed_page& p : pages)
            if (p.says("50 mm on paper")) {
                ++with_foot;
                auto foot = p.of(foot_pen);
                std::erase_if(foot, [](const drawn_line& l) { return l.points.size() != 4; });
                REQUIRE(foot.size() == 1);
                CHECK(std::abs(apart(foot[0].points[1], foot[0].points[2]) - 50) < 0.05);
                CHECK(p.says("row "));
            }
        CHECK(with_foot >= pages.size() - 4); // the first, and a drawing of each piece
    }
}

TEST_CASE("joined by their marks, the pages show the piece as it was drafted, whole and at true scale") {
    // A slanting pad, a narrow wedge, and a flap of one page.
    const struct {
        const char* unit;
        double millimetres;
        expected_piece piece;
    } cases[] = {
        {"cm", 10, {{{0, 0}, {520, 0}, {430, 330}, {60, 330}}, 15}},
        {"in", 25.4, {{{0, 0}, {254, 25.4}, {203.2, 711.2}, {50.8, 660.4}}, 12.7}},
        {"cm", 10, {{{0, 0}, {120, 0}, {140, 110}, {10, 130}}, 7}},
    };
    const workshop w;
    for (const auto& c : cases)
        for (const known_paper& on : papers) {
            CAPTURE(c.unit);
            CAPTURE(on.option);
            w.write("piece.json", drafting_of(c.piece, c.unit, c.millimetres));
            REQUIRE(w.run("piece.json --quiet --replace --out piece.pdf --paper " + std::string(on.option)).status ==
                    0);
            check_piece(w.pages("piece.pdf"), c.piece, on);
        }
}

TEST_CASE("every joint of a piece of many pages has three lozenges that meet") {
    const workshop w;
    w.write("piece.json", drafting_of({{{0, 0}, {800, 0}, {800, 900}, {0, 900}}, 10}, "cm", 10));
    REQUIRE(w.run("piece.json --quiet --out piece.pdf").status == 0);
    const auto pages = w.pages("piece.pdf");
    const pasted_piece j = ::joined(pages, "measured", 210, 297);
    const auto rows = static_cast<std::size_t>(j.pages.rbegin()->first.first),
               columns = static_cast<std::size_t>(j.pages.rbegin()->first.second);
    CHECK(rows * columns == j.pages.size());
    CHECK(j.joints == rows * (columns - 1) + columns * (rows - 1));
    CHECK(j.misfit < 0.02);
    std::size_t lozenges = 0;
    for (const auto& [at, p] : j.pages)
        lozenges += p.page->of(joining_mark_pen).size();
    CHECK(lozenges == 2 * 3 * j.joints);
}

TEST_CASE("notches lie where they were drafted, and the arrow on the grain line") {
    const workshop w;
    w.write("piece.json",
            R"({"turncloth_design": 1, "name": "T", "sizes": ["10 x 10 cm"], "units": "centimetres", "outlines": [
                {"name": "measured", "material": "drill", "count": 3,
                 "grain": {"from_across": "5 cm", "from_up": "2 cm", "to_across": "5 cm", "to_up": "8 cm"},
                 "edges": {"is": "seam", "allowance": "1.2 cm"},
                 "corners": [{"notches": ["3 cm"]}, {"across": "finished width"},
                             {"across": "finished width", "up": "finished height", "edge": {"is": "raw edge"},
                              "notches": ["4 cm"]}, {"up": "finished height"}]}]})");
    REQUIRE(w.run("piece.json --quiet --out piece.pdf").status == 0);
    const auto pages = w.pages("piece.pdf");
    const printed_page& page = pages.back();
    const auto cut = page.of(cut_pen);
    double left = 1e9, bottom = -1e9;
    for (const drawn_line& l : cut)
        for (const page_point& p : l.points)
            left = std::min(left, p.x), bottom = std::max(bottom, p.y);
    const auto at = [&](double x, double y) { return page_point{left + 12 + x, bottom - 12 - y}; };
    const auto notches = page.of(notch_pen);
    REQUIRE(notches.size() == 3);
    CHECK(apart(notches[0].points[0], at(30, 0)) < 0.05);   // on the seam line
    CHECK(apart(notches[0].points[1], at(30, -12)) < 0.05); // and at the cut edge
    CHECK(apart(notches[1].points[0], at(60, 100)) < 0.05); // nothing is taken here: it goes on inward
    CHECK(apart(notches[2].points[1], at(60, 98)) < 0.05);
    // Along x = 50 over most of the 100 mm of the piece: 70, in its middle.
    const auto strokes = page.of(grain_pen);
    const auto shaft = std::ranges::find_if(strokes, [](const drawn_line& l) { return l.points.size() == 2; });
    REQUIRE(shaft != strokes.end());
    CHECK(apart(shaft->points[0], at(50, 15)) < 0.05);
    CHECK(apart(shaft->points[1], at(50, 85)) < 0.05);
    CHECK(page.says("measured"));
    CHECK(page.says("cut 3 of drill"));
    CHECK(page.says("row 1, column 1 of 1 x 1"));
    CHECK(page.says("rotary cutter")); // the caution
}

TEST_CASE("a curve is printed as it bends, and the page has its length") {
    const workshop w;
    w.write("round.json",
            R"({"turncloth_design": 1, "name": "Round", "sizes": ["16 x 16 cm"], "units": "centimetres", "outlines": [
                {"name": "round", "material": "felt", "corners": [
                    {"curve": {"is": "rounded", "rise": "finished height / 2"}},
                    {"across": "finished width", "curve": {"is": "rounded", "rise": "finished height / 2"}}]}]})");
    REQUIRE(w.run("round.json --quiet --out round.pdf --size '14 x 14 cm'").status == 0);
    const auto pages = w.pages("round.pdf");
    // Half of its rim: 7 pi = 21.99 cm.
    CHECK(pages[1].says("22 cm along its curve"));
    std::vector<page_point> rim;
    for (const drawn_line& l : pages.back().of(cut_pen))
        rim.insert(rim.end(), l.points.begin(), l.points.end());
    REQUIRE(rim.size() > 20);
    page_point middle{0, 0};
    const auto [left, right] = std::ranges::minmax(rim, {}, &page_point::x);
    const auto [top, bottom] = std::ranges::minmax(rim, {}, &page_point::y);
    middle = {(left.x + right.x) / 2, (top.y + bottom.y) / 2};
    for (const page_point& p : rim)
        CHECK(std::abs(apart(p, middle) - 70) < 0.15); // within 0.1 mm, and what a printed point is out by
}
