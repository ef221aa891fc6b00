// What the pages of drawings share: papers, a list in columns, and the foot with its legend, scale and title block.
//
//   paper_sides(paper)                   the shorter and the longer, in mm
//   lowest(rest, height)                 takes that much off the bottom of a box
//   list_at_foot(rest, entries, most)    entries in as many columns as fit; what finds no room is counted
//   draw_list(svg, list)   draw_print(svg, box, lines)   draw_foot(svg, box, words)
//
//   box rest = inside_margins(width, height);
//   const box foot = lowest(rest, foot_height);
//
// An internal header of lay_drawing.hpp and outline_drawing.hpp.
#ifndef TURNCLOTH_SHEET_PAGE_PARTS_HPP
#define TURNCLOTH_SHEET_PAGE_PARTS_HPP

#include <turncloth/sheet/drawing.hpp>

#include <algorithm>
#include <cstddef>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace turncloth::detail {

inline constexpr pen grain_pen = {0.25, ""};
inline constexpr double foot_height = 44;

inline std::pair<double, double> paper_sides(paper on) {
    return on == paper::a4 ? std::pair(210.0, 297.0) : std::pair(215.9, 279.4);
}

inline box inside_margins(double width, double height) {
    return {page_margin, page_margin, width - 2 * page_margin, height - 2 * page_margin};
}

inline box lowest(box& rest, double height) {
    rest.height -= height;
    return {rest.x, rest.bottom(), rest.width, height};
}

/// Entries in columns, each read down.
struct page_list {
    box where{};
    std::size_t rows = 0;
    double column = 0;
    std::vector<std::string> entries;
    std::size_t left_out = 0;
};

/// At most `most` mm high.
inline page_list list_at_foot(box& rest, const std::vector<std::string>& all, double most) {
    page_list made;
    if (all.empty())
        return made;
    double widest = 0;
    for (const std::string& e : all)
        widest = std::max(widest, text_width(e, small) + gap);
    const auto columns = std::max<std::size_t>(1, static_cast<std::size_t>(rest.width / widest));
    const std::size_t room = columns * static_cast<std::size_t>(most / small_line_height);
    made.entries = all;
    if (all.size() > room) {
        made.left_out = all.size() - room + 1;
        made.entries.resize(room - 1);
        made.entries.push_back("and " + std::to_string(made.left_out) + " more");
    }
    made.rows = (made.entries.size() + columns - 1) / columns;
    made.column = rest.width / static_cast<double>(columns);
    made.where = lowest(rest, static_cast<double>(made.rows) * small_line_height + gap);
    return made;
}

inline void draw_list(svg_page& svg, const page_list& l) {
    for (std::size_t i = 0; i < l.entries.size(); ++i) {
        const std::size_t column = i / l.rows, row = i % l.rows;
        svg.text({l.where.x + static_cast<double>(column) * l.column,
                  l.where.y + gap + static_cast<double>(row) * small_line_height},
                 shortened(l.entries[i], small, l.column - 1), small);
    }
}

inline std::vector<std::string> print_lines_of(const std::vector<std::string>& sentences, double width) {
    std::vector<std::string> all;
    for (const std::string& sentence : sentences)
        for (std::string& line : wrapped(sentence, small, width, 3))
            all.push_back(std::move(line));
    return all;
}

/// The small print, for which `where` holds a line each and 1 mm.
inline void draw_print(svg_page& svg, const box& where, const std::vector<std::string>& lines) {
    double y = where.y + 1;
    for (const std::string& line : lines)
        svg.text({where.x, y += small_line_height}, line, small);
}

inline std::string scale_words(double scale) { return "scale 1:" + number(scale); }

struct foot_words {
    std::string project, title;
    std::vector<std::string> facts;
    std::vector<std::pair<pen, std::string_view>> legend;
};

/// The legend at the left, the scale with its bars in the middle, the title block at the right.
inline void draw_foot(svg_page& svg, const box& foot, const foot_words& says, double scale) {
    double down = foot.y + 5;
    svg.text({foot.x, down}, "Lines", body, anchor::start, false, true);
    for (const auto& [drawn_with, words] : says.legend) {
        down += 5;
        svg.open("legend", drawn_with);
        svg.line({foot.x, down - 1}, {foot.x + 13, down - 1});
        svg.close();
        svg.text({foot.x + 15, down}, words, small);
    }
    const double middle = foot.x + 48, scale_at = foot.bottom() - 22;
    svg.text({middle, scale_at}, scale_words(scale), body, anchor::start, false, true);
    scale_bar(svg, {middle, scale_at + 8}, 25.4, "in", scale);
    scale_bar(svg, {middle, scale_at + 16}, 10, "cm", scale);
    const box frame{foot.right() - 74, foot.y + 2, 74, foot.height - 4};
    svg.open("frame", {0.35, ""});
    svg.rectangle(frame);
    svg.close();
    double line = frame.y + 1;
    const auto write = [&](const std::string& words, double size, bool bold, std::size_t most) {
        for (const std::string& part : wrapped(words, bold ? size * 1.15 : size, frame.width - 6, most))
            svg.text({frame.x + 3, line += size * title_spacing}, part, size, anchor::start, false, bold);
    };
    write(says.project, body, false, 1);
    write(says.title, 4, true, 1);
    for (const std::string& fact : says.facts)
        write(fact, small, false, 2);
}

} // namespace turncloth::detail

#endif
