// Outlines of any shape against Boost.Geometry (its buffer, its intersections, its search for crossings) and geometry.
#include "../vectors.hpp"
#include "panel/boost_geometry.hpp"
#include "panel/random_outline.hpp"
#include <turncloth/panel/curve.hpp>
#include <turncloth/panel/given_once.hpp>

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <optional>
#include <utility>
#include <vector>

using namespace turncloth;
using random_outline::maker;
using random_outline::pieces;
namespace bg = boost::geometry;

namespace {

using bg_point = bg::model::d2::point_xy<double>;
using bg_polygon = bg::model::polygon<bg_point, false>; // counter-clockwise, closed
using bg_pieces = bg::model::multi_polygon<bg_polygon>;
using bg_segment = bg::model::segment<bg_point>;

using cm_allowance = edge_allowance<centimetre>;

cm_allowance cm(double allowance, double under = 0) {
    return {drafted_length_of<centimetre>(allowance), drafted_length_of<centimetre>(under)};
}
point<centimetre, double> at_cm(double x, double y) { return drafted_point<centimetre>(x, y); }
bg_point as_bg(const point<centimetre, double>& p) { return {p.x.value(), p.y.value()}; }

bg_polygon as_bg(const pieces& corners) {
    bg_polygon ring;
    for (const auto& p : corners)
        bg::append(ring.outer(), as_bg(p));
    bg::append(ring.outer(), as_bg(corners.front()));
    return ring;
}

void check_at(const point<centimetre, double>& p, double x, double y) {
    CHECK(p.x.value() == doctest::Approx(x).epsilon(1e-9));
    CHECK(p.y.value() == doctest::Approx(y).epsilon(1e-9));
}
void check_corners(const pieces& found, const std::vector<std::pair<double, double>>& expected) {
    REQUIRE(found.size() == expected.size());
    for (std::size_t i = 0; i < found.size(); ++i) {
        CAPTURE(i);
        check_at(found[i], expected[i].first, expected[i].second);
    }
}

/// From the line of an edge, outward above zero, for corners that run counter-clockwise.
double outside(const pieces& corners, std::size_t edge, const point<centimetre, double>& p) {
    const auto a = detail::bare(corners[edge]), b = detail::bare(corners[(edge + 1) % corners.size()]);
    return -detail::cross(b - a, detail::bare(p) - a) / detail::length_of_arrow(b - a);
}

/// All that lies within the offset lines of every edge: for a convex piece, the mitred cut line without a limit.
bg_polygon within_offsets(const pieces& convex, const std::vector<cm_allowance>& allowances) {
    bg_polygon left;
    bg::read_wkt("POLYGON((-900 -900,900 -900,900 900,-900 900,-900 -900))", left);
    for (std::size_t i = 0; i < convex.size(); ++i) {
        const auto a = detail::bare(convex[i]), b = detail::bare(convex[(i + 1) % convex.size()]);
        const auto way = (b - a) * (1 / detail::length_of_arrow(b - a)), out = detail::arrow<double>{way.y, -way.x};
        const auto on = a + out * allowances[i].allowance.value();
        bg_polygon half;
        for (const auto& p : {on - way * 3000, on + way * 3000, on + way * 3000 - out * 3000,
                              on - way * 3000 - out * 3000, on - way * 3000})
            bg::append(half.outer(), bg_point(p.x, p.y));
        bg_pieces cut;
        bg::intersection(left, half, cut);
        REQUIRE(cut.size() == 1);
        left = cut[0];
    }
    return left;
}

/// Twice the area that lies in one and not in the other, beside the area: zero for the same figure.
double difference(const bg_polygon& a, const bg_polygon& b) {
    bg_pieces both;
    bg::intersection(a, b, both);
    return (bg::area(a) + bg::area(b) - 2 * bg::area(both)) / bg::area(b);
}

} // namespace

TEST_CASE("a rectangle with four allowances is cut as a rectangle") {
    const outline<centimetre> tray({at_cm(0, 0), at_cm(30, 0), at_cm(30, 20), at_cm(0, 20)},
                                   {cm(1), cm(2), cm(3), cm(4)});
    check_corners(tray.cut_line(), {{-4, -1}, {32, -1}, {32, 23}, {-4, 23}});
    CHECK(area_of(tray.cut_line()).value() == doctest::Approx(36 * 24));
    CHECK(perimeter_of(tray.cut_line()).value() == doctest::Approx(120));
    CHECK(tray.crossings().empty());
    CHECK(tray.seam_line().size() == 4);
    check_at(tray.cut_edge(3).first, -4, 23);
    check_at(tray.cut_edge(3).second, -4, -1);
    // The same piece with its corners the other way round.
    const outline<centimetre> clockwise({at_cm(0, 20), at_cm(30, 20), at_cm(30, 0), at_cm(0, 0)},
                                        {cm(3), cm(2), cm(1), cm(4)});
    check_corners(clockwise.cut_line(), {{-4, 23}, {32, 23}, {32, -1}, {-4, -1}});
    // And exact for a panel whose allowances are fractions: what the rectangle's own rule says.
    check_corners(outline<centimetre>({at_cm(0, 0), at_cm(3, 0), at_cm(3, 2), at_cm(0, 2)}, {cm(0)}).cut_line(),
                  {{0, 0}, {3, 0}, {3, 2}, {0, 2}});
}

