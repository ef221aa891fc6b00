// Is a cutting plan sound? Answered by walking along every piece of stock with the blade, and by counting; nothing here
// is shared with the search that made the plan. Its front with units is testing/stock_faults.hpp.
//
//   std::vector<std::string> detail::faults_of(plan, problem)     what is wrong with it, in sentences; empty if nothing
//
//   assert(detail::faults_of(detail::plan_stock(ribbon), ribbon).empty());
//
// It tells that a plan can be cut and supplies what is wanted. That no plan is better is what `bound` claims, and is
// not looked into here beyond bound <= value.
#ifndef TURNCLOTH_CLOTH_STOCK_CHECK_HPP
#define TURNCLOTH_CLOTH_STOCK_CHECK_HPP

#include <turncloth/cloth/stock/problem.hpp>

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <string>
#include <vector>

namespace turncloth::detail {

class stock_checker {
public:
    stock_checker(const stock_problem& problem, const stock_plan& plan) : problem_(problem), plan_(plan) {}

    std::vector<std::string> run() {
        made_.assign(problem_.wanted.size(), 0);
        used_.assign(problem_.stock.size(), 0);
        for (std::size_t p = 0; p < plan_.fillings.size(); ++p)
            walk(plan_.fillings[p], "filling " + std::to_string(p + 1));
        for (std::size_t i = 0; i < made_.size(); ++i)
            equal(made_[i], problem_.wanted[i].count, "pieces " + std::to_string(i + 1) + " made");
        for (std::size_t k = 0; k < used_.size(); ++k)
            if (const auto& hand = problem_.stock[k].on_hand; hand && used_[k] > *hand)
                say("stock " + std::to_string(k + 1) + ": " + std::to_string(used_[k]) + " are used and " +
                    std::to_string(*hand) + " are on hand");
        totals();
        return std::move(faults_);
    }

private:
    void say(std::string fault) { faults_.push_back(std::move(fault)); }

    void equal(std::int64_t got, std::int64_t needed, const std::string& what) {
        if (got != needed)
            say(what + ": " + std::to_string(got) + ", not " + std::to_string(needed));
    }

    void walk(const stock_filling& filling, const std::string& name) {
        if (filling.kind >= problem_.stock.size() || filling.pieces.size() != problem_.wanted.size() ||
            filling.times < 1)
            return say(name + " names stock or pieces that do not exist, or is used less than once");
        const std::int64_t end = problem_.stock[filling.kind].length;
        std::int64_t at = 0, cuts = 0;
        for (std::size_t i = 0; i < filling.pieces.size(); ++i) {
            if (filling.pieces[i] < 0)
                say(name + " makes fewer than no pieces");
            for (std::int64_t n = 0; n < filling.pieces[i]; ++n) {
                at += problem_.wanted[i].length;
                if (at > end)
                    return say(name + " runs past the end of its stock");
                if (at < end) {
                    ++cuts;
                    at = std::min(end, at + problem_.loss_per_cut);
                }
            }
            made_[i] += filling.pieces[i] * filling.times;
        }
        used_[filling.kind] += filling.times;
        equal(filling.cuts, cuts, name + ", cuts");
        equal(filling.left, end - at, name + ", left over");
    }

    void totals() {
        const bool by_cost = problem_.aim == stock_aim::least_cost; // no other aim asks what the costs are
        std::int64_t pieces = 0, length = 0, cost = 0;
        for (std::size_t k = 0; k < used_.size(); ++k) {
            pieces += used_[k];
            length += used_[k] * problem_.stock[k].length;
            if (by_cost)
                cost += used_[k] * problem_.stock[k].cost;
        }
        equal(plan_.pieces_of_stock, pieces, "pieces of stock in all");
        equal(plan_.length_of_stock, length, "length of stock in all");
        const bool by_piece = problem_.aim == stock_aim::fewest_pieces;
        equal(plan_.value, by_piece ? pieces : (problem_.aim == stock_aim::least_length ? length : cost), "value");
        if (plan_.bound > plan_.value)
            say("the bound is above the value");
        if (plan_.proved_best != (plan_.bound == plan_.value))
            say("best is said to be proved just where the bound does not prove it");
    }

    const stock_problem& problem_;
    const stock_plan& plan_;
    std::vector<std::int64_t> made_, used_;
    std::vector<std::string> faults_;
};

/// What is wrong with the plan as an answer to the problem; empty if nothing is.
inline std::vector<std::string> faults_of(const stock_plan& plan, const stock_problem& problem) {
    return stock_checker(problem, plan).run();
}

} // namespace turncloth::detail

#endif
