// Ways to make a corner by its layers: as paper is folded, by hand; at random each way is what folding it by itself shows, and what
// is chosen is the first that stays within so many.
#include "at_random.hpp"
#include "refused.hpp"
#include <turncloth/measure/read.hpp>
#include <turncloth/panel/corner_ways.hpp>

#include <doctest/doctest.h>

#include <algorithm>

using namespace turncloth;

namespace {

panel<inch> hemmed(length<inch> first, length<inch> depth) {
    return panel(finished_size(16_in, 12_in), all_round(double_turned_hem(first, depth, depth / 8)));
}

} // namespace

// By hand, hems of 1 in with 1/4 in turned in: three layers on three where one edge is folded over the other, nine in all (common
// practice). A mitre has fewer, and the trimmed one the fewest.
TEST_CASE("a stacked corner of double hems has nine layers, a mitre fewer, and the first within so many is chosen") {
    const auto ways = corner_ways(hemmed("1/4"_in, 1_in), "1/4"_in, "1/16"_in);
    CHECK(ways[0].most == 9);
    CHECK(ways[1].most < 9);
    CHECK(ways[2].most <= ways[1].most);
    CHECK_FALSE(ways[0].way.is_mitred);
    CHECK((ways[1].way.is_mitred && !ways[1].way.allowance));
    CHECK((ways[2].way.is_mitred && ways[2].way.allowance == "1/4"_in));
    CHECK_FALSE(corner_within(hemmed("1/4"_in, 1_in), 9, "1/4"_in, "1/16"_in).way.is_mitred);
    CHECK(corner_within(hemmed("1/4"_in, 1_in), 8, "1/4"_in, "1/16"_in).way.is_mitred);
    // Turned once, two on two.
    const panel<inch> single(finished_size(16_in, 12_in), all_round(single_turned_hem(1_in, "1/8"_in)));
    CHECK(corner_ways(single, "1/4"_in, "1/16"_in)[0].most == 4);
    // Pressed and sewn by no row, there is none to go through any.
    const panel<inch> pressed(finished_size(16_in, 12_in),
                              all_round(finish<inch>("pressed").allows(1_in).folds_at(1_in).reaches(1_in)));
    CHECK(corner_ways(pressed, "1/4"_in, "1/16"_in)[0].most == 0);
}

TEST_CASE("the way that is chosen is the first whose layers are few enough, and none is chosen where none is") {
    at_random::sampler random(551);
    while (random.another_of(60)) {
        const length<inch> depth = length_of<inch>({random.between(4, 12), 8}),
                           first = depth * fraction(random.between(1, 8), 8);
        const panel<inch> piece = hemmed(first, depth);
        const auto ways = corner_ways(piece, "1/8"_in, "1/16"_in);
        const std::size_t fewest = std::min({ways[0].most, ways[1].most, ways[2].most});
        for (std::size_t most = fewest; most <= 9; ++most) {
            const auto chosen = corner_within(piece, most, "1/8"_in, "1/16"_in);
            CHECK(chosen.most <= most);
            const auto first_in =
                std::find_if(ways.begin(), ways.end(), [&](const auto& each) { return each.most <= most; });
            CHECK(chosen.way.is_mitred == first_in->way.is_mitred);
            CHECK(chosen.way.allowance == first_in->way.allowance);
        }
        CHECK(refused::message<corner_error>([&] { corner_within(piece, fewest - 1, "1/8"_in, "1/16"_in); }) ==
              "no corner of these hems stays within " + std::to_string(fewest - 1) + " layers: the fewest are " +
                  std::to_string(fewest));
    }
}
