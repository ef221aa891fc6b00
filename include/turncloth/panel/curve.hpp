// Curves of a seam line: made of edges to a stated tolerance, and a run of such edges taken as one.
//
//   flattened(arc<U>{centre, from, degrees}, tolerance)      corners along it, but for its end: there the next edge starts
//   flattened(cubic<U>{from, pull, other_pull, to}, tolerance)      a cubic Bezier curve, likewise
//   run_length(o, run)                                        of the edges `run.first` to `run.first + run.count - 1`
//   carried(o, cut, run, from_start)                         a notch by length along the curve, and its spot on the cut line
//
//   const auto hollow = flattened(arc<inch>{drafted_point<inch>(0, 0), drafted_point<inch>(5, 0), -90}, tolerance);
//   carried(piece, trimmed_cut_line(piece), {2, hollow.size()}, drafted_length_of<inch>(3)).on_cut;
//
// An edge of a curve cannot lose its notches to the corners beside it: they are carried to the nearest spot of the line
// that is cut along. Not part of turncloth.hpp.
#ifndef TURNCLOTH_PANEL_CURVE_HPP
#define TURNCLOTH_PANEL_CURVE_HPP

#include <turncloth/panel/trimmed.hpp>

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <limits>
#include <numbers>
#include <string>
#include <vector>

namespace turncloth {

/// Part of a circle round `centre`, counter-clockwise for degrees above zero.
template <length_unit Unit>
struct arc {
    point<Unit, double> centre, from;
    double degrees;

    friend constexpr bool operator==(const arc&, const arc&) = default;
};

/// Leaves `from` towards `pull` and reaches `to` from `other_pull`.
template <length_unit Unit>
struct cubic {
    point<Unit, double> from, pull, other_pull, to;

    friend constexpr bool operator==(const cubic&, const cubic&) = default;
};

/// Edges of a seam line that stand for one curve.
struct curve_run {
    std::size_t first, count;

