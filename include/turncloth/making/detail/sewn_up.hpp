// Steps of seams, and of what happens once all is sewn.
//
//   step_of(design, flat_model, operation)        of a moment or an opening; group_of(step) a group of its own
//   begin_seam(step, seam)            what is the same all along it
//   note_seam(step, design, box_model, seam)      its edges, how long it is sewn in all, what is left open
#ifndef TURNCLOTH_MAKING_DETAIL_SEWN_UP_HPP
#define TURNCLOTH_MAKING_DETAIL_SEWN_UP_HPP

#include <turncloth/making/detail/box_model.hpp>
#include <turncloth/making/work_step.hpp>

#include <algorithm>
#include <cstddef>
#include <utility>

namespace turncloth::detail {

template <length_unit Unit>
work_group<Unit> group_of(work_step<Unit> step) {
    work_group<Unit> made;
    made.steps.push_back(std::move(step));
    return made;
}

template <length_unit Unit>
work_place<Unit> sewn_shut(const making<Unit>& design, const flat_model<Unit>& model, std::size_t mouth) {
    const chalk_line<Unit>& l = design.mouths()[mouth].at.front();
    work_place<Unit> p{.piece = l.on, .side = l.from};
    p.sewn = model.length_of_whole(box_model<Unit>(design, model).opening(mouth));
    return p;
}

template <length_unit Unit>
work_step<Unit> step_of(const making<Unit>& design, const flat_model<Unit>& model, const moment& m) {
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
        if (s.closing == closed_by::hand)
            s.places.push_back(sewn_shut(design, model, m.index));
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
work_step<Unit> step_of(const making<Unit>& design, const flat_model<Unit>& model, const operation& o) {
    work_step<Unit> s;
    if (o.kind == operation_kind::moment) {
        s = step_of(design, model, design.moments()[o.index]);
    } else {
        s.verb = work_verb::open;
        s.what = design.mouths()[o.index].name;
        s.closing = design.mouths()[o.index].by;
    }
    s.stands_for.push_back(o);
    return s;
}

template <length_unit Unit>
void begin_seam(work_step<Unit>& s, const seam_of<Unit>& seam) {
    s.verb = work_verb::seam;
    s.on = seam.other.front().on;
    s.stitch = seam.stitch;
    s.overrun = seam.overrun;
    s.by_hand = seam.by_hand;
}

template <length_unit Unit>
void note_seam(work_step<Unit>& s, const making<Unit>& design, const flat_model<Unit>& model, std::size_t seam) {
    const box_model<Unit> work(design, model);
    const std::size_t first = s.places.size();
    for (const chalk_line<Unit>& l : design.seams()[seam].one) {
        work_place<Unit> p{.piece = l.on, .side = l.from};
        p.across = {{l.on, l.from, false}, {l.in.from_datum()}};
        s.places.push_back(std::move(p));
    }
    for (const chalk_line<Unit>& l : design.seams()[seam].other)
        if (std::find(s.through.begin(), s.through.end(), l.on) == s.through.end())
            s.through.push_back(l.on);
    const auto runs = work.runs(seam);
    s.runs = static_cast<std::int64_t>(runs.size());
    for (const auto& run : runs)
        s.places[first].sewn += model.length_of_whole(run.sewn);
    for (const auto& o : work.openings())
        if (work.pairs()[o.pair].seam == seam)
            s.what = design.mouths()[o.mouth].name;
}

} // namespace turncloth::detail

#endif
