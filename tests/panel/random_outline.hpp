// Random pieces for the outline tests: corners at increasing angles about the middle, so that no two edges cross, with
// inward corners as often as not.
#ifndef TURNCLOTH_TESTS_PANEL_RANDOM_OUTLINE_HPP
#define TURNCLOTH_TESTS_PANEL_RANDOM_OUTLINE_HPP

#include "at_random.hpp"
#include <turncloth/panel/outline.hpp>

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <initializer_list>
#include <numbers>
#include <random>
#include <utility>
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

    /// Convex, an L, a T, a U, a star, or one side of it a curve, an inward or outward arc in many edges: turned by any angle
    /// or, with sizes of whole and half centimetres, not at all, so that lines fall on each other.
    pieces of_any_kind() {
        const bool on_grid = count(0, 2) == 0;
        const auto size = [&](double least, double most) {
            return on_grid ? std::round(2 * between(least, most)) / 2 : between(least, most);
        };
        const double w = size(4, 30), h = size(4, 30), in = size(1, 3.5), deep = size(1, 3.5);
        pieces all;
        const auto corners = [&](std::initializer_list<std::pair<double, double>> points) {
            for (const auto& [x, y] : points)
                all.push_back(drafted_point<centimetre>(x, y));
        };
        switch (count(0, 5)) {
        case 0:
            all = piece(count(3, 9), 20, 20);
            break;
        case 1:
            corners({{0, 0}, {w, 0}, {w, deep}, {in, deep}, {in, h}, {0, h}});
            break;
        case 2:
            corners({{0, 0},
                     {w, 0},
                     {w, deep},
                     {w - in / 2, deep},
                     {w - in / 2, h},
                     {in / 2, h},
                     {in / 2, deep},
                     {0, deep}});
            break;
        case 3:
            corners({{0, 0},
                     {w + in, 0},
                     {w + in, h},
                     {w / 2 + in, h},
                     {w / 2 + in, h - deep},
                     {w / 2, h - deep},
                     {w / 2, h},
                     {0, h}});
            break;
        case 4:
            all = piece(count(5, 16), between(3, 20), 30);
            break;
        default:
            corners({{0, 0}, {w, 0}, {w, h}});
            add_arc(all, {w - in / 4, h}, between(0.2, 0.5) * std::min(w - in / 2, h), count(0, 2) > 0);
            corners({{0, h}});
        }
        return on_grid ? all : turned(std::move(all), between(0, 7));
    }

    std::vector<turncloth::edge_allowance<centimetre>> allowances(std::size_t edges, double least, double most) {
        std::vector<turncloth::edge_allowance<centimetre>> all;
        for (std::size_t i = 0; i < edges; ++i)
            all.emplace_back(drafted_length_of<centimetre>(between(least, most)));
        return all;
    }

    /// Of its own for each edge, in five one or two of none; as often as not of whole and half centimetres.
    std::vector<turncloth::edge_allowance<centimetre>> allowances_or_none(std::size_t edges, double most) {
        auto all = allowances(edges, 0, most);
        const bool on_grid = count(0, 1) == 0;
        for (auto& each : all)
            each = drafted_length_of<centimetre>(count(0, 3) == 0 ? 0
                                                 : on_grid        ? std::round(2 * each.allowance.value()) / 2
                                                                  : each.allowance.value());
        return all;
    }

private:
    /// Half an ellipse from a point to the left. Not of a circle: square to the end of a chord of that lies the other end of
    /// a diameter, where strips would touch but for the rounding of doubles.
    void add_arc(pieces& all, std::pair<double, double> from, double radius, bool inward) {
        const std::size_t edges = count(4, 40);
        for (std::size_t i = 0; i <= edges; ++i) {
            const double angle = std::numbers::pi * static_cast<double>(i) / static_cast<double>(edges);
            all.push_back(
                drafted_point<centimetre>(from.first - radius + radius * std::cos(angle),
                                          from.second + (inward ? -radius : radius) * 0.97 * std::sin(angle)));
        }
    }
    static pieces turned(pieces all, double angle) {
        for (auto& p : all)
            p = drafted_point<centimetre>(p.x.value() * std::cos(angle) - p.y.value() * std::sin(angle),
                                          p.x.value() * std::sin(angle) + p.y.value() * std::cos(angle));
        return all;
    }
};

} // namespace random_outline

#endif