TEST_CASE("worked: a hem on slanting sides, mitred, squared and reflected") {
    // Sides at 45 degrees with an allowance of sqrt 2: their cut lines meet the hem's edge 2 cm outside its corners
    // (geometry).
    const pieces apron = {at_cm(0, 0), at_cm(20, 0), at_cm(15, 5), at_cm(5, 5)};
    const std::vector<cm_allowance> allowances = {cm(3), cm(std::sqrt(2.0)), cm(0), cm(std::sqrt(2.0))};
    using enum corner_shape;
    const outline<centimetre> plain(apron, allowances);
    check_corners(plain.cut_line(), {{-5, -3}, {25, -3}, {17, 5}, {3, 5}});
    const outline<centimetre> square(apron, allowances,
                                     {squared_to_edge_after, squared_to_edge_before, mitred, mitred});
    check_corners(square.cut_line(), {{-2, 0}, {-2, -3}, {22, -3}, {22, 0}, {17, 5}, {3, 5}});
    // Folded up along y = 0 the hem's ends lie on the sides' cut lines: (-2, 0) to (1, 3) is at 45 degrees.
    const outline<centimetre> reflected(apron, allowances,
                                        {reflected_in_edge_after, reflected_in_edge_before, mitred, mitred});
    check_corners(reflected.cut_line(), {{-2, 0}, {1, -3}, {19, -3}, {22, 0}, {17, 5}, {3, 5}});
    // Of the 3 cm, 1 cm is turned under first: it lies the other way about once more.
    const std::vector<cm_allowance> twice = {cm(3, 1), cm(std::sqrt(2.0)), cm(0), cm(std::sqrt(2.0))};
    const outline<centimetre> turned_twice(apron, twice,
                                           {reflected_in_edge_after, reflected_in_edge_before, mitred, mitred});
    check_corners(turned_twice.cut_line(), {{-2, 0}, {0, -2}, {-1, -3}, {21, -3}, {20, -2}, {22, 0}, {17, 5}, {3, 5}});
}

TEST_CASE("convex pieces with any allowances: the mitred cut line is all that lies within the offset edges") {
    maker any(1);
    int convex = 0, compared = 0;
    while (any.another_of(4000)) {
        const std::size_t n = any.count(3, 7);
        const pieces corners = any.piece(n, 20, 30);
        if (!is_convex(corners))
            continue;
        ++convex;
        const auto allowances = any.allowances(n, 1.0, 1.4);
        const outline<centimetre> piece(corners, allowances, {}, 1000);
        // At almost straight corners the allowances may differ too much to be mitred; that is another test.
        if (piece.cut_line().size() != n)
            continue;
        const bg_polygon expected = within_offsets(corners, allowances), found = as_bg(piece.cut_line());
        // An edge with nothing left between its neighbours' offsets: the cut line crosses itself, and says so.
        REQUIRE(piece.crossings().empty() == (bg::num_points(expected) == n + 1));
        if (!piece.crossings().empty())
            continue;
        ++compared;
        REQUIRE(bg::area(found) == doctest::Approx(bg::area(expected)).epsilon(1e-9));
        REQUIRE(std::abs(difference(found, expected)) < 1e-9);
        REQUIRE(area_of(piece.cut_line()).value() == doctest::Approx(bg::area(expected)).epsilon(1e-9));
    }
    CHECK(convex > 500);
    CHECK(compared > 400);
}

TEST_CASE("pieces with inward corners and one allowance: the cut line is the mitred buffer of Boost.Geometry") {
    maker any(2);
    int compared = 0;
    const double allowance = 1.5;
    const bg::strategy::buffer::distance_symmetric<double> distance(allowance);
    const bg::strategy::buffer::join_miter join(1000);
    const bg::strategy::buffer::end_flat end;
    const bg::strategy::buffer::point_square around_points;
    const bg::strategy::buffer::side_straight side;
    while (any.another_of(1500)) {
        const pieces corners = any.piece(any.count(3, 14), 12, 30);
        const outline<centimetre> piece(corners, {cm(allowance)}, {}, 1000);
        if (!piece.crossings().empty())
            continue;
        bg_pieces buffer;
        bg::buffer(as_bg(corners), buffer, distance, side, join, end, around_points);
        REQUIRE(buffer.size() == 1);
        const bg_polygon found = as_bg(piece.cut_line());
        // The buffer of Boost 1.74 moves some corners by about 1e-4 (outline_slow_test.cpp compares with CGAL to 1e-9).
        REQUIRE(bg::area(found) == doctest::Approx(bg::area(buffer)).epsilon(1e-4));
        REQUIRE(area_of(piece.cut_line()).value() == doctest::Approx(bg::area(found)).epsilon(1e-12));
        REQUIRE(perimeter_of(piece.cut_line()).value() ==
                doctest::Approx(static_cast<double>(bg::perimeter(found))).epsilon(1e-12));
        ++compared;
    }
    CHECK(compared > 500);
}

