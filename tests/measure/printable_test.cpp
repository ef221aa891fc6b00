// measure/printable.hpp: what is fit to print stays, and nothing else is left.
#include "at_random.hpp"
#include <turncloth/measure/printable.hpp>

#include <doctest/doctest.h>

#include <string>

using namespace turncloth;

// The tables of The Unicode Standard 15.0, section 3.9: well-formed sequences (table 3-7) at the ends of their ranges, and
// what lies just outside them.
static_assert(!unfit_at("") && !unfit_at("pocket") && !unfit_at(" ~"));
static_assert(!unfit_at("\xC2\xA0\xDF\xBF"));                         // U+00A0, U+07FF
static_assert(!unfit_at("\xE0\xA0\x80\xED\x9F\xBF\xEE\x80\x80"));     // U+0800, U+D7FF, U+E000
static_assert(!unfit_at("\xF0\x90\x80\x80\xF4\x8F\xBF\xBD"));         // U+10000, U+10FFFD
static_assert(unfit_at("caf\xE9") == 3 && unfit_at("caf\xE9s") == 3); // ISO/IEC 8859-1
static_assert(unfit_at("\x80") == 0 && unfit_at("\xBF") == 0);
static_assert(unfit_at("\xC0\x80") == 0 && unfit_at("\xC1\xBF") == 0); // longer than need be
static_assert(unfit_at("\xE0\x9F\xBF") == 0 && unfit_at("\xF0\x8F\xBF\xBF") == 0);
static_assert(unfit_at("\xED\xA0\x80") == 0 && unfit_at("\xED\xBF\xBF") == 0); // U+D800, U+DFFF
static_assert(unfit_at("\xF4\x90\x80\x80") == 0 && unfit_at("\xF5\x80\x80\x80") == 0);
static_assert(unfit_at("a\xC2") == 1 && unfit_at("a\xE2\x80") == 1 && unfit_at("a\xF0\x90\x80") == 1);
// Controls (ISO/IEC 6429: 00 to 1F, 7F, 80 to 9F), line ends, and the explicit directions of UAX #9, table 2.
static_assert(unfit_at("a\x1F") == 1 && unfit_at("a\x7F") == 1 && unfit_at("a\n") == 1 && unfit_at("\t") == 0);
static_assert(unfit_at(std::string_view("\0", 1)) == 0);
static_assert(unfit_at("a\xC2\x80") == 1 && unfit_at("a\xC2\x9B") == 1 && unfit_at("a\xC2\x9F") == 1);
static_assert(unfit_at("\xE2\x80\xA8") == 0 && unfit_at("\xE2\x80\xA9") == 0); // U+2028, U+2029
static_assert(unfit_at("\xE2\x80\xAA") == 0 && unfit_at("\xE2\x80\xAE") == 0); // U+202A, U+202E
static_assert(unfit_at("\xE2\x81\xA6") == 0 && unfit_at("\xE2\x81\xA9") == 0); // U+2066, U+2069
static_assert(!unfit_at("\xE2\x80\xA7\xE2\x80\xAF\xE2\x81\xA5\xE2\x81\xAA"));  // beside them
static_assert(unfit_at("\xEF\xBF\xBE") == 0 && unfit_at("\xEF\xBF\xBF") == 0); // no characters

TEST_CASE("what is unfit is replaced, a blank by a space and each byte that is no character by itself") {
    CHECK(fit_to_print("12\xC2\xBD in \xE2\x80\xB3") == "12\xC2\xBD in \xE2\x80\xB3");
    CHECK(fit_to_print("a\r\nb\tc") == "a  b c");
    CHECK(fit_to_print("\x1B[2J") == "\xEF\xBF\xBD[2J");
    CHECK(fit_to_print("\xE9\xE8") == "\xEF\xBF\xBD\xEF\xBF\xBD");
    CHECK(fit_to_print("\xC2\x9B") == "\xEF\xBF\xBD"); // one control of two bytes
    CHECK(fit_to_print(std::string(1, '\0')) == "\xEF\xBF\xBD");
}

TEST_CASE("sound text keeps its controls") {
    CHECK(sound_text("a\n\x1B\xC2\x9B\xE2\x80\xAE") == "a\n\x1B\xC2\x9B\xE2\x80\xAE");
    CHECK(sound_text("\xED\xA0\x80") == "\xEF\xBF\xBD\xEF\xBF\xBD\xEF\xBF\xBD");
}

TEST_CASE("whatever is given, what is printed is fit, and what was fit is as it was") {
    at_random::sampler random(3601);
    const std::string parts[] = {"a", "\xC3\xA9", "\xE2\x80", "\x80\xAE", "\x1B", "\n", "\xF0\x9F", "\xA7\xB5", "\xFF"};
    while (random.another_of(5000)) {
        std::string text;
        for (std::int64_t n = random.between(0, 9); n > 0; --n)
            text += parts[static_cast<std::size_t>(random.between(0, 8))];
        const std::string printed = fit_to_print(text);
        CHECK_FALSE(unfit_at(printed));
        CHECK(fit_to_print(printed) == printed);
        const auto at = unfit_at(text);
        CHECK(printed.substr(0, at.value_or(text.size())) == text.substr(0, at.value_or(text.size())));
        CHECK((printed == text) == !at);
        CHECK(fit_to_print(sound_text(text)) == printed);
        CHECK(sound_text(printed) == printed);
    }
}
