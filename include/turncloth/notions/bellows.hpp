// Pockets that stand out from what they are sewn to: a bellows, pleated at both sides, or a box pleat in the middle; and the flap
// that hangs over one.
//
//   pleated_pocket<U>{.width, .fold, .clear}   as it lies flat: finished width, how far each fold goes back, what stays beside
//   box_pleated(width, shows, fold)            the same, by how wide its pleat shows in the middle
//   pocket_cloth(p)                            its finished width unfolded, a figure; pleat_shows(p) how wide the pleat is
//   stands_out(p)   fold_standing_out(depth)   how far its mouth stands off when it is full; backwards
//   narrowest_pocket(depth, clear)             the least width for such a depth, a figure
//   pocket_creases(p)                          where its four creases are, from its finished left edge, unfolded
//   pocket_flap<U>{.beside, .above, .reach}    beyond the pocket at either side; from its fold to the mouth; down over the front
//   flap_width(p, flap)  flap_drop(p, flap, height)   of the finished flap, figures
//   beside_pocket(flap_width, p)  reach_of_flap(drop, above, p)   backwards
//   bellows_error                              what cannot be folded, or does not cover its pocket
//
//   constexpr pleated_pocket<inch> p{.width = 9_in, .fold = 1_in, .clear = "3/4"_in};
//   static_assert(pocket_cloth(p).value() == 13_in && stands_out(p) == 2_in);
//
// By paper. Lay a strip across a table. At either side leave `clear` of it flat, go on under what will be the front for `fold`, come
// back as far, and go on across the front: two folds, each of which goes back and forward once, so the strip is the width and four
// folds long. From the left side the first crease, which lies beneath, is at clear + fold, and the second, which shows, at clear +
// 2 fold; from the right side they are as far. Beneath the front the two folds reach toward each other: twice the fold is at most
// what the pleat shows, or they lie on each other and the pocket is lumpy.
// Lift the front: each pair of folds stands up as one side, 2 fold high. So far it stands out, the box beneath is as wide as the
// pocket, and the strip went round its three sides: width + 2 (2 fold). At its foot the folds are sewn flat, so it comes to nothing.
// The sides are sewn in what is left clear, beside the pleat and not through it. A bellows is a pleat that shows nearly all of the
// front; as narrow as a placket, it is the box pleat in the middle of a patch pocket.
// The flap lies over the mouth of the full pocket: from its fold down to the mouth, out across what stands out, and down over the front.
#ifndef TURNCLOTH_NOTIONS_BELLOWS_HPP
#define TURNCLOTH_NOTIONS_BELLOWS_HPP

#include <turncloth/measure/place.hpp>
#include <turncloth/measure/working.hpp>
#include <turncloth/notions/error.hpp>
#include <turncloth/panel/finish.hpp>

#include <optional>
#include <type_traits>

namespace turncloth {

/// A pocket or its flap that cannot be made.
class bellows_error : public notion_error {
public:
    using notion_error::notion_error;
};

template <length_unit Unit>
struct pleated_pocket {
    length<Unit> width; ///< finished, from side to side
    length<Unit> fold;  ///< how far each of its two folds goes back
    length<Unit> clear; ///< from either side to the pleat, of one thickness

    friend constexpr bool operator==(const pleated_pocket&, const pleated_pocket&) = default;
};

/// Over one pocket; it is folded down along the line that it is sewn on by.
template <length_unit Unit>
struct pocket_flap {
    length<Unit> beside; ///< wider than the pocket, at either side
    length<Unit> above;  ///< from its fold down to the mouth
    length<Unit> reach;  ///< down over the front of the full pocket

