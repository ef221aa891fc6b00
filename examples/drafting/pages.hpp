// A drafting as pages to print: a page that tells how, a drawing of every piece, its parts at full size, and the cloth.
//
//   pages_of(drafting, cloths, ruler, options)    the whole print; throws turncloth::error where it cannot be made
//
//   const std::vector<page> made = pages_of(pad, laid_out(pad, {.width = 112_cm}), {}, {.project = pad.title});
//
// The drawings are the library's; of its own it has the first page alone.
#ifndef TURNCLOTH_EXAMPLES_DRAFTING_PAGES_HPP
#define TURNCLOTH_EXAMPLES_DRAFTING_PAGES_HPP

#include "cloth.hpp"
#include <turncloth/draw/lay.hpp>
#include <turncloth/notions/caution.hpp>

#include <string>
#include <vector>

namespace drafting {

inline constexpr pen test_square_pen{"test square", 0.2};
/// No words are smaller: they are read at arm's length, on paper that lies on a table.
inline constexpr double caption = 2.6;

/// The first page: test squares, how to join, what is printed, cautions.
page first_page(const std::vector<std::string>& contents, bool with_cloth, const drawing_options& options);

template <length_unit Unit>
std::vector<page> pages_of(const made_drafting<Unit>& drafting, const std::vector<sheet_cloth<Unit>>& cloths,
                           const ruler& shown, const drawing_options& options) {
    std::vector<page> all;
    std::vector<std::string> contents;
    const auto add = [&](const std::string& what, const std::vector<page>& pages) {
        const std::size_t first = all.size() + 2, last = all.size() + 1 + pages.size();
        contents.push_back(what + (first == last ? ": page " : ": pages " + std::to_string(first) + " to ") +
                           std::to_string(last));
        all.insert(all.end(), pages.begin(), pages.end());
    };
    for (const made_piece<Unit>& p : drafting.pieces) {
        add(p.says.name + ", cut " + std::to_string(p.says.count) + " of " + p.says.material,
            pages_at_full_size(p.shape, p.says, shown, options,
                               "Close a rotary cutter's guard at every pause. All cautions: first page."));
        if (all.size() > tiles::most)
            throw range_error(
                "these pieces would take more than " + std::to_string(tiles::most) + " pages",
                {.kind = fault::too_large, .what = "the number of pages", .most = amount_of(tiles::most)});
    }
    for (const sheet_cloth<Unit>& cloth : cloths)
        add("the lay of " + cloth.material, {page_of(cloth, shown, options)});
    all.insert(all.begin(), first_page(contents, !cloths.empty(), options));
    for (std::size_t i = 0; i < all.size(); ++i)
        all[i].write({all[i].width - tiles::margin, all[i].height - tiles::margin + 1.5},
                     "page " + std::to_string(i + 1) + " of " + std::to_string(all.size()), caption, set_from::end);
    return all;
}

} // namespace drafting

#endif
