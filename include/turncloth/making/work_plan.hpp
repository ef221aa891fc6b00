// The steps of a design, worked out while it is carried out: what is done as one, and where it is measured from.
//
//   work_plan_of(design)             throws as steps_of
//   work_plan_of(design, steps)      the same from what steps_of, or execute, gives
//
//   const work_plan<inch> plan = work_plan_of(roll);
//   for (const work_group<inch>& g : plan.groups)
//       std::puts(sentence_of(plan, g).c_str());            // work_words.hpp
//
// Steps are grouped once their order is known (detail/bundles.hpp), and what belongs together is then brought together
// as far as needs allow. Distances, lengths of rows and layers are those at that moment.
#ifndef TURNCLOTH_MAKING_WORK_PLAN_HPP
#define TURNCLOTH_MAKING_WORK_PLAN_HPP

#include <turncloth/making/order.hpp>
#include <turncloth/making/work_step.hpp>
#ifndef TURNCLOTH_COMPILED
#include <turncloth/making/detail/planner.hpp>
#include <turncloth/making/detail/tasks.hpp>
#endif

#include <iterator>
#include <utility>
#include <vector>

namespace turncloth {

/// `steps` are those of this design. Time grows as that of carrying it out, which design.hpp tells.
template <detail::compiled_unit Unit>
work_plan<Unit> work_plan_of(const making<Unit>& design, const std::vector<making_step>& steps);

/// Throws as steps_of.
template <detail::compiled_unit Unit>
work_plan<Unit> work_plan_of(const making<Unit>& design);

#ifndef TURNCLOTH_COMPILED
template <detail::compiled_unit Unit>
work_plan<Unit> work_plan_of(const making<Unit>& design, const std::vector<making_step>& steps) {
    work_plan<Unit> made;
    for (const part<Unit>& p : design.parts())
        made.parts.push_back({p.name, p.count});
    for (const laying<Unit>& l : design.layings())
        made.parts[l.piece.index].bought |= l.set_into_one;
    work_step<Unit> cut;
    cut.verb = work_verb::cut;
    std::vector<work_group<Unit>> planned = detail::planner<Unit>(design, detail::tasks_of(design, steps)).groups();
    made.groups.reserve(planned.size() + 1); // groups are large
    made.groups.push_back(detail::group_of(std::move(cut)));
    made.groups.insert(made.groups.end(), std::make_move_iterator(planned.begin()),
                       std::make_move_iterator(planned.end()));
    for (work_group<Unit>& g : made.groups)
        detail::note_care(g, made.parts);
    return made;
}

template <detail::compiled_unit Unit>
work_plan<Unit> work_plan_of(const making<Unit>& design) {
    return work_plan_of(design, steps_of(design));
}
#endif

TURNCLOTH_ONCE(work_plan<inch> work_plan_of(const making<inch>&, const std::vector<making_step>&));
TURNCLOTH_ONCE(work_plan<centimetre> work_plan_of(const making<centimetre>&, const std::vector<making_step>&));
TURNCLOTH_ONCE(work_plan<inch> work_plan_of(const making<inch>&));
TURNCLOTH_ONCE(work_plan<centimetre> work_plan_of(const making<centimetre>&));

} // namespace turncloth

#endif
