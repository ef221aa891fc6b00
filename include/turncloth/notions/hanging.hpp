// Things that hang: eyelets in a heading, ribbons folded over a rail, pockets of fuller film, dividers.
//
//   eyelet<U>{hole, rim}                                 two diameters
//   eyelets(panel, n, e, {.margin, .clear})              a row in the panel's heading, clear of its hems: an eyelet_row
//   fewest_eyelets(along, {.rim, .margin, .most})        how many, at most `most` from centre to centre
//   folded_ribbons(n, hang, caught)                      ribbon for n loops that hang from a seam, a figure
//   pocket_row<U>(backing, film, n)                      n pockets of film that is longer than what it is sewn to
//     .mapping()  .fullness()  .bow(step, rounding)  .film_cut(allowance)  .dividers()
//   film_for_fullness(backing, n, fullness, step)  film_for_depth(backing, n, depth, step)   the film to take
//   strip_dividers<Datum>(span, n, width)                n equal pockets with strips of a width between them
//   hanging_error                                        what would not hang, and why
//
//   constexpr pocket_row<inch> seeds(40_in, 55_in, 8);
//   static_assert(seeds.mapping().surplus(0) == "1 7/8"_in && seeds.fullness() == fraction(11, 8));
//
// Caution: wear eye protection when setting eyelets (caution.hpp).
#ifndef TURNCLOTH_NOTIONS_HANGING_HPP
#define TURNCLOTH_NOTIONS_HANGING_HPP

#include <turncloth/marks/mapping.hpp>
#include <turncloth/marks/spacing.hpp>
#include <turncloth/measure/working.hpp>
#include <turncloth/notions/bow.hpp>
#include <turncloth/notions/error.hpp>
#include <turncloth/panel/panel.hpp>

#include <cstdint>
#include <string>

namespace turncloth {

/// A thing that would not hang.
class hanging_error : public notion_error {
public:
    using notion_error::notion_error;
};

/// A metal eyelet or a ring: the hole through it, and the rim round that.
template <length_unit Unit>
struct eyelet {
    length<Unit> hole, rim; ///< diameters

    friend constexpr bool operator==(const eyelet&, const eyelet&) = default;
};

/// Eyelets along a heading. Mark each centre from the edge, at its own place in along.centres(): a rounded step laid
/// off again and again drifts.
template <length_unit Unit>
struct eyelet_row {
    spacing<finished_edge, Unit> along; ///< from the left finished edge; its width is the rim
    place<finished_edge, Unit> down;    ///< of the centres, from the top finished edge
    eyelet<Unit> each;

