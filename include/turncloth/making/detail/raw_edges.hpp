// Raw edges of cloth that frays, when all is sewn: those that are in sight, and those inside that no row holds.
//
//   raw_edges(design, model, bench, rows).found()      rows: what was met, sewn_row by sewn_row
//
// An edge is inside where cloth lies over and under it. What a seam joins is seen from its right side alone, and what is
// turned out has its edges inside then. A row along it holds it if it goes through that ply and another where both
// are still inside; it holds as far beyond its ends as it lies from the edge. Edges along which a seam runs are held by
// that; slits and clips are not looked at, nor what is bought woven to its width (a tape, set into a piece).
#ifndef TURNCLOTH_MAKING_DETAIL_RAW_EDGES_HPP
#define TURNCLOTH_MAKING_DETAIL_RAW_EDGES_HPP

#include <turncloth/making/detail/bound.hpp>
#include <turncloth/making/detail/model.hpp>
#include <turncloth/panel/names.hpp>

#include <algorithm>
#include <array>
#include <cstddef>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace turncloth::detail {

template <length_unit Unit>
class raw_edges {
public:
    using bench_type = flat_work::lazy_workbench<for_any<Unit>>;

    raw_edges(const making<Unit>& design, const flat_model<Unit>& model, const bench_type& bench,
              const std::vector<flat_work::sewn_row>& rows)
        : design_(design), model_(model), bench_(bench), of_(model.count()) {
        for (std::size_t i = 0; i < of_.size(); ++i)
            of_[i].frays = design.parts()[model.part_of(i).index].cloth.frays;
        for (const laying<Unit>& l : design.layings())
            of_[model.number_of(l.piece)].frays &= !l.set_into_one;
        for (const seam_of<Unit>& s : design.seams())
            for (const auto* lines : {&s.one, &s.other})
                for (const chalk_line<Unit>& l : *lines)
                    of_[model.number_of(l.on)].seamed[number(l.from)] = true;
        for (const moment& m : design.moments())
            if (m.what == moment_kind::turn_out && !design.mouths()[m.index].at.empty())
                of_[root(model.number_of(design.mouths()[m.index].at.front().on))].turned_out = true;
        for (const flat_work::sewn_row& row : rows)
            note(row);
    }

    std::vector<making_fault> found() {
        for (std::size_t i = 0; i < of_.size(); ++i)
            if (bench_.is_root(i))
                for (std::size_t k = 0; k < bench_.stack_of(i).plies.size(); ++k)
                    look_at(bench_.stack_of(i), k, of_[i].turned_out);
        for (std::size_t i = 0; i < of_.size(); ++i)
            for (const edge e : all_edges)
                tell(i, e);
        return std::move(found_);
    }

private:
    using whole = flat_work::whole;
    using spot_type = flat_work::spot;

    /// A stretch of a row in a part's own spots.
    struct own_row {
        flat_work::table_line at{};
        flat_work::stretch run{};
    };
    struct of_part {
        bool frays = true, turned_out = false;
        std::array<bool, 4> seamed{}, seen{}, loose{}; ///< by edge
        std::vector<own_row> rows{};
        bool is_seamed() const { return std::find(seamed.begin(), seamed.end(), true) != seamed.end(); }
    };
    /// A cut side of a ply, as it lies: upright at x = at, or level; the ply lies on its `inward` side.
    struct side {
        const flat_work::stack& in;
        std::size_t ply;
        edge own;
        flat_work::table_line at{};
        flat_work::stretch run{};
        whole inward = 1;
    };

    static std::size_t number(edge e) { return static_cast<std::size_t>(e); }
    std::size_t root(std::size_t part) const {
        while (!bench_.is_root(part))
            part = model_.flat().parts[part].on;
        return part;
    }

    /// Through one layer alone a row holds nothing.
    void note(const flat_work::sewn_row& row) {
        for (const flat_work::sewn_span& s : row.spans)
            for (const auto& p : s.plies)
                if (s.plies.size() > 1 && of_[p.part].frays) {
                    const flat_work::lie back = inverse(p.how);
                    of_[p.part].rows.push_back({carried(row.at, back), carried({s.from, s.to}, row.at, back)});
                }
    }

    void look_at(const flat_work::stack& in, std::size_t k, bool turned_out) {
        const flat_work::ply& p = in.plies[k];
        if (!of_[p.part].frays)
            return;
        const flat_work::lie back = inverse(p.how);
        const flat_work::bounds round = bounds_of(p.area);
        for (std::size_t i = 0; i < p.area.size(); ++i) {
            const spot_type &a = p.area[i], &b = p.area[i + 1 == p.area.size() ? 0 : i + 1];
            const auto own = cut_edge_of(p.part, back(a), back(b));
            if (!own || of_[p.part].seamed[number(*own)])
                continue;
            const bool level = a.y == b.y;
            const whole at = level ? a.y : a.x, from = level ? a.x : a.y, to = level ? b.x : b.y;
            judge({in,
                   k,
                   *own,
                   {level, at},
                   {std::min(from, to), std::max(from, to)},
                   at == (level ? round.top : round.left) ? whole{1} : whole{-1}},
                  turned_out);
        }
    }
    std::optional<edge> cut_edge_of(std::size_t part, const spot_type& a, const spot_type& b) const {
        const flat_work::flat_part& cut = model_.flat().parts[part];
        if (a.x == b.x)
            return a.x == 0 ? std::optional(edge::left) : a.x == cut.width ? std::optional(edge::right) : std::nullopt;
        if (a.y == b.y)
            return a.y == 0 ? std::optional(edge::top) : a.y == cut.height ? std::optional(edge::bottom) : std::nullopt;
        return {};
    }

