// From a question about lengths from stock to the form that the search works on, and back.
//
//   stock_desk(problem).plan(effort, watcher)     a stock_plan
//
//   stock_desk({.wanted = {{24, 5}}, .stock = {{100, {}}}}).plan(default_stock_effort, {}).pieces_of_stock;   // 2
//
// It is apart from its front door (cloth/stock/solve.hpp) so that a user of turncloth::compiled reads none of the search.
#ifndef TURNCLOTH_CLOTH_STOCK_DESK_HPP
#define TURNCLOTH_CLOTH_STOCK_DESK_HPP

#include <turncloth/cloth/stock/problem.hpp>
#include <turncloth/cloth/stock/search.hpp>
#include <turncloth/measure/require.hpp>

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <limits>
#include <map>
#include <numeric>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace turncloth::detail {

/// a * b + c, all at least 0, or a refusal.
inline std::int64_t fitting(std::int64_t a, std::int64_t b, std::int64_t c) {
    const int128 sum = int128{a} * b + c;
    if (sum > greatest_total)
        refuse<overflow_error>("a total of lengths from stock, or of their costs, exceeds " +
                                   std::to_string(greatest_total) +
                                   " of their common measure: use a coarser graduation",
                               refusal{.kind = fault::does_not_fit,
                                       .what = "a total of lengths from stock",
                                       .most = amount_of(greatest_total)});
    return static_cast<std::int64_t>(sum);
}

/// From the question as it was asked to the form that the search works on, and back.
class stock_desk {
public:
    explicit stock_desk(const stock_problem& problem) : problem_(problem) {
        gather_sizes();
        gather_kinds();
        lend_stock();
        measure();
    }

    stock_plan plan(std::int64_t effort, const search_watcher& watcher) const {
        plan_search search(task_, rest_, effort, in_money(watcher));
        search.run();
        stock_plan out;
        out.runs_out = shortage(search.cost(), search.bound());
        if (out.runs_out)
            return out;
        for (const stock_cut& cut : search.cuts()) {
            out.pieces_of_stock += cut.times;
            out.length_of_stock += problem_.stock[cut.fill.kind].length * cut.times;
        }
        out.value = search.cost() * money_;
        out.bound = search.bound() * money_;
        out.proved_best = out.value == out.bound;
        out.effort = search.steps();
        out.fillings = unmerged(search.cuts());
        return out;
    }

private:
    // A watcher that is shown costs as they were given.
    search_watcher in_money(const search_watcher& watcher) const {
        if (!watcher)
            return {};
        return [&watcher, this](const search_state& s) {
            return watcher({s.steps, s.effort, s.cost * money_, s.bound * money_, shortage(s.cost, s.bound)});
        };
    }

    void gather_sizes() {
        std::map<std::int64_t, std::vector<std::size_t>, std::greater<>> by_length;
        for (std::size_t i = 0; i < problem_.wanted.size(); ++i) {
            by_length[problem_.wanted[i].length].push_back(i);
            pieces_ = fitting(1, problem_.wanted[i].count, pieces_);
            length_ = fitting(fitting(1, problem_.wanted[i].length, problem_.loss_per_cut), problem_.wanted[i].count,
                              length_);
        }
        for (const auto& [length, places] : by_length) {
            task_.size.push_back(length + problem_.loss_per_cut);
            members_.push_back(places);
            rest_.wanted.push_back(0);
            for (std::size_t i : places)
                rest_.wanted.back() += problem_.wanted[i].count;
        }
    }

    std::int64_t cost(const stock_kind& kind) const {
        switch (problem_.aim) {
        case stock_aim::fewest_pieces:
            return 1;
        case stock_aim::least_length:
            return kind.length;
        default:
            return kind.cost;
        }
    }

    void gather_kinds() {
        for (const stock_kind& kind : problem_.stock)
            money_ = std::gcd(money_, cost(kind));
        for (const stock_kind& kind : problem_.stock) {
            fitting(pieces_, std::max(kind.length, cost(kind)), 0);
            task_.kinds.push_back({fitting(1, kind.length, problem_.loss_per_cut), cost(kind) / money_});
            const bool plenty = !kind.on_hand || *kind.on_hand >= pieces_;
            rest_.on_hand.push_back(plenty ? no_limit : *kind.on_hand);
        }
    }

