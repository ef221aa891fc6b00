// Where a closed line of straight edges crosses or touches itself.
//
//   detail::meetings_of(corners)     edges that meet and are no neighbours, and neighbours that turn back on each other
//
//   detail::for_each_close_pair(corners, visit)     edges near enough to meet
//
//   detail::meetings_of({{0, 0}, {4, 4}, {4, 0}, {0, 4}})   is one meeting: edges 0 and 2, at (2, 2)
//
// Edges are sorted into the cells of a grid with about as many cells as edges, and only edges that share a cell are
// compared. An edge lies in few cells unless it is long beside the piece, so time grows with the number of edges; n
// long edges at worst share n sqrt(n) cells. An internal header of outline.hpp.
#ifndef TURNCLOTH_PANEL_DETAIL_CROSSINGS_HPP
#define TURNCLOTH_PANEL_DETAIL_CROSSINGS_HPP

#include <turncloth/panel/polygon.hpp>

#include <algorithm>
#include <bit>
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <tuple>
#include <utility>
#include <vector>

namespace turncloth::detail {

struct edge_meeting {
    std::size_t first, second; ///< first < second
    arrow<double> where;
};

/// Where the straight pieces p and q meet, touching included: within the drafting tolerance.
inline std::optional<arrow<double>> meet(const arrow<double>& p0, const arrow<double>& p1, const arrow<double>& q0,
                                         const arrow<double>& q1) {
    const auto apart = [](double a, double b, double c, double d) {
        return std::max(a, b) < std::min(c, d) - drafting_tolerance ||
               std::max(c, d) < std::min(a, b) - drafting_tolerance;
    };
    if (apart(p0.x, p1.x, q0.x, q1.x) || apart(p0.y, p1.y, q0.y, q1.y))
        return std::nullopt;
    const int q0_side = turn(p0, p1, q0), q1_side = turn(p0, p1, q1), p0_side = turn(q0, q1, p0),
              p1_side = turn(q0, q1, p1);
    if (q0_side * q1_side < 0 && p0_side * p1_side < 0) {
        const arrow<double> p = p1 - p0, q = q1 - q0;
        return p0 + p * (cross(q0 - p0, q) / cross(p, q));
    }
    for (const auto& [side, end, from, to] : {std::tuple(q0_side, q0, p0, p1), std::tuple(q1_side, q1, p0, p1),
                                              std::tuple(p0_side, p0, q0, q1), std::tuple(p1_side, p1, q0, q1)})
        if (side == 0 && on_segment(from, to, end))
            return end;
    return std::nullopt;
}

class grid {
public:
    explicit grid(const std::vector<arrow<double>>& corners) : corners_(corners), low_(corners[0]) {
        double perimeter = 0;
        for (std::size_t i = 0; i < corners.size(); ++i) {
            low_ = {std::min(low_.x, corners[i].x), std::min(low_.y, corners[i].y)};
            perimeter += length_of_arrow(corners[i + 1 == corners.size() ? 0 : i + 1] - corners[i]);
        }
        cell_ = std::max(perimeter / static_cast<double>(corners.size()), 8 * drafting_tolerance);
        sort_into_buckets();
    }

    std::size_t buckets() const { return begins_.size() - 1; }
    /// The edges of all cells that share a bucket, each perhaps more than once.
    std::pair<const std::size_t*, const std::size_t*> in_bucket(std::size_t bucket) const {
        return {edges_.data() + begins_[bucket], edges_.data() + begins_[bucket + 1]};
    }

private:
    /// Counted first and then placed, so that all buckets share one array.
    void sort_into_buckets() {
        begins_.assign(std::bit_ceil(4 * corners_.size()) + 1, 0);
        for (std::size_t i = 0; i < corners_.size(); ++i)
            for_each_cell(i, [&](std::size_t bucket) { ++begins_[bucket + 1]; });
        for (std::size_t bucket = 0; bucket < buckets(); ++bucket)
            begins_[bucket + 1] += begins_[bucket];
        edges_.resize(begins_.back());
        std::vector<std::size_t> next(begins_.begin(), begins_.end() - 1);
        for (std::size_t i = 0; i < corners_.size(); ++i)
            for_each_cell(i, [&](std::size_t bucket) { edges_[next[bucket]++] = i; });
    }