    friend constexpr bool operator==(const pocket_flap&, const pocket_flap&) = default;
};

namespace detail {

template <length_unit Unit>
constexpr void require_sound(const pleated_pocket<Unit>& p) {
    require_more_than_zero<bellows_error>(p.width, "the width of a pocket");
    require_more_than_zero<bellows_error>(p.fold, "the fold of a pocket's pleat");
    require_more_than_zero<bellows_error>(p.clear, "what is clear beside a pocket's pleat");
    if (const length<Unit> least = (p.fold + p.clear) * 2; p.width < least)
        refuse<bellows_error>({"a pocket ", p.width, " wide has no room for two folds of ", p.fold, ", ", p.clear,
                               " clear of its sides: they take ", least},
                              {.kind = fault::no_room,
                               .what = "the fold of a pocket's pleat",
                               .given = p.fold,
                               .most = p.width / 2 - p.clear});
}

template <length_unit Unit>
constexpr void require_sound(const pocket_flap<Unit>& f) {
    require_not_negative<bellows_error>(f.beside, "what a flap is wider than its pocket at a side");
    require_more_than_zero<bellows_error>(f.above, "what a flap lies above its pocket");
    require_more_than_zero<bellows_error>(f.reach, "the reach of a flap over its pocket");
}

} // namespace detail

/// Throws bellows_error for a pleat that shows as much as the pocket is wide, or more, and for one without room for its folds.
template <length_unit Unit>
constexpr pleated_pocket<Unit> box_pleated(length<Unit> width, std::type_identity_t<length<Unit>> shows,
                                           std::type_identity_t<length<Unit>> fold) {
    if (shows >= width)
        detail::refuse<bellows_error>(
            {"a pleat that shows ", shows, " leaves nothing of a pocket ", width, " wide to be sewn beside it"},
            {.kind = fault::too_large, .what = "what a pocket's pleat shows", .given = shows, .most = width});
    const pleated_pocket<Unit> made{width, fold, (width - shows) / 2};
    detail::require_sound(made);
    return made;
}

/// Seams are added to it. Throws bellows_error for folds that the width has no room for; so do the next.
template <length_unit Unit>
constexpr figure<Unit> pocket_cloth(const pleated_pocket<Unit>& p) {
    detail::require_sound(p);
    return figure<Unit>().plus(p.width, "finished").plus_times(4, {p.fold}, "folds");
}

template <length_unit Unit>
constexpr length<Unit> pleat_shows(const pleated_pocket<Unit>& p) {
    detail::require_sound(p);
    return p.width - p.clear * 2;
}

template <length_unit Unit>
constexpr length<Unit> stands_out(const pleated_pocket<Unit>& p) {
    detail::require_sound(p);
    return p.fold * 2;
}

template <length_unit Unit>
constexpr length<Unit> fold_standing_out(length<Unit> depth) {
    require_more_than_zero<bellows_error>(depth, "how far a pocket stands out");
    return depth / 2;
}

template <length_unit Unit>
constexpr figure<Unit> narrowest_pocket(length<Unit> depth, std::type_identity_t<length<Unit>> clear) {
    require_more_than_zero<bellows_error>(depth, "how far a pocket stands out");
    require_more_than_zero<bellows_error>(clear, "what is clear beside a pocket's pleat");
    return figure<Unit>().plus_times(2, {depth / 2}, "folds").plus_times(2, {clear}, "clear");
}

/// On the pocket unfolded: the left pair, then the right; of each pair the inner lies beneath and the outer shows.
template <length_unit Unit>
struct creases_of_pocket {
    place<finished_edge, Unit> left_inner, left_outer, right_outer, right_inner;

    friend constexpr bool operator==(const creases_of_pocket&, const creases_of_pocket&) = default;
};

template <length_unit Unit>
constexpr creases_of_pocket<Unit> pocket_creases(const pleated_pocket<Unit>& p) {
    const auto left = at<finished_edge>(length<Unit>());
    const auto outer = left + p.clear + p.fold * 2, other = outer + pleat_shows(p);
    return {outer - p.fold, outer, other, other + p.fold};
}

template <length_unit Unit>
constexpr figure<Unit> flap_width(const pleated_pocket<Unit>& p, const pocket_flap<Unit>& f) {
    detail::require_sound(p);
    detail::require_sound(f);
    return figure<Unit>().plus(p.width, "pocket").plus_any(2, f.beside, "beside it");
}

/// On the empty pocket it hangs down by what stands out besides. Throws bellows_error where it hangs below the pocket's foot then.
template <length_unit Unit>
constexpr figure<Unit> flap_drop(const pleated_pocket<Unit>& p, const pocket_flap<Unit>& f,
                                 std::type_identity_t<length<Unit>> height) {
    detail::require_sound(f);
    const length<Unit> over = stands_out(p) + f.reach;
    if (over > height)
        detail::refuse<bellows_error>({"a flap that hangs ", over,
                                       " over the front of an empty pocket hangs below its foot: it is ", height,
                                       " high"},
                                      {.kind = fault::too_large,
                                       .what = "the reach of a flap over its pocket",
                                       .given = f.reach,
                                       .most = height - stands_out(p)});
    return figure<Unit>()
        .plus(f.above, "above the mouth")
        .plus_times(2, {p.fold}, "standing out")
        .plus(f.reach, "over the front");
}

/// Throws bellows_error for a flap that is narrower than its pocket.
template <length_unit Unit>
constexpr length<Unit> beside_pocket(length<Unit> flap, const pleated_pocket<Unit>& p) {
    detail::require_sound(p);
    if (flap < p.width)
        detail::refuse<bellows_error>(
            {"a flap ", flap, " wide is narrower than its pocket, which is ", p.width},
            {.kind = fault::too_small, .what = "the width of a flap", .given = flap, .least = p.width});
    return (flap - p.width) / 2;
}

/// Throws bellows_error for a flap that does not come down over the front of the full pocket.
template <length_unit Unit>
constexpr length<Unit> reach_of_flap(length<Unit> drop, std::type_identity_t<length<Unit>> above,
                                     const pleated_pocket<Unit>& p) {
    require_more_than_zero<bellows_error>(above, "what a flap lies above its pocket");
    const length<Unit> least = above + stands_out(p);
    if (drop <= least)
        detail::refuse<bellows_error>(
            {"a flap that hangs down ", drop, " does not reach over a full pocket: its mouth lies ", above,
             " below and stands out ", stands_out(p)},
            {.kind = fault::too_small, .what = "the drop of a flap", .given = drop, .least = least});
    return drop - least;
}

/// A pocket that a sheet lists, with the flap over it, where it has one.
template <length_unit Unit>
struct pocket_with_flap {
    pleated_pocket<Unit> pocket;
    length<Unit> height;
    std::optional<pocket_flap<Unit>> flap = {};
};

} // namespace turncloth

#endif
