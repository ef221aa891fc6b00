// Working a project out: every figure, every line, every check.
//
//   sheet_of(project)        the sheet; throws sheet_error where cloth would be spoilt, with every reason found
//
//   const sheet<inch> s = sheet_of(roll);
//
// Refused: marks, zippers, placings, pleats and spans off a piece; layers that disagree; tape in the seams; what does
// not reach; names that are missing or given twice; and whatever a notion refuses. Said as a warning: what can be made
// but may not be meant.
#ifndef TURNCLOTH_SHEET_MAKING_HPP
#define TURNCLOTH_SHEET_MAKING_HPP

#include <turncloth/sheet/bulk.hpp>
#include <turncloth/sheet/detail/cautions.hpp>
#include <turncloth/sheet/detail/joined.hpp>
#include <turncloth/sheet/detail/order.hpp>
#include <turncloth/sheet/detail/pieces.hpp>
#include <turncloth/sheet/detail/thread.hpp>
#include <turncloth/sheet/detail/zippers.hpp>
#include <turncloth/sheet/sheet.hpp>

namespace turncloth {

/// Throws sheet_error with every reason found, those of its notions among them.
template <length_unit Unit>
sheet<Unit> sheet_of(const project<Unit>& p) {
    detail::sheet_draft<Unit> draft(p);
    detail::add_pieces(draft);
    detail::check_layers(draft);
    detail::add_meetings(draft);
    detail::add_zippers(draft);
    detail::add_placings(draft);
    detail::add_span_lists(draft);
    detail::check_reaches(draft);
    draft.made().notions.insert(draft.made().notions.end(), p.notions().begin(), p.notions().end());
    if (p.design() != nullptr)
        p.carries_out()(draft, *p.design());
    else if (draft.is_sound())
        draft.made().steps = detail::steps_by_name(draft);
    detail::add_sewings(draft);
    detail::add_cautions(draft);
    draft.made().bulk = bulk_warnings(draft.made(), p.most_layers());
    return draft.done();
}

TURNCLOTH_ONCE(sheet<inch> sheet_of(const project<inch>&));
TURNCLOTH_ONCE(sheet<centimetre> sheet_of(const project<centimetre>&));

} // namespace turncloth

#endif
