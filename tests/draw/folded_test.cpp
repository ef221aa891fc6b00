// draw/folded.hpp: a folded panel is drawn as its folds make it, true to scale, and every number that is
// printed is the number of layers at the spot where it stands or to which it is led.
#include "at_random.hpp"
#include "draw/picture.hpp"
#include <turncloth.hpp>
#include <turncloth/draw/folded.hpp>
#include <turncloth/testing/doctest.hpp>

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <random>
#include <string>
#include <vector>

namespace turncloth::drawn {

namespace {

std::vector<segment> lines_of(pugi::xml_node group) {
    std::vector<segment> all;
    for (const auto& l : group.children("line"))
        all.push_back({{number_of(l, "x1"), number_of(l, "y1")}, {number_of(l, "x2"), number_of(l, "y2")}});
    return all;
}

/// A printed number, and the spot of the folded piece that it tells of: in mm from its left and its bottom edge.
struct told {
    long layers;
    double from_left, from_bottom;
    bool in_frame;
};

/// Where the piece lies on the page and in each frame: one finished corner, the scale, and whether it is the right
/// corner on the page, the lower.
struct view_on_page {
    box around;
    point corner;
    double scale;
    bool right, low;
};

std::vector<view_on_page> views(const picture& p) {
    const box outline = boxes(p, "outline").at(0);
    std::vector<view_on_page> all;
    const auto frames = boxes(p, "frame");
    const auto groups = p.groups("corner-outline");
    REQUIRE(frames.size() == groups.size() + 1); // the title block is the last
    for (std::size_t i = 0; i < groups.size(); ++i) {
        const auto lines = lines_of(groups[i]);
        REQUIRE(lines.size() >= 2);
        // "A: top left, 1:2" stands above it.
        const std::string letter(1, static_cast<char>('A' + i));
        for (const word& w : p.words())
            if (w.text.rfind(letter + ": ", 0) == 0 && w.text.find("up to") == std::string::npos) {
                const std::string ratio = w.text.substr(w.text.rfind(' ') + 1);
                const double scale =
                    std::strtod(ratio.c_str() + ratio.find(':') + 1, nullptr) / std::strtod(ratio.c_str(), nullptr);
                const bool right = w.text.find(" left,") != std::string::npos,
                           low = w.text.find("bottom ") != std::string::npos;
                double x = lines[0].a.x, y = lines[0].a.y;
                for (const segment& s : lines)
                    for (const point& at : {s.a, s.b}) {
                        x = right ? std::max(x, at.x) : std::min(x, at.x);
                        y = low ? std::max(y, at.y) : std::min(y, at.y);
                    }
                all.push_back({frames[i], {x, y}, scale, right, low});
            }
    }
    REQUIRE(all.size() == groups.size());
    all.push_back({p.page(), {outline.x, outline.y}, p.scale(), false, false});
    return all;
}

bool holds(const box& b, point p) { return p.x > b.x && p.x < b.right() && p.y > b.y && p.y < b.bottom(); }
point middle_of(const box& b) { return {b.x + b.width / 2, b.y + b.height / 2}; }

/// Every number, with the spot at the other end of its leader where it has one.
std::vector<told> numbers(const picture& p, double width, double height) {
    struct found {
        const word* w;
        point spot;
    };
    std::vector<found> all;
    for (const word& w : p.words())
        if (w.text.find_first_not_of("0123456789") == std::string::npos)
            all.push_back({&w, middle_of(w.where)});
    for (const auto& l : p.leaders()) {
        const auto far = [&](const word& w) {
            const double dx = std::max({w.where.x - l[1].x, 0.0, l[1].x - w.where.right()}),
                         dy = std::max({w.where.y - l[1].y, 0.0, l[1].y - w.where.bottom()});
            return std::hypot(dx, dy);
        };
        const word* nearest = &p.words().front();
        for (const word& w : p.words())
            nearest = far(w) < far(*nearest) ? &w : nearest;
        CHECK(far(*nearest) < 1.5);
        for (found& f : all)
            if (f.w == nearest)
                f.spot = l[0];
    }
    const auto on_page = views(p);
    std::vector<told> made;
    for (const found& f : all)
        for (const view_on_page& v : on_page)
            if (holds(v.around, f.spot)) {
                const double x = std::fabs(f.spot.x - v.corner.x) * v.scale,
                             y = std::fabs(f.spot.y - v.corner.y) * v.scale;
                // The back shows the piece's left edge at the right.
                made.push_back({std::atol(f.w->text.c_str()), v.right ? x : width - x, v.low ? y : height - y,
                                &v != &on_page.back()});
                break;
            }
    CHECK(made.size() == all.size());
    return made;
}

/// Layers at a distance inward of the finished edge of a hem turned by `first` and again by `depth`: one in the middle,
/// one more over the hem, one more where its first turn lies. Common practice.
long across(double in, double first, double depth) { return 1 + (in < depth) + (in < depth && in > depth - first); }

std::vector<long> sorted_counts(const std::vector<told>& all, bool in_frame) {
    std::vector<long> counts;
    for (const told& t : all)
        if (t.in_frame == in_frame)
            counts.push_back(t.layers);
    std::sort(counts.begin(), counts.end());
    return counts;
}

} // namespace

TEST_CASE("a napkin with a double-turned hem and stacked corners: 1 layer, 3 in a hem, 9 at a corner") {
    // Both turns 1/2 in: cut 17 x 17 in, finished 15 x 15 in (381 mm). Common practice.
    const panel napkin(finished_size(15_in, 15_in), all_round(double_turned_hem("1/2"_in, "1/2"_in)));
    const picture p(drawing_of(fold_panel(napkin, all_corners(stacked<inch>())), {.name = "napkin"}, inch_ruler(16),
                               {.project = "Picnic on the plots"}));
    CHECK(p.page().width == 210);
    CHECK(p.page().height == 297); // ISO 216, A4
    const box outline = boxes(p, "outline").at(0);
    CHECK(outline.width * p.scale() == near(381));
    CHECK(outline.height * p.scale() == near(381));
    const auto told_here = numbers(p, 381, 381);
    CHECK(sorted_counts(told_here, false) == std::vector<long>{1, 3, 3, 3, 3});
    CHECK(sorted_counts(told_here, true) == std::vector<long>{1, 3, 3, 9});
    for (const told& t : told_here) {
        const double in_x = std::min(t.from_left, 381 - t.from_left),
                     in_y = std::min(t.from_bottom, 381 - t.from_bottom);
        CHECK(t.layers == across(in_x, 12.7, 12.7) * across(in_y, 12.7, 12.7));
    }
    CHECK(p.count("A: up to 9 layers") == 4);
    // Of 1/2 in, enlarged twice: the hems' inner edges are 25.4 mm in from the corner, which is at the right here.
    CHECK(p.says("A: top left, 2:1"));
    const view_on_page larger = views(p).at(0);
    const auto on_line = [](double a, double b, double at) { return a == near(at) && b == near(at); };
    const auto edges_there = p.lines("corner-edge");
    CHECK(std::any_of(edges_there.begin(), edges_there.end(),
                      [&](const segment& e) { return on_line(e.a.x, e.b.x, larger.corner.x - 25.4); }));
    CHECK(std::any_of(edges_there.begin(), edges_there.end(),
                      [&](const segment& e) { return on_line(e.a.y, e.b.y, larger.corner.y + 25.4); }));
    CHECK(p.says("stacked; alike: top right, bottom right, bottom left"));
    for (const char* words :
         {"Picnic on the plots", "napkin", "as it lies folded, seen from the back", "cut 17 x 17 in",
          "finishes 15 x 15 in", "stitching", "visible edge", "enlarged", "top edge", "left edge"})
        CHECK_MESSAGE(p.says(words), words);
    CHECK(p.count("finished 15 in") == 2);
    CHECK_FALSE(p.says("mitre"));
    // The raw edge lies in the fold, so nothing is hidden but the hems under the hems folded after them, 1/2 in long.
    for (const segment& s : p.lines("hidden"))
        CHECK(std::hypot(s.b.x - s.a.x, s.b.y - s.a.y) * p.scale() == near(12.7));
    check_legible(p);
}

TEST_CASE("a mitre is drawn from the finished corner to the corner of the hems' inner edges") {
    // 1/4 and 1 in turned: the inner corner lies 1 in in from both finished edges, 25.4 mm.
    const panel napkin(finished_size(15_in, 12_in), all_round(double_turned_hem("1/4"_in, 1_in)));
    const picture p(drawing_of(fold_panel(napkin, all_corners(mitred("1/4"_in, "1/16"_in)))));
    const box o = boxes(p, "outline").at(0);
    CHECK(o.width * p.scale() == near(381));
    CHECK(o.height * p.scale() == near(304.8));
    const auto mitres = p.lines("mitre");
    REQUIRE(mitres.size() == 4);
    for (const bool right : {false, true})
        for (const bool low : {false, true}) {
            const double in = 25.4 / p.scale();
            const point out{right ? o.right() : o.x, low ? o.bottom() : o.y},
                inner{out.x + (right ? -in : in), out.y + (low ? -in : in)};
            CHECK((has(mitres, {out, inner}) || has(mitres, {inner, out})));
        }
    // In sight besides: the four inner edges, between the mitres' ends: 13 and 10 in.
    double long_ones = 0, short_ones = 0;
    for (const segment& s : p.lines("edge")) {
        const double length = std::hypot(s.b.x - s.a.x, s.b.y - s.a.y) * p.scale();
        long_ones += length == near(330.2);
        short_ones += length == near(254);
    }
    CHECK(long_ones == 2);
    CHECK(short_ones == 2);
    CHECK(p.lines("edge").size() == 4);
    // Stitched on the very edge of the hems, 1 in in, from side to side.
    const double in = 25.4 / p.scale();
    CHECK(p.lines("stitching").size() == 4);
    CHECK(has(p.lines("stitching"), {{o.x, o.y + in}, {o.right(), o.y + in}}));
    CHECK(has(p.lines("stitching"), {{o.right() - in, o.y}, {o.right() - in, o.bottom()}}));
    CHECK(p.groups("stitching").at(0).attribute("stroke-dasharray").value() == std::string("1 0.8"));
    CHECK(p.says("mitre"));
    check_legible(p);
}

TEST_CASE("unequal hems: a mitre slants, and from the back the left edge is at the right") {
    // Hems turned once: 2 in at the left, 1 in elsewhere; only the top left corner is mitred.
    const auto one = single_turned_hem(1_in), two = single_turned_hem(2_in);
    const auto flat = stacked<inch>();
    const picture p(drawing_of(fold_panel(panel(finished_size(20_in, 14_in), edges<inch>{one, one, one, two}),
                                          corners<inch>{mitred<inch>(), flat, flat, flat})));
    const box o = boxes(p, "outline").at(0);
    const auto mitres = p.lines("mitre");
    REQUIRE(mitres.size() == 1);
    const point corner{o.right(), o.y}, inner{o.right() - 50.8 / p.scale(), o.y + 25.4 / p.scale()};
    CHECK((has(mitres, {corner, inner}) || has(mitres, {inner, corner})));
    // Stitched on the very edge of each hem: 2 in from the left edge, 1 in from the right.
    const auto rows = p.lines("stitching");
    CHECK(has(rows, {{inner.x, o.y}, {inner.x, o.bottom()}}));
    CHECK(has(rows, {{o.x + 25.4 / p.scale(), o.y}, {o.x + 25.4 / p.scale(), o.bottom()}}));
    check_legible(p);
}

TEST_CASE("corners with room enough are not drawn again, and a turn of cloth is not called finished") {
    const panel pad(finished_size(5_in, 4_in), all_round(single_turned_hem(1_in, "1/8"_in)));
    const picture p(drawing_of(fold_panel(pad, all_corners(stacked<inch>()))));
    CHECK(p.scale() == 1); // 5 x 4 in are 127 x 102 mm
    CHECK(p.groups("corner-edge").empty());
    CHECK(sorted_counts(numbers(p, 127, 101.6), false) == std::vector<long>{1, 2, 2, 2, 2, 4, 4, 4, 4});
    // 1/4 in is taken up, half of it at each edge: folded flat it is 1/4 in wider.
    const panel thick(finished_size(15_in, 15_in), all_round(double_turned_hem("1/4"_in, 1_in, "1/8"_in, "1/4"_in)));
    const picture q(drawing_of(fold_panel(thick, all_corners(stacked<inch>())), {}, inch_ruler(16)));
    CHECK(q.count("folded flat 15 1/4 in") == 2);
    CHECK(boxes(q, "outline").at(0).width * q.scale() == near(15.25 * 25.4));
}

TEST_CASE("panels of any kind, either way made, are true and can be read; every number is that of its spot") {
    at_random::seeded<std::mt19937_64> random(20261125);
    const auto between = [&](std::int64_t low, std::int64_t high) {
        return std::uniform_int_distribution<std::int64_t>(low, high)(random);
    };
    const auto try_one = [&]<class Unit>(length<Unit> step, bool stacks_all, paper on) {
        const auto hem = [&] { // first and depth in steps of a quarter inch, or half a centimetre
            const std::int64_t first = between(1, 3), depth = first + between(0, 4);
            return std::pair(step * first, step * depth);
        };
        const std::pair<length<Unit>, length<Unit>> hems[] = {hem(), hem(), hem(), hem()};
        const auto made = [&](int i) { return double_turned_hem(hems[i].first, hems[i].second, step / 4); };
        const panel<Unit> shape(finished_size<Unit>(step * between(36, 160), step * between(36, 160)),
                                {made(0), made(1), made(2), made(3)});
        const auto way = [&] {
            return stacks_all || between(0, 1) == 0 ? stacked<Unit>() : mitred(step / 2, step / 8);
        };
        const auto folded = fold_panel<double>(shape, {way(), way(), way(), way()});
        const picture p(drawing_of(folded, {.name = "panel"}, {}, {.project = "Things for the shed", .on = on}));
        const double w = mm(shape.finished().width()), h = mm(shape.finished().height());
        const box o = boxes(p, "outline").at(0);
        CHECK(o.width * p.scale() == near(w));
        CHECK(o.height * p.scale() == near(h));
        const auto all = numbers(p, w, h);
        CHECK(all.size() >= 5);
        for (const told& t : all) {
            CAPTURE(t.from_left);
            CAPTURE(t.from_bottom);
            const double unit = mm(length_of<Unit>(1)), left = to_double(folded.outer_line(edge::left).value()),
                         bottom = to_double(folded.outer_line(edge::bottom).value());
            CHECK(t.layers == static_cast<long>(folded.stack().layers_at(
                                  drafted_point<Unit>(left + t.from_left / unit, bottom + t.from_bottom / unit))));
            if (!stacks_all)
                continue;
            const auto hand = [&](double in, int i) { return across(in, mm(hems[i].first), mm(hems[i].second)) - 1; };
            CHECK(t.layers == (1 + hand(t.from_left, 3) + hand(w - t.from_left, 1)) *
                                  (1 + hand(t.from_bottom, 2) + hand(h - t.from_bottom, 0)));
        }
        check_legible(p);
    };
    for (const int round : random.cases(100)) {
        const paper on = round % 4 < 2 ? paper::a4 : paper::letter;
        if (round % 2 == 0)
            try_one("1/4"_in, round % 3 == 0, on);
        else
            try_one("0.5"_cm, round % 3 == 0, on);
    }
}

TEST_CASE("no two kinds of line are drawn alike, and none by colour alone") {
    const panel napkin(finished_size(15_in, 15_in), all_round(double_turned_hem("1/4"_in, 1_in)));
    const picture p(drawing_of(fold_panel(napkin, all_corners(mitred("1/4"_in, "1/16"_in)))));
    check_told_apart(p, {"outline", "edge", "mitre", "hidden", "stitching", "enlarged"});
}

TEST_CASE("a panel without turned cloth, a long strip and a tiny piece are drawn too") {
    const picture raw(drawing_of(fold_panel(panel(finished_size(9_in, 4_in)), all_corners(stacked<inch>()))));
    CHECK(sorted_counts(numbers(raw, 9 * 25.4, 4 * 25.4), false) == std::vector<long>{1});
    check_legible(raw);
    const auto hem = all_round(double_turned_hem("1/4"_in, "1/2"_in));
    for (const auto& size :
         {finished_size(120_in, 2_in), finished_size(2_in, 120_in), finished_size("1 1/2"_in, "1 1/2"_in)}) {
        const picture p(drawing_of(fold_panel(panel(size, hem), all_corners(stacked<inch>()))));
        CHECK(boxes(p, "outline").at(0).width * p.scale() == near(mm(size.width())));
        check_legible(p);
    }
    const panel napkin(finished_size(15_in, 15_in), hem);
    CHECK_THROWS_AS(drawing_of(fold_panel(napkin, all_corners(stacked<inch>())), {}, ruler{.inches = 0_in}),
                    range_error);
}

} // namespace turncloth::drawn
