// Loops, casings and pockets: at compile time; the ribbon over a rod against the length of its path, laid out in small
// steps round the rod; a box inside its pocket; there and back; and what is refused.
#include "reference.hpp"
#include <turncloth/measure/read.hpp>
#include <turncloth/notions/loop.hpp>

#include <boost/math/constants/constants.hpp>
#include <doctest/doctest.h>

#include <cmath>

using namespace turncloth;
using reference::exact;
using reference::facts;
using reference::message;
using reference::real;

namespace {

// Stitched as far out as the rod's radius r, the way is r (2 + pi): a half circle and two straights of r... and r = 1.
static_assert(loop_for_rod<inch>({.diameter = 2_in, .stitched = 1_in}, "0.00001"_in, rounding::nearest) ==
              "5.14159"_in);
// Stitched on the rod's own line, all the way round: pi.
static_assert(loop_for_rod<inch>({.diameter = 1_in, .stitched = 0_in}, "0.00001"_in, rounding::nearest) ==
              "3.14159"_in);
// r = 1, stitched at sqrt(3) = 1.7320508: a third of the circle and two straights, 2 sqrt(3) + 2 pi / 3 = 5.5584967...
static_assert(loop_for_rod<inch>({.diameter = 2_in, .stitched = "1.7320508"_in}, "0.00001"_in, rounding::nearest) ==
              "5.5585"_in);
static_assert(loop_for_rod<inch>({.diameter = "3/4"_in, .stitched = "3/8"_in}, "1/8"_in, rounding::up) ==
              2_in); // the synopsis

static_assert(casing_for_rod<inch>({.diameter = 1_in, .ease = "1/4"_in}, "1/8"_in, rounding::up) ==
              "1 7/8"_in);                                                               // 1.5708 + 0.25 = 1.8208
static_assert(rod_for_casing(2_in, "1/8"_in, rounding::down) == "1 1/4"_in);             // 4 / pi = 1.2732
static_assert(loop_over_box<inch>({4_in, 3_in}, 4_in, "1/8"_in, rounding::up) == 14_in); // 4 + 2 x 5, exactly
static_assert(loop_over_box<inch>({4_in, 3_in}, 0_in, "1/8"_in, rounding::down) ==
              10_in); // straight up, over, straight down

// A Manual of Home-Making, Portieres (published): a run is at least twice as wide as its rod is thick, 1 1/2 in for 3/4 in,
// which is more than the half girth, 1.18 in (derived).
static_assert(casing_for_rod<inch>({.diameter = "3/4"_in, .ease = {}}, "0.01"_in, rounding::nearest) == "1.18"_in);

constexpr boxed_thing<inch> seed_tin{6_in, "2 1/2"_in, 8_in};
static_assert(pocket_for_box(seed_tin, {.ease = "1/4"_in, .above = -2 * 1_in}).width.value() == "8 3/4"_in);
static_assert(pocket_for_box(seed_tin, {.ease = "1/4"_in, .above = -2 * 1_in}).height.value() ==
              "7 1/4"_in); // 8 + 1 1/4 - 2
static_assert(box_for_pocket("8 3/4"_in, {.depth = "2 1/2"_in, .ease = "1/4"_in}) == 6_in);

/// A string pulled tight over a circle of radius r that lies on the axis at the origin, from (-h, 0) to (h, 0). Where
/// it meets the circle is found by looking along its right half, point by point, for the one seen outermost from (h,
/// 0).
double laid_over(double r, double h) {
    constexpr int steps = 200'000;
    const double pi = boost::math::constants::pi<double>();
    double outermost = pi, meets_at = 0;
    for (int i = 0; i < steps; ++i) {
        const double turn = pi / 2 - pi * i / steps;
        const double seen = std::atan2(r + r * std::sin(turn), r * std::cos(turn) - h); // the axis inward is pi
        if (seen < outermost)
            outermost = seen, meets_at = turn;
    }
    const double straight = std::hypot(r * std::cos(meets_at) - h, r + r * std::sin(meets_at));
    return 2 * straight + 2 * r * (pi / 2 - meets_at);
}

} // namespace

