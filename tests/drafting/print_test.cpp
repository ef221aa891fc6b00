// The printed pages are measured: paper, test squares, true scale across joined pages, and that nothing is missing.
#include "drafting/joined.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <string>
#include <vector>

namespace {

struct known_paper {
    const char* option;
    double width, height; ///< millimetres
};
// ISO 216: A4 is 210 x 297 mm. ANSI/ASME Y14.1: size A is 8 1/2 x 11 in.
constexpr known_paper papers[] = {{"a4", 210, 297}, {"letter", 215.9, 279.4}};

using points = std::vector<place_on_page>;

/// A convex piece by its seam corners, counter-clockwise, and one allowance, all in millimetres.
struct expected_piece {
    points seam;
    double allowance;

    /// Where neighbouring edges meet when each is moved out by the allowance (two lines, solved).
    points cut() const {
        points corners;
        const std::size_t n = seam.size();
        for (std::size_t i = 0; i < n; ++i) {
            const auto a = line((i + n - 1) % n), b = line(i);
            const double d = a[0] * b[1] - a[1] * b[0];
            corners.push_back({(a[2] * b[1] - a[1] * b[2]) / d, (a[0] * b[2] - a[2] * b[0]) / d});
        }
        return corners;
    }

private:
    /// nx x + ny y = c of edge i, moved out.
    std::array<double, 3> line(std::size_t i) const {
        const place_on_page p = seam[i], q = seam[(i + 1) % seam.size()];
        const double size = apart(p, q), nx = (q.y - p.y) / size, ny = (p.x - q.x) / size;
        return {nx, ny, nx * p.x + ny * p.y + allowance};
    }
};

std::string drafting_of(const expected_piece& piece, const std::string& unit, double millimetres) {
    const auto figure = [&](double mm) {
        std::ostringstream out;
        out.precision(12);
        out << mm / millimetres;
        return out.str();
    };
    std::string text = "title: Measured\nunit: " + unit +
                       "\npiece: measured\nmaterial: canvas\ncut: 1\ngrain: " + figure(60) + "; " + figure(50) + "; " +
                       figure(60) + "; " + figure(90) + "\nall edges: seam " + figure(piece.allowance) + "\n";
    for (const place_on_page& p : piece.seam)
        text += "corner: " + figure(p.x) + "; " + figure(p.y) + "\n";
    return text;
}

double from_segment(const place_on_page& p, const place_on_page& a, const place_on_page& b) {
    const double ux = b.x - a.x, uy = b.y - a.y,
                 t = std::clamp(((p.x - a.x) * ux + (p.y - a.y) * uy) / (ux * ux + uy * uy), 0.0, 1.0);
    return apart(p, {a.x + ux * t, a.y + uy * t});
}

double from_lines(const place_on_page& p, const std::vector<drawn_line>& lines) {
    double least = 1e9;
    for (const drawn_line& l : lines)
        for (std::size_t i = 0; i + 1 < l.points.size(); ++i)
            least = std::min(least, from_segment(p, l.points[i], l.points[i + 1]));
    return least;
}

double from_outline(const place_on_page& p, const points& outline) {
    double least = 1e9;
    for (std::size_t i = 0; i < outline.size(); ++i)
        least = std::min(least, from_segment(p, outline[i], outline[(i + 1) % outline.size()]));
    return least;
}

/// The end or bend of a printed line that is nearest.
place_on_page nearest_corner(const place_on_page& p, const std::vector<drawn_line>& lines) {
    place_on_page best{1e9, 1e9};
    for (const drawn_line& l : lines)
        for (const place_on_page& q : l.points)
            if (apart(p, q) < apart(p, best))
                best = q;
    return best;
}

/// The drafted outline as it should lie on the joined pages: up the paper, or a quarter turn to the right.
points laid(const points& outline, const std::vector<drawn_line>& cut, const points& cut_outline, bool turned) {
    const auto lie = [&](const place_on_page& p) {
        return turned ? place_on_page{p.y, p.x} : place_on_page{p.x, -p.y};
    };
    const auto corner = [](const auto& all) {
        place_on_page least{1e9, 1e9};
        for (const place_on_page& p : all)
            least = {std::min(least.x, p.x), std::min(least.y, p.y)};
        return least;
    };
    points printed, drafted, moved;
    for (const drawn_line& l : cut)
        printed.insert(printed.end(), l.points.begin(), l.points.end());
    for (const place_on_page& p : cut_outline)
        drafted.push_back(lie(p));
    const place_on_page a = corner(printed), b = corner(drafted);
    for (const place_on_page& p : outline)
        moved.push_back({lie(p).x + a.x - b.x, lie(p).y + a.y - b.y});
    return moved;
}

bool inside(const points& outline, const place_on_page& p) {
    bool in = false;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const place_on_page a = outline[i], b = outline[(i + 1) % outline.size()];
        if ((a.y <= p.y) != (b.y <= p.y) && p.x < a.x + (p.y - a.y) / (b.y - a.y) * (b.x - a.x))
            in = !in;
    }
    return in;
}

