// Handouts as PDF, where the program was built with what paints pages.
//
//   printer()      prints a handout on a paper, as the bytes of a file; null where nothing paints
//
//   if (printer() != nullptr) save("roll.pdf", printer()(handout_of(s), paper::a4));
#ifndef TURNCLOTH_EXAMPLES_SHEETS_PRINTING_HPP
#define TURNCLOTH_EXAMPLES_SHEETS_PRINTING_HPP

#include <turncloth/page/document.hpp>
#include <turncloth/page/paper.hpp>

#include <string>

namespace allotment {

/// Any thread may call it.
using handout_printer = std::string(const turncloth::document&, const turncloth::paper&);

handout_printer* printer();

} // namespace allotment

#endif
