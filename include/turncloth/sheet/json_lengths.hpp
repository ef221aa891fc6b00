// Lengths and figures as JSON, as sheet/json.hpp writes them.
//
//   to_json(length)  to_json(figure)  to_json(lengths)      nlohmann::ordered_json
//
//   to_json(12.5_cm) == nlohmann::ordered_json{{"exact", "12.5"}, {"unit", "cm"}};
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

template <length_unit Unit>
nlohmann::ordered_json to_json(const figure<Unit>& f) {
    detail::json j = to_json(f.value());
    if (f.terms().size() > 1)
        j["working"] = sound_text(to_text(f));
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
