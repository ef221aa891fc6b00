// Reads a drafting file: plain text, one thing a line, as a sewing teacher types it.
//
//   read_drafting(text)      the made drafting; throws drafting_error with the line and the field
//   made_drafting<U>         its title, and each made_piece: outline, what is said of it, whether it may be turned,
//                            the line to cut it along
//
//   any_drafting pad = read_drafting("title: Pad\nunit: cm\npiece: cover\nmaterial: canvas\ncut: 1\n...");
//
//     # after a sign of number, a remark
//     title: Kneeling pad            once, first
//     unit: cm                       or mm, or in; lengths without a unit are in it
//     piece: cover                   begins a piece; what follows belongs to it
//     material: waxed canvas
//     cut: 2                         how many
//     turn: allowed                  may lie a quarter turn from the grain; not allowed where it is not written
//     grain: 10; 2; 10; 20           from one point to another, across; up; across; up
//     all edges: seam 1.5            for the edges that say nothing themselves
//     corner: 0; 0                   across; up; and a shape where it is not mitred: reflected in edge after
//     edge: double-turned hem 1; 3   of the edge from that corner to the next one
//     notch: 12 1/2                  on that edge, from that corner
#ifndef TURNCLOTH_EXAMPLES_DRAFTING_DRAFTING_FILE_HPP
#define TURNCLOTH_EXAMPLES_DRAFTING_DRAFTING_FILE_HPP

#include <turncloth.hpp>
#include <turncloth/cloth/lay.hpp>
#include <turncloth/draw/outline.hpp>
#include <turncloth/panel/trimmed.hpp>

#include <cstddef>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace drafting {

using namespace turncloth;

/// What cannot be drafted. `line` counts the lines of the file from 1; 0 where it is of no line.
class drafting_error : public error {
public:
    drafting_error(std::size_t line, const std::string& what)
        : error((line == 0 ? "" : "line " + std::to_string(line) + ": ") + what,
                {.kind = fault::unsuitable, .what = "a drafting", .index = line}) {}
};

template <length_unit Unit>
struct made_piece {
    outline<Unit> shape;
    outline_labels<Unit> says;
    grain turns;
    trimmed_outline<Unit> cut{}; ///< the line to cut along
    std::string
        trimmed_on{}; ///< where allowances overlap, the lines of the file with the edges trimmed: "lines 10, 13"
};

template <length_unit Unit>
struct made_drafting {
    std::string title;
    std::vector<made_piece<Unit>> pieces;
};

/// In the unit that it is drafted in.
using any_drafting = std::variant<made_drafting<centimetre>, made_drafting<millimetre>, made_drafting<inch>>;

any_drafting read_drafting(std::string_view text);

/// The finishes and corner shapes that a file may name, a line each, for a help text.
std::string finishes_help();

} // namespace drafting

#endif