    /// Cells far apart may share a bucket; that costs a comparison and nothing else. Neighbours in a row have
    /// neighbouring buckets, which keeps memory traffic low; the multiplier, 2^64 over the golden ratio, scatters the
    /// rows.
    std::size_t bucket_of(std::size_t column, std::size_t row) const {
        return static_cast<std::size_t>(column + row * std::uint64_t{0x9E3779B97F4A7C15}) & (buckets() - 1);
    }

    /// Row by row, the cells between the leftmost and the rightmost spot of the edge in that row, with a margin all
    /// round for the tolerance and for the rounding of this very calculation.
    template <class Visit>
    void for_each_cell(std::size_t i, Visit visit) const {
        constexpr double margin = 2 * drafting_tolerance;
        arrow<double> a = corners_[i], b = corners_[i + 1 == corners_.size() ? 0 : i + 1];
        if (a.y > b.y)
            std::swap(a, b);
        const std::size_t bottom = cell_of(a.y - margin - low_.y), top = cell_of(b.y + margin - low_.y);
        // In two rows the whole width is taken: most edges are so short, and a level one has no slope to divide by.
        const bool is_steep = top > bottom + 1;
        for (std::size_t row = bottom; row <= top; ++row) {
            const double row_begin = low_.y + static_cast<double>(row) * cell_ - margin,
                         row_end = low_.y + static_cast<double>(row + 1) * cell_ + margin;
            const double x0 = is_steep ? x_at(a, b, row_begin) : a.x, x1 = is_steep ? x_at(a, b, row_end) : b.x;
            const std::size_t left = cell_of(std::min(x0, x1) - margin - low_.x),
                              right = cell_of(std::max(x0, x1) + margin - low_.x);
            for (std::size_t column = left; column <= right; ++column)
                visit(bucket_of(column, row));
        }
    }
    std::size_t cell_of(double from_low) const { return static_cast<std::size_t>(std::max(from_low / cell_, 0.0)); }
    static double x_at(const arrow<double>& a, const arrow<double>& b, double y) {
        return a.x + (b.x - a.x) * std::clamp((y - a.y) / (b.y - a.y), 0.0, 1.0);
    }

    const std::vector<arrow<double>>& corners_;
    arrow<double> low_;
    double cell_ = 1;
    std::vector<std::size_t> begins_, edges_;
};

/// Neighbours share a corner; they meet elsewhere only where the second turns back along the first.
inline std::optional<arrow<double>> neighbours_meet(const arrow<double>& a, const arrow<double>& shared,
                                                    const arrow<double>& b) {
    const bool back = turn(a, shared, b) == 0 && dot(a - shared, b - shared) > 0;
    return back ? std::optional(shared) : std::nullopt;
}

/// Visits every two edges that may meet, the one with the lower number first, perhaps more than once.
template <class Visit>
void for_each_close_pair(const std::vector<arrow<double>>& corners, Visit visit) {
    const grid cells(corners);
    for (std::size_t bucket = 0; bucket < cells.buckets(); ++bucket) {
        const auto [begin, end] = cells.in_bucket(bucket);
        for (const std::size_t* one = begin; one != end; ++one)
            for (const std::size_t* other = one + 1; other != end; ++other)
                if (*one != *other) // placed in order, so below it
                    visit(*one, *other);
    }
}

inline std::vector<edge_meeting> meetings_of(const std::vector<arrow<double>>& corners) {
    std::vector<edge_meeting> found;
    const std::size_t n = corners.size();
    for_each_close_pair(corners, [&](std::size_t i, std::size_t j) {
        const std::size_t i_end = i + 1 == n ? 0 : i + 1, j_end = j + 1 == n ? 0 : j + 1;
        const auto where = i_end == j   ? neighbours_meet(corners[i], corners[j], corners[j_end])
                           : j_end == i ? neighbours_meet(corners[j], corners[i], corners[i_end])
                                        : meet(corners[i], corners[i_end], corners[j], corners[j_end]);
        if (where)
            found.push_back({i, j, *where});
    });
    // Two edges may share several cells.
    const auto order = [](const edge_meeting& m) { return std::pair(m.first, m.second); };
    std::sort(found.begin(), found.end(), [&](const auto& a, const auto& b) { return order(a) < order(b); });
    found.erase(
        std::unique(found.begin(), found.end(), [&](const auto& a, const auto& b) { return order(a) == order(b); }),
        found.end());
    return found;
}

} // namespace turncloth::detail

#endif
