// What a project tells of one cloth, and what that makes of a piece's size.
//
//   said_of(cloths, material)      null where nothing is said
//   size_to_cut(piece, said)       larger than the sheet's where pieces are washed
//   washing_step(cloth)            what is done, as a sentence
#ifndef TURNCLOTH_SHEET_DETAIL_CLOTH_TOLD_HPP
#define TURNCLOTH_SHEET_DETAIL_CLOTH_TOLD_HPP

#include <turncloth/measure/rounding.hpp>
#include <turncloth/sheet/project_cloth.hpp>
#include <turncloth/sheet/sheet.hpp>

#include <string>
#include <string_view>
#include <vector>

namespace turncloth::detail {

template <length_unit Unit>
const project_cloth<Unit>* said_of(const std::vector<project_cloth<Unit>>& cloths, std::string_view material) {
    for (const project_cloth<Unit>& c : cloths)
        if (c.material == material)
            return &c;
    return nullptr;
}

/// Where pieces are washed, the size to cut: never smaller than what the wash takes, and on the ruler of the sheet.
template <length_unit Unit>
cut_size<Unit> size_to_cut(const sheet_piece<Unit>& p, const project_cloth<Unit>* said) {
    if (said == nullptr || said->washed != washed_when::as_pieces)
        return p.cut;
    const cut_size<Unit> larger = before_washing(p.cut, said->change);
    if (p.graduation.value() == 0)
        return larger;
    return {up_to(larger.width(), p.graduation), up_to(larger.height(), p.graduation)};
}

/// Of cloth that is washed.
template <length_unit Unit>
std::string washing_step(const project_cloth<Unit>& c) {
    if (c.washed == washed_when::as_pieces)
        return sentence(
            {"Wash, dry and press the pieces of ", c.material,
             " before you mark them, and trim each to its listed size: they are cut larger by what the wash "
             "takes."});
    if (c.change == washing())
        return sentence({"Wash, dry and press the ", c.material, " before you measure and cut it."});
    return sentence({"Wash, dry and press the ", c.material,
                     " before you measure and cut it: the length to buy allows for what the wash takes."});
}

} // namespace turncloth::detail

#endif
