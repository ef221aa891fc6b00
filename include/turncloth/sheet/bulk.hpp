// Where a sheet's stitching meets more layers than a machine sews through.
//
//   bulk_warnings(sheet, most_layers)           corners stacked
//   bulk_warnings(sheet, most_layers, ways)     corners made so, where both edges are turned (panel/made_up.hpp)
//   bulk_warning                                piece, where, layers, limit; what() is the sentence
//
//   for (const bulk_warning& w : bulk_warnings(s, 8))
//       s.warnings.push_back(w.what());
//
// Each piece is folded by its own finishes. Counted are the layers under every row of stitching, in the middle of its
// edge and from there to each corner, and with them the inner layers that the sheet says lie inside. A row that joins
// two pieces is sewn before its allowance is pressed, through this piece and another taken to be like it, both with
// their other edges turned already. What is sewn onto a piece (a placing, a meeting) may or may not lie under a row: it
// is not counted.
//
// Included by itself: folding is not part of turncloth.hpp.
#ifndef TURNCLOTH_SHEET_BULK_HPP
#define TURNCLOTH_SHEET_BULK_HPP

#include <turncloth/measure/require.hpp>
#include <turncloth/panel/made_up.hpp>
#include <turncloth/sheet/sheet.hpp>

#include <algorithm>
#include <array>
#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <type_traits>
#include <utility>
#include <vector>

namespace turncloth {

/// `where` is "the top edge" or "the top left corner" of the piece.
struct bulk_warning {
    std::string piece, where;
    std::int64_t layers, limit;

    std::string what() const {
        std::string all = "stitching at ";
        all.append(where)
            .append(" of ")
            .append(detail::named(piece))
            .append(" goes through ")
            .append(std::to_string(layers));
        return all.append(" layers, more than the ").append(std::to_string(limit)).append(" that are allowed");
    }
};

namespace detail {

constexpr std::string_view name_of_corner(corner c) {
    switch (c) {
    case corner::top_left:
        return "the top left corner";
    case corner::top_right:
        return "the top right corner";
    case corner::bottom_right:
        return "the bottom right corner";
    case corner::bottom_left:
        break;
    }
    return "the bottom left corner";
}

/// Counts for one piece.
template <length_unit Unit>
class bulk_counter {
public:
    bulk_counter(const panel<Unit>& shape, const corners<Unit>& ways, std::int64_t inner)
        : shape_(shape),
          inner_(inner),
          turned_(fold_panel<double>(shape, possible(shape, ways))),
          flat_(fold_panel<double>(shape, possible(shape, ways), lie_of_allowances::left_flat)) {
        for (const edge e : all_edges)
            for (const auto& row : shape.finish_of(e).stitching())
                count(e, row.from_datum());
    }

    std::int64_t at(edge e) const { return edges_[static_cast<std::size_t>(e)]; }
    std::int64_t at(corner c) const { return corners_[static_cast<std::size_t>(c)]; }

private:
    using folded = folded_panel<Unit, double>;
    using point_type = point<Unit, double>;

    /// A corner of which one edge is not turned can only be stacked.
    static corners<Unit> possible(const panel<Unit>& shape, const corners<Unit>& ways) {
        const auto way = [&](edge one, edge other, corner c) {
            const bool both = is_turned(shape.finish_of(one)) && is_turned(shape.finish_of(other));
            return both ? ways[c] : stacked<Unit>();
        };
        return {way(edge::top, edge::left, corner::top_left), way(edge::top, edge::right, corner::top_right),
                way(edge::bottom, edge::right, corner::bottom_right),
                way(edge::bottom, edge::left, corner::bottom_left)};
    }

