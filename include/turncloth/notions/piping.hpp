// Piped edges: the strip that is folded round a cord and sewn into a seam, how long both are, and where a corner is clipped.
//
//   piping_width(piped, step)           the strip for a cord, up to where the scissors can cut: a figure
//   flat_piping(shown, seam)            the strip of a piping without a cord, a figure
//   seam_of_piping(cut, piped, step)    backwards: the seam that such a strip leaves, down to a step
//   cord_of_piping(cut, piped, step)    the thickest cord that it goes round with that seam
//   piping_length(piece, ends)          all round an edge and past its own beginning, a figure
//   edge_of_piping(cut, ends)           backwards: the edge that it goes round
//   cord_for_edge(piece, piped, step)   the cord for it, its ends butted, a figure
//   corners_on_piping(piece, first)     where along the strip its four corners come
//   clip_of_piping(seam, clear)         how deep its seam is clipped there
//   piping_error                        what cannot be piped, and why
//
//   constexpr piped_cord<inch> cord{.across = "5/32"_in, .seam = "1/2"_in};
//   static_assert(piping_width(cord, "1/8"_in).value() == "1 1/2"_in); // pi x 5/32 + 2 x 1/2 = 1.49
//
// By paper. Wrap a strip once round a pencil and pinch its two ends together: it touches the pencil all round, and two seams are
// left over. So a strip is the girth and two seams. The middle of the cloth lies half its thickness outside the cord: the girth
// is pi times the cord and that thickness. It is rounded up, as a strip that is too narrow lacks that in its seams, unseen.
//
// Sewn on, the cord lies on the piece and its seam on the seam of the edge, cut edges level. Turned out, the cord lies outside
// the edge: its middle half its own thickness, and one of the cloth, beyond the row, and once round any outward shape a line
// that far outside is longer by that much of a full turn. At a corner the strip's seam must spread by a quarter turn: it is
// clipped there, to just short of the row. Straight strips do for straight edges; round a curve they are cut on the bias
// (bias.hpp). How many strips make up the length, and what their joins take, is in binding.hpp and joining.hpp.
#ifndef TURNCLOTH_NOTIONS_PIPING_HPP
#define TURNCLOTH_NOTIONS_PIPING_HPP

#include <turncloth/measure/irrational.hpp>
#include <turncloth/measure/working.hpp>
#include <turncloth/notions/error.hpp>
#include <turncloth/panel/size.hpp>

#include <array>
#include <type_traits>

namespace turncloth {

/// A piping that cannot be made.
class piping_error : public notion_error {
public:
    using notion_error::notion_error;
};

template <length_unit Unit>
struct piped_cord {
    length<Unit> across;     ///< the cord, from side to side as taut as it will lie
    length<Unit> seam;       ///< at either edge of the strip: that of the edge which is piped
    length<Unit> cloth = {}; ///< the thickness of the strip

