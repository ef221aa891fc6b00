// What the lines of a printed drafting mean, and how they are drawn.
//
//   cut_pen  seam_pen  grain_line  notch_pen ...     pens (turncloth/page/page.hpp)
//   print                                               the pages of one drafting
//   lines_of(text, size, bold, width, measure)          words parted into lines
//
//   p.draw(cut_pen, {{10, 10}, {60, 10}});
#ifndef TURNCLOTH_EXAMPLES_DRAFTING_LINES_HPP
#define TURNCLOTH_EXAMPLES_DRAFTING_LINES_HPP

#include <turncloth/page/page.hpp>

#include <algorithm>
#include <cstddef>
#include <string>
#include <vector>

namespace drafting {

using namespace turncloth;

inline constexpr pen cut_pen{"cut", 0.6}, seam_pen{"seam", 0.3, {4, 2}}, grain_pen{"grain", 0.35},
    notch_pen{"notch", 0.5}, joining_pen{"joining line", 0.18, {1, 1.5}, 0.3}, joining_mark_pen{"joining mark", 0.4},
    test_square_pen{"test square", 0.2}, plain_pen{"plain", 0.25}, faint_pen{"faint", 0.15, {}, 0.55};

/// No words are smaller: they are read at arm's length, on paper that lies on a table.
inline constexpr double caption = 2.6;

struct print {
    std::string title;
    std::vector<page> pages;
};

/// Parts the words at blanks into lines of at most `width`; a longer word has a line to itself.
inline std::vector<std::string> lines_of(const std::string& text, double size, bool bold, double width,
                                         const text_measure& measure) {
    std::vector<std::string> lines;
    std::string line;
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t end = std::min(text.find(' ', at), text.size());
        const std::string word = text.substr(at, end - at), longer = line.empty() ? word : line + ' ' + word;
        if (!line.empty() && measure.width_of(longer, size, bold) > width) {
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
