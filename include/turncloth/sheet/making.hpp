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

namespace turncloth {

/// Throws sheet_error with every reason found, those of its notions among them.
template <length_unit Unit>
    requires detail::compiled_in<Unit> sheet<Unit> sheet_of(const project<Unit>& p);

} // namespace turncloth

#ifndef TURNCLOTH_COMPILED
#include <turncloth/sheet/detail/working_out.hpp>
#endif

namespace turncloth {

TURNCLOTH_ONCE(sheet<inch> sheet_of(const project<inch>&));
TURNCLOTH_ONCE(sheet<centimetre> sheet_of(const project<centimetre>&));

} // namespace turncloth

#endif
