// The skyline for a search: trying one small change to the order after another, each from where it first makes a
// difference.
//
//   class detail::skyline_trials : skyline   run(length, allowed), try_exchange(p, q, allowed),
//                                            try_twist(p, how, allowed)
//
//   detail::skyline_trials pass{entries};
//   auto left_over = pass.run(length, everything);
//   left_over = pass.try_exchange(3, 8, left_over);   // the change stays if no more is left over, else it is undone
//
// Most exchanges change nothing, or nothing before the middle of the lay. So the choices made in the lay kept are
// written down: where each was made, of what merit it was, and which piece was the first to fit. An exchange of p and
// q, p before q, makes no difference to a choice when neither was chosen, p was not the first that fits, and the piece
// that comes forward to p does not go before the one chosen: it does not fit, or is of less merit (more it cannot be,
// or it had been chosen from q), or p comes after the place chosen. The piece that goes back to q was not chosen from
// p, so it is not from q either. A piece that comes forward before the first that fits becomes the first itself; that
// matters where it, or the one that was first, is to be taken for being first. The lay is taken up again at the first
// choice that may differ.
#ifndef TURNCLOTH_CLOTH_LAY_SKYLINE_TRIALS_HPP
#define TURNCLOTH_CLOTH_LAY_SKYLINE_TRIALS_HPP

#include <turncloth/cloth/lay/skyline.hpp>

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <utility>
#include <vector>

namespace turncloth::detail {

class skyline_trials : public skyline {
public:
    explicit skyline_trials(const lay_entries& entries) : skyline(entries) {}

    /// As skyline::run, and keeps the lay for the trials that follow. These need it to have been finished: not given
    /// up.
    std::int64_t run(std::int64_t length, std::int64_t allowed) {
        if (!remembers()) {
            length_ = length;
            return left_over_ = skyline::run(length, allowed);
        }
        length_ = length;
        choices_.clear();
        moments_.clear();
        outlines_.clear();
        fresh_choices_.clear();
        begin_run();
        x_.assign({0, entries_->problem().width});
        y_.assign(1, 0);
        left_over_ = go_on(0, 0, allowed);
        if (left_over_ <= allowed)
            keep_from(0);
        return left_over_;
    }

    /// Exchanges two pieces in the order if that leaves no more area over than `allowed`. Returns what is left over
    /// now.
    std::int64_t try_exchange(std::uint32_t p, std::uint32_t q, std::int64_t allowed) {
        if (p > q)
            std::swap(p, q);
        if (!remembers()) {
            exchange(p, q);
            return plain_trial(allowed, [&] { exchange(p, q); });
        }
        const std::uint32_t forward = order_[q];
        ++steps_;
        if (entries_->kind_index(order_[p]) == entries_->kind_index(forward) && twists_[order_[p]] == twists_[forward])
            return left_over_;
        const std::size_t from = first_changed(p, q, forward);
        steps_ += from / 8;
        if (from < choices_.size()) {
            exchange(p, q);
            if (!resumed(from, allowed)) {
                exchange(p, q);
                return left_over_;
            }
        } else {
            exchange(p, q);
        }
        for (const std::size_t c : now_first_)
            if (c < from)
                choices_[c].first = p;
        return left_over_;
    }

    /// Twists the piece at `p` if that leaves no more area over than `allowed`. Returns what is left over now.
    std::int64_t try_twist(std::uint32_t p, unsigned how, std::int64_t allowed) {
        const unsigned before = twist(p, how);
        if (!remembers())
            return plain_trial(allowed, [&] { twist(p, before); });
        ++steps_;
        if (before == how)
            return left_over_;
        const bool turned = turning() && (before ^ how) % 2 == 1;
        std::size_t from = 0;
        while (from < choices_.size() && choices_[from].first != p && !(turned && choices_[from].chosen == p))
            ++from;
        steps_ += from / 16;
        if (from < choices_.size() && !resumed(from, allowed))
            twist(p, before);
        return left_over_;
    }

    /// The pieces of the lay kept.
    const std::vector<laid>& placed() {
        if (!remembers())
            return placed_;
        placed_.clear();
        for (std::size_t c = 0; c < choices_.size(); ++c)
            if (choices_[c].chosen != none)
                placed_.push_back(laid_at(moments_[c].place, moments_[c].x, moments_[c].y));
        return placed_;
    }

private:
    /// One choice, or a step raised for want of any: `chosen` is none. Places in the order, not of the two ways of a
    /// piece.
    struct choice_made {
        std::int64_t width, higher, lower, room;
        std::uint32_t chosen, first;
        unsigned char merit;
    };
    /// How things stood before it.
    struct moment {
        std::size_t outline; // in outlines_: the steps' x, the far edge, the steps' y
        std::size_t steps;
        std::int64_t lost;
        std::uint32_t place; // as laid after it
        std::int64_t x, y;
    };

    bool remembers() const noexcept { return !matching() && !bundled(); }

    template <class Undo>
    std::int64_t plain_trial(std::int64_t allowed, Undo undo) {
        const std::int64_t now = skyline::run(length_, allowed);
        if (now <= allowed)
            return left_over_ = now;
        undo();
        return left_over_;
    }

    /// The merit of a size at the niche of a choice; 7 where it does not fit.
    static unsigned merit_of(const choice_made& at, std::int64_t width, std::int64_t length) noexcept {
        if (width > at.width || length > at.room)
            return 7;
        const unsigned level = length == at.higher ? 0 : length == at.lower ? 1 : 2;
        return width == at.width ? level : 3 + level;
    }

