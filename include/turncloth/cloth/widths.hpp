// Which cloth to buy: the widths sold compared, and what is on hand used first.
//
//   std::vector<length<U>> widths_sold<U>()                      36, 44, 45, 54, 60 in; 110, 140, 150 cm
//   std::vector<width_choice<U>> compare_widths(pieces, bolts)   the least cloth by area first; what will not do last
//   cloth_plan<U> lay_with_remnants(pieces, remnants, bolt)      remnants filled in turn, the rest laid on new cloth
//   std::vector<off_cut<U>> off_cuts(lay, bolt, across, along)   what is left over, big enough to keep
//
//   auto best = compare_widths<inch>(pieces, {{.width = 44_in}, {.width = 60_in}}).front();
//
// Widths sold are common practice.
#ifndef TURNCLOTH_CLOTH_WIDTHS_HPP
#define TURNCLOTH_CLOTH_WIDTHS_HPP

#include <turncloth/cloth/lay.hpp>
#include <turncloth/cloth/off_cuts.hpp>

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
template <length_unit U>
std::vector<length<U>> widths_sold() {
    std::vector<length<U>> widths;
    if constexpr (metric_unit<U>) {
        for (const int w : {110, 140, 150})
            widths.push_back(as<U>(length_of<centimetre>(w)));
    } else {
        for (const int w : {36, 44, 45, 54, 60})
            widths.push_back(as<U>(length_of<inch>(w)));
    }
    return widths;
}

/// What one of the cloths offered comes to. `lay` is empty where the pieces do not go on it, and `why_not` says why.
template <length_unit U>
struct width_choice {
    std::size_t offered = 0; ///< index in the list of cloths
    std::optional<cloth_lay<U>> lay;
    std::string why_not;
};

/// Lays the pieces on each cloth offered. Least area of cloth first, the narrower first among equals; those on which
/// the pieces do not go come last, in the order offered. A cloth that is none (no width, no usable width) throws.
template <length_unit U>
std::vector<width_choice<U>> compare_widths(const std::vector<cloth_piece<U>>& pieces,
                                            const std::type_identity_t<std::vector<bolt<U>>>& offered,
                                            const lay_effort& effort = {}) {
    std::vector<width_choice<U>> choices;
    for (std::size_t i = 0; i < offered.size(); ++i) {
        detail::check_bolt(offered[i]);
        width_choice<U> choice;
        choice.offered = i;
        for (std::size_t p = 0; p < pieces.size() && choice.why_not.empty(); ++p)
            choice.why_not = detail::why_too_wide(pieces[p], p, offered[i]);
        if (choice.why_not.empty())
            choice.lay = lay_out(pieces, offered[i], effort);
        choices.push_back(std::move(choice));
    }
    const auto area = [&](const width_choice<U>& c) { return offered[c.offered].width * c.lay->length; };
    std::stable_sort(choices.begin(), choices.end(), [&](const width_choice<U>& a, const width_choice<U>& b) {
        if (!a.lay || !b.lay)
            return a.lay && !b.lay;
        if (area(a) != area(b))
            return area(a) < area(b);
        return offered[a.offered].width < offered[b.offered].width;
    });
    return choices;
}

/// A piece of cloth on hand.
template <length_unit U>
struct remnant {
    bolt<U> cloth;
    turncloth::length<U> length{};
};

/// `on_remnants` in the order of the remnants; `bought` is the lay on new cloth, of length nothing if none is needed.
/// In all of them a place names its piece by its index in the list given.
template <length_unit U>
struct cloth_plan {
    std::vector<cloth_lay<U>> on_remnants;
    cloth_lay<U> bought;
};

namespace detail {

/// Some of the pieces, as many as still wanted, with their indices in the whole list.
template <length_unit U>
struct piece_selection {
    std::vector<cloth_piece<U>> pieces;
    std::vector<std::size_t> index;

