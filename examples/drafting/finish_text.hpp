// The finish of an edge as a drafting file names it: words of the trade, then its lengths.
//
//   read_finish<U>(text)     "seam 1.5", "double-turned hem 1; 3"; throws turncloth::error
//   read_corner_shape(text)  "mitred", "reflected in edge after", ...
//   split(text)              the fields between semicolons, blanks round them taken off
//
//   read_finish<centimetre>("single-turned hem 2").allowance() == 2_cm;
#ifndef TURNCLOTH_EXAMPLES_DRAFTING_FINISH_TEXT_HPP
#define TURNCLOTH_EXAMPLES_DRAFTING_FINISH_TEXT_HPP

#include <turncloth.hpp>
#include <turncloth/panel/outline.hpp>

#include <cstddef>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace drafting {

using namespace turncloth;

inline std::string_view trimmed(std::string_view text) {
    const std::size_t first = text.find_first_not_of(" \t\r");
    return first == std::string_view::npos ? std::string_view()
                                           : text.substr(first, text.find_last_not_of(" \t\r") - first + 1);
}

inline std::vector<std::string_view> split(std::string_view text) {
    std::vector<std::string_view> fields;
    for (std::size_t end; (end = text.find(';')) != std::string_view::npos; text.remove_prefix(end + 1))
        fields.push_back(trimmed(text.substr(0, end)));
    fields.push_back(trimmed(text));
    return fields;
}

template <length_unit Unit>
struct finish_words {
    using lengths = std::span<const length<Unit>>;

    std::string_view words, wants; ///< its name, and the lengths that follow it
    std::size_t count;
    finish<Unit> (*make)(lengths);
};

template <length_unit Unit>
inline constexpr finish_words<Unit> known_finishes[] = {
    {"raw", "nothing", 0, [](auto) { return finish<Unit>(); }},
    {"seam", "allowance", 1, [](auto l) { return seam(l[0]); }},
    {"single-turned hem", "depth", 1, [](auto l) { return single_turned_hem(l[0]); }},
    {"double-turned hem", "first turn; depth", 2, [](auto l) { return double_turned_hem(l[0], l[1]); }},
    {"heading", "depth; turned under", 2, [](auto l) { return heading(l[0], l[1]); }},
    {"casing", "depth; channel; turned under", 3, [](auto l) { return casing(l[0], l[1], l[2]); }},
    {"self-binding", "width", 1, [](auto l) { return self_binding(l[0]); }},
    {"separate binding", "width", 1, [](auto l) { return separate_binding(l[0]); }},
    {"French seam", "first; second", 2, [](auto l) { return french_seam(l[0], l[1]); }},
    {"felled over", "width; turned under", 2, [](auto l) { return felled_over(l[0], l[1]); }},
    {"felled under", "allowance", 1, [](auto l) { return felled_under(l[0]); }},
    {"lapped over", "turned under", 1, [](auto l) { return lapped_over(l[0]); }},
    {"lapped under", "lap", 1, [](auto l) { return lapped_under(l[0]); }},
};

/// "raw, seam, ...", by the member that is a name.
template <class Table, class Name>
std::string listed(const Table& known, Name name) {
    std::string names;
    for (const auto& k : known)
        names.append(names.empty() ? "" : ", ").append(k.*name);
    return names;
}

/// Words that name no finish, or too few or too many lengths for it.
[[noreturn]] inline void refuse(const std::string& sentence) { throw error(sentence, {fault::unreadable, "a finish"}); }

template <length_unit Unit>
finish<Unit> read_finish(std::string_view text) {
    for (const auto& known : known_finishes<Unit>) {
        if (!text.starts_with(known.words) || (text.size() > known.words.size() && text[known.words.size()] != ' '))
            continue;
        const std::string_view rest = trimmed(text.substr(known.words.size()));
        std::vector<length<Unit>> lengths;
        if (!rest.empty())
            for (const std::string_view field : split(rest))
                lengths.push_back(read_length<Unit>(field));
        if (lengths.size() != known.count)
            refuse("a " + std::string(known.words) + " needs " + std::string(known.wants) + " after it: \"" +
                   std::string(text) + "\" has " + std::to_string(lengths.size()) +
                   (lengths.size() == 1 ? " length" : " lengths"));
        return known.make(lengths);
    }
    refuse("there is no finish \"" + std::string(text) + "\": there are " +
           listed(known_finishes<Unit>, &finish_words<Unit>::words));
}

struct shape_words {
    std::string_view words;
    corner_shape meant;
};
inline constexpr shape_words known_shapes[] = {{"mitred", corner_shape::mitred},
                                               {"squared to edge before", corner_shape::squared_to_edge_before},
                                               {"squared to edge after", corner_shape::squared_to_edge_after},
                                               {"reflected in edge before", corner_shape::reflected_in_edge_before},
                                               {"reflected in edge after", corner_shape::reflected_in_edge_after}};

inline corner_shape read_corner_shape(std::string_view text) {
    for (const shape_words& known : known_shapes)
        if (text == known.words)
            return known.meant;
    refuse("there is no corner shape \"" + std::string(text) + "\": there are " +
           listed(known_shapes, &shape_words::words));
}

} // namespace drafting

#endif
