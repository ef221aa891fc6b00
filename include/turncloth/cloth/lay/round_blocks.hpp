// The skyline where there are blocks to lie round: flaws of the cloth, and pieces that stay.
//
//   class detail::round_blocks : skyline    run(length, allowed) -> area left over
//
//   detail::round_blocks pass{entries};
//   bool all_laid = pass.run(length, 0) == 0;
//
// A block that the lowest step has come up to takes its part of the step, which goes on beyond it. Those farther on are
// looked out for: a piece lies at the left or the right end of the step where it meets none. Where no piece can, the step
// is raised no farther than to the next block.
#ifndef TURNCLOTH_CLOTH_LAY_ROUND_BLOCKS_HPP
#define TURNCLOTH_CLOTH_LAY_ROUND_BLOCKS_HPP

#include <turncloth/cloth/lay/skyline.hpp>

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <vector>

namespace turncloth::detail {

class round_blocks : public skyline {
public:
    explicit round_blocks(const lay_entries& entries) : skyline(entries) {}

    /// As skyline::run.
    std::int64_t run(std::int64_t length, std::int64_t allowed) {
        const lay_problem& problem = entries_->problem();
        const std::int64_t spare = problem.width * length - area_within(problem.blocks, length) - problem.area;
        if (spare < 0 && -spare > allowed)
            return -spare;
        begin_run();
        x_.assign({0, problem.width});
        y_.assign(1, 0);
        std::int64_t lost = 0, unlaid = problem.pieces;
        while (unlaid > 0 && lost <= spare + allowed) {
            const niche at = lowest(length);
            if (at.room <= 0)
                break;
            if (const lay_part* block = reached_by(at)) {
                go_round(at.step, *block);
                continue;
            }
            const choice best = choose_clear(at);
            if (best.place != none) {
                lost += lay_at(at, best);
                --unlaid;
            } else {
                lost += raise_to_next(at);
            }
        }
        reached_ = problem.reach_of_staying;
        for (const laid& piece : placed_) {
            const lay_kind& kind = entries_->kind(piece.entry);
            reached_ = std::max(reached_, piece.y + (piece.turned ? kind.width : kind.length));
        }
        return unlaid == 0 ? 0 : lost - spare;
    }

private:
    const lay_part* reached_by(const niche& at) const noexcept {
        for (const lay_part& b : entries_->problem().blocks)
            if (b.near <= at.y && at.y < b.far && b.left < x_[at.step + 1] && x_[at.step] < b.right)
                return &b;
        return nullptr;
    }

    /// The stretch of the step that the block takes goes on where it ends.
    void go_round(std::size_t step, const lay_part& block) {
        const auto at = [&](auto& of, std::size_t i) { return of.begin() + static_cast<std::ptrdiff_t>(i); };
        if (block.right < x_[step + 1]) {
            x_.insert(at(x_, step + 1), block.right);
            y_.insert(at(y_, step), y_[step]);
        }
        if (x_[step] < block.left) {
            ++step;
            x_.insert(at(x_, step), block.left);
            y_.insert(at(y_, step), y_[step - 1]);
        }
        y_[step] = block.far;
        merge(step);
    }

    /// To the lower neighbour, or the next block; returns the area lost.
    std::int64_t raise_to_next(const niche& at) {
        std::int64_t by = std::min(at.left, at.right);
        for (const lay_part& b : entries_->problem().blocks)
            if (b.near > at.y && b.left < x_[at.step + 1] && x_[at.step] < b.right)
                by = std::min(by, b.near - at.y);
        y_[at.step] += by;
        merge(at.step);
        return at.width * by;
    }

    bool clear(const lay_part& part) const noexcept {
        const std::vector<lay_part>& blocks = entries_->problem().blocks;
        return std::none_of(blocks.begin(), blocks.end(), [&](const lay_part& b) { return parts_meet(b, part); });
    }

    /// The first that fills the step and comes level with its neighbour, fills it, comes level, or fits.
    choice choose_clear(const niche& at) {
        choice best{none, false, 5, none};
        const std::int64_t x = x_[at.step];
        std::uint64_t looked_at = 0;
        for (std::uint32_t place = 0; place < across_.size() && best.merit > 0; ++place) {
            if ((open_[place / 64] >> (place % 64) & 1U) == 0 || across_[place] > at.width || along_[place] > at.room)
                continue;
            if (x != 0 && must_be_at_edge(place))
                continue;
            ++looked_at;
            const std::int64_t wide = across(place, x), high = along(place, at.y);
            if (wide > at.width || high > at.room)
                continue;
            for (const bool at_right : {false, true}) {
                if (at_right && (matching() || must_be_at_edge(place) || wide == at.width))
                    break;
                const std::int64_t left = at_right ? x_[at.step + 1] - wide : x;
                const bool fills = wide == at.width,
                           level = high == (at_right ? at.right : at.left) || (fills && high == at.right);
                const auto merit = static_cast<unsigned char>((fills ? 0 : 2) + (level ? 0 : 1));
                if (merit >= best.merit || !clear({left, left + wide, at.y, at.y + high}))
                    continue;
                best = {place, at_right, merit, place};
                if ((twists_[entry_at(place)] & 2U) != 0)
                    best.merit = 0;
            }
        }
        steps_ += 1 + looked_at / 8;
        return best;
    }
};

} // namespace turncloth::detail

#endif
