// Rows, slits and mouths where they lie at last, after all that was folded since.
//
//   struct bound_row       a stretch of a row, with the lowest and the highest ply that it holds together
//   class final_lines(stack, holes)     of one stack, as it lies at last
//     .bind(row, out)                   a sewn row; false where what it holds no longer lies together: it is torn
//     .open(line, part, ...)            where a line of a part's own spots lies, ply by ply
//
// A row keeps how each ply lay when it was sewn. Wherever a ply of that part lies now, the spots of the row are carried
// from then to now, and the plies that have the same piece of the row in the same place are those that it holds.
#ifndef TURNCLOTH_MAKING_DETAIL_BOUND_HPP
#define TURNCLOTH_MAKING_DETAIL_BOUND_HPP

#include <turncloth/making/detail/workbench.hpp>

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <utility>
#include <vector>

namespace turncloth::detail::flat_work {

struct bound_row {
    table_line at{};
    stretch run{};
    std::uint32_t low = 0, high = 0; ///< plies, by their place in the stack
};

struct opened_line {
    table_line at{};
    stretch run{};
    std::uint32_t ply = 0;
    std::size_t mouth = nowhere; ///< nowhere: a slit
    bool cuts = true;            ///< the ply is open there; otherwise the mouth only ends the hollow
};

/// As within, and along a side of the cell too.
constexpr stretch within_or_on(const cell& area, const table_line& l) {
    const stretch inside = within(area, l);
    const bounds& round = area.round();
    if (!inside.is_nothing() ||
        (l.at != (l.level ? round.top : round.left) && l.at != (l.level ? round.bottom : round.right)))
        return inside;
    if (area.is_upright())
        return l.level ? stretch{round.left, round.right} : stretch{round.top, round.bottom};
    for (std::size_t i = 0; i < area.size(); ++i) {
        const spot &p = area[i], &q = area[i + 1 == area.size() ? 0 : i + 1];
        if ((l.level ? p.y : p.x) == l.at && (l.level ? q.y : q.x) == l.at) {
            const whole a = l.level ? p.x : p.y, b = l.level ? q.x : q.y;
            return a < b ? stretch{a, b} : stretch{b, a};
        }
    }
    return {};
}

template <class>
class lazy_final_lines {
public:
    lazy_final_lines(const stack& s, const std::vector<std::vector<bounds>>& holes) : stack_(&s), holes_(&holes) {
        plies_of_.resize(holes.size());
        for (std::size_t i = 0; i < s.plies.size(); ++i) {
            plies_of_[s.plies[i].part].push_back(static_cast<std::uint32_t>(i));
            own_round_.push_back(carried(bounds_of(s.plies[i].area), inverse(s.plies[i].how)));
        }
    }

    /// Appends the row's stretches. Returns whether all that was sewn together still lies together.
    bool bind(const sewn_row& row, std::vector<bound_row>& out) {
        bool whole_row = true;
        seen_.assign(row.as_sewn.size(), {});
        now_.clear();
        for (const sewn_span& span : row.spans) {
            held_.clear();
            stops_.assign({span.from, span.to});
            for (const sewn_span::pierced& p : span.plies)
                hold(row, span, p.as_sewn);
            std::sort(stops_.begin(), stops_.end());
            stops_.erase(std::unique(stops_.begin(), stops_.end()), stops_.end());
            for (std::size_t k = 0; k + 1 < stops_.size(); ++k)
                whole_row &= bind_piece({stops_[k], stops_[k + 1]}, out);
        }
        return whole_row;
    }

    /// Where a line of a part lies now: on every ply that it runs through, or along too where it does not cut.
    void open(const flat_line& own, const flat_part& part, std::size_t mouth, bool cuts,
              std::vector<opened_line>& out) const {
        const stretch asked = stretch_of(own, part);
        for (const std::uint32_t q : plies_of_[own.part]) {
            const ply& p = stack_->plies[q];
            const table_line now = carried(own.at, p.how);
            const stretch run = carried(asked, own.at, p.how);
            const stretch in = cuts ? within(p.area, now) : within_or_on(p.area, now);
            const stretch both{std::max(run.from, in.from), std::min(run.to, in.to)};
            if (!both.is_nothing())
                out.push_back({now, both, q, mouth, cuts});
        }
    }

private:
    /// A line that was moved: where it lies now, and that what lay at v along it lies at sign v + shift.
    struct moved_line {
        table_line at{};
        whole sign = 1, shift = 0;
        moved_line(const table_line& l, const lie& how) : at(flat_work::carried(l, how)) {
            sign = at.level ? (l.level ? how.xx : how.xy) : (l.level ? how.yx : how.yy);
            shift = at.level ? how.dx : how.dy;
        }
        /// First that, then this.
        void follow(const moved_line& first) {
            shift += sign * first.shift;
            sign *= first.sign;
        }
        stretch carried(const stretch& s) const { return in_order(sign * s.from + shift, sign * s.to + shift); }
        stretch back(const stretch& s) const { return in_order(sign * (s.from - shift), sign * (s.to - shift)); }
        static stretch in_order(whole a, whole b) { return a < b ? stretch{a, b} : stretch{b, a}; }
    };
    /// A ply that lies along the row now, and how far in the row's own line, as it was sewn.
    struct holding {
        moved_line now;
        stretch then{};
        std::uint32_t ply = 0;
    };
    /// Of what a row went through, where among those that lie there now its own begin and end.
    struct looked_up {
        std::size_t first = 0, end = 0;
        bool found = false;
    };

