// The linear relaxation of cutting stock, solved by making columns as they are wanted.
//
//   class detail::fill_pool      fillings met so far, each once
//   struct detail::relaxation    value, share (how often each filling is used, in fractions), proof (of a bound), steps
//   class detail::simplex        run(until), answer(): the relaxation as far as it has come
//
//   simplex s(task, rest, pool, {});
//   s.run(1'000'000);                                         // true if it was solved within so many steps
//   s.answer().proof.bound();                                 // holds whatever the floating-point arithmetic did
//
// Minimise sum c_p x_p over the fillings p so that every size is supplied and no kind of stock is used more often than
// it is on hand, x real. The simplex method on the fillings of the pool gives prices on the pieces; a knapsack asks
// whether any filling is worth more at these prices than it costs; if so it joins the pool. The numbers are doubles,
// and they only ever guide: what is claimed comes from the prices by way of `price_proof`, which is whole-number
// arithmetic.
//
// For the best bound the knapsack is asked after every few exchanges, not only once the pool has nothing more to give:
// its answer costs about as much as one exchange, and with hundreds of sizes three of four exchanges are spared. For a
// guide the pool is used up first, which leaves it smaller.
//
// The start is one filling per size with nothing else in it, from a kind of stock that has no limit; the search sees to
// it that there is one.
#ifndef TURNCLOTH_CLOTH_STOCK_COLUMNS_HPP
#define TURNCLOTH_CLOTH_STOCK_COLUMNS_HPP

#include <turncloth/cloth/stock/bound.hpp>

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <limits>
#include <map>
#include <utility>
#include <vector>

namespace turncloth::detail {

class fill_pool {
public:
    /// The place of this filling, which joins if it is new.
    std::size_t place(const stock_fill& fill) {
        const auto [at, added] = places_.try_emplace(fill, fills_.size());
        if (added)
            fills_.push_back(fill);
        return at->second;
    }
    const stock_fill& operator[](std::size_t i) const { return fills_[i]; }
    std::size_t size() const { return fills_.size(); }

private:
    struct less {
        bool operator()(const stock_fill& a, const stock_fill& b) const {
            return a.kind != b.kind ? a.kind < b.kind : a.pieces < b.pieces;
        }
    };
    std::vector<stock_fill> fills_;
    std::map<stock_fill, std::size_t, less> places_;
};

/// When to stop early: at a proved bound of `hopeless`, or at a value of `enough` (for a guide, not the best bound).
struct relax_goal {
    std::int64_t hopeless = std::numeric_limits<std::int64_t>::max();
    double enough = -1;
    std::int64_t allowance = std::numeric_limits<std::int64_t>::max();
    std::vector<std::size_t> before{}; ///< places in the pool that a larger question used: they are tried first
};

struct relaxation {
    double value = 0;
    std::vector<std::pair<std::size_t, double>> share; ///< place in the pool, times used; larger first
    price_proof proof;                                 ///< the strongest met
    std::int64_t steps = 0;
};

class simplex {
public:
    simplex(const stock_task& task, const stock_rest& rest, fill_pool& pool, const relax_goal& goal)
        : task_(task),
          rest_(rest),
          pool_(pool),
          goal_(goal),
          row_of_size_(task.size.size(), none),
          row_of_kind_(task.kinds.size(), none) {
        lay_rows();
        choose_start();
        answer_.steps = 1000;
        if (goal.before.empty())
            open_pool();
        for (const std::size_t p : goal.before)
            open(p);
    }

    /// Goes on until it is solved or so many steps are spent in all; true if it is solved.
    bool run(std::int64_t until) {
        while (!solved_ && answer_.steps < until)
            solved_ = !advance();
        return solved_;
    }

    std::int64_t steps() const { return answer_.steps; }
    const price_proof& proof() const { return answer_.proof; }

    /// How far it has come: a basis that supplies everything, solved or not.
    const relaxation& answer() {
        answer_.value = value();
        answer_.share.clear();
        for (std::size_t r = 0; r < rows_; ++r)
            if (basis_[r].unit == 0 && x_[r] > 1e-9)
                answer_.share.emplace_back(basis_[r].place, x_[r]);
        std::sort(answer_.share.begin(), answer_.share.end(), [](const auto& a, const auto& b) {
            return a.second != b.second ? a.second > b.second : a.first < b.first;
        });
        return answer_;
    }

private:
    // Of the pool only so many are looked at; what is forgotten is made again where it is wanted.
    static constexpr std::size_t newest = 5000;
    static constexpr std::size_t none = static_cast<std::size_t>(-1);

    // A column of the basis: a filling (unit 0, its place in the pool), or the surplus (-1) or slack (+1) of a row.
    struct column {
        int unit;
        std::size_t place;
    };
    using entries = std::vector<std::pair<std::size_t, double>>;

