// Lengths cut from stock (ribbon, zipper chain, binding strips): what to cut from what, how much stock it takes, and
// how much less any plan could take at best.
//
//   struct wanted_length<Unit>   name, size, count             pieces to cut
//   struct stock_length<Unit>    size, on_hand, cost           what there is to cut them from
//   struct cutting_rules<Unit>   loss_per_cut, aim, effort, keep_going     aim: a stock_aim, cloth/stock/problem.hpp
//   struct stock_progress        share, best, bound                        what keep_going is shown
//   struct length_plan<Unit>     cuttings, pieces_of_stock, length_of_stock, wanted, lost, left, value, bound,
//                                proved_best
//   struct stock_cutting<Unit>   stock, times, pieces, cuts, left
//   length_plan<Unit> cut_from_stock(wanted, stock, rules = {})
//   stock_error  stock_runs_out_error
//
//   auto plan = cut_from_stock<inch>({{"tie", "22 1/2"_in, 8}, {"loop", "4 3/4"_in, 12}}, {{108_in}});
//   plan.pieces_of_stock;                                     // 3, and plan.proved_best says that 2 cannot do
//
// Lengths are exact fractions. They are brought to whole numbers by their common denominator, so nothing is rounded;
// where that does not fit 64 bits, overflow_error says so. The loss per cut is explained in cloth/stock/problem.hpp.
#ifndef TURNCLOTH_CLOTH_STOCK_HPP
#define TURNCLOTH_CLOTH_STOCK_HPP

#include <turncloth/cloth/detail/common_denominator.hpp>
#include <turncloth/cloth/stock/solve.hpp>
#include <turncloth/measure/require.hpp>

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <utility>
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

/// How far a search has come. More effort never gives a worse plan, so `best` only falls and `bound` only rises.
struct stock_progress {
    fraction share; ///< of the effort, spent: 0 to 1
    std::optional<fraction>
        best;       ///< the value of the best plan so far; none while the stock on hand does not supply it
    fraction bound; ///< no plan has a smaller value: proved
};

/// `keep_going` is asked up to a hundred times, at even steps of the effort; where it returns false the search ends with
/// what that much effort gives. It is not asked where the answer is proved at once.
template <length_unit Unit>
struct cutting_rules {
    length<Unit> loss_per_cut = {};
    stock_aim aim = stock_aim::fewest_pieces;
    std::int64_t effort = default_stock_effort; ///< steps, see cloth/stock/solve.hpp
    std::function<bool(const stock_progress&)> keep_going = {};
};

/// `times` pieces of stock, all cut alike.
template <length_unit Unit>
struct stock_cutting {
    std::size_t stock;                ///< which of the stock lengths
    std::int64_t times;               ///< pieces of stock cut so
    std::vector<std::int64_t> pieces; ///< of each wanted length, from one piece of stock
    std::int64_t cuts;                ///< in one piece of stock
    length<Unit> left;                ///< of one piece of stock, after the last cut
};

template <length_unit Unit>
struct length_plan {
    std::vector<stock_cutting<Unit>> cuttings;
    std::int64_t pieces_of_stock = 0;
    length<Unit> length_of_stock; ///< the sum of the next three
    length<Unit> wanted;          ///< all the pieces
    length<Unit> lost;            ///< in cuts
    length<Unit> left;            ///< at the ends of the pieces of stock
    fraction value;               ///< of what the aim makes least: pieces of stock, their length in Unit, or their cost
    fraction bound;               ///< no plan has a smaller value: proved
    bool proved_best = false;
};

/// A length, count, cost or loss that admits no plan; its facts have the index and name of a piece that is to blame.
class stock_error : public error {
public:
    using error::error;
};

/// Limited stock that does not supply what is wanted. Its facts give the pieces of stock on hand, and the least that
/// would do.
class stock_runs_out_error : public stock_error {
public:
    stock_runs_out_error(const std::string& sentence, refusal facts, std::int64_t more_pieces,
                         const amount& length_short, bool proved)
        : stock_error(sentence, std::move(facts)),
          more_pieces_(more_pieces),
          length_short_(length_short),
          proved_(proved) {}

