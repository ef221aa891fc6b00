// Straight-edged pieces of any shape: from the drafted seam line to the line to cut on.
//
//   edge_allowance<U>{allowance, first_turn}      how far outside the seam line an edge is cut; what of it is turned under first
//   corner_shape                        mitred, squared to or reflected in the edge before or after the corner
//   outline<U>(seam_line, allowances, shapes, limit)     the piece; throws outline_error for a seam line that crosses itself
//   o.seam_line()  o.cut_line()         polygons: area_of, perimeter_of and locate of polygon.hpp take them
//   o.allowance_of(i)                        of edge i
//   o.cut_edge(i)                       the straight of the cut line that belongs to edge i
//   o.strip(i)                          what the allowance of edge i adds to the piece
//   o.carried({edge, from_start})       a notch on the seam line, and the spot on the cut line square to it
//   o.crossings()                       where the cut line crosses itself: trimmed.hpp then has the line to cut along
//   o.angle_to_grain(i, grain)          in degrees, 0 for an edge along the grain, 90 across it, 45 on the bias
//
//   const outline<centimetre> gusset({drafted_point<centimetre>(0, 0), drafted_point<centimetre>(30, 0),
//                                     drafted_point<centimetre>(0, 20)}, {drafted_length_of<centimetre>(1.5)});
//   area_of(gusset.cut_line()) > area_of(gusset.seam_line());
//
// Drafted in doubles, as the offset of a slanting edge has a square root: a result is within about 1e-12 of the size of
// the piece. Edge i runs from corner i to corner i + 1; corners may run either way round. Indexes, those of a refusal's facts
// too, are from 0; its sentence counts edges and corners from 1, as sheets and drawings do. Not part of turncloth.hpp.
#ifndef TURNCLOTH_PANEL_OUTLINE_HPP
#define TURNCLOTH_PANEL_OUTLINE_HPP

#include <turncloth/measure/require.hpp>
#include <turncloth/panel/detail/crossings.hpp>
#include <turncloth/panel/detail/cut_corner.hpp>
#include <turncloth/panel/polygon.hpp>

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <numbers>
#include <string>
#include <utility>
#include <vector>

namespace turncloth {

/// An outline that cannot be drafted.
class outline_error : public error {
public:
    using error::error;
};

template <length_unit Unit>
struct edge_allowance {
    drafted_length<Unit> allowance{};  ///< from the seam line out to the cut line; the seam line is the finished edge
    drafted_length<Unit> first_turn{}; ///< of that, what is turned under first where the edge is a hem turned twice

    constexpr edge_allowance() = default;
    constexpr edge_allowance(drafted_length<Unit> all, drafted_length<Unit> under = {})
        : allowance(all), first_turn(under) {}

    friend constexpr bool operator==(const edge_allowance&, const edge_allowance&) = default;
};

/// What the cut line does where two edges meet at an outward corner. At an inward or straight one the two cut lines
/// meet, whatever the shape.
enum class corner_shape {
    mitred,                 ///< both cut lines go on until they meet, or are cut off at the limit
    squared_to_edge_before, ///< the allowance of the edge before ends square to it, where its seam line leaves the piece
    squared_to_edge_after,  ///< the same for the edge after
    reflected_in_edge_before, ///< the edge before is a hem: folded in, its ends lie on the cut line of the edge after
    reflected_in_edge_after   ///< the same for the edge after
};

/// A mark on the seam line: of an edge, and how far from where the edge starts.
template <length_unit Unit>
struct notch {
    std::size_t edge;
    drafted_length<Unit> from_start;

    friend constexpr bool operator==(const notch&, const notch&) = default;
};

/// A notch on both lines.
template <length_unit Unit>
struct carried_notch {
    point<Unit, double> on_seam, on_cut;

