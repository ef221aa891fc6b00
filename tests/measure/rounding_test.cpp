// Rounding to a graduation: published vectors, every tie rule on both sides of zero, and GMP over random values.
#include "against_gmp.hpp"
#include "refused.hpp"
#include <turncloth/measure/read.hpp>
#include <turncloth/measure/rounding.hpp>

#include <doctest/doctest.h>

#include <array>
#include <string>

using namespace turncloth;

namespace {

constexpr std::array every_rule = {ties::to_even, ties::away_from_zero, ties::toward_zero, ties::up, ties::down};

constexpr fraction to_tenths(std::string_view number) { return nearest_to(read_fraction(number), {1, 10}); }
constexpr fraction whole(std::string_view number, ties rule) { return nearest_to(read_fraction(number), 1, rule); }

// Half to even, to 0.1: a field sampling manual that cites ASTM E29.
static_assert(to_tenths("45.7500") == read_fraction("45.8"));
static_assert(to_tenths("45.4500") == read_fraction("45.4"));
static_assert(to_tenths("45.45001") == read_fraction("45.5"));

// NIST SP 811 (2008), B.7.1, its example to seven digits (value from memory).
static_assert(nearest_to(read_fraction("6.9749515"), {1, 1000000}) == read_fraction("6.974952"));
static_assert(nearest_to(read_fraction("6.9749505"), {1, 1000000}) == read_fraction("6.974950"));
// The same, B.7.2: 36 ft are 10.9728 m, to be given as 11.0 m.
static_assert(nearest_to(read_fraction("10.9728"), {1, 10}) == 11);

// General Decimal Arithmetic test cases, rounding.decTest 2.59 (M. Cowlishaw): the names there are half_even,
// half_up (away from zero), half_down (toward zero), floor (down) and ceiling (up).
static_assert(whole("12345.5", ties::to_even) == 12346);
static_assert(whole("12346.5", ties::to_even) == 12346);
static_assert(whole("12345.5", ties::away_from_zero) == 12346);
static_assert(whole("12346.5", ties::away_from_zero) == 12347);
static_assert(whole("12345.5", ties::toward_zero) == 12345);
static_assert(whole("-12344.5", ties::toward_zero) == -12344);
static_assert(whole("-12345.5", ties::toward_zero) == -12345);
static_assert(down_to(read_fraction("12345.5"), 1) == 12345);
static_assert(up_to(read_fraction("12345.5"), 1) == 12346);
// By the same rules, below zero.
static_assert(whole("-12344.5", ties::to_even) == -12344);
static_assert(whole("-12345.5", ties::to_even) == -12346);
static_assert(whole("-12344.5", ties::away_from_zero) == -12345);
static_assert(whole("-12344.5", ties::up) == -12344);
static_assert(whole("-12344.5", ties::down) == -12345);
static_assert(whole("12344.5", ties::down) == 12344);
static_assert(down_to(read_fraction("-12344.1"), 1) == -12345);
static_assert(up_to(read_fraction("-12344.9"), 1) == -12344);

// Three quarters are six eighths, and one inch is 25 2/5 millimetres.
static_assert(detail::steps_in({3, 4}, {1, 8}) == 6);
static_assert(detail::steps_in(1, unit_facts<millimetre>::inches) == fraction(127, 5));

// Any step: the quotient is rounded to a whole number, half to even, and multiplied again (IS 2:1960).
static_assert(nearest_to("5/16"_in, "1/8"_in) == "1/4"_in);
static_assert(nearest_to("7/16"_in, "1/8"_in) == "1/2"_in);
static_assert(nearest_to(12.5_cm, 5_cm) == 10_cm);
static_assert(nearest_to(12.6_cm, 5_cm) == 15_cm);
static_assert(up_to("2 3/16"_in, "1/8"_in) == "2 1/4"_in);
static_assert(down_to("2 3/16"_in, "1/8"_in) == "2 1/8"_in);
static_assert(up_to("1 1/8"_yd, "1/8"_yd) == "1 1/8"_yd);
static_assert(up_to(15.12_cm, 0.5_cm) == 15.5_cm);

struct graduation {
    int millimetres;
    std::string_view sixteenths, eighths;
};

// Millimetres on an inch ruler (derived: mm / 25.4 times 16, or 8, by hand).
constexpr std::array<graduation, 10> on_inch_rulers = {{{3, "1/8", "1/8"},
                                                        {5, "3/16", "1/4"},
                                                        {6, "1/4", "1/4"},
                                                        {10, "3/8", "3/8"},
                                                        {15, "9/16", "5/8"},
                                                        {16, "5/8", "5/8"},
                                                        {20, "13/16", "3/4"},
                                                        {25, "1", "1"},
                                                        {50, "1 15/16", "2"},
                                                        {100, "3 15/16", "3 7/8"}}};
static_assert([] {
    for (const graduation& g : on_inch_rulers) {
        const auto inches = as<inch>(length_of<millimetre>(g.millimetres));
        if (nearest_to(inches, "1/16"_in) != read_length<inch>(g.sixteenths) ||
            nearest_to(inches, "1/8"_in) != read_length<inch>(g.eighths))
            return false;
    }
    return true;
}());
static_assert(nearest_to(as<inch>(50_mm), "1/32"_in) == "63/32"_in);

bool on_a_half(int sixty_fourths, std::string_view step) {
    const auto steps = ratio_of(as<millimetre>(length_of<inch>({sixty_fourths, 64})), read_length<millimetre>(step));
    return denominator(steps) == 2;
}

/// The multiple of `step` that GMP and the definition of each rule give.
mpq_class expected_nearest(const mpq_class& x, const mpq_class& step, ties rule) {
    const mpq_class steps = x / step;
    const mpz_class below = against_gmp::floor(steps), above = below + 1;
    const mpq_class from_below = steps - below, from_above = above - steps;
    if (from_below != from_above)
        return mpq_class(from_below < from_above ? below : above) * step;
    const bool above_is_even = mpz_even_p(above.get_mpz_t());
    const bool above_is_farther = abs(above) > abs(below);
    switch (rule) {
    case ties::to_even:
        return mpq_class(above_is_even ? above : below) * step;
    case ties::away_from_zero:
        return mpq_class(above_is_farther ? above : below) * step;
    case ties::toward_zero:
        return mpq_class(above_is_farther ? below : above) * step;
    case ties::up:
        return mpq_class(above) * step;
    default:
        return mpq_class(below) * step;
    }
}

} // namespace

