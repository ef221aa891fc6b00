// The outline of a folded stack: on its left lies cloth, on its right none, and nowhere else does cloth end, as paper
// folded point by point in GMP shows (paper.hpp).
#include "measure/against_gmp.hpp"
#include "panel/paper.hpp"
#include <turncloth/measure/read.hpp>
#include <turncloth/panel/made_up.hpp>
#include <turncloth/panel/silhouette.hpp>

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <vector>

using namespace turncloth;
using namespace turncloth::literals;

namespace {

/// How often the lines go round a spot, counter-clockwise: cloth is gone round once, a hole not at all.
template <class Loops, class Point>
int times_round(const Loops& loops, const Point& p) {
    int times = 0;
    for (const auto& loop : loops)
        if (locate(loop, p) == position::inside)
            times += signed_area_of(loop).value() > 0 ? 1 : -1;
    return times;
}

line<inch> through(fraction x, fraction y, fraction dx, fraction dy) {
    return {point_of<inch>(x, y), point_of<inch>(x + dx, y + dy)};
}

polygon<inch> square(fraction side) {
    return {point_of<inch>(0, 0), point_of<inch>(side, 0), point_of<inch>(side, side), point_of<inch>(0, side)};
}

} // namespace

TEST_CASE("a folded panel's silhouette is its finished outline, and has four corners") {
    for (const auto& way : {stacked<inch>(), mitred<inch>(), mitred("1/4"_in, "1/16"_in)}) {
        const panel piece(finished_size(16_in, 9_in), all_round(double_turned_hem("1/4"_in, 1_in)));
        const auto loops = silhouette_of(fold_panel(piece, all_corners(way)).stack());
        REQUIRE(loops.size() == 1);
        CHECK(loops[0].size() == 4);
        CHECK(area_of(loops[0]) == area_of(piece.finished()));
        const auto in_doubles = silhouette_of(fold_panel<double>(piece, all_corners(way)).stack());
        REQUIRE(in_doubles.size() == 1);
        CHECK(in_doubles[0].size() == 4);
    }
}

TEST_CASE("worked: a napkin folded on its diagonal, and a strip folded round three sides of a square") {
    folding<inch> napkin(square(12));
    CHECK(silhouette_of(napkin)[0].size() == 4);
    napkin.fold(through(0, 0, 1, 1));
    REQUIRE(silhouette_of(napkin).size() == 1);
    CHECK(silhouette_of(napkin)[0].size() == 3);
    CHECK(area_of(silhouette_of(napkin)[0]).value() == 72);

    // Folded across at 45 degrees a strip turns a corner: it keeps its width, and an L of 10 and 10 by 1 with the
    // corner folded double covers 40 - 1/2 for a strip of 20 by 2 less the triangle of 2 by 2 / 2 that lies double.
    folding<inch> strip({point_of<inch>(0, 0), point_of<inch>(20, 0), point_of<inch>(20, 2), point_of<inch>(0, 2)});
    strip.fold(through(10, 0, -1, -1));
    const auto loops = silhouette_of(strip);
    REQUIRE(loops.size() == 1);
    CHECK(area_of(loops[0]).value() == 38);
}

TEST_CASE("a hole is a line of its own that runs clockwise") {
    // A strip 1 wide goes right, is turned down at x = 7, left at y = -7 and up at x = 0, and crosses itself: between
    // its inner edges lies a hole from 1 to 7 and from -6 to 0.
    folding<inch> frame({point_of<inch>(0, 0), point_of<inch>(40, 0), point_of<inch>(40, 1), point_of<inch>(0, 1)});
    frame.fold(through(8, 0, 1, -1)).fold(through(7, -7, -1, -1)).fold(through(1, -7, -1, 1));
    const auto loops = silhouette_of(frame);
    std::size_t holes = 0;
    for (const auto& loop : loops)
        if (signed_area_of(loop).value() < 0) {
            CHECK(loop.size() == 4);
            CHECK(signed_area_of(loop).value() == -36);
            ++holes;
        }
    CHECK(holes == 1);
}

