// Text as it enters a program, from files that anybody may have written.
//
//   require_text(path, content)     the content; throws file_error where the whole file is not text as we read it
//   why_unfit(value)                why a name or another value cannot be used; empty where it can
//
//   if (const std::string why = why_unfit(name); !why.empty()) refuse("row 3, column 4: " + why);
#ifndef TURNCLOTH_EXAMPLES_COMMAND_PLAIN_TEXT_HPP
#define TURNCLOTH_EXAMPLES_COMMAND_PLAIN_TEXT_HPP

#include "files.hpp"
#include <turncloth/measure/error.hpp>
#include <turncloth/measure/printable.hpp>

#include <cstddef>
#include <string>
#include <string_view>

namespace allotment {

/// In characters: more does not go on a line of a sheet.
inline constexpr std::size_t longest_value = 100;

namespace detail {

inline std::string hexadecimal(unsigned long number, std::size_t digits) {
    std::string all;
    for (std::size_t i = digits; i-- > 0;)
        all += "0123456789ABCDEF"[number >> (4 * i) & 0xFU];
    return all;
}

} // namespace detail

inline std::string require_text(const fs::path& path, std::string content) {
    if (content.starts_with("\xFF\xFE") || content.starts_with("\xFE\xFF"))
        throw file_error("use", path, "it is in UTF-16, as its first bytes say: save it as UTF-8");
    if (content.find('\0') != std::string::npos)
        throw file_error("use", path, "it holds bytes of zero, as no text in UTF-8 does: save it as UTF-8");
    return content;
}

inline std::string why_unfit(std::string_view value) {
    if (turncloth::detail::characters_in(value) > longest_value)
        return "it is longer than " + std::to_string(longest_value) + " characters";
    const auto at = turncloth::unfit_at(value);
    if (!at)
        return {};
    const std::string which =
        "its character " + std::to_string(turncloth::detail::characters_in(value.substr(0, *at)) + 1);
    const auto found = turncloth::detail::first_of(value.substr(*at));
    if (found.bytes.empty())
        return which + " is not UTF-8 (byte " + detail::hexadecimal(static_cast<unsigned char>(value[*at]), 2) +
               "): save the file as UTF-8";
    if (found.bytes == "\n" || found.bytes == "\r")
        return which + " ends the line: is a quote missing?";
    return which + " (U+" + detail::hexadecimal(found.code, 4) + ") cannot be printed";
}

} // namespace allotment

#endif
