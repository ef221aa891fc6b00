// A drawing read back with pugixml: where its lines lie and where its words stand, for the tests of drawings. The width
// of words is that of DejaVu Sans, one of the widest faces in common use.
#ifndef TURNCLOTH_TESTS_DRAW_PICTURE_HPP
#define TURNCLOTH_TESTS_DRAW_PICTURE_HPP

#include <turncloth/draw/piece.hpp>
#include <turncloth/measure/read.hpp>
#include <turncloth/sheet/making.hpp>

#include <doctest/doctest.h>
#include <pugixml.hpp>

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <initializer_list>
#include <sstream>
#include <string>
#include <vector>

namespace turncloth::drawn {

using box = page_area;

/// As doctest shows it.
inline std::string text_of(const page_point& p) {
    std::ostringstream out;
    out << p.x << ", " << p.y;
    return out.str();
}

struct segment {
    page_point a, b;
};

struct word {
    std::string text;
    box where;
    double size;
    bool bold;
};

/// Advance widths of DejaVu Sans 2.37 for U+0020 to U+007E, in thousandths of the size (its `hmtx` table).
inline constexpr int advances[] = {318,  401, 460, 838, 636, 950, 780, 275, 390, 390, 500, 838, 318, 361, 318, 337,
                                   636,  636, 636, 636, 636, 636, 636, 636, 636, 636, 337, 337, 838, 838, 838, 531,
                                   1000, 684, 686, 698, 770, 632, 575, 775, 752, 295, 295, 656, 557, 863, 748, 787,
                                   603,  787, 695, 635, 611, 732, 684, 989, 685, 611, 685, 390, 337, 390, 838, 500,
                                   500,  613, 635, 550, 635, 615, 352, 635, 634, 278, 278, 579, 278, 974, 634, 612,
                                   635,  635, 411, 521, 392, 634, 592, 818, 592, 592, 525, 636, 337, 636, 838};

inline double dejavu_width(const std::string& text, double size) {
    double sum = 0;
    for (const char c : text)
        sum += c >= ' ' && c <= '~' ? advances[c - ' '] : 300; // a byte of a longer character
    return sum * size / 1000;
}

inline double number_of(pugi::xml_node n, const char* name) { return std::strtod(n.attribute(name).value(), nullptr); }

inline std::vector<page_point> points_of(pugi::xml_node polyline) {
    std::istringstream in(polyline.attribute("points").value());
    std::vector<page_point> all;
    char comma = 0;
    for (page_point p{}; in >> p.x >> comma >> p.y;)
        all.push_back(p);
    return all;
}

/// Of a polygon with level and upright sides, from its upper left corner on.
inline box box_of(pugi::xml_node polygon) {
    const std::vector<page_point> p = points_of(polygon);
    REQUIRE(p.size() == 4);
    CHECK(p[0].y == p[1].y);
    CHECK(p[1].x == p[2].x);
    CHECK(p[2].y == p[3].y);
    CHECK(p[3].x == p[0].x);
    return {p[0].x, p[0].y, p[2].x - p[0].x, p[2].y - p[0].y};
}

/// A drawing read back.
class picture {
public:
    explicit picture(const page& p) : picture(to_svg(p)) {}
    explicit picture(const std::string& svg) {
        const auto result = document_.load_string(svg.c_str(), pugi::parse_full);
        INFO(result.description());
        REQUIRE(result);
        gather(document_);
        scale_ = find_scale();
    }

    pugi::xml_node root() const { return document_.document_element(); }
    double scale() const { return scale_; }
    const std::vector<word>& words() const { return words_; }
    box page() const {
        std::istringstream view(root().attribute("viewBox").value());
        box b{};
        view >> b.x >> b.y >> b.width >> b.height;
        return b;
    }

    std::vector<pugi::xml_node> groups(const std::string& name) const {
        std::vector<pugi::xml_node> all;
        for (const auto& found : document_.select_nodes(("//g[@class='" + name + "']").c_str()))
            all.push_back(found.node());
        return all;
    }

    std::vector<segment> lines(const std::string& group) const {
        std::vector<segment> all;
        for (const auto& g : groups(group))
            for (const auto& l : g.children("line"))
                all.push_back({{number_of(l, "x1"), number_of(l, "y1")}, {number_of(l, "x2"), number_of(l, "y2")}});
        return all;
    }

