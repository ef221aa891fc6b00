// One pass of laying pieces in strips: cloth is cut right across into strips, a strip crosscut into pieces, each
// trimmed.
//
//   class detail::strips : lay_order    run(length, allowed) -> area left over
//
//   detail::strips pass{entries};
//   bool all_laid = pass.run(length, 0) == 0;
//
// The longest piece not laid yet opens a strip of its own length; the strip is filled with the first in order that just
// fills it, else the first that fits, of those no longer than the strip.
#ifndef TURNCLOTH_CLOTH_LAY_STRIPS_HPP
#define TURNCLOTH_CLOTH_LAY_STRIPS_HPP

#include <turncloth/cloth/lay/order.hpp>

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <utility>
#include <vector>

namespace turncloth::detail {

class strips : public lay_order {
public:
    /// How often in a hundred a search should twist instead of exchange.
    static constexpr std::uint32_t twists_in_100 = 10;

    explicit strips(const lay_entries& entries) : lay_order(entries) {}

    /// Lays the pieces within `length`. Returns the area of the pieces left over: 0 when all are laid; more than
    /// `allowed`, and no further laid than it took to see it, when that is certain to be exceeded.
    std::int64_t run(std::int64_t length, std::int64_t allowed) {
        const lay_problem& problem = entries_->problem();
        const std::int64_t spare = problem.width * length - problem.area;
        if (spare < 0 && -spare > allowed)
            return -spare;
        begin_run();
        reached_ = 0;
        longest_ = lengths_.count();
        std::int64_t lost = 0;
        while (std::cmp_less(placed_.size(), problem.pieces)) {
            const std::uint32_t opener = open_strip(length - reached_);
            ++steps_;
            if (opener == none) {
                lost += problem.width * (length - reached_);
                return std::max<std::int64_t>(lost - spare, 1);
            }
            lost += fill_strip(opener);
            if (lost > spare + allowed)
                return lost - spare;
        }
        return 0;
    }

private:
    /// The longest piece not laid yet opens the next strip: whichever strip it lies in, it is as long as any there, and
    /// the order of strips is of no account.
    std::uint32_t open_strip(std::int64_t room) noexcept {
        if (matching())
            return first_matched(0, reached_, entries_->problem().width, room);
        skip_laid();
        const std::uint64_t preferred = turning() ? 0x5555555555555555U : ~std::uint64_t{0};
        for (; longest_ > 0; --longest_) {
            const std::uint64_t* const so_long = lengths_.at_most(longest_);
            const std::uint64_t* const shorter = lengths_.at_most(longest_ - 1);
            std::uint32_t best = none;
            for (std::size_t w = first_word_; w < words_ && best == none; ++w)
                note(best, w, open_[w] & so_long[w] & ~shorter[w] & preferred);
            if (best != none)
                return along_[best] <= room ? best : none;
        }
        return first(entries_->problem().width, room);
    }

    /// Lays one strip and returns the area lost in it.
    std::int64_t fill_strip(std::uint32_t opener) {
        const std::int64_t length = along(opener, reached_);
        std::int64_t used = 0;
        std::int64_t x = 0;
        for (std::uint32_t place = opener; place != none; place = choose(x, length)) {
            take(place, x, reached_);
            x += across(place, x);
            used += across_[place] * along_[place];
            steps_ += 1 + words_ / 4;
        }
        reached_ += length;
        return entries_->problem().width * length - used;
    }

    std::uint32_t choose(std::int64_t x, std::int64_t length) noexcept {
        const std::int64_t width = entries_->problem().width - x;
        if (matching())
            return first_matched(x, reached_, width, length);
        const std::uint32_t wide = widths_.rank(width);
        if (wide == 0)
            return none;
        const bool width_met = widths_.is_size(wide, width);
        const std::uint64_t* const fits_width = widths_.at_most(wide);
        const std::uint64_t* const narrower = widths_.at_most(wide - width_met);
        const std::uint64_t* const fits_length = lengths_.at_most(lengths_.rank(length));
        std::uint32_t filling = none, any = none;
        skip_laid();
        for (std::size_t w = first_word_; w < words_ && filling == none; ++w) {
            const std::uint64_t fit = open(w, x) & fits_width[w] & fits_length[w];
            note(any, w, fit);
            note(filling, w, fit & ~narrower[w]);
        }
        return filling != none ? filling : any;
    }

    std::uint32_t longest_ = 0; // no piece still to lay is of a length beyond this, in its preferred way
};

} // namespace turncloth::detail

#endif
