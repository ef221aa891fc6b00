// Points, lines and polygons on a flat piece of cloth.
//
//   point<U>  line<U>  polygon<U>        exact, in lengths; <U, double> for what is drafted or leaves the fractions
//   point_of<U>(x, y)                    exact;  drafted_point<U>(x, y)  of doubles;  drafted(p) an exact one made so
//   side_of(line, p)                     left, on or right of one who walks along the line
//   reflected(p, line)                   exact for every line through two exact points
//   signed_area_of  area_of  perimeter_of  is_convex  locate(points, p)      of the corners of a polygon, in order
//
//   const polygon<inch> pocket = {point_of<inch>(0, 0), point_of<inch>(9, 0), point_of<inch>(9, 4)};
//   area_of(pocket) == 18_in * 1_in;   locate(pocket, point_of<inch>(8, 1)) == containment::inside;
//
// x grows to the right and y upward. Exact points are compared exactly; overflow_error says where 64 bits do not hold a
// product. Drafted points count as on a line that passes within `drafting_tolerance` of them; what asks where one lies
// throws range_error for a coordinate beyond `largest_coordinate` or that is not a number. Not in turncloth.hpp.
#ifndef TURNCLOTH_PANEL_POLYGON_HPP
#define TURNCLOTH_PANEL_POLYGON_HPP

#include <turncloth/measure/require.hpp>

#include <boost/units/get_dimension.hpp>

#include <array>
#include <cmath>
#include <concepts>
#include <cstddef>
#include <cstdio>
#include <ranges>
#include <string>
#include <string_view>
#include <type_traits>
#include <vector>

namespace turncloth {

/// What coordinates are made of: exact fractions, or doubles.
template <class Number>
concept coordinate = std::same_as<Number, fraction> || std::same_as<Number, double>;

/// Of drafted points, in whatever unit they have. Doubles resolve 1e-12 at 10,000 units, so this leaves room for the
/// rounding of a hundred operations, and it is far below what shears can follow.
inline constexpr double drafting_tolerance = 1e-9;

/// Of a drafted point, in whatever unit it has: 1 km in millimetres. Out there doubles still resolve 2e-10, so that the
/// tolerance tells one side of a line from the other, and no product of a few coordinates leaves what doubles hold.
inline constexpr double largest_coordinate = 1e6;

/// A length in doubles: quantity<U, double>.
template <length_unit Unit>
using drafted_length = boost::units::quantity<Unit, double>;

template <length_unit Unit>
constexpr drafted_length<Unit> drafted_length_of(double number) {
    return drafted_length<Unit>::from_value(number);
}

/// The square of a length, for either number.
template <length_unit Unit, coordinate Number = fraction>
using area_in = boost::units::quantity<typename area<Unit>::unit_type, Number>;

template <length_unit Unit, coordinate Number = fraction>
struct point {
    using unit = Unit;
    using number = Number;

    boost::units::quantity<Unit, Number> x, y;

    friend constexpr bool operator==(const point&, const point&) = default;
};

template <length_unit Unit>
constexpr point<Unit> point_of(fraction x, fraction y) {
    return {length_of<Unit>(x), length_of<Unit>(y)};
}

template <length_unit Unit>
constexpr point<Unit, double> drafted_point(double x, double y) {
    return {drafted_length_of<Unit>(x), drafted_length_of<Unit>(y)};
}

template <length_unit Unit>
constexpr point<Unit, double> drafted(const point<Unit>& p) {
    return drafted_point<Unit>(to_double(p.x.value()), to_double(p.y.value()));
}

/// The straight line that leads from one point through another, and on both ways.
template <length_unit Unit, coordinate Number = fraction>
struct line {
    point<Unit, Number> from, to;

    friend constexpr bool operator==(const line&, const line&) = default;
};

template <length_unit Unit>
constexpr line<Unit, double> drafted(const line<Unit>& l) {
    return {drafted(l.from), drafted(l.to)};
}

/// The corners in order, either way round; the last is joined to the first.
template <length_unit Unit, coordinate Number = fraction>
using polygon = std::vector<point<Unit, Number>>;

template <length_unit Unit>
polygon<Unit, double> drafted(const polygon<Unit>& exact) {
    polygon<Unit, double> all;
    all.reserve(exact.size());
    for (const point<Unit>& p : exact)
        all.push_back(drafted(p));
    return all;
}

/// Any array, vector or span of points.
template <class Points>
concept point_range = std::ranges::contiguous_range<Points> && requires(std::ranges::range_value_t<Points> p) {
    []<class Unit, class Number>(const point<Unit, Number>&) {}(p);
};

/// Where a point lies beside a line.
enum class line_side { right, on, left };

/// Where a point lies in a polygon.
enum class containment { outside, on_edge, inside };

namespace detail {

/// A point or an arrow without its unit, for the insides of calculations.
template <coordinate Number>
struct arrow {
    Number x, y;

