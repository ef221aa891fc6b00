// Thread for the rows of all steps: each once, as long as it is then, with its ends.
//
//   add_sewings(draft)
#ifndef TURNCLOTH_SHEET_DETAIL_THREAD_HPP
#define TURNCLOTH_SHEET_DETAIL_THREAD_HPP

#include <turncloth/sheet/detail/draft.hpp>

#include <string>

namespace turncloth {

namespace detail {

template <length_unit Unit>
struct sewn_rows {
    length<Unit> by_machine{}, by_hand{}; ///< with what is sewn over at the ends; hand sewing has none
};

/// A row that closes a seam is on both of its pieces, so it counts half.
template <length_unit Unit>
sewn_rows<Unit> rows_of(const work_plan<Unit>& plan) {
    sewn_rows<Unit> all;
    for (const work_group<Unit>& g : plan.groups)
        for (const work_step<Unit>& s : g.steps) {
            const bool named = s.verb == work_verb::zipper || s.verb == work_verb::close_up;
            if (s.verb != work_verb::sew && !named)
                continue;
            for (const work_place<Unit>& p : s.places) {
                const std::int64_t copies = named || g.every_copy ? plan.parts[p.piece.index].count : 1;
                const std::int64_t rows = copies * static_cast<std::int64_t>(p.across.at.size());
                if (s.by_hand)
                    all.by_hand += p.sewn * rows;
                else
                    all.by_machine += (p.sewn + s.overrun * 2) * rows / (s.verb == work_verb::close_up ? 2 : 1);
            }
        }
    return all;
}

template <length_unit Unit>
void add_sewing(sheet_draft<Unit>& draft, const sewing<Unit>& s) {
    const sewn_rows<Unit> rows = rows_of(draft.made().steps);
    const std::string number = std::to_string(s.stitch.number);
    const seam_run<Unit> all[] = {{.type = s.stitch, .sewn = rows.by_machine, .count = 1, .overrun = {}}};
    const length<Unit> thread = with_waste(thread_for<Unit>(all), s.waste);
    const std::int64_t needed = spools(thread, s.spool);
    if (needed == 0)
        return draft.warn("no stitching is sewn with stitch " + number);
    notion<Unit> n("thread, stitch " + number + " of ISO 4915, " + std::string(s.stitch.name));
    n.figure("rows of stitching, with their ends", rows.by_machine).figure("thread, with waste", thread);
    if (rows.by_hand.value() > 0)
        n.figure("sewn by hand besides", rows.by_hand);
    draft.made().notions.push_back(n.number("spools", needed).figure("thread on a spool", s.spool));
}

/// One stitch for all that the machine sews: a second is refused.
template <length_unit Unit>
void add_sewings(sheet_draft<Unit>& draft) {
    const auto& all = draft.from().sewings();
    if (all.size() > 1)
        draft.refuse({"thread is asked for twice, and every row is sewn once",
                      {.kind = fault::repeated, .what = "the stitch of a project"}});
    for (const sewing<Unit>& s : all)
        draft.attempt("thread for stitch " + std::to_string(s.stitch.number), {}, [&] { add_sewing(draft, s); });
}

} // namespace detail

} // namespace turncloth

#endif
