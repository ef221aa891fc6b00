// Buttons, snaps and touch tape: how long a buttonhole is, where fasteners lie on a lap, and how much tape a strap takes.
//
//   buttonhole_length(button, step)      half of what goes round it, up to where the chalk can mark: a figure
//   button_through(hole, thick)          backwards: the widest flat button that such a hole lets through
//   stand_for(button, clear)             from the edge to the line of buttons, a figure;  lap_of(stand) of two such edges
//   buttoned_lap<U>                      buttons, their line, the hem under them, and the length of their holes
//     holes_of(lap)                      where each buttonhole begins and ends: along the edge, or square to it
//     interfacing_under(lap, beyond)     the strip that holds the holes: its width and its length, figures
//   snapped_lap<U>  require_snaps(lap)   snaps on a lap, clear of its edges and of each other
//   touch_strap<U>                       a strap that goes round and closes on itself with hook and loop tape
//     hook_tape(s)  loop_tape(s)  strap_round(s)  tightest_of(s)     what to cut of each, figures, and backwards
//   fastening_error                      what does not close, or would be cut through, and why
//
//   constexpr sewn_button<inch> brass{.across = "3/4"_in, .thick = "1/8"_in};
//   static_assert(buttonhole_length(brass, "1/16"_in).value() == "7/8"_in);
//
// By paper. Wrap a strip round a button, over both faces, and pinch its ends together: flattened it is half as long, and so long
// a slit opens just wide enough. Round a disc that is twice its width and twice its thickness; round a ball pi times its width.
//
// Fold the edges of two sheets under and lap them. A line drawn through both is as far from either fold: the lap is twice the
// stand. A button sewn on that line pulls to the end of a hole that is square to the edge, so such a hole begins a shank's half
// thickness beyond the line; slit the paper further out and the slit cuts its fold. A hole along the edge lies on the line.
//
// Close a paper strap round a tube, then round a thinner one: what lies on itself grows by the difference. All the hook tape is
// to lie on loop tape at either, so the loop tape is longer by the difference, and the strap as long as round the thicker
// one, and the hook tape more. Past once round the thinner one the loop tape would lie on itself.
#ifndef TURNCLOTH_NOTIONS_FASTENING_HPP
#define TURNCLOTH_NOTIONS_FASTENING_HPP

#include <turncloth/marks/row.hpp>
#include <turncloth/measure/irrational.hpp>
#include <turncloth/measure/working.hpp>
#include <turncloth/notions/error.hpp>
#include <turncloth/panel/finish.hpp>

#include <algorithm>
#include <cstdint>
#include <type_traits>
#include <vector>

namespace turncloth {

/// Fasteners that do not close, or that would cut through what holds them.
class fastening_error : public notion_error {
public:
    using notion_error::notion_error;
};

template <length_unit Unit>
struct sewn_button {
    length<Unit> across;     ///< its widest, from rim to rim
    length<Unit> thick = {}; ///< from face to face, the shank left out; nothing of a ball
    bool ball = false;
    length<Unit> ease = {}; ///< that the hole is longer by, for thick cloth

