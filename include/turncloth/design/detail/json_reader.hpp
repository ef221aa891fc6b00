// A design from JSON: every member that is missing, unknown, or not of its kind is a fault with its place.
#ifndef TURNCLOTH_DESIGN_DETAIL_JSON_READER_HPP
#define TURNCLOTH_DESIGN_DETAIL_JSON_READER_HPP

#include <turncloth/design/detail/members.hpp>
#include <turncloth/design/project_design.hpp>
#include <turncloth/measure/printable.hpp>
#include <turncloth/panel/names.hpp>
#include <turncloth/sheet/json_lengths.hpp>

#include <nlohmann/json.hpp>

#include <algorithm>
#include <cstddef>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <type_traits>
#include <utility>
#include <vector>

namespace turncloth::detail {

/// The member that says which version of this format a file is in, and what it says.
inline constexpr std::string_view design_format = "turncloth_design";
inline constexpr int design_version = 1;

/// Far more than a project needs; lists within lists lie less than so deep.
inline constexpr std::size_t most_in_a_file = 1'000'000;
inline constexpr int deepest_in_a_file = 20;

/// A member's name in a JSON Pointer (RFC 6901, section 3).
inline std::string pointer_to(std::string_view name) {
    std::string all = "/";
    for (const char c : name)
        all += c == '~' ? "~0" : (c == '/' ? "~1" : std::string(1, c));
    return fit_to_print(all);
}

/// Of the byte of that number, from 1: ", in line 3 at character 7".
inline std::string line_and_column(std::string_view text, std::size_t byte) {
    const std::string_view before = text.substr(0, byte == 0 ? 0 : byte - 1);
    const std::size_t line = before.rfind('\n'), begins = line == std::string_view::npos ? 0 : line + 1;
    return ", in line " + std::to_string(std::count(before.begin(), before.end(), '\n') + 1) + " at character " +
           std::to_string(characters_in(before.substr(begins)) + 1);
}

/// What stands in the file; a fault where it is no JSON, or a name stands twice in one object.
inline json json_of_file(std::string_view text, std::vector<design_fault>& faults) {
    if (text.size() > most_in_a_file) {
        faults.push_back({"", "a file has at most " + std::to_string(most_in_a_file) + " bytes", {}});
        return {};
    }
    std::vector<std::set<std::string>> names;
    bool deep = false;
    const auto look = [&](int depth, json::parse_event_t what, json& parsed) {
        if (what == json::parse_event_t::object_start)
            names.emplace_back();
        else if (what == json::parse_event_t::object_end)
            names.pop_back();
        else if (what == json::parse_event_t::key && !names.back().insert(parsed.get<std::string>()).second)
            faults.push_back(
                {"", in_quotes(fit_to_print(parsed.get<std::string>())) + " stands twice in one object", {}});
        return deep = deep || depth > deepest_in_a_file, depth <= deepest_in_a_file;
    };
    json read;
#ifdef BOOST_NO_EXCEPTIONS
    read = json::parse(text, look, false);
    if (read.is_discarded() && !deep)
        faults.push_back({"", "it is no JSON (RFC 8259)", {}});
#else
    try {
        read = json::parse(text, look);
    } catch (const json::parse_error& stopped) {
        faults.push_back({"", "it is no JSON (RFC 8259)" + line_and_column(text, stopped.byte), {}});
    }
#endif
    if (deep)
        faults = {{"", "its lists and objects lie too deep within one another", {}}};
    return read;
}

class design_reader {
public:
    explicit design_reader(std::vector<design_fault>& faults) : faults_(faults) {}

    project_design read(const json& j) {
        project_design d;
        read(j, d, "");
        return d;
    }

    template <class T>
    void must(std::string_view name, T& member, std::string_view about) {
        if (!here_->contains(name))
            fault("it is missing", path_ + pointer_to(name));
        may(name, member, about);
    }
    template <class T>
    void may(std::string_view name, T& member, std::string_view) {
        known_.emplace_back(name);
        if (const auto found = here_->find(name); found != here_->end())
            read(*found, member, path_ + pointer_to(name));
    }

private:
    void fault(std::string why, const std::string& path) { faults_.push_back({path, std::move(why), {}}); }
    bool is(bool so, const char* what, const std::string& path) {
        if (!so)
            fault(std::string("expected ") + what, path);
        return so;
    }

