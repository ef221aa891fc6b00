// A straight-edged piece of any shape drawn to scale on a page to be printed: an SVG 1.1 document.
//
//   outline_labels<U>{name, material, count, notches, grain}     what an outline does not know of itself
//   drawing_of(outline, labels)                    A4, inches and centimetres
//   drawing_of(outline, labels, ruler, options)    the units and graduations of a ruler, the project and the paper
//
//   const outline<inch> gusset({drafted_point<inch>(0, 0), drafted_point<inch>(12, 0), drafted_point<inch>(0, 8)},
//                              {drafted_length_of<inch>(0.5)});
//   save("gusset.svg", drawing_of(gusset, {.name = "gusset", .material = "canvas", .count = 2}));
//
// The outline lies as it was drafted, y upward. Edge i of it is number i + 1 on the page, as a page counts from 1. The
// grain's arrow lies on the grain line where that meets the piece, else beside it. Lengths and areas are rounded from
// the doubles drafted; what is drawn is not rounded.
//
// A cut line that crosses itself is drawn too, each crossing marked and a sentence above it: whoever drafted it must
// see where. Included by itself, as outline.hpp is.
#ifndef TURNCLOTH_DRAW_OUTLINE_HPP
#define TURNCLOTH_DRAW_OUTLINE_HPP

#include <turncloth/draw/detail/outline_layout.hpp>
#include <turncloth/draw/piece.hpp>

#include <cmath>
#include <cstddef>
#include <optional>
#include <string>
#include <type_traits>
#include <utility>
#include <vector>

namespace turncloth {

namespace detail {

inline constexpr pen notch_pen = {"", 0.35}, crossing_pen = {"", 0.45};

class outline_drawer {
public:
    outline_drawer(const outline_plan& p, const outline_page& at)
        : plan_(p), at_(at), svg_(at.width, at.height, title(p), description(p, at.scale)) {}

    std::string draw() {
        draw_lines();
        draw_notches();
        draw_grain();
        draw_crossings();
        number_edges();
        write_warnings();
        draw_list(svg_, at_.list);
        draw_foot(svg_, foot());
        draw_print(svg_, at_.print, at_.print_lines);
        return svg_.done();
    }

private:
    static std::string title(const outline_plan& p) { return (p.project.empty() ? "" : p.project + ": ") + p.name; }
    static std::string description(const outline_plan& p, double scale) {
        std::string all = scale_text(scale) + '.';
        for (const auto* words : {&p.warnings, &p.facts, &p.list})
            for (const std::string& w : *words)
                all += ' ' + plain(w) + (w.back() == '.' || w.back() == ':' ? "" : ".");
        return all;
    }

    std::vector<page_point> on_page(const std::vector<page_point>& cloth) const {
        std::vector<page_point> all;
        all.reserve(cloth.size());
        for (const page_point& p : cloth)
            all.push_back(at_.at(p));
        return all;
    }

    /// In the pen that is open; numbers keep clear of it.
    void stroke(const page_point& from, const page_point& to) {
        svg_.line(from, to);
        lines_.push_back({from, to});
    }
    void closed(const std::vector<page_point>& corners) {
        svg_.closed(corners);
        const std::vector<plan_stroke> sides = sides_of(corners);
        lines_.insert(lines_.end(), sides.begin(), sides.end());
    }
    static std::vector<plan_stroke> sides_of(const std::vector<page_point>& corners) {
        std::vector<plan_stroke> all;
        for (std::size_t i = 0; i < corners.size(); ++i)
            all.push_back({corners[i], corners[(i + 1) % corners.size()]});
        return all;
    }

    void draw_lines() {
        svg_.open("seam", pen_of(line_kind::stitching));
        closed(on_page(plan_.seam));
        svg_.close();
        svg_.open("cut", cut_pen);
        closed(on_page(plan_.cut));
        svg_.close();
    }

    /// From seam to cut line. Where these lie close or on each other the notch shows as a stroke inward.
    void draw_notches() {
        if (plan_.notches.empty())
            return;
        svg_.open("notch", notch_pen);
        for (const plan_stroke& n : plan_.notches)
            stroke(at_.at(n.from), at_.at(n.to));
        svg_.close();
        svg_.open("notch-inward", notch_pen);
        for (std::size_t i = 0; i < plan_.notches.size(); ++i) {
            const page_point on_seam = at_.at(plan_.notches[i].from), on_cut = at_.at(plan_.notches[i].to);
            if (std::hypot(on_cut.x - on_seam.x, on_cut.y - on_seam.y) < 1.5)
                stroke(on_seam, moved(on_seam, plan_.notches_inward[i], 2));
        }
        svg_.close();
    }

    /// Over most of the room that there is, and never so short that it cannot be seen.
    void draw_grain() {
        if (!plan_.grain)
            return;
        constexpr double least = 6, head = 2, splay = 0.35;
        const plan_stroke room = longest_chord(plan_.seam, *plan_.grain);
        const page_point a = at_.at(room.from), b = at_.at(room.to), middle{(a.x + b.x) / 2, (a.y + b.y) / 2};
        const double gx = plan_.grain->to.x - plan_.grain->from.x, gy = plan_.grain->to.y - plan_.grain->from.y;
        const page_point way{gx / std::hypot(gx, gy), gy / std::hypot(gx, gy)}, across{-way.y, way.x};
        const double half = std::max(least, 0.7 * std::hypot(b.x - a.x, b.y - a.y)) / 2;
        const page_point tip = moved(middle, way, half), back = moved(tip, way, -head);
        svg_.open("grain", grain_pen);
        stroke(moved(middle, way, -half), tip);
        stroke(tip, moved(back, across, head * splay));
        stroke(tip, moved(back, across, -head * splay));
        svg_.close();
    }

