// Where everything goes on the page of an outline's drawing: the scale, the grain's arrow, and a place for each number.
//
//   detail::outline_page_of(plan, width, height)     the scale, and a box for each part of the page
//   detail::longest_chord(corners, from, to)         the longest stretch of a line, or of one beside it, in a piece
//   detail::number_placer(lines, seam, room)              finds words room beside the line that they belong to
//
//   detail::number_placer place(lines, seam, at.picture);
//   const auto word = place.beside({from, to, outward, allowance}, "1");     // empty where there is no room
//
// From the foot upward: small print, the foot (legend, scale, title), the list; the piece has the rest. An internal
// header of outline_drawing.hpp.
#ifndef TURNCLOTH_DRAW_DETAIL_OUTLINE_LAYOUT_HPP
#define TURNCLOTH_DRAW_DETAIL_OUTLINE_LAYOUT_HPP

#include <turncloth/draw/detail/outline_plan.hpp>
#include <turncloth/draw/detail/page_parts.hpp>

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <iterator>
#include <limits>
#include <numbers>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace turncloth::detail {

struct outline_page {
    double width = 0, height = 0, scale = 1;
    box picture{}, piece{}, foot{}, print{};
    page_list list;
    std::vector<std::string> warnings, print_lines;

    page_point at(const page_point& cloth) const { return {piece.x + cloth.x / scale, piece.y + cloth.y / scale}; }
};

inline constexpr double round_piece = 10;              ///< for numbers outside the piece, on each side, in mm
inline constexpr double note_height = line_height + 1; ///< for a note below it

inline outline_page outline_page_of(const outline_plan& p, double width, double height) {
    outline_page made;
    made.width = width;
    made.height = height;
    box rest = inside_margins(width, height);
    made.print_lines = print_lines_of(p.small_print, rest.width);
    made.print = lowest(rest, print_height(made.print_lines));
    made.foot = lowest(rest, foot_height);
    made.list = list_at_foot(rest, p.list, height / 3);
    for (const std::string& warning : p.warnings)
        for (std::string& line : wrapped(warning, body * 1.15, rest.width, 3))
            made.warnings.push_back(std::move(line));
    const double above = static_cast<double>(made.warnings.size()) * line_height;
    made.picture = {rest.x, rest.y + above, rest.width, rest.height - above - note_height};
    const double wide = made.picture.width - 2 * round_piece, high = made.picture.height - 2 * round_piece;
    made.scale = first_in_series<double>(
        {1, 2, 4, 5, 8}, [&](double scale) { return p.width <= wide * scale && p.height <= high * scale; });
    made.piece = {made.picture.x + (made.picture.width - p.width / made.scale) / 2,
                  made.picture.y + (made.picture.height - p.height / made.scale) / 2, p.width / made.scale,
                  p.height / made.scale};
    return made;
}

/// What fewest entries are left out of the list for, then the larger scale, then upright.
inline outline_page outline_page_on(const outline_plan& p, paper on) {
    const auto [narrow, wide] = sides_of(on);
    outline_page upright = outline_page_of(p, narrow, wide), sideways = outline_page_of(p, wide, narrow);
    const auto rank = [](const outline_page& at) { return std::pair(at.list.left_out, at.scale); };
    return rank(sideways) < rank(upright) ? sideways : upright;
}

constexpr page_point moved(const page_point& p, const page_point& way, double by) {
    return {p.x + way.x * by, p.y + way.y * by};
}
constexpr double side_of_stroke(const plan_stroke& s, const page_point& p) {
    return (s.to.x - s.from.x) * (p.y - s.from.y) - (s.to.y - s.from.y) * (p.x - s.from.x);
}
constexpr bool strokes_cross(const plan_stroke& a, const plan_stroke& b) {
    return side_of_stroke(a, b.from) * side_of_stroke(a, b.to) <= 0 &&
           side_of_stroke(b, a.from) * side_of_stroke(b, a.to) <= 0;
}
/// They are apart where one of the box's sides or the stroke itself parts them.
constexpr bool meets(const plan_stroke& s, const box& b) {
    if (std::max(s.from.x, s.to.x) <= b.x || std::min(s.from.x, s.to.x) >= b.right() ||
        std::max(s.from.y, s.to.y) <= b.y || std::min(s.from.y, s.to.y) >= b.bottom())
        return false;
    const double sides[] = {side_of_stroke(s, {b.x, b.y}), side_of_stroke(s, {b.right(), b.y}),
                            side_of_stroke(s, {b.x, b.bottom()}), side_of_stroke(s, {b.right(), b.bottom()})};
    const auto [low, high] = std::minmax_element(std::begin(sides), std::end(sides));
    return *low <= 0 && *high >= 0;
}

