// draw/outline.hpp: an outline is drawn true to scale, every edge can be found, and what is written can be
// read. Positions are compared with arithmetic of the test's own, from the corners that the outline was given.
#include "../panel/random_outline.hpp"
#include "draw/picture.hpp"
#include <turncloth/draw/detail/outline_picture.hpp>
#include <turncloth/draw/outline.hpp>

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <limits>
#include <optional>
#include <string>
#include <vector>

using namespace turncloth;
using drawn::picture;
using drawn::segment;
using drawn::word;
using box = page_area;
using random_outline::maker;
using enum corner_shape;

namespace {

template <length_unit Unit>
edge_allowance<Unit> allowance(double all, double under = 0) {
    return {drafted_length_of<Unit>(all), drafted_length_of<Unit>(under)};
}
template <length_unit Unit>
line<Unit, double> way(double x, double y, double to_x, double to_y) {
    return {drafted_point<Unit>(x, y), drafted_point<Unit>(to_x, to_y)};
}
template <length_unit Unit>
notch<Unit> at_edge(std::size_t edge, double from_start) {
    return {edge, drafted_length_of<Unit>(from_start)};
}

/// Sides at 45 degrees with an allowance of sqrt 2 and a hem of 3 cm at the bottom.
outline<centimetre> apron(std::vector<corner_shape> shapes = {}) {
    const auto at = [](double x, double y) { return drafted_point<centimetre>(x, y); };
    const double slant = std::sqrt(2.0);
    return {{at(0, 0), at(20, 0), at(15, 5), at(5, 5)},
            {allowance<centimetre>(3, 1), allowance<centimetre>(slant), allowance<centimetre>(0),
             allowance<centimetre>(slant)},
            std::move(shapes)};
}

std::vector<segment> sides(const std::vector<page_point>& corners) {
    std::vector<segment> all;
    for (std::size_t i = 0; i < corners.size(); ++i)
        all.push_back({corners[i], corners[(i + 1) % corners.size()]});
    return all;
}

constexpr double per_unit(inch) { return 25.4; } // mm
constexpr double per_unit(centimetre) { return 10; }

/// From coordinates to paper, found from where the first corner of the seam line is drawn.
template <length_unit Unit>
struct to_paper {
    page_point first_drawn;
    double first_x, first_y, scale;
    page_point operator()(double x, double y) const {
        const double times = per_unit(Unit()) / scale;
        return {first_drawn.x + (x - first_x) * times, first_drawn.y - (y - first_y) * times};
    }
    page_point operator()(const point<Unit, double>& p) const { return (*this)(p.x.value(), p.y.value()); }
};
template <length_unit Unit>
to_paper<Unit> paper_of(const picture& p, const outline<Unit>& o) {
    const auto first = o.seam_line()[0];
    return {p.polygons("seam").at(0).at(0), first.x.value(), first.y.value(), p.scale()};
}

/// A place on the paper, to within a thousandth of a millimetre.
struct close_to {
    page_point to;

