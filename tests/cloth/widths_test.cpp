// Which cloth to buy: widths compared, remnants used up, off-cuts kept.
#include "at_random.hpp"
#include <turncloth/cloth/lay/random.hpp>
#include <turncloth/cloth/off_cuts.hpp>
#include <turncloth/cloth/widths.hpp>

#include <doctest/doctest.h>

#include <cstdint>
#include <vector>

using namespace turncloth;

namespace {

length<inch> in(fraction x) { return length_of<inch>(x); }

cloth_piece<inch> piece(const char* name, fraction width, fraction height, std::int64_t quantity = 1) {
    return {.name = name, .size = {in(width), in(height)}, .quantity = quantity};
}

bolt<inch> canvas(fraction width) {
    bolt<inch> cloth;
    cloth.width = in(width);
    return cloth;
}

} // namespace

TEST_CASE("widths sold are in the unit asked for") {
    CHECK(widths_sold<inch>() == std::vector<length<inch>>{in(36), in(44), in(45), in(54), in(60)});
    CHECK(widths_sold<centimetre>().back() == length_of<centimetre>(150));
    CHECK(widths_sold<metre>().front() == length_of<metre>({11, 10}));
}

TEST_CASE("the width that wastes least comes first, the one too narrow last with the reason") {
    // Two side by side need 60 in; on 44 in each takes a row, and 36 in is too narrow.
    const auto choices = compare_widths<inch>({piece("tray", 30, 10, 4)}, {canvas(44), canvas(24), canvas(60)});
    REQUIRE(choices.size() == 3);
    CHECK(choices[0].offered == 2);
    CHECK(choices[0].lay->length == in(20));
    CHECK(choices[1].offered == 0);
    CHECK(choices[1].lay->length == in(40));
    CHECK(choices[2].offered == 1);
    CHECK_FALSE(choices[2].lay.has_value());
    CHECK(choices[2].why_not ==
          "tray is 30 in wide, 6 in more than the usable width of 24 in; given a quarter turn it would fit");
}

TEST_CASE("equal areas put the narrower cloth first") {
    const auto choices = compare_widths<inch>({piece("square", 10, 10, 6)}, {canvas(60), canvas(20), canvas(30)});
    CHECK(choices[0].offered == 1);
    CHECK(choices[1].offered == 2);
    CHECK(choices[2].offered == 0);
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
        const auto plan =
            lay_with_remnants<inch>(pieces, {{scrap, in(5 + chance.below(30))}, {canvas(12), in(9)}}, canvas(44));
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

TEST_CASE("off-cuts are the largest free rectangles, big enough, and apart") {
    const auto found = lay_out<inch>({piece("tray", 30, 20), piece("tab", 4, 5)}, canvas(44));
    const auto kept = off_cuts(found, in(6), in(6));
    REQUIRE(kept.size() == 1);
    CHECK(kept[0].across * kept[0].along == in(14) * in(15));
    CHECK(off_cuts(found, in(15), in(6)).empty());
}

TEST_CASE("free rectangles agree with trying every rectangle") {
    at_random::seeded<detail::lay_random> chance(32);
    while (chance.another_of(300)) {
        const int width = 1 + static_cast<int>(chance.below(8)), length = 1 + static_cast<int>(chance.below(8));
        std::vector<detail::free_rectangle<int>> taken;
        for (int i = 0; i < 3; ++i) {
            const int x = static_cast<int>(chance.below(static_cast<std::uint32_t>(width)));
            const int y = static_cast<int>(chance.below(static_cast<std::uint32_t>(length)));
            taken.push_back({x, y, std::min(width, x + 2), std::min(length, y + 2)});
        }
        int most = 0;
        for (int x = 0; x < width; ++x)
            for (int y = 0; y < length; ++y)
                for (int r = x + 1; r <= width; ++r)
                    for (int f = y + 1; f <= length; ++f) {
                        bool clear = true;
                        for (const auto& t : taken)
                            clear = clear && (r <= t.left || t.right <= x || f <= t.near || t.far <= y);
                        if (clear)
                            most = std::max(most, (r - x) * (f - y));
                    }
        const auto found = detail::free_rectangles<int>(taken, {0, 0, width, length}, 1, 1);
        const int largest = found.empty() ? 0 : (found[0].right - found[0].left) * (found[0].far - found[0].near);
        CHECK(largest == most);
    }
}

TEST_CASE("remnants of no length are refused") {
    CHECK_THROWS_AS(lay_with_remnants<inch>({piece("tab", 4, 6)}, {{canvas(8), in(0)}}, canvas(44)), lay_error);
    CHECK_THROWS_AS(lay_with_remnants<inch>({piece("tab", 4, 6, 0)}, {}, canvas(44)), lay_error);
}
