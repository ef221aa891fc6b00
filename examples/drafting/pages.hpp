// A sheet as pages to print: a page that tells how, a drawing of every piece, outlines at full size, and the cloth.
//
//   pages_of(sheet, cloths, ruler, options)    the whole print; throws turncloth::error where it cannot be made
//   laid_out(sheet, wanted, ruler)             the lay of each material
//
//   const std::vector<page> made = pages_of(pad, laid_out(pad, {.width = 1120_mm}, {}), {}, {.project = pad.name});
//
// The drawings are the library's; of its own it has the first page alone. A rectangle needs no paper at full size: its
// drawing has the lines to chalk on the cloth.
#ifndef TURNCLOTH_EXAMPLES_DRAFTING_PAGES_HPP
#define TURNCLOTH_EXAMPLES_DRAFTING_PAGES_HPP

#include "../sheets/cloth_to_buy.hpp"
#include <turncloth/draw/lay.hpp>
#include <turncloth/draw/outlined.hpp>
#include <turncloth/draw/piece.hpp>
#include <turncloth/notions/caution.hpp>
#include <turncloth/page/tiles.hpp>

#include <string>
#include <vector>

namespace drafting {

using namespace turncloth;

inline constexpr pen test_square_pen{"test square", 0.2};
/// No words are smaller: they are read at arm's length, on paper that lies on a table.
inline constexpr double caption = 2.6;

struct cloth_wanted {
    length<millimetre> width{}, selvedge{}, gap{};
};

/// The first page: test squares, how to join, what is printed, cautions.
page first_page(const std::vector<std::string>& contents, bool with_cloth, const drawing_options& options);

/// Throws range_error for a piece that is too wide, in the units shown.
template <length_unit Unit>
std::vector<sheet_cloth<Unit>> laid_out(const sheet<Unit>& s, const cloth_wanted& wanted, const ruler& shown) {
    const bolt<Unit> cloth{
        .width = as<Unit>(wanted.width), .selvedge = as<Unit>(wanted.selvedge), .gap = as<Unit>(wanted.gap)};
    const auto said = [&](const amount& a) {
        return to_text(length_of<Unit>(fraction(a.numerator, a.denominator)), shown);
    };
    std::vector<sheet_cloth<Unit>> all;
    try {
        for (const std::string& material : allotment::materials_of(s))
            all.push_back(cloth_for<Unit>(s, material, cloth, {.sold = {as<Unit>(length_of<millimetre>(1))}}));
    } catch (const piece_too_wide_error& refused) {
        const refusal& why = refused.facts();
        throw range_error(why.where + " is " + said(why.given.value()) +
                              " across its grain, and the usable width of the cloth " + said(why.most.value()) +
                              (refused.would_turn() ? ": with \"may_turn\": true it would fit" : ""),
                          why);
    }
    return all;
}

template <length_unit Unit>
std::vector<page> pages_of(const sheet<Unit>& s, const std::vector<sheet_cloth<Unit>>& cloths, const ruler& shown,
                           const drawing_options& options) {
    std::vector<page> all;
    std::vector<std::string> contents;
    const auto add = [&](const std::string& what, const std::vector<page>& pages) {
        const std::size_t first = all.size() + 2, last = all.size() + 1 + pages.size();
        contents.push_back(what + (first == last ? ": page " : ": pages " + std::to_string(first) + " to ") +
                           std::to_string(last));
        all.insert(all.end(), pages.begin(), pages.end());
        if (all.size() > tiles::most)
            throw range_error(
                "these pieces would take more than " + std::to_string(tiles::most) + " pages",
                {.kind = fault::too_large, .what = "the number of pages", .most = amount_of(tiles::most)});
    };
    const auto cut = [](const auto& p) {
        return p.name() + ", cut " + std::to_string(p.count()) + " of " + p.material();
    };
    for (const outlined_piece<Unit>& p : s.outlines)
        add(cut(p), pages_at_full_size(p, shown, options,
                                       "Close a rotary cutter's guard at every pause. All cautions: first page."));
    for (const sheet_piece<Unit>& p : s.pieces)
        add(cut(p.made_from) + ", to be measured out", {page_of(p, shown, options)});
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
