// Lengths from stock in whole numbers: plans can be cut, values are the least where they are said to be, and bounds
// never lie.
#include "at_random.hpp"
#include "cloth/stock/reference.hpp"
#include <turncloth/cloth/stock/check.hpp>
#include <turncloth/cloth/stock/solve.hpp>

#include <doctest/doctest.h>

#include <algorithm>
#include <cstdint>
#include <limits>
#include <random>
#include <string>
#include <vector>

using namespace turncloth;
using namespace turncloth::detail;
using stock_reference::least_value;
using stock_reference::random_problem;
using stock_reference::roll;

namespace {

std::string faults(const stock_problem& problem, const stock_plan& plan) {
    std::string all;
    for (const std::string& fault : faults_of(plan, problem))
        all += fault + "; ";
    return all;
}

} // namespace

TEST_CASE("the pieces that a length of stock yields are those that can be cut from it with the loss") {
    const auto pieces_from = [](std::int64_t stock, std::int64_t length, std::int64_t loss) {
        std::int64_t n = 0;
        while (
            plan_stock({.wanted = {{length, n + 1}}, .stock = {{stock, {}}}, .loss_per_cut = loss}).pieces_of_stock ==
            1)
            ++n;
        return n;
    };
    // By hand: 3 x 10 and two cuts of 1 are 32.
    CHECK(pieces_from(31, 10, 1) == 2);
    CHECK(pieces_from(32, 10, 1) == 3);
    CHECK(pieces_from(33, 10, 1) == 3);
    CHECK(pieces_from(30, 10, 0) == 3);
}

TEST_CASE("the last piece needs no cut where it ends at the end, and a cut that runs out there leaves nothing") {
    const auto only = [](std::int64_t stock) {
        const stock_plan plan = plan_stock({.wanted = {{10, 3}}, .stock = {{stock, {}}}, .loss_per_cut = 2});
        REQUIRE(plan.fillings.size() == 1);
        return plan.fillings.front();
    };
    CHECK(only(34).cuts == 2);
    CHECK(only(34).left == 0);
    CHECK(only(35).cuts == 3);
    CHECK(only(35).left == 0);
    CHECK(only(36).left == 0);
    CHECK(only(37).cuts == 3);
    CHECK(only(37).left == 1);
}

TEST_CASE("published questions have their published answers") {
    // V. Chvatal, Linear Programming (1983), chapter 13: rolls of 100 in; the relaxation is 452 1/4. Value from memory.
    const stock_plan paper = plan_stock({.wanted = {{45, 97}, {36, 610}, {31, 395}, {14, 211}}, .stock = {{100, {}}}});
    CHECK(paper.pieces_of_stock == 453);
    CHECK(paper.proved_best);
    // The paper machine of 5600 mm with thirteen widths, a usual example for the cutting stock problem: 73 rolls. Value
    // from memory.
    const stock_plan mill = plan_stock({.wanted = {{1380, 22},
                                                   {1520, 25},
                                                   {1560, 12},
                                                   {1710, 14},
                                                   {1820, 18},
                                                   {1880, 18},
                                                   {1930, 20},
                                                   {2000, 10},
                                                   {2050, 12},
                                                   {2100, 14},
                                                   {2140, 16},
                                                   {2150, 18},
                                                   {2200, 20}},
                                        .stock = {{5600, {}}}});
    CHECK(mill.pieces_of_stock == 73);
    CHECK(mill.proved_best);
}

TEST_CASE("every question of a whole family of small ones is answered with the least, and it is proved") {
    // Stock of 12, up to two each of the lengths 3, 4, 5 and 7, losses of 0, 1 and 2; alone and with stock of 8 beside
    // it.
    for (std::int64_t code = 1; code < 81; ++code)
        for (std::int64_t loss = 0; loss <= 2; ++loss)
            for (int second = 0; second <= 1; ++second)
                for (const stock_aim aim : {stock_aim::fewest_pieces, stock_aim::least_length}) {
                    stock_problem p{.wanted = {}, .stock = {{12, {}}}, .loss_per_cut = loss, .aim = aim};
                    if (second == 1)
                        p.stock.push_back({8, {}});
                    std::int64_t digits = code;
                    for (const std::int64_t length : {3, 4, 5, 7}) {
                        if (digits % 3 > 0)
                            p.wanted.push_back({length, digits % 3});
                        digits /= 3;
                    }
                    CAPTURE(code);
                    CAPTURE(loss);
                    const stock_plan plan = plan_stock(p);
                    CHECK(faults(p, plan) == "");
                    CHECK(plan.value == least_value(p));
                    CHECK(plan.proved_best);
                }
}

