// What is on hand used first: the least new cloth to buy, and what remnants make by themselves.
#include "at_random.hpp"
#include "cloth/pieces.hpp"
#include "cloth/small_jobs.hpp"
#include <turncloth/cloth/lay/random.hpp>
#include <turncloth/cloth/remnants.hpp>
#include <turncloth/measure/read.hpp>

#include <doctest/doctest.h>

#include <cstdint>
#include <vector>

using namespace turncloth;
using namespace turncloth::literals;
using pieces::canvas, pieces::in, pieces::piece;

TEST_CASE("what is bought decides which pieces go on a remnant, not how full it is") {
    // The strip fills more of the remnant (440 of 480 square inches) than the three squares (432), and leaves 12 in to
    // buy for them; with the squares on it 11 in is bought for the strip.
    const auto plan = lay_with_remnants<inch>({piece("square", 12, 12, 3), piece("strip", 40, 11)},
                                              {{canvas(40), in(12)}}, canvas(44));
    CHECK(plan.on_remnants[0].places.size() == 3);
    CHECK(plan.on_remnants[0].use == fraction(9, 10));
    CHECK(plan.bought.length == in(11));
    CHECK(plan.proved_best());
}

TEST_CASE("no plan of a small job buys more than the best there is, and each bound holds") {
    at_random::seeded<detail::lay_random> chance(41);
    while (chance.another_of(60)) {
        const small_jobs::job job(chance);
        const auto plan = lay_with_remnants<inch>(job.pieces, job.remnants, canvas(small_jobs::new_width));
        const length<inch> least = in(small_jobs::least_bought(job.kinds, job.grids, small_jobs::new_width));
        CHECK(plan.bought.length == least);
        CHECK(plan.bound <= least);
    }
}

TEST_CASE("larger jobs are mended: never more bought than by filling the remnants in turn") {
    // Six times the first case: more pieces than can be shared out in every way. With squares on all six remnants six
    // strips are bought; with a strip on each, by area, 72 in would be bought for the squares.
    const std::vector<remnant<inch>> on_hand(6, {canvas(40), in(12)});
    const auto plan =
        lay_with_remnants<inch>({piece("square", 12, 12, 18), piece("strip", 40, 11, 6)}, on_hand, canvas(44));
    CHECK(plan.bought.length == in(66));
    CHECK(plan.bound <= plan.bought.length);
}

TEST_CASE("how many things the remnants make agrees with trying") {
    at_random::seeded<detail::lay_random> chance(43);
    while (chance.another_of(40)) {
        small_jobs::job job(chance);
        for (std::size_t i = 0; i < job.pieces.size(); ++i)
            job.pieces[i].quantity = job.kinds[i].left = 1;
        const remnant_yield made = things_from<inch>(job.pieces, job.remnants);
        const auto possible = [&](std::int64_t n) {
            std::vector<small_jobs::kind> kinds = job.kinds;
            for (small_jobs::kind& k : kinds)
                k.left = static_cast<int>(n);
            return small_jobs::filling(kinds, job.grids).possible();
        };
        CHECK((made.count == 0 || possible(made.count)));
        CHECK_FALSE(possible(made.count + 1));
        CHECK(made.at_most >= made.count);
    }
}

