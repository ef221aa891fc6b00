// Flat folding, against paper folded point by point in GMP (paper.hpp), and folds that anyone can repeat with a napkin.
#include "measure/against_gmp.hpp"
#include "panel/paper.hpp"
#include <turncloth/measure/read.hpp>
#include <turncloth/panel/folding.hpp>

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <limits>
#include <optional>
#include <vector>

using namespace turncloth;
using namespace turncloth::literals;
using paper_folding::sheet;
using paper_folding::spot;

namespace {

polygon<inch> square(fraction side) {
    return {point_of<inch>(0, 0), point_of<inch>(side, 0), point_of<inch>(side, side), point_of<inch>(0, side)};
}

line<inch> through(fraction x, fraction y, fraction dx, fraction dy) {
    return {point_of<inch>(x, y), point_of<inch>(x + dx, y + dy)};
}

/// One of the lines that cloth is folded on, or a slanting one, through the sheet.
line<inch> any_line(against_gmp::sampler& any, bool slanting) {
    static constexpr std::int64_t ways[][2] = {{0, 1}, {1, 0}, {1, 1}, {1, -1}, {-1, 0}, {0, -1}, {-1, -1}, {-1, 1}};
    const fraction x = {any.between(1, 95), 8}, y = {any.between(1, 95), 8};
    if (slanting) {
        const auto rise = any.between(1, 4);
        return through(x, y, any.between(-4, 4), any.bits() % 2 != 0 ? rise : -rise);
    }
    const auto& way = ways[any.between(0, 7)];
    return through(x, y, way[0], way[1]);
}

/// A spot on no crease and no edge: its coordinates have a denominator that nothing else has.
point<inch> any_spot(against_gmp::sampler& any) {
    return point_of<inch>({any.between(-2000, 14000), 1009}, {any.between(-2000, 14000), 1013});
}

/// Where some spot of the flat sheet has come to lie, so that there is cloth.
std::optional<point<inch>> any_spot_on_cloth(against_gmp::sampler& any, const sheet& paper) {
    const auto flat = point_of<inch>({any.between(1, 12107), 1009}, {any.between(1, 12155), 1013});
    const auto s = paper.folded(sheet::exact(flat));
    if (!s || !against_gmp::fits(s->x) || !against_gmp::fits(s->y))
        return std::nullopt;
    return point_of<inch>({s->x.get_num().get_si(), s->x.get_den().get_si()},
                          {s->y.get_num().get_si(), s->y.get_den().get_si()});
}

line<inch, double> in_doubles(const line<inch>& l) { return drafted(l); }

} // namespace

TEST_CASE("a napkin folded in half twice has four layers, and one on its diagonal has two") {
    folding<inch> napkin(square(12));
    napkin.fold(through(6, 0, 0, 1));
    CHECK(napkin.layer_count() == 2);
    CHECK(napkin.layers_at(point_of<inch>(9, 3)) == 2);
    CHECK(napkin.layers_at(point_of<inch>(3, 3)) == 0);
    CHECK_FALSE(napkin.layer(0).face_up); // turned under
    CHECK(napkin.layer(1).face_up);
    CHECK(napkin.on_the_flat(0, point_of<inch>(9, 3)) == point_of<inch>(3, 3));
    CHECK(napkin.on_the_flat(1, point_of<inch>(9, 3)) == point_of<inch>(9, 3));
    napkin.fold(through(0, 6, -1, 0));
    CHECK(napkin.layers_at(point_of<inch>(9, 9)) == 4);
    CHECK(napkin.most_layers().layers == 4);
    CHECK(napkin.area().value() == 144);

    folding<inch> diagonal(square(12));
    diagonal.fold(through(0, 0, 1, 1), turned::over);
    CHECK(diagonal.layers_at(point_of<inch>(8, 4)) == 2);
    CHECK(diagonal.layers_at(point_of<inch>(4, 8)) == 0);
    CHECK(diagonal.layer(0).face_up);
    CHECK_FALSE(diagonal.layer(1).face_up); // turned over
}

