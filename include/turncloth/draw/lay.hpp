// A lay of cloth drawn to scale on a page to be printed: an SVG 1.1 document.
//
//   drawing_of(cloth)                    A4, inches and centimetres
//   drawing_of(cloth, ruler, options)    the units and graduations of a ruler (measure/write.hpp)
//   lay_drawing_options<U>{project, on, keep_across, keep_along}   the title, the paper, what is worth keeping
//
//   const auto canvas = cloth_for<inch>(s, "canvas", {.width = 54_in, .selvedge = "1/2"_in}, rules);
//   save("canvas.svg", drawing_of(canvas, {}, {.project = s.name}));
//
// The cloth lies with its end first cut at the top and its length down the page, at the largest scale of a plain series
// that it has room at. Every kind of piece has a letter, which the list below explains; where there is room its name
// and size stand on the piece too. Cuts from edge to edge are numbered in the order in which they are made.
//
// Included by itself, as cloth.hpp is.
#ifndef TURNCLOTH_DRAW_LAY_HPP
#define TURNCLOTH_DRAW_LAY_HPP

#include <turncloth/draw/detail/lay_layout.hpp>
#include <turncloth/draw/piece.hpp>

#include <algorithm>
#include <cstddef>
#include <string>
#include <type_traits>
#include <utility>
#include <vector>

namespace turncloth {

namespace detail {

inline constexpr pen selvedge_pen = {"", 0.2, {5, 1.5}};

class lay_drawer {
public:
    lay_drawer(const lay_plan& p, const lay_page& at)
        : plan_(p), at_(at), svg_(at.width, at.height, title(p), description(p)) {}

    std::string draw() {
        draw_cloth();
        draw_dimensions();
        draw_cuts();
        draw_kept();
        name_pieces();
        draw_list(svg_, at_.pieces);
        draw_list(svg_, at_.cuts);
        draw_foot(svg_, foot());
        draw_print(svg_, at_.print, at_.print_lines);
        return svg_.done();
    }

private:
    static std::string title(const lay_plan& p) {
        return p.project.empty() ? "Lay of " + p.material : joined({p.project, ": lay of ", p.material});
    }
    static std::string description(const lay_plan& p) {
        std::string all;
        for (const auto* words : {&p.facts, &p.list})
            for (const std::string& w : *words)
                all.append(all.empty() ? "" : " ").append(plain(w)).append(".");
        return all;
    }

    double x(double cloth) const { return at_.cloth.x + cloth / at_.scale; }
    double y(double cloth) const { return at_.cloth.y + cloth / at_.scale; }
    box on_page(const box& b) const { return {x(b.x), y(b.y), b.width / at_.scale, b.height / at_.scale}; }

    void draw_cloth() {
        svg_.open("selvedge", selvedge_pen);
        for (const double edge : {plan_.usable_from, plan_.usable_to})
            if (edge > 0 && edge < plan_.width)
                svg_.line({x(edge), y(0)}, {x(edge), y(plan_.length)});
        svg_.close();
        svg_.open("piece", laid_pen);
        for (const lay_box& p : plan_.places)
            svg_.rectangle(on_page(p.where));
        svg_.close();
        svg_.open("cloth", cloth_pen);
        svg_.rectangle(at_.cloth);
        svg_.close();
    }

    /// The width, and under it what is usable, above the cloth; the length at its left.
    void draw_dimensions() {
        svg_.open("dimension", thin_pen);
        level(0, plan_.width, 2);
        level(plan_.usable_from, plan_.usable_to, 1);
        const double left = at_.cloth.x - dimension_row / 2;
        svg_.line({left, y(0)}, {left, y(plan_.length)});
        for (const double end : {y(0), y(plan_.length)}) {
            svg_.line({at_.cloth.x, end}, {left - 1, end});
            tick(svg_, {left, end});
        }
        svg_.close();
        name_level(plan_.width_words, 0, plan_.width, 2);
        name_level(plan_.usable_words, plan_.usable_from, plan_.usable_to, 1);
        if (stands_over(plan_.length_words, at_.cloth.height))
            svg_.text({left - 1, y(plan_.length / 2)}, plan_.length_words, body, anchor::middle, true);
        else
            svg_.text({at_.cloth.x, at_.cloth.bottom() + line_height + 0.5}, plan_.length_words, body);
    }
    double row_above(int row) const { return at_.cloth.y - row * dimension_row + 2; }
    void level(double from, double to, int row) {
        svg_.line({x(from), row_above(row)}, {x(to), row_above(row)});
        for (const double end : {x(from), x(to)}) {
            svg_.line({end, at_.cloth.y}, {end, row_above(row) - 1});
            tick(svg_, {end, row_above(row)});
        }
    }
    void name_level(const std::string& words, double from, double to, int row) {
        if (stands_over(words, (to - from) / at_.scale))
            svg_.text({x((from + to) / 2), row_above(row) - 1}, words, body, anchor::middle);
        else
            svg_.text({x(plan_.width) + past_end, row_above(row) + 0.35 * body}, words, body);
    }

