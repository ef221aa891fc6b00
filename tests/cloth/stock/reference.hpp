// References for the tests of lengths from stock: the least value by trying everything, and random questions.
//
//   least_value(problem)      by placing piece after piece into every piece of stock there could be; none if impossible
//   random_problem(dice, ...) small enough for that
#ifndef TURNCLOTH_TESTS_CLOTH_STOCK_REFERENCE_HPP
#define TURNCLOTH_TESTS_CLOTH_STOCK_REFERENCE_HPP

#include <turncloth/cloth/stock/problem.hpp>

#include <algorithm>
#include <cstdint>
#include <functional>
#include <limits>
#include <optional>
#include <random>
#include <vector>

namespace stock_reference {

using namespace turncloth;
using namespace turncloth::detail;

// Each open piece of stock is kept by where the blade stands on it. The blade takes its loss from what is left, all of
// it if less is left.
class everything {
public:
    explicit everything(const stock_problem& problem) : problem_(problem), hand_(problem.stock.size()) {
        for (const stock_demand& d : problem.wanted)
            pieces_.insert(pieces_.end(), static_cast<std::size_t>(d.count), d.length);
        std::sort(pieces_.begin(), pieces_.end(), std::greater<>());
        for (std::size_t k = 0; k < hand_.size(); ++k)
            hand_[k] = problem.stock[k].on_hand.value_or(std::numeric_limits<std::int64_t>::max());
    }

    std::optional<std::int64_t> least() {
        place(0, 0);
        return best_ == unknown ? std::nullopt : std::optional(best_);
    }

private:
    static constexpr std::int64_t unknown = std::numeric_limits<std::int64_t>::max();

    std::int64_t value_of(std::size_t k) const {
        return problem_.aim == stock_aim::fewest_pieces
                   ? 1
                   : (problem_.aim == stock_aim::least_length ? problem_.stock[k].length : problem_.stock[k].cost);
    }

    void place(std::size_t piece, std::int64_t value) {
        if (value >= best_)
            return;
        if (piece == pieces_.size()) {
            best_ = value;
            return;
        }
        for (std::size_t b = 0; b < left_.size(); ++b) {
            const std::int64_t before = left_[b];
            bool seen = false;
            for (std::size_t earlier = 0; earlier < b; ++earlier)
                seen = seen || left_[earlier] == before;
            if (seen || before < pieces_[piece])
                continue;
            left_[b] = std::max<std::int64_t>(0, before - pieces_[piece] - problem_.loss_per_cut);
            place(piece + 1, value);
            left_[b] = before;
        }
        for (std::size_t k = 0; k < hand_.size(); ++k)
            if (hand_[k] > 0 && problem_.stock[k].length >= pieces_[piece]) {
                --hand_[k];
                left_.push_back(
                    std::max<std::int64_t>(0, problem_.stock[k].length - pieces_[piece] - problem_.loss_per_cut));
                place(piece + 1, value + value_of(k));
                left_.pop_back();
                ++hand_[k];
            }
    }

    const stock_problem& problem_;
    std::vector<std::int64_t> hand_;
    std::vector<std::int64_t> pieces_;
    std::vector<std::int64_t> left_;
    std::int64_t best_ = unknown;
};

inline std::optional<std::int64_t> least_value(const stock_problem& problem) { return everything(problem).least(); }

inline std::int64_t roll(std::mt19937& dice, std::int64_t low, std::int64_t high) {
    return low + static_cast<std::int64_t>(dice() % static_cast<std::uint32_t>(high - low + 1));
}

/// One to `pieces` pieces, stock of one to `kinds` lengths up to `longest`, every aim, with and without loss and
/// limits.
inline stock_problem random_problem(std::mt19937& dice, std::int64_t pieces, std::int64_t kinds, std::int64_t longest) {
    stock_problem p;
    p.aim = static_cast<stock_aim>(roll(dice, 0, 2));
    p.loss_per_cut = roll(dice, 0, 1) * roll(dice, 0, longest / 6);
    std::int64_t room = 0;
    for (std::int64_t k = roll(dice, 1, kinds); k > 0; --k) {
        p.stock.push_back({roll(dice, longest / 3, longest), std::nullopt, roll(dice, 1, 9)});
        room = std::max(room, p.stock.back().length);
        if (roll(dice, 0, 2) == 0)
            p.stock.back().on_hand = roll(dice, 0, 4);
    }
    for (std::int64_t left = roll(dice, 1, pieces); left > 0; left -= p.wanted.back().count)
        p.wanted.push_back({roll(dice, 1, room), roll(dice, 1, std::min<std::int64_t>(left, 3))});
    return p;
}

} // namespace stock_reference

#endif
