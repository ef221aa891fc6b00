// A long narrow thing drawn with a part left out, so that what is left is larger.
//
//   draw_zigzag(picture, {from, shown}, size, upright)    the two lines that a part is left out between
//   with_part_left_out(picture)                     the same drawn so; nothing where it is hardly shorter for it
//   at_its_largest(whole, options)                  whole, or with a part left out where its page is so much larger for it
//
//   const picture drawn = at_its_largest(piece_picture<inch>(strip, ruler()).make(""), options);
//
// What is left out is a stretch in which nothing begins, ends or stands: lines that run along it go on, and dimensions across
// it have the figures of the whole, as drawings of long shafts have them (ISO 128-3, interrupted views).
#ifndef TURNCLOTH_DRAW_DETAIL_LEFT_OUT_HPP
#define TURNCLOTH_DRAW_DETAIL_LEFT_OUT_HPP

#include <turncloth/page/drawing.hpp>

#include <algorithm>
#include <cstddef>
#include <optional>
#include <tuple>
#include <utility>
#include <vector>

namespace turncloth::detail {

inline constexpr kind_of_line left_out_line = {{"left out", 0.25}, "left out"};

/// Where it begins in the picture, and how much room it has there.
struct room_left_out {
    double from, shown;
};

/// Across the thing, which is `size` across.
inline void draw_zigzag(picture& made, const room_left_out& at_, double size, bool upright) {
    for (const double part : {0.3, 0.7}) {
        const double at = at_.from + part * at_.shown, tooth = at_.shown / 8, middle = 0.38 * size;
        std::vector<page_point> line{{at, 0},
                                     {at, middle - tooth},
                                     {at - tooth, middle - tooth / 3},
                                     {at + tooth, middle + tooth / 3},
                                     {at, middle + tooth},
                                     {at, size}};
        for (page_point& p : line)
            p = upright ? p : page_point{p.y, p.x};
        made.draw(left_out_line, std::move(line));
    }
}

/// Along the longer side, from one place at which anything begins, ends or stands to the next: the widest such stretch.
inline std::pair<double, double> widest_unchanged(const picture& p) {
    const bool across = p.width > p.height;
    std::vector<double> at{0, across ? p.width : p.height};
    const auto take = [&](const page_point& q) { at.push_back(across ? q.x : q.y); };
    for (const page_stroke& s : p.strokes)
        std::for_each(s.points.begin(), s.points.end(), take);
    for (const drawn_arrow& a : p.arrows)
        take(a.shaft.from), take(a.shaft.to);
    for (const margin_label& l : across ? p.above : p.at_right)
        at.push_back(l.at);
    for (const margin_label& l : across ? p.at_right : p.above)
        at.push_back(l.start);
    std::sort(at.begin(), at.end());
    std::pair<double, double> widest{0, 0};
    for (std::size_t i = 1; i < at.size(); ++i)
        if (at[i] - at[i - 1] > widest.second - widest.first)
            widest = {at[i - 1], at[i]};
    return widest;
}

/// What lies past the part left out, moved up to it.
class moved_up {
public:
    moved_up(double from, double to, double shown) : from_(from), to_(to), shown_(shown) {}
    double operator()(double at) const {
        return at <= from_ ? at
               : at >= to_ ? at - (to_ - from_) + shown_
                           : from_ + (at - from_) * shown_ / (to_ - from_);
    }

private:
    double from_, to_, shown_;
};

inline void move_along(picture& p, const moved_up& moved) {
    const bool across = p.width > p.height;
    const auto move = [&](page_point& q) { (across ? q.x : q.y) = moved(across ? q.x : q.y); };
    for (page_stroke& s : p.strokes)
        std::for_each(s.points.begin(), s.points.end(), move);
    for (drawn_arrow& a : p.arrows)
        move(a.shaft.from), move(a.shaft.to);
    for (margin_label& l : across ? p.above : p.at_right)
        l.at = moved(l.at);
    for (margin_label& l : across ? p.at_right : p.above)
        l.start = moved(l.start);
    for (measured& m : across ? p.below : p.beside)
        m.from = moved(m.from), m.to = moved(m.to);
    for (measured& m : across ? p.beside : p.below)
        m.edge = moved(m.edge);
    (across ? p.width : p.height) = moved(across ? p.width : p.height);
}

/// As long as six times its shorter side, where so much can be left out; a half of that side at least stays beyond the part.
inline std::optional<picture> with_part_left_out(const picture& whole) {
    const bool across = whole.width > whole.height;
    const double longer = std::max(whole.width, whole.height), shorter = std::min(whole.width, whole.height);
    const auto [from, to] = widest_unchanged(whole);
    const double shown = shorter / 2, out = std::min(to - from - shorter, longer + shown - 6 * shorter);
    constexpr double worth_it = 1.5;
    if (out <= shown || longer < worth_it * (longer - out + shown))
        return {};
    picture made = whole;
    const double begins = (from + to - out) / 2;
    move_along(made, moved_up(begins, begins + out, shown));
    draw_zigzag(made, {begins, shown}, shorter, across);
    made.words.small_print.emplace_back(word(
        "Between the zigzag lines a part is left out in which nothing changes: figures across it are of the whole."));
    return made;
}

/// With a part left out where that leaves out and numbers no more words, and is larger by two fifths at least.
inline picture at_its_largest(picture whole, const drawing_options& options) {
    std::optional<picture> broken = with_part_left_out(whole);
    if (!broken)
        return whole;
    const auto [left_out, numbered, scale, lies] = best_page_of(whole, options).rank();
    const auto [less_out, fewer, larger, lies_too] = best_page_of(*broken, options).rank();
    constexpr double worth_it = 1.4;
    const bool better = std::tuple(less_out, fewer) <= std::tuple(left_out, numbered) && larger * worth_it <= scale;
    return better ? std::move(*broken) : std::move(whole);
}

} // namespace turncloth::detail

#endif
