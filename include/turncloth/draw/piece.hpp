// A piece drawn to scale on a page to be printed: an SVG 1.1 document.
//
//   drawing_of(piece)                    A4, inches and centimetres
//   drawing_of(piece, ruler, options)    the units and graduations of a ruler (measure/write.hpp)
//   drawing_options{project, on}         the project's name for the title block, and the paper
//
//   const sheet<inch> s = sheet_of(roll);
//   save("outer.svg", drawing_of(s.pieces[0], {}, {.project = s.name}));
//
// The page is in millimetres and the piece at the largest of 1:1, 1:2, 1:4, 1:5, 1:8, 1:10, 1:20, ... that leaves room
// for its words. Every kind of line has its own pattern and weight, in black. Figures are rounded to the ruler, each
// from the exact length; what is drawn is not rounded.
#ifndef TURNCLOTH_DRAW_PIECE_HPP
#define TURNCLOTH_DRAW_PIECE_HPP

#include <turncloth/draw/detail/page_parts.hpp>

#include <algorithm>
#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace turncloth {

namespace detail {

// A finished edge is thin and hardly broken, so that a fold or stitching on it can be told apart from it.
inline constexpr pen cut_pen = {"", 0.6}, finished_pen = {"", 0.2, {10, 1.2}};

constexpr pen pen_of(line_kind kind) {
    switch (kind) {
    case line_kind::fold:
        return {"", 0.4, {3, 1.5}};
    case line_kind::stitching:
        return stitching_pen;
    case line_kind::mark:
        return {"", 0.25, {6, 1, 1, 1}};
    case line_kind::placement:
        return {"", 0.25, {1, 1}};
    case line_kind::slit:
        break;
    }
    return {"", 0.7, {0.7, 0.7}};
}

constexpr stroke_name legend_of(line_kind kind) {
    switch (kind) {
    case line_kind::fold:
        return "fold";
    case line_kind::stitching:
        return "stitching";
    case line_kind::mark:
        return "mark";
    case line_kind::placement:
        return "placement line";
    case line_kind::slit:
        break;
    }
    return "slit";
}

inline constexpr line_kind all_line_kinds[] = {line_kind::fold, line_kind::stitching, line_kind::mark,
                                               line_kind::placement, line_kind::slit};

class drawer {
public:
    drawer(const plan& p, const arrangement& where)
        : plan_(p), at_(where), svg_(where.page.width, where.page.height, title(p), description()) {}

    std::string draw() {
        draw_piece();
        draw_dimensions();
        draw_beside();
        draw_above();
        draw_list();
        draw_legend();
        draw_foot(svg_, at_, at_.scale);
        return svg_.done();
    }

private:
    using manner = label_side::manner;

    static std::string title(const plan& p) { return (p.project.empty() ? "" : p.project + ": ") + p.piece; }
    std::string description() const {
        std::string all =
            plan_.count + ", " + plan_.cut_size + ", " + plan_.finished_size + ", " + scale_text(at_.scale) + '.';
        for (const std::string& e : plan_.edges)
            all += ' ' + e + '.';
        for (const auto* side : {&plan_.beside, &plan_.above})
            for (const plan_label& l : *side)
                all += ' ' + l.what + ", " + l.distance() + '.';
        return all;
    }

    // The piece.

    void draw_piece() {
        if (plan_.has_allowances()) {
            svg_.open("finished", finished_pen);
            const box& f = plan_.finished;
            svg_.rectangle({at_.x(f.x), at_.y(f.y), f.width / at_.scale, f.height / at_.scale});
            svg_.close();
        }
        for (const line_kind kind : all_line_kinds)
            draw_lines(kind);
        svg_.open("cut", cut_pen);
        svg_.rectangle({at_.x(0), at_.y(0), plan_.width / at_.scale, plan_.height / at_.scale});
        svg_.close();
    }

