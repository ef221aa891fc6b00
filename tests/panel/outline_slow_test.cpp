// Outlines against CGAL, the Computational Geometry Algorithms Library: its exterior offsets by straight skeletons and
// its exact test of whether a polygon is simple, its exact union of polygons.
#include "panel/exact_union.hpp"
#include "panel/random_outline.hpp"
#include <turncloth/panel/trimmed.hpp>

#include <CGAL/create_offset_polygons_2.h>
#include <CGAL/Exact_predicates_inexact_constructions_kernel.h>
#include <CGAL/Polygon_2.h>
#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <cstdlib>
#include <vector>

using namespace turncloth;
using random_outline::maker;
using random_outline::pieces;

namespace {

using kernel = CGAL::Exact_predicates_inexact_constructions_kernel;
using polygon_2 = CGAL::Polygon_2<kernel>;

polygon_2 as_cgal(const pieces& corners) {
    polygon_2 all;
    for (const auto& p : corners)
        all.push_back({p.x.value(), p.y.value()});
    return all;
}

/// TURNCLOTH_OUTLINES asks for more: a million take some hours.
int outlines_asked_for(int otherwise) {
    const char* asked = std::getenv("TURNCLOTH_OUTLINES");
    return asked == nullptr ? otherwise : std::atoi(asked);
}

} // namespace

TEST_CASE("no trimmed cut line is invalid, and none is off the exact union of the piece and its strips") {
    maker any(24);
    const int asked = outlines_asked_for(2000);
    int compared = 0, trimmed = 0;
    while (any.another_of(asked)) {
        pieces corners = any.of_any_kind();
        if (any.count(0, 1) == 0)
            std::reverse(corners.begin(), corners.end());
        if (!as_cgal(corners).is_simple())
            continue;
        const outline<centimetre> piece(corners, any.allowances_or_none(corners.size(), any.between(0.5, 6)), {},
                                        any.between(2, 6));
        const auto cut = trimmed_cut_line(piece);
        REQUIRE(as_cgal(cut.boundary).is_simple());
        trimmed += cut.trimmed.empty() ? 0 : 1;
        const auto expected = exact_union::area_of(piece);
        if (!expected)
            continue;
        REQUIRE(area_of(cut.boundary).value() == doctest::Approx(*expected).epsilon(1e-9));
        ++compared;
    }
    CHECK(compared > asked * 9 / 10);
    CHECK(trimmed > asked / 10);
}

TEST_CASE("a cut line crosses itself exactly where CGAL says that it is not simple") {
    maker any(21);
    int simple = 0, crossing = 0;
    while (any.another_of(20000)) {
        const std::size_t n = any.count(3, 40);
        const pieces corners = any.piece(n, 10, 30);
        const outline<centimetre> made(corners, any.allowances(n, 0.1, 2));
        const polygon_2 cut = as_cgal(made.cut_line());
        REQUIRE(made.crossings().empty() == cut.is_simple());
        REQUIRE(area_of(made.seam_line()).value() == doctest::Approx(as_cgal(corners).area()).epsilon(1e-12));
        (cut.is_simple() ? simple : crossing) += 1;
        if (cut.is_simple())
            REQUIRE(area_of(made.cut_line()).value() == doctest::Approx(cut.area()).epsilon(1e-12));
    }
    CHECK(simple > 1000);
    CHECK(crossing > 1000);
}

TEST_CASE("with one allowance all round the cut line is CGAL's exterior offset by the straight skeleton") {
    maker any(22);
    int compared = 0;
    while (any.another_of(600)) {
        const std::size_t n = any.count(3, 16);
        const pieces corners = any.piece(n, 12, 30);
        const double allowance = any.between(0.3, 2);
        const outline<centimetre> made(corners, {edge_allowance<centimetre>(drafted_length_of<centimetre>(allowance))},
                                       {}, 1e6);
        if (!made.crossings().empty())
            continue;
        const auto offsets =
            CGAL::create_exterior_skeleton_and_offset_polygons_2(allowance, as_cgal(corners), kernel());
        // The first is the frame that CGAL puts round the piece.
        REQUIRE(offsets.size() == 2);
        REQUIRE(area_of(made.cut_line()).value() == doctest::Approx(std::abs(offsets[1]->area())).epsilon(1e-9));
        ++compared;
    }
    CHECK(compared > 250);
}

TEST_CASE("a seam line is refused exactly where CGAL says that it is not simple") {
    maker any(23);
    int refused = 0, accepted = 0;
    while (any.another_of(5000)) {
        pieces corners;
        const std::size_t n = any.count(3, 7);
        for (std::size_t i = 0; i < n; ++i)
            corners.push_back(drafted_point<centimetre>(any.between(0, 40), any.between(0, 40)));
        bool made = true;
        try {
            const outline<centimetre> piece(corners, {edge_allowance<centimetre>(drafted_length_of<centimetre>(1))});
        } catch (const outline_error&) {
            made = false;
        }
        REQUIRE(made == as_cgal(corners).is_simple());
        (made ? accepted : refused) += 1;
    }
    CHECK(refused > 1000);
    CHECK(accepted > 500);
}
