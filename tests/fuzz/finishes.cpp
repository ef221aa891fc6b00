// Finishes and panels of any lengths: typed errors alone; the cut size is the finished size and what each edge takes;
// every fold and row of stitching lies on the piece; places carried between datums come back; and folding the panel
// shows that it finishes as asked.
#include "feed.hpp"
#include <turncloth/panel/made_up.hpp>

using namespace fuzzing;

namespace {

template <length_unit Unit>
void check_lines(const panel<Unit>& piece, edge e, length<Unit> across) {
    const finish<Unit>& f = piece.finish_of(e);
    length<Unit> allowance;
    for (const length<Unit>& part : f.allowance_parts()) {
        must(part.value() > 0, "a part of an allowance is more than nothing");
        allowance += part;
    }
    must(allowance == f.allowance(), "an allowance is the sum of its parts");
    for (const auto& fold : f.folds())
        must(fold.from_datum().value() > 0 && fold.from_datum() <= f.allowance(), "a fold lies in what is taken");
    for (const auto& row : f.stitching())
        must(row.from_datum().value() >= 0 && row.from_datum() <= across, "a row of stitching lies on the piece");
}

template <length_unit Unit>
void check_places(const panel<Unit>& piece, edge e, length<Unit> far) {
    const auto here = at<cut_edge>(far);
    const auto finished = piece.from_finished_edge(e, here);
    must(piece.from_cut_edge(e, finished) == here, "a place from the finished edge comes back");
    must(piece.way_from_cut_edge(e, finished).value() == far, "the way to a place is as long as the place is far");
    if (piece.finish_of(e).stitching().empty())
        must(refused([&] { piece.from_stitching(e, here); }), "no place is measured from stitching that is not there");
    else
        must(piece.from_cut_edge(e, piece.from_stitching(e, here)) == here, "a place from stitching comes back");
}

/// An allowance deeper than the piece, which no panel turns back, may lie beyond the opposite edge where it is pressed.
template <length_unit Unit>
bool reaches_across(const panel<Unit>& piece) {
    return std::any_of(all_edges.begin(), all_edges.end(), [&](edge e) {
        const finished_size<Unit>& size = piece.finished();
        return piece.finish_of(e).allowance() > (e == edge::top || e == edge::bottom ? size.height() : size.width());
    });
}

/// Folding multiplies fractions by fractions; where 64 bits run out it refuses.
template <length_unit Unit>
void check_folding(const panel<Unit>& piece, const corner_way<Unit>& way) {
    try {
        const auto folded = fold_panel(piece, all_corners(way));
        const folding_proof shown = folded.proof();
        must(shown.outline || reaches_across(piece), "folded, a panel has the finished outline");
        must(shown.cloth, "folded, a panel is all the cloth there is");
    } catch (const corner_error&) {
    } catch (const overflow_error&) {
    }
}

template <length_unit Unit>
void check(feed& bytes) {
    const finished_size<Unit> size = bytes.size<Unit>();
    const panel<Unit> piece(size, bytes.edges<Unit>());
    const cut_size<Unit> cut = piece.cut();
    const auto taken = [&](edge one, edge other) {
        return piece.finish_of(one).allowance() + piece.finish_of(other).allowance();
    };
    must(cut.width() == size.width() + taken(edge::left, edge::right), "the cut width is finished and allowances");
    must(cut.height() == size.height() + taken(edge::top, edge::bottom), "the cut height is finished and allowances");
    must(piece.width_working().value() == cut.width(), "the working of a width is the width");
    must(piece.height_working().value() == cut.height(), "the working of a height is the height");
    must(panel<Unit>::from_cut(cut, piece.finishes()).finished().width() == size.width(), "a cut piece finishes so");
    for (const edge e : all_edges) {
        check_lines(piece, e, e == edge::top || e == edge::bottom ? cut.height() : cut.width());
        check_places(piece, e, bytes.length<Unit>());
    }
    const length<Unit> allowance = bytes.length<Unit>(), step = bytes.length<Unit>();
    check_folding(piece, bytes.ConsumeBool()   ? stacked<Unit>()
                         : bytes.ConsumeBool() ? mitred<Unit>()
                                               : mitred(allowance, step));
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    feed bytes(data, size);
    refused([&] { bytes.ConsumeBool() ? check<inch>(bytes) : check<centimetre>(bytes); });
    return 0;
}
