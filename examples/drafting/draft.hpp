// Drafted pieces, and what becomes of them when they are made up for printing: all lines in millimetres.
//
//   drafted_piece<U>     name, material, quantity, grain line, and its sides: corner, finish, notches, line of the file
//   made_up(piece)       the made_piece: seam and cut line, carried notches, allowances, area; throws drafting_error
//   drafting             title, the unit it was drafted in, and the made pieces
//   drafting_error       what cannot be drafted, with the line of the file
//
//   drafted_piece<centimetre> pocket{.name = "pocket", .material = "canvas", .grain = ..., .sides = ...};
//   area_of(made_up(pocket).cut);
//
// Knows nothing of files, pages or windows, so that any front can edit drafted pieces and have them made up again.
#ifndef TURNCLOTH_EXAMPLES_DRAFTING_DRAFT_HPP
#define TURNCLOTH_EXAMPLES_DRAFTING_DRAFT_HPP

#include <turncloth.hpp>
#include <turncloth/cloth/lay.hpp>
#include <turncloth/panel/outline.hpp>

#include <cmath>
#include <cstddef>
#include <cstdint>
#include <string>
#include <vector>

namespace drafting {

using namespace turncloth;

using spot = point<millimetre, double>;
using shape = polygon<millimetre, double>;

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

struct made_edge {
    spot from, to; ///< on the seam line
    std::string finish;
    length<millimetre> allowance;
    double to_grain; ///< degrees
};

struct made_notch {
    std::size_t edge;
    spot on_seam, on_cut;
};

struct made_piece {
    std::string name, material;
    std::int64_t quantity;
    grain turns;
    shape seam, cut;
    std::vector<made_edge> edges;
    std::vector<made_notch> notches;
    turncloth::line<millimetre, double> grain_line;
};

/// The unit of a drafting, which the figures on its pages are shown in unless another is asked for.
enum class drafted_in { inches, centimetres, millimetres };

struct made_drafting {
    std::string title;
    drafted_in unit = drafted_in::centimetres;
    std::vector<made_piece> pieces;
};

namespace detail {

template <length_unit Unit>
inline constexpr double millimetres_in = to_double(as<millimetre>(length_of<Unit>(1)).value());

template <length_unit Unit>
spot in_millimetres(const point<Unit, double>& p) {
    return drafted_point<millimetre>(p.x.value() * millimetres_in<Unit>, p.y.value() * millimetres_in<Unit>);
}

template <length_unit Unit>
shape in_millimetres(const polygon<Unit, double>& corners) {
    shape all;
    for (const auto& p : corners)
        all.push_back(in_millimetres(p));
    return all;
}

/// What a hem turned twice turns under first, for a corner reflected in its edge.
template <length_unit Unit>
length<Unit> first_turn_of(const finish<Unit>& f) {
    return f.folds().size() > 1 && f.reach().value() > 0 ? f.allowance_parts()[0] : length<Unit>();
}

/// The library counts edges and corners from 0: where a sentence names some, says which lines of the file they are.
template <length_unit Unit>
std::string lines_named_in(const std::string& sentence, const drafted_piece<Unit>& piece) {
    std::string lines;
    const auto tell = [&](const std::string& word, std::size_t at) {
        std::size_t digits = 0;
        while (at + digits < sentence.size() && sentence[at + digits] >= '0' && sentence[at + digits] <= '9')
            ++digits;
        if (digits == 0 || digits > 6)
            return at;
        const std::size_t number = std::stoul(sentence.substr(at, digits));
        if (number < piece.sides.size() && piece.sides[number].corner_line != 0) {
            const auto& side = piece.sides[number];
            lines += (lines.empty() ? "" : ", ") + word + std::to_string(number) + " is on line " +
                     std::to_string(word == "edge " && side.edge_line != 0 ? side.edge_line : side.corner_line);
        }
        return at + digits;
    };
    for (const std::string word : {"edge ", "edges ", "corner "})
        for (std::size_t at = sentence.find(word); at != std::string::npos; at = sentence.find(word, at + 1)) {
            const std::string one = word == "edges " ? "edge " : word;
            const std::size_t end = tell(one, at + word.size());
            if (word == "edges " && sentence.compare(end, 5, " and ") == 0)
                tell(one, end + 5);
        }
    return lines.empty() ? "" : " (" + lines + ")";
}

template <length_unit Unit>
std::string at_text(const point<Unit, double>& p) {
    const auto figure = [](double x) {
        return to_text(nearest_to(length_of<Unit>(approximate(x, {1, 100}).value), length_of<Unit>({1, 100})));
    };
    return figure(p.x.value()) + " across, " + figure(p.y.value()) + " up";
}

template <length_unit Unit>
outline<Unit> outline_of(const drafted_piece<Unit>& piece) {
    polygon<Unit, double> seam;
    std::vector<edge_allowance<Unit>> allowances;
    std::vector<corner_shape> shapes;
    for (const drafted_side<Unit>& side : piece.sides) {
        seam.push_back(drafted(side.corner));
        allowances.push_back({drafted_length_of<Unit>(to_double(side.done.allowance().value())),
                              drafted_length_of<Unit>(to_double(first_turn_of(side.done).value()))});
        shapes.push_back(side.shape);
    }
    try {
        return outline<Unit>(seam, allowances, shapes);
    } catch (const outline_error& refused) {
        throw drafting_error(piece.line,
                             "piece \"" + piece.name + "\": " + refused.what() + lines_named_in(refused.what(), piece) +
                                 "; figures are in the unit of the drafting, " + std::string(unit_name<Unit>));
    }
}

template <length_unit Unit>
made_notch carried(const outline<Unit>& drawn, const drafted_piece<Unit>& piece, std::size_t edge,
                   const drafted_notch<Unit>& mark) {
    try {
        const auto both = drawn.carried({edge, drafted_length_of<Unit>(to_double(mark.from_start.value()))});
        return {edge, in_millimetres(both.on_seam), in_millimetres(both.on_cut)};
    } catch (const outline_error& refused) {
        throw drafting_error(mark.line, "notch of piece \"" + piece.name + "\": " + refused.what() +
                                            lines_named_in(refused.what(), piece));
    }
}

/// The lines of the file with the edges whose cut edge passes there.
template <length_unit Unit>
std::string edges_at(const outline<Unit>& drawn, const drafted_piece<Unit>& piece, const point<Unit, double>& where) {
    std::string lines;
    for (std::size_t i = 0; i < piece.sides.size(); ++i) {
        const auto [from, to] = drawn.cut_edge(i);
        const double ux = (to.x - from.x).value(), uy = (to.y - from.y).value(), vx = (where.x - from.x).value(),
                     vy = (where.y - from.y).value(), size = std::hypot(ux, uy), along = ux * vx + uy * vy;
        const drafted_side<Unit>& side = piece.sides[i];
        if (size > 0 && std::abs(ux * vy - uy * vx) <= 1e-6 * size && along >= -1e-6 * size &&
            along <= size * size + 1e-6 * size && side.corner_line != 0)
            lines += (lines.empty() ? ", on the edges of lines " : ", ") +
                     std::to_string(side.edge_line != 0 ? side.edge_line : side.corner_line);
    }
    return lines;
}

template <length_unit Unit>
void require_cuttable(const outline<Unit>& drawn, const drafted_piece<Unit>& piece) {
    const auto crossings = drawn.crossings();
    if (!crossings.empty())
        throw drafting_error(piece.line, "piece \"" + piece.name +
                                             "\" cannot be cut: with these allowances its cut line " +
                                             "crosses itself at " + at_text(crossings.front().where) +
                                             edges_at(drawn, piece, crossings.front().where) +
                                             "; allow less there, or draft a wider corner");
}

} // namespace detail

/// Works out one piece. Throws drafting_error for fewer than 3 corners, edges without length or that cross, a corner
/// that cannot have its shape, a notch off its edge, allowances for which the cut line crosses itself, or a grain line that
/// is a point.
template <length_unit Unit>
made_piece made_up(const drafted_piece<Unit>& piece) {
    const outline<Unit> drawn = detail::outline_of(piece);
    const auto grain_line = drafted(piece.grain_line);
    if (piece.grain_line.from == piece.grain_line.to)
        throw drafting_error(piece.line, "piece \"" + piece.name +
                                             "\": the grain line needs two different points, to lead from "
                                             "one to the other");
    detail::require_cuttable(drawn, piece);
    made_piece made{.name = piece.name,
                    .material = piece.material,
                    .quantity = piece.quantity,
                    .turns = piece.turns,
                    .seam = detail::in_millimetres(drawn.seam_line()),
                    .cut = detail::in_millimetres(drawn.cut_line()),
                    .edges = {},
                    .notches = {},
                    .grain_line = {detail::in_millimetres(grain_line.from), detail::in_millimetres(grain_line.to)}};
    for (std::size_t i = 0; i < piece.sides.size(); ++i) {
        const drafted_side<Unit>& side = piece.sides[i];
        made.edges.push_back({made.seam[i], made.seam[(i + 1) % made.seam.size()], std::string(side.done.name()),
                              as<millimetre>(side.done.allowance()), drawn.angle_to_grain(i, grain_line)});
        for (const drafted_notch<Unit>& mark : side.notches)
            made.notches.push_back(detail::carried(drawn, piece, i, mark));
    }
    return made;
}

} // namespace drafting

#endif
