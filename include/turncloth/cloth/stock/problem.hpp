// Lengths cut from stock, in whole numbers of some small unit: what is asked, what is answered, what goes wrong.
//
//     struct stock_demand  { length, count }                      pieces wanted
//     struct stock_kind    { length, on_hand, cost }              stock to cut them from
//     enum class stock_aim { fewest_pieces, least_length, least_cost }
//     struct stock_problem { wanted, stock, loss_per_cut, aim }
//     struct stock_pattern { kind, times, pieces, cuts, left }    one way to cut a piece of stock
//     struct stock_plan    { patterns, bound, proved_best, ... }
//     stock_too_short, stock_runs_out, bad_stock_problem, stock_too_large     errors
//
//     stock_problem ribbon{.wanted = {{24, 5}, {10, 3}}, .stock = {{100, {}}}};   // 5 of 24, 3 of 10; rolls of 100
//     stock_plan plan = plan_stock(ribbon);                                       // cloth/stock/solve.hpp
//
// The loss per cut. A cut that separates m pieces of lengths l1..lm from a piece of stock of length L loses k (the kerf
// of a saw, the melted end of a ribbon, the tooth freed from a zipper chain). There is a cut after each piece, except
// that the last piece needs none where it ends exactly at the end. Where less than k is left beyond the last piece, the
// last cut eats all of it and runs out at the end, which spoils no piece. So the pieces can be cut if and only if
//
//     l1 + ... + lm + (m - 1) k <= L,   that is   (l1 + k) + ... + (lm + k) <= L + k:
//
// a packing without loss of pieces longer by k into stock longer by k. What is left is max(0, L - sum - m k), and the
// cuts are m - 1 if sum + (m - 1) k = L and m otherwise.
#ifndef TURNCLOTH_CLOTH_STOCK_PROBLEM_HPP
#define TURNCLOTH_CLOTH_STOCK_PROBLEM_HPP

#include <turncloth/measure/error.hpp>
#include <turncloth/measure/fraction.hpp>

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace turncloth {

/// `count` pieces of `length` wanted. Both at least 1.
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

/// What is made least: the number of pieces of stock, their length in all (and so what is left over), or their cost.
enum class stock_aim { fewest_pieces, least_length, least_cost };

struct stock_problem {
    std::vector<stock_demand> wanted;
    std::vector<stock_kind> stock;
    std::int64_t loss_per_cut = 0;
    stock_aim aim = stock_aim::fewest_pieces;
};

/// `times` pieces of stock of one kind, all cut alike.
struct stock_pattern {
    std::size_t kind;                 ///< place in `stock_problem::stock`
    std::int64_t times;               ///< pieces of stock cut so
    std::vector<std::int64_t> pieces; ///< of each of `stock_problem::wanted`, from one piece of stock
    std::int64_t cuts;                ///< in one piece of stock
    std::int64_t left;                ///< of one piece of stock, after the last cut
};

/// A plan that supplies what is wanted, and what is known about how good it is.
struct stock_plan {
    std::vector<stock_pattern> patterns;
    std::int64_t pieces_of_stock = 0;
    std::int64_t length_of_stock = 0;
    std::int64_t value = 0;   ///< of what the aim makes least
    std::int64_t bound = 0;   ///< no plan has a smaller value: proved
    bool proved_best = false; ///< value == bound
    std::int64_t effort = 0;  ///< steps spent
};

/// The base of what can be wrong with a question about stock.
class stock_error : public error {
public:
    using error::error;
};

/// A length, count, cost or loss that is not allowed.
class bad_stock_problem : public stock_error {
public:
    using stock_error::stock_error;
};

/// Numbers whose sums do not fit 64 bits.
class stock_too_large : public stock_error {
public:
    using stock_error::stock_error;
};

/// A piece longer than the longest stock.
class stock_too_short : public stock_error {
public:
    stock_too_short(const std::string& sentence, std::size_t piece, fraction by)
        : stock_error(sentence), piece_(piece), by_(by) {}
    /// Its place in `stock_problem::wanted`.
    std::size_t piece() const noexcept { return piece_; }
    /// By how much it is longer.
    fraction by() const noexcept { return by_; }

private:
    std::size_t piece_;
    fraction by_;
};

/// Limited stock that does not supply what is wanted.
class stock_runs_out : public stock_error {
public:
    stock_runs_out(const std::string& sentence, std::int64_t more_pieces, fraction length_short, bool proved)
        : stock_error(sentence), more_pieces_(more_pieces), length_short_(length_short), proved_(proved) {}
    /// How many more pieces of the longest stock the best plan found would need.
    std::int64_t more_pieces() const noexcept { return more_pieces_; }
    /// By how much the stock on hand is shorter in all than the pieces and the loss; 0 if only its division fails.
    fraction length_short() const noexcept { return length_short_; }
    /// True if it is proved that the stock on hand does not do; else no plan was found within the effort.
    bool proved() const noexcept { return proved_; }

private:
    std::int64_t more_pieces_;
    fraction length_short_;
    bool proved_;
};

} // namespace turncloth

#endif
