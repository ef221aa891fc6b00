// What the sizes of pieces in one direction are worth at most, where no row of them that fits is worth more than 1.
//
//   struct detail::size_weights   of_size, whole: no row of sizes that fits weighs more than `whole`
//   class detail::size_prices     best(room, others) -> the weights that make the pieces worth most
//
//   detail::size_prices across(problem, true);
//   auto weights = across.best(problem.width, along_weights);      // along_weights: of the sizes the other way
//
// Each kind of piece has a weight in the other direction, one for each way it may lie. Wanted are prices of the sizes
// in this direction, none below 0, so that no pieces that fit side by side cost more than 1 together, and the sum over
// all pieces of weight x price, by whichever way is less, is greatest. That is a linear program with a row limit for
// every way to fill the room; its dual is solved by the simplex method, the fillings made as they are wanted by a
// knapsack. The numbers are doubles, and they only guide: the weights handed out are whole numbers, and `whole` is the
// most that any filling weighs, by a knapsack in whole numbers. So nothing rests on the rounding.
#ifndef TURNCLOTH_CLOTH_LAY_SIZE_PRICES_HPP
#define TURNCLOTH_CLOTH_LAY_SIZE_PRICES_HPP

#include <turncloth/cloth/lay/problem.hpp>
#include <turncloth/cloth/stock/knapsack.hpp>

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <limits>
#include <utility>
#include <vector>

namespace turncloth::detail {

/// By place of the size in its list; `whole` is above 0.
struct size_weights {
    std::vector<std::int64_t> of_size{};
    std::int64_t whole = 1;

    double part(std::size_t size) const { return static_cast<double>(of_size[size]) / static_cast<double>(whole); }
};

class size_prices {
public:
    static constexpr std::size_t none = static_cast<std::size_t>(-1);

    /// The sizes across the cloth, or along it, of the pieces in the ways that they go on the width.
    size_prices(const lay_problem& problem, bool across) {
        for (const lay_kind& kind : problem.kinds) {
            const std::int64_t upright = across ? kind.width : kind.length;
            const std::int64_t sideways = across ? kind.length : kind.width;
            ways_.push_back(
                {kind.upright ? place(upright, kind.count) : none, kind.sideways ? place(sideways, kind.count) : none});
            counts_.push_back(static_cast<double>(kind.count));
        }
    }

    const std::vector<std::int64_t>& sizes() const noexcept { return sizes_; }
    /// The place of the size that a piece of the kind has upright, or sideways; `none` where it may not lie so.
    std::size_t of_kind(std::size_t kind, bool sideways) const noexcept { return ways_[kind].place[sideways ? 1 : 0]; }

    /// How much of the whole weighs most where sizes weigh so much.
    std::int64_t most_in(std::int64_t room, const std::vector<std::int64_t>& weights) {
        return filled(room, weights).upper;
    }

    /// The weights in this direction that make all pieces weigh most, if `others` are those in the other. Every kind
    /// has a way to lie within the room.
    size_weights best(std::int64_t room, const size_prices& other, const size_weights& others) {
        if (room != room_) {
            room_ = room;
            fillings_.clear();
        }
        begin(other, others);
        for (int exchanges = 0; exchanges < most_exchanges && exchange(); ++exchanges) {
        }
        const std::vector<std::int64_t> weights = whole_prices();
        return {weights, std::max<std::int64_t>(1, most_in(room, weights))};
    }

    /// About the work of so many steps of a search.
    std::uint64_t steps() const noexcept { return static_cast<std::uint64_t>(work_ / work_of_a_step); }

private:
    static constexpr int most_exchanges = 500;
    static constexpr std::int64_t work_of_a_step = 24;
    static constexpr double one = 1 << 30;
    static constexpr double tolerance = 1e-9;

    struct both_ways {
        std::size_t place[2];
    };
    using column = std::vector<std::pair<std::size_t, double>>; // row, entry

    std::size_t place(std::int64_t size, std::int64_t count) {
        const auto at = std::find(sizes_.begin(), sizes_.end(), size);
        const auto found = static_cast<std::size_t>(at - sizes_.begin());
        if (at == sizes_.end()) {
            sizes_.push_back(size);
            most_.push_back(0);
        }
        most_[found] += count;
        return found;
    }

    filling filled(std::int64_t room, const std::vector<std::int64_t>& weights) {
        std::vector<worth> worths;
        for (std::size_t i = 0; i < sizes_.size(); ++i)
            worths.push_back({sizes_[i], weights[i], most_[i]});
        filling best = best_fill(worths, room);
        work_ += best.steps;
        return best;
    }