    void lay_rows() {
        for (std::size_t i = 0; i < task_.size.size(); ++i)
            if (rest_.wanted[i] > 0)
                row_of_size_[i] = rows_++;
        sizes_ = rows_;
        for (std::size_t k = 0; k < task_.kinds.size(); ++k) {
            dearest_ = std::max(dearest_, static_cast<double>(task_.kinds[k].cost));
            cheapest_ = std::min(cheapest_, static_cast<double>(task_.kinds[k].cost));
            if (rest_.on_hand[k] > 0)
                row_of_kind_[k] = rows_++;
        }
        inverse_.assign(rows_ * rows_, 0);
        x_.resize(rows_);
        y_.assign(rows_, 0);
        basis_.resize(rows_);
    }

    void choose_start() {
        for (std::size_t i = 0; i < task_.size.size(); ++i)
            if (const std::size_t r = row_of_size_[i]; r != none) {
                const std::size_t k = cheapest_endless(task_.size[i]);
                const std::int64_t q = std::min(rest_.wanted[i], task_.kinds[k].room / task_.size[i]);
                set_start(r, {0, pool_.place({k, {{i, q}}})}, static_cast<double>(q),
                          static_cast<double>(rest_.wanted[i]));
                y_[r] = static_cast<double>(task_.kinds[k].cost) / static_cast<double>(q);
            }
        for (std::size_t k = 0; k < task_.kinds.size(); ++k)
            if (const std::size_t r = row_of_kind_[k]; r != none)
                set_start(r, {1, r}, 1, static_cast<double>(rest_.on_hand[k]));
    }

    void set_start(std::size_t row, column c, double entry, double needed) {
        basis_[row] = c;
        inverse_[row * rows_ + row] = 1 / entry;
        x_[row] = needed / entry;
    }

    std::size_t cheapest_endless(std::int64_t size) const {
        std::size_t best = none;
        for (std::size_t k = 0; k < task_.kinds.size(); ++k)
            if (rest_.on_hand[k] == no_limit && task_.kinds[k].room >= size &&
                (best == none || task_.kinds[k].cost < task_.kinds[best].cost))
                best = k;
        return best;
    }

    double value() const {
        double sum = 0;
        for (std::size_t r = 0; r < rows_; ++r)
            if (basis_[r].unit == 0)
                sum += x_[r] * static_cast<double>(task_.kinds[pool_[basis_[r].place].kind].cost);
        return sum;
    }

    double stock_price(std::size_t kind) const { return row_of_kind_[kind] == none ? 0.0 : -y_[row_of_kind_[kind]]; }

    // What a filling costs more than the pieces in it are worth.
    double reduced_cost(const stock_fill& fill) const {
        double cost = static_cast<double>(task_.kinds[fill.kind].cost) + stock_price(fill.kind);
        for (auto [size, count] : fill.pieces)
            cost -= static_cast<double>(count) * y_[row_of_size_[size]];
        return cost;
    }

    entries entries_of(const stock_fill& fill) const {
        entries e;
        for (auto [size, count] : fill.pieces)
            e.emplace_back(row_of_size_[size], static_cast<double>(count));
        if (row_of_kind_[fill.kind] != none)
            e.emplace_back(row_of_kind_[fill.kind], 1.0);
        return e;
    }

    void open(std::size_t place) {
        if (times_possible(rest_, pool_[place]) > 0)
            open_.push_back(place);
        answer_.steps += 4;
    }

    // True the first time.
    bool open_pool() {
        if (pool_open_)
            return false;
        open_.clear();
        for (std::size_t p = pool_.size() - std::min(pool_.size(), newest); p < pool_.size(); ++p)
            open(p);
        return pool_open_ = true;
    }

    bool enter_known() { return enter_best() || (open_pool() && enter_best()); }

    // One exchange; false if none is left to make, or what was asked is reached.
    bool advance() {
        const std::int64_t in_turn = goal_.enough < 0 ? 2 : std::numeric_limits<std::int64_t>::max();
        if (exchanges_ < in_turn && enter_known()) {
            ++exchanges_;
            return true;
        }
        const bool used_up = exchanges_ < in_turn;
        exchanges_ = 0;
        return enter_made() || (!used_up && !reached_ && enter_known());
    }

    // Whatever promises most: a filling of the pool, or a surplus or slack whose price has the wrong sign. (To mend the
    // signs first takes several times as many exchanges.)
    bool enter_best() {
        std::size_t filling = none, row = none;
        double least = -tolerance();
        for (std::size_t p : open_)
            if (const double c = reduced_cost(pool_[p]); c < least) {
                least = c;
                filling = p;
            }
        for (std::size_t r = 0; r < rows_; ++r)
            if (const double c = r < sizes_ ? y_[r] : -y_[r]; c < least) {
                least = c;
                row = r;
            }
        answer_.steps += static_cast<std::int64_t>(4 * open_.size());
        if (row != none) {
            const int unit = row < sizes_ ? -1 : 1;
            return enter({unit, row}, {{row, static_cast<double>(unit)}}, least);
        }
        return filling != none && enter({0, filling}, entries_of(pool_[filling]), least);
    }

