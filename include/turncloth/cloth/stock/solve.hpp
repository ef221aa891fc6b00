// Lengths from stock in whole numbers: the best plan that can be found, and the bound that proves how good it is.
//
//   stock_plan detail::plan_stock(problem, effort = default_stock_effort)
//
//   stock_problem tapes{.wanted = {{9, 20}, {14, 6}}, .stock = {{100, {}}}, .loss_per_cut = 1};
//   stock_plan plan = plan_stock(tapes);              // plan.pieces_of_stock, plan.proved_best, plan.fillings
//
// The answer depends on the question and the effort alone: no clock, no chance.
#ifndef TURNCLOTH_CLOTH_STOCK_SOLVE_HPP
#define TURNCLOTH_CLOTH_STOCK_SOLVE_HPP

#include <turncloth/cloth/stock/problem.hpp>
#include <turncloth/measure/require.hpp>
#ifndef TURNCLOTH_COMPILED
#include <turncloth/cloth/stock/desk.hpp>
#endif

#include <cstdint>

namespace turncloth::detail {

/// The best plan found within the effort, empty where nothing is wanted, or what the stock on hand runs short of.
/// Lengths and costs are whole numbers of units of the caller's choice. Throws overflow_error where their totals are
/// too large.
TURNCLOTH_INLINE stock_plan plan_stock(const stock_problem& problem, std::int64_t effort = default_stock_effort,
                                       const search_watcher& watcher = {});

#ifndef TURNCLOTH_COMPILED
TURNCLOTH_INLINE stock_plan plan_stock(const stock_problem& problem, std::int64_t effort,
                                       const search_watcher& watcher) {
    return problem.wanted.empty() ? stock_plan{.proved_best = true} : stock_desk(problem).plan(effort, watcher);
}
#endif

} // namespace turncloth::detail

#endif
