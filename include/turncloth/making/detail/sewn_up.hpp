// Steps of seams, and of what happens once all is sewn.
//
//   step_of(design, operation)        of handwork, a moment or an opening; group_of(step) a group of its own
//   begin_seam(step, design, seam)    what is the same all along it
//   note_seam(step, {design, model, boxed, bench}, seam)     which edges meet where, in how many rows, what is left open
//   note_passage(step, design, model, boxed)          how often what is put in is folded to go in
//   note_sewn_shut(step, design, model, boxed)        how long a mouth is that is closed by hand
#ifndef TURNCLOTH_MAKING_DETAIL_SEWN_UP_HPP
#define TURNCLOTH_MAKING_DETAIL_SEWN_UP_HPP

#include <turncloth/making/corner_out.hpp>
#include <turncloth/making/detail/box_model.hpp>
#include <turncloth/making/detail/boxer.hpp>
#include <turncloth/making/detail/seam_layers.hpp>
#include <turncloth/making/work_step.hpp>
#include <turncloth/marks/mapping.hpp>

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <utility>
#include <vector>

namespace turncloth::detail {

template <length_unit Unit>
work_group<Unit> group_of(work_step<Unit> step) {
    work_group<Unit> made;
    made.steps.push_back(std::move(step));
    return made;
}

template <length_unit Unit>
work_step<Unit> step_of(const making<Unit>& design, const moment& m) {
    work_step<Unit> s;
    switch (m.what) {
    case moment_kind::turn_out:
        s.verb = work_verb::turn_out;
        s.what = design.mouths()[m.index].name;
        break;
    case moment_kind::put_in:
        s.verb = work_verb::put_in;
        s.what = design.all_contents()[m.index].what;
        break;
    case moment_kind::close:
        s.verb = work_verb::close;
        s.what = design.mouths()[m.index].name;
        s.closing = design.mouths()[m.index].by;
        break;
    case moment_kind::fold:
        s.verb = work_verb::fold_up;
        break;
    case moment_kind::roll:
        s.verb = work_verb::roll;
        break;
    }
    return s;
}

template <length_unit Unit>
work_step<Unit> step_of(const making<Unit>& design, const operation& o) {
    work_step<Unit> s;
    if (o.kind == operation_kind::moment) {
        s = step_of(design, design.moments()[o.index]);
    } else if (o.kind == operation_kind::handwork) {
        s.verb = work_verb::handwork;
        s.what = design.handworks()[o.index].says;
    } else {
        s.verb = work_verb::open;
        s.what = design.mouths()[o.index].name;
        s.closing = design.mouths()[o.index].by;
    }
    s.stands_for.push_back(o);
    return s;
}

/// All along one edge of one piece that is not turned up across it: whatever is sewn to it goes straight on.
template <length_unit Unit>
bool along_one_flat_edge(const making<Unit>& design, const std::vector<chalk_line<Unit>>& side) {
    const chalk_line<Unit>& first = side.front();
    return std::all_of(side.begin(), side.end(),
                       [&](const chalk_line<Unit>& l) { return l.on == first.on && l.from == first.from; }) &&
           std::none_of(design.creases().begin(), design.creases().end(), [&](const crease<Unit>& c) {
               return c.turn == turning::quarter && c.on() == first.on && c.at.is_level() != first.is_level();
           });
}

/// Pieces side by side, in one flat whole or round a rim: the seam along them goes on from one to the next without a corner.
template <length_unit Unit>
bool goes_straight_on(const making<Unit>& design, const seam_of<Unit>& seam) {
    const auto along_one_edge = [](const std::vector<chalk_line<Unit>>& side) {
        return std::all_of(side.begin(), side.end(),
                           [&](const chalk_line<Unit>& l) { return l.from == side.front().from; });
    };
    if (seam.beyond != beyond_seam::quarter)
        return along_one_edge(seam.one) && along_one_edge(seam.other);
    return along_one_flat_edge(design, seam.one) || along_one_flat_edge(design, seam.other);
}

template <length_unit Unit>
void begin_seam(work_step<Unit>& s, const making<Unit>& design, const seam_of<Unit>& seam) {
    s.verb = work_verb::seam;
    s.on = seam.other.front().on;
    s.stitch = seam.stitch;
    s.overrun = seam.overrun;
    s.by_hand = seam.by_hand;
    s.pressed = seam.pressed;
    s.straight = goes_straight_on(design, seam);
    s.fit.taken_up = seam.taken_up;
    s.fit.spans = seam.spans;
}

/// A line from the cut edge that it runs along: of the corner, where one is cut out there.
template <length_unit Unit>
seen_distances<Unit> across_of(const making<Unit>& design, const chalk_line<Unit>& l) {
    return {{l.on, l.from, false, corner_cut_beside(design, l)}, {l.in.from_datum() - cut_out_beside(design, l)}};
}
/// Where it begins and ends, from the cut left or top edge.
template <length_unit Unit>
seen_distances<Unit> along_of(const making<Unit>& design, const chalk_line<Unit>& l) {
    return {{l.on, l.is_level() ? edge::left : edge::top, false}, {l.begin(), l.end_on(design.parts()[l.on.index])}};
}
template <length_unit Unit>
bool is_edge_to_edge(const making<Unit>& design, const chalk_line<Unit>& l) {
    const part<Unit>& p = design.parts()[l.on.index];
    return along_of(design, l).at == std::vector<length<Unit>>{length<Unit>(), l.is_level() ? p.width : p.height};
}

/// Whether a seam joins what is laid to what it is laid on, so that it is opened out to lie there.
template <length_unit Unit>
bool joins(const making<Unit>& design, const laying<Unit>& l) {
    const auto has = [](const std::vector<chalk_line<Unit>>& side, const cut_part& p) {
        return std::any_of(side.begin(), side.end(), [&](const chalk_line<Unit>& line) { return line.on == p; });
    };
    return std::any_of(design.seams().begin(), design.seams().end(), [&](const seam_of<Unit>& s) {
        return s.beyond == beyond_seam::flat &&
               ((has(s.one, l.piece) && has(s.other, l.on)) || (has(s.one, l.on) && has(s.other, l.piece)));
    });
}

/// Where the spans of a seam meet whose two sides differ. They are marked as executed<U>::boxed has them: from where the
/// lines begin to meet, which is the left or upper end of a side that goes on from there clockwise on `one`, and of one
/// that does not on `other`. Where one list would run backwards it is measured from the other end of its piece.
template <length_unit Unit>
void mark_spans(work_place<Unit>& p, const making<Unit>& design, const seam_of<Unit>& s, std::size_t k) {
    const auto forward = [](edge e) { return e == edge::top || e == edge::right; };
    const bool one_forward = forward(s.one[k].from), other_forward = !forward(s.other[k].from);
    const seen_distances<Unit> one = along_of(design, s.one[k]), other = along_of(design, s.other[k]);
    const length<Unit> a = one.at[1] - one.at[0], b = other.at[1] - other.at[0];
    p.surplus = a < b ? b - a : a - b;
    p.marks.from = one.from;
    p.meets_marks.from = other.from;
    const even_mapping<Unit> marks(std::max(a, b), std::min(a, b), s.spans, s.graduation);
    for (std::int64_t i = 1; i < s.spans; ++i) {
        const std::int64_t m = one_forward ? i : s.spans - i; // so that the marks on `one` run on from its start
        const length<Unit> on_long = marks.mark_on_long(m).from_datum(), on_short = marks.mark_on_short(m).from_datum();
        const length<Unit> to_one = a < b ? on_short : on_long, to_other = a < b ? on_long : on_short;
        p.marks.at.push_back(one_forward ? one.at[0] + to_one : one.at[1] - to_one);
        p.meets_marks.at.push_back(other_forward ? other.at[0] + to_other : other.at[1] - to_other);
    }
    if (one_forward != other_forward) {
        const bool level = s.other[k].is_level();
        const part<Unit>& cut = design.parts()[s.other[k].on.index];
        p.meets_marks.from.side = level ? edge::right : edge::bottom;
        for (length<Unit>& l : p.meets_marks.at)
            l = (level ? cut.width : cut.height) - l;
    }
}

template <length_unit Unit, class Bench>
struct seam_made {
    const making<Unit>& design;
    const flat_model<Unit>& model;
    const box_model<Unit>& boxed;
    const Bench& bench;
};
template <length_unit Unit, class Bench>
seam_made(const making<Unit>&, const flat_model<Unit>&, const box_model<Unit>&, const Bench&) -> seam_made<Unit, Bench>;

/// Each line of a mouth that opens this seam, once: along the first side where it is told of, or else along the other.
template <length_unit Unit, class Bench>
void note_openings(work_step<Unit>& s, const seam_made<Unit, Bench>& by, std::size_t seam) {
    const seam_of<Unit>& sewn = by.design.seams()[seam];
    std::vector<std::size_t> mouths;
    for (const auto& o : by.boxed.openings())
        if (by.boxed.pairs()[o.pair].seam == seam && std::find(mouths.begin(), mouths.end(), o.mouth) == mouths.end())
            mouths.push_back(o.mouth);
    for (const std::size_t m : mouths) {
        const mouth<Unit>& open = by.design.mouths()[m];
        const std::size_t before = s.left_open.size();
        for (const std::vector<chalk_line<Unit>>* side : {&sewn.one, &sewn.other})
            for (const chalk_line<Unit>& l : open.at)
                if (s.left_open.size() == before || side == &sewn.one)
                    if (std::any_of(side->begin(), side->end(), [&](const chalk_line<Unit>& edge_line) {
                            return edge_line.on == l.on && edge_line.from == l.from;
                        }))
                        s.left_open.push_back({open.name, across_of(by.design, l).from, along_of(by.design, l)});
    }
}

template <length_unit Unit, class Bench>
void note_seam(work_step<Unit>& s, const seam_made<Unit, Bench>& by, std::size_t seam) {
    const seam_of<Unit>& sewn = by.design.seams()[seam];
    const std::size_t first = s.places.size();
    for (std::size_t k = 0; k < sewn.one.size(); ++k) {
        const chalk_line<Unit>&one = sewn.one[k], &other = sewn.other[k];
        const flat_work::layers there = layers_of_seam(by.model, by.bench, sewn, k);
        work_place<Unit> p{.piece = one.on, .side = one.from};
        p.across = across_of(by.design, one);
        if (!is_edge_to_edge(by.design, one))
            p.along = along_of(by.design, one);
        p.meets = across_of(by.design, other);
        p.meets_along = along_of(by.design, other);
        p.least = there.least;
        p.most = there.most;
        if (sewn.taken_up != surplus::none)
            mark_spans(p, by.design, sewn, k);
        s.places.push_back(std::move(p));
        if (std::find(s.through.begin(), s.through.end(), other.on) == s.through.end())
            s.through.push_back(other.on);
    }
    const auto runs = by.boxed.runs(seam);
    s.runs = static_cast<std::int64_t>(runs.size());
    for (const auto& run : runs)
        s.places[first].sewn += by.model.length_of_whole(run.sewn);
    note_openings(s, by, seam);
}

template <length_unit Unit>
void note_passage(work_step<Unit>& s, const making<Unit>& design, const flat_model<Unit>& model,
                  const box_model<Unit>& boxed) {
    const std::size_t contents = design.moments()[s.stands_for.front().index].index;
    for (const passage<Unit>& p : boxer<Unit>(design, model, boxed).run().passages)
        if (p.contents == contents)
            s.folds = p.folded;
}

template <length_unit Unit>
void note_sewn_shut(work_step<Unit>& s, const making<Unit>& design, const flat_model<Unit>& model,
                    const box_model<Unit>& boxed) {
    const std::size_t mouth = design.moments()[s.stands_for.front().index].index;
    const chalk_line<Unit>& l = design.mouths()[mouth].at.front();
    work_place<Unit> p{.piece = l.on, .side = l.from};
    p.sewn = model.length_of_whole(boxed.opening(mouth));
    s.places.push_back(std::move(p));
}

} // namespace turncloth::detail

#endif
