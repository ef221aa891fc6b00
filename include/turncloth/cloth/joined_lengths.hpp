// Lengths cut from stock of which a piece may be joined of two parts, as bindings and straps are.
//
//   struct joining_rules<Unit>    cutting (a cutting_rules, cloth/stock.hpp), lost_in_join, least_part
//   struct joined_piece           piece, first, second
//   struct joined_lengths<Unit>   lengths, joined, plan
//   joined_lengths<Unit> cut_with_joins(wanted, stock, rules)
//
//   const auto straps = cut_with_joins<inch>({{"strap", 60_in, 3}}, {{100_in}},
//                                            {.lost_in_join = 1_in, .least_part = 6_in});
//   straps.plan.pieces_of_stock;                     // 2, where three whole straps would need 3
//
// What a join takes is told by join_loss (notions/joining.hpp): of a strap of 60 in that loses 1 in, the parts are 61 in
// together. The parts are lengths to cut like any other, named by the join that they meet in, so a plan with joins is
// checked, listed and drawn as one without. No piece is joined where a plan without joins does as well.
#ifndef TURNCLOTH_CLOTH_JOINED_LENGTHS_HPP
#define TURNCLOTH_CLOTH_JOINED_LENGTHS_HPP

#include <turncloth/cloth/stock.hpp>
#include <turncloth/cloth/stock/joined_plan.hpp>

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <map>
#include <string>
#include <utility>
#include <vector>

namespace turncloth {

/// Both parts of a joined piece are at least `least_part` long, which is no less than a join takes.
template <length_unit Unit>
struct joining_rules {
    cutting_rules<Unit> cutting{};
    length<Unit> lost_in_join{};
    length<Unit> least_part{};
};

/// Which of the wanted pieces is joined, and the places of its parts among the lengths to cut.
struct joined_piece {
    std::size_t piece, first, second;
};

/// `plan` is for the `lengths`: first those of the pieces that stay whole, then two parts for every join.
template <length_unit Unit>
struct joined_lengths {
    std::vector<wanted_length<Unit>> lengths;
    std::vector<joined_piece> joined;
    length_plan<Unit> plan;
};

namespace detail {

inline constexpr std::int64_t most_pieces_with_joins = 1000;

template <length_unit Unit>
void check_joins(const std::vector<wanted_length<Unit>>& wanted, length<Unit> longest,
                 const joining_rules<Unit>& rules) {
    require_not_negative<stock_error>(rules.lost_in_join, "what a join takes");
    require_more_than_zero<stock_error>(rules.least_part, "the least part of a joined piece");
    if (rules.least_part < rules.lost_in_join)
        refuse<stock_error>({"the least part of a joined piece, ", rules.least_part, ", is less than the join takes, ",
                             rules.lost_in_join},
                            {.kind = fault::too_small,
                             .what = "the least part of a joined piece",
                             .given = rules.least_part,
                             .least = rules.lost_in_join});
    const length<Unit> most = std::max(longest, longest * 2 - rules.lost_in_join);
    length<Unit> largest = longest;
    std::int64_t pieces = 0;
    for (std::size_t i = 0; i < wanted.size(); ++i) {
        const wanted_length<Unit>& w = wanted[i];
        if (w.size > most)
            refuse<stock_error>(
                {named(w, i), " of ", w.size, " is longer by ", w.size - most,
                 " than two of the longest stock joined, ", most},
                {fault::no_room, sentence({"the length of ", named(w, i)}), w.size, {}, most, i, w.name});
        largest = std::max(largest, w.size);
        pieces += std::clamp(w.count, std::int64_t{0}, most_pieces_with_joins + 1);
    }
    check_wanted(wanted, largest);
    require_at_most<stock_error>(pieces, most_pieces_with_joins, "the number of pieces that may be joined");
}

template <length_unit Unit>
[[noreturn]] void refuse_joined(const std::vector<stock_length<Unit>>& stock, bool proved) {
    std::int64_t on_hand = 0;
    for (const stock_length<Unit>& s : stock)
        on_hand += std::min(s.on_hand.value_or(0), greatest_total / 1000);
    refuse<stock_error>(
        {"the stock on hand does not supply the pieces, not even joined",
         proved ? "" : " (no plan was found, and it is not proved that there is none: allow more effort)"},
        {.kind = fault::no_room, .what = "the stock on hand", .given = on_hand});
}

/// From the answer in whole numbers to lengths with names, and a plan for them.
template <length_unit Unit>
class joined_report {
public:
    joined_report(const std::vector<wanted_length<Unit>>& wanted, const std::vector<stock_length<Unit>>& stock,
                  const joining_rules<Unit>& rules, std::int64_t parts)
        : wanted_(wanted), stock_(stock), rules_(rules), parts_(parts), place_(wanted.size()) {}

    joined_lengths<Unit> of(const joined_answer& answer, std::int64_t value_parts) {
        if (answer.plain)
            from_plain(*answer.plain);
        else
            from_bars(answer.bars);
        length_plan<Unit>& plan = out_.plan;
        for (const wanted_length<Unit>& w : out_.lengths)
            plan.wanted += w.size * w.count;
        plan.lost = plan.length_of_stock - plan.wanted - plan.left;
        plan.value = fraction(answer.value, value_parts);
        plan.bound = fraction(answer.bound, value_parts);
        plan.proved_best = answer.value == answer.bound;
        return std::move(out_);
    }

private:
    length<Unit> back(std::int64_t n) const { return length_of<Unit>(fraction(n, parts_)); }

    void from_plain(const stock_plan& plain) {
        out_.lengths = wanted_;
        for (const stock_filling& f : plain.fillings)
            add({f.kind, f.times, f.pieces, f.cuts, back(f.left)});
    }