    friend constexpr bool operator==(const sewn_button&, const sewn_button&) = default;
};

namespace detail {

template <length_unit Unit>
constexpr void require_button(const sewn_button<Unit>& b) {
    require_more_than_zero<fastening_error>(b.across, "the width of a button");
    require_not_negative<fastening_error>(b.thick, "the thickness of a button");
    require_not_negative<fastening_error>(b.ease, "the ease of a buttonhole");
}

} // namespace detail

/// Rounded up, once, as a whole: a hole that is too short lets nothing through.
template <length_unit Unit>
constexpr figure<Unit> buttonhole_length(const sewn_button<Unit>& b, std::type_identity_t<length<Unit>> step) {
    detail::require_button(b);
    if (b.ball) {
        const length<Unit> hole =
            detail::by_pi(b.across, [&](fraction pi) { return up_to(b.across * pi / 2 + b.ease, step); });
        return figure<Unit>().plus(hole - b.ease, "half round the ball").plus_any(1, b.ease, "ease");
    }
    const length<Unit> needed = b.across + b.thick + b.ease, hole = up_to(needed, step);
    figure<Unit> f;
    f.plus(b.across, "across the button").plus_any(1, b.thick, "thickness of the button").plus_any(1, b.ease, "ease");
    return f.plus_any(1, hole - needed, "up to a mark");
}

/// The widest flat button, as thick as that. Throws fastening_error where its thickness alone fills the hole.
template <length_unit Unit>
constexpr length<Unit> button_through(length<Unit> hole, std::type_identity_t<length<Unit>> thick) {
    require_not_negative<fastening_error>(thick, "the thickness of a button");
    if (hole <= thick)
        detail::refuse<fastening_error>(
            {"a buttonhole of ", hole, " lets no button ", thick, " thick through"},
            {.kind = fault::too_small, .what = "the length of a buttonhole", .given = hole, .least = thick});
    return hole - thick;
}

/// The whole button lies inside the edge, and `clear` is left beside it.
template <length_unit Unit>
constexpr figure<Unit> stand_for(const sewn_button<Unit>& b, std::type_identity_t<length<Unit>> clear) {
    detail::require_button(b);
    require_not_negative<fastening_error>(clear, "what a button keeps clear of its edge");
    return figure<Unit>().plus_times(fraction(1, 2), {b.across}, "button").plus_any(1, clear, "clear of the edge");
}

/// Two edges with that stand, closed: the two lines lie one on the other.
template <length_unit Unit>
constexpr figure<Unit> lap_of(length<Unit> stand) {
    require_more_than_zero<fastening_error>(stand, "the stand of buttons");
    return figure<Unit>().plus_times(2, {stand}, "stand");
}

enum class hole_runs : unsigned char { along_edge, square_to_edge };

/// An edge that is buttoned. The hem or facing that holds its holes is `deep` from the finished edge inward.
template <length_unit Unit>
struct buttoned_lap {
    sewn_button<Unit> button;
    hole_runs runs = hole_runs::along_edge;
    row<finished_edge, Unit> places; ///< the middles of the buttons, from one end of the edge
    length<Unit> edge;               ///< from end to end, finished
    length<Unit> stand;              ///< from the finished edge to the line of buttons
    length<Unit> deep;
    length<Unit> shank = {}; ///< how thick: a hole that is square to the edge begins half of that beyond the line
    length<Unit> hole;       ///< as long as it is worked
    length<Unit> clear;      ///< of cloth that is left between a hole and an edge, a fold, a row or another hole
};

/// From the end that places are measured from, and from the finished edge inward.
template <length_unit Unit>
struct buttonhole {
    length<Unit> begins, ends; ///< along the edge; both at its place, where it is square to the edge
    length<Unit> from, to;     ///< from the edge inward; both on the line, where it runs along it

