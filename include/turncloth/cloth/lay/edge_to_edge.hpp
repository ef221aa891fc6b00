// One pass of laying pieces so that cuts from edge to edge, to any depth, part them all.
//
//   class detail::edge_to_edge : lay_order    run(length, allowed) -> area left over
//
//   detail::edge_to_edge pass{entries};
//   bool all_laid = pass.run(length, 0) == 0;
//
// A piece goes into the near left corner of a free rectangle of cloth, and what is left of the rectangle is cut in two
// by one more cut from edge to edge: across it, above the piece, or along it, beside the piece. That every lay built so
// can be cut edge to edge needs no more proof than its own history. Of the two remainders the smaller is filled first,
// while there are still many pieces to choose from. Which way to cut is remembered with the piece, for a search to
// vary.
#ifndef TURNCLOTH_CLOTH_LAY_EDGE_TO_EDGE_HPP
#define TURNCLOTH_CLOTH_LAY_EDGE_TO_EDGE_HPP

#include <turncloth/cloth/lay/order.hpp>

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <utility>
#include <vector>

namespace turncloth::detail {

class edge_to_edge : public lay_order {
public:
    /// How often in a hundred a search should twist instead of exchange; bit 1 cuts along the cloth first.
    static constexpr std::uint32_t twists_in_100 = 30;

    explicit edge_to_edge(const lay_entries& entries) : lay_order(entries) {}

    /// Lays the pieces within `length`. Returns the area of the pieces left over: 0 when all are laid; more than
    /// `allowed`, and no further laid than it took to see it, when that is certain to be exceeded.
    std::int64_t run(std::int64_t length, std::int64_t allowed);

private:
    struct rectangle {
        std::int64_t x, y, width, length;
        std::int64_t area() const noexcept { return width * length; }
    };

    std::uint32_t choose(const rectangle& free) noexcept;
    void part(const rectangle& free, std::uint32_t place);

    std::vector<rectangle> free_; // filled from the back
};

inline std::int64_t edge_to_edge::run(std::int64_t length, std::int64_t allowed) {
    const lay_problem& problem = entries_->problem();
    const std::int64_t spare = problem.width * length - problem.area;
    if (spare < 0 && -spare > allowed)
        return -spare;
    begin_run();
    reached_ = 0;
    free_.assign(1, {0, 0, problem.width, length});
    std::int64_t lost = 0;
    std::int64_t unlaid = problem.pieces;
    while (unlaid > 0 && !free_.empty()) {
        const rectangle free = free_.back();
        free_.pop_back();
        const std::uint32_t place = choose(free);
        steps_ += 1 + words_ / 4;
        if (place == none) {
            lost += free.area();
            if (lost > spare + allowed)
                return lost - spare;
            continue;
        }
        --unlaid;
        const std::int64_t width = across(place, free.x);
        const std::int64_t length_used = along(place, free.y);
        reached_ = std::max(reached_, free.y + length_used);
        lost += width * length_used - across_[place] * along_[place];
        if (lost > spare + allowed)
            return lost - spare;
        part(free, place);
        take(place, free.x, free.y);
    }
    return unlaid == 0 ? 0 : lost - spare;
}

inline std::uint32_t edge_to_edge::choose(const rectangle& free) noexcept {
    if (matching())
        return first_matched(free.x, free.y, free.width, free.length);
    const std::uint32_t wide = widths_.rank(free.width);
    const std::uint32_t high = lengths_.rank(free.length);
    if (wide == 0 || high == 0)
        return none;
    const bool width_met = widths_.is_size(wide, free.width);
    const bool length_met = lengths_.is_size(high, free.length);
    const std::uint64_t* const fits_width = widths_.at_most(wide);
    const std::uint64_t* const narrower = widths_.at_most(wide - width_met);
    const std::uint64_t* const fits_length = lengths_.at_most(high);
    const std::uint64_t* const shorter = lengths_.at_most(high - length_met);
    std::uint32_t both = none, one = none, any = none;
    skip_laid();
    for (std::size_t w = first_word_; w < words_; ++w) {
        const std::uint64_t fit = open(w, free.x) & fits_width[w] & fits_length[w];
        if (fit == 0)
            continue;
        const std::uint64_t fills_width = fit & ~narrower[w];
        const std::uint64_t fills_length = fit & ~shorter[w];
        note(any, w, fit);
        note(one, w, fills_width | fills_length);
        note(both, w, fills_width & fills_length);
        if (both != none)
            return both;
    }
    return one != none ? one : any;
}

/// Puts what the piece leaves of the rectangle on the pile, the larger part below the smaller.
inline void edge_to_edge::part(const rectangle& free, std::uint32_t place) {
    const std::int64_t width = across(place, free.x);
    const std::int64_t length = along(place, free.y);
    const bool cut_across = (twists_[entry_at(place)] & 2U) == 0;
    rectangle above{free.x, free.y + length, cut_across ? free.width : width, free.length - length};
    rectangle beside{free.x + width, free.y, free.width - width, cut_across ? length : free.length};
    const bool above_first = above.area() >= beside.area();
    if (above_first && above.length > 0)
        free_.push_back(above);
    if (beside.width > 0)
        free_.push_back(beside);
    if (!above_first && above.length > 0)
        free_.push_back(above);
}

} // namespace turncloth::detail

#endif
