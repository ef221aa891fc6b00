// Thread, read off the steps of a making: each row once, as long as it is at that moment.
//
//   stitched<U>             runs sewn by machine, alike rows together; the length sewn by hand
//   stitched_in(plan)
//
//   const auto s = stitched_in(work_plan_of(roll));
//   thread_for<inch>(s.runs);          // notions/thread.hpp: each run at its stitch's ratio, with its ends
#ifndef TURNCLOTH_MAKING_STITCHED_HPP
#define TURNCLOTH_MAKING_STITCHED_HPP

#include <turncloth/making/work_step.hpp>
#include <turncloth/measure/irrational.hpp>
#include <turncloth/notions/bar_tack.hpp>
#include <turncloth/notions/thread.hpp>

#include <cstdint>
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

    void add(const seam_run<Unit>& run) {
        for (seam_run<Unit>& r : runs)
            if (r.sewn == run.sewn && r.type.number == run.type.number && r.type.ratio == run.type.ratio &&
                r.overrun == run.overrun) {
                r.count += run.count;
                return;
            }
        runs.push_back(run);
    }
};

namespace detail {

/// How many rows a place of the step stands for; a seam has all of its rows at its first place.
template <length_unit Unit>
std::int64_t rows_at(const work_place<Unit>& p, const work_step<Unit>& s, std::int64_t copies) {
    switch (s.verb) {
    case work_verb::sew:
    case work_verb::zipper:
    case work_verb::close_up:
        return copies * static_cast<std::int64_t>(p.across.at.size());
    case work_verb::apply:
    case work_verb::seam:
        return p.sewn.value() == 0 ? 0 : copies * s.runs;
    case work_verb::close:
        return s.closing == closed_by::hand ? 1 : 0;
    default:
        return 0;
    }
}

/// The two diagonals of its box, each up to a sixteenth of the unit, as no ruler shows them.
template <length_unit Unit>
void add_cross(stitched<Unit>& all, const work_place<Unit>& p, const work_step<Unit>& s, std::int64_t copies) {
    all.add({s.stitch, diagonal(s.width, s.height, length_of<Unit>({1, 16}), rounding::up),
             copies * 2 * static_cast<std::int64_t>(p.along.at.size()), s.overrun});
}

/// As its stitches lie, up to a sixteenth of the unit; of a bar whose size is not stated nothing is counted.
template <length_unit Unit>
void add_bars(stitched<Unit>& all, const work_place<Unit>& p, const work_step<Unit>& s, std::int64_t copies) {
    if (s.stitches > 0)
        all.add({s.stitch, sewn_in_bar(bar_of_box(s.width, s.height, s.stitches), length_of<Unit>({1, 16})),
                 copies * static_cast<std::int64_t>(p.along.at.size()), length<Unit>()});
}

/// Of a seam in several rows each is told as an even share: their sum is what counts. A row that closes a seam is told
/// with both of its pieces, so it counts half.
template <length_unit Unit>
void add_rows(stitched<Unit>& all, const work_place<Unit>& p, const work_step<Unit>& s, std::int64_t copies) {
    if (s.verb == work_verb::set && s.spot == spot_kind::cross)
        return add_cross(all, p, s, copies);
    if (s.verb == work_verb::set && s.spot == spot_kind::bar_tack)
        return add_bars(all, p, s, copies);
    const std::int64_t rows = rows_at(p, s, copies);
    if (rows == 0)
        return;
    const std::int64_t shares = s.verb == work_verb::seam ? s.runs : 1, sides = s.verb == work_verb::close_up ? 2 : 1;
    const length<Unit> sewn = p.sewn / (shares * sides);
    if (s.by_hand || s.verb == work_verb::close)
        all.by_hand += sewn * rows;
    else
        all.add({s.stitch, sewn, rows, s.overrun / sides});
}

} // namespace detail

/// A mouth in a seam that is closed by hand is sewn by hand. Time grows with the places of the steps.
template <length_unit Unit>
stitched<Unit> stitched_in(const work_plan<Unit>& plan) {
    stitched<Unit> all;
    for (const work_group<Unit>& g : plan.groups)
        for (const work_step<Unit>& s : g.steps)
            for (const work_place<Unit>& p : s.places) {
                const bool every = g.every_copy || s.verb == work_verb::zipper || s.verb == work_verb::close_up;
                detail::add_rows(all, p, s, every ? plan.parts[p.piece.index].count : 1);
            }
    return all;
}

TURNCLOTH_ONCE(stitched<inch> stitched_in(const work_plan<inch>&));
TURNCLOTH_ONCE(stitched<centimetre> stitched_in(const work_plan<centimetre>&));

} // namespace turncloth

#endif
