// Pieces and cloth, in inches unless another unit is named.
#ifndef TURNCLOTH_TESTS_CLOTH_PIECES_HPP
#define TURNCLOTH_TESTS_CLOTH_PIECES_HPP

#include <turncloth/cloth/lay.hpp>

#include <cstdint>

namespace pieces {

inline turncloth::length<turncloth::inch> in(turncloth::fraction x) { return turncloth::length_of<turncloth::inch>(x); }

template <turncloth::length_unit Unit = turncloth::inch>
turncloth::cloth_piece<Unit> piece(const char* name, turncloth::fraction width, turncloth::fraction height,
                                   std::int64_t quantity = 1) {
    return {.name = name,
            .size = {turncloth::length_of<Unit>(width), turncloth::length_of<Unit>(height)},
            .quantity = quantity};
}

inline turncloth::bolt<turncloth::inch> canvas(turncloth::fraction width) {
    turncloth::bolt<turncloth::inch> cloth;
    cloth.width = in(width);
    return cloth;
}

} // namespace pieces

#endif
