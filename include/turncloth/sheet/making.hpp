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

#include <turncloth/sheet/sheet.hpp>
#ifndef TURNCLOTH_COMPILED
#include <turncloth/sheet/detail/working_out.hpp>
#endif

namespace turncloth {

/// Throws sheet_error with every reason found, those of its notions among them.
template <detail::compiled_unit Unit>
sheet<Unit> sheet_of(const project<Unit>& p);

#ifndef TURNCLOTH_COMPILED
template <detail::compiled_unit Unit>
sheet<Unit> sheet_of(const project<Unit>& p) {
    return detail::worked_out(p);
}
#endif

TURNCLOTH_ONCE(sheet<inch> sheet_of(const project<inch>&));
TURNCLOTH_ONCE(sheet<centimetre> sheet_of(const project<centimetre>&));

} // namespace turncloth

#endif
