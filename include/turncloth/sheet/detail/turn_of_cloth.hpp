// Flat work has no thickness: what an allowance holds for the turn of cloth beyond its last fold is taken off what is
// measured across that edge once it is turned.
//
//   give_turn_of_cloth(groups, i, panel)     of steps done to the i-th piece, cut for that panel
#ifndef TURNCLOTH_SHEET_DETAIL_TURN_OF_CLOTH_HPP
#define TURNCLOTH_SHEET_DETAIL_TURN_OF_CLOTH_HPP

#include <turncloth/making/work_step.hpp>
#include <turncloth/panel/panel.hpp>
#include <turncloth/sheet/detail/edges.hpp>

#include <array>
#include <cstddef>
#include <vector>

namespace turncloth::detail {

template <length_unit Unit>
void give_turn_of_cloth(std::vector<work_group<Unit>>& groups, std::size_t i, const panel<Unit>& shape) {
    std::array<std::size_t, 4> folded{};
    std::array<length<Unit>, 4> taken{};
    const auto beside = [&](edge one, edge other) {
        return taken[static_cast<std::size_t>(one)] + taken[static_cast<std::size_t>(other)];
    };
    for (work_group<Unit>& g : groups) {
        for (work_step<Unit>& s : g.steps)
            for (work_place<Unit>& p : s.places) {
                const finish<Unit>& f = shape.finish_of(p.side);
                const auto e = static_cast<std::size_t>(p.side);
                if (s.verb == work_verb::fold && p.piece.index == i && ++folded[e] == f.folds().size())
                    taken[e] = f.allowance() - f.folds().back().from_datum();
                else if (s.verb == work_verb::sew && p.end_to_end.index == i)
                    p.sewn -= is_level(p.side) ? beside(edge::left, edge::right) : beside(edge::top, edge::bottom);
            }
        if (g.check && g.check->of.index == i) {
            g.check->width -= beside(edge::left, edge::right);
            g.check->height -= beside(edge::top, edge::bottom);
        }
    }
}

} // namespace turncloth::detail

#endif