TEST_CASE("cloth folded in three like a letter lies in the order in which it was folded") {
    folding<inch> letter({point_of<inch>(0, 0), point_of<inch>(9, 0), point_of<inch>(9, 4), point_of<inch>(0, 4)});
    letter.fold(through(3, 0, 0, 1), turned::over);  // the left third over the middle
    letter.fold(through(6, 0, 0, -1), turned::over); // the right third over both
    REQUIRE(letter.layer_count() == 3);
    const auto p = point_of<inch>(5, 1);
    CHECK(letter.on_the_flat(0, p) == p);
    CHECK(letter.on_the_flat(1, p) == point_of<inch>(1, 1));
    CHECK(letter.on_the_flat(2, p) == point_of<inch>(7, 1));
    // Two turned together swap places.
    folding<inch> twice({point_of<inch>(0, 0), point_of<inch>(9, 0), point_of<inch>(9, 4), point_of<inch>(0, 4)});
    twice.fold(through(2, 0, 0, 1), turned::over).fold(through(4, 0, 0, 1), turned::over);
    REQUIRE(twice.layer_count() == 3);
    CHECK(twice.on_the_flat(0, point_of<inch>(5, 1)) == point_of<inch>(5, 1));
    CHECK(twice.on_the_flat(1, point_of<inch>(5, 1)) == point_of<inch>(1, 1));
    CHECK(twice.on_the_flat(2, point_of<inch>(5, 1)) == point_of<inch>(3, 1));
    CHECK(twice.layer(1).face_up);
    CHECK_FALSE(twice.layer(2).face_up);
}

TEST_CASE("a row of stitching meets the most layers where it is said to") {
    folding<inch> hemmed({point_of<inch>(0, 0), point_of<inch>(10, 0), point_of<inch>(10, 4), point_of<inch>(0, 4)});
    hemmed.fold(through(1, 0, 0, 1)).fold(through(2, 0, 0, 1)); // turned twice: three layers from 2 to 3
    const auto most = hemmed.most_layers_along(point_of<inch>(0, 2), point_of<inch>(10, 2));
    CHECK(most.layers == 3);
    CHECK(most.where == point_of<inch>({5, 2}, 2));
    CHECK(hemmed.most_layers_along(point_of<inch>(4, 2), point_of<inch>(10, 2)).layers == 1);
    CHECK(hemmed.most_layers_along(point_of<inch>(-5, 2), point_of<inch>(1, 2)).layers == 0);
    CHECK(hemmed.most_layers_along(point_of<inch>(2, 0), point_of<inch>(2, 4)).layers == 0); // along the very edge
    CHECK(hemmed.layers_at(point_of<inch>(3, 2)) == 3);                                      // the edges count here
    CHECK(hemmed.most_layers_along(point_of<inch>(0, 9), point_of<inch>(10, 9)).layers == 0);
}

TEST_CASE("what is trimmed goes through all layers and is accounted for") {
    folding<inch> snowflake(square(8));
    snowflake.fold(through(4, 0, 0, 1)).fold(through(0, 4, -1, 0));
    // A corner cut off the folded middle makes a hole in the middle of the cloth.
    snowflake.trim(through(5, 4, -1, 1));
    CHECK(snowflake.trimmed_area().value() == 2);
    CHECK(snowflake.area().value() == 62);
    CHECK(snowflake.layers_at(point_of<inch>({41, 10}, {41, 10})) == 0);
    CHECK(snowflake.layers_at(point_of<inch>(6, 6)) == 4);
    snowflake.trim(through(0, 0, -1, 0));
    CHECK(snowflake.area().value() == 62); // nothing lies there
    snowflake.trim(through(9, 0, 0, 1));
    CHECK(snowflake.layer_count() == 0);
    CHECK(snowflake.area().value() == 0);
    CHECK(snowflake.trimmed_area().value() == 64);
    CHECK(snowflake.most_layers().layers == 0);
}

TEST_CASE("random folds: every layer count, place and area is that of paper folded point by point") {
    against_gmp::sampler any(4);
    std::size_t spots_on_cloth = 0, deepest = 0;
    for (const int round : any.cases(1500)) {
        const bool slanting = round % 4 == 0;
        const int folds = slanting ? 2 : 6;
        folding<inch> cloth(square(12));
        folding<inch, double> drafted_cloth(drafted(square(12)));
        sheet paper(square(12));
        for (int i = 0; i < folds; ++i) {
            const line<inch> l = any_line(any, slanting);
            if (any.between(0, 6) == 0) {
                cloth.trim(l);
                drafted_cloth.trim(in_doubles(l));
                paper.trim(l);
            } else {
                const turned way = any.bits() % 2 != 0 ? turned::over : turned::under;
                cloth.fold(l, way);
                drafted_cloth.fold(in_doubles(l), way);
                paper.fold(l);
            }
        }
        REQUIRE(cloth.area().value() + cloth.trimmed_area().value() == 144);
        REQUIRE(drafted_cloth.area().value() == doctest::Approx(to_double(cloth.area().value())));
        for (int i = 0; i < 6; ++i) {
            const auto p = any_spot_on_cloth(any, paper).value_or(any_spot(any));
            const std::size_t expected = paper.layers_at(sheet::exact(p));
            REQUIRE(cloth.layers_at(p) == expected);
            REQUIRE(drafted_cloth.layers_at(drafted(p)) == expected);
            spots_on_cloth += expected > 0 ? 1 : 0;
            deepest = std::max(deepest, expected);
        }
        for (std::size_t i = 0; i < cloth.layer_count(); ++i) {
            REQUIRE(is_convex(cloth.layer(i).corners));
            REQUIRE(signed_area_of(cloth.layer(i).corners).value() > 0);
            for (const auto& p : cloth.layer(i).corners) {
                const auto flat = cloth.on_the_flat(i, p);
                const auto again = paper.folded(sheet::exact(flat));
                REQUIRE(again.has_value());
                REQUIRE(again->x == sheet::exact(p).x);
                REQUIRE(again->y == sheet::exact(p).y);
            }
        }
        if (round % 8 != 0)
            continue;
        const auto most = cloth.most_layers();
        const auto most_in_doubles = drafted_cloth.most_layers();
        REQUIRE(most_in_doubles.layers == most.layers);
        if (most.layers > 0)
            REQUIRE(cloth.layers_at(most.where) >= most.layers);
        for (int i = 0; i < 20; ++i)
            REQUIRE(paper.layers_at(sheet::exact(any_spot_on_cloth(any, paper).value_or(any_spot(any)))) <=
                    most.layers);
    }
    CHECK(spots_on_cloth > 3000);
    CHECK(deepest >= 8);
}

