// Room for words on a page: where nothing is drawn or written yet.
//
//   free_room(page, lettering)            all that is on a page, to be kept clear of
//   .is_free(area)  .leads(from, to)      whether words may stand there, and a line lead to them
//   spread(wanted, sizes, from, to)       labels moved apart along a margin, each as near to its line as may be
//   clipped(segment, area)  crossing(a, b)  distance(a, b)  moved(point, way, by)        straight lines
//
//   free_room room(p, by);
//   if (room.is_free(there)) { p.write(there.middle(), "3", 3); room.take(there); }
#ifndef TURNCLOTH_PAGE_DETAIL_LABELS_HPP
#define TURNCLOTH_PAGE_DETAIL_LABELS_HPP

#include <turncloth/page/detail/lettering.hpp>

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <limits>
#include <optional>
#include <string>
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
constexpr std::optional<page_segment> clipped(const page_segment& s, const page_area& a) {
    const auto [first, last] = span_inside(s, a);
    if (first >= last)
        return std::nullopt;
    const page_point way{s.to.x - s.from.x, s.to.y - s.from.y};
    return page_segment{moved(s.from, way, first), moved(s.from, way, last)};
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

constexpr bool apart(const page_area& a, const page_area& b) {
    return a.x >= b.right() || b.x >= a.right() || a.y >= b.bottom() || b.y >= a.bottom();
}
constexpr bool within(const page_area& inner, const page_area& outer) {
    constexpr double slack = 1e-9;
    return inner.x >= outer.x - slack && inner.y >= outer.y - slack && inner.right() <= outer.right() + slack &&
           inner.bottom() <= outer.bottom() + slack;
}
constexpr page_area centred(page_point at, double width, double height) {
    return {at.x - width / 2, at.y - height / 2, width, height};
}

/// What words cover, level or turned to run upward.
inline page_area covered_by(const page_words& w, const lettering& by) {
    const double length = by.width(w.text, w.size, w.bold),
                 before = w.anchor == set_from::start ? 0 : (w.anchor == set_from::end ? length : length / 2);
    return w.turned == 0 ? page_area{w.at.x - before, w.at.y - 0.8 * w.size, length, 1.1 * w.size}
                         : page_area{w.at.x - 0.8 * w.size, w.at.y + before - length, 1.1 * w.size, length};
}

class free_room {
public:
    free_room(const page& p, const lettering& by) {
        for (const page_stroke& s : p.strokes)
            for (std::size_t i = 0; i + (s.closed ? 0 : 1) < s.points.size(); ++i)
                lines_.push_back({s.points[i], s.points[(i + 1) % s.points.size()]});
        for (const page_words& w : p.words)
            taken_.push_back(covered_by(w, by));
    }

    const std::vector<page_segment>& lines() const { return lines_; }
    const std::vector<page_area>& taken() const { return taken_; }
    void take(const page_area& a) { taken_.push_back(a); }
    void take(const page_segment& leader) { lines_.push_back(leader), leaders_.push_back(leader); }
    void give_back(const page_area& a) {
        std::erase_if(taken_, [&](const page_area& b) { return b.x == a.x && b.y == a.y; });
    }

    bool is_free(const page_area& a) const {
        return std::all_of(taken_.begin(), taken_.end(), [&](const page_area& b) { return apart(a, b); }) &&
               std::none_of(lines_.begin(), lines_.end(), [&](const page_segment& s) { return meets(s, a); });
    }
    /// Through no words and over no other leader.
    bool leads(const page_segment& s) const {
        return std::none_of(taken_.begin(), taken_.end(), [&](const page_area& b) { return meets(s, b); }) &&
               std::none_of(leaders_.begin(), leaders_.end(), [&](const page_segment& l) { return crossing(s, l); });
    }
    std::size_t lines_crossed(const page_segment& s) const {
        return static_cast<std::size_t>(
            std::count_if(lines_.begin(), lines_.end(), [&](const page_segment& l) { return crossing(s, l); }));
    }

private:
    std::vector<page_segment> lines_, leaders_;
    std::vector<page_area> taken_;
};

/// Centres for labels of these sizes, in order and without overlap within from..to, nearest to where they are wanted in
/// least squares: with the room before each label taken off, that is a regression to a sequence that never falls, found
/// by pooling neighbours that would cross.
inline std::vector<double> spread(const std::vector<double>& wanted, const std::vector<double>& sizes, double from,
                                  double to) {
    struct pool {
        double sum;
        std::size_t count;
        double mean() const { return sum / static_cast<double>(count); }
    };
    std::vector<pool> pools;
    std::vector<double> before;
    double total = 0;
    for (std::size_t i = 0; i < wanted.size(); ++i) {
        before.push_back(total + sizes[i] / 2);
        total += sizes[i];
        pools.push_back({wanted[i] - before[i], 1});
        while (pools.size() > 1 && pools[pools.size() - 2].mean() > pools.back().mean()) {
            const pool last = pools.back();
            pools.pop_back();
            pools.back().sum += last.sum;
            pools.back().count += last.count;
        }
    }
    std::vector<double> centres;
    for (const pool& p : pools)
        for (std::size_t i = 0; i < p.count; ++i)
            centres.push_back(std::max(from, std::min(p.mean(), to - total)) + before[centres.size()]);
    return centres;
}

} // namespace turncloth::detail

#endif