TEST_CASE("every edge of the cut line is parallel to its seam and its allowance outside, notches are carried square") {
    maker any(3);
    using enum corner_shape;
    const corner_shape shapes[] = {mitred, squared_to_edge_before, squared_to_edge_after, reflected_in_edge_before,
                                   reflected_in_edge_after};
    int carried = 0, refused = 0, drafted = 0;
    while (any.another_of(3000)) {
        const std::size_t n = any.count(3, 12);
        const pieces corners = any.piece(n, 15, 30);
        const auto allowances = any.allowances(n, 0, 2.5);
        std::vector<corner_shape> chosen;
        for (std::size_t i = 0; i < n; ++i)
            chosen.push_back(shapes[any.count(0, 4)]);
        std::optional<outline<centimetre>> made;
        try {
            made.emplace(corners, allowances, chosen);
        } catch (const outline_error&) { // a corner too sharp or too straight
            continue;
        }
        ++drafted;
        for (std::size_t i = 0; i < n; ++i) {
            const auto [begin, end] = made->cut_edge(i);
            REQUIRE(outside(corners, i, begin) == doctest::Approx(allowances[i].allowance.value()).epsilon(1e-9));
            REQUIRE(outside(corners, i, end) == doctest::Approx(allowances[i].allowance.value()).epsilon(1e-9));
            const auto a = detail::bare(corners[i]), b = detail::bare(corners[(i + 1) % n]);
            const double along = any.between(0, 1);
            const notch<centimetre> mark{i, drafted_length_of<centimetre>(along * detail::length_of_arrow(b - a))};
            try {
                const auto both = made->carried(mark);
                const auto on_seam = detail::bare(both.on_seam), on_cut = detail::bare(both.on_cut);
                REQUIRE(detail::length_of_arrow(on_seam - (a + (b - a) * along)) < 1e-9);
                REQUIRE(detail::length_of_arrow(on_cut - on_seam) ==
                        doctest::Approx(allowances[i].allowance.value()).epsilon(1e-9));
                REQUIRE(std::abs(detail::dot(on_cut - on_seam, b - a)) < 1e-9);
                REQUIRE(detail::dot(on_cut - detail::bare(begin), b - a) >= -1e-6);
                REQUIRE(detail::dot(on_cut - detail::bare(end), b - a) <= 1e-6);
                ++carried;
            } catch (const outline_error&) {
                ++refused;
            }
        }
    }
    CHECK(drafted > 500);
    CHECK(carried > 3000);
    CHECK(refused > 10);
}

TEST_CASE("a reflected hem, folded in, ends on the cut lines beside it") {
    maker any(4);
    int folded = 0;
    while (any.another_of(3000)) {
        const std::size_t n = any.count(3, 9);
        const pieces corners = any.piece(n, 20, 30);
        const std::size_t hem = any.count(0, n - 1), before = (hem + n - 1) % n, after = (hem + 1) % n;
        auto allowances = any.allowances(n, 0.2, 1.5);
        const double depth = any.between(1, 4), under = any.between(0, 1);
        allowances[hem] = cm(depth + under, under);
        std::vector<corner_shape> shapes(n, corner_shape::mitred);
        shapes[hem] = corner_shape::reflected_in_edge_after;
        shapes[after] = corner_shape::reflected_in_edge_before;
        std::optional<outline<centimetre>> made;
        try {
            made.emplace(corners, allowances, shapes);
        } catch (const outline_error&) {
            continue;
        }
        const auto a = detail::bare(corners[hem]), b = detail::bare(corners[after]);
        const auto out = detail::arrow<double>{b.y - a.y, a.x - b.x} * (1 / detail::length_of_arrow(b - a));
        const line<centimetre, double> edge{corners[hem], corners[after]};
        const line<centimetre, double> first_crease{detail::in_unit<centimetre>(a + out * depth),
                                                    detail::in_unit<centimetre>(b + out * depth)};
        const auto fold_in = [&](point<centimetre, double> p) {
            if (outside(corners, hem, p) > depth + 1e-9)
                p = reflected(p, first_crease);
            return outside(corners, hem, p) > 1e-9 ? reflected(p, edge) : p;
        };
        // All corners of the cut line outside the hem's edge belong to the hem, or to an inward corner of it.
        const auto turn_at = [&](std::size_t i) {
            const auto p = detail::bare(corners[(i + n - 1) % n]), q = detail::bare(corners[i]),
                       r = detail::bare(corners[(i + 1) % n]);
            return detail::cross(q - p, r - q);
        };
        if (turn_at(hem) <= 0 || turn_at(after) <= 0)
            continue;
        const auto [begin, end] = made->cut_edge(hem);
        const auto on_before = fold_in(begin), on_after = fold_in(end);
        REQUIRE(outside(corners, before, on_before) ==
                doctest::Approx(allowances[before].allowance.value()).epsilon(1e-7));
        REQUIRE(outside(corners, after, on_after) ==
                doctest::Approx(allowances[after].allowance.value()).epsilon(1e-7));
        // The corner at the first crease, and the one on the edge itself.
        const auto& cut = made->cut_line();
        const auto index = static_cast<std::size_t>(std::find(cut.begin(), cut.end(), begin) - cut.begin());
        for (std::size_t back = 1; back <= (under > 1e-6 ? 2U : 1U); ++back)
            REQUIRE(outside(corners, before, fold_in(cut[(index + cut.size() - back) % cut.size()])) ==
                    doctest::Approx(allowances[before].allowance.value()).epsilon(1e-7));
        ++folded;
    }
    CHECK(folded > 300);
}

TEST_CASE("a mitre is cut off at its limit, square to the way from the corner") {
    maker any(5);
    int cut_off = 0;
    while (any.another_of(2000)) {
        // A pennant with a sharp tip at the origin.
        const double half = any.between(2, 14) * std::numbers::pi / 180, a = any.between(0.5, 2),
                     b = a * any.between(0.8, 1.2);
        const pieces pennant = {at_cm(0, 0), at_cm(40 * std::cos(half), -40 * std::sin(half)),
                                at_cm(40 * std::cos(half), 40 * std::sin(half))};
        const std::vector<cm_allowance> allowances = {cm(a), cm(1), cm(b)};
        const double limit = any.between(1, 4);
        const outline<centimetre> whole(pennant, allowances, {}, 1e6), made(pennant, allowances, {}, limit);
        const auto tip = detail::bare(whole.cut_line()[0]);
        const double reach = detail::length_of_arrow(tip), furthest = limit * std::max(a, b);
        if (reach <= furthest)
            continue;
        const auto one = detail::bare(made.cut_line()[0]), other = detail::bare(made.cut_line()[1]);
        REQUIRE(detail::dot(one, tip) / reach == doctest::Approx(furthest));
        REQUIRE(detail::dot(other, tip) / reach == doctest::Approx(furthest));
        REQUIRE(outside(pennant, 2, at_cm(one.x, one.y)) == doctest::Approx(b));
        REQUIRE(outside(pennant, 0, at_cm(other.x, other.y)) == doctest::Approx(a));
        REQUIRE(made.crossings().empty());
        ++cut_off;
    }
    CHECK(cut_off > 1000);
}

