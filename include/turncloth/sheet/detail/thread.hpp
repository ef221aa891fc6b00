// Thread for the rows of all steps: each once, as long as it is then, with its ends.
//
//   add_sewings(draft)
#ifndef TURNCLOTH_SHEET_DETAIL_THREAD_HPP
#define TURNCLOTH_SHEET_DETAIL_THREAD_HPP

#include <turncloth/sheet/detail/draft.hpp>

#include <cstdint>
#include <string>
#include <vector>

namespace turncloth {

namespace detail {

/// Rows sewn with one stitch.
template <length_unit Unit>
struct sewn_rows {
    stitch_type stitch;
    length<Unit> sewn{}; ///< with what is sewn over at the ends
};
template <length_unit Unit>
struct all_rows {
    std::vector<sewn_rows<Unit>> by_machine{};
    length<Unit> by_hand{};

    void add(const stitch_type& stitch, const length<Unit>& sewn) {
        for (sewn_rows<Unit>& r : by_machine)
            if (r.stitch.number == stitch.number && r.stitch.ratio == stitch.ratio) {
                r.sewn += sewn;
                return;
            }
        by_machine.push_back({stitch, sewn});
    }
};

/// A row that closes a seam is on both of its pieces, so it counts half.
template <length_unit Unit>
all_rows<Unit> rows_of(const work_plan<Unit>& plan) {
    all_rows<Unit> all;
    for (const work_group<Unit>& g : plan.groups)
        for (const work_step<Unit>& s : g.steps) {
            const bool named = s.verb == work_verb::zipper || s.verb == work_verb::close_up;
            if (s.verb != work_verb::sew && s.verb != work_verb::seam && !named)
                continue;
            for (const work_place<Unit>& p : s.places) {
                if (s.verb == work_verb::seam && p.sewn.value() == 0)
                    continue; // its first place has all of it
                const std::int64_t copies = named || g.every_copy ? plan.parts[p.piece.index].count : 1;
                const std::int64_t rows = copies * static_cast<std::int64_t>(p.across.at.size());
                if (s.by_hand)
                    all.by_hand += p.sewn * rows;
                else
                    all.add(s.stitch,
                            (p.sewn + s.overrun * 2 * s.runs) * rows / (s.verb == work_verb::close_up ? 2 : 1));
            }
        }
    return all;
}

template <length_unit Unit>
void add_thread(sheet_draft<Unit>& draft, const sewing<Unit>& s, const sewn_rows<Unit>& rows, length<Unit> by_hand) {
    const std::string number = std::to_string(rows.stitch.number);
    const seam_run<Unit> all[] = {{.type = rows.stitch, .sewn = rows.sewn, .count = 1, .overrun = {}}};
    const length<Unit> thread = with_waste(thread_for<Unit>(all), s.waste);
    const std::int64_t needed = spools(thread, s.spool);
    if (needed == 0)
        return draft.warn({"no stitching is sewn with stitch ", number});
    notion<Unit> n("thread, stitch " + number + " of ISO 4915, " + std::string(rows.stitch.name));
    n.figure("rows of stitching, with their ends", rows.sewn).figure("thread, with waste", thread);
    if (by_hand.value() > 0)
        n.figure("sewn by hand besides", by_hand);
    draft.made().notions.push_back(n.number("spools", needed).figure("thread on a spool", s.spool));
}

template <length_unit Unit>
void add_sewing(sheet_draft<Unit>& draft, const sewing<Unit>& s) {
    all_rows<Unit> rows = rows_of(draft.made().steps);
    if (rows.by_machine.empty())
        rows.by_machine.push_back({s.stitch, {}});
    for (const sewn_rows<Unit>& r : rows.by_machine)
        add_thread(draft, s, r, &r == rows.by_machine.data() ? rows.by_hand : length<Unit>());
}

/// One for the project: its stitch is that of the rows which no design names another for.
template <length_unit Unit>
void add_sewings(sheet_draft<Unit>& draft) {
    const auto& all = draft.from().sewings();
    if (all.size() > 1)
        draft.refuse({"thread is asked for twice, and every row is sewn once"},
                     {.kind = fault::repeated, .what = "the stitch of a project"});
    for (const sewing<Unit>& s : all)
        draft.attempt("thread for stitch " + std::to_string(s.stitch.number), {}, [&] { add_sewing(draft, s); });
}

} // namespace detail

} // namespace turncloth

#endif
