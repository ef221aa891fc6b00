// The choices of stock that are tried where pieces may be joined of two parts.
//
//   joined_planner(problem, terms, effort, watcher).run()     a joined_answer
//
//   joined_planner({.wanted = {{60, 3}}, .stock = {{100, {}}}}, {.lost = 5, .least_part = 10}, 1'000'000, {}).run().value;   // 2
//
// It is apart from its front door (cloth/stock/joined_plan.hpp) so that a user of turncloth::compiled does not read it.
#ifndef TURNCLOTH_CLOTH_STOCK_JOINED_PLANNER_HPP
#define TURNCLOTH_CLOTH_STOCK_JOINED_PLANNER_HPP

#include <turncloth/cloth/stock/desk.hpp>
#include <turncloth/cloth/stock/join_terms.hpp>
#include <turncloth/cloth/stock/joins.hpp>
#include <turncloth/cloth/stock/solve.hpp>

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <limits>
#include <optional>
#include <utility>
#include <vector>

namespace turncloth::detail {

class joined_planner {
public:
    joined_planner(const stock_problem& problem, const join_terms& terms, std::int64_t effort,
                   const search_watcher& watcher)
        : problem_(problem), terms_(terms), watcher_(watcher), effort_(effort), left_(effort) {
        for (const stock_demand& d : problem.wanted) {
            pieces_ = fitting(1, d.count, pieces_);
            needed_ = fitting(fitting(1, d.length, problem.loss_per_cut), d.count, needed_);
        }
        for (const stock_kind& k : problem.stock) {
            const std::int64_t most = 2 * pieces_; // no plan has stock with nothing cut from it
            available_.push_back(std::min(k.on_hand.value_or(most), most));
            fitting(most, std::max(k.length + problem.loss_per_cut, cost(k)), 0);
        }
    }

    joined_answer run() {
        start();
        list(0, {}, 0, 0);
        std::stable_sort(choices_.begin(), choices_.end(),
                         [](const choice& a, const choice& b) { return a.cost < b.cost; });
        bool open = false; // whether a choice so far may do after all
        for (const choice& c : choices_) {
            if (answer_.found && c.cost >= answer_.value)
                break;
            const join_search::outcome got = attempt(c);
            if (!open && got != join_search::outcome::refuted)
                answer_.bound = c.cost;
            open = open || got != join_search::outcome::refuted;
            if (got == join_search::outcome::found)
                break;
        }
        if (!complete_)
            answer_.bound = std::min(by_length(), answer_.found ? answer_.value : by_length());
        else if (!open)
            answer_.bound = answer_.value;
        answer_.refuted = !answer_.found && complete_ && !open;
        return std::move(answer_);
    }

private:
    static constexpr std::size_t most_choices = 3000;

    struct choice {
        std::vector<std::size_t> kinds;
        std::int64_t cost;
    };

    std::int64_t size(std::size_t kind) const { return problem_.stock[kind].length + problem_.loss_per_cut; }
    std::int64_t cost(const stock_kind& kind) const {
        return problem_.aim == stock_aim::fewest_pieces  ? 1
               : problem_.aim == stock_aim::least_length ? kind.length
                                                         : kind.cost;
    }
    std::int64_t cost_of_all(const std::vector<joined_bar>& bars) const {
        std::int64_t sum = 0;
        for (const joined_bar& b : bars)
            sum += cost(problem_.stock[b.kind]);
        return sum;
    }

    void keep(std::vector<joined_bar> bars) {
        const std::int64_t value = cost_of_all(bars);
        if (bars.empty() || (answer_.found && value >= answer_.value))
            return;
        answer_.found = true;
        answer_.value = value;
        answer_.plain.reset();
        answer_.bars = std::move(bars);
    }

    void keep_plain(stock_plan plain) {
        without_ = plain.bound;
        answer_.found = true;
        answer_.value = plain.value;
        answer_.plain = std::move(plain);
    }

