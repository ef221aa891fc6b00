// Widths of cloth, or strips, joined to make up a length: how many, and what the joins take.
//
//   cloth_widths(needed, {.width, .join}, joined::flat)   as many widths as make up a length, with their sum
//   join_loss(kind, {.width, .allowance}, step)           what one join takes, by the way it is sewn
//   joining_error                                         joins that take all there is
//
//   constexpr auto tent = cloth_widths(117_in, {.width = 30_in, .join = 1_in}, joined::flat);
//   static_assert(tent.count == 4 && tent.joins == 3); // 117 in = 4 x 30 in widths - 3 x 1 in joins
#ifndef TURNCLOTH_NOTIONS_JOINING_HPP
#define TURNCLOTH_NOTIONS_JOINING_HPP

#include <turncloth/measure/irrational.hpp>
#include <turncloth/measure/working.hpp>
#include <turncloth/notions/error.hpp>

#include <cstdint>
#include <string>

namespace turncloth {

/// Joins that cannot be made.
class joining_error : public notion_error {
public:
    using notion_error::notion_error;
};

/// How two strips are joined end to end.
enum class join {
    straight, ///< square ends, sewn straight across
    diagonal, ///< square ends laid at right angles and sewn from corner to corner, then trimmed
    slanting  ///< ends cut at 45 degrees, as bias strips are, sewn along the slant
};

/// The strips of a join.
template <length_unit Unit>
struct strip_ends {
    length<Unit> width;
    length<Unit> allowance; ///< of each, at the join
};

/// What one join takes from the length. Straight: both allowances. Diagonal: the strips lie
/// square on each other, so the width of the strip, whatever is trimmed. Slanting: each allowance, measured across the
/// slant, is sqrt(2) times as long along the strip: 2 sqrt(2) a, rounded up to `step`.
template <length_unit Unit>
constexpr length<Unit> join_loss(join kind, const strip_ends<Unit>& ends, length<Unit> step) {
    const length<Unit> width = ends.width, allowance = ends.allowance;
    require_more_than_zero<joining_error>(width, "the width of a strip");
    require_more_than_zero<joining_error>(allowance, "the allowance of a join");
    switch (kind) {
    case join::straight:
        return allowance * 2;
    case join::diagonal:
        if (allowance * 2 > width)
            detail::refuse<joining_error>(
                {"a diagonal join of strips ", width, " wide has no room for an allowance of ", allowance},
                {.kind = fault::no_room, .what = "the allowance of a join", .given = allowance, .most = width / 2});
        return width;
    case join::slanting:
        break;
    }
    const fraction a = allowance.value();
    return length_of<Unit>(square_root(a * a * 8, step.value(), rounding::up));
}

/// How widths lie when they are joined: n of them have n - 1 joins in a flat piece, and n in a ring.
enum class joined { flat, in_the_round };

/// What is joined: each piece, and what one join takes of it (two allowances of a seam; the lap of a lapped one).
template <length_unit Unit>
struct width_and_join {
    length<Unit> width, join;
};

/// Equal widths made up to a length.
template <length_unit Unit>
struct joined_widths {
    std::int64_t count, joins;
    figure<Unit> made_up;   ///< the widths less the joins: what is needed, or more
    length<Unit> left_over; ///< of that
};

/// The fewest widths that make up what is needed, at least one. Throws joining_error for lengths of nothing, and where
/// a join takes as much as a width gives.
template <length_unit Unit>
constexpr joined_widths<Unit> cloth_widths(length<Unit> needed, const width_and_join<Unit>& each, joined how) {
    require_more_than_zero<joining_error>(needed, "the length to make up");
    require_more_than_zero<joining_error>(each.width, "a width of cloth");
    require_not_negative<joining_error>(each.join, "what a join takes");
    if (each.join >= each.width)
        detail::refuse<joining_error>(
            {"each join takes ", each.join, ", which is all of a width of ", each.width},
            {.kind = fault::no_room, .what = "what a join takes", .given = each.join, .most = each.width});
    const length<Unit> gain = each.width - each.join;
    const std::int64_t not_joined = how == joined::flat ? 1 : 0; // the last of a flat piece keeps its whole width
    const std::int64_t by_gain = ceil(ratio_of(needed - each.join * not_joined, gain));
    const std::int64_t count = by_gain < 1 ? 1 : by_gain, joins = count - not_joined;
    figure<Unit> made_up;
    made_up.plus_times(count, {each.width}, count == 1 ? label("width") : label("widths"));
    if (joins > 0 && each.join.value() > 0)
        made_up.plus_times(-fraction(joins), {each.join}, joins == 1 ? label("join") : label("joins"));
    return {count, joins, made_up, made_up.value() - needed};
}

} // namespace turncloth

#endif
