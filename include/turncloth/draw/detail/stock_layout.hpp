// Where everything goes on the pages of a drawing of lengths cut from stock.
//
//   detail::bar_arranger(plan, width, height).make()    the scale, and the bars page by page, each with its words
//
// From the foot upward: small print, the foot (legend, scale, title), the list; the bars have the rest, at the largest
// scale of the series that drawings of pieces use too at which the longest is as long as the page is wide. Bars that
// find no room go on to further pages.
//
// Below a bar its cuts are figured: level where they stand close enough to their cuts, else upright, else so upright
// that only every second, fifth, ... is written. Above it stand the letters of pieces too narrow to hold them. What is
// not written for want of room is told in the words over the bar, which say everything that is in it, in order.
#ifndef TURNCLOTH_DRAW_DETAIL_STOCK_LAYOUT_HPP
#define TURNCLOTH_DRAW_DETAIL_STOCK_LAYOUT_HPP

#include <turncloth/draw/detail/stock_plan.hpp>

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <string>
#include <utility>
#include <vector>

namespace turncloth {

namespace detail {

inline constexpr double bar_height = 9, label_lead = 5.5, figure_lead = 7, upright_figure = small_line_height + 0.6;

/// Within a piece of this width on paper.
inline bool fits_in(const std::string& words, double width) { return text_width(words, small) + 1.2 <= width; }

/// What stands above a bar: a letter, or how many pieces side by side have it.
struct bar_label {
    double from, to, centre;
    std::string words;
    bool several;
};

struct bar_figure {
    double at, centre;
    std::vector<std::string> lines;
};

struct placed_bar {
    const stock_bar* what;
    std::vector<std::string> heading;
    double times_width = 0; ///< which the heading leaves free at the left
    std::vector<bar_label> labels;
    std::vector<bar_figure> figures;
    bool turned = false; ///< the figures
    double closest = 0;  ///< between cuts, on paper
    box bar{};
    double above = 0, below = 0; ///< what it takes beyond the bar
    double top() const { return bar.y - above; }
    double height() const { return above + bar.height + below; }
};

struct bar_pages {
    double width = 0, height = 0, scale = 1;
    box foot{}, print{};
    page_list list;
    std::vector<std::string> print_lines;
    std::vector<std::vector<placed_bar>> pages;
};

/// One bar at its place across `room`, no higher than that with its words; how far down it stands is not settled yet.
class bar_placer {
public:
    bar_placer(const stock_bar& b, double scale, const box& room)
        : from_(b), scale_(scale), left_(room.x), right_(room.right()), height_(room.height) {
        made_.what = &b;
        made_.bar = {left_, 0, b.length / scale, bar_height};
    }

    placed_bar make() {
        add_labels();
        add_figures();
        add_heading();
        made_.closest = made_.bar.width;
        for (std::size_t i = 1; i < from_.cuts.size(); ++i)
            made_.closest = std::min(made_.closest, (from_.cuts[i].at - from_.cuts[i - 1].at) / scale_);
        return std::move(made_);
    }

private:
    double x(double stock) const { return left_ + stock / scale_; }

    void add_labels() {
        for (std::size_t i = 0, n = 0; i < from_.places.size(); i += n) {
            const bar_piece& first = from_.places[i];
            n = 1;
            while (i + n < from_.places.size() && from_.places[i + n].kind == first.kind)
                ++n;
            const std::string letter = letters(first.kind);
            if (!fits_in(letter, (first.to - first.from) / scale_))
                add_label(first.from, from_.places[i + n - 1].to,
                          n > 1 ? std::to_string(n).append(" ").append(letter) : letter, n > 1);
        }
        const bool left_named = from_.left.empty() || fits_in("left over", (from_.length - from_.left_from) / scale_);
        if (!left_named)
            add_label(from_.left_from, from_.length, "left over", false);
        if (!spread_labels()) {
            made_.labels.clear();
            notes_.push_back("too narrow to be lettered but in this order");
            if (!left_named)
                add_label(from_.left_from, from_.length, "left over", false);
            spread_labels();
        }
    }

    void add_label(double from, double to, std::string words, bool several) {
        made_.labels.push_back({x(from), x(to), 0, std::move(words), several});
    }

    bool spread_labels() {
        std::vector<double> wanted, sizes;
        double total = 0;
        for (const bar_label& l : made_.labels) {
            wanted.push_back((l.from + l.to) / 2);
            sizes.push_back(text_width(l.words, small) + 2);
            total += sizes.back();
        }
        if (total > right_ - left_)
            return false;
        const std::vector<double> centres = spread(wanted, sizes, left_, right_);
        for (std::size_t i = 0; i < centres.size(); ++i)
            made_.labels[i].centre = centres[i];
        return true;
    }

    /// In the first of the manners that has room for all. In the last, cuts that stand apart are all figured, and so
    /// few of the others that there is room, whatever they are.
    void add_figures() {
        number_crowded();
        if (place_figures(false, false, 1) || place_figures(true, false, 1))
            return;
        const std::size_t every = round_number([&](std::size_t n) { return place_figures(true, true, n); });
        if (every > 1)
            notes_.push_back(joined(
                {"every ", std::to_string(every), every == 2 ? "nd" : "th", " cut figured where they are close"}));
    }

    /// Numbers the cuts of each crowd from 1; a cut that stands apart from the one before it has 0.
    void number_crowded() {
        double before = 0;
        for (const bar_cut& c : from_.cuts) {
            const bool apart = (c.at - before) / scale_ >= upright_figure;
            crowded_.push_back(apart ? 0 : (crowded_.empty() ? 0 : crowded_.back()) + 1);
            before = c.at;
        }
    }

