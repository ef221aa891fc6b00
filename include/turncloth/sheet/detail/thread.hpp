// Thread for the rows of stitching on all pieces.
//
//   add_sewings(draft)
#ifndef TURNCLOTH_SHEET_DETAIL_THREAD_HPP
#define TURNCLOTH_SHEET_DETAIL_THREAD_HPP

#include <turncloth/sheet/detail/draft.hpp>

#include <string>

namespace turncloth {

namespace detail {

/// A row that joins two pieces is on both, so it counts half.
template <length_unit Unit>
length<Unit> row_length(const sheet_piece<Unit>& p, const sheet_line<Unit>& l, const sewing<Unit>& s) {
    const bool joins = l.of_finish && p.made_from.shape().finish_of(l.parallel_to).joins();
    if (s.rows == (joins ? stitched_rows::hemming : stitched_rows::joining))
        return {};
    const length<Unit> row = l.ends - l.begins + s.overrun * 2;
    return joins ? row / 2 : row;
}

template <length_unit Unit>
void add_sewing(sheet_draft<Unit>& draft, const sewing<Unit>& s) {
    length<Unit> sewn;
    for (const sheet_piece<Unit>& p : draft.made().pieces)
        for (const sheet_line<Unit>& l : p.lines)
            if (l.kind == line_kind::stitching)
                sewn += row_length(p, l, s) * p.made_from.count();
    const std::string number = std::to_string(s.stitch.number);
    if (sewn.value() == 0)
        return draft.warn("no stitching is sewn with stitch " + number);
    const seam_run<Unit> all[] = {{.type = s.stitch, .sewn = sewn, .count = 1, .overrun = {}}};
    const length<Unit> thread = with_waste(thread_for<Unit>(all), s.waste);
    notion<Unit> n("thread, stitch " + number + " of ISO 4915, " + std::string(s.stitch.name));
    n.figure("rows of stitching, with their ends", sewn).figure("thread, with waste", thread);
    draft.made().notions.push_back(n.number("spools", spools(thread, s.spool)).figure("thread on a spool", s.spool));
}

template <length_unit Unit>
void add_sewings(sheet_draft<Unit>& draft) {
    for (const sewing<Unit>& s : draft.from().sewings())
        draft.attempt("thread for stitch " + std::to_string(s.stitch.number), {}, [&] { add_sewing(draft, s); });
}

} // namespace detail

} // namespace turncloth

#endif
