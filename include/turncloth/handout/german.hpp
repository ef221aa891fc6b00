// The handout in German: all that it says but the names and the sentences of the project itself.
//
//   german()               for handout_options::words
//   german(own)            with texts for the project's own sentences, by their English
//
//   const document d = handout_of(s, {canvas}, {.words = german({{"middle", "Mitte"}})});
//   to_html(d);            // <html lang="de">: "fertig 53,3 × 33 cm (21 × 13 in)"
//
// A decimal has its comma (DIN 1333), and a number its unit after a space (DIN 5008: value from memory, as the former). A
// thing is one or many (the plural rules of CLDR: one and other), each with a sentence of its own. Names of pieces and
// cloths stay as they were given; those of marks and notions too, but where a text has them for a key. A name stands in
// German quotation marks wherever a sentence goes on beyond it, and edges are named by where they lie (oben, links): so
// nothing that is not known here has to be declined. Terms are common practice in the trade; stitch types are named after
// DIN 61400 (value from memory).
//
// Included by itself: it is not part of turncloth.hpp.
#ifndef TURNCLOTH_HANDOUT_GERMAN_HPP
#define TURNCLOTH_HANDOUT_GERMAN_HPP

#include <turncloth/handout/detail/german_cautions.hpp>
#include <turncloth/handout/detail/german_cutting.hpp>
#include <turncloth/handout/detail/german_drawing.hpp>
#include <turncloth/handout/detail/german_handout.hpp>
#include <turncloth/handout/detail/german_sheet.hpp>
#include <turncloth/handout/detail/german_steps.hpp>
#include <turncloth/handout/detail/german_text.hpp>
#include <turncloth/measure/language.hpp>

#include <string>
#include <utility>

namespace turncloth {

inline language german(const phrase_table& own = {}) {
    phrase_table all;
    const auto add = [&](const auto& texts) {
        for (const auto& [key, text] : texts)
            all.push_back({std::string(key), std::string(text)});
    };
    add(detail::german_steps);
    add(detail::german_cautions);
    add(detail::german_drawing);
    add(detail::german_cutting);
    add(detail::german_handout);
    add(detail::german_sheet);
    add(detail::german_text);
    all.insert(all.end(), own.begin(), own.end());
    return {"de", {.decimal_mark = ",", .metric_first = true}, std::move(all)};
}

} // namespace turncloth

#endif
