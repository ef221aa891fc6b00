// Bar-tacks: bars by hand, at compile time; the sum of their stitches beside roots of 50 digits at random; and what is refused.
#include "reference.hpp"
#include <turncloth/measure/read.hpp>
#include <turncloth/notions/bar_tack.hpp>

#include <doctest/doctest.h>

using namespace turncloth;
using reference::facts;

namespace {

// By hand: 12 stitches across 1/4 in are 3 in, and 4 in along: 5 in. 28 across 1/8 are 3 1/2, and 1/2 along: sqrt(12.5) = 3.5355.
static_assert(sewn_in_bar(bar_tack<inch>{4_in, "1/4"_in, 12}, "1/64"_in) == 5_in);
static_assert(sewn_in_bar(bar_tack<inch>{"1/2"_in, "1/8"_in, 28}, "1/16"_in) == "3 9/16"_in);
static_assert(bar_of_box("1/8"_in, "1/2"_in, 28) == bar_tack<inch>{"1/2"_in, "1/8"_in, 28});
static_assert(bar_of_box("1/2"_in, "1/8"_in, 28) == bar_tack<inch>{"1/2"_in, "1/8"_in, 28});
static_assert(stitches_along("1/2"_in, "1/56"_in) == 28 && stitches_along("1/2"_in, "1/55"_in) == 28);
static_assert(can_be_sewn(bar_tack<inch>{1_in, 1_in, 1}) && can_be_sewn(bar_tack<inch>{1_in, 1_in, 1'000}));

} // namespace

TEST_CASE("a bar's thread is that of its stitches, each from one side of it to the other") {
    reference::sampler random(916);
    while (random.another_of(2'000)) {
        const length<inch> across = random.inches(1) / 4, along = across + random.inches(2);
        const bar_tack<inch> bar{along, across, random.between(1, 60)};
        CHECK(can_be_sewn(bar));
        const reference::real on = reference::exact(along) / bar.stitches, over = reference::exact(across);
        reference::real sum = 0;
        for (std::int64_t k = 0; k < bar.stitches; ++k)
            sum += sqrt(on * on + over * over);
        const length<inch> step = length_of<inch>({1, random.between(1, 64)}), sewn = sewn_in_bar(bar, step);
        CHECK(reference::exact(sewn) >= sum - reference::real("1e-40"));
        CHECK(reference::exact(sewn - step) < sum);
    }
}

TEST_CASE("a bar of nothing, one wider than long, and one of too many stitches are refused") {
    const auto refused = [](const bar_tack<inch>& b) {
        CHECK_FALSE(can_be_sewn(b));
        return facts<bar_tack_error>([&] { sewn_in_bar(b, "1/16"_in); });
    };
    CHECK(refused({1_in, 0_in, 28}) == "too small: the width of a bar-tack, given 0 in, least 0 in");
    CHECK(refused({1_in, 2_in, 28}) == "too small: the length of a bar-tack, given 1 in, least 2 in");
    CHECK(refused({1_in, 1_in, 0}) == "too small: the number of a bar-tack's stitches, given 0, least 1, most 1000");
    CHECK(refused({1_in, 1_in, 1'001}) ==
          "too large: the number of a bar-tack's stitches, given 1001, least 1, most 1000");
    CHECK(facts<bar_tack_error>([] { stitches_along(0_in, 1_in); }) ==
          "too small: the length of a bar-tack, given 0 in, least 0 in");
    CHECK(facts<bar_tack_error>([] { stitches_along(1_in, 0_in); }) ==
          "too small: what a bar-tack's stitches lie apart, given 0 in, least 0 in");
    CHECK(facts<bar_tack_error>([] { stitches_along(100_in, "1/16"_in); }) ==
          "too large: the number of a bar-tack's stitches, given 1600, most 1000");
}
