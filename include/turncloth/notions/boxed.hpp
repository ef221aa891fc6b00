// Boxed shapes: pads, cushions and flat-bottomed bags.
//
//   boxed_size<U>(width, height, depth)         what it measures when sewn
//   boxed_panel(box, seam)                      each of two equal panels that make it with boxed corners, cut size
//   corner_cut(depth, {.seam, .across})         the square cut out of each raw corner
//   corner_stitched(depth, seam)                or left uncut: the line stitched across it
//   box_from_cut(panel, corner, {.seam, .across})   the box that such panels give; box_from_stitched(panel, line, seam)
//   edging(box, allowance, pieces)              a pad's edging: its width, and its length in one piece or four
//   split_edging(box, allowance, zipper)        an edging with a zipper along its middle, in two halves and a rest
//   boxed_bag(bag, {.seam, .top})               each of two equal panels of a bag with a flat bottom, figures
//   covering(filling, {.around, .in_depth})     the cover for a filling; filling_for(cover, ...), wadding_layers(...)
//   boxed_error                                 a box that cannot be sewn
//
//   constexpr boxed_size pad(16_in, 9_in, 2_in);
//   static_assert(boxed_panel(pad, "1/2"_in) == cut_size(19_in, 12_in)); // from which corners of 1 in are cut
#ifndef TURNCLOTH_NOTIONS_BOXED_HPP
#define TURNCLOTH_NOTIONS_BOXED_HPP

#include <turncloth/measure/working.hpp>
#include <turncloth/notions/error.hpp>
#include <turncloth/panel/size.hpp>

#include <array>
#include <cstdint>
#include <string>

namespace turncloth {

/// A box that cannot be sewn.
class boxed_error : public notion_error {
public:
    using notion_error::notion_error;
};

/// What a box of cloth measures when it is sewn: its face, as it lies before you, and how deep it is. Throws
/// boxed_error unless all three are more than zero.
template <length_unit Unit>
class boxed_size {
public:
    constexpr boxed_size(length<Unit> width, length<Unit> height, length<Unit> depth)
        : width_(width), height_(height), depth_(depth) {
        require_more_than_zero<boxed_error>(width, "the width of a box");
        require_more_than_zero<boxed_error>(height, "the height of a box");
        require_more_than_zero<boxed_error>(depth, "the depth of a box");
    }
    friend constexpr bool operator==(const boxed_size& a, const boxed_size& b) {
        return a.width_ == b.width_ && a.height_ == b.height_ && a.depth_ == b.depth_;
    }