TEST_CASE("an edge that runs straight on with another allowance makes a step square to it") {
    const pieces strip = {at_cm(0, 0), at_cm(10, 0), at_cm(20, 0), at_cm(20, 5), at_cm(0, 5)};
    const outline<centimetre> stepped(strip, {cm(1), cm(2), cm(1), cm(1), cm(1)});
    check_corners(stepped.cut_line(), {{-1, -1}, {10, -1}, {10, -2}, {21, -2}, {21, 6}, {-1, 6}});
    const outline<centimetre> level(strip, {cm(1)});
    check_corners(level.cut_line(), {{-1, -1}, {10, -1}, {21, -1}, {21, 6}, {-1, 6}});
    // Bent by any angle near straight, either way, the step stays where it is and no allowance is cut into.
    for (const double bend : {-2.0, -0.5, -1e-3, -1e-8, 1e-12, 1e-9, 1e-6, 1e-3, 0.5, 2.0}) {
        const pieces bent = {at_cm(0, 0), at_cm(10, 0), at_cm(20, bend), at_cm(20, 8), at_cm(0, 8)};
        const outline<centimetre> piece(bent, {cm(1), cm(2), cm(1), cm(1), cm(1)});
        const auto mark = piece.carried({1, drafted_length_of<centimetre>(0)});
        REQUIRE(outside(bent, 1, mark.on_cut) == doctest::Approx(2));
        REQUIRE(piece.crossings().empty());
        const outline<centimetre> even(bent, {cm(1)});
        REQUIRE(even.crossings().empty());
        REQUIRE(outside(bent, 0, even.cut_edge(0).second) == doctest::Approx(1));
        REQUIRE(outside(bent, 1, even.cut_edge(0).second) == doctest::Approx(1));
    }
}

TEST_CASE("where the piece bends a little, the step is square to the edge with the wider allowance") {
    for (const double bend : {-3.0, 3.0}) { // 17 degrees
        const pieces bent = {at_cm(0, 0), at_cm(10, 0), at_cm(20, bend), at_cm(20, 8), at_cm(0, 8)};
        const outline<centimetre> wide_first(bent, {cm(2), cm(1), cm(1), cm(1), cm(1)});
        check_at(wide_first.cut_edge(0).second, 10, -2);
        CHECK(wide_first.cut_edge(1).first.x.value() == doctest::Approx(10));
        CHECK(outside(bent, 1, wide_first.cut_edge(1).first) == doctest::Approx(1));
        const outline<centimetre> wide_second(bent, {cm(1), cm(2), cm(1), cm(1), cm(1)});
        const auto step = detail::bare(wide_second.cut_edge(1).first) - detail::bare(wide_second.cut_edge(0).second);
        CHECK(std::abs(detail::dot(step, {10, bend})) < 1e-9);
        CHECK(outside(bent, 0, wide_second.cut_edge(0).second) == doctest::Approx(1));
    }
    // From 30 degrees on the two cut lines meet.
    const pieces turned = {at_cm(0, 0), at_cm(10, 0), at_cm(20, 7), at_cm(20, 18), at_cm(0, 18)};
    CHECK(outline<centimetre>(turned, {cm(2), cm(1), cm(1), cm(1), cm(1)}).cut_line().size() == 5);
}

TEST_CASE("crossings of level and upright edges that touch, cross and lie on each other are those of Boost.Geometry") {
    maker any(7);
    std::size_t pairs = 0;
    while (any.another_of(1500)) {
        const std::size_t n = any.count(4, 30);
        std::vector<detail::arrow<double>> corners;
        while (corners.size() < n) {
            const detail::arrow<double> p = {static_cast<double>(any.count(0, 9)),
                                             static_cast<double>(any.count(0, 9))};
            if (corners.empty() ||
                !(detail::same(corners.back(), p) || (corners.size() + 1 == n && detail::same(corners[0], p))))
                corners.push_back(p);
        }
        const auto edge = [&](std::size_t i) {
            return bg_segment({corners[i].x, corners[i].y}, {corners[(i + 1) % n].x, corners[(i + 1) % n].y});
        };
        std::vector<std::pair<std::size_t, std::size_t>> expected, found;
        for (std::size_t i = 0; i < n; ++i)
            for (std::size_t j = i + 2; j < n; ++j)
                if (!(i == 0 && j == n - 1) && bg::intersects(edge(i), edge(j)))
                    expected.emplace_back(i, j);
        for (const auto& m : detail::meetings_of(corners))
            if (m.second != m.first + 1 && !(m.first == 0 && m.second == n - 1))
                found.emplace_back(m.first, m.second);
        REQUIRE(found == expected);
        pairs += found.size();
    }
    CHECK(pairs > 10000);
}

TEST_CASE("worked: a cut line that crosses itself is found, and where") {
    // A notch 2 cm wide and 6 deep in the upper side: allowances of 1.5 close it. By symmetry the lines cross on x = 10; its
    // sides' cut lines lie at x = 9 + 1.5 and x = 11 - 1.5, so they change places.
    const pieces yoke = {at_cm(0, 0),  at_cm(20, 0), at_cm(20, 10), at_cm(11, 10),
                         at_cm(11, 4), at_cm(9, 4),  at_cm(9, 10),  at_cm(0, 10)};
    const outline<centimetre> piece(yoke, {cm(1.5)});
    const auto crossings = piece.crossings();
    REQUIRE_FALSE(crossings.empty());
    for (const auto& c : crossings) {
        CHECK(c.where.x.value() >= 9.5 - 1e-9);
        CHECK(c.where.x.value() <= 10.5 + 1e-9);
        CHECK(c.where.y.value() >= 5.5 - 1e-9);
    }
    CHECK(outline<centimetre>(yoke, {cm(0.9)}).crossings().empty());
    CHECK_FALSE(outline<centimetre>(yoke, {cm(1.0)}).crossings().empty()); // it just touches itself
}

