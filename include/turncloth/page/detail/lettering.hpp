// Words before they are set: their characters, their width, and how they are broken into lines.
//
//   each_character(text, use)                    U+FFFD for bytes that no XML document may hold
//   lettering(measure)                           sets with the widths of a measure, or else with an estimate
//   .width(words, size)  .shortened(words, size, width)  .wrapped(words, size, width, lines)
//   unbroken("1 1/2 in (3.8 cm)")  plain(words)
//   text_block  .add(by, words, style, width)  .height()  .draw(page, at)     lines one below the other
//
//   const lettering by(nullptr);
//   by.wrapped("two pockets of canvas", 3, 20);
//
// Of a text no more than `longest_text` bytes are set, the rest being dots. The work grows with the length of a text.
#ifndef TURNCLOTH_PAGE_DETAIL_LETTERING_HPP
#define TURNCLOTH_PAGE_DETAIL_LETTERING_HPP

#include <turncloth/measure/printable.hpp>
#include <turncloth/measure/require.hpp>
#include <turncloth/page/page.hpp>

#include <algorithm>
#include <array>
#include <cstddef>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace turncloth::detail {

inline constexpr double body_size = 3, small_size = 2.6;            // sizes of text, in mm
inline constexpr double line_height = 3.8, small_line_height = 3.2; // baseline to baseline

/// The first character of `text`, one to four bytes of UTF-8; empty where they are not a character of XML 1.0.
inline std::string_view first_character(std::string_view text) {
    if (text.front() >= ' ' && text.front() <= '~') // nearly all are, and a width is asked for again and again
        return text.substr(0, 1);
    const character c = first_of(text);
    const bool space = c.code == '\t' || c.code == '\n' || c.code == '\r';
    return (c.code < 0x20 && !space) || c.code == 0xFFFE || c.code == 0xFFFF ? std::string_view() : c.bytes;
}

/// Calls `use` with each character in turn, U+FFFD in place of each byte that belongs to none.
template <class Use>
void each_character(std::string_view text, Use use) {
    while (!text.empty()) {
        const std::string_view c = first_character(text);
        use(c.empty() ? std::string_view("\xEF\xBF\xBD") : c);
        text.remove_prefix(c.empty() ? 1 : c.size());
    }
}

inline constexpr std::string_view unbreakable_space = "\xC2\xA0";

/// A measurement that is not to be broken over two lines, but for the second unit in brackets.
inline std::string unbroken(std::string_view text) {
    std::string all;
    for (std::size_t i = 0; i < text.size(); ++i)
        if (text[i] == ' ' && text.substr(i + 1, 1) != "(")
            all += unbreakable_space;
        else
            all += text[i];
    return all;
}

/// With common spaces only, as they are printed.
inline std::string plain(std::string_view text) {
    std::string all;
    for (std::size_t at = 0, end = 0; at < text.size(); at = end + unbreakable_space.size()) {
        end = std::min(text.find(unbreakable_space, at), text.size());
        all.append(text, at, end - at).append(end < text.size() ? " " : "");
    }
    return all;
}

/// Of the characters of ASCII, in hundredths of the size, as in the widest sans-serif faces in common use.
constexpr std::array<int, 128> widths_of_characters() {
    struct widths {
        std::string_view characters;
        int hundredths;
    };
    constexpr widths known[] = {
        {" ,.:;'|/", 34}, {"ijlI()[]!-", 41}, {"frt", 43}, {"cskvxyz", 60}, {"mwMW@%&+=<>#^~", 100}};
    std::array<int, 128> all{};
    all.fill(64);
    for (unsigned char c = 'A'; c <= 'Z'; ++c)
        all[c] = 79;
    for (const widths& w : known)
        for (const char c : w.characters)
            all[static_cast<unsigned char>(c)] = w.hundredths;
    return all;
}
inline constexpr std::array<int, 128> character_widths = widths_of_characters();

/// Of one character, of one to four bytes.
inline int character_width(std::string_view c) {
    if (c.size() > 1)
        return c == unbreakable_space ? character_widths[' '] : c.size() > 2 ? 100 : 82;
    return character_widths[static_cast<unsigned char>(c.front())];
}