    /// How many more pieces of the longest stock the best plan found would need.
    std::int64_t more_pieces() const noexcept { return more_pieces_; }
    /// By how much the stock on hand is shorter in all than the pieces and the loss; 0 if only its division fails.
    amount length_short() const noexcept { return length_short_; }
    /// True if it is proved that the stock on hand does not do; else no plan was found within the effort.
    bool proved() const noexcept { return proved_; }

private:
    std::int64_t more_pieces_;
    amount length_short_;
    bool proved_;
};

namespace detail {

inline constexpr std::size_t most_lengths_of_stock = 1000; ///< that differ

/// "piece 2 (tie)"
template <length_unit Unit>
std::string named(const wanted_length<Unit>& piece, std::size_t index) {
    const bool bare = piece.name.empty();
    return sentence({"piece ", index + 1, bare ? "" : " (", piece.name, bare ? "" : ")"});
}

template <length_unit Unit>
void check_wanted(const std::vector<wanted_length<Unit>>& wanted, length<Unit> longest) {
    for (std::size_t i = 0; i < wanted.size(); ++i) {
        const wanted_length<Unit>& w = wanted[i];
        if (w.size.value() > 0 && w.count >= 1 && w.size <= longest)
            continue;
        const std::string name = named(w, i), size = sentence({"the length of ", name});
        if (w.size.value() <= 0)
            refuse_value<stock_error>({fault::too_small, size, w.size, {}, {}, i, w.name}, {"more than zero"});
        if (w.count < 1)
            refuse_value<stock_error>(
                {fault::too_small, sentence({"the quantity of ", name}), w.count, {}, {}, i, w.name}, {"at least 1"});
        refuse<stock_error>(
            {name, " of ", w.size, " is longer by ", w.size - longest, " than the longest stock, ", longest},
            {fault::no_room, size, w.size, {}, longest, i, w.name});
    }
}

/// Returns the longest.
template <length_unit Unit>
length<Unit> check_stock(const std::vector<stock_length<Unit>>& stock, stock_aim aim) {
    if (stock.empty())
        refuse<stock_error>({"at least one length of stock must be given: none was"},
                            {.kind = fault::missing, .what = "a length of stock"});
    length<Unit> longest;
    for (std::size_t k = 0; k < stock.size(); ++k) {
        const stock_length<Unit>& s = stock[k];
        const auto refuse_it = [&](const char* what, const text_part& given, const char* allowed) {
            refuse_value<stock_error>(
                {.kind = fault::too_small, .what = sentence({what, " of stock ", k + 1}), .given = given, .index = k},
                {allowed});
        };
        if (s.size.value() <= 0)
            refuse_it("the length", s.size, "more than zero");
        if (s.on_hand && *s.on_hand < 0)
            refuse_it("the number on hand", *s.on_hand, "zero or more");
        if (aim == stock_aim::least_cost && s.cost <= 0)
            refuse_it("the cost", s.cost, "more than zero");
        longest = std::max(longest, s.size);
    }
    return longest;
}

template <length_unit Unit>
class stock_translation {
public:
    stock_translation(const std::vector<wanted_length<Unit>>& wanted, const std::vector<stock_length<Unit>>& stock,
                      const cutting_rules<Unit>& rules)
        : wanted_(wanted), stock_(stock) {
        lengths_.include(rules.loss_per_cut.value());
        const bool by_cost = rules.aim == stock_aim::least_cost; // no other aim asks what the costs are
        for (const auto& w : wanted)
            lengths_.include(w.size.value());
        for (const auto& s : stock) {
            lengths_.include(s.size.value());
            if (by_cost)
                costs_.include(s.cost);
        }
        for (const auto& w : wanted)
            problem_.wanted.push_back({whole(w.size), w.count});
        for (const auto& s : stock)
            problem_.stock.push_back({whole(s.size), s.on_hand, by_cost ? costs_.whole(s.cost) : 1});
        problem_.loss_per_cut = whole(rules.loss_per_cut);
        problem_.aim = rules.aim;
    }

    const stock_problem& problem() const { return problem_; }
    /// How many parts one Unit is divided into.
    std::int64_t parts() const { return lengths_.parts(); }
    /// How many parts one of what the aim makes least is divided into.
    std::int64_t value_parts() const {
        return problem_.aim == stock_aim::least_length ? lengths_.parts()
               : problem_.aim == stock_aim::least_cost ? costs_.parts()
                                                       : 1;
    }