    friend constexpr bool operator==(const buttonhole&, const buttonhole&) = default;
};

namespace detail {

/// What a row of fasteners keeps: each takes so much along the edge, half before and half behind its place.
template <length_unit Unit>
struct fastened_row {
    row<finished_edge, Unit> places;
    length<Unit> edge, takes, clear;
    const char* each;
};

template <length_unit Unit>
constexpr void require_row(const fastened_row<Unit>& r) {
    require_at_least<fastening_error>(r.places.size(), std::int64_t{1}, "the number of fasteners");
    require_more_than_zero<fastening_error>(r.edge, "the edge that is fastened");
    require_not_negative<fastening_error>(r.clear, "what fasteners keep clear");
    const length<Unit> half = r.takes / 2, first = r.places[0].from_datum() - half,
                       last = r.edge - r.places[r.places.size() - 1].from_datum() - half;
    if (const length<Unit> left = std::min(first, last); left < r.clear)
        refuse<fastening_error>({"the ", first <= last ? "first " : "last ", r.each, ", ", r.takes,
                                 " along the edge, leaves ", left, " at its end: ", r.clear, " is to stay clear"},
                                {.kind = fault::no_room,
                                 .what = "what fasteners leave at an end",
                                 .given = left,
                                 .least = r.clear,
                                 .where = r.each});
    for (std::int64_t k = 1; k < r.places.size(); ++k)
        if (const length<Unit> step = r.places[k] - r.places[k - 1]; step < r.takes + r.clear)
            refuse<fastening_error>(
                {"a ", r.each, " every ", step, " leaves less than ", r.clear, " between two: each takes ", r.takes},
                {.kind = fault::no_room,
                 .what = "the step between fasteners",
                 .given = step,
                 .least = r.takes + r.clear,
                 .where = r.each});
}

template <length_unit Unit>
constexpr void require_passes(const buttoned_lap<Unit>& l) {
    require_button(l.button);
    require_more_than_zero<fastening_error>(l.hole, "the length of a buttonhole");
    const length<Unit> least =
        l.button.ball ? buttonhole_length(l.button, length_of<Unit>({1, metric_unit<Unit> ? 20 : 16})).value()
                      : l.button.across + l.button.thick + l.button.ease;
    const auto passes = [&](fraction pi) { return l.button.across * pi / 2 + l.button.ease <= l.hole; };
    if (l.button.ball ? by_pi(l.button.across, passes) : least <= l.hole)
        return;
    const refusal too_short{.kind = fault::too_small,
                            .what = "the length of a buttonhole",
                            .given = amount_of(l.hole),
                            .least = amount_of(least)};
    if (l.button.ball)
        refuse<fastening_error>("a buttonhole of " + to_text(l.hole) + " is too short for a ball " +
                                    to_text(l.button.across) + " across",
                                too_short);
    refuse<fastening_error>("a buttonhole of " + to_text(l.hole) + " is too short for its button, which is " +
                                to_text(l.button.across) + " across and " + to_text(l.button.thick) + " thick",
                            too_short);
}

/// It is cut between the fold of the edge and the row or edge that ends the layers under it.
template <length_unit Unit>
constexpr void require_inside(const buttoned_lap<Unit>& l, length<Unit> from, length<Unit> to) {
    if (from <= length<Unit>())
        refuse<fastening_error>({"a buttonhole would begin ", from, " from its folded edge, and cut that fold"},
                                {.kind = fault::too_small,
                                 .what = "where a buttonhole begins, from its edge",
                                 .given = from,
                                 .least = l.clear});
    if (from < l.clear)
        refuse<fastening_error>(
            {"a buttonhole ", from, " from its folded edge tears out: ", l.clear, " is to stay clear"},
            {.kind = fault::too_small,
             .what = "where a buttonhole begins, from its edge",
             .given = from,
             .least = l.clear});
    if (to + l.clear > l.deep)
        refuse<fastening_error>({"a buttonhole reaches ", to, " from its edge and does not stay ", l.clear,
                                 " inside its hem, which is ", l.deep, " deep"},
                                {.kind = fault::no_room,
                                 .what = "where a buttonhole ends, from its edge",
                                 .given = to,
                                 .most = l.deep - l.clear});
}

template <length_unit Unit>
constexpr length<Unit> along_edge(const buttoned_lap<Unit>& l) {
    return l.runs == hole_runs::along_edge ? l.hole : length<Unit>();
}

/// Its two distances from the edge; checked.
template <length_unit Unit>
constexpr buttonhole<Unit> across_lap(const buttoned_lap<Unit>& l) {
    require_passes(l);
    require_not_negative<fastening_error>(l.shank, "the thickness of a shank");
    require_row(fastened_row<Unit>{l.places, l.edge, along_edge(l), l.clear, "buttonhole"});
    const bool square = l.runs == hole_runs::square_to_edge;
    const length<Unit> from = square ? l.stand - l.shank / 2 : l.stand, to = square ? from + l.hole : from;
    require_inside(l, from, to);
    return {{}, {}, from, to};
}

} // namespace detail

/// One for each place. Throws fastening_error for a hole that is too short for its button, that cuts or nearly cuts a fold, leaves
/// its hem, runs into the next or past an end of the edge.
template <length_unit Unit>
constexpr std::vector<buttonhole<Unit>> holes_of(const buttoned_lap<Unit>& l) {
    const buttonhole<Unit> across = detail::across_lap(l);
    const length<Unit> half = detail::along_edge(l) / 2;
    std::vector<buttonhole<Unit>> holes;
    for (std::int64_t k = 0; k < l.places.size(); ++k) {
        const length<Unit> middle = l.places[k].from_datum();
        holes.push_back({middle - half, middle + half, across.from, across.to});
    }
    return holes;
}

template <length_unit Unit>
struct interfacing_strip {
    figure<Unit> width, length_; ///< square to the edge, and along it
    length<Unit> begins, from;   ///< from the end that places are measured from; from the finished edge inward
};

/// Under all the holes, and `beyond` them each way. Throws fastening_error where it would reach past the fold, the hem or an end.
template <length_unit Unit>
constexpr interfacing_strip<Unit> interfacing_under(const buttoned_lap<Unit>& l,
                                                    std::type_identity_t<length<Unit>> beyond) {
    require_more_than_zero<fastening_error>(beyond, "how far interfacing goes beyond a buttonhole");
    const buttonhole<Unit> across = detail::across_lap(l);
    const length<Unit> half = detail::along_edge(l) / 2, first = l.places[0].from_datum() - half,
                       last = l.places[l.places.size() - 1].from_datum() + half;
    const length<Unit> room = std::min({across.from, l.deep - across.to, first, l.edge - last});
    if (beyond > room)
        detail::refuse<fastening_error>({"interfacing that goes ", beyond,
                                         " beyond its buttonholes leaves the hem that it lies in: there is ", room},
                                        {.kind = fault::no_room,
                                         .what = "how far interfacing goes beyond a buttonhole",
                                         .given = beyond,
                                         .most = room});
    interfacing_strip<Unit> s{{}, {}, first - beyond, across.from - beyond};
    s.width.plus_any(1, across.to - across.from, "buttonhole").plus_times(2, {beyond}, "beyond");
    s.length_.plus_any(1, last - first, "from the first hole to the last").plus_times(2, {beyond}, "beyond");
    return s;
}

/// Both parts lie on the same line when the lap is closed: the ball on one edge, its socket on the other.
template <length_unit Unit>
struct snapped_lap {
    length<Unit> across; ///< each snap
    row<finished_edge, Unit> places;
    length<Unit> edge, stand, deep, clear; ///< as of a buttoned lap
};

/// Throws fastening_error for snaps that overlap, or do not lie inside the hem that holds them.
template <length_unit Unit>
constexpr void require_snaps(const snapped_lap<Unit>& s) {
    require_more_than_zero<fastening_error>(s.across, "the width of a snap");
    detail::require_row(detail::fastened_row<Unit>{s.places, s.edge, s.across, s.clear, "snap"});
    const length<Unit> half = s.across / 2, left = std::min(s.stand - half, s.deep - s.stand - half);
    if (left < s.clear)
        detail::refuse<fastening_error>(
            {"a snap ", s.across, " across, ", s.stand, " from its edge in a hem ", s.deep, " deep, leaves ", left,
             " beside it: ", s.clear, " is to stay clear"},
            {.kind = fault::no_room, .what = "what a snap leaves beside it", .given = left, .least = s.clear});
}

/// Closed round anything from `least` to `most` round; `holds` is the hook tape, all of which lies on loop tape.
template <length_unit Unit>
struct touch_strap {
    length<Unit> least, most;
    length<Unit> holds;
    length<Unit> end = {}; ///< of the strap, beyond its hook tape: a tab to pull

