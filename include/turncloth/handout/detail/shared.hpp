// What the parts of a handout share: how its drawings are made, and amounts as a maker buys, ticks off and adds them.
//
//   handout_drawing()                     the options of every drawing in it
//   sold_text(length, how, ruler)         "1 1/8 yd (1.1 m)": each edition rounded up for its own shop
//   cloth_text(purchase, ruler)           the same of cloth
//   working_text(figure, ruler)           a sum, exact in the unit that is read
//   as_sentence("stitching ...")          "Stitching ... ."
//   closing_sum(places, whole)           "3 + 4 1/2 + 3 = 10 1/2 in": what lies between lines, as the whole
#ifndef TURNCLOTH_HANDOUT_DETAIL_SHARED_HPP
#define TURNCLOTH_HANDOUT_DETAIL_SHARED_HPP

#include <turncloth/cloth/purchase.hpp>
#include <turncloth/measure/rounding.hpp>
#include <turncloth/measure/working.hpp>
#include <turncloth/measure/write.hpp>
#include <turncloth/page/paper.hpp>
#include <turncloth/panel/size.hpp>
#include <turncloth/sheet/sheet.hpp>

#include <algorithm>
#include <string>
#include <vector>

namespace turncloth::detail {

/// As wide as a page has room for beside its margins, and still read on a screen that a hand holds.
inline drawing_options handout_drawing() {
    return {.on = paper::custom(length_of<millimetre>(150), length_of<millimetre>(170)),
            .for_screen = true,
            .in_document = true};
}

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

/// A decimal writes each inch exactly as centimetres, but no fraction of an inch that a rule has is a centimetre: what was
/// worked out in those stays in them.
template <length_unit Unit>
std::string working_text(const figure<Unit>& f, const ruler& by) {
    if (metric_unit<Unit> || by.shows != units_shown::centimetres)
        return to_text(f);
    figure<centimetre> metric;
    for (const term<Unit>& t : f.terms()) {
        std::vector<length<centimetre>> parts;
        for (const length<Unit>& part : t.parts())
            parts.push_back(as<centimetre>(part));
        metric.plus(term<centimetre>(t.times(), parts, t.what()));
    }
    return to_text(metric);
}

/// A refusal or a warning as a sentence that stands by itself.
inline std::string as_sentence(std::string said) {
    said = capital(std::move(said));
    return said.empty() || said.back() == '.' ? said : said + ".";
}

/// `places` are distances from one edge of a side that is `whole` long. Lines at one place have nothing between them.
template <length_unit Unit>
std::string closing_sum(std::vector<length<Unit>> places, length<Unit> whole) {
    std::sort(places.begin(), places.end());
    places.push_back(whole);
    std::string all;
    length<Unit> last;
    for (const length<Unit>& p : places) {
        if (p != last)
            all.append(all.empty() ? "" : " + ").append(number_text(p - last));
        last = p;
    }
    return all.append(" = ").append(to_text(whole));
}

} // namespace turncloth::detail

#endif
