// A stack of plies: what lies on the table, from the bottom up, and what creases, layings and needles do with it.
//
//   ply{part, wall, how, area, body}       one thickness of one part: a convex cell of it as it lies
//   struct stack                           plies from the bottom up
//     fold(stack, moves, beyond, over)     turns what lies beyond a line, of the parts that move
//     lay(stack, on, carry, beneath)       puts one stack on or beneath another
//     widest_ply(stack, part, line)        the ply of a part that a line on it is drawn on
//   within(ply, line, from, to)            the stretch of an upright or level line inside a ply
//
// One order of heights serves for the whole stack: a ply that is lower in it is nowhere above one that is higher.
#ifndef TURNCLOTH_MAKING_DETAIL_STACK_HPP
#define TURNCLOTH_MAKING_DETAIL_STACK_HPP

#include <turncloth/making/detail/whole.hpp>

#include <algorithm>
#include <cstddef>
#include <iterator>
#include <limits>
#include <optional>
#include <utility>
#include <vector>

namespace turncloth::detail::flat_work {

/// `area` is on the table. The body of a part is the ply that it is measured on: the largest left of it.
struct ply {
    std::size_t part = 0, wall = 0;
    lie how{};
    cell area{};
    bool body = false;
};

struct stack {
    std::vector<ply> plies{};
};

/// A level line at y = at, or an upright one at x = at.
struct table_line {
    bool level = true;
    whole at = 0;
};

struct stretch {
    whole from = 0, to = 0;
    constexpr bool is_nothing() const { return from >= to; }
};

/// Where the line runs inside the cell; nothing where it only touches it. It meets the cell's sides where they cross it
/// and in the corners that lie on it.
constexpr stretch within(const cell& area, const table_line& l) {
    const bounds& round = area.round();
    if (l.at <= (l.level ? round.top : round.left) || l.at >= (l.level ? round.bottom : round.right))
        return {};
    if (area.is_upright())
        return l.level ? stretch{round.left, round.right} : stretch{round.top, round.bottom};
    const auto off_line = [&](const spot& p) { return (l.level ? p.y : p.x) - l.at; };
    const auto along = [&](const spot& p) { return l.level ? p.x : p.y; };
    stretch met{std::numeric_limits<whole>::max(), std::numeric_limits<whole>::min()};
    const auto note = [&](whole v) { met = {std::min(met.from, v), std::max(met.to, v)}; };
    const spot* p = area.end() - 1;
    whole p_off = off_line(*p);
    for (const spot& q : area) {
        const whole q_off = off_line(q);
        if (q_off == 0) {
            note(along(q));
        } else if (p_off != 0 &&
                   (p_off < 0) != (q_off < 0)) { // equal steps across the line and along it, or none along
            const whole from = along(*p), to = along(q), steps = p_off < 0 ? -p_off : p_off;
            note(to > from ? from + steps : to < from ? from - steps : from);
        }
        p = &q;
        p_off = q_off;
    }
    return met;
}

/// What of a ply is left within the line, and what comes of the rest, turned. The larger of the two is the body.
inline ply left_flat(ply p, const half_plane& stays) {
    const cell left = clipped(p.area, stays);
    p.body = p.body && 2 * twice_area(left) >= twice_area(p.area);
    p.area = left;
    return p;
}
inline ply turned_over(ply p, const half_plane& stays, const lie& mirror) {
    const cell turned = carried(clipped(p.area, other_side(stays)), mirror);
    p.body = p.body && 2 * twice_area(turned) > twice_area(p.area);
    p.area = turned;
    p.how = after(p.how, mirror);
    return p;
}

/// Turns what lies beyond (past >= 0) of the parts that move. Over: on top of all. Under: directly beneath what stays of
/// those parts. The plies come to lie in the contrary order, each other face up. Returns false, and does nothing,
/// where nothing is turned or nothing stays. `wall`: what is turned becomes of that wall, where it is given.
inline bool fold(stack& s, const std::vector<char>& moves, const half_plane& stays, bool over,
                 std::optional<std::pair<std::size_t, std::size_t>> wall = {}) {
    sides_of_line all;
    std::vector<sides_of_line> sides(s.plies.size());
    for (std::size_t i = 0; i < s.plies.size(); ++i)
        if (moves[s.plies[i].part]) {
            sides[i] = sides_of(s.plies[i].area, stays);
            all = {all.within || sides[i].within, all.beyond || sides[i].beyond};
        }
    if (!all.within || !all.beyond)
        return false;
    const lie mirror = mirror_in(stays);
    // Plies are large: there is room for all from the start, and what stays is left where it is.
    std::vector<ply> turned;
    turned.reserve(s.plies.size());
    std::optional<std::size_t> lowest;
    std::size_t kept = 0;
    for (std::size_t i = 0; i < s.plies.size(); ++i) {
        const ply& p = s.plies[i];
        const sides_of_line here = sides[i];
        if (here.beyond) {
            turned.push_back(turned_over(p, stays, mirror));
            if (wall && p.part == wall->first)
                turned.back().wall = wall->second;
        }
        if (here.within && !lowest)
            lowest = kept;
        if (here.beyond && !here.within)
            continue;
        if (here.beyond)
            s.plies[kept] = left_flat(p, stays);
        else if (kept != i)
            s.plies[kept] = p;
        ++kept;
    }
    s.plies.resize(kept);
    s.plies.insert(over ? s.plies.end() : s.plies.begin() + static_cast<std::ptrdiff_t>(*lowest), turned.rbegin(),
                   turned.rend());
    return true;
}

/// Puts `piece`, carried by `carry`, on top of all of `on` or beneath it. Turned over, its lowest ply comes uppermost.
inline void lay(stack piece, stack& on, const lie& carry, bool beneath) {
    for (ply& p : piece.plies) {
        p.how = after(p.how, carry);
        p.area = carried(p.area, carry);
    }
    if (!carry.right_up())
        std::reverse(piece.plies.begin(), piece.plies.end());
    on.plies.insert(beneath ? on.plies.begin() : on.plies.end(), std::make_move_iterator(piece.plies.begin()),
                    std::make_move_iterator(piece.plies.end()));
}

/// A line of a part's own spots, as an upright or level line of the table.
constexpr table_line carried(const table_line& l, const lie& how) {
    const spot p = how(l.level ? spot{0, l.at} : spot{l.at, 0});
    const bool level = l.level == (how.xx != 0); // a quarter turn makes level lines upright
    return {level, level ? p.y : p.x};
}

/// The stretch of a line, carried.
constexpr stretch carried(const stretch& run, const table_line& l, const lie& how) {
    const spot p = how(l.level ? spot{run.from, l.at} : spot{l.at, run.from}),
               q = how(l.level ? spot{run.to, l.at} : spot{l.at, run.to});
    const bool level = carried(l, how).level;
    const whole a = level ? p.x : p.y, b = level ? q.x : q.y;
    return a < b ? stretch{a, b} : stretch{b, a};
}

/// The ply on which a line of that part is drawn: of those that it runs inside of, where it runs furthest; the part's
/// body among equals. None where it runs inside of none.
inline std::optional<std::size_t> widest_ply(const stack& s, std::size_t part, const table_line& own) {
    std::optional<std::size_t> best;
    whole furthest = 0;
    for (std::size_t i = 0; i < s.plies.size(); ++i) {
        const ply& p = s.plies[i];
        if (p.part != part)
            continue;
        const stretch inside = within(p.area, carried(own, p.how));
        const whole far = inside.to - inside.from;
        if (far > furthest || (far > 0 && far == furthest && p.body)) {
            furthest = far;
            best = i;
        }
    }
    return best;
}

} // namespace turncloth::detail::flat_work

#endif
