#include "calculation.hpp"

#include <turncloth/measure/write.hpp>

#include <algorithm>

namespace calculator {

using namespace turncloth;

namespace {

/// A list longer than that is refused before it is read.
constexpr std::size_t most_in_a_list = 1000;

amount whole(std::int64_t n) { return {.numerator = n, .denominator = 1, .nearest = static_cast<double>(n)}; }

} // namespace

void given::require_sewable(const std::string& field, const any_length& typed, const length<metre>& l) {
    if (abs(l) > 200_m)
        throw field_error(
            field, "expected at most 200 m: it was " + to_text(typed),
            {.kind = fault::too_large, .what = "a length", .given = amount_of(l), .most = amount_of(200_m)});
}

std::int64_t given::count(const std::string& name, std::int64_t most) const {
    const std::string typed = text(name);
    refusal facts{.kind = fault::unreadable, .what = "a number of things", .least = whole(1), .most = whole(most)};
    try {
        const fraction n = read_fraction(typed);
        if (is_whole(n) && n >= 1 && n <= most)
            return floor(n);
        facts.kind = n < 1 ? fault::too_small : n > most ? fault::too_large : fault::unsuitable;
        facts.given = amount{numerator(n), denominator(n), to_double(n), {}};
    } catch (const error&) {
        facts.kind = typed.empty() ? fault::missing : fault::unreadable;
    }
    throw field_error(within_ + name,
                      "expected a whole number from 1 to " + std::to_string(most) + ": it was \"" + typed + "\"",
                      std::move(facts));
}

std::size_t given::choice(const std::string& name, std::span<const std::string_view> choices) const {
    const std::string typed = has(name) ? text(name) : std::string(choices.front());
    std::string all;
    for (std::size_t i = 0; i < choices.size(); ++i) {
        if (choices[i] == typed)
            return i;
        all.append(i == 0 ? "" : i + 1 == choices.size() ? " or " : ", ").append(choices[i]);
    }
    throw field_error(within_ + name, "expected " + all + ": it was \"" + typed + "\"",
                      {.kind = fault::unsuitable, .what = name, .where = typed});
}

bool given::holds(const std::string& name) const {
    if (!has(name))
        return false;
    const json& j = members_.at(name);
    if (!j.is_boolean())
        throw field_error(within_ + name, "expected true or false", {.kind = fault::unsuitable, .what = name});
    return j.get<bool>();
}

std::vector<given> given::list(const std::string& name) const {
    const json& all = members_.at(name);
    if (!all.is_array() || all.size() > most_in_a_list)
        throw field_error(within_ + name, "expected a list of at most " + std::to_string(most_in_a_list) + " objects",
                          {.kind = fault::unsuitable, .what = name, .most = whole(most_in_a_list)});
    std::vector<given> parts;
    for (std::size_t i = 0; i < all.size(); ++i) {
        const std::string path = within_ + name + "/" + std::to_string(i);
        if (!all[i].is_object())
            throw field_error(path, "expected an object", {.kind = fault::unsuitable, .what = name, .index = i});
        parts.emplace_back(all[i], path + "/");
    }
    return parts;
}

given given::part(const std::string& name) const {
    if (!has(name))
        return given(json::object(), within_ + name + "/");
    if (!members_.at(name).is_object())
        throw field_error(within_ + name, "expected an object", {.kind = fault::unsuitable, .what = name});
    return given(members_.at(name), within_ + name + "/");
}

void reply::set(std::string_view path, json value) {
    json* at = &data_;
    for (std::size_t slash = path.find('/'); slash != std::string_view::npos; slash = path.find('/')) {
        at = &(*at)[std::string(path.substr(0, slash))];
        path.remove_prefix(slash + 1);
    }
    (*at)[std::string(path)] = std::move(value);
}

void reply::line(const std::string& label, const std::string& figure, const std::string& working) {
    json one = {{"label", sound_text(label)}, {"figure", sound_text(figure)}};
    if (!working.empty())
        one["working"] = sound_text(working);
    data_["lines"].push_back(std::move(one));
}

} // namespace calculator
