// The pieces of greatest worth that one piece of stock holds: a bounded knapsack, solved exactly.
//
//   struct detail::worth { length, price, most }   a length, what one is worth, how many may be used
//   filling detail::best_fill(worths, room, allowance)        value, upper, take, steps
//
//   filling f = best_fill({{60, 7, 3}, {40, 4, 3}}, 100);     // f.value == 11, f.take == {1, 1}
//
// The method is a list of states (length used, worth) in which none is both longer and worth no more than another.
// Lengths join in the order of worth per unit of length; a state dies when even filling the rest of the stock with the
// best of what is still to come could not beat the best known. Multiples join as 1, 2, 4, ... copies, so the work grows
// with the logarithm of the counts.
//
// `upper` is never below the true best, even where the allowance stops the work early: then it is the greatest worth
// that any live state could reach. So a proof that rests on `upper` holds in every case.
#ifndef TURNCLOTH_CLOTH_STOCK_KNAPSACK_HPP
#define TURNCLOTH_CLOTH_STOCK_KNAPSACK_HPP

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <limits>
#include <numeric>
#include <vector>

namespace turncloth::detail {

/// `most` copies at most of a piece of `length` (at least 1), each worth `price` (at least 0, at most 2^52).
struct worth {
    std::int64_t length;
    std::int64_t price;
    std::int64_t most;
};

struct filling {
    std::int64_t value = 0;
    std::int64_t upper = 0;         ///< value, or more where the allowance ran out
    std::vector<std::int64_t> take; ///< of each of the worths
    std::int64_t steps = 0;
};

/// Worth per unit of length, from above: the margin is far wider than the rounding of a few double operations, so that
/// pruning by it never loses the best.
inline double worth_density(const worth& w) {
    return static_cast<double>(w.price) / static_cast<double>(w.length) * (1 + 1e-13);
}

class fill_search {
public:
    fill_search(const std::vector<worth>& worths, std::int64_t room, std::int64_t allowance)
        : worths_(worths), room_(room), allowance_(allowance) {}

    filling run() {
        sort_by_density();
        list_ = {{0, 0, -1}};
        for (std::size_t i = 0; i < order_.size(); ++i) {
            const worth& w = worths_[order_[i]];
            const double next = i + 1 < order_.size() ? worth_density(worths_[order_[i + 1]]) : 0.0;
            std::int64_t rest = std::min(w.most, room_ / w.length);
            for (std::int64_t copies = 1; rest > 0; copies *= 2) {
                const std::int64_t some = std::min(copies, rest);
                rest -= some;
                join(order_[i], some, rest > 0 ? worth_density(w) : next);
                if (answer_.steps > allowance_)
                    return stopped(rest > 0 ? worth_density(w) : next);
            }
        }
        answer_.upper = answer_.value;
        return unfold();
    }

private:
    struct state {
        std::int64_t used;
        std::int64_t value;
        std::int32_t trail;
    };
    struct footprint {
        std::int32_t before;
        std::uint32_t what;
        std::int64_t copies;
    };

    void sort_by_density() {
        for (std::size_t i = 0; i < worths_.size(); ++i)
            if (worths_[i].price > 0 && worths_[i].most > 0 && worths_[i].length <= room_)
                order_.push_back(i);
        std::vector<double> density(worths_.size());
        for (std::size_t i : order_)
            density[i] = worth_density(worths_[i]);
        std::stable_sort(order_.begin(), order_.end(),
                         [&](std::size_t a, std::size_t b) { return density[a] > density[b]; });
    }

    // The greatest worth a state can still come to when the rest has at most this density: the bound of the fractional
    // knapsack, kept on the safe side by the margin in the density. (Rounding is below 1/2 while worths are below
    // 2^52.)
    double reach(const state& s, double density) const {
        return static_cast<double>(s.value) + static_cast<double>(room_ - s.used) * density;
    }

    bool alive(const state& s, double density) const {
        return s.value == answer_.value || reach(s, density) > static_cast<double>(answer_.value);
    }

    void join(std::size_t what, std::int64_t copies, double density) {
        const std::int64_t length = worths_[what].length * copies;
        const std::int64_t value = worths_[what].price * copies;
        merged_.clear();
        auto old = list_.begin();
        auto grown = list_.begin();
        while (grown != list_.end() && grown->used <= room_ - length) {
            const state longer{grown->used + length, grown->value + value, grown->trail};
            while (old != list_.end() &&
                   (old->used < longer.used || (old->used == longer.used && old->value >= longer.value)))
                keep(*old++, density);
            if (merged_.empty() || longer.value > merged_.back().value)
                keep_grown(longer, what, copies, density);
            ++grown;
        }
        while (old != list_.end())
            keep(*old++, density);
        answer_.steps += static_cast<std::int64_t>(list_.size()) + 1;
        list_.swap(merged_);
    }

    void keep(const state& s, double density) {
        if ((merged_.empty() || s.value > merged_.back().value) && alive(s, density))
            merged_.push_back(s);
    }

    void keep_grown(state s, std::size_t what, std::int64_t copies, double density) {
        const bool better = s.value > answer_.value;
        if (!better && !alive(s, density))
            return;
        trail_.push_back({s.trail, static_cast<std::uint32_t>(what), copies});
        s.trail = static_cast<std::int32_t>(trail_.size() - 1);
        if (better) {
            answer_.value = s.value;
            best_ = s.trail;
        }
        merged_.push_back(s);
    }

    filling stopped(double density) {
        double upper = static_cast<double>(answer_.value);
        for (const state& s : list_)
            upper = std::max(upper, reach(s, density));
        answer_.upper = static_cast<std::int64_t>(upper) + 1;
        return unfold();
    }

    filling unfold() {
        answer_.take.assign(worths_.size(), 0);
        for (std::int32_t t = best_; t >= 0; t = trail_[static_cast<std::size_t>(t)].before) {
            const footprint& f = trail_[static_cast<std::size_t>(t)];
            answer_.take[f.what] += f.copies;
        }
        return std::move(answer_);
    }

    const std::vector<worth>& worths_;
    std::int64_t room_;
    std::int64_t allowance_;
    std::vector<std::size_t> order_;
    std::vector<state> list_, merged_;
    std::vector<footprint> trail_;
    std::int32_t best_ = -1;
    filling answer_;
};

/// The most that pieces within `room` are worth. `allowance` limits the steps (a step is one state looked at); it is
/// overrun by one join at most.
inline filling best_fill(const std::vector<worth>& worths, std::int64_t room,
                         std::int64_t allowance = std::numeric_limits<std::int64_t>::max()) {
    return fill_search(worths, room, allowance).run();
}

} // namespace turncloth::detail

#endif