    explicit close_to(const page_point& s) : to(s) {}
    friend bool operator==(const page_point& a, const close_to& b) {
        return std::hypot(a.x - b.to.x, a.y - b.to.y) <= 0.001;
    }
    friend std::ostream& operator<<(std::ostream& out, const close_to& c) { return out << drawn::text_of(c.to); }
};

double distance(const page_point& p, const segment& s) {
    const double x = s.b.x - s.a.x, y = s.b.y - s.a.y;
    const double along = std::clamp(((p.x - s.a.x) * x + (p.y - s.a.y) * y) / (x * x + y * y), 0.0, 1.0);
    return std::hypot(s.a.x + along * x - p.x, s.a.y + along * y - p.y);
}

template <length_unit Unit>
void check_true(const picture& p, const outline<Unit>& o, const std::vector<notch<Unit>>& notches) {
    const auto paper = paper_of(p, o);
    const auto seam = p.polygons("seam").at(0), cut = p.polygons("cut").at(0);
    REQUIRE(seam.size() == o.seam_line().size());
    const auto trimmed = trimmed_cut_line(o);
    const auto& boundary = trimmed.boundary;
    REQUIRE(cut.size() == boundary.size());
    for (std::size_t i = 0; i < seam.size(); ++i)
        CHECK(seam[i] == close_to(paper(o.seam_line()[i])));
    for (std::size_t i = 0; i < cut.size(); ++i)
        CHECK(cut[i] == close_to(paper(boundary[i])));
    const auto carried = p.lines("notch");
    REQUIRE(carried.size() == notches.size());
    for (std::size_t i = 0; i < notches.size(); ++i) {
        // Along the edge, and then to the right of one who walks round counter-clockwise, as these outlines do.
        const auto a = o.seam_line()[notches[i].edge], b = o.seam_line()[(notches[i].edge + 1) % seam.size()];
        const double x = b.x.value() - a.x.value(), y = b.y.value() - a.y.value(), size = std::hypot(x, y);
        const double s = notches[i].from_start.value() / size,
                     out = o.allowance_of(notches[i].edge).allowance.value() / size;
        CHECK(carried[i].a == close_to(paper(a.x.value() + s * x, a.y.value() + s * y)));
        const page_point allowed = paper(a.x.value() + s * x + out * y, a.y.value() + s * y - out * x);
        if (trimmed.trimmed.empty()) {
            CHECK(carried[i].b == close_to(allowed));
            continue;
        }
        // Where allowances overlap it ends on the line to cut along, wherever that is met.
        const double length = std::hypot(allowed.x - carried[i].a.x, allowed.y - carried[i].a.y);
        const double across = ((allowed.x - carried[i].a.x) * (carried[i].b.y - carried[i].a.y) -
                               (allowed.y - carried[i].a.y) * (carried[i].b.x - carried[i].a.x)) /
                              std::max(length, 1.0);
        CHECK(std::abs(across) < 0.001);
        CHECK(std::any_of(cut.begin(), cut.end(), [&, k = std::size_t{0}](const page_point& from) mutable {
            return distance(carried[i].b, {from, cut[++k % cut.size()]}) < 0.001;
        }));
    }
}

/// In small steps over the box.
double box_distance(const box& b, const segment& s) {
    double least = std::numeric_limits<double>::infinity();
    for (int i = 0; i <= 20; ++i)
        for (int j = 0; j <= 4; ++j)
            least = std::min(least, distance({b.x + b.width * i / 20, b.y + b.height * j / 4}, s));
    return least;
}

/// Every edge's number stands nearest to that edge, or at the end of a leader from the middle of it. Returns how many
/// are numbered.
std::size_t check_numbers(const picture& p) {
    const auto edges = sides(p.polygons("seam").at(0));
    const auto leaders = p.lines("leader");
    std::size_t numbered = 0, led = 0;
    for (std::size_t i = 0; i < edges.size(); ++i) {
        const std::string number = std::to_string(i + 1);
        const auto is_its = [&](const word& w) {
            return w.text == number ||
                   (w.text.rfind(number + ": ", 0) == 0 && w.text.find("allowance") == std::string::npos);
        };
        const long many = std::count_if(p.words().begin(), p.words().end(), is_its);
        CHECK(many <= 1);
        if (many == 0)
            continue;
        ++numbered;
        const box b = std::find_if(p.words().begin(), p.words().end(), is_its)->where;
        const page_point middle{(edges[i].a.x + edges[i].b.x) / 2, (edges[i].a.y + edges[i].b.y) / 2};
        const auto leader =
            std::find_if(leaders.begin(), leaders.end(), [&](const segment& s) { return s.a == close_to(middle); });
        INFO("edge ", number);
        if (leader != leaders.end()) {
            ++led;
            CHECK(distance({leader->b.x, leader->b.y}, {{b.x, b.y + b.height / 2}, {b.right(), b.y + b.height / 2}}) <
                  3);
            continue;
        }
        for (std::size_t j = 0; j < edges.size(); ++j)
            CHECK((j == i || box_distance(b, edges[j]) > box_distance(b, edges[i])));
    }
    CHECK(led == leaders.size());
    return numbered;
}

} // namespace

