// page/detail/labels.hpp and lettering.hpp: words are measured, broken and kept apart.
#include "../vectors.hpp"
#include "at_random.hpp"
#include "draw/picture.hpp"
#include <turncloth/page/detail/labels.hpp>

#include <doctest/doctest.h>

#include <algorithm>
#include <random>
#include <string>
#include <vector>

using namespace turncloth;
using drawn::dejavu_width;

TEST_CASE("labels are spread along a margin: in order, apart, within it, and no further than need be") {
    const auto spread = [](const std::vector<double>& wanted, const std::vector<double>& sizes, double from,
                           double to) {
        std::vector<detail::on_margin> labels;
        for (std::size_t i = 0; i < wanted.size(); ++i)
            labels.push_back({wanted[i], sizes[i]});
        CHECK(detail::spread(labels, from, to));
        std::vector<double> centres;
        for (const detail::on_margin& l : labels)
            centres.push_back(l.centre);
        return centres;
    };
    CHECK(spread({}, {}, 0, 10).empty());
    CHECK(spread({3, 20}, {4, 4}, 0, 30) == std::vector<double>{3, 20});             // none need move
    CHECK(spread({10, 10}, {4, 4}, 0, 30) == std::vector<double>{8, 12});            // each gives way by half
    CHECK(spread({10, 10, 13}, {4, 4, 4}, 0, 30) == std::vector<double>{7, 11, 15}); // and all three by their mean
    CHECK(spread({0, 0}, {4, 4}, 0, 30) == std::vector<double>{2, 6});               // but not off the margin
    CHECK(spread({30, 30}, {4, 4}, 0, 30) == std::vector<double>{24, 28});
    std::vector<detail::on_margin> too_many{{10, 20}, {10, 11}};
    CHECK_FALSE(detail::spread(too_many, 0, 30));
    at_random::seeded<std::mt19937> random(7);
    while (random.another_of(2000)) {
        std::vector<double> wanted, sizes;
        for (std::size_t n = 1 + random() % 12; n > 0; --n) {
            wanted.push_back(static_cast<double>(random() % 100));
            sizes.push_back(1 + static_cast<double>(random() % 8));
        }
        std::sort(wanted.begin(), wanted.end());
        const auto at = spread(wanted, sizes, 0, 100);
        REQUIRE(at.size() == wanted.size());
        CHECK(at.front() - sizes.front() / 2 > -1e-9);
        CHECK(at.back() + sizes.back() / 2 < 100 + 1e-9);
        for (std::size_t i = 1; i < at.size(); ++i)
            CHECK(at[i] - at[i - 1] > (sizes[i] + sizes[i - 1]) / 2 - 1e-9);
    }
}

TEST_CASE("the estimate of a text's width is not below that of a wide face, and wrapping keeps to it") {
    const detail::lettering by;
    for (char c = ' '; c <= '~'; ++c) {
        INFO(c);
        CHECK(by.width(std::string(1, c), 1000) >= dejavu_width(std::string(1, c), 1000) - 1e-9);
    }
    const auto lines = by.wrapped("one two three four five six", 3, 20);
    std::string joined;
    for (const std::string& line : lines) {
        CHECK(by.width(line, 3) <= 20);
        joined += (joined.empty() ? "" : " ") + line;
    }
    CHECK(joined == "one two three four five six");
    CHECK(lines.size() > 2);
    CHECK(by.wrapped("at " + detail::unbroken("1 1/2 in (3.8 cm)"), 3, 20) ==
          std::vector<std::string>{"at 1 1/2 in", "(3.8 cm)"});
    const auto one = by.wrapped("one two three", 3, 13, 1);
    REQUIRE(one.size() == 1);
    CHECK(one[0].substr(0, 3) == "one");
    CHECK(one[0].substr(one[0].size() - 3) == "...");
    CHECK(by.width(one[0], 3) <= 13);
    CHECK(by.shortened("\xC3\xA9\xC3\xA9\xC3\xA9\xC3\xA9", 3, 8) == "\xC3\xA9\xC3\xA9..."); // no half characters
}
