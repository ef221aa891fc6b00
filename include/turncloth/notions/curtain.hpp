// Curtains that hang from hooks: the heading, widths of cloth joined, drops on a repeat, pleats with flat gaps, tape and hooks.
//
//   heading_of(hung)                          one curtain's finished heading: its share of the track, return, overlap: a figure
//   track_of(heading, hung)                   the same backwards
//   matched_width(usable, across)             of a width of cloth, what is used so that a pattern goes on over a join
//   curtain_widths(heading, fullness, cloth)  so many widths as make it as full as that, hemmed at the sides: a joined_widths
//   hem_for_fall(fall, rules)                 how deep the foot is turned, by how far it hangs
//   drop_cut(fall, {.heading, .hem, .hem_turns})     what is cut of each width, a figure;  fall_of(cut, ends)  backwards
//   widths_of(curtain_drops<U>)               the widths of a cloth that are joined, on a pattern too: a joined_widths
//   drops_on_repeat(cut, count, repeat)       each drop up to a whole repeat: drop, repeats, off, cloth
//   pleat_groups<U>(heading, cloth, flats, count)    pleats that take up what is more, flat gaps between
//     .gap()  .taken()  .begins()  .ends()  .on_heading()  .working()
//   pleat_groups_near(heading, cloth, flats, gap)    so many as come nearest to that gap
//   hooks_on(groups)                          one at each pleat, and one at each end
//   curtain_error                             a curtain that does not hang, match or fold, and why
//
//   constexpr pleat_groups<inch> g(48_in, 90_in, {.ret = 3_in, .overlap = 1_in}, 12);
//   static_assert(g.gap() == 4_in && g.taken() == "3 1/2"_in); // 3 + 11 x 4 + 1 on the heading, 12 x 3 1/2 more of cloth
//
// By paper. A strip is pleated into a shorter one: a pleat at the corner where it returns to the wall, one before the overlap,
// and the same gap between each two. So with n pleats there are n - 1 gaps; on the heading return, gaps and overlap are all there
// is, and on the strip the pleats lie between. What the strip is longer by is n pleats.
#ifndef TURNCLOTH_NOTIONS_CURTAIN_HPP
#define TURNCLOTH_NOTIONS_CURTAIN_HPP

#include <turncloth/marks/row.hpp>
#include <turncloth/notions/joining.hpp>
#include <turncloth/panel/finish.hpp>

#include <cstdint>
#include <span>

