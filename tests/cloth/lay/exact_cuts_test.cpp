// Every way to cut: the shortest lay of a few pieces without any search beside it, against references that list sets of
// single pieces on whole widths.
#include "at_random.hpp"
#include "cloth/lay/instances.hpp"
#include <turncloth/cloth/lay/exact_cuts.hpp>

#include <doctest/doctest.h>

#include <algorithm>
#include <cstdint>
#include <utility>
#include <vector>

using namespace turncloth;
using namespace turncloth::detail;
using detail::exact_cuts;
using detail::proof;
using lay_test::between;
using lay_test::piece;

namespace {

constexpr std::uint64_t plenty = 100'000'000;

detail::lay_problem problem_of(const std::vector<lay_piece>& pieces, std::int64_t width, cutting ways) {
    lay_cloth cloth;
    cloth.width = width;
    cloth.cutting = ways;
    return detail::prepared(pieces, cloth);
}

/// The end of what was placed, in the problem's units.
std::int64_t reached(const detail::lay_problem& problem, const std::vector<detail::laid>& placed) {
    std::int64_t end = 0;
    for (const detail::laid& p : placed)
        end = std::max(end, p.y + (p.turned ? problem.kinds[p.entry].width : problem.kinds[p.entry].length));
    return end;
}

} // namespace

TEST_CASE("the shortest of all lays is found, and nothing shorter") {
    at_random::seeded<lay_random> chance(31);
    while (chance.another_of(600)) {
        const cutting ways = chance.below(2) == 0 ? cutting::edge_to_edge : cutting::strips;
        const std::int64_t width = between(chance, 5, 16);
        std::vector<lay_piece> pieces;
        for (std::int64_t kinds = between(chance, 1, 5); kinds > 0; --kinds)
            pieces.push_back(piece(between(chance, 1, width), between(chance, 1, 13), between(chance, 1, 2),
                                   chance.below(2) == 0 ? grain::fixed : grain::may_turn));
        while (lay_test::one_by_one(pieces).size() > 7)
            pieces.pop_back();
        const std::int64_t shortest = ways == cutting::strips ? lay_test::shortest_in_strips(pieces, width)
                                                              : lay_test::shortest_edge_to_edge(pieces, width);
        const detail::lay_problem problem = problem_of(pieces, width, ways);
        REQUIRE(exact_cuts::suits(problem));
        exact_cuts exact(problem);
        CHECK(exact.solve(problem.stacked + 1, plenty) == proof::found);
        CHECK(exact.length() * problem.scale_y == shortest);
        CHECK(reached(problem, exact.placed()) == exact.length());
        CHECK(std::cmp_equal(exact.placed().size(), problem.pieces));
        exact_cuts again(problem);
        CHECK(again.solve(exact.length(), plenty) == proof::refuted);
        if (exact.steps() > 0) {
            exact_cuts hurried(problem);
            CHECK(hurried.solve(problem.stacked + 1, exact.steps() - 1) == proof::given_up);
        }
    }
}

TEST_CASE("choices too many to list, pieces on the fold and a repeat do not suit") {
    std::vector<lay_piece> pieces;
    for (std::int64_t i = 0; i < 12; ++i)
        pieces.push_back(piece(5, 5 + i));
    CHECK(exact_cuts::suits(problem_of(pieces, 40, cutting::edge_to_edge)));
    pieces.push_back(piece(6, 5));
    CHECK_FALSE(exact_cuts::suits(problem_of(pieces, 40, cutting::edge_to_edge)));
    CHECK(exact_cuts::suits(problem_of({piece(7, 9, 4095)}, 40, cutting::edge_to_edge)));
    CHECK_FALSE(exact_cuts::suits(problem_of({piece(7, 9, 4096)}, 40, cutting::edge_to_edge)));
    lay_piece half = piece(7, 9);
    half.at_edge = true;
    CHECK_FALSE(exact_cuts::suits(problem_of({half}, 40, cutting::strips)));
    lay_cloth striped;
    striped.width = 40;
    striped.cutting = cutting::edge_to_edge;
    striped.repeat_along = 4;
    CHECK_FALSE(exact_cuts::suits(detail::prepared({piece(7, 9)}, striped)));
}
