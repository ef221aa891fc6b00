// Zippers: how long an opening can be, and what tape to cut for it.
//
//   zipped_opening<U>{across, margin, beyond}     a zipper that lies across a piece, from seam to seam
//     opening(z)  tape(z)  clearance(z)           what the slider runs, what is cut, what parts the tape from the seam
//     opening_working(z)  tape_working(z)         the same as figures with their working
//   trimmed(z, lengths_sold, {.ends, .tail})      made up: which one to buy, where the new stop goes, what is cut off
//   from_roll(z, pieces, roll)                    from a roll: pieces and sliders, rolls, and what is left
//   zipper_lines(centre, rows, slit)              stitching above and below, and the slit behind
//   end_tab(z, allowance, width)                  the cloth that is wrapped round each tape end
//   zipper_error                                  what cannot be done, and why
//
//   constexpr zipped_opening<inch> z{11_in, "3/4"_in, "1/2"_in};
//   static_assert(opening(z) == "9 1/2"_in && tape(z) == "10 1/2"_in && clearance(z) == "1/4"_in);
//
// A zipper's length is that of its chain, stop to stop; its tape is longer. The tape must end short of the seams, or a
// needle meets metal there. Caution: a needle that strikes a slider or a metal stop breaks. Turn the handwheel by
// hand there.
#ifndef TURNCLOTH_NOTIONS_ZIPPER_HPP
#define TURNCLOTH_NOTIONS_ZIPPER_HPP

#include <turncloth/marks/row.hpp>
#include <turncloth/measure/working.hpp>
#include <turncloth/notions/error.hpp>
#include <turncloth/panel/size.hpp>

#include <cstdint>
#include <span>
#include <string>

namespace turncloth {

/// A zipper that cannot be had or sewn.
class zipper_error : public notion_error {
public:
    using notion_error::notion_error;
};

/// A zipper across a piece. The `margin` at each end, between the seam and the opening, is closed by a tab or by the
/// piece itself; the tape goes on into it by `beyond`, room for a bar-tack.
template <length_unit Unit>
struct zipped_opening {
    length<Unit> across; ///< from seam to seam, finished
    length<Unit> margin;
    length<Unit> beyond;

