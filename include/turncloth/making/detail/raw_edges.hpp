// Raw edges of cloth that frays, when all is sewn: those that are in sight, and those inside that no row holds. Of parts,
// and of slits cut into them.
//
//   raw_edges(design, model, bench, rows).found()      rows: what was met, sewn_row by sewn_row
//
// An edge is inside where cloth lies over and under it. What a seam joins is seen from its right side alone, and what is
// turned out has its edges inside then. A row along it holds it if it goes through that ply and another where both
// are still inside; it holds as far beyond its ends as it lies from the edge. Edges along which a seam runs are held by
// that, what a gap lies on by sewing it up by hand, and what is folded across a corner by the hems that it lies in. The sides
// of a slit behind a tape are held by the tape's own rows, and of what is turned out only the tape hides them on its right side.
// Not looked at: clips, which end short of the row of their allowance, and what is bought woven to its width (a tape, set into a
// piece).
#ifndef TURNCLOTH_MAKING_DETAIL_RAW_EDGES_HPP
#define TURNCLOTH_MAKING_DETAIL_RAW_EDGES_HPP

#include <turncloth/making/corner_out.hpp>
#include <turncloth/making/detail/bound.hpp>
#include <turncloth/making/detail/model.hpp>
#include <turncloth/panel/names.hpp>

#include <algorithm>
#include <array>
#include <cstddef>
#include <optional>
#include <span>
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
                of_[bench_.root_of(model.number_of(design.mouths()[m.index].at.front().on))].turned_out = true;
        for (const moment& m : design.moments())
            if (m.what == moment_kind::close && design.mouths()[m.index].by == closed_by::hand)
                for (const chalk_line<Unit>& l : design.mouths()[m.index].at)
                    note_sewn_up(model.line(l, l.in));
        for (const crease<Unit>& c : design.creases())
            if (c.across)
                of_[model.number_of(c.across->on)].corners.push_back(*c.across);
        slits_.resize(design.snips().size());
        for (std::size_t i = 0; i < slits_.size(); ++i)
            if (of_part& p = of_[model.flat().snips[i].at.part];
                design.snips()[i].kind == snip_kind::slit && !is_in_seam(p, design.snips()[i]))
                p.slits.push_back(i);
        for (const flat_work::sewn_row& row : rows)
            note(row);
    }

    std::vector<making_fault> found() {
        for (std::size_t i = 0; i < of_.size(); ++i)
            if (bench_.is_root(i))
                look_through(bench_.stack_of(i), of_[i].turned_out);
        for (std::size_t i = 0; i < of_.size(); ++i)
            for (const edge e : all_edges)
                tell(i, e);
        for (std::size_t i = 0; i < slits_.size(); ++i)
            tell_of_slit(i);
        return std::move(found_);
    }

