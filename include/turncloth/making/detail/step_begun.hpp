// What is the same at every place of a step, as its operation says it.
//
//   step_begun<U>{design, model}.begin(step, task, before)      before: the task before it in its strand, or nothing
#ifndef TURNCLOTH_MAKING_DETAIL_STEP_BEGUN_HPP
#define TURNCLOTH_MAKING_DETAIL_STEP_BEGUN_HPP

#include <turncloth/making/detail/bundles.hpp>
#include <turncloth/making/detail/model.hpp>
#include <turncloth/making/detail/sewn_up.hpp>
#include <turncloth/making/work_step.hpp>

#include <cstddef>

namespace turncloth::detail {

template <length_unit Unit>
struct step_begun {
    const making<Unit>& design;
    const flat_model<Unit>& model;

    void begin(work_step<Unit>& s, const task& t, const task* before) const {
        const std::size_t i = t.what.index;
        s.film = design.parts()[t.on.index].cloth.film;
        switch (t.what.kind) {
        case operation_kind::laying: {
            const laying<Unit>& l = design.layings()[i];
            s.verb = work_verb::lay;
            s.on = l.on;
            s.up = l.up;
            s.fit = l.fit;
            s.beneath = l.beneath;
            s.upside_down = l.upside_down;
            s.on_a_seam = joins(design, l);
            return;
        }
        case operation_kind::crease:
            s.verb = work_verb::fold;
            s.on_a_seam = model.flat().creases[i].along_seam;
            s.once_more = before != nullptr && before->what.kind == operation_kind::crease && before->on == t.on;
            return;
        case operation_kind::stitching:
            s.verb = work_verb::sew;
            s.through = design.rows()[i].through;
            s.stitch = design.rows()[i].stitch;
            s.overrun = design.rows()[i].overrun;
            s.by_hand = design.rows()[i].by_hand;
            return;
        case operation_kind::snip:
            s.verb = design.snips()[i].kind == snip_kind::clip ? work_verb::clip : work_verb::slit;
            s.width = design.snips()[i].width;
            return;
        case operation_kind::spot:
            s.verb = work_verb::set;
            s.spot = design.spots()[i].what;
            s.through = design.spots()[i].through;
            s.width = design.spots()[i].width;
            s.height = design.spots()[i].height;
            return;
        case operation_kind::seam:
            return begin_seam(s, design, design.seams()[i]);
        default: // handwork, moments and openings are groups by themselves
            return;
        }
    }
};

} // namespace turncloth::detail

#endif
