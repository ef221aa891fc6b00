// sheet/on_hand.hpp: what is on hand is used first, whatever is laid can be cut, each piece is cut as often as the sheet
// asks for, and what is bought is the least there is.
#include "../vectors.hpp"
#include "at_random.hpp"
#include "refused.hpp"
#include <turncloth.hpp>
#include <turncloth/cloth/cutting_out.hpp>
#include <turncloth/sheet/on_hand.hpp>
#include <turncloth/testing/lay_faults.hpp>

#include <doctest/doctest.h>

#include <cstddef>
#include <cstdint>
#include <random>
#include <string>
#include <vector>

using namespace turncloth;

namespace {

using on_hand = std::vector<cloth_on_hand<inch>>;

/// Of canvas, a back that is cut 20 x 30 in and four pockets, 9 x 12 in; a lining of another cloth.
sheet<inch> tidy() {
    project<inch> p("Seed tidy", finished_size(18_in, 28_in));
    p.add({"back", "canvas", panel(p.finished(), all_round(seam(1_in)))});
    p.add({"lining", "cotton", panel(p.finished())});
    p.add({"pocket", "canvas", panel(finished_size(8_in, 11_in), all_round(seam("1/2"_in)))}).count(4);
    return sheet_of(p);
}

cloth_wanted<inch> off_the_roll(const std::string& material) {
    return {material,
            {.width = 45_in, .selvedge = "1/2"_in, .cutting = cutting::edge_to_edge},
            {.straightening = 1_in, .sold = eighths_of_a_yard<inch>}};
}

/// How often each piece is cut in all, as the independent count of places says.
std::vector<std::int64_t> cut_in_all(const std::vector<sheet_cloth<inch>>& cloths, std::size_t pieces) {
    std::vector<std::int64_t> all(pieces);
    for (const auto& c : cloths)
        for (const auto& p : c.lay.places)
            ++all[p.piece];
    return all;
}

} // namespace

TEST_CASE("what is on hand is used first, and what is bought is the one worked out by hand") {
    // Two pockets go on each end of 20 x 12 in, side by side; the back needs 30 in of the roll. 1 in off at each end, 32 in:
    // 7.1 eighths of a yard of 4 1/2 in, so 8, 36 in. Without them the pockets go beside the back, two and two, as well: a
    // narrower roll would be needed to see a saving, so this one has 24 in.
    auto wanted = off_the_roll("canvas");
    wanted.bolt.width = 24_in;
    const auto cloths = cloths_for<inch>(tidy(), wanted,
                                         {{"first end", "canvas", 20_in, 12_in},
                                          {"rest", "cotton", 60_in, 60_in},
                                          {"second end", "canvas", 20_in, 12_in}});
    REQUIRE(cloths.size() == 3);
    CHECK(cloths[0].on_hand->name == "first end");
    CHECK(cloths[1].on_hand->name == "second end");
    CHECK(!cloths[2].on_hand);
    CHECK(cloths[2].bought.bought == 36_in);
    CHECK(cut_in_all(cloths, 2) == std::vector<std::int64_t>{1, 4});
    // All off the roll: the back, and below it two rows of two pockets, 30 + 12 + 12 in, and 2 in more: 12.4 eighths, so 13.
    const auto bought = cloths_for<inch>(tidy(), wanted, {});
    REQUIRE(bought.size() == 1);
    CHECK(bought[0].bought.bought == "58 1/2"_in);
    CHECK(bought[0].bought.bought == cloth_for<inch>(tidy(), "canvas", wanted.bolt, wanted.rules).bought.bought);
}

TEST_CASE("what is on hand is laid round its flaws, cut free, while the roll is cut from edge to edge") {
    // Wherever the back, 20 x 30 in, lies on 30 x 31 in, it covers the middle, where the hole is: so it is bought, and the
    // pockets, 9 x 12 in, go round the hole.
    const auto cloths = cloths_for<inch>(tidy(), off_the_roll("canvas"),
                                         {{"worn end",
                                           "canvas",
                                           30_in,
                                           31_in,
                                           {{.from_left = 14_in, .from_end = 12_in, .across = 2_in, .along = 2_in}}}});
    REQUIRE(cloths.size() == 2);
    CHECK(cloths[0].bolt.cutting == cutting::free);
    CHECK(cloths[1].bolt.cutting == cutting::edge_to_edge);
    CHECK(cut_in_all(cloths, 2) == std::vector<std::int64_t>{1, 4});
    for (const auto& p : cloths[0].lay.places) {
        CHECK(cloths[0].pieces[p.piece].name == "pocket");
        const cloth_part<inch>& w = p.where;
        CHECK((w.from_left + w.across <= 14_in || w.from_left >= 16_in || w.from_end + w.along <= 12_in ||
               w.from_end >= 14_in));
    }
}

