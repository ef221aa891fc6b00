// A document laid out onto pages: what html.hpp writes for a screen, as it is printed and taken to the table.
//
//   pages_of(document, paper, letters)    upright pages; each has the document's foot, a bar to lay a rule on, and its
//                                         number of how many
//
//   for (const page& p : pages_of(d, paper::letter)) ...
//
// No heading is parted from what it heads, no row of a table, drawing or line over two pages; the head of a table is
// repeated. What is higher than a page is parted all the same: no word is ever left out. Drawings are made smaller where
// they are wider than their room, unless they are true to size.
#ifndef TURNCLOTH_PAGE_PAGES_HPP
#define TURNCLOTH_PAGE_PAGES_HPP

#include <turncloth/measure/require.hpp>
#include <turncloth/page/document.hpp>
#include <turncloth/page/paper.hpp>
#ifndef TURNCLOTH_COMPILED
#include <turncloth/page/detail/page_foot.hpp>
#include <turncloth/page/detail/set_document.hpp>
#endif

#include <cstddef>
#include <string>
#include <vector>

namespace turncloth {

/// Throws range_error for a row with more or fewer cells than its table has columns, and for a drawing that is true to size
/// and larger than a page has room for. Time grows with the text and the drawings.
TURNCLOTH_INLINE std::vector<page> pages_of(const document& d, const paper& on = paper::a4,
                                            const text_measure* letters = nullptr);

#ifndef TURNCLOTH_COMPILED
TURNCLOTH_INLINE std::vector<page> pages_of(const document& d, const paper& on, const text_measure* letters) {
    const page_area room = detail::document_room(on);
    const detail::document_letters by(letters);
    const detail::galley all = detail::document_setter(d, by, room.width, room.height).set();
    std::vector<page> pages = detail::page_filler(room, all).fill();
    for (std::size_t i = 0; i < pages.size(); ++i) {
        page& p = pages[i];
        p.width = on.narrow();
        p.height = on.wide();
        p.title = d.title;
        const std::string which =
            detail::at_places(d.words.page, {std::to_string(i + 1), std::to_string(pages.size())});
        p.description = which;
        detail::draw_foot_of_page(p, d, which, by.by());
    }
    return pages;
}
#endif

} // namespace turncloth

#endif
