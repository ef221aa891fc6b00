// Amounts as shops sell them, in each unit for its own shop.
//
//   sold_text(length, how, ruler)         "1 1/8 yd (1.1 m)": each edition rounded up for its own shop
//   cloth_text(purchase, ruler)           the same of cloth
//   bought_by_the_yard(purchase)  bought_by_the_metre(purchase)
#ifndef TURNCLOTH_SHEET_SOLD_AMOUNTS_HPP
#define TURNCLOTH_SHEET_SOLD_AMOUNTS_HPP

#include <turncloth/cloth/purchase.hpp>
#include <turncloth/measure/rounding.hpp>
#include <turncloth/measure/write.hpp>
#include <turncloth/sheet/notion.hpp>

#include <string>

namespace turncloth::detail {

/// Yards where it is a yard or more in eighths of them, as it is then sold.
inline std::string in_yards(const length<inch>& l, const ruler& by) {
    const length<inch> eighth = eighths_of_a_yard<inch>.step;
    const bool by_the_yard = l >= as<inch>(length_of<yard>(1)) || l == up_to(l, eighth);
    return by_the_yard && l == up_to(l, eighth) ? to_text(as<yard>(l)) : to_text(nearest_to(l, by.inches, by.halfway));
}
/// Metres from one on, to the centimetre.
inline std::string in_metres(const length<centimetre>& l, const ruler& by) {
    const bool long_ = l >= length_of<centimetre>(100);
    return long_ ? to_text(as<metre>(nearest_to(l, length_of<centimetre>(1), by.halfway)))
                 : to_text(nearest_to(l, by.centimetres, by.halfway));
}

/// What is cut off a roll is rounded up to what is cut off for a buyer, in each unit from the exact length; all else is
/// told as the ruler shows it.
template <length_unit Unit>
std::string sold_text(length<Unit> needed, sold_as how, const ruler& by) {
    if (how != sold_as::off_a_roll && as<inch>(needed) < as<inch>(length_of<yard>(1)))
        return to_text(needed, by);
    const bool up = how == sold_as::off_a_roll;
    return as_shown(
        by,
        [&] {
            const auto l = as<inch>(needed);
            return in_yards(up ? up_to(l, eighths_of_a_yard<inch>.step) : l, by);
        },
        [&] {
            const auto l = as<centimetre>(needed);
            return in_metres(up ? up_to(l, ten_centimetres<centimetre>.step) : l, by);
        });
}

/// Of cloth, in the unit of the sheet as its own rules have it.
template <length_unit Unit>
length<inch> bought_by_the_yard(const purchase<Unit>& p) {
    return metric_unit<Unit> ? up_to(as<inch>(p.needed), eighths_of_a_yard<inch>.step) : as<inch>(p.bought);
}
template <length_unit Unit>
length<centimetre> bought_by_the_metre(const purchase<Unit>& p) {
    return metric_unit<Unit> ? as<centimetre>(p.bought)
                             : up_to(as<centimetre>(p.needed), ten_centimetres<centimetre>.step);
}

template <length_unit Unit>
std::string cloth_text(const purchase<Unit>& p, const ruler& by) {
    return as_shown(
        by, [&] { return in_yards(bought_by_the_yard(p), by); }, [&] { return in_metres(bought_by_the_metre(p), by); });
}

} // namespace turncloth::detail

#endif
