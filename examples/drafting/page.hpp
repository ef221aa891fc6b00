// What is on a page, as lines and words in millimetres from its upper left corner, right and down.
//
//   paper            a4, letter: width, height and name
//   page             strokes and labels; a painter draws it (pdf.hpp), a window could
//   line_kind        what a stroke means; pen_of(kind) how heavy it is and how it is broken
//   text_width       how the painter measures words, given to whoever sets them
//
//   page p;
//   p.strokes.push_back({line_kind::cut, {{10, 10}, {60, 10}}});
#ifndef TURNCLOTH_EXAMPLES_DRAFTING_PAGE_HPP
#define TURNCLOTH_EXAMPLES_DRAFTING_PAGE_HPP

#include <algorithm>
#include <cstddef>
#include <functional>
#include <string>
#include <string_view>
#include <vector>

namespace drafting {

/// ISO 216 for A4; ANSI/ASME Y14.1 size A for Letter: 8 1/2 x 11 in.
struct paper {
    std::string_view name;
    double width, height;
};
inline constexpr paper a4 = {"A4", 210, 297}, letter = {"Letter", 8.5 * 25.4, 11 * 25.4};

/// Right and down from the upper left corner of a page.
struct place_on_page {
    double x, y;
};

/// A part of a page, or of the plane that pages are cut from.
struct window {
    double left, top, width, height;

    double right() const { return left + width; }
    double bottom() const { return top + height; }
};

enum class line_kind { cut, seam, grain, notch, joining_line, joining_mark, test_square, plain, faint };

/// In millimetres: a line of dashes and gaps, whole where there are none. `grey` is 0 for black, 1 for white.
struct pen {
    double weight, dash, gap, grey;
};

constexpr pen pen_of(line_kind kind) {
    switch (kind) {
    case line_kind::cut:
        return {0.6, 0, 0, 0};
    case line_kind::seam:
        return {0.3, 4, 2, 0};
    case line_kind::grain:
        return {0.35, 0, 0, 0};
    case line_kind::notch:
        return {0.5, 0, 0, 0};
    case line_kind::joining_line:
        return {0.18, 1, 1.5, 0.3};
    case line_kind::joining_mark:
        return {0.4, 0, 0, 0};
    case line_kind::test_square:
        return {0.2, 0, 0, 0};
    case line_kind::plain:
        return {0.25, 0, 0, 0};
    case line_kind::faint:
        break;
    }
    return {0.15, 0, 0, 0.55};
}

/// `dash_from` is how far into the line the stroke begins, so that dashes run on from one page to the next.
struct stroke {
    line_kind kind;
    std::vector<place_on_page> points;
    bool closed = false;
    double dash_from = 0;
};

enum class set_from { start, middle, end };

/// One line of words; `at` is on its base line. `turned` is in degrees, against the clock.
struct label {
    place_on_page at;
    std::string text;
    double size = 3;
    set_from anchor = set_from::start;
    double turned = 0;
    bool bold = false;
};

struct page {
    std::vector<stroke> strokes;
    std::vector<label> labels;
};

/// The width of words set at a size, in millimetres.
using text_width = std::function<double(std::string_view text, double size, bool bold)>;

/// What can be printed: pages of one paper.
struct print {
    paper on = a4;
    std::string title;
    std::vector<page> pages;
};

/// Parts the words at blanks into lines of at most `width`; a longer word has a line to itself.
inline std::vector<std::string> lines_of(const std::string& text, double size, bool bold, double width,
                                         const text_width& wide) {
    std::vector<std::string> lines;
    std::string line;
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t end = std::min(text.find(' ', at), text.size());
        const std::string word = text.substr(at, end - at), longer = line.empty() ? word : line + ' ' + word;
        if (!line.empty() && wide(longer, size, bold) > width) {
            lines.push_back(line);
            line = word;
        } else {
            line = longer;
        }
        at = end + 1;
    }
    if (!line.empty())
        lines.push_back(line);
    return lines;
}

} // namespace drafting

#endif