TEST_CASE("random questions are answered with the least, whatever the aim, the loss, the kinds and the limits") {
    at_random::seeded<std::mt19937> dice(20);
    int supplied = 0, proved = 0;
    while (dice.another_of(6000)) {
        const stock_problem p = random_problem(dice, 7, 3, 30);
        const auto least = least_value(p);
        const stock_plan plan = plan_stock(p);
        CHECK(plan.runs_out.has_value() != least.has_value());
        if (plan.runs_out) {
            CHECK(plan.runs_out->proved);
        } else {
            CHECK(faults(p, plan) == "");
            CHECK(plan.value == least);
            ++supplied;
            proved += plan.proved_best ? 1 : 0;
        }
    }
    CHECK(supplied > 3000);
    CHECK(proved == supplied);
}

TEST_CASE("a bound is never above the least, however little effort is allowed") {
    at_random::seeded<std::mt19937> dice(21);
    while (dice.another_of(6000)) {
        const stock_problem p = random_problem(dice, 7, 3, 40);
        const auto least = least_value(p);
        const std::int64_t effort = roll(dice, 0, 1) * roll(dice, 0, 400);
        CAPTURE(effort);
        const stock_plan plan = plan_stock(p, effort);
        if (plan.runs_out) {
            CHECK_FALSE((plan.runs_out->proved && least.has_value()));
            continue;
        }
        CHECK(faults(p, plan) == "");
        REQUIRE(least.has_value());
        CHECK(plan.bound <= *least);
        CHECK(plan.value >= *least);
    }
}

TEST_CASE("more effort never gives a worse plan, and every plan can be cut") {
    at_random::seeded<std::mt19937> dice(24);
    int gained = 0;
    while (dice.another_of(60)) {
        stock_problem p{.wanted = {}, .stock = {{1000, {}, 7}}, .loss_per_cut = roll(dice, 0, 2)};
        p.aim = static_cast<stock_aim>(roll(dice, 0, 2));
        if (roll(dice, 0, 1) == 1)
            p.stock.push_back({roll(dice, 600, 900), roll(dice, 1, 9), 5});
        for (std::int64_t left = roll(dice, 20, 90); left > 0; left -= p.wanted.back().count) {
            const std::int64_t length = roll(dice, 90, 600);
            p.wanted.push_back({length, roll(dice, 1, 3)});
        }
        stock_plan before = plan_stock(p, 0);
        for (std::int64_t effort = 1000; effort < 30'000'000; effort = effort * roll(dice, 11, 40) / 10) {
            stock_plan plan = plan_stock(p, effort);
            CAPTURE(effort);
            CHECK(faults(p, plan) == "");
            CHECK(plan.value <= before.value);
            gained += plan.value < before.value ? 1 : 0;
            before = std::move(plan);
        }
    }
    CHECK(gained > 30);
}

