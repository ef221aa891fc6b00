// sheet/purchases.hpp: the pieces of one material and no other are laid, the lay can be cut, and the purchase is right;
// what is to be cut from stock is listed with how each piece of it is cut.
#include "../vectors.hpp"
#include "at_random.hpp"
#include <turncloth.hpp>
#include <turncloth/sheet/purchases.hpp>
#include <turncloth/testing/lay_faults.hpp>

#include <doctest/doctest.h>

#include <random>
#include <string>
#include <vector>

using namespace turncloth;

namespace {

/// Cut 20 x 30 in twice, 9 x 12 in four times; a lining of another cloth.
sheet<inch> tidy() {
    project<inch> p("Seed tidy", finished_size(18_in, 28_in));
    p.add({"back", "canvas", panel(p.finished(), all_round(seam(1_in)))}).count(2);
    p.add({"lining", "cotton", panel(p.finished())});
    p.add({"pocket", "canvas", panel(finished_size(8_in, 11_in), all_round(seam("1/2"_in)))}).count(4);
    return sheet_of(p);
}

constexpr purchase_rules<inch> by_the_eighth{.straightening = 1_in, .sold = eighths_of_a_yard<inch>};

/// What the independent checker finds wrong.
template <length_unit Unit>
std::vector<lay_fault> faults(const sheet_cloth<Unit>& c) {
    return lay_faults(c.lay, c.pieces, c.bolt);
}

/// "4 3/4 in" or "12", in order, each after its label.
std::vector<std::string> lines(const notion<inch>& n) {
    std::vector<std::string> all;
    for (const auto& d : n.details())
        all.push_back(d.what + ": " + (d.count > 0 ? std::to_string(d.count) : to_text(d.amount.value())));
    return all;
}

} // namespace

TEST_CASE("the pieces of the material are laid at their cut sizes, as often as they are cut, and no others") {
    const auto c = cloth_for<inch>(tidy(), "canvas", {.width = 45_in, .selvedge = "1/2"_in}, by_the_eighth);
    CHECK(c.material == "canvas");
    REQUIRE(c.pieces.size() == 2);
    CHECK(c.pieces[0].name == "back");
    CHECK(c.pieces[0].size == cut_size(20_in, 30_in));
    CHECK(c.pieces[0].quantity == 2);
    CHECK(c.pieces[1].name == "pocket");
    CHECK(c.pieces[1].size == cut_size(9_in, 12_in));
    CHECK(c.pieces[1].quantity == 4);
    CHECK(c.lay.places.size() == 6);
    CHECK(faults(c).empty());
    CHECK(cloth_for<inch>(tidy(), "cotton", {.width = 45_in}, by_the_eighth).lay.places.size() == 1);
}

TEST_CASE("the length to buy is the one worked out by hand") {
    // 44 in usable: two backs of 20 in side by side, 30 in; four pockets of 9 in side by side below them, 12 in more.
    // No shorter: the backs leave 4 in beside them, too little for a pocket with its grain kept. 42 in laid, 1 in off
    // at each end, 44 in: 9.78 eighths of a yard of 4 1/2 in, so 10, 45 in.
    const auto c = cloth_for<inch>(tidy(), "canvas", {.width = 45_in, .selvedge = "1/2"_in}, by_the_eighth);
    CHECK(c.lay.length == 42_in);
    CHECK(c.bought.needed == 44_in);
    CHECK(c.bought.bought == 45_in);
    // Washed first, and 1/8 shorter for it: 44 / (7/8) = 50 2/7, so 12 eighths, 54 in.
    auto washed = by_the_eighth;
    washed.change = shrinks_by(fraction(1, 8));
    CHECK(cloth_for<inch>(tidy(), "canvas", {.width = 45_in, .selvedge = "1/2"_in}, washed).bought.bought == 54_in);
}

TEST_CASE("what may turn can take less cloth, and one-way cloth forbids it") {
    // A back is 20 x 30 in: on 30 in of width it lies one above the other upright, 60 in; turned, 40 in.
    project<inch> p("Two backs", finished_size(20_in, 30_in));
    p.add({"back", "canvas", panel(p.finished())}).count(2);
    const auto s = sheet_of(p);
    CHECK(cloth_for<inch>(s, "canvas", {.width = 30_in}, by_the_eighth).lay.length == 60_in);
    const auto turned = cloth_for<inch>(s, "canvas", {.width = 30_in}, by_the_eighth, {.lies = grain::may_turn});
    CHECK(turned.lay.length == 40_in);
    CHECK(faults(turned).empty());
    CHECK(cloth_for<inch>(s, "canvas", {.width = 30_in, .one_way = true}, by_the_eighth, {.lies = grain::may_turn})
              .lay.length == 60_in);
}

