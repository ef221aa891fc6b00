// Ties: lengths and marks at compile time and for any size; the thickness of a roll against an Archimedean spiral's
// length, by numerical quadrature, and against published and derived figures; and what is refused.
#include "reference.hpp"
#include <turncloth/measure/read.hpp>
#include <turncloth/notions/tie.hpp>

#include <boost/math/constants/constants.hpp>
#include <boost/math/quadrature/gauss_kronrod.hpp>
#include <doctest/doctest.h>

#include <cmath>

using namespace turncloth;
using reference::exact;
using reference::facts;
using reference::message;
using reference::real;

namespace {

// Common practice: a ribbon that starts at the quarter mark with a loop standing out 1 1/2 in and runs 3 in past the
// opposite edge. On a roll 20 in across: 15 in run, 2 x 1 1/2 in loop, 3 in free.
constexpr ribbon_tie<inch> closure{20_in, {1, 4}, 1, "1 1/2"_in, {}, 3_in, {}};
static_assert(ribbon(closure) == 21_in);
static_assert(where_sewn(closure).reaches_from == at<finished_edge>("3 1/2"_in));
static_assert(where_sewn(closure).sewn_from == at<finished_edge>(5_in));
static_assert(where_sewn(closure).sewn_to == at<finished_edge>(20_in));
static_assert(where_sewn(closure).reaches_to == at<finished_edge>(23_in));
static_assert(marks_on_ribbon(closure).loop_folded_at == at<ribbon_end>("1 1/2"_in));
static_assert(marks_on_ribbon(closure).sewn_from == at<ribbon_end>(3_in));
static_assert(marks_on_ribbon(closure).sewn_to == at<ribbon_end>(18_in));

// A tie sewn at one line in the middle, two free ends, both turned under.
constexpr ribbon_tie<centimetre> middle{60_cm, {1, 2}, {1, 2}, {}, 35_cm, 35_cm, 1_cm};
static_assert(ribbon(middle) == 72_cm);
static_assert(where_sewn(middle).sewn_from == where_sewn(middle).sewn_to);
static_assert(where_sewn(middle).reaches_from == at<finished_edge>(length_of<centimetre>(-5)));
static_assert(marks_on_ribbon(middle).sewn_from == at<ribbon_end>(36_cm));
static_assert(marks_on_ribbon(middle).other_turned_at == at<ribbon_end>(71_cm));

// Webbing as the army cuts it (TM 10-8340-208-13, published): a loop cut 8 1/4 in, marked 2 1/8 in from each end, has 4
// in between its marks; a chape cut 5 in has both ends folded 1/2 in.
constexpr ribbon_tie<inch> webbing_loop{4_in, 0, 1, {}, "2 1/8"_in, "2 1/8"_in, {}},
    chape{4_in, 0, 1, {}, {}, {}, "1/2"_in};
static_assert(ribbon(webbing_loop) == "8 1/4"_in);
static_assert(ribbon(chape) == 5_in);
static_assert(marks_on_ribbon(webbing_loop).sewn_from == at<ribbon_end>("2 1/8"_in));

// US Army TM 10-1670-281-23&P, p. 2-151 (published): of a cord of 7 7/8 in with 2 1/4 in stitched at each end 3 3/8 in is
// free.
constexpr ribbon_tie<inch> stitched_cord{"3 3/8"_in, 0, 1, {}, "2 1/4"_in, "2 1/4"_in, {}};
static_assert(ribbon(stitched_cord) == "7 7/8"_in);
// TM 10-1670-271-23&P (published): an edge of 5 7/8 in, less two turns of 1/4 in, takes 6 3/8 in of tape with its ends
// turned under 1/2 in.
constexpr ribbon_tie<inch> edge_tape{"5 7/8"_in - 2 * "1/4"_in, 0, 1, {}, {}, {}, "1/2"_in};
static_assert(ribbon(edge_tape) == "6 3/8"_in);
// Ontario Teachers' Manual, Household Science (published): the tape of a bag 12 in wide is twice its width and 2 in: 26 in.
static_assert(tie_round(12_in * 2, 1, tied_bow<inch>{{}, 1_in, {}}, {}).value() == 26_in);

// A core of 1 in radius and paper of 0.01 in to an outer radius of 3 and of 5 in (a published exercise, "Joan's Paper
// Roll Problem"): 800 pi and 2400 pi in of paper, in the ratio 1 : 3. 2513.274 and 7539.822 in are derived.
static_assert(roll_diameter(rolled<inch>{"2513.274"_in, "0.01"_in, 2_in}, "0.001"_in, rounding::nearest) == 6_in);
static_assert(roll_diameter(rolled<inch>{"7539.822"_in, "0.01"_in, 2_in}, "0.001"_in, rounding::nearest) == 10_in);
// Derived: 18 in of 1/4 in on a rod 1 in thick, radius 1.297072, girth 8.149741; 72 in of 1/8 in on 1/2 in, 1.710932
// and 10.750104; 40 in of 1/2 in on nothing, 2.523133 and 15.853309.
constexpr rolled<inch> thin{18_in, "1/4"_in, 1_in}, longer{72_in, "1/8"_in, "1/2"_in}, thick{40_in, "1/2"_in, {}};
static_assert(rounded(detail::roll_radius_of(thin), "0.000001"_in, rounding::nearest) == "1.297072"_in);
static_assert(roll_girth(thin, "0.000001"_in, rounding::nearest) == "8.149741"_in);
static_assert(roll_girth(longer, "0.000001"_in, rounding::nearest) == "10.750104"_in);
static_assert(rounded(detail::roll_radius_of(longer), "0.000001"_in, rounding::nearest) == "1.710932"_in);
static_assert(rounded(detail::roll_radius_of(thick), "0.000001"_in, rounding::nearest) == "2.523133"_in);
static_assert(roll_girth(thick, "0.000001"_in, rounding::nearest) == "15.853309"_in);
static_assert(roll_diameter(thick, "1/8"_in, rounding::up) == "5 1/8"_in);

// Twice round 8 1/4 in, a bow of 2 in loops and 3 in tails with 1 1/2 in in its knot.
static_assert(tie_round("8 1/4"_in, 2, tied_bow<inch>{2_in, 3_in, "1 1/2"_in}, {.ease = "1/2"_in, .turned = "1/4"_in})
                  .value() == 33_in);

/// The length of an Archimedean spiral that grows by `thickness` a turn, from radius r to s: the integral of sqrt(u^2 +
/// a^2) / a du.
double spiral_length(double r, double s, double thickness) {
    const double a = thickness / boost::math::constants::two_pi<double>();
    const auto element = [a](double u) { return std::hypot(u, a) / a; };
    return boost::math::quadrature::gauss_kronrod<double, 61>::integrate(element, r, s, 10, 1e-12);
}

} // namespace

