// Units: their exact sizes, the conversions, areas, and what may not be mixed.
//
// Published: NIST Special Publication 811 (2008), Appendix B, and the international yard and pound agreement of 1959:
// inch 2.54 cm, foot 0.3048 m, yard 0.9144 m, all exact. GNU units, where installed, is asked as well.
#include "against_gmp.hpp"
#include <turncloth/measure/length.hpp>
#include <turncloth/measure/read.hpp>
#include <turncloth/measure/write.hpp>

#include <doctest/doctest.h>

#include <array>
#include <cstdio>
#include <string>
#include <type_traits>
#include <unordered_map>
#include <unordered_set>

using namespace turncloth;

namespace {

// NIST SP 811 (2008), Appendix B.8.
static_assert(as<centimetre>(length_of<inch>(1)) == length_of<centimetre>({254, 100}));
static_assert(as<metre>(length_of<inch>(1)) == length_of<metre>({254, 10000}));
static_assert(as<metre>(length_of<foot>(1)) == length_of<metre>({3048, 10000}));
static_assert(as<metre>(length_of<yard>(1)) == length_of<metre>({9144, 10000}));
// The same, section B.7.2: 36 ft are 10.9728 m.
static_assert(as<metre>(36_ft) == 10.9728_m);

// The foot of the old United States survey, 1200/3937 m, is not the foot of cloth.
static_assert(as<metre>(length_of<foot>(1)) != length_of<metre>({1200, 3937}));
static_assert(as<metre>(length_of<foot>(3937)) != 1200_m);
static_assert(as<metre>(length_of<foot>(3937)) < 1200_m);

static_assert(as<inch>(1_ft) == 12_in);
static_assert(as<foot>(1_yd) == 3_ft);
static_assert(as<inch>(1_yd) == 36_in);
static_assert(as<millimetre>(1_cm) == 10_mm);
static_assert(as<centimetre>(1_m) == 100_cm);
static_assert(as<millimetre>(1_m) == 1000_mm);
// 1/8128 in, which is 3.125 micrometres, goes whole into 1/64 in and into 1/10 mm: 127 and 32 times (derived).
static_assert(ratio_of(length_of<inch>({1, 64}), length_of<inch>({1, 8128})) == 127);
static_assert(ratio_of(0.1_mm, as<millimetre>(length_of<inch>({1, 8128}))) == 32);

// Areas. 1 sq yd = 9 sq ft = 1296 sq in; 1 sq in = 6.4516 sq cm; 1 sq yd = 0.83612736 sq m (NIST SP 811, B.8).
static_assert(as_area<inch>(1_yd * 1_yd) == 36_in * 36_in);
static_assert((36_in * 36_in).value() == 1296);
static_assert(as_area<foot>(1_yd * 1_yd).value() == 9);
static_assert(as_area<centimetre>(1_in * 1_in).value() == fraction(64516, 10000));
static_assert(as_area<metre>(1_yd * 1_yd).value() == fraction(83612736, 100000000));
static_assert(as_area<inch>(2_cm * "2.54"_cm).value() == fraction(200, 254));
static_assert(std::is_same_v<decltype(1_in * 1_in), area<inch>>);
static_assert((12_in * 9_in) / 4_in == 27_in);

// Lengths add, scale, compare and divide as lengths do.
static_assert(10_in + 2 * "1/2"_in == 11_in);
static_assert(10_in - 3_in == 7_in);
static_assert(10_in / 4 == "2 1/2"_in);
static_assert(6_in * fraction(1, 4) == "1 1/2"_in);
static_assert(fraction(1, 4) * 6_in == "1 1/2"_in);
static_assert(-(3_in) < 0_in);
static_assert(2U * 3_in == 6_in);
static_assert(3_in * 2L == 6_in);
static_assert(ratio_of(50_in, 35_in) == fraction(10, 7));
static_assert(abs(-(3_in)) == 3_in);
static_assert(abs(3_in) == 3_in);
static_assert(length<inch>() == 0_in);
static_assert(unit_name<inch> == "in");
static_assert(unit_name<foot> == "ft");
static_assert(unit_name<yard> == "yd");
static_assert(unit_name<millimetre> == "mm");
static_assert(unit_name<centimetre> == "cm");
static_assert(unit_name<metre> == "m");
static_assert(metric_unit<centimetre>);
static_assert(!metric_unit<yard>);
static_assert(length_unit<yard>);
static_assert(!length_unit<area<inch>>);
static_assert(sizeof(length<inch>) == sizeof(fraction));
static_assert(std::is_trivially_destructible_v<length<inch>>);

// What spoils cloth does not compile. (That it says what to write instead is seen in tests/misuse.)
template <class A, class B>
concept add = requires(A a, B b) {
    a + b;
};
template <class A, class B>
concept subtract = requires(A a, B b) {
    a - b;
};
template <class A, class B>
concept equal = requires(A a, B b) {
    a == b;
};
template <class A, class B>
concept order = requires(A a, B b) {
    a < b;
};
template <class A, class B>
concept mix = add<A, B> || add<B, A> || subtract<A, B> || subtract<B, A> || equal<A, B> || order<A, B> || order<B, A>;

static_assert(add<length<inch>, length<inch>> && order<length<inch>, length<inch>> &&
              equal<length<inch>, length<inch>> && subtract<length<inch>, length<inch>>);
static_assert(!mix<length<inch>, length<centimetre>> && !mix<length<inch>, length<yard>> &&
              !mix<length<millimetre>, length<metre>>);
static_assert(!mix<length<inch>, int> && !mix<length<inch>, double> && !mix<length<inch>, fraction>);
static_assert(!mix<length<inch>, area<inch>>);
static_assert(!std::is_constructible_v<length<inch>, int> && !std::is_constructible_v<length<inch>, fraction> &&
              !std::is_constructible_v<length<inch>, double>);
static_assert(!std::is_convertible_v<length<inch>, length<centimetre>> &&
              !std::is_convertible_v<length<inch>, fraction>);
template <class Unit>
concept takes_a_double = requires {
    length_of<Unit>(0.5);
};
static_assert(!takes_a_double<inch>);

/// The conversion that Boost.Units offers, against `as`.
template <class To, class From>
constexpr bool boost_agrees(fraction number) {
    const auto from = length_of<From>(number);
    return length<To>(from) == as<To>(from);
}
template <class To>
constexpr bool boost_agrees_from_all(fraction x) {
    return boost_agrees<To, inch>(x) && boost_agrees<To, foot>(x) && boost_agrees<To, yard>(x) &&
           boost_agrees<To, millimetre>(x) && boost_agrees<To, centimetre>(x) && boost_agrees<To, metre>(x);
}
constexpr bool boost_agrees_everywhere(fraction x) {
    return boost_agrees_from_all<inch>(x) && boost_agrees_from_all<foot>(x) && boost_agrees_from_all<yard>(x) &&
           boost_agrees_from_all<millimetre>(x) && boost_agrees_from_all<centimetre>(x) &&
           boost_agrees_from_all<metre>(x);
}

/// What GNU units answers, or nothing where it is not installed. "5|8" is its fraction; "5/8 inch" would be 5/(8 inch).
std::string gnu_units(const std::string& from, const std::string& to) {
    std::string answer;
    const std::string command = "units -t -o %.12g '" + from + "' '" + to + "' 2>/dev/null";
    if (FILE* said = popen(command.c_str(), "r")) {
        for (int c = std::fgetc(said); c != EOF && c != '\n'; c = std::fgetc(said))
            answer += static_cast<char>(c);
        pclose(said);
    }
    return answer;
}

} // namespace

