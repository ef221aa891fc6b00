// How a piece is parted over pages that are joined again.
//
//   page_window(paper)              what of a page the piece may lie on, inside margins, heading and foot
//   tiling(extent, paper)           rows and columns, and what of the plane each of them shows
//   t.part(row, column)  t.joint_right(column)  t.joint_below(row)
//   clipped(points, closed, window) the runs of a line that lie in a window, and how far along the line each begins
//
//   const tiling t(extent_of(cut), a4);
//   t.rows() * t.columns();
//
// Neighbouring pages show a strip of `overlap` twice. The joining line runs along its middle on both.
#ifndef TURNCLOTH_EXAMPLES_DRAFTING_TILING_HPP
#define TURNCLOTH_EXAMPLES_DRAFTING_TILING_HPP

#include "lines.hpp"
#include <turncloth/page/paper.hpp>

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <utility>
#include <vector>

namespace drafting {

/// Printers leave up to 6 mm blank at the edges of a page.
inline constexpr double margin = 7, heading_height = 7, foot_height = 7, overlap = 16;

constexpr page_area page_window(const paper& on) {
    return {margin, margin + heading_height, on.narrow() - 2 * margin,
            on.wide() - 2 * margin - heading_height - foot_height};
}

inline page_area extent_of(const std::vector<page_point>& points) {
    double left = points.front().x, right = left, top = points.front().y, bottom = top;
    for (const page_point& p : points) {
        left = std::min(left, p.x), right = std::max(right, p.x);
        top = std::min(top, p.y), bottom = std::max(bottom, p.y);
    }
    return {left, top, right - left, bottom - top};
}

class tiling {
public:
    /// What is left over is left at the right and at the foot: shared out, it would put the middle of a piece, where
    /// its grain line is, on a joint.
    tiling(const page_area& extent, const paper& on)
        : shown_(page_window(on)),
          rows_(count(extent.height, shown_.height)),
          columns_(count(extent.width, shown_.width)),
          left_(extent.x),
          top_(extent.y) {}

    std::size_t rows() const { return rows_; }
    std::size_t columns() const { return columns_; }

    /// Rows and columns count from 0 here, and from 1 on paper.
    page_area part(std::size_t row, std::size_t column) const {
        return {left_ + step_x() * static_cast<double>(column), top_ + step_y() * static_cast<double>(row),
                shown_.width, shown_.height};
    }
    double joint_right(std::size_t column) const { return part(0, column).right() - overlap / 2; }
    double joint_below(std::size_t row) const { return part(row, 0).bottom() - overlap / 2; }

    page_point on_page(std::size_t row, std::size_t column, const page_point& p) const {
        const page_area w = part(row, column);
        return {p.x - w.x + shown_.x, p.y - w.y + shown_.y};
    }

private:
    static std::size_t count(double size, double shown) {
        return static_cast<std::size_t>(std::max(1.0, std::ceil((size - overlap) / (shown - overlap))));
    }
    double step_x() const { return shown_.width - overlap; }
    double step_y() const { return shown_.height - overlap; }

    page_area shown_;
    std::size_t rows_, columns_;
    double left_, top_;
};

struct run {
    std::vector<page_point> points;
    double from_start;
};

namespace detail {

/// The part of a straight line inside a window, as two numbers from 0 at a to 1 at b; empty where first > second.
/// (Each side of the page_area leaves one end of what is left: Liang and Barsky, 1984.)
inline std::pair<double, double> inside(const page_point& a, const page_point& b, const page_area& w) {
    double first = 0, last = 1;
    const auto keep = [&](double towards, double room) { // towards * t <= room
        if (towards == 0)
            first = room < 0 ? 2 : first;
        else if (towards > 0)
            last = std::min(last, room / towards);
        else
            first = std::max(first, room / towards);
    };
    keep(a.x - b.x, a.x - w.x);
    keep(b.x - a.x, w.right() - a.x);
    keep(a.y - b.y, a.y - w.y);
    keep(b.y - a.y, w.bottom() - a.y);
    return {first, last};
}

} // namespace detail

/// In the order of the line. A run goes on round corners, and breaks where the line leaves the window.
inline std::vector<run> clipped(const std::vector<page_point>& points, bool closed, const page_area& w) {
    std::vector<run> runs;
    double along = 0;
    bool open = false; // whether the last run ends at the point that comes next
    for (std::size_t i = 0; i + (closed ? 0 : 1) < points.size(); ++i) {
        const page_point a = points[i], b = points[(i + 1) % points.size()];
        const double size = std::hypot(b.x - a.x, b.y - a.y);
        const auto [first, last] = detail::inside(a, b, w);
        const auto at = [&, a = a, b = b](double t) {
            return page_point{a.x + (b.x - a.x) * t, a.y + (b.y - a.y) * t};
        };
        if (first < last) {
            if (!open || first > 0)
                runs.push_back({{at(first)}, along + first * size});
            runs.back().points.push_back(last < 1 ? at(last) : b);
        }
        open = first < last && last >= 1;
        along += size;
    }
    return runs;
}

/// Whether any of a figure, its inside too, lies in the window.
inline bool shows(const std::vector<page_point>& figure, const page_area& w) {
    if (!clipped(figure, true, w).empty())
        return true;
    const page_point middle = {w.x + w.width / 2, w.y + w.height / 2};
    bool within = false;
    for (std::size_t i = 0; i < figure.size(); ++i) {
        const page_point a = figure[i], b = figure[(i + 1) % figure.size()];
        if ((a.y <= middle.y) != (b.y <= middle.y) && middle.x < a.x + (middle.y - a.y) / (b.y - a.y) * (b.x - a.x))
            within = !within;
    }
    return within;
}

} // namespace drafting

#endif
