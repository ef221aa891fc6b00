// A sheet's cloth, where what is on hand is used first: which pieces go on what is there, and what is still to be bought.
//
//   cloth_wanted<U>                         material, bolt and rules: off which roll, and how it is sold
//   cloths_for(sheet, wanted, on_hand)      a sheet_cloth for each piece of cloth that is used, then for what is bought
//   said_on_hand(sheet)                     what the project says is on hand, of all its cloths (project_cloth.hpp)
//
//   const auto canvas = cloths_for<inch>(s, {"canvas", {.width = 54_in}, {.sold = eighths_of_a_yard<inch>}},
//                                        {{"the grey end", "canvas", 40_in, 30_in}});
//   // canvas[0].on_hand->name == "the grey end"; nothing follows where that is enough
//
// What is on hand is measured as it is cut, washed where the project says so, and laid round its flaws. How the pieces are shared out is
// cloth/remnants.hpp's: so that the least new cloth is bought that is found. Where a print repeats, nobody knows where the
// repeat begins on what is left of another roll, so such cloth is bought whole.
#ifndef TURNCLOTH_SHEET_ON_HAND_HPP
#define TURNCLOTH_SHEET_ON_HAND_HPP

#include <turncloth/cloth/remnants.hpp>
#include <turncloth/sheet/purchases.hpp>

#include <algorithm>
#include <cstddef>
#include <string>
#include <type_traits>
#include <utility>
#include <vector>

namespace turncloth {

template <length_unit Unit>
struct cloth_wanted {
    std::string material;
    turncloth::bolt<Unit> bolt{};
    purchase_rules<Unit> rules{};
};

/// In the order of its cloths, without flaws.
template <length_unit Unit>
std::vector<cloth_on_hand<Unit>> said_on_hand(const sheet<Unit>& s) {
    std::vector<cloth_on_hand<Unit>> all;
    for (const project_cloth<Unit>& c : s.cloths)
        for (const piece_on_hand<Unit>& kept : c.on_hand)
            all.push_back({kept.name, c.material, kept.width, kept.length, {}});
    return all;
}

namespace detail {

/// It lies flat, without selvedges, and is cut as what comes off the roll is, unless it has flaws.
template <length_unit Unit>
remnant<Unit> as_remnant(const cloth_on_hand<Unit>& c, bolt<Unit> like) {
    like.width = c.width;
    like.selvedge = {};
    like.folded = false;
    like.flaws = c.flaws;
    if (!c.flaws.empty())
        like.cutting = cutting::free;
    return {like, c.length};
}

template <length_unit Unit>
void require_no_repeat(const cloth_wanted<Unit>& wanted) {
    for (const length<Unit>& repeat : {wanted.bolt.repeat_across, wanted.bolt.repeat_along})
        if (repeat.value() > 0)
            refuse<lay_error>({"on a piece of ", excerpt(wanted.material),
                               " on hand nobody knows where the repeat begins: lay cloth with a repeat off the roll"},
                              {.kind = fault::unsuitable, .what = "a repeat", .given = repeat});
}

} // namespace detail

/// What is on hand of other materials is left alone, and so is what no piece goes on. Throws sheet_error where no piece of
/// the sheet is of the material, lay_error for cloth with a repeat, and as lay_with_remnants and amount_to_buy; its cost is
/// that of lay_with_remnants.
template <length_unit Unit>
std::vector<sheet_cloth<Unit>> cloths_for(const sheet<Unit>& s, const std::type_identity_t<cloth_wanted<Unit>>& wanted,
                                          const std::type_identity_t<std::vector<cloth_on_hand<Unit>>>& on_hand,
                                          const cloth_options& options = {}) {
    const bool any = std::any_of(on_hand.begin(), on_hand.end(),
                                 [&](const cloth_on_hand<Unit>& c) { return c.material == wanted.material; });
    if (!any)
        return {cloth_for<Unit>(s, wanted.material, wanted.bolt, wanted.rules, options)};
    detail::require_no_repeat(wanted);
    sheet_cloth<Unit> all = detail::pieces_of(s, wanted.material, wanted.bolt, options.lies);
    if (options.may_join)
        all = detail::in_widths(s, std::move(all));
    if (std::any_of(all.pieces.begin(), all.pieces.end(), [](const cloth_piece<Unit>& p) { return p.on_fold; }))
        all = detail::lying_single(std::move(all)); // what is on hand lies flat
    std::vector<remnant<Unit>> remnants;
    std::vector<const cloth_on_hand<Unit>*> of;
    for (const cloth_on_hand<Unit>& c : on_hand)
        if (c.material == wanted.material) {
            remnants.push_back(detail::as_remnant(c, all.bolt));
            of.push_back(&c);
        }
    cloth_plan<Unit> plan = lay_with_remnants<Unit>(all.pieces, remnants, all.bolt, options.effort);
    std::vector<sheet_cloth<Unit>> used;
    const auto add = [&](const bolt<Unit>& on, lay<Unit>& found) -> sheet_cloth<Unit>& {
        sheet_cloth<Unit>& c = used.emplace_back(all);
        c.bolt = on;
        c.lay = std::move(found);
        return c;
    };
    for (std::size_t i = 0; i < remnants.size(); ++i)
        if (!plan.on_remnants[i].places.empty())
            add(remnants[i].cloth, plan.on_remnants[i]).on_hand = *of[i];
    if (!plan.bought.places.empty()) {
        sheet_cloth<Unit>& c = add(all.bolt, plan.bought);
        c.bought =
            amount_to_buy(c.lay.length, detail::as_said(wanted.rules, detail::said_of(s.cloths, wanted.material)));
    }
    return used;
}

} // namespace turncloth

#endif
