// Where allowances overlap: the line to cut along, and what of the cut line was trimmed.
//
//   trimmed_cut_line(o)      of an outline: its boundary, a polygon, and the edges whose cut line was trimmed
//
//   const auto cut = trimmed_cut_line(armhole);
//   cut.boundary;   for (const auto& t : cut.trimmed) warn(t.edge, t.drafted, t.left);
//
// The cut line of an outline crosses itself where an inward curve is tighter than its allowance, and where two edges that
// face each other are nearer than their allowances together. The rule: what is cut out is the piece and every strip of
// it, `o.strip(i)`, and the boundary runs round all of these, so that no allowance is cut into, unless by the shape of
// its own corners. A gap that strips close all round stays cloth. Where corners leave nothing of an allowance beyond
// some line, its strip ends there. Within about 1e-9 in the unit of the outline. Not part of turncloth.hpp.
#ifndef TURNCLOTH_PANEL_TRIMMED_HPP
#define TURNCLOTH_PANEL_TRIMMED_HPP

#include <turncloth/panel/detail/arrangement.hpp>
#include <turncloth/panel/outline.hpp>

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <vector>

namespace turncloth {

/// An edge whose straight of the cut line is not what is cut along, as its allowance lies in that of others there, or as
/// the cut line of others ran into its allowance.
template <length_unit Unit>
struct trimmed_edge {
    std::size_t edge;
    drafted_length<Unit> drafted; ///< how long its straight of the cut line is
    drafted_length<Unit> left; ///< how long its straight of the boundary is; what two edges share counts for the first

    friend constexpr bool operator==(const trimmed_edge&, const trimmed_edge&) = default;
};

template <length_unit Unit>
struct trimmed_outline {
    polygon<Unit, double> boundary;          ///< runs the way the outline does; its cut line where nothing was trimmed
    std::vector<trimmed_edge<Unit>> trimmed; ///< in order of the edges

    friend bool operator==(const trimmed_outline&, const trimmed_outline&) = default;
};

namespace detail {

template <length_unit Unit>
class trimming {
public:
    explicit trimming(const outline<Unit>& o) : of_(o), flip_(signed_area_of(o.seam_line()).value() > 0 ? 1 : -1) {
        for (std::size_t i = 0; i < of_.seam_line().size(); ++i)
            add_strip(i);
    }

    trimmed_outline<Unit> result() const {
        const arrangement all(counter_clockwise(of_.cut_line()), ring_);
        std::vector<face_side> sides = all.outer_boundary();
        start_at_first_corner(sides);
        trimmed_outline<Unit> found;
        for (std::size_t i = 0; i < sides.size(); ++i) {
            const face_side &before = sides[i == 0 ? sides.size() - 1 : i - 1], &side = sides[i];
            const bool straight = turn(all[before.from], all[side.from], all[side.to]) == 0;
            if (!straight || (all.is_kept(side.from) && before.owner != side.owner))
                found.boundary.push_back(in_unit<Unit>(flipped(all[side.from])));
        }
        found.trimmed = shortened(all, sides);
        return found;
    }

private:
    arrow<double> flipped(const arrow<double>& p) const { return {p.x * flip_, p.y}; }
    /// A piece that runs clockwise is worked on as its mirror image.
    std::vector<arrow<double>> counter_clockwise(const polygon<Unit, double>& corners) const {
        std::vector<arrow<double>> all;
        for (const auto& p : corners)
            all.push_back(flipped(bare(p)));
        return all;
    }

    /// Out along one end of the strip, over its cut line, which edge i owns, and in along the other end.
    void add_strip(std::size_t i) {
        const allowance_strip<Unit> strip = of_.strip(i);
        const std::vector<arrow<double>> corners = counter_clockwise(strip.corners);
        const std::size_t seam = corners.size() - 1; // the side that closes it
        if (of_.allowance_of(i).allowance.value() <= drafting_tolerance || meetings_of(corners).empty()) {
            for (std::size_t k = 0; k < seam; ++k)
                ring_.add(corners[k], k == strip.cut_edge ? i : nobody);
            return;
        }
        // Its corners cut it apart: what is left is the face beside the seam line.
        owned_ring round;
        for (std::size_t k = 0; k <= seam; ++k)
            round.add(corners[k], k);
        const arrangement parts({}, round);
        for (const face_side& s : parts.face_beside(seam))
            if (s.owner != seam)
                ring_.add(parts[s.from], s.owner == strip.cut_edge ? i : nobody);
    }

    /// The corner of the cut line with the lowest number comes first, as it does in the cut line.
    static void start_at_first_corner(std::vector<face_side>& sides) {
        std::rotate(sides.begin(),
                    std::min_element(sides.begin(), sides.end(),
                                     [](const face_side& a, const face_side& b) { return a.from < b.from; }),
                    sides.end());
    }

    std::vector<trimmed_edge<Unit>> shortened(const arrangement& all, const std::vector<face_side>& sides) const {
        std::vector<double> left(of_.seam_line().size());
        for (const face_side& s : sides)
            if (s.owner != nobody)
                left[s.owner] += length_of_arrow(all[s.to] - all[s.from]);
        std::vector<trimmed_edge<Unit>> found;
        for (std::size_t i = 0; i < left.size(); ++i) {
            const auto [begin, end] = of_.cut_edge(i);
            const double drafted = length_of_arrow(bare(end) - bare(begin));
            if (std::abs(drafted - left[i]) > 4 * drafting_tolerance)
                found.push_back({i, drafted_length_of<Unit>(drafted), drafted_length_of<Unit>(left[i])});
        }
        return found;
    }

    const outline<Unit>& of_;
    double flip_;
    owned_ring ring_; // once round the piece and all its strips
};

} // namespace detail

/// Of any outline, with as many edges as it may have. Time and space grow with the number of edges, where they are short
/// beside the piece, and with the places where strips cross: with the square of the edges where all of them do.
template <length_unit Unit>
trimmed_outline<Unit> trimmed_cut_line(const outline<Unit>& o) {
    return detail::trimming<Unit>(o).result();
}

} // namespace turncloth

#endif
