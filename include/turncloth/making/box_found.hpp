// What boxed work comes to, as data: boxes with their faces, seams as they are sewn, openings, marks, passages.
//
//   boxed<U>              boxes, sewn, openings, marks, passages, faults
//   box_found<U>          what is sewn together: its faces in space, and its size between the stitched lines
//   box_face<U>           a piece, or what of it lies between its creases: from where to where, and where that stands
//   seam_sewn<U>          a seam as it is sewn in one run, what is left open left out
//   opened<U>             a mouth in a seam: how long, and on which seam
//   seam_marks<U>         where a longer side meets a shorter one, mark to mark
//   passage<U>            whether something can be put in: the opening that it needs, and the one that there is
//
//   const boxed<inch> pad = boxed_of(design);       // boxed.hpp
//   pad.boxes[0].depth == 2_in;
//
// Thickness is nothing here, as in all of making. Space is that of the largest face, as it lies right side up before
// you: x to the right, y down, z towards you.
#ifndef TURNCLOTH_MAKING_BOX_FOUND_HPP
#define TURNCLOTH_MAKING_BOX_FOUND_HPP

#include <turncloth/making/compartments.hpp>
#include <turncloth/marks/mapping.hpp>

#include <array>
#include <cstddef>
#include <cstdint>
#include <vector>

namespace turncloth {

/// Axes are -1, 0 or 1 along x, y and z.
template <length_unit Unit>
struct box_face {
    cut_part of{};
    length<Unit> left{}, top{}, right{}, bottom{}; ///< on the piece, from its cut left and top edges
    std::array<int, 3> rightward{}, downward{};    ///< where the piece's own right and down point
    std::array<int, 3> out{};                      ///< where its right side looks
    std::array<length<Unit>, 3> at{};              ///< where `left`, `top` is
};

template <length_unit Unit>
struct box_found {
    std::vector<box_face<Unit>> faces{};
    length<Unit> width{}, height{}, depth{};
    bool open = false; ///< some edge is sewn to nothing: a rim
};

template <length_unit Unit>
struct seam_sewn {
    operation what{};
    std::int64_t member = 0; ///< of its runs, from 0
    cut_part one{}, other{}; ///< where the run begins
    length<Unit> sewn{};
};

template <length_unit Unit>
struct opened {
    mouth_handle what{};
    operation in{}; ///< the first seam that it lies on
    length<Unit> wide{};
};

/// From where the two lines begin to meet: the end of `one` that lies left or at the top, where going on from there is
/// clockwise, otherwise its other end.
template <length_unit Unit>
struct seam_marks {
    operation what{};
    std::int64_t member = 0; ///< of its spans, from 0
    bool one_is_longer = true;
    surplus taken_up = surplus::ease;
    even_mapping<Unit> marks;
};

template <length_unit Unit>
struct passage {
    std::size_t contents = 0;
    std::int64_t folded = 0;
    length<Unit> needs{}, has{}; ///< half round what goes in, and half round the opening
    bool passes() const { return needs <= has; }
};

template <length_unit Unit>
struct boxed {
    std::vector<box_found<Unit>> boxes{};
    std::vector<seam_sewn<Unit>> sewn{};
    std::vector<opened<Unit>> openings{};
    std::vector<seam_marks<Unit>> marks{};
    std::vector<passage<Unit>> passages{};
    std::vector<making_fault> faults{};
};

} // namespace turncloth

#endif