inline double distance_between(const page_point& p, const plan_stroke& s) {
    const double x = s.to.x - s.from.x, y = s.to.y - s.from.y;
    const double along = std::clamp(((p.x - s.from.x) * x + (p.y - s.from.y) * y) / (x * x + y * y), 0.0, 1.0);
    return std::hypot(s.from.x + along * x - p.x, s.from.y + along * y - p.y);
}
/// Of a box that the stroke does not meet: a corner of the one is nearest, or an end of the other.
inline double distance_between(const box& b, const plan_stroke& s) {
    double least = std::numeric_limits<double>::infinity();
    for (const page_point& p : {s.from, s.to})
        least =
            std::min(least, std::hypot(p.x - std::clamp(p.x, b.x, b.right()), p.y - std::clamp(p.y, b.y, b.bottom())));
    for (const page_point& p : {page_point{b.x, b.y}, page_point{b.right(), b.y}, page_point{b.x, b.bottom()},
                                page_point{b.right(), b.bottom()}})
        least = std::min(least, distance_between(p, s));
    return least;
}

/// A stretch of the line through `from` in the direction `way`, of length 1, that lies within the piece.
inline std::optional<plan_stroke> chord(const polygon<millimetre, double>& corners, const page_point& from,
                                        const page_point& way) {
    const plan_stroke line{from, moved(from, way, 1)};
    std::vector<double> stops;
    for (std::size_t i = 0; i < corners.size(); ++i) {
        const arrow<double> a = bare(corners[i]), b = bare(corners[(i + 1) % corners.size()]);
        const double one = side_of_stroke(line, {a.x, a.y}), other = side_of_stroke(line, {b.x, b.y});
        if (one == other || one * other > 0)
            continue;
        const arrow<double> meets_at = a + (b - a) * (one / (one - other));
        stops.push_back((meets_at.x - from.x) * way.x + (meets_at.y - from.y) * way.y);
    }
    std::sort(stops.begin(), stops.end());
    double best = 0, best_from = 0, begin = 0;
    bool within = false;
    for (std::size_t i = 1; i < stops.size(); ++i) {
        if (stops[i] - stops[i - 1] <= drafting_tolerance)
            continue;
        const page_point middle = moved(from, way, (stops[i - 1] + stops[i]) / 2);
        const bool inside = locate(corners, drafted_point<millimetre>(middle.x, middle.y)) == position::inside;
        if (inside && !within)
            begin = stops[i - 1];
        within = inside;
        if (inside && stops[i] - begin > best) {
            best = stops[i] - begin;
            best_from = begin;
        }
    }
    return best > 0 ? std::optional(plan_stroke{moved(from, way, best_from), moved(from, way, best_from + best)})
                    : std::nullopt;
}

/// On the line itself where it meets the piece, else on the parallel to it that has most room. A piece too thin to hold
/// any has its first corner.
inline plan_stroke longest_chord(const std::vector<page_point>& piece, const plan_stroke& line) {
    polygon<millimetre, double> corners;
    for (const page_point& p : piece)
        corners.push_back(drafted_point<millimetre>(p.x, p.y));
    const double size = std::hypot(line.to.x - line.from.x, line.to.y - line.from.y);
    const page_point way{(line.to.x - line.from.x) / size, (line.to.y - line.from.y) / size}, across{-way.y, way.x};
    // The spot of the line beside the first corner: the points that it leads through may be far off.
    const page_point from =
        moved(line.from, way, (piece[0].x - line.from.x) * way.x + (piece[0].y - line.from.y) * way.y);
    if (const auto on_it = chord(corners, from, way))
        return *on_it;
    const auto off = [&](const page_point& p) { return (p.x - from.x) * across.x + (p.y - from.y) * across.y; };
    const auto nearer = [&](const page_point& a, const page_point& b) { return off(a) < off(b); };
    const auto [first, last] = std::minmax_element(piece.begin(), piece.end(), nearer);
    plan_stroke best{piece[0], piece[0]};
    double longest = 0;
    constexpr int parallels = 32;
    for (int k = 1; k < parallels; ++k) {
        const auto c =
            chord(corners, moved(from, across, off(*first) + (off(*last) - off(*first)) * k / parallels), way);
        const double length = c ? std::hypot(c->to.x - c->from.x, c->to.y - c->from.y) : 0;
        if (length > longest + drafting_tolerance) {
            longest = length;
            best = *c;
        }
    }
    return best;
}

/// An edge of the seam line on paper, and what of the cloth outside it is the piece's.
struct edge_on_page {
    page_point from, to, outward;
    double allowance;
};

struct placed_words {
    std::string words;
    box where;
    std::optional<plan_stroke> leader = {};
};

/// Words get room where no line and no other word is, first come first served.
class number_placer {
public:
    /// `seam` is among the lines too.
    number_placer(std::vector<plan_stroke> lines, std::vector<plan_stroke> seam, const box& room)
        : lines_(std::move(lines)), seam_(std::move(seam)), room_(room) {}

