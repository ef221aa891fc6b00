// What sheet_of does (sheet/making.hpp), apart, so that a program that has it compiled once does not read it.
#ifndef TURNCLOTH_SHEET_DETAIL_WORKING_OUT_HPP
#define TURNCLOTH_SHEET_DETAIL_WORKING_OUT_HPP

#include <turncloth/sheet/bulk.hpp>
#include <turncloth/sheet/detail/bindings.hpp>
#include <turncloth/sheet/detail/cautions.hpp>
#include <turncloth/sheet/detail/cloths.hpp>
#include <turncloth/sheet/detail/joined.hpp>
#include <turncloth/sheet/detail/order.hpp>
#include <turncloth/sheet/detail/pieces.hpp>
#include <turncloth/sheet/detail/thread.hpp>
#include <turncloth/sheet/detail/zippers.hpp>
#include <turncloth/sheet/sheet.hpp>

namespace turncloth {

namespace detail {

/// From the design where there is one, from the pieces' finishes otherwise.
template <length_unit Unit>
void add_steps(sheet_draft<Unit>& draft) {
    if (draft.from().design() != nullptr)
        draft.from().way().carry_out(draft, *draft.from().design());
    else if (draft.is_sound())
        draft.made().steps = steps_by_name(draft);
}

template <length_unit Unit>
outcome<sheet<Unit>, sheet_error> worked_out(const project<Unit>& p) {
    sheet_draft<Unit> draft(p);
    if (!draft.is_within_limits())
        return draft.done();
    add_pieces(draft);
    add_outlines(draft);
    check_layers(draft);
    add_meetings(draft);
    check_edge_seams(draft);
    add_zippers(draft);
    add_bindings(draft);
    add_placings(draft);
    add_span_lists(draft);
    check_reaches(draft);
    draft.made().notions.insert(draft.made().notions.end(), p.notions().begin(), p.notions().end());
    add_steps(draft);
    add_cloths(draft);
    add_sewings(draft);
    add_cautions(draft);
    draft.made().bulk = bulk_warnings(draft.made(), p.most_layers());
    return draft.done();
}

} // namespace detail

} // namespace turncloth

#endif