    friend constexpr bool operator==(const carried_notch&, const carried_notch&) = default;
};

/// Where two edges of the cut line cross or touch.
template <length_unit Unit>
struct cut_crossing {
    std::size_t first, second; ///< edges of the cut line, each from the corner of its number to the next
    point<Unit, double> where;

    friend constexpr bool operator==(const cut_crossing&, const cut_crossing&) = default;
};

/// What the allowance of an edge adds to the piece: round from where the edge starts, over the cut line, to where it ends.
template <length_unit Unit>
struct allowance_strip {
    polygon<Unit, double> corners;
    std::size_t cut_edge; ///< the corner from which the edge's straight of the cut line runs to the next

    friend bool operator==(const allowance_strip&, const allowance_strip&) = default;
};

template <length_unit Unit>
class outline {
public:
    using point_type = point<Unit, double>;
    using line_type = polygon<Unit, double>;

    /// One allowance for each edge, or one for all; one shape for each corner, one for all, or none for mitred. A mitre
    /// that stands out reaches at most `limit` times the larger of its two allowances from the seam line's corner. Throws
    /// outline_error, for a corner too straight or too sharp to be squared or reflected within the limit too, and where a
    /// coordinate of either line, an allowance or the limit is beyond `largest_coordinate` or not a number. Where the
    /// piece turns by less than 30 degrees, an allowance that is wider than its neighbour's ends square to its own edge,
    /// in a step.
    outline(line_type seam_line, std::vector<edge_allowance<Unit>> allowances, std::vector<corner_shape> shapes = {},
            double limit = 4)
        : seam_(std::move(seam_line)), allowances_(std::move(allowances)), shapes_(std::move(shapes)), limit_(limit) {
        require_sound();
        const std::size_t n = seam_.size();
        outward_ = signed_area_of(seam_).value() > 0 ? 1 : -1;
        along_.reserve(n);
        for (std::size_t i = 0; i < n; ++i) {
            const vector edge = at(i + 1) - at(i);
            along_.push_back(edge * (1 / detail::length_of_arrow(edge)));
        }
        cut_.reserve(2 * n);
        first_of_.reserve(n);
        part_.reserve(n);
        for (std::size_t i = 0; i < n; ++i) {
            first_of_.push_back(cut_.size());
            shape(i);
        }
        first_of_.push_back(cut_.size());
    }

    const line_type& seam_line() const { return seam_; }
    const line_type& cut_line() const { return cut_; }

    const edge_allowance<Unit>& allowance_of(std::size_t i) const {
        require_edge(i);
        return allowances_.size() == 1 ? allowances_[0] : allowances_[i];
    }

    /// From where to where the cut line keeps the allowance of edge i.
    std::pair<point_type, point_type> cut_edge(std::size_t i) const {
        require_edge(i);
        return {cut_[first_of_[i + 1] - 1], cut_[first_of_[after(i)]]};
    }

    /// Its ends lie on the way out from an outward corner to where the two allowances part. At an inward corner they are
    /// square to the edge, or run to where the cut lines meet if that is further on: strips may overlap there.
    allowance_strip<Unit> strip(std::size_t i) const {
        require_edge(i);
        allowance_strip<Unit> s{{seam_[i]}, 0};
        const point_type *first = &cut_[first_of_[i]], *last = &cut_[first_of_[i + 1] - 1];
        if (part_[i] == detail::strips_part::nowhere)
            s.corners.push_back(end_of_strip(i, i, *last, -1));
        else
            s.corners.insert(s.corners.end(), part_[i] == detail::strips_part::at_first ? first : last, last + 1);
        s.cut_edge = s.corners.size() - 1;
        const std::size_t next = after(i);
        first = &cut_[first_of_[next]], last = &cut_[first_of_[next + 1] - 1];
        if (part_[next] == detail::strips_part::nowhere)
            s.corners.push_back(end_of_strip(i, next, *first, 1));
        else
            s.corners.insert(s.corners.end(), first, (part_[next] == detail::strips_part::at_last ? last : first) + 1);
        s.corners.push_back(seam_[next]);
        return s;
    }

