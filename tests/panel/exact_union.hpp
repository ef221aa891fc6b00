// The piece and all the strips of its allowances, joined by the exact arithmetic of CGAL: what trimmed_cut_line must run round.
#ifndef TURNCLOTH_TESTS_PANEL_EXACT_UNION_HPP
#define TURNCLOTH_TESTS_PANEL_EXACT_UNION_HPP

#include <turncloth/panel/outline.hpp>

#include <CGAL/Exact_predicates_exact_constructions_kernel.h>
#include <CGAL/Polygon_2.h>
#include <CGAL/Polygon_set_2.h>

#include <algorithm>
#include <cstddef>
#include <iterator>
#include <optional>
#include <vector>

namespace exact_union {

using exact = CGAL::Exact_predicates_exact_constructions_kernel;
using exact_polygon = CGAL::Polygon_2<exact>;

inline exact_polygon as_exact(const turncloth::polygon<turncloth::centimetre, double>& corners) {
    exact_polygon all;
    for (const auto& p : corners)
        if (const exact::Point_2 next(p.x.value(), p.y.value()); all.is_empty() || all[all.size() - 1] != next)
            all.push_back(next);
    return all;
}

/// A strip of four corners whose ends cross keeps the triangle up to there; others that cross themselves are not compared.
inline std::optional<exact_polygon> what_is_left_of(const exact_polygon& strip) {
    if (strip.size() < 3 || CGAL::abs(strip.area()) < 1e-9) // of an allowance of none, a line
        return exact_polygon();
    if (strip.is_simple())
        return strip;
    if (strip.size() != 4)
        return std::nullopt;
    const auto apex = CGAL::intersection(exact::Segment_2(strip[0], strip[1]), exact::Segment_2(strip[2], strip[3]));
    exact_polygon triangle;
    if (const auto* p = apex ? boost::get<exact::Point_2>(&*apex) : nullptr) {
        // With an allowance of none, what a mitre cut off at its limit adds beside its end.
        const bool at_start = CGAL::squared_distance(*p, strip[0]) < 1e-18,
                   at_end = CGAL::squared_distance(*p, strip[3]) < 1e-18;
        for (const auto& corner : {at_end ? strip[1] : strip[0],
                                   at_start ? strip[1]
                                   : at_end ? strip[2]
                                            : *p,
                                   at_start ? strip[2] : strip[3]})
            triangle.push_back(corner);
    }
    return triangle.is_empty() ? std::nullopt : std::optional(triangle);
}

/// The area within the outer boundary of the piece and all its strips; none where a strip is not compared.
inline std::optional<double> area_of(const turncloth::outline<turncloth::centimetre>& piece) {
    CGAL::Polygon_set_2<exact> all;
    for (std::size_t i = 0; i <= piece.seam_line().size(); ++i) {
        const auto part = what_is_left_of(as_exact(i == 0 ? piece.seam_line() : piece.strip(i - 1).corners));
        if (!part)
            return std::nullopt;
        exact_polygon round = *part;
        if (round.is_empty())
            continue;
        if (round.is_clockwise_oriented())
            round.reverse_orientation();
        all.join(round);
    }
    std::vector<CGAL::Polygon_with_holes_2<exact>> parts;
    all.polygons_with_holes(std::back_inserter(parts));
    double largest = 0;
    for (const auto& part : parts)
        largest = std::max(largest, CGAL::to_double(part.outer_boundary().area()));
    return largest;
}

} // namespace exact_union

#endif