    friend constexpr bool operator==(const curve_run&, const curve_run&) = default;
};

namespace detail {

inline constexpr double most_curve_edges = 100000;

/// Throws outline_error for a tolerance that is not above zero, or edges without number.
inline std::size_t curve_edges(double edges, double tolerance) {
    if (!(tolerance > 0) || !is_within(edges, most_curve_edges))
        refuse<outline_error>(
            "a curve needs a tolerance above zero that 100000 edges keep: it was " + std::to_string(tolerance),
            refusal{.kind = fault::too_small, .what = "a curve's tolerance", .given = amount_of(tolerance)});
    return static_cast<std::size_t>(std::max(1.0, std::ceil(edges)));
}

/// How far out along a way of length 1 the closed line is left: its nearest edge ahead, or 0 for a start that lies on it.
inline double first_hit(const std::vector<arrow<double>>& line, const arrow<double>& from, const arrow<double>& way) {
    double nearest = std::numeric_limits<double>::infinity();
    for (std::size_t i = 0; i < line.size(); ++i) {
        const arrow<double> a = line[i] - from, b = line[i + 1 == line.size() ? 0 : i + 1] - from;
        const double before = cross(way, a), after = cross(way, b);
        if (on_segment(a, b, {0, 0}))
            return 0;
        if (std::min(before, after) > drafting_tolerance || std::max(before, after) < -drafting_tolerance)
            continue;
        const double part = before == after ? 0 : std::clamp(before / (before - after), 0.0, 1.0);
        if (const double ahead = dot(way, a + (b - a) * part); ahead >= 0)
            nearest = std::min(nearest, ahead);
    }
    return nearest;
}

} // namespace detail

/// In edges of one angle t each: in the middle an edge lies r (1 - cos(t / 2)) inside the circle, which is the tolerance
/// for t = 2 acos(1 - tolerance / r). An edge spans at most a quarter of the circle.
/// There are at most most_curve_edges, or it is refused; time grows with them.
template <length_unit Unit>
polygon<Unit, double> flattened(const arc<Unit>& a, drafted_length<Unit> tolerance) {
    const detail::arrow<double> centre = detail::bare(a.centre), spoke = detail::bare(a.from) - centre;
    for (const auto& p : {a.centre, a.from})
        detail::require_drafted<outline_error>(detail::bare(p), "a point of an arc");
    const double sweep = a.degrees * std::numbers::pi / 180, radius = detail::length_of_arrow(spoke),
                 widest = 2 * std::acos(std::max(std::numbers::sqrt2 / 2, 1 - tolerance.value() / radius));
    const std::size_t n = detail::curve_edges(std::abs(sweep) / widest, tolerance.value());
    polygon<Unit, double> corners;
    for (std::size_t i = 0; i < n; ++i) {
        const double turned = sweep * static_cast<double>(i) / static_cast<double>(n), c = std::cos(turned),
                     s = std::sin(turned);
        corners.push_back(i == 0 ? a.from
                                 : detail::in_unit<Unit>(centre + detail::arrow<double>{spoke.x * c - spoke.y * s,
                                                                                        spoke.x * s + spoke.y * c}));
    }
    return corners;
}

/// In n parts of the parameter. Between two of its points a curve leaves the edge by at most h^2 / 8 of its greatest second
/// derivative, with h = 1 / n; that is 6 times a mean of from - 2 pull + other_pull and pull - 2 other_pull + to, so no
/// more than 6 of the longer: n = sqrt(6 longest / (8 tolerance)). Edges and time as an arc's.
template <length_unit Unit>
polygon<Unit, double> flattened(const cubic<Unit>& c, drafted_length<Unit> tolerance) {
    const detail::arrow<double> p = detail::bare(c.from), q = detail::bare(c.pull), r = detail::bare(c.other_pull),
                                s = detail::bare(c.to);
    for (const auto& each : {p, q, r, s})
        detail::require_drafted<outline_error>(each, "a point of a curve");
    const double bend = std::max(detail::length_of_arrow(p - q * 2.0 + r), detail::length_of_arrow(q - r * 2.0 + s));
    const std::size_t n = detail::curve_edges(std::sqrt(0.75 * bend / tolerance.value()), tolerance.value());
    polygon<Unit, double> corners;
    for (std::size_t i = 0; i < n; ++i) {
        const double t = static_cast<double>(i) / static_cast<double>(n), u = 1 - t;
        corners.push_back(
            detail::in_unit<Unit>(p * (u * u * u) + q * (3 * u * u * t) + r * (3 * u * t * t) + s * (t * t * t)));
    }
    return corners;
}

/// Throws outline_error where the outline has no such edges.
template <length_unit Unit>
drafted_length<Unit> run_length(const outline<Unit>& o, const curve_run& run) {
    const auto& seam = o.seam_line();
    require_at_least<outline_error>(run.count, std::size_t{1}, "the number of edges of a curve");
    static_cast<void>(o.allowance_of(run.first));
    require_at_most<outline_error>(run.count, seam.size(), "the number of edges of a curve");
    double total = 0;
    for (std::size_t i = run.first; i < run.first + run.count; ++i)
        total +=
            detail::length_of_arrow(detail::bare(seam[(i + 1) % seam.size()]) - detail::bare(seam[i % seam.size()]));
    return drafted_length_of<Unit>(total);
}

/// Out square to the curve, whose direction turns evenly along each edge from joint to joint, up to where that first meets
/// the line cut along: there is always such a spot, as the piece lies within. Throws outline_error for a notch that is not on the run.
template <length_unit Unit>
carried_notch<Unit> carried(const outline<Unit>& o, const trimmed_outline<Unit>& cut, const curve_run& run,
                            drafted_length<Unit> from_start) {
    const auto& seam = o.seam_line();
    const double whole = run_length(o, run).value();
    double left = from_start.value();
    if (!(left >= 0 && left <= whole + drafting_tolerance))
        detail::refuse<outline_error>("a notch on a curve must lie from 0 to " + std::to_string(whole) +
                                          " from its start: it was at " + std::to_string(left),
                                      refusal{.kind = left < 0 ? fault::too_small : fault::too_large,
                                              .what = "a notch",
                                              .given = amount_of(left),
                                              .least = amount_of(0.0),
                                              .most = amount_of(whole),
                                              .index = run.first});
    const auto edge = [&](std::size_t k) {
        const std::size_t i = run.first + k;
        return detail::bare(seam[(i + 1) % seam.size()]) - detail::bare(seam[i % seam.size()]);
    };
    std::size_t k = 0;
    double size = detail::length_of_arrow(edge(0));
    while (left > size && k + 1 < run.count) {
        left -= size;
        size = detail::length_of_arrow(edge(++k));
    }
    const double part = std::min(left / size, 1.0);
    const detail::arrow<double> on_seam = detail::bare(seam[(run.first + k) % seam.size()]) + edge(k) * part;
    const auto way = [&](std::size_t joint) { // along the curve where edge `joint` starts
        const auto unit = [&](std::size_t e) { return edge(e) * (1 / detail::length_of_arrow(edge(e))); };
        return joint == 0 ? unit(0) : joint == run.count ? unit(joint - 1) : (unit(joint - 1) + unit(joint)) * 0.5;
    };
    const detail::arrow<double> along = way(k) * (1 - part) + way(k + 1) * part;
    const double sense = (signed_area_of(seam).value() > 0 ? 1 : -1) / detail::length_of_arrow(along);
    const detail::arrow<double> out{along.y * sense, -along.x * sense};
    std::vector<detail::arrow<double>> boundary;
    for (const auto& p : cut.boundary)
        boundary.push_back(detail::bare(p));
    return {detail::in_unit<Unit>(on_seam),
            detail::in_unit<Unit>(on_seam + out * detail::first_hit(boundary, on_seam, out))};
}

namespace detail {

/// A straight edge of a cut line that nothing trims has its notches square to itself or nowhere, as outline::carried says.
template <length_unit Unit>
carried_notch<Unit> notch_on(const outline<Unit>& o, const trimmed_outline<Unit>& cut, const curve_run& run,
                             drafted_length<Unit> from_start) {
    return run.count == 1 && cut.trimmed.empty() ? o.carried({run.first, from_start})
                                                 : carried(o, cut, run, from_start);
}

} // namespace detail

} // namespace turncloth

#endif