    constexpr length<Unit> width() const { return width_; }
    constexpr length<Unit> height() const { return height_; }
    constexpr length<Unit> depth() const { return depth_; }
    /// Round the face, where an edging goes.
    constexpr length<Unit> round() const { return (width_ + height_) * 2; }

private:
    length<Unit> width_, height_, depth_;
};

/// The same box in another unit, exactly.
template <length_unit To, length_unit From>
constexpr boxed_size<To> as(const boxed_size<From>& b) {
    return {as<To>(b.width()), as<To>(b.height()), as<To>(b.depth())};
}

/// "16 x 9 x 2 in", exact.
template <length_unit Unit>
std::string to_text(const boxed_size<Unit>& b) {
    return number_text(b.width()) + " x " + number_text(b.height()) + " x " + to_text(b.depth());
}

// Boxed corners. Two equal panels, right sides together, sewn all round at `seam` from the edge. At each corner the two
// seams are then brought one onto the other, which opens the corner into a point, and a line is stitched across the
// point, half the depth from its tip on each side: that line is the height of the box's edge.

namespace detail {

template <length_unit Unit>
constexpr figure<Unit> boxed_way(length<Unit> face, length<Unit> depth, length<Unit> seam) {
    require_more_than_zero<boxed_error>(seam, "the seam of a box");
    figure<Unit> f;
    f.plus(face, "face").plus_times(2, {depth / 2}, "sides").plus_times(2, {seam}, "seam");
    return f;
}

} // namespace detail

/// What to cut of each panel, each way: the face, half the depth on each side, and the seams.
template <length_unit Unit>
constexpr figure<Unit> boxed_width_working(const boxed_size<Unit>& box, length<Unit> seam) {
    return detail::boxed_way(box.width(), box.depth(), seam);
}
template <length_unit Unit>
constexpr figure<Unit> boxed_height_working(const boxed_size<Unit>& box, length<Unit> seam) {
    return detail::boxed_way(box.height(), box.depth(), seam);
}

template <length_unit Unit>
constexpr cut_size<Unit> boxed_panel(const boxed_size<Unit>& box, length<Unit> seam) {
    return {boxed_width_working(box, seam).value(), boxed_height_working(box, seam).value()};
}

/// Where a box with cut corners is sewn.
template <length_unit Unit>
struct corner_seams {
    length<Unit> seam;   ///< of the edges, from the raw edge
    length<Unit> across; ///< of each opened corner, from its cut edge
};

namespace detail {

template <length_unit Unit>
constexpr void require_seams(const corner_seams<Unit>& s) {
    require_more_than_zero<boxed_error>(s.seam, "the seam of a box");
    require_more_than_zero<boxed_error>(s.across, "the allowance across a corner");
}

} // namespace detail

/// The side of the square cut from each raw corner. The opened corner is folded from the raw corner inward, at 45 degrees to both seams, so a line
/// square to the seams, c + across from the raw edges, is c + across - seam long between seam and fold, on either
/// panel: the depth is 2 (c - seam + across), and c = depth / 2 + seam - across. With one allowance throughout, half
/// the depth. Throws boxed_error where nothing would be cut.
template <length_unit Unit>
constexpr length<Unit> corner_cut(length<Unit> depth, const corner_seams<Unit>& sewn) {
    require_more_than_zero<boxed_error>(depth, "the depth of a box");
    detail::require_seams(sewn);
    if (sewn.across >= depth / 2)
        detail::refuse<boxed_error>(
            {"a box ", depth, " deep leaves no corner to cut out with an allowance of ", sewn.across,
             " across it, which must be less than half the depth"},
            {.kind = fault::no_room, .what = "the allowance across a corner", .given = sewn.across, .most = depth / 2});
    return depth / 2 + sewn.seam - sewn.across;
}

/// A corner stitched across, uncut.
template <length_unit Unit>
struct stitched_corner {
    length<Unit> from_point; ///< from where the two seams meet, along the seam, to the line
    length<Unit> line;       ///< the line's length, from fold to fold: the depth
    /// On each flat panel the line is two sides of a square; its corner is this far from both raw edges.
    length<Unit> from_edges;
};

template <length_unit Unit>
constexpr stitched_corner<Unit> corner_stitched(length<Unit> depth, length<Unit> seam) {
    require_more_than_zero<boxed_error>(depth, "the depth of a box");
    require_more_than_zero<boxed_error>(seam, "the seam of a box");
    return {depth / 2, depth, depth / 2 + seam};
}

namespace detail {

template <length_unit Unit>
constexpr boxed_size<Unit> box_of_depth(const cut_size<Unit>& panel, length<Unit> depth, length<Unit> seam) {
    const length<Unit> taken = depth + seam * 2;
    if (depth.value() <= 0 || panel.width() <= taken || panel.height() <= taken)
        refuse<boxed_error>({"panels cut ", panel, " with corners that make a depth of ", depth, " and seams of ", seam,
                             " do not make a box"},
                            {.kind = depth.value() <= 0 ? fault::too_small : fault::no_room,
                             .what = "the depth that the corners make",
                             .given = depth});
    return {panel.width() - taken, panel.height() - taken, depth};
}

} // namespace detail

/// The box that two panels give, from their cut size and the square cut out of each corner.
template <length_unit Unit>
constexpr boxed_size<Unit> box_from_cut(const cut_size<Unit>& panel, length<Unit> corner,
                                        const corner_seams<Unit>& sewn) {
    detail::require_seams(sewn);
    return detail::box_of_depth(panel, (corner - sewn.seam + sewn.across) * 2, sewn.seam);
}

/// The box that two panels give, from their cut size and the length of the line stitched across each corner.
template <length_unit Unit>
constexpr boxed_size<Unit> box_from_stitched(const cut_size<Unit>& panel, length<Unit> line, length<Unit> seam) {
    require_more_than_zero<boxed_error>(seam, "the seam of a box");
    return detail::box_of_depth(panel, line, seam);
}

/// Each of the two equal panels of a bag with a flat bottom, open at the top: across, width and depth and two side
/// seams; down, what the top edge takes, the height, half the depth and the bottom seam.
template <length_unit Unit>
struct bag_panel {
    figure<Unit> width, height;
};

template <length_unit Unit>
struct bag_allowances {
    length<Unit> seam;     ///< of the sides and the bottom
    length<Unit> top = {}; ///< of the top edge: a hem, a casing
};

template <length_unit Unit>
constexpr bag_panel<Unit> boxed_bag(const boxed_size<Unit>& bag, const bag_allowances<Unit>& a) {
    require_not_negative<boxed_error>(a.top, "the allowance of a bag's top edge");
    bag_panel<Unit> p;
    p.width = detail::boxed_way(bag.width(), bag.depth(), a.seam);
    p.height.plus(bag.height(), "face").plus_times(fraction(1, 2), {bag.depth()}, "bottom").plus(a.seam, "seam");
    if (a.top.value() > 0)
        p.height.plus(a.top, "top edge");
    return p;
}

// A pad with an edging: two plates and a strip between them.

/// Top and bottom plates.
template <length_unit Unit>
constexpr cut_size<Unit> plate(const boxed_size<Unit>& box, length<Unit> allowance) {
    require_more_than_zero<boxed_error>(allowance, "the allowance of a box");
    return {box.width() + allowance * 2, box.height() + allowance * 2};
}

/// Strips round the sides of a pad, all cut to one width.
template <length_unit Unit>
struct box_edging {
    std::array<length<Unit>, 4> pieces; ///< to cut; in one strip, only the first
    std::int64_t count;
    length<Unit> width; ///< to cut
    length<Unit> total; ///< of the pieces
};

/// The edging in one strip, joined to a ring by one seam, or in four, a seam at each corner. Throws boxed_error for any
/// other number.
template <length_unit Unit>
constexpr box_edging<Unit> edging(const boxed_size<Unit>& box, length<Unit> allowance, std::int64_t pieces) {
    require_more_than_zero<boxed_error>(allowance, "the allowance of a box");
    const length<Unit> width = box.depth() + allowance * 2, round = box.round();
    if (pieces == 1)
        return {{round + allowance * 2}, 1, width, round + allowance * 2};
    if (pieces != 4)
        detail::refuse<boxed_error>(
            {"the edging of a box is cut in 1 strip or in 4: it was ", pieces},
            {.kind = fault::unsuitable, .what = "the number of strips of an edging", .given = pieces});
    const length<Unit> one = box.width() + allowance * 2, other = box.height() + allowance * 2;
    return {{one, other, one, other}, 4, width, (one + other) * 2};
}

/// A zipper in an edging.
template <length_unit Unit>
struct edging_zipper {
    length<Unit> along;     ///< of the finished edging, the part that the zipper's halves make: tape and its ends
    length<Unit> allowance; ///< turned under beside the chain on each half
    length<Unit> shows;     ///< of chain and tape between the two folds; zero for folds that meet
};

/// The edging in three: two halves with the zipper between, and the rest of the ring.
template <length_unit Unit>
struct edging_with_zipper {
    figure<Unit> half_width; ///< of each half, to cut
    length<Unit> half_length;
    length<Unit> rest_width;
    length<Unit> rest_length;
};

template <length_unit Unit>
constexpr edging_with_zipper<Unit> split_edging(const boxed_size<Unit>& box, length<Unit> allowance,
                                                const edging_zipper<Unit>& z) {
    require_more_than_zero<boxed_error>(allowance, "the allowance of a box");
    require_more_than_zero<boxed_error>(z.along, "the part of an edging with the zipper");
    require_more_than_zero<boxed_error>(z.allowance, "the allowance beside a zipper");
    require_not_negative<boxed_error>(z.shows, "what shows of a zipper");
    const length<Unit> round = box.round();
    if (z.shows >= box.depth() || z.along >= round)
        detail::refuse<boxed_error>("a zipper that shows " + to_text(z.shows) + " in a part " + to_text(z.along) +
                                        " long must be less than the edging, " + to_text(box.depth()) + " by " +
                                        to_text(round),
                                    z.along >= round ? refusal{.kind = fault::no_room,
                                                               .what = "the part of an edging with the zipper",
                                                               .given = amount_of(z.along),
                                                               .most = amount_of(round)}
                                                     : refusal{.kind = fault::no_room,
                                                               .what = "what shows of a zipper",
                                                               .given = amount_of(z.shows),
                                                               .most = amount_of(box.depth())});
    figure<Unit> half;
    half.plus_times(fraction(1, 2), {box.depth()}, "depth");
    if (z.shows.value() > 0)
        half.plus_times(fraction(-1, 2), {z.shows}, "zipper");
    half.plus(allowance, "seam").plus(z.allowance, "beside the zipper");
    return {half, z.along + allowance * 2, box.depth() + allowance * 2, round - z.along + allowance * 2};
}

/// An edging that is cut and sewn to a ring.
template <length_unit Unit>
struct edging_ring {
    length<Unit> width; ///< as cut
    length<Unit> round; ///< at the seam line
};

/// The box that plates and edging give: the plates set the face, the strip's width the depth. Throws boxed_error where
/// the ring does not go round the plates, or where nothing is left.
template <length_unit Unit>
constexpr boxed_size<Unit> box_from_plates(const cut_size<Unit>& plate, const edging_ring<Unit>& ring,
                                           length<Unit> allowance) {
    require_more_than_zero<boxed_error>(allowance, "the allowance of a box");
    const length<Unit> taken = allowance * 2;
    if (plate.width() <= taken || plate.height() <= taken || ring.width <= taken)
        detail::refuse<boxed_error>(
            {"seams of ", allowance, " take up all of a plate ", plate, " or of an edging ", ring.width, " wide"},
            {.kind = fault::no_room, .what = "the allowance of a box", .given = allowance});
    const boxed_size<Unit> box(plate.width() - taken, plate.height() - taken, ring.width - taken);
    if (box.round() != ring.round)
        detail::refuse<boxed_error>(
            {"an edging ", ring.round, " round does not fit plates that are ", box.round(), " round"},
            {.kind = fault::disagree,
             .what = "the edging's way round",
             .given = ring.round,
             .least = box.round(),
             .most = box.round()});
    return box;
}

// Covers and what fills them. Ease above zero leaves room; below zero it squeezes, for a firm pad.

template <length_unit Unit>
struct cover_ease {
    length<Unit> around = {}; ///< in width and in height
    length<Unit> in_depth = {};
};

/// The cover for a filling.
template <length_unit Unit>
constexpr boxed_size<Unit> covering(const boxed_size<Unit>& filling, const cover_ease<Unit>& ease) {
    return {filling.width() + ease.around, filling.height() + ease.around, filling.depth() + ease.in_depth};
}

/// The filling for a cover, the other way about.
template <length_unit Unit>
constexpr boxed_size<Unit> filling_for(const boxed_size<Unit>& cover, const cover_ease<Unit>& ease) {
    return covering(cover, cover_ease<Unit>{-ease.around, -ease.in_depth});
}

/// Layers of wadding for a depth: each `loft` thick and, sat on, `kept` of that (1 for all of it, as foam; 1/2 for
/// half). As many as reach the depth. Throws boxed_error for a loft of nothing or a part outside 0 < kept <= 1.
template <length_unit Unit>
constexpr std::int64_t wadding_layers(length<Unit> depth, length<Unit> loft, fraction kept) {
    require_more_than_zero<boxed_error>(depth, "the depth to fill");
    require_more_than_zero<boxed_error>(loft, "the loft of wadding");
    require_more_than_zero<boxed_error>(kept, "what wadding keeps of its loft");
    require_at_most<boxed_error>(kept, fraction(1), "what wadding keeps of its loft");
    return ceil(ratio_of(depth, loft * kept));
}

} // namespace turncloth

#endif
