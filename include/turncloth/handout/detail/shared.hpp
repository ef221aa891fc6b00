// What the parts of a handout share: how its drawings are made, and amounts as a maker buys, ticks off and adds them.
//
//   handout_drawing()                     the options of every drawing in it
//   working_text(figure, ruler)           a sum, exact in the unit that is read
//   as_sentence("stitching ...")          "Stitching ... ."
//   closing_sum(places, whole)           "3 + 4 1/2 + 3 = 10 1/2 in": what lies between lines, as the whole
#ifndef TURNCLOTH_HANDOUT_DETAIL_SHARED_HPP
#define TURNCLOTH_HANDOUT_DETAIL_SHARED_HPP

#include <turncloth/measure/working.hpp>
#include <turncloth/measure/write.hpp>
#include <turncloth/page/paper.hpp>
#include <turncloth/panel/size.hpp>
#include <turncloth/sheet/sheet.hpp>
#include <turncloth/sheet/sold_amounts.hpp>

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
