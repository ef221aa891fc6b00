// Reading: what people write, every mistake with its position and reason, literals, and random bytes.
#include "against_gmp.hpp"
#include <turncloth/measure/read.hpp>
#include <turncloth/measure/write.hpp>

#include <doctest/doctest.h>

#include <algorithm>
#include <array>
#include <string>
#include <string_view>

using namespace turncloth;

namespace {

// Numbers alone.
static_assert(read_fraction("12") == 12);
static_assert(read_fraction("007") == 7);
static_assert(read_fraction("0") == 0);
static_assert(read_fraction("3/4") == fraction(3, 4));
static_assert(read_fraction("6/8") == fraction(3, 4));
static_assert(read_fraction("12 1/2") == fraction(25, 2));
static_assert(read_fraction("12-1/2") == fraction(25, 2));
static_assert(read_fraction("12½") == fraction(25, 2));
static_assert(read_fraction("12 ½") == fraction(25, 2));
static_assert(read_fraction("12-½") == fraction(25, 2));
static_assert(read_fraction("½") == fraction(1, 2));
static_assert(read_fraction("25/2") == fraction(25, 2));
static_assert(read_fraction("1⁄3") == fraction(1, 3)); // U+2044
static_assert(read_fraction("12.5") == fraction(25, 2));
static_assert(read_fraction(".5") == fraction(1, 2));
static_assert(read_fraction("31,75") == fraction(127, 4));
static_assert(read_fraction(",5") == fraction(1, 2));
static_assert(read_fraction("0,125") == fraction(1, 8));
static_assert(read_fraction("1.000") == 1);
static_assert(read_fraction("1,0000") == 1);
static_assert(read_fraction("0.30000000000000004") == fraction(7500000000000001, 25000000000000000));

static_assert(read_fraction("12–1/2") == fraction(25, 2)); // U+2013, as typesetters write it

// Signs, before everything.
static_assert(read_fraction("-3/4") == fraction(-3, 4));
static_assert(read_fraction("+3/4") == fraction(3, 4));
static_assert(read_fraction("-12 1/2") == fraction(-25, 2));
static_assert(read_fraction("-12-1/2") == fraction(-25, 2));
static_assert(read_fraction("\u221212.5") == fraction(-25, 2));
static_assert(read_fraction("- 12½") == fraction(-25, 2));
static_assert(read_fraction("-0") == 0);
static_assert(read_fraction("-½") == fraction(-1, 2));

// Space round everything: blanks, tabs, line ends, and typesetters' spaces.
static_assert(read_fraction(" \t12  1/2\r\n") == fraction(25, 2));
static_assert(read_fraction("12\u00A01/2") == fraction(25, 2));
static_assert(read_length<inch>("12\u202Fin") == 12_in);
static_assert(read_length<inch>("12\u2009in ") == 12_in);

// Every vulgar fraction character.
static_assert([] {
    struct character {
        std::string_view text;
        fraction value;
    };
    const std::array<character, 18> all = {{{"¼", {1, 4}},
                                            {"½", {1, 2}},
                                            {"¾", {3, 4}},
                                            {"⅐", {1, 7}},
                                            {"⅑", {1, 9}},
                                            {"⅒", {1, 10}},
                                            {"⅓", {1, 3}},
                                            {"⅔", {2, 3}},
                                            {"⅕", {1, 5}},
                                            {"⅖", {2, 5}},
                                            {"⅗", {3, 5}},
                                            {"⅘", {4, 5}},
                                            {"⅙", {1, 6}},
                                            {"⅚", {5, 6}},
                                            {"⅛", {1, 8}},
                                            {"⅜", {3, 8}},
                                            {"⅝", {5, 8}},
                                            {"⅞", {7, 8}}}};
    for (const character& c : all)
        if (read_fraction(c.text) != c.value)
            return false;
    return true;
}());

// Units and their marks.
static_assert(read_length<inch>("12") == 12_in);
static_assert(read_length<centimetre>("12") == 12_cm);
static_assert(read_length<inch>("12in") == 12_in);
static_assert(read_length<inch>("12 IN.") == 12_in);
static_assert(read_length<inch>("12 inches") == 12_in);
static_assert(read_length<inch>("1 inch") == 1_in);
static_assert(read_length<inch>("12 1/2\"") == "12.5"_in);
static_assert(read_length<inch>("12½″") == "12.5"_in);
static_assert(read_length<inch>("12''") == 12_in);
static_assert(read_length<inch>("12”") == 12_in);
static_assert(read_length<inch>("5'") == 60_in);
static_assert(read_length<inch>("5′") == 60_in);
static_assert(read_length<inch>("5’") == 60_in);
static_assert(read_length<inch>("5 ft") == 60_in);
static_assert(read_length<inch>("1 foot") == 12_in);
static_assert(read_length<inch>("5 feet") == 60_in);
static_assert(read_length<inch>("1 yd") == 36_in);
static_assert(read_length<inch>("2 yds") == 72_in);
static_assert(read_length<inch>("1 yard") == 36_in);
static_assert(read_length<inch>("2 Yards") == 72_in);
static_assert(read_length<inch>("31,75 cm") == "12.5"_in);
static_assert(read_length<inch>("25.4mm") == 1_in);
static_assert(read_length<centimetre>("1 m") == 100_cm);
static_assert(read_length<centimetre>("2 metres") == 200_cm);
static_assert(read_length<centimetre>("2 meters") == 200_cm);
static_assert(read_length<centimetre>("1 metre") == 100_cm);
static_assert(read_length<millimetre>("2 cm") == 20_mm);
static_assert(read_length<millimetre>("2 centimetres") == 20_mm);
static_assert(read_length<millimetre>("1 centimetre") == 10_mm);
static_assert(read_length<millimetre>("1 centimeter") == 10_mm);
static_assert(read_length<millimetre>("2 centimeters") == 20_mm);
static_assert(read_length<millimetre>("2 millimetres") == 2_mm);
static_assert(read_length<millimetre>("1 millimetre") == 1_mm);
static_assert(read_length<millimetre>("1 millimeter") == 1_mm);
static_assert(read_length<millimetre>("2 millimeters") == 2_mm);

// Sums, from the larger unit to the smaller.
static_assert(read_length<inch>("5' 3 1/2\"") == "63 1/2"_in);
static_assert(read_length<inch>("5'3\"") == 63_in);
static_assert(read_length<inch>("1 yd 4 in") == 40_in);
static_assert(read_length<inch>("1 yd 1 ft 1 in") == 49_in);
static_assert(read_length<inch>("-1 yd 4 in") == -(40_in));
static_assert(read_length<centimetre>("1 m 20 cm 5 mm") == 120.5_cm);
static_assert(read_length<inch>("1 1/2 yd") == 54_in);
static_assert(read_length<inch>("1½ yd 4½\"") == 58.5_in);

// Literals.
static_assert(12.5_in == "12 1/2"_in);
static_assert(0.1_cm == length_of<centimetre>({1, 10}));
static_assert("1 yd"_in == 36_in);
static_assert(3_ft == length_of<foot>(3));
static_assert("1/2"_ft == length_of<foot>({1, 2}));
static_assert("6 in"_ft == "1/2"_ft);
static_assert(3_yd == length_of<yard>(3));
static_assert("3"_yd == 3_yd);
static_assert(3_m == length_of<metre>(3));
static_assert("3,5"_m == 3.5_m);
static_assert(3_mm == length_of<millimetre>(3));
static_assert("3"_mm == 3_mm);
static_assert("31,75"_cm == 31.75_cm);

// The edge of 64 bits is reached on both sides.
static_assert(read_fraction("9223372036854775807") == against_gmp::largest);
static_assert(read_fraction("-9223372036854775808") == against_gmp::lowest);
static_assert(read_fraction("-3074457345618258602 2/3") == fraction(against_gmp::lowest, 3));
static_assert(read_fraction("1/9223372036854775807") == fraction(1, against_gmp::largest));
static_assert(read_fraction("0.000000000000000001") == fraction(1, 1000000000000000000));
// However many digits are written, what fits is read: 2^-62 has 62 of them (OEIS A000079).
static_assert(read_fraction("1.0000000000000000000") == 1);
static_assert(read_fraction("-9223372036854775808.00000000000000000000000000000") == against_gmp::lowest);
static_assert(read_fraction("0.00000000000000000032") == fraction(1, 3125000000000000000));
static_assert(read_fraction("0.00000000000000000021684043449710088680149056017398834228515625") ==
              fraction(1, std::int64_t{1} << 62));

struct mistake {
    std::string_view text;
    std::size_t position;
    std::string_view reason;
};

/// Whether `read` refuses the text there and for that reason.
template <class Read>
void check_refused(const mistake& r, Read read) {
    CAPTURE(std::string(r.text));
    try {
        read(r.text);
        FAIL_CHECK("it is not refused");
    } catch (const text_error& refused) {
        CHECK(refused.position() == r.position);
        CHECK(refused.reason() == r.reason);
    }
}

constexpr auto as_number = [](std::string_view text) { static_cast<void>(read_fraction(text)); };
constexpr auto as_length = [](std::string_view text) { static_cast<void>(read_length<inch>(text)); };

constexpr std::string_view no_number = "expected a number";
constexpr std::string_view no_denominator = "expected a denominator after the '/'";
constexpr std::string_view zero_denominator = "a denominator must not be zero";
constexpr std::string_view no_decimals = "expected a digit after the decimal mark";
constexpr std::string_view two_marks = "a number has only one decimal mark";
constexpr std::string_view thousands =
    "a comma before three digits may mean thousands or thousandths: write the number without it";
constexpr std::string_view improper = "the fraction of a mixed number must be less than one";
constexpr std::string_view no_slash = "expected a '/' to make this number a fraction, or a unit before it";
constexpr std::string_view after_hyphen = "expected a fraction after the hyphen";
constexpr std::string_view too_long = "more digits than 64 bits hold";
constexpr std::string_view no_unit = "expected a unit (in, ft, yd, mm, cm, m) or the end";
constexpr std::string_view growing = "in a sum, each unit must be smaller than the one before it";
constexpr std::string_view last_unit = "expected the unit of the last number";
constexpr std::string_view trailing = "expected nothing after the number";

/// Refused alike as a number and as a length.
constexpr mistake refused_by_both[] = {
    {"", 0, no_number},
    {"   ", 3, no_number},
    {"-", 1, no_number},
    {"--3", 1, no_number},
    {"+-3", 1, no_number},
    {"/2", 0, no_number},
    {"x", 0, no_number},
    {"12 1/", 5, no_denominator},
    {"12-1/x", 5, no_denominator},
    {"1/-2", 2, no_denominator},
    {"1/½", 2, no_denominator},
    {"1/0", 2, zero_denominator},
    {"12 0/0", 5, zero_denominator},
    {"12,3,4", 4, two_marks},
    {"1.2.3", 3, two_marks},
    {"1,000", 1, thousands},
    {"12,345", 2, thousands},
    {"12.", 3, no_decimals},
    {".", 1, no_decimals},
    {"12.x", 3, no_decimals},
    {"12 3/2", 3, improper},
    {"12 2/2", 3, improper},
    {"-12-3/2", 4, improper},
    {"12 3", 3, no_slash},
    {"12-3", 3, no_slash},
    {"12 3 in", 3, no_slash},
    {"12-", 3, after_hyphen},
    {"12- 1/2", 3, after_hyphen},
    {"12-x", 3, after_hyphen},
    {"9223372036854775808", 18, too_long},
    {"-9223372036854775809", 19, too_long},
    {"0.0000000000000000001", 2, "more decimal digits than 64 bits hold"},
};

constexpr mistake refused_as_number[] = {
    {"12 in", 3, trailing}, {"12 -1/2", 3, trailing}, {"12½½", 4, trailing},     {"12.5 1/2", 5, trailing},
    {"1/2/3", 3, trailing}, {"1e3", 1, trailing},     {"12 1/2 x", 7, trailing}, {"1/2 1/2", 4, trailing},
};

constexpr mistake refused_as_length[] = {
    {"12 x", 3, no_unit},      {"12 inchworms", 3, no_unit},     {"12 -1/2", 3, no_unit},
    {"1e3", 1, no_unit},       {"12 cmm", 3, no_unit},           {"12.5 1/2", 5, no_unit},
    {"1 in 1 ft", 7, growing}, {"1 ft 12 in 1 ft", 13, growing}, {"5' 5'", 4, growing},
    {"1 yd 4", 6, last_unit},  {"1 yd -4 in", 5, no_number},     {"1 yd +", 5, no_number},
    {"12 in\"", 5, no_number}, {"12 in 3 x", 8, no_unit},
};

} // namespace