TEST_CASE("worked: the trimmed cut line closes a notch that is narrower than its allowances") {
    const pieces yoke = {at_cm(0, 0),  at_cm(20, 0), at_cm(20, 10), at_cm(11, 10),
                         at_cm(11, 4), at_cm(9, 4),  at_cm(9, 10),  at_cm(0, 10)};
    const outline<centimetre> open(yoke, {cm(0.9)});
    CHECK(trimmed_cut_line(open).boundary == open.cut_line());
    CHECK(trimmed_cut_line(open).trimmed.empty());
    // The two sides' allowances of 1 touch all along: no cut leads between them. Of the sides nothing is left.
    const auto touching = trimmed_cut_line(outline<centimetre>(yoke, {cm(1)}));
    check_corners(touching.boundary, {{-1, -1}, {21, -1}, {21, 11}, {10, 11}, {-1, 11}});
    REQUIRE(touching.trimmed.size() == 2);
    CHECK(touching.trimmed[0].edge == 3);
    CHECK(touching.trimmed[1].edge == 5);
    CHECK(touching.trimmed[0].drafted.value() == doctest::Approx(6));
    CHECK(touching.trimmed[0].left.value() == 0);
    // Clockwise too. The mitres of the upper edges overlap by 1, which counts for the first of them.
    const pieces clockwise(yoke.rbegin(), yoke.rend());
    const auto closed = trimmed_cut_line(outline<centimetre>(clockwise, {cm(1.5)}));
    check_corners(closed.boundary, {{-1.5, 11.5}, {10.5, 11.5}, {21.5, 11.5}, {21.5, -1.5}, {-1.5, -1.5}});
    double left = 0, drafted = 0;
    for (const auto& t : closed.trimmed) {
        left += t.left.value();
        drafted += t.drafted.value();
    }
    CHECK(drafted == doctest::Approx(6 + 6 + 1 + 12)); // the sides and the end of the notch, and an upper edge
    CHECK(left == doctest::Approx(11));
}

TEST_CASE("worked: an inward curve tighter than its allowance is cut straight across") {
    // Half a circle of radius 1 out of the upper side, in 20 edges, every one with an allowance of 1.5 (geometry: each spot
    // of the hollow is nearer than that to its edge).
    pieces scoop = {at_cm(0, 0), at_cm(10, 0), at_cm(10, 5)};
    for (int i = 0; i <= 20; ++i)
        scoop.push_back(at_cm(5 + std::cos(i * std::numbers::pi / 20), 5 - std::sin(i * std::numbers::pi / 20)));
    scoop.push_back(at_cm(0, 5));
    const outline<centimetre> piece(scoop, {cm(1.5)});
    CHECK_FALSE(piece.crossings().empty());
    const auto cut = trimmed_cut_line(piece);
    CHECK(area_of(cut.boundary).value() == doctest::Approx(13 * 8).epsilon(1e-12));
    CHECK(cut.trimmed.size() >= 20); // all of the curve
    for (const auto& t : cut.trimmed)
        if (t.edge > 2 && t.edge < 23)
            CHECK(t.left.value() == 0);
}

TEST_CASE(
    "trimmed cut lines go round the piece and each of its strips, on the edge of one, and do not cross themselves") {
    maker any(8);
    int trimmed = 0, checked = 0;
    while (any.another_of(400)) {
        const pieces corners = any.of_any_kind();
        const auto allowances = any.allowances_or_none(corners.size(), any.between(0.5, 5));
        std::optional<outline<centimetre>> made;
        try {
            made.emplace(corners, allowances);
        } catch (const outline_error&) { // a random curve that crosses the rest of its piece
            continue;
        }
        const auto cut = trimmed_cut_line(*made);
        std::vector<detail::arrow<double>> boundary;
        for (const auto& p : cut.boundary)
            boundary.push_back(detail::bare(p));
        REQUIRE(detail::meetings_of(boundary).empty());
        if (made->crossings().empty() && cut.trimmed.empty())
            REQUIRE(cut.boundary == made->cut_line());
        trimmed += cut.trimmed.empty() ? 0 : 1;
        std::vector<bg_polygon> parts = {as_bg(corners)};
        for (std::size_t i = 0; i < corners.size(); ++i)
            parts.push_back(as_bg(made->strip(i).corners));
        if (std::any_of(parts.begin(), parts.end(), [](const bg_polygon& p) { return bg::intersects(p); }))
            continue; // a strip that its own corners cut apart: outline_slow_test.cpp has those
        const bg_polygon whole = as_bg(cut.boundary);
        for (const bg_polygon& part : parts)
            for (const bg_point& p : part.outer())
                REQUIRE((bg::covered_by(p, whole) ||
                         bg::distance(p, bg::model::linestring<bg_point>(whole.outer().begin(), whole.outer().end())) <
                             1e-9));
        for (const bg_point& p : whole.outer()) {
            double nearest = 1e9;
            for (const bg_polygon& part : parts) {
                const bg::model::linestring<bg_point> round(part.outer().begin(), part.outer().end());
                const double away = bg::distance(p, round);
                REQUIRE((!bg::within(p, part) || away < 1e-9));
                nearest = std::min(nearest, away);
            }
            REQUIRE(nearest < 1e-9);
        }
        ++checked;
    }
    CHECK(trimmed > 50);
    CHECK(checked > 200);
}