void check_line(const std::vector<drawn_line>& printed, const points& expected) {
    // Every drafted corner is there, and all of them as far apart as they were drafted.
    points found;
    for (const place_on_page& p : expected) {
        found.push_back(nearest_corner(p, printed));
        REQUIRE(apart(found.back(), p) < 0.1);
    }
    for (std::size_t i = 0; i < expected.size(); ++i)
        for (std::size_t j = 0; j < i; ++j)
            REQUIRE(std::abs(apart(found[i], found[j]) - apart(expected[i], expected[j])) < 0.1);
    // Nothing of the line is missing, and nothing is drawn that it is not.
    for (std::size_t i = 0; i < expected.size(); ++i) {
        const place_on_page a = expected[i], b = expected[(i + 1) % expected.size()];
        for (double t = 0; t <= 1; t += 0.5 / apart(a, b))
            REQUIRE(from_lines({a.x + (b.x - a.x) * t, a.y + (b.y - a.y) * t}, printed) < 0.05);
    }
    for (const drawn_line& l : printed)
        for (const place_on_page& p : l.points)
            REQUIRE(from_outline(p, expected) < 0.05);
}

void check_piece(const std::vector<printed_page>& pages, const expected_piece& piece, const known_paper& on) {
    const joined_piece j = joined(pages, "measured", on.width, on.height);
    CHECK(j.misfit < 0.02);
    const auto cut = j.lines(line_kind::cut), seam = j.lines(line_kind::seam);
    double width = 0, height = 0, printed_width = 0;
    place_on_page least{1e9, 1e9}, most{-1e9, -1e9}, printed_least{1e9, 1e9}, printed_most{-1e9, -1e9};
    for (const place_on_page& p : piece.cut()) {
        least = {std::min(least.x, p.x), std::min(least.y, p.y)};
        most = {std::max(most.x, p.x), std::max(most.y, p.y)};
    }
    for (const drawn_line& l : cut)
        for (const place_on_page& p : l.points) {
            printed_least = {std::min(printed_least.x, p.x), std::min(printed_least.y, p.y)};
            printed_most = {std::max(printed_most.x, p.x), std::max(printed_most.y, p.y)};
        }
    width = most.x - least.x, height = most.y - least.y, printed_width = printed_most.x - printed_least.x;
    const bool turned = std::abs(printed_width - height) < std::abs(printed_width - width);
    check_line(cut, laid(piece.cut(), cut, piece.cut(), turned));
    check_line(seam, laid(piece.seam, cut, piece.cut(), turned));
    const points whole = laid(piece.cut(), cut, piece.cut(), turned);
    for (double x = printed_least.x; x <= printed_most.x; x += 3)
        for (double y = printed_least.y; y <= printed_most.y; y += 3)
            if (inside(whole, {x, y}))
                REQUIRE(j.on_paper({x, y}));
}

} // namespace

TEST_CASE("pages have the size of their paper, to the point's hundredth") {
    const workshop w;
    for (const known_paper& on : papers) {
        REQUIRE(w.run("'" TURNCLOTH_DRAFTING_FILES "/kneeling_pad.drafting' --out pad.pdf --paper " +
                      std::string(on.option))
                    .status == 0);
        const auto sizes = w.page_sizes("pad.pdf");
        CHECK(sizes.size() > 10);
        for (const auto& [width, height] : sizes) {
            CHECK(std::abs(width - on.width / 25.4 * 72) < 0.01);
            CHECK(std::abs(height - on.height / 25.4 * 72) < 0.01);
        }
    }
}

TEST_CASE("the test squares measure 50 mm and 2 in each way, and every other page has 50 mm at its foot") {
    const workshop w;
    for (const known_paper& on : papers) {
        REQUIRE(
            w.run("'" TURNCLOTH_DRAFTING_FILES "/trug_liner.drafting' --out trug.pdf --paper " + std::string(on.option))
                .status == 0);
        const auto pages = w.pages("trug.pdf");
        const auto squares = pages[0].of(line_kind::test_square);
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
                const auto foot = p.of(line_kind::plain);
                REQUIRE(foot.size() == 1);
                REQUIRE(foot[0].points.size() == 4);
                CHECK(std::abs(apart(foot[0].points[1], foot[0].points[2]) - 50) < 0.05);
                CHECK(p.says("row "));
            }
        CHECK(with_foot >= pages.size() - 3);
    }
}