    // Asks the knapsack, which proves a bound by the way.
    bool enter_made() {
        price_proof proof(task_, rest_, whole_prices(), goal_.allowance - answer_.steps);
        answer_.steps += proof.steps();
        bool made = false;
        for (std::size_t k = 0; k < task_.kinds.size(); ++k)
            made = adopt(k, proof.best()[k].take) || made;
        if (answer_.proof.prices().empty() || proof.strength() >= answer_.proof.strength())
            answer_.proof = std::move(proof);
        const double now = value();
        const double reachable = std::ceil(now - 1e-6);
        reached_ = answer_.proof.bound() >= goal_.hopeless || static_cast<double>(answer_.proof.bound()) >= reachable ||
                   now <= goal_.enough;
        return !reached_ && made && enter_best();
    }

    bool adopt(std::size_t kind, const std::vector<std::int64_t>& take) {
        stock_fill fill{kind, {}};
        for (std::size_t i = 0; i < take.size(); ++i)
            if (take[i] > 0)
                fill.pieces.emplace_back(i, take[i]);
        if (fill.pieces.empty() || reduced_cost(fill) >= -tolerance())
            return false;
        open_.push_back(pool_.place(fill));
        return true;
    }

    // The prices in whole numbers, about 2^40 to the dearest stock, and none below zero.
    std::vector<std::int64_t> whole_prices() const {
        const double scale = 0x1p40 / dearest_;
        std::vector<std::int64_t> prices(task_.size.size(), 0);
        for (std::size_t i = 0; i < prices.size(); ++i)
            if (const std::size_t r = row_of_size_[i]; r != none)
                prices[i] = static_cast<std::int64_t>(std::max(0.0, y_[r] * scale));
        return prices;
    }

    // Above the rounding of prices as large as the dearest stock, below any difference that matters to the cheapest.
    double tolerance() const { return 1e-12 * dearest_ + 1e-9 * cheapest_; }

    // One exchange. False if nothing leaves, which rounding alone can bring about (no value is below zero).
    bool enter(column c, const entries& e, double reduced) {
        std::vector<double> alpha(rows_, 0);
        for (std::size_t r = 0; r < rows_; ++r)
            for (auto [row, entry] : e)
                alpha[r] += inverse_[r * rows_ + row] * entry;
        const std::size_t out = leaving(alpha);
        if (out == none)
            return false;
        exchange(out, alpha, reduced);
        basis_[out] = c;
        answer_.steps += static_cast<std::int64_t>(rows_);
        return true;
    }

    std::size_t leaving(const std::vector<double>& alpha) const {
        std::size_t out = none;
        double least = std::numeric_limits<double>::infinity();
        for (std::size_t r = 0; r < rows_; ++r)
            if (alpha[r] > 1e-9) {
                const double ratio = std::max(0.0, x_[r]) / alpha[r];
                if (ratio < least - 1e-12 || (ratio < least + 1e-12 && out != none && alpha[r] > alpha[out])) {
                    least = std::min(least, ratio);
                    out = r;
                }
            }
        return out;
    }

    void exchange(std::size_t out, const std::vector<double>& alpha, double reduced) {
        double* const pivot = &inverse_[out * rows_];
        for (std::size_t j = 0; j < rows_; ++j)
            pivot[j] /= alpha[out];
        x_[out] = std::max(0.0, x_[out]) / alpha[out];
        std::vector<std::size_t> filled; // in the first exchanges the inverse is mostly empty
        for (std::size_t j = 0; j < rows_; ++j)
            if (pivot[j] != 0)
                filled.push_back(j);
        for (std::size_t r = 0; r < rows_; ++r) {
            if (r == out || alpha[r] == 0)
                continue;
            double* const row = &inverse_[r * rows_];
            if (filled.size() < rows_ / 4)
                for (std::size_t j : filled)
                    row[j] -= alpha[r] * pivot[j];
            else
                for (std::size_t j = 0; j < rows_; ++j)
                    row[j] -= alpha[r] * pivot[j];
            x_[r] -= alpha[r] * x_[out];
            answer_.steps += static_cast<std::int64_t>(std::min(filled.size(), rows_ / 4));
        }
        for (std::size_t j = 0; j < rows_; ++j)
            y_[j] += reduced * pivot[j];
    }

    const stock_task& task_;
    const stock_rest& rest_;
    fill_pool& pool_;
    relax_goal goal_;
    std::vector<std::size_t> row_of_size_, row_of_kind_;
    std::size_t rows_ = 0, sizes_ = 0;
    double dearest_ = 0, cheapest_ = std::numeric_limits<double>::max();
    std::vector<double> inverse_, x_, y_;
    std::vector<column> basis_;
    std::vector<std::size_t> open_;
    std::int64_t exchanges_ = 0; // since the knapsack was asked
    bool pool_open_ = false, reached_ = false, solved_ = false;
    relaxation answer_;
};

} // namespace turncloth::detail

#endif
