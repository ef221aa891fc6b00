// Ways to fill one piece of stock, and the plain plan that takes them one after the other.
//
//   struct detail::stock_cut { fill, times }       a filling and how many pieces of stock are cut so
//   first_fit_decreasing(task, rest, choice)       the plan that a person makes
//   refit(task, on_hand, cuts)                     the same fillings, each from the cheapest stock it fits
//   top_up(task, rest, fill)                       adds pieces until none more goes in
//   filling_lister(task, rest, b, proof, allowance).run(cost)
//                                                  every full filling with size b that a plan of this cost can use
//
//   auto plan = refit(task, rest.on_hand, first_fit_decreasing(task, rest, first_choice::longest));
#ifndef TURNCLOTH_CLOTH_STOCK_FILLINGS_HPP
#define TURNCLOTH_CLOTH_STOCK_FILLINGS_HPP

#include <turncloth/cloth/stock/bound.hpp>

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <utility>
#include <vector>

namespace turncloth::detail {

struct stock_cut {
    stock_fill fill;
    std::int64_t times;
};

inline std::int64_t length_in(const stock_task& task, const stock_fill& fill) {
    std::int64_t sum = 0;
    for (auto [size, count] : fill.pieces)
        sum += task.size[size] * count;
    return sum;
}

inline bool holds(const stock_fill& fill, std::size_t size) {
    return std::any_of(fill.pieces.begin(), fill.pieces.end(), [&](const auto& p) { return p.first == size; });
}

/// Adds what is still wanted to the filling, longest first, until nothing more goes in.
inline void top_up(const stock_task& task, const stock_rest& rest, stock_fill& fill) {
    std::int64_t room = task.kinds[fill.kind].room - length_in(task, fill);
    std::vector<std::int64_t> count(task.size.size(), 0);
    for (auto [size, n] : fill.pieces)
        count[size] = n;
    fill.pieces.clear();
    for (std::size_t i = 0; i < count.size(); ++i) {
        const std::int64_t more = std::min(rest.wanted[i] - count[i], room / task.size[i]);
        room -= more * task.size[i];
        if (count[i] + more > 0)
            fill.pieces.emplace_back(i, count[i] + more);
    }
}

/// Which stock the next piece is cut from: the longest on hand, or the one that the filling uses best for its cost.
enum class first_choice { longest, best_used };

inline bool better_first(const stock_task& task, const stock_fill& a, const stock_fill& b, first_choice choice) {
    const auto& ka = task.kinds[a.kind];
    const auto& kb = task.kinds[b.kind];
    if (choice == first_choice::longest)
        return ka.room != kb.room ? ka.room > kb.room : ka.cost < kb.cost;
    return int128{length_in(task, a)} * kb.cost > int128{length_in(task, b)} * ka.cost;
}

/// First fit decreasing: each piece of stock takes the longest pieces that still go in. (Piece by piece into the first
/// open piece of stock comes to the same.) A filling is repeated as often as it can be, so large counts cost nothing.
/// Needs stock without limit for the longest size.
inline std::vector<stock_cut> first_fit_decreasing(const stock_task& task, stock_rest rest, first_choice choice) {
    std::vector<stock_cut> cuts;
    for (std::size_t i = 0; i < task.size.size();) {
        if (rest.wanted[i] == 0) {
            ++i;
            continue;
        }
        stock_fill best;
        for (std::size_t k = 0; k < task.kinds.size(); ++k) {
            stock_fill fill{k, {}};
            if (rest.on_hand[k] != 0 && task.kinds[k].room >= task.size[i])
                top_up(task, rest, fill);
            if (!fill.pieces.empty() && (best.pieces.empty() || better_first(task, fill, best, choice)))
                best = std::move(fill);
        }
        const std::int64_t times = times_possible(rest, best);
        use(rest, best, times);
        cuts.push_back({std::move(best), times});
    }
    return cuts;
}

/// Cuts each filling from the cheapest stock that holds it (of equally cheap, the shortest), the longest filling
/// choosing first. This is the best assignment: what a longer filling can be cut from, a shorter one can too, so two
/// that stand the other way round may change places.
inline std::vector<stock_cut> refit(const stock_task& task, std::vector<std::int64_t> on_hand,
                                    std::vector<stock_cut> cuts) {
    std::stable_sort(cuts.begin(), cuts.end(), [&](const stock_cut& a, const stock_cut& b) {
        return length_in(task, a.fill) > length_in(task, b.fill);
    });
    std::vector<stock_cut> out;
    for (stock_cut& cut : cuts) {
        const std::int64_t length = length_in(task, cut.fill);
        while (cut.times > 0) {
            std::size_t best = task.kinds.size();
            for (std::size_t k = 0; k < task.kinds.size(); ++k)
                if (on_hand[k] != 0 && task.kinds[k].room >= length &&
                    (best == task.kinds.size() || std::pair(task.kinds[k].cost, task.kinds[k].room) <
                                                      std::pair(task.kinds[best].cost, task.kinds[best].room)))
                    best = k;
            const std::int64_t times = on_hand[best] == no_limit ? cut.times : std::min(cut.times, on_hand[best]);
            if (on_hand[best] != no_limit)
                on_hand[best] -= times;
            out.push_back({{best, cut.fill.pieces}, times});
            cut.times -= times;
        }
    }
    return out;
}

inline std::int64_t cost_of(const stock_task& task, const std::vector<stock_cut>& cuts) {
    std::int64_t sum = 0;
    for (const stock_cut& cut : cuts)
        sum += task.kinds[cut.fill.kind].cost * cut.times;
    return sum;
}

struct filling_list {
    std::vector<stock_fill> fillings; ///< the dearest in worth for their cost first
    bool complete = true;
    std::int64_t steps = 0;
};

/// The fillings with at least one of size b, full (no piece still wanted could be added), that a plan for the rest
/// costing `cost` or less can use, as far as the proof's prices tell. Those that the prices favour come first.
class filling_lister {
public:
    filling_lister(const stock_task& task, const stock_rest& rest, std::size_t b, const price_proof& proof,
                   std::int64_t allowance)
        : task_(task), rest_(rest), b_(b), proof_(proof), allowance_(allowance), density_(task.size.size() + 1, 0.0) {
        const std::vector<worth> worths = priced(task, rest, proof.prices());
        for (std::size_t i = worths.size(); i-- > 0;)
            density_[i] = std::max(density_[i + 1], worths[i].most > 0 ? worth_density(worths[i]) : 0.0);
    }

