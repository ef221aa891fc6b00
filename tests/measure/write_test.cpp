// Writing: mixed numbers and decimals, rounded and exact, streams, and that what is written reads back equal.
#include "against_gmp.hpp"
#include <turncloth/measure/read.hpp>
#include <turncloth/measure/write.hpp>

#include <doctest/doctest.h>

#include <iomanip>
#include <sstream>
#include <string>

using namespace turncloth;

namespace {

/// The largest power of two in use on a ruler, as the issue of a text.
std::string on_ruler(std::string_view inches, std::int64_t largest_denominator) {
    return to_text(read_length<inch>(inches), inch_ruler(largest_denominator));
}

template <class Unit>
bool reads_back(fraction x) {
    const auto l = length_of<Unit>(x);
    return read_length<Unit>(to_text(l)) == l && read_length<Unit>(number_text(l)) == l;
}

bool reads_back_in_every_unit(fraction x) {
    return read_fraction(to_text(x)) == x && reads_back<inch>(x) && reads_back<foot>(x) && reads_back<yard>(x) &&
           reads_back<millimetre>(x) && reads_back<centimetre>(x) && reads_back<metre>(x);
}

template <class T>
std::string streamed(const T& value) {
    std::ostringstream out;
    out << value;
    return out.str();
}

} // namespace

TEST_CASE("a fraction is written as a mixed number in lowest terms, its sign once and before everything") {
    CHECK(to_text(fraction(25, 2)) == "12 1/2");
    CHECK(to_text(fraction(-25, 2)) == "-12 1/2");
    CHECK(to_text(fraction(-3, 4)) == "-3/4");
    CHECK(to_text(fraction(6, 8)) == "3/4");
    CHECK(to_text(fraction(7)) == "7");
    CHECK(to_text(fraction(-7)) == "-7");
    CHECK(to_text(fraction()) == "0");
    CHECK(to_text(fraction(against_gmp::lowest)) == "-9223372036854775808");
    CHECK(to_text(fraction(against_gmp::lowest, 3)) == "-3074457345618258602 2/3");
}

TEST_CASE("inches, feet and yards are written as mixed numbers; metric units as decimals where one is exact") {
    CHECK(to_text("12 1/2"_in) == "12 1/2 in");
    CHECK(to_text("1 1/3"_yd) == "1 1/3 yd");
    CHECK(to_text(-("3/4"_ft)) == "-3/4 ft");
    CHECK(to_text("31,75"_cm) == "31.75 cm");
    CHECK(to_text("0.396875"_mm) == "0.396875 mm"); // 1/64 in
    CHECK(to_text(-(0.05_m)) == "-0.05 m");
    CHECK(to_text("1/3"_cm) == "1/3 cm");
    CHECK(to_text(-("1 2/3"_cm)) == "-1 2/3 cm");
    CHECK(to_text(30_cm) == "30 cm");
    CHECK(to_text("100.01"_mm) == "100.01 mm");
    CHECK(to_text(length_of<metre>({1, 1000000000000000000})) == "0.000000000000000001 m");
    CHECK(to_text(length_of<metre>({1, std::int64_t{1} << 18})) == "0.000003814697265625 m");  // 5^18 = 3814697265625
    CHECK(to_text(length_of<metre>({1, std::int64_t{1} << 19})) == "1/524288 m");              // 19 decimals
    CHECK(to_text(length_of<metre>({1, std::int64_t{1} << 62})) == "1/4611686018427387904 m"); // 62 decimals
}

TEST_CASE("on a ruler the text is rounded to its graduation, and carries into the whole number") {
    CHECK(on_ruler("15 31/32", 16) == "16 in");
    CHECK(on_ruler("15 30/32", 16) == "15 15/16 in");
    CHECK(on_ruler("-15 31/32", 16) == "-16 in");
    CHECK(on_ruler("31/32", 8) == "1 in");
    CHECK(on_ruler("5 3/8", 4) == "5 1/2 in"); // a tie, to the even quarter
    CHECK(on_ruler("5 1/8", 4) == "5 in");
    CHECK(on_ruler("12 1/2", 64) == "12 1/2 in"); // in lowest terms all the same
    CHECK(on_ruler("1/3", 64) == "21/64 in");
    CHECK(on_ruler("1/3", 10) == "3/10 in");
}

TEST_CASE("nothing that is rounded to zero keeps a sign") {
    CHECK(on_ruler("-1/64", 16) == "0 in");
    CHECK(to_text(-("0.04"_cm), {.shows = units_shown::centimetres}) == "0 cm");
}

