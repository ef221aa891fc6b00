// Pieces of straight lines gathered by the line that they lie on, each stretch of it once.
//
//   straight_lines all;  all.add(segment);
//   all.without(others)                          what is left of them, joined where they overlap or touch
//   straight_lines::joined_up(spans)  ::left_of(spans, taken)      the same of numbers along one line
#ifndef TURNCLOTH_DRAW_DETAIL_STRAIGHT_LINES_HPP
#define TURNCLOTH_DRAW_DETAIL_STRAIGHT_LINES_HPP

#include <turncloth/page/drawing.hpp>

#include <algorithm>
#include <cmath>
#include <utility>
#include <vector>

namespace turncloth::detail {

inline constexpr double too_thin = 1e-6; // mm: a thousand times the tolerance of what is drafted

/// Pieces of straight lines, of which those on one line are put together where they overlap or touch.
class straight_lines {
public:
    void add(const page_segment& s) {
        const double length = distance(s.from, s.to);
        if (length <= too_thin)
            return;
        page_point way{(s.to.x - s.from.x) / length, (s.to.y - s.from.y) / length};
        if (way.x < -too_thin || (way.x <= too_thin && way.y < 0))
            way = {-way.x, -way.y};
        const auto same = std::find_if(rows_.begin(), rows_.end(), [&](const row& r) {
            return are_one(r, {way, off(r.way, s.from), {}});
        });
        row& r = same == rows_.end() ? rows_.emplace_back(row{way, off(way, s.from), {}}) : *same;
        r.parts.emplace_back(std::minmax({along(r.way, s.from), along(r.way, s.to)}));
    }

    /// Without what lies on `others`.
    std::vector<page_segment> without(const straight_lines& others) const {
        std::vector<page_segment> all;
        for (const row& r : rows_) {
            spans taken;
            for (const row& o : others.rows_)
                if (are_one(r, o))
                    taken = o.parts;
            for (const auto& [start, end] : left_of(joined_up(r.parts), joined_up(taken)))
                all.push_back({spot(r, start), spot(r, end)});
        }
        return all;
    }

    using spans = std::vector<std::pair<double, double>>;

    static spans joined_up(spans all) {
        std::sort(all.begin(), all.end());
        spans joined;
        for (const auto& s : all)
            if (!joined.empty() && s.first <= joined.back().second + too_thin)
                joined.back().second = std::max(joined.back().second, s.second);
            else
                joined.push_back(s);
        return joined;
    }
    /// What of `all` is not in `taken`, both joined up.
    static spans left_of(const spans& all, const spans& taken) {
        spans left;
        for (auto [start, end] : all) {
            for (const auto& [from, to] : taken) {
                if (to <= start || from >= end)
                    continue;
                if (from > start + too_thin)
                    left.emplace_back(start, from);
                start = std::max(start, to);
            }
            if (end > start + too_thin)
                left.emplace_back(start, end);
        }
        return left;
    }

private:
    struct row {
        page_point way;
        double off;
        spans parts;
    };
    static double along(page_point way, page_point p) { return way.x * p.x + way.y * p.y; }
    static double off(page_point way, page_point p) { return way.x * p.y - way.y * p.x; }
    static bool are_one(const row& a, const row& b) {
        return std::abs(off(a.way, b.way)) <= 1e-7 && std::abs(a.off - b.off) <= too_thin;
    }
    static page_point spot(const row& r, double t) {
        return {r.way.x * t - r.way.y * r.off, r.way.y * t + r.way.x * r.off};
    }

    std::vector<row> rows_;
};

} // namespace turncloth::detail

#endif