    friend constexpr bool operator==(const eyelet_row&, const eyelet_row&) = default;
};

namespace detail {

/// How far below the finished edge the innermost row of stitching lies when the heading is turned.
template <length_unit Unit>
constexpr length<Unit> stitched_below(const finish<Unit>& heading) {
    length<Unit> innermost;
    for (const auto& row : heading.stitching())
        if (const length<Unit> below = row.from_datum() - heading.allowance(); below > innermost)
            innermost = below;
    if (innermost.value() == 0)
        refuse<hanging_error>(
            {"eyelets need a turned and stitched heading: a ", heading.name(), " has no cloth between two layers"},
            {.kind = fault::unsuitable, .what = "the finish of an edge with eyelets", .where = heading.name()});
    return innermost;
}

template <length_unit Unit>
constexpr void require_clear_of_side(const finish<Unit>& side, length<Unit> margin, length<Unit> clear,
                                     const char* which) {
    if (margin < side.reach() + clear)
        refuse<hanging_error>({"an eyelet ", margin, " from the ", which, " edge is not clear of the ", side.name(),
                               " there, which lies ", side.reach(), " deep and needs ", clear, " more"},
                              {.kind = fault::too_small,
                               .what = "the margin beside an eyelet",
                               .given = margin,
                               .least = side.reach() + clear,
                               .where = which});
}

} // namespace detail

/// Where the rims of eyelets may lie.
template <length_unit Unit>
struct rim_distances {
    length<Unit> margin; ///< from each side edge to the nearest rim
    length<Unit> clear;  ///< at least, from the fold, from the stitching and from the turned cloth of the side hems
};

/// n eyelets in the top edge's heading, midway between its fold and its stitching, clear of the hems, whose extra layers
/// an eyelet does not close on. Throws hanging_error where they cannot, marks_error where the row
/// has no room.
template <length_unit Unit>
constexpr eyelet_row<Unit> eyelets(const panel<Unit>& p, std::int64_t n, const eyelet<Unit>& e,
                                   const rim_distances<Unit>& keep) {
    require_more_than_zero<hanging_error>(e.hole, "the hole of an eyelet");
    require_not_negative<hanging_error>(keep.clear, "the distance that a rim keeps clear");
    if (e.rim <= e.hole)
        detail::refuse<hanging_error>(
            {"the rim of an eyelet must be wider than its hole, ", e.hole, ": it was ", e.rim},
            {.kind = fault::too_small, .what = "the rim of an eyelet", .given = e.rim, .least = e.hole});
    const length<Unit> room = detail::stitched_below(p.finish_of(edge::top));
    if (e.rim + keep.clear * 2 > room)
        detail::refuse<hanging_error>(
            {"a rim of ", e.rim, " kept ", keep.clear, " clear does not fit the heading, which is stitched ", room,
             " below its fold"},
            {.kind = fault::no_room, .what = "the rim of an eyelet", .given = e.rim, .most = room - keep.clear * 2});
    detail::require_clear_of_side(p.finish_of(edge::left), keep.margin, keep.clear, "left");
    detail::require_clear_of_side(p.finish_of(edge::right), keep.margin, keep.clear, "right");
    return {spaced_from_margins<finished_edge>(n, e.rim, p.finished().width(), keep.margin),
            at<finished_edge>(room / 2), e};
}

/// What eyelets along an edge keep to.
template <length_unit Unit>
struct eyelet_limits {
    length<Unit> rim;
    length<Unit> margin;     ///< clear cloth from each end to the nearest rim
    length<Unit> most;       ///< from centre to centre
    bool even_count = false; ///< so that both edges of a gathered curtain turn the same way
};

/// The fewest that are at most `most` apart from centre to centre, at least 2. (An even number for curtains is common
/// practice; value from memory.) Throws hanging_error where two have no room, or where so many would overlap.
template <length_unit Unit>
constexpr std::int64_t fewest_eyelets(length<Unit> along, const eyelet_limits<Unit>& keep) {
    require_more_than_zero<hanging_error>(keep.rim, "the rim of an eyelet");
    require_not_negative<hanging_error>(keep.margin, "the margin beside an eyelet");
    require_more_than_zero<hanging_error>(keep.most, "the distance between eyelets");
    const length<Unit> between = along - keep.margin * 2 - keep.rim; // the outer centres
    if (between.value() <= 0)
        detail::refuse<hanging_error>(
            {"two eyelets with rims of ", keep.rim, " and margins of ", keep.margin, " have no room in ", along},
            {.kind = fault::too_small,
             .what = "the length for a row of eyelets",
             .given = along,
             .least = keep.margin * 2 + keep.rim});
    const fraction gaps = ceil(ratio_of(between, keep.most));
    const fraction n = gaps + (keep.even_count && numerator(gaps) % 2 == 0 ? 2 : 1);
    if (between < keep.rim * (n - 1))
        detail::refuse<hanging_error>(
            {n, " eyelets, for no more than ", keep.most, " between centres, would overlap: their rims are ", keep.rim},
            {.kind = fault::no_room, .what = "the rim of an eyelet", .given = keep.rim, .most = between / (n - 1)});
    return numerator(n);
}

/// Ribbon for n loops, each folded in half, hanging by `hang` below the seam that catches both its ends by `caught`.
template <length_unit Unit>
constexpr figure<Unit> folded_ribbons(std::int64_t n, length<Unit> hang, length<Unit> caught) {
    require_at_least<hanging_error>(n, std::int64_t{1}, "the number of ribbons");
    require_more_than_zero<hanging_error>(hang, "the hang of a ribbon");
    require_not_negative<hanging_error>(caught, "what a seam catches of a ribbon");
    return figure<Unit>().plus_times(fraction(n) * 2, {hang, caught}, "of ribbon, there and back");
}

/// Pockets made by sewing a longer film to a shorter backing along lines that divide both alike.
template <length_unit Unit>
class pocket_row {
public:
    /// Lengths between the first and the last line of stitching. Throws marks_error as even_mapping.
    constexpr pocket_row(length<Unit> backing, length<Unit> film, std::int64_t pockets)
        : mapping_(film, backing, pockets), backing_(backing), film_(film) {}

