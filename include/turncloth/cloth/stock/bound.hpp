// Bounds below which no cutting plan can go, each with its proof: a price on every piece.
//
//   struct detail::stock_task    the question in the form that the search works on
//   struct detail::stock_rest    what is still wanted and still on hand
//   class detail::price_proof    bound(), the bound that these prices prove
//
//   price_proof p(task, rest, task.size, allowance);          // priced by length: the bound by material
//   p.bound()                                                 // no plan for the rest costs less
//
// Why prices prove a bound. Let y_i >= 0 be any whole prices, d_i the demand, c_k the cost of a piece of stock of kind
// k and V_k the most that pieces cut from one are worth (a knapsack, solved exactly or bounded from above). Choose a
// scale s > 0. Every filling p of kind k satisfies s a_p.y <= s V_k <= c_k + z_k with z_k = max(0, s V_k - c_k). Sum
// over the pieces of stock of any plan, n_k of them of kind k, n_k <= h_k where only h_k are on hand:
//
//   cost = sum n_k c_k  >=  s d.y - sum h_k z_k.
//
// A kind without limit must have z_k = 0, so s is at most c_k / V_k for each of those. We take s = c* / V* of one kind
// and multiply by V*, which leaves whole numbers throughout:
//
//   cost >= ceil((c* d.y - sum h_k max(0, V_k c* - c_k V*)) / V*).
//
// The prices may come from floating-point arithmetic: nothing is claimed of them but what this whole-number sum
// shows.
#ifndef TURNCLOTH_CLOTH_STOCK_BOUND_HPP
#define TURNCLOTH_CLOTH_STOCK_BOUND_HPP

#include <turncloth/cloth/stock/knapsack.hpp>
#include <turncloth/measure/fraction.hpp>

#include <cstddef>
#include <cstdint>
#include <utility>
#include <vector>

namespace turncloth::detail {

inline constexpr std::int64_t no_limit = -1;

/// The question with the loss per cut worked in, equal lengths together, longest first; lengths and costs in whole
/// numbers of their greatest common measure. All lengths together and all costs together are at most 2^50, which keeps
/// every product below within 128 bits.
struct stock_task {
    struct kind {
        std::int64_t room;
        std::int64_t cost;
    };
    std::vector<std::int64_t> size; ///< falling
    std::vector<kind> kinds;
};

/// What is still wanted of each size and on hand of each kind (`no_limit` where there is none).
struct stock_rest {
    std::vector<std::int64_t> wanted;
    std::vector<std::int64_t> on_hand;

    bool done() const {
        for (std::int64_t w : wanted)
            if (w > 0)
                return false;
        return true;
    }
    friend bool operator<(const stock_rest& a, const stock_rest& b) {
        return a.wanted != b.wanted ? a.wanted < b.wanted : a.on_hand < b.on_hand;
    }
};

/// One way to fill a piece of stock: sizes (by place, rising) and how many of each.
struct stock_fill {
    std::size_t kind = 0;
    std::vector<std::pair<std::size_t, std::int64_t>> pieces;

    friend bool operator==(const stock_fill& a, const stock_fill& b) {
        return a.kind == b.kind && a.pieces == b.pieces;
    }
};

/// How often the rest allows this filling.
inline std::int64_t times_possible(const stock_rest& rest, const stock_fill& fill) {
    std::int64_t times =
        rest.on_hand[fill.kind] == no_limit ? std::numeric_limits<std::int64_t>::max() : rest.on_hand[fill.kind];
    for (auto [size, count] : fill.pieces)
        times = std::min(times, rest.wanted[size] / count);
    return times;
}

inline void use(stock_rest& rest, const stock_fill& fill, std::int64_t times) {
    for (auto [size, count] : fill.pieces)
        rest.wanted[size] -= count * times;
    if (rest.on_hand[fill.kind] != no_limit)
        rest.on_hand[fill.kind] -= times;
}

/// The worths of the pieces that are still wanted, priced.
inline std::vector<worth> priced(const stock_task& task, const stock_rest& rest,
                                 const std::vector<std::int64_t>& prices) {
    std::vector<worth> worths;
    worths.reserve(task.size.size());
    for (std::size_t i = 0; i < task.size.size(); ++i)
        worths.push_back({task.size[i], prices[i], rest.wanted[i]});
    return worths;
}

class price_proof {
public:
    price_proof() = default;

