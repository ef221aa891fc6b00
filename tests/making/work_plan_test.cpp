// Steps as a maker needs them: measured from edges in sight at that moment, like rows and copies together. The figures
// are derived by hand from the things of things.hpp, with paper folded beside.
#include "making/boxes.hpp"
#include "making/random_design.hpp"
#include <turncloth/making/executed.hpp>
#include <turncloth/making/work_plan.hpp>

#include <doctest/doctest.h>

#include <map>
#include <set>

using namespace things;

namespace {

using step = work_step<inch>;
using lengths = std::vector<length<inch>>;

const work_group<inch>& group(const work_plan<inch>& plan, std::size_t i) {
    REQUIRE(i < plan.groups.size());
    return plan.groups[i];
}
bool from_edge(const seen_distances<inch>& m, cut_part of, edge side, bool folded) {
    return m.from == seen_edge{of, side, folded};
}

/// Of every row, as often as it is sewn.
length<inch> sewn_in(const work_plan<inch>& plan) {
    length<inch> sum;
    for (const auto& g : plan.groups)
        for (const step& s : g.steps)
            for (const auto& p : s.places)
                if (s.verb == work_verb::sew)
                    sum += p.sewn * static_cast<std::int64_t>(p.across.at.size());
    return sum;
}

} // namespace

// By hand, in inches. Both strips are hemmed alike: 1/2 turned from the cut edge, and the row, 7/8 from it, is then 3/8
// from the fold; 23 5/8 - 1 = 22 5/8 wide, 4 7/8 - 1/2 = 4 3/8 high.
TEST_CASE("the strips of the organiser are hemmed alike, in one step for each fold and row") {
    const organiser o;
    const auto plan = work_plan_of(o.design);
    REQUIRE(plan.groups.size() == 6);
    CHECK(group(plan, 0).steps[0].verb == work_verb::cut);
    const auto& film = group(plan, 1);
    CHECK(film.pieces == std::vector<cut_part>{o.film[0], o.film[1]});
    CHECK_FALSE(film.one_after_another);
    REQUIRE(film.steps.size() == 4);
    const step &fold = film.steps[0], &row = film.steps[1];
    CHECK(fold.verb == work_verb::fold);
    CHECK(fold.film);
    REQUIRE(fold.places.size() == 4); // left and right of both
    CHECK(fold.places[0].turned == "1/2"_in);
    CHECK(fold.up == face::wrong);
    CHECK(fold.towards == face::wrong);
    CHECK_FALSE(fold.places[0].across.from.folded);
    CHECK(row.up == face::wrong);
    CHECK(row.places[1].across.at == lengths{"3/8"_in});
    CHECK(from_edge(row.places[1].across, o.film[0], edge::right, true));
    CHECK(row.places[1].sewn == "4 7/8"_in);
    CHECK(row.places[1].end_to_end == o.film[0]);
    CHECK(film.steps[3].places[0].most == 4); // at its ends the top hem lies over those of the sides
    REQUIRE(film.check);
    CHECK(film.check->width == "22 5/8"_in);
    CHECK(film.check->height == "4 3/8"_in);
}

// The sides and the foot of the backing, since a strip lies over them, and the heading at last: 3/8, then 1 1/8 - 3/8
// more; the row is 1 3/4 - 1 1/8 = 5/8 from the fold. 22 1/4 - 2 x 1 1/8 = 20 wide; 22 1/8 - 1 1/8 = 21 high so far.
TEST_CASE("the hems of the backing are one group each time, and say what it measures then") {
    const organiser o;
    const auto plan = work_plan_of(o.design);
    const auto &sides = group(plan, 2), &heading = group(plan, 4);
    REQUIRE(sides.steps.size() == 6);
    CHECK(sides.steps[1].once_more);
    CHECK(sides.steps[1].places[0].turned == "3/4"_in);
    CHECK(sides.steps[1].places[0].across.from.folded);
    CHECK(sides.steps[2].places[0].across.at == lengths{"5/8"_in});
    CHECK(sides.steps[2].places[0].sewn == "22 1/8"_in); // sewn raw
    CHECK(sides.steps[5].places[0].sewn == 20_in);       // across the finished width
    CHECK(sides.check->height == 21_in);
    CHECK(heading.steps[2].places[0].across.at == lengths{"2 3/8"_in}); // 5 3/8 - 3
    CHECK(heading.check->width == 20_in);
    CHECK(heading.check->height == 18_in);
    CHECK(heading.care == std::vector<caution::work>{caution::work::pressing, caution::work::stitching});
}

