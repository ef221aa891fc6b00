// Pockets that stand out, their flaps, and ties round a waist, as notions that a project can hold.
//
//   listed(name, pocket)       a pocket's creases and the flap over it; both are cut with the other pieces
//   listed(name, waist tie)    what to cut of a tape, and how far it comes out of its casing
//
//   apron.add(listed("waist tie", waist_tie<inch>{.waist = 40_in, .casing = 24_in, .bow = bow, .hold = 4_in}));
#ifndef TURNCLOTH_SHEET_STANDING_POCKETS_HPP
#define TURNCLOTH_SHEET_STANDING_POCKETS_HPP

#include <turncloth/notions/bellows.hpp>
#include <turncloth/sheet/notion.hpp>

#include <string>
#include <utility>

namespace turncloth {

template <length_unit Unit>
notion<Unit> listed(std::string name, const pocket_with_flap<Unit>& p) {
    const creases_of_pocket<Unit> c = pocket_creases(p.pocket);
    notion<Unit> n(std::move(name));
    n.figure("pocket, unfolded", pocket_cloth(p.pocket))
        .places("creases, from the finished left edge of the unfolded pocket",
                {c.left_inner.from_datum(), c.left_outer.from_datum(), c.right_outer.from_datum(),
                 c.right_inner.from_datum()})
        .figure("its pleat shows", pleat_shows(p.pocket))
        .figure("its mouth stands out by, full", stands_out(p.pocket));
    if (p.flap)
        n.figure("flap, finished width", flap_width(p.pocket, *p.flap))
            .figure("flap, from its fold to its hem", flap_drop(p.pocket, *p.flap, p.height));
    return n;
}

template <length_unit Unit>
notion<Unit> listed(std::string name, const waist_tie<Unit>& t) {
    const turncloth::figure<Unit> cut = waist_tie_length(t);
    return notion<Unit>(std::move(name))
        .figure("waist that it goes round, at the most", t.waist)
        .figure("tape, cut", cut)
        .sold(sold_as::off_a_roll)
        .figure("comes out at either end of the casing by", ends_beyond(cut.value() - t.turned * 2, t.casing, t.hold))
        .caution(caution::worn_at_machines)
        .caution(caution::infants_and_animals);
}

} // namespace turncloth

#endif
