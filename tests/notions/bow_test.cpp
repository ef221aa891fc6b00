// Bows: the height of an arc over a chord, at compile time; against a root found by bisection in 50 digits and against
// the curve's own length by numerical quadrature, over thousands of random inputs; there and back; and what is refused.
#include "reference.hpp"
#include <turncloth/measure/read.hpp>
#include <turncloth/notions/bow.hpp>

#include <boost/math/constants/constants.hpp>
#include <boost/math/quadrature/gauss.hpp>
#include <doctest/doctest.h>

#include <array>
#include <cmath>
#include <limits>

using namespace turncloth;
using reference::exact;
using reference::facts;
using reference::message;
using reference::real;

namespace {

// A half circle on a chord of 2 is pi long and 1 high: with 22/7 > pi a little more, with 355/113 > pi by 3e-7 still
// more.
static_assert(bow_height(length_of<inch>({22, 7}), 2_in, "1/1000"_in, rounding::nearest) == "1.001"_in);
static_assert(bow_height(length_of<inch>({355, 113}), 2_in, "1/1000000"_in, rounding::down) == "1"_in);
static_assert(bow_height(length_of<inch>({355, 113}), 2_in, "1/1000000"_in, rounding::up) == "1.000001"_in);
// A whole ring is arc / pi across: 0.318309886...
static_assert(bow_height(1_in, 0_in, "1/1000000"_in, rounding::nearest) == "0.31831"_in);
// Nothing fuller, nothing high: exactly.
static_assert(bow_height(7_cm, 7_cm, "1/8"_cm, rounding::up) == 0_cm);
static_assert(detail::bow_height_of(7_cm, 7_cm).bound() == 0);
// A quarter circle on a chord of 1: arc pi sqrt(2) / 4 = 1.11072..., height (sqrt(2) - 1) / 2 = 0.20711...
static_assert(bow_height("1.11072"_cm, 1_cm, "0.0001"_cm, rounding::nearest) == "0.2071"_cm);
// The synopsis.
static_assert(bow_height(8_in, 6_in, "1/8"_in, rounding::nearest) == "2 1/4"_in);
// The other way: a half circle over 2 is pi.
static_assert(arc_for_bow(2_in, 1_in, "1/64"_in, rounding::up) == "3 10/64"_in);
static_assert(arc_for_bow(2_in, 1_in, "0.00001"_in, rounding::nearest) == "3.14159"_in);

/// Half the angle of the arc, from sin x / x = chord / arc by bisection, which needs nothing of the library's way.
real half_angle(const real& arc, const real& chord) {
    real low = 0, high = boost::math::constants::pi<real>();
    for (int i = 0; i < 180; ++i) {
        const real middle = (low + high) / 2;
        (sin(middle) * arc > chord * middle ? low : high) = middle;
    }
    return (low + high) / 2;
}

template <length_unit Unit>
real height(length<Unit> arc, length<Unit> chord) {
    const real x = half_angle(exact(arc), exact(chord)), s = sin(x / 2);
    return exact(arc) * s * s / x;
}

/// Within the bound, and the bound within 0.53 of the last place of a double.
void check(const estimate& e, const real& truth) {
    const double ulp = std::nextafter(e.value(), std::numeric_limits<double>::infinity()) - e.value();
    if (abs(real(e.value()) - truth) > e.bound() || e.bound() > 0.53 * ulp)
        FAIL("the height is ", truth.str(20), ", the estimate ", e.value(), " to within ", e.bound());
}

} // namespace

