// A dimension: a line from end to end of what it measures, a stroke across each end, and words on it.
//
//   draw_dimension(page, by, {.from = {10, 20}, .to = {60, 20}, .edge = 15, .past = 60, .words = "5 in"});
//   stands_over(by, words, length)      whether the words are shorter than the line; else they stand past its end
#ifndef TURNCLOTH_PAGE_DETAIL_DIMENSION_HPP
#define TURNCLOTH_PAGE_DETAIL_DIMENSION_HPP

#include <turncloth/page/detail/lettering.hpp>

#include <string>

namespace turncloth::detail {

inline constexpr double body_size = 3, small_size = 2.6;            // sizes of text, in mm
inline constexpr double line_height = 3.8, small_line_height = 3.2; // baseline to baseline
inline constexpr double dimension_row = 7;                          // from one dimension to the next
inline constexpr double past_end = 1.5; // from the end of a dimension to words that it is too short for
inline constexpr pen dimension_pen = {"dimension", 0.15}, scale_pen = {"scale", 0.25};

/// Level, or upright and told at its left. `edge` is where across it the lines from its ends begin, at what is measured;
/// `past` where the thing measured ends along it.
struct dimension {
    page_point from, to;
    double edge, past;
    std::string words;
};

inline bool stands_over(const lettering& by, const std::string& words, double length) {
    return by.width(words, body_size) + 2 <= length;
}
/// How far the words of a dimension reach past the end of what it measures.
inline double overhang(const lettering& by, const std::string& words, double length) {
    return stands_over(by, words, length) ? 0 : past_end + by.width(words, body_size);
}

/// The strokes across the ends are oblique: they need no room along the line as arrows do.
inline void draw_dimension(page& on, const lettering& by, const dimension& d) {
    const bool upright = d.from.x == d.to.x;
    on.draw(dimension_pen, {d.from, d.to});
    for (const page_point& p : {d.from, d.to}) {
        const double beyond = d.edge < (upright ? p.x : p.y) ? 1 : -1;
        on.draw(dimension_pen, upright ? std::vector<page_point>{{d.edge, p.y}, {p.x + beyond, p.y}}
                                       : std::vector<page_point>{{p.x, d.edge}, {p.x, p.y + beyond}});
        on.draw(dimension_pen, {{p.x - 0.9, p.y + 0.9}, {p.x + 0.9, p.y - 0.9}});
    }
    const double middle_x = (d.from.x + d.to.x) / 2, middle_y = (d.from.y + d.to.y) / 2;
    if (upright && stands_over(by, d.words, d.to.y - d.from.y))
        on.write({d.from.x - 1, middle_y}, d.words, body_size, set_from::middle).turned = 90;
    else if (upright)
        on.write({d.from.x + 0.35 * body_size, d.past + past_end}, d.words, body_size, set_from::end).turned = 90;
    else if (stands_over(by, d.words, d.to.x - d.from.x))
        on.write({middle_x, d.from.y - 1}, d.words, body_size, set_from::middle);
    else
        on.write({d.past + past_end, d.from.y + 0.35 * body_size}, d.words, body_size);
}

} // namespace turncloth::detail

#endif