TEST_CASE("a ribbon's parts add up to what is cut, on the piece and on the ribbon, for any size and fraction") {
    reference::sampler random(1867);
    for (const int i : random.cases(5'000)) {
        ribbon_tie<inch> t{random.inches(40), {random.between(0, 4), 8}, {random.between(4, 8), 8}, {}, {}, {}, {}};
        (i % 2 == 0 ? t.loop : t.free_at_start) = random.inches(4);
        t.free_at_end = random.inches(6);
        t.turned = random.inches(1);
        const auto on_piece = where_sewn(t);
        const auto on_ribbon = marks_on_ribbon(t);
        // From the far end of the loop the ribbon lies doubled; nothing else differs between the two.
        const length<inch> seen = on_piece.reaches_to - on_piece.reaches_from;
        CHECK(ribbon(t) == seen + t.loop + t.turned * 2);
        CHECK(on_ribbon.sewn_to - on_ribbon.sewn_from == on_piece.sewn_to - on_piece.sewn_from);
        CHECK(ribbon(t) - on_ribbon.other_turned_at.from_datum() == t.turned);
        CHECK(on_ribbon.turned_at == at<ribbon_end>(t.turned));
        // Folded at the loop's far end, the crease of the turned end meets where the run starts.
        if (i % 2 == 0)
            CHECK(on_ribbon.sewn_from - on_ribbon.loop_folded_at == on_ribbon.loop_folded_at - on_ribbon.turned_at);
    }
}

TEST_CASE("a ribbon's working names its parts and leaves out what is not there") {
    CHECK(to_text(ribbon_working(closure)) == "21 in = 3/4 x 20 in run + 2 x 1 1/2 in loop + 3 in free end");
    CHECK(to_text(ribbon_working(middle)) ==
          "72 cm = 35 cm free end at the start + 35 cm free end + 2 x 1 cm turned under");
    CHECK(to_text(tie_round(8_in, 1, tied_bow<inch>{2_in, 3_in, {}}, {})) ==
          "22 in = 8 in round + 4 x 2 in loops, there and back + 2 x 3 in tails");
}

TEST_CASE("the radius of a roll keeps the area of its section, to the last bit, and rounds rightly") {
    reference::sampler random(1873);
    while (random.another_of(5'000)) {
        const rolled<inch> r{random.inches(400) + 20_in, random.inches(1), random.inches(3)};
        const real radius = sqrt(exact(r.core_diameter) * exact(r.core_diameter) / 4 +
                                 exact(r.strip) * exact(r.thickness) / boost::math::constants::pi<real>());
        const estimate e = detail::roll_radius_of(r);
        CHECK(abs(real(e.value()) - radius) <= e.bound());
        CHECK(e.bound() < 1.13e-16 * e.value());
        CHECK(exact(roll_diameter(r, "1/8"_in, rounding::up)) * 8 == ceil(radius * 16));
        CHECK(exact(roll_girth(r, "1/8"_in, rounding::up)) * 8 ==
              ceil(boost::math::constants::two_pi<real>() * radius * 8));
    }
}

TEST_CASE("a spiral as long as the strip ends within a twenty-fifth of the thickness inside the roll's circle") {
    reference::sampler random(1877);
    for (const int i : random.cases(3'000)) {
        // From just once round to many turns, round a core and, every other time, round nothing.
        const length<inch> thickness = random.inches(1), core = i % 2 == 0 ? length<inch>() : random.inches(4);
        const length<inch> once = (core + thickness) * fraction(22, 7);
        const rolled<inch> r{once + (i % 3 == 0 ? length<inch>() : random.inches(300)), thickness, core};
        const double t = to_double(thickness.value()), inner = to_double(core.value()) / 2;
        const double outer = detail::roll_radius_of(r).value(), strip = to_double(r.strip.value());
        const double a = t / boost::math::constants::two_pi<double>();
        CHECK(spiral_length(inner, outer, t) >= strip * (1 - 1e-11));
        CHECK(spiral_length(inner, outer - t / 25, t) < strip);
        const double sooner = a * a * (0.5 + std::asinh(outer / a)) / (2 * outer - t / 25); // the bound in the comment
        CHECK(spiral_length(inner, outer - sooner, t) <= strip * (1 + 1e-11));
    }
}

TEST_CASE("exact spirals of the paper roll exceed the area's length by thousandths of an inch") {
    // Derived: 2513.27500 and 7539.82365 in for circles' 2513.274 and 7539.822.
    CHECK(spiral_length(1, 3, 0.01) == doctest::Approx(2513.27500).epsilon(4e-9));
    CHECK(spiral_length(1, 5, 0.01) == doctest::Approx(7539.82365).epsilon(2e-9));
}

TEST_CASE("no point of the cloth stands out more than its thickness beyond the roll's circle") {
    // The cloth's middle is a spiral that starts half a thickness out from the core; its end, half a thickness further
    // out again, is the outermost point.
    reference::sampler random(1879);
    while (random.another_of(1'000)) {
        const length<inch> thickness = random.inches(1), core = random.inches(4);
        const rolled<inch> r{(core + thickness) * fraction(22, 7) + random.inches(200), thickness, core};
        const double t = to_double(thickness.value()), start = to_double(core.value()) / 2 + t / 2;
        const double circle = detail::roll_radius_of(r).value(), strip = to_double(r.strip.value());
        CHECK(spiral_length(start, circle + t / 2, t) >=
              strip * (1 - 1e-11)); // so the middle ends before circle + t / 2
    }
}

TEST_CASE("what cannot be tied says why") {
    CHECK(message<tie_error>([] {
              return ribbon(ribbon_tie<inch>{20_in, {3, 4}, {1, 2}, {}, {}, {}, {}});
          }) == "where a ribbon's run starts must be from 0 to 1/2, which is where it ends: it was 3/4");
    CHECK(facts<tie_error>([&] {
              return ribbon(ribbon_tie<inch>{20_in, {-1, 4}, {1, 2}, {}, {}, {}, {}});
          }) == "too small: where a ribbon's run starts, given -1/4, least 0, most 1/2");
    CHECK(facts<tie_error>([&] {
              return ribbon(ribbon_tie<inch>{20_in, 0, {5, 4}, {}, {}, {}, {}});
          }) == "too large: where a ribbon's run ends, given 5/4, least 0, most 1");
    CHECK(message<tie_error>([] {
              return ribbon(ribbon_tie<inch>{20_in, 0, 1, 1_in, 2_in, {}, {}});
          }) == "a ribbon starts with a loop or with a free end, not both: they were 1 in and 2 in");
    // However little of both.
    CHECK(facts<tie_error>([] {
              return ribbon(ribbon_tie<inch>{20_in, 0, 1, "1/64"_in, "1/64"_in, {}, {}});
          }) == "unsuitable: the free end at the start of a tie, given 1/64 in, most 0 in");
    CHECK(message<tie_error>([] {
              return ribbon(ribbon_tie<inch>{20_in, 0, 0, {}, {}, {}, "1/4"_in});
          }) == "a tie needs a run, a loop or a free end: all were nothing");
    CHECK(facts<tie_error>([&] {
              return ribbon(ribbon_tie<inch>{0_in, 0, 1, {}, {}, {}, {}});
          }) == "too small: the length that a ribbon lies along, given 0 in, least 0 in");
    CHECK(facts<tie_error>([&] {
              return where_sewn(ribbon_tie<inch>{20_in, 0, 1, "-1"_in, {}, {}, {}});
          }) == "too small: the loop of a tie, given -1 in, least 0 in");
    CHECK(facts<tie_error>([&] {
              return where_sewn(ribbon_tie<inch>{20_in, 0, 1, {}, "-1"_in, {}, {}});
          }) == "too small: the free end at the start of a tie, given -1 in, least 0 in");
    CHECK(facts<tie_error>([&] {
              return marks_on_ribbon(ribbon_tie<inch>{20_in, 0, 1, {}, {}, "-1"_in, {}});
          }) == "too small: the free end of a tie, given -1 in, least 0 in");
    CHECK(facts<tie_error>([&] {
              return marks_on_ribbon(ribbon_tie<inch>{20_in, 0, 1, {}, {}, {}, "-1"_in});
          }) == "too small: what is turned under at a ribbon's end, given -1 in, least 0 in");

    CHECK(message<tie_error>([] {
              return detail::roll_radius_of(rolled<inch>{3_in, 1_in, {}});
          }) == "a length of 3 in does not go once round a core 0 in across at a thickness of 1 in");
    CHECK(detail::roll_radius_of(rolled<inch>{"3.1416"_in, 1_in, {}}).value() > 1); // just more than pi
    CHECK(facts<tie_error>([] {
              return detail::roll_radius_of(rolled<inch>{"6.28"_in, 1_in, 1_in});
          }).substr(0, 56) == "too small: the length that is rolled up, given 157/25 in");
    CHECK(facts<tie_error>([&] {
              return detail::roll_radius_of(rolled<inch>{0_in, 1_in, {}});
          }) == "too small: the length that is rolled up, given 0 in, least 0 in");
    CHECK(facts<tie_error>([&] {
              return detail::roll_radius_of(rolled<inch>{30_in, 0_in, {}});
          }) == "too small: the thickness that is rolled up, given 0 in, least 0 in");
    CHECK(facts<tie_error>([&] {
              return detail::roll_radius_of(rolled<inch>{30_in, 1_in, "-1"_in});
          }) == "too small: the diameter of a roll's core, given -1 in, least 0 in");

    const tied_bow<inch> bow{2_in, 3_in, 1_in};
    CHECK(message<tie_error>([&] { return tie_round(8_in, 0, bow, {.ease = 0_in, .turned = 0_in}); }) ==
          "how often a tie goes round must be at least 1: it was 0");
    CHECK(facts<tie_error>([&] { return tie_round(0_in, 1, bow, {.ease = 0_in, .turned = 0_in}); }) ==
          "too small: the girth that a tie goes round, given 0 in, least 0 in");
    CHECK(facts<tie_error>([&] { return tie_round(8_in, 1, bow, {.ease = "-1"_in, .turned = 0_in}); }) ==
          "too small: the ease of a tie, given -1 in, least 0 in");
    CHECK(facts<tie_error>([&] { return tie_round(8_in, 1, bow, {.ease = 0_in, .turned = "-1"_in}); }) ==
          "too small: what is turned under at a ribbon's end, given -1 in, least 0 in");
    CHECK(facts<tie_error>([&] {
              return tie_round(8_in, 1, tied_bow<inch>{"-1"_in, 3_in, 1_in}, {.ease = 0_in, .turned = 0_in});
          }) == "too small: the loop of a bow, given -1 in, least 0 in");
    CHECK(facts<tie_error>([&] {
              return tie_round(8_in, 1, tied_bow<inch>{2_in, "-1"_in, 1_in}, {.ease = 0_in, .turned = 0_in});
          }) == "too small: the tail of a bow, given -1 in, least 0 in");
    CHECK(facts<tie_error>([&] {
              return tie_round(8_in, 1, tied_bow<inch>{2_in, 3_in, "-1"_in}, {.ease = 0_in, .turned = 0_in});
          }) == "too small: the ribbon in a knot, given -1 in, least 0 in");
}

TEST_CASE("a waist tie comes out of its casing alike at either end, and one too short for its casing is refused") {
    // By hand: 40 in round, 2 x 2 x 2 1/2 in of loops, 2 x 6 of tails, 1 in the knot, 2 x 1/2 turned: 64 in; 63 less 24 are 2 x 19 1/2.
    constexpr waist_tie<inch> tie{
        .waist = 40_in, .casing = 24_in, .bow = {"2 1/2"_in, 6_in, 1_in}, .turned = "1/2"_in, .hold = 4_in};
    static_assert(waist_tie_length(tie).value() == 64_in);
    static_assert(ends_beyond(63_in, 24_in, 4_in) == "19 1/2"_in && ends_beyond(32_in, 24_in, 4_in) == 4_in);
    reference::sampler random(917);
    while (random.another_of(1'000)) {
        const length<inch> casing = random.inches(40), hold = random.inches(6), out = hold + random.inches(9);
        CHECK(ends_beyond(out + casing + out, casing, hold) == out);
        waist_tie<inch> t{
            casing + random.inches(20), casing, {random.inches(4), hold, random.inches(2)}, random.inches(1), hold};
        const length<inch> sewn = waist_tie_length(t).value() - t.turned * 2;
        CHECK(ends_beyond(sewn, casing, hold) * 2 + casing == sewn);
    }
    CHECK(message<tie_error>([] { ends_beyond(30_in, 24_in, 4_in); }) ==
          "a tie of 30 in is too short for a casing of 24 in: with 4 in to hold at either end it is 32 in");
    CHECK(facts<tie_error>([] { ends_beyond("31 1/2"_in, 24_in, 4_in); }) ==
          "too small: the length of a tie, given 63/2 in, least 32 in");
    CHECK(message<tie_error>([&] {
              waist_tie_length(waist_tie<inch>{24_in, 24_in, tie.bow, {}, 4_in});
          }) == "a casing of 24 in goes all round a waist of 24 in and leaves nothing to tie");
    CHECK(facts<tie_error>([&] {
              waist_tie_length(waist_tie<inch>{24_in, 25_in, tie.bow, {}, 4_in});
          }) == "too large: the length of a casing, given 25 in, most 24 in");
    CHECK(facts<tie_error>([&] {
              waist_tie_length(waist_tie<inch>{40_in, 24_in, tie.bow, "1/2"_in, 20_in});
          }) == "too small: the length of a tie, given 63 in, least 64 in");
    CHECK(facts<tie_error>([] { ends_beyond(30_in, 0_in, 4_in); }) ==
          "too small: the length of a casing, given 0 in, least 0 in");
    CHECK(facts<tie_error>([] { ends_beyond(30_in, 20_in, 0_in); }) ==
          "too small: the end of a tie beyond its casing, given 0 in, least 0 in");
}
