// For each size that pieces have, the set of those at most so large, as bits: what a search asks a million times a
// second.
//
//   class detail::size_sets    reset(sizes, words), rebuild(by_place), change(place, before, after),
//                              rank(size), is_size(rank, size), at_most(rank)
//
//   detail::size_sets widths;  widths.reset({12, 9, 12}, 1);  widths.rebuild({12, 9, 12});
//   // widths.at_most(widths.rank(10))[0] == 0b010: only the second is at most 10
//
// Sets are ranked by size, so "exactly so large" is one set less the one before it. A table gives the rank of a size at
// once where sizes are small; else it is found by halving.
#ifndef TURNCLOTH_CLOTH_LAY_SIZE_SETS_HPP
#define TURNCLOTH_CLOTH_LAY_SIZE_SETS_HPP

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <limits>
#include <utility>
#include <vector>

namespace turncloth::detail {

/// For each of a list of different sizes, in rising order, the set of order places whose piece is at most so large.
class size_sets {
public:
    /// The size of a piece that is not there: in none of the sets.
    static constexpr std::int64_t absent = std::numeric_limits<std::int64_t>::max();

    void reset(std::vector<std::int64_t> sizes, std::size_t words) {
        std::sort(sizes.begin(), sizes.end());
        sizes.erase(std::unique(sizes.begin(), sizes.end()), sizes.end());
        sizes_ = std::move(sizes);
        words_ = words;
        bits_.assign((sizes_.size() + 1) * words, 0);
        const std::int64_t span = sizes_.empty() ? 0 : sizes_.back() + 1;
        table_.clear();
        if (span > 0 && span <= longest_table) {
            table_.resize(static_cast<std::size_t>(span));
            std::uint32_t rank = 0;
            for (std::int64_t s = 0; s < span; ++s) {
                if (sizes_[rank] == s && s != 0)
                    ++rank;
                table_[static_cast<std::size_t>(s)] = rank;
                if (rank == sizes_.size())
                    break;
            }
        }
    }

    /// How many of the sizes are at most s.
    std::uint32_t rank(std::int64_t s) const noexcept {
        if (s >= sizes_.back())
            return static_cast<std::uint32_t>(sizes_.size());
        if (s < 0)
            return 0;
        if (!table_.empty())
            return table_[static_cast<std::size_t>(s)];
        return static_cast<std::uint32_t>(std::upper_bound(sizes_.begin(), sizes_.end(), s) - sizes_.begin());
    }

    std::uint32_t count() const noexcept { return static_cast<std::uint32_t>(sizes_.size()); }
    bool is_size(std::uint32_t rank, std::int64_t s) const noexcept { return rank > 0 && sizes_[rank - 1] == s; }
    const std::uint64_t* at_most(std::uint32_t rank) const noexcept { return bits_.data() + rank * words_; }

    /// The piece at `place` was of size `before` and becomes of size `after`; either may be `absent`.
    void change(std::size_t place, std::int64_t before, std::int64_t after) noexcept {
        const std::uint32_t from = first_set(before);
        const std::uint32_t to = first_set(after);
        const std::uint64_t bit = std::uint64_t{1} << (place % 64);
        std::uint64_t* word = bits_.data() + std::min(from, to) * words_ + place / 64;
        for (std::uint32_t r = std::min(from, to); r < std::max(from, to); ++r, word += words_)
            *word ^= bit;
    }

    /// All places anew: each in the set of its own size first, then every set takes in the one before it.
    void rebuild(const std::vector<std::int64_t>& by_place) noexcept {
        std::fill(bits_.begin(), bits_.end(), 0);
        for (std::size_t place = 0; place < by_place.size(); ++place)
            if (by_place[place] != absent)
                bits_[rank(by_place[place]) * words_ + place / 64] |= std::uint64_t{1} << (place % 64);
        for (std::size_t at = words_; at < bits_.size(); ++at)
            bits_[at] |= bits_[at - words_];
    }

private:
    static constexpr std::int64_t longest_table = 1 << 16;

    std::uint32_t first_set(std::int64_t size) const noexcept {
        return size == absent ? static_cast<std::uint32_t>(sizes_.size() + 1) : rank(size);
    }

    std::vector<std::int64_t> sizes_;
    std::vector<std::uint64_t> bits_;
    std::vector<std::uint32_t> table_;
    std::size_t words_ = 0;
};

} // namespace turncloth::detail

#endif
