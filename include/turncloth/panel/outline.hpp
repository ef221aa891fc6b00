// Straight-edged pieces of any shape: from the drafted seam line to the line to cut on.
//
//   edge_allowance<U>{allowance, first_turn}      how far outside the seam line an edge is cut; what of it is turned under first
//   corner_shape                        mitred, squared to or reflected in the edge before or after the corner
//   outline<U>(seam_line, allowances, shapes, limit)     the piece; throws outline_error for a seam line that crosses itself
//   o.seam_line()  o.cut_line()         polygons: area_of, perimeter_of and locate of polygon.hpp take them
//   o.allowance_of(i)                        of edge i
//   o.cut_edge(i)                       the straight of the cut line that belongs to edge i
//   o.carried({edge, from_start})       a notch on the seam line, and the spot on the cut line square to it
//   o.crossings()                       where the cut line crosses itself; empty for one that can be cut
//   o.angle_to_grain(i, grain)          in degrees, 0 for an edge along the grain, 90 across it, 45 on the bias
//
//   const outline<centimetre> gusset({drafted_point<centimetre>(0, 0), drafted_point<centimetre>(30, 0),
//                                     drafted_point<centimetre>(0, 20)}, {drafted_length_of<centimetre>(1.5)});
//   area_of(gusset.cut_line()) > area_of(gusset.seam_line());
//
// Drafted in doubles, as the offset of a slanting edge has a square root: a result is within about 1e-12 of the size of
// the piece. Edge i runs from corner i to corner i + 1; corners may run either way round. Not part of turncloth.hpp.
#ifndef TURNCLOTH_PANEL_OUTLINE_HPP
#define TURNCLOTH_PANEL_OUTLINE_HPP

#include <turncloth/measure/require.hpp>
#include <turncloth/panel/detail/crossings.hpp>
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

template <length_unit Unit>
class outline {
public:
    using point_type = point<Unit, double>;
    using line_type = polygon<Unit, double>;

