// Puts pages on paper: a PDF file as bytes, one page for each, at true scale.
//
//   pdf_of(print)          the bytes; the same print gives the same bytes; throws turncloth::error
//   pdf_text_width()       how wide its letters are
//
//   write_file("pad.pdf", pdf_of(pages_of(drafting, orders, pdf_text_width())));
//
// Letters are put into the file, so that it prints alike everywhere.
#ifndef TURNCLOTH_EXAMPLES_DRAFTING_PDF_HPP
#define TURNCLOTH_EXAMPLES_DRAFTING_PDF_HPP

#include "page.hpp"

#include <string>

namespace drafting {

std::string pdf_of(const print& made);

text_width pdf_text_width();

} // namespace drafting

#endif
