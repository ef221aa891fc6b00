// Lays of whole-number pieces: valid always, best where the best is known, the same every time, and clear about
// refusals.
#include "at_random.hpp"
#include "cloth/lay/instances.hpp"
#include <turncloth/cloth/lay/check.hpp>
#include <turncloth/cloth/lay/solve.hpp>

#include <doctest/doctest.h>

#include <cstdint>
#include <string>
#include <vector>

using namespace turncloth;
using namespace turncloth::detail;
using lay_test::between;
using lay_test::cut_up;
using lay_test::piece;
using lay_test::shortest_by_trial;
using lay_test::shortest_edge_to_edge;
using lay_test::shortest_in_strips;

namespace {

lay_cloth cloth_of(std::int64_t width, cutting ways = cutting::free) {
    lay_cloth cloth;
    cloth.width = width;
    cloth.cutting = ways;
    return cloth;
}

lay_effort effort_of(std::uint64_t steps, std::uint64_t seed = 1) {
    lay_effort effort;
    effort.steps = steps;
    effort.seed = seed;
    return effort;
}

whole_lay sound_lay(const std::vector<lay_piece>& pieces, const lay_cloth& cloth, const lay_effort& effort = {}) {
    whole_lay found = shortest_lay(pieces, cloth, effort);
    for (const lay_fault& fault : faults_of(found, pieces, cloth))
        FAIL_CHECK(fault.what());
    return found;
}

} // namespace

TEST_CASE("pieces that just fill the width lie in one row, and that is proved best") {
    const whole_lay found = sound_lay({piece(12, 18, 3), piece(8, 10)}, cloth_of(44));
    CHECK(found.length == 18);
    CHECK(found.proved_best());
    CHECK(found.places.size() == 4);
}

TEST_CASE("who waits longer is looked for longer, and a click is what is meant where nothing is said") {
    static_assert(lay_effort::while_typing().steps < lay_effort::on_a_click().steps);
    static_assert(lay_effort::on_a_click().steps < lay_effort::to_print().steps);
    static_assert(lay_effort::on_a_click().steps == lay_effort{}.steps);
    // Of these, found by chance, the shortest take some looking for.
    at_random::seeded<lay_random> chance(29);
    int shorter = 0;
    while (chance.another_of(10)) {
        const auto pieces = cut_up(chance, 97, 83, 25, false);
        const auto typing = sound_lay(pieces, cloth_of(97), lay_effort::while_typing()).length,
                   click = sound_lay(pieces, cloth_of(97), lay_effort::on_a_click()).length;
        CHECK(click <= typing);
        shorter += click < typing ? 1 : 0;
    }
    CHECK(shorter > 0);
}

TEST_CASE("no pieces need no cloth") {
    const whole_lay found = shortest_lay({}, cloth_of(44));
    CHECK(found.length == 0);
    CHECK(found.places.empty());
}