TEST_CASE("an outline is drawn where geometry puts it, y upward, with its figures") {
    const auto piece = apron();
    const outline_labels<centimetre> says{
        "apron end", "canvas", 2, {at_edge<centimetre>(0, 10)}, way<centimetre>(10, 0, 10, 5)};
    const picture p(page_of(piece, says, {.shows = units_shown::centimetres}, {.project = "Bench"}));
    CHECK(p.page().width == 297);
    CHECK(p.page().height == 210); // ISO 216, A4
    CHECK(p.scale() == 2);         // 30 x 8 cm cut: 300 mm do not go on 190, 150 do
    const auto paper = paper_of(p, piece);
    // The cut lines of the sides meet the hem's edge 2 cm outside the corners and 3 below (geometry).
    const std::vector<page_point> cut = {paper(-5, -3), paper(25, -3), paper(17, 5), paper(3, 5)};
    const auto found = p.polygons("cut").at(0);
    REQUIRE(found.size() == cut.size());
    for (std::size_t i = 0; i < cut.size(); ++i)
        CHECK(found[i] == close_to(cut[i]));
    const auto seam = p.polygons("seam").at(0);
    CHECK(seam[1] == close_to(paper(20, 0)));
    CHECK(seam[2] == close_to(paper(15, 5)));
    CHECK(seam[2].y < seam[1].y);
    REQUIRE(p.lines("notch").size() == 1);
    CHECK(p.lines("notch")[0].a == close_to(paper(10, 0)));
    CHECK(p.lines("notch")[0].b == close_to(paper(10, -3)));
    CHECK(p.lines("notch-inward").empty());
    // Area cut: the mean of 30 and 14 cm, times 8. Sides: 5 times sqrt 2.
    for (const char* words :
         {"1: 20 cm, allowance 3 cm, of which 1 cm turned under first", "2: 7.1 cm, allowance 1.4 cm",
          "3: 10 cm, no allowance", "4: 7.1 cm, allowance 1.4 cm", "notch on edge 1, 10 cm from its corner with edge 4",
          "area cut 176 sq cm", "over all 30 x 8 cm", "cut 2 of canvas", "apron end", "Bench", "scale 1:2", "cut line",
          "seam line", "notch", "grain, an arrow"})
        CHECK_MESSAGE(p.says(words), words);
    CHECK_FALSE(p.mentions("in, allowance"));
    CHECK_FALSE(p.mentions("crossing"));
    CHECK(check_numbers(p) == 4);
    check_legible(p);
}

TEST_CASE("inches, and both units, are each rounded from what was drafted") {
    const auto at = [](double x, double y) { return drafted_point<inch>(x, y); };
    // A triangle of 3, 4 and 5 feet.
    const outline<inch> piece({at(0, 0), at(36, 0), at(0, 48)}, {allowance<inch>(1)});
    const picture both(page_of(piece, {.name = "sail"}));
    CHECK(both.says("1: 36 in (91.4 cm), allowance 1 in (2.5 cm)"));
    CHECK(both.says("2: 60 in (152.4 cm), allowance 1 in (2.5 cm)"));
    CHECK(both.says("3: 48 in (121.9 cm), allowance 1 in (2.5 cm)"));
    CHECK(both.says("cut 1"));
    // The circle inside it has a radius of 12 in, so with 1 in all round it is 13/12 as large: 39 x 52 in, which is
    // 99.06 x 132.08 cm, and half of that, 1014 sq in, in sq cm times 6.4516, 6541.92.
    CHECK(both.says("area cut 1014 sq in (6541.9 sq cm)"));
    CHECK(both.says("over all 39 x 52 in (99.1 x 132.1 cm)"));
    check_true<inch>(both, piece, {});
    CHECK(check_numbers(both) == 3);
    check_legible(both);
}

TEST_CASE("the ruler decides on halves where the double says that it is a half") {
    const auto on = [](double number, ties rule) {
        return on_graduation(drafted_length_of<centimetre>(number), "0.1"_cm, rule);
    };
    CHECK(on(1.25, ties::to_even) == "1.2"_cm);
    CHECK(on(1.25, ties::away_from_zero) == "1.3"_cm);
    CHECK(on(1.25, ties::down) == "1.2"_cm);
    CHECK(on(1.26, ties::down) == "1.3"_cm);
    CHECK(on(1.24, ties::up) == "1.2"_cm);
    // 1 cm is 25/63.5 in: 6.3 sixteenths.
    CHECK(on_graduation(drafted_length_of<centimetre>(1), "1/16"_in, ties::to_even) == "3/8"_in);
    CHECK(on_graduation(drafted_length_of<inch>(1), "0.1"_cm, ties::to_even) == "2.5"_cm);
}

