// Thread for the rows of all steps: each once, as long as it is then, with its ends.
//
//   add_sewings(draft)
#ifndef TURNCLOTH_SHEET_DETAIL_THREAD_HPP
#define TURNCLOTH_SHEET_DETAIL_THREAD_HPP

#include <turncloth/making/stitched.hpp>
#include <turncloth/sheet/detail/draft.hpp>

#include <algorithm>
#include <cstdint>
#include <string>
#include <vector>

namespace turncloth {

namespace detail {

template <length_unit Unit>
void add_thread(sheet_draft<Unit>& draft, const sewing<Unit>& s, const stitched<Unit>& rows) {
    const stitch_type stitch = rows.runs.front().type;
    const std::string number = std::to_string(stitch.number);
    length<Unit> sewn;
    for (const seam_run<Unit>& r : rows.runs)
        sewn += (r.sewn + r.overrun * 2) * r.count;
    const length<Unit> thread = with_waste(thread_for<Unit>(rows.runs), s.waste);
    const std::int64_t needed = spools(thread, s.spool);
    if (needed == 0)
        return draft.warn({"no stitching is sewn with stitch ", number});
    notion<Unit> n("thread, stitch " + number + " of ISO 4915, " + std::string(stitch.name));
    n.figure("rows of stitching, with their ends", sewn).figure("thread, with waste", thread);
    if (rows.by_hand.value() > 0)
        n.figure("sewn by hand besides", rows.by_hand);
    draft.made().notions.push_back(
        n.number("spools", needed).sold(sold_as::as_told).figure("thread on a spool", s.spool).sold(sold_as::as_told));
}

/// One list for each stitch; what is sewn by hand is told with the first.
template <length_unit Unit>
std::vector<stitched<Unit>> by_stitch(const stitched<Unit>& all, const sewing<Unit>& s) {
    std::vector<stitched<Unit>> lists;
    for (const seam_run<Unit>& r : all.runs) {
        const auto same = std::find_if(lists.begin(), lists.end(), [&](const stitched<Unit>& list) {
            const stitch_type& t = list.runs.front().type;
            return t.number == r.type.number && t.ratio == r.type.ratio;
        });
        (same == lists.end() ? lists.emplace_back() : *same).runs.push_back(r);
    }
    if (lists.empty())
        lists.push_back({.runs = {{s.stitch, {}, 0, {}}}});
    lists.front().by_hand = all.by_hand;
    return lists;
}

template <length_unit Unit>
void add_sewing(sheet_draft<Unit>& draft, const sewing<Unit>& s) {
    for (const stitched<Unit>& rows : by_stitch(stitched_in(draft.made().steps), s))
        add_thread(draft, s, rows);
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