TEST_CASE("the explicit conversions of Boost.Units are exact between all six units and agree with as<U>") {
    static_assert(boost_agrees_everywhere({7, 12}));
    static_assert(length<centimetre>(5_in) == 12.7_cm); // Boost's own inch gives 12 for whole numbers
    against_gmp::sampler random(1866);
    while (random.another_of(10'000))
        CHECK_UNARY(boost_agrees_everywhere(random.awkward()));
}

TEST_CASE("a conversion and the way back give what was there") {
    against_gmp::sampler random(1975);
    for (const int i : random.cases(10'000)) {
        const auto l = length_of<inch>(i % 2 == 0 ? random.on_a_ruler() : random.awkward());
        CHECK(as<inch>(as<metre>(l)) == l);
        CHECK(as<inch>(as<yard>(as<millimetre>(l))) == l);
        CHECK(as_area<inch>(as_area<centimetre>(l * l)) == l * l);
    }
}

TEST_CASE("sixty-fourths of an inch in millimetres: n times 0.396875 exactly") {
    for (int n = 0; n <= 64; ++n)
        CHECK(as<millimetre>(length_of<inch>({n, 64})) ==
              length_of<millimetre>(fraction(n) * fraction(396875, 1000000)));
}

TEST_CASE("the decimal and millimetre columns of a machinist's handbook") {
    struct row {
        const char *part, *decimal, *millimetres;
    };
    // Decimal equivalents: "Principles and Practice of Plumbing", Table LXIII, which lists all 64ths as in any
    // machinist's handbook; millimetres as printed by GNU units 2.22.
    const row table[] = {
        {"1/64", ".015625", ".396875"},
        {"1/32", ".03125", ".79375"},
        {"3/64", ".046875", "1.190625"},
        {"1/16", ".0625", "1.5875"},
        {"5/64", ".078125", "1.984375"},
        {"1/8", ".125", "3.175"},
        {"3/16", ".1875", "4.7625"},
        {"1/4", ".25", "6.35"},
        {"3/8", ".375", "9.525"},
        {"1/2", ".5", "12.7"},
        {"5/8", ".625", "15.875"},
        {"3/4", ".75", "19.05"},
        {"7/8", ".875", "22.225"},
        {"63/64", ".984375", "25.003125"},
        {"1", "1.0", "25.4"},
    };
    for (const row& r : table) {
        CHECK(read_length<inch>(r.part) == read_length<inch>(r.decimal));
        CHECK(as<millimetre>(read_length<inch>(r.part)) == read_length<millimetre>(r.millimetres));
    }
}

TEST_CASE("GNU units agrees on every sixty-fourth and on every unit") {
    if (gnu_units("1 inch", "mm").empty()) {
        MESSAGE("GNU units is not installed: not compared");
        return;
    }
    for (int n = 1; n <= 64; ++n) {
        const auto l = as<millimetre>(length_of<inch>({n, 64}));
        CHECK(to_text(l) == gnu_units(std::to_string(n) + "|64 inch", "mm") + " mm");
    }
    CHECK(to_text(as<metre>(1_ft)) == gnu_units("1 foot", "m") + " m");
    CHECK(to_text(as<metre>(1_yd)) == gnu_units("1 yard", "m") + " m");
    CHECK(to_text(as<centimetre>(1_yd)) == gnu_units("1 yard", "cm") + " cm");
    CHECK(as_area<centimetre>(1_in * 1_in).value() == read_fraction(gnu_units("1 inch^2", "cm^2")));
    CHECK(as_area<metre>(1_yd * 1_yd).value() == read_fraction(gnu_units("1 yard^2", "m^2")));
    CHECK(to_text(as<metre>(1_ft)) != gnu_units("1 surveyfoot", "m") + " m");
}

TEST_CASE("lengths serve as keys") {
    std::unordered_map<length<inch>, int> pieces;
    ++pieces["4/8"_in];
    ++pieces["1/2"_in];
    CHECK(pieces.size() == 1);
    CHECK(std::hash<length<inch>>{}(3_in) == std::hash<fraction>{}(3));
}

TEST_CASE("what does not fit or divides by nothing is refused") {
    CHECK_THROWS_AS(as<millimetre>(length_of<metre>(against_gmp::largest)), overflow_error);
    CHECK_THROWS_AS(ratio_of(1_in, 0_in), zero_denominator_error);
    CHECK_THROWS_AS(1_in / 0, zero_denominator_error);
}
