// A drafting as pages to print: a sheet that tells how, then every piece at true scale over as many pages as it takes.
//
//   page_orders                          paper, the units shown, and the cloth laid out if that is wanted
//   pages_of(drafting, orders, wide)     the whole print; throws turncloth::error where it cannot be made
//
//   const print made = pages_of(read_drafting(text), {.on = letter}, pdf_text_width());
//
// Only lines and words come of it (page.hpp): what puts them on paper, or in a window, is another's.
#ifndef TURNCLOTH_EXAMPLES_DRAFTING_PAGES_HPP
#define TURNCLOTH_EXAMPLES_DRAFTING_PAGES_HPP

#include "cloth.hpp"
#include "draft.hpp"
#include "lines.hpp"
#include "tiling.hpp"

#include <optional>
#include <string>
#include <vector>

namespace drafting {

struct page_orders {
    paper on = paper::a4;
    ruler shown{.shows = units_shown::centimetres};
    std::optional<cloth_laid> cloth{};
};

print pages_of(const made_drafting& drafting, const page_orders& orders, const text_measure& measure);

/// More pages than this are refused: a slip in a unit would ask for thousands.
inline constexpr std::size_t most_pages = 400;

// Below, the parts that the whole is put together from.

/// A piece as it lies over its pages: given a quarter turn where that saves pages.
struct placed_piece {
    const made_piece* piece;
    bool turned;
    tiling parts;
    std::vector<page_point> cut, seam; ///< in the plane that is parted

    page_point placed(const spot& p) const { return on_plane(p, turned); }
    /// Down the page for what is up in the drafting; and so that right and left stay what they are.
    static page_point on_plane(const spot& p, bool turned) {
        const double x = p.x.value(), y = p.y.value();
        return turned ? page_point{y, x} : page_point{x, -y};
    }
    bool shown(std::size_t row, std::size_t column) const { return shows(cut, parts.part(row, column)); }
    std::size_t pages() const;
};

placed_piece placed(const made_piece& piece, const paper& on);

/// The pages of one piece, row by row; those that would be blank are left out.
std::vector<page> pages_of(const placed_piece& piece, const page_orders& orders, const text_measure& measure);

/// The first pages: test squares, how to join, what each line means, the pieces and the cloth.
std::vector<page> first_pages(const made_drafting& drafting, const std::vector<placed_piece>& pieces,
                              const page_orders& orders, const text_measure& measure);

/// An area in the squares of the units shown, to a whole one.
std::string area_text(double square_millimetres, const ruler& shown);

} // namespace drafting

#endif
