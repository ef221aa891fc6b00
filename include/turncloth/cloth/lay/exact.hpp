// The shortest free lay of a few pieces, or a proof that none is shorter than so much, by trying all that could matter.
//
//   class detail::exact_lay   prove(length, steps) -> found, refuted or given_up; placed(), steps()
//
//   detail::exact_lay exact{problem};
//   if (exact.prove(length - 1, 100'000) == detail::proof::refuted) bound = length;
//
// Take any lay and push every piece left and near until it stops. Of two pieces one is left of or nearer than the
// other, and these relations go round no circle, so the pieces can be listed with each after all those to its left or
// nearer. Laid in that order, all that is left of or nearer than some piece already laid is finished with: the finished
// part has a staircase for its far edge, falling from left to right, and the next piece, being pushed, stands in one of
// its inner corners. So it is enough to try every piece in every inner corner.
//
// Finished cloth that no piece covers is lost; once more is lost than the length has to spare, no order of the rest
// helps. Lost too are the steps too near the end, or too near the right edge, for any piece still to come. Different
// orders that reach one staircase with the same pieces left need following once only.
//
// With a repeat to match, a piece pushed by whole repeats stops on the first place of the repeat from some corner's x
// on, and from the staircase there on, and nothing else changes.
//
// A block to lie round is listed among the pieces, and has its place already: at any time it may be finished with, as
// long as nothing finished reaches over it.
#ifndef TURNCLOTH_CLOTH_LAY_EXACT_HPP
#define TURNCLOTH_CLOTH_LAY_EXACT_HPP

#include <turncloth/cloth/lay/order.hpp>
#include <turncloth/cloth/lay/pace.hpp>

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <limits>
#include <set>
#include <utility>
#include <vector>

namespace turncloth::detail {

class exact_lay {
public:
    /// More pieces than this are not worth trying.
    static constexpr std::int64_t most_pieces = 16;

    explicit exact_lay(const lay_problem& problem) : problem_(&problem) {
        for (std::uint32_t k = 0; k < problem.kinds.size(); ++k) {
            by_area_.push_back(k);
            left_.push_back(problem.kinds[k].count);
        }
        std::stable_sort(by_area_.begin(), by_area_.end(), [&](std::uint32_t a, std::uint32_t b) {
            return problem.kinds[a].area() > problem.kinds[b].area();
        });
    }

    /// Whether the pieces can be laid within `length`; gives up after so many steps of work.
    proof prove(std::int64_t length, lay_allowance steps) {
        length_ = length;
        allowance_ = steps.after(steps_);
        gave_up_ = false;
        seen_.clear();
        placed_.clear();
        blocks_.resize(problem_->blocks.size());
        for (std::size_t b = 0; b < blocks_.size(); ++b)
            blocks_[b] = problem_->blocks[b].near < length;
        spare_ = problem_->width * length - area_within(problem_->blocks, length) - problem_->area;
        if (spare_ < 0 || length < problem_->reach_of_staying)
            return proof::refuted;
        const bool laid = lay_rest({{0, 0}}, problem_->pieces, 0);
        return laid ? proof::found : gave_up_ ? proof::given_up : proof::refuted;
    }

    /// The pieces laid when last found; `entry` is the index of a kind.
    const std::vector<laid>& placed() const noexcept { return placed_; }
    std::uint64_t steps() const noexcept { return steps_; }

private:
    /// The staircase: from `x` to the next step's x it stands at `y`; y falls from step to step.
    struct step {
        std::int64_t x, y;
    };
    using staircase = std::vector<step>;

    bool lay_rest(const staircase& stairs, std::int64_t unlaid, std::int64_t lost) {
        if (unlaid == 0)
            return true;
        if (lost + out_of_reach(stairs) > spare_ || !remember(stairs))
            return false;
        for (const std::uint32_t k : by_area_) {
            if (left_[k] == 0)
                continue;
            const lay_kind& kind = problem_->kinds[k];
            bool fits = false;
            for (const bool turned : {false, true}) {
                if (!(turned ? kind.sideways : kind.upright))
                    continue;
                for (std::size_t corner = 0; corner < stairs.size(); ++corner) {
                    const laid piece = pushed(stairs, corner, k, turned);
                    const std::int64_t width = turned ? kind.length : kind.width;
                    const std::int64_t length = turned ? kind.width : kind.length;
                    if (kind.at_edge && piece.x != 0)
                        continue;
                    if (piece.x + width > problem_->width || piece.y + length > length_)
                        continue;
                    fits = true;
                    gave_up_ = gave_up_ || !allowance_.allows(steps_++);
                    if (gave_up_)
                        return false;
                    if (try_piece(stairs, piece, unlaid, lost))
                        return true;
                }
            }
            if (!fits)
                return false; // and never will, since the staircase only grows
        }
        return pass_block(stairs, unlaid, lost);
    }

    /// Finishes with a block, and so with all that is left of it or nearer.
    bool pass_block(const staircase& stairs, std::int64_t unlaid, std::int64_t lost) {
        for (std::size_t b = 0; b < blocks_.size(); ++b) {
            if (!blocks_[b])
                continue;
            gave_up_ = gave_up_ || !allowance_.allows(steps_++);
            if (gave_up_)
                return false;
            const lay_part& block = problem_->blocks[b];
            const std::int64_t far = std::min(block.far, length_);
            staircase next;
            const std::int64_t raised = raise(stairs, block.right, far, next),
                               lost_now = lost + raised - area_within(block, length_);
            blocks_[b] = false;
            const bool laid_all = lost_now <= spare_ && blocks_clear_of(next) && lay_rest(next, unlaid, lost_now);
            blocks_[b] = true;
            if (laid_all)
                return true;
        }
        return false;
    }