    std::vector<std::vector<page_point>> leaders() const {
        std::vector<std::vector<page_point>> all;
        for (const auto& g : groups("leader"))
            for (const auto& l : g.children())
                if (l.name() == std::string("polyline"))
                    all.push_back(points_of(l));
                else if (l.name() == std::string("line"))
                    all.push_back({{number_of(l, "x1"), number_of(l, "y1")}, {number_of(l, "x2"), number_of(l, "y2")}});
        return all;
    }

    std::vector<std::vector<page_point>> polygons(const std::string& group) const {
        std::vector<std::vector<page_point>> all;
        for (const auto& g : groups(group))
            for (const auto& p : g.children("polygon"))
                all.push_back(points_of(p));
        return all;
    }

    box rectangle(const std::string& group) const {
        REQUIRE(groups(group).size() == 1);
        return box_of(groups(group)[0].child("polygon"));
    }

    /// Lines of one kind as distances on the cloth, in mm from its top left corner.
    std::vector<segment> on_cloth(const std::string& group) const {
        const box cut = rectangle("cut");
        std::vector<segment> all = lines(group);
        for (segment& s : all)
            for (page_point* p : {&s.a, &s.b})
                *p = {(p->x - cut.x) * scale_, (p->y - cut.y) * scale_};
        return all;
    }

    bool says(const std::string& text) const { return count(text) > 0; }
    long count(const std::string& text) const {
        return std::count_if(words_.begin(), words_.end(), [&](const word& w) { return w.text == text; });
    }
    bool mentions(const std::string& part) const {
        return std::any_of(words_.begin(), words_.end(),
                           [&](const word& w) { return w.text.find(part) != std::string::npos; });
    }

    std::vector<segment> everything_drawn() const {
        std::vector<segment> all;
        const auto join = [&](const std::vector<page_point>& p, bool closed) {
            for (std::size_t i = 1; i < p.size() + (closed ? 1 : 0); ++i)
                all.push_back({p[i - 1], p[i % p.size()]});
        };
        for (const auto& found : document_.select_nodes("//g/line")) {
            const auto l = found.node();
            all.push_back({{number_of(l, "x1"), number_of(l, "y1")}, {number_of(l, "x2"), number_of(l, "y2")}});
        }
        for (const auto& found : document_.select_nodes("//g/polyline"))
            join(points_of(found.node()), false);
        for (const auto& found : document_.select_nodes("//g/polygon"))
            join(points_of(found.node()), true);
        return all;
    }

private:
    void gather(pugi::xml_node from) {
        for (const auto& found : from.select_nodes("//text")) {
            const auto n = found.node();
            const std::string text = n.text().get(), place = n.attribute("text-anchor").as_string("start");
            const double size = number_of(n, "font-size"), x = number_of(n, "x"), y = number_of(n, "y");
            const bool bold = !n.attribute("font-weight").empty();
            const double width = dejavu_width(text, size) * (bold ? 1.12 : 1);
            const double before = place == "middle" ? width / 2 : (place == "end" ? width : 0);
            const double above = 0.76 * size, below = 0.24 * size; // of letters and figures
            if (n.attribute("transform").empty())
                words_.push_back({text, {x - before, y - above, width, above + below}, size, bold});
            else // turned so that it runs upward
                words_.push_back({text, {x - above, y + before - width, above + below, width}, size, bold});
        }
    }

    double find_scale() const {
        for (const word& w : words_)
            if (w.bold && w.text.rfind("scale ", 0) == 0) { // "scale 1:4", "scale 2:1"
                char* colon = nullptr;
                const double drawn = std::strtod(w.text.c_str() + 6, &colon);
                return std::strtod(colon + 1, nullptr) / drawn;
            }
        FAIL("no scale is written");
        return 1;
    }

