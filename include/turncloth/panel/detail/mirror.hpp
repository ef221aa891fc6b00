// The arithmetic of a fold: which side of a crease a corner lies on, where an edge crosses it, where the image lies.
//
//   detail::mirror<Number>(from, to)       the line; height(p) is above zero left of it
//   m.crossing(p, height, q, height)       where the edge from p to q crosses the line
//   m.image(p)                             the mirror image
//   detail::locate_in_convex(corners, p)   as locate, for a convex polygon
//   detail::span_within(corners, start, way)     which part of a straight piece lies within a convex polygon
//   detail::sides_of(folding)              the sides of a stack's layers, each once
//   detail::upright_stops(sides)           where, going rightward, their order may change
//
//   detail::mirror<fraction> half({6, 0}, {6, 12});   half.image({0, 1}) is {12, 1}
//
// Level, upright and 45-degree creases, which are nearly all that is ever folded, need no multiplication: height and
// image are sums. An internal header of folding.hpp.
#ifndef TURNCLOTH_PANEL_DETAIL_MIRROR_HPP
#define TURNCLOTH_PANEL_DETAIL_MIRROR_HPP

#include <turncloth/panel/polygon.hpp>

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <span>
#include <tuple>
#include <utility>
#include <vector>

namespace turncloth::detail {

/// The direction (x, y) as the shortest arrow of whole numbers along it, which keeps products small.
inline arrow<fraction> shortest(const arrow<fraction>& way) {
    const fraction slope = way.x == 0 ? fraction(0) : way.y / way.x;
    return way.x == 0 ? arrow<fraction>{0, sign(way.y)}
                      : arrow<fraction>{denominator(slope), numerator(slope)} * fraction(sign(way.x));
}
/// In doubles of length 1, so that a height is a distance, except at 45 degrees, where it is the square root of two
/// times one.
inline arrow<double> shortest(const arrow<double>& way) {
    const double size = std::abs(way.x) == std::abs(way.y) ? std::abs(way.x) : length_of_arrow(way);
    return {way.x / size, way.y / size};
}

template <coordinate Number>
class mirror {
public:
    mirror(const arrow<Number>& from, const arrow<Number>& to) : from_(from), way_(shortest(to - from)) {
        if (way_.y == 0)
            kind_ = kind::level;
        else if (way_.x == 0)
            kind_ = kind::upright;
        else if (way_.x == way_.y)
            kind_ = kind::rising;
        else if (way_.x == -way_.y)
            kind_ = kind::falling;
        else
            square_ = dot(way_, way_);
        sum_ =
            kind_ == kind::falling ? from.x + from.y : from.x - from.y; // what is the same all along a 45-degree line
    }

    /// Times the length of the direction, the distance to the line: left of it above zero, right of it below.
    Number height(const arrow<Number>& p) const {
        switch (kind_) {
        case kind::level:
            return way_.x > 0 ? p.y - from_.y : from_.y - p.y;
        case kind::upright:
            return way_.y > 0 ? from_.x - p.x : p.x - from_.x;
        case kind::rising:
            return way_.x > 0 ? sum_ - p.x + p.y : p.x - p.y - sum_;
        case kind::falling:
            return way_.x > 0 ? p.x + p.y - sum_ : sum_ - p.x - p.y;
        case kind::slanting:
            break;
        }
        return cross(way_, p - from_);
    }

    /// Where the edge from p to q, whose heights have opposite signs, crosses the line.
    arrow<Number> crossing(const arrow<Number>& p, const Number& height_p, const arrow<Number>& q,
                           const Number& height_q) const {
        // Most edges run along the cloth or at 45 degrees to it, where the crossing is a sum.
        const arrow<Number> edge = q - p;
        if (kind_ == kind::level && (edge.x == 0 || edge.x == edge.y || edge.x == -edge.y))
            return {edge.x == 0 ? p.x : edge.x == edge.y ? p.x + (from_.y - p.y) : p.x - (from_.y - p.y), from_.y};
        if (kind_ == kind::upright && (edge.y == 0 || edge.x == edge.y || edge.x == -edge.y))
            return {from_.x, edge.y == 0 ? p.y : edge.x == edge.y ? p.y + (from_.x - p.x) : p.y - (from_.x - p.x)};
        if (kind_ == kind::falling && (edge.x == 0 || edge.y == 0))
            return edge.x == 0 ? arrow<Number>{p.x, sum_ - p.x} : arrow<Number>{sum_ - p.y, p.y};
        if (kind_ == kind::rising && (edge.x == 0 || edge.y == 0))
            return edge.x == 0 ? arrow<Number>{p.x, p.x - sum_} : arrow<Number>{sum_ + p.y, p.y};
        const Number along = height_p / (height_p - height_q);
        return {p.x + edge.x * along, p.y + edge.y * along};
    }

