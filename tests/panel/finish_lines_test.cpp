// The lines of an outline's edges against geometry by hand, and for rectangles against the lines of a panel.
#include "panel/random_outline.hpp"
#include "refused.hpp"
#include <turncloth.hpp>
#include <turncloth/panel/curve.hpp>
#include <turncloth/panel/finish_lines.hpp>

#include <doctest/doctest.h>

#include <cmath>
#include <cstddef>
#include <numbers>
#include <utility>
#include <vector>

using namespace turncloth;
using random_outline::maker;

namespace {

// A double is a fraction of a power of two, and comes back as it was; 0x1p-62 is the smallest that 64 bits hold.
static_assert(exactly(drafted_length_of<inch>(12.625)) == "12 5/8"_in);
static_assert(exactly(drafted_length_of<inch>(-0.75)) == "-3/4"_in);
static_assert(exactly(drafted_length_of<inch>(0)) == 0_in);
static_assert(exactly(drafted_length_of<inch>(0x1p62)) == length_of<inch>(std::int64_t{1} << 62));
static_assert(exactly(drafted_length_of<inch>(0x1p-62)) == length_of<inch>({1, std::int64_t{1} << 62}));
static_assert(exactly(drafted_point<inch>(0.5, 2)) == point_of<inch>({1, 2}, 2));
static_assert(drafted("1/64"_in).value() == 0x1p-6);
static_assert(on_graduation(drafted_point<centimetre>(1, 2.54), "1/16"_in) == point_of<inch>({3, 8}, 1));

point<centimetre, double> at_cm(double x, double y) { return drafted_point<centimetre>(x, y); }

template <length_unit Unit>
void check_line(const finish_line<Unit>& found, double x, double y, double to_x, double to_y) {
    REQUIRE(found.where);
    CHECK(found.where->from.x.value() == doctest::Approx(x).epsilon(1e-12));
    CHECK(found.where->from.y.value() == doctest::Approx(y).epsilon(1e-12));
    CHECK(found.where->to.x.value() == doctest::Approx(to_x).epsilon(1e-12));
    CHECK(found.where->to.y.value() == doctest::Approx(to_y).epsilon(1e-12));
}

/// One of the trade, its lengths in 64ths.
finish<inch> any_finish(maker& any) {
    const auto some = [&](std::size_t least, std::size_t most) {
        return length_of<inch>({static_cast<std::int64_t>(any.count(least, most)), 64});
    };
    const auto first = some(1, 32), depth = first + some(0, 64), inset = first / 2;
    switch (any.count(0, 5)) {
    case 0:
        return finish<inch>();
    case 1:
        return seam(depth);
    case 2:
        return single_turned_hem(depth, inset);
    case 3:
        return double_turned_hem(first, depth, inset, some(0, 4));
    case 4:
        return casing(depth, inset, first / 2);
    default:
        return separate_binding(depth);
    }
}

} // namespace

