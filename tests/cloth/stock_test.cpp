// Lengths from stock in inches and centimetres: fractions stay exact, sums agree, refusals speak in the caller's units.
#include <turncloth/cloth/joined_lengths.hpp>
#include <turncloth/cloth/stock.hpp>
#include <turncloth/measure/read.hpp>
#include <turncloth/testing/stock_faults.hpp>

#include <doctest/doctest.h>

#include <string>
#include <vector>

using namespace turncloth;

TEST_CASE("ties and loops are cut from ribbon, and the plan says that fewer rolls cannot do") {
    // By hand: 8 x 22 1/2 + 12 x 4 3/4 = 237 in, and two ribbons of 108 in are 216 in.
    const auto plan = cut_from_stock<inch>({{"tie", "22 1/2"_in, 8}, {"loop", "4 3/4"_in, 12}}, {{"108"_in}});
    CHECK(plan.pieces_of_stock == 3);
    CHECK(plan.bound == 3);
    CHECK(plan.proved_best);
    CHECK(plan.wanted == "237"_in);
    CHECK(plan.lost == "0"_in);
    CHECK(plan.left == "87"_in);
    CHECK(plan.length_of_stock == "324"_in);
}

TEST_CASE("a piece that fits to the last 64th is cut, and one 64th more is not") {
    const auto plan = [](length<inch> size) { return cut_from_stock<inch>({{"loop", size, 3}}, {{"10"_in}}); };
    CHECK(plan(length_of<inch>({10, 3})).pieces_of_stock == 1);
    CHECK(plan(length_of<inch>({10, 3}) + "1/64"_in).pieces_of_stock == 2);
}

TEST_CASE("the loss of every cut, the pieces and what is left make up the stock") {
    const auto plan =
        cut_from_stock<centimetre>({{"webbing", "31.75"_cm, 7}, {"handle", "12.5"_cm, 4}}, {{"100"_cm}, {"150"_cm}},
                                   {.loss_per_cut = "0.3"_cm, .aim = stock_aim::least_length});
    CHECK(plan.wanted == "272.25"_cm);
    CHECK(plan.length_of_stock == plan.wanted + plan.lost + plan.left);
    length<centimetre> cuts;
    for (const auto& p : plan.cuttings)
        cuts += "0.3"_cm * (p.cuts * p.times);
    CHECK(plan.lost == cuts); // no cut of this plan runs out at an end
    CHECK(plan.value == 300);
    CHECK(plan.proved_best);
}

TEST_CASE("a cost may be a fraction") {
    const auto plan = cut_from_stock<inch>({{"tie", "30"_in, 4}}, {{"36"_in, {}, {5, 4}}, {"72"_in, {}, {9, 4}}},
                                           {.aim = stock_aim::least_cost});
    CHECK(plan.value == fraction(9, 2));
    CHECK(plan.pieces_of_stock == 2);
}

TEST_CASE("a piece longer than the stock is named, with by how much, in the caller's unit") {
    try {
        cut_from_stock<inch>({{"tie", "40 3/8"_in, 1}}, {{"36"_in}, {"40"_in}});
        FAIL("was accepted");
    } catch (const stock_error& e) {
        CHECK(e.facts().kind == fault::no_room);
        CHECK(e.facts().index == 0);
        CHECK(e.facts().where == "tie");
        CHECK(fraction(e.facts().given->numerator, e.facts().given->denominator) == fraction(323, 8));
        CHECK(e.facts().most->numerator == 40);
        CHECK(e.facts().most->unit == "in");
        CHECK(std::string(e.what()) == "piece 1 (tie) of 40 3/8 in is longer by 3/8 in than the longest stock, 40 in");
    }
}

