// Rows that are said as one: alike in all but the place.
//
//   join_like_rows(steps)
#ifndef TURNCLOTH_MAKING_DETAIL_LIKE_ROWS_HPP
#define TURNCLOTH_MAKING_DETAIL_LIKE_ROWS_HPP

#include <turncloth/making/work_step.hpp>

#include <cstddef>
#include <vector>

namespace turncloth::detail {

/// From one edge, at whatever distances; or as far from two edges of one piece, cut or folded alike.
template <length_unit Unit>
bool may_join(const work_place<Unit>& a, const work_place<Unit>& b) {
    const seen_edge &one = a.across.from, &other = b.across.from;
    const bool from = one == other || (one.of == other.of && one.folded == other.folded &&
                                       is_level(one.side) == is_level(other.side) && a.across.at == b.across.at);
    return from && a.piece == b.piece && a.along == b.along && a.end_to_end == b.end_to_end &&
           a.begins_on == b.begins_on && a.ends_on == b.ends_on && a.sewn == b.sewn && a.least == b.least &&
           a.most == b.most;
}

/// Rows one after another on one piece that differ in the place alone are one step.
template <length_unit Unit>
void join_like_rows(std::vector<work_step<Unit>>& steps) {
    for (std::size_t i = 0; i + 1 < steps.size();) {
        work_step<Unit>&a = steps[i], &b = steps[i + 1];
        bool alike = a.verb == work_verb::sew && b.verb == work_verb::sew && a.through == b.through &&
                     a.overrun == b.overrun && a.stitch.number == b.stitch.number && a.by_hand == b.by_hand &&
                     a.up == b.up && a.places.size() == b.places.size();
        for (std::size_t k = 0; alike && k < a.places.size(); ++k)
            alike = may_join(a.places[k], b.places[k]);
        if (!alike) {
            ++i;
            continue;
        }
        for (std::size_t k = 0, n = a.places.size(); k < n; ++k)
            if (a.places[k].across.from == b.places[k].across.from)
                a.places[k].across.at.insert(a.places[k].across.at.end(), b.places[k].across.at.begin(),
                                             b.places[k].across.at.end());
            else
                a.places.push_back(b.places[k]);
        a.stands_for.insert(a.stands_for.end(), b.stands_for.begin(), b.stands_for.end());
        steps.erase(steps.begin() + static_cast<std::ptrdiff_t>(i) + 1);
    }
}

} // namespace turncloth::detail

#endif
