// Repairs with new cloth: a patch over a hole, one on its other face, and a band in place of a worn hem.
//
//   prepared_hole(cut_out, turned_back)      a rectangle cut out, its edges turned back: the hole that is left
//   patch_over(hole, {.reach, .turned})      the patch over it: its cut width and height, two figures
//   hole_under(patch, edges)                 the same backwards: the hole that a patch which is cut already mends
//   patch_rows(hole, edges, {.inset, .beyond})     the row inside its edge and the one round the hole: two figures
//   patch_begins(across, {.begins, .wide}, edges, clear)    where its left or its top edge lies
//   hem_band<U>{depth, seam, turned}         band_height(b)  band_of(cut, seam, turned)  cut_off(b, worn)
//   patch_error                              a patch or a band that does not mend, and why
//
//   constexpr patch_edges<inch> edges{.reach = 1_in, .turned = "3/8"_in};
//   static_assert(patch_over<inch>({3_in, 2_in}, edges).cut() == cut_size<inch>("5 3/4"_in, "4 3/4"_in));
//
// By paper. A window in one sheet, another laid over it: it reaches beyond the window by the same on every side, so twice that in
// width and in height, and what is turned under at its edges comes on top, twice again. A worn hem is cut off, and a strip
// that is sewn to the cut edge hangs down below it: it is folded in half at the old foot, and so shows its depth on either face; one
// edge has the seam, the other is turned in over it. The sheet ends a seam below the row, so a depth less a seam is cut off.
#ifndef TURNCLOTH_NOTIONS_PATCH_HPP
#define TURNCLOTH_NOTIONS_PATCH_HPP

#include <turncloth/measure/working.hpp>
#include <turncloth/notions/error.hpp>
#include <turncloth/panel/finish.hpp>
#include <turncloth/panel/size.hpp>

#include <array>

namespace turncloth {

/// A repair that does not mend.
class patch_error : public notion_error {
public:
    using notion_error::notion_error;
};

/// Damage is cut out along the thread, clipped into its corners, and its edges are turned back by so much.
template <length_unit Unit>
constexpr finished_size<Unit> prepared_hole(const finished_size<Unit>& cut_out, length<Unit> turned_back) {
    require_not_negative<patch_error>(turned_back, "what is turned back round a hole");
    return {cut_out.width() + turned_back * 2, cut_out.height() + turned_back * 2};
}

/// Of a patch, on every side.
template <length_unit Unit>
struct patch_edges {
    length<Unit> reach;       ///< beyond the hole, as it lies sewn
    length<Unit> turned = {}; ///< under; nothing where its cloth does not fray
};

namespace detail {

template <length_unit Unit>
constexpr void require_sound(const patch_edges<Unit>& e) {
    require_more_than_zero<patch_error>(e.reach, "the reach of a patch");
    require_not_negative<patch_error>(e.turned, "what is turned under at the edges of a patch");
    if (e.turned > e.reach)
        refuse<patch_error>({"what is turned under at the edges of a patch, ", e.turned,
                             ", shows in its hole where it reaches ", e.reach, " beyond"},
                            {.kind = fault::too_large,
                             .what = "what is turned under at the edges of a patch",
                             .given = e.turned,
                             .most = e.reach});
}

template <length_unit Unit>
constexpr figure<Unit> patch_span(length<Unit> hole, const patch_edges<Unit>& e) {
    figure<Unit> f;
    f.plus(hole, "hole").plus_times(2, {e.reach}, "reach");
    return f.plus_any(2, e.turned, "turned under");
}

template <length_unit Unit>
constexpr length<Unit> span_under(length<Unit> cut, const patch_edges<Unit>& e, const char* what) {
    const length<Unit> taken = (e.reach + e.turned) * 2;
    if (cut <= taken)
        refuse<patch_error>({what, " of ", cut, " covers no hole: its edges take ", taken},
                            {.kind = fault::too_small, .what = what, .given = cut, .least = taken});
    return cut - taken;
}

/// Round a rectangle, `outside` of it on every side.
template <length_unit Unit>
constexpr figure<Unit> round_of(const finished_size<Unit>& hole, length<Unit> outside) {
    figure<Unit> f;
    f.plus_times(2, {hole.width()}, "width of the hole").plus_times(2, {hole.height()}, "its height");
    return f.plus_any(8, outside, "outside of it");
}

} // namespace detail

/// What is cut of a patch.
template <length_unit Unit>
struct patch_sizes {
    figure<Unit> width, height;

