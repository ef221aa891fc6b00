// Cloth for a sheet: all pieces of one material laid on a width of cloth, and the length to buy.
//
//   cloth_for(sheet, material, bolt, rules)   the shortest lay found for those pieces, its bound, and the purchase
//   sheet_cloth<U>                            material, bolt, pieces, lay, bought
//   listed(cloth)                             as a notion, with the working of what to buy
//
//   const auto canvas = cloth_for<inch>(s, "canvas", {.width = 54_in, .selvedge = "1/2"_in},
//                                       {.straightening = 1_in, .sold = eighths_of_a_yard<inch>});
//   s.notions.push_back(listed(canvas));
//
// Included by itself: a search for a lay is more to compile than all the rest of a sheet.
#ifndef TURNCLOTH_SHEET_CLOTH_HPP
#define TURNCLOTH_SHEET_CLOTH_HPP

#include <turncloth/cloth/lay.hpp>
#include <turncloth/cloth/purchase.hpp>
#include <turncloth/sheet/sheet.hpp>

#include <string>
#include <type_traits>
#include <vector>

namespace turncloth {

template <length_unit Unit>
struct sheet_cloth {
    std::string material;
    turncloth::bolt<Unit> bolt;
    std::vector<cloth_piece<Unit>> pieces; ///< those of the sheet that are of the material, at their cut sizes
    turncloth::lay<Unit> lay;
    purchase<Unit> bought;
};

/// The grain of every piece runs down it, as it hangs, unless `may_turn` lets all of them lie either way. Throws
/// sheet_error where no piece is of that material, and as lay_out and amount_to_buy.
template <length_unit Unit>
sheet_cloth<Unit> cloth_for(const sheet<Unit>& s, const std::string& material,
                            const bolt<std::type_identity_t<Unit>>& cloth,
                            const purchase_rules<std::type_identity_t<Unit>>& rules, grain lies = grain::fixed,
                            const lay_effort& effort = {}) {
    std::vector<cloth_piece<Unit>> pieces;
    for (const sheet_piece<Unit>& p : s.pieces)
        if (p.made_from.material() == material)
            pieces.push_back({p.made_from.name(), p.cut, p.made_from.count(), lies});
    if (pieces.empty())
        detail::refuse<sheet_error>(s.name, std::vector<std::string>{"no piece is of " + material});
    const turncloth::lay<Unit> lay = lay_out<Unit>(pieces, cloth, effort);
    return {material, cloth, pieces, lay, amount_to_buy(lay.length, rules)};
}

template <length_unit Unit>
notion<Unit> listed(const sheet_cloth<Unit>& c) {
    notion<Unit> n(c.material);
    n.figure("width of the cloth", c.bolt.width).figure("of it usable", c.bolt.usable_width());
    n.figure(c.lay.proved_best() ? "length laid, the least that can be" : "length laid", c.lay.length);
    if (!c.lay.proved_best())
        n.figure("no lay can be shorter than", c.lay.bound);
    return n.figure("length to buy", c.bought.working);
}

} // namespace turncloth

#endif
