// Pieces in space, in whole numbers: how a piece lies that a seam or a crease joins to another.
//
//   point{x, y, z}  frame         where a piece's own spots come to lie: signed axes, and an offset
//   seam_line  seam_pair          a line that is sewn, with the edge it is measured from; two that meet
//   joined(standing, one, other, turn)      how what lies beyond a joint stands
//
//   joined({}, {.away = {1, 0}, .along = {0, 1}, .on = {9, 0}}, {.away = {-1, 0}, .along = {0, 1}}, turned::inward)
//       // goes on at x = 9, away from whoever looks at the right side
//
// The rules. Right sides lie together in a seam, so its two sides run against each other: going round one piece
// clockwise, as its right side is seen, is going round the other anticlockwise. That decides which end meets which. A
// seam turns what lies beyond it not at all, by a quarter, or back; a quarter is turned to the inside, which is the side
// of the wrong side, and the other side for all that a seam turned back (a lining). So every frame is one of 24 turns
// and a whole offset.
#ifndef TURNCLOTH_MAKING_DETAIL_BOXES_HPP
#define TURNCLOTH_MAKING_DETAIL_BOXES_HPP

#include <turncloth/making/detail/whole.hpp>

#include <algorithm>
#include <cstddef>
#include <limits>

namespace turncloth::detail::boxed_work {

using flat_work::bounds;
using flat_work::spot;
using flat_work::whole;

inline constexpr std::size_t nowhere = std::numeric_limits<std::size_t>::max();

struct point {
    whole x = 0, y = 0, z = 0;
    friend constexpr bool operator==(const point&, const point&) = default;
    friend constexpr point operator+(const point& a, const point& b) { return {a.x + b.x, a.y + b.y, a.z + b.z}; }
    friend constexpr point operator*(const point& a, whole k) { return {a.x * k, a.y * k, a.z * k}; }
    friend constexpr point operator-(const point& a, const point& b) { return a + b * -1; }
    constexpr point operator-() const { return *this * -1; }
};

/// `right` and `down` are where a piece's own axes point, `out` where its right side looks: each along one axis.
struct frame {
    point right{1, 0, 0}, down{0, 1, 0}, out{0, 0, 1}, at{};

    constexpr point direction(const spot& d) const { return right * d.x + down * d.y; }
    constexpr point operator()(const spot& p) const { return at + direction(p); }
    friend constexpr bool operator==(const frame&, const frame&) = default;
    constexpr bool turned_as(const frame& o) const { return right == o.right && down == o.down && out == o.out; }
};

/// Level at y = at, or upright at x = at. `toward` is -1 where it is measured from the top or left edge, 1 from the
/// others: the allowance lies that way, the piece the other.
struct seam_line {
    std::size_t part = 0;
    bool level = true;
    whole at = 0, toward = -1, begins = 0, ends = 0;

    constexpr whole long_() const { return ends - begins; }
    /// Whether `begins` to `ends` goes round the piece clockwise, as its right side is seen.
    constexpr bool clockwise() const { return level ? toward < 0 : toward > 0; }
    constexpr spot across() const { return level ? spot{0, toward} : spot{toward, 0}; }
    constexpr spot spot_at(whole along) const { return level ? spot{along, at} : spot{at, along}; }
    constexpr bool same_line(const seam_line& o) const {
        return part == o.part && level == o.level && at == o.at && toward == o.toward;
    }
};

enum class turned : unsigned char { not_at_all, inward, outward, back };

/// The k-th span of a seam; lengths agree, but where a lining is let in.
struct seam_pair {
    seam_line one{}, other{};
    turned turn = turned::not_at_all;
    std::size_t seam = 0;
    bool lets_in = false; ///< a lining of another size: its lengths need not agree

    constexpr whole long_() const { return std::min(one.long_(), other.long_()); }
    /// So far along the seam, in each piece's own spots.
    constexpr spot on_one(whole t) const { return one.spot_at(one.clockwise() ? one.begins + t : one.ends - t); }
    constexpr spot on_other(whole t) const {
        return other.spot_at(other.clockwise() ? other.ends - t : other.begins + t);
    }
};

/// One side of a joint, in its piece's own directions: away from the piece, along the joint, and a spot on it.
struct joint_side {
    spot away{}, along{}, on{};
};

/// `placed` and what `right_out` says of it: whether its right side looks out of the box.
struct standing {
    frame how{};
    bool right_out = true;
    friend constexpr bool operator==(const standing&, const standing&) = default;
};

constexpr standing joined(const standing& placed, const joint_side& one, const joint_side& other, turned turn) {
    const frame& f = placed.how;
    const point on = f.direction(one.away), along = f.direction(one.along);
    const point inside = placed.right_out ? -f.out : f.out;
    point goes_on = on, out = f.out;
    if (turn == turned::back) {
        goes_on = -on;
        out = -f.out;
    } else if (turn != turned::not_at_all) {
        goes_on = turn == turned::inward ? inside : -inside;
        // A quarter that takes `on` to `out` takes `out` to `-on`, and the other way round.
        out = goes_on == f.out ? -on : on;
    }
    standing made{{}, turn == turned::back ? !placed.right_out : placed.right_out};
    const spot into{-other.away.x, -other.away.y};
    made.how.right = goes_on * into.x + along * other.along.x;
    made.how.down = goes_on * into.y + along * other.along.y;
    made.how.out = out;
    made.how.at = f(one.on) - made.how.direction(other.on);
    return made;
}

} // namespace turncloth::detail::boxed_work

#endif
