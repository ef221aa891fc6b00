// What a crease turns and covers, and whether a row runs there: comparisons of rectangles and lines.
//
//   straight(side)  same_edge(crease, crease)  depth_of(crease, part)
//   struct turning{turned, covers}     in the spots of the piece at the root
//   struct place                       a line or a spot that an operation works on
//   covers(cloth, place)               cloth lies on both sides of it
//   holds(turning, place)              it runs over the turned cloth, or on its very edge
//   along(turning, place)              a row runs along the crease, not across it
//   in_turned(turning, place)          it runs along it in what is turned, or on the crease
//   folded_in(folds)                   how far in from its cut edge cloth begins, folded at those distances from it
#ifndef TURNCLOTH_MAKING_DETAIL_TURNING_HPP
#define TURNCLOTH_MAKING_DETAIL_TURNING_HPP

#include <turncloth/making/detail/flat_design.hpp>
#include <turncloth/making/detail/whole.hpp>

#include <algorithm>
#include <cstddef>
#include <vector>

namespace turncloth::detail::flat_work {

inline bool straight(const half_plane& h) { return h.a == 0 || h.b == 0; }
inline bool same_edge(const flat_crease& a, const flat_crease& b) {
    return a.part == b.part && a.stays.a == b.stays.a && a.stays.b == b.stays.b;
}
/// How far a crease lies from its edge.
inline whole depth_of(const flat_crease& c, const flat_part& p) {
    const whole c0 = c.stays.c;
    return c.stays.a + c.stays.b < 0 ? -c0 : (c.stays.a != 0 ? p.width : p.height) - c0;
}

/// What a crease turns, and where it comes to lie, in the spots of the root. Corners have no band.
struct turning {
    bounds turned{}, covers{};
    bool corner = false, encloses = false;
};
/// What an operation does its work on: a line of no width, or a spot.
struct place {
    std::size_t part = 0;
    bounds where{}; ///< in the root's spots; of no width across
    bool level = true, is_line = true;
};

/// Whether cloth lies on both sides of the line somewhere along it, or round the spot.
inline bool covers(const bounds& cloth, const place& p) {
    const bool across = p.where.left < cloth.right && cloth.left < p.where.right;
    const bool down = p.where.top < cloth.bottom && cloth.top < p.where.bottom;
    if (!p.is_line)
        return cloth.left <= p.where.left && p.where.left <= cloth.right && cloth.top <= p.where.top &&
               p.where.top <= cloth.bottom;
    return p.level ? across && cloth.top < p.where.top && p.where.top < cloth.bottom
                   : down && cloth.left < p.where.left && p.where.left < cloth.right;
}
/// As covers, the far edge of turned cloth too: a row on the very edge of a hem holds it.
inline bool holds(const turning& t, const place& p) {
    bounds wider = t.covers;
    const bool up_down = t.turned.left == t.covers.left && t.turned.right == t.covers.right;
    whole& far = up_down ? (t.turned.top < t.covers.top ? wider.bottom : wider.top)
                         : (t.turned.left < t.covers.left ? wider.right : wider.left);
    far += (&far == &wider.bottom || &far == &wider.right) ? 1 : -1;
    return covers(wider, p);
}
/// Whether a row runs along the crease, not across it.
inline bool along(const turning& t, const place& p) {
    const bool level = t.turned.left == t.covers.left && t.turned.right == t.covers.right;
    return p.is_line && p.level == level;
}
inline bool in_turned(const turning& t, const place& p) {
    if (!along(t, p))
        return false;
    const whole at = p.level ? p.where.top : p.where.left;
    return p.level ? t.turned.top <= at && at <= t.turned.bottom && p.where.left < t.turned.right &&
                         t.turned.left < p.where.right
                   : t.turned.left <= at && at <= t.turned.right && p.where.top < t.turned.bottom &&
                         t.turned.top < p.where.bottom;
}

/// Folded in turn from the outermost on, a hem begins at the last of them, and a pleat, which goes over and back, at the edge
/// of what lies beneath it.
inline whole folded_in(std::vector<whole> folds) {
    std::sort(folds.begin(), folds.end());
    std::vector<whole> ends = {0};
    for (const whole f : folds) {
        for (whole& end : ends)
            end = 2 * f - end;
        ends.push_back(f);
    }
    return *std::min_element(ends.begin(), ends.end());
}

} // namespace turncloth::detail::flat_work

#endif
