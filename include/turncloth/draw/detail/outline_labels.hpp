// Where words and the grain's arrow of an outline stand on its page.
//
//   longest_chord(corners, line)             the longest stretch of a line, or of one beside it, in a piece
//   number_placer(page, by, seam, room)      finds words room beside the edge that they belong to, or a leader to it
//
//   const auto word = place.beside({{from, to}, outward, allowance}, "1");     // empty where there is no room
#ifndef TURNCLOTH_DRAW_DETAIL_OUTLINE_LABELS_HPP
#define TURNCLOTH_DRAW_DETAIL_OUTLINE_LABELS_HPP

#include <turncloth/page/drawing.hpp>
#include <turncloth/panel/outline.hpp>

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <limits>
#include <numbers>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace turncloth::detail {

/// A stretch of the line through `from` in the direction `way`, of length 1, that lies within the piece.
inline std::optional<page_segment> chord(const polygon<millimetre, double>& corners, const page_point& from,
                                         const page_point& way) {
    const page_segment line{from, moved(from, way, 1)};
    std::vector<double> stops;
    for (std::size_t i = 0; i < corners.size(); ++i) {
        const arrow<double> a = bare(corners[i]), b = bare(corners[(i + 1) % corners.size()]);
        const double one = side_of(line, {a.x, a.y}), other = side_of(line, {b.x, b.y});
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
    return best > 0 ? std::optional(page_segment{moved(from, way, best_from), moved(from, way, best_from + best)})
                    : std::nullopt;
}

/// On the line itself where it meets the piece, else on the parallel to it that has most room. A piece too thin to hold
/// any has its first corner.
inline page_segment longest_chord(const std::vector<page_point>& piece, const page_segment& line) {
    polygon<millimetre, double> corners;
    for (const page_point& p : piece)
        corners.push_back(drafted_point<millimetre>(p.x, p.y));
    const double size = distance(line.from, line.to);
    const page_point way{(line.to.x - line.from.x) / size, (line.to.y - line.from.y) / size}, across{-way.y, way.x};
    // The spot of the line beside the first corner: the points that it leads through may be far off.
    const page_point from =
        moved(line.from, way, (piece[0].x - line.from.x) * way.x + (piece[0].y - line.from.y) * way.y);
    if (const auto on_it = chord(corners, from, way))
        return *on_it;
    const auto off = [&](const page_point& p) { return (p.x - from.x) * across.x + (p.y - from.y) * across.y; };
    const auto nearer = [&](const page_point& a, const page_point& b) { return off(a) < off(b); };
    const auto [first, last] = std::minmax_element(piece.begin(), piece.end(), nearer);
    page_segment best{piece[0], piece[0]};
    double longest = 0;
    constexpr int parallels = 32;
    for (int k = 1; k < parallels; ++k) {
        const auto c =
            chord(corners, moved(from, across, off(*first) + (off(*last) - off(*first)) * k / parallels), way);
        const double length = c ? distance(c->from, c->to) : 0;
        if (length > longest + drafting_tolerance) {
            longest = length;
            best = *c;
        }
    }
    return best;
}

/// An edge of the seam line on paper, the way out of the piece, and what of the cloth outside it is the piece's.
struct edge_on_page {
    page_segment seam;
    page_point outward;
    double allowance;
};

struct placed_words {
    std::string words;
    page_area where;
    std::optional<page_segment> leader{};
};

/// Words get room where no line and no other word is, first come first served.
class number_placer {
public:
    /// `seam` is on the page too.
    number_placer(const page& p, const lettering& by, std::vector<page_segment> seam, const page_area& room)
        : free_(p, by), by_(by), seam_(std::move(seam)), room_(room) {}

    /// Inside the edge or outside its cut line, with nothing between and no other edge as near.
    std::optional<placed_words> beside(const edge_on_page& e, const std::string& words) const {
        const page_area size = size_of(words);
        const double reach =
            std::abs(e.outward.x) * size.width / 2 + std::abs(e.outward.y) * size.height / 2 + clearance;
        const page_point way{e.seam.to.x - e.seam.from.x, e.seam.to.y - e.seam.from.y};
        for (const bool inside : {true, false})
            for (const double part : {0.5, 0.35, 0.65, 0.2, 0.8}) {
                const page_point foot = moved(e.seam.from, way, part),
                                 middle = moved(foot, e.outward, inside ? -reach : e.allowance + reach);
                const page_area where = centred(middle, size.width, size.height);
                const page_segment between{moved(foot, e.outward, inside ? -just : just), middle};
                const std::size_t allowed = inside ? 0 : 1; // its own cut line
                if (is_free(where) && free_.lines_crossed(between) <= allowed && is_plain(where, e))
                    return placed_words{words, where};
            }
        return std::nullopt;
    }

    /// Further off, with a leader that runs through no word and crosses as few lines as may be.
    std::optional<placed_words> led(const edge_on_page& e, const std::string& words) const {
        constexpr int ways = 16;
        const page_area size = size_of(words);
        const page_point foot = middle_of(e.seam);
        std::optional<placed_words> best;
        double least = std::numeric_limits<double>::infinity();
        const auto half_over = [](double side, double way) {
            return std::abs(way) < 1e-9 ? 1e9 : side / 2 / std::abs(way);
        };
        for (const double far : {5.0, 7.0, 9.0, 12.0, 16.0, 21.0, 27.0, 35.0})
            for (int k = 0; k < ways; ++k) {
                const double angle = 2 * std::numbers::pi * k / ways;
                const page_point way{std::cos(angle), std::sin(angle)}, middle = moved(foot, way, far);
                const page_area where = centred(middle, size.width, size.height);
                const double to_side = std::min(half_over(size.width, way.x), half_over(size.height, way.y)) + 0.2;
                const page_segment leader{foot, moved(middle, way, -to_side)};
                if (far - to_side < 1 || !is_free(where) || runs_through_words(leader))
                    continue;
                const double cost =
                    far + 12 * static_cast<double>(free_.lines_crossed({moved(foot, way, just), leader.to}));
                if (cost < least) {
                    least = cost;
                    best = placed_words{words, where, leader};
                }
            }
        return best;
    }

    void take(const placed_words& p) {
        free_.take(p.where);
        if (p.leader)
            free_.take(*p.leader);
    }
    void give_back(const placed_words& p) { free_.give_back(p.where); }

private:
    static constexpr double clearance = 0.5, just = 0.02;

    page_area size_of(const std::string& words) const {
        return {0, 0, by_.width(words, body_size) + 1.2, body_size + 0.8};
    }
    bool is_free(const page_area& a) const { return within(a, room_) && free_.is_free(a); }
    /// Every other edge of the seam line is clearly further from the words than their own.
    bool is_plain(const page_area& a, const edge_on_page& own) const {
        const double near = distance(a, own.seam);
        return std::none_of(seam_.begin(), seam_.end(), [&](const page_segment& s) {
            const bool is_own = s.from.x == own.seam.from.x && s.from.y == own.seam.from.y;
            return !is_own && distance(a, s) < 1.3 * near + 0.5;
        });
    }
    bool runs_through_words(const page_segment& s) const {
        return std::any_of(free_.taken().begin(), free_.taken().end(), [&](const page_area& a) { return meets(s, a); });
    }

    free_room free_;
    const lettering& by_;
    std::vector<page_segment> seam_;
    page_area room_;
};

} // namespace turncloth::detail

#endif
