// Points, lines and polygons, against Boost.Geometry and GMP.
#include "measure/against_gmp.hpp"
#include "panel/boost_geometry.hpp"
#include "panel/paper.hpp"
#include <turncloth/measure/read.hpp>
#include <turncloth/panel/polygon.hpp>

#include <doctest/doctest.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <random>

using namespace turncloth;
using namespace turncloth::literals;
namespace bg = boost::geometry;

namespace {

constexpr std::array<point<inch>, 3> bunting{point_of<inch>(0, 8), point_of<inch>(6, 8), point_of<inch>(3, 0)};
static_assert(signed_area_of(bunting) == -(24_in * 1_in));
static_assert(area_of(bunting) == 24_in * 1_in);
static_assert(is_convex(bunting));
static_assert(locate(bunting, point_of<inch>(3, 4)) == containment::inside);
static_assert(locate(bunting, point_of<inch>(4, 8)) == containment::on_edge);
static_assert(locate(bunting, point_of<inch>(3, 0)) == containment::on_edge);
static_assert(locate(bunting, point_of<inch>(7, 8)) == containment::outside);
static_assert(locate(bunting, point_of<inch>(0, 0)) == containment::outside);

constexpr std::array<point<inch>, 5> dart{point_of<inch>(0, 0), point_of<inch>(6, 0), point_of<inch>(6, 6),
                                          point_of<inch>(3, 2), point_of<inch>(0, 6)};
static_assert(!is_convex(dart));
static_assert(locate(dart, point_of<inch>(3, 3)) == containment::outside);
static_assert(locate(dart, point_of<inch>(5, 2)) == containment::inside);

// A five-pointed star turns one way at every corner and is not convex.
constexpr std::array<point<inch>, 5> star{point_of<inch>(0, 4), point_of<inch>(8, 4), point_of<inch>(1, 0),
                                          point_of<inch>(4, 7), point_of<inch>(7, 0)};
static_assert(!is_convex(star));
constexpr std::array<point<inch>, 3> flat{point_of<inch>(0, 0), point_of<inch>(1, 1), point_of<inch>(2, 2)};
static_assert(!is_convex(flat));
constexpr std::array<point<inch>, 5> corner_in_a_side{point_of<inch>(0, 0), point_of<inch>(1, 0), point_of<inch>(2, 0),
                                                      point_of<inch>(2, 2), point_of<inch>(0, 2)};
static_assert(is_convex(corner_in_a_side));

constexpr line<inch> steep{point_of<inch>(0, 0), point_of<inch>(1, 2)};
static_assert(reflected(point_of<inch>(1, 0), steep) == point_of<inch>({-3, 5}, {4, 5}));
static_assert(side_of(steep, point_of<inch>(0, 1)) == line_side::left);
static_assert(side_of(steep, point_of<inch>(1, 1)) == line_side::right);
static_assert(side_of(steep, point_of<inch>(3, 6)) == line_side::on);

template <class Number>
concept exact_coordinate = requires(Number n) {
    point_of<inch>(n, n);
};
static_assert(exact_coordinate<int>);
static_assert(exact_coordinate<fraction>);
static_assert(!exact_coordinate<double>);

using bg_point = bg::model::d2::point_xy<double>;
using bg_polygon = bg::model::polygon<bg_point, false, false>; // counter-clockwise, not closed

template <class Points>
bg_polygon as_bg(const Points& corners) {
    bg_polygon ring;
    for (const auto& p : corners)
        ring.outer().emplace_back(to_double(p.x.value()), to_double(p.y.value()));
    return ring;
}

/// Corners on rays at increasing angles about the middle: simple, and as often as not without convexity.
polygon<inch> around(against_gmp::sampler& any) {
    polygon<inch> corners;
    const auto count = any.between(3, 12);
    for (std::int64_t i = 0; i < count; ++i) {
        const double angle = 2 * std::numbers::pi * static_cast<double>(i) / static_cast<double>(count);
        const auto reach = static_cast<double>(any.between(20, 100));
        corners.push_back(point_of<inch>({std::llround(8 * reach * std::cos(angle)), 8},
                                         {std::llround(8 * reach * std::sin(angle)), 8}));
    }
    return corners;
}

} // namespace

