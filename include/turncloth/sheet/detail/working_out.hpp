// What sheet_of does (sheet/making.hpp), apart, so that a program that has it compiled once does not read it.
#ifndef TURNCLOTH_SHEET_DETAIL_WORKING_OUT_HPP
#define TURNCLOTH_SHEET_DETAIL_WORKING_OUT_HPP

#include <turncloth/sheet/bulk.hpp>
#include <turncloth/sheet/detail/cautions.hpp>
#include <turncloth/sheet/detail/designed.hpp>
#include <turncloth/sheet/detail/joined.hpp>
#include <turncloth/sheet/detail/pieces.hpp>
#include <turncloth/sheet/detail/thread.hpp>
#include <turncloth/sheet/detail/zippers.hpp>
#include <turncloth/sheet/making.hpp>

namespace turncloth {

template <length_unit Unit>
    requires detail::compiled_in<Unit> sheet<Unit> sheet_of(const project<Unit>& p) {
        detail::sheet_draft<Unit> draft(p);
        detail::add_pieces(draft);
        detail::check_layers(draft);
        detail::add_meetings(draft);
        detail::add_zippers(draft);
        detail::add_placings(draft);
        detail::add_span_lists(draft);
        detail::check_reaches(draft);
        draft.made().notions.insert(draft.made().notions.end(), p.notions().begin(), p.notions().end());
        detail::add_steps(draft);
        detail::add_sewings(draft);
        detail::add_cautions(draft);
        draft.made().bulk = bulk_warnings(draft.made(), p.most_layers());
        return draft.done();
    }

} // namespace turncloth

#endif