TEST_CASE("of things without number so many are looked for as a lay has room for, and the bound is by area") {
    const std::vector<remnant<inch>> long_cloth{{canvas(1000), in(1'000'000)}};
    const remnant_yield tabs = things_from<inch>({piece("tab", 1, 1, 40'000)}, long_cloth);
    CHECK(tabs.count == 2);        // of 40,000 pieces each: a lay has at most 100,000
    CHECK(tabs.at_most == 25'000); // 1000 x 1000000 sq in over 40000
    CHECK_FALSE(tabs.proved_best());
}

TEST_CASE("a thing with a piece that goes on no remnant is made from none of them") {
    const remnant_yield none =
        things_from<inch>({piece("tab", 2, 2), piece("back", 20, 20)}, {{canvas(8), in(20)}, {canvas(30), in(9)}});
    CHECK(none.count == 0);
    CHECK(none.proved_best());
}

TEST_CASE("remnants are filled first and the rest is bought") {
    const std::vector<cloth_piece<inch>> pieces{piece("back", 30, 40), piece("pocket", 10, 12, 6)};
    const auto plan = lay_with_remnants<inch>(pieces, {{canvas(30), in(12)}, {canvas(9), in(90)}}, canvas(44));
    REQUIRE(plan.on_remnants.size() == 2);
    CHECK(plan.on_remnants[0].places.size() == 3);
    CHECK(plan.on_remnants[0].use == fraction(1));
    CHECK(plan.on_remnants[1].places.empty());
    CHECK(plan.bought.length == in(40));
    std::int64_t pockets = 0;
    for (const auto& place : plan.bought.places)
        pockets += place.piece == 1 ? 1 : 0;
    CHECK(pockets == 3);
}

TEST_CASE("where remnants hold everything nothing is bought") {
    const auto plan = lay_with_remnants<inch>({piece("tab", 4, 6, 4)}, {{canvas(8), in(20)}}, canvas(44));
    CHECK(plan.on_remnants[0].places.size() == 4);
    CHECK(plan.on_remnants[0].length == in(12));
    CHECK(plan.on_remnants[0].use == fraction(12, 20));
    CHECK(plan.bought.places.empty());
    CHECK(plan.bought.length == in(0));
    CHECK(plan.proved_best());
}

TEST_CASE("a remnant leaves what no piece lies on, to its end") {
    const std::vector<remnant<inch>> on_hand = {{canvas(8), in(20)}, {canvas(3), in(30)}};
    const auto plan = lay_with_remnants<inch>({piece("tab", 4, 6, 4)}, on_hand, canvas(44));
    const auto left = off_cuts(plan.on_remnants[0], on_hand[0], 1_in, 1_in);
    REQUIRE(left.size() == 1);
    CHECK(left[0] == cloth_part<inch>{in(0), in(12), in(8), in(8)});
    CHECK(off_cuts(plan.on_remnants[1], on_hand[1], 1_in, 1_in) ==
          std::vector{cloth_part<inch>{in(0), in(0), in(3), in(30)}});
    CHECK(off_cuts(plan.on_remnants[0], on_hand[0], 1_in, 9_in).empty());
}

TEST_CASE("a remnant cut from edge to edge leaves its cuts' left-overs and its end") {
    remnant<inch> scrap{canvas(8), in(20)};
    scrap.cloth.cutting = cutting::edge_to_edge;
    const auto plan = lay_with_remnants<inch>({piece("tab", 5, 6)}, {scrap}, canvas(44));
    CHECK(off_cuts(plan.on_remnants[0], scrap, 1_in, 1_in) ==
          std::vector{cloth_part<inch>{in(0), in(6), in(8), in(14)}, cloth_part<inch>{in(5), in(0), in(3), in(6)}});
}

TEST_CASE("pieces on remnants keep inside them, apart, and none is lost or made twice") {
    at_random::seeded<detail::lay_random> chance(31);
    while (chance.another_of(100)) {
        std::vector<cloth_piece<inch>> pieces;
        for (int i = 0; i < 5; ++i)
            pieces.push_back(piece("p", 1 + chance.below(20), 1 + chance.below(20), 1 + chance.below(4)));
        bolt<inch> scrap = canvas(5 + chance.below(25));
        scrap.folded = chance.below(2) == 0;
        scrap.cutting = static_cast<cutting>(chance.below(3));
        const auto plan = lay_with_remnants<inch>(pieces, {{scrap, in(5 + chance.below(30))}, {canvas(12), in(9)}},
                                                  canvas(44), {.steps = 4'000});
        std::vector<std::int64_t> made(pieces.size(), 0);
        const auto count = [&](const lay<inch>& part) {
            for (std::size_t i = 0; i < part.places.size(); ++i) {
                const cloth_part<inch>& a = part.places[i].where;
                made[part.places[i].piece] += part.places[i].comes_out;
                CHECK(a.from_end + a.along <= part.length);
                for (std::size_t j = 0; j < i; ++j) {
                    const cloth_part<inch>& b = part.places[j].where;
                    const bool apart = a.from_left + a.across <= b.from_left || b.from_left + b.across <= a.from_left ||
                                       a.from_end + a.along <= b.from_end || b.from_end + b.along <= a.from_end;
                    CHECK(apart);
                }
            }
            for (std::size_t i = 0; i < part.spare.size(); ++i)
                made[i] -= part.spare[i];
        };
        for (const auto& part : plan.on_remnants)
            count(part);
        count(plan.bought);
        for (std::size_t i = 0; i < pieces.size(); ++i)
            CHECK(made[i] == pieces[i].quantity);
    }
}

TEST_CASE("a remnant too small for all is filled as full as it can be") {
    // Of these, 12 x 5 and 8 x 5 just cover 20 x 5; the longest first would leave a corner.
    const auto plan = lay_with_remnants<inch>(
        {piece("a", 12, 5), piece("b", 9, 4), piece("c", 8, 5), piece("d", 15, 3)}, {{canvas(20), in(5)}}, canvas(44));
    CHECK(plan.on_remnants[0].use == fraction(1));
}

TEST_CASE("remnants of no length are refused") {
    CHECK_THROWS_AS(lay_with_remnants<inch>({piece("tab", 4, 6)}, {{canvas(8), in(0)}}, canvas(44)), lay_error);
    CHECK_THROWS_AS(lay_with_remnants<inch>({piece("tab", 4, 6, 0)}, {}, canvas(44)), lay_error);
}