    pugi::xml_document document_;
    std::vector<word> words_;
    double scale_ = 1;
};

inline bool overlap(const box& a, const box& b) {
    return a.x < b.right() && b.x < a.right() && a.y < b.bottom() && b.y < a.bottom();
}

/// By cutting the line down to what lies within each side in turn.
inline bool crosses(const segment& s, const box& b) {
    double from = 0, to = 1;
    const auto cut = [&](double start, double step, double low, double high) {
        if (step == 0)
            return start > low && start < high;
        const double one = (low - start) / step, other = (high - start) / step;
        from = std::max(from, std::min(one, other));
        to = std::min(to, std::max(one, other));
        return from < to;
    };
    return cut(s.a.x, s.b.x - s.a.x, b.x, b.right()) && cut(s.a.y, s.b.y - s.a.y, b.y, b.bottom());
}

/// Words large enough, within the page, and clear of each other and of every line; lines within the page.
inline void check_legible(const picture& p) {
    const auto inside = [page = p.page()](double x, double y) {
        return x >= 5 && y >= 5 && x <= page.width - 5 && y <= page.height - 5;
    };
    const auto& words = p.words();
    const std::vector<segment> drawn = p.everything_drawn();
    for (std::size_t i = 0; i < words.size(); ++i) {
        const box& b = words[i].where;
        INFO(words[i].text);
        CHECK(words[i].size >= 2.5);
        CHECK(inside(b.x, b.y));
        CHECK(inside(b.right(), b.bottom()));
        for (std::size_t j = 0; j < i; ++j)
            if (overlap(b, words[j].where))
                FAIL_CHECK("overlaps ", words[j].text);
        for (const segment& s : drawn)
            if (crosses(s, {b.x + 0.1, b.y + 0.1, b.width - 0.2, b.height - 0.2}))
                FAIL_CHECK("crossed by the line from ", s.a.x, ", ", s.a.y, " to ", s.b.x, ", ", s.b.y);
    }
    for (const segment& s : drawn)
        for (const page_point& end : {s.a, s.b}) {
            CAPTURE(end.x);
            CAPTURE(end.y);
            CHECK(inside(end.x, end.y));
        }
}

inline std::vector<box> boxes(const picture& p, const char* group) {
    std::vector<box> all;
    for (const auto& g : p.groups(group))
        for (const auto& r : g.children("polygon"))
            all.push_back(box_of(r));
    return all;
}

/// No two kinds of line are drawn alike, and none by colour alone.
inline void check_told_apart(const picture& p, std::initializer_list<const char*> groups) {
    std::vector<std::string> pens;
    for (const char* group : groups) {
        const auto g = p.groups(group).at(0);
        CHECK(std::string(g.attribute("stroke").value()) == "#000");
        pens.push_back(std::string(g.attribute("stroke-width").value()) + " " +
                       g.attribute("stroke-dasharray").value());
    }
    std::sort(pens.begin(), pens.end());
    CHECK(std::adjacent_find(pens.begin(), pens.end()) == pens.end());
}

/// Millimetres of cloth: CHECK(drawn == near(25.4)) lets a hundredth pass, and prints both where it fails.
struct near {
    double mm;

    explicit near(double of_cloth) : mm(of_cloth) {}
    friend bool operator==(double a, const near& b) { return std::fabs(a - b.mm) <= 0.01; }
    friend std::ostream& operator<<(std::ostream& out, const near& n) { return out << n.mm << " to within 0.01"; }
};

inline bool has(const std::vector<segment>& all, const segment& s) {
    return std::any_of(all.begin(), all.end(), [&](const segment& t) {
        return t.a.x == near(s.a.x) && t.a.y == near(s.a.y) && t.b.x == near(s.b.x) && t.b.y == near(s.b.y);
    });
}

template <length_unit Unit>
double mm(length<Unit> l) {
    return to_double(as<millimetre>(l).value());
}

inline const char* group_of(line_kind kind) {
    switch (kind) {
    case line_kind::fold:
        return "fold";
    case line_kind::stitching:
        return "stitching";
    case line_kind::mark:
        return "mark";
    case line_kind::placement:
        return "placement";
    case line_kind::slit:
        break;
    }
    return "slit";
}

/// Where a part of a piece is left out between two zigzag lines, each as far from its end as is written by the scale: of cloth,
/// across or down, so that what lies beyond is measured from the far end.
class unbroken_cloth {
public:
    unbroken_cloth(const picture& p, double width, double height) : width_(width), height_(height) {
        const box cut = p.rectangle("cut");
        for (const auto& g : p.groups("left out"))
            for (const auto& l : g.children("polyline")) {
                const std::vector<page_point> line = points_of(l);
                REQUIRE(line.size() == 6);
                const bool upright = line.front().x == line.back().x;
                (upright ? across_ : down_)
                    .push_back((upright ? line.front().x - cut.x : line.front().y - cut.y) * p.scale());
            }
        drawn_width_ = cut.width * p.scale(), drawn_height_ = cut.height * p.scale();
        if (across_.empty())
            CHECK(drawn_width_ == near(width));
        if (down_.empty())
            CHECK(drawn_height_ == near(height));
    }
    bool is_broken() const { return !across_.empty() || !down_.empty(); }
    segment operator()(segment s) const {
        for (page_point* p : {&s.a, &s.b})
            *p = {on(p->x, across_, drawn_width_, width_), on(p->y, down_, drawn_height_, height_)};
        return s;
    }

private:
    static double on(double at, const std::vector<double>& breaks, double drawn, double whole) {
        if (breaks.empty() || at < *std::min_element(breaks.begin(), breaks.end()))
            return at;
        CHECK(at > *std::max_element(breaks.begin(), breaks.end())); // nothing begins or ends between them
        return whole - (drawn - at);
    }