    /// Each number stands beside its cut, within one piece or one left-over, as near the cut's beginning as it may be.
    void draw_cuts() {
        if (plan_.cuts.empty())
            return;
        svg_.open("cutting", cut_across_pen);
        for (const lay_cut_line& c : plan_.cuts)
            svg_.line({x(c.from.x), y(c.from.y)}, {x(c.to.x), y(c.to.y)});
        svg_.close();
        if (crowded())
            return;
        for (std::size_t i = 0; i < plan_.cuts.size(); ++i)
            number_cut(plan_.cuts[i], std::to_string(i + 1));
    }

    void number_cut(const lay_cut_line& c, const std::string& number) {
        const page_point a{x(c.from.x), y(c.from.y)}, b{x(c.to.x), y(c.to.y)};
        const double wide = text_width(number, small), high = small;
        for (const double part : {0.0, 0.5, 0.25, 0.75, 1.0})
            for (const bool after : {false, true}) {
                box room{0, 0, wide + 0.8, high + 0.8};
                if (a.y == b.y) {
                    room.x = a.x + part * (b.x - a.x - room.width);
                    room.y = after ? a.y : a.y - room.height;
                } else {
                    room.x = after ? a.x : a.x - room.width;
                    room.y = a.y + part * (b.y - a.y - room.height);
                }
                if (!is_free(room))
                    continue;
                taken_.push_back(room);
                svg_.text({room.x + 0.4, room.y + 0.3 + 0.85 * high}, number, small);
                return;
            }
    }

    /// Too many to look for a place for each; the list has them.
    bool crowded() const { return plan_.places.size() > 1000; }

    /// No line runs through it and nothing is written there.
    bool is_free(const box& room) const {
        const auto apart = [&](const box& other) {
            return other.x >= room.right() || room.x >= other.right() || other.y >= room.bottom() ||
                   room.y >= other.bottom();
        };
        if (!within(room, at_.cloth) || !std::all_of(taken_.begin(), taken_.end(), apart))
            return false;
        for (const double edge : {plan_.usable_from, plan_.usable_to})
            if (room.x < x(edge) && x(edge) < room.right())
                return false;
        for (const lay_box& p : plan_.places)
            if (const box b = on_page(p.where); !apart(b) && !within(room, b))
                return false;
        for (const box& k : plan_.kept)
            if (const box b = inside(on_page(k)); !apart(b) && !within(room, b))
                return false;
        return std::none_of(plan_.cuts.begin(), plan_.cuts.end(), [&](const lay_cut_line& c) {
            const double left = x(c.from.x), right = x(c.to.x), top = y(c.from.y), bottom = y(c.to.y);
            return left < room.right() && room.x < right && top < room.bottom() && room.y < bottom;
        });
    }
    static bool within(const box& inner, const box& outer) {
        constexpr double slack = 1e-9;
        return inner.x >= outer.x - slack && inner.y >= outer.y - slack && inner.right() <= outer.right() + slack &&
               inner.bottom() <= outer.bottom() + slack;
    }

    /// Apart from the lines of its neighbours.
    static box inside(const box& b) {
        const double in = std::min({0.8, b.width / 4, b.height / 4});
        return {b.x + in, b.y + in, b.width - 2 * in, b.height - 2 * in};
    }

    void draw_kept() {
        if (plan_.kept.empty())
            return;
        svg_.open("left-over", kept_pen);
        for (const box& k : plan_.kept)
            svg_.rectangle(inside(on_page(k)));
        svg_.close();
        for (std::size_t i = 0; i < plan_.kept.size(); ++i)
            write_in(inside(on_page(plan_.kept[i])), {"left over", plan_.kept_sizes[i]}, 0.6);
    }

    /// On every piece as much as it has room for: its letter, name, size and whether it is turned, with an arrow; or
    /// its letter alone.
    void name_pieces() {
        if (crowded())
            return;
        std::vector<segment> arrows;
        for (const lay_box& p : plan_.places) {
            const box b = on_page(p.where);
            const std::string letter = letters(p.kind);
            std::vector<std::string> words = {joined({letter, ": ", plan_.kinds[p.kind]}), plan_.sizes[p.kind]};
            if (p.turned)
                words.emplace_back("turned");
            if (!write_in(b, words, 0.6) && !write_in(b, {words[0]}, 0.6))
                write_in(b, {letter}, 0.6);
            add_arrow(arrows, b, p.turned);
        }
        svg_.open("grain", grain_pen);
        for (const segment& s : arrows)
            svg_.line(s.from, s.to);
        svg_.close();
    }

