// The foot of a page of a document: its words, a bar to lay a rule on, and which page it is.
//
//   document_room(paper)                             what is left for the document
//   draw_foot_of_page(page, document, which, letters)
//
//   draw_foot_of_page(p, d, "page 2 of 3", letters);
#ifndef TURNCLOTH_PAGE_DETAIL_PAGE_FOOT_HPP
#define TURNCLOTH_PAGE_DETAIL_PAGE_FOOT_HPP

#include <turncloth/page/detail/set_document.hpp>
#include <turncloth/page/document.hpp>
#include <turncloth/page/paper.hpp>

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace turncloth::detail {

inline constexpr pen test_bar_pen = {"test bar", 0.25}, page_rule_pen = {"foot rule", 0.15, {}, 0.5};

/// Room for the foot is kept free below; printers leave up to 6 mm blank at the edges.
inline constexpr double document_margin = 15, document_foot = 9;

inline page_area document_room(const paper& on) {
    return {document_margin, document_margin, on.narrow() - 2 * document_margin,
            on.wide() - 2 * document_margin - document_foot};
}

/// With the first at {1}, the second at {2}.
inline std::string at_places(std::string_view text, const std::vector<std::string>& all) {
    return filled(text, [&](std::string& to, std::string_view place) {
        for (std::size_t i = 0; i < all.size(); ++i)
            if (place == std::to_string(i + 1))
                to.append(all[i]);
        return !place.empty();
    });
}

/// Its words at the left, a bar in the middle, and at the right which page it is.
inline void draw_foot_of_page(page& on, const document& d, const std::string& which, const lettering& by) {
    const bool metric = d.bar == document::test_bar::three_centimetres;
    const double bar = metric ? 30 : 25.4;
    const double left = document_margin, right = on.width - document_margin,
                 y = on.height - document_margin - document_foot + 3.5, base = y + 4.2;
    on.draw(page_rule_pen, {{left, y}, {right, y}});
    on.write({right, base}, which, small_size, set_from::end);
    const double end = right - by.width(which, small_size) - 8, from = end - bar;
    on.draw(test_bar_pen, {{from, base - 2.4}, {from, base}, {end, base}, {end, base - 2.4}});
    on.write({from + bar / 2, base - 0.9}, at_places(d.words.at_full_size, {metric ? "3 cm" : "1 in"}), 2.2,
             set_from::middle);
    on.write({left, base}, by.shortened(fit_to_print(d.foot), small_size, from - left - 5), small_size);
}

} // namespace turncloth::detail

#endif