TEST_CASE("folding twice on one crease changes nothing, and a crease beside the cloth turns all of it or none") {
    folding<inch> cloth(square(12));
    cloth.fold(through(12, 0, 0, -1)); // all of it lies right of this
    CHECK(cloth.layer_count() == 1);
    CHECK(cloth.layer(0).face_up);
    cloth.fold(through(12, 0, 0, 1)); // and left of this: turned like a page
    CHECK(cloth.layer_count() == 1);
    CHECK_FALSE(cloth.layer(0).face_up);
    CHECK(cloth.on_the_flat(0, point_of<inch>(15, 5)) == point_of<inch>(9, 5));
    cloth.fold(through(12, 0, 0, 1));
    CHECK(cloth.layer_count() == 1);
    CHECK_FALSE(cloth.layer(0).face_up);
}

TEST_CASE("what cannot be folded is refused with its reason") {
    const polygon<inch> dart = {point_of<inch>(0, 0), point_of<inch>(6, 0), point_of<inch>(6, 6), point_of<inch>(3, 2),
                                point_of<inch>(0, 6)};
    CHECK_THROWS_WITH_AS(folding<inch>{dart}, "only a convex piece can be folded here: cut it into convex parts first",
                         folding_error);
    CHECK_THROWS_AS(folding<inch>(polygon<inch>{}), folding_error);
    CHECK_THROWS_AS(folding<inch>(polygon<inch>{point_of<inch>(0, 0), point_of<inch>(1, 0)}), folding_error);
    folding<inch> cloth(square(12));
    CHECK_THROWS_WITH_AS(cloth.fold(through(3, 3, 0, 0)), "a crease needs two different points", folding_error);
    CHECK_THROWS_AS(cloth.trim(through(3, 3, 0, 0)), folding_error);
    for (int i = 0; i < 64; ++i)
        cloth.fold(through(-1, 0, 0, 1));
    CHECK_THROWS_WITH_AS(cloth.fold(through(-1, 0, 0, 1)), "a piece can be folded 64 times here", folding_error);
    CHECK(cloth.layer_count() == 1);
    // Corners given clockwise are turned round.
    folding<inch> clockwise({point_of<inch>(0, 0), point_of<inch>(0, 4), point_of<inch>(4, 4), point_of<inch>(4, 0)});
    CHECK(clockwise.area().value() == 16);
    CHECK(clockwise.layers_at(point_of<inch>(2, 2)) == 1);
}

TEST_CASE("a strip trimmed a thousand times stays the strip that is left") {
    folding<inch> strip(square(12));
    strip.fold(through(6, 0, 0, 1));
    for (std::int64_t i = 1; i <= 1000; ++i)
        strip.trim(through(0, fraction(12) - fraction(i, 100), 1, 0)); // what lies above is cut away
    CHECK(strip.layer_count() == 2);
    CHECK(strip.area().value() == 24);
    CHECK(strip.trimmed_area().value() == 120);
    CHECK(strip.layers_at(point_of<inch>(9, 1)) == 2);
    CHECK(strip.on_the_flat(0, point_of<inch>(9, 1)) == point_of<inch>(3, 1));
    CHECK(strip.layer(0).corners.size() == 4);
}