    /// Whether nothing finished reaches over a block still to come.
    bool blocks_clear_of(const staircase& stairs) const {
        for (std::size_t b = 0; b < blocks_.size(); ++b) {
            if (!blocks_[b])
                continue;
            const lay_part& block = problem_->blocks[b];
            for (std::size_t i = 0; i < stairs.size(); ++i)
                if (stairs[i].y > block.near && stairs[i].x < block.right &&
                    (i + 1 == stairs.size() || stairs[i + 1].x > block.left))
                    return false;
        }
        return true;
    }

    bool try_piece(const staircase& stairs, const laid& piece, std::int64_t unlaid, std::int64_t lost) {
        const lay_kind& kind = problem_->kinds[piece.entry];
        const std::int64_t width = piece.turned ? kind.length : kind.width;
        const std::int64_t length = piece.turned ? kind.width : kind.length;
        staircase next;
        next.reserve(stairs.size() + 2);
        const std::int64_t raised = raise(stairs, piece.x + width, piece.y + length, next);
        const std::int64_t lost_now = lost + raised - width * length;
        if (lost_now > spare_ || !blocks_clear_of(next))
            return false;
        placed_.push_back(piece);
        --left_[piece.entry];
        const bool laid_all = lay_rest(next, unlaid - 1, lost_now);
        ++left_[piece.entry];
        if (!laid_all)
            placed_.pop_back();
        return laid_all;
    }

    /// Raises the staircase to `top` wherever it is lower left of `right`; returns the area added.
    std::int64_t raise(const staircase& stairs, std::int64_t right, std::int64_t top, staircase& next) const {
        std::int64_t added = 0;
        bool risen = false;
        for (std::size_t i = 0; i < stairs.size(); ++i) {
            const std::int64_t end = i + 1 < stairs.size() ? stairs[i + 1].x : problem_->width;
            if (stairs[i].y >= top) {
                next.push_back(stairs[i]);
                continue;
            }
            if (stairs[i].x < right) {
                added += (std::min(end, right) - stairs[i].x) * (top - stairs[i].y);
                if (!risen && (next.empty() || next.back().y != top))
                    next.push_back({stairs[i].x, top});
                risen = true;
            }
            if (end > right)
                next.push_back({std::max(stairs[i].x, right), stairs[i].y});
        }
        return added;
    }

    laid pushed(const staircase& stairs, std::size_t corner, std::uint32_t k, bool turned) const {
        if (!problem_->matching())
            return {k, turned, stairs[corner].x, stairs[corner].y};
        const lay_kind& kind = problem_->kinds[k];
        const auto up = [](std::int64_t from, std::int64_t match, std::int64_t repeat) {
            if (repeat <= 1)
                return from;
            const std::int64_t into = (match - from) % repeat;
            return from + (into < 0 ? into + repeat : into);
        };
        const std::int64_t x = up(stairs[corner].x, kind.match_across, problem_->repeat_across);
        while (corner + 1 < stairs.size() && stairs[corner + 1].x <= x)
            ++corner;
        return {k, turned, x, up(stairs[corner].y, kind.match_along, problem_->repeat_along)};
    }

    /// The area beyond the staircase that no piece still to come can cover.
    std::int64_t out_of_reach(const staircase& stairs) const {
        std::int64_t narrowest = std::numeric_limits<std::int64_t>::max();
        std::int64_t shortest = narrowest;
        for (std::size_t k = 0; k < left_.size(); ++k) {
            if (left_[k] == 0)
                continue;
            const lay_kind& kind = problem_->kinds[k];
            const std::int64_t smaller = std::min(kind.width, kind.length);
            narrowest = std::min(narrowest, kind.sideways ? smaller : kind.width);
            shortest = std::min(shortest, kind.sideways ? smaller : kind.length);
        }
        std::int64_t area = 0;
        std::size_t i = 0;
        for (; i < stairs.size() && length_ - stairs[i].y < shortest; ++i) {
            const std::int64_t end = i + 1 < stairs.size() ? stairs[i + 1].x : problem_->width;
            area += (end - stairs[i].x) * (length_ - stairs[i].y);
        }
        for (std::size_t j = stairs.size(); j-- > std::max<std::size_t>(i, 1);) {
            if (problem_->width - stairs[j].x >= narrowest)
                break;
            area += (problem_->width - stairs[j].x) * (std::min(stairs[j - 1].y, length_) - stairs[j].y);
        }
        for (std::size_t b = 0; b < blocks_.size(); ++b) // counted already, wherever it is
            if (blocks_[b])
                area -= area_within(problem_->blocks[b], length_);
        return std::max<std::int64_t>(area, 0);
    }

    /// Notes the staircase and the pieces left; false if they have been followed before.
    bool remember(const staircase& stairs) {
        constexpr std::size_t most = 400'000;
        std::vector<std::int64_t> state(left_.begin(), left_.end());
        state.insert(state.end(), blocks_.begin(), blocks_.end());
        for (const step& s : stairs) {
            state.push_back(s.x);
            state.push_back(s.y);
        }
        if (seen_.size() >= most)
            return seen_.count(state) == 0;
        return seen_.insert(std::move(state)).second;
    }

    const lay_problem* problem_;
    std::vector<std::uint32_t> by_area_;
    std::vector<std::int64_t> left_;
    std::vector<bool> blocks_; ///< those still to come
    std::set<std::vector<std::int64_t>> seen_;
    std::vector<laid> placed_;
    std::int64_t length_ = 0;
    std::int64_t spare_ = 0;
    std::uint64_t steps_ = 0;
    lay_allowance allowance_;
    bool gave_up_ = false;
};

} // namespace turncloth::detail

#endif
