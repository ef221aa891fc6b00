// Cloth in whole numbers: spots, how a part lies, lines to fold along, convex cells.
//
//   spot{x, y}                 x to the right, y down
//   lie                        carries a part's own spots to the table: a turn by quarters, perhaps mirrored, and a shift
//   half_plane{a, b, c}        a x + b y <= c, along an edge or at 45 degrees; mirror_in(h), other_side(h)
//   cell                       a convex polygon; clipped(cell, h), twice_area(cell)
//
//   const lie turned = mirror_in({1, 0, 5});       // over the line x = 5: turned({2, 3}) == spot{8, 3}
//
// Why whole numbers stay whole. Let every line that is drawn have an even constant c. A mirror image in a line along an
// edge takes x to 2c - x, in one at 45 degrees (x, y) to (c - y, c - x) or (y + c, x - c): lines with even constants go to
// lines with even constants. Two such lines meet in whole numbers: x = c and y = d at once; x + y = c and x = d in
// y = c - d; x + y = c and x - y = d in x = (c + d) / 2. So the common denominator, doubled, serves for every fold.
#ifndef TURNCLOTH_MAKING_DETAIL_WHOLE_HPP
#define TURNCLOTH_MAKING_DETAIL_WHOLE_HPP

#include <turncloth/measure/fraction.hpp>

#include <cstddef>
#include <cstdint>
#include <initializer_list>

namespace turncloth::detail::flat_work {

using whole = std::int64_t;

struct spot {
    whole x = 0, y = 0;
    friend constexpr bool operator==(const spot&, const spot&) = default;
};

/// (x, y) to (xx x + xy y + dx, yx x + yy y + dy). One of xx and xy is 1 or -1 and the other 0, and so below.
struct lie {
    whole xx = 1, xy = 0, yx = 0, yy = 1, dx = 0, dy = 0;