TEST_CASE("hems whose ends are reflected are drawn with the corners that folding gives them") {
    // Folded up along y = 0, (0, -2) lies at (0, 2) on the side's cut line; 1 cm of the hem is turned under first.
    const auto piece = apron({reflected_in_edge_after, reflected_in_edge_before, mitred, mitred});
    const picture p(page_of(piece, {.name = "apron end"}));
    const auto paper = paper_of(p, piece);
    const double expected[][2] = {{-2, 0}, {0, -2}, {-1, -3}, {21, -3}, {20, -2}, {22, 0}, {17, 5}, {3, 5}};
    const auto cut = p.polygons("cut").at(0);
    REQUIRE(cut.size() == 8);
    for (const auto& xy : expected)
        CHECK(std::any_of(cut.begin(), cut.end(),
                          [&](const page_point& c) { return c == close_to(paper(xy[0], xy[1])); }));
    check_legible(p);
}

TEST_CASE("the folds and rows of its finishes are drawn where they lie, and listed from the cut edge") {
    const auto at = [](double x, double y) { return drafted_point<centimetre>(x, y); };
    const std::vector finishes = {double_turned_hem(1_cm, 2_cm, "0.5"_cm), seam(1_cm), seam(1_cm),
                                  finish<centimetre>()};
    const outline<centimetre> piece({at(0, 0), at(20, 0), at(20, 12), at(0, 12)}, edge_allowances_of(finishes));
    const auto lines = lines_of(piece, finishes);
    const picture p(page_of(piece, {.name = "flap", .lines = lines}, {.shows = units_shown::centimetres}));
    const auto paper = paper_of(p, piece);
    // The first turn, 1 cm from the cut edge, and the finished edge itself: from the raw edge to the seam's cut edge.
    const auto folds = p.lines("fold"), rows = p.lines("stitching");
    REQUIRE(folds.size() == 2);
    CHECK(folds[0].a == close_to(paper(0, -2)));
    CHECK(folds[0].b == close_to(paper(21, -2)));
    CHECK(folds[1].a == close_to(paper(0, 0)));
    CHECK(folds[1].b == close_to(paper(21, 0)));
    REQUIRE(rows.size() == 3);
    CHECK(rows[0].a == close_to(paper(0, 1.5)));
    CHECK(rows[0].b == close_to(paper(21, 1.5)));
    CHECK(rows[1].a == close_to(paper(20, -3)));
    CHECK(rows[2].b == close_to(paper(0, 12)));
    for (const char* words :
         {"Folds and stitching, from the cut edge inward:", "edge 1: fold at 1 cm, 3 cm; stitch at 4.5 cm",
          "edges 2, 3: stitch at 1 cm", "finished edge", "fold", "stitching"})
        CHECK_MESSAGE(p.says(words), words);
    CHECK(check_numbers(p) == 4);
    check_legible(p);
    CHECK_THROWS_WITH_AS(static_cast<void>(page_of(piece, {.name = "flap", .lines = {lines[0]}})),
                         "an outline of 4 edges has the lines of each or of none: it had those of 1", outline_error);
}

TEST_CASE("a notch on an edge without an allowance shows as a stroke inward") {
    const auto piece = apron();
    const picture p(page_of(piece, {.name = "apron end", .notches = {at_edge<centimetre>(2, 4)}}));
    const auto paper = paper_of(p, piece);
    REQUIRE(p.lines("notch-inward").size() == 1);
    const segment s = p.lines("notch-inward")[0];
    CHECK(s.a == close_to(paper(11, 5))); // 4 cm from (15, 5) toward (5, 5)
    CHECK(s.b == close_to(page_point{s.a.x, s.a.y + 2}));
    check_legible(p);
}

