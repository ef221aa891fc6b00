// A folded panel as one sees it from the back, where the turned cloth shows: its edges and its regions, in millimetres.
//
//   detail::view_of(folded)               the layers, nearest first; x to the right and y down from the finished corner
//   v.within(area)                        the same, cut down to a part of it
//   v.edges()                             seen_edges{visible, hidden}: each straight piece once
//   v.regions()                           where equally many layers lie: layers, area, and whether a spot is in it
//
//   for (const detail::folded_region& r : detail::view_of(fold_panel(napkin, all_corners(mitred<inch>()))).regions())
//       std::cout << r.layers << "\n";
//
// A piece of a layer's edge is visible where none of the layers nearer to the eye covers it. Between two neighbouring
// upright lines through corners and crossings of edges the layers' order does not change, so the piece falls into
// trapezoids that each have one number of layers; those that touch and have the same number are one region. Coordinates
// come from the folding and are rounded to doubles; what is narrower than `too_thin` is rounding, not cloth.
#ifndef TURNCLOTH_DRAW_DETAIL_FOLDED_VIEW_HPP
#define TURNCLOTH_DRAW_DETAIL_FOLDED_VIEW_HPP

#include <turncloth/draw/detail/straight_lines.hpp>
#include <turncloth/draw/detail/words.hpp>
#include <turncloth/panel/made_up.hpp>

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <span>
#include <utility>
#include <vector>

namespace turncloth::detail {

struct seen_edges {
    std::vector<page_segment> visible, hidden;
};

/// Between two upright lines, from `top` to `bottom` on each.
struct trapezoid {
    double left, right;
    double top_left, top_right, bottom_left, bottom_right;

    double height(double x) const { return between(bottom_left, bottom_right, x) - top(x); }
    double top(double x) const { return between(top_left, top_right, x); }
    double area() const { return (right - left) * (bottom_left - top_left + bottom_right - top_right) / 2; }
    bool holds(page_point p) const {
        return p.x >= left && p.x <= right && p.y >= top(p.x) && p.y <= top(p.x) + height(p.x);
    }
    /// Along one that begins where this ends, or right above it.
    bool touches(const trapezoid& t) const {
        const auto meet = [](double a, double b) { return std::abs(a - b) <= too_thin; };
        if (meet(left, t.left) && meet(right, t.right))
            return meet(bottom_left, t.top_left) && meet(bottom_right, t.top_right);
        return meet(right, t.left) &&
               std::min(bottom_right, t.bottom_left) - std::max(top_right, t.top_left) > too_thin;
    }

private:
    double between(double at_left, double at_right, double x) const {
        return at_left + (at_right - at_left) * (x - left) / (right - left);
    }
};

struct folded_region {
    std::size_t layers = 0;
    std::vector<trapezoid> parts;

    double area() const {
        double sum = 0;
        for (const trapezoid& t : parts)
            sum += t.area();
        return sum;
    }
    bool holds(page_point p) const {
        return std::any_of(parts.begin(), parts.end(), [&](const trapezoid& t) { return t.holds(p); });
    }
    page_area around() const {
        double left = parts[0].left, right = left, top = parts[0].top_left, bottom = top;
        for (const trapezoid& t : parts) {
            left = std::min(left, t.left);
            right = std::max(right, t.right);
            top = std::min({top, t.top_left, t.top_right});
            bottom = std::max({bottom, t.bottom_left, t.bottom_right});
        }
        return {left, top, right - left, bottom - top};
    }
};

/// Layers as seen, nearest first; each has its corners one way round.
class folded_view {
public:
    using point_type = point<millimetre, double>;
    using layer_type = polygon<millimetre, double>;

    folded_view(double width, double height, std::vector<layer_type> layers)
        : width_(width), height_(height), layers_(std::move(layers)) {}

    /// Of the finished outline.
    double width() const { return width_; }
    double height() const { return height_; }

    std::size_t layer_count() const { return layers_.size(); }
    folded_layer<millimetre, double> layer(std::size_t i) const { return {layers_[i], false}; }

    /// What lies left of a line is trimmed off, so the area's sides are followed with it at their right.
    folded_view within(const page_area& b) const {
        std::vector<layer_type> kept;
        if (b.width <= too_thin || b.height <= too_thin)
            return {width_, height_, kept};
        const auto at = [](page_point p) { return drafted_point<millimetre>(p.x, p.y); };
        const auto c = b.corners();
        for (const layer_type& l : layers_) {
            folding<millimetre, double> part(l);
            for (std::size_t i = 0; i < c.size(); ++i)
                part.trim({at(c[(i + 1) % c.size()]), at(c[i])});
            if (part.area().value() > too_thin)
                kept.emplace_back(part.layer(0).corners.begin(), part.layer(0).corners.end());
        }
        return {width_, height_, std::move(kept)};
    }

