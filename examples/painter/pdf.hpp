// Puts pages on paper: a PDF file as bytes, one page for each, at true scale.
//
//   pdf_of(title, pages)   the bytes; the same pages give the same bytes; throws painting_error
//   pdf_letters            how wide its letters are, for whoever sets words (turncloth/page/page.hpp)
//
//   write_file("outer.pdf", painter::pdf_of("tool roll", {page_of(outer)}));
//
// Letters are put into the file, so that it prints alike everywhere.
#ifndef TURNCLOTH_EXAMPLES_PAINTER_PDF_HPP
#define TURNCLOTH_EXAMPLES_PAINTER_PDF_HPP

#include <turncloth/measure/error.hpp>
#include <turncloth/page/page.hpp>

#include <memory>
#include <string>
#include <string_view>
#include <vector>

namespace painter {

/// Pages that cannot be painted.
class painting_error : public turncloth::error {
public:
    using error::error;
};

std::string pdf_of(const std::string& title, const std::vector<turncloth::page>& pages);

class pdf_letters : public turncloth::text_measure {
public:
    pdf_letters();
    double width_of(std::string_view text, double size, bool bold) const override;

private:
    std::shared_ptr<void> canvas_;
};

} // namespace painter

#endif