    void draw_lines(line_kind kind) {
        if (!plan_.has(kind))
            return;
        svg_.open(legend_of(kind), pen_of(kind));
        for (const plan_line& l : plan_.lines)
            if (l.kind == kind)
                svg_.line({at_.x(l.from.x), at_.y(l.from.y)}, {at_.x(l.to.x), at_.y(l.to.y)});
        svg_.close();
    }

    // Dimensions: the finished size next to the piece, the cut size outside it.

    void draw_dimensions() {
        const box& f = plan_.finished;
        const bool allowances = plan_.has_allowances();
        svg_.open("dimension", thin_pen);
        double row = 1;
        if (allowances) {
            level_dimension(f.x, f.right(), f.bottom(), row);
            upright_dimension(f.y, f.bottom(), f.x, row++);
        }
        level_dimension(0, plan_.width, plan_.height, row);
        upright_dimension(0, plan_.height, 0, row);
        svg_.close();
        if (allowances)
            name_dimensions(plan_.finished_width, plan_.finished_height, f, 1);
        name_dimensions(plan_.cut_width, plan_.cut_height, {0, 0, plan_.width, plan_.height}, row);
    }

    double row_below(double row) const { return at_.core.bottom() + row * dimension_row; }
    double row_left(double row) const { return at_.core.x - row * dimension_row + dimension_row / 2; }

    void level_dimension(double from, double to, double start, double row) {
        const double y = row_below(row);
        svg_.line({at_.x(from), y}, {at_.x(to), y});
        for (const double x : {at_.x(from), at_.x(to)}) {
            svg_.line({x, at_.y(start)}, {x, y + 1});
            tick(svg_, {x, y});
        }
    }

    void upright_dimension(double from, double to, double start, double row) {
        const double x = row_left(row);
        svg_.line({x, at_.y(from)}, {x, at_.y(to)});
        for (const double y : {at_.y(from), at_.y(to)}) {
            svg_.line({at_.x(start), y}, {x - 1, y});
            tick(svg_, {x, y});
        }
    }

    void name_dimensions(const std::string& level, const std::string& upright, const box& of, double row) {
        if (stands_over(level, of.width / at_.scale))
            svg_.text({at_.x(of.x + of.width / 2), row_below(row) - 1}, level, body, anchor::middle);
        else
            svg_.text({at_.piece.right() + past_end, row_below(row) + 0.35 * body}, level, body);
        if (stands_over(upright, of.height / at_.scale))
            svg_.text({row_left(row) - 1, at_.y(of.y + of.height / 2)}, upright, body, anchor::middle, true);
        else
            svg_.text({row_left(row) + 0.35 * body, at_.piece.bottom() + past_end}, upright, body, anchor::end, true);
    }

    // Labels.

    struct placed {
        const plan_label* label;
        std::string number;
        double wanted;
    };

    /// What is written on one side: every label, or every so-manieth number.
    std::vector<placed> chosen(const std::vector<plan_label>& labels, const label_side& side, bool down) const {
        std::vector<placed> all;
        for (std::size_t i = 0; i < labels.size(); ++i) {
            const std::size_t n = side.first + i;
            if (side.how != manner::numbered || n % side.every == 0)
                all.push_back({&labels[i], std::to_string(n), down ? at_.y(labels[i].at) : at_.x(labels[i].at)});
        }
        return all;
    }

    /// `size` gives what a label takes along the margin.
    template <class Size>
    static std::vector<double> spread_out(const std::vector<placed>& all, Size size, double from, double to) {
        std::vector<double> wanted(all.size()), sizes(all.size());
        for (std::size_t i = 0; i < all.size(); ++i) {
            wanted[i] = all[i].wanted;
            sizes[i] = size(all[i]);
        }
        return spread(wanted, sizes, from, to);
    }

