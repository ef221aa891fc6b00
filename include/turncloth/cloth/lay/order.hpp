// The pieces in an order of preference, and quick answers to "which is the first that fits here?".
//
//   struct detail::laid          a piece's corner and turn
//   enum class detail::proof     what trying everything came to
//   class detail::lay_entries    the pieces as the searches shuffle them: few bundles of equal pieces
//   class detail::lay_order      order(), exchange(p, q), twist(p, how), first(...), take(...), placed()
//
//   detail::lay_order order{entries};
//   auto place = order.first(niche_width, room);
//
// Choosing must be quick: a search makes millions of choices a second. Places in the order are bits of sets
// (cloth/lay/size_sets.hpp): those whose piece is at most so wide, those at most so long, and those not laid yet. The
// first that fits is the lowest bit of an intersection, 64 places at a time. A piece that may lie either way has two
// places side by side, one for each way.
#ifndef TURNCLOTH_CLOTH_LAY_ORDER_HPP
#define TURNCLOTH_CLOTH_LAY_ORDER_HPP

#include <turncloth/cloth/lay/problem.hpp>
#include <turncloth/cloth/lay/size_sets.hpp>

#include <algorithm>
#include <bit>
#include <cstddef>
#include <cstdint>
#include <limits>
#include <numeric>
#include <utility>
#include <vector>

namespace turncloth::detail {

/// The corner and the turn of a piece laid; `entry` is an index in lay_entries.
struct laid {
    std::uint32_t entry = 0;
    bool turned = false;
    std::int64_t x = 0;
    std::int64_t y = 0;
};

/// What trying everything came to: a lay was found, there is none, or there was too much to try.
enum class proof : unsigned char { found, refuted, given_up };

/// Bundles of equal pieces. Up to four thousand pieces each is its own bundle, beyond that equal pieces move together.
class lay_entries {
public:
    explicit lay_entries(const lay_problem& problem) : problem_(&problem) {
        constexpr std::int64_t finest = 4096;
        const std::int64_t bundle = (problem.pieces + finest - 1) / finest;
        for (std::uint32_t k = 0; k < problem.kinds.size(); ++k)
            for (std::int64_t left = problem.kinds[k].count; left > 0; left -= bundle) {
                kind_.push_back(k);
                count_.push_back(std::min(left, bundle));
            }
    }

    const lay_problem& problem() const noexcept { return *problem_; }
    std::uint32_t size() const noexcept { return static_cast<std::uint32_t>(kind_.size()); }
    std::uint32_t kind_index(std::uint32_t entry) const noexcept { return kind_[entry]; }
    const lay_kind& kind(std::uint32_t entry) const noexcept { return problem_->kinds[kind_[entry]]; }
    std::int64_t count(std::uint32_t entry) const noexcept { return count_[entry]; }

private:
    const lay_problem* problem_;
    std::vector<std::uint32_t> kind_;
    std::vector<std::int64_t> count_;
};

class lay_order {
public:
    static constexpr std::uint32_t none = std::numeric_limits<std::uint32_t>::max();

    explicit lay_order(const lay_entries& entries);

    /// Sets the order of preference: a permutation of the entries.
    void order(const std::vector<std::uint32_t>& entries) noexcept;
    const std::vector<std::uint32_t>& order() const noexcept { return order_; }
    void exchange(std::uint32_t p, std::uint32_t q) noexcept;

    /// A choice kept with the entry at `p`: bit 0 prefers the turned way, bit 1 is the pass's own. Returns what it was.
    unsigned twist(std::uint32_t p, unsigned how) noexcept;

