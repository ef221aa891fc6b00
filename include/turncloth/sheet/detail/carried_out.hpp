// The steps of a project that says how it is made: carried out, with every fault a reason against the sheet.
//
//   steps_carried_out(draft)     the plan; empty where the making is not that of the project's pieces
//
// The making's first parts are the project's pieces, cut as they are; what it cuts besides, such as tape, follows.
#ifndef TURNCLOTH_SHEET_DETAIL_CARRIED_OUT_HPP
#define TURNCLOTH_SHEET_DETAIL_CARRIED_OUT_HPP

#include <turncloth/making/executed.hpp>
#include <turncloth/making/work_plan.hpp>
#include <turncloth/sheet/detail/draft.hpp>
#include <turncloth/sheet/detail/turn_of_cloth.hpp>

#include <algorithm>
#include <cstddef>
#include <string>
#include <utility>

namespace turncloth::detail {

/// What is made is what is cut: a making is worked out from panels, and must be of the same.
template <length_unit Unit>
void check_parts(sheet_draft<Unit>& draft, const making<Unit>& design) {
    const auto& pieces = draft.from().pieces();
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        const piece<Unit>& p = pieces[i];
        refusal facts{.kind = fault::disagree, .what = "a part of the making", .index = i, .where = p.name()};
        if (i >= design.parts().size()) {
            facts.kind = fault::missing;
            draft.refuse({"the making has no part for " + named(p.name()), facts, p.name()});
            continue;
        }
        const part<Unit>& made = design.parts()[i];
        if (made.name != p.name())
            draft.refuse({"the making's part " + std::to_string(i + 1) + " is " + named(made.name) +
                              " where the project has " + named(p.name()),
                          facts, p.name()});
        else if (made.count != p.count() || cut_size<Unit>(made.width, made.height) != p.shape().cut())
            draft.refuse({"the making cuts " + std::to_string(made.count) + " of " + named(p.name()) + ", " +
                              to_text(cut_size<Unit>(made.width, made.height)) + ", where the project cuts " +
                              std::to_string(p.count()) + ", " + to_text(p.shape().cut()),
                          facts, p.name()});
    }
}

/// A step that a project states, right after the cutting.
template <length_unit Unit>
void add_preparations(work_plan<Unit>& plan, const project<Unit>& p) {
    std::vector<work_group<Unit>> stated;
    for (const std::string& sentence : p.preparations()) {
        work_step<Unit> s;
        s.verb = work_verb::prepare;
        s.what = sentence;
        stated.push_back(group_of(std::move(s)));
    }
    const auto after_cutting = plan.groups.begin() + (plan.groups.empty() ? 0 : 1);
    plan.groups.insert(after_cutting, stated.begin(), stated.end());
}

template <length_unit Unit>
work_plan<Unit> steps_carried_out(sheet_draft<Unit>& draft) {
    making<Unit> design = *draft.from().making_stated();
    if (!draft.from().sewings().empty())
        design.sewn_by_machine(draft.from().sewings().front().stitch, draft.from().sewings().front().overrun);
    check_parts(draft, design);
    if (!draft.is_sound())
        return {};
    const executed<Unit> made = execute(design);
    for (const making_fault& f : made.faults)
        draft.refuse({f.sentence, f.facts, f.facts.where});
    work_plan<Unit> plan = work_plan_of(design, made.steps);
    for (std::size_t i = 0; i < draft.from().pieces().size(); ++i)
        give_turn_of_cloth(plan.groups, i, draft.from().pieces()[i].shape());
    add_preparations(plan, draft.from());
    return plan;
}

} // namespace turncloth::detail

#endif
