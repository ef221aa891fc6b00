// What the cut line does at a corner of the seam line: at most three points, counted from the corner.
//
//   detail::mitred_corner(at, outward, limit)                   both cut lines go on until they meet
//   detail::squared_corner(at, leaves, to_edge_before)          one allowance ends square to its edge
//   detail::reflected_corner(at, leaves, in_edge_before, under) a hem whose ends, folded in, lie on the other's cut line
//   detail::leaves(at, of_edge_before)          where the seam line of one edge, drawn on, meets the other's cut line
//
//   detail::mitred_corner({{1, 0}, {0, 1}, {0, -1}, {1, 0}, 2, 3}, true, 4)      is one point, (3, -2)
//
// An internal header of outline.hpp.
#ifndef TURNCLOTH_PANEL_DETAIL_CUT_CORNER_HPP
#define TURNCLOTH_PANEL_DETAIL_CUT_CORNER_HPP

#include <turncloth/panel/polygon.hpp>

#include <algorithm>
#include <array>
#include <cstddef>

namespace turncloth::detail {

/// Of the edges before and after: their directions and outward normals, of length 1, and their allowances.
struct seam_corner {
    arrow<double> d1, d2, n1, n2;
    double a, b;
};

/// Where the allowances of the two edges part: on the way from the corner to the first or to the last of the points, or
/// nowhere, at an inward or straight corner, as each ends square to its own edge there and they may overlap.
enum class strips_part { nowhere, at_first, at_last };

struct cut_corner {
    std::array<arrow<double>, 3> points{};
    std::size_t count = 0;
    strips_part part = strips_part::nowhere;
};

inline constexpr double almost_straight = 0.866025403784438647; // the cosine of 30 degrees

/// The cut lines meet at m from the corner, where m . n1 = a and m . n2 = b. As n1 + n2 and n1 - n2 are square to
/// each other, m = (n1 + n2) (a + b) / |n1 + n2|^2 + (n1 - n2) (a - b) / |n1 - n2|^2, of which the second part is
/// nothing for equal allowances, so that it does not matter how straight the corner is.
inline cut_corner mitred_corner(const seam_corner& c, bool outward, double limit) {
    const double both_ways = dot(c.n1, c.n2);
    // Allowances that change where the piece runs almost straight on meet far away, if at all, and the wider would be
    // cut into opposite its own edge: it ends square to it, in a step.
    if (both_ways > almost_straight && c.b < c.a * both_ways)
        return {{c.n1 * c.a, c.n1 * (c.b / both_ways)}, 2, outward ? strips_part::at_last : strips_part::nowhere};
    if (both_ways > almost_straight && c.a < c.b * both_ways)
        return {{c.n2 * (c.a / both_ways), c.n2 * c.b}, 2, outward ? strips_part::at_first : strips_part::nowhere};
    const arrow<double> sum = c.n1 + c.n2, difference = c.n1 - c.n2;
    arrow<double> m = sum * ((c.a + c.b) / dot(sum, sum));
    if (c.a != c.b)
        m = m + difference * ((c.a - c.b) / dot(difference, difference));
    const double reach = length_of_arrow(m), furthest = limit * std::max(c.a, c.b);
    // Where one cut line ends before the corner, on the other, nothing stands out: at 30 degrees and more it does so within
    // twice its allowance.
    const bool stands_out = outward && dot(m, c.d1) > 0 && dot(m, c.d2) < 0;
    if (!stands_out || reach <= furthest)
        return {{m}, 1, outward ? strips_part::at_first : strips_part::nowhere};
    // Cut off square to the way from the corner to m. Along the first cut line, a n1 + t d1, the height in that
    // direction grows up to m, and likewise back along the second.
    const arrow<double> up = m * (1 / reach), back = c.d2 * -1.0;
    return {{c.n1 * c.a + c.d1 * ((furthest - c.a * dot(c.n1, up)) / dot(c.d1, up)),
             c.n2 * c.b + back * ((furthest - c.b * dot(c.n2, up)) / dot(back, up))},
            2,
            strips_part::at_first};
}

/// Where the seam line of one edge, drawn on, leaves the piece: on the other's cut line. It does so 1 / `sine` of the
/// turn allowances away.
inline arrow<double> leaves(const seam_corner& c, double sine, bool of_edge_before) {
    return of_edge_before ? c.d1 * (c.b / sine) : c.d2 * (-c.a / sine);
}

inline cut_corner squared_corner(const seam_corner& c, const arrow<double>& p, bool to_edge_before) {
    return to_edge_before ? cut_corner{{p + c.n1 * c.a, p}, 2, strips_part::at_last}
                          : cut_corner{{p, p + c.n2 * c.b}, 2, strips_part::at_first};
}

/// Outside the hem's edge the cut line is the mirror image of the neighbour's cut line inside, so that the folded
/// hem ends on it. What is turned under first lies the other way about once more.
inline cut_corner reflected_corner(const seam_corner& c, const arrow<double>& p, bool in_edge_before, double under) {
    const arrow<double> n = in_edge_before ? c.n1 : c.n2, inward = in_edge_before ? c.d2 : c.d1 * -1.0;
    const double sinks = -dot(inward, n); // above zero at an outward corner
    const arrow<double> sideways = inward + n * sinks, out = n * sinks;
    const double depth = (in_edge_before ? c.a : c.b) - under;
    const arrow<double> r = p + (sideways + out) * (depth / sinks), q = r + (out - sideways) * (under / sinks);
    return in_edge_before ? cut_corner{{q, r, p}, 3, strips_part::at_last}
                          : cut_corner{{p, r, q}, 3, strips_part::at_first};
}

} // namespace turncloth::detail

#endif
