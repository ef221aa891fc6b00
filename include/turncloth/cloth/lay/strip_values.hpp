// Lays in strips, each strip filled with what is worth most across the width; worth learnt from lay to lay.
//
//   class detail::strip_values                       makes lay after lay, each worth learnt from the one before
//     run(steps, best, keep)                         keep(placed, length) is shown each better one
//   std::int64_t detail::strips_bound(problem)       a length no lay in strips can be shorter than
//
//   detail::strip_values values{problem, seed};
//   values.run(100'000, best_so_far, keep);
//
// The longest piece left opens a strip. What lies beside it, of the pieces no longer than the strip, is the choice that
// fits the width and is worth most in all: a knapsack, solved exactly by adding up over the whole numbers of the width.
// At first a piece is worth its area. After each lay every piece is worth more or less by what it cost there: the cloth
// of its strip shared among the pieces in it by area. Pieces that were left for bad strips so rise until they get into
// good ones.
//
// The bound: order the pieces by falling length and string them on one endless strip. At widths 0, W, 2W, ... of it lie
// pieces whose lengths the strips, longest first, reach at least: the first k strips hold no more than kW of width, so
// some piece at or before kW is in a later strip. All in whole numbers, so that the lay is the same everywhere.
#ifndef TURNCLOTH_CLOTH_LAY_STRIP_VALUES_HPP
#define TURNCLOTH_CLOTH_LAY_STRIP_VALUES_HPP

#include <turncloth/cloth/lay/order.hpp>
#include <turncloth/cloth/lay/pace.hpp>
#include <turncloth/cloth/lay/random.hpp>

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <numeric>
#include <vector>

namespace turncloth::detail {

/// Where no piece may turn or must match; else 0.
inline std::int64_t strips_bound(const lay_problem& problem) {
    if (problem.matching())
        return 0;
    std::vector<const lay_kind*> longest_first;
    for (const lay_kind& kind : problem.kinds) {
        if (kind.sideways)
            return 0;
        longest_first.push_back(&kind);
    }
    std::sort(longest_first.begin(), longest_first.end(),
              [](const lay_kind* a, const lay_kind* b) { return a->length > b->length; });
    int128 strung = 0;
    int128 strips = 0;
    int128 bound = 0;
    for (const lay_kind* kind : longest_first) {
        strung += int128{kind->width} * kind->count;
        const int128 begun = (strung + problem.width - 1) / problem.width;
        bound += (begun - strips) * kind->length;
        strips = begun;
    }
    return static_cast<std::int64_t>(bound);
}

class strip_values {
public:
    strip_values(const lay_problem& problem, std::uint64_t seed)
        : problem_(&problem), chance_(seed), capacity_(std::min(problem.width, finest)) {
        for (const lay_kind& kind : problem.kinds)
            most_area_ = std::max(most_area_, kind.area());
        for (std::uint32_t k = 0; k < problem.kinds.size(); ++k)
            longest_first_.push_back(k);
        std::stable_sort(longest_first_.begin(), longest_first_.end(), [&](std::uint32_t a, std::uint32_t b) {
            return problem.kinds[a].least_length() > problem.kinds[b].least_length();
        });
        forget();
    }

    /// Whether this way suits: no repeat, no piece bound to the edge, and few enough pieces for the sums.
    static bool suits(const lay_problem& problem) {
        for (const lay_kind& kind : problem.kinds)
            if (kind.at_edge)
                return false;
        return !problem.matching() && problem.pieces <= 500;
    }

    /// Makes lays until `steps` more have been spent or `keep` says stop; `entry` in what it is shown is the index of a
    /// kind.
    template <class Keep>
    void run(lay_allowance steps, std::int64_t best, Keep keep) {
        const lay_allowance allowance = steps.after(steps_);
        int since_better = 0;
        while (allowance.allows(steps_)) {
            const std::int64_t length = make();
            if (length < best) {
                best = length;
                since_better = 0;
                if (!keep(placed_, length))
                    return;
            }
            learn();
            constexpr int patience = 60;
            if (++since_better % patience == 0)
                forget();
        }
    }

    std::uint64_t steps() const noexcept { return steps_; }

private:
    static constexpr std::int64_t finest = 1024; // the width in this many parts at most
    static constexpr std::int64_t scale = 1 << 20;

    struct strip {
        std::size_t first_piece; // in placed_
        std::int64_t length;
        std::int64_t area;
    };

    std::int64_t share(std::int64_t area) const {
        return std::max<std::int64_t>(1, static_cast<std::int64_t>(int128{area} * scale / most_area_));
    }

    void forget() {
        worth_.clear();
        for (const lay_kind& kind : problem_->kinds)
            worth_.push_back(share(kind.area()));
        shake_ = 2U << chance_.below(6); // in a hundred: from hardly at all to beyond recognition
    }

    /// The parts of the width that a width takes, rounded up, so that what fits in parts fits.
    std::int64_t parts(std::int64_t width) const {
        if (problem_->width <= finest)
            return width;
        return static_cast<std::int64_t>((int128{width} * capacity_ + problem_->width - 1) / problem_->width);
    }

