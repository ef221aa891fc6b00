// Lengths cut from stock, drawn to scale on a page to be printed: an SVG 1.1 document.
//
//   drawing_of(stock_cuts)                    A4, inches and centimetres; the first page where there are several
//   drawing_of(stock_cuts, ruler, options)    the units and graduations of a ruler (measure/write.hpp)
//   drawings_of(stock_cuts, ruler, options)   every page
//
//   const auto ties = stock_for<inch>("ribbon", {{"tie", "22 1/2"_in, 8}, {"loop", "4 3/4"_in, 12}}, {{108_in}});
//   save("ribbon.svg", drawing_of(ties, {}, {.project = s.name}));
//
// Each way to cut is one bar, all to one scale, under words that say how many pieces of stock are cut so. The pieces
// lie in it in the order to cut, each with the letter by which the list names it; below stands how far from the start
// every cut is, with the loss of those before it allowed for. What is left over at the end has a broken outline.
//
// Included by itself, as sheet/purchases.hpp is.
#ifndef TURNCLOTH_DRAW_STOCK_HPP
#define TURNCLOTH_DRAW_STOCK_HPP

#include <turncloth/draw/detail/stock_layout.hpp>
#include <turncloth/draw/piece.hpp>

#include <algorithm>
#include <cstddef>
#include <string>
#include <utility>
#include <vector>

namespace turncloth {

namespace detail {

inline constexpr pen lost_pen = {"", 0.15, {0.3, 0.3}};

class bar_drawer {
public:
    /// `page` counts from 0.
    bar_drawer(const bar_plan& p, const bar_pages& at, std::size_t page)
        : plan_(p),
          at_(at),
          page_(page),
          svg_(at.width, at.height, (p.project.empty() ? "" : p.project + ": ") + name(), description()) {}

    std::string draw() {
        for (const placed_bar& b : bars()) {
            draw_bar(b);
            draw_heading(b);
            name_pieces(b);
            draw_labels(b);
            draw_figures(b);
        }
        draw_list(svg_, at_.list);
        draw_foot(svg_, foot());
        draw_print(svg_, at_.print, at_.print_lines);
        return svg_.done();
    }

private:
    const std::vector<placed_bar>& bars() const { return at_.pages[page_]; }
    std::string name() const { return "lengths of " + plan_.name; }

    std::string description() const {
        std::string all;
        const auto add = [&](const std::string& words) {
            all.append(all.empty() ? "" : " ").append(plain(words)).append(".");
        };
        for (const auto* words : {&plan_.facts, &plan_.list})
            for (const std::string& w : *words)
                add(w);
        for (const placed_bar& b : bars())
            add(joined({b.what->times, " from ", b.what->stock, ": ", b.what->pieces}));
        return all;
    }

    static double x(const placed_bar& b, double stock) { return b.bar.x + stock / b.what->length * b.bar.width; }
    static box part(const placed_bar& b, double from, double to) {
        return {x(b, from), b.bar.y, x(b, to) - x(b, from), b.bar.height};
    }

    /// Lines that stand close together are thin, so that they can be told apart.
    static pen thinned(const pen& p, const placed_bar& b) { return p.no_heavier_than(std::max(0.05, b.closest / 5)); }

    void draw_bar(const placed_bar& b) {
        svg_.open("piece", thinned(laid_pen, b));
        for (const bar_piece& p : b.what->places)
            svg_.rectangle(part(b, p.from, p.to));
        svg_.close();
        if (plan_.loses) {
            svg_.open("lost", thinned(lost_pen, b));
            for (const bar_cut& c : b.what->cuts)
                svg_.rectangle(part(b, c.at, c.to));
            svg_.close();
        }
        svg_.open("stock", cloth_pen);
        svg_.rectangle(part(b, 0, b.what->left_from));
        svg_.close();
        if (!b.what->left.empty()) {
            svg_.open("left-over", kept_pen);
            svg_.rectangle(part(b, b.what->left_from, b.what->length));
            svg_.close();
        }
        svg_.open("cutting", thinned(cut_across_pen, b));
        for (const bar_cut& c : b.what->cuts)
            svg_.line({x(b, c.at), b.bar.y}, {x(b, c.at), b.bar.bottom()});
        svg_.close();
    }

    void draw_heading(const placed_bar& b) {
        double y = b.top() - 0.8;
        svg_.text({b.bar.x, y + line_height}, b.what->times, body, anchor::start, false, true);
        for (const std::string& line : b.heading)
            svg_.text({b.bar.x + b.times_width, y += line_height}, line, body);
    }

    /// In every piece as much as it has room for: its letter, name and length, or its letter alone.
    void name_pieces(const placed_bar& b) {
        for (const bar_piece& p : b.what->places) {
            const std::string letter = letters(p.kind), named = joined({letter, ": ", plan_.kinds[p.kind]});
            write_in(part(b, p.from, p.to), {{named, plan_.sizes[p.kind]}, {named}, {letter}});
        }
        if (!b.what->left.empty())
            write_in(part(b, b.what->left_from, b.what->length), {{"left over", plain(b.what->left)}, {"left over"}});
    }