TEST_CASE("too little on hand is said in the caller's unit") {
    try {
        cut_from_stock<inch>({{"tie", "20 1/2"_in, 5}}, {{"42"_in, 2}});
        FAIL("was accepted");
    } catch (const stock_runs_out_error& e) {
        CHECK(e.more_pieces() == 1);
        CHECK(e.facts().given->numerator == 2);
        CHECK(e.facts().least->numerator == 3);
        CHECK(fraction(e.length_short().numerator, e.length_short().denominator) == fraction(37, 2));
        CHECK(e.length_short().unit == "in");
        CHECK(std::string(e.what()) == "the stock on hand does not supply the pieces; it is too short "
                                       "by 18 1/2 in in all; 1 more of 42 in would do");
    }
}

static_assert(stock_effort::while_typing < stock_effort::on_a_click &&
              stock_effort::on_a_click < stock_effort::to_print);

TEST_CASE("a search that is shown to its caller ends where the caller has enough") {
    std::vector<wanted_length<inch>> ties;
    for (std::int64_t i = 0; i < 60; ++i)
        ties.push_back({"tie", length_of<inch>(fraction(180 + i * i * 37 % 301, 8)), 1});
    const std::vector<stock_length<inch>> ribbon{{"125"_in, {}, fraction(5, 2)}};
    std::vector<stock_progress> seen;
    CHECK(cutting_rules<inch>{}.effort == stock_effort::on_a_click); // what is meant where nothing is said
    cutting_rules<inch> rules{.aim = stock_aim::least_cost, .effort = 10'000'000};
    const auto whole = cut_from_stock(ties, ribbon, rules);
    rules.keep_going = [&](const stock_progress& p) {
        seen.push_back(p);
        return seen.size() < 3;
    };
    const auto early = cut_from_stock(ties, ribbon, rules);
    REQUIRE(seen.size() == 3);
    for (const stock_progress& p : seen) {
        CHECK(p.best >= whole.value);
        CHECK(p.bound <= whole.value);
        CHECK(p.share < 1);
    }
    CHECK(seen[1].share > seen[0].share);
    CHECK(early.value == seen[2].best);
    CHECK(early.bound == seen[2].bound);
    CHECK(stock_faults(early, ties, ribbon, rules).empty());
    // Five ties of 20 1/2 in need three ribbons of 42 in: with two there is nothing to show as the best.
    rules.keep_going = [&](const stock_progress& p) { return !(p.best || p.bound != 0); };
    CHECK_THROWS_AS(cut_from_stock<inch>({{"tie", "20 1/2"_in, 5}}, {{"42"_in, 2}}, rules), stock_runs_out_error);
}

TEST_CASE("nothing wanted is an empty plan, as it is an empty lay") {
    for (const stock_aim aim : {stock_aim::fewest_pieces, stock_aim::least_length, stock_aim::least_cost}) {
        const auto plan = cut_from_stock<inch>({}, {{"42"_in}}, {.loss_per_cut = "1/8"_in, .aim = aim});
        CHECK(plan.proved_best);
        CHECK(plan.cuttings.empty());
        CHECK(plan.pieces_of_stock == 0);
        CHECK(plan.length_of_stock == 0_in);
        CHECK(plan.value == 0);
        CHECK(stock_faults(plan, {}, {{"42"_in}}, {.loss_per_cut = "1/8"_in, .aim = aim}).empty());
    }
    CHECK_THROWS_AS(cut_from_stock<inch>({}, {{"0"_in}}), stock_error); // what stands there is looked at all the same
}