    friend constexpr bool operator==(const touch_strap&, const touch_strap&) = default;
};

namespace detail {

template <length_unit Unit>
constexpr void require_strap(const touch_strap<Unit>& s) {
    require_more_than_zero<fastening_error>(s.least, "the least that a strap goes round");
    require_more_than_zero<fastening_error>(s.holds, "the hook tape of a strap");
    require_not_negative<fastening_error>(s.end, "the end of a strap beyond its tape");
    if (s.most < s.least)
        refuse<fastening_error>(
            {"a strap goes round from ", s.least, " to ", s.most, ", which is less"},
            {.kind = fault::too_small, .what = "the most that a strap goes round", .given = s.most, .least = s.least});
    const length<Unit> loop = s.most - s.least + s.holds, room = s.least - s.end;
    if (loop > room)
        refuse<fastening_error>({"a strap that closes round ", s.least, " as well as round ", s.most,
                                 " would lie on itself: it laps ", loop + s.end, " at the tightest"},
                                {.kind = fault::no_room,
                                 .what = "the lap of a strap at its tightest",
                                 .given = loop + s.end,
                                 .most = s.least});
}

} // namespace detail

template <length_unit Unit>
constexpr figure<Unit> hook_tape(const touch_strap<Unit>& s) {
    detail::require_strap(s);
    return figure<Unit>().plus(s.holds, "held at every setting");
}

template <length_unit Unit>
constexpr figure<Unit> loop_tape(const touch_strap<Unit>& s) {
    detail::require_strap(s);
    return figure<Unit>().plus(s.holds, "held at every setting").plus_any(1, s.most - s.least, "to be taken in");
}

/// The strap from end to end, finished.
template <length_unit Unit>
constexpr figure<Unit> strap_round(const touch_strap<Unit>& s) {
    detail::require_strap(s);
    figure<Unit> f;
    f.plus(s.most, "round at its widest").plus(s.holds, "lapped and held");
    return f.plus_any(1, s.end, "end to pull");
}

/// Backwards: the least that a strap `most` round closes on, from the lengths of its two tapes. Throws fastening_error for loop tape
/// that is shorter than the hook tape.
template <length_unit Unit>
constexpr length<Unit> tightest_of(length<Unit> most, std::type_identity_t<length<Unit>> hook,
                                   std::type_identity_t<length<Unit>> loop) {
    require_more_than_zero<fastening_error>(hook, "the hook tape of a strap");
    if (loop < hook)
        detail::refuse<fastening_error>(
            {"loop tape of ", loop, " does not cover hook tape of ", hook,
             ": what is not covered scratches, and fills with fluff"},
            {.kind = fault::too_small, .what = "the loop tape of a strap", .given = loop, .least = hook});
    return most - (loop - hook);
}

} // namespace turncloth

#endif