    /// Carries a notch out square to the seam. Throws outline_error where the edge is too short for it, or where a
    /// corner has taken away the cut edge opposite.
    carried_notch<Unit> carried(const notch<Unit>& mark) const {
        require_edge(mark.edge);
        const double from_start = mark.from_start.value();
        const double edge_length = detail::length_of_arrow(at(mark.edge + 1) - at(mark.edge));
        if (from_start < 0 || !detail::is_within(from_start, edge_length))
            detail::refuse<outline_error>("a notch on edge " + std::to_string(mark.edge + 1) + " must lie from 0 to " +
                                              std::to_string(edge_length) + " from its start: it was at " +
                                              std::to_string(from_start),
                                          refusal{.kind = from_start < 0 ? fault::too_small : fault::too_large,
                                                  .what = "a notch",
                                                  .given = amount_of(from_start),
                                                  .least = amount_of(0.0),
                                                  .most = amount_of(edge_length),
                                                  .index = mark.edge});
        const vector on_seam = at(mark.edge) + along_[mark.edge] * from_start;
        const vector on_cut = on_seam + normal(mark.edge) * allowance(mark.edge);
        const auto [begin, end] = cut_edge(mark.edge);
        const double from = detail::dot(detail::bare(begin) - on_cut, along_[mark.edge]),
                     to = detail::dot(detail::bare(end) - on_cut, along_[mark.edge]);
        if (from > drafting_tolerance || to < -drafting_tolerance)
            detail::refuse<outline_error>(
                "the notch " + std::to_string(from_start) + " along edge " + std::to_string(mark.edge + 1) +
                    " has no cut edge opposite: the corner beside it takes that away",
                refusal{
                    .kind = fault::unsuitable, .what = "a notch", .given = amount_of(from_start), .index = mark.edge});
        return {detail::in_unit<Unit>(on_seam), detail::in_unit<Unit>(on_cut)};
    }

    /// In the order of the edges; time and space grow with the number of edges where they are short beside the piece.
    std::vector<cut_crossing<Unit>> crossings() const {
        std::vector<cut_crossing<Unit>> found;
        for (const detail::edge_meeting& m : detail::meetings_of(bare(cut_)))
            found.push_back({m.first, m.second, detail::in_unit<Unit>(m.where)});
        return found;
    }

    /// Between edge i and the grain, from 0 to 90 degrees. Throws outline_error for a grain line without direction, or one
    /// that is given by points beyond `largest_coordinate`.
    double angle_to_grain(std::size_t i, const line<Unit, double>& grain) const {
        require_edge(i);
        for (const point_type& p : {grain.from, grain.to})
            detail::require_drafted<outline_error>(detail::bare(p), "a point of a grain line");
        const vector way = detail::bare(grain.to) - detail::bare(grain.from);
        if (detail::length_of_arrow(way) == 0)
            detail::refuse<outline_error>("a grain line needs two different points",
                                          refusal{fault::unsuitable, "a grain line"});
        return std::atan2(std::abs(detail::cross(along_[i], way)), std::abs(detail::dot(along_[i], way))) * 180 /
               std::numbers::pi;
    }

    /// Of what they were made of.
    friend bool operator==(const outline& a, const outline& b) {
        return a.seam_ == b.seam_ && a.allowances_ == b.allowances_ && a.shapes_ == b.shapes_ && a.limit_ == b.limit_;
    }

private:
    using vector = detail::arrow<double>;

    static std::vector<vector> bare(const line_type& corners) {
        std::vector<vector> all;
        all.reserve(corners.size());
        for (const point_type& p : corners)
            all.push_back(detail::bare(p));
        return all;
    }

