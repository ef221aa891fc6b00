// A piece cut for a panel, and its edges finished: the folds and rows of each finish become creases and stitching.
//
//   panel_part<U>                      a part with the panel that it is cut for, and the face that lies up
//     .line(edge, place)               a chalk line from a cut edge, a finished edge or the stitching of that edge
//     .places(edge, row)               a row of places from any of these, from the cut edge
//   cut_for(design, name, panel, {.cloth, .count, .up})      adds the part; nothing is turned yet
//   finish_edge(design, piece, edge, through)                one edge, through the walls named
//   finish_edges(design, piece)                              every edge that is sewn to no other piece
//   fold_edge(design, piece, edge)                           its folds without its rows
//
//   const auto mat = cut_for(design, "mat", panel(finished_size(12_in, 9_in), all_round(hem)));
//   finish_edges(design, mat);
//
// A finish is turned to the wrong side: under where the right side lies up, over where the wrong side does. So a layer
// that binds itself lies wrong side up, and what its turning encloses is named among the walls that its rows go
// through. What joins two pieces is sewn with its seam and not here.
#ifndef TURNCLOTH_MAKING_FINISHING_HPP
#define TURNCLOTH_MAKING_FINISHING_HPP

#include <turncloth/making/design.hpp>
#include <turncloth/panel/panel.hpp>

#include <algorithm>
#include <cstdint>
#include <string>
#include <utility>
#include <vector>

namespace turncloth {

template <length_unit Unit>
struct panel_part {
    cut_part part{};
    panel<Unit> shape;
    face up = face::right;

    /// The k-th of several cut alike, from 0.
    panel_part operator[](std::int64_t k) const { return {part[k], shape, up}; }
    operator cut_part() const { return part; }

    /// Right across the piece. Throws finish_error for a place from the stitching of an edge that has none.
    template <class Datum>
    chalk_line<Unit> line(edge from, const place<Datum, Unit>& p) const {
        return {.on = part, .from = from, .in = shape.from_cut_edge(from, p)};
    }
    chalk_line<Unit> line(edge from, const place<cut_edge, Unit>& p) const {
        return {.on = part, .from = from, .in = p};
    }
    template <class Datum>
    row<cut_edge, Unit> places(edge from, const row<Datum, Unit>& r) const {
        return r.size() == 0 ? row<cut_edge, Unit>()
                             : row<cut_edge, Unit>(shape.from_cut_edge(from, r.exact()[0]), r.step(), r.size())
                                   .on_ruler(r.graduation());
    }
};

template <length_unit Unit>
struct cut_from {
    turncloth::cloth<Unit> cloth{};
    std::int64_t count = 1;
    face up = face::right;
};

/// The part has the panel's cut size.
template <length_unit Unit>
panel_part<Unit> cut_for(making<Unit>& design, const std::string& name, const panel<Unit>& shape,
                         const std::type_identity_t<cut_from<Unit>>& from = {}) {
    const cut_size<Unit> size = shape.cut();
    const cut_part part = design.cut(
        {.name = name, .cloth = from.cloth, .width = size.width(), .height = size.height(), .count = from.count});
    return {part, shape, from.up};
}

/// The folds alone, the outer before the inner, as a finish lists them: for an edge that the row of another operation holds.
template <length_unit Unit>
void fold_edge(making<Unit>& design, const std::type_identity_t<panel_part<Unit>>& piece, edge e) {
    for (const auto& fold : piece.shape.finish_of(e).folds())
        design.add(crease<Unit>{.at = piece.line(e, fold), .over = piece.up == face::wrong});
}

/// Folds first; then its rows, through the piece and whatever else
/// is named. Nothing is added for an edge that is raw or joined to another piece.
template <length_unit Unit>
void finish_edge(making<Unit>& design, const std::type_identity_t<panel_part<Unit>>& piece, edge e,
                 std::vector<cut_part> through = {}) {
    const finish<Unit>& f = piece.shape.finish_of(e);
    if (f.joins())
        return;
    if (std::find(through.begin(), through.end(), piece.part) == through.end())
        through.insert(through.begin(), piece.part);
    fold_edge(design, piece, e);
    for (const auto& row : f.stitching())
        design.add(stitching<Unit>{.along = piece.line(e, row), .through = through});
}

template <length_unit Unit>
void finish_edges(making<Unit>& design, const std::type_identity_t<panel_part<Unit>>& piece) {
    for (const edge e : {edge::left, edge::right, edge::top, edge::bottom})
        finish_edge(design, piece, e);
}

TURNCLOTH_ONCE(void finish_edges(making<inch>&, const std::type_identity_t<panel_part<inch>>&));
TURNCLOTH_ONCE(void finish_edges(making<centimetre>&, const std::type_identity_t<panel_part<centimetre>>&));

} // namespace turncloth

#endif