    template <design_record Record>
    void read(const json& j, Record& to, const std::string& path) {
        if (!is(j.is_object(), "an object, { }", path))
            return;
        const json* const here = std::exchange(here_, &j);
        std::string before = std::exchange(path_, path);
        std::vector<std::string> known;
        known.swap(known_);
        if constexpr (std::is_same_v<Record, project_design>)
            read_version(j);
        members(*this, to);
        for (const auto& [name, member] : j.items())
            if (std::find(known_.begin(), known_.end(), name) == known_.end())
                fault("there is no such member here: there are " + enumerated(known_), path_ + pointer_to(name));
        known_ = std::move(known);
        path_ = std::move(before);
        here_ = here;
    }
    /// "$schema" is for editors.
    void read_version(const json& j) {
        known_ = {"$schema", std::string(design_format)};
        const auto version = j.find(design_format);
        if (version == j.end())
            fault("it is missing: a file of this format has \"" + std::string(design_format) +
                      "\": " + std::to_string(design_version),
                  pointer_to(design_format));
        else
            is(*version == design_version, "1, the version of this format", pointer_to(design_format));
    }

    template <class T>
    void read(const json& j, std::vector<T>& to, const std::string& path) {
        if (!is(j.is_array(), "a list, [ ]", path) ||
            !is(j.size() <= most_in_a_design, "at most 1000 items in a list", path))
            return;
        for (std::size_t i = 0; i < j.size(); ++i)
            read(j[i], to.emplace_back(), path + "/" + std::to_string(i));
    }
    template <class T>
    void read(const json& j, std::optional<T>& to, const std::string& path) {
        read(j, to.emplace(), path);
    }
    void read(const json& j, std::string& to, const std::string& path) {
        if (is(j.is_string() && !j.get_ref<const std::string&>().empty(), "a text that is not empty", path))
            to = j.get<std::string>();
    }
    void read(const json& j, design_words& to, const std::string& path) { read(j, to.text, path); }
    void read(const json& j, design_part& to, const std::string& path) { read(j, to.text, path); }
    template <wanted W>
    void read(const json& j, expression_for<W>& to, const std::string& path) {
        to = expression_for<W>(expression_text(j, path));
    }
    void read(const json& j, bool& to, const std::string& path) {
        if (is(j.is_boolean(), "true or false", path))
            to = j.get<bool>();
    }
    template <class Choice>
        requires std::is_enum_v<Choice>
    void read(const json& j, Choice& to, const std::string& path) {
        const auto words = words_of(Choice{});
        const auto found = std::find_if(words.begin(), words.end(), [&](std::string_view w) { return j == w; });
        if (found == words.end())
            return fault("expected one of " + listed(words), path);
        to = static_cast<Choice>(found - words.begin());
    }
    template <form_kind Kind>
    void read(const json& j, filled_form<Kind>& to, const std::string& path) {
        if (!is(j.is_object(), "an object whose \"is\" names a form", path))
            return;
        for (const auto& [name, given] : j.items())
            if (name == "is")
                read(given, to.is, path + "/is");
            else
                to.with[name] = expression(expression_text(given, path + pointer_to(name)));
        if (!j.contains("is"))
            fault("it is missing", path + "/is");
    }
    std::string expression_text(const json& j, const std::string& path) {
        if (j.is_number_integer())
            return j.dump();
        std::string text;
        if (is(j.is_string() || j.is_number_integer(), "an expression as a text, or a whole number", path))
            read(j, text, path);
        return text;
    }
    template <class Words>
    static std::string listed(const Words& words) {
        std::vector<std::string> all(words.size());
        std::transform(words.begin(), words.end(), all.begin(), in_quotes);
        return enumerated(all);
    }

    std::vector<design_fault>& faults_;
    const json* here_ = nullptr; ///< the object whose members are read
    std::string path_;
    std::vector<std::string> known_; ///< members of it
};

} // namespace turncloth::detail

#endif
