#include "pages.hpp"

#include <cmath>
#include <utility>

namespace drafting {

std::string area_text(double square_millimetres, const ruler& shown) {
    const auto whole = [](double x) { return std::to_string(std::llround(x)); };
    std::string inches = whole(square_millimetres / (25.4 * 25.4)) + " sq in",
                centimetres = whole(square_millimetres / 100) + " sq cm";
    switch (shown.shows) {
    case units_shown::inches:
        return inches;
    case units_shown::centimetres:
        return centimetres;
    case units_shown::both:
        break;
    }
    return inches + " (" + centimetres + ")";
}

print pages_of(const made_drafting& drafting, const page_orders& orders, const text_measure& measure) {
    std::vector<placed_piece> pieces;
    std::size_t count = 0;
    for (const made_piece& piece : drafting.pieces) {
        pieces.push_back(placed(piece, orders.on));
        count += pieces.back().pages();
    }
    if (count > most_pages)
        throw range_error("these pieces would take " + std::to_string(count) + " pages of " +
                              std::string(orders.on.name()) + ": at most " + std::to_string(most_pages) +
                              " are printed",
                          {.kind = fault::too_large,
                           .what = "the number of pages",
                           .given = amount_of(count),
                           .most = amount_of(most_pages)});
    print made{drafting.title, first_pages(drafting, pieces, orders, measure)};
    for (const placed_piece& piece : pieces)
        for (page& p : pages_of(piece, orders, measure))
            made.pages.push_back(std::move(p));
    for (std::size_t i = 0; i < made.pages.size(); ++i)
        made.pages[i].write({orders.on.narrow() - margin, orders.on.wide() - margin - 1.5},
                            "page " + std::to_string(i + 1) + " of " + std::to_string(made.pages.size()), caption,
                            set_from::end);
    return made;
}

} // namespace drafting
