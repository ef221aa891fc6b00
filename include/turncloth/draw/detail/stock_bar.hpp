// One bar of a drawing of lengths cut from stock.
//
//   stock_bar                              one way to cut a piece of stock, in millimetres and words
//   placed_bar(bar, scale, room, by)       its words at their places across a room
//   .height()  .draw(page, top)
//
// Below a bar its cuts are figured: level where they stand close enough to their cuts, else upright, else so upright
// that only every second, fifth, ... is written. Above it stand the letters of pieces too narrow to hold them. What is
// not written for want of room is told in the words over the bar, which say everything that is in it, in order.
#ifndef TURNCLOTH_DRAW_DETAIL_STOCK_BAR_HPP
#define TURNCLOTH_DRAW_DETAIL_STOCK_BAR_HPP

#include <turncloth/page/drawing.hpp>

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <string>
#include <utility>
#include <vector>

namespace turncloth::detail {

// Lines that stand close together are thin, so that they can be told apart.
inline constexpr kind_of_line stock_line = {{"stock", 0.6}, "edge of the stock"},
                              length_line = {{"piece", 0.2}, "piece"},
                              stock_cut_line = {{"cutting", 0.5, {2.5, 1.5}}, "cut"},
                              lost_line = {{"lost", 0.15, {0.3, 0.3}}, "lost in the cut"},
                              stock_left_line = {{"left-over", 0.25, {0.4, 1}}, "left over"};

/// In mm of stock from the start of the bar.
struct stock_bar {
    struct piece {
        double from, to;
        std::string letter;
        std::vector<std::vector<std::string>> words; ///< the first that fits
    };
    struct cut {
        double at, to;                    ///< where a piece ends, and how far the loss goes from there
        std::vector<std::string> figures; ///< one in each unit
        std::string in_a_line;
    };
    std::string times, heading, listed; ///< "2 times", "from 108 in, leaving 8 in", "4 A, 1 B"
    std::vector<piece> pieces{};        ///< and what is left over, which has no letter
    std::vector<cut> cuts{};
    double length = 0, left_from = 0;
};

class placed_bar {
public:
    placed_bar(const stock_bar& b, double scale, const page_area& room, const lettering& by)
        : bar_(&b), by_(by), scale_(scale), room_(room) {
        add_labels();
        add_figures();
        std::string words = b.heading;
        for (const std::string& note : notes_)
            words.append(", ").append(unbroken(note));
        const double labels = labels_.empty() ? 1.5 : label_lead + small_line_height + 1.5;
        times_width_ = by.width(b.times, body_size, true) + 2;
        heading_.add(
            by, words + ": " + b.listed, body_text, room.width - times_width_,
            static_cast<std::size_t>(std::max(1.0, (room.height - bar_height - below_ - labels) / line_height)));
        above_ = heading_.height() + labels;
    }

    const stock_bar& bar() const { return *bar_; }
    double height() const { return above_ + bar_height + below_; }

    void draw(page& on, double top) const {
        on.write({room_.x, top - 0.8 + line_height}, bar_->times, body_size).bold = true;
        heading_.draw(on, {room_.x + times_width_, top - 0.8});
        const double y = top + above_;
        draw_lines(on, y);
        draw_labels(on, y);
        draw_figures(on, y + bar_height);
    }

private:
    /// What stands above the bar, or below it; `from` and `to` are where across the page it belongs.
    struct label : on_margin {
        double from, to;
        std::vector<std::string> lines;
    };
    static constexpr double bar_height = 9, label_lead = 5.5, figure_lead = 7, upright_figure = small_line_height + 0.6;

    double x(double stock) const { return room_.x + stock / scale_; }
    bool fits_in(const std::vector<std::string>& lines, const stock_bar::piece& p) const {
        return by_.widest(lines, small_size) + 1.2 <= (p.to - p.from) / scale_;
    }
    static double tall(const std::vector<std::string>& lines) {
        return static_cast<double>(lines.size()) * small_line_height;
    }
    double wide(const std::vector<std::string>& lines) const { return by_.widest(lines, small_size); }
    label label_of(double from, double to, std::vector<std::string> lines, bool turned = false) const {
        const double size = turned ? tall(lines) + upright_figure - small_line_height : wide(lines) + 2;
        return {{(x(from) + x(to)) / 2, size}, x(from), x(to), std::move(lines)};
    }
    bool spread_out(std::vector<label>& all) const { return spread(all, room_.x, room_.right()); }

    /// Of pieces too narrow for the shortest of their words: those side by side that share a letter share a label.
    void add_labels() {
        const auto& pieces = bar_->pieces;
        std::vector<label> of_letters, of_rest;
        for (std::size_t i = 0, n = 0; i < pieces.size(); i += n) {
            for (n = 1; i + n < pieces.size() && pieces[i + n].letter == pieces[i].letter;)
                ++n;
            const std::string& words = pieces[i].words.back().front();
            if (!fits_in({words}, pieces[i]))
                (pieces[i].letter.empty() ? of_rest : of_letters)
                    .push_back(
                        label_of(pieces[i].from, pieces[i + n - 1].to, {n > 1 ? sentence({n, " ", words}) : words}));
        }
        labels_ = of_letters;
        labels_.insert(labels_.end(), of_rest.begin(), of_rest.end());
        if (spread_out(labels_))
            return;
        labels_ = of_rest;
        notes_.push_back(sentence({"too narrow to be lettered but in this order"}));
        spread_out(labels_);
    }

