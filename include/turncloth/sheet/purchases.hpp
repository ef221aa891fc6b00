// What a sheet's materials are bought as: all pieces of one cloth laid on its width, and lengths cut from stock.
//
//   cloth_for(sheet, material, bolt, rules)   the shortest lay found for those pieces, its bound, and the purchase; what
//                                             the project says of the cloth (project_cloth.hpp) holds where nothing is given
//   sheet_cloth<U>                            material, bolt, pieces, lay, bought, on_sheet, on_hand, spread; width_sold(),
//                                             piece_on()
//   stock_for(name, wanted, stock, rules)     ribbon, zipper chain or strips: the best plan found
//   stock_for(name, wanted, stock, joining)   the same where a piece may be joined of two parts (cloth/joined_lengths.hpp)
//   stock_cuts<U>                             name, wanted, stock, rules, plan
//   listed(cloth)  listed(cuts)               either as a notion, with the working of what to buy
//   say_joins(sheet, cloth or its joined)     the steps of pieces that are made up of parts, as they are wider than the cloth
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
#include <turncloth/sheet/detail/cloths_said.hpp>
#include <turncloth/sheet/sheet.hpp>
#include <turncloth/sheet/widths_joined.hpp>

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <type_traits>
#include <utility>
#include <vector>

namespace turncloth {

/// A piece of cloth that the maker has, with straight ends and no selvedges; its length lies along the grain. Its flaws are
/// told from its left edge and the end that is marked; with any, it is cut free, round each piece.
template <length_unit Unit>
struct cloth_on_hand {
    std::string name, material;
    turncloth::length<Unit> width{}, length{};
    std::vector<cloth_part<Unit>> flaws{};

    friend bool operator==(const cloth_on_hand&, const cloth_on_hand&) = default;
};

/// Which of the spreads of an order it is, so many plies of cloth over each other: one lay is cut through all.
template <length_unit Unit>
struct spread_plies {
    std::size_t spread = 1, of = 1;
    std::int64_t plies = 1;
    turncloth::length<Unit> each{}; ///< with what it has at its ends
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
    std::optional<length<Unit>> before_wash = {}; ///< its width as it is sold, where it is washed before it is cut

    std::vector<piece_in_parts<Unit>> joined = {}; ///< each of its parts is one of `pieces`, in order
    std::optional<spread_plies<Unit>> spread = {}; ///< where it is one ply of many (sheet/order.hpp)