TEST_CASE("of a rectangle the lines are those of its panel, from cut edge to cut edge, and exact") {
    maker any(41);
    int lines = 0;
    while (any.another_of(500)) {
        const auto w = length_of<inch>({static_cast<std::int64_t>(any.count(600, 4000)), 64}),
                   h = length_of<inch>({static_cast<std::int64_t>(any.count(600, 4000)), 64});
        std::vector<finish<inch>> of; // bottom, right, top, left, as the corners go
        for (int i = 0; i < 4; ++i)
            of.push_back(any_finish(any));
        const panel<inch> flat(finished_size<inch>(w, h), {of[2], of[1], of[0], of[3]});
        const polygon<inch> corners = {point_of<inch>(0, 0), point<inch>{w, 0_in}, point<inch>{w, h},
                                       point<inch>{0_in, h}};
        const auto found = lines_of(outline<inch>(drafted(corners), edge_allowances_of(of)), of);
        const length<inch> left = -of[3].allowance(), low = -of[0].allowance(), right = left + flat.cut().width(),
                           high = low + flat.cut().height();
        const auto check = [&](const std::vector<finish_line<inch>>& drawn, const auto& places, std::size_t i) {
            REQUIRE(drawn.size() == places.size());
            for (std::size_t k = 0; k < places.size(); ++k) {
                REQUIRE(drawn[k].at == places[k]);
                REQUIRE(drawn[k].where);
                const length<inch> in = places[k].from_datum(), level = i == 0 ? low + in : high - in,
                                   upright = i == 3 ? left + in : right - in;
                const line<inch> expected = i == 0   ? line<inch>{{left, level}, {right, level}}
                                            : i == 1 ? line<inch>{{upright, low}, {upright, high}}
                                            : i == 2 ? line<inch>{{right, level}, {left, level}}
                                                     : line<inch>{{upright, high}, {upright, low}};
                REQUIRE(exactly(drawn[k].where->from) == expected.from);
                REQUIRE(exactly(drawn[k].where->to) == expected.to);
                ++lines;
            }
        };
        for (std::size_t i = 0; i < 4; ++i) {
            const auto& own = of[i];
            check(found[i].folds, own.folds(), i);
            check(found[i].stitching, own.stitching(), i);
        }
    }
    CHECK(lines > 2000);
}

TEST_CASE("worked: the folds of a hem whose ends are reflected end on the cut line, and its row on that of the sides") {
    // Sides of 3 to 4, which stand 1 cm out: their cut lines are 3 x + 4 y = 65 and its mirror image in x = 10.
    const std::vector finishes = {double_turned_hem(1_cm, 2_cm, "0.5"_cm), seam(1_cm), finish<centimetre>(),
                                  seam(1_cm)};
    using enum corner_shape;
    const outline<centimetre> apron({at_cm(0, 0), at_cm(20, 0), at_cm(12, 6), at_cm(8, 6)},
                                    edge_allowances_of(finishes),
                                    {reflected_in_edge_after, reflected_in_edge_before, mitred, mitred});
    const auto lines = lines_of(apron, finishes);
    REQUIRE(lines[0].folds.size() == 2);
    CHECK(lines[0].folds[1].at == at<cut_edge>(3_cm));
    check_line(lines[0].folds[1], -5.0 / 3, 0, 65.0 / 3, 0);
    // Folded at y = 0 the cloth 2 cm below lies on the cut line 2 cm above it, at x = 57 / 3; there the first fold ends.
    check_line(lines[0].folds[0], 1, -2, 19, -2);
    check_line(lines[0].stitching[0], 1.0 / 3, 1.5, 59.0 / 3, 1.5);
    // A seam's row is its seam line. It goes on over the hem to its reflected end: 20 + 4 u is 65 / 3 - 4 u there.
    REQUIRE(lines[1].stitching.size() == 1);
    check_line(lines[1].stitching[0], 20 + 5.0 / 6, -5.0 / 8, 12, 6);
    CHECK(lines[2].folds.empty());
    CHECK(lines[2].stitching.empty());
}

TEST_CASE("worked: at an inward corner folds end where the allowances part, and rows half-way between the edges") {
    const std::vector finishes = {
        seam(1_cm), seam(1_cm), double_turned_hem(1_cm, 2_cm), double_turned_hem(1_cm, "0.5"_cm + "0.5"_cm),
        seam(1_cm), seam(1_cm)};
    for (const bool clockwise : {false, true}) {
        polygon<centimetre, double> corners = {at_cm(0, 0), at_cm(20, 0), at_cm(20, 8),
                                               at_cm(6, 8), at_cm(6, 20), at_cm(0, 20)};
        std::vector<finish<centimetre>> of = finishes;
        if (clockwise) { // mirrored, which turns every line's ends round
            for (auto& p : corners)
                p.x = -p.x;
        }
        const double flip = clockwise ? -1 : 1;
        const auto lines = lines_of(outline<centimetre>(corners, edge_allowances_of(of)), of);
        // Their cut lines meet at (8, 11): the way there from (6, 8) has 3 cm of height over the level edge.
        check_line(lines[2].folds[0], flip * 21, 10, flip * (6 + 4.0 / 3), 10);
        check_line(lines[2].folds[1], flip * 21, 8, flip * 6, 8);
        check_line(lines[2].stitching[0], flip * 21, 6, flip * 4, 6);
        check_line(lines[3].folds[0], flip * 7, 9.5, flip * 7, 21);
        check_line(lines[3].stitching[0], flip * 5, 7, flip * 5, 21);
    }
}