    /// The plies of the part that the row runs along now. One that lay under several spans is looked up once.
    void look_up(const sewn_row& row, std::size_t which) {
        const auto& [part, then] = row.as_sewn[which];
        const moved_line own(row.at, inverse(then));
        seen_[which] = {now_.size(), now_.size(), true};
        for (const std::uint32_t q : plies_of_[part]) {
            if (misses(own.at, own_round_[q]))
                continue;
            moved_line now(own.at, stack_->plies[q].how);
            now.follow(own);
            if (const stretch in = within_or_on(stack_->plies[q].area, now.at); !in.is_nothing())
                now_.push_back({now, now.back(in), q});
        }
        seen_[which].end = now_.size();
    }
    void hold(const sewn_row& row, const sewn_span& span, std::size_t which) {
        if (!seen_[which].found)
            look_up(row, which);
        for (std::size_t i = seen_[which].first; i < seen_[which].end; ++i) {
            const holding& h = now_[i];
            const stretch then{std::max(span.from, h.then.from), std::min(span.to, h.then.to)};
            if (then.is_nothing())
                continue;
            held_.push_back({i, then});
            for (const whole end : {then.from, then.to})
                if (end != span.from && end != span.to)
                    stops_.push_back(end);
            const ply& p = stack_->plies[h.ply];
            for (const bounds& own : (*holes_)[p.part])
                if (const stretch gone = gone_along(carried(own, p.how), h.now.at); !gone.is_nothing()) {
                    const stretch was = h.now.back(gone);
                    stops_.insert(stops_.end(),
                                  {std::clamp(was.from, then.from, then.to), std::clamp(was.to, then.from, then.to)});
                }
        }
    }
    static bool misses(const table_line& at, const bounds& round) {
        return at.level ? at.at < round.top || round.bottom < at.at : at.at < round.left || round.right < at.at;
    }
    /// The stretch of a line that runs through a hole or along its edge.
    static stretch gone_along(const bounds& hole, const table_line& at) {
        if (at.level ? hole.top <= at.at && at.at <= hole.bottom : hole.left <= at.at && at.at <= hole.right)
            return at.level ? stretch{hole.left, hole.right} : stretch{hole.top, hole.bottom};
        return {};
    }
    /// Whether the ply has no cloth on either side of the line all along the run: it does not reach there, or a hole
    /// does.
    bool is_gone(std::uint32_t ply_number, const table_line& at, const stretch& run) const {
        const ply& p = stack_->plies[ply_number];
        const bounds& round = p.area.round();
        bool before = (at.level ? round.top : round.left) < at.at,
             beyond = at.at < (at.level ? round.bottom : round.right);
        for (const bounds& own : (*holes_)[p.part]) {
            const bounds h = carried(own, p.how);
            const stretch gone = gone_along(h, at);
            if (h.is_nothing() || gone.is_nothing() || gone.from > run.from || run.to > gone.to)
                continue;
            before = before && !((at.level ? h.top : h.left) < at.at);
            beyond = beyond && !(at.at < (at.level ? h.bottom : h.right));
        }
        return !before && !beyond;
    }

    bool bind_piece(const stretch& piece, std::vector<bound_row>& out) const {
        bound_row made;
        bool first = true, together = true;
        for (const auto& [i, then] : held_) {
            const holding& h = now_[i];
            if (then.from > piece.from || then.to < piece.to)
                continue;
            const stretch run = h.now.carried(piece);
            if (is_gone(h.ply, h.now.at, run))
                continue;
            if (first)
                made = {h.now.at, run, h.ply, h.ply};
            else if (h.now.at.level != made.at.level || h.now.at.at != made.at.at || run.from != made.run.from)
                together = false;
            made.low = std::min(made.low, h.ply);
            made.high = std::max(made.high, h.ply);
            first = false;
        }
        if (!first)
            out.push_back(made);
        return together;
    }

    const stack* stack_;
    const std::vector<std::vector<bounds>>* holes_;
    std::vector<std::vector<std::uint32_t>> plies_of_{};
    std::vector<bounds> own_round_{}; ///< each ply, in its part's own spots
    std::vector<looked_up> seen_{};   ///< while one row is looked at
    std::vector<holding> now_{};
    std::vector<std::pair<std::size_t, stretch>> held_{}; ///< while one span is looked at: of those, and how far
    std::vector<whole> stops_{};
};
using final_lines = lazy_final_lines<void>;

} // namespace turncloth::detail::flat_work

#endif
