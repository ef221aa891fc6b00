// What is done to a piece beyond its straight lines: corners cut out, folds brought over, eyelets set.
//
//   features_of(piece)                    in mm of cloth, from the upper left corner of the cut piece
//   cut_outline(cut, corner, place)       with a square out of each corner
//   draw_features(page, features, place)  arrows, crosses and circles
//
// An arrow runs from each fold to the placement line that it is brought to. An eyelet is a cross at its centre, its hole
// and its rim, true to scale.
#ifndef TURNCLOTH_DRAW_DETAIL_PIECE_FEATURES_HPP
#define TURNCLOTH_DRAW_DETAIL_PIECE_FEATURES_HPP

#include <turncloth/page/page.hpp>
#include <turncloth/sheet/sheet.hpp>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <vector>

namespace turncloth::detail {

inline constexpr pen brought_pen = {"brought to", 0.2}, eyelet_pen = {"eyelet", 0.2};

struct piece_eyelet {
    page_point at;
    double hole, rim; ///< diameters
};

struct piece_features {
    double corner = 0; ///< the square out of each corner
    std::vector<page_segment> brought{};
    std::vector<piece_eyelet> eyelets{};
};

/// Where a point of the cloth, in mm, comes to lie on the page.
struct cloth_on_page {
    page_point origin;
    double scale; ///< mm of cloth to one on the page

    page_point operator()(page_point cloth) const { return {origin.x + cloth.x / scale, origin.y + cloth.y / scale}; }
};

/// The arrow of a fold, at a third of the line's length: clear of the words of a dimension.
template <length_unit Unit>
page_segment brought_over(const sheet_piece<Unit>& p, const sheet_line<Unit>& fold) {
    const auto mm = [](length<Unit> l) { return to_double(as<millimetre>(l).value()); };
    const bool from_far = fold.parallel_to == edge::bottom || fold.parallel_to == edge::right;
    const double size = mm(across(p.cut, fold.parallel_to)), third = mm(along(p.cut, fold.parallel_to)) / 3;
    const auto at = [&](length<Unit> off) { return from_far ? size - mm(off) : mm(off); };
    const double from = at(fold.from_cut_edge.value()), to = at(*fold.brought_to);
    if (is_level(fold.parallel_to))
        return {{third, from}, {third, to}};
    return {{from, third}, {to, third}};
}

template <length_unit Unit>
piece_features features_of(const sheet_piece<Unit>& p) {
    const auto mm = [](length<Unit> l) { return to_double(as<millimetre>(l).value()); };
    piece_features all{.corner = mm(p.corner)};
    for (const sheet_line<Unit>& l : p.lines)
        if (l.brought_to)
            all.brought.push_back(brought_over(p, l));
    for (const sheet_eyelets<Unit>& row : p.eyelets)
        for (const length<Unit>& from_left : row.from_left)
            all.eyelets.push_back({{mm(from_left), mm(row.from_top.value())}, mm(row.size.hole), mm(row.size.rim)});
    return all;
}

/// Clockwise from the upper left; twelve points where corners are cut out.
inline std::vector<page_point> cut_outline(const page_area& cut, double c, const cloth_on_page& place) {
    const double w = cut.width, h = cut.height;
    std::vector<page_point> all = {{0, 0}, {w, 0}, {w, h}, {0, h}};
    if (c > 0)
        all = {{c, 0},     {w - c, 0}, {w - c, c}, {w, c},     {w, h - c}, {w - c, h - c},
               {w - c, h}, {c, h},     {c, h - c}, {0, h - c}, {0, c},     {c, c}};
    for (page_point& p : all)
        p = place(p);
    return all;
}

/// A circle as a polygon that no eye tells from it.
inline std::vector<page_point> circle_at(page_point centre, double diameter) {
    constexpr int corners = 48;
    std::vector<page_point> all;
    for (int i = 0; i < corners; ++i) {
        const double angle = 2 * std::numbers::pi * i / corners;
        all.push_back({centre.x + diameter / 2 * std::cos(angle), centre.y + diameter / 2 * std::sin(angle)});
    }
    return all;
}

/// The head is 2 mm long on the page, or all of a shorter arrow.
inline void draw_arrow(page& on, page_point from, page_point to) {
    const double x = to.x - from.x, y = to.y - from.y, length = std::hypot(x, y);
    if (length == 0)
        return;
    const double head = std::min(2.0, length) / length;
    const auto side = [&](double turn) {
        return page_point{to.x - head * (x + turn * y / 3), to.y - head * (y - turn * x / 3)};
    };
    on.draw(brought_pen, {from, to});
    on.draw(brought_pen, {side(1), to, side(-1)});
}

inline void draw_eyelet(page& on, const piece_eyelet& e, const cloth_on_page& place) {
    const page_point at = place(e.at);
    const double arm = e.rim / place.scale / 2 + 0.8; // beyond the rim, so that it is seen at any scale
    on.draw(eyelet_pen, {{at.x - arm, at.y}, {at.x + arm, at.y}});
    on.draw(eyelet_pen, {{at.x, at.y - arm}, {at.x, at.y + arm}});
    for (const double diameter : {e.hole, e.rim})
        on.draw_closed(eyelet_pen, circle_at(at, diameter / place.scale));
}

inline void draw_features(page& on, const piece_features& f, const cloth_on_page& place) {
    for (const page_segment& s : f.brought)
        draw_arrow(on, place(s.from), place(s.to));
    for (const piece_eyelet& e : f.eyelets)
        draw_eyelet(on, e, place);
}

} // namespace turncloth::detail

#endif