TEST_CASE("joined by their strokes, the pages show the piece as it was drafted, whole and at true scale") {
    // A slanting pad, a narrow wedge, and a flap of one page, in three units.
    const struct {
        const char* unit;
        double millimetres;
        expected_piece piece;
    } cases[] = {
        {"cm", 10, {{{0, 0}, {520, 0}, {430, 330}, {60, 330}}, 15}},
        {"in", 25.4, {{{0, 0}, {254, 25.4}, {203.2, 711.2}, {50.8, 660.4}}, 12.7}},
        {"mm", 1, {{{0, 0}, {120, 0}, {140, 110}, {10, 130}}, 7}},
    };
    const workshop w;
    for (const auto& c : cases)
        for (const known_paper& on : papers) {
            CAPTURE(c.unit);
            CAPTURE(on.option);
            w.write("piece.drafting", drafting_of(c.piece, c.unit, c.millimetres));
            REQUIRE(w.run("piece.drafting --quiet --out piece.pdf --paper " + std::string(on.option)).status == 0);
            check_piece(w.pages("piece.pdf"), c.piece, on);
        }
}

TEST_CASE("every joint of a piece of many pages has three strokes that meet") {
    const workshop w;
    w.write("piece.drafting", drafting_of({{{0, 0}, {800, 0}, {800, 900}, {0, 900}}, 10}, "cm", 10));
    REQUIRE(w.run("piece.drafting --quiet --out piece.pdf").status == 0);
    const auto pages = w.pages("piece.pdf");
    const joined_piece j = joined(pages, "measured", 210, 297);
    const auto rows = static_cast<std::size_t>(j.pages.rbegin()->first.first),
               columns = static_cast<std::size_t>(j.pages.rbegin()->first.second);
    CHECK(rows * columns == j.pages.size());
    CHECK(j.joints == rows * (columns - 1) + columns * (rows - 1));
    CHECK(j.misfit < 0.02);
    std::size_t strokes = 0;
    for (const auto& [at, p] : j.pages)
        strokes += p.page->of(line_kind::joining_mark).size();
    CHECK(strokes == 2 * 3 * j.joints);
}

TEST_CASE("notches and the grain arrow lie where they were drafted") {
    const workshop w;
    w.write("piece.drafting", "title: T\nunit: mm\npiece: measured\nmaterial: drill\ncut: 3\ngrain: 50; 20; 50; 80\n"
                              "all edges: seam 12\ncorner: 0; 0\nnotch: 30\ncorner: 100; 0\ncorner: 100; 100\n"
                              "edge: raw\nnotch: 40\ncorner: 0; 100\n");
    REQUIRE(w.run("piece.drafting --quiet --out piece.pdf").status == 0);
    const auto pages = w.pages("piece.pdf");
    const printed_page& page = pages.back();
    const auto cut = page.of(line_kind::cut);
    double left = 1e9, bottom = -1e9;
    for (const drawn_line& l : cut)
        for (const place_on_page& p : l.points)
            left = std::min(left, p.x), bottom = std::max(bottom, p.y);
    const auto at = [&](double x, double y) { return place_on_page{left + 12 + x, bottom - 12 - y}; };
    const auto notches = page.of(line_kind::notch);
    REQUIRE(notches.size() == 2);
    CHECK(apart(notches[0].points[0], at(30, -12)) < 0.05); // at the cut edge
    CHECK(apart(notches[0].points[1], at(30, 0)) < 0.05);   // and on the seam line
    CHECK(apart(notches[1].points[0], at(60, 100)) < 0.05); // nothing is taken here: it goes on inward
    CHECK(apart(notches[1].points[1], at(60, 96)) < 0.05);
    const auto grain = page.of(line_kind::grain);
    REQUIRE(grain.size() == 5); // the line and two strokes at each end
    CHECK(apart(grain[0].points[0], at(50, 20)) < 0.05);
    CHECK(apart(grain[0].points[1], at(50, 80)) < 0.05);
    CHECK(page.says("measured"));
    CHECK(page.says("cut 3, drill"));
    CHECK(page.says("row 1, column 1 of 1 x 1"));
    CHECK(page.says("rotary cutter")); // the caution
}
