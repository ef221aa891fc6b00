// Ribbon, zipper chain or strips for a sheet, cut from the lengths that they are sold in.
//
//   stock_for(name, wanted, stock, rules)   the best plan found, with what it was made for
//   stock_cuts<U>                           name, wanted, stock, rules, plan
//   listed(cuts)                            as a notion: pieces of stock, how each is cut, what is left
//
//   const auto ties = stock_for<inch>("ribbon", {{"tie", "22 1/2"_in, 8}, {"loop", "4 3/4"_in, 12}}, {{108_in}});
//   s.notions.push_back(listed(ties));
//
// Included by itself: a search for a plan is more to compile than all the rest of a sheet.
#ifndef TURNCLOTH_SHEET_STOCK_LIST_HPP
#define TURNCLOTH_SHEET_STOCK_LIST_HPP

#include <turncloth/cloth/stock.hpp>
#include <turncloth/sheet/notion.hpp>

#include <cstddef>
#include <string>
#include <utility>
#include <vector>

namespace turncloth {

template <length_unit Unit>
struct stock_cuts {
    std::string name;
    std::vector<wanted_length<Unit>> wanted;
    std::vector<stock_length<Unit>> stock;
    cutting_rules<Unit> rules;
    length_plan<Unit> plan;
};

/// Throws as cut_from_stock.
template <length_unit Unit>
stock_cuts<Unit> stock_for(std::string name, std::vector<wanted_length<Unit>> wanted,
                           std::vector<stock_length<Unit>> stock, const cutting_rules<Unit>& rules = {}) {
    length_plan<Unit> plan = cut_from_stock(wanted, stock, rules);
    return {std::move(name), std::move(wanted), std::move(stock), rules, std::move(plan)};
}

namespace detail {

/// "4 tie, 3 loop"
template <length_unit Unit>
std::string cut_into(const stock_cuts<Unit>& c, const stock_cutting<Unit>& p) {
    std::string all;
    for (std::size_t i = 0; i < p.pieces.size(); ++i)
        if (p.pieces[i] > 0)
            all.append(all.empty() ? "" : ", ")
                .append(std::to_string(p.pieces[i]))
                .append(" ")
                .append(c.wanted[i].name);
    return all;
}

/// Stock lengths are told apart by number where there are several.
template <length_unit Unit>
std::string which_stock(const stock_cuts<Unit>& c, std::size_t i) {
    return c.stock.size() == 1 ? std::string("stock") : std::string("stock ").append(std::to_string(i + 1));
}

template <length_unit Unit>
void add_totals(notion<Unit>& n, const stock_cuts<Unit>& c) {
    const length_plan<Unit>& plan = c.plan;
    const auto label = [&](const char* what, stock_aim aim, const char* least) {
        return std::string(what).append(c.rules.aim == aim && plan.proved_best ? least : "");
    };
    n.number(label("pieces of stock", stock_aim::fewest_pieces, ", the fewest that will do"), plan.pieces_of_stock);
    if (!plan.proved_best && c.rules.aim == stock_aim::fewest_pieces)
        n.number("pieces of stock without which none will do", ceil(plan.bound));
    n.figure(label("length of stock", stock_aim::least_length, ", the least that will do"), plan.length_of_stock);
    if (!plan.proved_best && c.rules.aim == stock_aim::least_length)
        n.figure("length of stock without which none will do", length_of<Unit>(plan.bound));
    if (plan.lost.value() > 0)
        n.figure("lost in cuts", plan.lost);
    n.figure("left over in all", plan.left);
}

} // namespace detail

template <length_unit Unit>
notion<Unit> listed(const stock_cuts<Unit>& c) {
    notion<Unit> n(c.name);
    for (const wanted_length<Unit>& w : c.wanted)
        n.number(std::string(w.name).append(", pieces"), w.count).figure(std::string(w.name).append(", each"), w.size);
    for (std::size_t i = 0; i < c.stock.size(); ++i)
        n.figure(detail::which_stock(c, i).append(", each"), c.stock[i].size);
    detail::add_totals(n, c);
    for (const stock_cutting<Unit>& p : c.plan.cuttings)
        n.number(detail::which_stock(c, p.stock).append(", to be cut into ").append(detail::cut_into(c, p)), p.times)
            .figure("left of each of these", p.left);
    return n;
}

} // namespace turncloth

#endif
