// Which stock to take where pieces may be joined of two parts, in whole numbers.
//
//   joined_answer detail::plan_with_joins(problem, terms, effort)
//
//   joined_answer a = plan_with_joins({.wanted = {{60, 3}}, .stock = {{100, {}}}}, {.lost = 5, .least_part = 10}, 1'000'000);
//   a.value;                                                 // 2: one of the three is joined
//
// The plan without joins comes first (cloth/stock/solve.hpp), and stays where none with joins costs less. Then comes every
// choice of stock that is long enough in all and costs less, the cheapest first (cloth/stock/joins.hpp says how one is
// tried). A plan with a join needs, besides its pieces, what one join takes and its cut; so a choice cheaper than any
// plan without must have that to spare. The bound is the cost of the first choice that is not refuted.
#ifndef TURNCLOTH_CLOTH_STOCK_JOINED_PLAN_HPP
#define TURNCLOTH_CLOTH_STOCK_JOINED_PLAN_HPP

#include <turncloth/cloth/stock/join_terms.hpp>
#include <turncloth/measure/require.hpp>
#ifndef TURNCLOTH_COMPILED
#include <turncloth/cloth/stock/joined_planner.hpp>
#endif

#include <cstdint>

namespace turncloth::detail {

/// The best plan found. The pieces may be longer than the stock, if two parts of them are not.
TURNCLOTH_INLINE joined_answer plan_with_joins(const stock_problem& problem, const join_terms& terms,
                                               std::int64_t effort, const search_watcher& watcher = {});

#ifndef TURNCLOTH_COMPILED
TURNCLOTH_INLINE joined_answer plan_with_joins(const stock_problem& problem, const join_terms& terms,
                                               std::int64_t effort, const search_watcher& watcher) {
    return joined_planner(problem, terms, effort, watcher).run();
}
#endif

} // namespace turncloth::detail

#endif
