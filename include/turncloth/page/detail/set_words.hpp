// Words of a document as lines: none of them is lost, however long a text or a word of it is.
//
//   document_letters(measure)
//     .lines(text, style, width)      broken at spaces; a word that is wider than a line, in itself
//     .least(text, style)             the widest word
//   line_in(style, y)                 the base line of a line of words whose upper edge is there
//
//   const document_letters by(nullptr);
//   for (const std::string& line : by.lines("two pockets of canvas", body, 60)) ...
#ifndef TURNCLOTH_PAGE_DETAIL_SET_WORDS_HPP
#define TURNCLOTH_PAGE_DETAIL_SET_WORDS_HPP

#include <turncloth/measure/printable.hpp>
#include <turncloth/page/detail/lettering.hpp>

#include <algorithm>
#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace turncloth::detail {

/// Letters are read at arm's length, on paper that lies on a table.
inline constexpr text_style read_text{3.3, 4.7}, read_bold{3.3, 4.7, true}, read_small{2.8, 4.0};

/// With the capitals in the middle of the line.
inline double line_in(const text_style& style, double y) { return y + (style.step + 0.72 * style.size) / 2; }

class document_letters {
public:
    explicit document_letters(const text_measure* measure) : by_(measure) {}

    const lettering& by() const { return by_; }
    double width(std::string_view text, const text_style& style) const {
        return by_.width(plain(text), style.size, style.bold);
    }

    /// `taken` is not free in the first line.
    std::vector<std::string> lines(std::string_view text, const text_style& style, double width_there,
                                   double taken = 0) const {
        std::vector<std::string> all;
        const auto is_free = [&](const std::string& line) {
            return width(line, style) <= width_there - (all.empty() ? taken : 0);
        };
        std::string line;
        const std::string fit = fit_to_print(text);
        each_word(fit, [&](std::string_view word) {
            if (!line.empty() && is_free(line + ' ' + std::string(word))) {
                line.append(1, ' ').append(word);
                return;
            }
            if (!line.empty())
                all.push_back(plain(line));
            line = std::string(word);
            if (width(line, style) > width_there)
                line = broken(line, style, width_there, all);
        });
        if (!line.empty())
            all.push_back(plain(line));
        return all;
    }
    double least(std::string_view text, const text_style& style) const {
        double most = 0;
        const std::string fit = fit_to_print(text);
        each_word(fit, [&](std::string_view word) { most = std::max(most, width(word, style)); });
        return most;
    }

private:
    template <class Use>
    static void each_word(std::string_view text, Use use) {
        while (!text.empty()) {
            const std::size_t end = std::min(text.find(' '), text.size());
            if (end > 0)
                use(text.substr(0, end));
            text.remove_prefix(std::min(end + 1, text.size()));
        }
    }
    /// At the spaces that are otherwise kept where there are any, or else anywhere; the rest is returned.
    std::string broken(std::string_view word, const text_style& style, double width_there,
                       std::vector<std::string>& to) const {
        const std::string spaced = plain(word);
        std::string line, part;
        const auto flush = [&](const std::string& next) {
            if (!line.empty() && width(line + next, style) > width_there) {
                to.push_back(line);
                line.clear();
            }
            line += next;
        };
        each_character(spaced, [&](std::string_view c) {
            part += c;
            const bool long_part = width(part, style) > width_there;
            if (c != " " && !long_part)
                return;
            if (long_part && part.size() > c.size()) {
                part.resize(part.size() - c.size());
                flush(part);
                part = std::string(c);
            } else {
                flush(part);
                part.clear();
            }
        });
        flush(part);
        return line;
    }

    lettering by_;
};

} // namespace turncloth::detail

#endif
