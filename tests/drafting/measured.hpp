// A drafted piece, and the check that the printed pages show it: true to scale, whole, and nothing else.
//
//   expected_piece{seam corners, allowance}      convex, in millimetres; its cut line by geometry
//   drafting_of(piece, "in", 25.4)               as a design file in a unit of so many millimetres
//   check_piece(pages, piece, paper)             joins the pages and measures
#ifndef TURNCLOTH_TESTS_DRAFTING_MEASURED_HPP
#define TURNCLOTH_TESTS_DRAFTING_MEASURED_HPP

#include "drafting/joined.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <sstream>
#include <string>
#include <utility>
#include <vector>

struct known_paper {
    const char* option;
    double width, height; ///< millimetres
};
// ISO 216: A4 is 210 x 297 mm. ANSI/ASME Y14.1: size A is 8 1/2 x 11 in.
inline constexpr known_paper papers[] = {{"a4", 210, 297}, {"letter", 215.9, 279.4}};

using points = std::vector<page_point>;

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
        const page_point p = seam[i], q = seam[(i + 1) % seam.size()];
        const double size = apart(p, q), nx = (q.y - p.y) / size, ny = (p.x - q.x) / size;
        return {nx, ny, nx * p.x + ny * p.y + allowance};
    }
};

inline std::string drafting_of(const expected_piece& piece, const std::string& unit, double millimetres) {
    const auto figure = [&](double mm) {
        std::ostringstream out;
        out.precision(12);
        out << '"' << (mm < 0 ? "-" : "") << std::abs(mm) / millimetres << ' ' << unit << '"';
        return out.str();
    };
    std::string text = R"({"turncloth_design": 1, "name": "Measured", "sizes": ["9 x 9 )" + unit +
                       R"("], "outlines": [{"name": "measured", "material": "canvas", "grain": {"from_across": )" +
                       figure(60) + R"(, "from_up": )" + figure(50) + R"(, "to_across": )" + figure(60) +
                       R"(, "to_up": )" + figure(90) + R"(}, "edges": {"is": "seam", "allowance": )" +
                       figure(piece.allowance) + R"(}, "corners": [)";
    for (const page_point& p : piece.seam)
        text += (text.back() == '[' ? R"({"across": )" : R"(, {"across": )") + figure(p.x) + R"(, "up": )" +
                figure(p.y) + "}";
    return text + R"(]}], "units": ")" + (unit == "in" ? "inches" : "centimetres") + R"("})";
}

inline double from_segment(const page_point& p, const page_point& a, const page_point& b) {
    const double ux = b.x - a.x, uy = b.y - a.y,
                 t = std::clamp(((p.x - a.x) * ux + (p.y - a.y) * uy) / (ux * ux + uy * uy), 0.0, 1.0);
    return apart(p, {a.x + ux * t, a.y + uy * t});
}

inline double from_lines(const page_point& p, const std::vector<drawn_line>& lines) {
    double least = 1e9;
    for (const drawn_line& l : lines)
        for (std::size_t i = 0; i + 1 < l.points.size(); ++i)
            least = std::min(least, from_segment(p, l.points[i], l.points[i + 1]));
    return least;
}

inline double from_outline(const page_point& p, const points& outline) {
    double least = 1e9;
    for (std::size_t i = 0; i < outline.size(); ++i)
        least = std::min(least, from_segment(p, outline[i], outline[(i + 1) % outline.size()]));
    return least;
}

/// The end or bend of a printed line that is nearest.
inline page_point nearest_corner(const page_point& p, const std::vector<drawn_line>& lines) {
    page_point best{1e9, 1e9};
    for (const drawn_line& l : lines)
        for (const page_point& q : l.points)
            if (apart(p, q) < apart(p, best))
                best = q;
    return best;
}

inline std::pair<page_point, page_point> extremes(const points& all) {
    page_point least{1e9, 1e9}, most{-1e9, -1e9};
    for (const page_point& p : all) {
        least = {std::min(least.x, p.x), std::min(least.y, p.y)};
        most = {std::max(most.x, p.x), std::max(most.y, p.y)};
    }
    return {least, most};
}

/// An outline as it should lie on the joined pages, up the paper or a quarter turn to the right, so that the upper left
/// of the whole piece is at `corner`.
inline points laid(const points& outline, const page_point& corner, const points& whole, bool turned) {
    const auto lie = [&](const points& all) {
        points lying;
        for (const page_point& p : all)
            lying.push_back(turned ? page_point{p.y, p.x} : page_point{p.x, -p.y});
        return lying;
    };
    const page_point from = extremes(lie(whole)).first;
    points moved = lie(outline);
    for (page_point& p : moved)
        p = {p.x + corner.x - from.x, p.y + corner.y - from.y};
    return moved;
}

inline bool inside(const points& outline, const page_point& p) {
    bool in = false;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const page_point a = outline[i], b = outline[(i + 1) % outline.size()];
        if ((a.y <= p.y) != (b.y <= p.y) && p.x < a.x + (p.y - a.y) / (b.y - a.y) * (b.x - a.x))
            in = !in;
    }
    return in;
}

inline void check_line(const std::vector<drawn_line>& printed, const points& expected) {
    // Every drafted corner is there, and all of them as far apart as they were drafted.
    points found;
    for (const page_point& p : expected) {
        found.push_back(nearest_corner(p, printed));
        REQUIRE(apart(found.back(), p) < 0.1);
    }
    for (std::size_t i = 0; i < expected.size(); ++i)
        for (std::size_t j = 0; j < i; ++j)
            REQUIRE(std::abs(apart(found[i], found[j]) - apart(expected[i], expected[j])) < 0.1);
    // Nothing of the line is missing, and nothing is drawn that it is not.
    for (std::size_t i = 0; i < expected.size(); ++i) {
        const page_point a = expected[i], b = expected[(i + 1) % expected.size()];
        for (double t = 0; t <= 1; t += 0.5 / apart(a, b))
            REQUIRE(from_lines({a.x + (b.x - a.x) * t, a.y + (b.y - a.y) * t}, printed) < 0.05);
    }
    for (const drawn_line& l : printed)
        for (const page_point& p : l.points)
            REQUIRE(from_outline(p, expected) < 0.05);
}

/// Joins the pages and compares them with the piece as it was drafted.
inline void check_piece(const std::vector<printed_page>& pages, const expected_piece& piece, const known_paper& on) {
    const pasted_piece j = ::joined(pages, "measured", on.width, on.height);
    CHECK(j.misfit < 0.02);
    const auto cut = j.lines(cut_pen), seam = j.lines(seam_pen);
    points printed;
    for (const drawn_line& l : cut)
        printed.insert(printed.end(), l.points.begin(), l.points.end());
    const auto [least, most] = extremes(printed);
    const auto [drafted_least, drafted_most] = extremes(piece.cut());
    const double width = most.x - least.x;
    const bool turned =
        std::abs(width - (drafted_most.y - drafted_least.y)) < std::abs(width - (drafted_most.x - drafted_least.x));
    const points whole = laid(piece.cut(), least, piece.cut(), turned);
    check_line(cut, whole);
    check_line(seam, laid(piece.seam, least, piece.cut(), turned));
    for (double x = least.x; x <= most.x; x += 3)
        for (double y = least.y; y <= most.y; y += 3)
            if (inside(whole, {x, y}))
                REQUIRE(j.on_paper({x, y}));
}

#endif
