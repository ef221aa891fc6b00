// Outlines against CGAL, the Computational Geometry Algorithms Library: its exterior offsets by straight skeletons and
// its exact test of whether a polygon is simple, its exact union of polygons.
#include "panel/random_outline.hpp"
#include <turncloth/panel/trimmed.hpp>

#include <CGAL/create_offset_polygons_2.h>
#include <CGAL/Exact_predicates_exact_constructions_kernel.h>
#include <CGAL/Exact_predicates_inexact_constructions_kernel.h>
#include <CGAL/Polygon_2.h>
#include <CGAL/Polygon_set_2.h>
#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <cstdlib>
#include <iterator>
#include <optional>
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

using exact = CGAL::Exact_predicates_exact_constructions_kernel;
using exact_polygon = CGAL::Polygon_2<exact>;

exact_polygon as_exact(const pieces& corners) {
    exact_polygon all;
    for (const auto& p : corners)
        if (const exact::Point_2 next(p.x.value(), p.y.value()); all.is_empty() || all[all.size() - 1] != next)
            all.push_back(next);
    return all;
}

/// A strip of four corners whose ends cross keeps the triangle up to there; others that cross themselves are not compared.
std::optional<exact_polygon> what_is_left_of(const exact_polygon& strip) {
    if (strip.size() < 3 || CGAL::abs(strip.area()) < 1e-9) // of an allowance of none, a line
        return exact_polygon();
    if (strip.is_simple())
        return strip;
    if (strip.size() != 4)
        return std::nullopt;
    const auto apex = CGAL::intersection(exact::Segment_2(strip[0], strip[1]), exact::Segment_2(strip[2], strip[3]));
    exact_polygon triangle;
    if (const auto* p = apex ? boost::get<exact::Point_2>(&*apex) : nullptr) {
        // With an allowance of none, what a mitre cut off at its limit adds beside its end.
        const bool at_start = CGAL::squared_distance(*p, strip[0]) < 1e-18,
                   at_end = CGAL::squared_distance(*p, strip[3]) < 1e-18;
        for (const auto& corner : {at_end ? strip[1] : strip[0],
                                   at_start ? strip[1]
                                   : at_end ? strip[2]
                                            : *p,
                                   at_start ? strip[2] : strip[3]})
            triangle.push_back(corner);
    }
    return triangle.is_empty() ? std::nullopt : std::optional(triangle);
}

/// The area within the outer boundary of the piece and all its strips; none where a strip is not compared.
std::optional<double> area_of_union(const outline<centimetre>& piece) {
    CGAL::Polygon_set_2<exact> all;
    for (std::size_t i = 0; i <= piece.seam_line().size(); ++i) {
        const auto part = what_is_left_of(as_exact(i == 0 ? piece.seam_line() : piece.strip(i - 1).corners));
        if (!part)
            return std::nullopt;
        exact_polygon round = *part;
        if (round.is_empty())
            continue;
        if (round.is_clockwise_oriented())
            round.reverse_orientation();
        all.join(round);
    }
    std::vector<CGAL::Polygon_with_holes_2<exact>> parts;
    all.polygons_with_holes(std::back_inserter(parts));
    double largest = 0;
    for (const auto& part : parts)
        largest = std::max(largest, CGAL::to_double(part.outer_boundary().area()));
    return largest;
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
        const auto expected = area_of_union(piece);
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
