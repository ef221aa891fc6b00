// What a piece of a project is cut from, as a part of a making has it.
//
//   cloth_of(piece)     a cloth<U>: its material, whether it is film, and whether its edges are looked for since it frays
//
//   design.cut({.name = felt.name(), .cloth = cloth_of(felt), .width = 4_in, .height = 4_in});
#ifndef TURNCLOTH_SHEET_CLOTH_OF_HPP
#define TURNCLOTH_SHEET_CLOTH_OF_HPP

#include <turncloth/making/parts.hpp>
#include <turncloth/sheet/piece.hpp>

namespace turncloth {

template <length_unit Unit>
cloth<Unit> cloth_of(const piece<Unit>& p) {
    return {.name = p.material(), .frays = p.frays() && !p.is_cut_up(), .film = p.is_film()};
}

} // namespace turncloth

#endif
