// Drafted pieces, and what becomes of them when they are made up.
//
//   drafted_piece<U>     name, material, quantity, grain line, and its sides: corner, finish, notches, line of the file
//   made_up(piece)       the made_piece: its outline, and what is said of it; throws drafting_error
//   drafting<U>          title, and the made pieces
//   drafting_error       what cannot be drafted, with the line of the file
//
//   drafted_piece<centimetre> pocket{.name = "pocket", .material = "canvas", .grain_line = ..., .sides = ...};
//   area_of(made_up(pocket).shape.cut_line());
//
// Knows nothing of files, pages or windows, so that any front can edit drafted pieces and have them made up again.
#ifndef TURNCLOTH_EXAMPLES_DRAFTING_DRAFT_HPP
#define TURNCLOTH_EXAMPLES_DRAFTING_DRAFT_HPP

#include <turncloth.hpp>
#include <turncloth/cloth/lay.hpp>
#include <turncloth/draw/outline.hpp>

#include <cmath>
#include <cstddef>
#include <cstdint>
#include <string>
#include <vector>

namespace drafting {

using namespace turncloth;

/// What cannot be drafted. `line` counts the lines of the file from 1; 0 where the piece is not from a file.
class drafting_error : public error {
public:
    drafting_error(std::size_t line, const std::string& what)
        : error((line == 0 ? "" : "line " + std::to_string(line) + ": ") + what,
                {.kind = fault::unsuitable, .what = "a drafting", .index = line}),
          line_(line) {}
    std::size_t line() const noexcept { return line_; }

private:
    std::size_t line_;
};

template <length_unit Unit>
struct drafted_notch {
    length<Unit> from_start;
    std::size_t line = 0;
};

/// A corner, and the edge from it to the next corner.
template <length_unit Unit>
struct drafted_side {
    point<Unit> corner;
    corner_shape shape = corner_shape::mitred;
    finish<Unit> done;
    std::vector<drafted_notch<Unit>> notches;
    std::size_t corner_line = 0, edge_line = 0;

    std::size_t line() const { return edge_line != 0 ? edge_line : corner_line; }
};

template <length_unit Unit>
struct drafted_piece {
    std::string name, material;
    std::int64_t quantity = 1;
    grain turns = grain::fixed; ///< whether the cloth allows a quarter turn
    turncloth::line<Unit> grain_line;
    std::vector<drafted_side<Unit>> sides;
    std::size_t line = 0;
};

template <length_unit Unit>
struct made_piece {
    outline<Unit> shape;
    outline_labels<Unit> says;
    grain turns;
};

template <length_unit Unit>
struct made_drafting {
    std::string title;
    std::vector<made_piece<Unit>> pieces;
};

/// Which edges of a cut line pass a place, by the lines of the file.
template <length_unit Unit>
std::string edges_at(const outline<Unit>& drawn, const drafted_piece<Unit>& piece, const point<Unit, double>& where) {
    std::string lines;
    for (std::size_t i = 0; i < piece.sides.size(); ++i) {
        const auto [from, to] = drawn.cut_edge(i);
        const double ux = (to.x - from.x).value(), uy = (to.y - from.y).value(), vx = (where.x - from.x).value(),
                     vy = (where.y - from.y).value(), size = std::hypot(ux, uy), along = ux * vx + uy * vy;
        if (size > 0 && std::abs(ux * vy - uy * vx) <= 1e-6 * size && along >= -1e-6 * size &&
            along <= size * size + 1e-6 * size && piece.sides[i].line() != 0)
            lines += (lines.empty() ? ", on the edges of lines " : ", ") + std::to_string(piece.sides[i].line());
    }
    return lines;
}

template <length_unit Unit>
void require_cuttable(const outline<Unit>& drawn, const drafted_piece<Unit>& piece) {
    const auto crossings = drawn.crossings();
    if (crossings.empty())
        return;
    const auto& where = crossings.front().where;
    const auto figure = [](drafted_length<Unit> x) {
        return to_text(nearest_to(length_of<Unit>(approximate(x.value(), {1, 100}).value), length_of<Unit>({1, 100})));
    };
    throw drafting_error(piece.line, "piece \"" + piece.name +
                                         "\" cannot be cut: with these allowances its cut line crosses itself at " +
                                         figure(where.x) + " across, " + figure(where.y) + " up" +
                                         edges_at(drawn, piece, where) + "; allow less there, or draft a wider corner");
}

template <length_unit Unit>
outline<Unit> outline_of(const drafted_piece<Unit>& piece) {
    polygon<Unit, double> seam;
    std::vector<edge_allowance<Unit>> allowances;
    std::vector<corner_shape> shapes;
    for (const drafted_side<Unit>& side : piece.sides) {
        const finish<Unit>& f = side.done;
        // What a hem turned twice turns under first, for a corner reflected in its edge.
        const length<Unit> first =
            f.folds().size() > 1 && f.reach().value() > 0 ? f.allowance_parts()[0] : length<Unit>();
        seam.push_back(drafted(side.corner));
        allowances.push_back({drafted_length_of<Unit>(to_double(f.allowance().value())),
                              drafted_length_of<Unit>(to_double(first.value()))});
        shapes.push_back(side.shape);
    }
    return outline<Unit>(seam, allowances, shapes);
}

/// Works out one piece. Throws drafting_error for fewer than 3 corners, edges without length or that cross, a corner
/// that cannot have its shape, a notch off its edge, allowances for which the cut line crosses itself, or a grain line that
/// is a point. The library counts edges and corners from 0: which line of the file is meant is told by the index that
/// its refusal carries.
template <length_unit Unit>
made_piece<Unit> made_up(const drafted_piece<Unit>& piece) {
    std::size_t line = piece.line;
    std::string what = "piece \"" + piece.name + "\": ";
    try {
        made_piece<Unit> made{outline_of(piece),
                              {.name = piece.name,
                               .material = piece.material,
                               .count = piece.quantity,
                               .grain = drafted(piece.grain_line)},
                              piece.turns};
        require_cuttable(made.shape, piece);
        static_cast<void>(made.shape.angle_to_grain(0, *made.says.grain)); // which refuses a line without direction
        for (std::size_t i = 0; i < piece.sides.size(); ++i) {
            made.says.finishes.emplace_back(piece.sides[i].done.name());
            for (const drafted_notch<Unit>& mark : piece.sides[i].notches) {
                line = mark.line, what = "notch of piece \"" + piece.name + "\": ";
                made.says.notches.push_back({i, drafted_length_of<Unit>(to_double(mark.from_start.value()))});
                static_cast<void>(made.shape.carried(made.says.notches.back()));
            }
        }
        return made;
    } catch (const outline_error& refused) {
        const auto index = refused.facts().index;
        throw drafting_error(
            line, what + refused.what() +
                      (index ? " (it begins on line " + std::to_string(piece.sides[*index].corner_line) + ")" : "") +
                      "; figures are in the unit of the drafting, " + std::string(unit_name<Unit>));
    }
}

} // namespace drafting

#endif
