// One pass of laying pieces along the open edge of the cloth, the skyline, in a given order of preference.
//
//   class detail::skyline : lay_order    run(length, allowed) -> area left over
//
//   detail::skyline pass{entries};
//   bool all_laid = pass.run(length, 0) == 0;
//
// The skyline is what one sees from the far end of the cloth: steps, each at one y over a stretch of x. A pass takes
// the lowest step (leftmost among equals) and asks which piece is best there: one that fills its width exactly and
// comes level with a neighbour, then one that fills its width, then one that comes level with a neighbour, then the
// first in order that fits. Where none fits the step is raised to its lower neighbour and the area under it is lost.
// With the length fixed, area lost beyond the spare area means pieces that will be left over, and the pass can be given
// up at once: the searches that call it spend most of their passes on the first few pieces.
#ifndef TURNCLOTH_CLOTH_LAY_SKYLINE_HPP
#define TURNCLOTH_CLOTH_LAY_SKYLINE_HPP

#include <turncloth/cloth/lay/order.hpp>

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <vector>

namespace turncloth::detail {

class skyline : public lay_order {
public:
    /// How often in a hundred a search should twist instead of exchange; bit 1 takes the piece, when it is the first
    /// that fits, whatever would fit better.
    static constexpr std::uint32_t twists_in_100 = 10;

    explicit skyline(const lay_entries& entries) : lay_order(entries) {}

    /// Lays the pieces within `length`. Returns the area of the pieces left over: 0 when all are laid; more than
    /// `allowed`, and no further laid than it took to see it, when that is certain to be exceeded.
    std::int64_t run(std::int64_t length, std::int64_t allowed);

protected:
    struct niche {
        std::size_t step;
        std::int64_t y, width, left, right, room;
    };
    /// `merit` as in choose(), 0 the best; `first` the first place that fits, whichever was chosen.
    struct choice {
        std::uint32_t place;
        bool at_right;
        unsigned char merit;
        std::uint32_t first;
    };
    static constexpr unsigned char taken_first = 6; ///< the merit of the first that fits, taken for that alone

    niche lowest(std::int64_t length) const noexcept;
    /// Pieces at most as wide as the niche, and narrower than that (where none just fills it: the same set); at most as
    /// long as it has room; and those that come up to its higher or lower neighbour, or stay below it.
    struct niche_sets {
        const std::uint64_t *fits_width, *narrower, *fits_room, *to_higher, *below_higher, *to_lower, *below_lower;
    };
    niche_sets sets_at(const niche& at) const noexcept;
    choice choose(const niche& at) noexcept;
    std::int64_t lay_at(const niche& at, choice best);
    void raise(const niche& at);
    void merge(std::size_t step);

