// Writing a page as an SVG 1.1 document.
//
//   to_svg(page)              strokes of one pen in a group, its meaning the group's class; a point of a page is a millimetre
//   to_svg_inside(page, id)   the same as an element of an HTML document, whose identifiers all begin with `id`
//
//   save("pocket.svg", to_svg(p));
//
// Numbers are written with a point in every locale. Text is escaped, and bytes that no XML document may hold (control
// characters, broken UTF-8) become U+FFFD, so the document is well-formed whatever it is given.
#ifndef TURNCLOTH_PAGE_SVG_HPP
#define TURNCLOTH_PAGE_SVG_HPP

#include <turncloth/measure/require.hpp>
#include <turncloth/page/page.hpp>
#ifndef TURNCLOTH_COMPILED
#include <turncloth/page/detail/svg_writer.hpp>
#endif

#include <string>

namespace turncloth {

/// Throws range_error for a number that is not finite or beyond 10^12.
TURNCLOTH_INLINE std::string to_svg(const page& p);

/// Without a declaration of its own. `id` is an identifier of XML that is given to no other. Throws as to_svg.
TURNCLOTH_INLINE std::string to_svg_inside(const page& p, const std::string& id);

#ifndef TURNCLOTH_COMPILED
TURNCLOTH_INLINE std::string to_svg(const page& p) { return detail::svg_writer().write(p); }
TURNCLOTH_INLINE std::string to_svg_inside(const page& p, const std::string& id) {
    return detail::svg_writer().write(p, id);
}
#endif

} // namespace turncloth

#endif
