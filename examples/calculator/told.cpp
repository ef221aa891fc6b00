#include "told.hpp"

#include <turncloth/measure/fraction.hpp>
#include <turncloth/measure/printable.hpp>
#include <turncloth/measure/write.hpp>

#include <array>
#include <cstddef>
#include <string>
#include <string_view>
#include <utility>

namespace calculator {

using namespace turncloth;

namespace {

/// Lists within lists lie less than so deep in any question.
constexpr int deepest = 24;

constexpr std::array<std::string_view, 10> kinds = {"too_small",    "too_large", "no_room",    "disagree",
                                                    "missing",      "repeated",  "unsuitable", "unreadable",
                                                    "does_not_fit", "undefined"};

json shown(const amount& a) {
    json j;
    if (a.denominator != 0)
        j["exact"] = to_text(fraction(a.numerator, a.denominator));
    j["near"] = a.nearest;
    if (!a.unit.empty())
        j["unit"] = a.unit;
    return j;
}

} // namespace

std::string said(const json& j) { return j.dump(-1, ' ', false, json::error_handler_t::replace); }

json no_answer(const std::string& why, const refusal& facts, const std::string& field) {
    json j = {{"sentence", sound_text(why)}, {"kind", kinds.at(static_cast<std::size_t>(facts.kind))}};
    if (!field.empty())
        j["field"] = sound_text(field);
    if (!facts.what.empty())
        j["what"] = sound_text(facts.what);
    for (const auto& [name, value] :
         {std::pair{"given", facts.given}, std::pair{"least", facts.least}, std::pair{"most", facts.most}})
        if (value)
            j[name] = shown(*value);
    if (facts.index)
        j["index"] = *facts.index;
    if (!facts.where.empty())
        j["where"] = sound_text(facts.where);
    return {{"refused", j}};
}

json read_question(std::string_view text) {
    bool deep = false;
    json j = json::parse(
        text,
        [&](int depth, json::parse_event_t, json&) {
            deep = deep || depth > deepest;
            return depth <= deepest;
        },
        false);
    if (deep || !j.is_object())
        throw field_error("", "a question is a JSON object", {.kind = fault::unreadable, .what = "a question"});
    return j;
}

} // namespace calculator
