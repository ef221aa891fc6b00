// testing/audit.hpp: what a tester of formulas sees.
#include <turncloth.hpp>
#include <turncloth/testing/audit.hpp>

#include <doctest/doctest.h>

#include <cmath>
#include <limits>

using namespace turncloth;

TEST_CASE("a double agrees within a graduation to either side, and not beyond") {
    static_assert(agrees(12.5, "12 1/2"_in, "1/64"_in));
    static_assert(agrees(12.515, "12 1/2"_in, "1/64"_in)); // 1/64 is 0.015625
    static_assert(!agrees(12.516, "12 1/2"_in, "1/64"_in));
    static_assert(agrees(12.485, "12 1/2"_in, "1/64"_in));
    static_assert(!agrees(12.484, "12 1/2"_in, "1/64"_in));
    static_assert(agrees(-0.5, "-1/2"_in, "1/64"_in));
    CHECK_FALSE(agrees(std::numeric_limits<double>::quiet_NaN(), 1_in, 1_in));
    CHECK_FALSE(agrees(std::numeric_limits<double>::infinity(), 1_in, 1_in));
    CHECK_FALSE(agrees(-1e300, 1_in, 1_in));
    CHECK_THROWS_AS(agrees(1.0, 1_in, 0_in), range_error);
}

TEST_CASE("an audit visits both ends and stops at the first that parts") {
    int visits = 0;
    const auto count = [&](double x) { return ++visits, x; };
    const auto same = [](length<inch> l) { return l; };
    CHECK_FALSE(audit(sizes<inch>{1_in, 2_in, "1/4"_in}, "1/64"_in, count, same).parted());
    CHECK(visits == 5);
    visits = 0;
    const auto wrong_from_two = [&](double x) { return ++visits, x < 2 ? x : x + 1; };
    const auto found = audit(sizes<inch>{1_in, 3_in, "1/4"_in}, "1/64"_in, wrong_from_two, same);
    CHECK(found.at() == 2_in);
    CHECK(found.theirs() == 3);
    CHECK(visits == 5);
    CHECK(to_text(found) == "at 2 in they say 3.000000, but 2 in = 2 in");
    CHECK(to_text(finding<inch>()) == "they agree");
    CHECK_THROWS_WITH_AS(audit(sizes<inch>{2_in, 1_in, 1_in}, 1_in, count, same),
                         "the end of a range of sizes must be at least 2 in: it was 1 in", range_error);
    CHECK_THROWS_AS(audit(sizes<inch>{1_in, 2_in, 0_in}, 1_in, count, same), range_error);
}
