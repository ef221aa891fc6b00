// std::format, where the standard library has it; elsewhere, that the header is harmless.
#include <turncloth/measure/format.hpp>
#include <turncloth/measure/read.hpp>
#include <turncloth/panel/format.hpp>

#include <doctest/doctest.h>

#include <string>

using namespace turncloth;

#ifdef __cpp_lib_format

static_assert(std::is_default_constructible_v<std::formatter<fraction>>);
static_assert(std::is_default_constructible_v<std::formatter<length<centimetre>>>);

TEST_CASE("a measurement is formatted as it is written") {
    CHECK(std::format("{}", fraction(-25, 2)) == "-12 1/2");
    CHECK(std::format("cut {} by {}", "12 1/2"_in, 30_cm) == "cut 12 1/2 in by 30 cm");
    CHECK(std::format("{1} {0}", 1_yd, 31.75_cm) == "31.75 cm 1 yd");
}

TEST_CASE("what is made of measurements is formatted too") {
    const panel<inch> pocket(finished_size(9_in, 4_in), all_round(seam("1/2"_in)));
    CHECK(std::format("{} from {}", pocket.cut(), pocket.finished()) == "10 x 5 in from 9 x 4 in");
    CHECK(std::format("{}", pocket.width_working()) == "10 in = 9 in finished + 2 x 1/2 in seam allowance");
    CHECK(std::format("{:>10}", area_of(pocket.finished())) == "  36 sq in");
    CHECK(std::format("{} of the {}", at<finished_edge>(2.5_cm), edge::left) ==
          "2.5 cm from the finished edge of the left");
}

TEST_CASE("width, fill and alignment are those of text") {
    CHECK(std::format("{:>12}|", "12 1/2"_in) == "   12 1/2 in|");
    CHECK(std::format("{:12}|", "12 1/2"_in) == "12 1/2 in   |");
    CHECK(std::format("{:.^13}|", "12 1/2"_in) == "..12 1/2 in..|");
    CHECK(std::format("{:{}}|", 3_mm, 6) == "3 mm  |");
}

TEST_CASE("a precision, which would cut a number short, is refused, and so is what no text has") {
    const auto l = "12 1/2"_in;
    for (const char* const refused : {"{:.3}", "{:12.3}", "{:.>12.3}", "{:.{}}", "{:x}", "{:f}", "{:#}", "{:+}"})
        CHECK_THROWS_AS(static_cast<void>(std::vformat(refused, std::make_format_args(l))), std::format_error);
}

#else

TEST_CASE("where <format> does not exist, the header for it still brings the writing of text") {
    CHECK(to_text("12 1/2"_in) == "12 1/2 in");
}

#endif