namespace turncloth {

/// A curtain that cannot be made.
class curtain_error : public notion_error {
public:
    using notion_error::notion_error;
};

/// A track or a rail, and the curtains that hang from it side by side.
template <length_unit Unit>
struct hung_curtains {
    length<Unit> track;
    std::int64_t count = 1;
    length<Unit> ret = {};     ///< round each outer end, to the wall
    length<Unit> overlap = {}; ///< of two that meet, of each
};

namespace detail {

template <length_unit Unit>
constexpr void require_sound(const hung_curtains<Unit>& h) {
    require_between<curtain_error>(std::int64_t{1}, h.count, std::int64_t{2}, "the number of curtains on a track");
    require_not_negative<curtain_error>(h.ret, "the return of a curtain");
    require_not_negative<curtain_error>(h.overlap, "the overlap of a curtain");
}

} // namespace detail

/// A single curtain has two returns and nothing to overlap; each of a pair has one of either.
template <length_unit Unit>
constexpr figure<Unit> heading_of(const hung_curtains<Unit>& h) {
    detail::require_sound(h);
    require_more_than_zero<curtain_error>(h.track, "the length of a track");
    figure<Unit> f;
    if (h.count == 1)
        return f.plus(h.track, "track").plus_any(2, h.ret, "return");
    f.plus_times(fraction(1, 2), {h.track}, "track");
    return f.plus_any(1, h.ret, "return").plus_any(1, h.overlap, "overlap");
}
/// Throws curtain_error for a heading that its returns and its overlap use up.
template <length_unit Unit>
constexpr length<Unit> track_of(length<Unit> heading, const hung_curtains<Unit>& h) {
    detail::require_sound(h);
    const length<Unit> taken = h.count == 1 ? h.ret * 2 : h.ret + h.overlap;
    if (heading <= taken)
        detail::refuse<curtain_error>(
            {"a heading of ", heading, " is used up by its return and its overlap, ", taken},
            {.kind = fault::too_small, .what = "the heading of a curtain", .given = heading, .least = taken});
    return (heading - taken) * h.count;
}

/// Whole repeats of a pattern, from one join to the next. Throws curtain_error for cloth narrower than one: no join matches.
template <length_unit Unit>
constexpr length<Unit> matched_width(length<Unit> usable, length<Unit> across) {
    require_more_than_zero<curtain_error>(across, "the repeat of a pattern across the cloth");
    if (usable < across)
        detail::refuse<curtain_error>({"a pattern that repeats every ", across,
                                       " across does not go on over a join: the cloth is ", usable, " wide"},
                                      {.kind = fault::too_large,
                                       .what = "the repeat of a pattern across the cloth",
                                       .given = across,
                                       .most = usable});
    return across * floor(ratio_of(usable, across));
}

/// Of each width.
template <length_unit Unit>
struct curtain_cloth {
    length<Unit> usable;
    length<Unit> join = {}; ///< the allowance at each edge that is joined
    length<Unit> side = {}; ///< what a side hem takes
};

/// Throws curtain_error for a fullness of less than once, joining_error as cloth_widths.
template <length_unit Unit>
constexpr joined_widths<Unit> curtain_widths(length<Unit> heading, fraction fullness,
                                             const curtain_cloth<Unit>& cloth) {
    require_more_than_zero<curtain_error>(heading, "the heading of a curtain");
    require_at_least<curtain_error>(fullness, fraction(1), "the fullness of a curtain");
    require_not_negative<curtain_error>(cloth.join, "the allowance of a join");
    require_not_negative<curtain_error>(cloth.side, "what a side hem takes");
    return cloth_widths<Unit>(heading * fullness + cloth.side * 2, {cloth.usable, cloth.join * 2}, joined::flat);
}

/// A fall of at most so much has a hem of that depth.
template <length_unit Unit>
struct fall_hem {
    length<Unit> fall_at_most, depth;
};

/// The depth of the first rule that holds: they are in order, short falls first. Throws curtain_error where none does.
template <length_unit Unit>
constexpr length<Unit> hem_for_fall(length<Unit> fall, std::span<const fall_hem<Unit>> rules) {
    require_more_than_zero<curtain_error>(fall, "the fall of a curtain");
    require_at_least<curtain_error>(rules.size(), std::size_t{1}, "the number of rules for a hem");
    for (const fall_hem<Unit>& rule : rules)
        if (fall <= rule.fall_at_most)
            return rule.depth;
    detail::refuse<curtain_error>(
        {"no hem is given for a fall of ", fall, ": the last is for ", rules.back().fall_at_most},
        {.kind = fault::too_large, .what = "the fall of a curtain", .given = fall, .most = rules.back().fall_at_most});
}

/// What is turned at the top and at the foot of each drop.
template <length_unit Unit>
struct drop_ends {
    length<Unit> heading;       ///< over at the top
    length<Unit> hem;           ///< the depth of the foot's hem
    std::int64_t hem_turns = 1; ///< two where it is doubled
};

namespace detail {

template <length_unit Unit>
constexpr length<Unit> taken_by(const drop_ends<Unit>& e) {
    require_not_negative<curtain_error>(e.heading, "what is turned over at the top of a curtain");
    require_not_negative<curtain_error>(e.hem, "the hem of a curtain");
    require_between<curtain_error>(std::int64_t{1}, e.hem_turns, std::int64_t{2}, "the turns of a hem");
    return e.heading + e.hem * e.hem_turns;
}

} // namespace detail

template <length_unit Unit>
constexpr figure<Unit> drop_cut(length<Unit> fall, const drop_ends<Unit>& e) {
    require_more_than_zero<curtain_error>(fall, "the fall of a curtain");
    static_cast<void>(detail::taken_by(e));
    figure<Unit> f;
    f.plus(fall, "fall").plus_any(1, e.heading, "heading");
    return f.plus_any(e.hem_turns, e.hem, "hem");
}
/// Throws curtain_error for a drop that its ends use up.
template <length_unit Unit>
constexpr length<Unit> fall_of(length<Unit> cut, const drop_ends<Unit>& e) {
    const length<Unit> taken = detail::taken_by(e);
    if (cut <= taken)
        detail::refuse<curtain_error>(
            {"a drop cut ", cut, " is used up by its heading and its hem, which take ", taken},
            {.kind = fault::too_small, .what = "the cut length of a drop", .given = cut, .least = taken});
    return cut - taken;
}

/// Drops cut one below the other, each at the same place of the pattern.
template <length_unit Unit>
struct matched_drops {
    std::int64_t count;
    fraction repeats;  ///< in each
    length<Unit> drop; ///< from one cut to the next
    length<Unit> off;  ///< of each, cut off beyond what is needed
    length<Unit> cloth;
};

/// A repeat of nothing is plain cloth: its drops are as long as they must be.
template <length_unit Unit>
constexpr matched_drops<Unit> drops_on_repeat(length<Unit> cut, std::int64_t count, length<Unit> repeat) {
    require_more_than_zero<curtain_error>(cut, "the cut length of a drop");
    require_at_least<curtain_error>(count, std::int64_t{1}, "the number of drops");
    require_not_negative<curtain_error>(repeat, "the repeat of a pattern");
    if (repeat.value() == 0)
        return {count, 0, cut, {}, cut * fraction(count)};
    const fraction repeats = ceil(ratio_of(cut, repeat));
    const length<Unit> drop = repeat * repeats;
    return {count, repeats, drop, drop - cut, drop * fraction(count)};
}

/// Widths of one cloth, joined to a curtain before it is hemmed.
template <length_unit Unit>
struct curtain_drops {
    length<Unit> width, drop;              ///< to make up, side hems and all; of each, as long as it must be
    length<Unit> usable;                   ///< of the cloth
    length<Unit> join;                     ///< the allowance at each edge that is joined
    length<Unit> repeat = {}, across = {}; ///< of a pattern, down and across the cloth; nothing on plain cloth
};

/// Between two joins a pattern has whole repeats. Throws curtain_error as matched_width, joining_error as cloth_widths.
template <length_unit Unit>
constexpr joined_widths<Unit> widths_of(const curtain_drops<Unit>& d) {
    require_not_negative<curtain_error>(d.join, "the allowance of a join");
    require_not_negative<curtain_error>(d.across, "the repeat of a pattern across the cloth");
    const length<Unit> joins = d.join * 2;
    const length<Unit> each = d.across.value() == 0 ? d.usable : matched_width(d.usable - joins, d.across) + joins;
    return cloth_widths<Unit>(d.width, {each, joins}, joined::flat);
}

/// What of the heading stays flat beside the outer pleats.
template <length_unit Unit>
struct flat_ends {
    length<Unit> ret = {}, overlap = {};
};

/// Pleats alike on one heading, each taking up the same.
template <length_unit Unit>
class pleat_groups {
public:
    /// `cloth` lies flat, hemmed at its sides. Throws curtain_error for cloth that is not longer than its heading, fewer than two
    /// pleats, and ends that leave no gap.
    constexpr pleat_groups(length<Unit> heading, length<Unit> cloth, const flat_ends<Unit>& flat, std::int64_t count)
        : heading_(heading), cloth_(cloth), flat_(flat), count_(count) {
        require_not_negative<curtain_error>(flat.ret, "the return of a curtain");
        require_not_negative<curtain_error>(flat.overlap, "the overlap of a curtain");
        require_at_least<curtain_error>(count, std::int64_t{2}, "the number of pleats");
        if (heading <= flat.ret + flat.overlap)
            detail::refuse<curtain_error>({"a heading of ", heading, " has no room between its return of ", flat.ret,
                                           " and its overlap of ", flat.overlap},
                                          {.kind = fault::no_room,
                                           .what = "the heading of a curtain",
                                           .given = heading,
                                           .least = flat.ret + flat.overlap});
        if (cloth <= heading)
            detail::refuse<curtain_error>(
                {"cloth of ", cloth, " has nothing to pleat: its heading is ", heading},
                {.kind = fault::too_small, .what = "the cloth of a curtain", .given = cloth, .least = heading});
    }