TEST_CASE("a stack of many layers is counted at once where they lie alike, and refused where they lie all over") {
    // Halved 7 times each way: 2^14 layers, all of one shape.
    folding<inch> stack(square(128));
    fraction size = 128;
    for (int i = 0; i < 7; ++i) {
        size /= 2;
        stack.fold(through(128 - size, 0, 0, 1));
        stack.fold(through(0, size, 1, 0));
    }
    CHECK(stack.layer_count() == 1 << 14);
    CHECK(stack.most_layers().layers == 1 << 14);
    // Folded on slanting lines, in doubles, its layers have sides all over.
    folding<inch, double> crumpled(drafted(square(128)));
    for (int i = 0; i < 12; ++i)
        crumpled.fold(drafted(through(64, 64, {i * i % 7 + 1, 3}, {i % 5 - 2, 7})));
    for (int i = 0; i < 12; ++i)
        crumpled.fold(drafted(through(60 + i, 60 - i, {i * i % 5 - 2, 3}, {i % 7 + 1, 7})));
    CHECK_THROWS_AS(crumpled.most_layers(), folding_error);
}

TEST_CASE("a spot, a corner or a crease that is no number, or too far away, is refused and counts as nothing") {
    using drafted_folding = folding<inch, double>;
    const polygon<inch, double> cloth = drafted(square(12));
    drafted_folding f(cloth);
    f.fold(drafted(through(6, 0, 0, 1)));
    const auto here = drafted_point<inch>(9, 3);
    for (const double off : {double(NAN), double(INFINITY), -1e7}) {
        const auto there = drafted_point<inch>(3, off);
        CHECK_THROWS_AS(drafted_folding({cloth[0], cloth[1], there}), folding_error);
        CHECK_THROWS_AS(f.fold({here, there}), folding_error);
        CHECK_THROWS_AS(f.trim({there, here}), folding_error);
        CHECK_THROWS_AS(f.layers_at(there), folding_error);
        CHECK_THROWS_AS(f.most_layers_along(here, there), folding_error);
        CHECK_THROWS_AS(f.on_the_flat(0, there), folding_error);
    }
    CHECK(f.layers_at(here) == 2);
    CHECK_THROWS_AS(f.fold({drafted_point<inch>(1e6, 0), drafted_point<inch>(1e6, 1)}), folding_error); // its image
}

TEST_CASE("a direction whose whole numbers do not fit 64 bits is refused, and not turned round") {
    const fraction half = std::numeric_limits<std::int64_t>::min() / -2; // 2^62, twice which does not fit; -2^63 does
    CHECK_THROWS_AS(detail::shortest(detail::arrow<fraction>{{-1, 2}, half}), overflow_error);
    CHECK(detail::same(detail::shortest(detail::arrow<fraction>{{1, 2}, -half}), {1, half * -2}));
}

TEST_CASE("where 64 bits run out, exact folding says so and doubles go on") {
    // Creases of slopes with large, coprime parts: the images' denominators grow by the sum of their squares each time.
    const polygon<inch> cloth = square(12);
    folding<inch> exact(cloth);
    folding<inch, double> approximate(drafted(cloth));
    const auto fold_all = [](auto& f, auto convert) {
        for (std::int64_t i = 0; i < 9; ++i)
            f.fold(convert(through({i + 1, 2}, 0, {97 + i, 64}, {89 - i, 63})));
    };
    CHECK_THROWS_AS(fold_all(exact, [](const auto& l) { return l; }), overflow_error);
    fold_all(approximate, [](const auto& l) { return drafted(l); });
    CHECK(approximate.area().value() == doctest::Approx(144).epsilon(1e-9));
}

TEST_CASE("a fold or a trim that is refused midway leaves the piece as it was") {
    const auto corners_of = [](const folding<inch>& f) {
        std::vector<point<inch>> all;
        for (std::size_t i = 0; i < f.layer_count(); ++i)
            all.insert(all.end(), f.layer(i).corners.begin(), f.layer(i).corners.end());
        return all;
    };
    against_gmp::sampler any(20261126);
    int refusals = 0;
    while (any.another_of(200)) {
        folding<inch> cloth(square(12));
        std::vector<point<inch>> before;
        bool refused = false;
        for (int i = 0; i < 12 && !refused; ++i) {
            before = corners_of(cloth);
            const line<inch> along = through({any.between(1, 95), 8}, {any.between(1, 95), 8}, {any.between(1, 9), 7},
                                             {any.between(-9, 9), 5});
            try {
                i > 3 && any.between(0, 3) == 0 ? cloth.trim(along) : cloth.fold(along);
            } catch (const overflow_error&) {
                refused = true;
                ++refusals;
            }
        }
        if (refused)
            REQUIRE(corners_of(cloth) == before);
    }
    CHECK(refusals > 100);
}