// Sums as they are written on drawings, in shops and on tapes: each is worked out by hand beside it.
static_assert(read_length<inch>("5' - 4 1/2\"") == length_of<inch>({129, 2})); // 60 + 4 1/2
static_assert(read_length<inch>("5'-4 1/2\"") == length_of<inch>({129, 2}));
static_assert(read_length<inch>("5′–4½″") == length_of<inch>({129, 2}));
static_assert(read_length<inch>("-5' - 4 1/2\"") == length_of<inch>({-129, 2}));
static_assert(read_length<inch>("5'3") == length_of<inch>(63));
static_assert(read_length<inch>("5' 3 1/2") == length_of<inch>({127, 2}));
static_assert(read_length<inch>("1 yd 5' 3") == length_of<inch>(99));
static_assert(read_length<centimetre>("5'3") == length_of<centimetre>({8001, 50})); // 63 x 2.54
static_assert(read_length<centimetre>("1m80") == length_of<centimetre>(180));
static_assert(read_length<centimetre>("1 m 05") == length_of<centimetre>(105));
static_assert(read_length<inch>("12\" 1/2") == length_of<inch>({25, 2}));
static_assert(read_length<inch>("12 in ½") == length_of<inch>({25, 2}));
static_assert(read_length<inch>("-12\" 1/2") == length_of<inch>({-25, 2}));
static_assert(read_length<inch>("1 yard, 4 inches") == length_of<inch>(40));
static_assert(read_length<inch>("1 yd, 1 ft, 4 in") == length_of<inch>(52));
static_assert(read_length<inch>("12 ins") == length_of<inch>(12));
static_assert(read_length<centimetre>("30 cms") == length_of<centimetre>(30));

