// Lays with units: selvedges, folded and one-way cloth, repeats, exact fractions, and refusals by name.
#include "../vectors.hpp"
#include "cloth/pieces.hpp"
#include <turncloth/cloth/lay.hpp>
#include <turncloth/testing/lay_faults.hpp>

#include <doctest/doctest.h>

#include <cstdint>
#include <limits>
#include <string>
#include <vector>

using namespace turncloth;
using pieces::canvas, pieces::in, pieces::piece;

namespace {

length<centimetre> cm(fraction x) { return length_of<centimetre>(x); }

std::string sentence(const std::vector<cloth_piece<inch>>& pieces, const bolt<inch>& cloth) {
    try {
        lay_out(pieces, cloth);
    } catch (const lay_error& refused) {
        return refused.what();
    }
    return "";
}

} // namespace

TEST_CASE("the usable width lies inside the selvedges, or from the fold to one selvedge") {
    bolt<inch> cloth = canvas(45);
    cloth.selvedge = in({1, 2});
    CHECK(cloth.usable_width() == in(44));
    cloth.folded = true;
    CHECK(cloth.usable_width() == in(22));
}

TEST_CASE("fractions with different denominators are laid exactly") {
    // Three of 14 2/3 in just fill 44 in; the two lengths differ by 1/8 in.
    const auto found =
        lay_out<inch>({piece<inch>("pocket", {44, 3}, {73, 8}, 2), piece<inch>("flap", {44, 3}, 9)}, canvas(44));
    CHECK(found.length == in({73, 8}));
    CHECK(found.proved_best());
    CHECK(found.places.size() == 3);
    CHECK(found.use == (fraction(44, 3) * (fraction(73, 4) + 9)) / (44 * fraction(73, 8)));
}

TEST_CASE("the same pieces measured in centimetres need the same cloth") {
    const std::vector<cloth_piece<inch>> inches{piece<inch>("tray", 12, 18, 3), piece<inch>("lid", {25, 2}, 7, 5)};
    std::vector<cloth_piece<centimetre>> centimetres;
    for (const auto& p : inches)
        centimetres.push_back({.name = p.name, .size = as<centimetre>(p.size), .quantity = p.quantity});
    bolt<centimetre> cloth;
    cloth.width = as<centimetre>(in(44));
    CHECK(as<centimetre>(lay_out(inches, canvas(44)).length) == lay_out(centimetres, cloth).length);
}

TEST_CASE("one-way cloth keeps every piece upright, whatever the pieces allow") {
    cloth_piece<inch> strap = piece<inch>("strap", 40, 6, 2);
    strap.grain = grain::may_turn;
    bolt<inch> cloth = canvas(14);
    CHECK(lay_out<inch>({strap}, cloth).length == in(40));
    cloth.one_way = true;
    CHECK(sentence({strap}, cloth) ==
          "strap is 40 in wide, 26 in more than the usable width of 14 in; given a quarter turn it would fit");
}

TEST_CASE("pieces cut through folded cloth come out in pairs, an odd one leaves one over") {
    bolt<inch> cloth = canvas(44);
    cloth.folded = true;
    const auto found = lay_out<inch>({piece<inch>("side", 11, 20, 5)}, cloth);
    CHECK(found.length == in(40));
    CHECK(found.places.size() == 3);
    CHECK(found.places.front().comes_out == 2);
    CHECK(found.spare == std::vector<std::int64_t>{1});
}

TEST_CASE("a piece on the fold takes half its width, against the fold, and comes out once") {
    bolt<inch> cloth = canvas(44);
    cloth.folded = true;
    cloth_piece<inch> back = piece<inch>("back", 30, 20);
    back.on_fold = true;
    const auto found = lay_out<inch>({back, piece<inch>("strip", 7, 20, 2)}, cloth);
    CHECK(found.length == in(20));
    for (const auto& place : found.places)
        if (place.piece == 0) {
            CHECK(place.where.from_left == in(0));
            CHECK(place.where.across == in(15));
            CHECK(place.comes_out == 1);
        }
    CHECK(sentence({back}, canvas(44)) == "back is to be cut on the fold, but the cloth is not folded");
}