    void require_sound() const {
        require_counts(seam_.size());
        for (const point_type& p : seam_)
            detail::require_drafted<outline_error>(detail::bare(p), "a corner of a seam line");
        for (std::size_t i = 0; i < seam_.size(); ++i)
            require_length(i);
        for (std::size_t i = 0; i < allowances_.size(); ++i)
            require_allowance(allowances_[i], i);
        const auto meetings = detail::meetings_of(bare(seam_));
        if (!meetings.empty())
            detail::refuse<outline_error>(
                "a seam line must not cross itself: edges " + std::to_string(meetings[0].first + 1) + " and " +
                    std::to_string(meetings[0].second + 1) + " meet at (" + std::to_string(meetings[0].where.x) + ", " +
                    std::to_string(meetings[0].where.y) + ")",
                refusal{.kind = fault::disagree, .what = "a seam line", .index = meetings[0].first});
    }
    void require_counts(std::size_t n) const {
        require_at_least<outline_error>(n, std::size_t{3}, "the number of corners of an outline");
        if (allowances_.size() != 1 && allowances_.size() != n)
            detail::refuse<outline_error>("an outline of " + std::to_string(n) + " edges needs 1 allowance or " +
                                              std::to_string(n) + ": it had " + std::to_string(allowances_.size()),
                                          refusal{.kind = fault::disagree,
                                                  .what = "the number of allowances",
                                                  .given = amount_of(allowances_.size()),
                                                  .most = amount_of(n)});
        if (shapes_.size() > 1 && shapes_.size() != n)
            detail::refuse<outline_error>("an outline of " + std::to_string(n) + " corners needs 1 shape or " +
                                              std::to_string(n) + ": it had " + std::to_string(shapes_.size()),
                                          refusal{.kind = fault::disagree,
                                                  .what = "the number of corner shapes",
                                                  .given = amount_of(shapes_.size()),
                                                  .most = amount_of(n)});
        if (limit_ < 1 || !detail::is_within(limit_, largest_coordinate))
            detail::refuse<outline_error>("the limit of a mitre must be from 1 to 1000000: it was " +
                                              std::to_string(limit_),
                                          refusal{.kind = limit_ < 1 ? fault::too_small : fault::too_large,
                                                  .what = "the limit of a mitre",
                                                  .given = amount_of(limit_),
                                                  .least = amount_of(1.0),
                                                  .most = amount_of(largest_coordinate)});
    }
    void require_length(std::size_t i) const {
        const double size = detail::length_of_arrow(at(i + 1) - at(i));
        if (size <= drafting_tolerance)
            detail::refuse<outline_error>(
                "edge " + std::to_string(i + 1) + " of an outline must have a length: its corners were one point",
                refusal{
                    .kind = fault::unsuitable, .what = "an edge of an outline", .given = amount_of(size), .index = i});
    }
    static void require_allowance(const edge_allowance<Unit>& t, std::size_t i) {
        const double all = t.allowance.value(), under = t.first_turn.value();
        if (!detail::is_within(all, largest_coordinate) || !detail::is_within(under, all) || all < 0 || under < 0)
            detail::refuse<outline_error>(
                "an allowance must be from zero to 1000000, and at least what is turned under first: it was " +
                    std::to_string(all) + " with " + std::to_string(under) + " turned under",
                refusal{.kind = detail::is_within(all, largest_coordinate) ? fault::too_small : fault::too_large,
                        .what = "an allowance",
                        .given = amount_of(all),
                        .least = amount_of(std::max(0.0, under)),
                        .most = amount_of(largest_coordinate),
                        .index = i});
    }
    void require_edge(std::size_t i) const {
        if (i >= seam_.size())
            detail::refuse<outline_error>("there is no edge " + std::to_string(i + 1) + ": the outline has " +
                                              std::to_string(seam_.size()),
                                          refusal{.kind = fault::too_large,
                                                  .what = "the number of an edge",
                                                  .given = amount_of(i + 1),
                                                  .most = amount_of(seam_.size()),
                                                  .index = i});
    }

