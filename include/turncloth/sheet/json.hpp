// A sheet as JSON, for programs that show or store it.
//
//   to_json(sheet)         nlohmann::ordered_json, the members as below
//
//   std::puts(to_json(s).dump(2).c_str());
//
// A length is an object with its exact value and its unit, {"exact": "12 1/2", "unit": "in"}, as text that
// read_fraction and read_length read back; JSON's numbers could not hold a third. A figure has its working besides,
// and the terms of that as data. sheet/sheet.schema.json describes such documents, member by member:
//
//   {"turncloth_sheet": 1, "name", "finished": {"width", "height"}, "asked": {"width", "height"}, "ruler",
//    "pieces": [{"name", "material", "count", "film", "frays", "lies", "inside", "cut": {"width", "height"}, "edges": {"top", ...},
//                "lines": [{"kind", "what", "finish", "parallel_to", "from_cut_edge", "begins", "ends"}]}],
//    "cloths": [{"material", "width", "selvedge", "one_way", "folded", "washed", "join", "repeat_along", "repeat_across", "change": {}, "on_hand": []}],
//    "meetings": [{"longer", "shorter", "from", "fullness", "marks": [{"longer", "shorter"}]}],
//    "notions": [{"name", "details": [{"what", "amount"} or {"what", "count"}]}],
//    "steps": [{"pieces", "steps": [{"verb", "places": [{"piece", "side", "from", "at", ...}]}], "check", "sentences"}],
//    "making": {"rows", "compartments", "contents"}, "cautions": [], "warnings": [], "bulk": []}
//
// A line that belongs to a finish names it. "making" is there where the project says how it is made. The thread is one of
// the notions.
//
// "ruler" is the graduation that the sheet was worked out on, and "asked" the size where that ruler changed it; both are
// left out of an exact sheet. Texts are sound UTF-8 whatever was given (sound_text in measure/printable.hpp), so that dump() throws for none.
//
// Included by itself; it needs the header of JSON for Modern C++ (Debian: nlohmann-json3-dev), the library does not.
#ifndef TURNCLOTH_SHEET_JSON_HPP
#define TURNCLOTH_SHEET_JSON_HPP

#include <turncloth/sheet/json_lengths.hpp>
#include <turncloth/sheet/sheet.hpp>
#ifndef TURNCLOTH_COMPILED
#include <turncloth/measure/printable.hpp>
#include <turncloth/sheet/detail/json_of_making.hpp>
#include <turncloth/sheet/detail/json_of_parts.hpp>
#include <turncloth/sheet/detail/json_of_steps.hpp>
#endif

#include <nlohmann/json.hpp>

namespace turncloth {

/// Of the format: raised where a member changes its meaning or goes, not where one is added.
inline constexpr int sheet_version = 1;

template <detail::compiled_unit Unit>
nlohmann::ordered_json to_json(const sheet<Unit>& s);

#ifndef TURNCLOTH_COMPILED
template <detail::compiled_unit Unit>
nlohmann::ordered_json to_json(const sheet<Unit>& s) {
    const auto all = [](const auto& list) {
        detail::json j = detail::json::array();
        for (const auto& item : list)
            j.push_back(detail::json_of(item));
        return j;
    };
    detail::json j = {
        {"turncloth_sheet", sheet_version}, {"name", sound_text(s.name)}, {"finished", detail::json_of(s.finished)}};
    if (s.asked)
        j["asked"] = detail::json_of(*s.asked);
    if (s.graduation.value() != 0)
        j["ruler"] = to_json(s.graduation);
    j["pieces"] = all(s.pieces);
    if (!s.outlines.empty())
        j["outlines"] = all(s.outlines);
    if (!s.cloths.empty())
        j["cloths"] = all(s.cloths);
    j.update({{"meetings", all(s.meetings)}, {"notions", all(s.notions)}, {"steps", detail::json_of_steps(s.steps)}});
    if (s.design)
        j["making"] = detail::json_of_making(*s.design);
    j.update({{"cautions", all(s.cautions)}, {"warnings", detail::sound_texts(s.warnings)}, {"bulk", all(s.bulk)}});
    return j;
}
#endif

TURNCLOTH_ONCE(detail::json to_json(const sheet<inch>&));
TURNCLOTH_ONCE(detail::json to_json(const sheet<centimetre>&));

} // namespace turncloth

#endif