TEST_CASE("pieces start on the repeat, each at its own place in it") {
    bolt<inch> cloth = canvas(44);
    cloth.repeat_along = in({25, 4}); // 6 1/4 in
    cloth_piece<inch> panel = piece<inch>("panel", 40, 8, 3);
    // Each panel takes two repeats but for the last: 2 x 12 1/2 + 8.
    CHECK(lay_out<inch>({panel}, cloth).length == in(33));
    panel.match_along = in(1);
    CHECK(lay_out<inch>({panel}, cloth).length == in(34));
    cloth.folded = true;
    cloth.repeat_along = in(0);
    cloth.repeat_across = in(11);
    CHECK(sentence({piece<inch>("panel", 10, 8)}, cloth) ==
          "a repeat of 11 in across does not match itself through a fold: lay the cloth out single");
}

TEST_CASE("cuts edge to edge are listed in the cloth's own unit") {
    bolt<centimetre> cloth;
    cloth.width = cm(140);
    cloth.selvedge = cm(1);
    cloth.cutting = cutting::strips;
    const auto found =
        lay_out<centimetre>({piece<centimetre>("pocket", 46, {41, 2}, 3), piece<centimetre>("tab", 10, 8, 2)}, cloth);
    CHECK(found.length == cm({57, 2}));
    REQUIRE(!found.cuts.empty());
    CHECK(found.made_ready == cloth_part<centimetre>{cm(1), cm(0), cm(138), cm({57, 2})});
    CHECK(found.cuts.front() == cloth_cut<centimetre>{cut_direction::across, found.made_ready, cm({41, 2})});
}

TEST_CASE("cloth wider than the pieces by less than their sizes tell is cut off, and no piece grows by it") {
    bolt<inch> cloth = canvas({141, 4});
    for (const cutting way : {cutting::strips, cutting::edge_to_edge}) {
        cloth.cutting = way;
        const std::vector<cloth_piece<inch>> pieces{piece<inch>("back", 35, 10, 2)};
        const auto found = lay_out<inch>(pieces, cloth);
        for (const lay_fault& fault : lay_faults(found, pieces, cloth))
            FAIL_CHECK(fault.what());
        CHECK(found.made_ready.across == in({141, 4}));
        for (const auto& place : found.places)
            CHECK(place.where.across == in(35));
        // Once between the two, and once along each: by hand.
        REQUIRE(found.cuts.size() == 3);
        CHECK(found.cuts.back().direction == cut_direction::along);
        CHECK(found.cuts.back().at == in(35));
    }
}

TEST_CASE("improvements are shown with their units and can stop the search") {
    int shown = 0;
    const auto found = lay_out<inch>({piece<inch>("a", 13, 7, 9), piece<inch>("b", 9, {31, 4}, 7)}, canvas(44), {},
                                     {.improved = [&](const lay<inch>& better) {
                                         CHECK(better.length >= better.bound);
                                         return ++shown < 1;
                                     }});
    CHECK(shown == 1);
    CHECK(found.places.size() == 16);
}

TEST_CASE("who watches is told the share of the effort spent, the best length and the bound, with their units") {
    const std::vector pieces{piece<inch>("a", 13, {7, 2}, 9), piece<inch>("b", 9, {31, 4}, 7)};
    lay_progress<inch> before{0, in(1'000'000), {}};
    int asked = 0;
    const auto found =
        lay_out(pieces, canvas(44), {.steps = 50'000}, {.keep_going = [&](const lay_progress<inch>& now) {
                    CHECK(before.share < now.share);
                    CHECK(now.share < 1);
                    CHECK(now.best <= before.best);
                    CHECK(now.bound >= before.bound);
                    before = now;
                    return ++asked > 0;
                }});
    CHECK(asked > 2);
    CHECK(asked <= 100);
    CHECK(found.length <= before.best);
    CHECK(found.bound >= before.bound);
}

