// Names and lists as they are printed.
//
//   excerpt(text)         at most 60 characters of it
//   named(name)           the same, in quotation marks where it could be read as something else
//   enumerated(words)     "left, right and top"
//   capital(words)        "Left, right and top"
//
// A name is the user's: it may hold a comma and read as two pieces, or be that of an edge.
#ifndef TURNCLOTH_PANEL_NAMES_HPP
#define TURNCLOTH_PANEL_NAMES_HPP

#include <turncloth/panel/panel.hpp>

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace turncloth {

namespace detail {

/// A longer text is cut before a character of UTF-8 and goes on in dots.
inline std::string excerpt(std::string_view text) {
    const std::string_view shown = beginning_of(text, 60);
    return std::string(shown) + (shown.size() < text.size() ? "..." : "");
}

inline std::string in_quotes(std::string_view text) { return '"' + excerpt(text) + '"'; }

inline std::string named(std::string_view name) {
    bool plain = name.find_first_of(",;:\"") == std::string_view::npos && !name.empty();
    for (const edge e : all_edges)
        plain = plain && name != name_of(e);
    return plain ? excerpt(name) : in_quotes(name);
}

/// As a sentence begins.
inline std::string capital(std::string words) {
    if (!words.empty() && words[0] >= 'a' && words[0] <= 'z')
        words[0] = static_cast<char>(words[0] - 'a' + 'A');
    else if (words.starts_with("\xC3") && words.size() > 1 && static_cast<unsigned char>(words[1]) >= 0xA0)
        words[1] = static_cast<char>(words[1] - 0x20); // a Latin letter with a mark
    return words;
}

inline std::string enumerated(const std::vector<std::string>& words) {
    std::string all;
    for (std::size_t i = 0; i < words.size(); ++i)
        all.append(i == 0 ? "" : (i + 1 == words.size() ? word(" and ") : ", ")).append(words[i]);
    return all;
}

} // namespace detail

} // namespace turncloth

#endif