TEST_CASE("area, perimeter and where a point lies are those of Boost.Geometry") {
    against_gmp::sampler any(1);
    int inside = 0;
    while (any.another_of(3000)) {
        polygon<inch> corners = around(any);
        const bg_polygon ring = as_bg(corners);
        REQUIRE(to_double(signed_area_of(corners).value()) == doctest::Approx(bg::area(ring)).epsilon(1e-12));
        REQUIRE(signed_area_of(drafted(corners)).value() == doctest::Approx(bg::area(ring)).epsilon(1e-12));
        REQUIRE(perimeter_of(corners).value() ==
                doctest::Approx(static_cast<double>(bg::perimeter(ring))).epsilon(1e-12));
        for (int i = 0; i < 10; ++i) {
            const auto p = point_of<inch>({any.between(-800, 800), 8}, {any.between(-800, 800), 8});
            const bg_point q(to_double(p.x.value()), to_double(p.y.value()));
            const containment expected = bg::within(q, ring)       ? containment::inside
                                         : bg::covered_by(q, ring) ? containment::on_edge
                                                                   : containment::outside;
            REQUIRE(locate(corners, p) == expected);
            REQUIRE(locate(drafted(corners), drafted(p)) == expected);
            inside += expected == containment::inside ? 1 : 0;
        }
        std::reverse(corners.begin(), corners.end());
        REQUIRE(to_double(signed_area_of(corners).value()) == doctest::Approx(-bg::area(ring)).epsilon(1e-12));
    }
    CHECK(inside > 3000);
}

TEST_CASE("a polygon is convex where it is its own hull in Boost.Geometry") {
    against_gmp::sampler any(2);
    int convex = 0;
    while (any.another_of(3000)) {
        const polygon<inch> corners = around(any);
        const bg_polygon ring = as_bg(corners);
        bg_polygon hull;
        bg::convex_hull(ring, hull);
        const bool expected = std::abs(bg::area(hull) - bg::area(ring)) < 1e-9;
        REQUIRE(is_convex(corners) == expected);
        REQUIRE(is_convex(drafted(corners)) == expected);
        convex += expected ? 1 : 0;
    }
    CHECK(convex > 100);
    CHECK(convex < 2900);
}

TEST_CASE("a mirror image is exact, comes back, and keeps every distance") {
    against_gmp::sampler any(3);
    const auto somewhere = [&] {
        return point_of<centimetre>({any.between(-400, 400), 16}, {any.between(-400, 400), 16});
    };
    const auto square_between = [](const paper_folding::spot& a, const paper_folding::spot& b) {
        return mpq_class((a.x - b.x) * (a.x - b.x) + (a.y - b.y) * (a.y - b.y));
    };
    using sheet = paper_folding::sheet;
    while (any.another_of(5000)) {
        const line<centimetre> l{somewhere(), somewhere()};
        if (l.from == l.to)
            continue;
        const auto p = somewhere(), image = reflected(p, l);
        REQUIRE(reflected(image, l) == p);
        for (const auto& on : {l.from, l.to})
            REQUIRE(square_between(sheet::exact(p), sheet::exact(on)) ==
                    square_between(sheet::exact(image), sheet::exact(on)));
        const bool on_line = side_of(l, p) == line_side::on;
        REQUIRE((p == image) == on_line);
        REQUIRE((on_line || side_of(l, image) != side_of(l, p)));
    }
}

TEST_CASE("a point that is no number, or too far away, is on no side of a line and nowhere in a polygon") {
    const line<inch, double> slanting{drafted_point<inch>(0, 0), drafted_point<inch>(300, 400)};
    const polygon<inch, double> pennant = {drafted_point<inch>(0, 0), drafted_point<inch>(300, 0), slanting.to};
    for (const double off : {double(NAN), double(INFINITY), -1e155}) {
        const auto there = drafted_point<inch>(off, 1);
        CHECK_THROWS_AS(side_of(slanting, there), range_error);
        CHECK_THROWS_AS(side_of(line<inch, double>{there, slanting.to}, slanting.from), range_error);
        CHECK_THROWS_AS(reflected(there, slanting), range_error);
        CHECK_THROWS_AS(locate(pennant, there), range_error);
        CHECK_THROWS_AS(locate(polygon<inch, double>{pennant[0], pennant[1], there}, drafted_point<inch>(1, 1)),
                        range_error);
    }
    CHECK_THROWS_AS(reflected(slanting.to, {slanting.from, slanting.from}), range_error);
    CHECK_THROWS_WITH_AS(side_of(slanting, drafted_point<inch>(2, NAN)),
                         "a point beside a line must lie within 1000000 of the origin: it was (2, nan)", range_error);
}

TEST_CASE("a drafted point counts as on a line that passes within the tolerance") {
    const line<inch, double> slanting{drafted_point<inch>(0, 0), drafted_point<inch>(300, 400)};
    CHECK(side_of(slanting, drafted_point<inch>(30 - 0.8e-10, 40 + 0.6e-10)) == line_side::on);
    CHECK(side_of(slanting, drafted_point<inch>(30 - 0.8e-8, 40 + 0.6e-8)) == line_side::left);
    CHECK(side_of(slanting, drafted_point<inch>(30 + 0.8e-8, 40 - 0.6e-8)) == line_side::right);
}