    void draw_crossings() {
        if (plan_.crossings.empty())
            return;
        constexpr double size = 2.2;
        svg_.open("crossing", crossing_pen);
        for (const page_point& c : on_page(plan_.crossings))
            closed({{c.x, c.y - size}, {c.x + size, c.y}, {c.x, c.y + size}, {c.x - size, c.y}});
        svg_.close();
    }

    // Every edge has its number, with its length where there is room. Of very many edges every so-manieth is numbered.

    edge_on_page edge(std::size_t i) const {
        const std::size_t n = plan_.seam.size();
        return {at_.at(plan_.seam[i]), at_.at(plan_.seam[(i + 1) % n]), plan_.outward[i],
                plan_.allowances[i] / at_.scale};
    }

    void number_edges() {
        constexpr std::size_t most = 100;
        const std::size_t n = plan_.seam.size(), every = round_number([&](std::size_t k) { return n / k <= most; });
        number_placer place(lines_, sides_of(on_page(plan_.seam)), at_.picture);
        std::vector<std::optional<placed_words>> found(n);
        const auto try_all = [&](auto how) {
            for (std::size_t i = every - 1; i < n; i += every)
                if (!found[i])
                    if ((found[i] = how(i)))
                        place.take(*found[i]);
        };
        try_all([&](std::size_t i) { return place.beside(edge(i), std::to_string(i + 1)); });
        try_all([&](std::size_t i) { return place.led(edge(i), std::to_string(i + 1)); });
        lengthen(place, found);
        svg_.open("leader", thin_pen);
        for (const auto& f : found)
            if (f && f->leader)
                svg_.line(f->leader->from, f->leader->to);
        svg_.close();
        std::size_t without = 0;
        for (std::size_t i = every - 1; i < n; i += every)
            if (found[i])
                write(*found[i]);
            else
                ++without;
        write_note(every, without);
    }

    void lengthen(number_placer& place, std::vector<std::optional<placed_words>>& found) const {
        for (std::size_t i = 0; i < found.size(); ++i) {
            if (!found[i] || found[i]->leader)
                continue;
            place.give_back(*found[i]);
            if (auto longer = place.beside(edge(i), plan_.edge_words[i]))
                found[i] = std::move(longer);
            place.take(*found[i]);
        }
    }

    void write(const placed_words& p) {
        const double baseline = p.where.y + p.where.height / 2 + 0.26 * body;
        svg_.text({p.where.x + p.where.width / 2, baseline}, p.words, body, anchor::middle);
    }

    void write_note(std::size_t every, std::size_t without) {
        std::string note;
        if (every > 1)
            note = "Of every " + std::to_string(every) + " edges one has its number here. ";
        if (without > 0)
            note += "No room was found for the number of " + std::to_string(without) +
                    (without == 1 ? " edge." : " edges.");
        if (!note.empty())
            svg_.text({at_.picture.x, at_.picture.bottom() + body}, shortened(note, small, at_.picture.width), small);
    }

    void write_warnings() {
        double y = page_margin - 1;
        for (const std::string& line : at_.warnings)
            svg_.text({at_.picture.x, y += line_height}, line, body, anchor::start, false, true);
    }

    foot_of_page foot() const {
        foot_of_page made{.where = at_.foot, .scale = at_.scale, .legend = {}, .title = {}};
        made.title = title_rows_of(plan_.project, plan_.name, plan_.facts);
        auto& lines = made.legend;
        lines.push_back({cut_pen, "cut line"});
        lines.push_back({pen_of(line_kind::stitching), "seam line"});
        if (!plan_.notches.empty())
            lines.push_back({notch_pen, "notch"});
        if (plan_.grain)
            lines.push_back({grain_pen, "grain, an arrow"});
        if (!plan_.crossings.empty())
            lines.push_back({crossing_pen, "crossing, a diamond"});
        return made;
    }

    const outline_plan& plan_;
    const outline_page& at_;
    svg_page svg_;
    std::vector<plan_stroke> lines_;
};

} // namespace detail

/// Throws outline_error for a notch that is not on its edge or that a corner has taken away, or a grain line without
/// direction; range_error for fewer than one piece or a ruler whose graduation is not above zero; overflow_error where
/// 64 bits do not hold a figure.
template <length_unit Unit>
std::string drawing_of(const outline<Unit>& piece, const std::type_identity_t<outline_labels<Unit>>& labels,
                       const ruler& by = {}, const drawing_options& options = {}) {
    const detail::outline_plan what = detail::outline_plan_of<Unit>(piece, labels, by, options);
    const detail::outline_page at = detail::outline_page_on(what, options.on);
    return detail::outline_drawer(what, at).draw();
}

TURNCLOTH_ONCE(std::string drawing_of<inch>(const outline<inch>&, const outline_labels<inch>&, const ruler&,
                                            const drawing_options&));
TURNCLOTH_ONCE(std::string drawing_of<centimetre>(const outline<centimetre>&, const outline_labels<centimetre>&,
                                                  const ruler&, const drawing_options&));

} // namespace turncloth

#endif
