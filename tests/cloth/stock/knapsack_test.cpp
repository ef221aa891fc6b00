// The most valuable filling of a piece of stock, and the bound that prices prove, against trying everything.
#include "at_random.hpp"
#include "cloth/stock/reference.hpp"
#include <turncloth/cloth/stock/bound.hpp>
#include <turncloth/cloth/stock/fillings.hpp>
#include <turncloth/cloth/stock/knapsack.hpp>
#include <turncloth/cloth/stock/search.hpp>

#include <doctest/doctest.h>

#include <algorithm>
#include <cstdint>
#include <random>
#include <vector>

using namespace turncloth::detail;
using stock_reference::roll;

namespace {

std::int64_t most_by_trying(const std::vector<worth>& worths, std::int64_t room, std::size_t from = 0) {
    if (from == worths.size())
        return 0;
    std::int64_t most = 0;
    for (std::int64_t n = 0; n <= worths[from].most && n * worths[from].length <= room; ++n)
        most =
            std::max(most, n * worths[from].price + most_by_trying(worths, room - n * worths[from].length, from + 1));
    return most;
}

std::vector<worth> random_worths(std::mt19937& dice, std::int64_t greatest_price) {
    std::vector<worth> worths;
    for (std::int64_t n = roll(dice, 0, 6); n > 0; --n)
        worths.push_back({roll(dice, 1, 40), roll(dice, 0, greatest_price), roll(dice, 0, 5)});
    return worths;
}

} // namespace

TEST_CASE("the best filling is worth what trying everything finds, and it is a filling") {
    at_random::seeded<std::mt19937> dice(31);
    for (const int trial : dice.cases(20000)) {
        const std::vector<worth> worths = random_worths(dice, trial % 2 == 0 ? 20 : 1'000'000'000);
        const std::int64_t room = roll(dice, 0, 120);
        const filling f = best_fill(worths, room);
        CHECK(f.value == most_by_trying(worths, room));
        CHECK(f.upper == f.value);
        std::int64_t length = 0, value = 0;
        REQUIRE(f.take.size() == worths.size());
        for (std::size_t i = 0; i < worths.size(); ++i) {
            CHECK(f.take[i] >= 0);
            CHECK(f.take[i] <= worths[i].most);
            length += f.take[i] * worths[i].length;
            value += f.take[i] * worths[i].price;
        }
        CHECK(length <= room);
        CHECK(value == f.value);
    }
}

TEST_CASE("a search for a filling that is stopped early still says no less than the truth") {
    at_random::seeded<std::mt19937> dice(32);
    int stopped = 0;
    while (dice.another_of(20000)) {
        const std::vector<worth> worths = random_worths(dice, 1000);
        const std::int64_t room = roll(dice, 0, 120);
        const filling f = best_fill(worths, room, roll(dice, 0, 12));
        const std::int64_t truth = most_by_trying(worths, room);
        CHECK(f.value <= truth);
        CHECK(f.upper >= truth);
        stopped += f.value < f.upper ? 1 : 0;
    }
    CHECK(stopped > 1000);
}

TEST_CASE("whatever the prices, they prove no bound above the least") {
    at_random::seeded<std::mt19937> dice(33);
    int tight = 0;
    for (const int trial : dice.cases(20000)) {
        stock_task task;
        stock_rest rest;
        turncloth::detail::stock_problem problem{.wanted = {}, .stock = {}, .aim = turncloth::stock_aim::least_cost};
        std::vector<std::int64_t> prices;
        for (std::int64_t size = roll(dice, 10, 20); size > 0 && task.size.size() < 4; size -= roll(dice, 1, 6)) {
            task.size.push_back(size);
            rest.wanted.push_back(roll(dice, 1, 2));
            problem.wanted.push_back({size, rest.wanted.back()});
            prices.push_back(trial % 3 == 0 ? size : roll(dice, 0, 30));
        }
        for (int kind = 0; kind < 3; ++kind) {
            const bool endless = kind == 0 || roll(dice, 0, 1) == 0;
            task.kinds.push_back({roll(dice, 20, 40), roll(dice, 1, 5)});
            rest.on_hand.push_back(endless ? no_limit : roll(dice, 0, 2));
            problem.stock.push_back({task.kinds.back().room, std::nullopt, task.kinds.back().cost});
            if (!endless)
                problem.stock.back().on_hand = rest.on_hand.back();
        }
        const std::int64_t least = *stock_reference::least_value(problem);
        const price_proof proof(task, rest, prices, roll(dice, 0, 1) == 0 ? 5 : 1'000'000);
        CHECK(proof.bound() <= least);
        tight += proof.bound() == least ? 1 : 0;
    }
    CHECK(tight > 2000);
}

TEST_CASE("a filling dearer than a bound allows is not listed, and none that is needed is missing") {
    // At the prices 5, 3 of the lengths 5, 3 in stock of 8, two of each: the only plan of cost 2 cuts 5 + 3 twice.
    const stock_task task{{5, 3}, {{8, 1}}};
    const stock_rest rest{{2, 2}, {no_limit}};
    const price_proof proof(task, rest, {5, 3}, 1000);
    CHECK(proof.bound() == 2);
    const filling_list two = filling_lister(task, rest, 0, proof, 1000).run(2);
    REQUIRE(two.fillings.size() == 1);
    CHECK(two.fillings.front().pieces == stock_fill{0, {{0, 1}, {1, 1}}}.pieces);
    CHECK(two.complete);
    CHECK(filling_lister(task, rest, 1, proof, 1000).run(2).fillings.size() == 1);
    CHECK(filling_lister(task, rest, 1, proof, 1000).run(3).fillings.size() == 2);
}

TEST_CASE("totals that no pieces of stock cost are passed over") {
    // By hand: of 7 and 11 come 7, 11, 14, 18, 21, 22, ...; with one 7 alone 7, 11, 18, 22, ...
    const stock_task task{{1}, {{7, 7}, {11, 11}}};
    const possible_costs endless(task, {{1}, {no_limit, no_limit}}, 22);
    CHECK(endless.from(12) == 14);
    CHECK(endless.from(14) == 14);
    CHECK(endless.below(14) == 11);
    CHECK(endless.below(7) == 0);
    const possible_costs one_seven(task, {{1}, {1, no_limit}}, 22);
    CHECK(one_seven.from(12) == 18);
    CHECK(one_seven.below(22) == 18);
    const possible_costs two_elevens(task, {{1}, {0, 2}}, 22);
    CHECK(two_elevens.from(12) == 22);
}
