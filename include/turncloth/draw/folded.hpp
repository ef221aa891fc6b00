// A panel drawn as it lies folded, seen from the back where the turned cloth shows: an SVG 1.1 document.
//
//   drawing_of(folded)                       A4, inches and centimetres
//   drawing_of(folded, ruler, options)       the units and graduations of a ruler (measure/write.hpp)
//   folded_drawing_options{project, piece, on}     the names for the title block, and the paper
//
//   const auto napkin = fold_panel(panel(finished_size(16_in, 16_in), all_round(double_turned_hem("1/4"_in, 1_in))),
//                                  all_corners(mitred("1/4"_in, "1/16"_in)));
//   save("napkin.svg", drawing_of(napkin, {}, {.piece = "napkin"}));
//
// The page is in millimetres and the piece at the largest scale of the series that leaves room for its words. A number
// says how many layers lie in a region: at each corner, along each hem, in the middle. Where the regions of a corner
// are too small, it is drawn again in a frame, larger; a number that finds no room in its region stands outside the
// piece and is led to it. Lines come from the folding: an edge is in sight where no layer nearer to the eye covers it.
//
// Included by itself: folding is not part of turncloth.hpp.
#ifndef TURNCLOTH_DRAW_FOLDED_HPP
#define TURNCLOTH_DRAW_FOLDED_HPP

