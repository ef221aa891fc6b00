// Which cloth to buy: the widths sold compared, and what is on hand used first.
//
//   std::vector<length<Unit>> widths_sold<Unit>()                   36, 44, 45, 54, 60 in; 110, 140, 150 cm
//   std::vector<width_choice<Unit>> compare_widths(pieces, bolts)   least cloth by area first, what will not do last
//   cloth_plan<Unit> lay_with_remnants(pieces, remnants, bolt)      remnants filled in turn, the rest laid on new cloth
//
//   auto best = compare_widths<inch>(pieces, {{.width = 44_in}, {.width = 60_in}}).front();
//
// Widths sold are common practice.
#ifndef TURNCLOTH_CLOTH_WIDTHS_HPP
#define TURNCLOTH_CLOTH_WIDTHS_HPP

#include <turncloth/cloth/lay.hpp>

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <type_traits>
#include <utility>
#include <vector>

namespace turncloth {

/// Widths that cloth is commonly sold in, rising: in the metric units 110, 140 and 150 cm, in the others 36, 44, 45, 54
/// and 60 in.
template <length_unit Unit>
std::vector<length<Unit>> widths_sold() {
    std::vector<length<Unit>> widths;
    if constexpr (metric_unit<Unit>) {
        for (const int w : {110, 140, 150})
            widths.push_back(as<Unit>(length_of<centimetre>(w)));
    } else {
        for (const int w : {36, 44, 45, 54, 60})
            widths.push_back(as<Unit>(length_of<inch>(w)));
    }
    return widths;
}

/// What one of the cloths offered comes to. `lay` is empty where the pieces do not go on it, and `why_not` says why.
template <length_unit Unit>
struct width_choice {
    std::size_t offered = 0; ///< index in the list of cloths
    std::optional<turncloth::lay<Unit>> lay;
    std::string why_not;
};

/// Lays the pieces on each cloth offered. Least area of cloth first, the narrower first among equals; those on which
/// the pieces do not go come last, in the order offered. A cloth that is none (no width, no usable width) throws.
template <length_unit Unit>
std::vector<width_choice<Unit>> compare_widths(const std::vector<cloth_piece<Unit>>& pieces,
                                               const std::type_identity_t<std::vector<bolt<Unit>>>& offered,
                                               const lay_effort& effort = {}) {
    std::vector<width_choice<Unit>> choices;
    for (std::size_t i = 0; i < offered.size(); ++i) {
        detail::check_bolt(offered[i]);
        width_choice<Unit> choice;
        choice.offered = i;
        for (std::size_t p = 0; p < pieces.size() && choice.why_not.empty(); ++p)
            if (const auto why = detail::too_wide(pieces[p], p, offered[i]))
                choice.why_not = why->what();
        if (choice.why_not.empty())
            choice.lay = lay_out(pieces, offered[i], effort);
        choices.push_back(std::move(choice));
    }
    const auto area = [&](const width_choice<Unit>& c) { return offered[c.offered].width * c.lay->length; };
    std::stable_sort(choices.begin(), choices.end(), [&](const width_choice<Unit>& a, const width_choice<Unit>& b) {
        if (!a.lay || !b.lay)
            return a.lay && !b.lay;
        if (area(a) != area(b))
            return area(a) < area(b);
        return offered[a.offered].width < offered[b.offered].width;
    });
    return choices;
}

/// A piece of cloth on hand.
template <length_unit Unit>
struct remnant {
    bolt<Unit> cloth;
    turncloth::length<Unit> length{};
};

/// `on_remnants` in the order of the remnants; `bought` is the lay on new cloth, of length nothing if none is needed.
/// In all of them a place names its piece by its index in the list given.
template <length_unit Unit>
struct cloth_plan {
    std::vector<lay<Unit>> on_remnants;
    lay<Unit> bought;
};

namespace detail {

/// Some of the pieces, as many as still wanted, with their indices in the whole list.
template <length_unit Unit>
struct piece_selection {
    std::vector<cloth_piece<Unit>> pieces;
    std::vector<std::size_t> index;