    void count(edge e, length<Unit> in) {
        const finish<Unit>& f = shape_.finish_of(e);
        const folded& piece = f.joins() ? flat_ : turned_;
        const std::int64_t pieces = f.joins() ? 2 : 1, inner = f.joins() ? 0 : inner_;
        // A row on the very edge of a hem holds that edge: look a thousandth of the way from it to the fold.
        if (in > f.allowance())
            in -= (in - f.allowance()) / 1000;
        const auto [from, middle, to, first, last] = ends_of(piece, e, to_double(in.value()));
        const auto raise = [&](std::int64_t& most, std::size_t layers) {
            most = std::max(most, static_cast<std::int64_t>(layers) * pieces + inner);
        };
        raise(edges_[static_cast<std::size_t>(e)], piece.stack().layers_at(middle));
        raise(corners_[static_cast<std::size_t>(first)], piece.stack().most_layers_along(from, middle).layers);
        raise(corners_[static_cast<std::size_t>(last)], piece.stack().most_layers_along(middle, to).layers);
    }

    struct row_ends {
        point_type from, middle, to;
        corner first, last;
    };

    /// Of a row `in` from the cut edge, from side to side of the folded piece.
    row_ends ends_of(const folded& piece, edge e, double in) const {
        const auto outline = piece.outline(); // from the bottom left, counter-clockwise
        const auto low = bare(outline[0]), high = bare(outline[2]);
        const auto row = [](double x, double y, double to_x, double to_y, corner first, corner last) {
            const auto spot = [](double across, double up) { return in_unit<Unit>(arrow<double>{across, up}); };
            return row_ends{spot(x, y), spot((x + to_x) / 2, (y + to_y) / 2), spot(to_x, to_y), first, last};
        };
        const double right = to_double(shape_.cut().width().value()) - in,
                     top = to_double(shape_.cut().height().value()) - in;
        switch (e) {
        case edge::top:
            return row(low.x, top, high.x, top, corner::top_left, corner::top_right);
        case edge::bottom:
            return row(low.x, in, high.x, in, corner::bottom_left, corner::bottom_right);
        case edge::left:
            return row(in, low.y, in, high.y, corner::bottom_left, corner::top_left);
        case edge::right:
            break;
        }
        return row(right, low.y, right, high.y, corner::bottom_right, corner::top_right);
    }

    const panel<Unit>& shape_;
    std::int64_t inner_;
    folded turned_, flat_;
    std::array<std::int64_t, 4> edges_{}, corners_{};
};

/// Layers that lie inside each piece of that name; several alike that share an odd number are given the more.
template <length_unit Unit>
std::int64_t layers_inside(const sheet<Unit>& s, const piece<Unit>& outer) {
    std::int64_t layers = 0;
    for (const sheet_piece<Unit>& p : s.pieces)
        if (p.made_from.inside() == outer.name())
            layers += (p.made_from.count() + outer.count() - 1) / outer.count();
    return layers;
}

} // namespace detail

/// Edges first, then corners, piece by piece. Throws range_error for a limit below one, corner_error where a mitre has
/// no room. Folded in doubles, whose tolerance (drafting_tolerance) is far below any stitch: no size runs out of
/// fractions.
template <length_unit Unit>
std::vector<bulk_warning> bulk_warnings(const sheet<Unit>& s, std::int64_t most_layers,
                                        const std::type_identity_t<corners<Unit>>& ways) {
    require_at_least<range_error>(most_layers, std::int64_t{1}, "the number of layers that a machine sews through");
    std::vector<bulk_warning> all;
    for (const sheet_piece<Unit>& p : s.pieces) {
        const detail::bulk_counter<Unit> count(p.made_from.shape(), ways, detail::layers_inside(s, p.made_from));
        const auto note = [&](std::string where, std::int64_t layers) {
            if (layers > most_layers)
                all.push_back({p.made_from.name(), std::move(where), layers, most_layers});
        };
        for (const edge e : all_edges)
            note(std::string("the ").append(name_of(e)).append(" edge"), count.at(e));
        for (const corner c : every_corner)
            note(std::string(detail::name_of_corner(c)), count.at(c));
    }
    return all;
}

template <length_unit Unit>
std::vector<bulk_warning> bulk_warnings(const sheet<Unit>& s, std::int64_t most_layers) {
    return bulk_warnings(s, most_layers, all_corners(stacked<Unit>()));
}

} // namespace turncloth

#endif
