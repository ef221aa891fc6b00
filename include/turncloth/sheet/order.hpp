// Many sheets, and many copies of each, laid as one order of a cloth: in spreads that the table takes, cut through several
// plies at once.
//
//   cloth_order<U>(material, bolt, rules, spreading, options)   .add(sheet, copies, name)  .laid()
//   spreading<U>          table, most_plies, ends
//   ordered_cloth<U>      material, bolt, lines, pieces, spreads, length, bound, bought; places_of(piece, spread)
//   cloth_spread<U>       plies, lay
//   listed(order)         what to buy, and how it is spread
//   listed_on(order, line)     how many of one sheet's pieces come off which spread
//   spread_of(order, i)        that spread as a sheet_cloth, to be drawn (draw/lay.hpp)
//
//   cloth_order<inch> order("canvas", {.width = 54_in}, rules, {.table = 96_in, .most_plies = 10});
//   order.add(small, 20, "small pad");
//   order.add(large, 35, "large pad");
//   const ordered_cloth<inch> all = order.laid();
//
// Of each thing as many copies go on a spread as there are plies for: what is left over goes on spreads of fewer plies, so
// that just as many come out as are wanted. The cloth lies single. Included by itself, as sheet/purchases.hpp is.
#ifndef TURNCLOTH_SHEET_ORDER_HPP
#define TURNCLOTH_SHEET_ORDER_HPP

#include <turncloth/cloth/remnants.hpp>
#include <turncloth/sheet/purchases.hpp>

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <type_traits>
#include <utility>
#include <vector>

namespace turncloth {

/// Of the table that cloth is spread on, and of what cuts it. Without a table a spread is as long as it needs be.
template <length_unit Unit>
struct spreading {
    length<Unit> table{};        ///< the longest spread, with what it has at its ends; zero for any length
    std::int64_t most_plies = 1; ///< that are cut at once
    length<Unit> ends{};         ///< that each ply is longer than what is laid on it, at both ends together
};

/// Cloth spread so many times over itself. Each place gives a piece of every ply.
template <length_unit Unit>
struct cloth_spread {
    std::int64_t plies = 1;
    turncloth::lay<Unit> lay;
};

/// The pieces of one sheet: so many, from `first` on.
template <length_unit Unit>
struct order_line {
    std::string name;
    std::int64_t copies = 1;
    std::size_t first = 0, count = 0;
    std::vector<piece_in_parts<Unit>> joined{}; ///< of them, which its maker sews together (say_joins)
};

/// `length` is that of all plies together without their `ends`, and no order takes less than `bound`, the area over the usable width.
template <length_unit Unit>
struct ordered_cloth {
    std::string material;
    turncloth::bolt<Unit> bolt;
    std::vector<order_line<Unit>> lines;
    std::vector<cloth_piece<Unit>> pieces; ///< with how many of each are wanted in all
    std::vector<cloth_spread<Unit>> spreads;
    turncloth::length<Unit> length{}, bound{}, ends{};
    purchase<Unit> bought;
    turncloth::length<Unit> graduation{};
    std::optional<turncloth::length<Unit>> before_wash{}; ///< as sheet_cloth has it

    /// How often that piece lies on one ply of the spread.
    std::int64_t places_of(std::size_t piece, std::size_t spread) const {
        const auto& places = spreads[spread].lay.places;
        return std::count_if(places.begin(), places.end(),
                             [&](const cloth_place<Unit>& p) { return p.piece == piece; });
    }
};

/// An order has at most so many copies of one sheet.
inline constexpr std::int64_t most_copies = 100'000;

namespace detail {

/// What is wanted, on spreads one after another.
template <length_unit Unit>
class spread_planner {
public:
    spread_planner(const std::vector<cloth_piece<Unit>>& pieces, const bolt<Unit>& cloth, const spreading<Unit>& table,
                   const lay_effort& effort)
        : pieces_(pieces),
          cloth_(cloth),
          room_(table.table - table.ends),
          most_plies_(table.most_plies),
          any_length_(table.table.value() == 0),
          effort_(effort) {}

