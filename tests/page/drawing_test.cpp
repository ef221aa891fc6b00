// page/drawing.hpp: words that are longer than their dimension stand beside it, after ISO 129-1: outside its ends, on its
// own row, where no other line crosses them.
#include <turncloth/page/drawing.hpp>

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

using namespace turncloth;
using detail::measured;

namespace {

const std::string figure = "5/16 in"; // longer than 5 mm on paper

struct drawn_words {
    page_area words;
    page_segment line; ///< of its dimension
    double scale;
    bool led;
};

/// The first of some dimensions of a thing of 150 x 150 mm, either way.
drawn_words first_of(const std::vector<measured>& all, bool upright) {
    detail::picture p;
    p.width = p.height = 150;
    (upright ? p.beside : p.below) = all;
    const drawing_options options;
    const detail::picture_page made = detail::best_page_of(p, options);
    const page on = made.draw();
    drawn_words found{};
    for (const page_words& w : on.words)
        if (w.text == figure)
            found.words = detail::covered_by(w, detail::lettering());
    const page_stroke* line = nullptr;
    for (const page_stroke& s : on.strokes)
        if (line == nullptr && s.with.means == stroke_name("dimension"))
            line = &s; // drawn before its ends
    REQUIRE(line != nullptr);
    found.line = {line->points[0], line->points[1]};
    found.scale = (all[0].to - all[0].from) / detail::distance(found.line.from, found.line.to);
    found.led = std::any_of(on.strokes.begin(), on.strokes.end(),
                            [](const page_stroke& s) { return s.with.means == stroke_name("leader"); });
    for (const page_stroke& s : on.strokes)
        for (const page_segment& side : detail::sides_of(s))
            CHECK_FALSE(detail::meets(side, found.words));
    return found;
}

/// From an end of a line to words beyond it, on paper.
double behind(const drawn_words& d, bool upright) {
    return upright ? d.words.y - d.line.to.y : d.words.x - d.line.to.x;
}
double before(const drawn_words& d, bool upright) {
    return upright ? d.line.from.y - d.words.bottom() : d.line.from.x - d.words.right();
}

const measured whole{0, 150, 150, "150"};

} // namespace

TEST_CASE("words longer than their line stand next to its end") {
    for (const bool upright : {false, true})
        for (const double from : {0.0, 40.0, 145.0}) {
            const drawn_words d = first_of({{from, from + 5, 150, figure}, whole}, upright);
            // At the far end the line of the whole's own end is in the way behind.
            if (from < 145)
                CHECK(std::abs(behind(d, upright) - 1.5) < 0.01);
            else
                CHECK((behind(d, upright) > 0 || before(d, upright) > 0));
            CHECK_FALSE(d.led);
        }
}

TEST_CASE(
    "where a line from a farther dimension is behind them they stand before it, and past all where it is at both") {
    for (const bool upright : {false, true}) {
        const drawn_words one = first_of({{70, 75, 150, figure}, {10, 80, 150, "70"}}, upright);
        CHECK(std::abs(before(one, upright) - 1.5) < 0.01);
        CHECK_FALSE(one.led);
        const drawn_words both = first_of({{70, 75, 150, figure}, {65, 80, 150, "15"}, whole}, upright);
        const double end = (upright ? both.line.to.y : both.line.to.x) + 75 / both.scale; // of what is drawn
        CHECK((upright ? both.words.y : both.words.x) > end);
        CHECK(both.led);
    }
}
