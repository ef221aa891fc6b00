// A galley: strips that no page parts, set one below the other, and shared out over pages.
//
//   galley_strip             strokes and words from its upper left corner, its height, the room above it
//     .keeps                 it is to stand on the page of the next; `head` is repeated above it on a page that it begins
//   galley                   the strips, and the heads of tables
//   page_filler(room, galley).fill()      the pages
//
//   galley set; set.add({.height = 5, .keeps = true});
//
// Strips that keep one another are moved to the next page together, unless they are higher than a page: then they are
// parted like others, so that nothing is lost.
#ifndef TURNCLOTH_PAGE_DETAIL_GALLEY_HPP
#define TURNCLOTH_PAGE_DETAIL_GALLEY_HPP

#include <turncloth/page/detail/labels.hpp>
#include <turncloth/page/page.hpp>

#include <algorithm>
#include <cstddef>
#include <string>
#include <utility>
#include <vector>

namespace turncloth::detail {

inline constexpr std::size_t no_head = static_cast<std::size_t>(-1);

struct galley_strip {
    double height = 0;
    double above = 0; ///< kept free before it, unless it begins a page
    bool keeps = false;
    std::size_t head = no_head;
    std::vector<page_stroke> strokes{};
    std::vector<page_words> words{};

    void draw(const pen& with, std::vector<page_point> points) { strokes.push_back({with, std::move(points)}); }
    void draw_closed(const pen& with, const page_area& a) {
        const auto corners = a.corners();
        strokes.push_back({with, {corners.begin(), corners.end()}, true});
    }
    void write(page_point at, std::string text, double size, bool bold = false) {
        words.push_back({at, std::move(text), size, set_from::start, 0, bold});
    }
    /// A whole page, so many times its size. Its finest lines are kept as heavy as a printer shows.
    void draw(const page& p, page_point at, double factor) {
        constexpr double finest = 0.1;
        const placement to{at, 1 / factor};
        for (const page_stroke& s : p.strokes) {
            strokes.push_back(to(s));
            page_stroke& made = strokes.back();
            made.with.weight = std::max(std::min(finest, made.with.weight), made.with.weight * factor);
            made.dash_from *= factor;
            for (double& dash : made.with.dashes)
                dash *= factor;
        }
        for (const page_words& w : p.words) {
            words.push_back(to(w));
            words.back().size *= factor;
        }
    }
};

struct galley {
    std::vector<galley_strip> all{};
    std::vector<std::vector<galley_strip>> heads{}; ///< of tables

    void add(galley_strip s) { all.push_back(std::move(s)); }
    /// What is added after this stands on the page of what was added before.
    void keep_last() {
        if (!all.empty())
            all.back().keeps = true;
    }
};

/// Shares a galley out over pages, of which it fills one room after the other.
class page_filler {
public:
    page_filler(const page_area& room, const galley& from) : room_(room), from_(from) {}

    std::vector<page> fill() {
        begin_page();
        const std::vector<galley_strip>& all = from_.all;
        for (std::size_t i = 0; i < all.size();) {
            std::size_t end = i + 1;
            while (end < all.size() && all[end - 1].keeps)
                ++end;
            put(i, end);
            i = end;
        }
        return std::move(pages_);
    }

private:
    static constexpr double slack = 1e-9;
    static constexpr double worth_beginning = 60; ///< mm, for what is parted anyhow

    void begin_page() {
        pages_.emplace_back();
        y_ = room_.y;
    }
    bool is_empty() const { return y_ == room_.y; }
    double left() const { return room_.bottom() - y_; }
    double height_of(const galley_strip& s, bool first) const { return (first ? 0 : s.above) + s.height; }
    const std::vector<galley_strip>* head_of(const galley_strip& s) const {
        return s.head == no_head ? nullptr : &from_.heads[s.head];
    }
    double head_height(const galley_strip& s) const {
        double sum = 0;
        if (const auto* head = head_of(s))
            for (const galley_strip& h : *head)
                sum += h.height;
        return sum;
    }

    void put(std::size_t begin, std::size_t end) {
        double needed = 0, alone = 0;
        for (std::size_t i = begin; i < end; ++i) {
            needed += height_of(from_.all[i], i == begin && is_empty());
            alone += height_of(from_.all[i], i == begin);
        }
        const bool parted = alone + head_height(from_.all[begin]) > room_.height + slack;
        if (!is_empty() && (parted ? left() < worth_beginning : needed > left() + slack))
            turn_to(from_.all[begin]);
        for (std::size_t i = begin; i < end; ++i) {
            if (parted && !is_empty() && height_of(from_.all[i], false) > left() + slack)
                turn_to(from_.all[i]);
            put(from_.all[i]);
        }
    }
    void turn_to(const galley_strip& s) {
        begin_page();
        if (const auto* head = head_of(s))
            for (const galley_strip& h : *head)
                put(h);
    }
    void put(const galley_strip& s) {
        y_ += is_empty() ? 0 : s.above;
        const placement to{{room_.x, y_}, 1};
        for (const page_stroke& line : s.strokes)
            pages_.back().strokes.push_back(to(line));
        for (const page_words& w : s.words)
            pages_.back().words.push_back(to(w));
        y_ += s.height;
    }

    const page_area room_;
    const galley& from_;
    std::vector<page> pages_{};
    double y_ = 0;
};

} // namespace turncloth::detail

#endif