    /// Stretch by stretch between all that begins or ends beside it.
    void judge(const side& s, bool turned_out) {
        std::vector<whole> stops = {s.run.from, s.run.to};
        const auto stop = [&](whole v) {
            if (s.run.from < v && v < s.run.to)
                stops.push_back(v);
        };
        for (const flat_work::ply& p : s.in.plies) {
            const flat_work::stretch there = within(p.area, beside(s, 1));
            stop(there.from);
            stop(there.to);
        }
        const std::vector<own_row> rows = rows_along(s);
        for (const own_row& r : rows) {
            const whole reach = reach_of(r, s);
            const flat_work::stretch run = carried(r.run, r.at, s.in.plies[s.ply].how);
            stop(run.from - reach);
            stop(run.to + reach);
        }
        std::sort(stops.begin(), stops.end());
        of_part& of = of_[s.in.plies[s.ply].part];
        for (std::size_t k = 0; k + 1 < stops.size(); ++k) {
            if (stops[k] == stops[k + 1])
                continue;
            const spot_type middle = on(s.at, (stops[k] + stops[k + 1]) / 2);
            if (!turned_out && !is_inside(s, middle, 1))
                of.seen[number(s.own)] = true;
            else if (!is_held(s, rows, middle, turned_out))
                of.loose[number(s.own)] = true;
        }
    }
    static spot_type on(const flat_work::table_line& at, whole along) {
        return at.level ? spot_type{along, at.at} : spot_type{at.at, along};
    }
    static flat_work::table_line beside(const side& s, whole inward) {
        return {s.at.level, s.at.at + s.inward * inward};
    }

    /// Whether cloth lies over and under the ply there, so far inward; of what a seam joins, on its right side.
    bool is_inside(const side& s, const spot_type& at, whole inward) const {
        const whole along = s.at.level ? at.x : at.y;
        const auto lies_there = [&](const flat_work::ply& p) {
            const flat_work::stretch there = within(p.area, beside(s, inward));
            return there.from <= along && along < there.to;
        };
        const auto here = s.in.plies.begin() + static_cast<std::ptrdiff_t>(s.ply);
        const bool over = std::any_of(here + 1, s.in.plies.end(), lies_there),
                   under = std::any_of(s.in.plies.begin(), here, lies_there);
        if (!of_[here->part].is_seamed())
            return over && under;
        return bench_.body_of(here->part)->how.right_up() ? over : under;
    }

    /// Whether a row so far inward is nearer to the opposite edge of the part, which lies raw on the same ply.
    bool is_of_opposite(const side& s, whole off) const {
        const flat_work::ply& p = s.in.plies[s.ply];
        const flat_work::flat_part& cut = model_.flat().parts[p.part];
        const flat_work::bounds own = carried(bounds_of(p.area), inverse(p.how));
        const bool up_down = is_level(s.own);
        const whole depth = up_down ? own.bottom - own.top : own.right - own.left;
        return depth == (up_down ? cut.height : cut.width) && off * 2 > depth;
    }
    whole reach_of(const own_row& r, const side& s) const {
        const whole off = carried(r.at, s.in.plies[s.ply].how).at - s.at.at;
        return off < 0 ? -off : off;
    }
    /// Those of its part that lie on that ply along the side: few of all that there are.
    std::vector<own_row> rows_along(const side& s) const {
        const flat_work::ply& p = s.in.plies[s.ply];
        std::vector<own_row> along;
        for (const own_row& r : of_[p.part].rows) {
            const flat_work::table_line line = carried(r.at, p.how);
            if (line.level == s.at.level && (line.at - s.at.at) * s.inward >= 0 &&
                !within_or_on(p.area, line).is_nothing())
                along.push_back(r);
        }
        return along;
    }
    bool is_held(const side& s, const std::vector<own_row>& rows, const spot_type& at, bool turned_out) const {
        const flat_work::ply& p = s.in.plies[s.ply];
        const whole along = s.at.level ? at.x : at.y;
        return std::any_of(rows.begin(), rows.end(), [&](const own_row& r) {
            const flat_work::table_line line = carried(r.at, p.how);
            const whole off = (line.at - s.at.at) * s.inward;
            const flat_work::stretch run = carried(r.run, r.at, p.how), there = within_or_on(p.area, line);
            return there.from <= along && along < there.to && run.from - off <= along && along < run.to + off &&
                   (turned_out ? !is_of_opposite(s, off) : is_inside(s, at, std::max(off - 1, whole{1})));
        });
    }

    void tell(std::size_t part, edge e) {
        const std::string name = name_of(design_, model_.part_of(part));
        const auto add = [&](const char* what) {
            found_.push_back({"the " + std::string(name_of(e)) + " edge of " + name + what,
                              {.kind = fault::unsuitable,
                               .what = "a raw edge",
                               .index = model_.part_of(part).index,
                               .where = name}});
        };
        if (of_[part].seen[number(e)])
            add(" is left raw in sight, and its cloth frays");
        if (of_[part].loose[number(e)])
            add(" is left raw, and no row along it holds it; its cloth frays");
    }

    const making<Unit>& design_;
    const flat_model<Unit>& model_;
    const bench_type& bench_;
    std::vector<of_part> of_;
    std::vector<making_fault> found_{};
};

} // namespace turncloth::detail

#endif
