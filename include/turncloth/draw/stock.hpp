// Lengths cut from stock, drawn to scale on pages to be printed.
//
//   pages_of(stock_cuts, ruler, options)      pages as values (page/page.hpp), at least one; each says which it is
//
//   const auto ties = stock_for<inch>("ribbon", {{"tie", "22 1/2"_in, 8}, {"loop", "4 3/4"_in, 12}}, {{108_in}});
//   save("ribbon.svg", to_svg(pages_of(ties, {}, {.project = s.name}).front()));
//
// Each way to cut is one bar, all to one scale, under words that say how many pieces of stock are cut so. The pieces
// lie in it in the order to cut, each with the letter by which the list names it; below stands how far from the start
// every cut is, with the loss of those before it allowed for. What is left over at the end has a broken outline.
//
// In a bar the longest pieces come first, so that after a slip what is left takes the most others; pieces of one size
// lie side by side. With a loss k at every cut the piece i begins at (l1 + k) + ... + (l(i-1) + k), and is cut where it
// ends; the cut takes k beyond that, or what is left where that is less (cloth/stock/problem.hpp).
//
// Included by itself, as sheet/purchases.hpp is.
#ifndef TURNCLOTH_DRAW_STOCK_HPP
#define TURNCLOTH_DRAW_STOCK_HPP

#include <turncloth/page/paper.hpp>
#include <turncloth/page/svg.hpp>
#include <turncloth/sheet/purchases.hpp>
#ifndef TURNCLOTH_COMPILED
#include <turncloth/draw/detail/stock_picture.hpp>
#endif

#include <vector>

namespace turncloth {

/// Throws range_error for a ruler whose graduation is not above zero, stock over 1 km long, or over 100000 pieces. Time
/// grows with the pieces.
template <detail::compiled_unit Unit>
std::vector<page> pages_of(const stock_cuts<Unit>& cuts, const ruler& by = {}, const drawing_options& options = {});

#ifndef TURNCLOTH_COMPILED
template <detail::compiled_unit Unit>
std::vector<page> pages_of(const stock_cuts<Unit>& cuts, const ruler& by, const drawing_options& options) {
    const detail::speaking in(options.words);
    const ruler shown_by = detail::read_in(by, options.words);
    const detail::stock_picture<Unit> cut(cuts, shown_by, options.project);
    return detail::best_page(options,
                             [&](double width, double height) {
                                 return detail::stock_pages(cut.words, cut.bars, options, width, height);
                             })
        .draw();
}
#endif

TURNCLOTH_ONCE(std::vector<page> pages_of(const stock_cuts<inch>&, const ruler&, const drawing_options&));
TURNCLOTH_ONCE(std::vector<page> pages_of(const stock_cuts<centimetre>&, const ruler&, const drawing_options&));

} // namespace turncloth

#endif
