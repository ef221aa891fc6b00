// The lining of a bag: by hand, at compile time; against boxes in whole numbers at random; backwards; and what is refused.
#include "reference.hpp"
#include <turncloth/measure/read.hpp>
#include <turncloth/notions/lining.hpp>

#include <doctest/doctest.h>

using namespace turncloth;
using reference::facts;
using reference::message;

namespace {

// By hand: 14 less two walls of 1/8, 9 less one base, 6 less two walls.
constexpr boxed_size tote(14_in, 9_in, 6_in);
static_assert(lining_in(tote, "1/8"_in) == boxed_size<inch>("13 3/4"_in, "8 7/8"_in, "5 3/4"_in));
static_assert(lining_in(tote, 0_in) == tote);
static_assert(rim_surplus("1/8"_in) == 1_in); // 2 x (14 + 6) - 2 x (13 3/4 + 5 3/4)
static_assert(stiffener_in(lining_in(tote, "1/8"_in), "1/4"_in) == finished_size<inch>("13 1/2"_in, "5 1/2"_in));
static_assert(gap_for(finished_size<inch>("13 1/2"_in, "5 1/2"_in), "1/8"_in, "3/8"_in).value() == 6_in);
static_assert(gap_for(finished_size<inch>(3_in, 5_in), "1/8"_in, 0_in).value() == "3 1/8"_in);
static_assert(gap_for(finished_size<inch>(3_in, 5_in), "1/8"_in, 1_in).value() == "4 1/8"_in);

} // namespace

TEST_CASE("a lining fills its outer but for its walls, and an outer is found for a lining") {
    reference::sampler random(321);
    while (random.another_of(2'000)) {
        const length<inch> t = random.inches(1) / 8;
        const boxed_size<inch> bag(random.inches(20) + 1_in, random.inches(20) + 1_in, random.inches(20) + 1_in);
        const boxed_size<inch> lining = lining_in(bag, t);
        CHECK(bag_round(lining, t) == bag);
        // What is not lining is walls: a sleeve of four and a base, counted in volume.
        const auto volume = [](const boxed_size<inch>& b) {
            return b.width().value() * b.height().value() * b.depth().value();
        };
        const fraction w = bag.width().value(), h = bag.height().value(), d = bag.depth().value(), k = t.value();
        CHECK(volume(bag) - volume(lining) == w * d * k + (2 * w * k + 2 * (d - 2 * k) * k) * (h - k));
        CHECK((bag.width() + bag.depth() - lining.width() - lining.depth()) * 2 == rim_surplus(t));
    }
}

TEST_CASE("an outer as thick as the bag, and a base that its stiffener does not fit, are refused") {
    CHECK(message<boxed_error>([] { lining_in(boxed_size<inch>(4_in, 3_in, "1/4"_in), "1/8"_in); }) ==
          "the depth of a bag of 1/4 in leaves no room for a lining: the outer takes 1/4 in");
    CHECK(facts<boxed_error>([] { lining_in(boxed_size<inch>(4_in, "1/8"_in, 3_in), "1/8"_in); }) ==
          "too small: the height of a bag, given 1/8 in, least 1/8 in");
    CHECK(facts<boxed_error>([] { lining_in(boxed_size<inch>("1/4"_in, 1_in, 3_in), "1/8"_in); }) ==
          "too small: the width of a bag, given 1/4 in, least 1/4 in");
    CHECK(facts<boxed_error>([] { stiffener_in(tote, 6_in); }) ==
          "too small: the depth of a base, given 6 in, least 6 in");
    CHECK(facts<boxed_error>([] { lining_in(tote, -"1/8"_in); }) ==
          "too small: the thickness of an outer, given -1/8 in, least 0 in");
    CHECK(facts<boxed_error>([] { gap_for(finished_size<inch>(3_in, 5_in), 0_in, 0_in); }) ==
          "too small: the thickness of a stiffener, given 0 in, least 0 in");
}