    std::vector<std::int64_t> x_, y_; // the steps; x_ has one more, the cloth's far edge
};

inline std::int64_t skyline::run(std::int64_t length, std::int64_t allowed) {
    const lay_problem& problem = entries_->problem();
    const std::int64_t spare = problem.width * length - problem.area;
    if (spare < 0 && -spare > allowed)
        return -spare;
    const std::int64_t most_lost = spare + allowed;
    begin_run();
    x_.assign({0, problem.width});
    y_.assign(1, 0);
    std::int64_t lost = 0;
    std::int64_t unlaid = problem.pieces;
    while (unlaid > 0) {
        const niche at = lowest(length);
        if (at.room <= 0)
            break;
        const choice best = choose(at);
        steps_ += 1 + words_ / 4;
        if (best.place != none) {
            lost += lay_at(at, best);
            if (lost > most_lost)
                return lost - spare;
            --unlaid;
            continue;
        }
        lost += at.width * std::min(at.left, at.right);
        if (lost > most_lost)
            return lost - spare;
        raise(at);
    }
    reached_ = *std::max_element(y_.begin(), y_.end());
    return unlaid == 0 ? 0 : lost - spare;
}

inline skyline::niche skyline::lowest(std::int64_t length) const noexcept {
    std::size_t step = 0;
    for (std::size_t i = 1; i < y_.size(); ++i)
        if (y_[i] < y_[step])
            step = i;
    const std::int64_t y = y_[step];
    // The cloth's sides stand as high as the lay may be long, so a piece that just reaches the end comes level with
    // them.
    return {.step = step,
            .y = y,
            .width = x_[step + 1] - x_[step],
            .left = (step == 0 ? length : y_[step - 1]) - y,
            .right = (step + 1 == y_.size() ? length : y_[step + 1]) - y,
            .room = length - y};
}

inline skyline::niche_sets skyline::sets_at(const niche& at) const noexcept {
    const std::uint32_t wide = widths_.rank(at.width);
    const std::int64_t higher = std::max(at.left, at.right), lower = std::min(at.left, at.right);
    const std::uint32_t level_higher = lengths_.rank(higher), level_lower = lengths_.rank(lower);
    return {.fits_width = widths_.at_most(wide),
            .narrower = widths_.is_size(wide, at.width) ? widths_.at_most(wide - 1) : widths_.at_most(wide),
            .fits_room = lengths_.at_most(lengths_.rank(at.room)),
            .to_higher = lengths_.at_most(level_higher),
            .below_higher = lengths_.at_most(level_higher - lengths_.is_size(level_higher, higher)),
            .to_lower = lengths_.at_most(level_lower),
            .below_lower = lengths_.at_most(level_lower - lengths_.is_size(level_lower, lower))};
}

inline skyline::choice skyline::choose(const niche& at) noexcept {
    if (matching())
        return {first_matched(x_[at.step], at.y, at.width, at.room), false, 5, none};
    if (widths_.rank(at.width) == 0)
        return {none, false, 5, none};
    const niche_sets sets = sets_at(at);
    // In falling merit: fills the width and meets the higher, the lower neighbour; fills the width; meets one; fits.
    std::uint32_t best[6] = {none, none, none, none, none, none};
    skip_laid();
    for (std::size_t w = first_word_; w < words_; ++w) {
        const std::uint64_t fit = open(w, x_[at.step]) & sets.fits_width[w] & sets.fits_room[w];
        if (fit == 0)
            continue;
        const std::uint64_t filling = fit & ~sets.narrower[w];
        const std::uint64_t high = sets.to_higher[w] & ~sets.below_higher[w];
        const std::uint64_t low = sets.to_lower[w] & ~sets.below_lower[w];
        if (best[5] == none) {
            note(best[5], w, fit);
            if ((twists_[entry_at(best[5])] & 2U) != 0)
                return {best[5], at.left < at.right && !must_be_at_edge(best[5]), taken_first, best[5]};
        }
        note(best[4], w, fit & low);
        note(best[3], w, fit & high);
        if (filling != 0) {
            note(best[2], w, filling);
            note(best[1], w, filling & low);
            note(best[0], w, filling & high);
            if (best[0] != none)
                break;
        }
    }
    const bool left_is_higher = at.left >= at.right;
    for (unsigned char merit = 0; merit < 6; ++merit)
        if (best[merit] != none) {
            const bool at_right = (merit == 4) == left_is_higher && !must_be_at_edge(best[merit]);
            return {best[merit], at_right, merit, best[5]};
        }
    return {none, false, 5, none};
}

/// Lays the piece and returns the area passed over to start it on the repeat.
inline std::int64_t skyline::lay_at(const niche& at, choice best) {
    const std::size_t s = at.step;
    const std::int64_t width = across(best.place, x_[s]);
    const std::int64_t length = along(best.place, at.y);
    const std::int64_t top = at.y + length;
    const std::int64_t passed = matching() ? width * length - across_[best.place] * along_[best.place] : 0;
    take(best.place, best.at_right ? x_[s + 1] - width : x_[s], at.y);
    if (width == at.width) {
        y_[s] = top;
        merge(s);
    } else if (best.at_right) {
        x_[s + 1] -= width;
        if (s + 1 < y_.size() && y_[s + 1] == top)
            return passed;
        x_.insert(x_.begin() + static_cast<std::ptrdiff_t>(s) + 2, x_[s + 1] + width);
        y_.insert(y_.begin() + static_cast<std::ptrdiff_t>(s) + 1, top);
    } else if (s > 0 && y_[s - 1] == top) {
        x_[s] += width;
    } else {
        x_.insert(x_.begin() + static_cast<std::ptrdiff_t>(s) + 1, x_[s] + width);
        y_.insert(y_.begin() + static_cast<std::ptrdiff_t>(s), top);
    }
    return passed;
}

inline void skyline::raise(const niche& at) {
    y_[at.step] += std::min(at.left, at.right);
    merge(at.step);
}

/// Joins a step with neighbours it has come level with.
inline void skyline::merge(std::size_t step) {
    if (step + 1 < y_.size() && y_[step + 1] == y_[step]) {
        x_.erase(x_.begin() + static_cast<std::ptrdiff_t>(step) + 1);
        y_.erase(y_.begin() + static_cast<std::ptrdiff_t>(step) + 1);
    }
    if (step > 0 && y_[step - 1] == y_[step]) {
        x_.erase(x_.begin() + static_cast<std::ptrdiff_t>(step));
        y_.erase(y_.begin() + static_cast<std::ptrdiff_t>(step));
    }
}

} // namespace turncloth::detail

#endif
