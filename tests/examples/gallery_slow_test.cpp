// Every drawing of the gallery can be read: no words lie on words or on lines, nothing is cut off, no leaders cross.
#include "../../examples/gallery/drawings.hpp"
#include "draw/picture.hpp"

#include <doctest/doctest.h>

#include <set>
#include <string>
#include <vector>

using namespace turncloth;
using drawn::crosses;
using drawn::dejavu_width;
using drawn::overlap;
using drawn::segment;
using drawn::word;
using box = page_area;

namespace {

std::vector<word> words_on(const page& p) {
    std::vector<word> all;
    for (const page_words& w : p.words) {
        const double width = dejavu_width(w.text, w.size) * (w.bold ? 1.12 : 1),
                     before = w.anchor == set_from::middle ? width / 2 : (w.anchor == set_from::end ? width : 0),
                     above = 0.76 * w.size;
        all.push_back({w.text,
                       w.turned == 0 ? box{w.at.x - before, w.at.y - above, width, w.size}
                                     : box{w.at.x - above, w.at.y + before - width, w.size, width},
                       w.size, w.bold});
    }
    return all;
}
std::vector<segment> lines_on(const page& p, const char* of = nullptr) {
    std::vector<segment> all;
    for (const page_stroke& s : p.strokes)
        for (std::size_t i = 1; i < s.points.size() + (s.closed ? 1 : 0); ++i)
            if (of == nullptr || s.with.means.text() == of)
                all.push_back({s.points[i - 1], s.points[i % s.points.size()]});
    return all;
}

bool inside(const page& p, page_point at) {
    constexpr double margin = 5;
    return at.x >= margin && at.y >= margin && at.x <= p.width - margin && at.y <= p.height - margin;
}

void check_words(const page& p, const std::vector<segment>& lines) {
    const std::vector<word> words = words_on(p);
    for (std::size_t i = 0; i < words.size(); ++i) {
        const box& b = words[i].where;
        if (!inside(p, {b.x, b.y}) || !inside(p, {b.right(), b.bottom()}))
            FAIL_CHECK("cut off: ", words[i].text);
        for (std::size_t j = 0; j < i; ++j)
            if (overlap(b, words[j].where))
                FAIL_CHECK(words[i].text, " lies on ", words[j].text);
        for (const segment& s : lines)
            if (crosses(s, {b.x + 0.1, b.y + 0.1, b.width - 0.2, b.height - 0.2}))
                FAIL_CHECK(words[i].text, " is crossed at ", s.a.x, ", ", s.a.y);
    }
}

/// Properly: lines that only meet at an end do not cross.
bool cross(const segment& a, const segment& b) {
    const auto side = [](const segment& s, page_point p) {
        return (s.b.x - s.a.x) * (p.y - s.a.y) - (s.b.y - s.a.y) * (p.x - s.a.x);
    };
    return side(a, b.a) * side(a, b.b) < -1e-6 && side(b, a.a) * side(b, a.b) < -1e-6;
}

} // namespace

TEST_CASE("every drawing of the gallery can be read, is whole, and has no leaders that cross") {
    const std::vector<gallery::drawing_shown> all = gallery::all();
    CHECK(all.size() >= 60);
    std::set<std::string> kinds;
    for (const gallery::drawing_shown& d : all) {
        INFO(d.name);
        kinds.insert(d.kind);
        const std::vector<segment> lines = lines_on(d.of);
        check_words(d.of, lines);
        for (const segment& s : lines)
            if (!inside(d.of, s.a) || !inside(d.of, s.b))
                FAIL_CHECK("a line is cut off at ", s.a.x, ", ", s.a.y);
        const std::vector<segment> leaders = lines_on(d.of, "leader");
        for (std::size_t i = 0; i < leaders.size(); ++i)
            for (std::size_t j = 0; j < i; ++j)
                if (cross(leaders[i], leaders[j]))
                    FAIL_CHECK("leaders cross at ", leaders[i].a.x, ", ", leaders[i].a.y);
    }
    CHECK(kinds.size() == 7);
}
