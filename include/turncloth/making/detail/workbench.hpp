// Flat work carried out: parts that are laid, creased, sewn, cut and pierced, one operation after another.
//
//   class workbench(design)           every part by itself at first, the face up that it is to lie with
//     .lay(i)  .crease(i)  .sew(i)  .snip(i)  .pierce(i)      the i-th of each; what is wrong, or nothing
//     .stack_of(part)  .rows()  .spots()
//
// A row is not told how many layers it has: it meets what lies there at that moment, span by span. What it is sewn to is
// kept in each part's own spots, so that it moves with the cloth.
#ifndef TURNCLOTH_MAKING_DETAIL_WORKBENCH_HPP
#define TURNCLOTH_MAKING_DETAIL_WORKBENCH_HPP

#include <turncloth/making/detail/flat_design.hpp>
#include <turncloth/making/detail/sewn_row.hpp>
#include <turncloth/making/detail/stack.hpp>

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <utility>
#include <vector>

namespace turncloth::detail::flat_work {

enum class work_fault : unsigned char {
    none,
    no_cloth,   ///< the line runs inside no cloth of its part as it lies then
    off_cloth,  ///< it begins or ends where the part's cloth does not lie then
    turns_all,  ///< a crease that turns nothing, or leaves nothing
    laid_twice, ///< the two lie in one stack already
    not_met,    ///< a wall that is nowhere under the row
    too_many    ///< a wall under the row that it is not to go through
};

struct work_problem {
    work_fault what = work_fault::none;
    std::size_t part = nowhere;
    stretch asked{}, there{};
};

template <class>
class lazy_workbench {
public:
    explicit lazy_workbench(const flat_design& design) : design_(&design) {
        for (std::size_t i = 0; i < design.parts.size(); ++i) {
            const flat_part& p = design.parts[i];
            ply whole_piece{i, i, {}, {{0, 0}, {p.width, 0}, {p.width, p.height}, {0, p.height}}, true};
            if (!p.right_up) { // turned left to right
                whole_piece.how = {-1, 0, 0, 1, p.width, 0};
                whole_piece.area = carried(whole_piece.area, whole_piece.how);
            }
            stacks_.push_back({{whole_piece}});
            in_.push_back(i);
        }
        body_at_.resize(design.parts.size());
        holes_.resize(design.parts.size());
        walls_ = design.parts.size();
    }

    const flat_design& design() const { return *design_; }
    const stack& stack_of(std::size_t part) const { return stacks_[in_[part]]; }
    const std::vector<bounds>& holes_of(std::size_t part) const { return holes_[part]; }
    const std::vector<std::vector<bounds>>& holes() const { return holes_; }
    /// The part that its stack is named by: the one at the root of its layings.
    std::size_t root_of(std::size_t part) const { return in_[part]; }
    bool is_root(std::size_t part) const { return root_of(part) == part; }

    /// The part's body as it lies.
    const ply* body_of(std::size_t part) const { return &stack_of(part).plies[body_at_[part]]; }

    work_problem lay(std::size_t part) {
        const flat_part& p = design_->parts[part];
        if (p.on == nowhere)
            return {};
        if (in_[part] == in_[p.on])
            return {work_fault::laid_twice, part};
        const lie wanted = after(p.there, body_of(p.on)->how);
        const lie carry = after(inverse(body_of(part)->how), wanted);
        const std::size_t from = in_[part], to = in_[p.on];
        flat_work::lay(std::move(stacks_[from]), stacks_[to], carry, p.beneath);
        stacks_[from] = {};
        if (p.set_into)
            for (ply& laid : stacks_[to].plies)
                if (laid.part == part)
                    laid.wall = body_of(p.on)->wall;
        for (std::size_t& in : in_)
            in = in == from ? to : in;
        find_bodies(stacks_[to]);
        return {};
    }

    work_problem crease(std::size_t i) {
        const flat_crease& c = design_->creases[i];
        stack& s = stacks_[in_[c.part]];
        const ply* on = ply_of_crease(s, c);
        if (on == nullptr)
            return {work_fault::no_cloth, c.part};
        std::optional<std::pair<std::size_t, std::size_t>> wall;
        if (c.begins_wall)
            wall = std::pair(c.part, walls_++);
        if (!fold(s, moving_with(c.part), carried(c.stays, on->how), c.over, wall))
            return {work_fault::turns_all, c.part};
        find_bodies(s);
        return {};
    }