    /// `copies` and `in_one` of each piece: how many things it is for, and how many of it one has.
    std::vector<cloth_spread<Unit>> plan(piece_counts copies, const piece_counts& in_one) {
        for (;;) {
            const std::int64_t plies = std::min(most_plies_, *std::max_element(copies.begin(), copies.end()));
            if (plies == 0)
                return std::move(spreads_);
            piece_counts wanted = in_one;
            for (std::size_t i = 0; i < wanted.size(); ++i) {
                wanted[i] *= copies[i] / plies;
                copies[i] %= plies;
            }
            spread(wanted, plies);
        }
    }

private:
    /// As much on each as it takes, and what is left as short as can be.
    void spread(piece_counts wanted, std::int64_t plies) {
        while (std::any_of(wanted.begin(), wanted.end(), [](std::int64_t n) { return n > 0; })) {
            const piece_selection<Unit> some(pieces_, wanted);
            check_quantities(some.pieces);
            std::optional<lay<Unit>> found;
            if (any_length_ || goes_by_area(some.pieces))
                found = lay_out(some.pieces, cloth_, effort_);
            if (!found || (!any_length_ && found->length > room_))
                found = filled(some.pieces);
            for (const cloth_place<Unit>& p : found->places)
                --wanted[some.index[p.piece]];
            found->spare.assign(some.pieces.size(), 0);
            spreads_.push_back({plies, some.in_all(std::move(*found), pieces_.size())});
        }
    }
    bool goes_by_area(const std::vector<cloth_piece<Unit>>& some) const {
        fraction area = 0;
        for (const cloth_piece<Unit>& p : some)
            area += area_of(p) * p.quantity;
        return area <= cloth_.usable_width().value() * room_.value();
    }
    lay<Unit> filled(std::vector<cloth_piece<Unit>> some) const {
        const lay_translation<Unit> whole(some, cloth_);
        whole_lay found = fullest_lay(whole.pieces, whole.cloth, whole.whole_below(room_), effort_);
        if (found.places.empty()) // each goes on it by itself
            return lay_out<Unit>({with_quantity(some.front(), 1)}, cloth_, effort_);
        for (cloth_piece<Unit>& p : some) // of which the use is made
            p.quantity = 0;
        for (const lay_place& p : found.places)
            ++some[p.piece].quantity;
        return whole.with_units(found);
    }
    static cloth_piece<Unit> with_quantity(cloth_piece<Unit> piece, std::int64_t n) {
        piece.quantity = n;
        return piece;
    }

    const std::vector<cloth_piece<Unit>>& pieces_;
    const bolt<Unit>& cloth_;
    length<Unit> room_;
    std::int64_t most_plies_;
    bool any_length_;
    lay_effort effort_;
    std::vector<cloth_spread<Unit>> spreads_;
};

template <length_unit Unit>
bool cut_alike(const bolt<Unit>& a, const bolt<Unit>& b) {
    return a.width == b.width && a.selvedge == b.selvedge && a.one_way == b.one_way &&
           a.repeat_along == b.repeat_along && a.repeat_across == b.repeat_across;
}

} // namespace detail

/// Sheets are added one by one; nothing is laid before all are.
template <length_unit Unit>
class cloth_order {
public:
    /// Throws lay_error for plies below 1, or a table that is below zero or shorter than what is left at its ends.
    cloth_order(const std::string& material, const bolt<Unit>& cloth, const purchase_rules<Unit>& rules,
                const spreading<Unit>& table = {}, const cloth_options& options = {})
        : cloth_(cloth), rules_(rules), table_(table), options_(options) {
        made_.material = material;
        made_.ends = table.ends;
        require_at_least<lay_error>(table.most_plies, std::int64_t{1}, "the number of plies cut at once");
        require_not_negative<lay_error>(table.table, "the length of the table");
        require_not_negative<lay_error>(table.ends, "what a ply has at its ends");
        if (table.table.value() > 0)
            require_at_most<lay_error>(table.ends, table.table, "what a ply has at its ends");
    }

    /// Returns its place in the lines. Throws as cloth_for where no piece of the sheet is of the cloth, and lay_error for no
    /// copies or more than `most_copies`, for another cloth than that of the sheets before it, and for a piece that is
    /// longer than the table.
    std::size_t add(const sheet<Unit>& s, std::int64_t copies = 1, const std::string& name = {}) {
        require_at_least<lay_error>(copies, std::int64_t{1}, "the number of copies");
        require_at_most<lay_error>(copies, most_copies, "the number of copies");
        sheet_cloth<Unit> c = detail::lying_single(detail::pieces_of(s, made_.material, cloth_, options_.lies));
        if (options_.may_join)
            c = detail::in_widths(s, std::move(c));
        detail::check_quantities(c.pieces);
        const std::string called = name.empty() ? s.name : name;
        take_cloth(c, called, detail::as_said(rules_, detail::said_of(s.cloths, made_.material)));
        for (cloth_piece<Unit>& p : c.pieces) {
            p.name = called + ": " + p.name;
            require_on_table(p);
        }
        made_.lines.push_back({called, copies, made_.pieces.size(), c.pieces.size(), std::move(c.joined)});
        for (cloth_piece<Unit>& p : c.pieces) {
            in_one_.push_back(p.quantity);
            copies_.push_back(copies);
            p.quantity *= copies;
            made_.pieces.push_back(std::move(p));
        }
        return made_.lines.size() - 1;
    }
    bool empty() const { return made_.lines.empty(); }

