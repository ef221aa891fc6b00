// Straps and handles: what is published, at compile time; cut and finished as inverses at random; the free length and the drop
// of a handle against Pythagoras in many digits; the way round a crossed box, walked; and what is refused.
#include "reference.hpp"
#include <turncloth/measure/read.hpp>
#include <turncloth/notions/strap.hpp>

#include <doctest/doctest.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>
#include <vector>

using namespace turncloth;
using reference::exact;
using reference::facts;
using reference::message;
using reference::real;

namespace {

// A trade book on light packs (published): strips cut 3 1/2 in, edges to the middle, folded again, 4 thick: 7/8 in.
static_assert(finished_folded_in_four("3 1/2"_in) == "7/8"_in);
static_assert(cut_to_fold_in_four("7/8"_in).value() == "3 1/2"_in);
// Commercial item description A-A-55176, Bag, Laundry, Nylon (published): handle cut 12 in, free opening 6 in: 3 in at each end.
static_assert(free_of_strap<inch>(12_in, {.sewn = 3_in}) == 6_in);
static_assert(strap_length<inch>(6_in, {.sewn = 3_in}).value() == 12_in);
static_assert(strap_length<inch>(6_in, {.sewn = 3_in, .turned = 1_in}).value() == 14_in);
// US Army TM 10-1670-281-23&P p. 2-151 (published): cord of 7 7/8 in, each end stitched for 2 1/4 in: 3 3/8 in between.
static_assert(free_of_strap<inch>("7 7/8"_in, {.sewn = "2 1/4"_in}) == "3 3/8"_in);
// US Army TM 10-8340-208-13 (published): a loop cut 8 1/4 in, marked 2 1/8 in from each end: 4 in between the marks.
static_assert(free_of_strap<inch>("8 1/4"_in, {.sewn = "2 1/8"_in}) == 4_in);

// By hand. Ends 10 in apart, 12 in up to a hook: two sides of 13 in. Over a rail 4 in wide the sides lean by 3 in, and 4 up: 5.
static_assert(free_of_handle<inch>(12_in, {.apart = 10_in}, "1/8"_in, rounding::up) == 26_in);
static_assert(free_of_handle<inch>(4_in, {.apart = 10_in, .over = 4_in}, "1/8"_in, rounding::down) == 14_in);
static_assert(free_of_handle<inch>(9_in, {.apart = 6_in, .over = 6_in}, "1/8"_in, rounding::down) == 24_in);
static_assert(drop_of_handle<inch>(14_in, {.apart = 10_in, .over = 4_in}, "1/8"_in, rounding::down) == 4_in);
// Turned out of 4 in with seams of 1/2 in (by hand): half of 4, less 1/2.
static_assert(finished_turned_out(4_in, "1/2"_in) == "1 1/2"_in);
// Two straps of 1 in, 8 in from middle to middle, on 20 in: the first begins at 10 - 4 - 1/2 (by hand).
static_assert(strap_places<inch>(20_in, {.apart = 8_in, .width = 1_in})[0] == at<finished_edge>("5 1/2"_in));
static_assert(strap_places<inch>(20_in, {.apart = 8_in, .width = 1_in})[1] == at<finished_edge>("13 1/2"_in));
// A box of 3 x 4 in has diagonals of 5 in: 14 + 10.
static_assert(box_stitching<inch>({3_in, 4_in}, "1/8"_in, rounding::down) == 24_in);
static_assert(box_in_strap("1 1/2"_in, 2_in, "1/4"_in).width == 1_in);
static_assert(box_in_strap("1 1/2"_in, 2_in, "1/4"_in).height == "1 1/2"_in);

using corner = std::size_t;
/// The shortest way that goes along each of the six lines of a box at least once: all ways are tried.
double shortest_way(const std::array<std::array<double, 4>, 4>& apart, corner at, unsigned done, double gone,
                    double best, int lines_left) {
    if (done == 0b111111)
        return std::min(best, gone);
    if (lines_left == 0)
        return best;
    static constexpr int number[4][4] = {{-1, 0, 1, 2}, {0, -1, 3, 4}, {1, 3, -1, 5}, {2, 4, 5, -1}};
    for (corner to = 0; to < 4; ++to)
        if (to != at)
            best = shortest_way(apart, to, done | 1U << static_cast<unsigned>(number[at][to]), gone + apart[at][to],
                                best, lines_left - 1);
    return best;
}

} // namespace

