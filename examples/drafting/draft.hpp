// Drafted pieces, worked out, and what is said of those that cannot be.
//
//   made_piece<U>        its outline, what is said of it, and whether the cloth allows it a quarter turn
//   made_drafting<U>     title, and the made pieces
//   drafting_error       what cannot be drafted, with the line of the file
//
//   area_of(pad.pieces[0].shape.cut_line());
#ifndef TURNCLOTH_EXAMPLES_DRAFTING_DRAFT_HPP
#define TURNCLOTH_EXAMPLES_DRAFTING_DRAFT_HPP

#include <turncloth.hpp>
#include <turncloth/cloth/lay.hpp>
#include <turncloth/draw/outline.hpp>

#include <cstddef>
#include <string>
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
};

template <length_unit Unit>
struct made_drafting {
    std::string title;
    std::vector<made_piece<Unit>> pieces;
};

} // namespace drafting

#endif
