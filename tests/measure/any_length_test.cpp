// Lengths whose unit is known at run time, and lengths written in two units: what is written reads back.
#include "at_random.hpp"
#include <turncloth/measure/any_length.hpp>
#include <turncloth/measure/compound.hpp>
#include <turncloth/measure/read.hpp>

#include <doctest/doctest.h>

#include <string>

using namespace turncloth;

namespace {

constexpr any_length typed = read_any_length("60 cm", any_unit::inches);
static_assert(typed.number() == 60 && typed.unit() == any_unit::centimetres);
static_assert(typed == any_length(60_cm) && typed != any_length(600_mm));
static_assert(as<inch>(typed) == as<inch>(60_cm) && as<centimetre>(typed) == 60_cm);
static_assert(read_any_length("24", any_unit::inches) == any_length(24_in));
static_assert(read_any_length("24", any_unit::millimetres) == any_length(24_mm));
static_assert(read_any_length("1 yd 4 in", any_unit::metres) == any_length(40_in)); // a sum, in its last unit
static_assert(read_any_length("5'3", any_unit::metres) == any_length(63_in));
static_assert(any_unit_of<yard> == any_unit::yards && any_unit_of<inch> == any_unit::inches);
static_assert(name_of(any_unit::metres) == "m" && is_metric(any_unit::metres) && !is_metric(any_unit::feet));

constexpr fraction hem(any_unit u) {
    return in_edition(u, []<class Unit>() { return by_edition<Unit>("1/2"_in, "1.5"_cm).value(); });
}
static_assert(hem(any_unit::yards) == fraction(1, 2) && hem(any_unit::millimetres) == fraction(3, 2));
static_assert(by_edition<foot>(6_in, 15_cm) == "1/2"_ft && by_edition<millimetre>(6_in, 15_cm) == 150_mm);

} // namespace

TEST_CASE("what was typed is written as it was") {
    CHECK(to_text(typed) == "60 cm");
    CHECK(to_text(read_any_length("1 1/2 yd", any_unit::inches)) == "1 1/2 yd");
    CHECK(try_read_any_length("9' 9\"", any_unit::inches).value_or(any_length()) == any_length(117_in));
    CHECK(std::string(try_read_any_length("12 1/", any_unit::inches).refused().what()) ==
          "cannot read \"12 1/\" as a measurement: expected a denominator after the '/', at its end");
    CHECK_THROWS_AS(static_cast<void>(read_any_length("12 1/", any_unit::inches)), text_error);
    CHECK_THROWS_AS(static_cast<void>(read_any_length("9223372036854775807 yd 1 in", any_unit::yards)), overflow_error);
}

TEST_CASE("two units are written as a person would") {
    CHECK(feet_and_inches(117_in) == "9 ft 9 in");
    CHECK(feet_and_inches(117_in, unit_marks::signs) == "9' 9\"");
    CHECK(feet_and_inches("27 1/2"_in) == "2 ft 3 1/2 in");
    CHECK(feet_and_inches("27 1/2"_in, unit_marks::signs) == "2' 3 1/2\"");
    CHECK(feet_and_inches(-"27 1/2"_in) == "-2 ft 3 1/2 in");
    CHECK(feet_and_inches(3_yd, unit_marks::signs) == "9'");
    CHECK(feet_and_inches("3 1/2"_in) == "3 1/2 in");
    CHECK(feet_and_inches(0_in) == "0 in");
    CHECK(feet_and_inches(-"1/2"_in, unit_marks::signs) == "-1/2\"");
    CHECK(feet_and_inches("91.44"_cm) == "3 ft"); // 36 x 2.54
    CHECK(yards_and_inches(40_in) == "1 yd 4 in");
    CHECK(yards_and_inches(-36_in) == "-1 yd");
    CHECK(yards_and_eighths("49 1/2"_in) == "1 3/8 yd"); // an eighth of a yard is 4 1/2 in
    CHECK(yards_and_eighths("4 1/2"_in) == "1/8 yd");
    CHECK(yards_and_eighths(51_in) == "1 3/8 yd 1 1/2 in");
    CHECK(yards_and_eighths(1_in) == "1 in");
}

TEST_CASE("what is written in two units reads back") {
    at_random::sampler random(20261126);
    while (random.another_of(1000)) {
        const length<inch> l = length_of<inch>({random.between(-100'000, 100'000), random.between(1, 128)});
        CHECK(read_length<inch>(feet_and_inches(l)) == l);
        CHECK(read_length<inch>(feet_and_inches(l, unit_marks::signs)) == l);
        CHECK(read_length<inch>(yards_and_inches(l)) == l);
        CHECK(read_length<inch>(yards_and_eighths(l)) == l);
        const any_length metric(as<centimetre>(l));
        CHECK(read_any_length(to_text(metric), any_unit::inches) == metric);
    }
}