TEST_CASE("no denominator is larger than the ruler's, and the text is within half a graduation") {
    against_gmp::sampler random(1851);
    while (random.another_of(20'000)) {
        const std::int64_t largest_denominator = std::int64_t{1} << random.between(0, 6);
        const auto l = length_of<inch>(random.awkward());
        const auto shown = read_length<inch>(to_text(l, inch_ruler(largest_denominator)));
        CHECK(denominator(shown.value()) <= largest_denominator);
        CHECK(abs(shown - l) <= length_of<inch>({1, 2 * largest_denominator}));
    }
}

TEST_CASE("both editions are each rounded from the exact length, not one from the other") {
    CHECK(to_text("31.75"_cm, {.shows = units_shown::both}) == "12 1/2 in (31.8 cm)");
    CHECK(to_text("31.75"_cm, {.metric_first = true}) == "31.8 cm (12 1/2 in)");
    CHECK(to_text("31.75"_cm, {.shows = units_shown::inches, .metric_first = true}) == "12 1/2 in");
    CHECK(to_text("12 1/2"_in, {.shows = units_shown::centimetres}) == "31.8 cm"); // 31.75: a tie, to the even tenth
    CHECK(to_text("12 1/2"_in, {.shows = units_shown::centimetres, .halfway = ties::down}) == "31.7 cm");
    CHECK(to_text("12 1/2"_in, {.shows = units_shown::inches}) == "12 1/2 in");
    CHECK(to_text("5 3/8"_in, {.shows = units_shown::inches, .inches = "1/4"_in, .halfway = ties::down}) == "5 1/4 in");
    // 1/3 in = 0.84666... cm; its 5/16 in would be 0.79375 cm.
    CHECK(to_text("1/3"_in, ruler{}) == "5/16 in (0.8 cm)");
    CHECK(to_text("1/3"_in, {.centimetres = 0.01_cm}) == "5/16 in (0.85 cm)");
    // 1 in = 2.54 cm, but 2.5 cm would be 63/64 in.
    CHECK(to_text(1_in, {.inches = "1/64"_in}) == "1 in (2.5 cm)");
    CHECK(to_text(1_yd, ruler{}) == "36 in (91.4 cm)");
    CHECK(to_text(1_m, ruler{}) == "39 3/8 in (100 cm)");
}

TEST_CASE("what was put together from centimetres is written in these") {
    // By hand: 14 in are 35.56 cm.
    CHECK(to_text(as<inch>(35_cm)) == "35 cm");
    CHECK(to_text(14_in + as<inch>(1_cm)) == "36.56 cm");
    CHECK(to_text(as<foot>(-"0.5"_cm)) == "-0.5 cm");
    CHECK(to_text(as<inch>(length_of<centimetre>({1, 3}))) == "1/3 cm");
    CHECK(to_text("1/3"_in) == "1/3 in");
    CHECK(to_text(length_of<yard>({(std::int64_t{1} << 62) + 1, 127}))
              .ends_with(" yd")); // in centimetres it does not fit
    CHECK(to_text(as<inch>(35_cm), inch_ruler(16)) == "13 3/4 in");
}

TEST_CASE("what is written reads back equal, in all six units") {
    against_gmp::sampler random(1837);
    while (random.another_of(20'000)) {
        const fraction x = random.mixed(), decimal(random.between(-1'000'000, 1'000'000), 1000);
        if (!reads_back_in_every_unit(x) || !reads_back_in_every_unit(decimal))
            FAIL(to_text(x), " or ", to_text(decimal), " does not read back");
    }
    while (random.another_of(20'000))
        if (const fraction x = random.near_overflow(); !reads_back_in_every_unit(x))
            FAIL(to_text(x), " does not read back");
}

TEST_CASE("exact decimals are as GMP divides") {
    against_gmp::sampler random(1585);
    while (random.another_of(5'000)) {
        const int digits = static_cast<int>(random.between(0, 9));
        std::int64_t scale = 1;
        for (int d = 0; d < digits; ++d)
            scale *= 10;
        const std::int64_t number = random.between(0, 1'000'000'000);
        // The digits of number / scale are those of number with a point set among them, less trailing zeros.
        mpz_class whole, rest;
        mpz_tdiv_qr(whole.get_mpz_t(), rest.get_mpz_t(), mpz_class(number).get_mpz_t(), mpz_class(scale).get_mpz_t());
        std::string expected = whole.get_str();
        std::string tail = rest.get_str();
        tail.insert(0, static_cast<std::size_t>(digits) - std::min(tail.size(), static_cast<std::size_t>(digits)), '0');
        while (!tail.empty() && tail.back() == '0')
            tail.pop_back();
        if (!tail.empty())
            expected += '.' + tail;
        CHECK(to_text(length_of<centimetre>({number, scale})) == expected + " cm");
    }
}

TEST_CASE("streams write the same text, and honour the width asked for") {
    CHECK(streamed(fraction(-25, 2)) == "-12 1/2");
    CHECK(streamed("12 1/2"_in) == "12 1/2 in");
    CHECK(streamed(31.75_cm) == "31.75 cm");
    std::ostringstream out;
    out << std::setw(10) << "1/2"_in << '|' << std::left << std::setw(6) << fraction(1, 2) << '|';
    CHECK(out.str() == "    1/2 in|1/2   |");
}

TEST_CASE("a ruler without graduations is refused") {
    CHECK_THROWS_AS(inch_ruler(0), range_error);
    CHECK_THROWS_AS(to_text(1_in, inch_ruler(-8)), range_error);
    CHECK_THROWS_AS(to_text(1_in, {.centimetres = 0_cm}), range_error);
    CHECK_THROWS_AS(to_text(length_of<yard>(against_gmp::largest), ruler{}), overflow_error);
}
