#include "at_random.hpp"
#include "cloth/lay/instances.hpp"
#include <turncloth/cloth/lay/weighted_bound.hpp>

#include <doctest/doctest.h>

#include <cstdint>
#include <vector>

using namespace turncloth;
using namespace turncloth::detail;
using lay_test::between;
using lay_test::piece;

namespace {

constexpr std::uint64_t plenty = 1'000'000;

bool refuted(const std::vector<lay_piece>& pieces, std::int64_t width, std::int64_t length) {
    const lay_problem problem = prepared(pieces, {.width = width});
    CHECK(problem.scale_y == 1);
    return weighted_bound(problem).refutes(length, plenty);
}

} // namespace

TEST_CASE("sizes of which two fit across and two along make four, so that five do not go on") {
    // 4 x 4 and 5 x 5: on 11 x 11 any two of them side by side are all that fit.
    CHECK(refuted({piece(4, 4, 4), piece(5, 5)}, 11, 11));
    CHECK_FALSE(refuted({piece(4, 4, 4), piece(5, 5)}, 11, 12)); // 4 + 4 + 4 along
    CHECK(length_bound(prepared({piece(4, 4, 4), piece(5, 5)}, {.width = 11})) < 12);
}

TEST_CASE("a piece that may turn counts by the way that counts less") {
    const auto turning = [](grain g) { return std::vector<lay_piece>{piece(3, 7, 2, g), piece(4, 4)}; };
    CHECK(refuted(turning(grain::fixed), 9, 10));            // 3 + 3 + 4 across do not fit, nor do 7 + 4 along
    CHECK_FALSE(refuted(turning(grain::may_turn), 9, 10));   // 7 across, 3 + 3 + 4 along
    CHECK_FALSE(refuted(turning(grain::fixed), 9, 11));      // two side by side, the third beyond
    CHECK(refuted({piece(5, 2, 3, grain::may_turn)}, 4, 9)); // 5 is too wide; turned, two go side by side: 5 + 5 along
    CHECK_FALSE(refuted({piece(5, 2, 3, grain::may_turn)}, 4, 10));
}

TEST_CASE("no length that trying every place finds is refuted, and most that are too short are") {
    at_random::seeded<lay_random> chance(31);
    int shorter = 0, refuted_of_these = 0;
    while (chance.another_of(150)) {
        const std::int64_t width = between(chance, 5, 9);
        std::vector<lay_piece> pieces{piece(1, 1)};
        for (int kinds = 0; kinds < 3; ++kinds)
            pieces.push_back(piece(between(chance, 2, 5), between(chance, 2, 5), between(chance, 1, 2),
                                   chance.below(2) == 0 ? grain::fixed : grain::may_turn));
        const std::int64_t shortest = lay_test::shortest_by_trial(pieces, width);
        CHECK_FALSE(refuted(pieces, width, shortest));
        if (shortest - 1 < length_bound(prepared(pieces, {.width = width})))
            continue;
        ++shorter;
        refuted_of_these += refuted(pieces, width, shortest - 1);
    }
    CHECK(shorter > 20);
    CHECK(refuted_of_these * 10 > shorter * 8);
}
