// One bar of a drawing of lengths cut from stock: where its words stand.
//
//   bar_placer(bar, scale, room, by).make()     the bar at its place across a room, with its words
//
// Below a bar its cuts are figured: level where they stand close enough to their cuts, else upright, else so upright
// that only every second, fifth, ... is written. Above it stand the letters of pieces too narrow to hold them. What is
// not written for want of room is told in the words over the bar, which say everything that is in it, in order.
#ifndef TURNCLOTH_DRAW_DETAIL_STOCK_BAR_HPP
#define TURNCLOTH_DRAW_DETAIL_STOCK_BAR_HPP

#include <turncloth/draw/detail/stock_plan.hpp>
#include <turncloth/page/drawing.hpp>

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <string>
#include <utility>
#include <vector>

namespace turncloth::detail {

inline constexpr double bar_height = 9, label_lead = 5.5, figure_lead = 7, upright_figure = small_line_height + 0.6;

/// What stands above a bar, a letter or how many pieces side by side have it, or below it; `from` and `to` are where
/// across the page it belongs.
struct bar_label {
    double from, to, centre;
    std::vector<std::string> lines;
    bool several = false;
};

struct placed_bar {
    const stock_bar* what;
    std::vector<std::string> heading{};
    double times_width = 0; ///< which the heading leaves free at the left
    std::vector<bar_label> labels{}, figures{};
    bool turned = false; ///< the figures
    double closest = 0;  ///< between cuts, on paper
    page_area bar{};
    double above = 0, below = 0; ///< what it needs beyond the bar
    double top() const { return bar.y - above; }
    double height() const { return above + bar.height + below; }
};

/// How far down the page it stands is not settled yet; it is no higher than the room with its words.
class bar_placer {
public:
    bar_placer(const stock_bar& b, double scale, const page_area& room, const lettering& by)
        : from_(b), by_(by), scale_(scale), room_(room), made_{.what = &b} {
        made_.bar = {room.x, 0, b.length / scale, bar_height};
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

    /// Within a piece of this width on paper.
    static bool fits_in(const lettering& by, const std::string& words, double width) {
        return by.width(words, small_size) + 1.2 <= width;
    }

private:
    double x(double stock) const { return room_.x + stock / scale_; }

    void add_labels() {
        for (std::size_t i = 0, n = 0; i < from_.places.size(); i += n) {
            const bar_piece& first = from_.places[i];
            n = 1;
            while (i + n < from_.places.size() && from_.places[i + n].kind == first.kind)
                ++n;
            const std::string letter = letter_of(first.kind);
            if (!fits_in(by_, letter, (first.to - first.from) / scale_))
                add_label(first.from, from_.places[i + n - 1].to,
                          n > 1 ? joined({std::to_string(n), " ", letter}) : letter, n > 1);
        }
        const bool left_named =
            from_.left.empty() || fits_in(by_, "left over", (from_.length - from_.left_from) / scale_);
        if (!left_named)
            add_label(from_.left_from, from_.length, "left over", false);
        if (spread_out(made_.labels, [&](const bar_label& l) { return by_.widest(l.lines, small_size) + 2; }))
            return;
        made_.labels.clear();
        notes_.emplace_back("too narrow to be lettered but in this order");
        if (left_named)
            return;
        add_label(from_.left_from, from_.length, "left over", false);
        spread_out(made_.labels, [&](const bar_label& l) { return by_.widest(l.lines, small_size) + 2; });
    }
    void add_label(double from, double to, std::string words, bool several) {
        made_.labels.push_back({x(from), x(to), 0, {std::move(words)}, several});
    }

    /// False where there is no room for all.
    template <class Size>
    bool spread_out(std::vector<bar_label>& all, Size size) const {
        std::vector<double> wanted, sizes;
        double total = 0;
        for (const bar_label& l : all) {
            wanted.push_back((l.from + l.to) / 2);
            sizes.push_back(size(l));
            total += sizes.back();
        }
        if (total > room_.width)
            return false;
        const std::vector<double> centres = spread(wanted, sizes, room_.x, room_.right());
        for (std::size_t i = 0; i < all.size(); ++i)
            all[i].centre = centres[i];
        return true;
    }

    /// In the first of the manners that has room for all. In the last, cuts that stand apart are all figured, and so
    /// few of the others that there is room, whatever they are.
    void add_figures() {
        double before = 0;
        for (const bar_cut& c : from_.cuts) { // those of a crowd are numbered from 1; one that stands apart has 0
            const bool stands_apart = (c.at - before) / scale_ >= upright_figure;
            crowded_.push_back(stands_apart ? 0 : (crowded_.empty() ? 0 : crowded_.back()) + 1);
            before = c.at;
        }
        if (place_figures(false, false, 1) || place_figures(true, false, 1))
            return;
        const std::size_t every = round_number([&](std::size_t n) { return place_figures(true, true, n); });
        if (every > 1)
            notes_.push_back(joined(
                {"every ", std::to_string(every), every == 2 ? "nd" : "th", " cut figured where they are close"}));
    }

    /// False where it would be too crowded: figures that stand far from their cuts are hard to follow.
    bool place_figures(bool turned, bool in_a_line, std::size_t every) {
        const double most_stray = turned ? 16 : 8;
        double depth = 0, stray = 0;
        made_.figures.clear();
        made_.turned = turned;
        const auto high = [](const bar_label& l) { return static_cast<double>(l.lines.size()) * small_line_height; };
        for (std::size_t i = 0; i < from_.cuts.size(); ++i) {
            const bar_cut& c = from_.cuts[i];
            if (crowded_[i] % every != 0)
                continue;
            made_.figures.push_back(
                {x(c.at), x(c.at), 0, in_a_line ? std::vector<std::string>{c.in_a_line} : c.figures});
            const bar_label& l = made_.figures.back();
            depth = std::max(depth, turned ? by_.widest(l.lines, small_size) : high(l));
        }
        if (!spread_out(made_.figures, [&](const bar_label& l) {
                return turned ? high(l) + upright_figure - small_line_height : by_.widest(l.lines, small_size) + 2;
            }))
            return false;
        for (const bar_label& l : made_.figures)
            stray = std::max(stray, std::fabs(l.centre - l.from));
        made_.below = made_.figures.empty() ? 0 : figure_lead + depth + 1;
        return stray <= most_stray;
    }

    void add_heading() {
        std::string words = joined({"from ", from_.stock, ", leaving ", from_.left.empty() ? "nothing" : from_.left});
        for (const std::string& note : notes_)
            words.append(", ").append(unbroken(note));
        words.append(": ").append(from_.pieces);
        made_.times_width = by_.width(from_.times, body_size, true) + 2;
        const double labels = made_.labels.empty() ? 1.5 : label_lead + small_line_height + 1.5;
        const double room = room_.height - made_.bar.height - made_.below - labels;
        made_.heading = by_.wrapped(words, body_size, room_.width - made_.times_width,
                                    static_cast<std::size_t>(std::max(1.0, room / line_height)));
        made_.above = static_cast<double>(made_.heading.size()) * line_height + labels;
    }

    const stock_bar& from_;
    const lettering& by_;
    double scale_;
    page_area room_;
    std::vector<std::size_t> crowded_{}; ///< for each cut
    std::vector<std::string> notes_{};
    placed_bar made_;
};

} // namespace turncloth::detail

#endif
