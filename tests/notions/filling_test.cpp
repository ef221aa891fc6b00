// Loose filling: what is published, at compile time; thickness, content and weight against pi in many digits at random; each
// figure backwards; and what is refused.
#include "reference.hpp"
#include <turncloth/measure/read.hpp>
#include <turncloth/notions/filling.hpp>

#include <boost/math/constants/constants.hpp>
#include <doctest/doctest.h>

using namespace turncloth;
using reference::exact;
using reference::facts;
using reference::message;
using reference::real;

namespace {

// A gallon is 231 cubic inches (NIST Handbook 44, Appendix C), and was a round vessel 7 in across and 6 in deep (its statute of
// 1707, value from memory): with 22/7 for pi, 22 in round.
static_assert(tube_holds<inch>({.girth = 22_in, .along = 6_in}, 1, rounding::down) == 231);
static_assert(tube_across(22_in, "1/64"_in, rounding::nearest) == 7_in);
// Commercial item description A-A-55176, Bag, Laundry, Nylon (published): a round bottom 16 in across, 25 in wide as it lies flat.
static_assert(girth_of_tube(16_in, "1/4"_in, rounding::nearest) / 2 == "25 1/8"_in); // 25.13
// Timber measured by its quarter girth (a rule of the trade, value from memory) is 4 / pi less than it holds: 60 in round and 20 ft
// long is 31.25 cubic feet by the rule, and 39.79.
static_assert(tube_holds<foot>({.girth = length_of<foot>(5), .along = length_of<foot>(20)}, {1, 100},
                               rounding::nearest) == fraction(3979, 100));
// By hand: a box of 6 x 4 x 3 in holds 72 cubic inches; if that weighs 18, 231.1 of them weigh 57.8.
constexpr fraction bran = weight_of_cube<inch>({6_in, 4_in, 3_in, 18});
static_assert(bran == fraction(1, 4));
static_assert(weight_to_fill<inch>({.girth = 22_in, .along = 6_in}, bran, {1, 10}, rounding::nearest) ==
              fraction(578, 10));
static_assert(weight_to_fill<inch>({.girth = 22_in, .along = 6_in}, bran, 1, rounding::up) == 58);
static_assert(length_filled(58, 22_in, bran, "1/8"_in) == 6_in); // 232 cubic inches
static_assert(tube_cut_round(22_in, "1/2"_in).value() == 23_in);

const real pi_in_full = boost::math::constants::pi<real>();

} // namespace

TEST_CASE("a tube is as thick and holds as much as its girth allows, and weighs what its sample does") {
    reference::sampler random(1401);
    while (random.another_of(3'000)) {
        const stuffed_tube<inch> t{random.inches(30), random.inches(60)};
        const filling_sample<inch> s{random.inches(9), random.inches(9), random.inches(9), random.between(1, 90)};
        const real holds = exact(t.girth) * exact(t.girth) * exact(t.along) / (4 * pi_in_full);
        const real weighs = holds * exact(s.weight) / (exact(s.width) * exact(s.height) * exact(s.depth));
        const fraction up = tube_holds(t, {1, 8}, rounding::up), down = tube_holds(t, {1, 8}, rounding::down);
        CHECK(exact(down) <= holds);
        CHECK(holds <= exact(up));
        CHECK(up - down == fraction(1, 8)); // pi is no fraction
        const fraction heavy = weight_to_fill(t, weight_of_cube(s), {1, 16}, rounding::up);
        CHECK(exact(heavy) >= weighs);
        CHECK(exact(heavy) - real(1) / 16 < weighs);
        // Round and round: no thickness is wider than its girth allows, and no girth tighter than its thickness.
        const length<inch> across = tube_across(t.girth, "1/64"_in, rounding::up);
        CHECK(exact(across) * pi_in_full >= exact(t.girth));
        CHECK(exact(across - "1/64"_in) * pi_in_full < exact(t.girth));
        CHECK(girth_of_tube(across, "1/64"_in, rounding::up) >= t.girth);
        // So much fills at least the tube that it was worked out for, but for the step that it is rounded down to.
        CHECK(length_filled(heavy, t.girth, weight_of_cube(s), "1/64"_in) > t.along - "1/64"_in);
    }
}

TEST_CASE("what holds nothing is refused") {
    CHECK(message<filling_error>([] {
              tube_holds<inch>({0_in, 6_in}, 1, rounding::up);
          }) == "the girth of a tube must be more than zero: it was 0 in");
    CHECK(message<filling_error>([] {
              tube_holds<inch>({6_in, 0_in}, 1, rounding::up);
          }) == "the length of a tube must be more than zero: it was 0 in");
    CHECK(message<filling_error>([] {
              weight_of_cube<inch>({6_in, 4_in, 3_in, 0});
          }) == "the weight of a box of filling must be more than zero: it was 0");
    CHECK(message<filling_error>([] {
              weight_to_fill<inch>({22_in, 6_in}, 0, 1, rounding::up);
          }) == "the weight of a cube of filling must be more than zero: it was 0");
    CHECK(message<filling_error>([] { girth_of_tube(0_in, "1/8"_in, rounding::up); }) ==
          "the thickness of a tube must be more than zero: it was 0 in");
    CHECK(message<filling_error>([] { length_filled(fraction(1, 100), 22_in, bran, "1/8"_in); }) ==
          "a filling that weighs 1/100 fills less than 1/8 in of a tube 22 in round");
    CHECK(facts<filling_error>([] { length_filled(fraction(1, 100), 22_in, bran, "1/8"_in); }) ==
          "too small: the weight of a filling, given 1/100");
}