    seen_edges edges() const {
        straight_lines visible, hidden;
        for (std::size_t i = 0; i < layers_.size(); ++i)
            for (std::size_t c = 0; c < layers_[i].size(); ++c) {
                const auto from = bare(layers_[i][c]), to = bare(layers_[i][c + 1 == layers_[i].size() ? 0 : c + 1]);
                add_edge(visible, hidden, from, to - from, i);
            }
        return {visible.without({}), hidden.without(visible)};
    }

    /// Trapezoids that touch and have the same number of layers are one region.
    std::vector<folded_region> regions() const {
        std::vector<folded_region> all;
        const std::vector<double> stops = layers_.empty() ? std::vector<double>() : upright_stops(sides_of(*this));
        for (std::size_t i = 0; i + 1 < stops.size(); ++i) {
            if (stops[i + 1] - stops[i] <= too_thin)
                continue;
            for (folded_region& made : strip(stops[i], stops[i + 1])) {
                std::erase_if(all, [&](const folded_region& r) {
                    const bool joins =
                        r.layers == made.layers &&
                        std::any_of(r.parts.begin(), r.parts.end(),
                                    [t = made.parts[0]](const trapezoid& part) { return part.touches(t); });
                    if (joins)
                        made.parts.insert(made.parts.end(), r.parts.begin(), r.parts.end());
                    return joins;
                });
                all.push_back(std::move(made));
            }
        }
        return all;
    }

private:
    /// Of layer i.
    void add_edge(straight_lines& visible, straight_lines& hidden, const arrow<double>& from, const arrow<double>& way,
                  std::size_t i) const {
        straight_lines::spans covered;
        for (std::size_t nearer = 0; nearer < i; ++nearer) {
            const auto [start, end] = span_within(std::span<const point_type>(layers_[nearer]), from, way);
            if (start < end)
                covered.emplace_back(start, end);
        }
        covered = straight_lines::joined_up(covered);
        const auto spot = [&](double t) { return page_point{from.x + way.x * t, from.y + way.y * t}; };
        for (const auto& [start, end] : covered)
            hidden.add({spot(start), spot(end)});
        for (const auto& [start, end] : straight_lines::left_of({{0.0, 1.0}}, covered))
            visible.add({spot(start), spot(end)});
    }

    /// The trapezoids between two neighbouring stops, from the top down. Each layer's two sides are straight there.
    std::vector<folded_region> strip(double left, double right) const {
        struct side {
            double at_left, at_right;
            int layers; ///< that begin here, or end
            double middle() const { return (at_left + at_right) / 2; }
        };
        std::vector<side> sides;
        const double first = left + (right - left) / 4, last = right - (right - left) / 4;
        for (const layer_type& l : layers_) {
            const auto [top, bottom] = heights(l, first);
            const auto [top_on, bottom_on] = heights(l, last);
            if (bottom - top <= 0 || bottom_on - top_on <= 0)
                continue;
            const auto from = [&](double a, double b) { return a - (b - a) / 2; };
            sides.push_back({from(top, top_on), from(top_on, top), 1});
            sides.push_back({from(bottom, bottom_on), from(bottom_on, bottom), -1});
        }
        std::sort(sides.begin(), sides.end(), [](const side& a, const side& b) { return a.middle() < b.middle(); });
        std::vector<folded_region> parts;
        int layers = 0;
        for (std::size_t i = 0; i + 1 < sides.size(); ++i) {
            layers += sides[i].layers;
            const side &a = sides[i], &b = sides[i + 1];
            if (layers > 0 && b.middle() - a.middle() > too_thin)
                parts.push_back(
                    {static_cast<std::size_t>(layers), {{left, right, a.at_left, a.at_right, b.at_left, b.at_right}}});
        }
        return parts;
    }

    /// Where an upright line enters and leaves a convex layer; the same for one that it misses.
    std::pair<double, double> heights(const layer_type& l, double x) const {
        const auto [top, bottom] = span_within(std::span<const point_type>(l), {x, -height_}, {0, 3 * height_});
        return {(3 * top - 1) * height_, (3 * bottom - 1) * height_};
    }

    double width_, height_;
    std::vector<layer_type> layers_;
};

/// From the back left and right change places; all turned cloth lies behind the piece, so the lowest layer is nearest.
template <length_unit Unit, coordinate Number>
folded_view view_of(const folded_panel<Unit, Number>& folded) {
    const auto outline = folded.outline();
    const double right = in_mm(outline[2].x), top = in_mm(outline[2].y);
    std::vector<folded_view::layer_type> layers;
    for (std::size_t i = 0; i < folded.stack().layer_count(); ++i) {
        folded_view::layer_type corners;
        for (const auto& p : folded.stack().layer(i).corners)
            corners.push_back(drafted_point<millimetre>(right - in_mm(p.x), top - in_mm(p.y)));
        layers.push_back(std::move(corners));
    }
    return {right - in_mm(outline[0].x), top - in_mm(outline[0].y), std::move(layers)};
}

} // namespace turncloth::detail

#endif
