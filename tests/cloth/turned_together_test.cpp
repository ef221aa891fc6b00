// Pieces that turn together: all one way, whichever is shorter, as trying each way by itself says.
#include "at_random.hpp"
#include "cloth/pieces.hpp"
#include <turncloth/cloth/lay/random.hpp>
#include <turncloth/cloth/remnants.hpp>
#include <turncloth/cloth/widths.hpp>
#include <turncloth/testing/lay_faults.hpp>

#include <doctest/doctest.h>

#include <algorithm>
#include <optional>
#include <string>
#include <vector>

using namespace turncloth;
using pieces::canvas, pieces::in, pieces::piece;

namespace {

using inch_pieces = std::vector<cloth_piece<inch>>;

cloth_piece<inch> alike(cloth_piece<inch> p) {
    p.grain = grain::turn_together;
    return p;
}

/// By hand: those that turn together with their sides exchanged, and fixed.
inch_pieces each_fixed(inch_pieces all, bool turned) {
    for (cloth_piece<inch>& p : all)
        if (p.grain == grain::turn_together) {
            p.grain = grain::fixed;
            if (turned)
                p.size = {p.size.height(), p.size.width()};
        }
    return all;
}

/// Nothing where they do not go on it.
length<inch> length_of_lay(const std::optional<lay<inch>>& of) { return of ? of->length : in(1'000); }

std::optional<lay<inch>> if_it_goes(const inch_pieces& all, const bolt<inch>& cloth) {
    try {
        return lay_out(all, cloth);
    } catch (const piece_too_wide_error&) {
        return std::nullopt;
    }
}

inch_pieces some_pieces(turncloth::detail::lay_random& chance) {
    inch_pieces all;
    for (unsigned n = 2 + chance.below(3); n > 0; --n) {
        all.push_back(piece<inch>("", 1 + chance.below(9), 1 + chance.below(9), 1 + chance.below(2)));
        if (chance.below(3) > 0)
            all.back().grain = grain::turn_together;
        else if (chance.below(2) == 0)
            all.back().grain = grain::may_turn;
    }
    return all;
}

} // namespace

TEST_CASE("a small lay is the shorter of those with all turned and with none, and proved") {
    at_random::seeded<turncloth::detail::lay_random> chance(34);
    int turned_ones = 0, refused = 0;
    while (chance.another_of(300)) {
        const inch_pieces all = some_pieces(chance);
        const bolt<inch> cloth = canvas(7 + chance.below(5));
        const auto upright = if_it_goes(each_fixed(all, false), cloth),
                   turned = if_it_goes(each_fixed(all, true), cloth), found = if_it_goes(all, cloth);
        REQUIRE(found.has_value() == (upright || turned));
        if (!found) {
            ++refused;
            continue;
        }
        for (const lay_fault& fault : lay_faults(*found, all, cloth))
            FAIL_CHECK(fault.what());
        CHECK(found->length == std::min(length_of_lay(upright), length_of_lay(turned)));
        CHECK(found->proved_best());
        turned_ones += !upright || (turned && turned->length < upright->length) ? 1 : 0;
    }
    CHECK(turned_ones > 20);
    CHECK(refused > 5);
}

TEST_CASE("two panels of one cover lie alike though apart they would take less") {
    // On 12 in: 12 x 4 and 4 x 12 lie upright one after the other, 16 in. Turned both are 16 in too. Each by itself: 8 in.
    inch_pieces all{alike(piece<inch>("front", 12, 4)), alike(piece<inch>("flap", 4, 12))};
    const auto found = lay_out(all, canvas(12));
    CHECK(found.length == in(16));
    CHECK(found.proved_best());
    CHECK(found.places[0].turned == found.places[1].turned);
    for (cloth_piece<inch>& p : all)
        p.grain = grain::may_turn;
    CHECK(lay_out(all, canvas(12)).length == in(8));
}

TEST_CASE("the checker finds one that is turned by itself") {
    inch_pieces all{piece<inch>("front", 12, 4), piece<inch>("flap", 4, 12)};
    for (cloth_piece<inch>& p : all)
        p.grain = grain::may_turn;
    const auto found = lay_out(all, canvas(12));
    for (cloth_piece<inch>& p : all)
        p.grain = grain::turn_together;
    const auto faults = lay_faults(found, all, canvas(12));
    REQUIRE(faults.size() == 1);
    CHECK(faults[0].kind == lay_fault_kind::turned_apart);
}

TEST_CASE("none is turned where one of them may not be, and one that stays decides for all") {
    bolt<inch> cloth = canvas(24);
    cloth.folded = true;
    inch_pieces all{alike(piece<inch>("front", 12, 4)), alike(piece<inch>("back", 24, 4))};
    all[1].on_fold = true;
    for (const auto& place : lay_out(all, cloth).places)
        CHECK_FALSE(place.turned);
    cloth = canvas(20);
    all[1].on_fold = false;
    all[1].size = {in(6), in(4)};
    all[1].stays = {in(0), in(0), true};
    const auto found = lay_out(all, cloth);
    CHECK(lay_faults(found, all, cloth).empty());
    for (const auto& place : found.places)
        CHECK(place.turned);
    cloth.one_way = true;
    CHECK_THROWS_AS(lay_out(all, cloth), lay_error);
}

TEST_CASE("what goes on the cloth neither way is refused with the width, and a cloth that takes one way is compared") {
    const inch_pieces all{alike(piece<inch>("front", 12, 4)), alike(piece<inch>("flap", 4, 12))};
    try {
        lay_out(all, canvas(10));
        FAIL("not refused");
    } catch (const piece_too_wide_error& refused) {
        CHECK(std::string(refused.what()) ==
              "front and what turns together with it go on the usable width of 10 in neither upright nor turned");
        CHECK(refused.facts().index == 0);
        CHECK(refused.facts().kind == fault::no_room);
    }
    const inch_pieces narrow{alike(piece<inch>("front", 12, 4)), alike(piece<inch>("flap", 8, 3))};
    const auto choices = compare_widths<inch>(narrow, {canvas(3), canvas(8)});
    CHECK(choices[0].offered == 1);
    CHECK(choices[0].lay->length == in(12)); // turned: 4 x 12 and 3 x 8 side by side are 7 in wide
    CHECK(choices[1].why_not.find("front and what turns together") == 0);
}

TEST_CASE("on remnants and on new cloth all lie one way") {
    // Upright the front goes on the scrap, and the flap is bought, 12 in; turned it is the flap's, and 12 in too.
    const remnant<inch> scrap{canvas(12), in(4)};
    const inch_pieces all{alike(piece<inch>("front", 12, 4)), alike(piece<inch>("flap", 4, 12))};
    const auto plan = lay_with_remnants<inch>(all, {scrap}, canvas(12));
    CHECK(plan.bought.length == in(12));
    CHECK(plan.proved_best());
    REQUIRE(plan.on_remnants[0].places.size() == 1);
    CHECK(plan.on_remnants[0].places[0].turned == plan.bought.places[0].turned);
    // Turned, two ties, 12 x 1 in, and two tabs, 5 x 2 in, go on the scrap; of the others neither way.
    CHECK(things_from<inch>({alike(piece<inch>("tie", 1, 12)), alike(piece<inch>("tab", 2, 5))}, {scrap}).count == 2);
    CHECK(things_from<inch>({alike(piece<inch>("tie", 1, 12)), alike(piece<inch>("band", 6, 1))}, {scrap}).count == 0);
}

TEST_CASE("who watches is shown shorter and shorter lays, a share that grows and bounds that hold") {
    inch_pieces all;
    for (int i = 0; i < 12; ++i)
        all.push_back(piece<inch>("", 3 + i % 7, 2 + i * 5 % 11, 2));
    for (cloth_piece<inch>& p : all)
        p.grain = grain::turn_together;
    length<inch> shown = in(100'000), bound{};
    fraction share = 0;
    const auto found = lay_out<inch>(all, canvas(31), {.steps = 40'000},
                                     {.improved =
                                          [&](const lay<inch>& better) {
                                              CHECK(better.length < shown);
                                              CHECK(lay_faults(better, all, canvas(31)).empty());
                                              shown = better.length;
                                              return true;
                                          },
                                      .keep_going =
                                          [&](const lay_progress<inch>& now) {
                                              CHECK(now.share > share);
                                              CHECK(now.share <= 1);
                                              CHECK(now.bound >= bound);
                                              share = now.share;
                                              bound = now.bound;
                                              return true;
                                          }});
    CHECK(found.length <= shown);
    CHECK(bound <= found.bound);
    CHECK(share > fraction(1, 2));
    int asked = 0;
    const auto stopped = lay_out<inch>(all, canvas(31), {.steps = 40'000},
                                       {.keep_going = [&](const lay_progress<inch>&) { return ++asked < 1; }});
    CHECK(asked == 1);
    CHECK(stopped.bound <= found.length);
}
