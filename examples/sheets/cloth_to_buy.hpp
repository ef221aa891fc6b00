// The cloth that a sheet's pieces are cut from.
//
//   add_cloth(sheet, cloth, hangs, on_hand, widths)   lays the pieces of each material, on what is on hand first, and lists
//                                               on the sheet what to buy; returns the lays, to be drawn
//
// Where a project says nothing of its cloth, that has no nap and pieces may lie either way; but the canvas of a project that
// hangs keeps its grain upright, as cloth stretches least that way. All is parted by cuts from edge to edge, as with a rule
// and a blade.
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

/// Of one cloth, as it is asked for.
template <length_unit Unit>
struct width_of_cloth {
    std::string material;
    length<Unit> width;
};

/// As it was asked for, of this cloth before all; none where the project says one; or as usual.
template <length_unit Unit>
bolt<Unit> roll_of(const sheet<Unit>& s, const std::string& material, const cloth_sold<Unit>& cloth,
                   const std::vector<width_of_cloth<Unit>>& widths) {
    bolt<Unit> roll{.width = cloth.width, .selvedge = cloth.selvedge, .cutting = cutting::edge_to_edge};
    const project_cloth<Unit>* const said = turncloth::detail::said_of(s.cloths, material);
    for (const width_of_cloth<Unit>& w : widths)
        if (w.material == material) {
            roll.width = w.width;
            return roll;
        }
    if (said != nullptr && said->width.value() > 0 && !cloth.typed)
        roll.width = roll.selvedge = {};
    return roll;
}

/// Whether its grain must be upright.
inline bool keeps_upright(const std::string& material, bool hangs) { return hangs && material == "canvas"; }

template <length_unit Unit>
purchase_rules<Unit> rules_of(const cloth_sold<Unit>& cloth) {
    return {.straightening = cloth.straightening, .change = {}, .sold = usual_steps<Unit>()};
}

template <length_unit Unit>
void leave_open(sheet<Unit>& s, const std::string& material, const error& refused) {
    s.warnings.push_back("How much " + material + " to buy is left open: " + refused.what());
}

/// Pieces wider than the cloth are made up of parts. What may not be is said as a warning, and the rest of the sheet holds.
template <length_unit Unit>
std::vector<sheet_cloth<Unit>> add_cloth(sheet<Unit>& s, const cloth_sold<Unit>& cloth, bool hangs,
                                         std::vector<cloth_on_hand<Unit>> on_hand = {},
                                         const std::vector<width_of_cloth<Unit>>& widths = {}) {
    std::vector<sheet_cloth<Unit>> all;
    const std::vector<std::string> materials = materials_of(s);
    const std::vector<cloth_on_hand<Unit>> said = said_on_hand(s);
    on_hand.insert(on_hand.begin(), said.begin(), said.end());
    for (const cloth_on_hand<Unit>& c : on_hand)
        if (std::find(materials.begin(), materials.end(), c.material) == materials.end())
            s.warnings.push_back("No piece is cut from the " + c.material + " on hand");
    for (const width_of_cloth<Unit>& w : widths)
        if (std::find(materials.begin(), materials.end(), w.material) == materials.end())
            s.warnings.push_back("No piece is cut from the " + w.material + " that a width is given for");
    for (const std::string& material : materials) {
        try {
            for (sheet_cloth<Unit>& c : cloths_for<Unit>(
                     s, {material, roll_of(s, material, cloth, widths), rules_of(cloth)}, on_hand,
                     {.lies = keeps_upright(material, hangs) ? grain::fixed : grain::may_turn,
                     .effort = {.steps = on_hand.empty() ? 20'000U : 400'000U}, // shared out, each is laid many times
                      .may_join = true})) {
                s.notions.push_back(listed(c));
                say_joins(s, c);
                all.push_back(std::move(c));
            }
        } catch (const error& refused) {
            leave_open(s, material, refused);
        }
    }
    return all;
}

} // namespace allotment

#endif