TEST_CASE("lays of random projects can be cut as they stand, in every way of cutting") {
    at_random::seeded<std::mt19937_64> random(20260711);
    const auto between = [&](std::int64_t low, std::int64_t high) {
        return std::uniform_int_distribution<std::int64_t>(low, high)(random);
    };
    for (const int round : random.cases(60)) {
        project<inch> p("Tidy", finished_size(1_in, 1_in));
        const std::int64_t kinds = between(1, 5);
        for (std::int64_t k = 0; k < kinds; ++k)
            p.add(
                 {"piece " + std::to_string(k), k % 3 == 2 ? "felt" : "canvas",
                  panel(finished_size(length_of<inch>({between(16, 300), 16}), length_of<inch>({between(16, 400), 16})),
                        all_round(seam("3/8"_in)))})
                .count(between(1, 6));
        const bolt<inch> cloth{.width = 36_in,
                               .selvedge = "1/2"_in,
                               .gap = between(0, 1) == 0 ? length<inch>() : "1/8"_in,
                               .cutting = static_cast<cutting>(round % 3)};
        const auto c =
            cloth_for<inch>(sheet_of(p), "canvas", cloth, by_the_eighth,
                            {.lies = round % 2 == 0 ? grain::fixed : grain::may_turn, .effort = {.steps = 3000}});
        for (const lay_fault& f : faults(c))
            FAIL_CHECK(f.what());
        CHECK(c.bought.bought >= c.lay.length + 2_in);
    }
}

TEST_CASE("what cannot be laid is refused by name") {
    CHECK_THROWS_WITH_AS(cloth_for<inch>(tidy(), "silk", {.width = 45_in}, by_the_eighth),
                         "Seed tidy cannot be made as designed: no piece is of silk", sheet_error);
    CHECK_THROWS_WITH_AS(cloth_for<inch>(tidy(), "canvas", {.width = 16_in}, by_the_eighth),
                         "back is 20 in wide, 4 in more than the usable width of 16 in; turning it does not help",
                         piece_too_wide_error);
    CHECK_THROWS_AS(cloth_for<inch>(tidy(), "canvas", {.width = 45_in}, {}),
                    purchase_error); // sold in steps of nothing
}

TEST_CASE("cloth to buy is listed with its working, and with the bound where the lay is not proved the shortest") {
    auto c = cloth_for<inch>(tidy(), "canvas", {.width = 45_in, .selvedge = "1/2"_in}, by_the_eighth);
    c.lay.bound = 42_in;
    const auto best = listed(c);
    CHECK(best.name() == "canvas");
    REQUIRE(best.details().size() == 4);
    CHECK(best.details()[0].amount.value() == 45_in);
    CHECK(best.details()[1].amount.value() == 44_in);
    CHECK(best.details()[2].what == "length laid, the shortest possible");
    CHECK(best.details()[2].amount.value() == 42_in);
    CHECK(to_text(best.details()[3].amount) ==
          "45 in = 42 in laid + 2 x 1 in straightened ends + 1 in up to what is sold");
    c.lay.bound = 40_in;
    const auto found = listed(c);
    REQUIRE(found.details().size() == 5);
    CHECK(found.details()[2].what == "length laid");
    CHECK(found.details()[3].what == "no lay can be shorter than");
    CHECK(found.details()[3].amount.value() == 40_in);
}

TEST_CASE("metric cloth is bought by ten centimetres") {
    project<centimetre> p("Mat", finished_size(60_cm, 45_cm));
    p.add({"mat", "felt", panel(p.finished(), all_round(seam(1.5_cm)))}).count(3);
    // 63 x 48 cm: two side by side on 138 cm, the third below: 96 cm; with 2 cm off each end 100 cm, sold just so.
    const auto c = cloth_for<centimetre>(sheet_of(p), "felt", {.width = 140_cm, .selvedge = 1_cm},
                                         {.straightening = 2_cm, .sold = ten_centimetres<centimetre>});
    CHECK(c.lay.length == 96_cm);
    CHECK(c.bought.bought == 100_cm);
}

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
    CHECK(pieces[4] == "pieces of stock, at least this many are needed: 1");
    ties.rules.aim = stock_aim::least_length;
    ties.plan.bound = 200;
    const auto length = lines(listed(ties));
    CHECK(length[4] == "length of stock: 216 in");
    CHECK(length[5] == "length of stock, at least this much is needed: 200 in");
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