    constexpr cut_size<Unit> cut() const { return {width.value(), height.value()}; }
};

/// Throws patch_error for an edge that is turned under by more than it reaches.
template <length_unit Unit>
constexpr patch_sizes<Unit> patch_over(const finished_size<Unit>& hole, const patch_edges<Unit>& edges) {
    detail::require_sound(edges);
    return {detail::patch_span(hole.width(), edges), detail::patch_span(hole.height(), edges)};
}

/// Throws patch_error for a patch that its own edges use up.
template <length_unit Unit>
constexpr finished_size<Unit> hole_under(const cut_size<Unit>& patch, const patch_edges<Unit>& edges) {
    detail::require_sound(edges);
    return {detail::span_under(patch.width(), edges, "the width of a patch"),
            detail::span_under(patch.height(), edges, "the height of a patch")};
}

/// Two rows hold a patch: one follows its edge, one the hole.
template <length_unit Unit>
struct patch_held {
    length<Unit> inset;  ///< of the outer, from the folded edge of the patch
    length<Unit> beyond; ///< of the inner, outside the edge of the hole
};

/// The outer row, then the inner. Throws patch_error where the reach has no room for both, one outside the other.
template <length_unit Unit>
constexpr std::array<figure<Unit>, 2> patch_rows(const finished_size<Unit>& hole, const patch_edges<Unit>& edges,
                                                 const patch_held<Unit>& rows) {
    detail::require_sound(edges);
    require_more_than_zero<patch_error>(rows.inset, "the inset of a row along the edge of a patch");
    require_more_than_zero<patch_error>(rows.beyond, "the distance of a row from the hole");
    if (rows.inset + rows.beyond >= edges.reach)
        detail::refuse<patch_error>({"a patch that reaches ", edges.reach,
                                     " beyond its hole has no room for two rows, ", rows.inset, " inside its edge and ",
                                     rows.beyond, " outside the hole"},
                                    {.kind = fault::no_room,
                                     .what = "the reach of a patch",
                                     .given = edges.reach,
                                     .least = rows.inset + rows.beyond});
    return {detail::round_of(hole, edges.reach - rows.inset), detail::round_of(hole, rows.beyond)};
}

/// Along one way of what is mended, from its finished edge.
template <length_unit Unit>
struct hole_along {
    length<Unit> begins, wide;
};

/// Where the near edge of a patch lies, `across` being what is mended that way. Throws patch_error for one that comes nearer than
/// `clear` to either edge: there it is sewn into a hem, or must go round it.
template <length_unit Unit>
constexpr place<finished_edge, Unit> patch_begins(length<Unit> across, const hole_along<Unit>& hole,
                                                  const patch_edges<Unit>& edges, length<Unit> clear) {
    detail::require_sound(edges);
    require_more_than_zero<patch_error>(hole.wide, "the width of a hole");
    require_not_negative<patch_error>(clear, "what stays clear of a patch");
    const length<Unit> near = hole.begins, far = across - hole.begins - hole.wide, nearer = far < near ? far : near;
    if (nearer < edges.reach + clear)
        detail::refuse<patch_error>({"a hole ", nearer, " from the edge leaves no room for a patch that reaches ",
                                     edges.reach, " beyond it and stays ", clear, " clear of that edge"},
                                    {.kind = fault::no_room,
                                     .what = "the distance of a hole from the edge",
                                     .given = nearer,
                                     .least = edges.reach + clear});
    return at<finished_edge>(hole.begins - edges.reach);
}

/// A doubled strip in place of a hem that is worn.
template <length_unit Unit>
struct hem_band {
    length<Unit> depth;  ///< shown on either face
    length<Unit> seam;   ///< of its first row, on it and on what it is sewn to
    length<Unit> turned; ///< in at its other edge
};

namespace detail {

template <length_unit Unit>
constexpr void require_sound(const hem_band<Unit>& b) {
    require_more_than_zero<patch_error>(b.depth, "the depth of a band");
    require_more_than_zero<patch_error>(b.seam, "the seam of a band");
    require_more_than_zero<patch_error>(b.turned, "what is turned in at the edge of a band");
    const length<Unit> wider = b.seam < b.turned ? b.turned : b.seam;
    if (wider > b.depth)
        refuse<patch_error>(
            {"a band ", b.depth, " deep does not hold its edges, which take ", wider, " inside it"},
            {.kind = fault::too_small, .what = "the depth of a band", .given = b.depth, .least = wider});
}

} // namespace detail

template <length_unit Unit>
constexpr figure<Unit> band_height(const hem_band<Unit>& b) {
    detail::require_sound(b);
    return figure<Unit>().plus_times(2, {b.depth}, "depth").plus(b.seam, "seam").plus(b.turned, "turned in");
}

/// The band that a strip of that cut height makes. Throws patch_error for one that its edges use up, or do not lie inside.
template <length_unit Unit>
constexpr hem_band<Unit> band_of(length<Unit> cut, length<Unit> seam, length<Unit> turned) {
    if (cut <= seam + turned)
        detail::refuse<patch_error>(
            {"a strip of ", cut, " makes no band: its edges take ", seam + turned},
            {.kind = fault::too_small, .what = "the cut height of a band", .given = cut, .least = seam + turned});
    const hem_band<Unit> b{(cut - seam - turned) / 2, seam, turned};
    detail::require_sound(b);
    return b;
}

/// From the finished foot upward, with the old hem let down or cut off along its stitching first: what remains and the band make
/// up the old height again. Throws patch_error where worn cloth would be left.
template <length_unit Unit>
constexpr figure<Unit> cut_off(const hem_band<Unit>& b, length<Unit> worn) {
    detail::require_sound(b);
    require_not_negative<patch_error>(worn, "how far up a hem is worn");
    if (worn > b.depth - b.seam)
        detail::refuse<patch_error>(
            {"a band ", b.depth, " deep leaves worn cloth: ", b.depth - b.seam, " is cut off, and the hem is worn for ",
             worn},
            {.kind = fault::too_small, .what = "the depth of a band", .given = b.depth, .least = worn + b.seam});
    return figure<Unit>().plus(b.depth, "depth").plus_times(-1, {b.seam}, "seam");
}

} // namespace turncloth

#endif