TEST_CASE("a search shows how far it is at even steps, and stopped there it gives what that effort gives") {
    at_random::seeded<std::mt19937> dice(25);
    int stopped = 0;
    while (dice.another_of(20)) {
        stock_problem p{.wanted = {}, .stock = {{1000, {}}}};
        for (std::int64_t i = 0; i < 60; ++i)
            p.wanted.push_back({roll(dice, 180, 480), 1});
        constexpr std::int64_t effort = 20'000'000;
        std::vector<search_state> seen;
        const stock_plan whole = plan_stock(p, effort, [&](const search_state& s) {
            seen.push_back(s);
            return true;
        });
        CHECK(seen.size() <= 101);
        if (seen.empty())
            continue; // proved at once
        for (std::size_t i = 1; i < seen.size(); ++i) {
            CHECK(seen[i].steps / (effort / 100 + 1) > seen[i - 1].steps / (effort / 100 + 1));
            CHECK(seen[i].cost <= seen[i - 1].cost);
            CHECK(seen[i].bound >= seen[i - 1].bound);
            CHECK(seen[i].bound <= whole.value);
            CHECK(seen[i].cost >= whole.value);
        }
        CHECK(whole.value == plan_stock(p, effort).value);
        const std::size_t enough = seen.size() / 2;
        std::size_t asked = 0;
        const stock_plan early = plan_stock(p, effort, [&](const search_state&) { return asked++ < enough; });
        CHECK(asked == enough + 1);
        CHECK(early.value == seen[enough].cost);
        CHECK(early.effort == seen[enough].steps);
        CHECK(plan_stock(p, early.effort).value == early.value);
        stopped += early.effort < whole.effort ? 1 : 0;
    }
    CHECK(stopped >= 5);
}

TEST_CASE("stock cut at random into pieces is put together again") {
    at_random::seeded<std::mt19937> dice(22);
    while (dice.another_of(60)) {
        const std::int64_t stock = roll(dice, 60, 400), bars = roll(dice, 5, 30);
        stock_problem p{.wanted = {}, .stock = {{stock, {}}}, .loss_per_cut = roll(dice, 0, 3)};
        for (std::int64_t bar = 0; bar < bars; ++bar) {
            std::int64_t left = stock;
            while (left > 0) {
                const std::int64_t piece = roll(dice, stock / 8, stock / 2);
                const bool last = left - piece - p.loss_per_cut < stock / 8;
                p.wanted.push_back({last ? left : piece, 1});
                left -= last ? left : piece + p.loss_per_cut;
            }
        }
        const stock_plan plan = plan_stock(p);
        CHECK(faults(p, plan) == "");
        CHECK(plan.pieces_of_stock == bars);
        CHECK(plan.proved_best);
    }
}

