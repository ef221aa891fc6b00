// A drafted piece worked out: its outline with curves made of edges, its notches, and the rectangle that it needs of cloth.
//
//   outlined(piece)              an outlined_piece<U> (drafted_piece.hpp), which a project takes as one of its own
//
//   project<inch> garden("Picking bib", finished_size(14_in, 18_in));
//   garden.add(outlined(bib));
//   garden.outlines()[0].cut;               // draw/outlined.hpp draws it
//
// Included by itself: a project of rectangles does not read it.
#ifndef TURNCLOTH_SHEET_OUTLINED_HPP
#define TURNCLOTH_SHEET_OUTLINED_HPP

#include <turncloth/measure/printable.hpp>
#include <turncloth/panel/curve.hpp>
#include <turncloth/panel/drafted.hpp>
#include <turncloth/panel/finish_lines.hpp>
#include <turncloth/sheet/drafted_piece.hpp>
#include <turncloth/sheet/piece.hpp>

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <memory>
#include <numbers>
#include <string>
#include <utility>
#include <vector>

namespace turncloth {

namespace detail {

template <length_unit Unit>
point<Unit, double> on_outline(const drafted_spot<Unit>& s) {
    return {drafted(s.across), drafted(s.up)};
}

template <length_unit Unit>
class piece_outliner {
public:
    explicit piece_outliner(drafted_piece<Unit> piece) : from_(std::move(piece)) {}

    outlined_piece<Unit> result() {
        require_at_least<outline_error>(from_.corners.size(), std::size_t{2}, "the number of corners of a piece");
        require_between<outline_error>(std::int64_t{1}, from_.count, most_cut_alike,
                                       "the number of " + named(from_.name) + " to cut");
        for (const drafted_corner<Unit>& c : from_.corners)
            corners_.push_back(on_outline<Unit>({c.across, c.up}));
        for (std::size_t i = 0; i < corners_.size(); ++i)
            add_edge(i);
        auto shape = std::make_shared<const outline<Unit>>(seam_, edge_allowances_of(finishes_), shapes_);
        const trimmed_outline<Unit> cut = trimmed_cut_line(*shape);
        for (const trimmed_edge<Unit>& t : cut.trimmed)
            edges_[corner_of(t.edge)].trimmed = true;
        measure_edges(*shape);
        check_notches(*shape, cut);
        const arrow<double> along = grain(*shape);
        const auto [width, height] = extents(cut.boundary, along);
        const auto [finished_width, finished_height] = extents(seam_, along);
        return {std::move(from_), std::move(shape), std::move(edges_), cut_size<Unit>(width, height),
                finished_size<Unit>(finished_width, finished_height)};
    }

    std::size_t corner_of(std::size_t edge) const {
        std::size_t i = 0;
        while (i + 1 < edges_.size() && edges_[i + 1].first <= edge)
            ++i;
        return i;
    }

private:
    void add_edge(std::size_t i) {
        const drafted_corner<Unit>& c = from_.corners[i];
        const polygon<Unit, double> made = edges_for(i, corners_[i], corners_[(i + 1) % corners_.size()]);
        edges_.push_back({seam_.size(), made.size(), {}});
        seam_.insert(seam_.end(), made.begin(), made.end());
        finishes_.insert(finishes_.end(), made.size(), c.edge);
        shapes_.push_back(c.shape);
        shapes_.insert(shapes_.end(), made.size() - 1, corner_shape::mitred);
    }

    polygon<Unit, double> edges_for(std::size_t i, const point<Unit, double>& begins,
                                    const point<Unit, double>& ends) const {
        const drafted_curve<Unit>& c = from_.corners[i].curve;
        const drafted_length<Unit> tolerance = drafted(from_.tolerance);
        if (c.kind == curve_kind::straight)
            return {begins};
        if (c.kind == curve_kind::cubic)
            return flattened(cubic<Unit>{begins, on_outline(c.pull), on_outline(c.other_pull), ends}, tolerance);
        require_more_than_zero<outline_error>(c.rise, "the rise of a curve");
        return flattened(arc_between(bare(begins), bare(ends), drafted(c.rise).value(), c.kind), tolerance);
    }