    friend constexpr arrow operator+(const arrow& a, const arrow& b) { return {a.x + b.x, a.y + b.y}; }
    friend constexpr arrow operator-(const arrow& a, const arrow& b) { return {a.x - b.x, a.y - b.y}; }
    friend constexpr arrow operator*(const arrow& a, const Number& times) { return {a.x * times, a.y * times}; }
};

template <coordinate Number>
constexpr Number cross(const arrow<Number>& a, const arrow<Number>& b) {
    return a.x * b.y - a.y * b.x;
}

template <coordinate Number>
constexpr Number dot(const arrow<Number>& a, const arrow<Number>& b) {
    return a.x * b.x + a.y * b.y;
}

template <length_unit Unit, coordinate Number>
constexpr arrow<Number> bare(const point<Unit, Number>& p) {
    return {p.x.value(), p.y.value()};
}

template <length_unit Unit, coordinate Number>
constexpr point<Unit, Number> in_unit(const arrow<Number>& a) {
    return {boost::units::quantity<Unit, Number>::from_value(a.x),
            boost::units::quantity<Unit, Number>::from_value(a.y)};
}

template <class Error>
[[noreturn, gnu::cold, gnu::noinline]] void refuse_coordinate(const arrow<double>& p, std::string_view what) {
    std::array<char, 80> where{};
    std::snprintf(where.data(), where.size(), "(%g, %g)", p.x, p.y);
    refuse<Error>(sentence({what, " must lie within 1000000 of the origin: it was ", where.data()}),
                  refusal{.kind = fault::too_large,
                          .what = std::string(what),
                          .given = amount_of(is_within(p.x, largest_coordinate) ? p.y : p.x),
                          .most = amount_of(largest_coordinate)});
}

/// `what` is the point, "a corner of an outline". Exact points are always numbers.
template <class Error>
constexpr void require_drafted(const arrow<double>& p, std::string_view what) {
    if (!is_within(p.x, largest_coordinate) || !is_within(p.y, largest_coordinate))
        refuse_coordinate<Error>(p, what);
}
template <class Error>
constexpr void require_drafted(const arrow<fraction>&, std::string_view) noexcept {}

inline double length_of_arrow(const arrow<double>& a) { return std::hypot(a.x, a.y); }
inline double length_of_arrow(const arrow<fraction>& a) { return std::hypot(to_double(a.x), to_double(a.y)); }

constexpr int sign(fraction x) { return (numerator(x) > 0) - (numerator(x) < 0); }
constexpr int sign(double distance) { return (distance > drafting_tolerance) - (distance < -drafting_tolerance); }

/// 1, 0 or -1 as a is above, at or below b.
constexpr int compare(fraction a, fraction b) { return a == b ? 0 : a > b ? 1 : -1; }
constexpr int compare(double a, double b) { return sign(a - b); }

template <coordinate Number>
constexpr bool same(const arrow<Number>& a, const arrow<Number>& b) {
    return compare(a.x, b.x) == 0 && compare(a.y, b.y) == 0;
}

/// 1 where `p` is left of the line from `a` to `b`, -1 where it is right of it, 0 where it is on it.
constexpr int turn(const arrow<fraction>& a, const arrow<fraction>& b, const arrow<fraction>& p) {
    // Compared, not subtracted: the comparison of two fractions cannot overflow.
    const fraction up = (b.x - a.x) * (p.y - a.y), down = (b.y - a.y) * (p.x - a.x);
    return compare(up, down);
}
inline int turn(const arrow<double>& a, const arrow<double>& b, const arrow<double>& p) {
    const double base = length_of_arrow(b - a);
    return base == 0 ? 0 : sign(cross(b - a, p - a) / base);
}

template <class Points>
using unit_of = typename std::ranges::range_value_t<Points>::unit;
template <class Points>
using number_of = typename std::ranges::range_value_t<Points>::number;

/// Whether p lies on the straight piece from a to b, ends included.
template <coordinate Number>
constexpr bool on_segment(const arrow<Number>& a, const arrow<Number>& b, const arrow<Number>& p) {
    return turn(a, b, p) == 0 && sign(dot(p - a, p - b)) <= 0;
}

} // namespace detail

template <length_unit Unit, coordinate Number>
constexpr line_side side_of(const line<Unit, Number>& l, const point<Unit, Number>& p) {
    for (const point<Unit, Number>& each : {l.from, l.to, p})
        detail::require_drafted<range_error>(detail::bare(each), "a point beside a line");
    return static_cast<line_side>(detail::turn(detail::bare(l.from), detail::bare(l.to), detail::bare(p)) + 1);
}

/// The mirror image. With d the line's direction and n across it, p - 2 n ((p - from) . n) / (n . n): only sums,
/// products and quotients, so an exact line of any slope keeps exact points exact.
template <length_unit Unit, coordinate Number>
constexpr point<Unit, Number> reflected(const point<Unit, Number>& p, const line<Unit, Number>& l) {
    for (const point<Unit, Number>& each : {l.from, l.to, p})
        detail::require_drafted<range_error>(detail::bare(each), "a point to reflect, or of a mirror's line,");
    if (l.from == l.to)
        detail::refuse<range_error>({"a mirror's line needs two different points"},
                                    {.kind = fault::unsuitable, .what = "a mirror's line"});
    const detail::arrow<Number> from = detail::bare(l.from), d = detail::bare(l.to) - from, n = {-d.y, d.x};
    return detail::in_unit<Unit>(detail::bare(p) -
                                 n * (2 * (detail::dot(detail::bare(p) - from, n) / detail::dot(n, n))));
}

/// Above zero for corners that run counter-clockwise.
template <point_range Points>
constexpr auto signed_area_of(const Points& corners) {
    using number = detail::number_of<Points>;
    number twice = 0;
    const std::size_t n = std::ranges::size(corners);
    // Measured from the first corner, which keeps the products small.
    for (std::size_t i = 2; i < n; ++i) {
        const auto first = detail::bare(corners[0]);
        twice += detail::cross(detail::bare(corners[i - 1]) - first, detail::bare(corners[i]) - first);
    }
    return area_in<detail::unit_of<Points>, number>::from_value(twice / number(2));
}

template <point_range Points>
constexpr auto area_of(const Points& corners) {
    const auto signed_area = signed_area_of(corners);
    return signed_area.value() < 0 ? -signed_area : signed_area;
}

/// In doubles, as slanting sides have square roots for lengths.
template <point_range Points>
auto perimeter_of(const Points& corners) {
    double total = 0;
    const std::size_t n = std::ranges::size(corners);
    for (std::size_t i = 0; i < n; ++i)
        total += detail::length_of_arrow(detail::bare(corners[(i + 1) % n]) - detail::bare(corners[i]));
    return drafted_length_of<detail::unit_of<Points>>(total);
}

/// Whether the corners turn one way all round, and once. Corners in a straight line are allowed.
template <point_range Points>
constexpr bool is_convex(const Points& corners) {
    const std::size_t n = std::ranges::size(corners);
    int way = 0, reversals = 0, last = 0;
    for (std::size_t i = 0; i < n; ++i) {
        const auto a = detail::bare(corners[i]), b = detail::bare(corners[(i + 1) % n]),
                   c = detail::bare(corners[(i + 2) % n]);
        const int turned = detail::turn(a, b, c);
        if (turned != 0 && way != 0 && turned != way)
            return false;
        way = turned != 0 ? turned : way;
        // A convex round goes rightward once and leftward once; a star turns one way too, but more often.
        const int rightward = detail::sign(b.x - a.x);
        if (rightward != 0 && last != 0 && rightward != last)
            ++reversals;
        last = rightward != 0 ? rightward : last;
    }
    return n >= 3 && way != 0 && reversals <= 2;
}

/// For any polygon that does not cross itself, in time that grows with its corners.
template <point_range Points>
constexpr containment locate(const Points& corners, const std::ranges::range_value_t<Points>& p) {
    const std::size_t n = std::ranges::size(corners);
    const auto spot = detail::bare(p);
    detail::require_drafted<range_error>(spot, "a point beside a polygon");
    for (std::size_t i = 0; i < n; ++i)
        detail::require_drafted<range_error>(detail::bare(corners[i]), "a corner of a polygon");
    bool inside = false;
    for (std::size_t i = 0; i < n; ++i) {
        const auto a = detail::bare(corners[i]), b = detail::bare(corners[(i + 1) % n]);
        if (detail::on_segment(a, b, spot))
            return containment::on_edge;
        // A ray to the right crosses edges that have one end at or below it and one end above it.
        if ((a.y <= spot.y) != (b.y <= spot.y) && (detail::turn(a, b, spot) > 0) == (b.y > a.y))
            inside = !inside;
    }
    return inside ? containment::inside : containment::outside;
}

} // namespace turncloth

#endif