TEST_CASE("of the sixty-fourths of an inch only the odd eighths are ties at 0.01 mm") {
    // Derived: n/64 in is n * 635/16 hundredths of a millimetre, which is a half for n = 8, 24, 40, 56.
    for (int n = 1; n < 64; ++n)
        CHECK(on_a_half(n, "0.01") == (n % 16 == 8));
    struct tie {
        std::string_view inches, even, up;
    };
    // 3.175, 9.525, 15.875 and 22.225 mm in any machinist's handbook.
    for (const tie& t : {tie{"1/8", "3.18", "3.18"}, tie{"3/8", "9.52", "9.53"}, tie{"5/8", "15.88", "15.88"},
                         tie{"7/8", "22.22", "22.23"}}) {
        const auto exact = as<millimetre>(read_length<inch>(t.inches));
        CHECK(nearest_to(exact, 0.01_mm, ties::to_even) == read_length<millimetre>(t.even));
        CHECK(nearest_to(exact, 0.01_mm, ties::up) == read_length<millimetre>(t.up));
    }
}

TEST_CASE("at 0.0001 mm the odd 32nds are ties and nothing else is") {
    for (int n = 1; n < 64; ++n) // derived: n * 15875/4 is a half for n = 2, 6, 10, ...
        CHECK(on_a_half(n, "0.0001") == (n % 4 == 2));
    CHECK(nearest_to(as<millimetre>("3/32"_in), 0.0001_mm, ties::to_even) == 2.3812_mm);
    CHECK(nearest_to(as<millimetre>("3/32"_in), 0.0001_mm, ties::away_from_zero) == 2.3813_mm);
}