TEST_CASE("what could be meant in two ways is refused") {
    for (const char* text : {"5 ft 3",    "5 ft - 4 in", "1 yd - 4 in", "1m8",          "1m800",     "1m1/2",  "1m 0.5",
                             "12\" 1",    "12\" 1 1/2",  "12\" 0",      "12\" 1/2 1/4", "1 yd,4 in", "1 yd, ", "5' - ",
                             "5' - -4\"", "5'3 4",       "5'3, 4\"",    "1 cm 5",       "3 yd 2",    "1 yard,"}) {
        INFO(text);
        CHECK_THROWS_AS(static_cast<void>(read_length<inch>(text)), text_error);
    }
}

TEST_CASE("what can be read is given, and why not where it cannot, as it would be thrown") {
    for (const char* text :
         {"12 1/2", "5'3", "31,75 cm", "12 1/", "", "1,000", "99999999999999999999", "9223372036854775807 yd",
          "9223372036854775807 1/2", "1/9223372036854775807 mm", "9223372036854775807 in 9223372036854775807 mm"}) {
        const outcome<length<inch>> tried = try_read_length<inch>(text);
        try {
            const length<inch> read = read_length<inch>(text);
            REQUIRE(tried.has_value());
            CHECK(read == *tried);
            CHECK(tried.value_or(0_in) == *tried);
        } catch (const error& refused) {
            REQUIRE_FALSE(tried);
            CHECK(tried.refused().what() == std::string(refused.what()));
            CHECK(tried.refused().facts() == refused.facts());
            CHECK(tried.value_or(1_in) == 1_in);
        }
    }
    CHECK(try_read_length<inch>("12 1/").refused().facts().index == 5);
    CHECK(try_read_length<inch>("9223372036854775807 yd").refused().facts().kind == fault::does_not_fit);
}