TEST_CASE("the arrow lies on the grain line, or beside it where that misses the piece") {
    const auto piece = apron();
    const auto arrow_for = [&](const line<centimetre, double>& grain) {
        const picture p(page_of(piece, {.name = "apron end", .grain = grain}));
        check_legible(p);
        const auto strokes = p.lines("grain");
        REQUIRE(strokes.size() == 1); // the shaft
        const auto seam = sides(p.polygons("seam").at(0));
        for (const segment& side : seam) // within the piece
            CHECK_FALSE(
                crosses(side, {std::min(strokes[0].a.x, strokes[0].b.x), std::min(strokes[0].a.y, strokes[0].b.y),
                               std::abs(strokes[0].a.x - strokes[0].b.x) + 1e-6,
                               std::abs(strokes[0].a.y - strokes[0].b.y) + 1e-6}));
        const auto head = drawn::points_of(p.groups("grain").at(0).child("polyline"));
        REQUIRE(head.size() == 3);
        CHECK(head[1] == close_to(strokes[0].b));
        for (const std::size_t end : {0U, 2U}) { // back from the tip
            CHECK(distance(head[end], strokes[0]) > 0.3);
            CHECK(std::hypot(head[end].x - strokes[0].a.x, head[end].y - strokes[0].a.y) <
                  std::hypot(strokes[0].b.x - strokes[0].a.x, strokes[0].b.y - strokes[0].a.y));
        }
        return std::pair(strokes[0], paper_of(p, piece));
    };
    const auto [up, paper] = arrow_for(way<centimetre>(8, -20, 8, -19)); // a line leads on both ways
    CHECK(std::abs(up.a.x - paper(8, 0).x) < 0.001);
    CHECK(std::abs(up.b.x - paper(8, 0).x) < 0.001);
    CHECK(up.b.y < up.a.y);
    CHECK(page_point{(up.a.x + up.b.x) / 2, (up.a.y + up.b.y) / 2} == close_to(paper(8, 2.5)));
    const auto [down, same_paper] = arrow_for(way<centimetre>(8, 9, 8, 8));
    CHECK(down.b.y > down.a.y);
    const auto [far, still_the_same] = arrow_for(way<centimetre>(8, -1e6, 8, -0.5e6));
    CHECK(far.a == close_to(up.a));
    CHECK(far.b == close_to(up.b));
    const auto [off, again] = arrow_for(way<centimetre>(100, 70, 90, 70)); // far off, leftward
    CHECK(std::abs(off.a.y - off.b.y) < 0.001);
    CHECK(off.b.x < off.a.x);
}

TEST_CASE("where allowances overlap the line to cut along is drawn, and where it was trimmed is marked and told") {
    // A slot of 1 cm, with 1 cm to be taken on both its sides: each side's cut line lies beyond the other's.
    const auto at = [](double x, double y) { return drafted_point<centimetre>(x, y); };
    const outline<centimetre> slot(
        {at(0, 0), at(21, 0), at(21, 15), at(11, 15), at(11, 5), at(10, 5), at(10, 15), at(0, 15)},
        {allowance<centimetre>(1)});
    const picture p(page_of(slot, {.name = "slotted"}));
    check_legible(p);
    const auto paper = paper_of(p, slot);
    // Cut lines at x = 10 and 11 cross the ones above at y = 16: the level ones reach past both.
    const auto diamonds = p.polygons("crossing");
    REQUIRE(diamonds.size() >= 1);
    std::vector<page_point> middles;
    for (const auto& d : diamonds) {
        REQUIRE(d.size() == 4);
        middles.push_back({(d[1].x + d[3].x) / 2, (d[0].y + d[2].y) / 2});
    }
    for (const auto& xy : {std::pair(10.0, 16.0), std::pair(11.0, 16.0)})
        CHECK(std::any_of(middles.begin(), middles.end(),
                          [&](const page_point& m) { return m == close_to(paper(xy.first, xy.second)); }));
    CHECK(p.mentions("Allowances overlap: the cut line is trimmed on edges 4 to 7."));
    CHECK(p.says("crossing, a diamond"));
    CHECK(p.mentions("391")); // sq cm: 23 by 17: the slot is closed
}

TEST_CASE("edges at a slant to the grain are named, those along it or across it are not") {
    // Two edges of the apron lie at 45 degrees, two across the grain. Common practice: cloth stretches on the bias.
    const auto piece = apron();
    const auto says = [&](const line<centimetre, double>& grain) {
        return picture(page_of(piece, {.name = "apron end", .grain = grain}));
    };
    CHECK(says(way<centimetre>(10, 0, 10, 5)).mentions("along edges 2, 4 the cloth stretches"));
    CHECK(says(way<centimetre>(0, 0, 1, 1)).mentions("along edges 1, 3 the cloth stretches"));
    CHECK_FALSE(picture(page_of(piece, {.name = "apron end"})).mentions("stretches"));
}

