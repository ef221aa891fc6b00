// Lengths cut from stock, drawn to scale on pages to be printed.
//
//   pages_of(stock_cuts, ruler, options)      pages as values (page/page.hpp), at least one
//   drawings_of(stock_cuts, ruler, options)   the same, each an SVG document
//   drawing_of(stock_cuts, ruler, options)    the first, which says where it is not the only one
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

#include <turncloth/draw/detail/stock_bar.hpp>

#include <algorithm>
#include <cstddef>
#include <string>
#include <tuple>
#include <utility>
#include <vector>

namespace turncloth {

namespace detail {

inline constexpr pen stock_pen = {"stock", 0.6}, length_pen = {"piece", 0.2}, lost_pen = {"lost", 0.15, {0.3, 0.3}},
                     stock_left_pen = {"left-over", 0.25, {0.4, 1}}, stock_cut_pen = {"cutting", 0.5, {2.5, 1.5}};

/// All bars, on pages of one size. From the largest scale at which the longest is as long as the page is wide; bars that
/// find no room go on to further pages.
class stock_drawer {
public:
    stock_drawer(const bar_plan& p, const drawing_options& options, double width, double height)
        : plan_(&p), frame_(frame_words_of(p), options, width, height) {
        const page_area room = frame_.picture;
        scale_ = scale_for([&](double scale) { return p.longest() <= room.width * scale; });
        pages_.emplace_back();
        double used = 0, most = 0;
        for (const stock_bar& b : p.bars) {
            placed_bar placed = bar_placer(b, scale_, room, frame_.by).make();
            if (used + placed.height() > room.height && !pages_.back().empty()) {
                pages_.emplace_back();
                used = 0;
            }
            used += placed.height() + page_gap;
            most = std::max(most, used);
            pages_.back().push_back(std::move(placed));
        }
        frame_.take_only(most);
        for (std::vector<placed_bar>& bars : pages_)
            settle(bars);
    }

    /// The fewest pages, then the larger scale.
    auto rank() const { return std::tuple(pages_.size(), scale_); }

    std::vector<page> draw() const {
        std::vector<page> all;
        for (std::size_t i = 0; i < pages_.size(); ++i) {
            page on = frame_.begin(description(pages_[i]));
            for (const placed_bar& b : pages_[i]) {
                draw_bar(on, b);
                write_words(on, b);
                draw_labels(on, b);
                draw_figures(on, b);
            }
            all.push_back(frame_.draw(std::move(on), scale_, pages_.size() > 1 ? page_words_of(i) : ""));
        }
        return all;
    }

private:
    static frame_words frame_words_of(const bar_plan& p) {
        frame_words words = p.words;
        words.most_list = 0.2;
        words.in_pages = true;
        words.legend = {{stock_pen, "edge of the stock"}, {length_pen, "piece"}, {stock_cut_pen, "cut"}};
        if (p.loses)
            words.legend.push_back({lost_pen, "lost in the cut"});
        if (std::any_of(p.bars.begin(), p.bars.end(), [](const stock_bar& b) { return !b.left.empty(); }))
            words.legend.push_back({stock_left_pen, "left over"});
        return words;
    }

    /// The room that bars of a page leave is shared out between them, but not so that they stand far apart.
    void settle(std::vector<placed_bar>& bars) const {
        double left = frame_.picture.height, y = frame_.picture.y;
        for (const placed_bar& b : bars)
            left -= b.height() + page_gap;
        const double more = std::clamp(left / static_cast<double>(std::max<std::size_t>(1, bars.size())), 0.0, 8.0);
        for (placed_bar& b : bars) {
            b.bar.y = y + b.above;
            y += b.height() + page_gap + more;
        }
    }

    std::string description(const std::vector<placed_bar>& bars) const {
        std::string all;
        const auto add = [&](const std::string& words) {
            all.append(all.empty() ? "" : " ").append(plain(words)).append(".");
        };
        for (const auto* words : {&plan_->words.facts, &plan_->words.lists[0]})
            for (const std::string& w : *words)
                add(w);
        for (const placed_bar& b : bars)
            add(joined({b.what->times, " from ", b.what->stock, ": ", b.what->pieces}));
        return all;
    }

    /// "page 2 of 3: ways to cut 5 to 8 of 11"
    std::string page_words_of(std::size_t which) const {
        std::size_t before = 0;
        for (std::size_t i = 0; i < which; ++i)
            before += pages_[i].size();
        const std::size_t here = pages_[which].size();
        std::string ways = std::to_string(before + 1);
        if (here > 1)
            ways.append(" to ").append(std::to_string(before + here));
        return joined({"page ", std::to_string(which + 1), " of ", std::to_string(pages_.size()),
                       here > 1 ? ": ways to cut " : ": way to cut ", ways, " of ",
                       std::to_string(plan_->bars.size())});
    }

    static double x(const placed_bar& b, double stock) { return b.bar.x + stock / b.what->length * b.bar.width; }
    static page_area part(const placed_bar& b, double from, double to) {
        return {x(b, from), b.bar.y, x(b, to) - x(b, from), b.bar.height};
    }

    void draw_bar(page& on, const placed_bar& b) const {
        // Lines that stand close together are thin, so that they can be told apart.
        const double most = std::max(0.05, b.closest / 5);
        const stock_bar& bar = *b.what;
        for (const bar_piece& p : bar.places)
            on.draw_closed(length_pen.no_heavier_than(most), part(b, p.from, p.to));
        if (plan_->loses)
            for (const bar_cut& c : bar.cuts)
                on.draw_closed(lost_pen.no_heavier_than(most), part(b, c.at, c.to));
        on.draw_closed(stock_pen, part(b, 0, bar.left_from));
        if (!bar.left.empty())
            on.draw_closed(stock_left_pen, part(b, bar.left_from, bar.length));
        for (const bar_cut& c : bar.cuts)
            on.draw(stock_cut_pen.no_heavier_than(most), {{x(b, c.at), b.bar.y}, {x(b, c.at), b.bar.bottom()}});
    }

