// How much cloth the pieces need, and how they lie on it.
//
//   cloth_wanted                 its width, selvedges and the gap between pieces
//   laid_out(drafting, wanted, ruler)    for each material, the lay of its pieces
//   along_grain(piece)           the piece turned so that its grain runs up, its lower left corner at nothing
//
//   for (const material_lay& lay : laid_out(pad, {.width = 1120_mm}).lays) buy(lay.laid.length);
//
// What is laid are bounding rectangles: the narrowest upright rectangle round each cut piece, its grain along the
// cloth. Pieces with slanting sides could often lie closer by hand. Throws turncloth::error for a piece that is too
// wide.
#ifndef TURNCLOTH_EXAMPLES_DRAFTING_CLOTH_HPP
#define TURNCLOTH_EXAMPLES_DRAFTING_CLOTH_HPP

#include "draft.hpp"

#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

namespace drafting {

struct cloth_wanted {
    length<millimetre> width{}, selvedge{}, gap{};
};

struct material_lay {
    std::string material;
    std::vector<std::size_t> pieces; ///< of the drafting, in the order of the lay's own
    lay<millimetre> laid;
};

struct cloth_laid {
    cloth_wanted cloth;
    std::vector<material_lay> lays;
};

inline shape along_grain(const made_piece& piece) {
    const double dx = (piece.grain_line.to.x - piece.grain_line.from.x).value(),
                 dy = (piece.grain_line.to.y - piece.grain_line.from.y).value(), size = std::hypot(dx, dy);
    shape turned;
    for (const spot& p : piece.cut) {
        const double x = p.x.value(), y = p.y.value();
        turned.push_back(drafted_point<millimetre>((x * dy - y * dx) / size, (x * dx + y * dy) / size));
    }
    const auto left = std::ranges::min_element(turned, {}, [](const spot& p) { return p.x.value(); })->x;
    const auto low = std::ranges::min_element(turned, {}, [](const spot& p) { return p.y.value(); })->y;
    for (spot& p : turned)
        p = {p.x - left, p.y - low};
    return turned;
}

/// Of the bounding rectangle, each side up to the next tenth of a millimetre.
inline cut_size<millimetre> bounding_size(const made_piece& piece) {
    double width = 0, height = 0;
    for (const spot& p : along_grain(piece)) {
        width = std::max(width, p.x.value());
        height = std::max(height, p.y.value());
    }
    // Less what drafting may be out by, so that an even size stays what it is.
    const auto up = [](double l) {
        return up_to(length_of<millimetre>(approximate(l - 1e-6, {1, 100'000}).value), length_of<millimetre>({1, 10}));
    };
    return cut_size<millimetre>(up(width), up(height));
}

namespace detail {

/// The pieces of each material, in the order of the drafting.
inline std::vector<material_lay> by_material(const made_drafting& drafting) {
    std::vector<material_lay> lays;
    for (std::size_t i = 0; i < drafting.pieces.size(); ++i) {
        const auto same = [&](const material_lay& l) { return l.material == drafting.pieces[i].material; };
        auto found = std::ranges::find_if(lays, same);
        if (found == lays.end())
            found = lays.insert(found, {drafting.pieces[i].material, {}, {}});
        found->pieces.push_back(i);
    }
    return lays;
}

inline lay<millimetre> laid(const made_drafting& drafting, const std::vector<std::size_t>& which,
                            const cloth_wanted& wanted, const ruler& shown) {
    std::vector<cloth_piece<millimetre>> pieces;
    for (const std::size_t i : which) {
        const made_piece& piece = drafting.pieces[i];
        pieces.push_back(
            {.name = piece.name, .size = bounding_size(piece), .quantity = piece.quantity, .grain = piece.turns});
    }
    try {
        return lay_out(pieces, {.width = wanted.width, .selvedge = wanted.selvedge, .gap = wanted.gap});
    } catch (const piece_too_wide_error& refused) { // said again in the units shown
        const cloth_piece<millimetre>& piece = pieces[refused.facts().index.value()];
        const length<millimetre> usable = wanted.width - wanted.selvedge * 2;
        throw range_error("piece \"" + piece.name + "\" is " + to_text(piece.size.width(), shown) +
                              " across its grain, " + to_text(piece.size.width() - usable, shown) +
                              " more than the usable width of " + to_text(usable, shown) +
                              (refused.would_turn() ? ": with \"turn: allowed\" it would fit" : ""),
                          refused.facts());
    }
}

} // namespace detail

inline cloth_laid laid_out(const made_drafting& drafting, const cloth_wanted& wanted, const ruler& shown = {}) {
    cloth_laid all{wanted, detail::by_material(drafting)};
    for (material_lay& lay : all.lays)
        lay.laid = detail::laid(drafting, lay.pieces, wanted, shown);
    return all;
}

} // namespace drafting

#endif