    /// In the first of the manners that has room for all. In the last, cuts that stand apart are all figured, and so
    /// few of the others that there is room, whatever they are.
    void add_figures() {
        if (place_figures(false, false, 1) || place_figures(true, false, 1))
            return;
        const std::size_t every = round_number([&](std::size_t n) { return place_figures(true, true, n); });
        if (every > 1)
            notes_.push_back(every == 2 ? sentence({"every 2nd cut figured where they are close"})
                                        : sentence({"every ", every, "th cut figured where they are close"}));
    }

    /// False where it would be too crowded: figures that stand far from their cuts are hard to follow.
    bool place_figures(bool turned, bool in_a_line, std::size_t every) {
        double depth = 0, stray = 0, before = 0;
        figures_.clear();
        turned_ = turned;
        std::size_t in_crowd = 0; // those of a crowd count from 1, one that stands apart is 0
        for (const stock_bar::cut& c : bar_->cuts) {
            in_crowd = (c.at - before) / scale_ >= upright_figure ? 0 : in_crowd + 1;
            before = c.at;
            if (in_crowd % every == 0)
                figures_.push_back(label_of(c.at, c.at, in_a_line ? std::vector{c.in_a_line} : c.figures, turned));
        }
        if (!spread_out(figures_))
            return false;
        for (const label& l : figures_) {
            depth = std::max(depth, turned ? wide(l.lines) : tall(l.lines));
            stray = std::max(stray, std::fabs(l.centre - l.wanted));
        }
        below_ = figures_.empty() ? 0 : figure_lead + depth + 1;
        return stray <= (turned ? 16 : 8);
    }

    void draw_lines(page& on, double y) const {
        double closest = bar_->length;
        for (std::size_t i = 1; i < bar_->cuts.size(); ++i)
            closest = std::min(closest, bar_->cuts[i].at - bar_->cuts[i - 1].at);
        const double heaviest = std::max(0.05, closest / scale_ / 5);
        const auto part = [&](double from, double to) {
            return page_area{x(from), y, (to - from) / scale_, bar_height};
        };
        for (const stock_bar::piece& p : bar_->pieces) {
            if (!p.letter.empty())
                on.draw_closed(length_line.with.no_heavier_than(heaviest), part(p.from, p.to));
            write_in(on, p, y);
        }
        for (const stock_bar::cut& c : bar_->cuts)
            if (c.to > c.at)
                on.draw_closed(lost_line.with.no_heavier_than(heaviest), part(c.at, c.to));
        on.draw_closed(stock_line.with, part(0, bar_->left_from));
        if (bar_->left_from < bar_->length)
            on.draw_closed(stock_left_line.with, part(bar_->left_from, bar_->length));
        for (const stock_bar::cut& c : bar_->cuts)
            on.draw(stock_cut_line.with.no_heavier_than(heaviest), {{x(c.at), y}, {x(c.at), y + bar_height}});
    }
    void write_in(page& on, const stock_bar::piece& p, double y) const {
        const auto lines = std::find_if(p.words.begin(), p.words.end(), [&](const auto& l) { return fits_in(l, p); });
        if (lines == p.words.end())
            return;
        y += (bar_height - static_cast<double>(lines->size()) * small_line_height) / 2 - 0.6;
        for (const std::string& line : *lines)
            on.write({x((p.from + p.to) / 2), y += small_line_height}, line, small_size, set_from::middle);
    }

    /// A stroke along pieces that share a letter, and a line to it.
    void draw_labels(page& on, double top) const {
        const double near = top - 1, far = top - label_lead;
        for (const label& l : labels_) {
            const bool several = l.lines[0].front() >= '1' && l.lines[0].front() <= '9';
            if (several)
                on.draw(leader_pen, {{l.from, near}, {l.to, near}});
            on.draw(leader_pen,
                    {{l.wanted, several ? near : top}, {l.wanted, near - 0.7}, {l.centre, far + 0.7}, {l.centre, far}});
            on.write({l.centre, far - 0.8}, l.lines[0], small_size, set_from::middle);
        }
    }

    void draw_figures(page& on, double top) const {
        const double far = top + figure_lead - 0.6;
        for (const label& f : figures_) {
            on.draw(leader_pen, {{f.wanted, top}, {f.wanted, top + 1.5}, {f.centre, far - 1}, {f.centre, far}});
            for (std::size_t i = 0; i < f.lines.size(); ++i) {
                const double baseline = (static_cast<double>(i) + 0.8) * small_line_height;
                if (turned_)
                    on.write({f.centre - tall(f.lines) / 2 + baseline, far + 0.8}, f.lines[i], small_size,
                             set_from::end)
                        .turned = 90;
                else
                    on.write({f.centre, far + 0.3 + baseline}, f.lines[i], small_size, set_from::middle);
            }
        }
    }

    const stock_bar* bar_;
    lettering by_;
    double scale_;
    page_area room_;
    std::vector<label> labels_{}, figures_{};
    std::vector<std::string> notes_{};
    text_block heading_{};
    bool turned_ = false; ///< the figures
    double times_width_ = 0, above_ = 0, below_ = 0;
};

} // namespace turncloth::detail

#endif
