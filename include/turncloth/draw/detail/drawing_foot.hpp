// The foot of a drawing's page, and what all drawings on a page share: sizes of text, the series of scales, pens.
//
//   detail::take_foot(words, rest)         a page_foot, taken off the lower end of what is left of the page
//   detail::draw_foot(svg, foot, scale)    edges, scale bars, title block, small print;  legend  the kinds of line
//   detail::draw_title  draw_print         the title block and the small print by themselves
//   detail::scale_bar  tick  stands_over   a bar of whole units, the end of a dimension, whether words fit over one
//   detail::first_in_series  round_number  1, 2, 5, 10, 20, ...: the scales, and how many there are of something
//
//   const detail::page_foot f = detail::take_foot(plan, picture);   // drawing.hpp and folded_drawing.hpp do this
#ifndef TURNCLOTH_DRAW_DETAIL_DRAWING_FOOT_HPP
#define TURNCLOTH_DRAW_DETAIL_DRAWING_FOOT_HPP

#include <turncloth/draw/detail/piece_plan.hpp>

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <initializer_list>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace turncloth::detail {

// All in mm on paper.
inline constexpr double page_margin = 10, gap = 4;
inline constexpr double body = 3, small = 2.6, large = 5;           // sizes of text
inline constexpr double line_height = 3.8, small_line_height = 3.2; // baseline to baseline
inline constexpr double title_spacing = 1.4;                        // baseline to baseline, times the size
inline constexpr double dimension_row = 7;
inline constexpr double legend_width = 40;
inline constexpr double past_end = 1.5; // from the end of a dimension to words that it is too short for

// Pens after the idea of ISO 128: thick and continuous for what is seen, broken for what is not there yet.
inline constexpr pen thin_pen = {"", 0.15}, frame_pen = {"", 0.35}, stitching_pen = {"", 0.3, {1, 0.8}};

/// The first that is enough of these steps, of ten times them, of a hundred times, ...
template <class Number, class Enough>
Number first_in_series(std::initializer_list<Number> steps, Enough enough) {
    Number ten = 1;
    while (true) {
        for (const Number step : steps)
            if (enough(step * ten))
                return step * ten;
        ten *= 10;
    }
}

/// In 64 bits wherever it is compiled: a bar at a small scale stands for more units than 32 bits count.
template <class Enough>
std::uint64_t round_number(Enough enough) {
    return first_in_series<std::uint64_t>({1, 2, 5}, enough);
}

/// Whether words stand over a dimension of this length; otherwise they stand past its end.
inline bool stands_over(const std::string& words, double length) { return text_width(words, body) + 2 <= length; }

/// An oblique stroke, which needs no room along the line as an arrow does.
inline void tick(svg_page& svg, page_point p) { svg.line({p.x - 0.9, p.y + 0.9}, {p.x + 0.9, p.y - 0.9}); }

inline std::string scale_text(double scale) { return "scale 1:" + number(scale); }

/// A bar of whole units of cloth, to scale and with its name; returns its length on paper.
inline double scale_bar(svg_page& svg, page_point start, double unit, const char* name, double scale) {
    const auto length = [&](std::uint64_t n) { return static_cast<double>(n) * unit / scale; };
    std::uint64_t most = 1;
    round_number([&](std::uint64_t n) {
        most = length(n) <= 51 ? n : most;
        return length(n) > 51;
    });
    const std::uint64_t step = round_number([&](std::uint64_t n) { return length(n) >= 1.2 && most % n == 0; });
    svg.open("scale", {"", 0.25});
    svg.line(start, {start.x + length(most), start.y});
    for (std::uint64_t n = 0; n <= most; n += step)
        svg.line({start.x + length(n), start.y}, {start.x + length(n), start.y - (n % most == 0 ? 3 : 1.6)});
    svg.close();
    svg.text({start.x + length(most) + 1.5, start.y}, std::to_string(most) + ' ' + name, body);
    return length(most);
}

/// A line of text in the title block.
struct title_row {
    std::string words;
    double size;
    bool bold;
};

/// Words of one size in a block of this width, on `most` lines at most.
inline void add_rows(std::vector<title_row>& rows, double width, const std::string& words, double size, bool bold,
                     std::size_t most) {
    for (std::string& line : wrapped(words, bold ? size * 1.15 : size, width - 6, most))
        rows.push_back({std::move(line), size, bold});
}

inline double title_height(const std::vector<title_row>& rows) {
    double height = 1;
    for (const title_row& r : rows)
        height += r.size * title_spacing;
    return height;
}

inline void draw_title(svg_page& svg, const box& frame, const std::vector<title_row>& rows, double above) {
    svg.open("frame", frame_pen);
    svg.rectangle(frame);
    svg.close();
    double down = frame.y + above;
    for (const title_row& r : rows)
        svg.text({frame.x + 3, down += r.size * title_spacing}, r.words, r.size, anchor::start, false, r.bold);
}

/// The small print below everything, each sentence on `most` lines at most.
inline std::vector<std::string> print_lines_of(const std::vector<std::string>& sentences, double width,
                                               std::size_t most = 4) {
    std::vector<std::string> all;
    for (const std::string& sentence : sentences)
        for (std::string& line : wrapped(sentence, small, width, most))
            all.push_back(std::move(line));
    return all;
}

inline double print_height(const std::vector<std::string>& lines) {
    return static_cast<double>(lines.size()) * small_line_height + 1;
}

inline void draw_print(svg_page& svg, const box& where, const std::vector<std::string>& lines) {
    double down = where.y + 1;
    for (const std::string& line : lines)
        svg.text({where.x, down += small_line_height}, line, small);
}

struct page_foot {
    box foot{}, title{}, print{};
    std::vector<title_row> title_rows;
    std::vector<std::string> edges, print_lines;
};

/// The lowest `height` of what is left of the page.
inline box lowest(box& rest, double height) {
    rest.height -= height;
    return {rest.x, rest.bottom(), rest.width, height};
}

/// The small print is lowest; above it, as high as the most that is said in any of them: the legend, the edges with the
/// scale bars, the title block.
inline page_foot take_foot(const foot_words& words, box& rest) {
    page_foot made;
    made.print_lines = print_lines_of(words.small_print, rest.width, 3);
    made.print = lowest(rest, print_height(made.print_lines));
    made.title.width = rest.width > 200 ? 92 : 72;
    const auto add = [&](const std::string& text, double size, bool bold, std::size_t most) {
        add_rows(made.title_rows, made.title.width, text, size, bold, most);
    };
    add(words.project, body, false, 2);
    add(words.piece, large, true, 2);
    add(words.count, body, false, 3);
    add(words.cut_size, body, false, 4);
    add(words.finished_size, body, false, 4);
    for (const std::string& edge : words.edges)
        for (std::string& line : wrapped(edge, body, rest.width - legend_width - made.title.width - 2 * gap, 5))
            made.edges.push_back(std::move(line));
    // With the scale below the last row.
    const double title = title_height(made.title_rows) + 6;
    const double edges_height = static_cast<double>(made.edges.size()) * line_height + 26;
    made.foot = lowest(rest, std::max({36.0, title, edges_height}) + gap);
    made.foot.y += gap;
    made.foot.height -= gap;
    made.title = {made.foot.right() - made.title.width, made.foot.y, made.title.width, made.foot.height};
    return made;
}

/// The kinds of line, one below the other at the left of the foot.
class legend {
public:
    /// Lines of `sample` mm, with words of this size.
    legend(svg_page& svg, page_point heading, double sample = 15, double size = body)
        : svg_(svg), at_(heading), sample_(sample), size_(size) {
        svg_.text(at_, "Lines", body, anchor::start, false, true);
    }
    void entry(const pen& p, std::string_view words) {
        at_.y += 5;
        svg_.open("legend", p);
        svg_.line({at_.x, at_.y - 1}, {at_.x + sample_, at_.y - 1});
        svg_.close();
        svg_.text({at_.x + sample_ + 2, at_.y}, words, size_);
    }

private:
    svg_page& svg_;
    page_point at_;
    double sample_, size_;
};

/// All but the legend.
inline void draw_foot(svg_page& svg, const page_foot& at, double scale) {
    const double x = at.foot.x + legend_width + gap;
    double y = at.foot.y + 3;
    svg.text({x, y}, "Edges, from the cut edge inward", body, anchor::start, false, true);
    for (const std::string& line : at.edges)
        svg.text({x, y += line_height}, line, body);
    y = at.foot.bottom() - 17;
    const auto tenths = [](double length) { return number(std::round(length * 10) / 10); };
    const double inches = scale_bar(svg, {x, y + 6}, 25.4, "in", scale),
                 centimetres = scale_bar(svg, {x, y + 14}, 10, "cm", scale);
    svg.text({x, y}, scale_text(scale) + " (bars print " + tenths(inches) + " and " + tenths(centimetres) + " mm long)",
             small);
    std::vector<title_row> rows = at.title_rows;
    rows.push_back({scale_text(scale), body, true});
    draw_title(svg, at.title, rows, 1.5);
    draw_print(svg, at.print, at.print_lines);
}

} // namespace turncloth::detail

#endif