TEST_CASE("what cannot be laid is refused by name, by how much, and with the way out") {
    CHECK(sentence({piece<inch>("back", 47, 30)}, canvas(44)) ==
          "back is 47 in wide, 3 in more than the usable width of 44 in; given a quarter turn it would fit");
    CHECK(sentence({piece<inch>("", 47, 50)}, canvas(44)) ==
          "piece 1 is 47 in wide, 3 in more than the usable width of 44 in; turning it does not help");
    // 44 in is 111.76 cm: one unit throughout, which is exact for both.
    CHECK(sentence({{"back", {as<inch>(length_of<centimetre>(120)), in(30)}}}, canvas(44)) ==
          "back is 120 cm wide, 8.24 cm more than the usable width of 111.76 cm; given a quarter turn it would fit");
    CHECK(sentence({piece<inch>("tab", 2, 3, 0)}, canvas(44)) == "the quantity of tab must be at least 1: it was 0");
    CHECK(sentence({}, canvas(0)) == "the width of the cloth must be more than zero: it was 0 in");
    bolt<inch> cloth = canvas(10);
    cloth.selvedge = in(5);
    CHECK(sentence({}, cloth) == "cloth 10 in wide with selvedges of 5 in leaves nothing to lay on");
    cloth = canvas(44);
    cloth.repeat_across = in(45);
    CHECK(sentence({}, cloth) == "the repeat across the usable width must be at most 44 in: it was 45 in");
    try {
        lay_out<inch>({piece<inch>("tab", 2, 3), piece<inch>("back", {95, 2}, 30)}, canvas(44));
        FAIL("not refused");
    } catch (const piece_too_wide_error& refused) {
        const refusal& facts = refused.facts();
        CHECK(facts.kind == fault::no_room);
        CHECK(facts.index == 1);
        CHECK(facts.where == "back");
        CHECK(fraction(facts.given->numerator, facts.given->denominator) == fraction(95, 2));
        CHECK(facts.given->unit == "in");
        CHECK(facts.most->numerator == 44);
        CHECK(refused.would_turn());
    }
}

TEST_CASE("sizes without a common denominator in 64 bits are refused, not rounded") {
    std::vector<cloth_piece<inch>> pieces;
    for (const std::int64_t prime : {1'000'003, 1'000'033, 1'000'037, 1'000'039})
        pieces.push_back(piece<inch>("odd", fraction(1, prime), 1));
    CHECK_THROWS_AS(lay_out(pieces, canvas(44)), overflow_error);
}

TEST_CASE("a piece that the repeat lets start too late is refused in the caller's unit") {
    bolt<inch> cloth = canvas(44);
    cloth.repeat_across = in({45, 2});
    cloth_piece<inch> late = piece<inch>("panel", 30, 8);
    late.match_across = in(15);
    // 15 + 30 = 45 in, by hand; from 15 - 22 1/2 in the same; and at 14 in it just goes.
    for (const fraction match : {fraction(15), fraction(-15, 2), fraction(75, 2)}) {
        late.match_across = in(match);
        CHECK(sentence({late}, cloth) ==
              "panel is 30 in wide, starts 15 in into the repeat and so ends 1 in beyond the "
              "usable width of 44 in; turning it does not help");
    }
    late.match_across = in(14);
    CHECK(lay_out<inch>({late}, cloth).places.front().where.from_left == in(14));
}

TEST_CASE("more pieces than a lay can hold are refused at once, with the number allowed") {
    const auto many = [](std::int64_t a, std::int64_t b) {
        return sentence({piece<inch>("flag", 1, 2, a), piece<inch>("tab", 1, 1, b)}, canvas(44));
    };
    CHECK(many(1'000'000'000, 1) == "a lay must be of at most 100000 pieces in all: with flag it has more");
    CHECK(many(1, std::numeric_limits<std::int64_t>::max()) ==
          "a lay must be of at most 100000 pieces in all: with tab it has more");
    CHECK(many(60'000, 40'001) == "a lay must be of at most 100000 pieces in all: with tab it has more");
    try {
        lay_out<inch>({piece<inch>("flag", 1, 2, 100'001)}, canvas(44));
        FAIL("not refused");
    } catch (const lay_error& refused) {
        CHECK(refused.facts().kind == fault::does_not_fit);
        CHECK(refused.facts().given->numerator == 100'001);
        CHECK(refused.facts().most->numerator == 100'000);
        CHECK(refused.facts().where == "flag");
    }
}