    std::size_t first_changed(std::uint32_t p, std::uint32_t q, std::uint32_t forward) {
        const lay_kind& kind = entries_->kind(forward);
        const bool taken_for_first = (twists_[forward] & 2U) != 0;
        now_first_.clear();
        for (std::size_t c = 0; c < choices_.size(); ++c) {
            const choice_made& at = choices_[c];
            if (at.chosen == none)
                continue;
            if (at.chosen == p || at.chosen == q || at.first == p)
                return c;
            if (p > at.chosen && p > at.first)
                continue;
            const unsigned upright = kind.upright ? merit_of(at, kind.width, kind.length) : 7;
            const unsigned sideways = kind.sideways ? merit_of(at, kind.length, kind.width) : 7;
            const unsigned merit = std::min(upright, sideways);
            if (merit == 7 || (kind.at_edge && !moments_at_edge(c)))
                continue;
            if (p < at.first) {
                if (taken_for_first || at.merit == taken_first)
                    return c;
                now_first_.push_back(c);
            }
            if (at.merit != taken_first && p < at.chosen && (upright == at.merit || sideways == at.merit))
                return c;
        }
        return choices_.size();
    }

    /// Whether the niche of a choice lies at the left edge: the lowest of its steps is the first.
    bool moments_at_edge(std::size_t c) const noexcept {
        const moment& m = moments_[c];
        const std::int64_t* const y = outlines_.data() + m.outline + m.steps + 1;
        return std::min_element(y, y + m.steps) == y;
    }

    /// Takes the kept lay up again before a choice and finishes it with the order as it is now; keeps it if it is as
    /// good.
    bool resumed(std::size_t from, std::int64_t allowed) {
        begin_run();
        for (std::size_t c = 0; c < from; ++c)
            if (choices_[c].chosen != none)
                close(moments_[c].place);
        const moment& m = moments_[from];
        const auto at = outlines_.begin() + static_cast<std::ptrdiff_t>(m.outline);
        const auto end_x = at + static_cast<std::ptrdiff_t>(m.steps) + 1;
        x_.assign(at, end_x);
        y_.assign(end_x, end_x + static_cast<std::ptrdiff_t>(m.steps));
        const std::int64_t now = go_on(from, m.lost, allowed);
        if (now > allowed)
            return false;
        keep_from(from);
        left_over_ = now;
        return true;
    }

    std::int64_t go_on(std::size_t from, std::int64_t lost, std::int64_t allowed) {
        const lay_problem& problem = entries_->problem();
        const std::int64_t spare = problem.width * length_ - problem.area;
        if (spare < 0 && -spare > allowed)
            return -spare;
        fresh_choices_.clear();
        fresh_moments_.clear();
        fresh_outlines_.clear();
        std::int64_t unlaid = problem.pieces;
        for (std::size_t c = 0; c < from; ++c)
            unlaid -= choices_[c].chosen != none;
        while (unlaid > 0) {
            const niche at = lowest(length_);
            if (at.room <= 0)
                break;
            const choice best = choose(at);
            steps_ += 1 + words_ / 4;
            note_choice(at, best, lost);
            if (best.place != none) {
                lay_at(at, best);
                fresh_moments_.back().x = placed_.back().x;
                fresh_moments_.back().y = placed_.back().y;
                --unlaid;
                continue;
            }
            lost += at.width * std::min(at.left, at.right);
            if (lost > spare + allowed)
                return lost - spare;
            raise(at);
        }
        reached_ = *std::max_element(y_.begin(), y_.end());
        return unlaid == 0 ? 0 : lost - spare;
    }

    void note_choice(const niche& at, const choice& best, std::int64_t lost) {
        fresh_choices_.push_back({.width = at.width,
                                  .higher = std::max(at.left, at.right),
                                  .lower = std::min(at.left, at.right),
                                  .room = at.room,
                                  .chosen = best.place == none ? none : best.place / stride_,
                                  .first = best.first == none ? none : best.first / stride_,
                                  .merit = best.merit});
        fresh_moments_.push_back(
            {.outline = fresh_outlines_.size(), .steps = y_.size(), .lost = lost, .place = best.place, .x = 0, .y = 0});
        fresh_outlines_.insert(fresh_outlines_.end(), x_.begin(), x_.end());
        fresh_outlines_.insert(fresh_outlines_.end(), y_.begin(), y_.end());
    }

    /// The new end of the lay replaces the old.
    void keep_from(std::size_t from) {
        const std::size_t base = from < moments_.size() ? moments_[from].outline : outlines_.size();
        choices_.resize(from);
        moments_.resize(from);
        outlines_.resize(base);
        choices_.insert(choices_.end(), fresh_choices_.begin(), fresh_choices_.end());
        for (moment m : fresh_moments_) {
            m.outline += base;
            moments_.push_back(m);
        }
        outlines_.insert(outlines_.end(), fresh_outlines_.begin(), fresh_outlines_.end());
    }

    std::vector<choice_made> choices_, fresh_choices_;
    std::vector<moment> moments_, fresh_moments_;
    std::vector<std::int64_t> outlines_, fresh_outlines_;
    std::vector<std::size_t> now_first_;
    std::int64_t length_ = 0;
    std::int64_t left_over_ = 0;
};

} // namespace turncloth::detail

#endif
