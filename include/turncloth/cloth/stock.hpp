// Lengths cut from stock (ribbon, zipper chain, binding strips): what to cut from what, how much stock it takes, and
// how much less any plan could take at best.
//
//     struct wanted_length<U> { name, size, count }             pieces to cut
//     struct stock_length<U>  { size, on_hand, cost }           what there is to cut them from
//     struct cutting_rules<U> { loss_per_cut, aim, effort }
//     struct cut_pattern<U>   { stock, times, pieces, cuts, left }
//     struct length_plan<U>   { patterns, pieces_of_stock, length_of_stock, wanted, lost, left,
//                               value, bound, proved_best }
//     cut_from_stock(wanted, stock, rules) -> length_plan<U>
//
//     auto plan = cut_from_stock<inch>({{"tie", "22 1/2"_in, 8}, {"loop", "4 3/4"_in, 12}}, {{"108"_in}});
//     plan.pieces_of_stock;                                     // 3, and plan.proved_best says that 2 cannot do
//
// Lengths are exact fractions. They are brought to whole numbers by their common denominator, so nothing is rounded;
// where that does not fit 64 bits, `stock_too_large` says so. The loss per cut is explained in cloth/stock/problem.hpp.
#ifndef TURNCLOTH_CLOTH_STOCK_HPP
#define TURNCLOTH_CLOTH_STOCK_HPP

#include <turncloth/cloth/stock/solve.hpp>
#include <turncloth/measure/length.hpp>

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace turncloth {

template <length_unit Unit>
struct wanted_length {
    std::string name;
    length<Unit> size;
    std::int64_t count = 1;
};

/// Stock of one length: `on_hand` pieces at most, or none given as many as are needed. The cost of one piece counts
/// where the aim is the least cost.
template <length_unit Unit>
struct stock_length {
    length<Unit> size;
    std::optional<std::int64_t> on_hand = std::nullopt;
    fraction cost = 1;
};

template <length_unit Unit>
struct cutting_rules {
    length<Unit> loss_per_cut = {};
    stock_aim aim = stock_aim::fewest_pieces;
    std::int64_t effort = default_stock_effort; ///< steps, see cloth/stock/solve.hpp
};

/// `times` pieces of stock, all cut alike.
template <length_unit Unit>
struct cut_pattern {
    std::size_t stock;                ///< which of the stock lengths
    std::int64_t times;               ///< pieces of stock cut so
    std::vector<std::int64_t> pieces; ///< of each wanted length, from one piece of stock
    std::int64_t cuts;                ///< in one piece of stock
    length<Unit> left;                ///< of one piece of stock, after the last cut
};

template <length_unit Unit>
struct length_plan {
    std::vector<cut_pattern<Unit>> patterns;
    std::int64_t pieces_of_stock = 0;
    length<Unit> length_of_stock; ///< the sum of the next three
    length<Unit> wanted;          ///< all the pieces
    length<Unit> lost;            ///< in cuts
    length<Unit> left;            ///< at the ends of the pieces of stock
    fraction value;               ///< of what the aim makes least: pieces of stock, their length in Unit, or their cost
    fraction bound;               ///< no plan has a smaller value: proved
    bool proved_best = false;
};

namespace detail {

/// Brings fractions to whole numbers.
class common_measure {
public:
    void include(fraction x) {
        const auto shared = static_cast<std::int64_t>(gcd(magnitude(denominator_), magnitude(denominator(x))));
        denominator_ = checked(int128{denominator_} / shared * denominator(x));
    }
    std::int64_t whole(fraction x) const { return checked(int128{numerator(x)} * (denominator_ / denominator(x))); }
    std::int64_t parts() const { return denominator_; }

private:
    static std::int64_t checked(int128 n) {
        if (n > greatest_total || n < -greatest_total)
            refuse<stock_too_large>("lengths from stock: with the common denominator of these numbers they exceed " +
                                    std::to_string(greatest_total) + "; round them to one graduation first");
        return static_cast<std::int64_t>(n);
    }
    std::int64_t denominator_ = 1;
};

template <length_unit Unit>
class stock_translation {
public:
    stock_translation(const std::vector<wanted_length<Unit>>& wanted, const std::vector<stock_length<Unit>>& stock,
                      const cutting_rules<Unit>& rules)
        : wanted_(wanted) {
        lengths_.include(rules.loss_per_cut.value());
        for (const auto& w : wanted)
            lengths_.include(w.size.value());
        for (const auto& s : stock) {
            lengths_.include(s.size.value());
            costs_.include(s.cost);
        }
        for (const auto& w : wanted)
            problem_.wanted.push_back({lengths_.whole(w.size.value()), w.count});
        for (const auto& s : stock)
            problem_.stock.push_back({lengths_.whole(s.size.value()), s.on_hand, costs_.whole(s.cost)});
        problem_.loss_per_cut = lengths_.whole(rules.loss_per_cut.value());
        problem_.aim = rules.aim;
    }

    length_plan<Unit> plan(std::int64_t effort) const {
        const stock_plan whole = stock_desk(problem_, words()).plan(effort);
        length_plan<Unit> out;
        for (const stock_pattern& p : whole.patterns) {
            out.patterns.push_back({p.kind, p.times, p.pieces, p.cuts, back(p.left)});
            out.left += out.patterns.back().left * p.times;
        }
        out.pieces_of_stock = whole.pieces_of_stock;
        out.length_of_stock = back(whole.length_of_stock);
        for (const auto& w : wanted_)
            out.wanted += w.size * w.count;
        out.lost = out.length_of_stock - out.wanted - out.left;
        out.value = fraction(whole.value, value_parts());
        out.bound = fraction(whole.bound, value_parts());
        out.proved_best = whole.proved_best;
        return out;
    }

private:
    length<Unit> back(std::int64_t n) const { return length_of<Unit>(fraction(n, lengths_.parts())); }

    std::int64_t value_parts() const {
        return problem_.aim == stock_aim::least_length ? lengths_.parts()
                                                       : (problem_.aim == stock_aim::least_cost ? costs_.parts() : 1);
    }

    stock_words words() const {
        stock_words w{lengths_.parts(), " " + std::string(unit_name<Unit>), {}};
        for (const auto& piece : wanted_)
            w.names.push_back(piece.name);
        return w;
    }

    const std::vector<wanted_length<Unit>>& wanted_;
    common_measure lengths_, costs_;
    stock_problem problem_;
};

} // namespace detail

/// The best plan found within the effort. Throws `bad_stock_problem` (a length, count, cost or loss that is not
/// allowed), `stock_too_short` (a piece is longer than the stock), `stock_runs_out` (too little on hand),
/// `stock_too_large`.
template <length_unit Unit>
length_plan<Unit> cut_from_stock(const std::vector<wanted_length<Unit>>& wanted,
                                 const std::vector<stock_length<Unit>>& stock, const cutting_rules<Unit>& rules = {}) {
    return detail::stock_translation<Unit>(wanted, stock, rules).plan(rules.effort);
}

TURNCLOTH_ONCE(length_plan<inch> cut_from_stock<inch>(const std::vector<wanted_length<inch>>&,
                                                      const std::vector<stock_length<inch>>&,
                                                      const cutting_rules<inch>&));
TURNCLOTH_ONCE(length_plan<centimetre> cut_from_stock<centimetre>(const std::vector<wanted_length<centimetre>>&,
                                                                  const std::vector<stock_length<centimetre>>&,
                                                                  const cutting_rules<centimetre>&));

} // namespace turncloth

#endif