    arrow<Number> image(const arrow<Number>& p) const {
        switch (kind_) {
        case kind::level:
            return {p.x, from_.y + from_.y - p.y};
        case kind::upright:
            return {from_.x + from_.x - p.x, p.y};
        case kind::rising:
            return {p.y + sum_, p.x - sum_};
        case kind::falling:
            return {sum_ - p.y, sum_ - p.x};
        case kind::slanting:
            break;
        }
        const Number twice = Number(2) * height(p) / square_;
        return {p.x + way_.y * twice, p.y - way_.x * twice};
    }

private:
    enum class kind { slanting, level, upright, rising, falling };

    arrow<Number> from_, way_;
    Number sum_ = 0, square_ = 0;
    kind kind_ = kind::slanting;
};

template <length_unit Unit, coordinate Number>
Number number_area(std::span<const point<Unit, Number>> corners) {
    return signed_area_of(corners).value();
}

/// Where p lies in a convex counter-clockwise polygon.
template <length_unit Unit, coordinate Number>
containment locate_in_convex(std::span<const point<Unit, Number>> corners, const arrow<Number>& p) {
    containment found = containment::inside;
    for (std::size_t i = 0; i < corners.size(); ++i) {
        const int side = turn(bare(corners[i]), bare(corners[i + 1 == corners.size() ? 0 : i + 1]), p);
        if (side < 0)
            return containment::outside;
        if (side == 0)
            found = containment::on_edge;
    }
    return found;
}

/// The part of start + t way, 0 <= t <= 1, that lies within a convex counter-clockwise polygon; {0, 0} for none, and
/// for a way along an edge.
template <length_unit Unit, coordinate Number>
std::pair<Number, Number> span_within(std::span<const point<Unit, Number>> corners, const arrow<Number>& start,
                                      const arrow<Number>& way) {
    Number begin = 0, end = 1;
    for (std::size_t i = 0; i < corners.size(); ++i) {
        const arrow<Number> a = bare(corners[i]);
        const arrow<Number> edge = shortest(bare(corners[i + 1 == corners.size() ? 0 : i + 1]) - a);
        const Number height = cross(edge, start - a), climb = cross(edge, way);
        if (sign(climb) == 0) {
            if (sign(height) <= 0)
                return {Number(0), Number(0)};
            continue;
        }
        const Number meets = -height / climb;
        if (climb > 0)
            begin = std::max(begin, meets);
        else
            end = std::min(end, meets);
        if (!(begin < end))
            return {Number(0), Number(0)};
    }
    return {begin, end};
}

/// A side of a layer from left to right; upright sides are left out.
template <coordinate Number>
struct side_piece {
    arrow<Number> from, to;

    /// In the order of their left ends.
    friend bool operator<(const side_piece& s, const side_piece& t) { return s.ends() < t.ends(); }
    friend bool operator==(const side_piece& s, const side_piece& t) { return s.ends() == t.ends(); }

private:
    auto ends() const { return std::tie(from.x, from.y, to.x, to.y); }
};

/// Layers folded to the same shape share their sides.
template <class Folding>
auto sides_of(const Folding& folded) {
    using number = typename Folding::point_type::number;
    std::vector<side_piece<number>> sides;
    for (std::size_t l = 0; l < folded.layer_count(); ++l) {
        const auto corners = folded.layer(l).corners;
        for (std::size_t i = 0; i < corners.size(); ++i) {
            const arrow<number> a = bare(corners[i]), b = bare(corners[i + 1 == corners.size() ? 0 : i + 1]);
            if (a.x != b.x)
                sides.push_back(a.x < b.x ? side_piece<number>{a, b} : side_piece<number>{b, a});
        }
    }
    std::sort(sides.begin(), sides.end());
    sides.erase(std::unique(sides.begin(), sides.end()), sides.end());
    return sides;
}

/// The x of every corner, and of every crossing of two sides, in order and once each: a corner ends a side that is not
/// upright, or lies straight above one that does. Each side is compared with those that begin beside it.
template <coordinate Number>
std::vector<Number> upright_stops(const std::vector<side_piece<Number>>& sides) {
    std::vector<Number> stops;
    for (const side_piece<Number>& s : sides)
        stops.insert(stops.end(), {s.from.x, s.to.x});
    // Sides on one line make no stop of their own.
    for (std::size_t i = 0; i < sides.size(); ++i)
        for (std::size_t j = i + 1; j < sides.size() && sides[j].from.x < sides[i].to.x; ++j) {
            const arrow<Number> one = sides[i].to - sides[i].from, other = sides[j].to - sides[j].from;
            const Number slant = cross(one, other);
            if (slant == 0)
                continue;
            const Number along = cross(sides[j].from - sides[i].from, other) / slant;
            const Number x = sides[i].from.x + one.x * along;
            if (along > 0 && along < 1 && x > sides[j].from.x && x < sides[j].to.x)
                stops.push_back(x);
        }
    std::sort(stops.begin(), stops.end());
    const auto same = [](const Number& a, const Number& b) { return sign(b - a) == 0; };
    stops.erase(std::unique(stops.begin(), stops.end(), same), stops.end());
    return stops;
}

} // namespace turncloth::detail

#endif