    /// Level, or upright in a narrow piece, in the middle or below or above it; false where nowhere is room.
    bool write_in(const box& b, const std::vector<std::string>& lines, double inset) {
        double wide = 0;
        for (const std::string& line : lines)
            wide = std::max(wide, text_width(line, small));
        const double high = static_cast<double>(lines.size()) * small_line_height;
        const box inner{b.x + inset, b.y + inset, b.width - 2 * inset, b.height - 2 * inset};
        for (const double part : {0.5, 1.0, 0.0})
            for (const bool upright : {false, true}) {
                const double across = upright ? high : wide, down = upright ? wide : high;
                const box room{inner.x + (inner.width - across) / 2, inner.y + part * (inner.height - down), across,
                               down};
                if (!within(room, inner) || !is_free(room))
                    continue;
                taken_.push_back(room);
                write_lines(room, lines, upright);
                return true;
            }
        return false;
    }

    void write_lines(const box& room, const std::vector<std::string>& lines, bool upright) {
        for (std::size_t i = 0; i < lines.size(); ++i) {
            const double baseline = (static_cast<double>(i) + 0.8) * small_line_height;
            svg_.text(upright ? page_point{room.x + baseline, room.y + room.height / 2}
                              : page_point{room.x + room.width / 2, room.y + baseline},
                      lines[i], small, anchor::middle, upright);
        }
    }

    struct segment {
        page_point from, to;
    };

    /// Beside the words, on the side that is free; a small piece goes without.
    void add_arrow(std::vector<segment>& arrows, const box& b, bool turned) {
        constexpr double head = 1.2, room = 3;
        const double long_ = turned ? b.width : b.height;
        if (long_ < 8)
            return;
        const double from = long_ * 0.2, to = long_ * 0.8;
        for (const double part : {1.0, 0.0}) {
            const box strip = turned ? box{b.x + from, b.y + part * (b.height - room), to - from, room}
                                     : box{b.x + part * (b.width - room), b.y + from, room, to - from};
            if (!within(strip, b) || !is_free(strip))
                continue;
            taken_.push_back(strip);
            const page_point tip =
                turned ? page_point{strip.right(), strip.y + room / 2} : page_point{strip.x + room / 2, strip.y};
            const page_point tail = turned ? page_point{strip.x, tip.y} : page_point{tip.x, strip.bottom()};
            const double sx = turned ? -head : head / 2, sy = turned ? head / 2 : head;
            arrows.push_back({tail, tip});
            arrows.push_back({tip, {tip.x + sx, tip.y + sy}});
            arrows.push_back({tip, turned ? page_point{tip.x + sx, tip.y - sy} : page_point{tip.x - sx, tip.y + sy}});
            return;
        }
    }

    foot_of_page foot() const {
        foot_of_page made{.where = at_.foot, .scale = at_.scale, .legend = {}, .title = {}};
        made.title = title_rows_of(plan_.project, "lay of " + plan_.material, plan_.facts);
        auto& lines = made.legend;
        lines.push_back({cloth_pen, plan_.folded ? "edge of cloth; left: fold" : "edge of the cloth"});
        if (plan_.usable_to < plan_.width)
            lines.push_back({selvedge_pen, "selvedge ends"});
        lines.push_back({laid_pen, "piece"});
        if (!plan_.cuts.empty())
            lines.push_back({cut_across_pen, "cut, in order"});
        if (!plan_.kept.empty())
            lines.push_back({kept_pen, "left over, to keep"});
        return made;
    }

    const lay_plan& plan_;
    const lay_page& at_;
    svg_page svg_;
    std::vector<box> taken_;
};

} // namespace detail

/// Throws range_error for a ruler whose graduation is not above zero.
template <length_unit Unit>
std::string drawing_of(const sheet_cloth<Unit>& cloth, const ruler& by = {},
                       const std::type_identity_t<lay_drawing_options<Unit>>& options = {}) {
    const detail::lay_plan what = detail::lay_plan_of<Unit>(cloth, by, options);
    const auto [narrow, wide] = detail::sides_of(options.on);
    const detail::lay_page upright = detail::lay_arranger(what, narrow, wide).make(),
                           sideways = detail::lay_arranger(what, wide, narrow).make();
    return detail::lay_drawer(what, sideways.scale < upright.scale ? sideways : upright).draw();
}

TURNCLOTH_ONCE(std::string drawing_of<inch>(const sheet_cloth<inch>&, const ruler&, const lay_drawing_options<inch>&));
TURNCLOTH_ONCE(std::string drawing_of<centimetre>(const sheet_cloth<centimetre>&, const ruler&,
                                                  const lay_drawing_options<centimetre>&));

} // namespace turncloth

#endif
