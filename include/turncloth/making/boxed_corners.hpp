// Bags whose base is boxed: two panels alike, seamed at their sides and base, and across each opened corner.
//
//   boxed_panels<U>{name, inside, seam, rim, cloth}        what they are cut for
//   sew_boxed_panels(design, from)                         a boxed_shell: its two panels, and its seams
//   join_rims(design, outer, lining)                       the lining into the bag, right sides together, all round: of its
//                                                          size, or with surplus::ease a smaller one
//
//   const auto outer = sew_boxed_panels<inch>(bag, {.name = "outer", .inside = {10_in, 8_in, 4_in}, .seam = "1/2"_in});
//
// By paper. Of a bag that is d deep half of d of each panel goes to each side and half to the base, so squares of half of d
// are cut out of the lower corners, which leaves a seam round them. A corner opened flat brings the foot of the side seam
// onto the end of the base seam, and is sewn straight across, d long. Corners that are not cut out are sewn along the same
// lines, and what lies in them is allowance.
#ifndef TURNCLOTH_MAKING_BOXED_CORNERS_HPP
#define TURNCLOTH_MAKING_BOXED_CORNERS_HPP

#include <turncloth/making/design.hpp>
#include <turncloth/notions/boxed.hpp>

#include <array>
#include <cstdint>
#include <string>
#include <type_traits>

namespace turncloth {

template <length_unit Unit>
struct boxed_panels {
    std::string name;
    boxed_size<Unit> inside;
    length<Unit> seam;
    bool cut_out = true; ///< its lower corners, first of all
    bool has_rim = true; ///< its sides are sewn up to a seam's width from the top, where a rim is joined; else right up
    turncloth::cloth<Unit> cloth{};

    length<Unit> half() const { return inside.depth() / 2; }
    length<Unit> to_base() const { return seam + half(); } ///< from the cut bottom edge up to where the wall stands
    length<Unit> width() const { return inside.width() + inside.depth() + seam * 2; }
    length<Unit> height() const { return seam + inside.height() + to_base(); }
};

template <length_unit Unit>
struct boxed_shell {
    boxed_panels<Unit> from;
    cut_part panels{}; ///< the first of two
    std::array<operation, 2> sides{};
    operation base{};
    std::array<operation, 2> corners{};
};

namespace detail {

template <length_unit Unit>
class shell_maker {
public:
    shell_maker(making<Unit>& design, const boxed_panels<Unit>& from)
        : design_(design), from_(from), wide_(from.width()), foot_(from.to_base()), walls_(from.height() - foot_) {}

    boxed_shell<Unit> make() {
        boxed_shell<Unit> made{.from = from_};
        panels_ = design_.cut(
            {.name = from_.name, .cloth = from_.cloth, .width = wide_, .height = from_.height(), .count = 2});
        made.panels = panels_;
        for (const std::int64_t k : {0, 1}) {
            if (from_.cut_out)
                cut_corners(k);
            stand_up(k);
        }
        const auto join = [&](const chalk_line<Unit>& one, const chalk_line<Unit>& other) {
            return design_.add(seam_of<Unit>{.one = {one}, .other = {other}});
        };
        made.sides = {join(side(0, edge::left), side(1, edge::right)), join(side(0, edge::right), side(1, edge::left))};
        made.base = join(base(0), base(1));
        made.corners = {across_corner(true), across_corner(false)};
        return made;
    }

private:
    chalk_line<Unit> line(std::int64_t k, edge from, length<Unit> in, length<Unit> begins, length<Unit> ends) const {
        return {.on = panels_[k], .from = from, .in = at<cut_edge>(in), .begins = begins, .ends = ends};
    }
    length<Unit> top() const { return from_.has_rim ? from_.seam : length<Unit>(); }
    chalk_line<Unit> side(std::int64_t k, edge e) const { return line(k, e, from_.seam, top(), walls_); }
    chalk_line<Unit> base(std::int64_t k) const { return line(k, edge::bottom, from_.seam, foot_, wide_ - foot_); }

    void cut_corners(std::int64_t k) {
        const length<Unit> half = from_.half(), nothing;
        for (const length<Unit>& begins : {nothing, wide_ - half})
            design_.add(snip<Unit>{.at = line(k, edge::bottom, half / 2, begins, begins + half), .width = half});
    }
    void stand_up(std::int64_t k) {
        const auto quarter = [&](const chalk_line<Unit>& at) {
            design_.add(crease<Unit>{.at = at, .turn = turning::quarter});
        };
        for (const edge e : {edge::left, edge::right})
            quarter(line(k, e, foot_, top(), walls_));
        quarter(line(k, edge::bottom, foot_, foot_, wide_ - foot_));
    }
    /// At the left of the first panel and at the right of the other, or the contrary.
    operation across_corner(bool left_of_first) {
        seam_of<Unit> s{.beyond = beyond_seam::quarter};
        for (const std::int64_t k : {0, 1}) {
            const bool left = left_of_first == (k == 0);
            const length<Unit> begins = left ? from_.seam : wide_ - foot_;
            s.one.push_back(line(k, edge::bottom, foot_, begins, begins + from_.half()));
            s.other.push_back(line(k, left ? edge::left : edge::right, foot_, walls_, walls_ + from_.half()));
        }
        return design_.add(std::move(s));
    }

    making<Unit>& design_;
    const boxed_panels<Unit>& from_;
    length<Unit> wide_, foot_, walls_; ///< the last: from the cut top edge down to the foot of a wall
    cut_part panels_{};
};

} // namespace detail

/// Throws boxed_error for a seam of nothing.
template <length_unit Unit>
boxed_shell<Unit> sew_boxed_panels(making<Unit>& design, const std::type_identity_t<boxed_panels<Unit>>& from) {
    require_more_than_zero<boxed_error>(from.seam, "the seam of a boxed bag");
    return detail::shell_maker<Unit>(design, from).make();
}

/// Both were sewn with a rim, and are whole before it is sewn. Of two sizes they do not agree, which the design refuses where
/// nothing takes it up.
template <length_unit Unit>
operation join_rims(making<Unit>& design, const boxed_shell<Unit>& outer, const boxed_shell<Unit>& lining,
                    surplus taken_up = surplus::none) {
    seam_of<Unit> s{.beyond = beyond_seam::back, .taken_up = taken_up};
    const auto rim = [](const boxed_shell<Unit>& shell, std::int64_t k) {
        const length<Unit> seam = shell.from.seam;
        return chalk_line<Unit>{.on = shell.panels[k],
                                .from = edge::top,
                                .in = at<cut_edge>(seam),
                                .begins = seam,
                                .ends = shell.from.width() - seam};
    };
    for (const std::int64_t k : {0, 1}) {
        s.one.push_back(rim(outer, k));
        s.other.push_back(rim(lining, k));
    }
    const operation joined = design.add(std::move(s));
    for (const boxed_shell<Unit>* shell : {&outer, &lining})
        for (const operation& corner : shell->corners)
            design.add(before{corner, joined, "both bags are whole before their rims are joined"});
    return joined;
}

} // namespace turncloth

#endif
