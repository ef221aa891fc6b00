// Flat work has no thickness. What an allowance holds for the turn of cloth goes half before its last fold and half after
// it, so that fold lies half a turn beyond the edge that it comes to be. In cloth of the thickness that was stated:
//
//   give_turn_of_cloth(groups, i, panel)     of steps done to the i-th piece, cut for that panel
//
// the last fold says how much of what it turns goes round the edge, and all that is measured from such an edge
// afterwards, or across it, is measured from where the edge then is.
#ifndef TURNCLOTH_SHEET_DETAIL_TURN_OF_CLOTH_HPP
#define TURNCLOTH_SHEET_DETAIL_TURN_OF_CLOTH_HPP

#include <turncloth/making/work_step.hpp>
#include <turncloth/panel/panel.hpp>
#include <turncloth/sheet/detail/edges.hpp>

#include <array>
#include <cstddef>
#include <cstdint>
#include <map>
#include <vector>

namespace turncloth::detail {

template <length_unit Unit>
class turn_of_cloth_giver {
public:
    turn_of_cloth_giver(std::size_t part, const panel<Unit>& shape) : part_(part), shape_(shape) {}

    void give(work_group<Unit>& g) {
        for (work_step<Unit>& s : g.steps)
            for (work_place<Unit>& p : s.places)
                if (s.verb == work_verb::fold && p.piece.index == part_ && !p.corner)
                    fold(p, g.every_copy);
                else
                    measure(s, p);
        if (g.check && g.check->of.index == part_) {
            g.check->width -= beside(g.check->of, edge::left, edge::right);
            g.check->height -= beside(g.check->of, edge::top, edge::bottom);
        }
    }

private:
    static constexpr std::int64_t every_copy = -1;
    static std::size_t number(edge e) { return static_cast<std::size_t>(e); }

    void fold(work_place<Unit>& p, bool of_all) {
        adjust(p.across);
        const finish<Unit>& f = shape_.finish_of(p.side);
        const std::int64_t copy = of_all ? every_copy : p.piece.copy;
        if (f.joins() || ++folded_[copy][number(p.side)] != f.folds().size())
            return; // what lies beyond the fold of a French seam or a fell is its second seam
        p.goes_round = f.allowance() - f.folds().back().from_datum();
        round_[copy][number(p.side)] = p.goes_round;
    }
    void measure_once(work_step<Unit>& s) {
        for (seen_distances<Unit>* d : {&s.marks_on_piece, &s.marks_on_other})
            adjust(*d);
        for (seam_opening<Unit>& o : s.left_open)
            adjust(o.along);
    }
    void measure(work_step<Unit>& s, work_place<Unit>& p) {
        for (seen_distances<Unit>* d : {&p.across, &p.along, &p.meets, &p.meets_along})
            adjust(*d);
        if (&p == &s.places.front())
            measure_once(s);
        if (s.verb == work_verb::sew && p.end_to_end.index == part_)
            p.sewn -= is_level(p.side) ? beside(p.end_to_end, edge::left, edge::right)
                                       : beside(p.end_to_end, edge::top, edge::bottom);
        draw_in(p);
    }
    /// A row that ends at such an edge ends where it then is, whichever edge that is measured from.
    void draw_in(work_place<Unit>& p) const {
        const length<Unit> begins = round_at(p.begins_on), ends = round_at(p.ends_on);
        p.sewn -= begins + ends;
        if (p.along.at.size() != 2)
            return;
        const bool backward = p.along.at[1] < p.along.at[0]; // measured from beyond its end
        p.along.at[0] += backward ? -begins : begins;
        p.along.at[1] -= backward ? -ends : ends;
    }
    length<Unit> round_at(const seen_edge& e) const {
        return e.of.index == part_ && e.folded ? round(e.of, e.side) : length<Unit>();
    }
    /// From an edge of this piece that its last fold made. A distance below zero lies beyond it, so that one grows.
    void adjust(seen_distances<Unit>& d) const {
        if (d.from.of.index != part_ || !d.from.folded)
            return;
        for (length<Unit>& l : d.at)
            l -= round(d.from.of, d.from.side);
    }

    length<Unit> round(const cut_part& of, edge e) const {
        length<Unit> sum;
        for (const std::int64_t copy : {every_copy, of.copy})
            if (const auto found = round_.find(copy); found != round_.end())
                sum += found->second[number(e)];
        return sum;
    }
    length<Unit> beside(const cut_part& of, edge one, edge other) const { return round(of, one) + round(of, other); }

    std::size_t part_;
    const panel<Unit>& shape_;
    std::map<std::int64_t, std::array<std::size_t, 4>> folded_{}; ///< by copy
    std::map<std::int64_t, std::array<length<Unit>, 4>> round_{};
};

template <length_unit Unit>
void give_turn_of_cloth(std::vector<work_group<Unit>>& groups, std::size_t i, const panel<Unit>& shape) {
    turn_of_cloth_giver<Unit> giver(i, shape);
    for (work_group<Unit>& g : groups)
        giver.give(g);
}

} // namespace turncloth::detail

#endif