    /// As a shop has it.
    length<Unit> width_sold() const { return before_wash.value_or(bolt.width); }
    /// How that piece of the sheet is laid here; null where it is not.
    const cloth_piece<Unit>* piece_on(std::size_t of_sheet) const {
        for (std::size_t i = 0; i < on_sheet.size() && i < pieces.size(); ++i)
            if (on_sheet[i] == of_sheet)
                return &pieces[i];
        return nullptr;
    }
};

/// How pieces may lie, and how long a good lay is looked for. With `may_join` those that are wider than the cloth are made
/// up of parts (widths_joined.hpp), unless they are of film, are no rectangles or are washed in pieces; the cloth then lies
/// single. Where it has a repeat they are whole widths, on which the pattern goes on.
struct cloth_options {
    grain lies = grain::fixed; ///< of pieces of which the project says nothing: down them, as they hang, or either way
    lay_effort effort = {};
    bool may_join = false;
};

namespace detail {

/// What is to be laid of a material, on what the project says of it too. Throws sheet_error where no piece is of it.
template <length_unit Unit>
sheet_cloth<Unit> pieces_of(const sheet<Unit>& s, const std::string& material, const bolt<Unit>& cloth, grain lies) {
    const project_cloth<Unit>* const said = said_of(s.cloths, material);
    sheet_cloth<Unit> c{material, as_said(cloth, said), {}, {}, {}, s.graduation};
    if (said != nullptr && said->washed == washed_when::before_cutting) {
        c.before_wash = c.bolt.width;
        c.bolt.width = after_washing(c.bolt.width, said->change.across);
        c.bolt.selvedge = after_washing(c.bolt.selvedge, said->change.across);
        c.bolt.repeat_across = after_washing(c.bolt.repeat_across, said->change.across);
        c.bolt.repeat_along = after_washing(c.bolt.repeat_along, said->change.along);
    }
    for (std::size_t i = 0; i < s.pieces.size(); ++i)
        if (const piece<Unit>& p = s.pieces[i].made_from; p.material() == material) {
            c.pieces.push_back(laid_as_said(s.pieces[i], said, lies, c.bolt.folded));
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

/// Nothing is folded: what would be cut on the fold is cut whole. In which layer a flaw is that is told from the fold is not
/// known, so that both are left out.
template <length_unit Unit>
sheet_cloth<Unit> lying_single(sheet_cloth<Unit> c) {
    if (std::exchange(c.bolt.folded, false)) {
        const length<Unit> middle = c.bolt.width / 2;
        for (std::size_t i = c.bolt.flaws.size(); i-- > 0;) {
            const cloth_part<Unit> f = c.bolt.flaws[i];
            c.bolt.flaws[i].from_left = middle + f.from_left;
            c.bolt.flaws.push_back(
                {std::max(middle - f.from_left - f.across, length<Unit>()), f.from_end, f.across, f.along});
        }
    }
    for (cloth_piece<Unit>& p : c.pieces)
        p.on_fold = false;
    return c;
}

/// Whether that piece of the sheet may be made up of parts, and is wider than the cloth.
template <length_unit Unit>
bool is_to_be_joined(const sheet_cloth<Unit>& c, const sheet<Unit>& s, std::size_t i) {
    return c.on_sheet[i] < s.pieces.size() && !s.pieces[c.on_sheet[i]].made_from.is_film() &&
           too_wide(c.pieces[i], i, c.bolt);
}

/// As it is to be laid: pieces that are wider than the cloth in parts, "back (1)", "back (2)", from its left edge.
template <length_unit Unit>
sheet_cloth<Unit> in_widths(const sheet<Unit>& s, sheet_cloth<Unit> c) {
    const project_cloth<Unit>* const said = said_of(s.cloths, c.material);
    const auto any = [&] {
        for (std::size_t i = 0; i < c.pieces.size(); ++i)
            if (is_to_be_joined(c, s, i))
                return true;
        return false;
    };
    const bool repeats = c.bolt.repeat_across.value() > 0 || c.bolt.repeat_along.value() > 0;
    if ((said != nullptr && said->washed == washed_when::as_pieces) || !any())
        return c;
    const sheet_cloth<Unit> whole = lying_single(std::move(c));
    c = whole;
    c.pieces.clear();
    c.on_sheet.clear();
    for (std::size_t i = 0; i < whole.pieces.size(); ++i) {
        const cloth_piece<Unit>& p = whole.pieces[i];
        const std::size_t on_sheet = whole.on_sheet[i];
        std::vector<length<Unit>> widths{p.size.width()};
        if (is_to_be_joined(whole, s, i)) {
            const panel<Unit>& shape = s.pieces[on_sheet].made_from.shape();
            const finish<Unit>&l = shape.finish_of(edge::left), &r = shape.finish_of(edge::right);
            const length<Unit> beside = std::max(l.allowance() + l.reach(), r.allowance() + r.reach());
            const length<Unit> join =
                said == nullptr || said->join.value() == 0 ? usual_join<Unit>(c.material) : said->join;
            const cloth_in_widths<Unit> widths_of_cloth{c.bolt.usable_width(), join, s.graduation, beside};
            c.joined.push_back({on_sheet, p.name, p.quantity,
                                repeats ? matched_widths(p.size.width(), widths_of_cloth, c.bolt.repeat_across)
                                        : parts_of_widths(p.size.width(), widths_of_cloth)});
            widths = c.joined.back().parts.in_order();
        }
        for (std::size_t k = 0; k < widths.size(); ++k) {
            c.pieces.push_back(p);
            c.on_sheet.push_back(on_sheet);
            if (widths.size() == 1)
                continue;
            c.pieces.back().name.append(" (").append(std::to_string(k + 1)).append(")");
            c.pieces.back().size = cut_size<Unit>(widths[k], p.size.height());
            c.pieces.back().grain = grain::fixed; // as that of its neighbours
        }
    }
    return c;
}

/// On the sheets of those who are given their pieces cut (sheet/order.hpp).
inline std::string name_in_order(const std::string& material) { return material + ", cut in one order"; }

/// Of several pieces of one material, those on hand are told apart by name, and spreads by number.
template <length_unit Unit>
std::string name_of_cloth(const sheet_cloth<Unit>& c) {
    if (c.spread)
        return sentence({c.material, ", spread ", c.spread->spread, " of ", c.spread->of});
    return c.on_hand ? c.material + ", " + c.on_hand->name : c.material;
}

} // namespace detail

/// Throws sheet_error where no piece is of that material, and as lay_out and amount_to_buy.
template <length_unit Unit>
sheet_cloth<Unit>
cloth_for(const sheet<Unit>& s, const std::string& material, const bolt<std::type_identity_t<Unit>>& cloth,
          const purchase_rules<std::type_identity_t<Unit>>& rules, const cloth_options& options = {}) {
    sheet_cloth<Unit> c = detail::pieces_of(s, material, cloth, options.lies);
    if (options.may_join)
        c = detail::in_widths(s, std::move(c));
    c.lay = lay_out<Unit>(c.pieces, c.bolt, options.effort);
    c.bought = amount_to_buy(c.lay.length, detail::as_said(rules, detail::said_of(s.cloths, material)));
    return c;
}

/// Says on a sheet, once all is cut, how pieces that its cloth made parts of are sewn together; each is said once.
template <length_unit Unit>
void say_joins(sheet<Unit>& s, const std::vector<piece_in_parts<Unit>>& joined) {
    std::vector<work_group<Unit>>& groups = s.steps.groups;
    const auto is_cutting = [](const work_group<Unit>& g) { return g.steps[0].verb == work_verb::cut; };
    auto at = std::find_if(groups.begin(), groups.end(), is_cutting);
    at = at == groups.end() ? groups.begin() : at + 1;
    for (const piece_in_parts<Unit>& j : joined) {
        work_step<Unit> step;
        step.verb = work_verb::prepare;
        step.what = detail::joining_step(j);
        if (std::any_of(groups.begin(), groups.end(),
                        [&](const work_group<Unit>& g) { return g.steps[0].what == step.what; }))
            continue;
        work_group<Unit> group{.steps = {std::move(step)}};
        group.care = {caution::work::stitching};
        if (j.parts.join.value() > 0)
            group.care.push_back(caution::work::pressing);
        at = groups.insert(at, std::move(group)) + 1;
    }
}
template <length_unit Unit>
void say_joins(sheet<Unit>& s, const sheet_cloth<Unit>& c) {
    say_joins(s, c.joined);
}

namespace detail {

template <length_unit Unit>
void list_parts(notion<Unit>& n, const piece_in_parts<Unit>& j) {
    n.number("parts that make up the " + named(j.name), j.parts.count());
    const std::vector<length<Unit>> widths = j.parts.in_order();
    for (std::size_t k = 0; k < widths.size(); ++k)
        n.figure(named(j.name) + " (" + std::to_string(k + 1) + "), cut width", widths[k]);
    if (j.parts.join.value() > 0)
        n.figure(named(j.name) + ", allowance of each join", j.parts.join);
    if (j.parts.trimmed.value() > 0)
        n.figure(named(j.name) + ", cut off either side once it is joined", j.parts.trimmed / 2);
}

} // namespace detail

template <length_unit Unit>
notion<Unit> listed(const sheet_cloth<Unit>& c) {
    notion<Unit> n(detail::name_of_cloth(c));
    if (c.on_hand)
        return n.figure("width on hand", c.on_hand->width)
            .figure("length on hand", c.on_hand->length)
            .figure("length laid", c.lay.length);
    n.figure("width of the cloth", c.width_sold());
    if (c.bolt.width != c.width_sold())
        n.figure("width when it is washed", c.bolt.width);
    n.figure("usable width", c.bolt.usable_width());
    n.figure(c.lay.proved_best() ? "length laid, the shortest possible" : "length laid", c.lay.length);
    if (!c.lay.proved_best())
        n.figure("no lay can be shorter than", c.lay.bound);
    for (const piece_in_parts<Unit>& j : c.joined)
        detail::list_parts(n, j);
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

TURNCLOTH_ONCE(sheet_cloth<inch> cloth_for<inch>(const sheet<inch>&, const std::string&, const bolt<inch>&,
                                                 const purchase_rules<inch>&, const cloth_options&));
TURNCLOTH_ONCE(stock_cuts<inch> stock_for<inch>(std::string, std::vector<wanted_length<inch>>,
                                                std::vector<stock_length<inch>>, const cutting_rules<inch>&));
TURNCLOTH_ONCE(stock_cuts<inch> stock_for<inch>(std::string, const std::vector<wanted_length<inch>>&,
                                                std::vector<stock_length<inch>>, const joining_rules<inch>&));
TURNCLOTH_ONCE(sheet_cloth<centimetre> cloth_for<centimetre>(const sheet<centimetre>&, const std::string&,
                                                             const bolt<centimetre>&, const purchase_rules<centimetre>&,
                                                             const cloth_options&));
TURNCLOTH_ONCE(stock_cuts<centimetre> stock_for<centimetre>(std::string, std::vector<wanted_length<centimetre>>,
                                                            std::vector<stock_length<centimetre>>,
                                                            const cutting_rules<centimetre>&));
TURNCLOTH_ONCE(stock_cuts<centimetre> stock_for<centimetre>(std::string, const std::vector<wanted_length<centimetre>>&,
                                                            std::vector<stock_length<centimetre>>,
                                                            const joining_rules<centimetre>&));

} // namespace turncloth

#endif
