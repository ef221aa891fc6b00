// Pieces laid by their finished edges: layers inside an outer, and a piece upon another.
//
//   lay_inside(design, outer, layers)                    one upon another, finished edge on finished edge
//   lay_on(design, piece, on, from_left, from_top)       its finished edges at places from the other's finished edges
//   sew_on(design, piece, on, edges, inset)              a row inside each of these finished edges, through both
//   sew_divisions(design, piece, on, edge, row)          a row at each place from that finished edge, through both
//
//   lay_inside(design, outer, {wadding, lining});
//   lay_on(design, pocket, lining, at<finished_edge>(2_in), at<finished_edge>(3_in));
//   sew_on(design, pocket, lining, {edge::left, edge::right, edge::bottom}, "1/8"_in);
#ifndef TURNCLOTH_MAKING_LAYING_ON_HPP
#define TURNCLOTH_MAKING_LAYING_ON_HPP

#include <turncloth/making/finishing.hpp>

#include <type_traits>
#include <vector>

namespace turncloth {

/// `from_left` is from the left edge of what it is laid on, as that piece's own left, to the edge of the piece that comes
/// to lie nearest to it: its right edge where the two lie face to face.
template <length_unit Unit>
operation lay_on(making<Unit>& design, const std::type_identity_t<panel_part<Unit>>& piece,
                 const std::type_identity_t<panel_part<Unit>>& on,
                 const std::type_identity_t<place<finished_edge, Unit>>& from_left = {},
                 const std::type_identity_t<place<finished_edge, Unit>>& from_top = {}) {
    const edge nearest = piece.up == on.up ? edge::left : edge::right;
    const auto between = [&](edge its, edge on_its, const place<finished_edge, Unit>& p) {
        return on.shape.from_cut_edge(on_its, p).from_datum() - piece.shape.finish_of(its).allowance();
    };
    return design.add(laying<Unit>{.piece = piece,
                                   .on = on,
                                   .up = piece.up,
                                   .left = between(nearest, edge::left, from_left),
                                   .top = between(edge::top, edge::top, from_top)});
}

/// `inset` from each finished edge of the piece; a row on an edge itself holds nothing.
template <length_unit Unit>
void sew_on(making<Unit>& design, const std::type_identity_t<panel_part<Unit>>& piece, cut_part on,
            const std::vector<edge>& edges, const std::type_identity_t<length<Unit>>& inset) {
    for (const edge e : edges)
        design.add(stitching<Unit>{.along = piece.line(e, at<finished_edge>(inset)), .through = {piece, on}});
}

/// Like rows, such as part one piece into pockets; nothing where there are no places.
template <length_unit Unit>
void sew_divisions(making<Unit>& design, const std::type_identity_t<panel_part<Unit>>& piece, cut_part on, edge from,
                   const std::type_identity_t<row<finished_edge, Unit>>& places) {
    if (const row<cut_edge, Unit> all = piece.places(from, places); all.size() > 0)
        design.add(stitching<Unit>{.along = piece.line(from, all[0]), .through = {piece, on}, .each = all});
}

/// The outer lies on the table as its face says, and the layers on it, from the bottom up.
template <length_unit Unit>
void lay_inside(making<Unit>& design, const std::type_identity_t<panel_part<Unit>>& outer,
                const std::type_identity_t<std::vector<panel_part<Unit>>>& layers) {
    design.add(laying<Unit>{.piece = outer, .up = outer.up});
    const panel_part<Unit>* below = &outer;
    for (const panel_part<Unit>& layer : layers) {
        lay_on(design, layer, *below);
        below = &layer;
    }
}

} // namespace turncloth

#endif
