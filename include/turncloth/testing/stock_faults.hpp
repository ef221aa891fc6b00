// Whether a plan of lengths cut from stock is sound: a check, for tests, that walks along every piece of stock with the
// blade and counts, and shares nothing with the search that made the plan.
//
//   std::vector<std::string> stock_faults(plan, wanted, stock, rules = {})    in sentences; none when all is well
//
//   CHECK(stock_faults(plan, ties, ribbon).empty());
//
// It tells that a plan can be cut and supplies what is wanted. That no plan is better is what `bound` claims, and is
// not looked into beyond bound <= value. Not a part of turncloth.hpp.
#ifndef TURNCLOTH_TESTING_STOCK_FAULTS_HPP
#define TURNCLOTH_TESTING_STOCK_FAULTS_HPP

#include <turncloth/cloth/stock.hpp>
#include <turncloth/cloth/stock/check.hpp>

#include <string>
#include <vector>

namespace turncloth {

/// What is wrong with the plan as an answer to that question, in a time that grows with what is cut and with the cuttings
/// times the lengths wanted. Throws overflow_error where the numbers have no common measure in 64 bits.
template <length_unit Unit>
std::vector<std::string> stock_faults(const length_plan<Unit>& plan, const std::vector<wanted_length<Unit>>& wanted,
                                      const std::vector<stock_length<Unit>>& stock,
                                      const cutting_rules<Unit>& rules = {}) {
    const detail::stock_translation<Unit> whole(wanted, stock, rules);
    const auto exact = [](fraction x, const char* what, std::vector<std::string>& faults) {
        if (denominator(x) != 1)
            faults.push_back(std::string(what) + " is not of the pieces and the stock");
        return floor(x);
    };
    std::vector<std::string> faults;
    const fraction parts = whole.parts(), value_parts = whole.value_parts();
    detail::stock_plan made;
    for (const stock_cutting<Unit>& c : plan.cuttings)
        made.fillings.push_back(
            {c.stock, c.times, c.pieces, c.cuts, exact(c.left.value() * parts, "a length left over", faults)});
    made.pieces_of_stock = plan.pieces_of_stock;
    made.length_of_stock = exact(plan.length_of_stock.value() * parts, "the length of stock", faults);
    made.value = exact(plan.value * value_parts, "the value", faults);
    made.bound = exact(plan.bound * value_parts, "the bound", faults);
    made.proved_best = plan.proved_best;
    if (plan.wanted + plan.lost + plan.left != plan.length_of_stock)
        faults.emplace_back("what is wanted, lost and left is not the length of stock");
    const std::vector<std::string> more = detail::faults_of(made, whole.problem());
    faults.insert(faults.end(), more.begin(), more.end());
    return faults;
}

} // namespace turncloth

#endif