    /// On a chord c an arc that rises by h has the radius (c^2 / 4 + h^2) / 2h, and turns by 4 atan(2h / c).
    arc<Unit> arc_between(const arrow<double>& begins, const arrow<double>& ends, double rise, curve_kind kind) const {
        const arrow<double> chord = ends - begins;
        const double size = length_of_arrow(chord);
        if (!(size > drafting_tolerance))
            refuse<outline_error>("the ends of an arc must lie apart: they were one point",
                                  refusal{fault::unsuitable, "an arc"});
        const double way = (signed_area_of(corners_).value() < 0 ? -1 : 1) * (kind == curve_kind::rounded ? 1 : -1);
        const double radius = (size * size / 4 + rise * rise) / (2 * rise);
        const arrow<double> out = arrow<double>{chord.y, -chord.x} * (way / size);
        return {in_unit<Unit>(begins + chord * 0.5 - out * (radius - rise)), in_unit<Unit>(begins),
                way * 4 * std::atan2(2 * rise, size) * 180 / std::numbers::pi};
    }

    void measure_edges(const outline<Unit>& shape) {
        for (outlined_edge<Unit>& e : edges_)
            e.size = on_graduation(run_length(shape, {e.first, e.count}), in_steps({1, 1000}, {1, 1024}));
        measure_rows(shape);
    }
    /// Along a curve a row is sewn beside each of its edges, one after another.
    void measure_rows(const outline<Unit>& shape) {
        if (std::all_of(finishes_.begin(), finishes_.end(), [](const auto& f) { return f.stitching().empty(); }))
            return;
        const std::vector<finish_lines<Unit>> lines = lines_of(shape, finishes_);
        for (outlined_edge<Unit>& e : edges_)
            for (std::size_t row = 0; row < lines[e.first].stitching.size(); ++row) {
                drafted_length<Unit> sewn = drafted_length_of<Unit>(0);
                for (std::size_t i = e.first; i < e.first + e.count; ++i)
                    if (const auto& there = lines[i].stitching[row].where)
                        sewn += drafted_length_of<Unit>(length_of_arrow(bare(there->to) - bare(there->from)));
                e.sewn.push_back(on_graduation(sewn, in_steps({1, 1000}, {1, 1024})));
            }
    }
    static constexpr length<Unit> in_steps(fraction millimetres, fraction inches) {
        return metric_unit<Unit> ? as<Unit>(length_of<millimetre>(millimetres)) : as<Unit>(length_of<inch>(inches));
    }

    void check_notches(const outline<Unit>& shape, const trimmed_outline<Unit>& cut) const {
        for (std::size_t i = 0; i < edges_.size(); ++i)
            for (const length<Unit>& l : from_.corners[i].notches)
                static_cast<void>(notch_on(shape, cut, {edges_[i].first, edges_[i].count}, drafted(l)));
    }

    /// Of length 1.
    arrow<double> grain(const outline<Unit>& shape) const {
        if (!from_.grain)
            return {0, 1};
        const line<Unit, double> g{on_outline(from_.grain->front()), on_outline(from_.grain->back())};
        static_cast<void>(shape.angle_to_grain(0, g)); // which refuses a line without direction
        const arrow<double> way = bare(g.to) - bare(g.from);
        return way * (1 / length_of_arrow(way));
    }

    /// Across the grain and along it, each up to the next graduation; less what drafting may be out by, so that an even
    /// size stays what it is.
    static std::pair<length<Unit>, length<Unit>> extents(const polygon<Unit, double>& all, const arrow<double>& grain) {
        const length<Unit> step = in_steps({1, 10}, {1, 64});
        const auto extent = [&](const arrow<double>& way) {
            double least = dot(bare(all.front()), way), most = least;
            for (const auto& p : all) {
                least = std::min(least, dot(bare(p), way));
                most = std::max(most, dot(bare(p), way));
            }
            return up_to(length_of<Unit>(approximate(most - least - 1e-6, {1, 100'000}).value), step);
        };
        return {extent({grain.y, -grain.x}), extent(grain)};
    }

    drafted_piece<Unit> from_;
    polygon<Unit, double> corners_{}, seam_{};
    std::vector<finish<Unit>> finishes_{};
    std::vector<corner_shape> shapes_{};
    std::vector<outlined_edge<Unit>> edges_{};
};

} // namespace detail

/// Throws outline_error, as an outline, its trimmed cut line, its curves, its notches and, where an edge is stitched, the lines
/// of its finishes do; the index of its facts is that of the drafted corner. Time grows with the square of the edges that stand
/// for its curves.
template <length_unit Unit>
outlined_piece<Unit> outlined(const drafted_piece<Unit>& piece) {
    detail::piece_outliner<Unit> made(piece);
#ifdef BOOST_NO_EXCEPTIONS
    return made.result();
#else
    try {
        return made.result();
    } catch (const outline_error& refused) {
        refusal facts = refused.facts();
        if (facts.index)
            facts.index = made.corner_of(*facts.index);
        detail::refuse<outline_error>(detail::named(piece.name) + ": " + refused.what(), std::move(facts));
    }
#endif
}

} // namespace turncloth

#endif