TEST_CASE("cloth that touches cloth at one corner only is gone round in one line") {
    // The frame again, its end 1 further left and just as high as the strip's lower edge: they touch at (0, 0) alone.
    folding<inch> frame({point_of<inch>(0, 0), point_of<inch>(29, 0), point_of<inch>(29, 1), point_of<inch>(0, 1)});
    frame.fold(through(8, 0, 1, -1)).fold(through(7, -7, -1, -1)).fold(through(0, -7, -1, 1));
    const auto loops = silhouette_of(frame);
    REQUIRE(loops.size() == 1);
    CHECK(std::count(loops[0].begin(), loops[0].end(), point_of<inch>(0, 0)) == 2);
    CHECK(signed_area_of(loops[0]).value() == 29 - fraction(3, 2)); // three corners lie double by half a square each
}

TEST_CASE("what is cut away has no silhouette") {
    folding<inch> strip({point_of<inch>(0, 0), point_of<inch>(9, 0), point_of<inch>(9, 2), point_of<inch>(0, 2)});
    strip.fold(through(4, 0, 0, 1));
    strip.trim(through(5, 0, 0, 1));
    REQUIRE(silhouette_of(strip).size() == 1);
    CHECK(area_of(silhouette_of(strip)[0]).value() == 8);
    strip.trim(through(20, 0, 0, 1));
    CHECK(silhouette_of(strip).empty());
}

TEST_CASE(
    "random folds: cloth on the left of every line and none on its right, and no other spot is gone round wrongly") {
    against_gmp::sampler any(31);
    static constexpr std::int64_t ways[][2] = {{0, 1}, {1, 0}, {1, 1}, {1, -1}, {-1, 0}, {0, -1}, {-1, -1}, {-1, 1}};
    for (int round = 0; round < 1000; ++round) {
        folding<inch> cloth(square(12));
        folding<inch, double> drafted_cloth(drafted(square(12)));
        paper_folding::sheet paper(square(12));
        const bool slanting = round % 5 == 0;
        for (int i = 0; i < (slanting ? 2 : 5); ++i) {
            const auto& way = ways[any.between(0, 7)];
            const fraction x = {any.between(20, 70), 8}, y = {any.between(20, 70), 8};
            const auto l =
                slanting ? through(x, y, any.between(1, 3), any.between(-3, 3)) : through(x, y, way[0], way[1]);
            cloth.fold(l);
            drafted_cloth.fold(drafted(l));
            paper.fold(l);
        }
        const auto loops = silhouette_of(cloth);
        for (const auto& loop : loops) {
            REQUIRE(loop.size() >= 3);
            for (std::size_t i = 0; i < loop.size(); ++i) {
                const auto a = paper_folding::sheet::exact(loop[i]),
                           b = paper_folding::sheet::exact(loop[(i + 1) % loop.size()]);
                for (const mpq_class& part : {mpq_class(1, 1009), mpq_class(409, 1009), mpq_class(1008, 1009)}) {
                    const mpq_class x = a.x + part * (b.x - a.x), y = a.y + part * (b.y - a.y), off(1, 1000003);
                    REQUIRE(paper.layers_at({x - off * (b.y - a.y), y + off * (b.x - a.x)}) > 0);
                    REQUIRE(paper.layers_at({x + off * (b.y - a.y), y - off * (b.x - a.x)}) == 0);
                }
            }
        }
        const auto in_doubles = silhouette_of(drafted_cloth);
        REQUIRE(in_doubles.size() == loops.size());
        for (int i = 0; i < 20; ++i) {
            const auto p = point_of<inch>({any.between(-2000, 14000), 1009}, {any.between(-2000, 14000), 1013});
            const int expected = paper.layers_at(paper_folding::sheet::exact(p)) > 0 ? 1 : 0;
            REQUIRE(times_round(loops, p) == expected);
            REQUIRE(times_round(in_doubles, drafted(p)) == expected);
        }
    }
}
