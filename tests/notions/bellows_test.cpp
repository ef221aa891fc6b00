// Pockets that stand out: what is published, at compile time; a strip folded crease by crease at random, and lifted; flap and pocket
// as inverses; and what is refused.
#include "reference.hpp"
#include <turncloth/measure/read.hpp>
#include <turncloth/notions/bellows.hpp>

#include <doctest/doctest.h>

#include <algorithm>
#include <array>
#include <utility>
#include <vector>

using namespace turncloth;
using reference::facts;
using reference::message;

namespace {

// W. D. F. Vincent, The Cutter's Practical Guide, part 13, p. 51 (published): an expanding pocket with pleats at its sides is 10 1/2 in
// wide at its widest, and its flap 10 3/4 in; a breast pocket 6 1/2 in wide has a box pleat of 2 1/4 in in its centre.
constexpr pleated_pocket<inch> expanding{.width = "10 1/2"_in, .fold = 1_in, .clear = "1/2"_in};
static_assert(beside_pocket("10 3/4"_in, expanding) == "1/8"_in);
static_assert(flap_width(expanding, {.beside = "1/8"_in, .above = "1/2"_in, .reach = 1_in}).value() == "10 3/4"_in);
constexpr pleated_pocket<inch> breast = box_pleated("6 1/2"_in, "2 1/4"_in, "1 1/8"_in); // its folds meet behind it
static_assert(breast.clear == "2 1/8"_in && pleat_shows(breast) == "2 1/4"_in);
static_assert(pocket_cloth(breast).value() == 11_in); // 6 1/2 and 4 x 1 1/8, by hand
// W. D. F. Vincent, Systems of Cutting, p. 60 (published): a pleat takes 4 in; The Cutter's Practical Guide, 1898, part 1, p. 12: it is
// about 2 in wide. So its folds meet behind it.
constexpr pleated_pocket<inch> norfolk = box_pleated(8_in, 2_in, 1_in);
static_assert(pocket_cloth(norfolk).value() - norfolk.width == 4_in);
static_assert(narrowest_pocket(stands_out(norfolk), norfolk.clear).value() == norfolk.width); // no more room

// By hand, 9 in wide with folds of 1 in, 3/4 in clear: 3/4 flat, 1 under, 1 back (creases at 1 3/4 and 2 3/4), 7 1/2 across, and so on.
constexpr pleated_pocket<inch> p{.width = 9_in, .fold = 1_in, .clear = "3/4"_in};
static_assert(pocket_cloth(p).value() == 13_in && pleat_shows(p) == "7 1/2"_in && stands_out(p) == 2_in);
static_assert(pocket_creases(p) == creases_of_pocket<inch>{at<finished_edge>("1 3/4"_in), at<finished_edge>("2 3/4"_in),
                                                           at<finished_edge>("10 1/4"_in),
                                                           at<finished_edge>("11 1/4"_in)});
static_assert(fold_standing_out(2_in) == 1_in && narrowest_pocket(2_in, "3/4"_in).value() == "3 1/2"_in);
constexpr pocket_flap<inch> flap{.beside = "1/4"_in, .above = "3/4"_in, .reach = "1 1/2"_in};
static_assert(flap_width(p, flap).value() == "9 1/2"_in && flap_drop(p, flap, 8_in).value() == "4 1/4"_in);

/// Where a spot of the strip comes to lie, from the pocket's left side, with the strip walked along from fold to fold.
length<inch> lies_at(length<inch> spot, const std::array<length<inch>, 4>& creases) {
    length<inch> at, from;
    bool onward = true;
    for (const length<inch>& crease : creases) {
        const length<inch> to = std::min(spot, crease);
        at = onward ? at + (to - from) : at - (to - from);
        if (spot <= crease)
            return at;
        from = crease;
        onward = !onward;
    }
    return onward ? at + (spot - from) : at - (spot - from);
}

} // namespace

