// A panel drawn as it lies folded, seen from the back where the turned cloth shows.
//
//   folded_labels{name}                          what a folded panel does not know of itself
//   page_of(folded, labels, ruler, options)      a page as a value (page/page.hpp)
//   drawing_of(folded, labels, ruler, options)   the same as an SVG document
//
//   const auto napkin = fold_panel(panel(finished_size(16_in, 16_in), all_round(double_turned_hem("1/4"_in, 1_in))),
//                                  all_corners(mitred("1/4"_in, "1/16"_in)));
//   save("napkin.svg", drawing_of(napkin, {.name = "napkin"}));
//
// The piece is drawn at the largest scale of the series that leaves room for its words. A number says how many layers
// lie in a region: at each corner, along each hem, in the middle. Where the regions of a corner are too small, it is
// drawn again in a frame, larger; a number that finds no room in its region stands outside the piece and is led to it.
// Lines come from the folding: an edge is visible where no layer nearer to the eye covers it.
//
// Included by itself: folding is not part of turncloth.hpp.
#ifndef TURNCLOTH_DRAW_FOLDED_HPP
#define TURNCLOTH_DRAW_FOLDED_HPP

#include <turncloth/draw/detail/folded_layout.hpp>

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace turncloth {

namespace detail {

/// Puts a folded panel on its page; all that words must keep clear of is remembered as it lies there.
class folded_drawer {
public:
    folded_drawer(const folded_plan& p, const folded_page& at)
        : plan_(p), at_(at), by_(at.frame.by), page_(at.frame.begin(description(p))) {
        page_.title += ", folded";
    }

    page draw() {
        draw_part(at_.whole, {hidden_pen, edge_pen, mitre_pen, stitching_pen});
        const page_area outline = at_.whole.on_page(plan_.outline());
        page_.draw_closed(outline_pen, outline);
        draw_dimensions(outline);
        for (const corner_frame& f : at_.frames)
            draw_frame(f);
        if (!at_.frames.empty())
            for (const folded_corner& c : plan_.corners)
                if (c.most > 0)
                    page_.draw_closed(enlarged_pen, at_.whole.on_page(c.where));
        free_room room(page_, by_);
        mark_enlarged(room);
        number_regions(room);
        return at_.frame.draw(std::move(page_), at_.whole.scale);
    }

private:
    static std::string description(const folded_plan& p) {
        const auto& facts = p.words.facts;
        std::string all = joined({facts[0], ", ", facts[1], ", ", facts[2], "."});
        for (std::size_t i = 1; i < p.words.sentences.size(); ++i)
            all += joined({" ", p.words.sentences[i], "."});
        for (const folded_corner& c : p.corners)
            if (c.most > 0)
                all += joined({" ", p.kinds[c.kind].first, " corner, ", p.kinds[c.kind].way, ": up to ",
                               std::to_string(c.most), " layers."});
        return plain(all);
    }

    // Lines.

    struct pens {
        pen hidden, visible, mitre, stitching;
    };
    void draw_part(const placed_part& part, const pens& with) {
        draw_lines(part, with.hidden, plan_.seen.hidden);
        draw_lines(part, with.visible, plan_.seen.visible);
        draw_lines(part, with.mitre, plan_.mitres);
        draw_lines(part, with.stitching, plan_.rows);
    }
    /// A line along the finished edge is on the rim of its part, not out of it; an edge there is the outline itself.
    void draw_lines(const placed_part& part, const pen& with, const std::vector<page_segment>& all) {
        const page_area& c = part.cloth;
        const page_area rim{c.x - 0.01, c.y - 0.01, c.width + 0.02, c.height + 0.02};
        const bool is_edge = with.weight == edge_pen.weight;
        for (const page_segment& s : all)
            if (const auto inside = clipped(s, rim); inside && !(is_edge && lies_on_outline(s)))
                page_.draw(with, {part.on_page(inside->from), part.on_page(inside->to)});
    }
    bool lies_on_outline(const page_segment& s) const {
        const auto on = [](double a, double b, double at) {
            return std::abs(a - at) <= too_thin && std::abs(b - at) <= too_thin;
        };
        return on(s.from.x, s.to.x, 0) || on(s.from.x, s.to.x, plan_.width()) || on(s.from.y, s.to.y, 0) ||
               on(s.from.y, s.to.y, plan_.height());
    }

    void draw_frame(const corner_frame& f) {
        draw_part(f.part, {hidden_pen.meaning("corner-hidden"), edge_pen.meaning("corner-edge"),
                           mitre_pen.meaning("corner-mitre"), stitching_pen.meaning("corner-stitching")});
        const auto c = plan_.outline().corners();
        draw_lines(f.part, outline_pen.meaning("corner-outline"),
                   {{c[0], c[1]}, {c[1], c[2]}, {c[2], c[3]}, {c[3], c[0]}});
        page_.draw_closed({"frame", 0.15}, f.frame);
        double y = f.frame.y - 1 - static_cast<double>(f.words.size()) * small_line_height;
        for (const std::string& line : f.words)
            page_.write({f.frame.x, y += small_line_height}, line, small_size);
    }

    /// The width below, the height at the left; the names of the other two edges, as the back shows them.
    void draw_dimensions(const page_area& o) {
        const double y = o.bottom() + ring + 4.5, x = o.x - ring - 2;
        draw_dimension(page_, by_, {{o.x, y}, {o.right(), y}, o.bottom(), o.right(), plan_.width_words});
        draw_dimension(page_, by_, {{x, o.y}, {x, o.bottom()}, o.x, o.bottom(), plan_.height_words});
        page_.write({o.middle().x, o.y - ring - 1}, "top edge", body_size, set_from::middle);
        page_.write({o.right() + ring + 0.8 * body_size + 1, o.middle().y}, "left edge", body_size, set_from::middle)
            .turned = 90;
    }

    /// On the whole, what the frames show larger: each corner has the letter of its frame, and its most layers.
    void mark_enlarged(free_room& room) {
        if (at_.frames.empty())
            return;
        for (const folded_corner& c : plan_.corners) {
            if (c.most == 0)
                continue;
            const page_area a = at_.whole.on_page(c.where);
            const page_point inner{c.right ? a.x : a.right(), c.bottom ? a.y : a.bottom()};
            const std::string letter = letter_of(c.kind), text = joined({letter, ": up to ", std::to_string(c.most)});
            call_out(room, at_.whole, inner, text + " layers", true) || call_out(room, at_.whole, inner, text, true) ||
                call_out(room, at_.whole, inner, letter, true);
        }
    }

    // Numbers.

    struct waiting {
        const placed_part* part;
        folded_region region;
    };

    std::vector<waiting> all_regions() const {
        std::vector<waiting> all;
        const auto add = [&](const placed_part& part, const page_area& cloth) {
            for (folded_region& r : plan_.view.within(cloth).regions())
                all.push_back({&part, std::move(r)});
        };
        const page_area& m = plan_.middle;
        const double w = plan_.width(), h = plan_.height();
        for (const page_area& a :
             {m, page_area{m.x, 0, m.width, m.y}, page_area{m.right(), m.y, w - m.right(), m.height},
              page_area{m.x, m.bottom(), m.width, h - m.bottom()}, page_area{0, m.y, m.x, m.height}})
            add(at_.whole, a);
        // A hem ends where the piece alone begins, which the middle's number tells.
        if (m.width > too_thin && m.height > too_thin)
            std::erase_if(all, [&](const waiting& n) { return n.region.layers == 1 && !n.region.holds(m.middle()); });
        if (at_.frames.empty())
            for (const folded_corner& c : plan_.corners)
                add(at_.whole, c.where);
        for (const corner_frame& f : at_.frames)
            add(f.part, f.part.cloth);
        return all;
    }

    /// First those that stand in their regions, then the others around them.
    void number_regions(free_room& room) {
        std::vector<waiting> all = all_regions();
        std::erase_if(all, [&](const waiting& n) { return stands_inside(room, n); });
        std::size_t left_out = 0;
        for (const waiting& n : all) {
            const auto spot = spot_of(room, n, 0.7, 0.7);
            if (!spot || !call_out(room, *n.part, *spot, std::to_string(n.region.layers), false))
                ++left_out;
        }
        if (left_out > 0)
            page_.write({at_.note.x, at_.note.y + small_line_height},
                        joined({std::to_string(left_out), left_out == 1 ? " region is" : " regions are",
                                " too narrow here for a number."}),
                        small_size);
    }

    /// The room is given in mm on paper.
    static std::optional<page_point> spot_of(const free_room& room, const waiting& n, double wide, double high) {
        folded_region on_paper = n.region;
        const placed_part& p = *n.part;
        for (trapezoid& t : on_paper.parts)
            t = {p.x(t.left), p.x(t.right), p.y(t.top_left), p.y(t.top_right), p.y(t.bottom_left), p.y(t.bottom_right)};
        std::vector<page_segment> around = room.lines();
        for (const page_area& a : room.taken())
            for (const double y : {a.y, a.middle().y, a.bottom()})
                around.push_back({{a.x, y}, {a.right(), y}});
        return number_spot(on_paper, around, wide, high);
    }

    bool stands_inside(free_room& room, const waiting& n) {
        const auto spot = spot_of(room, n, number_width_of(by_, n.region.layers), number_height_of);
        if (spot)
            room.take(covered_by(page_.write({spot->x, spot->y + 0.36 * body_size}, std::to_string(n.region.layers),
                                             body_size, set_from::middle),
                                 by_));
        return spot.has_value();
    }

    /// Words as near to a spot of the piece as is free, outside the piece (or anywhere beside what they tell of), and
    /// a line that leads from them to it, ending in a dot, as it does within what it tells of (ISO 128). False where
    /// nowhere is room.
    bool call_out(free_room& room, const placed_part& part, page_point spot, const std::string& words, bool inside) {
        constexpr double mesh = 0.75;
        const double wide = by_.width(words, body_size) + number_room, high = number_height_of;
        const page_area& zone = part.outside;
        const page_area piece = part.on_page(part.cloth),
                        kept_off{piece.x - 0.8, piece.y - 0.8, piece.width + 1.6, piece.height + 1.6};
        struct choice {
            double far;
            page_area there;
            page_point end;
        };
        std::vector<choice> all;
        const auto meshes = [](double size) { return static_cast<int>(std::floor((size - 1) / mesh)); };
        for (int i = 0; i <= meshes(zone.width - wide); ++i)
            for (int j = 0; j <= meshes(zone.height - high); ++j) {
                const page_area there{zone.x + 0.5 + i * mesh, zone.y + 0.5 + j * mesh, wide, high};
                if (!inside && !apart(there, kept_off))
                    continue;
                const page_point end = nearest_side(there, spot);
                all.push_back({distance(end, spot), there, end});
            }
        std::sort(all.begin(), all.end(), [](const choice& a, const choice& b) { return a.far < b.far; });
        for (const choice& c : all) {
            const page_area words_alone{c.there.x + 0.1, c.there.y + 0.1, wide - 0.2, high - 0.2};
            const page_segment leader{spot, c.end};
            if (!room.is_free(c.there) || !room.leads(leader) || meets(leader, words_alone))
                continue;
            room.take(c.there);
            room.take(leader);
            page_.draw(leader_pen, {spot, c.end});
            page_.draw({"leader", 0.7}, {spot});
            page_.write({c.there.middle().x, c.there.middle().y + 0.36 * body_size}, words, body_size,
                        set_from::middle);
            return true;
        }
        return false;
    }

    /// The middle of the side of an area that is nearest to a spot.
    static page_point nearest_side(const page_area& a, page_point spot) {
        const page_point m = a.middle(), sides[] = {{a.x, m.y}, {a.right(), m.y}, {m.x, a.y}, {m.x, a.bottom()}};
        return *std::min_element(std::begin(sides), std::end(sides),
                                 [&](page_point p, page_point q) { return distance(p, spot) < distance(q, spot); });
    }

    const folded_plan& plan_;
    const folded_page& at_;
    const lettering& by_;
    page page_;
};

} // namespace detail

/// Throws range_error for a ruler whose graduation is not above zero, and for a panel over 1 km long or wide.
template <length_unit Unit, coordinate Number>
page page_of(const folded_panel<Unit, Number>& folded, const folded_labels& labels = {}, const ruler& by = {},
             const drawing_options& options = {}) {
    const detail::folded_plan plan = detail::folded_planner<Unit, Number>(folded, by).make(options.project, labels);
    const detail::folded_page at = detail::best_page(options, [&](double width, double height) {
        return detail::folded_arranger(plan, options, width, height).make();
    });
    return detail::folded_drawer(plan, at).draw();
}

/// Throws as page_of.
template <length_unit Unit, coordinate Number>
std::string drawing_of(const folded_panel<Unit, Number>& folded, const folded_labels& labels = {}, const ruler& by = {},
                       const drawing_options& options = {}) {
    return to_svg(page_of(folded, labels, by, options));
}

TURNCLOTH_ONCE(std::string drawing_of(const folded_panel<inch, fraction>&, const folded_labels&, const ruler&,
                                      const drawing_options&));
TURNCLOTH_ONCE(std::string drawing_of(const folded_panel<centimetre, fraction>&, const folded_labels&, const ruler&,
                                      const drawing_options&));

} // namespace turncloth

#endif