    // Where all stock that takes the longest piece is limited, a kind is added that is never short, as long as the
    // longest and dearer than any plan without it. A plan that uses it says how much stock is missing.
    void lend_stock() {
        std::int64_t room = 0, dearest = 0;
        bool endless = false;
        for (std::size_t k = 0; k < task_.kinds.size(); ++k) {
            room = std::max(room, task_.kinds[k].room);
            dearest = std::max(dearest, task_.kinds[k].cost);
            endless = endless || (rest_.on_hand[k] == no_limit && task_.kinds[k].room >= task_.size.front());
        }
        if (endless)
            return;
        const std::int64_t lent = fitting(pieces_, dearest, 1);
        fitting(pieces_, lent, 0);
        task_.kinds.push_back({room, lent});
        rest_.on_hand.push_back(no_limit);
    }

    // Divides by the greatest common measure of the sizes. No sum of sizes sees what a room has beyond a multiple of
    // it.
    void measure() {
        std::int64_t common = 0;
        for (std::int64_t size : task_.size)
            common = std::gcd(common, size);
        for (std::int64_t& size : task_.size)
            size /= common;
        for (auto& kind : task_.kinds)
            kind.room /= common;
    }

    std::optional<stock_shortage> shortage(std::int64_t cost, std::int64_t bound) const {
        if (task_.kinds.size() == problem_.stock.size())
            return std::nullopt;
        const std::int64_t lent = task_.kinds.back().cost, missing = cost / lent, too_short = length_short();
        if (missing == 0)
            return std::nullopt;
        return stock_shortage{missing, too_short, bound / lent > 0 || too_short > 0};
    }

    // By how much pieces and loss exceed the stock on hand, when no stock is without limit.
    std::int64_t length_short() const {
        int128 room = 0;
        for (const stock_kind& kind : problem_.stock) {
            if (!kind.on_hand)
                return 0;
            room += int128{*kind.on_hand} * (kind.length + problem_.loss_per_cut);
        }
        return room < length_ ? static_cast<std::int64_t>(length_ - room) : 0;
    }

    // Gives the pieces of equal length back to the demands they came from, the first demand first. A filling is split
    // where one demand is filled and the next begins.
    std::vector<stock_filling> unmerged(const std::vector<stock_cut>& cuts) const {
        std::vector<stock_filling> fillings;
        std::vector<std::int64_t> still;
        for (const stock_demand& d : problem_.wanted)
            still.push_back(d.count);
        for (const stock_cut& cut : cuts)
            for (std::int64_t left = cut.times; left > 0; left -= fillings.back().times) {
                stock_filling p{cut.fill.kind, left, std::vector<std::int64_t>(still.size(), 0), 0, 0};
                for (auto [size, count] : cut.fill.pieces)
                    deal(size, count, still, p);
                for (std::size_t i = 0; i < still.size(); ++i)
                    still[i] -= p.pieces[i] * p.times;
                finish(p);
                fillings.push_back(std::move(p));
            }
        return fillings;
    }

    void deal(std::size_t size, std::int64_t count, const std::vector<std::int64_t>& still, stock_filling& p) const {
        for (std::size_t i : members_[size]) {
            const std::int64_t some = std::min(count, still[i]);
            if (some == 0)
                continue;
            p.pieces[i] = some;
            p.times = std::min(p.times, still[i] / some);
            count -= some;
        }
    }

    void finish(stock_filling& p) const {
        std::int64_t pieces = 0, length = 0;
        for (std::size_t i = 0; i < p.pieces.size(); ++i) {
            pieces += p.pieces[i];
            length += p.pieces[i] * problem_.wanted[i].length;
        }
        const std::int64_t after_last = problem_.stock[p.kind].length - length - (pieces - 1) * problem_.loss_per_cut;
        p.cuts = after_last == 0 ? pieces - 1 : pieces;
        p.left = std::max(std::int64_t{0}, after_last - problem_.loss_per_cut);
    }

    const stock_problem& problem_;
    stock_task task_;
    stock_rest rest_;
    std::vector<std::vector<std::size_t>> members_; // of each size, the demands of that length
    std::int64_t money_ = 0;                        // the greatest common measure of the costs
    std::int64_t pieces_ = 0;
    std::int64_t length_ = 0; // of all pieces, each with its loss
};

} // namespace turncloth::detail

#endif
