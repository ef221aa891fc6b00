// Steps as the planner takes them: each as a task with all in which it may be like another, and the care that it asks for.
//
//   tasks_of(design, steps)      a task for each
//   note_care(group, parts)      the work whose cautions belong to a group
//
//   const std::vector<task> all = tasks_of(roll, steps_of(roll));
#ifndef TURNCLOTH_MAKING_DETAIL_TASKS_HPP
#define TURNCLOTH_MAKING_DETAIL_TASKS_HPP

#include <turncloth/making/detail/described.hpp>
#include <turncloth/making/detail/planner.hpp>
#include <turncloth/making/making_step.hpp>
#include <turncloth/making/work_step.hpp>

#include <algorithm>
#include <array>
#include <cstddef>
#include <iterator>
#include <optional>
#include <utility>
#include <vector>

namespace turncloth::detail {

template <length_unit Unit>
void note_family(task& t, const row<cut_edge, Unit>& each) {
    t.members = each.size();
    t.first = each.size() > 0 ? each[0].from_datum().value() : fraction();
    t.step = each.size() > 1 ? each.step().value() : fraction();
}

/// All else in which operations that a maker does as one are alike.
template <length_unit Unit>
std::array<fraction, 7> manner_of(const making<Unit>& design, const operation& o) {
    const auto flag = [](auto is) { return fraction(static_cast<int>(is)); };
    switch (o.kind) {
    case operation_kind::laying: {
        const laying<Unit>& l = design.layings()[o.index];
        return {flag(l.up),          flag(l.fit.taken_up), l.fit.of_piece.value(), l.fit.on.value(), flag(l.beneath),
                flag(l.upside_down), l.fit.spans};
    }
    case operation_kind::crease: {
        const crease<Unit>& c = design.creases()[o.index];
        if (!c.across)
            return {flag(c.over)};
        return {flag(c.over), flag(c.across->upright), flag(c.across->level), c.across->leg.value()};
    }
    case operation_kind::stitching: {
        const stitching<Unit>& r = design.rows()[o.index];
        return {r.stitch.number, r.stitch.ratio, r.overrun.value(), flag(r.by_hand)};
    }
    case operation_kind::snip: {
        const snip<Unit>& s = design.snips()[o.index]; // one sentence says from where to where for all
        return {flag(s.kind), s.width.value(), s.at.begins.value_or(length<Unit>()).value(),
                flag(s.at.ends.has_value()), s.at.ends.value_or(length<Unit>()).value()};
    }
    case operation_kind::spot:
        return {flag(design.spots()[o.index].what), design.spots()[o.index].width.value(),
                design.spots()[o.index].height.value()};
    case operation_kind::seam: // each is a step of its own
    case operation_kind::handwork:
    case operation_kind::moment:
    case operation_kind::opening:
        break;
    }
    return {static_cast<std::int64_t>(o.index)};
}

template <length_unit Unit>
task task_of(const making<Unit>& design, const making_step& step) {
    task t{.what = step.what, .phase = step.phase, .manner = manner_of(design, step.what)};
    const std::size_t i = step.what.index;
    if (step.what.kind == operation_kind::laying) {
        t.on = design.layings()[i].piece;
        t.walls = {design.layings()[i].on};
        return t;
    }
    if (step.what.kind >= operation_kind::handwork)
        return t;
    const chalk_line<Unit> l = line_of(design, step.what);
    t.on = l.on;
    t.from = l.from;
    t.in = l.in.from_datum().value();
    if (step.what.kind == operation_kind::crease) {
        t.on = design.creases()[i].on();
        t.corner = design.creases()[i].across.has_value();
    } else if (step.what.kind == operation_kind::stitching) {
        t.walls = design.rows()[i].through;
        note_family(t, design.rows()[i].each);
    } else if (step.what.kind == operation_kind::spot) {
        t.walls = design.spots()[i].through;
        note_family(t, design.spots()[i].places);
    }
    return t;
}

template <length_unit Unit>
std::vector<task> tasks_of(const making<Unit>& design, const std::vector<making_step>& steps) {
    std::vector<std::size_t> first; // number of each part's first copy
    std::size_t copies = 0;
    for (const part<Unit>& p : design.parts()) {
        first.push_back(copies);
        copies += static_cast<std::size_t>(p.count);
    }
    // Handwork, moments and openings are done to no one part: one number for all of them, beyond those of the parts.
    const auto number = [&](const cut_part& p) {
        return p.is_given() ? first[p.index] + static_cast<std::size_t>(p.copy) : copies;
    };
    std::array<std::vector<std::size_t>, operation_kinds> step_of; // by kind and index
    std::vector<task> all;
    all.reserve(steps.size());
    for (const making_step& s : steps) {
        task t = task_of(design, s);
        t.number = number(t.on);
        t.wall_numbers.reserve(t.walls.size());
        t.needs.reserve(s.needs.size());
        for (const cut_part& wall : t.walls)
            t.wall_numbers.push_back(number(wall));
        for (const step_need& n : s.needs)
            t.needs.push_back(step_of[static_cast<std::size_t>(n.first.kind)][n.first.index]);
        std::vector<std::size_t>& mine = step_of[static_cast<std::size_t>(s.what.kind)];
        mine.resize(std::max(mine.size(), s.what.index + 1));
        mine[s.what.index] = all.size();
        all.push_back(std::move(t));
    }
    return all;
}

/// The work whose cautions belong to a step; nothing where none do.
constexpr std::optional<caution::work> care_of(work_verb verb, spot_kind spot) {
    switch (verb) {
    case work_verb::cut:
    case work_verb::slit:
    case work_verb::clip:
        return caution::work::cutting;
    case work_verb::lay:
    case work_verb::pleat:
        return caution::work::pinning;
    case work_verb::fold:
        return caution::work::pressing;
    case work_verb::sew:
    case work_verb::seam:
    case work_verb::join:
    case work_verb::apply:
    case work_verb::close_up:
        return caution::work::stitching;
    case work_verb::set:
        return spot == spot_kind::eyelet || spot == spot_kind::snap ? caution::work::eyelets : caution::work::stitching;
    case work_verb::zipper:
        return caution::work::zippers;
    case work_verb::put_in:
        return caution::work::filling;
    default:
        return {};
    }
}

template <length_unit Unit>
void note_care(work_group<Unit>& g, const std::vector<work_part>& parts) {
    const auto note = [&](caution::work w) {
        if (std::find(g.care.begin(), g.care.end(), w) == g.care.end())
            g.care.push_back(w);
    };
    for (const work_step<Unit>& s : g.steps) {
        if (const auto care = care_of(s.verb, s.spot))
            note(*care);
        for (const cut_part& p : s.through)
            if (parts[p.index].bought)
                note(caution::work::zippers);
    }
}

} // namespace turncloth::detail

#endif