    /// What was met, and all in which it is not what was to be met.
    std::pair<sewn_row, std::vector<work_problem>> sew(std::size_t i) const {
        const flat_row& r = design_->rows[i];
        const std::optional<row_there> found = row_now(r.along);
        if (!found)
            return {{}, {{work_fault::no_cloth, r.along.part}}};
        std::vector<work_problem> wrong;
        if (found->run.from < found->cloth.from || found->run.to > found->cloth.to)
            wrong.push_back({work_fault::off_cloth, r.along.part, found->run, found->cloth});
        sewn_row met = met_along(*found, r.along.part);
        compare(met, r, wrong);
        return {std::move(met), std::move(wrong)};
    }
    /// Of a row that was found sound.
    row_layers layers_under(std::size_t i, row_room& room) const {
        const flat_line& along = design_->rows[i].along;
        const std::optional<row_there> found = row_now(along);
        if (!found)
            return {};
        sewn_row met{found->at, found->run, {}, {}, {}};
        row_layers all{.at = found->at, .run = found->run};
        const stack& s = stack_of(along.part);
        each_span(met, s, room, [&](const stretch&, const std::vector<std::size_t>& plies) {
            all.most = std::max(all.most, plies.size());
            all.least = all.least == 0 ? plies.size() : std::min(all.least, plies.size());
            const std::size_t lowest = s.plies[plies.front()].part;
            all.one_lowest = all.one_lowest && (all.lowest == nowhere || all.lowest == lowest);
            all.lowest = lowest;
        });
        all.touches = !met.touched.empty();
        return all;
    }

    work_problem snip(std::size_t i) {
        const flat_snip& s = design_->snips[i];
        const auto [begins, ends] = stretch_of(s.at, design_->parts[s.at.part]);
        const whole low = s.at.at.at - s.half_width, high = s.at.at.at + s.half_width;
        holes_[s.at.part].push_back(s.at.at.level ? bounds{begins, low, ends, high} : bounds{low, begins, high, ends});
        return {};
    }

    /// The parts met at a spot from the bottom up, a part once for each of its layers.
    std::vector<std::size_t> pierce(std::size_t i) const {
        const flat_spot& s = design_->spots[i];
        const ply* on = body_of(s.part);
        const spot there = on->how(s.at);
        std::vector<std::size_t> met;
        for (const ply& p : stack_of(s.part).plies)
            if (covers(p, there))
                met.push_back(p.part);
        return met;
    }

    /// On the table: what lies beyond it is turned. Nothing where it runs inside no cloth.
    std::optional<half_plane> line_of_crease(std::size_t i) const {
        const flat_crease& c = design_->creases[i];
        const ply* on = ply_of_crease(stacks_[in_[c.part]], c);
        return on == nullptr ? std::nullopt : std::optional(carried(c.stays, on->how));
    }

    /// Whether its cloth is there: inside or on the edge of a ply, and not in what is cut away.
    bool covers(const ply& p, const spot& at) const { return inside(p, at) && !in_hole(p, at); }

    /// A part and everything that lies on it, and on that.
    std::vector<char> moving_with(std::size_t part) const {
        std::vector<char> moves(design_->parts.size(), 0);
        for (std::size_t p = 0; p < moves.size(); ++p) {
            std::size_t up = p;
            while (up != part && up != nowhere && in_[up] == in_[part])
                up = design_->parts[up].on;
            moves[p] = up == part ? 1 : 0;
        }
        return moves;
    }

private:
    void find_bodies(const stack& s) {
        for (std::size_t i = 0; i < s.plies.size(); ++i)
            if (s.plies[i].body)
                body_at_[s.plies[i].part] = i;
    }
    /// The ply with the most cloth on both sides of the line, measured by the smaller part.
    static const ply* ply_of_crease(const stack& s, const flat_crease& c) {
        const ply* best = nullptr;
        std::optional<int128> most; // of the best, measured when there is another
        const auto shared_by = [&](const ply& p) {
            const int128 one = twice_area(clipped(p.area, carried(c.stays, p.how)));
            return std::min(one, twice_area(p.area) - one);
        };
        for (const ply& p : s.plies) {
            if (p.part != c.part)
                continue;
            const sides_of_line sides = sides_of(p.area, carried(c.stays, p.how));
            if (!sides.within || !sides.beyond)
                continue;
            if (best == nullptr) {
                best = &p;
                continue;
            }
            most = most ? *most : shared_by(*best);
            if (const int128 shared = shared_by(p); shared > *most || (shared == *most && p.body)) {
                most = shared;
                best = &p;
            }
        }
        return best;
    }