    /// The first that fits.
    void write_in(const box& room, const std::vector<std::vector<std::string>>& choice) {
        for (const std::vector<std::string>& lines : choice) {
            bool fits = true;
            for (const std::string& line : lines)
                fits = fits && fits_in(line, room.width);
            if (!fits)
                continue;
            double y = room.y + (room.height - static_cast<double>(lines.size()) * small_line_height) / 2 - 0.6;
            for (const std::string& line : lines)
                svg_.text({room.x + room.width / 2, y += small_line_height}, line, small, anchor::middle);
            return;
        }
    }

    /// A stroke along pieces that share a letter, and a line to it.
    void draw_labels(const placed_bar& b) {
        if (b.labels.empty())
            return;
        const double top = b.bar.y, near = top - 1, far = top - label_lead;
        svg_.open("leader", thin_pen);
        for (const bar_label& l : b.labels) {
            const double middle = (l.from + l.to) / 2;
            if (l.several)
                svg_.path({{l.from, near}, {l.to, near}});
            svg_.path({{middle, l.several ? near : top}, {middle, near - 0.7}, {l.centre, far + 0.7}, {l.centre, far}});
        }
        svg_.close();
        for (const bar_label& l : b.labels)
            svg_.text({l.centre, far - 0.8}, l.words, small, anchor::middle);
    }

    void draw_figures(const placed_bar& b) {
        if (b.figures.empty())
            return;
        const double top = b.bar.bottom(), far = top + figure_lead - 0.6;
        svg_.open("leader", thin_pen);
        for (const bar_figure& f : b.figures)
            svg_.path({{f.at, top}, {f.at, top + 1.5}, {f.centre, far - 1}, {f.centre, far}});
        svg_.close();
        for (const bar_figure& f : b.figures) {
            const double across = static_cast<double>(f.lines.size()) * small_line_height;
            for (std::size_t i = 0; i < f.lines.size(); ++i) {
                const double baseline = (static_cast<double>(i) + 0.8) * small_line_height;
                if (b.turned)
                    svg_.text({f.centre - across / 2 + baseline, far + 0.8}, f.lines[i], small, anchor::end, true);
                else
                    svg_.text({f.centre, far + 0.3 + baseline}, f.lines[i], small, anchor::middle);
            }
        }
    }

    foot_of_page foot() const {
        foot_of_page made{.where = at_.foot, .scale = at_.scale, .legend = {}, .title = {}};
        std::vector<std::string> facts = plan_.facts;
        if (at_.pages.size() > 1)
            facts.insert(facts.begin(), page_words());
        made.title = title_rows_of(plan_.project, name(), facts);
        auto& lines = made.legend;
        lines.push_back({cloth_pen, "edge of the stock"});
        lines.push_back({laid_pen, "piece"});
        lines.push_back({cut_across_pen, "cut"});
        if (plan_.loses)
            lines.push_back({lost_pen, "lost in the cut"});
        if (std::any_of(bars().begin(), bars().end(), [](const placed_bar& b) { return !b.what->left.empty(); }))
            lines.push_back({kept_pen, "left over"});
        return made;
    }

    /// "page 2 of 3: ways to cut 5 to 8 of 11"
    std::string page_words() const {
        std::size_t before = 0;
        for (std::size_t i = 0; i < page_; ++i)
            before += at_.pages[i].size();
        std::string ways = std::to_string(before + 1);
        if (bars().size() > 1)
            ways.append(" to ").append(std::to_string(before + bars().size()));
        return joined({"page ", std::to_string(page_ + 1), " of ", std::to_string(at_.pages.size()),
                       bars().size() > 1 ? ": ways to cut " : ": way to cut ", ways, " of ",
                       std::to_string(plan_.bars.size())});
    }

    const bar_plan& plan_;
    const bar_pages& at_;
    std::size_t page_;
    svg_page svg_;
};

} // namespace detail

/// One document for each page, at least one. Throws range_error for a ruler whose graduation is not above zero.
template <length_unit Unit>
std::vector<std::string> drawings_of(const stock_cuts<Unit>& cuts, const ruler& by = {},
                                     const drawing_options& options = {}) {
    const detail::bar_plan what = detail::bars_of(cuts, by, options);
    const detail::bar_pages at = detail::bars_on(what, options.on);
    std::vector<std::string> all;
    for (std::size_t page = 0; page < at.pages.size(); ++page)
        all.push_back(detail::bar_drawer(what, at, page).draw());
    return all;
}

/// The first page, which says where it is not the only one. Throws as drawings_of.
template <length_unit Unit>
std::string drawing_of(const stock_cuts<Unit>& cuts, const ruler& by = {}, const drawing_options& options = {}) {
    return std::move(drawings_of(cuts, by, options).front());
}

TURNCLOTH_ONCE(std::vector<std::string> drawings_of(const stock_cuts<inch>&, const ruler&, const drawing_options&));
TURNCLOTH_ONCE(std::vector<std::string> drawings_of(const stock_cuts<centimetre>&, const ruler&,
                                                    const drawing_options&));

} // namespace turncloth

#endif