TEST_CASE("a text that is not a measurement is refused where it fails and for the reason") {
    for (const mistake& r : refused_by_both) {
        check_refused(r, as_number);
        check_refused(r, as_length);
    }
    for (const mistake& r : refused_as_number)
        check_refused(r, as_number);
    for (const mistake& r : refused_as_length)
        check_refused(r, as_length);
}

TEST_CASE("the message quotes the text, says why, and counts characters from one as people do") {
    CHECK_THROWS_WITH_AS(read_fraction("12 1/"),
                         "cannot read \"12 1/\" as a measurement: expected a denominator after the '/', at its end",
                         text_error);
    CHECK_THROWS_WITH_AS(read_length<inch>("12 ells"),
                         "cannot read \"12 ells\" as a measurement: expected a unit (in, ft, yd, mm, cm, m) or the "
                         "end, at character 4 (\"ells\")",
                         text_error);
    CHECK_THROWS_WITH_AS(read_fraction("½ x"), // the first character is two bytes
                         "cannot read \"½ x\" as a measurement: expected nothing after the number, at character 3 "
                         "(\"x\")",
                         text_error);
    CHECK_THROWS_AS(read_fraction(""), error);
}

TEST_CASE("a message quotes a text once, shortens what it quotes, and ends at no control character") {
    const auto said = [](std::string_view text) -> std::string {
        try {
            static_cast<void>(read_length<inch>(text));
            return "";
        } catch (const text_error& refused) {
            return refused.what();
        }
    };
    CHECK(said("x") == "cannot read \"x\" as a measurement: expected a number, at character 1");
    CHECK(said(std::string_view("1\0x in", 6)) ==
          "cannot read \"1\\x00x in\" as a measurement: expected a unit (in, ft, yd, mm, cm, m) or the end, at "
          "character 2 (\"\\x00x in\")");
    CHECK(said("1 \x1B[2J\x7F") ==
          "cannot read \"1 \\x1b[2J\\x7f\" as a measurement: expected a unit (in, ft, yd, mm, cm, m) or the end, at "
          "character 3 (\"\\x1b[2J\\x7f\")");
    const std::string letters(100, 'x');
    CHECK(said("1 " + letters) == "cannot read \"1 " + letters.substr(0, 58) +
                                      "...\" as a measurement: expected a unit (in, ft, yd, mm, cm, m) or the end, at "
                                      "character 3 (\"" +
                                      letters.substr(0, 20) + "...\")");
}

