// Piping: what is published and what the trade does, at compile time; the strip beside pi of 50 digits, there and back, at random;
// a strip laid round a piece by hand; and what is refused.
#include "reference.hpp"
#include <turncloth/measure/read.hpp>
#include <turncloth/notions/piping.hpp>

#include <boost/math/constants/constants.hpp>
#include <doctest/doctest.h>

using namespace turncloth;
using reference::facts;
using reference::message;

namespace {

// The New Dressmaker, 1921, p. 131 (published): flat piping of strips 1 1/4 in wide, sewn 3/8 in from the edge (so it shows 1/4).
static_assert(flat_piping("1/4"_in, "3/8"_in).value() == "1 1/4"_in);
// Upholstery (common practice): a cord of 5/32 in takes strips of 1 1/2 in with seams of 1/2 in, and of 2 in with seams of 3/4.
static_assert(piping_width(piped_cord<inch>{"5/32"_in, "1/2"_in}, "1/4"_in).value() == "1 1/2"_in);
static_assert(piping_width(piped_cord<inch>{"5/32"_in, "3/4"_in}, "1/4"_in).value() == 2_in);
// Dressmaking (common practice): a cord of 4 mm and seams of 1.5 cm take strips of 4.5 cm.
static_assert(piping_width(piped_cord<centimetre>{"0.4"_cm, "1.5"_cm}, "0.5"_cm).value() == "4.5"_cm);

// By hand: 3.14159... x 1/4 = 0.7853...: 51/64 in is the first above, 50/64 is below.
constexpr piped_cord<inch> quarter{.across = "1/4"_in, .seam = "3/8"_in};
constexpr auto finest = piping_width(quarter, "1/64"_in);
static_assert(finest.value() == "1 35/64"_in && finest.terms()[0].value() == "51/64"_in);
static_assert(piping_width(quarter, "1/8"_in).value() == "1 5/8"_in);
// A cloth of 1/32 in adds pi / 32 = 0.098: 0.8836 in all, 57/64 in.
static_assert(piping_width(piped_cord<inch>{"1/4"_in, "3/8"_in, "1/32"_in}, "1/64"_in).value() == "1 41/64"_in);
static_assert(seam_of_piping("1 5/8"_in, quarter, "1/16"_in) == "3/8"_in);   // (1.625 - 0.785) / 2 = 0.4198
static_assert(seam_of_piping("1 5/8"_in, quarter, "1/64"_in) == "13/32"_in); // 26/64 = 0.40625
static_assert(cord_of_piping("1 5/8"_in, quarter, "1/64"_in) == "17/64"_in); // 0.875 / pi = 0.2785; 17/64 = 0.2656

// By hand, 20 x 14 in: 68 in round, 1 in of lap and 1/2 turned in; the cord goes once round a circle of its own thickness more,
// as its middle turns at 1/8 in from each corner: 0.785 in.
constexpr finished_size mat(20_in, 14_in);
constexpr piping_ends<inch> lapped{.lap = 1_in, .turned = "1/2"_in};
static_assert(piping_length(mat, lapped).value() == "69 1/2"_in);
static_assert(edge_of_piping("69 1/2"_in, lapped) == 68_in);
static_assert(cord_for_edge(mat, quarter, "1/8"_in).value() == "68 7/8"_in);
static_assert(corners_on_piping(mat, 10_in) == std::array<length<inch>, 4>{10_in, 24_in, 44_in, 58_in});
static_assert(clip_of_piping("3/8"_in, "1/16"_in) == "5/16"_in);

} // namespace