    constexpr spot operator()(const spot& p) const { return {xx * p.x + xy * p.y + dx, yx * p.x + yy * p.y + dy}; }
    /// Whether the face that the part's own spots are seen from lies up.
    constexpr bool right_up() const { return xx * yy - xy * yx > 0; }
    friend constexpr bool operator==(const lie&, const lie&) = default;
};

/// First `first`, then `then`.
constexpr lie after(const lie& first, const lie& then) {
    const spot shift = then({first.dx, first.dy});
    return {then.xx * first.xx + then.xy * first.yx,
            then.xx * first.xy + then.xy * first.yy,
            then.yx * first.xx + then.yy * first.yx,
            then.yx * first.xy + then.yy * first.yy,
            shift.x,
            shift.y};
}

/// The matrix is orthogonal, so its inverse is its transpose.
constexpr lie inverse(const lie& l) {
    return {l.xx, l.yx, l.xy, l.yy, -(l.xx * l.dx + l.yx * l.dy), -(l.xy * l.dx + l.yy * l.dy)};
}

/// a x + b y <= c, with a and b from -1, 0 and 1, not both 0.
struct half_plane {
    whole a = 0, b = 0, c = 0;
    /// Above zero beyond the line, below it within, zero on the line.
    constexpr whole past(const spot& p) const { return a * p.x + b * p.y - c; }
};

constexpr half_plane other_side(const half_plane& h) { return {-h.a, -h.b, -h.c}; }

/// p - 2 (n p - c) n / n n, with n n = 1 along an edge and 2 at 45 degrees.
constexpr lie mirror_in(const half_plane& h) {
    const whole k = 2 / (h.a * h.a + h.b * h.b);
    return {1 - k * h.a * h.a, -k * h.a * h.b, -k * h.a * h.b, 1 - k * h.b * h.b, k * h.c * h.a, k * h.c * h.b};
}

/// The half-plane of a part's own spots, on the table.
constexpr half_plane carried(const half_plane& h, const lie& l) {
    const whole a = l.xx * h.a + l.xy * h.b, b = l.yx * h.a + l.yy * h.b; // the normal turns with the cloth
    return {a, b, h.c + a * l.dx + b * l.dy};
}

/// The smallest upright rectangle round a cell.
struct bounds {
    whole left = 0, top = 0, right = 0, bottom = 0;
    constexpr bool is_nothing() const { return left >= right || top >= bottom; }
};

/// Round both.
constexpr bounds around(const bounds& a, const bounds& b) {
    return {a.left < b.left ? a.left : b.left, a.top < b.top ? a.top : b.top, a.right < b.right ? b.right : a.right,
            a.bottom < b.bottom ? b.bottom : a.bottom};
}

constexpr bounds carried(const bounds& b, const lie& l) {
    const spot p = l({b.left, b.top}), q = l({b.right, b.bottom});
    return {p.x < q.x ? p.x : q.x, p.y < q.y ? p.y : q.y, p.x < q.x ? q.x : p.x, p.y < q.y ? q.y : p.y};
}

/// Convex, its corners in order round; none for nothing. Sides run in eight directions, each once at most. What is round it
/// is kept, as it is asked for far more often than a cell is made.
class cell {
public:
    constexpr cell() = default;
    constexpr cell(std::initializer_list<spot> corners) {
        for (const spot& p : corners)
            push_back(p);
    }
    constexpr void push_back(const spot& p) {
        if (size_ == 0)
            round_ = {p.x, p.y, p.x, p.y};
        round_ = {p.x < round_.left ? p.x : round_.left, p.y < round_.top ? p.y : round_.top,
                  p.x > round_.right ? p.x : round_.right, p.y > round_.bottom ? p.y : round_.bottom};
        corners_[size_++] = p;
    }
    constexpr std::size_t size() const { return size_; }
    constexpr bool empty() const { return size_ == 0; }
    constexpr const spot& operator[](std::size_t i) const { return corners_[i]; }
    constexpr const spot* begin() const { return corners_; }
    constexpr const spot* end() const { return corners_ + size_; }
    constexpr const bounds& round() const { return round_; }
    /// Whether it is all of what is round it: of four corners, each shares one line with the next.
    constexpr bool is_upright() const {
        const spot* c = corners_;
        return size_ == 4 && ((c[0].y == c[1].y && c[1].x == c[2].x && c[2].y == c[3].y && c[3].x == c[0].x) ||
                              (c[0].x == c[1].x && c[1].y == c[2].y && c[2].x == c[3].x && c[3].y == c[0].y));
    }

private:
    spot corners_[8]{};
    std::size_t size_ = 0;
    bounds round_{};
};
constexpr const bounds& bounds_of(const cell& c) { return c.round(); }

/// Products of two distances of up to 2^52.
constexpr int128 twice_area(const cell& c) {
    int128 sum = 0;
    for (std::size_t i = 0; i < c.size(); ++i) {
        const spot &p = c[i], &q = c[i + 1 == c.size() ? 0 : i + 1];
        sum += int128{p.x - c[0].x} * (q.y - c[0].y) - int128{q.x - c[0].x} * (p.y - c[0].y);
    }
    return sum < 0 ? -sum : sum;
}

/// What of it lies within; empty where that has no area.
constexpr cell clipped(const cell& from, const half_plane& h) {
    cell kept;
    for (std::size_t i = 0; i < from.size(); ++i) {
        const spot &p = from[i], &q = from[i + 1 == from.size() ? 0 : i + 1];
        const whole at_p = h.past(p), at_q = h.past(q);
        if (at_p <= 0)
            kept.push_back(p);
        if ((at_p < 0 && at_q > 0) || (at_p > 0 && at_q < 0)) {
            // A side along an edge or at 45 degrees has equal steps, so the way to the line is at_p / rate steps.
            const whole sx = q.x > p.x ? 1 : q.x < p.x ? -1 : 0, sy = q.y > p.y ? 1 : q.y < p.y ? -1 : 0;
            const whole steps = -at_p / (h.a * sx + h.b * sy);
            kept.push_back({p.x + sx * steps, p.y + sy * steps});
        }
    }
    return kept.size() < 3 || twice_area(kept) == 0 ? cell() : kept;
}

constexpr cell carried(const cell& from, const lie& l) {
    cell to;
    for (const spot& p : from)
        to.push_back(l(p));
    return to;
}

/// Whether any of it lies within, and any beyond.
struct sides_of_line {
    bool within = false, beyond = false;
};
constexpr sides_of_line sides_of(const cell& c, const half_plane& h) {
    sides_of_line found;
    if ((h.a == 0 || h.b == 0) && !c.empty()) { // along an edge: what is round it reaches as far
        const bounds& b = c.round();
        const whole one = h.past({b.left, b.top}), other = h.past({b.right, b.bottom});
        return {one < 0 || other<0, one> 0 || other > 0};
    }
    for (const spot& p : c) {
        found.within |= h.past(p) < 0;
        found.beyond |= h.past(p) > 0;
    }
    return found;
}

constexpr bool overlap(const bounds& a, const bounds& b) {
    return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}

/// Whether they come from one spot of a part's own, as the table lies to it by either.
inline bool are_one_spot(const lie& a, const lie& b, const spot& p) {
    return (a.xx - b.xx) * p.x + (a.xy - b.xy) * p.y == b.dx - a.dx &&
           (a.yx - b.yx) * p.x + (a.yy - b.yy) * p.y == b.dy - a.dy;
}

} // namespace turncloth::detail::flat_work

#endif
