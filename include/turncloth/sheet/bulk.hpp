// Where a machine will not sew through: rows of stitching over more layers than it takes, corners above all.
//
//   bulk_warnings(sheet, most_layers)             a sentence for every edge that is too thick, for corners folded stacked
//   bulk_warnings(sheet, most_layers, corners)    for corners made so (panel/made_up.hpp)
//
//   for (const std::string& said : bulk_warnings(s, 8)) s.warnings.push_back(said);
//
// Each piece is folded by its own finishes, and the pieces that lie inside it are added to what the needle meets. An edge
// that is sewn to another piece is left out: how thick that one is there, its own edges do not tell. Included by itself.
#ifndef TURNCLOTH_SHEET_BULK_HPP
#define TURNCLOTH_SHEET_BULK_HPP

#include <turncloth/panel/made_up.hpp>
#include <turncloth/sheet/sheet.hpp>

#include <algorithm>
#include <cstdint>
#include <string>
#include <vector>

namespace turncloth {

namespace detail {

/// The pieces that lie inside one of this name, counted.
template <length_unit Unit>
std::int64_t layers_inside(const sheet<Unit>& s, const std::string& outer) {
    std::int64_t count = 0;
    for (const sheet_piece<Unit>& p : s.pieces)
        count += p.made_from.inside() == outer ? p.made_from.count() : 0;
    return count;
}

template <length_unit Unit>
bool is_turned(const panel<Unit>& p) {
    for (const edge e : all_edges)
        if (!p.finish_of(e).folds().empty())
            return true;
    return false;
}

} // namespace detail

/// Throws range_error for a limit below one, corner_error for a mitre that a piece has no room for. Folded in doubles,
/// whose tolerance (drafting_tolerance) is far below any stitch, so that no size runs out of fractions.
template <length_unit Unit>
std::vector<std::string> bulk_warnings(const sheet<Unit>& s, std::int64_t most_layers,
                                       const corners<Unit>& ways = all_corners(stacked<Unit>())) {
    if (most_layers < 1)
        detail::refuse<range_error>("a machine sews through at least one layer: the limit was " +
                                    std::to_string(most_layers));
    std::vector<std::string> all;
    for (const sheet_piece<Unit>& p : s.pieces) {
        const panel<Unit>& shape = p.made_from.shape();
        if (!detail::is_turned(shape))
            continue;
        const auto folded = fold_panel<double>(shape, ways);
        const std::int64_t inside = detail::layers_inside(s, p.made_from.name());
        for (const edge e : all_edges) {
            std::int64_t own = 0;
            if (!shape.finish_of(e).joins())
                for (const auto& row : shape.finish_of(e).stitching())
                    own = std::max(own, static_cast<std::int64_t>(folded.most_layers_in_row(e, row).layers));
            if (own > 0 && own + inside > most_layers)
                all.push_back("the stitching of the " + std::string(name_of(e)) + " edge of " + p.made_from.name() +
                              " goes through up to " + std::to_string(own + inside) + " layers, " +
                              std::to_string(inside) + " of them inside it: the machine sews " +
                              std::to_string(most_layers));
        }
    }
    return all;
}

} // namespace turncloth

#endif
