#include "printing.hpp"

#ifdef TURNCLOTH_PAINTS
#include "../painter/pdf.hpp"
#include <turncloth/page/pages.hpp>

#include <mutex>
#endif

namespace allotment {

#ifdef TURNCLOTH_PAINTS

namespace {

/// One at a time: fonts are looked up in what all threads share.
std::string print(const turncloth::document& d, const turncloth::paper& on) {
    static std::mutex painting;
    const std::scoped_lock alone(painting);
    const painter::pdf_letters letters;
    return painter::pdf_of(d.title, turncloth::pages_of(d, on, &letters));
}

} // namespace

handout_printer* printer() { return &print; }

#else

handout_printer* printer() { return nullptr; }

#endif

} // namespace allotment