TEST_CASE("at full size a piece is parted over pages, after its drawing with the joints, and every part is true") {
    // 30 x 8 cm cut, in pages of A4 that show 196 mm and share 16: two beside each other, or one and a half below.
    const auto piece = apron();
    const outline_labels<centimetre> says{"apron end",
                                          "canvas",
                                          2,
                                          {at_edge<centimetre>(0, 3)},
                                          way<centimetre>(10, 0, 10, 5),
                                          {"single-turned hem", "seam allowance", "raw edge", "seam allowance"}};
    const ruler by{.shows = units_shown::centimetres};
    const auto pages = pages_at_full_size(piece, says, by, {}, "Mind your fingers.");
    REQUIRE(pages.size() == 3);
    const auto words_of = [](const page& p, const std::string& text) {
        return std::count_if(p.words.begin(), p.words.end(), [&](const page_words& w) { return w.text == text; });
    };
    const auto joints = [](const page& p) {
        return std::count_if(p.strokes.begin(), p.strokes.end(),
                             [](const page_stroke& s) { return s.with == joining_pen; });
    };
    CHECK(joints(pages[0]) == 1);
    CHECK(words_of(pages[0], "1: 20 cm, single-turned hem, 3 cm, of which 1 cm turned under first") == 1);
    CHECK(words_of(pages[0], "3: 10 cm, raw edge, no allowance") == 1);
    long names = 0, hems = 0, feet = 0;
    double level = 0;
    for (std::size_t i = 1; i < 3; ++i) {
        CHECK(joints(pages[i]) == 1);
        names += words_of(pages[i], "cut 2 of canvas"); // in the heading of each, and in the piece once
        hems += words_of(pages[i], "single-turned hem, 3 cm");
        feet += words_of(pages[i], "Mind your fingers.");
        for (const page_stroke& s : pages[i].strokes)
            if (s.with == detail::cut_line_kind.with)
                for (std::size_t k = 1; k < s.points.size(); ++k)
                    if (s.points[k].y == s.points[k - 1].y)
                        level += std::abs(s.points[k].x - s.points[k - 1].x);
    }
    CHECK(names == 3);
    CHECK(hems == 1);
    CHECK(feet == 2);
    CHECK(level == doctest::Approx(300 + 140 + 2 * 16)); // both level edges, of which each crosses the joint
    CHECK(pages_at_full_size(piece, says, by, {.on = paper::custom(40_cm, 60_cm)}).size() == 2);
    CHECK_THROWS_AS(
        pages_at_full_size(outline<centimetre>({drafted_point<centimetre>(0, 0), drafted_point<centimetre>(9999, 0),
                                                drafted_point<centimetre>(0, 9999)},
                                               {allowance<centimetre>(1)}),
                           {.name = "sail"}),
        range_error);
}

TEST_CASE("no two kinds of line are drawn alike, and none by colour alone") {
    const auto at = [](double x, double y) { return drafted_point<centimetre>(x, y); };
    const outline<centimetre> slot({at(0, 0), at(21, 0), at(21, 15), at(11, 15), at(10.5, 5), at(10, 15), at(0, 15)},
                                   {allowance<centimetre>(1)});
    const picture p(page_of(
        slot, {.name = "slotted", .notches = {at_edge<centimetre>(0, 4)}, .grain = way<centimetre>(0, 0, 0, 1)}));
    check_told_apart(p, {"cut", "seam", "notch", "grain", "crossing"});
    const auto weight = [&](const char* group) { return p.groups(group).at(0).attribute("stroke-width").as_double(); };
    for (const char* group : {"seam", "notch", "grain", "crossing"})
        CHECK(weight("cut") > weight(group));
}

