#include "answer.hpp"

#include "calculation.hpp"
#include "pieces_typed.hpp"
#include "told.hpp"
#include <turncloth/measure/read.hpp>

#include <algorithm>
#include <array>
#include <cstddef>
#include <iterator>
#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

using namespace turncloth;
using namespace calculator;

namespace {

/// What was typed with its unit written out, so that it stays what it was when the page goes over to another unit. What
/// has one already, or cannot be read, stays as it is.
std::string with_unit(const std::string& typed, bool metric) {
    const auto in_cm = try_read_length<centimetre>(typed);
    const auto in_inches = try_read_length<inch>(typed);
    if (!in_cm || !in_inches || as<inch>(*in_cm) == *in_inches)
        return typed;
    return typed.substr(0, typed.find_last_not_of(' ') + 1) + (metric ? " cm" : " in");
}

std::string pieces_with_units(const std::string& typed, bool metric) {
    std::string all;
    for (const typed_row& row : rows_typed(typed)) {
        all += all.empty() ? "" : "\n";
        all += row.is_read ? row.count + " of " + with_unit(row.width, metric) + " x " + with_unit(row.height, metric) +
                                 (row.may_turn ? " may turn" : "")
                           : row.said;
    }
    return all;
}

json units_written(const calculation& c, const given& g, bool metric) {
    json fields = json::object();
    for (const field& f : std::span(c.asks, c.fields()))
        if (const std::string name(f.name);
            g.has(name) && f.holds != field::kind::count && f.holds != field::kind::choice)
            fields[name] = f.holds == field::kind::pieces ? pieces_with_units(g.text(name), metric)
                                                          : with_unit(g.text(name), metric);
    return fields;
}

json listed() {
    static constexpr std::array<const char*, 4> names = {"length", "count", "pieces", "choice"};
    json all = json::array();
    for (const auto* at = listed_calculation::first(); at != nullptr; at = at->next()) {
        const calculation& c = **at;
        json asks = json::array();
        for (const field& f : std::span(c.asks, c.fields())) {
            json one = {{"name", f.name},
                        {"label", f.label},
                        {"kind", names.at(static_cast<std::size_t>(f.holds))},
                        {"first", {{"in", f.inches}, {"cm", f.centimetres}}}};
            for (const std::string_view choice : f.choices)
                one["choices"].push_back(choice);
            asks.push_back(std::move(one));
        }
        all.push_back({{"name", c.name}, {"title", c.title}, {"about", c.about}, {"asks", asks}});
    }
    return {{"calculations", all}};
}

/// A member that the calculation does not know would be left out of account unseen.
void require_known(const calculation& c, const json& question) {
    const auto asked = [&](const std::string& name) {
        const auto is = [&](std::string_view known) { return !known.empty() && known == name; };
        return name == "ask" || name == "units" || std::any_of(std::begin(c.takes), std::end(c.takes), is) ||
               std::any_of(std::begin(c.asks), std::end(c.asks), [&](const field& f) { return is(f.name); });
    };
    for (auto member = question.begin(); member != question.end(); ++member)
        if (const std::string& name = member.key(); !asked(name))
            throw field_error(name, "\"" + std::string(c.name) + "\" does not ask for \"" + name + "\"",
                              {.kind = fault::unsuitable, .what = "a member of a question", .where = name});
}

bool is_metric(const given& g) {
    const std::string units = g.text("units");
    if (!units.empty() && units != "in" && units != "cm")
        throw field_error("units", "expected in or cm: it was \"" + units + "\"",
                          {.kind = fault::unsuitable, .what = "units", .where = units});
    return units == "cm";
}

const calculation& named(const std::string& name) {
    for (const auto* at = listed_calculation::first(); at != nullptr; at = at->next())
        if ((**at).name == name)
            return **at;
    throw field_error("ask", "there is no such calculation: \"" + name + "\"",
                      {.kind = fault::missing, .what = "a calculation", .where = name});
}

json answered(const json& question) {
    const given g(question);
    const std::string ask = g.text("ask");
    if (ask == "list")
        return listed();
    const bool metric = is_metric(g);
    if (ask == "with_units")
        return units_written(named(g.text("of")), g, metric);
    const calculation& c = named(ask);
    require_known(c, question);
    reply r;
    (metric ? c.in_centimetres : c.in_inches)(g, r);
    json cautions = json::array();
    for (const std::string_view sentence : c.cautions)
        if (!sentence.empty())
            cautions.push_back(sentence);
    r.set("cautions", std::move(cautions));
    return r.data();
}

} // namespace

std::string answer(std::string_view question) {
    try {
        return said(answered(read_question(question)));
    } catch (const field_error& e) {
        return said(no_answer(e.what(), e.facts(), e.field()));
    } catch (const error& e) {
        return said(no_answer(e.what(), e.facts()));
    }
}