    double width_, height_, drawn_width_ = 0, drawn_height_ = 0;
    std::vector<double> across_{}, down_{};
};

/// Every line of the sheet is drawn where it lies on the cloth, and no other.
template <length_unit Unit>
void check_true(const picture& p, const sheet_piece<Unit>& piece) {
    const double width = mm(piece.cut.width()), height = mm(piece.cut.height());
    const unbroken_cloth unbroken(p, width, height);
    std::size_t drawn = 0;
    for (const char* kind : {"fold", "stitching", "mark", "slit"})
        drawn += p.lines(kind).size();
    CHECK(drawn == piece.lines.size());
    for (const auto& l : piece.lines) {
        const double off = mm(l.from_cut_edge.value()), from = mm(l.begins), to = mm(l.ends);
        segment s{};
        switch (l.parallel_to) {
        case edge::top:
            s = {{from, off}, {to, off}};
            break;
        case edge::bottom:
            s = {{from, height - off}, {to, height - off}};
            break;
        case edge::left:
            s = {{off, from}, {off, to}};
            break;
        case edge::right:
            s = {{width - off, from}, {width - off, to}};
            break;
        }
        std::vector<segment> on_cloth = p.on_cloth(group_of(l.kind));
        std::transform(on_cloth.begin(), on_cloth.end(), on_cloth.begin(), unbroken);
        CHECK(has(on_cloth, s));
    }
}

// Pieces that several tests draw.

/// The only piece, or the first, of a project.
template <length_unit Unit>
sheet_piece<Unit> first_of(const project<Unit>& p) {
    return sheet_of(p).pieces.front();
}

/// Cut 22 x 14 in, self-bound, with pocket lines and two zippers.
inline sheet_piece<inch> roll_outer() {
    project<inch> roll("Hand-tool roll", finished_size(20_in, 12_in));
    auto& outer = roll.add({"outer", "canvas", panel(roll.finished(), all_round(self_binding("1/2"_in, "1/8"_in)))});
    outer.mark("pocket line", edge::left, divided<finished_edge>(20_in, 5));
    roll.add(zipper<inch>{"outer",
                          edge::top,
                          {at<finished_edge>(3_in), at<finished_edge>(6_in)},
                          {20_in, 1_in, "1/2"_in},
                          "1/2"_in,
                          "1/4"_in,
                          zipper_supply<inch>::from_roll(180_in)});
    return first_of(roll);
}

/// Cut 43 x 76 cm, of film, with twelve marks.
inline sheet_piece<centimetre> backing() {
    project<centimetre> p("Seed-packet organiser", finished_size(38_cm, 64_cm));
    const auto side = double_turned_hem(1_cm, "1.5"_cm, "0.2"_cm);
    auto& b = p.add(
        {"backing", "clear film",
         panel(p.finished(), {heading(8_cm, 1_cm, "0.3"_cm), side, double_turned_hem(1_cm, 2_cm, "0.2"_cm), side})});
    b.of_film().mark("pocket line", edge::top, divided<finished_edge>(64_cm, 13));
    return first_of(p);
}

inline sheet_piece<inch> plain(length<inch> width, length<inch> height, const edges<inch>& finishes = {}) {
    project<inch> p("Kneeling pad", finished_size(width, height));
    p.add({"piece", "cotton", panel(p.finished(), finishes)});
    return first_of(p);
}

inline sheet_piece<inch> with_marks(length<inch> width, length<inch> height, edge from, std::int64_t spans) {
    project<inch> p("Kneeling pad", finished_size(width, height));
    p.add({"strip", "cotton", panel(p.finished(), all_round(seam("1/2"_in)))})
        .mark("eyelet", from, divided<finished_edge>(is_level(from) ? height : width, spans));
    return first_of(p);
}

} // namespace turncloth::drawn

namespace doctest {

template <>
struct StringMaker<turncloth::page_point> {
    static String convert(const turncloth::page_point& p) { return turncloth::drawn::text_of(p).c_str(); }
};

} // namespace doctest

#endif
