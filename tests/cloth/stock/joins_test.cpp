// Lengths from stock with joins: against trying every division and every place, in whole numbers.
#include "at_random.hpp"
#include "cloth/stock/reference.hpp"
#include <turncloth/cloth/stock/joined_plan.hpp>
#include <turncloth/cloth/stock/joins.hpp>

#include <doctest/doctest.h>

#include <algorithm>
#include <cstdint>
#include <limits>
#include <optional>
#include <random>
#include <string>
#include <vector>

using namespace turncloth;
using namespace turncloth::detail;
using stock_reference::roll;

namespace {

// Every piece whole or divided at every whole number, every part on every piece of stock, the blade's place kept of each.
class every_join {
public:
    every_join(const stock_problem& problem, const join_terms& terms) : problem_(problem), terms_(terms) {
        for (const stock_demand& d : problem.wanted)
            pieces_.insert(pieces_.end(), static_cast<std::size_t>(d.count), d.length);
        for (const stock_kind& k : problem.stock)
            hand_.push_back(k.on_hand.value_or(1000));
    }

    std::optional<std::int64_t> least() {
        next(0, 0);
        return best_ == unknown ? std::nullopt : std::optional(best_);
    }

private:
    static constexpr std::int64_t unknown = std::numeric_limits<std::int64_t>::max();

    std::int64_t value_of(std::size_t k) const {
        return problem_.aim == stock_aim::fewest_pieces  ? 1
               : problem_.aim == stock_aim::least_length ? problem_.stock[k].length
                                                         : problem_.stock[k].cost;
    }

    void next(std::size_t piece, std::int64_t value) {
        if (value >= best_)
            return;
        if (piece == pieces_.size())
            return void(best_ = value);
        const std::int64_t all = pieces_[piece] + terms_.lost;
        cut(pieces_[piece], value, [&](std::int64_t paid) { next(piece + 1, paid); });
        for (std::int64_t first = terms_.least_part; 2 * first <= all; ++first)
            cut(first, value,
                [&](std::int64_t paid) { cut(all - first, paid, [&](std::int64_t p) { next(piece + 1, p); }); });
    }

    template <class Then>
    void cut(std::int64_t length, std::int64_t value, const Then& then) {
        if (value >= best_)
            return;
        for (std::size_t b = 0; b < left_.size(); ++b)
            if (const std::int64_t before = left_[b];
                before >= length && std::find(left_.begin(), left_.begin() + static_cast<std::ptrdiff_t>(b), before) ==
                                        left_.begin() + static_cast<std::ptrdiff_t>(b)) {
                left_[b] = std::max<std::int64_t>(0, before - length - problem_.loss_per_cut);
                then(value);
                left_[b] = before;
            }
        for (std::size_t k = 0; k < hand_.size(); ++k)
            if (hand_[k] > 0 && problem_.stock[k].length >= length) {
                --hand_[k];
                left_.push_back(std::max<std::int64_t>(0, problem_.stock[k].length - length - problem_.loss_per_cut));
                then(value + value_of(k));
                left_.pop_back();
                ++hand_[k];
            }
    }

    const stock_problem& problem_;
    const join_terms& terms_;
    std::vector<std::int64_t> pieces_, hand_, left_;
    std::int64_t best_ = unknown;
};

// What is wrong with bars as an answer, counted anew.
std::string faults(const stock_problem& p, const join_terms& terms, const joined_answer& a) {
    std::string all;
    std::vector<std::int64_t> whole(p.wanted.size(), 0), firsts(p.wanted.size(), 0), used(p.stock.size(), 0);
    std::vector<std::vector<std::int64_t>> one(p.wanted.size()), two(p.wanted.size());
    for (const joined_bar& bar : a.bars) {
        std::int64_t at = -p.loss_per_cut;
        ++used[bar.kind];
        for (const joined_part& part : bar.parts) {
            at += part.length + p.loss_per_cut;
            if (part.part == 0 && part.length != p.wanted[part.piece].length)
                all += "a whole piece of another length; ";
            if (part.part == 0)
                ++whole[part.piece];
            else
                (part.part == 1 ? one : two)[part.piece].push_back(part.length);
            if (part.part != 0 && part.length < terms.least_part)
                all += "a part too short; ";
        }
        if (at > p.stock[bar.kind].length)
            all += "past the end; ";
    }
    for (std::size_t i = 0; i < p.wanted.size(); ++i) {
        if (whole[i] + static_cast<std::int64_t>(one[i].size()) != p.wanted[i].count || one[i].size() != two[i].size())
            all += "not the pieces wanted; ";
        std::sort(one[i].begin(), one[i].end());
        std::sort(two[i].rbegin(), two[i].rend());
        for (std::size_t n = 0; n < std::min(one[i].size(), two[i].size()); ++n)
            if (one[i][n] + two[i][n] != p.wanted[i].length + terms.lost)
                all += "parts that do not make a piece; ";
    }
    for (std::size_t k = 0; k < used.size(); ++k)
        if (used[k] > p.stock[k].on_hand.value_or(1000))
            all += "more than is on hand; ";
    return all;
}

} // namespace

TEST_CASE("with joins the least is found and proved, against every division at small sizes") {
    at_random::seeded<std::mt19937> dice(61);
    int joined = 0, none = 0;
    while (dice.another_of(1000)) {
        stock_problem p{.wanted = {}, .stock = {}, .loss_per_cut = roll(dice, 0, 1)};
        p.aim = static_cast<stock_aim>(roll(dice, 0, 2));
        for (std::int64_t k = roll(dice, 1, 2); k > 0; --k) {
            p.stock.push_back({roll(dice, 6, 14), std::nullopt, roll(dice, 2, 7)});
            if (roll(dice, 0, 2) == 0)
                p.stock.back().on_hand = roll(dice, 0, 3);
        }
        for (std::int64_t left = roll(dice, 1, 4); left > 0; left -= p.wanted.back().count) {
            const std::int64_t length = roll(dice, 2, 15);
            p.wanted.push_back({length, roll(dice, 1, std::min<std::int64_t>(left, 2))});
        }
        const std::int64_t lost = roll(dice, 0, 2);
        const join_terms terms{lost, std::max<std::int64_t>(1, lost + roll(dice, 0, 2))};
        const auto least = every_join(p, terms).least();
        const joined_answer a = plan_with_joins(p, terms, 20'000'000);
        CHECK(a.found == least.has_value());
        CHECK(a.refuted == !least.has_value());
        none += least ? 0 : 1;
        if (!least)
            continue;
        CHECK(a.value == *least);
        CHECK(a.bound == *least);
        joined += a.plain ? 0 : 1;
        if (!a.plain)
            CHECK(faults(p, terms, a) == "");
    }
    CHECK(joined > 150);
    CHECK(none > 20);
}