/// On the side of more, as the reader's sans-serif is not known; bold letters are an eighth wider.
inline double estimated_width(std::string_view text, double size, bool bold = false) {
    double hundredths = 0;
    each_character(text, [&](std::string_view c) { hundredths += character_width(c); });
    return size * hundredths / 100 * (bold ? 1.15 : 1);
}

inline constexpr std::size_t longest_text = 10'000; ///< bytes of a text that are set

class lettering {
public:
    explicit lettering(const text_measure* measure = nullptr) : measure_(measure) {}

    double width(std::string_view text, double size, bool bold = false) const {
        return measure_ == nullptr ? estimated_width(text, size, bold) : measure_->width_of(text, size, bold);
    }
    double widest(const std::vector<std::string>& lines, double size) const {
        double most = 0;
        for (const std::string& line : lines)
            most = std::max(most, width(line, size));
        return most;
    }

    /// The text itself, or as much of it as fits with dots behind; found by halving.
    std::string shortened(std::string_view text, double size, double width_there, bool bold = false) const {
        const std::string_view some = bounded(text);
        if (some.size() == text.size() && width(text, size, bold) <= width_there)
            return std::string(text);
        std::vector<std::size_t> ends{0}; // of characters
        for (std::string_view rest = some; !rest.empty(); rest.remove_prefix(ends.back() - (some.size() - rest.size())))
            ends.push_back(some.size() - rest.size() + std::max<std::size_t>(1, first_character(rest).size()));
        const auto kept = [&](std::size_t end) { return std::string(some.substr(0, end)) + "..."; };
        const auto first_too_wide = std::partition_point(
            ends.begin() + 1, ends.end(), [&](std::size_t end) { return width(kept(end), size, bold) <= width_there; });
        return kept(*(first_too_wide - 1));
    }

    /// Broken at spaces into lines no wider than that, and no more than `most` of them: what does not fit is shortened.
    std::vector<std::string> wrapped(std::string_view text, double size, double width_there, std::size_t most = 99,
                                     bool bold = false) const {
        std::vector<std::string> lines;
        std::string line;
        const bool cut = bounded(text).size() < text.size();
        text = bounded(text);
        while (!text.empty()) {
            const std::size_t end = std::min(text.find(' '), text.size());
            const std::string longer = sentence({line, line.empty() ? "" : " ", text.substr(0, end)});
            if (!line.empty() && width(longer, size, bold) > width_there) {
                if (lines.size() + 1 >= most) {
                    line = sentence({line, " ", text});
                    break;
                }
                lines.push_back(shortened(plain(line), size, width_there, bold));
                line.clear();
                continue;
            }
            line = longer;
            text.remove_prefix(std::min(end + 1, text.size()));
        }
        if (!line.empty())
            lines.push_back(shortened(plain(cut ? line + "..." : line), size, width_there, bold));
        return lines;
    }

private:
    /// So much of a text as is set, without a broken character at its end.
    static std::string_view bounded(std::string_view text) {
        if (text.size() <= longest_text)
            return text;
        std::size_t end = longest_text;
        while (end > longest_text - 4 && !begins_character(text[end]))
            --end;
        return text.substr(0, end);
    }

    const text_measure* measure_;
};

/// From a line to the next is `step`.
struct text_style {
    double size, step;
    bool bold = false;
};
inline constexpr text_style body_text{body_size, line_height}, bold_text{body_size, line_height, true},
    small_text{small_size, small_line_height};

/// Lines of words, one below the other.
struct text_block {
    std::vector<std::pair<std::string, text_style>> lines{};

    void add(const lettering& by, std::string_view words, const text_style& style, double width,
             std::size_t most = 99) {
        for (std::string& line : by.wrapped(words, style.size, width, most, style.bold))
            lines.emplace_back(std::move(line), style);
    }
    double height() const {
        double sum = 0;
        for (const auto& line : lines)
            sum += line.second.step;
        return sum;
    }
    /// Below a point; returns the last base line.
    double draw(page& on, page_point at) const {
        for (const auto& [words, style] : lines)
            on.write({at.x, at.y += style.step}, words, style.size).bold = style.bold;
        return at.y;
    }
};

} // namespace turncloth::detail

#endif
