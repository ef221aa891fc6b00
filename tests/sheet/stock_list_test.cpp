// sheet/stock_list.hpp: what is to be cut from stock is listed with how each piece of it is cut.
#include <turncloth.hpp>
#include <turncloth/sheet/stock_list.hpp>

#include <doctest/doctest.h>

#include <string>
#include <vector>

using namespace turncloth;

namespace {

/// "4 3/4 in" or "12", in order, each after its label.
std::vector<std::string> lines(const notion<inch>& n) {
    std::vector<std::string> all;
    for (const auto& d : n.details())
        all.push_back(d.what + ": " + (d.count > 0 ? std::to_string(d.count) : to_text(d.amount.value())));
    return all;
}

} // namespace

TEST_CASE("ties from ribbon: the pieces of stock, how each is cut, and what is left, by hand") {
    // Four of 25 in take 100 of 108 in; five do not fit. Eight so take two pieces, each with 8 in left.
    const auto ties = stock_for<inch>("ribbon", {{"tie", 25_in, 8}}, {{108_in}});
    CHECK(lines(listed(ties)) == std::vector<std::string>{"tie, pieces: 8", "tie, each: 25 in", "stock, each: 108 in",
                                                          "pieces of stock, the fewest that will do: 2",
                                                          "length of stock: 216 in", "left over in all: 16 in",
                                                          "stock, to be cut into 4 tie: 2",
                                                          "left of each of these: 8 in"});
    CHECK(listed(ties).name() == "ribbon");
}

TEST_CASE("several pieces on one length, several lengths of stock, and a loss at every cut") {
    // A strip of 30 in and two of 14 in, each parted by a cut of 1/4 in, take 58 1/2 in: all of 58 1/2, with two cuts.
    // The other length, 20 in, holds none but a strip of 14.
    const auto strips = stock_for<inch>("chain", {{"long strip", 30_in, 1}, {"strip", 14_in, 2}},
                                        {{20_in}, {"58 1/2"_in}}, {.loss_per_cut = "1/4"_in});
    CHECK(lines(listed(strips)) ==
          std::vector<std::string>{"long strip, pieces: 1", "long strip, each: 30 in", "strip, pieces: 2",
                                   "strip, each: 14 in", "stock 1, each: 20 in", "stock 2, each: 58 1/2 in",
                                   "pieces of stock, the fewest that will do: 1", "length of stock: 58 1/2 in",
                                   "lost in cuts: 1/2 in", "left over in all: 0 in",
                                   "stock 2, to be cut into 1 long strip, 2 strip: 1", "left of each of these: 0 in"});
}

TEST_CASE("the length of stock is told to be the least where that was asked for and is proved") {
    // Two of 9 in: from one of 20 in, 20; from two of 9 in, 18.
    const auto least =
        stock_for<inch>("ribbon", {{"loop", 9_in, 2}}, {{20_in}, {9_in}}, {.aim = stock_aim::least_length});
    const auto all = lines(listed(least));
    CHECK(all[4] == "pieces of stock: 2");
    CHECK(all[5] == "length of stock, the least that will do: 18 in");
}

TEST_CASE("what is not proved says how few might do") {
    auto ties = stock_for<inch>("ribbon", {{"tie", 25_in, 8}}, {{108_in}});
    ties.plan.proved_best = false;
    ties.plan.bound = 1;
    const auto pieces = lines(listed(ties));
    CHECK(pieces[3] == "pieces of stock: 2");
    CHECK(pieces[4] == "pieces of stock without which none will do: 1");
    ties.rules.aim = stock_aim::least_length;
    ties.plan.bound = 200;
    const auto length = lines(listed(ties));
    CHECK(length[4] == "length of stock: 216 in");
    CHECK(length[5] == "length of stock without which none will do: 200 in");
}

TEST_CASE("a sheet holds it as it holds any notion, and what cannot be cut is refused") {
    project<inch> p("Hanging", finished_size(20_in, 30_in));
    p.add({"backing", "canvas", panel(p.finished())});
    auto s = sheet_of(p);
    s.notions.push_back(listed(stock_for<inch>("ribbon", {{"loop", "4 3/4"_in, 6}}, {{36_in}})));
    // 36 in hold seven of 4 3/4 in; six take 28 1/2 and leave 7 1/2.
    CHECK(to_text(s, inch_ruler(16)).find("stock, to be cut into 6 loop: 1\n  left of each of these: 7 1/2 in\n") !=
          std::string::npos);
    CHECK_THROWS_AS(stock_for<inch>("ribbon", {{"tie", 40_in, 1}}, {{36_in}}), stock_error);
}
