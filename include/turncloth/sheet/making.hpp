// Working a project out: every figure, every line, every check.
//
//   sheet_of(project)        the sheet; throws sheet_error where cloth would be spoilt, with every reason found
//   try_sheet_of(project)    the sheet, or that error as a value
//
//   const sheet<inch> s = sheet_of(roll);
//
// Refused: marks, zippers, placings, pleats and spans off a piece; layers that disagree; tape in the seams; what does
// not reach; names that are missing or given twice; and whatever a notion refuses. Said as a warning: what can be made
// but may not be meant.
#ifndef TURNCLOTH_SHEET_MAKING_HPP
#define TURNCLOTH_SHEET_MAKING_HPP

#include <turncloth/measure/outcome.hpp>
#include <turncloth/sheet/sheet.hpp>
#ifndef TURNCLOTH_COMPILED
#include <turncloth/sheet/detail/working_out.hpp>
#endif

#include <utility>

namespace turncloth {

/// Throws sheet_error with every reason found, those of its notions among them, and where there is more of anything than
/// `most_added_alike` and `most_marks_of_a_project` (project.hpp). Time grows with the square of what is added alike, which
/// is some seconds for the most, with the marks in proportion, and with a design as executed.hpp says.
template <detail::compiled_unit Unit>
sheet<Unit> sheet_of(const project<Unit>& p);

/// Throws nothing of turncloth's. Without exceptions it gives the reasons that it finds itself, and what one of its notions
/// or its design refuses goes to the program's own boost::throw_exception, as elsewhere.
template <detail::compiled_unit Unit>
outcome<sheet<Unit>, sheet_error> try_sheet_of(const project<Unit>& p);

#ifndef TURNCLOTH_COMPILED
template <detail::compiled_unit Unit>
sheet<Unit> sheet_of(const project<Unit>& p) {
    outcome<sheet<Unit>, sheet_error> made = detail::worked_out(p);
    if (!made)
        detail::refuse<sheet_error>(made.refused());
    return *std::move(made);
}

template <detail::compiled_unit Unit>
outcome<sheet<Unit>, sheet_error> try_sheet_of(const project<Unit>& p) {
#ifdef BOOST_NO_EXCEPTIONS
    return detail::worked_out(p);
#else
    try {
        return detail::worked_out(p);
    } catch (const error& refused) { // beyond what a reason is made of: a sum that does not fit, say
        return sheet_error(p.name(), {{refused.what(), refused.facts()}});
    }
#endif
}
#endif

TURNCLOTH_ONCE(sheet<inch> sheet_of(const project<inch>&));
TURNCLOTH_ONCE(sheet<centimetre> sheet_of(const project<centimetre>&));
TURNCLOTH_ONCE(outcome<sheet<inch>, sheet_error> try_sheet_of(const project<inch>&));
TURNCLOTH_ONCE(outcome<sheet<centimetre>, sheet_error> try_sheet_of(const project<centimetre>&));

} // namespace turncloth

#endif