    // The plan without joins, and all there is from end to end, the longest or the best value first.
    void start() {
        std::int64_t longest = 0, longest_piece = 0;
        for (const stock_kind& k : problem_.stock)
            longest = std::max(longest, k.length);
        for (const stock_demand& d : problem_.wanted)
            longest_piece = std::max(longest_piece, d.length);
        without_ = std::numeric_limits<std::int64_t>::max();
        if (longest_piece <= longest) {
            stock_plan plain = plan_stock(problem_, effort_, watcher_);
            if (plain.runs_out)
                without_ = plain.runs_out->proved ? without_ : 0;
            else
                keep_plain(std::move(plain));
        }
        std::vector<std::size_t> order;
        for (std::size_t k = 0; k < problem_.stock.size(); ++k)
            order.push_back(k);
        for (const bool by_value : {false, true}) {
            std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
                return by_value ? int128{size(a)} * cost(problem_.stock[b]) > int128{size(b)} * cost(problem_.stock[a])
                                : size(a) > size(b);
            });
            std::vector<std::size_t> kinds;
            for (const std::size_t k : order)
                kinds.insert(kinds.end(), static_cast<std::size_t>(available_[k]), k);
            keep(end_to_end(problem_, terms_).fill(kinds));
        }
    }

    // No stock for what is needed costs less: filled by the fraction, that of the best value first.
    std::int64_t by_length() const {
        std::vector<std::size_t> order;
        for (std::size_t k = 0; k < problem_.stock.size(); ++k)
            order.push_back(k);
        std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
            return int128{size(a)} * cost(problem_.stock[b]) > int128{size(b)} * cost(problem_.stock[a]);
        });
        std::int64_t still = needed_, sum = 0;
        for (const std::size_t k : order) {
            const std::int64_t whole = std::min(available_[k], still / size(k));
            still -= whole * size(k);
            sum += whole * cost(problem_.stock[k]);
            if (whole < available_[k])
                return sum +
                       static_cast<std::int64_t>((int128{still} * cost(problem_.stock[k]) + size(k) - 1) / size(k));
        }
        return sum;
    }

    void list(std::size_t kind, const std::vector<std::size_t>& before, std::int64_t length, std::int64_t paid) {
        if (choices_.size() >= most_choices || left_ <= 0)
            return void(complete_ = false);
        --left_;
        if (kind == problem_.stock.size()) {
            const std::int64_t join = paid < without_ ? terms_.lost + problem_.loss_per_cut : 0;
            if (length >= needed_ + join && static_cast<std::int64_t>(before.size()) <= 2 * pieces_)
                choices_.push_back({before, paid});
            return;
        }
        std::vector<std::size_t> kinds = before;
        for (std::int64_t n = 0; n <= available_[kind]; ++n) {
            if (answer_.found && paid >= answer_.value)
                return;
            list(kind + 1, kinds, length, paid);
            kinds.push_back(kind);
            length += size(kind);
            paid += cost(problem_.stock[kind]);
        }
    }

    join_search::outcome attempt(const choice& c) {
        std::vector<std::size_t> kinds = c.kinds;
        for (const bool turned : {false, true}) {
            std::stable_sort(kinds.begin(), kinds.end(), [&](std::size_t a, std::size_t b) {
                return turned ? size(a) < size(b) : size(a) > size(b);
            });
            left_ -= static_cast<std::int64_t>(kinds.size() * problem_.wanted.size()) * 50;
            keep(end_to_end(problem_, terms_).fill(kinds));
            if (answer_.found && answer_.value <= c.cost)
                return join_search::outcome::found;
        }
        if (kinds.size() > join_search::most_bars)
            return join_search::outcome::unknown;
        std::int64_t given = std::max<std::int64_t>(0, left_ / 4);
        left_ -= given;
        join_search search(problem_, terms_, std::move(kinds));
        const join_search::outcome got = search.run(given);
        left_ += std::max<std::int64_t>(0, given);
        if (got == join_search::outcome::found)
            keep(search.bars());
        return got;
    }

    const stock_problem& problem_;
    const join_terms& terms_;
    const search_watcher& watcher_;
    std::int64_t effort_, left_;
    std::int64_t pieces_ = 0, needed_ = 0;
    std::int64_t without_ = 0; // no plan without joins costs less
    std::vector<std::int64_t> available_;
    std::vector<choice> choices_;
    bool complete_ = true;
    joined_answer answer_;
};

} // namespace turncloth::detail

#endif