    /// False where it would be too crowded: figures that stand far from their cuts are hard to follow.
    bool place_figures(bool turned, bool in_a_line, std::size_t every) {
        constexpr double level_stray = 8, turned_stray = 16;
        std::vector<double> wanted, sizes;
        double total = 0, depth = 0;
        made_.figures.clear();
        made_.turned = turned;
        for (std::size_t i = 0; i < from_.cuts.size(); ++i) {
            const bar_cut& c = from_.cuts[i];
            if (crowded_[i] % every != 0)
                continue;
            made_.figures.push_back({x(c.at), 0, in_a_line ? std::vector<std::string>{c.in_a_line} : c.figures});
            const std::vector<std::string>& lines = made_.figures.back().lines;
            double wide = 0;
            for (const std::string& line : lines)
                wide = std::max(wide, text_width(line, small));
            const double high = static_cast<double>(lines.size()) * small_line_height;
            wanted.push_back(x(c.at));
            sizes.push_back(turned ? high + upright_figure - small_line_height : wide + 2);
            total += sizes.back();
            depth = std::max(depth, turned ? wide : high);
        }
        if (total > right_ - left_)
            return false;
        const std::vector<double> centres = spread(wanted, sizes, left_, right_);
        double stray = 0;
        for (std::size_t i = 0; i < centres.size(); ++i) {
            made_.figures[i].centre = centres[i];
            stray = std::max(stray, std::fabs(centres[i] - wanted[i]));
        }
        made_.below = centres.empty() ? 0 : figure_lead + depth + 1;
        return stray <= (turned ? turned_stray : level_stray);
    }

    void add_heading() {
        std::string words = joined({"from ", from_.stock, ", leaving ", from_.left.empty() ? "nothing" : from_.left});
        for (const std::string& note : notes_)
            words.append(", ").append(unbroken(note));
        words.append(": ").append(from_.pieces);
        made_.times_width = text_width(from_.times, body) * 1.15 + 2;
        const double labels = made_.labels.empty() ? 1.5 : label_lead + small_line_height + 1.5;
        const double room = height_ - made_.bar.height - made_.below - labels;
        made_.heading = wrapped(words, body, right_ - left_ - made_.times_width,
                                static_cast<std::size_t>(std::max(1.0, room / line_height)));
        made_.above = static_cast<double>(made_.heading.size()) * line_height + labels;
    }

    const stock_bar& from_;
    double scale_, left_, right_, height_;
    std::vector<std::size_t> crowded_; ///< for each cut
    std::vector<std::string> notes_;
    placed_bar made_;
};

class bar_arranger {
public:
    bar_arranger(const bar_plan& p, double width, double height) : plan_(p), rest_(inside_margins(width, height)) {
        made_.width = width;
        made_.height = height;
    }

    bar_pages make() {
        made_.print_lines = print_lines_of(plan_.small_print, rest_.width);
        made_.print = lowest(rest_, print_height(made_.print_lines));
        made_.foot = lowest(rest_, std::max(foot_height, title_height(all_title_rows()) + 5));
        made_.list = list_at_foot(rest_, plan_.list, made_.height / 5);
        choose_scale();
        place_bars();
        return std::move(made_);
    }

private:
    /// With room for the number of the page.
    std::vector<title_row> all_title_rows() const {
        std::vector<title_row> rows = title_rows_of(plan_.project, plan_.name, plan_.facts);
        rows.insert(rows.end(), 2, {"", small, false});
        return rows;
    }

    void choose_scale() {
        double longest = 0;
        for (const stock_bar& b : plan_.bars)
            longest = std::max(longest, b.length);
        made_.scale =
            first_in_series<double>({1, 2, 4, 5, 8}, [&](double scale) { return longest <= rest_.width * scale; });
    }

    /// The room that bars of a page leave is shared out between them, but not so that they stand far apart.
    void place_bars() {
        made_.pages.emplace_back();
        double used = 0;
        for (const stock_bar& b : plan_.bars) {
            placed_bar placed = bar_placer(b, made_.scale, rest_).make();
            if (used + placed.height() > rest_.height && !made_.pages.back().empty()) {
                made_.pages.emplace_back();
                used = 0;
            }
            used += placed.height() + gap;
            made_.pages.back().push_back(std::move(placed));
        }
        for (std::vector<placed_bar>& page : made_.pages)
            settle(page);
    }

    void settle(std::vector<placed_bar>& page) const {
        double left = rest_.height;
        for (const placed_bar& b : page)
            left -= b.height() + gap;
        const double more =
            std::max(0.0, std::min(8.0, left / static_cast<double>(std::max<std::size_t>(1, page.size()))));
        double y = rest_.y;
        for (placed_bar& b : page) {
            b.bar.y = y + b.above;
            y += b.height() + gap + more;
        }
    }

    const bar_plan& plan_;
    bar_pages made_;
    box rest_{};
};

/// On its side where that makes the bars larger and takes no more pages.
inline bar_pages bars_on(const bar_plan& p, paper on) {
    const auto [narrow, wide] = sides_of(on);
    bar_pages upright = bar_arranger(p, narrow, wide).make(), sideways = bar_arranger(p, wide, narrow).make();
    return sideways.scale < upright.scale && sideways.pages.size() <= upright.pages.size() ? sideways : upright;
}

} // namespace detail

} // namespace turncloth

#endif