    void from_bars(const std::vector<joined_bar>& bars) {
        name_wholes(bars);
        for (const joined_bar& bar : bars)
            for (const joined_part& p : bar.parts)
                if (p.part != 0)
                    out_.lengths[place_of_join(p) + p.part - 1].size = back(p.length);
        for (const joined_bar& bar : bars) {
            std::vector<std::int64_t> pieces(out_.lengths.size(), 0);
            for (const joined_part& p : bar.parts)
                ++pieces[p.part == 0 ? place_[p.piece] : place_of_join(p) + p.part - 1];
            add(cutting_of(bar.kind, std::move(pieces)));
        }
    }

    void name_wholes(const std::vector<joined_bar>& bars) {
        std::vector<std::int64_t> whole(wanted_.size(), 0);
        for (const joined_bar& bar : bars)
            for (const joined_part& p : bar.parts)
                whole[p.piece] += p.part == 0 ? 1 : 0;
        for (std::size_t i = 0; i < wanted_.size(); ++i)
            if (whole[i] > 0) {
                place_[i] = out_.lengths.size();
                out_.lengths.push_back({wanted_[i].name, wanted_[i].size, whole[i]});
            }
    }

    // Of its first part; both join the lengths where the first of them is met.
    std::size_t place_of_join(const joined_part& p) {
        const auto [at, added] = joins_.try_emplace(p.join, out_.lengths.size());
        if (added) {
            const std::string& own = wanted_[p.piece].name;
            const std::string name = own.empty() ? named(wanted_[p.piece], p.piece) : own;
            for (const int part : {1, 2})
                out_.lengths.push_back(
                    {sentence({name, ", join ", joins_.size(), ", part ", part, " of 2"}), length<Unit>(), 1});
            out_.joined.push_back({p.piece, at->second, at->second + 1});
        }
        return at->second;
    }

    // The cuts and what is left are those of cloth/stock/problem.hpp.
    stock_cutting<Unit> cutting_of(std::size_t kind, std::vector<std::int64_t> pieces) const {
        std::int64_t count = 0;
        length<Unit> sum;
        for (std::size_t i = 0; i < pieces.size(); ++i) {
            count += pieces[i];
            sum += out_.lengths[i].size * pieces[i];
        }
        const length<Unit> loss = rules_.cutting.loss_per_cut;
        const length<Unit> after_last = stock_[kind].size - sum - loss * (count - 1);
        return {kind, 1, std::move(pieces), after_last.value() == 0 ? count - 1 : count,
                std::max(length<Unit>(), after_last - loss)};
    }

    void add(stock_cutting<Unit> cutting) {
        length_plan<Unit>& plan = out_.plan;
        plan.pieces_of_stock += cutting.times;
        plan.length_of_stock += stock_[cutting.stock].size * cutting.times;
        plan.left += cutting.left * cutting.times;
        if (!plan.cuttings.empty() && plan.cuttings.back().stock == cutting.stock &&
            plan.cuttings.back().pieces == cutting.pieces)
            plan.cuttings.back().times += cutting.times;
        else
            plan.cuttings.push_back(std::move(cutting));
    }

    const std::vector<wanted_length<Unit>>& wanted_;
    const std::vector<stock_length<Unit>>& stock_;
    const joining_rules<Unit>& rules_;
    std::int64_t parts_;
    std::vector<std::size_t> place_;             // of each wanted piece that stays whole, among the lengths
    std::map<std::size_t, std::size_t> joins_{}; // of each join, where its first part is among the lengths
    joined_lengths<Unit> out_;
};

} // namespace detail

/// The best plan found within the effort of the cutting rules, and how good it is: its value and bound are those of all
/// plans with joins or without. At most 1000 pieces, all counted. Proved best in general where a dozen pieces are cut from
/// up to eight of stock, or a plan is as good as the lengths allow. `keep_going` is asked by the search without joins.
/// Throws stock_error (as cut_from_stock; a part shorter than the join takes, a piece longer than two of the longest stock
/// joined, stock on hand that does not supply the pieces) and overflow_error.
template <length_unit Unit>
joined_lengths<Unit> cut_with_joins(const std::vector<wanted_length<Unit>>& wanted,
                                    const std::vector<stock_length<Unit>>& stock, const joining_rules<Unit>& rules) {
    require_not_negative<stock_error>(rules.cutting.loss_per_cut, "the loss per cut");
    require_at_most<stock_error>(stock.size(), detail::most_lengths_of_stock, "the number of lengths of stock");
    detail::check_joins(wanted, detail::check_stock(stock, rules.cutting.aim), rules);
    std::vector<wanted_length<Unit>> asked = wanted; // and what belongs to a join, for one common measure
    asked.push_back({"", rules.lost_in_join, 1});
    asked.push_back({"", rules.least_part, 1});
    const detail::stock_translation<Unit> whole(asked, stock, rules.cutting);
    detail::stock_problem problem = whole.problem();
    const detail::join_terms terms{problem.wanted[wanted.size()].length, problem.wanted.back().length};
    problem.wanted.resize(wanted.size(), {0, 0});
    detail::joined_report<Unit> report(wanted, stock, rules, whole.parts());
    if (wanted.empty())
        return report.of({.found = true, .plain = detail::plan_stock(problem)}, whole.value_parts());
    const detail::joined_answer answer =
        detail::plan_with_joins(problem, terms, rules.cutting.effort, whole.watcher(rules.cutting.keep_going));
    if (!answer.found)
        detail::refuse_joined(stock, answer.refuted);
    return report.of(answer, whole.value_parts());
}

} // namespace turncloth

#endif