TEST_CASE("every rule gives what GMP and its definition give") {
    against_gmp::sampler random(1982);
    int halves = 0;
    for (const int i : random.cases(100'000)) {
        const fraction step = abs(i % 2 == 0 ? fraction(1, std::int64_t{1} << random.between(0, 6))
                                             : fraction(random.between(1, 20), random.between(1, 20)));
        // Every third value lies on a half or a whole step.
        const fraction x = i % 3 == 0 ? fraction(random.between(-400, 400), 2) * step
                                      : (i % 3 == 1 ? random.on_a_ruler() : random.awkward());
        const mpq_class q = against_gmp::exact(x), s = against_gmp::exact(step);
        halves += denominator(x / step) == 2;
        bool same = against_gmp::same(down_to(x, step), mpq_class(against_gmp::floor(q / s)) * s) &&
                    against_gmp::same(up_to(x, step), mpq_class(against_gmp::ceil(q / s)) * s) &&
                    nearest_to(x, step) == nearest_to(x, step, ties::to_even);
        for (const ties rule : every_rule)
            same = same && against_gmp::same(nearest_to(x, step, rule), expected_nearest(q, s, rule));
        if (!same)
            FAIL(numerator(x), "/", denominator(x), " by ", numerator(step), "/", denominator(step));
    }
    CHECK(halves > 10'000);
}

TEST_CASE("rounding is refused exactly where the multiple does not fit, however many steps it is") {
    static_assert(down_to(fraction(against_gmp::largest), {1, 8}) == against_gmp::largest);
    static_assert(up_to(fraction(against_gmp::lowest), {1, 64}) == against_gmp::lowest);
    against_gmp::sampler random(1985);
    int refused = 0, given = 0;
    const auto check = [&](const mpq_class& expected, auto round) {
        try {
            const fraction rounded = round();
            ++given;
            return against_gmp::fits(expected) && against_gmp::same(rounded, expected);
        } catch (const overflow_error&) {
            ++refused;
            return !against_gmp::fits(expected);
        }
    };
    while (random.another_of(20'000)) {
        const fraction x = random.near_overflow();
        const fraction step = random.bits() % 2 == 0 ? fraction(random.between(1, 64), random.between(1, 1 << 16))
                                                     : fraction(1 + (random.near_overflow() > 0 ? 6 : 0),
                                                                against_gmp::largest - random.between(0, 9));
        const mpq_class q = against_gmp::exact(x), s = against_gmp::exact(step);
        bool same = check(mpq_class(against_gmp::floor(q / s)) * s, [&] { return down_to(x, step); }) &&
                    check(mpq_class(against_gmp::ceil(q / s)) * s, [&] { return up_to(x, step); });
        for (const ties rule : every_rule)
            same = same && check(expected_nearest(q, s, rule), [&] { return nearest_to(x, step, rule); });
        if (!same)
            FAIL(numerator(x), "/", denominator(x), " by ", numerator(step), "/", denominator(step));
    }
    CHECK(refused > 10'000);
    CHECK(given > 10'000);
}

TEST_CASE("a graduation of nothing or less is refused") {
    const char* const zero = "a graduation must be more than zero: it was 0";
    CHECK_THROWS_WITH_AS(down_to(fraction(1), 0), zero, range_error);
    CHECK_THROWS_WITH_AS(up_to(1_in, 0_in), zero, range_error);
    CHECK_THROWS_WITH_AS(nearest_to(1_in, -("1/8"_in)), "a graduation must be more than zero: it was -1/8",
                         range_error);
    CHECK(refused::facts<range_error>([] {
              nearest_to(fraction(1), {-1, 8});
          }) == "too small: a graduation, given -1/8, least 0");
}