TEST_CASE("cut and finished are inverse, and a strap is its free length and its ends") {
    reference::sampler random(311);
    while (random.another_of(3'000)) {
        const length<inch> wide = random.inches(4), seam = random.inches(1), free = random.inches(60);
        CHECK(finished_folded_in_four(cut_to_fold_in_four(wide).value()) == wide);
        CHECK(finished_turned_out(cut_to_turn_out(wide, seam).value(), seam) == wide);
        CHECK(cut_to_turn_out(wide, seam).value() == wide + wide + seam + seam);
        const strap_ends<inch> ends{random.inches(4), random.inches(1)};
        CHECK(free_of_strap(strap_length(free, ends).value(), ends) == free);
        const strap_pair<inch> pair{wide + random.inches(9), wide};
        const length<inch> across = pair.apart + wide + random.inches(9);
        const auto places = strap_places(across, pair);
        CHECK(places[1] - places[0] == pair.apart);
        CHECK(places[0].from_datum() == across - (places[1].from_datum() + wide)); // as far from either side
    }
}

TEST_CASE("a handle goes straight from its ends to what it hangs over, and comes up as far as it was meant to") {
    reference::sampler random(312);
    while (random.another_of(2'000)) {
        const length<inch> drop = random.inches(30), step = "1/16"_in;
        const hung_handle<inch> h{random.inches(20), random.inches(6)};
        const real lean = (exact(h.apart) - exact(h.over)) / 2;
        const real path = exact(h.over) + 2 * sqrt(exact(drop) * exact(drop) + lean * lean);
        const length<inch> low = free_of_handle(drop, h, step, rounding::down),
                           high = free_of_handle(drop, h, step, rounding::up);
        CHECK(exact(low) <= path);
        CHECK(path <= exact(high));
        CHECK(high - low <= step);
        CHECK(drop_of_handle(high, h, step, rounding::up) >= drop);
        CHECK((low <= h.over + abs(h.apart - h.over) || drop_of_handle(low, h, step, rounding::down) <= drop));
    }
}

TEST_CASE("a crossed box sewn in one go is as long as the shortest way along all its lines") {
    reference::sampler random(313);
    while (random.another_of(4)) {
        const crossed_box<inch> b{random.inches(3), random.inches(3)};
        const double w = to_double(b.width.value()), h = to_double(b.height.value()), d = std::hypot(w, h);
        const double way = shortest_way({{{0, w, d, h}, {w, 0, h, d}, {d, h, 0, w}, {h, d, w, 0}}}, 0, 0, 0, 1e9, 8);
        CHECK(to_double(box_in_one_row(b, "0.0001"_in, rounding::nearest).value()) ==
              doctest::Approx(way).epsilon(1e-3).scale(0.1));
        CHECK(std::abs(to_double(box_stitching(b, "0.0001"_in, rounding::nearest).value()) - 2 * (w + h + d)) < 1e-4);
    }
}

TEST_CASE("a strap shorter or narrower than its seams, or that does not reach, is refused with both figures") {
    CHECK(message<strap_error>([] { free_of_strap<inch>(4_in, {.sewn = 2_in, .turned = "1/4"_in}); }) ==
          "a strap cut 4 in long is used up by its ends, which take 2 1/4 in each");
    CHECK(facts<strap_error>([] { free_of_strap<inch>(4_in, {.sewn = 2_in}); }) ==
          "too small: the cut length of a strap, given 4 in, least 4 in");
    CHECK(message<strap_error>([] { finished_turned_out(1_in, "1/2"_in); }) ==
          "a strap cut 1 in wide is used up by its seam, which takes 1/2 in of either edge");
    CHECK(facts<strap_error>([] { finished_turned_out(1_in, "1/2"_in); }) ==
          "too small: the cut width of a strap, given 1 in, least 1 in");
    CHECK(finished_turned_out("1 1/8"_in, "1/2"_in) == "1/16"_in);
    CHECK(message<strap_error>([] { drop_of_handle<inch>(10_in, {.apart = 10_in}, "1/8"_in, rounding::up); }) ==
          "a handle 10 in long between its ends does not come up at all: its ends are 10 in apart, and it hangs over 0 "
          "in");
    CHECK(facts<strap_error>([] {
              drop_of_handle<inch>(9_in, {.apart = 4_in, .over = 7_in}, "1/8"_in, rounding::up);
          }) == "too small: the free length of a handle, given 9 in, least 10 in");
    CHECK(message<strap_error>([] { strap_places<inch>(20_in, {.apart = 1_in, .width = 2_in}); }) ==
          "straps 2 in wide lie one over the other where their middles are 1 in apart");
    CHECK(facts<strap_error>([] { strap_places<inch>(20_in, {.apart = 19_in, .width = 2_in}); }) ==
          "does not fit: the distance between two straps, given 19 in, most 18 in");
    CHECK(strap_places<inch>(20_in, {.apart = 2_in, .width = 2_in})[0] == at<finished_edge>(8_in)); // side by side
    CHECK(strap_places<inch>(20_in, {.apart = 18_in, .width = 2_in})[0] == at<finished_edge>(0_in));
    CHECK(message<strap_error>([] { box_in_strap(1_in, 3_in, "1/2"_in); }) ==
          "a box 1/2 in inside the end of a strap has no room: that is 1 in wide, and 3 in of it is sewn down");
    CHECK(facts<strap_error>([] { box_in_strap(3_in, 2_in, 1_in); }) ==
          "too large: the inset of a box, given 1 in, most 1 in");
    CHECK(facts<strap_error>([] { strap_length<inch>(6_in, {}); }) ==
          "too small: what is sewn down of a strap's end, given 0 in, least 0 in");
    CHECK(facts<strap_error>([] { free_of_handle<inch>(0_in, {.apart = 3_in}, 1_in, rounding::up); }) ==
          "too small: the drop of a handle, given 0 in, least 0 in");
    CHECK(facts<strap_error>([] {
              box_stitching<inch>({0_in, 3_in}, 1_in, rounding::up);
          }) == "too small: the width of a box, given 0 in, least 0 in");
}
