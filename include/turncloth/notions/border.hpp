// Sashing between blocks of patchwork, and borders round it: butted, with corner squares, or mitred.
//
//   sashed(blocks, {.block, .sash, .around})          what blocks with strips between them finish at, a figure
//   block_of_sashed(finished, blocks, sashes)         the block that fills a size exactly, backwards
//   sash_pieces(across, down, around)                 how many short strips, and how many long ones or corner posts
//   border<U>{width, seam, corners}
//   bordered(centre, b)                               what it finishes at with its border; centre_of(outer, b) backwards
//   border_strips(centre, b)                          strips to cut: two at the sides, two across, squares
//
//   static_assert(bordered<inch>({20_in, 14_in}, {.width = 3_in, .seam = "1/4"_in}) == finished_size(26_in, 20_in));
//
// By paper. Butted: the sides are sewn first and are as high as the centre, the others go across it and both. With corner squares
// all four are as long as the centre, and those at the top and the foot get a square at either end before they are sewn on.
// Mitred: all four are as long as the outside. A mitre's seam runs from the corner of the centre to that of the border, and on
// into the outer allowance, which it crosses at 45 degrees: it reaches the raw edge one allowance further along, at the very
// corner of a strip with square ends. So such a strip is the outside and a seam at either end, and is cut to the slant when sewn.
#ifndef TURNCLOTH_NOTIONS_BORDER_HPP
#define TURNCLOTH_NOTIONS_BORDER_HPP

#include <turncloth/notions/patchwork.hpp>

#include <algorithm>
#include <cstdint>

namespace turncloth {

/// A block, and the strips beside it, as they show.
template <length_unit Unit>
struct sashing {
    length<Unit> block, sash;
    bool around = false; ///< strips beside the first block and the last, too
};

namespace detail {

constexpr std::int64_t sashes_beside(std::int64_t blocks, bool around) {
    require_patches(blocks);
    return around ? blocks + 1 : blocks - 1;
}

} // namespace detail

template <length_unit Unit>
constexpr figure<Unit> sashed(std::int64_t blocks, const sashing<Unit>& s) {
    const std::int64_t sashes = detail::sashes_beside(blocks, s.around);
    require_more_than_zero<patchwork_error>(s.block, "the finished width of a block");
    require_more_than_zero<patchwork_error>(s.sash, "the finished width of a sash");
    figure<Unit> f;
    f.plus_times(blocks, {s.block}, "block");
    return sashes == 0 ? f : f.plus_times(sashes, {s.sash}, "sash");
}

/// Throws patchwork_error where the strips leave nothing for the blocks.
template <length_unit Unit>
constexpr length<Unit> block_of_sashed(length<Unit> finished, std::int64_t blocks, length<Unit> sash, bool around) {
    require_more_than_zero<patchwork_error>(sash, "the finished width of a sash");
    const length<Unit> strips = sash * detail::sashes_beside(blocks, around);
    if (strips >= finished)
        detail::refuse<patchwork_error>(
            {"strips between blocks take ", strips, " of ", finished, ", and leave nothing for the blocks"},
            {.kind = fault::too_small, .what = "the size of sashed blocks", .given = finished, .least = strips});
    return (finished - strips) / blocks;
}

/// Strips as long as a block: those between blocks of a row stand, those between rows lie. Where they would cross, a post.
struct sash_counts {
    std::int64_t standing, lying, posts;
    friend constexpr bool operator==(const sash_counts&, const sash_counts&) = default;
};
/// Without posts, each row of lying strips and posts is one strip, as long as the rows.
constexpr sash_counts sash_pieces(std::int64_t across, std::int64_t down, bool around) {
    const std::int64_t columns = detail::sashes_beside(across, around), rows = detail::sashes_beside(down, around);
    return {columns * down, rows * across, columns * rows};
}

enum class border_corners : unsigned char { butted, squares, mitred };

template <length_unit Unit>
struct border {
    length<Unit> width; ///< as it shows
    length<Unit> seam;
    border_corners corners = border_corners::butted;
};

namespace detail {

template <length_unit Unit>
constexpr void require_sound(const border<Unit>& b) {
    require_more_than_zero<patchwork_error>(b.width, "the finished width of a border");
    require_more_than_zero<patchwork_error>(b.seam, "the seam of a border");
}

} // namespace detail

template <length_unit Unit>
constexpr finished_size<Unit> bordered(const finished_size<Unit>& centre, const border<Unit>& b) {
    detail::require_sound(b);
    return {centre.width() + b.width * 2, centre.height() + b.width * 2};
}

/// Throws patchwork_error for a border that leaves no centre.
template <length_unit Unit>
constexpr finished_size<Unit> centre_of(const finished_size<Unit>& outer, const border<Unit>& b) {
    detail::require_sound(b);
    if (const length<Unit> narrower = std::min(outer.width(), outer.height()); b.width * 2 >= narrower)
        detail::refuse<patchwork_error>(
            {"a border ", b.width, " wide leaves nothing within ", outer},
            {.kind = fault::too_large, .what = "the width of a border", .given = b.width, .most = narrower / 2});
    return {outer.width() - b.width * 2, outer.height() - b.width * 2};
}

/// Two of each are cut; the length of each, its width, and the side of four squares, where there are any.
template <length_unit Unit>
struct border_cut {
    figure<Unit> side, across, width;
    std::int64_t squares; ///< each as high as the strips are wide
};

template <length_unit Unit>
constexpr border_cut<Unit> border_strips(const finished_size<Unit>& centre, const border<Unit>& b) {
    detail::require_sound(b);
    border_cut<Unit> cut{
        .side = {}, .across = {}, .width = {}, .squares = b.corners == border_corners::squares ? 4 : 0};
    cut.side.plus(centre.height(), "centre");
    cut.across.plus(centre.width(), "centre");
    if (b.corners == border_corners::mitred)
        cut.side.plus_times(2, {b.width}, "border");
    if (b.corners != border_corners::squares)
        cut.across.plus_times(2, {b.width}, "border");
    cut.side.plus_times(2, {b.seam}, "seam");
    cut.across.plus_times(2, {b.seam}, "seam");
    cut.width.plus(b.width, "finished").plus_times(2, {b.seam}, "seam");
    return cut;
}

} // namespace turncloth

#endif
