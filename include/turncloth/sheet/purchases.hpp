// What a sheet's materials are bought as: all pieces of one cloth laid on its width, and lengths cut from stock.
//
//   cloth_for(sheet, material, bolt, rules)   the shortest lay found for those pieces, its bound, and the purchase
//   sheet_cloth<U>                            material, bolt, pieces, lay, bought, on_sheet, on_hand
//   stock_for(name, wanted, stock, rules)     ribbon, zipper chain or strips: the best plan found
//   stock_for(name, wanted, stock, joining)   the same where a piece may be joined of two parts (cloth/joined_lengths.hpp)
//   stock_cuts<U>                             name, wanted, stock, rules, plan
//   listed(cloth)  listed(cuts)               either as a notion, with the working of what to buy
//
//   const auto canvas = cloth_for<inch>(s, "canvas", {.width = 54_in, .selvedge = "1/2"_in},
//                                       {.straightening = 1_in, .sold = eighths_of_a_yard<inch>});
//   s.notions.push_back(listed(canvas));
//
// Of an outline its bounding rectangle is laid, turned where it says so itself: slanting and curved sides may lie closer
// by hand.
//
// Included by itself: the searches are more to compile than all the rest of a sheet.
#ifndef TURNCLOTH_SHEET_PURCHASES_HPP
#define TURNCLOTH_SHEET_PURCHASES_HPP

#include <turncloth/cloth/joined_lengths.hpp>
#include <turncloth/cloth/lay.hpp>
#include <turncloth/cloth/purchase.hpp>
#include <turncloth/cloth/stock.hpp>
#include <turncloth/sheet/sheet.hpp>

#include <cstddef>
#include <optional>
#include <string>
#include <type_traits>
#include <utility>
#include <vector>

namespace turncloth {

/// A piece of cloth that the maker has, with straight ends and no selvedges; its length lies along the grain.
template <length_unit Unit>
struct cloth_on_hand {
    std::string name, material;
    turncloth::length<Unit> width{}, length{};

    friend bool operator==(const cloth_on_hand&, const cloth_on_hand&) = default;
};

template <length_unit Unit>
struct sheet_cloth {
    std::string material;
    turncloth::bolt<Unit> bolt;
    std::vector<cloth_piece<Unit>> pieces; ///< those of the sheet that are of the material, at their cut sizes
    turncloth::lay<Unit> lay;
    purchase<Unit> bought;
    length<Unit> graduation = {};           ///< of the ruler that its pieces were worked out on; zero for none
    std::vector<std::size_t> on_sheet = {}; ///< of each piece, its place among those of the sheet, outlines after them
    std::optional<cloth_on_hand<Unit>> on_hand =
        {}; ///< what it is laid on, where that need not be bought (sheet/on_hand.hpp)
};

/// How pieces may lie, and how long a good lay is looked for.
struct cloth_options {
    grain lies = grain::fixed; ///< it runs down every panel, as it hangs; `may_turn` lets all of them lie either way
    lay_effort effort = {};
};

namespace detail {

/// What is to be laid of a material. Throws sheet_error where no piece is of it.
template <length_unit Unit>
sheet_cloth<Unit> pieces_of(const sheet<Unit>& s, const std::string& material, const bolt<Unit>& cloth, grain lies) {
    sheet_cloth<Unit> c{material, cloth, {}, {}, {}, s.graduation};
    for (std::size_t i = 0; i < s.pieces.size(); ++i)
        if (const piece<Unit>& p = s.pieces[i].made_from; p.material() == material) {
            c.pieces.push_back({p.name(), s.pieces[i].cut, p.count(), lies});
            c.on_sheet.push_back(i);
        }
    for (std::size_t i = 0; i < s.outlines.size(); ++i)
        if (const outlined_piece<Unit>& p = s.outlines[i]; p.material() == material) {
            c.pieces.push_back({p.name(), p.cut, p.count(), p.made_from.may_turn ? grain::may_turn : grain::fixed});
            c.on_sheet.push_back(s.pieces.size() + i);
        }
    if (c.pieces.empty())
        refuse<sheet_error>(
            s.name, std::vector<sheet_reason>{{"no piece is of " + named(material),
                                               {.kind = fault::missing, .what = "a piece of " + excerpt(material)}}});
    return c;
}

/// Of several pieces of one material, those on hand are told apart by name.
template <length_unit Unit>
std::string name_of_cloth(const sheet_cloth<Unit>& c) {
    return c.on_hand ? c.material + ", " + c.on_hand->name : c.material;
}

} // namespace detail

/// Throws sheet_error where no piece is of that material, and as lay_out and amount_to_buy.
template <length_unit Unit>
sheet_cloth<Unit>
cloth_for(const sheet<Unit>& s, const std::string& material, const bolt<std::type_identity_t<Unit>>& cloth,
          const purchase_rules<std::type_identity_t<Unit>>& rules, const cloth_options& options = {}) {
    sheet_cloth<Unit> c = detail::pieces_of(s, material, cloth, options.lies);
    c.lay = lay_out<Unit>(c.pieces, cloth, options.effort);
    c.bought = amount_to_buy(c.lay.length, rules);
    return c;
}

template <length_unit Unit>
notion<Unit> listed(const sheet_cloth<Unit>& c) {
    notion<Unit> n(detail::name_of_cloth(c));
    if (c.on_hand)
        return n.figure("width on hand", c.on_hand->width)
            .figure("length on hand", c.on_hand->length)
            .figure("length laid", c.lay.length);
    n.figure("width of the cloth", c.bolt.width).figure("usable width", c.bolt.usable_width());
    n.figure(c.lay.proved_best() ? "length laid, the shortest possible" : "length laid", c.lay.length);
    if (!c.lay.proved_best())
        n.figure("no lay can be shorter than", c.lay.bound);
    return n.figure("length to buy", c.bought.working);
}

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

/// With joins `wanted` is what is cut: the pieces that stay whole, and the parts of every join. Throws as cut_with_joins.
template <length_unit Unit>
stock_cuts<Unit> stock_for(std::string name, const std::vector<wanted_length<Unit>>& wanted,
                           std::vector<stock_length<Unit>> stock, const joining_rules<Unit>& rules) {
    joined_lengths<Unit> found = cut_with_joins(wanted, stock, rules);
    return {std::move(name), std::move(found.lengths), std::move(stock), rules.cutting, std::move(found.plan)};
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
                .append(named(c.wanted[i].name));
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
        n.number("pieces of stock, at least this many are needed", ceil(plan.bound));
    n.figure(label("length of stock", stock_aim::least_length, ", the least that will do"), plan.length_of_stock);
    if (!plan.proved_best && c.rules.aim == stock_aim::least_length)
        n.figure("length of stock, at least this much is needed", length_of<Unit>(plan.bound));
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
