// Patchwork, loose filling and ties round necks as notions that a project can hold.
//
//   listed(name, count, patch, usable)    patches alike, and the strips that they are cut from
//   listed(name, count, triangles)        squares pieced of triangles
//   listed(name, loose filling)           what fills a tube, and what that weighs
//   listed(name, tie)  listed(name, tie, cut)    ribbon round a gathered neck; of one that is cut already, what it goes round
//
//   cushion.add(listed("light patches", 9, sewn_patch<inch>{4_in, 4_in, "1/4"_in}, 42_in));
#ifndef TURNCLOTH_SHEET_FILLED_AND_PIECED_HPP
#define TURNCLOTH_SHEET_FILLED_AND_PIECED_HPP

#include <turncloth/notions/filling.hpp>
#include <turncloth/notions/gathered.hpp>
#include <turncloth/notions/triangles.hpp>
#include <turncloth/sheet/notion.hpp>

#include <cstdint>
#include <string>
#include <utility>

namespace turncloth {

/// Patches alike, and the strips across cloth of that usable width that they are cut from.
template <length_unit Unit>
notion<Unit> listed(std::string name, std::int64_t count, const sewn_patch<Unit>& p, length<Unit> usable) {
    const patch_strips cut = strips_for(count, p, usable);
    return notion<Unit>(std::move(name))
        .number("patches", count)
        .figure("strip, cut width", patch_cut_height(p))
        .figure("cut across into patches, each", patch_cut_width(p))
        .number("patches from a strip", cut.each)
        .number("strips across the cloth", cut.strips)
        .figure("cloth for them", cloth_for_strips(cut, p));
}

template <length_unit Unit>
notion<Unit> listed(std::string name, std::int64_t count, const triangles<Unit>& t) {
    return notion<Unit>(std::move(name))
        .number(t.seams.of == pieced_of::two ? "squares pieced of two triangles" : "squares pieced of four triangles",
                count)
        .number("squares to cut of each of two cloths", squares_to_cut(count))
        .figure("each, cut", cut_for_triangles(t.finished, t.seams, t.step))
        .figure("trimmed, once pieced, to", trimmed_triangles(t.finished, t.seams.seam));
}

/// Whole cubes of the unit, and whole ounces or grams, so that it is enough.
template <length_unit Unit>
notion<Unit> listed(std::string name, const loose_filling<Unit>& f) {
    constexpr bool metric = metric_unit<Unit>;
    return notion<Unit>(std::move(name))
        .figure("once round the tube", f.tube.girth)
        .figure("across it, sewn up flat and empty", f.tube.girth / fraction(2))
        .figure("across it, filled until it is round", tube_across(f.tube.girth, f.step, rounding::nearest))
        .number(metric ? "cubic centimetres of filling, pressed in, at the most"
                       : "cubic inches of filling, pressed in, at the most",
                numerator(tube_holds(f.tube, 1, rounding::up)))
        .number(metric ? "grams of filling, by weight, at the most" : "ounces of filling, by weight, at the most",
                numerator(weight_to_fill(f.tube, f.cube, 1, rounding::up)))
        .sold(sold_as::as_told)
        .caution(caution::filling)
        .caution(caution::loose_filling)
        .caution(caution::infants_and_animals);
}

template <length_unit Unit>
notion<Unit> listed(std::string name, const neck_tie<Unit>& t) {
    return notion<Unit>(std::move(name))
        .figure("once round the gathered neck", t.girth)
        .figure("ribbon, cut", tie_working(t))
        .sold(sold_as::off_a_roll)
        .caution(caution::cords)
        .caution(caution::infants_and_animals);
}

/// Throws tie_error where it does not reach.
template <length_unit Unit>
notion<Unit> listed(std::string name, const neck_tie<Unit>& t, length<Unit> cut) {
    require_reaches(t, cut);
    return listed(std::move(name), t)
        .figure("the tie that is there, cut", cut)
        .figure("the thickest neck that it goes round", girth_reached(cut, t.bow, t.extra));
}

} // namespace turncloth

#endif
