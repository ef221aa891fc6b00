// Text from outside, and what of it is fit for a line of print.
//
//   fit_to_print(text)     one line of sound UTF-8, whatever is given
//   sound_text(text)       UTF-8, whatever is given, for formats that write controls in a way of their own
//   unfit_at(text)         where the first character is that fit_to_print would change; none where there is none
//
//   to_text(sheet) writes every line by the first, to_json(sheet) every text by the second; a program that takes names asks before:
//   if (unfit_at(typed)) refuse(typed);
//
// Unfit are bytes that are not UTF-8, the controls of ISO/IEC 6429 (those that drive a terminal, and every line end), the
// line ends of Unicode, and its marks that turn the direction of what follows (UAX #9: embeddings, overrides, isolates).
#ifndef TURNCLOTH_MEASURE_PRINTABLE_HPP
#define TURNCLOTH_MEASURE_PRINTABLE_HPP

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

namespace turncloth {

namespace detail {

/// A character of UTF-8 and its number.
struct character {
    std::string_view bytes{}; ///< one to four; empty where they are no character
    unsigned long code = 0;
};

/// The first of a text that is not empty. Longer forms than need be, surrogates and what lies beyond U+10FFFF are broken.
constexpr character first_of(std::string_view text) {
    const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
    const std::size_t size = byte(0) < 0x80 ? 1 : (byte(0) < 0xE0 ? 2 : (byte(0) < 0xF0 ? 3 : 4));
    if (size > text.size() || (byte(0) >= 0x80 && byte(0) < 0xC2) || byte(0) > 0xF4)
        return {};
    unsigned long code = size == 1 ? byte(0) : byte(0) & (0xFFU >> (size + 1));
    for (std::size_t i = 1; i < size; ++i) {
        if ((byte(i) & 0xC0U) != 0x80U)
            return {};
        code = code << 6U | (byte(i) & 0x3FU);
    }
    constexpr unsigned long shortest[] = {0, 0x80, 0x800, 0x10000};
    if (code < shortest[size - 1] || (code >= 0xD800 && code <= 0xDFFF) || code > 0x10FFFF)
        return {};
    return {text.substr(0, size), code};
}

constexpr bool is_fit(const character& c) {
    const auto within = [&](unsigned long first, unsigned long last) { return c.code >= first && c.code <= last; };
    const bool control = within(0, 0x1F) || within(0x7F, 0x9F), ends_line = within(0x2028, 0x2029);
    const bool turns = within(0x202A, 0x202E) || within(0x2066, 0x2069);
    const bool no_character = within(0xFFFE, 0xFFFF);
    return !c.bytes.empty() && !control && !ends_line && !turns && !no_character;
}

} // namespace detail

/// Counted in bytes from 0.
constexpr std::optional<std::size_t> unfit_at(std::string_view text) {
    for (std::size_t at = 0; at < text.size();) {
        if (text[at] >= ' ' && text[at] <= '~') { // nearly all are
            ++at;
            continue;
        }
        const detail::character c = detail::first_of(text.substr(at));
        if (!detail::is_fit(c))
            return at;
        at += c.bytes.size();
    }
    return std::nullopt;
}

/// A space for each tab and line end, U+FFFD for whatever else is unfit, and for each byte that is part of no character.
inline std::string fit_to_print(std::string_view text) {
    std::string all;
    while (const std::optional<std::size_t> at = unfit_at(text)) {
        const std::string_view unfit = detail::first_of(text.substr(*at)).bytes;
        const bool blank = unfit == "\t" || unfit == "\n" || unfit == "\r";
        all.append(text, 0, *at).append(blank ? " " : "\xEF\xBF\xBD");
        text.remove_prefix(*at + (unfit.empty() ? 1 : unfit.size()));
    }
    return all.append(text);
}

/// U+FFFD for each byte that is part of no character, all else as it was.
inline std::string sound_text(std::string_view text) {
    std::string all;
    std::size_t kept = 0; // up to here it is in `all`
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t size = detail::first_of(text.substr(at)).bytes.size();
        if (size == 0) {
            all.append(text, kept, at - kept).append("\xEF\xBF\xBD");
            kept = at + 1;
        }
        at += size == 0 ? 1 : size;
    }
    return all.append(text, kept);
}

} // namespace turncloth

#endif