TEST_CASE("numbers that make no sense are refused in the caller's unit") {
    const auto cut = [](const std::vector<wanted_length<inch>>& wanted, const std::vector<stock_length<inch>>& stock,
                        const cutting_rules<inch>& rules = {}) { return cut_from_stock(wanted, stock, rules); };
    CHECK_THROWS_WITH_AS(cut({{"tie", "20"_in, 0}}, {{"42"_in}}),
                         "the quantity of piece 1 (tie) must be at least 1: it was 0", stock_error);
    CHECK_THROWS_WITH_AS(cut({{"tie", "20"_in}, {"", "0"_in}}, {{"42"_in}}),
                         "the length of piece 2 must be more than zero: it was 0 in", stock_error);
    CHECK_THROWS_WITH_AS(cut({{"tie", "20"_in}}, {{"42"_in}}, {.loss_per_cut = -"1/8"_in}),
                         "the loss per cut must be zero or more: it was -1/8 in", stock_error);
    CHECK_THROWS_WITH_AS(cut({{"tie", "20"_in}}, {}), "at least one length of stock must be given: none was",
                         stock_error);
    CHECK_THROWS_WITH_AS(cut({{"tie", "20"_in}}, {{"42"_in}, {"0"_in}}),
                         "the length of stock 2 must be more than zero: it was 0 in", stock_error);
    CHECK_THROWS_WITH_AS(cut({{"tie", "20"_in}}, {{"42"_in, -1}}),
                         "the number on hand of stock 1 must be zero or more: it was -1", stock_error);
    CHECK_THROWS_WITH_AS(cut({{"tie", "20"_in}}, {{"42"_in, {}, 0}}, {.aim = stock_aim::least_cost}),
                         "the cost of stock 1 must be more than zero: it was 0", stock_error);
    CHECK(cut({{"tie", "20"_in}}, {{"42"_in, {}, 0}}).pieces_of_stock == 1); // which asks no cost
}

TEST_CASE("the check with units passes every plan and finds one that was changed") {
    const std::vector<wanted_length<inch>> wanted{{"tie", "22 1/2"_in, 8}, {"loop", "4 3/4"_in, 12}};
    const std::vector<stock_length<inch>> stock{{"36"_in}, {"108"_in, 1}};
    for (const stock_aim aim : {stock_aim::fewest_pieces, stock_aim::least_length, stock_aim::least_cost}) {
        const cutting_rules<inch> rules{.loss_per_cut = "1/8"_in, .aim = aim};
        const auto good = cut_from_stock(wanted, stock, rules);
        CHECK(stock_faults(good, wanted, stock, rules).empty());
        const auto broken = [&](auto change) {
            auto plan = good;
            change(plan);
            return !stock_faults(plan, wanted, stock, rules).empty();
        };
        CHECK(broken([](auto& p) { p.cuttings.pop_back(); }));
        CHECK(broken([](auto& p) { p.cuttings.front().left += "1/64"_in; }));
        CHECK(broken([](auto& p) { p.wanted += "1"_in; }));
        CHECK(broken([](auto& p) { p.bound = p.value + 1; }));
    }
}