TEST_CASE("along a curve the lines join: of a regular piece they are regular again, as deep as their finish says") {
    constexpr std::size_t sides = 24; // 15 degrees each
    const double apothem = 10, half = std::tan(std::numbers::pi / sides);
    polygon<centimetre, double> corners;
    for (std::size_t i = 0; i < sides; ++i) {
        const double angle = 2 * std::numbers::pi * static_cast<double>(i) / sides,
                     reach = apothem / std::cos(std::numbers::pi / sides);
        corners.push_back(at_cm(reach * std::cos(angle), reach * std::sin(angle)));
    }
    const std::vector hem = {double_turned_hem(1_cm, 2_cm, "0.5"_cm)};
    const auto all = lines_of(outline<centimetre>(corners, edge_allowances_of(hem)), hem);
    REQUIRE(all.size() == sides);
    for (std::size_t i = 0; i < sides; ++i) {
        const auto& next = all[(i + 1) % sides];
        const auto check = [&](const finish_line<centimetre>& own, const finish_line<centimetre>& after, double out) {
            REQUIRE(own.where);
            const auto from = detail::bare(own.where->from), to = detail::bare(own.where->to);
            REQUIRE(detail::length_of_arrow(to - from) == doctest::Approx(2 * half * (apothem + out)).epsilon(1e-9));
            REQUIRE(detail::same(to, detail::bare(after.where->from)));
        };
        check(all[i].folds[0], next.folds[0], 2);
        check(all[i].folds[1], next.folds[1], 0);
        check(all[i].stitching[0], next.stitching[0], -1.5);
    }
    // A hollow of radius 2 cm with a hem of 3 cm: where its cut line would be there is nothing, and no fold either.
    polygon<centimetre, double> tray = {at_cm(0, 0), at_cm(20, 0), at_cm(20, 12)};
    const auto hollow =
        flattened(arc<centimetre>{at_cm(10, 12), at_cm(12, 12), -180}, drafted_length_of<centimetre>(0.01));
    tray.insert(tray.end(), hollow.begin(), hollow.end());
    tray.insert(tray.end(), {at_cm(8, 12), at_cm(0, 12)});
    const auto tight = lines_of(outline<centimetre>(tray, edge_allowances_of(hem)), hem);
    const auto& middle = tight[3 + hollow.size() / 2];
    CHECK_FALSE(middle.folds[0].where);
    CHECK(middle.folds[1].where);
    CHECK(middle.stitching[0].where);
}

