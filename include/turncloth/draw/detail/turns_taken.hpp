// What turns of cloth have taken up of a thing that is drawn. Flat work has no thickness, so that an edge that cloth went
// round lies half a turn further out than a maker finds it: what is drawn is drawn in to where she does.
//
//   turns_taken<U> turns;  turns.note(group, step)     what the folds of a step take up, in the order of work
//   turns.as_measured(lies, table)                     a stack as a maker finds it
//   turns.as_measured(segment, part, table)            a line of a part, the same
//
//   const plies_lying<inch> found = turns.as_measured(table.plies(outer), table);
#ifndef TURNCLOTH_DRAW_DETAIL_TURNS_TAKEN_HPP
#define TURNCLOTH_DRAW_DETAIL_TURNS_TAKEN_HPP

#include <turncloth/draw/detail/lying_picture.hpp>
#include <turncloth/making/on_table.hpp>
#include <turncloth/making/work_step.hpp>

#include <algorithm>
#include <array>
#include <cstddef>
#include <cstdint>
#include <map>
#include <optional>
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

    /// Each part is drawn in to where its own edges are found.
    plies_lying<Unit> as_measured(plies_lying<Unit> lies, const table_work<Unit>& table) const {
        for (auto* list : {&lies.threads, &lies.spots})
            for (thread_lying<Unit>& t : *list)
                t.at = as_measured(t.at, lies.plies[t.ply].of, table);
        for (ply_lying<Unit>& p : lies.plies)
            if (const auto found = limits_of(p.of, table))
                for (table_point<Unit>& c : p.corners)
                    c = within(*found, c);
        return lies;
    }
    table_segment<Unit> as_measured(const table_segment<Unit>& s, const cut_part& of,
                                    const table_work<Unit>& table) const {
        const auto found = limits_of(of, table);
        return found ? table_segment<Unit>{within(*found, s.from), within(*found, s.to)} : s;
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
    /// As far as the part is found to reach, where cloth went round an edge of it.
    std::optional<table_area<Unit>> limits_of(const cut_part& of, const table_work<Unit>& table) const {
        std::array<length<Unit>, 4> out{};
        bool some = false;
        for (const edge own : all_edges)
            if (const length<Unit> round = of_edge(of, own); round > length<Unit>()) {
                out[number(table.on_table(of, own))] = round;
                some = true;
            }
        if (!some)
            return std::nullopt;
        const table_area<Unit> a = table.extent(of);
        return table_area<Unit>{a.left + out[number(edge::left)], a.top + out[number(edge::top)],
                                a.right - out[number(edge::right)], a.bottom - out[number(edge::bottom)]};
    }
    static table_point<Unit> within(const table_area<Unit>& a, const table_point<Unit>& p) {
        return {std::clamp(p.x, a.left, a.right), std::clamp(p.y, a.top, a.bottom)};
    }

    std::map<std::pair<std::size_t, std::int64_t>, std::array<length<Unit>, 4>> taken_{};
};

} // namespace turncloth::detail

#endif
