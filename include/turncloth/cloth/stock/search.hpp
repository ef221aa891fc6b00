// The search for the best cutting plan: first fit for a start, the linear relaxation for a guide, branching for the
// proof.
//
//   class detail::possible_costs { from(cost), below(cost) }              totals that pieces of stock can come to
//   class detail::plan_search { run(); cuts(), cost(), bound(), steps() }
//
//   plan_search search(task, rest, effort);
//   search.run();                                          // search.cost() == search.bound() if proved
//
// Diving. All whole parts of the relaxation are taken, and what it uses nearly whole; the relaxation of the rest says
// what next. Where many sizes are wanted a few times each this finds a plan as good as the bound long before branching.
//
// Branching. Take a size b that is still wanted. In any plan some piece of stock holds it, so it is enough to try, one
// after the other, every filling with b in it that no piece still wanted could be added to (adding one, taken from
// another piece of stock, never makes a plan dearer). The fillings that the relaxation uses come first, the most used
// of all says which b; on nearly every set of lengths met in practice this goes straight down to a plan as good as the
// bound. The others come after, those only that the prices allow in a plan better than the best known. What is left
// after a filling is a smaller question of the same kind, and its relaxation cuts off the branch once it proves it
// hopeless. A rest that was searched to the end is remembered with the cost it cannot be had for, so the order of the
// pieces of stock is not tried in all its permutations.
//
// Effort. The steps that it takes depend on the question alone; the effort says only when to stop, and once it is spent
// no plan is taken any more. So with less effort the search is the beginning of what it is with more, and its plan is never
// better. While the first relaxation is unfinished, what it has so far is dived on whenever its steps have doubled.
//
// Large counts. Before branching, fillings are fixed as often as the relaxation uses them, rounded down; only the small
// rest is searched. If that does not reach the bound, one fewer, two, four, ... of each are fixed, at last none: that
// last search, if it ends, has proved its plan best even where the bound is lower.
#ifndef TURNCLOTH_CLOTH_STOCK_SEARCH_HPP
#define TURNCLOTH_CLOTH_STOCK_SEARCH_HPP

#include <turncloth/cloth/stock/columns.hpp>
#include <turncloth/cloth/stock/fillings.hpp>
#include <turncloth/cloth/stock/problem.hpp>

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <functional>
#include <map>
#include <optional>
#include <utility>
#include <vector>

namespace turncloth::detail {

/// Which totals pieces of stock can cost, up to a limit: no plan costs anything between. Beyond a million they are
/// taken to be all possible.
class possible_costs {
public:
    possible_costs() = default;
    possible_costs(const stock_task& task, const stock_rest& rest, std::int64_t most) {
        if (most > 1'000'000)
            return;
        possible_.assign(static_cast<std::size_t>(most) + 1, false);
        possible_[0] = true;
        for (std::size_t k = 0; k < task.kinds.size(); ++k)
            add(static_cast<std::size_t>(task.kinds[k].cost), rest.on_hand[k]);
    }

    /// The least that is possible from `cost` upward, which is at most the limit, itself possible.
    std::int64_t from(std::int64_t cost) const {
        while (!possible(cost))
            ++cost;
        return cost;
    }
    /// The most that is possible below `cost`.
    std::int64_t below(std::int64_t cost) const {
        do
            --cost;
        while (cost > 0 && !possible(cost));
        return cost;
    }

private:
    bool possible(std::int64_t cost) const { return possible_.empty() || possible_[static_cast<std::size_t>(cost)]; }

    // used[c]: the fewest pieces of this kind with which the total c comes about, given the kinds before.
    void add(std::size_t cost, std::int64_t on_hand) {
        std::vector<std::int64_t> used(possible_.size(), 0);
        for (std::size_t c = cost; c < possible_.size(); ++c)
            if (!possible_[c] && possible_[c - cost] && (on_hand == no_limit || used[c - cost] < on_hand)) {
                possible_[c] = true;
                used[c] = used[c - cost] + 1;
            }
    }

    std::vector<bool> possible_;
};

class plan_search {
public:
    plan_search(const stock_task& task, stock_rest rest, std::int64_t effort, search_watcher watcher = {})
        : task_(task),
          all_(std::move(rest)),
          watcher_(std::move(watcher)),
          effort_(effort),
          each_look_(effort / 100 + 1) {}

    void run() {
        limit_ = effort_;
        try_first_fit(all_);
        possible_ = possible_costs(task_, all_, cost_);
        price_proof by_length(task_, all_, task_.size, std::min(effort_ - steps_, most_for_length));
        steps_ += by_length.steps();
        raise_bound(by_length);
        look();
        if (stopped())
            return;
        const relaxation root = relax_and_dive();
        for (const double nearly_whole : {0.9, 0.6})
            dive(root, nearly_whole, effort_);
        for (std::int64_t release = 0; !proved() && steps_ < effort_; release = release == 0 ? 1 : 2 * release)
            if (!descend(root, release))
                return;
    }

