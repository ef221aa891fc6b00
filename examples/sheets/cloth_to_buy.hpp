// The cloth that a sheet's pieces are cut from.
//
//   add_cloth(sheet, cloth, hangs, on_hand)     lays the pieces of each material, on what is on hand first, and lists on
//                                               the sheet what to buy; returns the lays, to be drawn
//
// Nothing here has a nap, so pieces may lie either way; but the canvas of a project that hangs keeps its grain upright,
// as cloth stretches least that way. All is parted by cuts from edge to edge, as with a rule and a blade.
#ifndef TURNCLOTH_EXAMPLES_SHEETS_CLOTH_TO_BUY_HPP
#define TURNCLOTH_EXAMPLES_SHEETS_CLOTH_TO_BUY_HPP

#include "edition.hpp"
#include <turncloth/sheet/on_hand.hpp>

#include <algorithm>
#include <string>
#include <vector>

namespace allotment {

template <length_unit Unit>
std::vector<std::string> materials_of(const sheet<Unit>& s) {
    std::vector<std::string> all;
    const auto add = [&](const std::string& material) {
        if (std::find(all.begin(), all.end(), material) == all.end())
            all.push_back(material);
    };
    for (const sheet_piece<Unit>& p : s.pieces)
        add(p.made_from.material());
    for (const outlined_piece<Unit>& p : s.outlines)
        add(p.material());
    return all;
}

/// What does not go on the cloth is said as a warning: the rest of the sheet holds for cloth joined to that size.
template <length_unit Unit>
std::vector<sheet_cloth<Unit>> add_cloth(sheet<Unit>& s, const cloth_sold<Unit>& cloth, bool hangs,
                                         const std::vector<cloth_on_hand<Unit>>& on_hand = {}) {
    std::vector<sheet_cloth<Unit>> all;
    const std::vector<std::string> materials = materials_of(s);
    for (const cloth_on_hand<Unit>& c : on_hand)
        if (std::find(materials.begin(), materials.end(), c.material) == materials.end())
            s.warnings.push_back("No piece is cut from the " + c.material + " on hand");
    for (const std::string& material : materials) {
        const bolt<Unit> roll{.width = cloth.width, .selvedge = cloth.selvedge, .cutting = cutting::edge_to_edge};
        const purchase_rules<Unit> rules{
            .straightening = cloth.straightening, .change = {}, .sold = usual_steps<Unit>()};
        try {
            for (sheet_cloth<Unit>& c : cloths_for<Unit>(
                     s, {material, roll, rules}, on_hand,
                     {.lies = hangs && material == "canvas" ? grain::fixed : grain::may_turn,
                     .effort = {.steps = on_hand.empty() ? 20'000U
                                                         : 400'000U}})) { // shared out, each is laid many times
                s.notions.push_back(listed(c));
                all.push_back(std::move(c));
            }
        } catch (const error& refused) {
            s.warnings.push_back("How much " + material + " to buy is left open: " + refused.what());
        }
    }
    return all;
}

} // namespace allotment

#endif
