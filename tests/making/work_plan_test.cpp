// Steps as a maker needs them: measured from edges in sight at that moment, like rows and copies together. The figures
// are derived by hand from the things of things.hpp, with paper folded beside.
#include "../vectors.hpp"
#include "making/boxes.hpp"
#include "making/random_design.hpp"
#include "making/walked.hpp"
#include <turncloth/making/detail/tasks.hpp>
#include <turncloth/making/executed.hpp>
#include <turncloth/making/on_table.hpp>
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

namespace {

length<inch> side_of(const table_area<inch>& a, edge e) {
    return e == edge::left ? a.left : e == edge::right ? a.right : e == edge::top ? a.top : a.bottom;
}
table_area<inch> round(const ply_lying<inch>& p) {
    table_area<inch> a{p.corners[0].x, p.corners[0].y, p.corners[0].x, p.corners[0].y};
    for (const auto& c : p.corners)
        a = {std::min(a.left, c.x), std::min(a.top, c.y), std::max(a.right, c.x), std::max(a.bottom, c.y)};
    return a;
}

/// An edge of a part as it lies, looked at from above or from beneath; every ply is an upright rectangle.
struct looked_at {
    const table_work<inch>& table;
    seen_edge what;
    bool above;
    edge toward = table.on_table(what.of, what.side);
    length<inch> at = side_of(table.extent(what.of), toward);

    bool shows_at(length<inch> along) const {
        auto plies = table.plies(what.of).plies;
        if (above)
            std::reverse(plies.begin(), plies.end());
        for (const auto& p : plies) {
            const table_area<inch> a = round(p);
            const bool level = is_level(toward);
            const bool beside = level ? a.left <= along && along <= a.right : a.top <= along && along <= a.bottom;
            if (beside && p.of == what.of && side_of(a, toward) == at)
                return true;
            if (level ? a.left <= along && along < a.right && a.top < at && at < a.bottom
                      : a.top <= along && along < a.bottom && a.left < at && at < a.right)
                return false;
        }
        return false;
    }
    /// Between two places along it: at one of them or somewhere in between.
    bool shows(length<inch> from, length<inch> to) const {
        std::vector<length<inch>> stops = {from, to};
        for (const auto& p : table.plies(what.of).plies) {
            const table_area<inch> a = round(p);
            for (const auto& v : {is_level(toward) ? a.left : a.top, is_level(toward) ? a.right : a.bottom})
                stops.push_back(std::clamp(v, from, to));
        }
        std::sort(stops.begin(), stops.end());
        for (std::size_t k = 0; k + 1 < stops.size(); ++k)
            if (shows_at((stops[k] + stops[k + 1]) / 2))
                return true;
        return false;
    }
};
length<inch> way(const length<inch>& a, const length<inch>& b) { return a < b ? b - a : a - b; }

/// A board, hemmed on some edges, with covers that lie over edges of what they are laid on, and rows through all of it that
/// are drawn on any of them, right across or from one edge up to a place.
making<inch> covered_design(sampler& any) {
    making<inch> d("covered");
    const auto l = [&](std::int64_t least, std::int64_t most) {
        return length_of<inch>(fraction(any.between(least, most), 4));
    };
    const auto one_of = [&](const auto& list) {
        return list[static_cast<std::size_t>(any.between(0, static_cast<std::int64_t>(list.size()) - 1))];
    };
    std::vector<cut_part> all = {d.cut({.name = "board", .width = l(24, 60), .height = l(24, 60)})};
    for (const edge e : all_edges)
        if (any.between(0, 2) == 0)
            d.add(crease<inch>{.at = line(all[0], e, "1/2"_in), .over = any.between(0, 1) == 0});
    for (std::int64_t k = any.between(1, 4); k > 0; --k) {
        const cut_part cover = d.cut({.name = "cover", .width = l(20, 50), .height = l(20, 50)});
        d.add(laying<inch>{.piece = cover,
                           .on = one_of(all),
                           .up = any.between(0, 2) == 0 ? face::wrong : face::right,
                           .left = l(-12, 30),
                           .top = l(-12, 30),
                           .beneath = any.between(0, 3) == 0});
        all.push_back(cover);
    }
    for (std::int64_t k = any.between(1, 3); k > 0; --k) {
        const cut_part on = one_of(all); // one draw after another: compilers differ in the order of arguments
        const edge from = one_of(all_edges);
        stitching<inch> row = sewn(on, from, l(3, 17), all);
        if (any.between(0, 1) == 0)
            row.along.begins = l(3, 17);
        else if (any.between(0, 1) == 0)
            row.along.ends = l(3, 17);
        d.add(row);
    }
    return d;
}

/// The row's stretch, clipped to the ply of its part on which it is longest.
table_segment<inch> on_cloth(const table_work<inch>& table, const cut_part& of, const table_segment<inch>& s) {
    const bool level = s.from.y == s.to.y;
    length<inch> low, high;
    for (const auto& p : table.plies(of).plies) {
        const table_area<inch> a = round(p);
        if (p.of != of || !(level ? a.top < s.from.y && s.from.y < a.bottom : a.left < s.from.x && s.from.x < a.right))
            continue;
        const auto from = level ? std::max(a.left, std::min(s.from.x, s.to.x))
                                : std::max(a.top, std::min(s.from.y, s.to.y)),
                   to = level ? std::min(a.right, std::max(s.from.x, s.to.x))
                              : std::min(a.bottom, std::max(s.from.y, s.to.y));
        if (to - from > high - low) {
            low = from;
            high = to;
        }
    }
    return level ? table_segment<inch>{{low, s.from.y}, {high, s.from.y}}
                 : table_segment<inch>{{s.from.x, low}, {s.from.x, high}};
}

/// Whether a place of a step tells where that row lies, from edges in sight at that moment.
bool tells_of(const table_work<inch>& table, const step& s, const work_place<inch>& p, const chalk_line<inch>& row) {
    const bool above = table.up(row.on) == s.up;
    const auto found = table.line(row);
    if (!found || p.piece != row.on || p.side != row.from)
        return false;
    const auto [a, b] = on_cloth(table, row.on, *found);
    const bool level = a.y == b.y;
    const auto at = level ? a.y : a.x, from = level ? std::min(a.x, b.x) : std::min(a.y, b.y),
               to = level ? std::max(a.x, b.x) : std::max(a.y, b.y);
    const looked_at across{table, p.across.from, above};
    const auto& told = p.across.at;
    if (std::find(told.begin(), told.end(), way(across.at, at)) == told.end() || !across.shows(from, to))
        return false;
    if (p.end_to_end.is_given())
        return true;
    const looked_at along{table, p.along.from, above};
    return along.shows_at(at) && p.along.at.size() == 2 && way(p.along.at[0], p.along.at[1]) == way(from, to);
}

} // namespace

