// cloth/price.hpp: what is bought, as money. Every sum here is worked by hand.
#include "refused.hpp"
#include <turncloth/cloth/price.hpp>
#include <turncloth/measure/read.hpp>

#include <doctest/doctest.h>

using namespace turncloth;

namespace {

const price_list shop{"EUR",
                      {{"canvas", read_fraction("12.50"), sold_per::a_yard},
                       {"lining", read_fraction("8.95"), sold_per::a_metre},
                       {"eyelets", read_fraction("0.15"), sold_per::one}}};

} // namespace

TEST_CASE("a length costs what its yards or metres cost, to the coin, and a half coin goes up") {
    const price &canvas = *price_of("canvas", shop), &lining = *price_of("lining", shop);
    CHECK(cost_of("31 1/2"_in, canvas, shop) == fraction(1094, 100)); // 7/8 x 12.50 = 10.9375
    CHECK(cost_of(36_in, canvas, shop) == read_fraction("12.5"));
    CHECK(cost_of(90_cm, lining, shop) == read_fraction("8.06"));  // 0.9 x 8.95 = 8.055
    CHECK(cost_of(110_cm, lining, shop) == read_fraction("9.85")); // 1.1 x 8.95 = 9.845
    CHECK(cost_of(0_in, canvas, shop) == 0);
    CHECK(cost_of(1_in, canvas, shop) == read_fraction("0.35")); // 12.50 / 36 = 0.3472
}

TEST_CASE("pieces cost so much each, in coins of any decimal") {
    const price& eyelets = *price_of("eyelets", shop);
    CHECK(cost_of(5, eyelets, shop) == read_fraction("0.75"));
    const price_list fives{"CHF", {{"eyelets", read_fraction("0.15")}, {"cord", read_fraction("0.32")}}, {1, 20}};
    CHECK(cost_of(1, fives.all[1], fives) == read_fraction("0.30")); // 6.4 coins of 0.05
    CHECK(cost_of(2, fives.all[1], fives) == read_fraction("0.65")); // 12.8 coins
    const price_list whole{"JPY", {{"cord", 120}}, 1};
    CHECK(money_text(cost_of(3, whole.all[0], whole), whole) == "360 JPY");
    CHECK(price_of("canvas", fives) == nullptr);
}

TEST_CASE("money is written with all the digits of its coin, and a finer price with its own") {
    CHECK(money_text(read_fraction("12.5"), shop) == "12.50 EUR");
    CHECK(money_text(0, shop) == "0.00 EUR");
    CHECK(money_text(read_fraction("0.05"), shop) == "0.05 EUR");
    CHECK(money_text(read_fraction("1234567.8"), shop) == "1234567.80 EUR");
    CHECK(money_text(read_fraction("0.0125"), shop) == "0.0125 EUR");
    CHECK(money_text(fraction(1, 3), shop) == "1/3 EUR");
    CHECK(money_text(3, price_list{}) == "3.00");
}

TEST_CASE("what makes no sense as a price is refused") {
    const price per_piece{"canvas", 3}, owed{"canvas", -1, sold_per::a_yard};
    CHECK_THROWS_WITH_AS(
        cost_of(1_in, per_piece, shop),
        "the price of \"canvas\" is for a piece, and a length of it is bought: give it for a yard or a metre",
        price_error);
    CHECK_THROWS_WITH_AS(cost_of(1, shop.all[0], shop),
                         "the price of \"canvas\" is for a length, and so many pieces are bought: give it for one",
                         price_error);
    CHECK_THROWS_WITH_AS(cost_of(1_in, owed, shop), "a price must be zero or more: it was -1", price_error);
    CHECK_THROWS_AS(cost_of(-1, per_piece, shop), price_error);
    CHECK_THROWS_AS(money_text(-1, shop), price_error);
    CHECK_THROWS_AS(money_text(1, price_list{"", {}, 0}), price_error);
    CHECK_THROWS_AS(money_text(1, price_list{"", {}, {1, 3}}), price_error);
}