// A strip lies with its cut foot 3/8 in above its foot's line: 3 + 8 - 3/8 from the cut top edge, 8 further for the
// second; its folded left edge on the fold of the backing. Turned up along its row it is 4 high. Three spans of 22 5/8 in
// meet three of 20 in. The sides of the columns stand 1/8 in from the fold, 19 3/4 / 3 apart.
TEST_CASE("strips go on one after another, each place from an edge in sight") {
    const organiser o;
    const auto plan = work_plan_of(o.design);
    const auto& strips = group(plan, 3);
    CHECK(strips.one_after_another);
    REQUIRE(strips.steps.size() == 4);
    const step &lay = strips.steps[0], &foot = strips.steps[1], &up = strips.steps[2], &columns = strips.steps[3];
    REQUIRE(lay.places.size() == 2);
    CHECK(lay.upside_down);
    CHECK(lay.up == face::wrong);
    CHECK(lay.towards == face::right); // of the backing
    CHECK(lay.places[0].along.at == lengths{"10 5/8"_in});
    CHECK(lay.places[1].along.at == lengths{"18 5/8"_in});
    CHECK(from_edge(lay.places[1].along, o.backing, edge::top, false));
    CHECK(lay.places[1].own_top == seen_edge{o.film[1], edge::bottom, false});
    CHECK(lay.places[0].across.at == lengths{length<inch>()});
    CHECK(from_edge(lay.places[0].across, o.backing, edge::left, true));
    CHECK(lay.marks_on_piece.at == lengths{"22 5/8"_in / 3, "22 5/8"_in * fraction(2, 3)});
    CHECK(lay.marks_on_other.at == lengths{20_in / 3, 40_in / 3});
    CHECK(lay.marks_on_other.from == seen_edge{o.backing, edge::left, true});
    CHECK(foot.places[0].across.at == lengths{"3/8"_in});
    CHECK(foot.places[0].sewn == 20_in);
    CHECK(up.on_a_row);
    CHECK(up.places[0].turned == 4_in);
    CHECK(from_edge(up.places[0].across, o.film[0], edge::top, true));
    CHECK(columns.places[1].across.at ==
          lengths{"1/8"_in, "1/8"_in + "19 3/4"_in / 3, "1/8"_in + "19 3/4"_in * fraction(2, 3), "19 7/8"_in});
    CHECK(from_edge(columns.places[1].across, o.backing, edge::left, true));
    CHECK(columns.places[1].sewn == 4_in);
    CHECK(columns.places[1].end_to_end == o.film[1]);
    // 4 - 3 in from the heading's fold; from the side's fold 1 1/8 in less than from the cut edge.
    const step& eyelets = group(plan, 5).steps[0];
    CHECK(eyelets.verb == work_verb::set);
    CHECK(eyelets.places[0].across.at == lengths{1_in});
    CHECK(eyelets.places[0].along.at == lengths{"2 7/8"_in, "9 7/8"_in, "16 7/8"_in});
    CHECK(group(plan, 5).care == std::vector<caution::work>{caution::work::eyelets});
}

TEST_CASE("zippers are sewn in one after another, and the lining is cut from behind them") {
    const tool_roll roll(true);
    const auto plan = work_plan_of(roll.design);
    const auto& zippers = group(plan, 1);
    CHECK(zippers.pieces == std::vector<cut_part>{roll.tape[0], roll.tape[1]});
    REQUIRE(zippers.steps.size() == 3); // laid, across both ends, along both sides
    CHECK(zippers.steps[0].places[1].along.at == lengths{"3 1/2"_in});
    CHECK(zippers.steps[1].places.size() == 4);
    CHECK(zippers.steps[2].places[0].across.at == lengths{"1/4"_in, "3/4"_in});
    CHECK(std::count(zippers.care.begin(), zippers.care.end(), caution::work::zippers) == 1);
    const step& slits = group(plan, 2).steps[0];
    CHECK(slits.verb == work_verb::slit);
    CHECK(slits.up == face::wrong);
    CHECK(slits.width == "1/4"_in);
    CHECK(slits.places[1].across.at == lengths{4_in});
    CHECK(slits.places[1].along.at == lengths{"1 1/2"_in, "18 1/2"_in});
    CHECK(from_edge(slits.places[1].along, roll.lining, edge::left, false));
}

