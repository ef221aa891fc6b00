// Reads C++ sources as far as the layer test needs: what they include, and how long and how wide their functions are.
//
//   source read{"panel/size.hpp", text};
//   includes_of(read);      // {{"turncloth/measure/place.hpp", 12}, ...}
//   functions_of(read);     // {{"half", 20, 3, 1}, ...}: name, first line, lines, parameters
//
// It knows the shapes that the formatter leaves, not the language: a head that ends in a brace and holds a list of
// parameters is a function, and a lambda belongs to the function around it.
#ifndef TURNCLOTH_TESTS_LAYERS_SOURCES_HPP
#define TURNCLOTH_TESTS_LAYERS_SOURCES_HPP

#include <algorithm>
#include <cctype>
#include <cstddef>
#include <regex>
#include <set>
#include <sstream>
#include <string>
#include <string_view>
#include <vector>

namespace layers {

struct source {
    std::string path; // from include/turncloth, or from the root for a user's file
    std::string text;
};

struct include_line {
    std::string of; // as "turncloth/panel/size.hpp"
    int line = 0;
};

struct function {
    std::string name;
    int line = 0;
    int lines = 0;
    int parameters = 0;
};

inline int lines_in(std::string_view text) { return static_cast<int>(std::count(text.begin(), text.end(), '\n')); }

inline std::vector<include_line> includes_of(const source& from) {
    static const std::regex include(R"(^\s*#include <(turncloth[^>]*)>)");
    std::vector<include_line> found;
    std::istringstream in(from.text);
    std::string line;
    for (int number = 1; std::getline(in, line); ++number) {
        std::smatch match;
        if (std::regex_search(line, match, include))
            found.push_back({match[1], number});
    }
    return found;
}

/// The text with its comments, literals and preprocessor lines made blank; every other character where it was.
inline std::string blanked(std::string text) {
    enum { code, comment, block, text_literal, character, directive } in = code;
    for (std::size_t i = 0; i != text.size(); ++i) {
        const char c = text[i];
        const char next = i + 1 != text.size() ? text[i + 1] : '\n';
        const bool was_code = in == code;
        if (in == code && c == '/' && next == '/')
            in = comment;
        else if (in == code && c == '/' && next == '*')
            in = block;
        else if (in == code && c == '"')
            in = text_literal;
        else if (in == code && c == '\'' && (i == 0 || std::isalnum(static_cast<unsigned char>(text[i - 1])) == 0))
            in = character; // not the separator of 1'000
        else if (in == code && c == '#')
            in = directive;
        else if ((in == text_literal && c == '"') || (in == character && c == '\'')) {
            text[i] = ' ';
            in = code;
            continue;
        } else if (in == block && c == '*' && next == '/') {
            text[i] = text[i + 1] = ' ';
            ++i;
            in = code;
            continue;
        } else if (c == '\n') {
            if (in == comment || (in == directive && text[i - 1] != '\\'))
                in = code;
            continue;
        }
        if ((in == text_literal || in == character) && !was_code && c == '\\') {
            text[i] = text[i + 1] = ' ';
            ++i;
        } else if (in != code) {
            text[i] = ' ';
        }
    }
    return text;
}

/// Where the bracket that opens at `at` is closed; the size of the text where it is not.
inline std::size_t closing(std::string_view text, std::size_t at) {
    const char open = text[at];
    const char close = open == '(' ? ')' : open == '{' ? '}' : '>';
    int depth = 0;
    for (std::size_t i = at; i != text.size(); ++i) {
        if (text[i] == open)
            ++depth;
        else if (text[i] == close && (close != '>' || text[i - 1] != '-') && --depth == 0)
            return i;
    }
    return text.size();
}

/// Commas outside any bracket, and one more; none for a list that is empty.
inline int items_in(std::string_view list) {
    if (std::all_of(list.begin(), list.end(), [](unsigned char c) { return std::isspace(c) != 0; }))
        return 0;
    int items = 1;
    int depth = 0;
    for (std::size_t i = 0; i != list.size(); ++i) {
        const char c = list[i];
        if (c == '(' || c == '{' || c == '[' || c == '<')
            ++depth;
        else if (c == ')' || c == '}' || c == ']' || (c == '>' && i != 0 && list[i - 1] != '-'))
            --depth;
        else if (c == ',' && depth == 0)
            ++items;
    }
    return items;
}

/// What a head declares: a name with its number of parameters, or no name where it is no function's head.
inline function declared_by(std::string_view head) {
    static const std::set<std::string_view> no_function{"if",       "for",      "while",        "switch",   "catch",
                                                        "requires", "noexcept", "decltype",     "explicit", "alignas",
                                                        "return",   "sizeof",   "static_assert"};
    for (std::size_t i = 0; i != head.size(); ++i) {
        if (head[i] == '<' && head.substr(0, i).ends_with("template "))
            i = closing(head, i);
        else if (head[i] == '=' && !head.substr(0, i).ends_with("operator") &&
                 !head.substr(0, i).ends_with("operator="))
            return {}; // what follows is a value
        if (i >= head.size() || head[i] != '(')
            continue;
        std::size_t from = i;
        while (from != 0 && head[from - 1] == ' ')
            --from;
        const std::size_t to = from;
        while (from != 0 && (std::isalnum(static_cast<unsigned char>(head[from - 1])) != 0 || head[from - 1] == '_'))
            --from;
        std::string_view name = head.substr(from, to - from);
        const std::size_t close = closing(head, i);
        if (close == head.size())
            return {};
        const std::size_t sign = head.substr(0, i).rfind("operator");
        if (sign != std::string_view::npos && head.substr(sign, i - sign).find(' ') == std::string_view::npos) {
            name = head.substr(sign, i - sign);
            if (name == "operator" && head.substr(i, 2) == "()") { // the call operator: its list comes after
                const std::size_t list = head.find('(', i + 2);
                return {"operator()", 0, 0, items_in(head.substr(list + 1, closing(head, list) - list - 1))};
            }
        }
        if (!name.empty() && !no_function.contains(name))
            return {std::string(name), 0, 0, items_in(head.substr(i + 1, close - i - 1))};
        i = close;
    }
    return {};
}

/// Whether a colon here ends "public:" or the like.
inline bool ends_in_access(std::string_view text) {
    return text.ends_with("public") || text.ends_with("protected") || text.ends_with("private");
}

/// Every function that the source defines. Those inside a function are part of it.
inline std::vector<function> functions_of(const source& from) {
    const std::string text = blanked(from.text);
    std::vector<function> found;
    std::size_t head = 0; // where the current declaration starts
    int brackets = 0;     // a brace or a semicolon within brackets ends nothing
    for (std::size_t i = 0; i != text.size(); ++i) {
        const char c = text[i];
        if (c == '(' || c == ')')
            brackets += c == '(' ? 1 : -1;
        if (brackets != 0)
            continue;
        if (c == ';' || c == '}' || (c == ':' && ends_in_access(std::string_view(text).substr(head, i - head))))
            head = i + 1;
        if (c != '{')
            continue;
        const std::string_view declaration(text.data() + head, i - head);
        function f = declared_by(declaration);
        const std::size_t last = declaration.find_last_not_of(" \n");
        const bool initialiser = last != std::string_view::npos && declaration[last] == ','; // of a member, in braces
        if (!f.name.empty() && !initialiser) {
            const std::size_t start = head + std::min(declaration.find_first_not_of(" \n"), declaration.size());
            const std::size_t end = closing(text, i);
            f.line = lines_in(std::string_view(text).substr(0, start)) + 1;
            f.lines = lines_in(std::string_view(text).substr(start, end - start)) + 1;
            found.push_back(f);
            i = end == text.size() ? end - 1 : end;
        }
        head = i + 1;
    }
    return found;
}

} // namespace layers

#endif