TEST_CASE("a rectangle cut up edge to edge goes together again") {
    at_random::seeded<lay_random> chance(11);
    while (chance.another_of(30)) {
        const std::int64_t width = between(chance, 20, 60), length = between(chance, 20, 80);
        const auto pieces = cut_up(chance, width, length, static_cast<std::size_t>(between(chance, 4, 14)), true);
        CHECK(sound_lay(pieces, cloth_of(width)).length == length);
        const whole_lay cut = sound_lay(pieces, cloth_of(width, cutting::edge_to_edge), effort_of(400'000));
        CHECK(cut.length <= length + length / 12);
        CHECK(cut.bound <= length);
        CHECK(sound_lay(pieces, cloth_of(width, cutting::strips)).bound <= length * 4);
    }
}

TEST_CASE("a rectangle cut up like a carton's slats goes together again when cutting is free") {
    at_random::seeded<lay_random> chance(12);
    while (chance.another_of(30)) {
        const std::int64_t width = between(chance, 20, 60), length = between(chance, 20, 80);
        const auto pieces = cut_up(chance, width, length, 13, false);
        const whole_lay found = sound_lay(pieces, cloth_of(width), effort_of(1'000'000));
        CHECK(found.length == length);
        CHECK(found.proved_best());
    }
}

TEST_CASE("a large rectangle cut up goes together again within a few in a hundred") {
    at_random::seeded<lay_random> chance(13);
    std::int64_t total = 0;
    for (const std::size_t count : {50U, 100U, 200U})
        for (const bool from_edge_to_edge : {false, true}) {
            const auto pieces = cut_up(chance, 200, 300, count, from_edge_to_edge);
            const whole_lay found = sound_lay(pieces, cloth_of(200), effort_of(1'000'000));
            CHECK(found.bound == 300);
            total += found.length;
        }
    CHECK(total <= 6 * 312);
}

TEST_CASE("small lays are as short as trying everything makes them") {
    at_random::seeded<lay_random> chance(14);
    while (chance.another_of(300)) {
        const std::int64_t width = between(chance, 3, 7);
        std::vector<lay_piece> pieces;
        const auto grain = chance.below(2) == 0 ? grain::fixed : grain::may_turn;
        for (std::int64_t kinds = between(chance, 1, 3); kinds > 0; --kinds)
            pieces.push_back(piece(between(chance, 1, width), between(chance, 1, 5), between(chance, 1, 2), grain));
        const std::int64_t shortest = shortest_by_trial(pieces, width);
        const whole_lay found = sound_lay(pieces, cloth_of(width));
        CHECK(found.length == shortest);
        CHECK(found.bound <= shortest);
    }
}

TEST_CASE("every mixture of grain, gap, repeat and way of cutting gives a lay that can be cut") {
    at_random::seeded<lay_random> chance(15);
    for (const int round : chance.cases(1500)) {
        lay_cloth cloth = cloth_of(between(chance, 5, 45), static_cast<cutting>(chance.below(3)));
        if (chance.below(3) == 0)
            cloth.gap = between(chance, 1, 3);
        if (chance.below(4) == 0)
            cloth.repeat_across = between(chance, 1, std::min<std::int64_t>(9, cloth.width));
        if (chance.below(4) == 0)
            cloth.repeat_along = between(chance, 1, 12);
        const bool matching = cloth.repeat_across > 0 || cloth.repeat_along > 0;
        std::vector<lay_piece> pieces;
        for (std::int64_t kinds = between(chance, 1, 8); kinds > 0; --kinds) {
            lay_piece next = piece(between(chance, 1, cloth.width), between(chance, 1, 30),
                                   between(chance, 1, chance.below(10) == 0 ? 60 : 5));
            if (!matching && chance.below(2) == 0)
                next.grain = grain::may_turn;
            if (next.grain == grain::fixed && chance.below(6) == 0)
                next.at_edge = true;
            if (matching && chance.below(2) == 0)
                next.match_along = between(chance, -5, 20);
            if (matching && !next.at_edge && chance.below(2) == 0)
                next.match_across = between(chance, 0, 3);
            const bool starts_in_time =
                cloth.repeat_across == 0 || next.match_across % cloth.repeat_across + next.width <= cloth.width;
            if (starts_in_time)
                pieces.push_back(next);
        }
        sound_lay(pieces, cloth, effort_of(1500, static_cast<std::uint64_t>(round)));
    }
}

TEST_CASE("a quarter turn is used where it is allowed and helps") {
    const whole_lay fixed = sound_lay({piece(10, 4, 4)}, cloth_of(16));
    const whole_lay turned = sound_lay({piece(10, 4, 4, grain::may_turn)}, cloth_of(16));
    CHECK(fixed.length == 16);
    CHECK(turned.length == 10);
    CHECK(turned.proved_best());
}

TEST_CASE("a piece too wide to lie upright is turned when it may be") {
    const whole_lay found = sound_lay({piece(50, 10, 1, grain::may_turn)}, cloth_of(44));
    CHECK(found.length == 50);
    CHECK(found.places.front().turned);
}

TEST_CASE("a gap parts neighbours but is not wanted at the edges of the cloth") {
    lay_cloth cloth = cloth_of(11);
    cloth.gap = 1;
    CHECK(sound_lay({piece(5, 7, 4)}, cloth).length == 15);
    cloth.width = 10;
    CHECK(sound_lay({piece(5, 7, 4)}, cloth).length == 31);
}

TEST_CASE("every piece starts on the repeat, at its own offset") {
    lay_cloth cloth = cloth_of(40);
    cloth.repeat_along = 10;
    lay_piece panel = piece(20, 12, 4);
    CHECK(sound_lay({panel}, cloth).length == 32);
    panel.match_along = 3;
    CHECK(sound_lay({panel}, cloth).length == 35);
    CHECK(sound_lay({panel}, cloth).proved_best());
    cloth.repeat_across = 15;
    CHECK(sound_lay({panel}, cloth).length == 75);
}

TEST_CASE("pieces on the fold lie against the edge, and the bound knows that they cannot lie side by side") {
    lay_piece half = piece(10, 15, 2);
    half.at_edge = true;
    const whole_lay found = sound_lay({half, piece(12, 15, 2)}, cloth_of(22));
    CHECK(found.length == 30);
    CHECK(found.proved_best());
}

TEST_CASE("strips are cut across the whole width, crosscut and trimmed, in that order") {
    const whole_lay found = sound_lay({piece(12, 6, 3), piece(12, 5, 3)}, cloth_of(40, cutting::strips));
    REQUIRE(found.length == 11);
    REQUIRE(!found.cuts.empty());
    CHECK(found.cuts.front() == lay_cut{cut_direction::across, 6, {0, 40, 0, 11}});
}

TEST_CASE("a few pieces are laid edge to edge and in strips as short as can be, and that is proved") {
    at_random::seeded<lay_random> chance(19);
    while (chance.another_of(400)) {
        const std::int64_t width = between(chance, 4, 14);
        const auto grain = chance.below(2) == 0 ? grain::fixed : grain::may_turn;
        std::vector<lay_piece> pieces;
        for (std::int64_t kinds = between(chance, 1, 4); kinds > 0; --kinds)
            pieces.push_back(piece(between(chance, 1, width), between(chance, 1, 9), between(chance, 1, 2), grain));
        const whole_lay from_edge_to_edge = sound_lay(pieces, cloth_of(width, cutting::edge_to_edge));
        CHECK(from_edge_to_edge.length == shortest_edge_to_edge(pieces, width));
        CHECK(from_edge_to_edge.proved_best());
        const whole_lay in_strips = sound_lay(pieces, cloth_of(width, cutting::strips));
        CHECK(in_strips.length == shortest_in_strips(pieces, width));
        CHECK(in_strips.proved_best());
    }
}

TEST_CASE("what the search does not find, trying every cut does") {
    at_random::seeded<lay_random> chance(20);
    while (chance.another_of(20)) {
        std::vector<lay_piece> pieces;
        for (int i = 0; i < 9; ++i)
            pieces.push_back(piece(between(chance, 100, 1000), between(chance, 100, 1000), 1, grain::may_turn));
        for (const cutting ways : {cutting::edge_to_edge, cutting::strips}) {
            const whole_lay best = sound_lay(pieces, cloth_of(2000, ways));
            CHECK(best.proved_best());
            // With next to no effort nothing can be tried exactly: never shorter, and no bound above the best.
            const whole_lay hasty = sound_lay(pieces, cloth_of(2000, ways), effort_of(200));
            CHECK(hasty.length >= best.length);
            CHECK(hasty.bound <= best.length);
        }
    }
}

TEST_CASE("eight pieces in strips, fixed, on cloth of any width") {
    at_random::seeded<lay_random> chance(19);
    while (chance.another_of(100)) {
        const std::int64_t width = between(chance, 10, 3000);
        std::vector<lay_piece> pieces;
        for (int i = 0; i < 8; ++i)
            pieces.push_back(piece(between(chance, width / 8 + 1, width / 2), between(chance, 2, 40)));
        const whole_lay found = sound_lay(pieces, cloth_of(width, cutting::strips));
        CHECK(found.length == shortest_in_strips(pieces, width));
        CHECK(found.proved_best());
    }
}

TEST_CASE("a lay that can only be cut free is longer edge to edge, and longer still in strips") {
    // Four pieces round a fifth: 8 x 8 when cutting is free.
    const std::vector<lay_piece> pieces{piece(5, 3, 2), piece(3, 5, 2), piece(2, 2)};
    CHECK(sound_lay(pieces, cloth_of(8)).length == 8);
    CHECK(sound_lay(pieces, cloth_of(8, cutting::edge_to_edge)).length > 8);
    CHECK(sound_lay(pieces, cloth_of(8, cutting::strips)).length >=
          sound_lay(pieces, cloth_of(8, cutting::edge_to_edge)).length);
}

TEST_CASE("the same seed and effort give the same lay, and more effort never a longer one") {
    at_random::seeded<lay_random> chance(16);
    const auto pieces = cut_up(chance, 100, 120, 40, false);
    for (const cutting ways : {cutting::free, cutting::edge_to_edge, cutting::strips}) {
        const whole_lay once = sound_lay(pieces, cloth_of(100, ways), effort_of(50'000, 3));
        const whole_lay again = sound_lay(pieces, cloth_of(100, ways), effort_of(50'000, 3));
        CHECK(once.places == again.places);
        CHECK(once.cuts == again.cuts);
        CHECK(sound_lay(pieces, cloth_of(100, ways), effort_of(500'000, 3)).length <= once.length);
    }
}

TEST_CASE("edge to edge a search that also lets lays get worse for a while goes on where exchanges alone are stuck") {
    at_random::seeded<lay_random> chance(23);
    std::int64_t clicked = 0, printed = 0;
    while (chance.another_of(4)) {
        const auto pieces = cut_up(chance, 60, 60, 30, true);
        const lay_cloth cloth = cloth_of(60, cutting::edge_to_edge);
        const std::int64_t at_first = sound_lay(pieces, cloth).length;
        const whole_lay later = sound_lay(pieces, cloth, effort_of(900'000));
        CHECK(later.places == sound_lay(pieces, cloth, effort_of(900'000)).places);
        CHECK(later.length <= at_first);
        CHECK(later.length <= sound_lay(pieces, cloth_of(60, cutting::strips)).length);
        clicked += at_first;
        printed += later.length;
    }
    CHECK(printed < clicked);
}

TEST_CASE("improvements are shown as they come, each shorter, each sound, and showing can stop the search") {
    at_random::seeded<lay_random> chance(17);
    const auto pieces = cut_up(chance, 100, 120, 60, false);
    std::int64_t last = 1'000'000;
    int shown = 0;
    const lay_watcher watch{.improved = [&](const whole_lay& better) {
        CHECK(better.length < last);
        CHECK(faults_of(better, pieces, cloth_of(100)).empty());
        last = better.length;
        ++shown;
        return true;
    }};
    CHECK(shortest_lay(pieces, cloth_of(100), effort_of(300'000), watch).length == last);
    CHECK(shown > 1);
    int calls = 0;
    shortest_lay(pieces, cloth_of(100), effort_of(300'000),
                 {.improved = [&](const whole_lay&) { return ++calls < 1; }});
    CHECK(calls == 1);
}

// Small and large problems, so that each part of the search is at work at some time: the exact ones, weights, values.
TEST_CASE("at even steps a search is asked whether to go on, and where it is not it ends within a hundredth, the same "
          "each time") {
    at_random::seeded<lay_random> chance(19);
    for (const cutting way : {cutting::free, cutting::edge_to_edge, cutting::strips})
        for (const int count : {6, 7, 15, 40, 60}) {
            auto pieces = cut_up(chance, 97, 131, count, false);
            for (lay_piece& one : pieces)
                one.quantity = count == 6 ? 3 : 1;
            const lay_cloth cloth = cloth_of(97, way);
            std::vector<detail::lay_state> told;
            const whole_lay whole =
                shortest_lay(pieces, cloth, effort_of(400'000), {.keep_going = [&](const detail::lay_state& state) {
                                 told.push_back(state);
                                 return true;
                             }});
            CHECK(whole.places == shortest_lay(pieces, cloth, effort_of(400'000)).places);
            CHECK((whole.proved_best() || told.back().steps > 390'000));
            for (std::size_t i = 0; i < told.size(); ++i) {
                CAPTURE(i);
                CHECK(told[i].steps < 400'000);
                CHECK(told[i].steps - (i > 0 ? told[i - 1].steps : 0) < 12'000);
                CHECK(told[i].bound <= whole.bound);
                CHECK(told[i].best >= whole.length);
                if (i > 0) {
                    CHECK(told[i].steps / 4001 > told[i - 1].steps / 4001);
                    CHECK(told[i].best <= told[i - 1].best);
                    CHECK(told[i].bound >= told[i - 1].bound);
                }
            }
            for (const std::size_t stop : {std::size_t{1}, told.size() / 2, told.size()}) {
                std::size_t asked = 0;
                const lay_watcher until{.keep_going = [&](const detail::lay_state&) { return ++asked < stop; }};
                const whole_lay some = shortest_lay(pieces, cloth, effort_of(400'000), until);
                CHECK(asked == std::min(std::max<std::size_t>(stop, 1), told.size()));
                CHECK(faults_of(some, pieces, cloth).empty());
                if (asked > 0 && asked <= told.size()) {
                    CHECK(some.length == told[asked - 1].best);
                    CHECK(some.bound == told[asked - 1].bound);
                }
            }
        }
}

TEST_CASE("thousands of pieces are laid, near the bound when they are alike") {
    const whole_lay alike = sound_lay({piece(7, 9, 15'000), piece(11, 4, 6'000)}, cloth_of(110));
    CHECK(alike.places.size() == 21'000);
    CHECK(alike.length * 100 <= alike.bound * 104);
    at_random::seeded<lay_random> chance(18);
    std::vector<lay_piece> all;
    while (chance.another_of(15'000))
        all.push_back(piece(between(chance, 3, 90), between(chance, 3, 90)));
    const whole_lay different = sound_lay(all, cloth_of(600));
    CHECK(different.places.size() == 15'000);
    CHECK(different.length * 100 <= different.bound * 105);
}

TEST_CASE("areas and lengths beyond 64 bits are refused") {
    CHECK_THROWS_AS(shortest_lay({piece(5, std::int64_t{1} << 59, 9), piece(6, 7)}, cloth_of(44)), overflow_error);
}