TEST_CASE("with one allowance the trimmed cut line is the outside of Boost.Geometry's mitred buffer") {
    maker any(9);
    int trimmed = 0;
    while (any.another_of(300)) {
        const pieces corners = any.piece(any.count(8, 20), any.between(2, 8), 30);
        const double allowance = any.between(2, 6);
        const auto cut = trimmed_cut_line(outline<centimetre>(corners, {cm(allowance)}, {}, 1000));
        if (cut.trimmed.empty())
            continue;
        ++trimmed;
        bg_pieces buffer;
        bg::buffer(as_bg(corners), buffer, bg::strategy::buffer::distance_symmetric<double>(allowance),
                   bg::strategy::buffer::side_straight(), bg::strategy::buffer::join_miter(1000),
                   bg::strategy::buffer::end_flat(), bg::strategy::buffer::point_square());
        REQUIRE(buffer.size() == 1);
        bg_polygon outside;
        outside.outer() = buffer[0].outer(); // what is closed all round stays cloth
        REQUIRE(area_of(cut.boundary).value() == doctest::Approx(bg::area(outside)).epsilon(1e-4));
    }
    CHECK(trimmed > 30);
}

TEST_CASE("crossings are those of Boost.Geometry, pair by pair") {
    maker any(6);
    std::size_t pairs = 0;
    int without = 0;
    for (const int round : any.cases(400)) {
        const std::size_t n = any.count(5, 60);
        // A tangle: any corners in any order. Every third is drawn flat, so that its edges are long and level.
        std::vector<detail::arrow<double>> corners;
        if (round % 2 == 0)
            for (std::size_t i = 0; i < n; ++i)
                corners.push_back({any.between(0, 50), any.between(0, round % 3 == 0 ? 0.5 : 50)});
        else
            for (const auto& p : any.piece(n, 20, 30))
                corners.push_back(detail::bare(p));
        std::vector<std::pair<std::size_t, std::size_t>> expected;
        const auto edge = [&](std::size_t i) {
            const auto& a = corners[i];
            const auto& b = corners[(i + 1) % n];
            return bg_segment({a.x, a.y}, {b.x, b.y});
        };
        for (std::size_t i = 0; i < n; ++i)
            for (std::size_t j = i + 2; j < n; ++j)
                if (!(i == 0 && j == n - 1) && bg::intersects(edge(i), edge(j)))
                    expected.emplace_back(i, j);
        std::vector<std::pair<std::size_t, std::size_t>> found;
        for (const auto& m : detail::meetings_of(corners)) {
            found.emplace_back(m.first, m.second);
            REQUIRE(bg::distance(bg_point(m.where.x, m.where.y), edge(m.first)) < 1e-9);
            REQUIRE(bg::distance(bg_point(m.where.x, m.where.y), edge(m.second)) < 1e-9);
        }
        REQUIRE(found == expected);
        pairs += found.size();
        without += found.empty() ? 1 : 0;
    }
    CHECK(pairs > 1000);
    CHECK(without > 100);
}

TEST_CASE("worked: every notch of an armhole in 40 edges is carried, 5/8 in out along its radius") {
    // A quarter of a circle of radius 5 in round (10, 10), hollowed out of the upper right corner: 20 edges, and 40 of half
    // a circle. Geometry: the spot square to an edge lies on the circle of 5 - 5/8 in, within what an edge sags.
    for (const std::size_t edges : {20U, 40U}) {
        polygon<inch, double> armhole = {drafted_point<inch>(0, 0), drafted_point<inch>(10, 0)};
        const double sag = 5 * (1 - std::cos(std::numbers::pi / 2 / static_cast<double>(edges) / 2));
        const auto hollow = flattened(arc<inch>{drafted_point<inch>(10, 10), drafted_point<inch>(10, 5), -90},
                                      drafted_length_of<inch>(sag * (1 + 1e-9)));
        REQUIRE(hollow.size() == edges);
        armhole.insert(armhole.end(), hollow.begin(), hollow.end());
        armhole.push_back(drafted_point<inch>(5, 10));
        armhole.push_back(drafted_point<inch>(0, 10));
        const outline<inch> piece(armhole, {edge_allowance<inch>(drafted_length_of<inch>(0.625))});
        const auto cut = trimmed_cut_line(piece);
        const curve_run curve{2, edges};
        const double whole = run_length(piece, curve).value();
        CHECK(whole == doctest::Approx(2.5 * std::numbers::pi).epsilon(1e-3));
        for (int i = 0; i <= 1000; ++i) {
            const auto both = carried(piece, cut, curve, drafted_length_of<inch>(whole * i / 1000));
            const auto from_centre = [](const point<inch, double>& p) {
                return std::hypot(p.x.value() - 10, p.y.value() - 10);
            };
            REQUIRE(from_centre(both.on_seam) == doctest::Approx(5 - sag / 2).epsilon(0.2 * sag));
            REQUIRE(std::abs(from_centre(both.on_cut) - 4.375) < 2 * sag);
            REQUIRE(locate(cut.boundary, both.on_cut) == containment::on_edge);
        }
        CHECK_THROWS_AS(static_cast<void>(carried(piece, cut, curve, drafted_length_of<inch>(whole + 1))),
                        outline_error);
        CHECK_THROWS_AS(static_cast<void>(run_length(piece, {90, 1})), outline_error);
    }
}