TEST_CASE("a strip folded at its creases is as wide as its pocket, and its pleat covers both folds") {
    reference::sampler random(915);
    while (random.another_of(3'000)) {
        const length<inch> fold = random.inches(3), clear = random.inches(2);
        const pleated_pocket<inch> one{(fold + clear) * 2 + random.inches(10), fold, clear};
        const auto c = pocket_creases(one);
        const std::array<length<inch>, 4> creases = {c.left_inner.from_datum(), c.left_outer.from_datum(),
                                                     c.right_outer.from_datum(), c.right_inner.from_datum()};
        const length<inch> cloth = pocket_cloth(one).value();
        CHECK(lies_at(cloth, creases) == one.width);
        CHECK(lies_at(creases[1], creases) == clear); // the pleat begins and ends clear of the sides
        CHECK(lies_at(creases[2], creases) == one.width - clear);
        CHECK(lies_at(creases[0], creases) <=
              lies_at(creases[3], creases)); // beneath, the folds do not lie on each other
        CHECK(creases[2] - creases[1] == pleat_shows(one));
        // Lifted, the strip goes round three sides of a box.
        CHECK(cloth == one.width + stands_out(one) * 2);
        CHECK(fold_standing_out(stands_out(one)) == fold);
        CHECK(narrowest_pocket(stands_out(one), clear).value() <= one.width);
        CHECK(box_pleated(one.width, pleat_shows(one), fold) == one);
        const pocket_flap<inch> over{random.inches(1), random.inches(2), random.inches(4)};
        const length<inch> drop = flap_drop(one, over, stands_out(one) + over.reach).value();
        CHECK(reach_of_flap(drop, over.above, one) == over.reach);
        CHECK(beside_pocket(flap_width(one, over).value(), one) == over.beside);
    }
}

TEST_CASE("folds that a pocket has no room for, and a flap that does not cover it, are refused with their figures") {
    const pleated_pocket<inch> deep{9_in, 4_in, "3/4"_in};
    CHECK(message<bellows_error>([&] { pocket_cloth(deep); }) ==
          "a pocket 9 in wide has no room for two folds of 4 in, 3/4 in clear of its sides: they take 9 1/2 in");
    CHECK(facts<bellows_error>([&] { stands_out(deep); }) ==
          "no room: the fold of a pocket's pleat, given 4 in, most 15/4 in");
    CHECK(message<bellows_error>([] { box_pleated(6_in, 6_in, 1_in); }) ==
          "a pleat that shows 6 in leaves nothing of a pocket 6 in wide to be sewn beside it");
    CHECK(facts<bellows_error>([] { box_pleated(6_in, 7_in, 1_in); }) ==
          "too large: what a pocket's pleat shows, given 7 in, most 6 in");
    CHECK(message<bellows_error>([] { box_pleated(6_in, 1_in, 1_in); }) ==
          "a pocket 6 in wide has no room for two folds of 1 in, 2 1/2 in clear of its sides: they take 7 in");
    CHECK(message<bellows_error>([] { beside_pocket(8_in, p); }) ==
          "a flap 8 in wide is narrower than its pocket, which is 9 in");
    CHECK(facts<bellows_error>([] { beside_pocket(8_in, p); }) ==
          "too small: the width of a flap, given 8 in, least 9 in");
    CHECK(
        message<bellows_error>([] { reach_of_flap("2 3/4"_in, "3/4"_in, p); }) ==
        "a flap that hangs down 2 3/4 in does not reach over a full pocket: its mouth lies 3/4 in below and stands out "
        "2 in");
    CHECK(facts<bellows_error>([] { reach_of_flap(2_in, "3/4"_in, p); }) ==
          "too small: the drop of a flap, given 2 in, least 11/4 in");
    CHECK(message<bellows_error>([] { flap_drop(p, flap, 3_in); }) ==
          "a flap that hangs 3 1/2 in over the front of an empty pocket hangs below its foot: it is 3 in high");
    CHECK(facts<bellows_error>([] { flap_drop(p, flap, 3_in); }) ==
          "too large: the reach of a flap over its pocket, given 3/2 in, most 1 in");
    CHECK(facts<bellows_error>([] {
              pocket_cloth(pleated_pocket<inch>{0_in, 1_in, 1_in});
          }) == "too small: the width of a pocket, given 0 in, least 0 in");
    CHECK(facts<bellows_error>([] {
              pocket_cloth(pleated_pocket<inch>{9_in, 0_in, 1_in});
          }) == "too small: the fold of a pocket's pleat, given 0 in, least 0 in");
    CHECK(facts<bellows_error>([] {
              pocket_cloth(pleated_pocket<inch>{9_in, 1_in, 0_in});
          }) == "too small: what is clear beside a pocket's pleat, given 0 in, least 0 in");
    CHECK(facts<bellows_error>([] { fold_standing_out(0_in); }) ==
          "too small: how far a pocket stands out, given 0 in, least 0 in");
    CHECK(facts<bellows_error>([] { narrowest_pocket(1_in, 0_in); }) ==
          "too small: what is clear beside a pocket's pleat, given 0 in, least 0 in");
    CHECK(facts<bellows_error>([] { flap_width(p, {.beside = -1_in, .above = 1_in, .reach = 1_in}); }) ==
          "too small: what a flap is wider than its pocket at a side, given -1 in, least 0 in");
    CHECK(facts<bellows_error>([] { flap_width(p, {.beside = 1_in, .above = 0_in, .reach = 1_in}); }) ==
          "too small: what a flap lies above its pocket, given 0 in, least 0 in");
    CHECK(facts<bellows_error>([] { flap_drop(p, {.beside = 1_in, .above = 1_in, .reach = 0_in}, 8_in); }) ==
          "too small: the reach of a flap over its pocket, given 0 in, least 0 in");
}
