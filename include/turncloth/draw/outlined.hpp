// A drafted piece of a sheet on a page: its outline, with all that the sheet knows of it.
//
//   labels_of(piece)                                 an outline_labels<U> (outline.hpp)
//   page_of(piece, ruler, options)                   to scale
//   pages_at_full_size(piece, ruler, options, foot)  a pattern to cut by
//
//   for (const auto& piece : sheet_of(garden).outlines)
//       save(piece.name() + ".svg", to_svg(page_of(piece)));
//
// Its edges have the numbers that the sheet gives them: a curve is one. Included by itself, as outline.hpp is.
#ifndef TURNCLOTH_DRAW_OUTLINED_HPP
#define TURNCLOTH_DRAW_OUTLINED_HPP

#include <turncloth/draw/outline.hpp>
#include <turncloth/sheet/outlined.hpp>

#include <algorithm>
#include <cstddef>
#include <string>
#include <vector>

namespace turncloth {

namespace detail {

template <length_unit Unit>
drafted_length<Unit> middle_of(const outline<Unit>& shape) {
    const auto& all = shape.seam_line();
    const auto [left, right] =
        std::minmax_element(all.begin(), all.end(), [](const auto& a, const auto& b) { return a.x < b.x; });
    return (left->x + right->x) * 0.5;
}

} // namespace detail

/// Where no grain is drafted its arrow points straight up.
template <length_unit Unit>
outline_labels<Unit> labels_of(const outlined_piece<Unit>& p) {
    const drafted_piece<Unit>& from = p.made_from;
    outline_labels<Unit> says{.name = from.name, .material = from.material, .count = from.count};
    using detail::middle_of, detail::on_outline;
    says.grain = from.grain ? line<Unit, double>{on_outline(from.grain->front()), on_outline(from.grain->back())}
                            : line<Unit, double>{{middle_of(*p.shape), drafted_length_of<Unit>(0)},
                                                 {middle_of(*p.shape), drafted_length_of<Unit>(1)}};
    std::vector<finish<Unit>> finishes;
    for (std::size_t i = 0; i < p.edges.size(); ++i) {
        const drafted_corner<Unit>& c = from.corners[i];
        says.edges.push_back({p.edges[i].first, p.edges[i].count});
        finishes.insert(finishes.end(), p.edges[i].count, c.edge);
        for (const length<Unit>& l : c.notches)
            says.notches.push_back({p.edges[i].first, drafted(l)});
    }
    for (const finish<Unit>& f : finishes)
        says.finishes.emplace_back(f.name());
    says.lines = lines_of(*p.shape, finishes);
    return says;
}

/// Throws as page_of of an outline, and outline_error for a line of a finish that leaves the piece.
template <length_unit Unit>
page page_of(const outlined_piece<Unit>& p, const ruler& by = {}, const drawing_options& options = {}) {
    const detail::speaking in(options.words);
    return page_of(*p.shape, labels_of(p), by, options);
}

template <length_unit Unit>
std::vector<page> pages_at_full_size(const outlined_piece<Unit>& p, const ruler& by = {},
                                     const drawing_options& options = {}, const std::string& foot_words = {}) {
    const detail::speaking in(options.words);
    return pages_at_full_size(*p.shape, labels_of(p), by, options, foot_words);
}

} // namespace turncloth

#endif
