// What a project says of its cloth, as a lay takes it.
//
//   as_said(bolt, said)  as_said(rules, said)    with what is said where nothing is given
//   laid_as_said(piece, said, otherwise, folded)   a piece to be laid
#ifndef TURNCLOTH_SHEET_DETAIL_CLOTHS_SAID_HPP
#define TURNCLOTH_SHEET_DETAIL_CLOTHS_SAID_HPP

#include <turncloth/cloth/lay.hpp>
#include <turncloth/cloth/purchase.hpp>
#include <turncloth/sheet/detail/cloth_told.hpp>
#include <turncloth/sheet/sheet.hpp>

namespace turncloth::detail {

/// A width goes with its selvedges.
template <length_unit Unit>
bolt<Unit> as_said(bolt<Unit> cloth, const project_cloth<Unit>* said) {
    if (said == nullptr)
        return cloth;
    if (cloth.width.value() == 0) {
        cloth.width = said->width;
        cloth.selvedge = said->selvedge;
    }
    cloth.one_way |= said->one_way;
    cloth.folded |= said->folded;
    if (cloth.repeat_along.value() == 0 && cloth.repeat_across.value() == 0) {
        cloth.repeat_along = said->repeat_along;
        cloth.repeat_across = said->repeat_across;
    }
    return cloth;
}

template <length_unit Unit>
purchase_rules<Unit> as_said(purchase_rules<Unit> rules, const project_cloth<Unit>* said) {
    if (said != nullptr && said->washed == washed_when::before_cutting && rules.change == dimensional_change())
        rules.change = said->change.along;
    return rules;
}

template <length_unit Unit>
cloth_piece<Unit> laid_as_said(const sheet_piece<Unit>& p, const project_cloth<Unit>* said, grain otherwise,
                               bool folded) {
    const piece<Unit>& from = p.made_from;
    cloth_piece<Unit> laid{from.name(), size_to_cut(p, said), from.count(), otherwise};
    const cloth_lie lies = from.lies();
    if (lies == cloth_lie::either_way)
        laid.grain = grain::may_turn;
    else if (lies == cloth_lie::turned_alike)
        laid.grain = grain::turn_together;
    else if (lies != cloth_lie::as_asked || (said != nullptr && said->washed == washed_when::as_pieces))
        laid.grain = grain::fixed;
    if (said != nullptr && said->washed == washed_when::as_pieces && said->change.along != said->change.across)
        laid.grain = grain::fixed; // turned, another size would come out of the wash
    laid.on_fold = folded && lies == cloth_lie::on_fold;
    return laid;
}

} // namespace turncloth::detail

#endif
