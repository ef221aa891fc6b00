// A page as a value: its paper, its strokes and its words, in millimetres from its upper left corner, right and down.
//
//   page            width, height, title, description, strokes, words
//   pen             what a stroke means ("cut"), how heavy it is and how it is broken
//   page_stroke     a line through points in one pen; closed; a single point is a dot as wide as the pen
//   page_words      one line of words, from, round or up to a point of its base line; turned, bold
//   page_point  page_segment  page_area     a point, a straight line between two, a rectangle
//   text_measure    how whoever paints the page measures words, given to whoever sets them
//
//   page p{.width = 210, .height = 297, .title = "pocket"};
//   p.draw({"cut", 0.6}, {{10, 10}, {60, 10}});
//   p.write({10, 20}, "cut 2", 3).bold = true;
//
// Whatever paints it, to SVG (svg.hpp), to PDF or into a window, needs to know no more.
#ifndef TURNCLOTH_PAGE_PAGE_HPP
#define TURNCLOTH_PAGE_PAGE_HPP

#include <array>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace turncloth {

struct page_point {
    double x, y;
};

struct page_segment {
    page_point from, to;
};

struct page_area {
    double x, y, width, height;

    constexpr double right() const { return x + width; }
    constexpr double bottom() const { return y + height; }
    constexpr page_point middle() const { return {x + width / 2, y + height / 2}; }
    constexpr std::array<page_point, 4> corners() const {
        return {{{x, y}, {right(), y}, {right(), bottom()}, {x, bottom()}}};
    }
};

/// What a stroke means, in a word that is written in the program: it can never be left behind by its text.
class stroke_name {
public:
    consteval stroke_name(const char* literal) : text_(literal) {}
    constexpr std::string_view text() const { return text_; }
    friend constexpr bool operator==(const stroke_name& a, const stroke_name& b) { return a.text() == b.text(); }

private:
    const char* text_;
};

/// `weight` is in millimetres; `dashes` are lengths drawn and left out by turns, drawn throughout where they are zero;
/// `grey` is 0 for black and 1 for white.
struct pen {
    stroke_name means;
    double weight;
    std::array<double, 4> dashes{};
    double grey = 0;

    constexpr pen meaning(stroke_name other) const { return {other, weight, dashes, grey}; }
    constexpr pen no_heavier_than(double most) const { return {means, weight < most ? weight : most, dashes, grey}; }
    friend constexpr bool operator==(const pen&, const pen&) = default;
};

/// `dash_from` is how far into the line the stroke begins, so that dashes run on from one page to the next.
struct page_stroke {
    pen with;
    std::vector<page_point> points;
    bool closed = false;
    double dash_from = 0;
};

/// Where the point of words lies along them.
enum class set_from { start, middle, end };

/// `at` is on the base line. `turned` is in degrees, against the clock.
struct page_words {
    page_point at;
    std::string text;
    double size = 3;
    set_from anchor = set_from::start;
    double turned = 0;
    bool bold = false;
};

struct page {
    double width = 210, height = 297;
    std::string title{}, description{};
    std::vector<page_stroke> strokes{};
    std::vector<page_words> words{};

    void draw(const pen& with, std::vector<page_point> points) { strokes.push_back({with, std::move(points)}); }
    void draw_closed(const pen& with, std::vector<page_point> corners) {
        strokes.push_back({with, std::move(corners), true});
    }
    void draw_closed(const pen& with, const page_area& a) {
        const auto corners = a.corners();
        draw_closed(with, {corners.begin(), corners.end()});
    }
    /// Set level and light: what it returns can be turned or made bold.
    page_words& write(page_point at, std::string text, double size, set_from anchor = set_from::start) {
        words.push_back({at, std::move(text), size, anchor});
        return words.back();
    }
};

/// The width of words set at a size, in millimetres; longer words are never narrower.
class text_measure {
public:
    virtual double width_of(std::string_view text, double size, bool bold) const = 0;

protected:
    text_measure() = default;
    text_measure(const text_measure&) = default;
    text_measure& operator=(const text_measure&) = default;
    ~text_measure() = default;
};

} // namespace turncloth

#endif
