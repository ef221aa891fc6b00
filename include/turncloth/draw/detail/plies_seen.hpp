// Plies as one sees them from one side: what of a line or of hatching no nearer ply covers. In mm of cloth, from the
// upper left corner of all that is seen.
//
//   table_view                        from which side, and from where
//   plies_seen seen(plies, view)      the nearest first
//     .visible(segment, ply)          the pieces of a line of that ply that are in sight
//     .edges(folded)                  of all plies, each straight piece once
//     .hatching(apart)                slanting lines over every wrong side in sight
//
// The plies are convex, so that a straight line lies in each along one stretch; of a ply with holes it is left out again
// where they are. What runs along the edge of a nearer ply is covered: that ply draws it.
#ifndef TURNCLOTH_DRAW_DETAIL_PLIES_SEEN_HPP
#define TURNCLOTH_DRAW_DETAIL_PLIES_SEEN_HPP

#include <turncloth/draw/detail/straight_lines.hpp>
#include <turncloth/draw/detail/words.hpp>
#include <turncloth/making/on_table.hpp>

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <utility>
#include <vector>

namespace turncloth::detail {

/// Seen from beneath, the table is turned left to right.
struct table_view {
    double left = 0, top = 0, right = 0;
    double across = 1, down = 1; ///< what a length of the table is, in mm, were it a mm
    bool from_above = true;

    double x(double at) const { return across * (from_above ? at - left : right - at); }
    double y(double at) const { return down * (at - top); }
    template <length_unit Unit>
    page_point operator()(const table_point<Unit>& p) const {
        return {x(in_mm(p.x)), y(in_mm(p.y))};
    }
    template <length_unit Unit>
    page_segment operator()(const table_segment<Unit>& s) const {
        return {(*this)(s.from), (*this)(s.to)};
    }
    template <length_unit Unit>
    page_area operator()(const table_area<Unit>& a) const {
        const double one = x(in_mm(a.left)), other = x(in_mm(a.right)), high = y(in_mm(a.top));
        return {std::min(one, other), high, std::abs(other - one), y(in_mm(a.bottom)) - high};
    }
};

struct seen_ply {
    std::size_t index = 0; ///< in the stack, from the bottom up
    std::vector<page_point> corners{};
    std::vector<bool> folded{};
    std::vector<page_area> holes{};
    page_area round{};
    bool wrong_side = false; ///< in sight
};

/// The stretch of a line inside a convex figure or on its edge, as of span_inside.
inline std::pair<double, double> span_within(const std::vector<page_point>& convex, const page_segment& s) {
    double turn = 0, first = 0, last = 1;
    for (std::size_t i = 0; i < convex.size(); ++i)
        turn += side_of({convex[0], convex[i]}, convex[(i + 1) % convex.size()]);
    for (std::size_t i = 0; i < convex.size(); ++i) {
        const page_segment side{convex[i], convex[(i + 1) % convex.size()]};
        const double long_ = distance(side.from, side.to) * (turn < 0 ? -1 : 1);
        const double at_from = side_of(side, s.from) / long_, at_to = side_of(side, s.to) / long_;
        if (at_from < -too_thin && at_to < -too_thin)
            return {1, 0};
        if (at_from < -too_thin)
            first = std::max(first, at_from / (at_from - at_to));
        if (at_to < -too_thin)
            last = std::min(last, at_from / (at_from - at_to));
    }
    return {first, last};
}

class plies_seen {
public:
    using spans = straight_lines::spans;

    template <length_unit Unit>
    plies_seen(const std::vector<ply_lying<Unit>>& plies, const table_view& view) {
        for (std::size_t i = 0; i < plies.size(); ++i) {
            const std::size_t k = view.from_above ? plies.size() - 1 - i : i;
            const ply_lying<Unit>& p = plies[k];
            seen_ply made{.index = k};
            for (const table_point<Unit>& c : p.corners)
                made.corners.push_back(view(c));
            made.folded = p.folded;
            for (const table_area<Unit>& hole : p.holes)
                made.holes.push_back(view(hole));
            made.round = around(made.corners);
            made.wrong_side = (p.up == face::wrong) == view.from_above;
            all_.push_back(std::move(made));
        }
    }

    const std::vector<seen_ply>& nearest_first() const { return all_; }

    /// Of a line on a ply by its place in the stack.
    std::vector<page_segment> visible(const page_segment& s, std::size_t ply) const {
        spans covered;
        for (const seen_ply& p : all_) {
            if (p.index == ply)
                break;
            cover(covered, p, s);
        }
        return pieces(s, straight_lines::left_of({{0.0, 1.0}}, straight_lines::joined_up(std::move(covered))));
    }
    /// Where the part's cloth is the nearest, of a line on it.
    template <length_unit Unit>
    std::vector<page_segment> on_top(const page_segment& s, const std::vector<ply_lying<Unit>>& plies,
                                     const cut_part& part) const {
        spans covered, found;
        for (const seen_ply& p : all_) {
            if (plies[p.index].of == part)
                for (const auto& here : straight_lines::left_of(within(p, s), covered))
                    found.push_back(here);
            cover(covered, p, s);
            covered = straight_lines::joined_up(std::move(covered));
        }
        return pieces(s, straight_lines::joined_up(std::move(found)));
    }
    /// Where none of the plies lies.
    std::vector<page_segment> uncovered(const page_segment& s) const { return visible(s, all_.size()); }