TEST_CASE("thousands of equal pieces cost little more than their kinds") {
    const auto lengths = [](std::int64_t many) {
        return stock_problem{.wanted = {{413, 31 * many},
                                        {377, 24 * many},
                                        {251, 45 * many},
                                        {189, 12 * many},
                                        {144, 60 * many},
                                        {91, 27 * many}},
                             .stock = {{1000, {}}, {1500, {}}},
                             .loss_per_cut = 3,
                             .aim = stock_aim::least_length};
    };
    const stock_plan few = plan_stock(lengths(1)), many = plan_stock(lengths(10'000));
    CHECK(faults(lengths(10'000), many) == "");
    CHECK(many.proved_best);
    CHECK(many.effort < 100 * few.effort + 1'000'000);
}

TEST_CASE("the same question in a finer unit has the same answer, and asked twice the same plan") {
    at_random::seeded<std::mt19937> dice(23);
    while (dice.another_of(300)) {
        stock_problem p = random_problem(dice, 12, 2, 50);
        for (auto& kind : p.stock)
            kind.on_hand.reset();
        const stock_plan plan = plan_stock(p), again = plan_stock(p);
        CHECK(plan.effort == again.effort);
        REQUIRE(plan.fillings.size() == again.fillings.size());
        for (std::size_t i = 0; i < plan.fillings.size(); ++i)
            CHECK(plan.fillings[i].pieces == again.fillings[i].pieces);
        stock_problem fine = p;
        for (auto& d : fine.wanted)
            d.length *= 8128; // of these, an inch is 64ths and a millimetre tenths
        for (auto& k : fine.stock)
            k.length *= 8128;
        fine.loss_per_cut *= 8128;
        CHECK(plan_stock(fine).pieces_of_stock == plan.pieces_of_stock);
    }
}

TEST_CASE("equal lengths asked for under two entries each get their count") {
    const stock_problem p{.wanted = {{20, 5}, {20, 4}, {30, 2}, {20, 1}}, .stock = {{70, {}}}};
    const stock_plan plan = plan_stock(p);
    CHECK(faults(p, plan) == "");
    CHECK(plan.pieces_of_stock == 4);
}

TEST_CASE("of stock that does equally well the shortest is taken") {
    const stock_plan plan = plan_stock({.wanted = {{40, 1}, {25, 1}}, .stock = {{100, {}}, {45, {}}, {66, {}}}});
    CHECK(plan.pieces_of_stock == 1);
    CHECK(plan.length_of_stock == 66);
}

TEST_CASE("what is on hand is used within its number, and the rest is bought") {
    const stock_problem p{.wanted = {{50, 6}}, .stock = {{100, 2, 1}, {120, {}, 10}}, .aim = stock_aim::least_cost};
    const stock_plan plan = plan_stock(p);
    CHECK(faults(p, plan) == "");
    CHECK(plan.value == 12);
    CHECK(plan.proved_best);
}

TEST_CASE("limited stock that does not supply the pieces says how much is short") {
    const auto thirds = plan_stock({.wanted = {{30, 10}}, .stock = {{100, 2}}, .loss_per_cut = 1}).runs_out;
    REQUIRE(thirds.has_value());
    CHECK(thirds->proved);
    CHECK(thirds->more_pieces == 2); // three from each piece of stock
    CHECK(thirds->length == 10 * 31 - 2 * 101);
    // Long enough in all, but no piece of stock holds two.
    const auto halves = plan_stock({.wanted = {{60, 3}}, .stock = {{100, 2}}}).runs_out;
    REQUIRE(halves.has_value());
    CHECK(halves->proved);
    CHECK(halves->more_pieces == 1);
    CHECK(halves->length == 0);
}

TEST_CASE("totals beyond what is counted are refused") {
    const std::int64_t huge = std::int64_t{1} << 50;
    CHECK_THROWS_WITH_AS(plan_stock({.wanted = {{huge, 3}}, .stock = {{huge, {}}}}),
                         "a total of lengths from stock, or of their costs, exceeds 1125899906842624 of their common "
                         "measure: use a coarser graduation",
                         overflow_error);
}

TEST_CASE("costs may be anything where they are not what is made least") {
    const stock_problem p{.wanted = {{30, 7}}, .stock = {{100, {}, std::numeric_limits<std::int64_t>::min()}}};
    const stock_plan plan = plan_stock(p);
    CHECK(plan.value == 3); // three of 30 from each 100
    CHECK(faults(p, plan) == "");
}

TEST_CASE("the check finds a plan that cannot be cut or does not supply") {
    const stock_problem p{.wanted = {{30, 4}, {20, 3}}, .stock = {{100, 3}}, .loss_per_cut = 2};
    const stock_plan good = plan_stock(p);
    REQUIRE(faults(p, good) == "");
    const auto broken = [&](auto change) {
        stock_plan plan = good;
        change(plan);
        return !faults_of(plan, p).empty();
    };
    CHECK(broken([](stock_plan& q) { q.fillings.pop_back(); }));
    CHECK(broken([](stock_plan& q) { ++q.fillings.front().pieces[1]; }));
    CHECK(broken([](stock_plan& q) { q.fillings.front().pieces[0] = 9; }));
    CHECK(broken([](stock_plan& q) { ++q.fillings.front().times; }));
    CHECK(broken([](stock_plan& q) { ++q.fillings.front().left; }));
    CHECK(broken([](stock_plan& q) { --q.fillings.front().cuts; }));
    CHECK(broken([](stock_plan& q) { q.fillings.front().kind = 7; }));
    CHECK(broken([](stock_plan& q) { ++q.value; }));
    CHECK(broken([](stock_plan& q) { ++q.bound; }));
    CHECK(broken([](stock_plan& q) { ++q.pieces_of_stock; }));
    CHECK(broken([](stock_plan& q) { --q.length_of_stock; }));
    CHECK(broken([](stock_plan& q) { q.proved_best = !q.proved_best; }));
    stock_problem scarce = p;
    scarce.stock.front().on_hand = good.pieces_of_stock - 1;
    CHECK_FALSE(faults_of(good, scarce).empty());
}