    /// One allowance for each edge, or one for all; one shape for each corner, one for all, or none for mitred. A mitre
    /// reaches at most `limit` times the larger of its two allowances from the seam line's corner. Throws outline_error, for
    /// a corner too straight or too sharp to be squared or reflected within the limit too, and where a coordinate of
    /// either line, an allowance or the limit is beyond `largest_coordinate` or not a number. Where the piece turns by
    /// less than 30 degrees, an allowance that is wider than its neighbour's ends square to its own edge, in a step.
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
        return {cut_[first_of_[i + 1] - 1], cut_[first_of_[i + 1 == seam_.size() ? 0 : i + 1]]};
    }

    /// Carries a notch out square to the seam. Throws outline_error where the edge is too short for it, or where a
    /// corner has taken away the cut edge opposite.
    carried_notch<Unit> carried(const notch<Unit>& mark) const {
        require_edge(mark.edge);
        const double from_start = mark.from_start.value();
        const double edge_length = detail::length_of_arrow(at(mark.edge + 1) - at(mark.edge));
        if (from_start < 0 || !detail::is_within(from_start, edge_length))
            detail::refuse<outline_error>("a notch on edge " + std::to_string(mark.edge) + " must lie from 0 to " +
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
                "the notch " + std::to_string(from_start) + " along edge " + std::to_string(mark.edge) +
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
    static constexpr double almost_straight = 0.866025403784438647; // the cosine of 30 degrees

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
                "a seam line must not cross itself: edges " + std::to_string(meetings[0].first) + " and " +
                    std::to_string(meetings[0].second) + " meet at (" + std::to_string(meetings[0].where.x) + ", " +
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
                "edge " + std::to_string(i) + " of an outline must have a length: its corners were one point",
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
            detail::refuse<outline_error>("there is no edge " + std::to_string(i) + ": an outline of " +
                                              std::to_string(seam_.size()) + " counts them from 0",
                                          refusal{.kind = fault::too_large,
                                                  .what = "the number of an edge",
                                                  .given = amount_of(i),
                                                  .most = amount_of(seam_.size() - 1),
                                                  .index = i});
    }

    vector at(std::size_t i) const { return detail::bare(seam_[i < seam_.size() ? i : i - seam_.size()]); }
    double allowance(std::size_t i) const { return allowance_of(i).allowance.value(); }
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

    void shape(std::size_t i) {
        const std::size_t before = i == 0 ? seam_.size() - 1 : i - 1;
        const double turns = detail::cross(along_[before], along_[i]) * outward_; // above zero at an outward corner
        switch (turns > 1e-12 ? shape_of(i) : corner_shape::mitred) {
        case corner_shape::mitred:
            return mitred(i, before, turns > 0);
        case corner_shape::squared_to_edge_before:
            return squared(i, before, true);
        case corner_shape::squared_to_edge_after:
            return squared(i, before, false);
        case corner_shape::reflected_in_edge_before:
            return reflected_hem(i, before, true);
        case corner_shape::reflected_in_edge_after:
            return reflected_hem(i, before, false);
        }
    }

    /// The cut lines meet at m from the corner, where m . n1 = a and m . n2 = b. As n1 + n2 and n1 - n2 are square to
    /// each other, m = (n1 + n2) (a + b) / |n1 + n2|^2 + (n1 - n2) (a - b) / |n1 - n2|^2, of which the second part is
    /// nothing for equal allowances, so that it does not matter how straight the corner is.
    void mitred(std::size_t i, std::size_t before, bool outward) {
        const vector v = at(i), n1 = normal(before), n2 = normal(i);
        const double a = allowance(before), b = allowance(i), both_ways = detail::dot(n1, n2);
        // Takes that change where the piece runs almost straight on meet far away, if at all, and the wider would be
        // cut into opposite its own edge: it ends square to it, in a step.
        if (both_ways > almost_straight && b < a * both_ways) {
            add(v + n1 * a);
            return add(v + n1 * (b / both_ways));
        }
        if (both_ways > almost_straight && a < b * both_ways) {
            add(v + n2 * (a / both_ways));
            return add(v + n2 * b);
        }
        const vector sum = n1 + n2, difference = n1 - n2;
        vector m = sum * ((a + b) / detail::dot(sum, sum));
        if (a != b)
            m = m + difference * ((a - b) / detail::dot(difference, difference));
        const double reach = detail::length_of_arrow(m), furthest = limit_ * std::max(a, b);
        if (!outward || reach <= furthest)
            return add(v + m);
        // Cut off square to the way from the corner to m. Along the first cut line, a n1 + t d1, the height in that
        // direction grows up to m, and likewise back along the second.
        const vector up = m * (1 / reach), d1 = along_[before], d2 = along_[i] * -1.0;
        add(v + n1 * a + d1 * ((furthest - a * detail::dot(n1, up)) / detail::dot(d1, up)));
        add(v + n2 * b + d2 * ((furthest - b * detail::dot(n2, up)) / detail::dot(d2, up)));
    }

    /// Where the seam line of one edge, drawn on, leaves the piece: the other's cut line. It does so 1 / sine of the
    /// turn takes away.
    vector leaves(std::size_t i, std::size_t before, bool of_edge_before) const {
        const vector d1 = along_[before], d2 = along_[i];
        const double sine = detail::cross(d1, d2) * outward_;
        if (sine * limit_ < 1)
            detail::refuse<outline_error>(
                "corner " + std::to_string(i) +
                    " is too straight or too sharp to be squared or reflected: its cut lines would "
                    "run on for more than " +
                    std::to_string(limit_) + " allowances; mitre it",
                refusal{.kind = fault::unsuitable, .what = "the shape of a corner", .index = i});
        return of_edge_before ? at(i) + d1 * (allowance(i) / sine) : at(i) - d2 * (allowance(before) / sine);
    }

    void squared(std::size_t i, std::size_t before, bool to_edge_before) {
        const std::size_t e = to_edge_before ? before : i;
        const vector p = leaves(i, before, to_edge_before), q = p + normal(e) * allowance(e);
        add(to_edge_before ? q : p);
        add(to_edge_before ? p : q);
    }

    /// Outside the hem's edge the cut line is the mirror image of the neighbour's cut line inside, so that the folded
    /// hem ends on it. What is turned under first lies the other way about once more.
    void reflected_hem(std::size_t i, std::size_t before, bool in_edge_before) {
        const std::size_t e = in_edge_before ? before : i;
        const vector n = normal(e), inward = in_edge_before ? along_[i] : along_[before] * -1.0;
        const double sinks = -detail::dot(inward, n); // above zero at an outward corner
        const vector sideways = inward + n * sinks, out = n * sinks;
        const double under = allowance_of(e).first_turn.value(), depth = allowance(e) - under;
        const vector p = leaves(i, before, in_edge_before);
        const vector r = p + (sideways + out) * (depth / sinks), q = r + (out - sideways) * (under / sinks);
        add(in_edge_before ? q : p);
        add(r);
        add(in_edge_before ? p : q);
    }

    line_type seam_, cut_;
    std::vector<edge_allowance<Unit>> allowances_;
    std::vector<corner_shape> shapes_;
    double limit_;
    double outward_ = 1;
    std::vector<vector> along_;         // of each edge, its direction with length 1
    std::vector<std::size_t> first_of_; // of each corner, where its part of the cut line begins; and the end
};

} // namespace turncloth

#endif