    length_plan<Unit> with_units(const stock_plan& whole) const {
        if (whole.runs_out)
            refuse_for(*whole.runs_out);
        length_plan<Unit> out;
        for (const stock_filling& f : whole.fillings) {
            out.cuttings.push_back({f.kind, f.times, f.pieces, f.cuts, back(f.left)});
            out.left += out.cuttings.back().left * f.times;
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

    search_watcher watcher(const std::function<bool(const stock_progress&)>& keep_going) const {
        if (!keep_going)
            return {};
        return [this, &keep_going](const search_state& s) {
            const bool supplied = !s.runs_out;
            return keep_going({fraction(s.steps, s.effort),
                               supplied ? std::optional(fraction(s.cost, value_parts())) : std::nullopt,
                               supplied ? fraction(s.bound, value_parts()) : fraction(0)});
        };
    }

private:
    std::int64_t whole(length<Unit> l) const { return lengths_.whole(l.value()); }
    length<Unit> back(std::int64_t n) const { return length_of<Unit>(lengths_.part(n)); }

    [[noreturn]] void refuse_for(const stock_shortage& s) const {
        length<Unit> longest;
        std::int64_t on_hand = 0;
        for (const stock_length<Unit>& one : stock_) {
            longest = std::max(longest, one.size);
            on_hand += std::min(one.on_hand.value_or(0), greatest_total);
        }
        std::string sentence = "the stock on hand does not supply the pieces";
        if (s.length > 0)
            sentence += "; it is too short by " + to_text(back(s.length)) + " in all";
        sentence += "; " + std::to_string(s.more_pieces) + " more of " + to_text(longest) + " would do";
        if (!s.proved)
            sentence += " (no plan without was found, and it is not proved that there is none: allow more effort)";
        refuse<stock_runs_out_error>(sentence,
                                     refusal{.kind = fault::no_room,
                                             .what = "the stock on hand",
                                             .given = amount_of(on_hand),
                                             .least = amount_of(on_hand + s.more_pieces)},
                                     s.more_pieces, amount_of(back(s.length)), s.proved);
    }

    const std::vector<wanted_length<Unit>>& wanted_;
    const std::vector<stock_length<Unit>>& stock_;
    common_denominator lengths_, costs_;
    stock_problem problem_;
};

} // namespace detail

/// The best plan found within the effort; nothing wanted is an empty plan. At most 1000 different lengths are wanted, of any
/// number each, and as many are in stock; time grows with the square of either, and with the effort. Throws stock_error (a
/// length, count, cost or loss that is not allowed, a piece longer than the stock, too many lengths), stock_runs_out_error
/// (too little on hand), overflow_error (numbers whose common denominator or totals are too large).
template <length_unit Unit>
length_plan<Unit> cut_from_stock(const std::vector<wanted_length<Unit>>& wanted,
                                 const std::vector<stock_length<Unit>>& stock, const cutting_rules<Unit>& rules = {}) {
    require_not_negative<stock_error>(rules.loss_per_cut, "the loss per cut");
    require_at_most<stock_error>(wanted.size(), detail::most_lengths_of_stock, "the number of lengths wanted");
    require_at_most<stock_error>(stock.size(), detail::most_lengths_of_stock, "the number of lengths of stock");
    detail::check_wanted(wanted, detail::check_stock(stock, rules.aim));
    const detail::stock_translation<Unit> whole(wanted, stock, rules);
    return whole.with_units(detail::plan_stock(whole.problem(), rules.effort, whole.watcher(rules.keep_going)));
}

TURNCLOTH_ONCE(length_plan<inch> cut_from_stock<inch>(const std::vector<wanted_length<inch>>&,
                                                      const std::vector<stock_length<inch>>&,
                                                      const cutting_rules<inch>&));
TURNCLOTH_ONCE(length_plan<centimetre> cut_from_stock<centimetre>(const std::vector<wanted_length<centimetre>>&,
                                                                  const std::vector<stock_length<centimetre>>&,
                                                                  const cutting_rules<centimetre>&));

} // namespace turncloth

#endif