    const std::vector<stock_cut>& cuts() const { return best_; }
    std::int64_t cost() const { return cost_; }
    std::int64_t bound() const { return bound_; }
    std::int64_t steps() const { return steps_; }

private:
    bool proved() const { return bound_ >= cost_; }
    bool stopped() const { return proved() || steps_ >= limit_; }

    // What the next better plan costs at most.
    std::int64_t aim() const { return possible_.below(cost_); }

    void raise_bound(const price_proof& proof) {
        bound_ = std::max(bound_, possible_.from(std::min(proof.bound(), cost_)));
    }

    // What is shown at even steps; where it is answered that this is enough, the effort is what was spent.
    void look() {
        if (steps_ < next_look_ || steps_ >= effort_ || proved())
            return;
        next_look_ = (steps_ / each_look_ + 1) * each_look_;
        if (watcher_ && !watcher_({steps_, effort_, cost_, bound_}))
            limit_ = effort_ = steps_;
    }

    // On with this relaxation until it is solved or the search has spent so many steps; true if it is solved.
    bool go_on(simplex& with, std::int64_t until) {
        bool solved = false;
        while (!solved && steps_ < std::min(until, limit_)) {
            const std::int64_t before = with.steps();
            solved = with.run(before + std::min({until, limit_, std::max(next_look_, steps_ + 1)}) - steps_);
            steps_ += with.steps() - before;
            look();
        }
        return solved;
    }

    relaxation relaxed(const stock_rest& rest, const relax_goal& goal) {
        simplex r(task_, rest, pool_, goal);
        steps_ += r.steps();
        go_on(r, limit_);
        return r.answer();
    }

    // The relaxation of the whole. Where it takes long, what it has so far is a guide too: it is dived on whenever its
    // steps have doubled, each time with a quarter of the steps so far.
    relaxation relax_and_dive() {
        simplex whole(task_, all_, pool_, {.hopeless = cost_, .allowance = effort_ - steps_});
        steps_ += whole.steps();
        for (std::int64_t part = first_part; !go_on(whole, steps_ + part) && !stopped(); part *= 2) {
            raise_bound(whole.proof());
            dive(whole.answer(), 0.6, steps_ + part / 4);
            limit_ = effort_;
        }
        raise_bound(whole.proof());
        return whole.answer();
    }

    void dive(relaxation guide, double nearly_whole, std::int64_t until) {
        stock_rest rest = all_;
        std::int64_t cost = 0;
        limit_ = std::min(until, effort_);
        while (!stopped()) {
            const std::int64_t more = fix_nearly_whole(rest, guide, nearly_whole);
            cost += more;
            if (more == 0 || cost > aim())
                break;
            try_first_fit(rest);
            if (stopped())
                break;
            relax_goal goal = better_than_known(cost);
            for (auto [place, share] : guide.share)
                goal.before.push_back(place);
            guide = relaxed(rest, goal);
        }
        path_.clear();
    }

    // Whole parts, then each once that is nearly whole, or, where there is nothing of either, what is used most.
    std::int64_t fix_nearly_whole(stock_rest& rest, const relaxation& guide, double nearly_whole) {
        std::int64_t cost = fix_whole_parts(rest, guide, 0);
        for (auto [place, share] : guide.share) {
            const double part = share - std::floor(share + 1e-6);
            if ((cost > 0 && part < nearly_whole) || times_possible(rest, pool_[place]) == 0)
                continue;
            stock_fill fill = pool_[place];
            top_up(task_, rest, fill);
            cost += fix(rest, fill, 1);
        }
        return cost;
    }

    // A guide for the rest of a plan, of which so much is fixed, if it is to be better than the best known.
    relax_goal better_than_known(std::int64_t cost) const {
        const std::int64_t most = aim() - cost;
        return {.hopeless = most + 1, .enough = static_cast<double>(most) + 1e-6, .allowance = limit_ - steps_};
    }

    // Fixes the fillings of the relaxation, `release` fewer of each than its whole part, and searches the rest. False
    // once nothing was left to fix, which makes it the last.
    bool descend(const relaxation& root, std::int64_t release) {
        stock_rest rest = all_;
        const std::int64_t cost = fix_whole_parts(rest, root, release);
        const bool fixed = !path_.empty();
        limit_ = fixed ? std::min(effort_, steps_ + std::max(steps_, least_descent)) : effort_;
        const bool complete = search(rest, cost);
        path_.clear();
        if (!fixed && complete)
            bound_ = cost_;
        return fixed;
    }

    std::int64_t fix_whole_parts(stock_rest& rest, const relaxation& guide, std::int64_t release) {
        std::int64_t cost = 0;
        for (auto [place, share] : guide.share) {
            const auto whole = static_cast<std::int64_t>(share + 1e-6) - release;
            if (const std::int64_t times = std::min(whole, times_possible(rest, pool_[place])); times > 0)
                cost += fix(rest, pool_[place], times);
        }
        return cost;
    }

    std::int64_t fix(stock_rest& rest, const stock_fill& fill, std::int64_t times) {
        use(rest, fill, times);
        path_.push_back({fill, times});
        return times * task_.kinds[fill.kind].cost;
    }

