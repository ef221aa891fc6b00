// The faces into which a closed line that crosses itself divides the plane, walked round edge by edge.
//
//   detail::arrangement a(kept, ring)      points within the drafting tolerance are one, and `kept` ones stay where they are
//   a.outer_boundary()                     counter-clockwise round all that the ring covers
//   a.face_beside(owner)                   counter-clockwise round what lies left of where that owner's edge starts
//
//   detail::owned_ring bow;   bow.add({0, 0}, 0);   bow.add({4, 4}, 1);   bow.add({4, 0}, 2);   bow.add({0, 4}, 3);
//   detail::arrangement({}, bow).outer_boundary()      has 6 sides
//
// Edges are split wherever they meet, touch or lie on each other, and what is run along both ways is left out: no cloth
// ends there. The outer boundary is that of what the ring covers where it winds round nothing the wrong way. Which side
// follows at a point is read off the sides in order of their angle, so that a walk always comes back to where it began.
// An internal header of trimmed.hpp.
#ifndef TURNCLOTH_PANEL_DETAIL_ARRANGEMENT_HPP
#define TURNCLOTH_PANEL_DETAIL_ARRANGEMENT_HPP

#include <turncloth/panel/detail/crossings.hpp>

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <map>
#include <tuple>
#include <utility>
#include <vector>

namespace turncloth::detail {

inline constexpr std::size_t nobody = static_cast<std::size_t>(-1);

/// The corners of a closed line, and of each the owner of the edge that starts there.
struct owned_ring {
    std::vector<arrow<double>> corners;
    std::vector<std::size_t> owners;

    void add(const arrow<double>& corner, std::size_t owner) {
        corners.push_back(corner);
        owners.push_back(owner);
    }
};

/// Of a face: from one point to another. Where edges lie on each other the owner with the lowest number has it.
struct face_side {
    std::size_t from, to, owner;
};

class arrangement {
public:
    arrangement(const std::vector<arrow<double>>& kept, const owned_ring& ring) {
        for (const arrow<double>& p : kept)
            point_at(p);
        kept_ = points_.size();
        split(ring.corners);
        join(ring.owners);
    }

    const arrow<double>& operator[](std::size_t point) const { return points_[point]; }
    bool is_kept(std::size_t point) const { return point < kept_; }

    std::vector<face_side> outer_boundary() const {
        std::size_t lowest = sides_.front().from;
        for (const side& s : sides_)
            if (std::tie(points_[s.from].y, points_[s.from].x) < std::tie(points_[lowest].y, points_[lowest].x))
                lowest = s.from;
        // Nothing lies below it or level with it on the left, so that its last side, the one with the largest angle, has
        // all of the outside on its left.
        std::vector<face_side> clockwise = face(begin_[lowest + 1] - 1), boundary;
        for (auto s = clockwise.rbegin(); s != clockwise.rend(); ++s)
            boundary.push_back({s->to, s->from, s->owner});
        return boundary;
    }

    std::vector<face_side> face_beside(std::size_t owner) const {
        const auto edge =
            std::find_if(sides_.begin(), sides_.end(), [&](const side& s) { return s.forward && s.owner == owner; });
        return edge == sides_.end() ? std::vector<face_side>() : face(static_cast<std::size_t>(edge - sides_.begin()));
    }

private:
    struct stop { // where the ring's edge is split
        std::size_t edge;
        double along;
        std::size_t point;
    };
    struct side {
        std::size_t from, to, owner;
        bool forward; // the way its owner's edge runs
        double angle;
    };

    /// The first point within the tolerance, or a new one. A cell holds at most one, and those round it hold the rest.
    std::size_t point_at(const arrow<double>& p) {
        constexpr double cell = drafting_tolerance;
        const auto column = std::llround(p.x / cell), row = std::llround(p.y / cell);
        for (auto c = column - 1; c <= column + 1; ++c)
            for (auto found = cells_.lower_bound({c, row - 1}); found != cells_.end(); ++found) {
                if (found->first > std::pair(c, row + 1))
                    break;
                if (same(points_[found->second], p))
                    return found->second;
            }
        cells_.emplace(std::pair(column, row), points_.size());
        points_.push_back(p);
        return points_.size() - 1;
    }