#include <turncloth/draw/detail/folded_layout.hpp>

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace turncloth {

namespace detail {

inline constexpr pen outline_pen = {"", 0.6}, in_sight_pen = {"", 0.2}, mitre_pen = {"", 0.35},
                     hidden_pen = {"", 0.15, {1.6, 1}}, enlarged_pen = {"", 0.25, {0.4, 1}};

class folded_drawer {
public:
    folded_drawer(const folded_plan& p, const folded_page& at)
        : plan_(p), at_(at), svg_(at.page.width, at.page.height, title(p), description(p)) {}

    std::string draw() {
        draw_part(at_.whole, false);
        draw_outline();
        draw_dimensions();
        for (const corner_frame& f : at_.frames)
            draw_frame(f);
        mark_enlarged();
        number_regions();
        draw_leaders();
        draw_legend();
        draw_foot(svg_, at_, at_.whole.scale);
        return svg_.done();
    }

private:
    static std::string title(const folded_plan& p) {
        return (p.project.empty() ? "" : p.project + ": ") + p.piece + ", folded";
    }
    static std::string description(const folded_plan& p) {
        std::string all = p.count + ", " + plain(p.cut_size) + ", " + plain(p.finished_size) + '.';
        for (const std::string& e : p.edges)
            all += ' ' + plain(e) + '.';
        for (const folded_corner& c : p.corners)
            if (c.most > 0)
                all += ' ' + p.kinds[c.kind].first + " corner, " + p.kinds[c.kind].way + ": up to " +
                       std::to_string(c.most) + " layers.";
        return all;
    }

    // Lines. All that words must keep clear of is remembered as it lies on the page.

    void draw_part(const placed_part& part, bool corner) {
        draw_lines(part, corner ? stroke_name("corner-hidden") : stroke_name("hidden"), hidden_pen, plan_.seen.hidden);
        draw_lines(part, corner ? stroke_name("corner-edge") : stroke_name("edge"), in_sight_pen, plan_.seen.visible);
        draw_lines(part, corner ? stroke_name("corner-mitre") : stroke_name("mitre"), mitre_pen, plan_.mitres);
        draw_lines(part, corner ? stroke_name("corner-stitching") : stroke_name("stitching"), stitching_pen,
                   plan_.rows);
    }

    void draw_lines(const placed_part& part, stroke_name name, const pen& p, const std::vector<straight>& all) {
        svg_.open(name, p);
        for (const straight& s : all) {
            // A line along the finished edge is on the rim of its part, not out of it.
            const box rim{part.cloth.x - 0.01, part.cloth.y - 0.01, part.cloth.width + 0.02, part.cloth.height + 0.02};
            const auto inside = clipped(s, rim);
            const bool on_outline = name.text().find("edge") != std::string_view::npos && lies_on_outline(s);
            if (inside && !on_outline)
                draw(part.on_page(*inside));
        }
        svg_.close();
    }
    bool lies_on_outline(const straight& s) const {
        const auto on = [](double a, double b, double at) {
            return std::abs(a - at) <= too_thin && std::abs(b - at) <= too_thin;
        };
        return on(s.from.x, s.to.x, 0) || on(s.from.x, s.to.x, plan_.width()) || on(s.from.y, s.to.y, 0) ||
               on(s.from.y, s.to.y, plan_.height());
    }

    void draw(const straight& s) {
        svg_.line(s.from, s.to);
        lines_.push_back(s);
    }
    void keep_clear(const box& b) {
        const page_point c[] = {{b.x, b.y}, {b.right(), b.y}, {b.right(), b.bottom()}, {b.x, b.bottom()}};
        for (std::size_t i = 0; i < 4; ++i)
            lines_.push_back({c[i], c[(i + 1) % 4]});
    }

    void draw_outline() {
        svg_.open("outline", outline_pen);
        svg_.rectangle(at_.whole.on_page(plan_.outline()));
        svg_.close();
        keep_clear(at_.whole.on_page(plan_.outline()));
    }

    void draw_frame(const corner_frame& f) {
        draw_part(f.part, true);
        const double w = plan_.width(), h = plan_.height();
        svg_.open("corner-outline", outline_pen);
        for (const straight& s :
             {straight{{0, 0}, {w, 0}}, straight{{w, 0}, {w, h}}, straight{{w, h}, {0, h}}, straight{{0, h}, {0, 0}}}) {
            const box& c = f.part.cloth;
            if (const auto inside = clipped(s, {c.x - 0.01, c.y - 0.01, c.width + 0.02, c.height + 0.02}))
                draw(f.part.on_page(*inside));
        }
        svg_.close();
        svg_.open("frame", thin_pen);
        svg_.rectangle(f.frame);
        svg_.close();
        keep_clear(f.frame);
        double y = f.frame.y - 1 - static_cast<double>(f.words.size()) * small_line_height;
        for (const std::string& line : f.words)
            write({f.frame.x, y += small_line_height}, line, small);
    }

    // Words.

    void write(page_point at, const std::string& words, double size, anchor from = anchor::start, bool turned = false) {
        const double length = text_width(words, size),
                     before = from == anchor::middle ? length / 2 : (from == anchor::end ? length : 0);
        svg_.text(at, words, size, from, turned);
        taken_.push_back(turned ? box{at.x - 0.8 * size, at.y + before - length, 1.1 * size, length}
                                : box{at.x - before, at.y - 0.8 * size, length, 1.1 * size});
    }

    /// The width below, the height at the left; the names of the other two edges, as the back shows them.
    void draw_dimensions() {
        const box o = at_.whole.on_page(plan_.outline());
        const double y = o.bottom() + ring + 4.5, x = o.x - ring - 2;
        svg_.open("dimension", thin_pen);
        draw({{o.x, y}, {o.right(), y}});
        draw({{x, o.y}, {x, o.bottom()}});
        for (const double end : {o.x, o.right()}) {
            draw({{end, o.bottom()}, {end, y + 1}});
            tick(svg_, {end, y});
        }
        for (const double end : {o.y, o.bottom()}) {
            draw({{o.x, end}, {x - 1, end}});
            tick(svg_, {x, end});
        }
        svg_.close();
        if (stands_over(plan_.width_words, o.width))
            write({o.x + o.width / 2, y - 1}, plan_.width_words, body, anchor::middle);
        else
            write({o.right() + past_end, y + 0.35 * body}, plan_.width_words, body);
        if (stands_over(plan_.height_words, o.height))
            write({x - 1, o.y + o.height / 2}, plan_.height_words, body, anchor::middle, true);
        else
            write({x + 0.35 * body, o.bottom() + past_end}, plan_.height_words, body, anchor::end, true);
        write({o.x + o.width / 2, o.y - ring - 1}, "top edge", body, anchor::middle);
        write({o.right() + ring + 0.8 * body + 1, o.y + o.height / 2}, "left edge", body, anchor::middle, true);
    }

    /// On the whole, what the frames show larger: each corner has the letter of its frame, and its most layers.
    void mark_enlarged() {
        if (at_.frames.empty())
            return;
        std::vector<std::pair<page_point, std::string>> words;
        svg_.open("enlarged", enlarged_pen);
        for (const folded_corner& c : plan_.corners) {
            if (c.most == 0)
                continue;
            const box b = at_.whole.on_page(c.where);
            svg_.rectangle(b);
            keep_clear(b);
            words.push_back({{c.right ? b.x : b.right(), c.bottom ? b.y : b.bottom()},
                             std::string(1, static_cast<char>('A' + c.kind)) + ": up to " + std::to_string(c.most)});
        }
        svg_.close();
        for (const auto& [corner, text] : words)
            call_out(at_.whole, corner, text + " layers", true) || call_out(at_.whole, corner, text, true) ||
                call_out(at_.whole, corner, text.substr(0, 1), true);
    }

    // Numbers.

    struct waiting {
        const placed_part* part;
        folded_region region;
    };

    /// First those that stand in their regions, then the others around them.
    void number_regions() {
        std::vector<waiting> all;
        const box& m = plan_.middle;
        const double w = plan_.width(), h = plan_.height();
        add(all, at_.whole, m);
        for (const box& hem : {box{m.x, 0, m.width, m.y}, box{m.right(), m.y, w - m.right(), m.height},
                               box{m.x, m.bottom(), m.width, h - m.bottom()}, box{0, m.y, m.x, m.height}})
            add(all, at_.whole, hem);
        // A hem ends where the piece alone begins, which the middle's number tells.
        if (m.width > too_thin && m.height > too_thin)
            std::erase_if(all, [&](const waiting& n) { return n.region.layers == 1 && !n.region.holds(middle_of(m)); });
        if (at_.frames.empty())
            for (const folded_corner& c : plan_.corners)
                add(all, at_.whole, c.where);
        for (const corner_frame& f : at_.frames)
            add(all, f.part, f.part.cloth);
        std::erase_if(all, [&](const waiting& n) { return stands_inside(n); });
        std::size_t left_out = 0;
        for (const waiting& n : all) {
            const auto spot = spot_of(n, 0.7, 0.7);
            const bool done = spot && call_out(*n.part, *spot, std::to_string(n.region.layers), false);
            left_out += done ? 0 : 1;
        }
        if (left_out > 0)
            svg_.text({at_.note.x, at_.note.y + small_line_height},
                      std::to_string(left_out) + (left_out == 1 ? " region is" : " regions are") +
                          " too narrow here for a number.",
                      small);
    }

    static page_point middle_of(const box& b) { return {b.x + b.width / 2, b.y + b.height / 2}; }

    void add(std::vector<waiting>& all, const placed_part& part, const box& cloth) const {
        for (folded_region& r : plan_.view.within(cloth).regions())
            all.push_back({&part, std::move(r)});
    }

    /// The room is given in mm on paper.
    std::optional<page_point> spot_of(const waiting& n, double wide, double high) const {
        folded_region on_paper = n.region;
        for (trapezoid& t : on_paper.parts) {
            const placed_part& p = *n.part;
            t = {p.x(t.left), p.x(t.right), p.y(t.top_left), p.y(t.top_right), p.y(t.bottom_left), p.y(t.bottom_right)};
        }
        std::vector<straight> around = lines_;
        for (const box& b : taken_)
            for (const double y : {b.y, b.y + b.height / 2, b.bottom()})
                around.push_back({{b.x, y}, {b.right(), y}});
        return number_spot(on_paper, around, wide, high);
    }

    bool stands_inside(const waiting& n) {
        const std::string number = std::to_string(n.region.layers);
        const auto spot = spot_of(n, number_width_of(n.region.layers), number_height_of);
        if (spot)
            write({spot->x, spot->y + 0.36 * body}, number, body, anchor::middle);
        return spot.has_value();
    }

    /// Words as near to a spot of the piece as is free, outside the piece (or anywhere beside what they tell of), and
    /// a line that leads from them to it. False where nowhere is room.
    bool call_out(const placed_part& part, page_point spot, const std::string& words, bool within) {
        constexpr double mesh = 0.75;
        const double wide = text_width(words, body) + number_room, high = number_height_of;
        const box& zone = part.outside;
        const box piece = part.on_page(part.cloth);
        struct choice {
            double far;
            box room;
            page_point end;
        };
        std::vector<choice> all;
        const auto meshes = [](double room) { return static_cast<int>(std::floor((room - 1) / mesh)); };
        for (int i = 0; i <= meshes(zone.width - wide); ++i)
            for (int j = 0; j <= meshes(zone.height - high); ++j) {
                const box room{zone.x + 0.5 + i * mesh, zone.y + 0.5 + j * mesh, wide, high};
                if (!within && !apart(room, {piece.x - 0.8, piece.y - 0.8, piece.width + 1.6, piece.height + 1.6}))
                    continue;
                const page_point end = nearest_side(room, spot);
                all.push_back({std::hypot(end.x - spot.x, end.y - spot.y), room, end});
            }
        std::sort(all.begin(), all.end(), [](const choice& a, const choice& b) { return a.far < b.far; });
        for (const choice& c : all) {
            const box words_alone{c.room.x + 0.1, c.room.y + 0.1, c.room.width - 0.2, c.room.height - 0.2};
            if (!is_free(c.room) || !may_lead(spot, c.end) || clipped({spot, c.end}, words_alone))
                continue;
            taken_.push_back(c.room);
            leaders_.push_back({spot, c.end});
            svg_.text({c.room.x + wide / 2, c.room.y + high / 2 + 0.36 * body}, words, body, anchor::middle);
            return true;
        }
        return false;
    }

    static bool apart(const box& a, const box& b) {
        return a.x >= b.right() || b.x >= a.right() || a.y >= b.bottom() || b.y >= a.bottom();
    }
    /// The middle of the side of a box that is nearest to a spot.
    static page_point nearest_side(const box& b, page_point spot) {
        page_point best{b.x, b.y + b.height / 2};
        for (const page_point p : {page_point{b.right(), b.y + b.height / 2}, page_point{b.x + b.width / 2, b.y},
                                   page_point{b.x + b.width / 2, b.bottom()}})
            if (std::hypot(p.x - spot.x, p.y - spot.y) < std::hypot(best.x - spot.x, best.y - spot.y))
                best = p;
        return best;
    }
    bool is_free(const box& room) const {
        const auto crossed = [&](const straight& s) { return clipped(s, room).has_value(); };
        return std::all_of(taken_.begin(), taken_.end(), [&](const box& b) { return apart(b, room); }) &&
               std::none_of(lines_.begin(), lines_.end(), crossed) &&
               std::none_of(leaders_.begin(), leaders_.end(), crossed);
    }
    /// Through no words and over no other leader.
    bool may_lead(page_point from, page_point to) const {
        const straight s{from, to};
        const auto side = [](const straight& l, page_point p) {
            return (l.to.x - l.from.x) * (p.y - l.from.y) - (l.to.y - l.from.y) * (p.x - l.from.x) > 0;
        };
        return std::none_of(taken_.begin(), taken_.end(), [&](const box& b) { return clipped(s, b).has_value(); }) &&
               std::none_of(leaders_.begin(), leaders_.end(), [&](const straight& l) {
                   return side(l, s.from) != side(l, s.to) && side(s, l.from) != side(s, l.to);
               });
    }

    /// Ending in a dot, as a leader does within what it tells of (ISO 128).
    void draw_leaders() {
        svg_.open("leader", thin_pen);
        for (const straight& l : leaders_) {
            svg_.path({l.from, l.to});
            svg_.dot(l.from, 0.35);
        }
        svg_.close();
    }

    void draw_legend() {
        legend all(svg_, {at_.foot.x, at_.foot.y + 3});
        all.entry(outline_pen, "finished");
        if (!plan_.seen.visible.empty())
            all.entry(in_sight_pen, "edge in sight");
        if (!plan_.mitres.empty())
            all.entry(mitre_pen, "mitre");
        if (!plan_.seen.hidden.empty())
            all.entry(hidden_pen, "edge hidden");
        if (!plan_.rows.empty())
            all.entry(stitching_pen, "stitching");
        if (!at_.frames.empty())
            all.entry(enlarged_pen, "drawn larger");
    }

    const folded_plan& plan_;
    const folded_page& at_;
    svg_page svg_;
    std::vector<straight> lines_, leaders_;
    std::vector<box> taken_;
};

} // namespace detail

/// Throws range_error for a ruler whose graduation is not above zero.
template <length_unit Unit, coordinate Number>
std::string drawing_of(const folded_panel<Unit, Number>& folded, const ruler& by = {},
                       const folded_drawing_options& options = {}) {
    const detail::folded_plan what = detail::folded_plan_of(folded, by, options);
    const detail::folded_page where = detail::folded_page_of(what, options.on);
    return detail::folded_drawer(what, where).draw();
}

TURNCLOTH_ONCE(std::string drawing_of(const folded_panel<inch, fraction>&, const ruler&,
                                      const folded_drawing_options&));
TURNCLOTH_ONCE(std::string drawing_of(const folded_panel<centimetre, fraction>&, const ruler&,
                                      const folded_drawing_options&));

} // namespace turncloth

#endif