    /// Over the bar what is in it; in every piece as much as it has room for: its letter, name and length, or less.
    void write_words(page& on, const placed_bar& b) const {
        double y = b.top() - 0.8;
        on.write({b.bar.x, y + line_height}, b.what->times, body_size).bold = true;
        for (const std::string& line : b.heading)
            on.write({b.bar.x + b.times_width, y += line_height}, line, body_size);
        for (const bar_piece& p : b.what->places) {
            const std::string letter = letter_of(p.kind), named = joined({letter, ": ", plan_->kinds[p.kind]});
            write_in(on, part(b, p.from, p.to), {{named, plan_->sizes[p.kind]}, {named}, {letter}});
        }
        if (!b.what->left.empty())
            write_in(on, part(b, b.what->left_from, b.what->length),
                     {{"left over", plain(b.what->left)}, {"left over"}});
    }
    /// The first that fits.
    void write_in(page& on, const page_area& room, const std::vector<std::vector<std::string>>& choice) const {
        for (const std::vector<std::string>& lines : choice) {
            if (!std::all_of(lines.begin(), lines.end(),
                             [&](const std::string& line) { return bar_placer::fits_in(frame_.by, line, room.width); }))
                continue;
            double y = room.y + (room.height - static_cast<double>(lines.size()) * small_line_height) / 2 - 0.6;
            for (const std::string& line : lines)
                on.write({room.middle().x, y += small_line_height}, line, small_size, set_from::middle);
            return;
        }
    }

    /// A stroke along pieces that share a letter, and a line to it.
    static void draw_labels(page& on, const placed_bar& b) {
        const double top = b.bar.y, near = top - 1, far = top - label_lead;
        for (const bar_label& l : b.labels) {
            const double middle = (l.from + l.to) / 2;
            if (l.several)
                on.draw(leader_pen, {{l.from, near}, {l.to, near}});
            on.draw(leader_pen,
                    {{middle, l.several ? near : top}, {middle, near - 0.7}, {l.centre, far + 0.7}, {l.centre, far}});
            on.write({l.centre, far - 0.8}, l.lines[0], small_size, set_from::middle);
        }
    }

    static void draw_figures(page& on, const placed_bar& b) {
        const double top = b.bar.bottom(), far = top + figure_lead - 0.6;
        for (const bar_label& f : b.figures) {
            on.draw(leader_pen, {{f.from, top}, {f.from, top + 1.5}, {f.centre, far - 1}, {f.centre, far}});
            const double across = static_cast<double>(f.lines.size()) * small_line_height;
            for (std::size_t i = 0; i < f.lines.size(); ++i) {
                const double baseline = (static_cast<double>(i) + 0.8) * small_line_height;
                if (b.turned)
                    on.write({f.centre - across / 2 + baseline, far + 0.8}, f.lines[i], small_size, set_from::end)
                        .turned = 90;
                else
                    on.write({f.centre, far + 0.3 + baseline}, f.lines[i], small_size, set_from::middle);
            }
        }
    }

    const bar_plan* plan_;
    page_frame frame_;
    double scale_ = 1;
    std::vector<std::vector<placed_bar>> pages_{};
};

} // namespace detail

/// Throws range_error for a ruler whose graduation is not above zero, stock over 1 km long, or over 100000 pieces.
template <length_unit Unit>
std::vector<page> pages_of(const stock_cuts<Unit>& cuts, const ruler& by = {}, const drawing_options& options = {}) {
    const detail::bar_plan plan = detail::bar_planner<Unit>(cuts, by).make(options.project);
    return detail::best_page(
               options, [&](double width, double height) { return detail::stock_drawer(plan, options, width, height); })
        .draw();
}

/// Throws as pages_of.
template <length_unit Unit>
std::vector<std::string> drawings_of(const stock_cuts<Unit>& cuts, const ruler& by = {},
                                     const drawing_options& options = {}) {
    std::vector<std::string> all;
    for (const page& p : pages_of(cuts, by, options))
        all.push_back(to_svg(p));
    return all;
}

/// Throws as pages_of.
template <length_unit Unit>
std::string drawing_of(const stock_cuts<Unit>& cuts, const ruler& by = {}, const drawing_options& options = {}) {
    return to_svg(pages_of(cuts, by, options).front());
}

TURNCLOTH_ONCE(std::vector<page> pages_of(const stock_cuts<inch>&, const ruler&, const drawing_options&));
TURNCLOTH_ONCE(std::vector<page> pages_of(const stock_cuts<centimetre>&, const ruler&, const drawing_options&));
TURNCLOTH_ONCE(std::string drawing_of(const stock_cuts<inch>&, const ruler&, const drawing_options&));
TURNCLOTH_ONCE(std::string drawing_of(const stock_cuts<centimetre>&, const ruler&, const drawing_options&));
TURNCLOTH_ONCE(std::vector<std::string> drawings_of(const stock_cuts<inch>&, const ruler&, const drawing_options&));
TURNCLOTH_ONCE(std::vector<std::string> drawings_of(const stock_cuts<centimetre>&, const ruler&,
                                                    const drawing_options&));

} // namespace turncloth

#endif