TEST_CASE("flattened curves leave theirs by no more than the tolerance, measured by Boost.Geometry") {
    maker any(10);
    using path = bg::model::linestring<bg_point>;
    while (any.another_of(200)) {
        const double tolerance = any.between(0.005, 0.5);
        const auto at = [&] { return at_cm(any.between(-20, 20), any.between(-20, 20)); };
        const cubic<centimetre> c{at(), at(), at(), at()};
        const arc<centimetre> a{at(), at(), any.between(-360, 360)};
        path by_cubic, by_arc;
        for (const auto& p : flattened(c, drafted_length_of<centimetre>(tolerance)))
            bg::append(by_cubic, as_bg(p));
        bg::append(by_cubic, as_bg(c.to));
        for (const auto& p : flattened(a, drafted_length_of<centimetre>(tolerance)))
            bg::append(by_arc, as_bg(p));
        const auto centre = detail::bare(a.centre), spoke = detail::bare(a.from) - centre;
        const auto mixed = [](const auto& p, const auto& q, double t) { return p + (q - p) * t; };
        for (int i = 0; i <= 100; ++i) {
            const double t = i / 100.0, turned = t * a.degrees * std::numbers::pi / 180;
            // De Casteljau's way, by mixing, and not the polynomial.
            const auto p = detail::bare(c.from), q = detail::bare(c.pull), r = detail::bare(c.other_pull),
                       s = detail::bare(c.to);
            const auto pq = mixed(p, q, t), qr = mixed(q, r, t), rs = mixed(r, s, t);
            const auto on = mixed(mixed(pq, qr, t), mixed(qr, rs, t), t);
            REQUIRE(bg::distance(bg_point(on.x, on.y), by_cubic) <= tolerance * (1 + 1e-9));
            if (i == 0)
                bg::append(by_arc, bg_point(centre.x + spoke.x * std::cos(a.degrees * std::numbers::pi / 180) -
                                                spoke.y * std::sin(a.degrees * std::numbers::pi / 180),
                                            centre.y + spoke.x * std::sin(a.degrees * std::numbers::pi / 180) +
                                                spoke.y * std::cos(a.degrees * std::numbers::pi / 180)));
            const bg_point round(centre.x + spoke.x * std::cos(turned) - spoke.y * std::sin(turned),
                                 centre.y + spoke.x * std::sin(turned) + spoke.y * std::cos(turned));
            REQUIRE(bg::distance(round, by_arc) <= tolerance * (1 + 1e-9));
        }
    }
    for (const double none : {0.0, -1.0, double(NAN), 1e-30})
        CHECK_THROWS_AS(static_cast<void>(flattened(arc<centimetre>{at_cm(0, 0), at_cm(9, 0), 90},
                                                    drafted_length_of<centimetre>(none))),
                        outline_error);
}

// A square whose second corner is given three times and whose first point closes it, as drawings do: by hand the corners
// 1, 2 and 5 of these go, with the edges 1, 2 and 5, which have no length.
TEST_CASE("corners given twice are left out where that is asked for, and told") {
    const pieces drawn{at_cm(0, 0), at_cm(6, 0), at_cm(6, 0), at_cm(6, 0), at_cm(6, 6), at_cm(0, 0)};
    const auto read = given_once(drawn);
    CHECK(read.corners == pieces{at_cm(0, 0), at_cm(6, 0), at_cm(6, 6)});
    CHECK(read.left_out == std::vector<std::size_t>{1, 2, 5});
    CHECK_THROWS_AS(outline<centimetre>(drawn, {cm(1)}), outline_error);
    CHECK(outline<centimetre>(read.corners, {cm(1)}).seam_line() == read.corners);
    CHECK(given_once(read.corners).left_out.empty());
    CHECK(given_once(pieces{}).corners.empty());
    CHECK(given_once(pieces{at_cm(1, 1), at_cm(1, 1)}).corners == pieces{at_cm(1, 1)});
    // The first is given again at the end and next to it: one of the three stays.
    CHECK(given_once(pieces{at_cm(0, 0), at_cm(0, 0), at_cm(6, 0), at_cm(6, 6), at_cm(0, 0)}).left_out ==
          std::vector<std::size_t>{0, 4});
    // Short edges in a row: 0.3 is nearer than 0.5 to the next, but not to the next that stays.
    const auto close = drafted_length_of<centimetre>(0.5);
    CHECK(given_once(pieces{at_cm(0, 0), at_cm(0.3, 0), at_cm(0.6, 0), at_cm(9, 0), at_cm(9, 9)}, close).left_out ==
          std::vector<std::size_t>{1});
    CHECK(given_once(pieces{at_cm(0, 0), at_cm(NAN, 0)}).left_out.empty()); // for an outline to refuse
    for (const double apart : {-1.0, double(NAN), 1e7})
        CHECK_THROWS_AS(static_cast<void>(given_once(drawn, drafted_length_of<centimetre>(apart))), outline_error);
}

TEST_CASE("angles to the grain: along, across and on the bias") {
    const outline<centimetre> gusset({at_cm(0, 0), at_cm(30, 0), at_cm(0, 30)}, {cm(1)});
    const line<centimetre, double> warp{at_cm(5, 2), at_cm(5, 9)};
    CHECK(gusset.angle_to_grain(0, warp) == doctest::Approx(90));
    CHECK(gusset.angle_to_grain(1, warp) == doctest::Approx(45));
    CHECK(gusset.angle_to_grain(2, warp) == doctest::Approx(0));
    CHECK(gusset.angle_to_grain(2, {warp.to, warp.from}) == doctest::Approx(0));
    CHECK_THROWS_WITH_AS(static_cast<void>(gusset.angle_to_grain(0, {warp.to, warp.to})),
                         "a grain line needs two different points", outline_error);
}