TEST_CASE("a strip is the least that goes round its cord with both seams, and is found again from its width") {
    const reference::real pi = boost::math::constants::pi<reference::real>();
    reference::sampler random(733);
    while (random.another_of(3'000)) {
        const piped_cord<inch> p{random.inches(2), random.inches(2), random.inches(1) / 8};
        const length<inch> step = length_of<inch>({1, random.between(1, 64)});
        const reference::real needed = pi * reference::exact(p.across + p.cloth) + 2 * reference::exact(p.seam);
        const figure<inch> strip = piping_width(p, step);
        const length<inch> cut = strip.value();
        CHECK(reference::exact(cut) >= needed);
        CHECK(reference::exact(cut - step) < needed);
        CHECK(is_whole(ratio_of(cut, step)));
        CHECK(strip.terms()[0].value() + p.seam * 2 == cut); // its parts close
        // Backwards: what it leaves is at most a step too wide, and never narrower than was asked, down to that step.
        const length<inch> seam = seam_of_piping(cut + step * 2, p, step),
                           cord = cord_of_piping(cut + step * 4, p, step);
        CHECK(seam >= down_to(p.seam, step));
        CHECK(pi * reference::exact(p.across + p.cloth) + 2 * reference::exact(seam) <=
              reference::exact(cut + step * 2));
        CHECK(pi * reference::exact(p.across + p.cloth) + 2 * reference::exact(seam + step) >
              reference::exact(cut + step * 2));
        CHECK(cord >= down_to(p.across, step));
        CHECK(piping_width(piped_cord<inch>{cord, p.seam, p.cloth}, step).value() <= cut + step * 4);
        CHECK(pi * reference::exact(cord + step + p.cloth) + 2 * reference::exact(p.seam) >
              reference::exact(cut + step * 4));
    }
}

TEST_CASE("round a piece the strip ends where it began, past its four corners, and the cord a full turn outside") {
    const reference::real pi = boost::math::constants::pi<reference::real>();
    reference::sampler random(734);
    while (random.another_of(2'000)) {
        const finished_size<inch> piece(random.inches(60), random.inches(60));
        const piping_ends<inch> ends{random.inches(3), random.inches(2)};
        const length<inch> strip = piping_length(piece, ends).value();
        CHECK(edge_of_piping(strip, ends) == (piece.width() + piece.height()) * 2);
        const length<inch> first = piece.width() * fraction(random.between(1, 15), 16);
        const auto at = corners_on_piping(piece, first);
        CHECK(at[3] + (piece.width() - first) + ends.lap + ends.turned == strip); // and back to its beginning
        CHECK(at[2] - at[0] == piece.width() + piece.height());
        const piped_cord<inch> p{random.inches(1), 1_in, random.inches(1) / 8};
        const length<inch> cord = cord_for_edge(piece, p, "1/16"_in).value();
        const reference::real outside = reference::exact(p.across) / 2 + reference::exact(p.cloth);
        const reference::real needed = reference::exact((piece.width() + piece.height()) * 2) + 2 * pi * outside;
        CHECK(reference::exact(cord) >= needed);
        CHECK(reference::exact(cord - "1/16"_in) < needed);
    }
}

TEST_CASE(
    "a strip that its cord or its seams use up, and a clip that reaches its row, are refused with their figures") {
    CHECK(message<piping_error>([] { seam_of_piping("3/4"_in, quarter, "1/16"_in); }) ==
          "a strip cut 3/4 in wide goes round a cord 1/4 in across and leaves no seam of 1/16 in");
    CHECK(message<piping_error>([] { cord_of_piping("3/4"_in, quarter, "1/16"_in); }) ==
          "a strip cut 3/4 in wide goes round no cord of 1/16 in: its seams take 3/4 in");
    // By hand: pi / 4 + 2 / 16 = 0.910 and, with seams of 3/8 in, pi / 16 + 3/4 = 0.946, each up to a sixteenth.
    CHECK(facts<piping_error>([] { seam_of_piping("3/4"_in, quarter, "1/16"_in); }) ==
          "too small: the cut width of a piping, given 3/4 in, least 15/16 in");
    CHECK(facts<piping_error>([] { cord_of_piping("3/4"_in, quarter, "1/16"_in); }) ==
          "too small: the cut width of a piping, given 3/4 in, least 1 in");
    CHECK(message<piping_error>([] { edge_of_piping("1 1/2"_in, lapped); }) ==
          "a piping of 1 1/2 in goes round nothing: its ends take 1 1/2 in");
    CHECK(facts<piping_error>([] { edge_of_piping(1_in, lapped); }) ==
          "too small: the length of a piping, given 1 in, least 3/2 in");
    CHECK(message<piping_error>([] { corners_on_piping(mat, 20_in); }) ==
          "a piping begins between two corners, from 0 to 20 in before the first: it was 20 in");
    CHECK(facts<piping_error>([] { corners_on_piping(mat, 0_in); }) ==
          "too small: where a piping begins, given 0 in, least 0 in, most 20 in");
    CHECK(message<piping_error>([] { clip_of_piping("3/8"_in, "3/8"_in); }) ==
          "a seam of 3/8 in cannot be clipped to 3/8 in short of its row");
    CHECK(facts<piping_error>([] { clip_of_piping("3/8"_in, "1/2"_in); }) ==
          "too large: what a clip keeps clear of its row, given 1/2 in, most 3/8 in");
    CHECK(facts<piping_error>([] {
              piping_width(piped_cord<inch>{0_in, 1_in}, 1_in);
          }) == "too small: the thickness of a cord, given 0 in, least 0 in");
    CHECK(facts<piping_error>([] {
              piping_width(piped_cord<inch>{1_in, 0_in}, 1_in);
          }) == "too small: the seam of a piping, given 0 in, least 0 in");
    CHECK(facts<piping_error>([] { flat_piping(0_in, 1_in); }) ==
          "too small: what shows of a flat piping, given 0 in, least 0 in");
    CHECK(facts<piping_error>([] { piping_length<inch>(mat, {.lap = 0_in}); }) ==
          "too small: the lap of a piping's ends, given 0 in, least 0 in");
    CHECK_THROWS_AS(piping_width(quarter, 0_in), range_error);
}