TEST_CASE("the height of a bow is right to the last bit, for any fullness") {
    reference::sampler random(1665);
    while (random.another_of(1'500)) {
        const length<inch> arc = random.inches(60), chord = arc * fraction(random.between(0, 9'999), 10'000);
        check(detail::bow_height_of(arc, chord), height(arc, chord));
    }
    while (random.another_of(500)) { // hardly fuller, and hardly open
        const length<centimetre> arc = random.centimetres(60);
        const fraction little = {1, std::int64_t{1} << random.between(14, 36)};
        check(detail::bow_height_of(arc, arc * (1 - little)), height(arc, arc * (1 - little)));
        check(detail::bow_height_of(arc, arc * little), height(arc, arc * little));
    }
}

TEST_CASE("a bow hardly higher than its span follows the parabola, sqrt(3/8 chord (arc - chord)), down to 64 bits") {
    // sin x / x = 1 - x^2/6 + ..., height = arc x / 4 + ...; what is left out is of the order of the surplus squared.
    for (int k = 30; k <= 62; ++k) {
        const fraction q = {1, std::int64_t{1} << k};
        const double exactly = std::sqrt(0.375 * to_double(q));
        CHECK(detail::bow_height_of(length_of<inch>(1), length_of<inch>(1 - q)).value() ==
              doctest::Approx(exactly).epsilon(2 * to_double(q) + 4e-16));
    }
}

TEST_CASE("a circle through the bow that the library gives is as long as the piece, by quadrature") {
    reference::sampler random(1690);
    while (random.another_of(1'000)) {
        // Up to a half circle the curve is a function over its chord: y = sqrt(r^2 - x^2), with length element r / y.
        const length<inch> chord = random.inches(40), arc = chord * fraction(random.between(1'001, 1'560), 1'000);
        const double c = to_double(chord.value()), h = detail::bow_height_of(arc, chord).value();
        const double r = (c * c / 4 + h * h) / (2 * h);
        // In u with x = c/2 sin(u) the integrand stays smooth where the arc rises steeply.
        const auto element = [&](double u) {
            const double x = c / 2 * std::sin(u);
            return r / std::sqrt(r * r - x * x) * c / 2 * std::cos(u);
        };
        const double length = boost::math::quadrature::gauss<double, 60>::integrate(
            element, -boost::math::constants::half_pi<double>(), boost::math::constants::half_pi<double>());
        CHECK(length == doctest::Approx(to_double(arc.value())).epsilon(1e-6));
    }
}

TEST_CASE("a graduation is the right one on each side, in both units") {
    reference::sampler random(1701);
    while (random.another_of(1'000)) {
        const length<inch> arc = random.inches(30), chord = arc * fraction(random.between(1, 99), 100);
        const real steps = height(arc, chord) * 16;
        CHECK(exact(bow_height(arc, chord, "1/16"_in, rounding::down)) * 16 == floor(steps));
        CHECK(exact(bow_height(arc, chord, "1/16"_in, rounding::up)) * 16 == ceil(steps));
        CHECK(exact(bow_height(arc, chord, "1/16"_in, rounding::nearest)) * 16 == floor(steps + 0.5));
        // The metric edition comes from the same finished sizes, not from the inch edition's rounded figure.
        const real millimetres = height(arc, chord) * 254 / 10;
        CHECK(exact(bow_height(as<centimetre>(arc), as<centimetre>(chord), "0.1"_cm, rounding::nearest)) * 10 ==
              floor(millimetres + 0.5));
    }
}

TEST_CASE(
    "the piece that is cut for a wanted height stands off at least so far, and by less than a graduation's worth") {
    reference::sampler random(1711);
    while (random.another_of(1'000)) {
        const length<inch> chord = random.inches(20), wanted = chord * fraction(random.between(1, 150), 100);
        const length<inch> arc = arc_for_bow(chord, wanted, "1/8"_in, rounding::up);
        const auto stands_off = [&](length<inch> a) { return detail::bow_height_of(a, chord).value(); };
        CHECK(stands_off(arc) >= to_double(wanted.value()) * (1 - 1e-15));
        if (arc - "1/8"_in > chord)
            CHECK(stands_off(arc - "1/8"_in) < to_double(wanted.value()));
    }
}

TEST_CASE("a fuller piece stands off further, and over a wider span a piece stands off less when it is hardly fuller") {
    reference::sampler random(1720);
    while (random.another_of(1'000)) {
        const length<inch> arc = random.inches(30), chord = arc * fraction(random.between(1, 99), 100);
        CHECK(detail::bow_height_of(arc + "1/64"_in, chord).value() > detail::bow_height_of(arc, chord).value());
        if (ratio_of(chord, arc) > fraction(8, 10))
            CHECK(detail::bow_height_of(arc, chord + (arc - chord) / 2).value() <
                  detail::bow_height_of(arc, chord).value());
    }
}

TEST_CASE("what makes no bow says why") {
    CHECK(message<bow_error>([] { return detail::bow_height_of(6_in, "6 1/2"_in); }) ==
          "the span of a bow must be from 0 to 6 in, the bow's own length: it was 6 1/2 in");
    CHECK(message<bow_error>([] { return detail::bow_height_of(6_cm, -1 * 1_cm); }) ==
          "the span of a bow must be from 0 to 6 cm, the bow's own length: it was -1 cm");
    CHECK(facts<bow_error>([&] { return detail::bow_height_of(0_in, 0_in); }) ==
          "too small: the length of a bow, given 0 in, least 0 in");
    CHECK(message<bow_error>([] { return detail::arc_of_bow(6_in, 0_in); }) ==
          "the height of a bow must be more than zero: it was 0 in");
    CHECK(facts<bow_error>([&] { return detail::arc_of_bow(0_in, 1_in); }) ==
          "too small: the span of a bow, given 0 in, least 0 in");
    CHECK_THROWS_AS(bow_height(8_in, 6_in, 0_in, rounding::up), range_error);
    // A graduation finer than the bound cannot be decided, and is refused rather than guessed.
    CHECK_THROWS_AS(bow_height(8_in, 6_in, length_of<inch>({1, std::int64_t{1} << 59}), rounding::nearest),
                    undecided_error);
}
