// Lengths and figures as JSON, as sheet/json.hpp writes them.
//
//   to_json(length)  to_json(figure)  to_json(lengths)      nlohmann::ordered_json
//
//   to_json(12.5_cm) == nlohmann::ordered_json{{"exact", "12.5"}, {"unit", "cm"}};
//
// A figure of more than one term has its working besides, as a line of text and as "terms": of each what it is, its sign,
// how often it is counted, its parts, and its value, which with its sign is added up to the figure.
#ifndef TURNCLOTH_SHEET_JSON_LENGTHS_HPP
#define TURNCLOTH_SHEET_JSON_LENGTHS_HPP

#include <turncloth/measure/printable.hpp>
#include <turncloth/measure/working.hpp>
#include <turncloth/measure/write.hpp>

#include <nlohmann/json.hpp>

#include <string>
#include <vector>

namespace turncloth {

namespace detail {

/// Not the name that a program may have given to its own kind.
using json = nlohmann::ordered_json;

inline json sound_texts(const std::vector<std::string>& all) {
    json j = json::array();
    for (const std::string& text : all)
        j.push_back(sound_text(text));
    return j;
}

} // namespace detail

template <length_unit Unit>
nlohmann::ordered_json to_json(length<Unit> l) {
    return {{"exact", number_text(l)}, {"unit", unit_name<Unit>}};
}

namespace detail {

template <length_unit Unit>
json json_of(const term<Unit>& t) {
    const bool taken_off = t.times() < 0;
    json parts = json::array();
    for (const length<Unit>& part : t.parts())
        parts.push_back(turncloth::to_json(part));
    return {{"what", sound_text(std::string(t.what().text()))},
            {"sign", taken_off ? "-" : "+"},
            {"times", to_text(abs(t.times()))},
            {"parts", parts},
            {"value", turncloth::to_json(taken_off ? -t.value() : t.value())}};
}

} // namespace detail

template <length_unit Unit>
nlohmann::ordered_json to_json(const figure<Unit>& f) {
    detail::json j = to_json(f.value());
    if (f.terms().size() < 2)
        return j;
    j["working"] = sound_text(to_text(f));
    for (const term<Unit>& t : f.terms())
        j["terms"].push_back(detail::json_of(t));
    return j;
}

template <length_unit Unit>
nlohmann::ordered_json to_json(const std::vector<length<Unit>>& all) {
    detail::json j = detail::json::array();
    for (const length<Unit>& l : all)
        j.push_back(to_json(l));
    return j;
}

} // namespace turncloth

#endif