    vector at(std::size_t i) const { return detail::bare(seam_[i < seam_.size() ? i : i - seam_.size()]); }
    double allowance(std::size_t i) const { return allowance_of(i).allowance.value(); }
    double first_turn(std::size_t i) const { return allowance_of(i).first_turn.value(); }
    std::size_t after(std::size_t i) const { return i + 1 == seam_.size() ? 0 : i + 1; }
    corner_shape shape_of(std::size_t i) const {
        return shapes_.empty() ? corner_shape::mitred : shapes_.size() == 1 ? shapes_[0] : shapes_[i];
    }
    /// Outward, of length 1.
    vector normal(std::size_t i) const { return {along_[i].y * outward_, -along_[i].x * outward_}; }

    /// A corner that lies on the one before it is left out.
    void add(const vector& p) {
        detail::require_drafted<outline_error>(p, "a corner of a cut line");
        const bool again = cut_.size() > first_of_.back() && detail::same(detail::bare(cut_.back()), p);
        if (!again)
            cut_.push_back(detail::in_unit<Unit>(p));
    }

    /// At an inward corner: square to the edge, or `meeting` if that lies beyond, 1 after the edge and -1 before it.
    point_type end_of_strip(std::size_t i, std::size_t corner, const point_type& meeting, double beyond) const {
        const vector v = at(corner);
        const bool runs_on = detail::dot(detail::bare(meeting) - v, along_[i]) * beyond > 0;
        return runs_on ? meeting : detail::in_unit<Unit>(v + normal(i) * allowance(i));
    }

    void shape(std::size_t i) {
        const detail::cut_corner corner = shaped(i, i == 0 ? seam_.size() - 1 : i - 1);
        for (std::size_t k = 0; k < corner.count; ++k)
            add(at(i) + corner.points[k]);
        part_.push_back(corner.part);
    }

    detail::cut_corner shaped(std::size_t i, std::size_t before) const {
        const detail::seam_corner c{along_[before], along_[i],         normal(before),
                                    normal(i),      allowance(before), allowance(i)};
        const double sine = detail::cross(c.d1, c.d2) * outward_; // of the turn: above zero at an outward corner
        const corner_shape chosen = sine > 1e-12 ? shape_of(i) : corner_shape::mitred;
        if (chosen == corner_shape::mitred)
            return detail::mitred_corner(c, sine > 0, limit_);
        require_turn(i, sine);
        switch (chosen) {
        case corner_shape::squared_to_edge_before:
            return detail::squared_corner(c, detail::leaves(c, sine, true), true);
        case corner_shape::squared_to_edge_after:
            return detail::squared_corner(c, detail::leaves(c, sine, false), false);
        case corner_shape::reflected_in_edge_before:
            return detail::reflected_corner(c, detail::leaves(c, sine, true), true, first_turn(before));
        default:
            return detail::reflected_corner(c, detail::leaves(c, sine, false), false, first_turn(i));
        }
    }

    void require_turn(std::size_t i, double sine) const {
        if (sine * limit_ < 1)
            detail::refuse<outline_error>(
                "corner " + std::to_string(i + 1) +
                    " is too straight or too sharp to be squared or reflected: its cut lines would "
                    "run on for more than " +
                    std::to_string(limit_) + " allowances; mitre it",
                refusal{.kind = fault::unsuitable, .what = "the shape of a corner", .index = i});
    }

    line_type seam_, cut_;
    std::vector<edge_allowance<Unit>> allowances_;
    std::vector<corner_shape> shapes_;
    double limit_;
    double outward_ = 1;
    std::vector<vector> along_;         // of each edge, its direction with length 1
    std::vector<std::size_t> first_of_; // of each corner, where its part of the cut line begins; and the end
    std::vector<detail::strips_part> part_;
};

TURNCLOTH_ONCE(class outline<inch>);
TURNCLOTH_ONCE(class outline<centimetre>);

} // namespace turncloth

#endif