    constexpr std::int64_t count() const { return count_; }
    constexpr length<Unit> heading() const { return heading_; }
    constexpr length<Unit> gap() const { return (heading_ - flat_.ret - flat_.overlap) / (fraction(count_) - 1); }
    /// Of cloth in each pleat; it stands out by half of that, and each of its folds by as much less as there are folds.
    constexpr length<Unit> taken() const { return (cloth_ - heading_) / fraction(count_); }
    constexpr fraction fullness() const { return ratio_of(cloth_, heading_); }

    /// Where each begins and ends on the flat cloth, from its finished edge at the return.
    constexpr row<finished_edge, Unit> begins() const {
        return {at<finished_edge>(flat_.ret), taken() + gap(), count_};
    }
    constexpr row<finished_edge, Unit> ends() const {
        return {at<finished_edge>(flat_.ret + taken()), taken() + gap(), count_};
    }
    /// Where each stands on the heading: its hooks.
    constexpr row<finished_edge, Unit> on_heading() const { return {at<finished_edge>(flat_.ret), gap(), count_}; }

    /// All of the cloth.
    constexpr figure<Unit> working() const {
        figure<Unit> f;
        f.plus_any(1, flat_.ret, "return");
        f.plus_times(count_, {taken()}, "pleat").plus_times(fraction(count_) - 1, {gap()}, "gap");
        return f.plus_any(1, flat_.overlap, "overlap");
    }

private:
    length<Unit> heading_, cloth_;
    flat_ends<Unit> flat_;
    std::int64_t count_;
};

/// Common practice: gaps of about 4 in or 10 cm.
template <length_unit Unit>
constexpr pleat_groups<Unit> pleat_groups_near(length<Unit> heading, length<Unit> cloth, const flat_ends<Unit>& flat,
                                               length<Unit> gap) {
    require_more_than_zero<curtain_error>(gap, "the gap between two pleats");
    const std::int64_t gaps =
        floor(nearest_to(ratio_of(heading - flat.ret - flat.overlap, gap), fraction(1), ties::up));
    return {heading, cloth, flat, gaps < 1 ? 2 : gaps + 1};
}

template <length_unit Unit>
constexpr std::int64_t hooks_on(const pleat_groups<Unit>& g) {
    return numerator(fraction(g.count()) + 2);
}

} // namespace turncloth

#endif
