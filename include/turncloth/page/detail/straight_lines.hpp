// Straight lines and areas of a page: where they meet, cross and lie.
//
//   meets(line, area)  crossing(a, b)  distance(a, b)  side_of(line, point)  holds(figure, point)
//   span_inside(line, area)                 the part of a line strictly inside
//   apart(a, b)  within(inner, outer)  grown(area, by)  centred(at, width, height)
//   sides_of(stroke)  clipped(stroke, area)  moved(point, way, by)
//
//   if (meets({{0, 0}, {10, 10}}, {4, 4, 2, 2})) leave_it_out();
#ifndef TURNCLOTH_PAGE_DETAIL_STRAIGHT_LINES_HPP
#define TURNCLOTH_PAGE_DETAIL_STRAIGHT_LINES_HPP

#include <turncloth/page/page.hpp>

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <limits>
#include <utility>
#include <vector>

namespace turncloth::detail {

constexpr page_point moved(page_point p, page_point way, double by) { return {p.x + way.x * by, p.y + way.y * by}; }
inline double distance(page_point a, page_point b) { return std::hypot(b.x - a.x, b.y - a.y); }
constexpr page_point middle_of(const page_segment& s) { return {(s.from.x + s.to.x) / 2, (s.from.y + s.to.y) / 2}; }

/// The part of a straight line strictly inside an area, as two numbers from 0 at its start to 1 at its end; empty where
/// the first is not less. (Each side of the area leaves one end of what is left: Liang and Barsky, 1984.)
constexpr std::pair<double, double> span_inside(const page_segment& s, const page_area& a) {
    double first = 0, last = 1;
    const auto keep = [&](double start, double step, double low, double high) {
        if (step == 0) {
            if (start <= low || start >= high)
                first = 2;
            return;
        }
        const double one = (low - start) / step, other = (high - start) / step;
        first = std::max(first, std::min(one, other));
        last = std::min(last, std::max(one, other));
    };
    keep(s.from.x, s.to.x - s.from.x, a.x, a.right());
    keep(s.from.y, s.to.y - s.from.y, a.y, a.bottom());
    return {first, last};
}
constexpr bool meets(const page_segment& s, const page_area& a) {
    const auto [first, last] = span_inside(s, a);
    return first < last;
}
/// Twice the area between the line and p, above zero where p lies to its right on a page.
constexpr double side_of(const page_segment& s, page_point p) {
    return (s.to.x - s.from.x) * (p.y - s.from.y) - (s.to.y - s.from.y) * (p.x - s.from.x);
}
/// Touching is crossing.
constexpr bool crossing(const page_segment& a, const page_segment& b) {
    return side_of(a, b.from) * side_of(a, b.to) <= 0 && side_of(b, a.from) * side_of(b, a.to) <= 0;
}
inline double distance(page_point p, const page_segment& s) {
    const page_point way{s.to.x - s.from.x, s.to.y - s.from.y};
    const double along = ((p.x - s.from.x) * way.x + (p.y - s.from.y) * way.y) / (way.x * way.x + way.y * way.y);
    return distance(p, moved(s.from, way, std::clamp(along, 0.0, 1.0)));
}
/// Of an area that the line does not meet: a corner of the one is nearest, or an end of the other.
inline double distance(const page_area& a, const page_segment& s) {
    double least = std::numeric_limits<double>::infinity();
    for (const page_point p : {s.from, s.to})
        least =
            std::min(least, distance(p, page_point{std::clamp(p.x, a.x, a.right()), std::clamp(p.y, a.y, a.bottom())}));
    for (const page_point p : a.corners())
        least = std::min(least, distance(p, s));
    return least;
}

/// Whether a point lies inside a figure: a line from it crosses the sides an odd number of times.
inline bool holds(const std::vector<page_point>& figure, page_point p) {
    bool within = false;
    for (std::size_t i = 0; i < figure.size(); ++i) {
        const page_point a = figure[i], b = figure[(i + 1) % figure.size()];
        if ((a.y <= p.y) != (b.y <= p.y) && p.x < a.x + (p.y - a.y) / (b.y - a.y) * (b.x - a.x))
            within = !within;
    }
    return within;
}

constexpr bool apart(const page_area& a, const page_area& b) {
    return a.x >= b.right() || b.x >= a.right() || a.y >= b.bottom() || b.y >= a.bottom();
}
constexpr bool within(const page_area& inner, const page_area& outer) {
    constexpr double slack = 1e-9;
    return inner.x >= outer.x - slack && inner.y >= outer.y - slack && inner.right() <= outer.right() + slack &&
           inner.bottom() <= outer.bottom() + slack;
}
constexpr page_area grown(const page_area& a, double by) {
    return {a.x - by, a.y - by, a.width + 2 * by, a.height + 2 * by};
}
constexpr page_area centred(page_point at, double width, double height) {
    return {at.x - width / 2, at.y - height / 2, width, height};
}

inline std::vector<page_segment> sides_of(const page_stroke& s) {
    std::vector<page_segment> all;
    for (std::size_t i = 0; i + (s.closed ? 0 : 1) < s.points.size(); ++i)
        all.push_back({s.points[i], s.points[(i + 1) % s.points.size()]});
    return all;
}

/// The runs of a line that lie in an area, each with how far along the line it begins. A run goes on round corners, and
/// breaks where the line leaves the area.
inline std::vector<page_stroke> clipped(const page_stroke& s, const page_area& a) {
    std::vector<page_stroke> runs;
    double along = s.dash_from;
    bool open = false; // whether the last run ends at the point that comes next
    for (const page_segment& side : sides_of(s)) {
        const auto [first, last] = span_inside(side, a);
        const double size = distance(side.from, side.to);
        const page_point way{side.to.x - side.from.x, side.to.y - side.from.y};
        if (first < last) {
            if (!open || first > 0)
                runs.push_back({s.with, {moved(side.from, way, first)}, false, along + first * size});
            runs.back().points.push_back(last < 1 ? moved(side.from, way, last) : side.to);
        }
        open = first < last && last >= 1;
        along += size;
    }
    return runs;
}

} // namespace turncloth::detail

#endif