    friend constexpr bool operator==(const piped_cord&, const piped_cord&) = default;
};

/// Of a strip that goes all round: it begins anywhere, goes on past its beginning, and its end is turned in over that.
template <length_unit Unit>
struct piping_ends {
    length<Unit> lap;
    length<Unit> turned = {};
};

/// A piece that is piped all round.
template <length_unit Unit>
struct piped_edge {
    finished_size<Unit> piece;
    piped_cord<Unit> cord;
    piping_ends<Unit> ends;
    length<Unit> first; ///< from where the strip begins to its first corner, along an edge as wide as the piece
    length<Unit> step;  ///< that strip and cord are rounded up to
};

namespace detail {

template <length_unit Unit>
constexpr void require_cord(const piped_cord<Unit>& p) {
    require_more_than_zero<piping_error>(p.across, "the thickness of a cord");
    require_not_negative<piping_error>(p.cloth, "the thickness of a piping's cloth");
}

template <length_unit Unit>
constexpr void require_ends(const piping_ends<Unit>& ends) {
    require_more_than_zero<piping_error>(ends.lap, "the lap of a piping's ends");
    require_not_negative<piping_error>(ends.turned, "what is turned in at a piping's end");
}

template <length_unit Unit>
constexpr length<Unit> round_of(const finished_size<Unit>& piece) {
    return (piece.width() + piece.height()) * 2;
}

} // namespace detail

/// Rounded once, as a whole: what goes round the cord is what its seams leave.
template <length_unit Unit>
constexpr figure<Unit> piping_width(const piped_cord<Unit>& p, std::type_identity_t<length<Unit>> step) {
    detail::require_cord(p);
    require_more_than_zero<piping_error>(p.seam, "the seam of a piping");
    const length<Unit> round = p.across + p.cloth, seams = p.seam * 2;
    const length<Unit> cut = detail::by_pi(round, [&](fraction pi) { return up_to(round * pi + seams, step); });
    return figure<Unit>().plus(cut - seams, "round the cord").plus_times(2, {p.seam}, "seam");
}

/// Folded in half it shows as a flat edge, as wide as that.
template <length_unit Unit>
constexpr figure<Unit> flat_piping(length<Unit> shown, std::type_identity_t<length<Unit>> seam) {
    require_more_than_zero<piping_error>(shown, "what shows of a flat piping");
    require_more_than_zero<piping_error>(seam, "the seam of a piping");
    return figure<Unit>().plus_times(2, {shown}, "shown").plus_times(2, {seam}, "seam");
}

/// Whatever seam the cord is said to have. Throws piping_error for a strip that the cord uses up.
template <length_unit Unit>
constexpr length<Unit> seam_of_piping(length<Unit> cut, const piped_cord<Unit>& p,
                                      std::type_identity_t<length<Unit>> step) {
    detail::require_cord(p);
    const length<Unit> round = p.across + p.cloth;
    const length<Unit> seam = detail::by_pi(round, [&](fraction pi) { return down_to((cut - round * pi) / 2, step); });
    if (seam.value() <= 0)
        detail::refuse<piping_error>(
            {"a strip cut ", cut, " wide goes round a cord ", p.across, " across and leaves no seam of ", step},
            {.kind = fault::too_small,
             .what = "the cut width of a piping",
             .given = cut,
             .least = piping_width(piped_cord<Unit>{p.across, step, p.cloth}, step).value()});
    return seam;
}

/// Whatever cord it is said to be. Throws piping_error for a strip that its seams use up, or with no cord on that step.
template <length_unit Unit>
constexpr length<Unit> cord_of_piping(length<Unit> cut, const piped_cord<Unit>& p,
                                      std::type_identity_t<length<Unit>> step) {
    require_more_than_zero<piping_error>(p.seam, "the seam of a piping");
    require_not_negative<piping_error>(p.cloth, "the thickness of a piping's cloth");
    const length<Unit> round = cut - p.seam * 2;
    const length<Unit> cord = detail::by_pi(round, [&](fraction pi) { return down_to(round / pi - p.cloth, step); });
    if (cord.value() <= 0)
        detail::refuse<piping_error>(
            {"a strip cut ", cut, " wide goes round no cord of ", step, ": its seams take ", p.seam * 2},
            {.kind = fault::too_small,
             .what = "the cut width of a piping",
             .given = cut,
             .least = piping_width(piped_cord<Unit>{step, p.seam, p.cloth}, step).value()});
    return cord;
}

template <length_unit Unit>
constexpr figure<Unit> piping_length(const finished_size<Unit>& piece, const piping_ends<Unit>& ends) {
    detail::require_ends(ends);
    figure<Unit> f;
    f.plus_times(2, {piece.width(), piece.height()}, "edges").plus(ends.lap, "lap of its ends");
    return f.plus_any(1, ends.turned, "turned in");
}

/// Throws piping_error for a strip that its ends use up.
template <length_unit Unit>
constexpr length<Unit> edge_of_piping(length<Unit> cut, const piping_ends<Unit>& ends) {
    detail::require_ends(ends);
    const length<Unit> taken = ends.lap + ends.turned;
    if (cut <= taken)
        detail::refuse<piping_error>(
            {"a piping of ", cut, " goes round nothing: its ends take ", taken},
            {.kind = fault::too_small, .what = "the length of a piping", .given = cut, .least = taken});
    return cut - taken;
}

/// Rounded up, so that its ends meet.
template <length_unit Unit>
constexpr figure<Unit> cord_for_edge(const finished_size<Unit>& piece, const piped_cord<Unit>& p,
                                     std::type_identity_t<length<Unit>> step) {
    detail::require_cord(p);
    const length<Unit> turn = p.across + p.cloth * 2, edge = detail::round_of(piece);
    const length<Unit> cord = detail::by_pi(turn, [&](fraction pi) { return up_to(edge + turn * pi, step); });
    figure<Unit> f;
    f.plus_times(2, {piece.width(), piece.height()}, "edges");
    return f.plus(cord - edge, "round the corners");
}

/// From its cut end, which is laid `first` before a corner, at the end of an edge as wide as the piece; from the last of them
/// it goes on as far as it began, and past that. Throws piping_error where it begins on no such edge.
template <length_unit Unit>
constexpr std::array<length<Unit>, 4> corners_on_piping(const finished_size<Unit>& piece,
                                                        std::type_identity_t<length<Unit>> first) {
    if (first.value() <= 0 || first >= piece.width())
        detail::refuse<piping_error>(
            {"a piping begins between two corners, from 0 to ", piece.width(), " before the first: it was ", first},
            {.kind = first.value() <= 0 ? fault::too_small : fault::too_large,
             .what = "where a piping begins",
             .given = first,
             .least = length<Unit>(),
             .most = piece.width()});
    const length<Unit> second = first + piece.height(), third = second + piece.width();
    return {first, second, third, third + piece.height()};
}

/// Throws piping_error for a clip that reaches its row, or is none.
template <length_unit Unit>
constexpr length<Unit> clip_of_piping(length<Unit> seam, std::type_identity_t<length<Unit>> clear) {
    require_more_than_zero<piping_error>(clear, "what a clip keeps clear of its row");
    if (clear >= seam)
        detail::refuse<piping_error>(
            {"a seam of ", seam, " cannot be clipped to ", clear, " short of its row"},
            {.kind = fault::too_large, .what = "what a clip keeps clear of its row", .given = clear, .most = seam});
    return seam - clear;
}

} // namespace turncloth

#endif