    /// Inside the edge or outside its cut line, with nothing between and no other edge as near.
    std::optional<placed_words> beside(const edge_on_page& e, const std::string& words) const {
        const box size = size_of(words);
        const double reach =
            std::abs(e.outward.x) * size.width / 2 + std::abs(e.outward.y) * size.height / 2 + clearance;
        for (const bool inside : {true, false})
            for (const double part : {0.5, 0.35, 0.65, 0.2, 0.8}) {
                const page_point foot{e.from.x + (e.to.x - e.from.x) * part, e.from.y + (e.to.y - e.from.y) * part};
                const double off = inside ? -reach : e.allowance + reach, just_off = inside ? -just : just;
                const page_point middle = moved(foot, e.outward, off);
                const box where = centred(size, middle);
                const plan_stroke between{moved(foot, e.outward, just_off), middle};
                const std::size_t allowed = inside ? 0 : 1; // its own cut line
                if (is_free(where) && crossed(between) <= allowed && is_plain(where, e))
                    return placed_words{words, where};
            }
        return std::nullopt;
    }

    /// Further off, with a leader that runs through no word and crosses as few lines as may be.
    std::optional<placed_words> led(const edge_on_page& e, const std::string& words) const {
        constexpr int ways = 16;
        const box size = size_of(words);
        const page_point foot{(e.from.x + e.to.x) / 2, (e.from.y + e.to.y) / 2};
        std::optional<placed_words> best;
        double least = std::numeric_limits<double>::infinity();
        for (const double far : {5.0, 7.0, 9.0, 12.0, 16.0, 21.0, 27.0, 35.0})
            for (int k = 0; k < ways; ++k) {
                const double angle = 2 * std::numbers::pi * k / ways;
                const page_point way{std::cos(angle), std::sin(angle)}, middle = moved(foot, way, far);
                const box where = centred(size, middle);
                const double to_side = std::min(half_over(size.width, way.x), half_over(size.height, way.y)) + 0.2;
                const plan_stroke leader{foot, moved(middle, way, -to_side)};
                if (far - to_side < 1 || !is_free(where) || runs_through_words(leader))
                    continue;
                const double cost = far + 12 * static_cast<double>(crossed({moved(foot, way, just), leader.to}));
                if (cost < least) {
                    least = cost;
                    best = placed_words{words, where, leader};
                }
            }
        return best;
    }

    void take(const placed_words& p) {
        taken_.push_back(p.where);
        if (p.leader)
            lines_.push_back(*p.leader);
    }
    void give_back(const placed_words& p) {
        std::erase_if(taken_, [&](const box& b) { return b.x == p.where.x && b.y == p.where.y; });
    }

private:
    static constexpr double clearance = 0.5, just = 0.02;

    static box size_of(const std::string& words) { return {0, 0, text_width(words, body) + 1.2, body + 0.8}; }
    static box centred(const box& size, const page_point& at) {
        return {at.x - size.width / 2, at.y - size.height / 2, size.width, size.height};
    }
    static double half_over(double size, double way) { return std::abs(way) < 1e-9 ? 1e9 : size / 2 / std::abs(way); }

    bool is_free(const box& b) const {
        const auto apart = [&](const box& other) {
            return other.x >= b.right() || b.x >= other.right() || other.y >= b.bottom() || b.y >= other.bottom();
        };
        return b.x >= room_.x && b.y >= room_.y && b.right() <= room_.right() && b.bottom() <= room_.bottom() &&
               std::all_of(taken_.begin(), taken_.end(), apart) &&
               std::none_of(lines_.begin(), lines_.end(), [&](const plan_stroke& s) { return meets(s, b); });
    }
    std::size_t crossed(const plan_stroke& s) const {
        return static_cast<std::size_t>(
            std::count_if(lines_.begin(), lines_.end(), [&](const plan_stroke& l) { return strokes_cross(s, l); }));
    }
    /// Every other edge of the seam line is clearly further from the words than their own.
    bool is_plain(const box& b, const edge_on_page& own) const {
        const double near = distance_between(b, {own.from, own.to});
        return std::none_of(seam_.begin(), seam_.end(), [&](const plan_stroke& s) {
            const bool is_own = s.from.x == own.from.x && s.from.y == own.from.y;
            return !is_own && distance_between(b, s) < 1.3 * near + 0.5;
        });
    }
    bool runs_through_words(const plan_stroke& s) const {
        return std::any_of(taken_.begin(), taken_.end(), [&](const box& b) { return meets(s, b); });
    }

    std::vector<plan_stroke> lines_, seam_;
    box room_;
    std::vector<box> taken_;
};

} // namespace turncloth::detail

#endif
