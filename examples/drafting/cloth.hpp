// How much cloth the pieces need, and how they lie on it.
//
//   cloth_wanted                 its width, selvedges and the gap between pieces
//   laid_out(drafting, wanted, ruler)    for each material, the lay of its pieces
//   bounding_size(piece)         of the narrowest upright rectangle round a cut piece, its grain along the cloth
//
//   for (const auto& cloth : laid_out(pad, {.width = 1120_mm})) buy(cloth.bought.bought);
//
// What is laid are bounding rectangles. Pieces with slanting sides could often lie closer by hand.
#ifndef TURNCLOTH_EXAMPLES_DRAFTING_CLOTH_HPP
#define TURNCLOTH_EXAMPLES_DRAFTING_CLOTH_HPP

#include "drafting_file.hpp"
#include <turncloth/sheet/purchases.hpp>

#include <algorithm>
#include <cmath>
#include <vector>

namespace drafting {

struct cloth_wanted {
    length<millimetre> width{}, selvedge{}, gap{};
};

/// Each side up to the next tenth of a millimetre.
template <length_unit Unit>
cut_size<Unit> bounding_size(const made_piece<Unit>& piece) {
    const line<Unit, double>& grain = *piece.says.grain;
    const double dx = (grain.to.x - grain.from.x).value(), dy = (grain.to.y - grain.from.y).value(),
                 size = std::hypot(dx, dy);
    const auto extent = [&](double x, double y) {
        double least = 1e300, most = -1e300;
        for (const auto& p : piece.cut.boundary) {
            const double at = (p.x.value() * x + p.y.value() * y) / size * to_double(units_per<millimetre, Unit>);
            least = std::min(least, at), most = std::max(most, at);
        }
        // Less what drafting may be out by, so that an even size stays what it is.
        return as<Unit>(up_to(length_of<millimetre>(approximate(most - least - 1e-6, {1, 100'000}).value),
                              length_of<millimetre>({1, 10})));
    };
    return cut_size<Unit>(extent(dy, -dx), extent(dx, dy));
}

/// Throws turncloth::error for a piece that is too wide.
template <length_unit Unit>
std::vector<sheet_cloth<Unit>> laid_out(const made_drafting<Unit>& drafting, const cloth_wanted& wanted,
                                        const ruler& shown = {}) {
    const bolt<Unit> cloth{
        .width = as<Unit>(wanted.width), .selvedge = as<Unit>(wanted.selvedge), .gap = as<Unit>(wanted.gap)};
    std::vector<sheet_cloth<Unit>> all;
    for (const made_piece<Unit>& p : drafting.pieces) {
        const auto same = [&](const sheet_cloth<Unit>& c) { return c.material == p.says.material; };
        auto found = std::ranges::find_if(all, same);
        if (found == all.end())
            found = all.insert(found, {p.says.material, cloth, {}, {}, {}});
        found->pieces.push_back(
            {.name = p.says.name, .size = bounding_size(p), .quantity = p.says.count, .grain = p.turns});
    }
    for (sheet_cloth<Unit>& c : all)
        try {
            c.lay = lay_out(c.pieces, cloth);
            c.bought = amount_to_buy(c.lay.length, {.sold = {as<Unit>(length_of<millimetre>(1))}});
        } catch (const piece_too_wide_error& refused) { // said again in the units shown
            const cloth_piece<Unit>& piece = c.pieces[refused.facts().index.value()];
            throw range_error("piece \"" + piece.name + "\" is " + to_text(piece.size.width(), shown) +
                                  " across its grain, " + to_text(piece.size.width() - cloth.usable_width(), shown) +
                                  " more than the usable width of " + to_text(cloth.usable_width(), shown) +
                                  (refused.would_turn() ? ": with \"turn: allowed\" it would fit" : ""),
                              refused.facts());
        }
    return all;
}

} // namespace drafting

#endif