TEST_CASE("for random projects every row is measured from edges that are in sight when it is sewn") {
    sampler any(33);
    std::size_t rows = 0, not_its_own = 0, ends = 0, turned = 0;
    while (any.another_of(1200)) {
        const making<inch> d = covered_design(any);
        std::vector<making_step> steps;
        try {
            steps = steps_of(d);
            if (!execute(d).faults.empty())
                continue; // such as a row that begins on cloth which is folded away
        } catch (const making_error&) {
            continue;
        }
        const auto plan = work_plan_of(d, steps);
        turned += walk(d); // whoever follows the printed steps alone has the right side up
        const auto tasks = detail::tasks_of(d, steps);
        table_work<inch> table(d);
        for (const auto& b : detail::bundler(tasks).in_order())
            for (const auto& strand : b.strands)
                for (const std::size_t t : strand) {
                    const operation& o = tasks[t].what;
                    if (o.kind != operation_kind::stitching) {
                        table.carry_out(o);
                        continue;
                    }
                    const chalk_line<inch>& row = d.rows()[o.index].along;
                    bool told = !table.line(row); // it runs on no cloth
                    for (const auto& g : plan.groups)
                        for (const step& s : g.steps)
                            if (std::find(s.stands_for.begin(), s.stands_for.end(), o) != s.stands_for.end())
                                for (const auto& p : s.places)
                                    if (!told && tells_of(table, s, p, row)) {
                                        told = true;
                                        ++rows;
                                        not_its_own += p.across.from.of != row.on || p.across.from.side != row.from;
                                        ends += !p.end_to_end.is_given();
                                    }
                    CHECK_MESSAGE(told, described(d, o));
                }
    }
    CHECK(rows > 150);
    CHECK(not_its_own > 20);
    CHECK(ends > 50);
    CHECK(turned > 5);
}

// By hand: a strap lies right side up; the outer is laid beneath it and sewn to it, so that the strap lies on the outer. Laid
// on a lining with the outer, the strap has that under it; a tab that was sewn onto the strap before lies on it. Laid
// beneath the lining, which lies wrong side up meanwhile, the strap lies wrong side up too: the tab is under it, the outer on it.
TEST_CASE("what is laid with a piece lies on it or under it, as the maker sees it") {
    const auto laid = [](bool with_outer, bool with_tab, bool beneath) {
        making<inch> d("tote");
        const cut_part lining = d.cut({.name = "lining", .width = 20_in, .height = 20_in}),
                       outer = d.cut({.name = "outer", .width = 10_in, .height = 10_in}),
                       strap = d.cut({.name = "strap", .width = 2_in, .height = 12_in}),
                       tab = d.cut({.name = "tab", .width = 1_in, .height = 1_in});
        if (with_outer) {
            d.add(laying<inch>{.piece = outer, .on = strap, .left = -1_in, .top = 8_in, .beneath = true});
            d.add(sewn(strap, edge::bottom, "1/4"_in, {strap, outer}));
        }
        if (with_tab) {
            d.add(laying<inch>{.piece = tab, .on = strap, .left = "1/2"_in, .top = 9_in});
            d.add(
                sewn(tab, edge::top, "1/8"_in, with_outer ? std::vector{tab, strap, outer} : std::vector{tab, strap}));
        }
        d.add(laying<inch>{.piece = strap, .on = lining, .left = 2_in, .top = 1_in, .beneath = beneath});
        d.add(sewn(strap, edge::top, "1/4"_in, {strap, lining}));
        const work_plan<inch> plan = work_plan_of(d);
        for (const work_group<inch>& g : plan.groups)
            if (g.steps[0].verb == work_verb::lay && g.pieces[0] == strap)
                return sentences_of(plan, g)[0];
        return std::string("it is not laid");
    };
    const auto begins = [](const std::string& said, const std::string& with) { return said.rfind(with, 0) == 0; };
    CHECK(begins(laid(false, false, false), "Lay the strap, right side up, on the right side of the lining, "));
    CHECK(begins(laid(true, false, false), "Lay the strap, with what lies under it, right side up, on the "));
    CHECK(begins(laid(false, true, false), "Lay the strap, with what lies on it, right side up, on the "));
    CHECK(begins(laid(true, true, false), "Lay the strap, with what lies on it and under it, right side up, on the "));
    const std::string turned = "With the wrong side of the lining up, lay the strap";
    CHECK(begins(laid(true, false, true), turned + ", with what lies on it, wrong side up, on it, "));
    CHECK(begins(laid(false, true, true), turned + ", with what lies under it, wrong side up, on it, "));
}
