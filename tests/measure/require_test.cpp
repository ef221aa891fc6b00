// measure/require.hpp and measure/error.hpp: every refusal says one sentence, and the same as data.
#include <turncloth/measure/read.hpp>
#include <turncloth/measure/require.hpp>

#include <doctest/doctest.h>

#include <string>

using namespace turncloth;

namespace {

// What is allowed passes in a constant expression.
static_assert((require_more_than_zero<range_error>("1/64"_in, "a seam allowance"), true));
static_assert((require_not_negative<range_error>(0_cm, "an inset"), true));
static_assert((require_at_least<range_error>(3, 3, "the number of parts"), true));
static_assert((require_at_most<range_error>(fraction(1, 2), fraction(1, 2), "a part"), true));
static_assert((require_between<range_error>(0_in, 2_in, 2_in, "an inset"), true));
static_assert((require_index<range_error>(3, 4, "an edge"), true));

/// What a call refuses.
template <class Call>
error refused(Call call) {
    try {
        call();
    } catch (const error& e) {
        return e;
    }
    FAIL("nothing was refused");
    return {"", {}};
}

} // namespace

TEST_CASE("a refusal says what was given and what is allowed, in words and as data") {
    const error e = refused([] { require_more_than_zero<range_error>(-("1/4"_in), "a seam allowance"); });
    CHECK(std::string(e.what()) == "a seam allowance must be more than zero: it was -1/4 in");
    CHECK(e.facts().kind == fault::too_small);
    CHECK(e.facts().what == "a seam allowance");
    REQUIRE(e.facts().given);
    CHECK(e.facts().given->numerator == -1);
    CHECK(e.facts().given->denominator == 4);
    CHECK(e.facts().given->unit == "in");
    CHECK(e.facts().least->numerator == 0);
    CHECK_FALSE(e.facts().most);
}

TEST_CASE("both limits are named, with the reason for them") {
    const error e =
        refused([] { require_between<range_error>(0_cm, 3_cm, 2_cm, "the inset of stitching", "so that it holds"); });
    CHECK(std::string(e.what()) == "the inset of stitching must be from 0 to 2 cm, so that it holds: it was 3 cm");
    CHECK(e.facts().kind == fault::too_large);
    CHECK(e.facts().most->numerator == 2);
    CHECK(e.facts().most->unit == "cm");
}

TEST_CASE("counts and numbers without a unit are refused alike") {
    CHECK(std::string(refused([] { require_at_least<range_error>(0, 1, "the number of parts"); }).what()) ==
          "the number of parts must be at least 1: it was 0");
    CHECK(std::string(refused([] { require_not_negative<range_error>(fraction(-1, 3), "waste"); }).what()) ==
          "waste must be zero or more: it was -1/3");
    const error e = refused([] { require_index<range_error>(4, 4, "an edge"); });
    CHECK(std::string(e.what()) == "an edge must be numbered from 0 to 3: it was 4");
    CHECK(e.facts().most->numerator == 3);
    CHECK(refused([] { require_index<range_error>(-1, 4, "an edge"); }).facts().kind == fault::too_small);
}

TEST_CASE("however long a text is, a refusal quotes a little of it, in whole characters") {
    const std::string long_text = std::string(59, 'x') + "\xC3\xBC" + std::string(10'000'000, 'y');
    const error e = refused([&] { read_length<inch>(long_text); });
    CHECK(std::string(e.what()).size() < 300);
    CHECK(std::string(e.what()).find("\"" + std::string(59, 'x') + "...\"") != std::string::npos);
    CHECK(e.facts().kind == fault::unreadable);
    CHECK(e.facts().index == 0U);
}
