// Patchwork: rows of equal patches, what to cut of them, and the strips across the cloth that they are cut from.
//
//   sewn_patch<U>{width, height, seam}                     as it shows, and the seam round it
//   patch_cut_width(p)   patch_cut_height(p)          figures; finished_of_patch(cut, seam) backwards
//   row_of_patches(count, p)   column_of_patches(...)    sewn together, from raw edge to raw edge: figures
//   patch_field(across, down, p)                      what rows of them finish at
//   patch_of_field(field, across, down, seam)         the patch that fills a size exactly, backwards
//   strips_for(count, p, usable)                      strips across the cloth, and what is cut from each; cloth_for_strips(s, p)
//   nests_toward(row)                                 which way its allowances are pressed, so that crossings lock
//   patchwork_error                                   what cannot be cut or sewn, and why
//
//   constexpr sewn_patch<inch> square{4_in, 4_in, "1/4"_in};
//   static_assert(row_of_patches(5, square).value() == "20 1/2"_in); // each cut 4 1/2 in
//
// By paper. Each seam takes its allowance from both patches that it joins, so every patch loses one at either side: n of them
// finish at n times what one does, and an allowance is left at either end. Strips that are sewn together along their length
// are cut across into rows in the same way: such a band is as high as a column, and a row is cut off as wide as a patch.
#ifndef TURNCLOTH_NOTIONS_PATCHWORK_HPP
#define TURNCLOTH_NOTIONS_PATCHWORK_HPP

#include <turncloth/measure/working.hpp>
#include <turncloth/notions/error.hpp>
#include <turncloth/panel/size.hpp>

#include <algorithm>
#include <cstdint>

namespace turncloth {

/// Patchwork that cannot be cut or sewn.
class patchwork_error : public notion_error {
public:
    using notion_error::notion_error;
};

/// As it shows, and the allowance of every seam round it.
template <length_unit Unit>
struct sewn_patch {
    length<Unit> width, height, seam;
    friend constexpr bool operator==(const sewn_patch&, const sewn_patch&) = default;
};

/// So many patches of one kind are counted, which is as many pieces as a lay has.
inline constexpr std::int64_t most_patches = 100'000;

namespace detail {

template <length_unit Unit>
constexpr void require_sound(const sewn_patch<Unit>& p) {
    require_more_than_zero<patchwork_error>(p.width, "the finished width of a patch");
    require_more_than_zero<patchwork_error>(p.height, "the finished height of a patch");
    require_more_than_zero<patchwork_error>(p.seam, "the seam of a patch");
}
constexpr void require_patches(std::int64_t count) {
    require_between<patchwork_error>(std::int64_t{1}, count, most_patches, "the number of patches");
}

template <length_unit Unit>
constexpr figure<Unit> sewn_in_a_row(std::int64_t count, length<Unit> finished, length<Unit> seam) {
    figure<Unit> f;
    f.plus_times(count, {finished}, "finished");
    return f.plus_times(2, {seam}, "seam");
}

} // namespace detail

template <length_unit Unit>
constexpr figure<Unit> patch_cut_width(const sewn_patch<Unit>& p) {
    detail::require_sound(p);
    return detail::sewn_in_a_row(1, p.width, p.seam);
}
template <length_unit Unit>
constexpr figure<Unit> patch_cut_height(const sewn_patch<Unit>& p) {
    detail::require_sound(p);
    return detail::sewn_in_a_row(1, p.height, p.seam);
}

/// What a patch that is cut already shows. Throws patchwork_error where its seams use it up.
template <length_unit Unit>
constexpr length<Unit> finished_of_patch(length<Unit> cut, length<Unit> seam) {
    require_more_than_zero<patchwork_error>(seam, "the seam of a patch");
    if (cut <= seam * 2)
        detail::refuse<patchwork_error>(
            {"a patch cut ", cut, " is used up by its seams, which take ", seam, " of either edge"},
            {.kind = fault::too_small, .what = "the cut size of a patch", .given = cut, .least = seam * 2});
    return cut - seam * 2;
}

template <length_unit Unit>
constexpr figure<Unit> row_of_patches(std::int64_t count, const sewn_patch<Unit>& p) {
    detail::require_sound(p);
    detail::require_patches(count);
    return detail::sewn_in_a_row(count, p.width, p.seam);
}
template <length_unit Unit>
constexpr figure<Unit> column_of_patches(std::int64_t count, const sewn_patch<Unit>& p) {
    detail::require_sound(p);
    detail::require_patches(count);
    return detail::sewn_in_a_row(count, p.height, p.seam);
}

template <length_unit Unit>
constexpr finished_size<Unit> patch_field(std::int64_t across, std::int64_t down, const sewn_patch<Unit>& p) {
    detail::require_sound(p);
    detail::require_patches(across);
    detail::require_patches(down);
    return {p.width * across, p.height * down};
}

/// Exact: it need not be on a ruler.
template <length_unit Unit>
constexpr sewn_patch<Unit> patch_of_field(const finished_size<Unit>& field, std::int64_t across, std::int64_t down,
                                          length<Unit> seam) {
    detail::require_patches(across);
    detail::require_patches(down);
    require_more_than_zero<patchwork_error>(seam, "the seam of a patch");
    return {field.width() / across, field.height() / down, seam};
}

/// Strips cut straight across the cloth, as high as a patch is cut, and cut into patches.
struct patch_strips {
    std::int64_t each;   ///< patches of a whole strip
    std::int64_t strips; ///< the last of them may give fewer
    std::int64_t spare;  ///< patches that the last strip would give beside those that are needed
    friend constexpr bool operator==(const patch_strips&, const patch_strips&) = default;
};

/// For rows that are cut off bands of strips, the count is that of rows, and each band takes its strips once. Throws
/// patchwork_error for cloth that is narrower than a patch.
template <length_unit Unit>
constexpr patch_strips strips_for(std::int64_t count, const sewn_patch<Unit>& p, length<Unit> usable) {
    detail::require_patches(count);
    const length<Unit> cut = patch_cut_width(p).value();
    if (usable < cut)
        detail::refuse<patchwork_error>(
            {"cloth with a usable width of ", usable, " is too narrow for a patch cut ", cut, " wide"},
            {.kind = fault::does_not_fit, .what = "the width of the cloth", .given = usable, .least = cut});
    // No more than are counted at all, so that the width of the cloth may be anything.
    const std::int64_t each = std::min(most_patches, floor(ratio_of(usable, cut)));
    const std::int64_t strips = (count + each - 1) / each;
    return {each, strips, strips * each - count};
}

/// Cloth to cut off for them, along the grain.
template <length_unit Unit>
constexpr length<Unit> cloth_for_strips(const patch_strips& s, const sewn_patch<Unit>& p) {
    return patch_cut_height(p).value() * s.strips;
}

/// Where four patches meet, the allowances of the seam above lie the other way from those below: each butts against the other, and
/// the crossing lies flat. So seams are pressed one way in a row, and the other way in the next.
enum class pressed_toward : unsigned char { left, right };

/// Rows are counted from 0 at the top.
constexpr pressed_toward nests_toward(std::int64_t row) {
    require_not_negative<patchwork_error>(row, "the number of a row");
    return row % 2 == 0 ? pressed_toward::right : pressed_toward::left;
}

} // namespace turncloth

#endif
