// Random pieces for the outline tests: corners at increasing angles about the middle, so that no two edges cross, with
// inward corners as often as not.
#ifndef TURNCLOTH_TESTS_PANEL_RANDOM_OUTLINE_HPP
#define TURNCLOTH_TESTS_PANEL_RANDOM_OUTLINE_HPP

#include "at_random.hpp"
#include <turncloth/panel/outline.hpp>

#include <cmath>
#include <cstddef>
#include <numbers>
#include <random>
#include <vector>

namespace random_outline {

using turncloth::centimetre;
using turncloth::drafted_length_of;
using turncloth::drafted_point;
using pieces = turncloth::polygon<centimetre, double>;

class maker : public at_random::seeded<std::mt19937> {
public:
    using seeded::seeded;

    double between(double least, double most) { return std::uniform_real_distribution<double>(least, most)(*this); }
    std::size_t count(std::size_t least, std::size_t most) {
        return std::uniform_int_distribution<std::size_t>(least, most)(*this);
    }

    /// Every corner from `nearest` to `furthest` from the middle.
    pieces piece(std::size_t corners, double nearest, double furthest) {
        pieces all;
        for (std::size_t i = 0; i < corners; ++i) {
            const double angle =
                2 * std::numbers::pi * (static_cast<double>(i) + between(-0.3, 0.3)) / static_cast<double>(corners);
            const double reach = between(nearest, furthest);
            all.push_back(drafted_point<centimetre>(reach * std::cos(angle), reach * std::sin(angle)));
        }
        return all;
    }

    std::vector<turncloth::edge_allowance<centimetre>> allowances(std::size_t edges, double least, double most) {
        std::vector<turncloth::edge_allowance<centimetre>> all;
        for (std::size_t i = 0; i < edges; ++i)
            all.emplace_back(drafted_length_of<centimetre>(between(least, most)));
        return all;
    }
};

} // namespace random_outline

#endif