    /// The pieces laid by the last run.
    const std::vector<laid>& placed() const noexcept { return placed_; }
    /// The length used by the last run.
    std::int64_t reached() const noexcept { return reached_; }
    /// Work done so far, in steps.
    std::uint64_t steps() const noexcept { return steps_; }
    const std::vector<unsigned char>& twists() const noexcept { return twists_; }
    bool turning() const noexcept { return stride_ == 2; }

protected:
    void begin_run();
    /// The first open place whose piece fits, or `none`.
    std::uint32_t first(std::int64_t width, std::int64_t length) noexcept;
    /// The open places of a word, without those that must lie against the edge if `x` is not there.
    std::uint64_t open(std::size_t word, std::int64_t x) const noexcept {
        return x == 0 || edged_.empty() ? open_[word] : open_[word] & ~edged_[word];
    }
    bool must_be_at_edge(std::uint32_t place) const noexcept {
        return !edged_.empty() && (edged_[place / 64] >> (place % 64) & 1U) != 0;
    }
    void take(std::uint32_t place, std::int64_t x, std::int64_t y);
    /// Counts a piece at the place as laid.
    void close(std::uint32_t place) noexcept;
    laid laid_at(std::uint32_t place, std::int64_t x, std::int64_t y) const noexcept;
    bool bundled() const noexcept { return bundled_; }
    /// The first open place, of those that waste least before they start on the repeat, whose piece fits from (x, y)
    /// on.
    std::uint32_t first_matched(std::int64_t x, std::int64_t y, std::int64_t width, std::int64_t length) const noexcept;
    /// The size of a piece with the cloth passed over before it starts on the repeat, from (x, y) on.
    std::int64_t across(std::uint32_t place, std::int64_t x) const noexcept {
        return across_[place] +
               (matching_ ? passed_over(entries_->kind(entry_at(place)).match_across, x, across_repeat()) : 0);
    }
    std::int64_t along(std::uint32_t place, std::int64_t y) const noexcept {
        return along_[place] +
               (matching_ ? passed_over(entries_->kind(entry_at(place)).match_along, y, along_repeat()) : 0);
    }
    bool matching() const noexcept { return matching_; }
    std::uint32_t entry_at(std::uint32_t place) const noexcept { return order_[place / stride_]; }
    void skip_laid() noexcept {
        while (first_word_ < words_ && open_[first_word_] == 0)
            ++first_word_;
    }
    static void note(std::uint32_t& best, std::size_t word, std::uint64_t set) noexcept {
        if (set != 0 && best == none)
            best = static_cast<std::uint32_t>(word * 64) + static_cast<std::uint32_t>(std::countr_zero(set));
    }

    const lay_entries* entries_;
    std::uint32_t stride_ = 1; ///< places of one entry: 2 where any piece may turn
    std::size_t words_ = 0;
    std::vector<std::uint32_t> order_;
    std::vector<std::int64_t> across_,
        along_; ///< by place: the size as laid there, `absent` where there is no such way
    size_sets widths_, lengths_;
    std::vector<std::uint64_t> all_, open_;
    std::vector<std::uint64_t> edged_; ///< places that must lie against the edge; empty where none must
    std::size_t first_word_ = 0;
    std::vector<unsigned char> twists_; ///< by entry
    std::vector<laid> placed_;
    std::int64_t reached_ = 0;
    std::uint64_t steps_ = 0;

private:
    void put(std::uint32_t position, std::uint32_t entry) noexcept;
    void set_sizes(std::size_t place, std::int64_t across, std::int64_t along) noexcept;
    std::int64_t across_repeat() const noexcept { return entries_->problem().repeat_across; }
    std::int64_t along_repeat() const noexcept { return entries_->problem().repeat_along; }
    /// From `from` to the next place that is `match` into the repeat.
    static std::int64_t passed_over(std::int64_t match, std::int64_t from, std::int64_t repeat) noexcept {
        if (repeat <= 1)
            return 0;
        const std::int64_t into = (match - from) % repeat;
        return into < 0 ? into + repeat : into;
    }