private:
    using whole = flat_work::whole;
    using spot_type = flat_work::spot;

    /// A stretch of a row in a part's own spots; `set_in`: it goes through what is set into the part.
    struct own_row {
        flat_work::table_line at{};
        flat_work::stretch run{};
        bool set_in = false;
    };
    struct left_raw {
        bool seen = false, loose = false;
    };
    struct of_part {
        bool frays = true, turned_out = false;
        std::array<bool, 4> seamed{}; ///< by edge, and so its raw ones
        std::array<left_raw, 4> raw{};
        std::vector<own_row> rows{};
        std::vector<std::size_t> slits{};         ///< in it, by number
        std::vector<corner_line<Unit>> corners{}; ///< folded across
        bool is_seamed() const { return std::find(seamed.begin(), seamed.end(), true) != seamed.end(); }
    };
    /// A cut side of a ply, as it lies: upright at x = at, or level; the ply lies on its `inward` side. Of an edge of its
    /// part, or of a slit in it, by number.
    struct side {
        std::size_t ply;
        std::optional<edge> own;
        std::size_t slit;
        flat_work::table_line at{};
        flat_work::stretch run{};
        whole inward = 1;
        flat_work::table_line beside(whole off) const { return {at.level, at.at + inward * off}; }
    };
    /// A row along a side: how far inward of it, from where to where, and where it has the ply's cloth.
    struct row_along {
        whole off = 0;
        flat_work::stretch run{}, there{};
    };
    /// Where cloth lies under the ply and over it, so far inward of a side.
    struct cloth_beside {
        whole off = 0;
        std::vector<flat_work::stretch> under{}, over{};
    };

    static std::size_t number(edge e) { return static_cast<std::size_t>(e); }
    /// A corner cut out between two edges that are sewn in seams lies in these.
    bool is_in_seam(const of_part& p, const snip<Unit>& s) const {
        const auto corner = corner_cut_out(design_, s);
        return corner && p.seamed[number(s.at.from)] && p.seamed[number(corner->end)];
    }

    /// Through one layer alone a row holds nothing.
    void note(const flat_work::sewn_row& row) {
        for (const flat_work::sewn_span& s : row.spans)
            for (const auto& p : s.plies)
                if (s.plies.size() > 1 && of_[p.part].frays) {
                    const flat_work::lie back = inverse(row.how(p));
                    of_[p.part].rows.push_back({carried(row.at, back), carried({s.from, s.to}, row.at, back),
                                                std::any_of(s.plies.begin(), s.plies.end(), [&](const auto& q) {
                                                    return is_set_into(q.part, p.part);
                                                })});
                }
    }
    /// A gap that is sewn up by hand at last: what it lies on is turned in there.
    void note_sewn_up(const flat_work::flat_line& l) {
        of_[l.part].rows.push_back({l.at, stretch_of(l, model_.flat().parts[l.part]), false});
    }
    bool is_set_into(std::size_t piece, std::size_t part) const {
        const flat_work::flat_part& p = model_.flat().parts[piece];
        return p.set_into && p.on == part;
    }

    void look_through(const flat_work::stack& in, bool turned_out) {
        plies_ = in.plies;
        round_.clear();
        for (const flat_work::ply& p : plies_)
            round_.push_back(bounds_of(p.area));
        for (std::size_t k = 0; k < plies_.size(); ++k)
            look_at(k, turned_out);
    }
    void look_at(std::size_t k, bool turned_out) {
        const flat_work::ply& p = plies_[k];
        if (!of_[p.part].frays)
            return;
        const flat_work::lie back = inverse(p.how);
        const flat_work::bounds& round = round_[k];
        for (std::size_t i = 0; i < p.area.size(); ++i) {
            const spot_type &a = p.area[i], &b = p.area[i + 1 == p.area.size() ? 0 : i + 1];
            const auto own = cut_edge_of(p.part, back(a), back(b));
            if (!own || of_[p.part].seamed[number(*own)])
                continue;
            const bool level = a.y == b.y;
            const whole at = level ? a.y : a.x, from = level ? a.x : a.y, to = level ? b.x : b.y;
            judge({k,
                   own,
                   0,
                   {level, at},
                   {std::min(from, to), std::max(from, to)},
                   at == (level ? round.top : round.left) ? whole{1} : whole{-1}},
                  turned_out);
        }
        for (const std::size_t i : of_[p.part].slits)
            look_at_slit(k, i, turned_out);
    }
    /// Its sides, and its ends where cloth is cut away between them, as far as that ply has them.
    void look_at_slit(std::size_t k, std::size_t slit, bool turned_out) {
        const flat_work::ply& p = plies_[k];
        const flat_work::bounds hole = carried(hole_of(slit), p.how);
        const auto look = [&](bool level, whole at, whole from, whole to, whole inward) {
            const flat_work::stretch there = within(p.area, {level, at});
            const flat_work::stretch run{std::max(from, there.from), std::min(to, there.to)};
            if (!there.is_nothing() && !run.is_nothing())
                judge({k, {}, slit, {level, at}, run, inward}, turned_out);
        };
        look(true, hole.top, hole.left, hole.right, -1);
        look(true, hole.bottom, hole.left, hole.right, 1);
        look(false, hole.left, hole.top, hole.bottom, -1);
        look(false, hole.right, hole.top, hole.bottom, 1);
    }
    flat_work::bounds hole_of(std::size_t slit) const {
        const flat_work::flat_snip& s = model_.flat().snips[slit];
        const auto [begins, ends] = stretch_of(s.at, model_.flat().parts[s.at.part]);
        const whole low = s.at.at.at - s.half_width, high = s.at.at.at + s.half_width;
        return s.at.at.level ? flat_work::bounds{begins, low, ends, high} : flat_work::bounds{low, begins, high, ends};
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
        find_rows_along(s);
        beside_.clear();
        std::vector<whole> stops = {s.run.from, s.run.to};
        const auto stop_at = [&](const flat_work::stretch& ends) {
            for (const whole v : {ends.from, ends.to})
                if (s.run.from < v && v < s.run.to)
                    stops.push_back(v);
        };
        for (const auto* lies : {&cloth_at(s, 1).under, &cloth_at(s, 1).over})
            for (const flat_work::stretch& there : *lies)
                stop_at(there);
        stop_at(within(plies_[s.ply].area, s.beside(1)));
        for (const row_along& r : along_)
            stop_at({r.run.from - r.off, r.run.to + r.off});
        std::sort(stops.begin(), stops.end());
        left_raw& left = raw_of(s);
        for (std::size_t k = 0; k + 1 < stops.size(); ++k) {
            if (stops[k] == stops[k + 1])
                continue;
            const whole middle = (stops[k] + stops[k + 1]) / 2;
            if (s.own ? !turned_out && !is_inside(s, middle, 1) : !is_hidden(s, middle, turned_out))
                left.seen = true;
            else if (!is_held(s, middle, turned_out) && !is_in_corner(s, middle))
                left.loose = true;
        }
    }

    left_raw& raw_of(const side& s) {
        if (s.own)
            return of_[plies_[s.ply].part].raw[number(*s.own)];
        return slits_[s.slit];
    }

    /// Looked up once for each distance, since every stretch of a side is asked about at the same few.
    const cloth_beside& cloth_at(const side& s, whole off) {
        const auto known =
            std::find_if(beside_.begin(), beside_.end(), [&](const cloth_beside& c) { return c.off == off; });
        if (known != beside_.end())
            return *known;
        cloth_beside made{off, {}, {}};
        const flat_work::table_line line = s.beside(off);
        for (std::size_t k = 0; k < plies_.size(); ++k) {
            if (k == s.ply || !runs_inside(line, round_[k]))
                continue;
            if (const flat_work::stretch there = within(plies_[k].area, line); !there.is_nothing())
                (k < s.ply ? made.under : made.over).push_back(there);
        }
        beside_.push_back(std::move(made));
        return beside_.back();
    }
    static bool runs_inside(const flat_work::table_line& l, const flat_work::bounds& round) {
        return l.level ? round.top < l.at && l.at < round.bottom : round.left < l.at && l.at < round.right;
    }
    /// Whether cloth lies over and under the ply there, so far inward; of what a seam joins, on its right side.
    bool is_inside(const side& s, whole along, whole off) {
        const auto lies_in = [&](const std::vector<flat_work::stretch>& cloth) {
            return std::any_of(cloth.begin(), cloth.end(), [&](const flat_work::stretch& there) {
                return there.from <= along && along < there.to;
            });
        };
        const cloth_beside& lies = cloth_at(s, off);
        const std::size_t part = plies_[s.ply].part;
        if (!of_[part].is_seamed())
            return lies_in(lies.over) && lies_in(lies.under);
        return lies_in(bench_.body_of(part)->how.right_up() ? lies.over : lies.under);
    }

    /// A slit's side; of what is turned out, by what is set into it on its right side.
    bool is_hidden(const side& s, whole along, bool turned_out) {
        return turned_out ? is_behind_tape(s, {along, along + 1}, plies_[s.ply].how.right_up())
                          : is_inside(s, along, 1);
    }
    bool is_behind_tape(const side& s, const flat_work::stretch& run, std::optional<bool> over = {}) const {
        for (std::size_t k = 0; k < plies_.size(); ++k) {
            const flat_work::stretch there = within(plies_[k].area, s.beside(1));
            if (is_set_into(plies_[k].part, plies_[s.ply].part) && over.value_or(k > s.ply) == (k > s.ply) &&
                there.from < run.to && run.from < there.to)
                return true;
        }
        return false;
    }

    /// Whether a row so far inward is nearer to the opposite edge of the part, which lies raw on the same ply.
    bool is_of_opposite(const side& s, whole off) const {
        if (!s.own)
            return false;
        const flat_work::ply& p = plies_[s.ply];
        const flat_work::flat_part& cut = model_.flat().parts[p.part];
        const flat_work::bounds own = carried(round_[s.ply], inverse(p.how));
        const bool up_down = is_level(*s.own);
        const whole depth = up_down ? own.bottom - own.top : own.right - own.left;
        return depth == (up_down ? cut.height : cut.width) && off * 2 > depth;
    }
    /// Those of its part that lie on that ply along the side: few of all that there are.
    void find_rows_along(const side& s) {
        const flat_work::ply& p = plies_[s.ply];
        along_.clear();
        const bool by_tape_alone = !s.own && is_behind_tape(s, s.run);
        for (const own_row& r : of_[p.part].rows) {
            if (by_tape_alone && !r.set_in)
                continue;
            const flat_work::table_line line = carried(r.at, p.how);
            const whole off = (line.at - s.at.at) * s.inward;
            if (line.level != s.at.level || off < 0)
                continue;
            if (const flat_work::stretch there = within_or_on(p.area, line); !there.is_nothing())
                along_.push_back({off, carried(r.run, r.at, p.how), there});
        }
    }
    bool is_held(const side& s, whole along, bool turned_out) {
        return std::any_of(along_.begin(), along_.end(), [&](const row_along& r) {
            return r.there.from <= along && along < r.there.to && r.run.from - r.off <= along &&
                   along < r.run.to + r.off &&
                   (turned_out ? !is_of_opposite(s, r.off) : is_inside(s, along, std::max(r.off - 1, whole{1})));
        });
    }

    /// What is folded across a corner lies in the hems that are sewn over it.
    bool is_in_corner(const side& s, whole along) const {
        if (!s.own)
            return false;
        const flat_work::ply& p = plies_[s.ply];
        const spot_type on = inverse(p.how)(s.at.level ? spot_type{along, s.at.at} : spot_type{s.at.at, along});
        const flat_work::flat_part& cut = model_.flat().parts[p.part];
        const auto& corners = of_[p.part].corners;
        return std::any_of(corners.begin(), corners.end(), [&](const corner_line<Unit>& c) {
            const whole leg = model_.on_table(c.leg);
            return (*s.own == c.level && (c.upright == edge::left ? on.x : cut.width - on.x) <= leg) ||
                   (*s.own == c.upright && (c.level == edge::top ? on.y : cut.height - on.y) <= leg);
        });
    }

    void tell(std::size_t part, edge e) {
        const std::string name = name_of(design_, model_.part_of(part));
        tell(of_[part].raw[number(e)], "the " + std::string(name_of(e)) + " edge of " + name,
             {.kind = fault::unsuitable, .what = "a raw edge", .index = model_.part_of(part).index, .where = name});
    }
    void tell_of_slit(std::size_t i) {
        const chalk_line<Unit>& at = design_.snips()[i].at;
        const std::string name = name_of(design_, at.on);
        tell(slits_[i],
             "the slit in " + name + ", " + to_text(at.in.from_datum()) + " from its " + std::string(name_of(at.from)) +
                 " edge,",
             {.kind = fault::unsuitable, .what = "a raw edge of a slit", .index = i, .where = name});
    }
    void tell(const left_raw& left, const std::string& what, const refusal& facts) {
        if (left.seen)
            found_.push_back({what + " is left raw in sight, and its cloth frays", facts});
        if (left.loose)
            found_.push_back({what + " is left raw, and no row along it holds it; its cloth frays", facts});
    }

    const making<Unit>& design_;
    const flat_model<Unit>& model_;
    const bench_type& bench_;
    std::vector<of_part> of_;
    std::vector<left_raw> slits_{}; ///< by snip
    std::vector<making_fault> found_{};
    // While one stack is looked through, and while one side is.
    std::span<const flat_work::ply> plies_{};
    std::vector<flat_work::bounds> round_{}; ///< each ply
    std::vector<row_along> along_{};
    std::vector<cloth_beside> beside_{};
};

} // namespace turncloth::detail

#endif