    constexpr const even_mapping<Unit>& mapping() const { return mapping_; }
    constexpr fraction fullness() const { return ratio_of(film_, backing_); }
    /// The lines between pockets, on the backing.
    constexpr row<short_piece, Unit> dividers() const { return divided<short_piece>(backing_, mapping_.spans()); }

    /// How far the middle of each pocket stands off. Throws undecided_error.
    constexpr length<Unit> bow(length<Unit> step, rounding wanted) const {
        const std::int64_t n = mapping_.spans();
        return bow_height(film_ / n, backing_ / n, step, wanted);
    }

    /// The film to cut, with what each end takes.
    constexpr figure<Unit> film_cut(length<Unit> allowance) const {
        require_not_negative<hanging_error>(allowance, "the allowance at an end of the film");
        figure<Unit> f;
        f.plus_times(mapping_.spans(), {film_ / mapping_.spans()}, "pockets");
        if (allowance.value() > 0)
            f.plus_times(2, {allowance}, "turned at the ends");
        return f;
    }

private:
    even_mapping<Unit> mapping_;
    length<Unit> backing_, film_;
};

/// Film for n pockets of about this fullness: each span brought down to a graduation, so that it can be marked from a
/// ruler. Throws hanging_error where that leaves a span without fullness.
template <length_unit Unit>
constexpr length<Unit> film_for_fullness(length<Unit> backing, std::int64_t n, fraction fullness, length<Unit> step) {
    require_more_than_zero<hanging_error>(backing, "the backing of pockets");
    require_at_least<hanging_error>(n, std::int64_t{1}, "the number of pockets");
    const length<Unit> span = backing / n, full = down_to(span * fullness, step);
    if (full < span)
        detail::refuse<hanging_error>(
            {"a fullness of ", fullness, " on pockets of ", span, ", brought down to ", full,
             ", is less than the backing"},
            {.kind = fault::too_small, .what = "the film of a pocket", .given = full, .least = span});
    return full * n;
}

/// Film for n pockets that each stand off by `depth`: each span brought up to a graduation, so that it does.
template <length_unit Unit>
constexpr length<Unit> film_for_depth(length<Unit> backing, std::int64_t n, length<Unit> depth, length<Unit> step) {
    require_more_than_zero<hanging_error>(backing, "the backing of pockets");
    require_at_least<hanging_error>(n, std::int64_t{1}, "the number of pockets");
    return arc_for_bow(backing / n, depth, step, rounding::up) * n;
}

/// Strips between pockets.
template <class Datum, length_unit Unit>
struct dividing_strips {
    row<Datum, Unit> starts; ///< of the n - 1 strips
    length<Unit> clear;      ///< of each pocket, between strips
};

/// n equal pockets along a span, with strips of a width between them. Throws hanging_error where the strips fill it.
template <class Datum, length_unit Unit>
constexpr dividing_strips<Datum, Unit> strip_dividers(length<Unit> span, std::int64_t n, length<Unit> width) {
    require_at_least<hanging_error>(n, std::int64_t{1}, "the number of pockets");
    require_not_negative<hanging_error>(width, "the width of a divider");
    const length<Unit> strips = width * (n - 1);
    if (strips >= span)
        detail::refuse<hanging_error>(
            {n - 1, " dividers ", width, " wide leave no pocket in ", span},
            {.kind = fault::no_room, .what = "the dividers together", .given = strips, .most = span});
    const length<Unit> clear = (span - strips) / n;
    return {row<Datum, Unit>(at<Datum>(clear), clear + width, n - 1), clear};
}

} // namespace turncloth

#endif
