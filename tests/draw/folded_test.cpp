// draw/folded.hpp: a folded panel is drawn as its folds make it, true to scale, and every number that is
// printed is the number of layers at the spot where it stands or to which it is led.
#include "../vectors.hpp"
#include "at_random.hpp"
#include "draw/picture.hpp"
#include <turncloth.hpp>
#include <turncloth/draw/folded.hpp>

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <random>
#include <string>
#include <vector>

namespace turncloth::drawn {

namespace {

/// A printed number, and the spot of the folded piece that it tells of: in mm from its left and its bottom edge.
struct told {
    long layers;
    double from_left, from_bottom;
};

page_point middle_of(const box& b) { return {b.x + b.width / 2, b.y + b.height / 2}; }

/// Where the view is interrupted, upright or level lines, in order.
std::vector<double> breaks(const picture& p, bool upright) {
    std::vector<double> all;
    for (const auto& g : p.groups("left out"))
        for (const auto& l : g.children("polyline")) {
            const std::vector<page_point> line = points_of(l);
            REQUIRE(line.size() == 6);
            if ((line.front().x == line.back().x) == upright)
                all.push_back(upright ? line.front().x : line.front().y);
        }
    std::sort(all.begin(), all.end());
    return all;
}

/// From the start, in mm of cloth; what is left out has the same layers all along, so its middle stands for it.
double on_cloth(double at, double start, double end, const std::vector<double>& left_out, double scale, double size) {
    if (left_out.empty() || at < left_out.front())
        return (at - start) * scale;
    return at > left_out.back() ? size - (end - at) * scale : size / 2;
}

/// Every number, with the spot at the other end of its leader where it has one.
std::vector<told> numbers(const picture& p, double width, double height) {
    struct found {
        const word* w;
        page_point spot;
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
    const box o = boxes(p, "outline").at(0);
    const auto across = breaks(p, true), down = breaks(p, false);
    std::vector<told> made;
    for (const found& f : all) // the back shows the piece's left edge at the right
        made.push_back({std::atol(f.w->text.c_str()),
                        width - on_cloth(f.spot.x, o.x, o.right(), across, p.scale(), width),
                        height - on_cloth(f.spot.y, o.y, o.bottom(), down, p.scale(), height)});
    return made;
}

/// The outline has the finished size, but for what is left out.
void check_outline(const picture& p, double width, double height) {
    const box o = boxes(p, "outline").at(0);
    const auto true_or_less = [&](bool upright, double drawn, double size) {
        const bool whole = breaks(p, upright).empty();
        CHECK((whole ? drawn * p.scale() == near(size) : drawn * p.scale() < size));
    };
    true_or_less(true, o.width, width);
    true_or_less(false, o.height, height);
}

/// Layers at a distance inward of the finished edge of a hem turned by `first` and again by `depth`: one in the middle,
/// one more over the hem, one more where its first turn lies. Common practice.
long across(double in, double first, double depth) { return 1 + (in < depth) + (in < depth && in > depth - first); }

std::vector<long> sorted_counts(const std::vector<told>& all) {
    std::vector<long> counts;
    for (const told& t : all)
        counts.push_back(t.layers);
    std::sort(counts.begin(), counts.end());
    return counts;
}

} // namespace

TEST_CASE("a napkin with a double-turned hem and stacked corners: 1 layer, 3 in a hem, 9 at a corner") {
    // Both turns 1/2 in: cut 17 x 17 in, finished 15 x 15 in (381 mm). Common practice.
    const panel napkin(finished_size(15_in, 15_in), all_round(double_turned_hem("1/2"_in, "1/2"_in)));
    const picture p(page_of(fold_panel(napkin, all_corners(stacked<inch>())), {.name = "napkin"}, inch_ruler(16),
                            {.project = "Picnic on the plots"}));
    CHECK((p.page().width == 210 && p.page().height == 297)); // ISO 216, A4
    check_outline(p, 381, 381);
    CHECK((!breaks(p, true).empty() && !breaks(p, false).empty())); // 190 mm of paper hold half of it
    CHECK(p.scale() <= 1);                                          // and what is left is no smaller than it is
    const auto told_here = numbers(p, 381, 381);
    CHECK(sorted_counts(told_here) == std::vector<long>{1, 3, 3, 3, 3, 9, 9, 9, 9});
    for (const told& t : told_here) {
        const double in_x = std::min(t.from_left, 381 - t.from_left),
                     in_y = std::min(t.from_bottom, 381 - t.from_bottom);
        CHECK(t.layers == across(in_x, 12.7, 12.7) * across(in_y, 12.7, 12.7));
    }
    // Of 1/2 in: the hems' inner edges are 12.7 mm in from the finished ones.
    const box o = boxes(p, "outline").at(0);
    const double in = 12.7 / p.scale();
    for (const double y : {o.y + in, o.bottom() - in}) {
        const auto edges_there = p.lines("edge");
        CHECK(std::any_of(edges_there.begin(), edges_there.end(),
                          [&](const segment& e) { return e.a.y == near(y) && e.b.y == near(y); }));
    }
    CHECK(p.mentions("stacked, up to 9 layers"));
    for (const char* words :
         {"Picnic on the plots", "napkin", "as it lies folded, seen from the back", "cut 17 x 17 in",
          "finishes 15 x 15 in", "stitching", "visible edge", "left out", "top edge", "left edge"})
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
    const picture p(page_of(fold_panel(napkin, all_corners(mitred("1/4"_in, "1/16"_in)))));
    const box o = boxes(p, "outline").at(0);
    check_outline(p, 381, 304.8);
    const auto mitres = p.lines("mitre");
    REQUIRE(mitres.size() == 4);
    for (const bool right : {false, true})
        for (const bool low : {false, true}) {
            const double in = 25.4 / p.scale();
            const page_point out{right ? o.right() : o.x, low ? o.bottom() : o.y},
                inner{out.x + (right ? -in : in), out.y + (low ? -in : in)};
            CHECK((has(mitres, {out, inner}) || has(mitres, {inner, out})));
        }
    // In sight besides: the four inner edges, between the mitres' ends.
    const double in = 25.4 / p.scale();
    const page_point inner[] = {{o.x + in, o.y + in},
                                {o.right() - in, o.y + in},
                                {o.right() - in, o.bottom() - in},
                                {o.x + in, o.bottom() - in}};
    CHECK(p.lines("edge").size() == 4);
    for (std::size_t i = 0; i < 4; ++i) {
        const page_point from = inner[i], to = inner[(i + 1) % 4];
        CHECK((has(p.lines("edge"), {from, to}) || has(p.lines("edge"), {to, from})));
    }
    // Stitched on the very edge of the hems, 1 in in, from side to side.
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
    const picture p(page_of(fold_panel(panel(finished_size(20_in, 14_in), edges<inch>{one, one, one, two}),
                                       corners<inch>{mitred<inch>(), flat, flat, flat})));
    const box o = boxes(p, "outline").at(0);
    const auto mitres = p.lines("mitre");
    REQUIRE(mitres.size() == 1);
    const page_point corner{o.right(), o.y}, inner{o.right() - 50.8 / p.scale(), o.y + 25.4 / p.scale()};
    CHECK((has(mitres, {corner, inner}) || has(mitres, {inner, corner})));
    // Stitched on the very edge of each hem: 2 in from the left edge, 1 in from the right.
    const auto rows = p.lines("stitching");
    CHECK(has(rows, {{inner.x, o.y}, {inner.x, o.bottom()}}));
    CHECK(has(rows, {{o.x + 25.4 / p.scale(), o.y}, {o.x + 25.4 / p.scale(), o.bottom()}}));
    check_legible(p);
}

TEST_CASE("where corners have room nothing is left out, and a turn of cloth is not called finished") {
    const panel pad(finished_size(5_in, 4_in), all_round(single_turned_hem(1_in, "1/8"_in)));
    const picture p(page_of(fold_panel(pad, all_corners(stacked<inch>()))));
    CHECK(p.scale() == 1); // 5 x 4 in are 127 x 102 mm
    CHECK(p.groups("left out").empty());
    CHECK(sorted_counts(numbers(p, 127, 101.6)) == std::vector<long>{1, 2, 2, 2, 2, 4, 4, 4, 4});
    // 1/4 in is taken up, half of it at each edge: folded flat it is 1/4 in wider.
    const panel thick(finished_size(15_in, 15_in), all_round(double_turned_hem("1/4"_in, 1_in, "1/8"_in, "1/4"_in)));
    const picture q(page_of(fold_panel(thick, all_corners(stacked<inch>())), {}, inch_ruler(16)));
    CHECK(q.count("folded flat 15 1/4 in") == 2);
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
        const picture p(page_of(folded, {.name = "panel"}, {}, {.project = "Things for the shed", .on = on}));
        const double w = mm(shape.finished().width()), h = mm(shape.finished().height());
        check_outline(p, w, h);
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
    for (const int round : random.cases(40)) {
        const paper on = round % 4 < 2 ? paper::a4 : paper::letter;
        if (round % 2 == 0)
            try_one("1/4"_in, round % 3 == 0, on);
        else
            try_one("0.5"_cm, round % 3 == 0, on);
    }
}

TEST_CASE("no two kinds of line are drawn alike, and none by colour alone") {
    const panel napkin(finished_size(15_in, 15_in), all_round(double_turned_hem("1/4"_in, 1_in)));
    const picture p(page_of(fold_panel(napkin, all_corners(mitred("1/4"_in, "1/16"_in)))));
    check_told_apart(p, {"outline", "edge", "mitre", "hidden", "stitching", "left out"});
}

TEST_CASE("a panel without turned cloth, a long strip and a tiny piece are drawn too") {
    const picture raw(page_of(fold_panel(panel(finished_size(9_in, 4_in)), all_corners(stacked<inch>()))));
    CHECK(sorted_counts(numbers(raw, 9 * 25.4, 4 * 25.4)) == std::vector<long>{1});
    check_legible(raw);
    const auto hem = all_round(double_turned_hem("1/4"_in, "1/2"_in));
    for (const auto& size :
         {finished_size(120_in, 2_in), finished_size(2_in, 120_in), finished_size("1 1/2"_in, "1 1/2"_in)}) {
        const picture p(page_of(fold_panel(panel(size, hem), all_corners(stacked<inch>()))));
        check_outline(p, mm(size.width()), mm(size.height()));
        check_legible(p);
    }
    const panel napkin(finished_size(15_in, 15_in), hem);
    CHECK_THROWS_AS(page_of(fold_panel(napkin, all_corners(stacked<inch>())), {}, ruler{.inches = 0_in}), range_error);
}

} // namespace turncloth::drawn
