// Squares pieced of two triangles, or of four: what squares to cut for them, since a slanting seam takes more than a straight.
//
//   cut_for_triangles(finished, {.of, .seam}, step)    squares to cut, a figure; taken_by_slants(seams, step) beside the seams
//   finished_of_triangles(cut, seams, step)            backwards, down to the step
//   trimmed_triangles(finished, seam)                  what the pieced square is trimmed to, a figure
//   squares_to_cut(count)                              of each of the two cloths
//   triangles<U>{finished, seams, step}                such squares alike: what a project lists
//
//   static_assert(cut_for_triangles<inch>(3_in, {.seam = "1/4"_in}, "1/8"_in).value() == "3 7/8"_in);
//
// By paper. Two squares of side c lie right sides together, are sewn at s from either side of a diagonal, and cut apart along it:
// two pieced squares. From its corner to the diagonal each triangle is c / root 2 high, and s of that goes into the seam. So the
// pieced square is 2 (c / root 2 - s) from corner to corner, which is c - root 2 s on a side; and that is to be what it finishes
// at and a seam at either edge. Of four triangles, two such squares are laid together, seams across each other, and the same is
// done again: root 2 s once more.
#ifndef TURNCLOTH_NOTIONS_TRIANGLES_HPP
#define TURNCLOTH_NOTIONS_TRIANGLES_HPP

#include <turncloth/measure/estimate.hpp>
#include <turncloth/notions/patchwork.hpp>

#include <cstdint>

namespace turncloth {

/// How many triangles a square is pieced of.
enum class pieced_of : unsigned char { two, four };

template <length_unit Unit>
struct triangle_seams {
    pieced_of of = pieced_of::two;
    length<Unit> seam; ///< all of them: along the slants, and round the square
};

namespace detail {

template <length_unit Unit>
constexpr fraction slants_squared(const triangle_seams<Unit>& s) {
    require_more_than_zero<patchwork_error>(s.seam, "the seam of a patch");
    const fraction one = s.seam.value() * s.seam.value() * 2;
    return s.of == pieced_of::two ? one : one * 4;
}

} // namespace detail

/// Beyond what straight seams take: root 2 times a seam for two triangles, twice that for four, up to the step. Throws
/// patchwork_error, and what roots throw for a step of nothing.
template <length_unit Unit>
constexpr length<Unit> taken_by_slants(const triangle_seams<Unit>& s, length<Unit> step) {
    return length_of<Unit>(square_root(detail::slants_squared(s), step.value(), rounding::up));
}

template <length_unit Unit>
constexpr figure<Unit> cut_for_triangles(length<Unit> finished, const triangle_seams<Unit>& s, length<Unit> step) {
    require_more_than_zero<patchwork_error>(finished, "the finished size of a square");
    figure<Unit> f;
    f.plus(finished, "finished").plus_times(2, {s.seam}, "seam");
    return f.plus(taken_by_slants(s, step), "slanting seam");
}

template <length_unit Unit>
constexpr length<Unit> finished_of_triangles(length<Unit> cut, const triangle_seams<Unit>& s, length<Unit> step) {
    const length<Unit> taken = s.seam * 2 + taken_by_slants(s, step);
    if (cut <= taken)
        detail::refuse<patchwork_error>(
            {"a square cut ", cut, " is used up by the seams of its triangles, which take ", taken},
            {.kind = fault::too_small, .what = "the cut size of a square", .given = cut, .least = taken});
    return cut - taken;
}

/// Cut as large as a patch that is not pieced, its corners on the slanting seams.
template <length_unit Unit>
constexpr figure<Unit> trimmed_triangles(length<Unit> finished, length<Unit> seam) {
    return patch_cut_width(sewn_patch<Unit>{finished, finished, seam});
}

/// A square of each cloth gives two pieced squares, whether of two triangles or of four.
constexpr std::int64_t squares_to_cut(std::int64_t count) {
    detail::require_patches(count);
    return count / 2 + count % 2;
}

template <length_unit Unit>
struct triangles {
    length<Unit> finished;
    triangle_seams<Unit> seams;
    length<Unit> step; ///< that what the slants take is rounded up to
};

} // namespace turncloth

#endif
