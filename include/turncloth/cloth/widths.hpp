// Which cloth to buy: the widths sold compared.
//
//   std::vector<length<Unit>> widths_sold<Unit>()                   36, 44, 45, 54, 60 in; 110, 140, 150 cm
//   std::vector<width_choice<Unit>> compare_widths(pieces, bolts)   least cloth by area first, what will not do last
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
/// the pieces do not go come last, in the order offered. A cloth that is none (no width, no usable width) throws. It costs
/// a lay for each cloth, and more pieces than lay_out takes are refused.
template <length_unit Unit>
std::vector<width_choice<Unit>> compare_widths(const std::vector<cloth_piece<Unit>>& pieces,
                                               const std::type_identity_t<std::vector<bolt<Unit>>>& offered,
                                               const lay_effort& effort = {}) {
    std::vector<width_choice<Unit>> choices;
    for (std::size_t i = 0; i < offered.size(); ++i) {
        detail::check_bolt(offered[i]);
        width_choice<Unit> choice;
        choice.offered = i;
        std::vector<bool> ways = detail::ways_together<Unit>(pieces, {offered[i]});
        if (const auto why = detail::keep_ways_that_fit(ways, pieces, offered[i]))
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

} // namespace turncloth

#endif