TEST_CASE("the ribbon over a rod is as long as its path: two tangents and the arc between them") {
    reference::sampler random(1844);
    while (random.another_of(60)) {
        const length<inch> diameter = random.inches(3), stitched = random.inches(3);
        const double path = laid_over(to_double(diameter.value()) / 2, to_double(stitched.value()));
        CHECK(detail::loop_of_rod<inch>({.diameter = diameter, .stitched = stitched}).value() ==
              doctest::Approx(path).epsilon(1e-6));
    }
}

TEST_CASE("the ribbon over a rod is 2 h + r (2 pi - 4 atan(h / r)), rounded rightly on each side") {
    reference::sampler random(1846);
    while (random.another_of(5'000)) {
        const length<centimetre> diameter = random.centimetres(8), stitched = random.centimetres(8);
        const real r = exact(diameter) / 2, h = exact(stitched);
        const real way = 2 * h + r * (boost::math::constants::two_pi<real>() - 4 * atan(h / r));
        CHECK(exact(loop_for_rod<centimetre>({.diameter = diameter, .stitched = stitched}, "0.1"_cm, rounding::up)) *
                  10 ==
              ceil(way * 10));
        CHECK(exact(loop_for_rod<centimetre>({.diameter = diameter, .stitched = stitched}, "0.1"_cm, rounding::down)) *
                  10 ==
              floor(way * 10));
        CHECK(abs(real(detail::loop_of_rod<centimetre>({.diameter = diameter, .stitched = stitched}).value()) - way) <=
              detail::loop_of_rod<centimetre>({.diameter = diameter, .stitched = stitched}).bound());
    }
}

TEST_CASE(
    "the shortest loop is stitched a radius out; further out it nears its base, further in it goes under the rod") {
    // d/dh (2 h + 4 r atan(r / h)) = 2 - 4 r^2 / (h^2 + r^2), which is zero at h = r. As h grows, 4 r atan(r / h) falls
    // to 4 r^2 / h.
    CHECK(detail::loop_of_rod<inch>({.diameter = 2_in, .stitched = 1000_in}).value() ==
          doctest::Approx(2000.004).epsilon(1e-9));
    reference::sampler random(1848);
    while (random.another_of(1'000)) {
        const length<inch> diameter = random.inches(4), h = random.inches(4);
        const double here = detail::loop_of_rod<inch>({.diameter = diameter, .stitched = h}).value(),
                     further = detail::loop_of_rod<inch>({.diameter = diameter, .stitched = h + "1/64"_in}).value();
        CHECK((h >= diameter / 2 ? further > here : true));
        CHECK((h + "1/64"_in <= diameter / 2 ? further < here : true));
        CHECK(here > 2 * to_double(h.value()));
    }
}

TEST_CASE("the rod that a casing is made for goes in, and not much thicker a one") {
    reference::sampler random(1850);
    while (random.another_of(5'000)) {
        const length<inch> rod = random.inches(3) + "1/8"_in, ease = random.inches(1);
        const length<inch> width = casing_for_rod<inch>({.diameter = rod, .ease = ease}, "1/16"_in, rounding::up);
        CHECK(rod_for_casing(width - ease, "1/64"_in, rounding::up) >= rod);
        CHECK(rod_for_casing(width - ease - "1/16"_in, "1/64"_in, rounding::down) <= rod);
    }
}

TEST_CASE("a pocket goes round its box with its ease to spare, and covers it to the height that is asked for") {
    reference::sampler random(1852);
    while (random.another_of(2'000)) {
        const boxed_thing<inch> box{random.inches(10), random.inches(4), random.inches(12)};
        const length<inch> ease = random.inches(1), above = random.inches(3);
        const pocket_sizes<inch> p = pocket_for_box(box, {.ease = ease, .above = above});
        CHECK(p.width.value() * 2 - (box.width + box.depth) * 2 == ease * 2); // both layers, less round the box
        CHECK(p.height.value() - box.depth / 2 - box.height == above);        // up from the middle of the base
        CHECK(box_for_pocket(p.width.value(), {.depth = box.depth, .ease = ease}) == box.width);
    }
    CHECK(to_text(pocket_for_box(seed_tin, {.ease = "1/4"_in, .above = -2 * 1_in}).height) ==
          "7 1/4 in = 8 in the box's height + 1/2 x 2 1/2 in its depth - 2 in left bare");
}

TEST_CASE("a ribbon over a box is checked by whole right triangles") {
    // Three Pythagorean triangles: depth, out, slope.
    CHECK(loop_over_box<centimetre>({1_cm, 12_cm}, 5_cm, "0.1"_cm, rounding::down) == 27_cm);
    CHECK(loop_over_box<centimetre>({2_cm, 8_cm}, 15_cm, "0.1"_cm, rounding::up) == 36_cm);
    CHECK(loop_over_box<inch>({"1/2"_in, "3/4"_in}, 1_in, "1/16"_in, rounding::nearest) == 3_in);
}

TEST_CASE("what holds nothing says why") {
    CHECK(message<loop_error>([] { return detail::loop_of_rod<inch>({.diameter = 0_in, .stitched = 1_in}); }) ==
          "the diameter of a rod must be more than zero: it was 0 in");
    CHECK(message<loop_error>([] { return detail::loop_of_rod<inch>({.diameter = 1_in, .stitched = "-1/2"_in}); }) ==
          "the distance of stitching from the middle of a loop must be zero or more: it was -1/2 in");
    CHECK(facts<loop_error>([&] {
              return casing_for_rod<inch>({.diameter = -1 * 1_in, .ease = 0_in}, "1/8"_in, rounding::up);
          }) == "too small: the diameter of a rod, given -1 in, least 0 in");
    CHECK(facts<loop_error>([&] {
              return casing_for_rod<inch>({.diameter = 1_in, .ease = "-1/8"_in}, "1/8"_in, rounding::up);
          }) == "too small: the ease of a casing, given -1/8 in, least 0 in");
    CHECK(facts<loop_error>([&] { return rod_for_casing(0_in, "1/8"_in, rounding::down); }) ==
          "too small: the width of a casing, given 0 in, least 0 in");
    CHECK(facts<loop_error>([&] {
              return loop_over_box<inch>({0_in, 1_in}, 1_in, "1/8"_in, rounding::down);
          }) == "too small: the width of a box, given 0 in, least 0 in");
    CHECK(facts<loop_error>([&] {
              return loop_over_box<inch>({1_in, 0_in}, 1_in, "1/8"_in, rounding::down);
          }) == "too small: the depth of a box, given 0 in, least 0 in");
    CHECK(facts<loop_error>([&] {
              return loop_over_box<inch>({1_in, 1_in}, "-1"_in, "1/8"_in, rounding::down);
          }) == "too small: the distance of stitching from a box, given -1 in, least 0 in");
    CHECK(message<loop_error>([] { return pocket_for_box(seed_tin, {.ease = 0_in, .above = -8 * 1_in}); }) ==
          "a pocket must cover some of the box: of 8 in it leaves 8 in bare");
    CHECK(facts<loop_error>([&] {
              return pocket_for_box(boxed_thing<inch>{0_in, 1_in, 1_in}, {.ease = 0_in, .above = 0_in});
          }) == "too small: the width of a box, given 0 in, least 0 in");
    CHECK(facts<loop_error>([&] {
              return pocket_for_box(boxed_thing<inch>{1_in, 0_in, 1_in}, {.ease = 0_in, .above = 0_in});
          }) == "too small: the depth of a box, given 0 in, least 0 in");
    CHECK(facts<loop_error>([&] {
              return pocket_for_box(boxed_thing<inch>{1_in, 1_in, 0_in}, {.ease = 0_in, .above = 0_in});
          }) == "too small: the height of a box, given 0 in, least 0 in");
    CHECK(facts<loop_error>([&] { return pocket_for_box(seed_tin, {.ease = "-1/4"_in, .above = 0_in}); }) ==
          "too small: the ease of a pocket, given -1/4 in, least 0 in");
    CHECK(message<loop_error>([] { return box_for_pocket(3_in, {.depth = "2 1/2"_in, .ease = "1/2"_in}); }) ==
          "a pocket 3 in wide has no room for a box 2 1/2 in deep with an ease of 1/2 in");
    CHECK(facts<loop_error>([&] { return box_for_pocket(3_in, {.depth = 0_in, .ease = 0_in}); }) ==
          "too small: the depth of a box, given 0 in, least 0 in");
    CHECK(facts<loop_error>([&] { return box_for_pocket(3_in, {.depth = 1_in, .ease = "-1/8"_in}); }) ==
          "too small: the ease of a pocket, given -1/8 in, least 0 in");
}
