// Pieces that turn together: all of them upright, or all turned, whichever makes the better lay.
//
//   detail::any_together(pieces)              whether there are such
//   detail::ways_together(pieces, cloths)     the ways that they may lie on all of those cloths: upright, turned or both
//   detail::laid_so(pieces, turned)           the same pieces, fixed in that way
//   detail::told_turned(places, pieces)       of places of those turned, which piece they were
//
//   for (const bool turned : detail::ways_together(pieces, {canvas}))
//       auto found = lay_out(detail::laid_so(pieces, turned), canvas);
#ifndef TURNCLOTH_CLOTH_DETAIL_TURNED_TOGETHER_HPP
#define TURNCLOTH_CLOTH_DETAIL_TURNED_TOGETHER_HPP

#include <turncloth/cloth/bolt.hpp>

#include <algorithm>
#include <cstddef>
#include <optional>
#include <utility>
#include <vector>

namespace turncloth::detail {

template <length_unit Unit>
bool is_together(const cloth_piece<Unit>& piece) {
    return piece.grain == grain::turn_together;
}

template <length_unit Unit>
bool any_together(const std::vector<cloth_piece<Unit>>& pieces) {
    return std::any_of(pieces.begin(), pieces.end(), is_together<Unit>);
}

/// Where one of them may not be turned, none is. One that stays has its way already. Without any there is one way.
template <length_unit Unit>
std::vector<bool> ways_together(const std::vector<cloth_piece<Unit>>& pieces, const std::vector<bolt<Unit>>& cloths) {
    bool upright = true, turned = any_together(pieces);
    for (const cloth_piece<Unit>& p : pieces) {
        if (!is_together(p))
            continue;
        for (const bolt<Unit>& cloth : cloths)
            turned = turned && may_turn(p, cloth);
        if (p.stays)
            (p.stays->turned ? upright : turned) = false;
    }
    std::vector<bool> ways;
    if (upright || !turned)
        ways.push_back(false);
    if (turned)
        ways.push_back(true);
    return ways;
}

template <length_unit Unit>
std::vector<cloth_piece<Unit>> laid_so(std::vector<cloth_piece<Unit>> pieces, bool turned) {
    for (cloth_piece<Unit>& p : pieces) {
        if (!is_together(p))
            continue;
        p.grain = grain::fixed;
        if (!turned)
            continue;
        p.size = {p.size.height(), p.size.width()};
        if (p.stays)
            p.stays->turned = !p.stays->turned;
    }
    return pieces;
}

template <length_unit Unit, class Lay>
Lay told_turned(Lay found, const std::vector<cloth_piece<Unit>>& pieces, bool turned) {
    for (auto& place : found.places)
        if (turned && is_together(pieces[place.piece]))
            place.turned = true;
    return found;
}

/// Why the pieces go on the cloth in none of these ways; nothing where they go on it in one. Those in which they do not
/// are taken from the list.
template <length_unit Unit>
std::optional<piece_too_wide_error>
keep_ways_that_fit(std::vector<bool>& ways, const std::vector<cloth_piece<Unit>>& pieces, const bolt<Unit>& cloth) {
    std::optional<piece_too_wide_error> first;
    const bool several = ways.size() > 1;
    std::erase_if(ways, [&](bool turned) {
        const std::vector<cloth_piece<Unit>> as_laid = laid_so(pieces, turned);
        for (std::size_t i = 0; i < as_laid.size(); ++i)
            if (const auto why = too_wide(as_laid[i], i, cloth)) {
                if (!first)
                    first = why;
                return true;
            }
        return false;
    });
    if (!ways.empty())
        return std::nullopt;
    if (!several)
        return first;
    const refusal& facts = first->facts();
    return piece_too_wide_error(sentence({named(pieces[*facts.index], *facts.index),
                                          " and what turns together with it go on the usable width of ",
                                          cloth.usable_width(), " neither upright nor turned"}),
                                facts, false);
}

/// The ways in which they go on the cloth. Throws piece_too_wide_error where there is none.
template <length_unit Unit>
std::vector<bool> ways_that_fit(const std::vector<cloth_piece<Unit>>& pieces, const bolt<Unit>& cloth) {
    std::vector<bool> ways = ways_together<Unit>(pieces, {cloth});
    if (const auto why = keep_ways_that_fit(ways, pieces, cloth))
        refuse<piece_too_wide_error>(*why);
    return ways;
}

} // namespace turncloth::detail

#endif