    /// The narrower of the ways a kind lies that are no longer than so much.
    struct lie {
        bool possible, turned;
        std::int64_t width, length;
    };
    static lie narrowest(const lay_kind& kind, std::int64_t length) {
        const bool upright = kind.upright && kind.length <= length;
        const bool sideways = kind.sideways && kind.width <= length;
        if (sideways && (!upright || kind.length < kind.width))
            return {true, true, kind.length, kind.width};
        return {upright, false, kind.width, kind.length};
    }

    /// One lay; its length.
    std::int64_t make() {
        left_.clear();
        for (const lay_kind& kind : problem_->kinds)
            left_.push_back(kind.count);
        placed_.clear();
        strips_.clear();
        std::int64_t length = 0;
        for (const std::uint32_t opener : longest_first_)
            while (left_[opener] > 0) {
                const lay_kind& kind = problem_->kinds[opener];
                lie way = narrowest(kind, kind.least_length());
                const bool either = kind.upright && kind.sideways;
                if (either && chance_.below(8) == 0)
                    way = narrowest(kind, std::max(kind.width, kind.length));
                fill(opener, way, length);
                length += way.length;
            }
        return length;
    }

    void fill(std::uint32_t opener, const lie& way, std::int64_t y) {
        strips_.push_back({placed_.size(), way.length, 0});
        put(opener, way, 0, y);
        std::int64_t x = way.width;
        const std::int64_t room = capacity_ - parts(way.width);
        choose(way.length, room);
        for (std::size_t i = options_.size(), left = static_cast<std::size_t>(room); i-- > 0;) {
            if (taken_[i * (static_cast<std::size_t>(room) + 1) + left] == 0)
                continue;
            const lie beside = narrowest(problem_->kinds[options_[i]], way.length);
            put(options_[i], beside, x, y);
            x += beside.width;
            left -= static_cast<std::size_t>(parts(beside.width));
        }
    }

    void put(std::uint32_t kind, const lie& way, std::int64_t x, std::int64_t y) {
        placed_.push_back({kind, way.turned, x, y});
        --left_[kind];
        strips_.back().area += way.width * way.length;
    }

    /// The choice worth most within `room` parts of the width, in taken_: for each option and room left, whether it is
    /// in.
    void choose(std::int64_t length, std::int64_t room) {
        options_.clear();
        const auto columns = static_cast<std::size_t>(room) + 1;
        sum_.assign(columns, 0);
        taken_.clear();
        for (std::uint32_t k = 0; k < left_.size(); ++k) {
            const lie way = narrowest(problem_->kinds[k], length);
            if (left_[k] == 0 || !way.possible)
                continue;
            const std::int64_t width = parts(way.width);
            const std::int64_t copies = std::min(left_[k], room / width);
            for (std::int64_t copy = 0; copy < copies; ++copy) {
                options_.push_back(k);
                taken_.resize(taken_.size() + columns, 0);
                char* const taken = taken_.data() + taken_.size() - columns;
                const auto step = static_cast<std::size_t>(width);
                for (std::size_t at = columns; at-- > step;) {
                    const std::int64_t with = sum_[at - step] + worth_[k];
                    taken[at] = static_cast<char>(with > sum_[at]);
                    sum_[at] = std::max(sum_[at], with);
                }
            }
        }
        steps_ += 2 + options_.size() * columns / 64;
    }

    /// Moves worth towards what pieces cost in the last lay, and shakes it a little.
    void learn() {
        for (std::size_t s = 0; s < strips_.size(); ++s) {
            const std::size_t end = s + 1 < strips_.size() ? strips_[s + 1].first_piece : placed_.size();
            const int128 cloth = int128{strips_[s].length} * problem_->width;
            for (std::size_t i = strips_[s].first_piece; i < end; ++i) {
                const std::uint32_t k = placed_[i].entry;
                const std::int64_t cost =
                    static_cast<std::int64_t>(int128{share(problem_->kinds[k].area())} * cloth / strips_[s].area);
                const std::int64_t weight = 1 + chance_.below(8);
                const std::int64_t shaken = cost * (100 - shake_ + chance_.below(2 * shake_ + 1)) / 100;
                worth_[k] = std::max<std::int64_t>(1, ((16 - weight) * worth_[k] + weight * shaken) / 16);
            }
        }
    }

    const lay_problem* problem_;
    lay_random chance_;
    std::int64_t capacity_;
    std::int64_t most_area_ = 1;
    std::vector<std::uint32_t> longest_first_;
    std::vector<std::int64_t> worth_, left_, sum_;
    std::vector<std::uint32_t> options_;
    std::vector<char> taken_;
    std::vector<strip> strips_;
    std::uint32_t shake_ = 2;
    std::vector<laid> placed_;
    std::uint64_t steps_ = 0;
};

} // namespace turncloth::detail

#endif
