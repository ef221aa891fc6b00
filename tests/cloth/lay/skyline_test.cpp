// The quick ways of the search do what the plain ways do.
#include "at_random.hpp"
#include "cloth/lay/instances.hpp"
#include <turncloth/cloth/lay/skyline_trials.hpp>

#include <doctest/doctest.h>

#include <algorithm>
#include <cstdint>
#include <vector>

using namespace turncloth;
using namespace turncloth::detail;
using lay_test::between;

namespace {

std::vector<lay_piece> mixed_pieces(lay_random& chance, std::int64_t width, bool turning) {
    auto pieces = lay_test::cut_up(chance, width, 60, 5 + chance.below(60), chance.below(2) == 0);
    for (lay_piece& p : pieces) {
        if (turning && chance.below(3) == 0)
            p.grain = grain::may_turn;
        else if (chance.below(8) == 0)
            p.at_edge = true;
    }
    return pieces;
}

} // namespace

TEST_CASE("trials of changes leave the same over as laying all pieces anew") {
    at_random::seeded<lay_random> chance(41);
    for (const int round : chance.cases(200)) {
        lay_cloth cloth;
        cloth.width = between(chance, 20, 120);
        const auto problem = detail::prepared(mixed_pieces(chance, cloth.width, round % 2 == 0), cloth);
        const detail::lay_entries entries(problem);
        const std::uint32_t size = entries.size();
        if (size < 2)
            continue;
        detail::skyline_trials quick(entries);
        detail::skyline plain(entries);
        const std::int64_t length = between(chance, 50, 70);
        std::int64_t left = plain.run(length, problem.area);
        REQUIRE(quick.run(length, problem.area) == left);
        for (int change = 0; change < 300; ++change) {
            const std::uint32_t p = chance.below(size), q = (p + 1 + chance.below(size - 1)) % size;
            const std::int64_t allowed = left + (chance.below(4) == 0 ? between(chance, 0, 50) : 0);
            if (chance.below(3) == 0) {
                const unsigned how = chance.below(4);
                const unsigned before = plain.twist(p, how);
                const std::int64_t now = plain.run(length, allowed);
                if (now <= allowed)
                    left = now;
                else
                    plain.twist(p, before);
                REQUIRE(quick.try_twist(p, how, allowed) == left);
            } else {
                plain.exchange(p, q);
                const std::int64_t now = plain.run(length, allowed);
                if (now <= allowed)
                    left = now;
                else
                    plain.exchange(p, q);
                REQUIRE(quick.try_exchange(p, q, allowed) == left);
            }
        }
    }
}

TEST_CASE("the sets of sizes know the first piece that fits, at most or exactly") {
    at_random::seeded<lay_random> chance(42);
    for (const std::int64_t largest : {30, 30, 30, 200'000, 200'000, 200'000}) {
        std::vector<std::int64_t> sizes;
        for (int i = 0; i < 100; ++i)
            sizes.push_back(between(chance, 1, largest));
        detail::size_sets sets;
        sets.reset(sizes, 2);
        for (std::size_t i = 0; i < sizes.size(); ++i)
            sets.change(i, detail::size_sets::absent, sizes[i]);
        std::swap(sizes[3], sizes[90]);
        sets.change(3, sizes[90], sizes[3]);
        sets.change(90, sizes[3], sizes[90]);
        sets.change(7, sizes[7], detail::size_sets::absent);
        if (chance.below(2) == 0) {
            auto by_place = sizes;
            by_place[7] = detail::size_sets::absent;
            sets.rebuild(by_place);
        }
        while (chance.another_of(500)) {
            const std::int64_t s = between(chance, 0, largest + 5);
            const std::uint32_t rank = sets.rank(s);
            CHECK(sets.is_size(rank, s) == (std::find(sizes.begin(), sizes.end(), s) != sizes.end()));
            for (std::size_t i = 0; i < sizes.size(); ++i) {
                const bool in = (sets.at_most(rank)[i / 64] >> (i % 64) & 1U) != 0;
                CHECK(in == (i != 7 && sizes[i] <= s));
            }
        }
    }
}