    price_proof(const stock_task& task, const stock_rest& rest, std::vector<std::int64_t> prices,
                std::int64_t allowance)
        : prices_(std::move(prices)) {
        const std::vector<worth> worths = priced(task, rest, prices_);
        best_.resize(task.kinds.size());
        for (std::size_t k = 0; k < task.kinds.size(); ++k)
            if (rest.on_hand[k] != 0) {
                best_[k] = best_fill(worths, task.kinds[k].room, allowance);
                steps_ += best_[k].steps;
            }
        prove(task, rest);
    }

    /// No plan for the rest costs less.
    std::int64_t bound() const { return claim_.bound; }

    /// The same before rounding up, near enough to compare two proofs.
    double strength() const { return claim_.strength(); }

    /// The most valuable filling of each kind at these prices.
    const std::vector<filling>& best() const { return best_; }
    const std::vector<std::int64_t>& prices() const { return prices_; }
    std::int64_t steps() const { return steps_; }

    /// What a filling of kind k must be worth if a plan that costs `cost` or less is to use it: whatever it is worth
    /// less than its cost (and z_k) is added to the bound.
    int128 least_worth(const stock_task& task, std::size_t k, std::int64_t cost) const {
        if (claim_.value == 0)
            return 0;
        const int128 spare = int128{cost} * claim_.value - claim_.total;
        const int128 full = int128{task.kinds[k].cost} * claim_.value + excess(task, k, claim_) - spare;
        return full > 0 ? (full + claim_.cost - 1) / claim_.cost : 0;
    }

private:
    // The bound at the scale s = cost / value.
    struct claim {
        std::int64_t cost = 0;
        std::int64_t value = 0;
        int128 total = 0;
        std::int64_t bound = 0;
        double strength() const { return value == 0 ? 0 : static_cast<double>(total) / static_cast<double>(value); }
    };

    // z_k times the scale's denominator: max(0, V_k c* - c_k V*)
    int128 excess(const stock_task& task, std::size_t k, const claim& at) const {
        const int128 over = int128{best_[k].upper} * at.cost - int128{task.kinds[k].cost} * at.value;
        return over > 0 ? over : 0;
    }

    // The bound is concave in the scale, with a bend at c_k / V_k for each kind: the best scale is one of these, as far
    // as the kinds without limit allow it.
    void prove(const stock_task& task, const stock_rest& rest) {
        const std::size_t most = dearest(task, rest);
        for (std::size_t k = 0; k < task.kinds.size(); ++k)
            if (rest.on_hand[k] != 0 && (most == task.kinds.size() || !dearer(task, most, k)))
                if (const claim c = at_scale_of(task, rest, k); claim_.value == 0 || c.strength() > claim_.strength())
                    claim_ = c;
    }

    // More worth for its cost.
    bool dearer(const stock_task& task, std::size_t a, std::size_t b) const {
        return int128{best_[a].upper} * task.kinds[b].cost > int128{best_[b].upper} * task.kinds[a].cost;
    }

    // The kind without limit on which pieces are worth most for its cost, or none.
    std::size_t dearest(const stock_task& task, const stock_rest& rest) const {
        std::size_t best = task.kinds.size();
        for (std::size_t k = 0; k < task.kinds.size(); ++k)
            if (rest.on_hand[k] == no_limit && (best == task.kinds.size() || dearer(task, k, best)))
                best = k;
        return best;
    }

    claim at_scale_of(const stock_task& task, const stock_rest& rest, std::size_t star) const {
        claim c{task.kinds[star].cost, best_[star].upper, 0, 0};
        if (c.value == 0)
            return {};
        for (std::size_t i = 0; i < prices_.size(); ++i)
            c.total += int128{c.cost} * prices_[i] * rest.wanted[i];
        for (std::size_t k = 0; k < task.kinds.size(); ++k)
            if (rest.on_hand[k] > 0)
                c.total -= excess(task, k, c) * rest.on_hand[k];
        c.bound = c.total <= 0 ? 0 : static_cast<std::int64_t>((c.total + c.value - 1) / c.value);
        return c;
    }

    std::vector<std::int64_t> prices_;
    std::vector<filling> best_;
    std::int64_t steps_ = 0;
    claim claim_;
};

} // namespace turncloth::detail

#endif
