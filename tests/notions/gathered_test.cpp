// Gathered necks: what is known of circles, at compile time; girths beside pi of 50 digits, there and back, at random; ties beside
// their sums; and what is refused.
#include "reference.hpp"
#include <turncloth/measure/read.hpp>
#include <turncloth/notions/gathered.hpp>

#include <boost/math/constants/constants.hpp>
#include <doctest/doctest.h>

using namespace turncloth;
using reference::facts;
using reference::message;

namespace {

// By hand: 20 x 1/32 / (1/2) = 5/4 square inches are a circle 2 x sqrt(5/4 x 3.14159) = 3.9633 in round: 3 15/16 is below, 4 above.
constexpr gathered_neck<inch> sack{20_in, "1/32"_in, {1, 2}};
static_assert(neck_girth(sack, "1/16"_in, rounding::up) == 4_in);
static_assert(neck_girth(sack, "1/16"_in, rounding::down) == "3 15/16"_in);
// With no air it is as a strip rolled up tightly: both keep the area of the section (common practice, tie.hpp).
static_assert(neck_girth(gathered_neck<inch>{20_in, "1/32"_in, 1}, "1/64"_in, rounding::up) ==
              roll_girth(rolled<inch>{20_in, "1/32"_in, {}}, "1/64"_in, rounding::up));
// Four times as wide a mouth is twice as thick: 7.9266 in.
static_assert(neck_girth(gathered_neck<inch>{80_in, "1/32"_in, {1, 2}}, "1/8"_in, rounding::up) == 8_in);
static_assert(neck_girth(gathered_neck<centimetre>{50_cm, "0.08"_cm, {1, 2}}, "0.1"_cm, rounding::up) ==
              "10.1"_cm); // 2 x sqrt(8 pi) = 10.0265
// Backwards: 4 x 4 x 1/2 / (4 x 1/32) / pi = 20.37 in.
static_assert(round_for_neck(4_in, gathered_cloth<inch>{"1/32"_in, {1, 2}}, "1/8"_in, rounding::down) == "20 1/4"_in);

// A bow is measured as it lies tied (common practice): 4 x 2 + 2 x 4 + 1 + 1/2 + 2 x 1/4 = 18 in beside the way round.
constexpr neck_tie<inch> tied{.girth = 4_in, .bow = {2_in, 4_in, 1_in}, .extra = {"1/2"_in, "1/4"_in}};
static_assert(tie_working(tied).value() == 22_in);
static_assert(girth_reached(23_in, tied.bow, tied.extra) == 5_in);

} // namespace

TEST_CASE("a neck is as thick as its cloth and its air, and no tie for the next smaller graduation goes round it") {
    const reference::real pi = boost::math::constants::pi<reference::real>();
    reference::sampler random(1501);
    while (random.another_of(3'000)) {
        const gathered_cloth<inch> cloth{random.inches(1) / 8, {random.between(1, 16), 16}};
        const length<inch> round = cloth.thickness * 13 / cloth.packed + random.inches(100);
        const length<inch> step = length_of<inch>({1, random.between(1, 64)});
        const length<inch> girth =
            neck_girth(gathered_neck<inch>{round, cloth.thickness, cloth.packed}, step, rounding::up);
        // A circle of that girth holds the cloth with its air, and the next smaller does not.
        const reference::real section =
            reference::exact(round) * reference::exact(cloth.thickness) / reference::exact(cloth.packed);
        const auto circle = [&](length<inch> g) { return reference::exact(g) * reference::exact(g) / (4 * pi); };
        CHECK(circle(girth) >= section);
        CHECK(circle(girth - step) < section);
        CHECK(is_whole(ratio_of(girth, step)));
        // Backwards it is the mouth again, or as much more as the graduation of the girth lets in.
        const length<inch> again = round_for_neck(girth, cloth, "1/64"_in, rounding::up);
        CHECK(again >= round);
        CHECK(neck_girth(gathered_neck<inch>{round_for_neck(girth, cloth, "1/64"_in, rounding::down), cloth.thickness,
                                             cloth.packed},
                         step, rounding::up) <= girth);
    }
}

TEST_CASE("a tie reaches just as far as what its bow leaves of it") {
    reference::sampler random(1502);
    while (random.another_of(2'000)) {
        const neck_tie<inch> t{random.inches(20),
                               {random.inches(4), random.inches(6), random.inches(2)},
                               {random.inches(1), random.inches(1)}};
        const length<inch> cut = tie_working(t).value();
        CHECK(cut == t.girth + t.bow.loop * 4 + t.bow.tail * 2 + t.bow.knot + t.extra.ease + t.extra.turned * 2);
        CHECK(girth_reached(cut, t.bow, t.extra) == t.girth);
        CHECK_NOTHROW(require_reaches(t, cut));
        CHECK_THROWS_AS(require_reaches(t, cut - "1/64"_in), tie_error);
    }
}

TEST_CASE("cloth that does not gather and a tie that does not reach are refused with their figures") {
    CHECK(message<gathering_error>([] {
              neck_girth(gathered_neck<inch>{1_in, "1/8"_in, 1}, "1/8"_in, rounding::up);
          }) == "a mouth 1 in round does not gather in cloth 1/8 in thick");
    CHECK(facts<gathering_error>([] {
              round_for_neck(1_in, gathered_cloth<inch>{"1/2"_in, 1}, "1/8"_in, rounding::down);
          }).starts_with("too small: the way round a mouth, given 1/8 in, least "));
    CHECK(facts<gathering_error>([] {
              neck_girth(gathered_neck<inch>{0_in, "1/8"_in, 1}, "1/8"_in, rounding::up);
          }) == "too small: the way round a mouth, given 0 in, least 0 in");
    CHECK(facts<gathering_error>([] {
              neck_girth(gathered_neck<inch>{20_in, 0_in, 1}, "1/8"_in, rounding::up);
          }) == "too small: the thickness of gathered cloth, given 0 in, least 0 in");
    CHECK(facts<gathering_error>([] {
              neck_girth(gathered_neck<inch>{20_in, "1/8"_in, 0}, "1/8"_in, rounding::up);
          }) == "too small: the part of a neck that is cloth, given 0, least 0");
    CHECK(facts<gathering_error>([] {
              neck_girth(gathered_neck<inch>{20_in, "1/8"_in, {9, 8}}, "1/8"_in, rounding::up);
          }) == "too large: the part of a neck that is cloth, given 9/8, most 1");
    CHECK(facts<gathering_error>([] {
              round_for_neck(0_in, gathered_cloth<inch>{"1/8"_in, 1}, "1/8"_in, rounding::up);
          }) == "too small: the girth of a neck, given 0 in, least 0 in");
    CHECK(message<tie_error>([] { girth_reached(18_in, tied.bow, tied.extra); }) ==
          "a tie of 18 in reaches round nothing: its bow and its ends take 18 in");
    CHECK(facts<tie_error>([] { girth_reached(17_in, tied.bow, tied.extra); }) ==
          "too small: the length of a tie, given 17 in, least 18 in");
    CHECK(message<tie_error>([] { require_reaches(tied, "21 3/4"_in); }) ==
          "a tie of 21 3/4 in does not reach: round a neck of 4 in, with its bow, it takes 22 in");
    CHECK(facts<tie_error>([] { require_reaches(tied, 21_in); }) ==
          "too small: the length of a tie, given 21 in, least 22 in");
}