TEST_CASE("more different lengths than are planned for are refused, and as many of a length as may be are cut") {
    const std::vector<wanted_length<inch>> wanted(1001, {"tie", "20"_in});
    CHECK_THROWS_WITH_AS(cut_from_stock<inch>(wanted, {{"42"_in}}),
                         "the number of lengths wanted must be at most 1000: it was 1001", stock_error);
    const std::vector<stock_length<inch>> stock(1001, {"42"_in});
    CHECK_THROWS_WITH_AS(cut_from_stock<inch>({{"tie", "20"_in}}, stock),
                         "the number of lengths of stock must be at most 1000: it was 1001", stock_error);
    CHECK(cut_from_stock<inch>({{"tie", "20"_in}}, {stock.begin(), stock.end() - 1}).pieces_of_stock == 1);
    CHECK(cut_from_stock<inch>({{"tie", "20"_in, 1'000'000'000}}, {{"42"_in}}).pieces_of_stock == 500'000'000);
}

TEST_CASE("denominators without a common one in 64 bits are reported") {
    const auto odd = [](std::int64_t prime) { return length_of<inch>(fraction(prime + 1, prime)); };
    CHECK_THROWS_AS(cut_from_stock<inch>(
                        {{"a", odd(999983)}, {"b", odd(999979)}, {"c", odd(999961)}, {"d", odd(999959)}}, {{"10"_in}}),
                    overflow_error);
}

TEST_CASE("straps are joined where that spares stock, and the parts are lengths to cut like others") {
    // By hand: 3 straps of 60 in and one join of 1 in are 181 in; 2 pieces of 100 in hold 200 in.
    const std::vector<stock_length<inch>> webbing{{"100"_in, {}, fraction(9, 2)}};
    const joining_rules<inch> rules{
        .cutting = {.aim = stock_aim::least_cost}, .lost_in_join = "1"_in, .least_part = "6"_in};
    const auto straps = cut_with_joins<inch>({{"strap", "60"_in, 3}}, webbing, rules);
    CHECK(straps.plan.pieces_of_stock == 2);
    CHECK(straps.plan.value == 9);
    CHECK(straps.plan.proved_best);
    REQUIRE(straps.joined.size() == 1);
    CHECK(straps.joined[0].piece == 0);
    REQUIRE(straps.lengths.size() == 3);
    CHECK(straps.lengths[0].count == 2);
    CHECK(straps.lengths[straps.joined[0].first].name == "strap, join 1, part 1 of 2");
    CHECK(straps.lengths[straps.joined[0].first].size + straps.lengths[straps.joined[0].second].size == "61"_in);
    CHECK(stock_faults(straps.plan, straps.lengths, webbing, rules.cutting).empty());
}

TEST_CASE("joins: nothing is joined where that spares nothing, long pieces are, and many stay close to the bound") {
    const joining_rules<inch> rules{
        .cutting = {.loss_per_cut = "1/8"_in}, .lost_in_join = "3/2"_in, .least_part = "3"_in};
    const std::vector<stock_length<inch>> tape{{"40"_in}};
    const auto whole = cut_with_joins<inch>({{"tie", "19 7/8"_in, 4}}, tape, rules);
    CHECK(whole.joined.empty());
    CHECK(whole.plan.pieces_of_stock == 2);
    CHECK(cut_with_joins<inch>({}, tape, rules).plan.proved_best);
    const auto binding = cut_with_joins<inch>({{"binding", "70"_in, 1}}, tape, rules);
    CHECK(binding.joined.size() == 1);
    CHECK(binding.plan.pieces_of_stock == 2);
    const std::vector<wanted_length<inch>> many{{"strap", "23 1/4"_in, 100}, {"binding", "45"_in, 30}};
    const auto plan = cut_with_joins<inch>(many, tape, rules);
    CHECK(stock_faults(plan.plan, plan.lengths, tape, rules.cutting).empty());
    CHECK(plan.plan.value <= plan.plan.bound + 4); // 3,675 in and 30 joins of what must be joined
    CHECK(plan.joined.size() >= 30);
}

TEST_CASE("joins that make no sense are refused") {
    const auto cut = [](length<inch> size, const stock_length<inch>& stock, length<inch> lost, length<inch> least) {
        return cut_with_joins<inch>({{"strap", size, 2}}, {stock}, {.lost_in_join = lost, .least_part = least});
    };
    CHECK_THROWS_WITH_AS(cut("9"_in, {"10"_in}, "2"_in, "1"_in),
                         "the least part of a joined piece, 1 in, is less than the join takes, 2 in", stock_error);
    CHECK_THROWS_WITH_AS(cut("9"_in, {"10"_in}, -"1"_in, "1"_in),
                         "what a join takes must be zero or more: it was -1 in", stock_error);
    CHECK_THROWS_WITH_AS(cut("19"_in, {"10"_in}, "2"_in, "2"_in),
                         "piece 1 (strap) of 19 in is longer by 1 in than two of the longest stock joined, 18 in",
                         stock_error);
    CHECK_THROWS_WITH_AS(cut("15"_in, {"10"_in, 3}, "1"_in, "1"_in),
                         "the stock on hand does not supply the pieces, not even joined", stock_error);
    CHECK_THROWS_WITH_AS(cut_with_joins<inch>({{"tie", "1"_in, 1001}}, {{"10"_in}}, {.least_part = "1"_in}),
                         "the number of pieces that may be joined must be at most 1000: it was 1001", stock_error);
}
