// What pages of drawings share: words and pens, lists in columns, the foot with its legend, scale and title block.
//
//   joined({"a", "b"})  letters(27)                 "ab"  "AB"
//   inside_margins(width, height)                   the page without its margins
//   list_in_columns(entries, width, most)           entries in as many columns as fit; what finds no room is counted
//   list_at_foot(rest, entries, most)               the same, and its place taken off the rest
//   title_rows_of(project, title, facts)            the lines of a title block
//   draw_list(svg, list)   draw_foot(svg, foot)
//
//   box rest = inside_margins(width, height);
//   draw_foot(svg, {.where = lowest(rest, foot_height), .scale = 8, .legend = lines, .title = rows});
//
// An internal header of the drawings of lays, of outlines and of lengths from stock.
#ifndef TURNCLOTH_DRAW_DETAIL_PAGE_PARTS_HPP
#define TURNCLOTH_DRAW_DETAIL_PAGE_PARTS_HPP

#include <turncloth/draw/detail/piece_layout.hpp>

#include <algorithm>
#include <cstddef>
#include <initializer_list>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace turncloth::detail {

inline constexpr pen cloth_pen = {"", 0.6}, laid_pen = {"", 0.2}, cut_across_pen = {"", 0.5, {2.5, 1.5}},
                     kept_pen = {"", 0.25, {0.4, 1}}, grain_pen = {"", 0.25};

inline constexpr double title_width = 74, foot_height = 44;

/// A, B, ... Z, AA, AB, ...: pieces have letters, as cuts have numbers.
inline std::string letters(std::size_t i) {
    const std::string last(1, static_cast<char>('A' + i % 26));
    return i < 26 ? last : letters(i / 26 - 1).append(last);
}

inline box inside_margins(double width, double height) {
    return {page_margin, page_margin, width - 2 * page_margin, height - 2 * page_margin};
}

/// Entries in columns, each read down.
struct page_list {
    box where{};
    std::size_t rows = 0;
    double column = 0;
    std::vector<std::string> entries;
    std::size_t left_out = 0;

    double height() const { return entries.empty() ? 0 : static_cast<double>(rows) * small_line_height + gap; }
};

/// At most `most` mm high. Where it stands is left open.
inline page_list list_in_columns(const std::vector<std::string>& all, double width, double most) {
    page_list made;
    if (all.empty())
        return made;
    double widest = 0;
    for (const std::string& e : all)
        widest = std::max(widest, text_width(e, small) + gap);
    const auto columns = std::max<std::size_t>(1, static_cast<std::size_t>(width / widest));
    const std::size_t room = columns * static_cast<std::size_t>(most / small_line_height);
    made.entries = all;
    if (all.size() > room) {
        made.left_out = all.size() - room + 1;
        made.entries.resize(room - 1);
        made.entries.push_back(joined({"and ", std::to_string(made.left_out), " more"}));
    }
    made.rows = (made.entries.size() + columns - 1) / columns;
    made.column = width / static_cast<double>(columns);
    return made;
}

inline page_list list_at_foot(box& rest, const std::vector<std::string>& all, double most) {
    page_list made = list_in_columns(all, rest.width, most);
    made.where = lowest(rest, made.height());
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

inline std::vector<title_row> title_rows_of(const std::string& project, const std::string& title,
                                            const std::vector<std::string>& facts) {
    std::vector<title_row> rows;
    add_rows(rows, title_width, project, body, false, 1);
    add_rows(rows, title_width, title, 4, true, 1);
    for (const std::string& fact : facts)
        add_rows(rows, title_width, fact, small, false, 2);
    return rows;
}

struct legend_line {
    pen drawn_with;
    std::string_view words;
};

struct foot_of_page {
    box where{};
    double scale = 1;
    std::vector<legend_line> legend;
    std::vector<title_row> title;
};

/// The legend at the left, the scale with its bars in the middle, the title block at the right.
inline void draw_foot(svg_page& svg, const foot_of_page& foot) {
    legend lines(svg, {foot.where.x, foot.where.y + 5}, 13, small);
    for (const legend_line& entry : foot.legend)
        lines.entry(entry.drawn_with, entry.words);
    const double middle = foot.where.x + 48, down = foot.where.bottom() - 22;
    svg.text({middle, down}, scale_text(foot.scale), body, anchor::start, false, true);
    scale_bar(svg, {middle, down + 8}, 25.4, "in", foot.scale);
    scale_bar(svg, {middle, down + 16}, 10, "cm", foot.scale);
    const box frame{foot.where.right() - title_width, foot.where.y + 2, title_width, foot.where.height - 4};
    draw_title(svg, frame, foot.title, 1);
}

} // namespace turncloth::detail

#endif