    template <class Fits>
    piece_selection(const std::vector<cloth_piece<Unit>>& all, const std::vector<std::int64_t>& wanted, Fits fits) {
        for (std::size_t i = 0; i < all.size(); ++i) {
            if (wanted[i] <= 0 || !fits(all[i], i))
                continue;
            pieces.push_back(all[i]);
            pieces.back().quantity = wanted[i];
            if (pieces.back().name.empty())
                pieces.back().name = named(all[i], i);
            index.push_back(i);
        }
    }

    lay<Unit> in_all(lay<Unit> part, std::size_t all) const {
        for (cloth_place<Unit>& place : part.places)
            place.piece = index[place.piece];
        std::vector<std::int64_t> spare(all, 0);
        for (std::size_t i = 0; i < part.spare.size(); ++i)
            spare[index[i]] = part.spare[i];
        part.spare = std::move(spare);
        return part;
    }
};

template <length_unit Unit>
bool fits_remnant(const cloth_piece<Unit>& piece, std::size_t index, const remnant<Unit>& on) {
    if ((piece.on_fold && !on.cloth.folded) || too_wide(piece, index, on.cloth))
        return false;
    const length<Unit> start = into_repeat(piece.match_along, on.cloth.repeat_along);
    if (start + piece.size.height() <= on.length && across_as_laid(piece) <= on.cloth.usable_width())
        return true;
    return may_turn(piece, on.cloth) && piece.size.width() <= on.length &&
           piece.size.height() <= on.cloth.usable_width();
}

template <length_unit Unit>
lay<Unit> fill_remnant(const std::vector<cloth_piece<Unit>>& pieces, std::vector<std::int64_t>& wanted,
                       const remnant<Unit>& on, const lay_effort& effort) {
    piece_selection<Unit> some(pieces, wanted,
                               [&](const auto& piece, std::size_t i) { return fits_remnant(piece, i, on); });
    if (some.pieces.empty())
        return {};
    const lay_translation<Unit> whole(some.pieces, on.cloth);
    const whole_lay found = fullest_lay(whole.pieces, whole.cloth, whole.whole_below(on.length), effort);
    std::vector<std::int64_t> came_out(some.pieces.size(), 0);
    for (const lay_place& place : found.places)
        came_out[place.piece] += on.cloth.folded && !some.pieces[place.piece].on_fold ? 2 : 1;
    for (std::size_t i = 0; i < came_out.size(); ++i) {
        some.pieces[i].quantity = std::min(came_out[i], some.pieces[i].quantity); // of which with_units makes the use
        wanted[some.index[i]] -= some.pieces[i].quantity;
    }
    lay<Unit> made = whole.with_units(found);
    made.use = made.use * made.length.value() / on.length.value();
    return some.in_all(std::move(made), pieces.size());
}

} // namespace detail

/// Fills the remnants in turn with as much, by area, as the effort finds how to, and lays the rest on new cloth. The
/// use of a remnant counts all of it. Throws as lay_out does if a piece goes on neither remnants nor new cloth.
template <length_unit Unit>
cloth_plan<Unit> lay_with_remnants(const std::vector<cloth_piece<Unit>>& pieces,
                                   const std::type_identity_t<std::vector<remnant<Unit>>>& remnants,
                                   const std::type_identity_t<bolt<Unit>>& cloth, const lay_effort& effort = {}) {
    detail::check_quantities(pieces);
    std::vector<std::int64_t> wanted;
    for (const cloth_piece<Unit>& piece : pieces)
        wanted.push_back(piece.quantity);
    cloth_plan<Unit> plan;
    for (const remnant<Unit>& on : remnants) {
        detail::check_bolt(on.cloth);
        require_more_than_zero<lay_error>(on.length, "the length of a remnant");
        plan.on_remnants.push_back(detail::fill_remnant(pieces, wanted, on, effort));
    }
    const detail::piece_selection<Unit> rest(pieces, wanted, [](const auto&, std::size_t) { return true; });
    if (!rest.pieces.empty())
        plan.bought = rest.in_all(lay_out(rest.pieces, cloth, effort), pieces.size());
    return plan;
}

} // namespace turncloth

#endif