    // True if afterwards no plan for this rest, with what is fixed already, is better than the best known.
    bool search(const stock_rest& rest, std::int64_t cost) {
        try_first_fit(rest);
        if (proved())
            return false;
        if (const auto known = hopeless_.find(rest); known != hopeless_.end() && cost + known->second > aim())
            return true;
        const relaxation guide = relaxed(rest, better_than_known(cost));
        if (cost + guide.proof.bound() > aim())
            return remember(rest, guide.proof.bound());
        return !stopped() && branch(rest, cost, guide) && remember(rest, aim() + 1 - cost);
    }

    bool remember(const stock_rest& rest, std::int64_t unreachable) {
        std::int64_t& known = hopeless_[rest];
        known = std::max(known, unreachable);
        return true;
    }

    bool branch(const stock_rest& rest, std::int64_t cost, const relaxation& guide) {
        leap(rest, cost, guide);
        if (stopped())
            return false;
        const std::size_t b = pool_[guide.share.front().first].pieces.front().first;
        std::vector<stock_fill> tried;
        for (auto [place, share] : guide.share) {
            stock_fill fill = pool_[place];
            if (fill.pieces.front().first != b && !holds(fill, b))
                continue;
            top_up(task_, rest, fill);
            if (std::find(tried.begin(), tried.end(), fill) != tried.end())
                continue;
            if (!follow(rest, cost, fill))
                return false;
            tried.push_back(std::move(fill));
        }
        return branch_on_others(rest, cost, b, tried);
    }

    // All whole parts at once. What it proves is about its own rest alone, but it gets far quickly: the relaxation of
    // that rest is no worse.
    void leap(stock_rest rest, std::int64_t cost, const relaxation& guide) {
        const std::size_t depth = path_.size();
        const std::int64_t more = fix_whole_parts(rest, guide, 0);
        if (path_.size() > depth)
            search(rest, cost + more);
        path_.resize(depth);
    }

    bool follow(stock_rest rest, std::int64_t cost, const stock_fill& fill) {
        const std::size_t depth = path_.size();
        const std::int64_t more = fix(rest, fill, 1);
        const bool complete = search(rest, cost + more);
        path_.resize(depth);
        return complete && !stopped();
    }

    // Every other filling with b that the prices do not rule out.
    bool branch_on_others(const stock_rest& rest, std::int64_t cost, std::size_t b,
                          const std::vector<stock_fill>& tried) {
        const relaxation full = relaxed(rest, {.hopeless = aim() + 1 - cost, .allowance = limit_ - steps_});
        if (cost + full.proof.bound() > aim())
            return true;
        if (stopped())
            return false;
        const filling_list list = filling_lister(task_, rest, b, full.proof, limit_ - steps_).run(aim() - cost);
        steps_ += list.steps;
        look();
        for (const stock_fill& fill : list.fillings)
            if (std::find(tried.begin(), tried.end(), fill) == tried.end() && !follow(rest, cost, fill))
                return false;
        return list.complete;
    }

    // First fit for the rest; with what is fixed already it may be the best plan so far.
    void try_first_fit(const stock_rest& rest) {
        for (const first_choice choice : {first_choice::longest, first_choice::best_used}) {
            std::vector<stock_cut> cuts = first_fit_decreasing(task_, rest, choice);
            for (const stock_cut& cut : cuts)
                pool_.place(cut.fill);
            steps_ += static_cast<std::int64_t>(16 * (cuts.size() + 1) * task_.size.size() * task_.kinds.size());
            cuts.insert(cuts.end(), path_.begin(), path_.end());
            offer(refit(task_, all_.on_hand, std::move(cuts)));
            if (task_.kinds.size() == 1)
                return;
        }
    }

    void offer(std::vector<stock_cut> cuts) {
        const std::int64_t cost = cost_of(task_, cuts);
        if (cost >= cost_ || (!best_.empty() && steps_ >= effort_))
            return;
        cost_ = cost;
        best_ = std::move(cuts);
    }

    static constexpr std::int64_t most_for_length = 10'000'000; // on a bound that the relaxation nearly always betters
    static constexpr std::int64_t first_part = 10'000'000;      // of a relaxation, before it is dived on
    static constexpr std::int64_t least_descent = 100'000'000;

    const stock_task& task_;
    stock_rest all_;
    search_watcher watcher_;
    std::int64_t effort_;
    std::int64_t each_look_;
    std::int64_t next_look_ = 0;
    std::int64_t limit_ = 0;
    std::int64_t steps_ = 0;
    fill_pool pool_;
    std::vector<stock_cut> path_;
    std::vector<stock_cut> best_;
    std::int64_t cost_ = std::numeric_limits<std::int64_t>::max();
    std::int64_t bound_ = 0;
    possible_costs possible_;
    std::map<stock_rest, std::int64_t> hopeless_; // a rest, and the cost below which it is proved not to be had
};

} // namespace turncloth::detail

#endif