TEST_CASE("random outlines are true and can be read, on either paper, from thumbnails to sails") {
    maker any(2026);
    std::size_t notches = 0, crossing = 0, edges = 0, numbered = 0;
    for (const int round : any.cases(160)) {
        const std::size_t n = any.count(3, 14);
        const double size = round % 5 == 0 ? any.between(0.5, 3) : any.between(5, round % 7 == 0 ? 3000 : 60);
        const bool star = round % 2 == 0;
        const auto corners = any.piece(n, star ? size / 3 : size * 0.95, size);
        const outline<centimetre> piece(corners, any.allowances(n, 0, size / (round % 3 == 0 ? 1 : 30)));
        outline_labels<centimetre> says{"gusset for the shed at the far end", "waxed canvas", round + 1};
        for (std::size_t i = 0; i < n; ++i) {
            const auto a = corners[i], b = corners[(i + 1) % n];
            const double length = std::hypot(b.x.value() - a.x.value(), b.y.value() - a.y.value());
            says.notches.push_back(at_edge<centimetre>(i, length * any.between(0, 1)));
        }
        std::erase_if(says.notches, [&](const notch<centimetre>& mark) {
            try {
                static_cast<void>(piece.carried(mark));
                return false;
            } catch (const outline_error&) {
                return true; // a corner takes its place on the cut line away
            }
        });
        if (round % 4 != 0)
            says.grain = way<centimetre>(any.between(-size, size), any.between(-size, size), any.between(-size, size),
                                         any.between(-size, size));
        const picture p(page_of(piece, says, {.shows = static_cast<units_shown>(round % 3)},
                                {"Shed at the far end of the allotments", round % 2 == 0 ? paper::a4 : paper::letter}));
        check_true(p, piece, says.notches);
        check_legible(p);
        const std::size_t with_number = check_numbers(p);
        CHECK((with_number == n || p.mentions("No room was found")));
        CHECK(p.mentions("Allowances overlap") == !trimmed_cut_line(piece).trimmed.empty());
        for (std::size_t i = 1; i <= n; ++i)
            CHECK(p.mentions(std::to_string(i) + ": "));
        notches += says.notches.size();
        crossing += trimmed_cut_line(piece).trimmed.empty() ? 0 : 1;
        edges += n;
        numbered += with_number;
    }
    CHECK(notches > 800);
    CHECK(crossing > 5);
    CHECK(crossing < 100);
    CHECK(numbered * 100 > edges * 98);
}

TEST_CASE("of very many edges some are numbered, and what the list leaves out is counted") {
    maker any(7);
    const auto corners = any.piece(900, 90, 100);
    const outline<centimetre> piece(corners, {allowance<centimetre>(0.1)});
    const picture p(page_of(piece, {.name = "wheel"}));
    check_true<centimetre>(p, piece, {});
    check_legible(p);
    CHECK(p.mentions("Of every 10 edges one has its number here."));
    CHECK(p.mentions(" more"));
    CHECK(check_numbers(p) <= 90);
    CHECK(check_numbers(p) > 45);
}

TEST_CASE("whatever the names are, the document holds and the words stay in their places") {
    std::string endless;
    for (int i = 0; i < 80; ++i)
        endless += "word & <more> ";
    const picture p(page_of(apron(), {.name = endless, .material = endless}, {}, {.project = endless}));
    check_legible(p);
    CHECK(std::string(p.root().child("title").text().get()).find("word & <more> word") != std::string::npos);
    check_legible(picture(page_of(apron(), {})));
}

TEST_CASE("what cannot be drawn is refused with its own error") {
    const auto piece = apron();
    const auto with = [&](const outline_labels<centimetre>& says) { return page_of(piece, says); };
    CHECK_THROWS_AS(with({.notches = {at_edge<centimetre>(4, 1)}}), outline_error);
    CHECK_THROWS_AS(with({.notches = {at_edge<centimetre>(0, 20.5)}}), outline_error);
    CHECK_THROWS_AS(with({.grain = way<centimetre>(1, 2, 1, 2)}), outline_error);
    const double none = std::numeric_limits<double>::quiet_NaN(), endless = std::numeric_limits<double>::infinity();
    CHECK_THROWS_AS(with({.grain = way<centimetre>(1, 2, none, 2)}), outline_error);
    CHECK_THROWS_AS(with({.grain = way<centimetre>(1, 2, endless, 2)}), outline_error);
    CHECK_THROWS_AS(with({.grain = way<centimetre>(-1e308, 0, 1e308, 2)}), outline_error);
    CHECK_THROWS_AS(with({.count = 0}), range_error);
    CHECK_THROWS_AS(page_of(piece, {}, {.inches = 0_in}), range_error);
    CHECK_THROWS_AS(page_of(piece, {}, {.centimetres = -"0.1"_cm}), range_error);
    const auto at = [](double x, double y) { return drafted_point<centimetre>(x, y); };
    CHECK_THROWS_AS(page_of(outline<centimetre>({at(0, 0), at(1e6, 0), at(0, 1e6)}, {allowance<centimetre>(0)}), {}),
                    range_error);
}