    std::vector<page_segment> edges(bool folded) const {
        straight_lines found;
        for (const seen_ply& p : all_)
            for (std::size_t i = 0; i < p.corners.size(); ++i)
                if (p.folded[i] == folded)
                    for (const page_segment& s :
                         visible({p.corners[i], p.corners[(i + 1) % p.corners.size()]}, p.index))
                        found.add(s);
        return found.without({});
    }
    /// What is cut open, or out.
    std::vector<page_segment> slits() const {
        straight_lines found;
        for (const seen_ply& p : all_)
            for (const page_area& hole : p.holes) {
                const auto c = hole.corners();
                for (std::size_t i = 0; i < c.size(); ++i)
                    for (const page_segment& s : visible({c[i], c[(i + 1) % c.size()]}, p.index))
                        found.add(s);
            }
        return found.without({});
    }

    /// Parallel lines so far apart, at 60 degrees, the first of them through the origin.
    std::vector<page_segment> hatching(double apart) const {
        std::vector<page_segment> made;
        if (std::none_of(all_.begin(), all_.end(), [](const seen_ply& p) { return p.wrong_side; }))
            return made;
        page_area all = all_[0].round;
        for (const seen_ply& p : all_) {
            const double right = std::max(all.right(), p.round.right()), low = std::max(all.bottom(), p.round.bottom());
            all.x = std::min(all.x, p.round.x), all.y = std::min(all.y, p.round.y);
            all.width = right - all.x, all.height = low - all.y;
        }
        const double lean = 1 / std::sqrt(3.0), step = apart * 2 / std::sqrt(3.0);
        const double low = all.x + lean * all.y, high = all.right() + lean * all.bottom();
        const auto last = static_cast<std::int64_t>(std::floor(high / step));
        for (auto k = static_cast<std::int64_t>(std::ceil(low / step)); k <= last; ++k) {
            const double at = static_cast<double>(k) * step;
            add_hatch(made, {{at - lean * all.y, all.y}, {at - lean * all.bottom(), all.bottom()}});
        }
        return made;
    }

private:
    static page_area around(const std::vector<page_point>& corners) {
        double left = corners[0].x, right = left, top = corners[0].y, bottom = top;
        for (const page_point& p : corners) {
            left = std::min(left, p.x), right = std::max(right, p.x);
            top = std::min(top, p.y), bottom = std::max(bottom, p.y);
        }
        return {left, top, right - left, bottom - top};
    }
    static bool may_meet(const page_segment& s, const page_area& a) {
        return std::max(s.from.x, s.to.x) >= a.x - too_thin && std::min(s.from.x, s.to.x) <= a.right() + too_thin &&
               std::max(s.from.y, s.to.y) >= a.y - too_thin && std::min(s.from.y, s.to.y) <= a.bottom() + too_thin;
    }
    static spans within(const seen_ply& p, const page_segment& s) {
        const auto [first, last] = span_within(p.corners, s);
        if (last <= first)
            return {};
        spans gone;
        for (const page_area& hole : p.holes)
            if (const auto out = span_inside(s, hole); out.first < out.second)
                gone.push_back(out);
        return straight_lines::left_of({{first, last}}, straight_lines::joined_up(std::move(gone)));
    }
    static void cover(spans& covered, const seen_ply& p, const page_segment& s) {
        if (!may_meet(s, p.round))
            return;
        const spans here = within(p, s);
        covered.insert(covered.end(), here.begin(), here.end());
    }
    static std::vector<page_segment> pieces(const page_segment& s, const spans& of) {
        std::vector<page_segment> all;
        const page_point way{s.to.x - s.from.x, s.to.y - s.from.y};
        for (const auto& [from, to] : of)
            if ((to - from) * distance(s.from, s.to) > too_thin)
                all.push_back({moved(s.from, way, from), moved(s.from, way, to)});
        return all;
    }
    void add_hatch(std::vector<page_segment>& made, const page_segment& s) const {
        spans covered;
        for (const seen_ply& p : all_) {
            if (!may_meet(s, p.round))
                continue;
            const spans here = within(p, s);
            if (p.wrong_side)
                for (const page_segment& line : pieces(s, straight_lines::left_of(here, covered)))
                    made.push_back(line);
            covered.insert(covered.end(), here.begin(), here.end());
            covered = straight_lines::joined_up(std::move(covered));
        }
    }

    std::vector<seen_ply> all_{};
};

/// Of pieces that lie on a level or upright line, where the longest runs along it; all of the line where none does.
inline page_segment longest_on(const page_segment& line, const std::vector<page_segment>& pieces) {
    const bool level = line.from.y == line.to.y;
    const auto along = [&](const page_segment& s) {
        return level ? std::minmax({s.from.x, s.to.x}) : std::minmax({s.from.y, s.to.y});
    };
    const double across = level ? line.from.y : line.from.x;
    const auto off = [&](const page_point& p) { return std::abs((level ? p.y : p.x) - across); };
    std::pair<double, double> most = along(line);
    double longest = 0;
    for (const page_segment& s : pieces) {
        const double from = std::max(along(s).first, along(line).first),
                     to = std::min(along(s).second, along(line).second);
        if (off(s.from) <= too_thin && off(s.to) <= too_thin && to - from > longest) {
            longest = to - from;
            most = {from, to};
        }
    }
    return level ? page_segment{{most.first, across}, {most.second, across}}
                 : page_segment{{across, most.first}, {across, most.second}};
}

} // namespace turncloth::detail

#endif