    /// A row as it lies on the table, and from where to where its ply has cloth along it.
    struct row_there {
        table_line at{};
        stretch run{}, cloth{};
    };
    std::optional<row_there> row_now(const flat_line& along) const {
        const stack& s = stack_of(along.part);
        const std::optional<std::size_t> on = widest_ply(s, along.part, along.at);
        if (!on)
            return {};
        const ply& drawn = s.plies[*on];
        const table_line at = carried(along.at, drawn.how);
        const stretch cloth = within(drawn.area, at);
        return row_there{at, run_of(along, drawn, cloth), cloth};
    }
    sewn_row met_along(const row_there& found, std::size_t part) const {
        sewn_row met{found.at, found.run, {}, {}, {}};
        const stack& s = stack_of(part);
        std::vector<std::size_t> as_sewn(s.plies.size(), nowhere);
        row_room room;
        each_span(met, s, room, [&](const stretch& span, const std::vector<std::size_t>& plies) {
            sewn_span& made = met.spans.emplace_back(sewn_span{span.from, span.to, {}});
            made.plies.reserve(plies.size());
            for (const std::size_t i : plies) {
                if (as_sewn[i] == nowhere)
                    as_sewn[i] = note_as_sewn(met, s.plies[i]);
                made.plies.push_back({s.plies[i].part, as_sewn[i]});
            }
        });
        return met;
    }
    static std::size_t note_as_sewn(sewn_row& met, const ply& p) {
        const auto found = std::find_if(met.as_sewn.begin(), met.as_sewn.end(), [&](const sewn_row::ply_sewn& known) {
            return known.part == p.part && known.how == p.how;
        });
        const auto at = static_cast<std::size_t>(found - met.as_sewn.begin());
        if (found == met.as_sewn.end())
            met.as_sewn.push_back({p.part, p.how});
        return at;
    }

    static stretch run_of(const flat_line& l, const ply& drawn, const stretch& there) {
        const auto along = [&](whole v) {
            const spot p = drawn.how(l.at.level ? spot{v, l.at.at} : spot{l.at.at, v});
            const table_line t = carried(l.at, drawn.how);
            return t.level ? p.x : p.y;
        };
        const bool reversed = along(1) < along(0);
        std::optional<whole> first = reversed ? l.ends : l.begins, last = reversed ? l.begins : l.ends;
        return {first ? along(*first) : there.from, last ? along(*last) : there.to};
    }