    /// Time grows as that of lay_out for each spread. Throws lay_error where nothing was added, or what is on one spread is
    /// more than a lay may have; and as lay_out and amount_to_buy.
    ordered_cloth<Unit> laid() const {
        if (made_.lines.empty())
            detail::refuse<lay_error>("an order has at least 1 sheet",
                                      refusal{.kind = fault::missing, .what = "the sheets of an order"});
        std::optional<ordered_cloth<Unit>> best;
        for (const bool turned : detail::ways_that_fit(made_.pieces, made_.bolt)) {
            ordered_cloth<Unit> made = in_way(turned);
            if (!best || best->length > made.length)
                best = std::move(made);
        }
        return *best;
    }

private:
    void take_cloth(const sheet_cloth<Unit>& c, const std::string& called, const purchase_rules<Unit>& rules) {
        if (made_.lines.empty()) {
            made_.bolt = c.bolt;
            made_.graduation = c.graduation;
            made_.before_wash = c.before_wash;
            rules_as_said_ = rules;
        } else if (!detail::cut_alike(c.bolt, made_.bolt) || rules.change != rules_as_said_.change ||
                   c.before_wash != made_.before_wash) {
            detail::refuse<lay_error>({"the ", made_.material, " of ", called, " is not the same as that of ",
                                       made_.lines[0].name, ": order it by itself"},
                                      {.kind = fault::disagree, .what = "the cloth of an order", .where = called});
        }
    }

    void require_on_table(const cloth_piece<Unit>& p) const {
        const length<Unit> room = table_.table - table_.ends;
        if (table_.table.value() > 0 && !detail::too_wide(p, made_.pieces.size(), made_.bolt) &&
            !detail::fits_remnant(p, made_.pieces.size(), remnant<Unit>{made_.bolt, room}))
            detail::refuse<lay_error>({p.name, ", ", p.size.height(), " long, does not go on a spread of ", room},
                                      {.kind = fault::no_room,
                                       .what = detail::sentence({"the length that ", p.name, " takes"}),
                                       .given = p.size.height(),
                                       .most = room,
                                       .where = p.name});
    }

    ordered_cloth<Unit> in_way(bool turned) const {
        ordered_cloth<Unit> made = made_;
        const std::vector<cloth_piece<Unit>> as_laid = detail::laid_so(made.pieces, turned);
        made.spreads = detail::spread_planner<Unit>(as_laid, made.bolt, table_, options_.effort).plan(copies_, in_one_);
        fraction area = 0;
        for (const cloth_piece<Unit>& p : made.pieces)
            area += detail::area_of(p) * p.quantity;
        std::int64_t plies = 0;
        for (cloth_spread<Unit>& s : made.spreads) {
            s.lay = detail::told_turned(std::move(s.lay), made.pieces, turned);
            made.length += s.lay.length * s.plies;
            plies += s.plies;
        }
        made.bound = length_of<Unit>(area / made.bolt.usable_width().value());
        made.bought = amount_to_buy(
            figure<Unit>().plus(made.length, "laid").plus_any(plies, table_.ends, "ends of plies"), rules_as_said_);
        return made;
    }

    bolt<Unit> cloth_;
    purchase_rules<Unit> rules_, rules_as_said_{};
    spreading<Unit> table_;
    cloth_options options_;
    ordered_cloth<Unit> made_;
    detail::piece_counts copies_, in_one_; ///< by piece
};

/// How it is spread, and what to buy.
template <length_unit Unit>
notion<Unit> listed(const ordered_cloth<Unit>& order) {
    notion<Unit> n(order.material);
    for (const order_line<Unit>& of : order.lines)
        n.number("copies of " + of.name, of.copies);
    n.figure("width of the cloth", order.before_wash.value_or(order.bolt.width));
    if (order.before_wash)
        n.figure("width when it is washed", order.bolt.width);
    n.figure("usable width", order.bolt.usable_width());
    for (std::size_t i = 0; i < order.spreads.size(); ++i)
        n.number("plies of spread " + std::to_string(i + 1), order.spreads[i].plies)
            .figure("length laid on spread " + std::to_string(i + 1), order.spreads[i].lay.length);
    n.figure("length laid on all plies together", order.length);
    n.figure("no order can take less than", order.bound);
    return n.figure("length to buy", order.bought.working);
}

/// For the maker of one sheet: on which spread each of its pieces is, how often on a ply, and so how many come off it.
template <length_unit Unit>
notion<Unit> listed_on(const ordered_cloth<Unit>& order, std::size_t line) {
    const order_line<Unit>& of = order.lines[line];
    notion<Unit> n(detail::name_in_order(order.material));
    n.number("copies of this sheet", of.copies);
    for (std::size_t k = of.first; k < of.first + of.count; ++k)
        for (std::size_t i = 0; i < order.spreads.size(); ++i)
            if (const std::int64_t places = order.places_of(k, i); places > 0)
                n.number(order.pieces[k].name.substr(of.name.size() + 2) + ", pieces off spread " +
                             std::to_string(i + 1),
                         places * order.spreads[i].plies);
    return n;
}

/// Half of what a ply has at its ends is trimmed off first, to straighten that end. What is to buy is said of the order.
template <length_unit Unit>
sheet_cloth<Unit> spread_of(const ordered_cloth<Unit>& order, std::size_t i) {
    const cloth_spread<Unit>& s = order.spreads.at(i);
    sheet_cloth<Unit> c{order.material, order.bolt, order.pieces, s.lay, {}, order.graduation};
    c.before_wash = order.before_wash;
    c.spread = {i + 1, order.spreads.size(), s.plies, s.lay.length + order.ends};
    c.bought.straightened = order.ends / 2;
    c.bought.washed = c.spread->each;
    return c;
}

} // namespace turncloth

#endif