// An edging of 3 in goes round three corners of a plate of 16 x 9 in, sewn 1/2 in from its edges: from its own cut end at
// 1/2 + 16, then 9 and 16 further on. Each corner has a clip of 3/8 in from the top and one from the bottom.
TEST_CASE("clips are told for each edge that they are cut from, with every corner") {
    const zipped_pad pad({.w = 16_in, .h = 9_in, .d = 2_in, .s = "1/2"_in});
    std::vector<const step*> clips;
    const auto plan = work_plan_of(pad.design);
    for (const auto& g : plan.groups)
        for (const step& s : g.steps)
            if (s.verb == work_verb::clip)
                clips.push_back(&s);
    REQUIRE(clips.size() == 2);
    for (const step* s : clips) {
        lengths corners;
        for (const auto& p : s->places)
            corners.push_back(p.across.at[0]);
        CHECK(corners == lengths{"16 1/2"_in, "25 1/2"_in, "41 1/2"_in});
    }
    CHECK(clips[0]->places[0].along.at == lengths{0_in, "3/8"_in});
    CHECK(clips[1]->places[0].along.at == lengths{0_in, "3/8"_in}); // from the bottom edge
}

// The outer lies wrong side up and is pressed all round before anything lies on it; 22 - 2 x 1/2 by 18 - 2 x 1/2. The
// wadding, 20 x 16 in, lies 1/2 in inside those folds. Bound, it is 20 x 16 in, and its rows 1 3/8 - 1 = 3/8 in.
TEST_CASE("a binding is pressed all round, filled, turned again and sewn, sides first") {
    const tool_roll roll(true);
    const auto plan = work_plan_of(roll.design);
    const std::size_t last = plan.groups.size() - 1;
    const auto &pressed = group(plan, last - 2), &wadding = group(plan, last - 1), &bound = group(plan, last);
    REQUIRE(pressed.steps.size() == 1);
    CHECK(pressed.steps[0].places.size() == 4);
    CHECK(pressed.check->width == 21_in);
    CHECK(wadding.steps[0].places[0].all_round);
    CHECK(wadding.steps[0].places[0].across.at == lengths{"1/2"_in});
    CHECK(wadding.steps[0].towards == face::wrong);
    REQUIRE(bound.steps.size() == 4);
    CHECK(bound.steps[0].places[1].side == edge::right);
    CHECK(bound.steps[1].places[0].across.at == lengths{"3/8"_in});
    CHECK(bound.steps[1].places[0].sewn == 17_in);
    CHECK(bound.steps[3].places[1].sewn == 20_in);
    CHECK(bound.check->height == 16_in);
}

// The lists by hand of stitched_test.cpp.
TEST_CASE("the rows of all steps are as long as those counted by hand") {
    CHECK(sewn_in(work_plan_of(tool_roll(true).design)) == 250_in);
    CHECK(sewn_in(work_plan_of(organiser().design)) == 221_in);
}

TEST_CASE(
    "for 300 random projects every operation is in one step, no need is broken and rows are as long as executed") {
    sampler any(31);
    int made = 0;
    while (any.another_of(300)) {
        const making<inch> d = random_design(any);
        std::vector<making_step> steps;
        try {
            steps = steps_of(d);
        } catch (const making_error&) {
            continue;
        }
        ++made;
        const auto tasks = detail::tasks_of(d, steps);
        std::map<std::size_t, std::size_t> position;
        for (const auto& b : detail::bundler(tasks).in_order())
            for (const auto& s : b.strands)
                for (const std::size_t t : s)
                    REQUIRE(position.emplace(t, position.size()).second);
        REQUIRE(position.size() == steps.size());
        for (std::size_t t = 0; t < tasks.size(); ++t)
            for (const std::size_t first : tasks[t].needs)
                REQUIRE(position[first] < position[t]);
        length<inch> sewn;
        for (const auto& row : execute(d).rows)
            sewn += row.sewn;
        CHECK(sewn_in(work_plan_of(d)) == sewn);
    }
    CHECK(made > 100);
}

// By hand: a cover 14 x 12 in is laid over a board 12 x 10 in so that it hangs over by 1 in all round. A row through both,
// 2 in from the board's left edge, runs 3 in from the cover's, which alone is seen; it is as long as the board is high.
TEST_CASE("an edge that is covered is no edge to measure from") {
    making<inch> d("mats");
    const cut_part board = d.cut({.name = "board", .width = 12_in, .height = 10_in}),
                   cover = d.cut({.name = "cover", .width = 14_in, .height = 12_in});
    d.add(laying<inch>{.piece = cover, .on = board, .left = -1_in, .top = -1_in});
    d.add(sewn(board, edge::left, 2_in, {board, cover}));
    const auto plan = work_plan_of(d);
    const step &lay = group(plan, 1).steps[0], &row = group(plan, 1).steps[1];
    CHECK(lay.places[0].across.at == lengths{-1_in}); // beyond it
    CHECK(row.places[0].across.at == lengths{3_in});
    CHECK(from_edge(row.places[0].across, cover, edge::left, false));
    CHECK(row.places[0].end_to_end == board);
}