TEST_CASE("decimals are what GMP makes of their digits, and refused exactly where that does not fit") {
    against_gmp::sampler random(1585);
    int given = 0, refused = 0;
    while (random.another_of(50'000)) {
        // n / (2^a 5^b), written out with as many digits as it has, and noughts after them; sometimes one digit more.
        const int twos = static_cast<int>(random.between(0, 64)), fives = static_cast<int>(random.between(0, 28));
        const int places = std::max({twos, fives, 1});
        mpz_class scale, under = mpz_class(1) << static_cast<unsigned>(twos), power;
        mpz_ui_pow_ui(scale.get_mpz_t(), 10, static_cast<unsigned>(places));
        mpz_ui_pow_ui(power.get_mpz_t(), 5, static_cast<unsigned>(fives));
        under *= power;
        const mpz_class above = mpz_class(static_cast<unsigned long>(random.bits() >> random.between(1, 63))) % under;
        std::string digits = mpz_class(above * (scale / under)).get_str();
        digits.insert(0, static_cast<std::size_t>(places) - std::min(digits.size(), static_cast<std::size_t>(places)),
                      '0');
        digits.append(static_cast<std::size_t>(random.between(0, 3)), '0');
        const bool negative = random.bits() % 2 == 0;
        mpq_class expected(negative ? mpz_class(-above) : above, under);
        expected.canonicalize();
        CAPTURE(digits);
        try {
            const fraction read = read_fraction((negative ? "-0." : "0.") + digits);
            CHECK(against_gmp::same(read, expected));
            ++given;
        } catch (const text_error&) {
            CHECK(!against_gmp::fits(expected));
            ++refused;
        }
    }
    CHECK(given > 5'000);
    CHECK(refused > 5'000);
}

TEST_CASE("a length whose exact value does not fit is refused as overflow") {
    CHECK_THROWS_AS(read_length<millimetre>("9223372036854775807 yd"), overflow_error);
    CHECK_THROWS_AS(read_fraction("9223372036854775807 1/2"), overflow_error);
    CHECK_THROWS_AS(read_length<inch>("3074457345618258603 yd 1 in"), overflow_error);
}

TEST_CASE("random bytes, and random pieces of measurements, are read or refused and nothing else happens") {
    against_gmp::sampler random(1815);
    constexpr std::array<std::string_view, 29> pieces = {
        "0", "1",  "2",  "10", "64", "-",      "+",  "/", ".",  ",", " ",      "\"",       "'",    "''",        "½",
        "⅞", "in", "ft", "yd", "cm", "metres", "mm", "m", "\t", "⁄", "\u2212", "\xE2\x82", "\xFF", "9999999999"};
    int read = 0, refused = 0;
    for (const int i : random.cases(100'000)) {
        std::string text;
        for (std::int64_t n = random.between(0, 8); n > 0; --n) {
            if (i % 4 == 0)
                text += static_cast<char>(random.bits());
            else
                text += pieces[static_cast<std::size_t>(random.between(0, pieces.size() - 1))];
        }
        try {
            const auto l = read_length<centimetre>(text);
            ++read;
            if (read_length<centimetre>(to_text(l)) != l)
                FAIL("\"", text, "\" was read, but not what was written of it");
        } catch (const text_error& error) {
            ++refused;
            if (error.position() > text.size() || error.reason().empty())
                FAIL("\"", text, "\" is refused at ", error.position());
        } catch (const overflow_error&) {
            ++refused;
        }
    }
    CHECK(read > 2'500);
    CHECK(refused > 50'000);
}
