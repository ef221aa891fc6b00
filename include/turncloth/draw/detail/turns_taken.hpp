// What turns of cloth have taken up of a thing that is drawn. Flat work is drawn without thickness, so an edge that cloth
// went round is drawn half a turn further out than a maker finds it; sizes are written as she measures them.
//
//   turns_taken<U> turns;  turns.note(group, step)     what the folds of a step take up, in the order of work
//   turns.size_of(lies, table)                         width and height of a stack, as it is measured
//   turns.at(table, part, side)                        what was taken up at that side of a part, on the table
//
//   const auto [width, height] = turns.size_of(lies, table);
#ifndef TURNCLOTH_DRAW_DETAIL_TURNS_TAKEN_HPP
#define TURNCLOTH_DRAW_DETAIL_TURNS_TAKEN_HPP

#include <turncloth/draw/detail/lying_picture.hpp>
#include <turncloth/making/on_table.hpp>
#include <turncloth/making/work_step.hpp>

#include <array>
#include <cstddef>
#include <cstdint>
#include <map>
#include <set>
#include <utility>

namespace turncloth::detail {

template <length_unit Unit>
class turns_taken {
public:
    void note(const work_group<Unit>& g, const work_step<Unit>& s) {
        if (s.verb != work_verb::fold)
            return;
        for (const work_place<Unit>& p : s.places)
            if (p.goes_round > length<Unit>())
                taken_[{p.piece.index, g.every_copy ? every_copy : p.piece.copy}][number(p.side)] = p.goes_round;
    }

    length<Unit> at(const table_work<Unit>& table, const cut_part& of, edge side) const {
        for (const edge own : all_edges)
            if (table.on_table(of, own) == side)
                return of_edge(of, own);
        return {};
    }

    /// Each side is where the part is that reaches furthest there.
    std::pair<length<Unit>, length<Unit>> size_of(const plies_lying<Unit>& lies, const table_work<Unit>& table) const {
        auto [width, height] = detail::size_of(lies);
        if (taken_.empty())
            return {width, height};
        const table_area<Unit> all = extent_of(lies);
        std::array<length<Unit>, 4> out{};
        std::set<std::pair<std::size_t, std::int64_t>> seen;
        for (const ply_lying<Unit>& p : lies.plies)
            if (seen.insert({p.of.index, p.of.copy}).second)
                for (const edge side : all_edges)
                    if (reach(table.extent(p.of), side) == reach(all, side))
                        out[number(side)] = at(table, p.of, side);
        return {width - out[number(edge::left)] - out[number(edge::right)],
                height - out[number(edge::top)] - out[number(edge::bottom)]};
    }

private:
    static constexpr std::int64_t every_copy = -1;
    static std::size_t number(edge e) { return static_cast<std::size_t>(e); }

    length<Unit> of_edge(const cut_part& of, edge own) const {
        length<Unit> sum;
        for (const std::int64_t copy : {every_copy, of.copy})
            if (const auto found = taken_.find({of.index, copy}); found != taken_.end())
                sum += found->second[number(own)];
        return sum;
    }
    static length<Unit> reach(const table_area<Unit>& a, edge side) {
        return side == edge::left ? a.left : side == edge::right ? a.right : side == edge::top ? a.top : a.bottom;
    }

    std::map<std::pair<std::size_t, std::int64_t>, std::array<length<Unit>, 4>> taken_{};
};

} // namespace turncloth::detail

#endif