    // A row for each size, supplied by fillings and wanted by pieces, then one for each kind: its pieces lie one way or
    // the other. At the start every size has fillings of its own, and every kind the first way that fits.
    void begin(const size_prices& other, const size_weights& others) {
        const std::size_t sizes = sizes_.size(), kinds = ways_.size();
        rows_ = sizes + kinds;
        inverse_.assign(rows_ * rows_, 0);
        prices_.assign(rows_, 0);
        amount_.assign(rows_, 0);
        shares_.clear();
        for (std::size_t i = 0; i < sizes; ++i) {
            const auto in_room = static_cast<double>(std::max<std::int64_t>(1, std::min(most_[i], room_ / sizes_[i])));
            inverse_[i * rows_ + i] = prices_[i] = 1 / in_room;
        }
        for (std::size_t k = 0; k < kinds; ++k) {
            const std::size_t row = sizes + k;
            bool started = false;
            for (const bool sideways : {false, true}) {
                const std::size_t at = of_kind(k, sideways);
                if (at == none || sizes_[at] > room_)
                    continue;
                const double weight = others.part(other.of_kind(k, sideways));
                shares_.push_back({{at, -weight}, {row, 1}});
                if (!started)
                    start(row, at, weight, counts_[k]);
                started = true;
            }
        }
    }

    void start(std::size_t row, std::size_t size, double weight, double count) {
        inverse_[row * rows_ + row] = 1;
        inverse_[size * rows_ + row] = weight * inverse_[size * rows_ + size];
        prices_[row] = weight * prices_[size];
        amount_[row] = count;
        amount_[size] += weight * inverse_[size * rows_ + size] * count;
    }

    double reduced(const column& c, double cost) const {
        for (const auto& [row, entry] : c)
            cost -= entry * prices_[row];
        return cost;
    }

    // Lets in whatever promises most; false where nothing does.
    bool exchange() {
        double least = -tolerance;
        column best;
        const auto offer = [&](const column& c, double cost) {
            if (const double gain = reduced(c, cost); gain < least)
                least = gain, best = c;
        };
        for (std::size_t r = 0; r < rows_; ++r)
            if (prices_[r] < least)
                offer({{r, -1}}, 0);
        for (const column& share : shares_)
            offer(share, 0);
        for (const column& fill : fillings_)
            offer(fill, 1);
        work_ += static_cast<std::int64_t>(2 * (rows_ * rows_ + shares_.size() + 4 * fillings_.size()));
        if (best.empty()) {
            const filling dearest = filled(room_, whole_prices());
            if (static_cast<double>(dearest.value) <= one * (1 + 1e-7))
                return false;
            for (std::size_t i = 0; i < sizes_.size(); ++i)
                if (dearest.take[i] > 0)
                    best.emplace_back(i, static_cast<double>(dearest.take[i]));
            fillings_.push_back(best);
            least = reduced(best, 1);
        }
        return enter(best, least);
    }

    bool enter(const column& c, double gain) {
        std::vector<double> made(rows_, 0);
        for (std::size_t r = 0; r < rows_; ++r)
            for (const auto& [row, entry] : c)
                made[r] += inverse_[r * rows_ + row] * entry;
        std::size_t out = none;
        for (std::size_t r = 0; r < rows_; ++r)
            if (made[r] > tolerance && (out == none || amount_[r] * made[out] < amount_[out] * made[r]))
                out = r;
        if (out == none)
            return false;
        double* const pivot = &inverse_[out * rows_];
        for (std::size_t j = 0; j < rows_; ++j)
            pivot[j] /= made[out];
        amount_[out] = std::max(0.0, amount_[out] / made[out]);
        for (std::size_t r = 0; r < rows_; ++r) {
            if (r == out || made[r] == 0)
                continue;
            for (std::size_t j = 0; j < rows_; ++j)
                inverse_[r * rows_ + j] -= made[r] * pivot[j];
            amount_[r] = std::max(0.0, amount_[r] - made[r] * amount_[out]);
        }
        for (std::size_t j = 0; j < rows_; ++j)
            prices_[j] += gain * pivot[j];
        return true;
    }

    std::vector<std::int64_t> whole_prices() const {
        std::vector<std::int64_t> prices;
        for (std::size_t i = 0; i < sizes_.size(); ++i)
            prices.push_back(sizes_[i] > room_ ? 0 : static_cast<std::int64_t>(std::clamp(prices_[i], 0.0, 1.0) * one));
        return prices;
    }

    std::vector<std::int64_t> sizes_, most_;
    std::vector<both_ways> ways_; // by kind
    std::vector<double> counts_;
    std::vector<column> fillings_, shares_;
    std::vector<double> inverse_, prices_, amount_;
    std::size_t rows_ = 0;
    std::int64_t room_ = -1;
    std::int64_t work_ = 0;
};

} // namespace turncloth::detail

#endif
