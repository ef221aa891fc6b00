// What a project says of a cloth that it is cut from, and of how a piece lies on it: what decides a lay.
//
//   project_cloth<U>     material, width, selvedge, one_way, folded, repeats of its pattern; washed when, and its change then;
//                        pieces on hand
//   piece_on_hand<U>     a remnant of it, used before any is bought (on_hand.hpp): its name, width and length
//   cloth_lie            as_asked, along_grain, one_way, either_way, on_fold, turned_alike: given to piece::lies
//   washed_when          unwashed, before_cutting, as_pieces
//
//   pad.add(project_cloth<inch>{.material = "drill", .width = 60_in, .one_way = true,
//                               .washed = washed_when::before_cutting, .change = {.along = shrinks_by(percent(5))}});
//   cover.lies(cloth_lie::either_way);
//
// Each cloth has a width of its own, as canvas, wadding and film have. What is said here holds for the lay, what is to be
// bought, the cut table and the steps; a width that is given where cloth is laid goes before it.
#ifndef TURNCLOTH_SHEET_PROJECT_CLOTH_HPP
#define TURNCLOTH_SHEET_PROJECT_CLOTH_HPP

#include <turncloth/cloth/shrinkage.hpp>
#include <turncloth/measure/length.hpp>

#include <array>
#include <string>
#include <string_view>
#include <vector>

namespace turncloth {

/// How a piece lies on its cloth. A rectangle is the same on both sides of its middle, so that any may be cut on the fold.
enum class cloth_lie : unsigned char {
    as_asked,    ///< as who lays it asks; its height along the grain where nothing is said
    along_grain, ///< its height along the grain
    one_way,     ///< its height along the grain, and its top the same way as that of all others that say so
    either_way,  ///< its height or its width along the grain
    on_fold,     ///< its height along the grain, half of its width against the fold of cloth that lies folded
    turned_alike ///< its height along the grain, or its width with that of all others of its cloth that say so
};

/// When a cloth is washed, before which it has another size.
enum class washed_when : unsigned char {
    unwashed,
    before_cutting, ///< so much more is bought
    as_pieces       ///< they are cut so much larger, then washed and trimmed: their grain lies along their height
};

/// A piece of a cloth that is there already, as it is measured once its sides are cut straight and square, and once it is washed
/// where the project washes it.
template <length_unit Unit>
struct piece_on_hand {
    std::string name;
    turncloth::length<Unit> width{}, length{}; ///< across the grain, and along it

    friend bool operator==(const piece_on_hand&, const piece_on_hand&) = default;
};

/// One cloth of a project. A width of nothing leaves it to who buys it. On cloth that lies `one_way` (a nap, or a print that
/// stands upright) no piece is turned; `folded` lies double, selvedge on selvedge.
template <length_unit Unit>
struct project_cloth {
    std::string material;
    length<Unit> width{};    ///< from edge to edge, as it is sold
    length<Unit> selvedge{}; ///< what of each is not used
    bool one_way = false;
    bool folded = false;
    washed_when washed = washed_when::unwashed;
    washing change{};    ///< in that wash
    length<Unit> join{}; ///< the allowance at each edge of widths that are joined (widths_joined.hpp); zero: as usual
    std::vector<piece_on_hand<Unit>> on_hand{};
    length<Unit> repeat_along{},
        repeat_across{}; ///< of its pattern, from one place to the next alike; nothing on plain cloth

    friend bool operator==(const project_cloth&, const project_cloth&) = default;
};

/// As files write them; the first is the one of a member that may be left out.
constexpr auto words_of(cloth_lie) {
    return std::array<std::string_view, 6>{"as asked",   "along the grain", "one way",
                                           "either way", "on the fold",     "turned alike"};
}
constexpr auto words_of(washed_when) {
    return std::array<std::string_view, 3>{"unwashed", "before cutting", "as pieces"};
}

} // namespace turncloth

#endif
