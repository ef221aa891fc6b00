// Which cloth to buy: widths compared, off-cuts kept.
#include "../vectors.hpp"
#include "at_random.hpp"
#include "cloth/pieces.hpp"
#include <turncloth/cloth/lay/random.hpp>
#include <turncloth/cloth/off_cuts.hpp>
#include <turncloth/cloth/widths.hpp>

#include <doctest/doctest.h>

#include <cstdint>
#include <vector>

using namespace turncloth;
using pieces::canvas, pieces::in, pieces::piece;

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
