// Figures with their working: the value is the sum of the terms, the text shows them, and too many are refused.
#include "against_gmp.hpp"
#include <turncloth/measure/read.hpp>
#include <turncloth/measure/working.hpp>

#include <doctest/doctest.h>

#include <array>
#include <string>

using namespace turncloth;

namespace {

static_assert(figure<inch>().plus(10_in, "finished").plus_times(2, {"1/2"_in, "1/2"_in}, "hem").value() == 12_in);
constexpr figure<inch> nothing;
static_assert(nothing.value() == 0_in);
static_assert(nothing.terms().empty());
static_assert(figure<inch>().plus_times(-2, {3_in}, "").value() == -(6_in));
static_assert(figure<centimetre>().plus_times({1, 3}, {1_cm, 0.5_cm}, "").value() == 0.5_cm);

} // namespace

TEST_CASE("a working is written as the sum that it is") {
    CHECK(to_text(figure<inch>().plus(10_in, "finished").plus_times(2, {"1/2"_in, "1/2"_in}, "self-binding")) ==
          "12 in = 10 in finished + 2 x (1/2 + 1/2) in self-binding");
    CHECK(to_text(figure<inch>().plus(7_in, "panel").plus_times(-2, {"3/4"_in}, "tabs")) ==
          "5 1/2 in = 7 in panel - 2 x 3/4 in tabs");
    CHECK(to_text(figure<inch>().plus_times(-1, {"3/4"_in}, "turn").plus(1_in, "edge")) ==
          "1/4 in = -3/4 in turn + 1 in edge");
    CHECK(to_text(figure<centimetre>().plus(2.5_cm, "")) == "2.5 cm = 2.5 cm");
    CHECK(to_text(figure<centimetre>().plus_times({10, 7}, {35_cm, 7_cm}, "film")) ==
          "60 cm = 1 3/7 x (35 + 7) cm film");
    CHECK(to_text(figure<inch>()) == "0 in");
}

TEST_CASE("the value is the sum of the terms as GMP adds them") {
    against_gmp::sampler random(1202);
    while (random.another_of(5'000)) {
        figure<inch> f;
        mpq_class expected;
        for (auto terms = random.between(0, 8); terms > 0; --terms) {
            const fraction times = random.on_a_ruler(), a = random.on_a_ruler(), b = random.on_a_ruler();
            f.plus_times(times, {length_of<inch>(a), length_of<inch>(b)}, "");
            expected += against_gmp::exact(times) * (against_gmp::exact(a) + against_gmp::exact(b));
        }
        CHECK(against_gmp::same(f.value().value(), expected));
    }
}

TEST_CASE("a ninth term, a fifth part and a term of no parts are refused") {
    figure<inch> f;
    for (int i = 0; i < 8; ++i)
        f.plus(1_in, "slat");
    CHECK_THROWS_WITH_AS(f.plus(1_in, "slat"), "the number of terms of a working must be at most 8: it was 9",
                         range_error);
    CHECK(f.value() == 8_in);
    CHECK_NOTHROW(figure<inch>().plus_times(1, {1_in, 1_in, 1_in, 1_in}, ""));
    CHECK_THROWS_WITH_AS(figure<inch>().plus_times(1, {1_in, 1_in, 1_in, 1_in, 1_in}, ""),
                         "the number of parts of a term must be from 1 to 4: it was 5", range_error);
    CHECK_THROWS_WITH_AS(figure<inch>().plus_times(2, {}, "hem"),
                         "the number of parts of a term must be from 1 to 4: it was 0", range_error);
}

TEST_CASE("a part that was given in centimetres stays in these, and so does the sum") {
    // By hand: 14 + 1 in are 38.1 cm.
    CHECK(to_text(figure<inch>().plus(14_in, "finished").plus_times(2, {as<inch>(1_cm), "1/2"_in}, "hem")) ==
          "40.1 cm = 14 in finished + 2 x (1 cm + 1/2 in) hem");
    CHECK(to_text(figure<inch>().plus(14_in, "finished").plus_times(2, {as<inch>("2.54"_cm), "1/2"_in}, "hem")) ==
          "17 in = 14 in finished + 2 x (1 + 1/2) in hem");
}