TEST_CASE("every line is as far from the cut edge as it says, parallel, and on the cut piece") {
    maker any(42);
    int drawn = 0, nothing = 0, refused = 0;
    while (any.another_of(400)) {
        const auto corners = any.count(0, 1) == 0 ? any.piece(any.count(3, 12), 12, 30) : any.of_any_kind();
        std::vector<finish<centimetre>> of;
        for (std::size_t i = 0; i < corners.size(); ++i) {
            const auto depth = length_of<centimetre>({static_cast<std::int64_t>(any.count(4, 16)), 8});
            of.push_back(any.count(0, 2) == 0 ? seam(depth) : double_turned_hem(depth / 2, depth, "0.25"_cm));
        }
        try {
            const outline<centimetre> piece(corners, edge_allowances_of(of));
            const auto boundary = trimmed_cut_line(piece).boundary;
            const auto lines = lines_of(piece, of);
            for (std::size_t i = 0; i < corners.size(); ++i) {
                const auto a = detail::bare(corners[i]), b = detail::bare(corners[(i + 1) % corners.size()]);
                const auto way = (b - a) * (1 / detail::length_of_arrow(b - a));
                const auto check = [&](const finish_line<centimetre>& l) {
                    if (!l.where)
                        return void(++nothing);
                    const auto from = detail::bare(l.where->from), to = detail::bare(l.where->to);
                    const double out = to_double((of[i].allowance() - l.at.from_datum()).value());
                    REQUIRE(detail::cross(from - a, way) == doctest::Approx(out).epsilon(1e-9));
                    REQUIRE(detail::cross(to - a, way) == doctest::Approx(out).epsilon(1e-9));
                    REQUIRE(detail::dot(to - from, way) > 0);
                    for (const double part : {1e-6, 0.25, 0.5, 0.75, 1 - 1e-6})
                        REQUIRE(locate(boundary, detail::in_unit<centimetre>(from + (to - from) * part)) !=
                                containment::outside);
                    ++drawn;
                };
                for (const auto& l : lines[i].folds)
                    check(l);
                for (const auto& l : lines[i].stitching)
                    check(l);
            }
        } catch (const outline_error& e) {
            if (e.facts().kind == fault::disagree) // a seam line that crosses itself
                continue;
            REQUIRE(e.facts().kind == fault::no_room);
            ++refused;
        }
    }
    CHECK(drawn > 6000);
    CHECK(nothing > 50);
    CHECK(refused > 0);
    CHECK(refused < 20);
}

TEST_CASE("finishes that the outline was not drafted for are refused, and lines without room") {
    const outline<centimetre> strip({at_cm(0, 0), at_cm(20, 0), at_cm(20, 3), at_cm(0, 3)}, {drafted(1_cm)});
    const auto drawn_with = [&](std::vector<finish<centimetre>> of) {
        return [&strip, of = std::move(of)] { static_cast<void>(lines_of(strip, of)); };
    };
    CHECK(refused::message<outline_error>(drawn_with({seam(1_cm), seam(1_cm)})) ==
          "an outline of 4 edges needs 1 finish or 4: it had 2");
    const auto other = drawn_with({seam(1_cm), seam(1_cm), seam("1.5"_cm), seam(1_cm)});
    CHECK(refused::message<outline_error>(other) ==
          "the finish of edge 3 allows 1.500000, and the outline was drafted with 1.000000 there");
    CHECK(refused::facts<outline_error>(other) == "disagree: an allowance, given 1.5, least 1, most 1, index 2");
    const auto no_room = drawn_with({seam(1_cm), seam(1_cm), seam(1_cm).stitched_at(6_cm), seam(1_cm)});
    CHECK(refused::message<outline_error>(no_room) ==
          "a row of stitching of edge 3, 6 cm from its cut edge, leaves the piece");
    CHECK(refused::facts<outline_error>(no_room) == "no room: a row of stitching, given 6 cm, index 2");
    polygon<centimetre, double> many;
    for (int i = 0; i < 5001; ++i)
        many.push_back(at_cm(i, 0));
    for (int i = 5000; i-- > 0;)
        many.push_back(at_cm(i, 1));
    CHECK(refused::message<outline_error>([&] {
              static_cast<void>(
                  lines_of(outline<centimetre>(many, {drafted(0_cm)}), std::vector{finish<centimetre>()}));
          }) == "the number of edges with lines must be at most 10000: it was 10001");
    CHECK_THROWS_AS(static_cast<void>(exactly(drafted_length_of<inch>(0x1p-63))), overflow_error);
    CHECK_THROWS_AS(static_cast<void>(exactly(drafted_length_of<inch>(0x1p63))), overflow_error);
    CHECK_THROWS_AS(static_cast<void>(exactly(drafted_length_of<inch>(std::nan("")))), range_error);
}
