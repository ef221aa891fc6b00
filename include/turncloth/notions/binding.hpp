// Strips that bind an edge: how wide to cut them, how long, and from how much cloth.
//
//   single_fold(finished, {.seam, .turn})  double_fold(...)        the width to cut, a figure
//   finished_width_of_single(cut, {.seam, .turn})  ..._double      what a strip that is cut already makes
//   binding_length(piece, {.fold, .overlap})   continuous, mitred at the corners, ends joined: a figure
//   strips_across(needed, {.width, .usable, .join})   pieces from selvedge to selvedge: count, joins, cloth, left over
//   binding_error                                what cannot be bound, and why
//
//   constexpr auto width = double_fold("3/8"_in, {.seam = "3/8"_in, .turn = "1/8"_in});
//   static_assert(width.value() == "2 1/2"_in);   // 4 x 3/8 in finished + 2 x 3/8 in seam + 2 x 1/8 in turn of cloth
//
// What a join takes is in joining.hpp; bias strips have a header of their own, bias.hpp.
#ifndef TURNCLOTH_NOTIONS_BINDING_HPP
#define TURNCLOTH_NOTIONS_BINDING_HPP

#include <turncloth/measure/working.hpp>
#include <turncloth/notions/joining.hpp>
#include <turncloth/panel/size.hpp>

#include <cstdint>
#include <string>

namespace turncloth {

/// A binding that cannot be made.
class binding_error : public notion_error {
public:
    using notion_error::notion_error;
};

/// What a binding needs beside the width that shows.
template <length_unit Unit>
struct binding_allowance {
    length<Unit> seam;      ///< at each of its edges
    length<Unit> turn = {}; ///< taken up round the edge that is bound (see turn_of_cloth)

    friend constexpr bool operator==(const binding_allowance&, const binding_allowance&) = default;
};

namespace detail {

template <length_unit Unit>
constexpr void require_allowance(const binding_allowance<Unit>& a) {
    require_more_than_zero<binding_error>(a.seam, "the seam of a binding");
    require_not_negative<binding_error>(a.turn, "the turn of cloth of a binding");
}

template <length_unit Unit>
constexpr length<Unit> shown_of(length<Unit> cut, length<Unit> taken, std::int64_t faces) {
    if (cut <= taken)
        refuse<binding_error>(
            {"a strip cut ", cut, " wide is taken up by its seams and turn, ", taken},
            {.kind = fault::too_small, .what = "the cut width of a strip", .given = cut, .least = taken});
    return (cut - taken) / faces;
}

} // namespace detail

/// One layer: sewn `seam` from its edge on one face, brought over the bound edge, and its other edge turned under by
/// `seam` on the other face. Each face shows `finished`; the edge between takes up `turn`. With the seam as wide as the
/// binding, 4 x finished. (2 x finished and 3/8 in on each edge: The New Dressmaker, 1921, p. 131.)
template <length_unit Unit>
constexpr figure<Unit> single_fold(length<Unit> finished, const binding_allowance<Unit>& a) {
    require_more_than_zero<binding_error>(finished, "the finished width of a binding");
    detail::require_allowance(a);
    figure<Unit> f;
    f.plus_times(2, {finished}, "finished").plus_times(2, {a.seam}, "seam");
    if (a.turn.value() > 0)
        f.plus(a.turn, "turn of cloth");
    return f;
}

/// Two layers: the strip folded along its middle, both cut edges sewn together, the fold brought over to the other
/// face. Each layer is 2 x finished and a seam. With the seam as wide as the binding, 6 x finished.
template <length_unit Unit>
constexpr figure<Unit> double_fold(length<Unit> finished, const binding_allowance<Unit>& a) {
    require_more_than_zero<binding_error>(finished, "the finished width of a binding");
    detail::require_allowance(a);
    figure<Unit> f;
    f.plus_times(4, {finished}, "finished").plus_times(2, {a.seam}, "seam");
    if (a.turn.value() > 0)
        f.plus_times(2, {a.turn}, "turn of cloth");
    return f;
}

/// The finished width of a strip that is cut already.
template <length_unit Unit>
constexpr length<Unit> finished_width_of_single(length<Unit> cut, const binding_allowance<Unit>& a) {
    detail::require_allowance(a);
    return detail::shown_of(cut, a.seam * 2 + a.turn, 2);
}
template <length_unit Unit>
constexpr length<Unit> finished_width_of_double(length<Unit> cut, const binding_allowance<Unit>& a) {
    detail::require_allowance(a);
    return detail::shown_of(cut, (a.seam + a.turn) * 2, 4);
}

/// What a binding takes beside the edge's own length.
template <length_unit Unit>
struct binding_extra {
    length<Unit> fold = {};    ///< in the thickness of each corner's fold
    length<Unit> overlap = {}; ///< of the two ends, to be joined or tucked one into the other
};

/// A continuous strip round an edge. Folded to a mitre at a corner it uses exactly the edge's own length, along its cut
/// edge: the strip turns on the corner itself (reflect it in the diagonal, then in the edge, and the corner stays where
/// it is).
template <length_unit Unit>
constexpr figure<Unit> binding_length(length<Unit> perimeter, std::int64_t corners, const binding_extra<Unit>& extra) {
    require_more_than_zero<binding_error>(perimeter, "the edge to bind");
    require_not_negative<binding_error>(corners, "the number of corners");
    require_not_negative<binding_error>(extra.fold, "the fold at a corner");
    require_not_negative<binding_error>(extra.overlap, "the overlap of a binding's ends");
    figure<Unit> f;
    f.plus(perimeter, "edge");
    if (corners > 0 && extra.fold.value() > 0)
        f.plus_times(corners, {extra.fold}, corners == 1 ? label("corner fold") : label("corner folds"));
    if (extra.overlap.value() > 0)
        f.plus(extra.overlap, "overlap of the ends");
    return f;
}

template <length_unit Unit>
constexpr figure<Unit> binding_length(const finished_size<Unit>& piece, const binding_extra<Unit>& extra) {
    return binding_length((piece.width() + piece.height()) * 2, 4, extra);
}

/// Strips to cut straight across the cloth.
template <length_unit Unit>
struct strip_across {
    length<Unit> width;     ///< of each strip
    length<Unit> usable;    ///< of the cloth: as long as each strip is
    length<Unit> join = {}; ///< what one join takes (join_loss)
};

/// Strips cut straight across the cloth and joined to one.
template <length_unit Unit>
struct strips {
    std::int64_t count;
    std::int64_t joins;     ///< one less
    length<Unit> cloth;     ///< to cut off: count x width
    figure<Unit> joined;    ///< the length that they make
    length<Unit> left_over; ///< of that
};

/// n pieces of the usable width, less n - 1 joins, are at least what is needed; a binding that closes to a ring has its
/// last join in what is needed, as the overlap of its ends. Throws binding_error for a width of nothing, joining_error
/// as cloth_widths.
template <length_unit Unit>
constexpr strips<Unit> strips_across(length<Unit> needed, const strip_across<Unit>& strip) {
    require_more_than_zero<binding_error>(strip.width, "the width of a strip");
    const auto all = cloth_widths(needed, width_and_join<Unit>{strip.usable, strip.join}, joined::flat);
    return {all.count, all.joins, strip.width * all.count, all.made_up, all.left_over};
}

} // namespace turncloth

#endif