    bool bundled_ = false;
    bool matching_ = false;
    bool all_at_once_ = false;       // the sets will be rebuilt: no need to keep them up
    std::vector<std::int64_t> left_; // by position: pieces of the bundle still to lay
};

inline lay_order::lay_order(const lay_entries& entries) : entries_(&entries), matching_(entries.problem().matching()) {
    const std::uint32_t size = entries.size();
    for (std::uint32_t e = 0; e < size; ++e) {
        if (entries.kind(e).sideways)
            stride_ = 2;
        bundled_ = bundled_ || entries.count(e) > 1;
    }
    words_ = (std::size_t{size} * stride_ + 63) / 64;
    std::vector<std::int64_t> widths, lengths;
    for (const lay_kind& kind : entries.problem().kinds) {
        if (kind.at_edge)
            edged_.assign(words_, 0);
        if (kind.upright)
            widths.push_back(kind.width), lengths.push_back(kind.length);
        if (kind.sideways)
            widths.push_back(kind.length), lengths.push_back(kind.width);
    }
    widths_.reset(std::move(widths), words_);
    lengths_.reset(std::move(lengths), words_);
    across_.assign(std::size_t{size} * stride_, size_sets::absent);
    along_.assign(std::size_t{size} * stride_, size_sets::absent);
    order_.assign(size, none);
    all_.assign(words_, 0);
    for (std::size_t bit = 0; bit < std::size_t{size} * stride_; ++bit)
        all_[bit / 64] |= std::uint64_t{1} << (bit % 64);
    left_.resize(size);
    twists_.assign(size, 0);
    placed_.reserve(static_cast<std::size_t>(entries.problem().pieces));
    std::vector<std::uint32_t> as_listed(size);
    std::iota(as_listed.begin(), as_listed.end(), 0U);
    order(as_listed);
}

inline void lay_order::put(std::uint32_t position, std::uint32_t entry) noexcept {
    order_[position] = entry;
    const lay_kind& kind = entries_->kind(entry);
    if (!edged_.empty()) {
        const std::size_t bit = std::size_t{position} * stride_;
        const std::uint64_t mask = (stride_ == 2 ? std::uint64_t{3} : std::uint64_t{1}) << (bit % 64);
        edged_[bit / 64] = kind.at_edge ? edged_[bit / 64] | mask : edged_[bit / 64] & ~mask;
    }
    const std::size_t place = std::size_t{position} * stride_;
    const std::size_t turned = twists_[entry] % 2 == 1 ? place : place + 1;
    constexpr std::int64_t absent = size_sets::absent;
    set_sizes(stride_ == 2 ? 2 * place + 1 - turned : place, kind.upright ? kind.width : absent,
              kind.upright ? kind.length : absent);
    if (stride_ == 2)
        set_sizes(turned, kind.sideways ? kind.length : absent, kind.sideways ? kind.width : absent);
}

inline unsigned lay_order::twist(std::uint32_t p, unsigned how) noexcept {
    const std::uint32_t entry = order_[p];
    const unsigned before = std::exchange(twists_[entry], static_cast<unsigned char>(how));
    if (stride_ == 2 && (before ^ how) % 2 == 1)
        put(p, entry);
    return before;
}

inline void lay_order::set_sizes(std::size_t place, std::int64_t across, std::int64_t along) noexcept {
    if (!all_at_once_) {
        widths_.change(place, across_[place], across);
        lengths_.change(place, along_[place], along);
    }
    across_[place] = across;
    along_[place] = along;
}

inline void lay_order::order(const std::vector<std::uint32_t>& entries) noexcept {
    all_at_once_ = true;
    for (std::uint32_t p = 0; p < entries.size(); ++p)
        if (order_[p] != entries[p])
            put(p, entries[p]);
    all_at_once_ = false;
    widths_.rebuild(across_);
    lengths_.rebuild(along_);
}

inline void lay_order::exchange(std::uint32_t p, std::uint32_t q) noexcept {
    const std::uint32_t at_p = order_[p];
    put(p, order_[q]);
    put(q, at_p);
}

inline void lay_order::begin_run() {
    open_ = all_;
    first_word_ = 0;
    if (bundled_)
        for (std::uint32_t p = 0; p < order_.size(); ++p)
            left_[p] = entries_->count(order_[p]);
    placed_.clear();
}

inline std::uint32_t lay_order::first(std::int64_t width, std::int64_t length) noexcept {
    const std::uint64_t* const fits_width = widths_.at_most(widths_.rank(width));
    const std::uint64_t* const fits_length = lengths_.at_most(lengths_.rank(length));
    std::uint32_t best = none;
    skip_laid();
    for (std::size_t w = first_word_; w < words_ && best == none; ++w)
        note(best, w, open_[w] & fits_width[w] & fits_length[w]);
    return best;
}

inline std::uint32_t lay_order::first_matched(std::int64_t x, std::int64_t y, std::int64_t width,
                                              std::int64_t length) const noexcept {
    std::uint32_t best = none;
    int128 least_wasted = 0;
    int128 of_area = 1;
    for (std::uint32_t place = 0; place < across_.size(); ++place) {
        if ((open_[place / 64] >> (place % 64) & 1U) == 0 || across_[place] > width || along_[place] > length)
            continue;
        if (x != 0 && must_be_at_edge(place))
            continue;
        const std::int64_t wide = across(place, x);
        const std::int64_t high = along(place, y);
        if (wide > width || high > length)
            continue;
        const int128 area = int128{across_[place]} * along_[place];
        const int128 wasted = int128{wide} * high - area;
        if (best != none && wasted * of_area >= least_wasted * area)
            continue;
        best = place;
        least_wasted = wasted;
        of_area = area;
    }
    return best;
}

inline laid lay_order::laid_at(std::uint32_t place, std::int64_t x, std::int64_t y) const noexcept {
    const std::uint32_t entry = entry_at(place);
    return {.entry = entry,
            .turned = stride_ == 2 && (place % 2 == 1) != (twists_[entry] % 2 == 1),
            .x = x + across(place, x) - across_[place],
            .y = y + along(place, y) - along_[place]};
}

inline void lay_order::take(std::uint32_t place, std::int64_t x, std::int64_t y) {
    placed_.push_back(laid_at(place, x, y));
    close(place);
}

inline void lay_order::close(std::uint32_t place) noexcept {
    const std::uint32_t position = place / stride_;
    if (bundled_ && --left_[position] > 0)
        return;
    const std::size_t bit = std::size_t{position} * stride_;
    open_[bit / 64] &= ~((stride_ == 2 ? std::uint64_t{3} : std::uint64_t{1}) << (bit % 64));
}

} // namespace turncloth::detail

#endif