TEST_CASE("where what is on hand is enough, nothing is bought; what no piece goes on is left alone") {
    const auto cloths = cloths_for<inch>(tidy(), off_the_roll("canvas"),
                                         {{"too small", "canvas", 8_in, 8_in}, {"old cover", "canvas", 40_in, 44_in}});
    REQUIRE(cloths.size() == 1);
    CHECK(cloths[0].on_hand->name == "old cover");
    CHECK(cloths[0].bought.bought == 0_in);
    CHECK(cut_in_all(cloths, 2) == std::vector<std::int64_t>{1, 4});
    CHECK(listed(cloths[0]).name() == "canvas, old cover");
}

TEST_CASE("a piece on hand is squared to its size, and cut across only where something is left of it") {
    project<inch> p("Two backs", finished_size(20_in, 30_in));
    p.add({"back", "canvas", panel(p.finished())}).count(2);
    const auto told = [&](length<inch> long_) {
        const auto c = cloths_for<inch>(sheet_of(p), off_the_roll("canvas"), {{"end", "canvas", 40_in, long_}}).at(0);
        return cutting_out<inch>(c.lay, c.pieces, {c.bolt, c.on_hand->length}, inch_ruler(8)).at(0);
    };
    CHECK(told(30_in) ==
          "cut 0: square the piece on hand to 40 x 30 in, its grain along the 30 in, and mark one end. The near "
          "side of a part is the one that lay nearest that end");
    CHECK(told(36_in) ==
          "cut 0: square the piece on hand to 40 x 36 in, its grain along the 36 in, and mark one end; cut right "
          "across, 30 in from it. The near side of a part is the one that lay nearest that end");
}

TEST_CASE("cloth with a repeat is refused where some is on hand, and a piece on hand of no size") {
    auto printed = off_the_roll("canvas");
    printed.bolt.repeat_along = 6_in;
    CHECK(cloths_for<inch>(tidy(), printed, {}).size() == 1);
    CHECK(refused::facts<lay_error>([&] {
              cloths_for<inch>(tidy(), printed, {{"end", "canvas", 20_in, 12_in}});
          }) == "unsuitable: a repeat, given 6 in");
    CHECK(refused::facts<lay_error>([] {
              cloths_for<inch>(tidy(), off_the_roll("canvas"), {{"end", "canvas", 20_in, 0_in}});
          }) == "too small: the length of a remnant, given 0 in, least 0 in");
    CHECK_THROWS_AS(cloths_for<inch>(tidy(), off_the_roll("felt"), {}), sheet_error);
}

TEST_CASE(
    "random ends on hand: each lay can be cut, lies within its cloth, and nothing more is bought than without them") {
    const auto s = tidy();
    const auto wanted = off_the_roll("canvas");
    const length<inch> without = cloth_for<inch>(s, "canvas", wanted.bolt, wanted.rules).lay.length;
    at_random::sampler random(77);
    const auto up_to = [&](int least, int most) { return std::uniform_int_distribution<int>(least, most)(random); };
    while (random.another_of(100)) {
        const auto side = [&] { return length_of<inch>(up_to(6, 40)); };
        on_hand ends;
        for (int n = up_to(0, 4); n > 0; --n) {
            const length<inch> width = side(), length_ = side();
            ends.push_back({"end " + std::to_string(n), "canvas", width, length_});
        }
        const auto cloths = cloths_for<inch>(s, wanted, ends);
        CHECK(cut_in_all(cloths, 2) == std::vector<std::int64_t>{1, 4});
        for (const auto& c : cloths) {
            if (c.on_hand)
                CHECK(c.lay.length <= c.on_hand->length);
            else
                CHECK(c.lay.length <= without);
            std::vector<cloth_piece<inch>> on_it = c.pieces;
            for (std::size_t i = 0; i < on_it.size(); ++i)
                on_it[i].quantity = cut_in_all({c}, 2)[i];
            CHECK(lay_faults(c.lay, on_it, c.bolt).empty());
        }
    }
}
