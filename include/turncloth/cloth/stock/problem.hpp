// Lengths cut from stock, in whole numbers of some small unit: what is asked and what is answered.
//
//   enum class stock_aim { fewest_pieces, least_length, least_cost }      a word of the front, cloth/stock.hpp, too
//   struct detail::stock_demand   length, count                           pieces wanted
//   struct detail::stock_kind     length, on_hand, cost                   stock to cut them from
//   struct detail::stock_problem  wanted, stock, loss_per_cut, aim
//   struct detail::stock_filling  kind, times, pieces, cuts, left         what one piece of stock is cut into
//   struct detail::stock_plan     fillings, bound, proved_best, ..., or what it runs short of
//   struct detail::search_state   steps, cost, bound: what is shown while it is searched for
//
//   stock_problem ribbon{.wanted = {{24, 5}, {10, 3}}, .stock = {{100, {}}}};   // 5 of 24, 3 of 10; rolls of 100
//   stock_plan plan = plan_stock(ribbon);                                       // cloth/stock/solve.hpp
//
// Lengths, counts and costs are above zero, the loss is not below it, and no piece is longer than the longest stock:
// cloth/stock.hpp asks that of the caller, in the caller's units.
//
// The loss per cut. A cut that separates m pieces of lengths l1..lm from a piece of stock of length L loses k (the kerf
// of a saw, the melted end of a ribbon, the tooth freed from a zipper chain). There is a cut after each piece, except
// that the last piece needs none where it ends exactly at the end. Where less than k is left beyond the last piece, the
// last cut eats all of it and runs out at the end, which spoils no piece. So the pieces can be cut if and only if
//
//   l1 + ... + lm + (m - 1) k <= L,   that is   (l1 + k) + ... + (lm + k) <= L + k:
//
// a packing without loss of pieces longer by k into stock longer by k. What is left is max(0, L - sum - m k), and the
// cuts are m - 1 if sum + (m - 1) k = L and m otherwise.
#ifndef TURNCLOTH_CLOTH_STOCK_PROBLEM_HPP
#define TURNCLOTH_CLOTH_STOCK_PROBLEM_HPP

#include <cstddef>
#include <cstdint>
#include <functional>
#include <optional>
#include <vector>

namespace turncloth {

/// What is made least: the number of pieces of stock, their length in all (and so what is left over), or their cost.
enum class stock_aim : unsigned char { fewest_pieces, least_length, least_cost };

/// Steps that a search for a plan may spend. A step is one small piece of arithmetic (one state of a knapsack, four
/// numbers of a row of the linear relaxation); a thousand million take some three seconds.
inline constexpr std::int64_t default_stock_effort = 1'000'000'000;

/// The same for what a person waits for: some thirtieth of a second, some three, and half a minute where nothing is proved
/// before.
struct stock_effort {
    static constexpr std::int64_t while_typing = default_stock_effort / 100;
    static constexpr std::int64_t on_a_click = default_stock_effort;
    static constexpr std::int64_t to_print = default_stock_effort * 10;
};

namespace detail {

inline constexpr std::int64_t greatest_total = std::int64_t{1} << 50;

/// `count` pieces of `length` wanted.
struct stock_demand {
    std::int64_t length;
    std::int64_t count;
};

/// Stock of one length: `on_hand` pieces of it at most (none given: as many as are needed), each at `cost` where the
/// aim is the least cost.
struct stock_kind {
    std::int64_t length;
    std::optional<std::int64_t> on_hand = std::nullopt;
    std::int64_t cost = 1;
};

struct stock_problem {
    std::vector<stock_demand> wanted;
    std::vector<stock_kind> stock;
    std::int64_t loss_per_cut = 0;
    stock_aim aim = stock_aim::fewest_pieces;
};

/// `times` pieces of stock of one kind, all cut alike.
struct stock_filling {
    std::size_t kind;                 ///< place in `stock_problem::stock`
    std::int64_t times;               ///< pieces of stock cut so
    std::vector<std::int64_t> pieces; ///< of each of `stock_problem::wanted`, from one piece of stock
    std::int64_t cuts;                ///< in one piece of stock
    std::int64_t left;                ///< of one piece of stock, after the last cut
};

/// Limited stock that does not supply what is wanted.
struct stock_shortage {
    std::int64_t more_pieces = 0; ///< of the longest stock, which the best plan found would need besides
    std::int64_t length =
        0;               ///< by which all that is on hand is shorter than pieces and loss; 0 if only its division fails
    bool proved = false; ///< that what is on hand does not do; else no plan was found within the effort
};

/// A plan that supplies what is wanted, and what is known about how good it is; or, of what does not, what is short.
struct stock_plan {
    std::vector<stock_filling> fillings{};
    std::int64_t pieces_of_stock = 0;
    std::int64_t length_of_stock = 0;
    std::int64_t value = 0;   ///< of what the aim makes least
    std::int64_t bound = 0;   ///< no plan has a smaller value: proved
    bool proved_best = false; ///< value == bound
    std::int64_t effort = 0;  ///< steps spent
    std::optional<stock_shortage> runs_out{};
};

/// How far a search is: the steps spent of its effort, the cost of the best plan so far and the bound proved so far.
struct search_state {
    std::int64_t steps, effort, cost, bound;
    std::optional<stock_shortage> runs_out{};
};

/// Asked a hundred times at even steps; it ends the search by returning false.
using search_watcher = std::function<bool(const search_state&)>;

} // namespace detail

} // namespace turncloth

#endif