    template <class Fits>
    piece_selection(const std::vector<cloth_piece<U>>& all, const std::vector<std::int64_t>& wanted, Fits fits) {
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

    cloth_lay<U> in_all(cloth_lay<U> part, std::size_t all) const {
        for (cloth_place<U>& place : part.places)
            place.piece = index[place.piece];
        std::vector<std::int64_t> spare(all, 0);
        for (std::size_t i = 0; i < part.spare.size(); ++i)
            spare[index[i]] = part.spare[i];
        part.spare = std::move(spare);
        return part;
    }
};

template <length_unit U>
bool fits_remnant(const cloth_piece<U>& piece, std::size_t index, const remnant<U>& on) {
    if (piece.on_fold && !on.cloth.folded)
        return false;
    if (!why_too_wide(piece, index, on.cloth).empty())
        return false;
    const fraction repeat = on.cloth.repeat_along.value();
    const fraction match = piece.match_along.value();
    const fraction start = repeat > 0 ? match - repeat * fraction(floor(match / repeat)) : fraction(0);
    if (piece.size.height().value() + start <= on.length.value() && across_as_laid(piece) <= on.cloth.usable_width())
        return true;
    return may_turn(piece, on.cloth) && piece.size.width() <= on.length &&
           piece.size.height() <= on.cloth.usable_width();
}

template <length_unit U>
cloth_lay<U> fill_remnant(const std::vector<cloth_piece<U>>& pieces, std::vector<std::int64_t>& wanted,
                          const remnant<U>& on, const lay_effort& effort) {
    const piece_selection<U> some(pieces, wanted,
                                  [&](const auto& piece, std::size_t i) { return fits_remnant(piece, i, on); });
    if (some.pieces.empty())
        return {};
    const whole_lay<U> whole(some.pieces, on.cloth);
    lay_effort quiet = effort;
    quiet.improved = nullptr;
    const lay found = lay_on_remnant(whole.pieces, whole.cloth, whole.scale.whole_below(on.length.value()), quiet);
    std::vector<cloth_piece<U>> came_out = some.pieces;
    for (cloth_piece<U>& piece : came_out)
        piece.quantity = 0;
    for (const lay_place& place : found.places)
        came_out[place.piece].quantity += on.cloth.folded && !came_out[place.piece].on_fold ? 2 : 1;
    for (std::size_t i = 0; i < came_out.size(); ++i) {
        came_out[i].quantity = std::min(came_out[i].quantity, some.pieces[i].quantity);
        wanted[some.index[i]] -= came_out[i].quantity;
    }
    cloth_lay<U> result = with_units(found, whole, came_out, on.cloth);
    result.use = result.use * result.length.value() / on.length.value();
    return some.in_all(std::move(result), pieces.size());
}

} // namespace detail

/// Fills the remnants in turn with as much, by area, as the effort finds how to, and lays the rest on new cloth. The
/// use of a remnant counts all of it. Throws as lay_out does if a piece goes on neither remnants nor new cloth.
template <length_unit U>
cloth_plan<U> lay_with_remnants(const std::vector<cloth_piece<U>>& pieces,
                                const std::type_identity_t<std::vector<remnant<U>>>& remnants,
                                const std::type_identity_t<bolt<U>>& cloth, const lay_effort& effort = {}) {
    std::vector<std::int64_t> wanted;
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        detail::check_quantity(pieces[i], i);
        wanted.push_back(pieces[i].quantity);
    }
    cloth_plan<U> plan;
    for (const remnant<U>& on : remnants) {
        detail::check_bolt(on.cloth);
        if (on.length.value() <= 0)
            detail::refuse<unlayable_error>("a remnant " + to_text(on.length) + " long: the length must be above 0");
        plan.on_remnants.push_back(detail::fill_remnant(pieces, wanted, on, effort));
    }
    const detail::piece_selection<U> rest(pieces, wanted, [](const auto&, std::size_t) { return true; });
    if (!rest.pieces.empty())
        plan.bought = rest.in_all(lay_out(rest.pieces, cloth, effort), pieces.size());
    return plan;
}

/// A rectangle of cloth left over.
template <length_unit U>
struct off_cut {
    length<U> x{}, y{}, across{}, along{};

    friend bool operator==(const off_cut&, const off_cut&) = default;
};

/// Rectangles left over on the usable width within the length used, at least so big, the largest first; none overlaps
/// another. Each is as large as it can be where it is; together they need not be the most that could be had.
template <length_unit U>
std::vector<off_cut<U>> off_cuts(const cloth_lay<U>& found, const std::type_identity_t<bolt<U>>& cloth,
                                 length<U> least_across, length<U> least_along) {
    std::vector<free_rectangle<fraction>> taken;
    for (const cloth_place<U>& p : found.places)
        taken.push_back({p.x.value(), p.y.value(), (p.x + p.across).value(), (p.y + p.along).value()});
    std::vector<off_cut<U>> kept;
    for (const auto& f : free_rectangles<fraction>(taken, cloth.usable_width().value(), found.length.value(),
                                                   least_across.value(), least_along.value()))
        kept.push_back(
            {length_of<U>(f.left), length_of<U>(f.near), length_of<U>(f.right - f.left), length_of<U>(f.far - f.near)});
    return kept;
}

} // namespace turncloth

#endif