    void draw_beside() {
        const std::vector<placed> all = chosen(plan_.beside, at_.beside, true);
        const bool numbered = at_.beside.how == manner::numbered;
        const auto size = [numbered](const placed&) { return numbered ? number_height : label_height; };
        const std::vector<double> centres = spread_out(all, size, at_.beside_from, at_.beside_to);
        const double edge = at_.core.right();
        leaders(all, [&](std::size_t i) {
            svg_.path({{at_.x(all[i].label->start), all[i].wanted},
                       {edge + 1.5, all[i].wanted},
                       {edge + lead - 1.5, centres[i]},
                       {edge + lead, centres[i]}});
        });
        for (std::size_t i = 0; i < all.size(); ++i) {
            const double x = edge + lead + 1;
            if (numbered) {
                svg_.text({x, centres[i] + 0.35 * body}, all[i].number, body);
                continue;
            }
            svg_.text({x, centres[i] - 0.5}, all[i].label->distance(), body);
            svg_.text({x, centres[i] - 0.5 + label_line}, shortened(all[i].label->what, body, longest_label), body);
        }
    }

    void draw_above() {
        const std::vector<placed> all = chosen(plan_.above, at_.above, false);
        const auto how = at_.above.how;
        const auto size = [how](const placed& p) {
            if (how == manner::numbered)
                return text_width(p.number, body) + 2;
            return how == manner::level ? label_width(*p.label) + gap : label_height;
        };
        const std::vector<double> centres = spread_out(all, size, at_.picture.x, at_.picture.right());
        const double edge = at_.core.y;
        leaders(all, [&](std::size_t i) {
            svg_.path({{all[i].wanted, at_.y(all[i].label->start)},
                       {all[i].wanted, edge - 1.5},
                       {centres[i], edge - lead + 1.5},
                       {centres[i], edge - lead}});
        });
        for (std::size_t i = 0; i < all.size(); ++i)
            write_above(all[i], {centres[i], edge - lead - 1});
    }

    void write_above(const placed& p, page_point at) {
        const std::string what = shortened(p.label->what, body, longest_label);
        if (at_.above.how == manner::numbered) {
            svg_.text(at, p.number, body, anchor::middle);
        } else if (at_.above.how == manner::level) {
            svg_.text({at.x, at.y - label_line}, p.label->distance(), body, anchor::middle);
            svg_.text(at, what, body, anchor::middle);
        } else {
            svg_.text({at.x - 0.5, at.y}, p.label->distance(), body, anchor::start, true);
            svg_.text({at.x - 0.5 + label_line, at.y}, what, body, anchor::start, true);
        }
    }

    template <class Draw>
    void leaders(const std::vector<placed>& all, Draw draw) {
        if (all.empty())
            return;
        svg_.open("leader", thin_pen);
        for (std::size_t i = 0; i < all.size(); ++i)
            draw(i);
        svg_.close();
    }

    void draw_list() {
        if (at_.entries.empty())
            return;
        for (std::size_t i = 0; i < at_.entries.size(); ++i) {
            const std::size_t column = i / at_.list_rows, row = i % at_.list_rows;
            svg_.text({at_.list.x + static_cast<double>(column) * at_.column,
                       at_.list.y + static_cast<double>(row) * small_line_height},
                      shortened(at_.entries[i], small, at_.column - 1), small);
        }
    }

    void draw_legend() {
        legend all(svg_, {at_.foot.x, at_.foot.y + 3});
        all.entry(cut_pen, "cut edge");
        if (plan_.has_allowances())
            all.entry(finished_pen, "finished edge");
        for (const line_kind kind : all_line_kinds)
            if (plan_.has(kind))
                all.entry(pen_of(kind), legend_of(kind).text());
    }

    const plan& plan_;
    const arrangement& at_;
    svg_page svg_;
};

} // namespace detail

/// Throws range_error for a ruler whose graduation is not above zero.
template <length_unit Unit>
std::string drawing_of(const sheet_piece<Unit>& piece, const ruler& by = {}, const drawing_options& options = {}) {
    const detail::plan what = detail::plan_of(piece, by, options);
    return detail::drawer(what, detail::arrangement_of(what, options.on)).draw();
}

TURNCLOTH_ONCE(std::string drawing_of(const sheet_piece<inch>&, const ruler&, const drawing_options&));
TURNCLOTH_ONCE(std::string drawing_of(const sheet_piece<centimetre>&, const ruler&, const drawing_options&));

} // namespace turncloth

#endif
