// page/detail/lines_near.hpp: whether any line meets an area is what looking at every line says.
#include "at_random.hpp"
#include <turncloth/page/detail/lines_near.hpp>

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <random>
#include <vector>

using namespace turncloth;
using detail::lines_near;

TEST_CASE(
    "a line meets an area where looking at each line says so, on the page and beyond, level, upright and slanting") {
    at_random::sampler random(83);
    const auto between = [&](double a, double b) { return std::uniform_real_distribution<double>(a, b)(random); };
    // Half of all lie on the edges of the squares that the page is parted into.
    const auto even = [](double x) { return std::floor(x / 4) * 4; };
    int met = 0, asked = 0;
    while (random.another_of(500)) {
        lines_near lines(between(0, 300), between(0, 300));
        std::vector<page_segment> all;
        for (int i = 0; i < 24; ++i) {
            page_segment s{{between(-50, 350), between(-50, 350)}, {between(-50, 350), between(-50, 350)}};
            if (i % 2 == 0)
                s = {{even(s.from.x), even(s.from.y)}, {even(s.to.x), even(s.to.y)}};
            if (i % 3 == 0)
                s.to.y = s.from.y;
            if (i % 3 == 1)
                s.to.x = s.from.x;
            lines.add(s);
            all.push_back(s);
        }
        for (int i = 0; i < 40; ++i, ++asked) {
            page_area a{between(-60, 360), between(-60, 360), between(0, 40), between(0, 10)};
            if (i % 2 == 0)
                a = {even(a.x), even(a.y), even(a.width), even(a.height)};
            const bool meets =
                std::any_of(all.begin(), all.end(), [&](const page_segment& s) { return detail::meets(s, a); });
            met += meets ? 1 : 0;
            CHECK(lines.meet(a) == meets);
        }
    }
    CHECK(met * 20 > asked); // both answers are given
    CHECK(met < asked);
}