TEST_CASE("what is beyond the largest coordinate, or no number, makes no line that could be taken for one to cut on") {
    const pieces gusset = {at_cm(0, 0), at_cm(30, 0), at_cm(0, 20)};
    // Products of such corners are endless, and their differences no number.
    for (const double far : {1e155, 1e308, double(INFINITY), double(NAN)})
        for (const pieces& drafted : {pieces{at_cm(0, 0), at_cm(3 * far, 0), at_cm(0, 2 * far)},
                                      pieces{at_cm(0, far), at_cm(30, 0), at_cm(0, 20)}})
            CHECK_THROWS_AS(outline<centimetre>(drafted, {cm(1)}), outline_error);
    CHECK_THROWS_WITH_AS(outline<centimetre>({at_cm(0, 0), at_cm(30, 0), at_cm(0, 1e155)}, {cm(1)}),
                         "a corner of a seam line must lie within 1000000 of the origin: it was (0, 1e+155)",
                         outline_error);
    // The seam line lies within, its cut line does not.
    CHECK_THROWS_AS(outline<centimetre>({at_cm(0, 0), at_cm(1e6, 0), at_cm(0, 20)}, {cm(1)}), outline_error);
    const outline<centimetre> largest({at_cm(-1e6, -1e6), at_cm(1e6, -1e6), at_cm(-1e6, 1e6)}, {cm(0)});
    CHECK(largest.crossings().empty());
    CHECK(area_of(largest.cut_line()).value() == doctest::Approx(2e12));

    const outline<centimetre> piece(gusset, {cm(1)});
    for (const double off : {double(NAN), double(INFINITY), 1e300}) {
        CHECK_THROWS_AS(static_cast<void>(piece.angle_to_grain(0, {at_cm(0, 0), at_cm(off, 1)})), outline_error);
        CHECK_THROWS_AS(static_cast<void>(piece.angle_to_grain(0, {at_cm(1, off), at_cm(0, 1)})), outline_error);
        CHECK_THROWS_AS(static_cast<void>(piece.carried({0, drafted_length_of<centimetre>(off)})), outline_error);
    }
}

TEST_CASE("outlines that cannot be drafted are refused with their numbers") {
    const pieces square = {at_cm(0, 0), at_cm(10, 0), at_cm(10, 10), at_cm(0, 10)};
    using piece = outline<centimetre>;
    CHECK_THROWS_WITH_AS(piece({at_cm(0, 0), at_cm(1, 0)}, {cm(1)}),
                         "the number of corners of an outline must be at least 3: it was 2", outline_error);
    CHECK_THROWS_WITH_AS(piece(square, {cm(1), cm(2)}), "an outline of 4 edges needs 1 allowance or 4: it had 2",
                         outline_error);
    CHECK_THROWS_AS(piece(square, {}), outline_error);
    CHECK_THROWS_WITH_AS(piece(square, {cm(1)}, {corner_shape::mitred, corner_shape::mitred}),
                         "an outline of 4 corners needs 1 shape or 4: it had 2", outline_error);
    CHECK_THROWS_WITH_AS(piece(square, {cm(1)}, {}, 0.5),
                         "the limit of a mitre must be from 1 to 1000000: it was 0.500000", outline_error);
    for (const double limit : {double(INFINITY), double(NAN), 1'000'001.0}) // 0 allowances times no limit are no number
        CHECK_THROWS_AS(piece(square, {cm(0)}, {}, limit), outline_error);
    CHECK_THROWS_WITH_AS(piece({at_cm(0, 0), at_cm(0, 0), at_cm(1, 1)}, {cm(1)}),
                         "edge 1 of an outline must have a length: its corners were one point", outline_error);
    CHECK_THROWS_WITH_AS(
        piece(square, {cm(-1)}),
        "an allowance must be from zero to 1000000, and at least what is turned under first: it was -1.000000 with "
        "0.000000 turned under",
        outline_error);
    CHECK_THROWS_AS(piece(square, {cm(1, 2)}), outline_error);
    for (const double all : {double(INFINITY), double(NAN), 1e155})
        CHECK_THROWS_AS(piece(square, {cm(all)}), outline_error);
    CHECK_THROWS_AS(piece(square, {cm(1, NAN)}), outline_error);
    CHECK_THROWS_WITH_AS(piece({at_cm(0, 0), at_cm(4, 4), at_cm(4, 0), at_cm(0, 4)}, {cm(1)}),
                         "a seam line must not cross itself: edges 1 and 3 meet at (2.000000, 2.000000)",
                         outline_error);
    // Out and straight back again.
    CHECK_THROWS_AS(piece({at_cm(0, 0), at_cm(4, 0), at_cm(2, 0), at_cm(2, 3)}, {cm(1)}), outline_error);
    CHECK_THROWS_WITH_AS(
        piece(
            {at_cm(0, 0), at_cm(10, -0.1), at_cm(20, 0), at_cm(10, 10)}, {cm(1)},
            {corner_shape::mitred, corner_shape::reflected_in_edge_after, corner_shape::mitred, corner_shape::mitred}),
        "corner 2 is too straight or too sharp to be squared or reflected: its cut lines would run on for more "
        "than 4.000000 allowances; mitre it",
        outline_error);
    const piece good(square, {cm(1)});
    CHECK_THROWS_WITH_AS(static_cast<void>(good.cut_edge(4)), "there is no edge 5: the outline has 4", outline_error);
    CHECK_THROWS_WITH_AS(static_cast<void>(good.carried({0, drafted_length_of<centimetre>(10.5)})),
                         "a notch on edge 1 must lie from 0 to 10.000000 from its start: it was at 10.500000",
                         outline_error);
    const piece inward({at_cm(0, 0), at_cm(10, 0), at_cm(10, 10), at_cm(5, 3), at_cm(0, 10)}, {cm(1)});
    CHECK_THROWS_WITH_AS(
        static_cast<void>(inward.carried({3, drafted_length_of<centimetre>(0.1)})),
        "the notch 0.100000 along edge 4 has no cut edge opposite: the corner beside it takes that away",
        outline_error);
}