    /// Cut at every end of a ply and of a hole under the row, each piece through the plies that run all along it, by
    /// their places in the stack. What it only touches is noted.
    template <class Note>
    void each_span(sewn_row& met, const stack& s, row_room& room, Note note) const {
        std::vector<row_room::under>& cloth = room.cloth;
        std::vector<whole>& stops = room.stops;
        cloth.clear();
        cloth.reserve(s.plies.size());
        stops.reserve(2 * s.plies.size() + 2);
        stops.assign({met.run.from, met.run.to});
        const auto stop_at = [&](whole v) {
            if (met.run.from < v && v < met.run.to)
                stops.push_back(v);
        };
        for (std::size_t i = 0; i < s.plies.size(); ++i) {
            const ply& p = s.plies[i];
            const stretch in = within(p.area, met.at);
            const stretch run{std::max(in.from, met.run.from), std::min(in.to, met.run.to)};
            if (in.is_nothing()) {
                note_touching(met, p);
            } else if (!run.is_nothing()) {
                cloth.push_back({i, run});
                stop_at(run.from), stop_at(run.to);
                any_hole_along(p, met.at, [&](const stretch& gone) {
                    stop_at(gone.from), stop_at(gone.to);
                    return false;
                });
            }
        }
        std::sort(stops.begin(), stops.end());
        stops.erase(std::unique(stops.begin(), stops.end()), stops.end());
        std::vector<std::size_t>& here = room.here;
        for (std::size_t k = 0; k + 1 < stops.size(); ++k) {
            const stretch span{stops[k], stops[k + 1]};
            here.clear();
            for (const row_room::under& u : cloth)
                if (u.run.from <= span.from && span.to <= u.run.to && !is_gone(s.plies[u.ply], met.at, span))
                    here.push_back(u.ply);
            if (!here.empty())
                note(span, here);
        }
    }
    static void note_touching(sewn_row& met, const ply& p) {
        const bounds b = bounds_of(p.area);
        const bool on_edge =
            met.at.level ? b.top == met.at.at || b.bottom == met.at.at : b.left == met.at.at || b.right == met.at.at;
        const whole low = met.at.level ? b.left : b.top, high = met.at.level ? b.right : b.bottom;
        if (on_edge && low < met.run.to && met.run.from < high)
            met.touched.push_back(p.part);
    }
    /// A needle on the very edge of a hole goes through no cloth that holds.
    template <class Test>
    bool any_hole_along(const ply& p, const table_line& at, Test test) const {
        return std::any_of(holes_[p.part].begin(), holes_[p.part].end(), [&](const bounds& own) {
            const bounds h = carried(own, p.how);
            return !h.is_nothing() &&
                   (at.level ? h.top <= at.at && at.at <= h.bottom : h.left <= at.at && at.at <= h.right) &&
                   test(at.level ? stretch{h.left, h.right} : stretch{h.top, h.bottom});
        });
    }
    bool is_gone(const ply& p, const table_line& at, const stretch& span) const {
        return any_hole_along(p, at, [&](const stretch& g) { return g.from <= span.from && span.to <= g.to; });
    }

    static void compare(const sewn_row& met, const flat_row& r, std::vector<work_problem>& wrong) {
        std::vector<std::size_t> parts;
        for (const sewn_span& span : met.spans)
            for (const auto& p : span.plies)
                if (std::find(parts.begin(), parts.end(), p.part) == parts.end())
                    parts.push_back(p.part);
        const auto has = [](const std::vector<std::size_t>& list, std::size_t part) {
            return std::find(list.begin(), list.end(), part) != list.end();
        };
        for (const std::size_t wanted : r.through)
            if (!has(parts, wanted))
                wrong.push_back({work_fault::not_met, wanted});
        std::sort(parts.begin(), parts.end());
        for (const std::size_t part : parts)
            if (!has(r.through, part))
                wrong.push_back({work_fault::too_many, part});
    }

    /// Inside, or on the edge.
    static bool inside(const ply& p, const spot& at) {
        const bounds& round = p.area.round();
        if (at.x < round.left || round.right < at.x || at.y < round.top || round.bottom < at.y)
            return false;
        if (p.area.is_upright())
            return true;
        bool left = false, right = false;
        for (std::size_t i = 0; i < p.area.size(); ++i) {
            const spot &a = p.area[i], &b = p.area[i + 1 == p.area.size() ? 0 : i + 1];
            const int128 turn = int128{b.x - a.x} * (at.y - a.y) - int128{b.y - a.y} * (at.x - a.x);
            left |= turn > 0;
            right |= turn < 0;
        }
        return !(left && right);
    }
    bool in_hole(const ply& p, const spot& at) const {
        return std::any_of(holes_[p.part].begin(), holes_[p.part].end(), [&](const bounds& own) {
            const bounds h = carried(own, p.how);
            return h.left < at.x && at.x < h.right && h.top < at.y && at.y < h.bottom;
        });
    }

    const flat_design* design_;
    std::vector<stack> stacks_{};
    std::vector<std::size_t> in_{};      ///< the stack of each part
    std::vector<std::size_t> body_at_{}; ///< each part's body, by its place in its stack
    std::vector<std::vector<bounds>> holes_{};
    std::size_t walls_ = 0;
};
using workbench = lazy_workbench<void>;

} // namespace turncloth::detail::flat_work

#endif