    filling_list run(std::int64_t cost) {
        for (std::size_t k = 0; k < task_.kinds.size(); ++k)
            if (rest_.on_hand[k] != 0 && task_.kinds[k].room >= task_.size[b_]) {
                kind_ = k;
                need_ = proof_.least_worth(task_, k, cost);
                count_.assign(task_.size.size(), 0);
                extend(0, task_.kinds[k].room, 0);
            }
        std::stable_sort(found_.begin(), found_.end(), [](const auto& a, const auto& b) { return a.first > b.first; });
        for (auto& f : found_)
            list_.fillings.push_back(std::move(f.second));
        return std::move(list_);
    }

private:
    static constexpr std::size_t most_listed = 5000;

    void extend(std::size_t i, std::int64_t room, std::int64_t value) {
        if (++list_.steps > allowance_ || found_.size() >= most_listed)
            return void(list_.complete = false);
        const double reach = static_cast<double>(value) + static_cast<double>(room) * density_[i];
        if (reach < static_cast<double>(need_) - 0.5 || (i <= b_ && count_[b_] == 0 && room < task_.size[b_]))
            return;
        if (i == task_.size.size())
            return finish(room, value);
        const std::int64_t most = std::min(rest_.wanted[i], room / task_.size[i]);
        for (std::int64_t n = most; n >= (i == b_ ? 1 : 0); --n) {
            count_[i] = n;
            extend(i + 1, room - n * task_.size[i], value + n * proof_.prices()[i]);
        }
        count_[i] = 0;
    }

    void finish(std::int64_t room, std::int64_t value) {
        if (value < need_ || !full(room) || dearer_than_needed(room))
            return;
        stock_fill fill{kind_, {}};
        for (std::size_t i = 0; i < count_.size(); ++i)
            if (count_[i] > 0)
                fill.pieces.emplace_back(i, count_[i]);
        found_.emplace_back(static_cast<int128>(value) - need_, std::move(fill));
    }

    bool full(std::int64_t room) const {
        for (std::size_t i = 0; i < count_.size(); ++i)
            if (count_[i] < rest_.wanted[i] && task_.size[i] <= room)
                return false;
        return true;
    }

    // Another kind, never short of supply, holds the same for no more.
    bool dearer_than_needed(std::int64_t room) const {
        const auto& own = task_.kinds[kind_];
        for (std::size_t k = 0; k < task_.kinds.size(); ++k) {
            const auto& other = task_.kinds[k];
            if (k != kind_ && rest_.on_hand[k] == no_limit && other.room >= own.room - room &&
                (other.cost < own.cost || (other.cost == own.cost && k < kind_)))
                return true;
        }
        return false;
    }

    const stock_task& task_;
    const stock_rest& rest_;
    std::size_t b_;
    const price_proof& proof_;
    std::int64_t allowance_;
    std::vector<double> density_;
    std::vector<std::int64_t> count_;
    std::size_t kind_ = 0;
    int128 need_ = 0;
    std::vector<std::pair<int128, stock_fill>> found_;
    filling_list list_;
};

} // namespace turncloth::detail

#endif