    friend constexpr bool operator==(const zipped_opening&, const zipped_opening&) = default;
};

namespace detail {

template <length_unit Unit>
constexpr void require_sound(const zipped_opening<Unit>& z) {
    require_not_negative<zipper_error>(z.margin, "the margin beside an opening");
    require_not_negative<zipper_error>(z.beyond, "the tape beyond an opening");
    if (z.across <= z.margin * 2)
        refuse<zipper_error>(
            {"margins of ", z.margin, " leave no opening in a width of ", z.across},
            {.kind = fault::no_room, .what = "the margin beside an opening", .given = z.margin, .most = z.across / 2});
}

template <length_unit Unit>
constexpr void require_clear(length<Unit> tape_beyond, length<Unit> margin, const char* which) {
    if (tape_beyond > margin)
        refuse<zipper_error>({"the ", which, " end of the tape reaches ", tape_beyond,
                              " beyond the opening, into the seam: the margin there is ", margin},
                             {.kind = fault::no_room,
                              .what = "the tape beyond an opening",
                              .given = tape_beyond,
                              .most = margin,
                              .where = which});
}

} // namespace detail

/// What the slider runs. Throws zipper_error where the margins leave nothing, or are negative.
template <length_unit Unit>
constexpr length<Unit> opening(const zipped_opening<Unit>& z) {
    detail::require_sound(z);
    return z.across - z.margin * 2;
}

template <length_unit Unit>
constexpr figure<Unit> opening_working(const zipped_opening<Unit>& z) {
    detail::require_sound(z);
    return figure<Unit>().plus(z.across, "across").plus_times(-2, {z.margin}, "margin");
}

/// The tape from end to end.
template <length_unit Unit>
constexpr length<Unit> tape(const zipped_opening<Unit>& z) {
    return opening(z) + z.beyond * 2;
}

template <length_unit Unit>
constexpr figure<Unit> tape_working(const zipped_opening<Unit>& z) {
    return figure<Unit>().plus(opening(z), "opening").plus_times(2, {z.beyond}, "beyond it");
}

/// How far each tape end keeps from the seam; below zero the tape is caught in it.
template <length_unit Unit>
constexpr length<Unit> clearance(const zipped_opening<Unit>& z) {
    detail::require_sound(z);
    return z.margin - z.beyond;
}

/// A made-up zipper brought to an opening.
template <length_unit Unit>
struct trimmed_zipper {
    length<Unit> sold;    ///< the length to ask for
    bool needs_a_stop;    ///< a new stop is sewn; otherwise it fits as sold
    length<Unit> stop_at; ///< from the top stop: the end of the opening
    length<Unit> cut_at;  ///< from the top stop: where the tape ends now
    length<Unit> cut_off; ///< what falls away, chain and tape
};

/// Tape of a made-up zipper beyond its stops.
template <length_unit Unit>
struct tape_ends {
    length<Unit> ends; ///< beyond both stops as sold
    length<Unit> tail; ///< left below a new stop (extension leaflets: at least 1/2 in; value from memory)
};

/// The shortest of the lengths sold that is long enough. Where it is trimmed, a stop is sewn at the opening's end. Throws zipper_error where none is long enough, or where a tape end would lie in a seam.
template <length_unit Unit>
constexpr trimmed_zipper<Unit> trimmed(const zipped_opening<Unit>& z, std::span<const length<Unit>> lengths_sold,
                                       const tape_ends<Unit>& beyond) {
    const length<Unit> wanted = opening(z);
    require_not_negative<zipper_error>(beyond.ends, "the tape beyond the stops of a zipper as sold");
    require_more_than_zero<zipper_error>(beyond.tail, "the tail below a new stop");
    if (lengths_sold.empty())
        detail::refuse<zipper_error>({"at least one length in which zippers are sold must be given: there was none"},
                                     {.kind = fault::missing, .what = "a length in which zippers are sold"});
    length<Unit> longest, best;
    for (const length<Unit>& sold : lengths_sold) {
        require_more_than_zero<zipper_error>(sold, "a length in which zippers are sold");
        if (sold > longest)
            longest = sold;
        if (sold >= wanted && (best.value() == 0 || sold < best))
            best = sold;
    }
    if (best.value() == 0)
        detail::refuse<zipper_error>(
            {"no zipper sold is long enough for an opening of ", wanted, ": the longest is ", longest},
            {.kind = fault::too_large, .what = "the opening of a zipper", .given = wanted, .most = longest});
    detail::require_clear(beyond.ends, z.margin, "top");
    const length<Unit> as_sold = best + beyond.ends;
    const bool cut = best > wanted && as_sold > wanted + beyond.tail;
    const length<Unit> cut_at = cut ? wanted + beyond.tail : as_sold;
    detail::require_clear(cut_at - wanted, z.margin, "bottom");
    return {best, best > wanted, wanted, cut_at, as_sold - cut_at};
}

/// Zippers cut from rolls of chain.
template <length_unit Unit>
struct zippers_from_roll {
    length<Unit> each;          ///< of tape, bar-tacked at both ends before it is cut
    std::int64_t sliders;       ///< one to a piece
    std::int64_t from_one_roll; ///< pieces that a whole roll gives
    std::int64_t rolls;
    length<Unit> left; ///< on the last roll
};

/// Throws zipper_error where a roll is shorter than one piece, where no piece is asked for, or where the tape would lie
/// in a seam.
template <length_unit Unit>
constexpr zippers_from_roll<Unit> from_roll(const zipped_opening<Unit>& z, std::int64_t pieces, length<Unit> roll) {
    const length<Unit> each = tape(z);
    detail::require_clear(z.beyond, z.margin, "cut");
    require_at_least<zipper_error>(pieces, std::int64_t{1}, "the number of zippers");
    if (roll < each)
        detail::refuse<zipper_error>(
            {"a roll of ", roll, " is too short for a piece of ", each},
            {.kind = fault::too_small, .what = "the length of a roll of zipper", .given = roll, .least = each});
    const std::int64_t from_one = floor(ratio_of(roll, each));
    const std::int64_t rolls = (pieces - 1) / from_one + 1;
    const std::int64_t on_the_last = pieces - (rolls - 1) * from_one;
    return {each, pieces, from_one, rolls, roll - each * fraction(on_the_last)};
}

/// The lines of a zipper sewn over a whole piece and opened from behind, all at right angles to the places' direction.
template <class Datum, length_unit Unit>
struct lines_of_zipper {
    place<Datum, Unit> above, below;       ///< rows of stitching
    place<Datum, Unit> slit_from, slit_to; ///< between these the cloth behind is cut away; equal for a plain slit
};

/// Rows of stitching `rows` apart, the slit `slit` wide, both centred. Throws zipper_error unless the slit is narrower,
/// or nothing.
template <class Datum, length_unit Unit>
constexpr lines_of_zipper<Datum, Unit> zipper_lines(place<Datum, Unit> centre, length<Unit> rows, length<Unit> slit) {
    require_not_negative<zipper_error>(slit, "the slit behind a zipper");
    if (slit >= rows)
        detail::refuse<zipper_error>(
            {"the slit behind a zipper must be narrower than its stitching, ", rows, ": it was ", slit},
            {.kind = fault::no_room, .what = "the slit behind a zipper", .given = slit, .most = rows});
    return {centre - rows / 2, centre + rows / 2, centre - slit / 2, centre + slit / 2};
}

/// The tab that is wrapped round one tape end: folded at the opening, its two cut edges in the seam `allowance` beyond
/// the margin. Throws zipper_error where there is no margin to cover or the allowance is negative, size_error for a
/// width that is not above zero.
template <length_unit Unit>
constexpr cut_size<Unit> end_tab(const zipped_opening<Unit>& z, length<Unit> allowance, length<Unit> width) {
    detail::require_sound(z);
    require_more_than_zero<zipper_error>(z.margin, "the margin that a tab covers");
    require_not_negative<zipper_error>(allowance, "the allowance of a tab");
    return {(z.margin + allowance) * 2, width};
}

} // namespace turncloth

#endif
