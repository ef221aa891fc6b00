// Thread, read off the rows of a design as they were sewn: each row once, as long as it was at that moment.
//
//   stitched<U>             runs sewn by machine, alike rows together; the length closed by hand
//   stitched_in(design, made)
//
//   const auto s = stitched_in(roll, execute(roll));
//   thread_for<inch>(s.runs);          // notions/thread.hpp: each run at its stitch's ratio, with its ends
#ifndef TURNCLOTH_MAKING_STITCHED_HPP
#define TURNCLOTH_MAKING_STITCHED_HPP

#include <turncloth/making/executed.hpp>
#include <turncloth/notions/thread.hpp>

#include <algorithm>
#include <vector>

namespace turncloth {

template <length_unit Unit>
struct stitched {
    std::vector<seam_run<Unit>> runs{}; ///< in the order of work; rows of one length, stitch and overrun are one run
    length<Unit> by_hand{};             ///< no machine's ratio holds for it
    length<Unit> by_machine() const {
        length<Unit> sum;
        for (const seam_run<Unit>& r : runs)
            sum += r.sewn * r.count;
        return sum;
    }
};

namespace detail {

/// How a row or a seam is sewn.
template <length_unit Unit>
struct sewn_how {
    stitch_type stitch;
    length<Unit> overrun{};
    bool by_hand = false;
};
template <length_unit Unit>
sewn_how<Unit> how_sewn(const making<Unit>& design, const operation& o) {
    if (o.kind == operation_kind::seam) {
        const seam_of<Unit>& s = design.seams()[o.index];
        return {s.stitch, s.overrun, s.by_hand};
    }
    const stitching<Unit>& s = design.rows()[o.index];
    return {s.stitch, s.overrun, s.by_hand};
}

} // namespace detail

/// `made` is what execute gives for the design. A mouth in a seam that is closed by hand is sewn by hand.
template <length_unit Unit>
stitched<Unit> stitched_in(const making<Unit>& design, const executed<Unit>& made) {
    stitched<Unit> all;
    for (const opened<Unit>& o : made.boxed.openings)
        if (design.mouths()[o.what.index].by == closed_by::hand)
            all.by_hand += o.wide;
    for (const row_met<Unit>& row : made.rows) {
        const detail::sewn_how<Unit> asked = detail::how_sewn(design, row.what);
        if (asked.by_hand) {
            all.by_hand += row.sewn;
            continue;
        }
        const auto alike = std::find_if(all.runs.begin(), all.runs.end(), [&](const seam_run<Unit>& r) {
            return r.sewn == row.sewn && r.type.number == asked.stitch.number && r.type.ratio == asked.stitch.ratio &&
                   r.overrun == asked.overrun;
        });
        if (alike == all.runs.end())
            all.runs.push_back({asked.stitch, row.sewn, 1, asked.overrun});
        else
            ++alike->count;
    }
    return all;
}

} // namespace turncloth

#endif
