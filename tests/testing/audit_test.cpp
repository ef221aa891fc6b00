// testing/audit.hpp: what a tester of formulas sees.
#include <turncloth.hpp>
#include <turncloth/testing/audit.hpp>

#include <doctest/doctest.h>

#include <cmath>
#include <cstdint>
#include <limits>
#include <stdexcept>

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

TEST_CASE("one side alone: cloth that is short does not agree with cloth that is long") {
    static_assert(agrees(12.6, "12 1/2"_in, "1/8"_in, agreement::never_less));
    static_assert(!agrees(12.6, "12 1/2"_in, "1/8"_in, agreement::never_more));
    static_assert(agrees(12.4, "12 1/2"_in, "1/8"_in, agreement::never_more));
    static_assert(!agrees(12.4, "12 1/2"_in, "1/8"_in, agreement::never_less));
    static_assert(agrees(12.5, "12 1/2"_in, "1/8"_in, agreement::never_less));
    static_assert(agrees(12.5, "12 1/2"_in, "1/8"_in, agreement::never_more));
    static_assert(!agrees(12.7, "12 1/2"_in, "1/8"_in, agreement::never_less));
    const auto down = [](double x) { return std::floor(x * 8) / 8; };
    const auto up = [](length<inch> l) { return up_to(l, "1/8"_in); };
    const sizes<inch> over{1_in, 2_in, "1/16"_in};
    CHECK(audit(over, "1/8"_in, down, up).agrees());
    CHECK(audit(over, "1/8"_in, down, up, agreement::never_less).parted() == 8); // every second sixteenth
}

TEST_CASE("counts are whole, and near or the same") {
    static_assert(agrees(3, 3, 0) && !agrees(4, 3, 0) && agrees(4, 3, 1) && !agrees(5, 3, 1) && !agrees(3.5, 3, 1));
    static_assert(!agrees(4, 3, 1, agreement::never_more) && agrees(4, 3, 1, agreement::never_less));
    CHECK_FALSE(agrees(std::numeric_limits<double>::quiet_NaN(), 3, 1));
    // Pockets that fit, each so wide: a division that is rounded, where it must be cut off.
    const auto found = audit(
        combined(sizes<inch>{10_in, 12_in, 1_in}, whole_numbers{2, 4}), 0,
        [](double wide, double parts) { return std::round(wide / parts); },
        [](length<inch> wide, std::int64_t parts) { return floor(wide.value() / parts); });
    CHECK(found.cases() == 9);
    CHECK(found.parted() == 4); // 10 by 4, 11 by 2, by 3 and by 4: 2.5, 5.5, 3.67 and 2.75 go up
    REQUIRE(found.first());
    CHECK(found.first()->at<0>() == 10_in);
    CHECK(found.first()->at<1>() == 4);
    CHECK(found.first()->ours == 2);
    CHECK(to_text(found) == "4 of 9 cases part: at 10 in and 4 they say 3, but 2");
}

TEST_CASE("an audit visits both ends, counts what parts, and keeps the first and the worst") {
    int visits = 0;
    const auto count = [&](double x) { return ++visits, x; };
    const auto same = [](length<inch> l) { return l; };
    const auto all = audit(sizes<inch>{1_in, 2_in, "1/4"_in}, "1/64"_in, count, same);
    CHECK(all.agrees());
    CHECK(all.cases() == 5);
    CHECK(visits == 5);
    CHECK(to_text(all) == "they agree, in 5 cases");
    const auto wrong_from_two = [](double x) { return x < 2 ? x : x == 2.5 ? x - 3 : x + 1; };
    const auto found = audit(sizes<inch>{1_in, 3_in, "1/4"_in}, "1/64"_in, wrong_from_two, same);
    CHECK(found.parted() == 5);
    CHECK(found.first()->at() == 2_in);
    CHECK(found.first()->theirs == 3);
    CHECK(found.worst()->at() == 2.5_in);
    CHECK(to_text(found) == "5 of 9 cases part: at 2 in they say 3, but 2 in = 2 in; "
                            "farthest at 2 1/2 in they say -0.5, but 2 1/2 in = 2 1/2 in");
    const auto once = audit(sizes<inch>{2_in, 2_in, 1_in}, "1/64"_in, wrong_from_two, same);
    CHECK(to_text(once) == "1 of 1 cases parts: at 2 in they say 3, but 2 in = 2 in");
}

TEST_CASE("what is no number parts farthest of all") {
    const auto found = audit(
        sizes<inch>{1_in, 3_in, 1_in}, 1_in,
        [](double x) { return x < 2   ? 1e8
                              : x < 3 ? std::numeric_limits<double>::quiet_NaN()
                                      : x; },
        [](length<inch> l) { return l; });
    CHECK(found.parted() == 2);
    CHECK(found.first()->at() == 1_in);
    CHECK(found.worst()->at() == 2_in);
}

TEST_CASE("an exception ends its case alone, whoever throws") {
    const auto found = audit(
        sizes<inch>{-(1_in), 3_in, 1_in}, "1/64"_in,
        [](double x) { return x == 2 ? throw std::runtime_error("the cell is empty") : x + 1; },
        [](length<inch> l) { return panel(finished_size(l, 9_in), all_round(seam("1/2"_in))).cut().width(); });
    CHECK(found.cases() == 5);
    CHECK(found.parted() == 0);
    CHECK(found.not_compared() == 3);
    CHECK_FALSE(found.agrees());
    CHECK(to_text(found) ==
          "3 of 5 cases not compared, the first at -1 in: a finished size must be more than zero each way: "
          "it was -1 in wide and 9 in high");
}

TEST_CASE("a range that cannot be walked is refused") {
    const auto count = [](double x) { return x; };
    const auto same = [](length<inch> l) { return l; };
    CHECK_THROWS_WITH_AS(audit(sizes<inch>{2_in, 1_in, 1_in}, 1_in, count, same),
                         "the end of a range of sizes must be at least 2 in: it was 1 in", range_error);
    CHECK_THROWS_AS(audit(sizes<inch>{1_in, 2_in, 0_in}, 1_in, count, same), range_error);
    CHECK_THROWS_AS(audit(sizes<inch>{1_in, 2_in, 1_in}, 0_in, count, same), range_error);
    CHECK_THROWS_AS(audit(whole_numbers{2, 1}, 0, count, [](std::int64_t n) { return n; }), range_error);
}
