// Writing a document as one self-contained HTML file, which is well-formed XML too.
//
//   to_html(document)       no script and nothing from elsewhere: it is mailed, printed and kept as it stands
//
//   save("tool_roll.html", to_html(d));
//
// Every text is escaped, and fit for print (measure/printable.hpp) whatever was given. For those who cannot see it the
// language is named, headings follow one another, tables have captions and named columns, and each drawing has its words;
// for print, no heading is parted from what it heads and no drawing or row over two pages. The look is in html_look.hpp.
#ifndef TURNCLOTH_PAGE_HTML_HPP
#define TURNCLOTH_PAGE_HTML_HPP

#include <turncloth/measure/require.hpp>
#include <turncloth/page/document.hpp>
#ifndef TURNCLOTH_COMPILED
#include <turncloth/page/detail/html_writer.hpp>
#endif

#include <string>

namespace turncloth {

/// Throws range_error for a heading more than one level below the one before it, a row with more or fewer cells than the
/// table has columns, and as to_svg.
TURNCLOTH_INLINE std::string to_html(const document& d);

#ifndef TURNCLOTH_COMPILED
TURNCLOTH_INLINE std::string to_html(const document& d) { return detail::html_writer(d).write(); }
#endif

} // namespace turncloth

#endif