    void split(const std::vector<arrow<double>>& ring) {
        const std::size_t n = ring.size();
        const auto end_of = [&](std::size_t i) -> const arrow<double>& { return ring[i + 1 == n ? 0 : i + 1]; };
        const auto stop_at = [&](std::size_t i, const arrow<double>& p, std::size_t point) {
            stops_.push_back({i, dot(p - ring[i], end_of(i) - ring[i]), point});
        };
        std::vector<std::size_t> starts;
        starts.reserve(n);
        for (const arrow<double>& p : ring)
            starts.push_back(point_at(p));
        for (std::size_t i = 0; i < n; ++i) {
            stop_at(i, ring[i], starts[i]);
            stop_at(i, end_of(i), starts[i + 1 == n ? 0 : i + 1]);
        }
        for_each_close_pair(ring, [&](std::size_t i, std::size_t j) {
            const auto both = [&](const arrow<double>& p) {
                const std::size_t point = point_at(p);
                stop_at(i, p, point);
                stop_at(j, p, point);
            };
            const arrow<double>&a = ring[i], &b = end_of(i), &c = ring[j], &d = end_of(j);
            bool touching = false;
            for (const auto& [p, from, to] :
                 {std::tuple(c, a, b), std::tuple(d, a, b), std::tuple(a, c, d), std::tuple(b, c, d)})
                if (lies_on(p, from, to))
                    both(p), touching = true;
            if (!touching && side_of(a, b, c) * side_of(a, b, d) < 0 && side_of(c, d, a) * side_of(c, d, b) < 0)
                both(a + (b - a) * (cross(c - a, d - c) / cross(b - a, d - c)));
        });
    }

    /// A quarter of the tolerance: what is a little further along than an end counts as that end, to which it is nearer
    /// than the tolerance. Edges that cross without either end on the other are then further apart on both sides.
    static int side_of(const arrow<double>& a, const arrow<double>& b, const arrow<double>& p) {
        const double size = length_of_arrow(b - a), off = size > 0 ? cross(b - a, p - a) / size : 0;
        return (off > drafting_tolerance / 4) - (off < -drafting_tolerance / 4);
    }
    static bool lies_on(const arrow<double>& p, const arrow<double>& a, const arrow<double>& b) {
        const double along = dot(p - a, b - a), whole = dot(b - a, b - a);
        return whole > 0 && along >= 0 && along <= whole && side_of(a, b, p) == 0;
    }

    /// Joins the stops of each edge in order, and keeps of the sides between two points what is left when runs both
    /// ways have cancelled each other.
    void join(const std::vector<std::size_t>& owners) {
        std::sort(stops_.begin(), stops_.end(),
                  [](const stop& a, const stop& b) { return std::tie(a.edge, a.along) < std::tie(b.edge, b.along); });
        struct runs {
            int net = 0; // forward less backward
            std::size_t owner = nobody;
        };
        std::map<std::pair<std::size_t, std::size_t>, runs> between;
        for (std::size_t i = 0; i + 1 < stops_.size(); ++i) {
            const stop &from = stops_[i], &to = stops_[i + 1];
            if (from.edge != to.edge || from.point == to.point)
                continue;
            runs& all = between[std::minmax(from.point, to.point)];
            all.net += from.point < to.point ? 1 : -1;
            all.owner = std::min(all.owner, owners[from.edge]);
        }
        for (const auto& [ends, all] : between)
            if (all.net != 0) {
                add(ends.first, ends.second, all.owner, all.net > 0);
                add(ends.second, ends.first, all.owner, all.net < 0);
            }
        std::sort(sides_.begin(), sides_.end(), [](const side& a, const side& b) {
            return std::tie(a.from, a.angle, a.to) < std::tie(b.from, b.angle, b.to);
        });
        begin_.assign(points_.size() + 1, 0);
        for (const side& s : sides_)
            ++begin_[s.from + 1];
        for (std::size_t i = 0; i < points_.size(); ++i)
            begin_[i + 1] += begin_[i];
    }
    void add(std::size_t from, std::size_t to, std::size_t owner, bool forward) {
        const arrow<double> way = points_[to] - points_[from];
        sides_.push_back({from, to, owner, forward, std::atan2(way.y, way.x)});
    }

    /// With the face on the left, what follows is the first side clockwise from the way back.
    std::size_t next(std::size_t i) const {
        const std::size_t first = begin_[sides_[i].to], last = begin_[sides_[i].to + 1] - 1;
        std::size_t back = first;
        while (sides_[back].to != sides_[i].from)
            ++back;
        return back == first ? last : back - 1;
    }
    std::vector<face_side> face(std::size_t start) const {
        std::vector<face_side> all;
        std::size_t i = start;
        do {
            all.push_back({sides_[i].from, sides_[i].to, sides_[i].owner});
            i = next(i);
        } while (i != start);
        return all;
    }

    std::map<std::pair<long long, long long>, std::size_t> cells_;
    std::vector<arrow<double>> points_;
    std::size_t kept_ = 0;
    std::vector<stop> stops_;
    std::vector<side> sides_;        // both ways, in order of their first point and then of their angle
    std::vector<std::size_t> begin_; // of each point, where its sides begin; and the end
};

} // namespace turncloth::detail

#endif
