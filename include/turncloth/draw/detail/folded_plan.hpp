// What the drawing of a folded panel shows and says, before anything has a place on the page.
//
//   folded_labels{name}                                what a folded panel does not know of itself
//   detail::folded_planner<U, N>(folded, ruler).make(project, labels)    its view from the back, its corners, its words
//   detail::number_spot(region, lines, wide, high)     where in its region a number stands clear of all lines
#ifndef TURNCLOTH_DRAW_DETAIL_FOLDED_PLAN_HPP
#define TURNCLOTH_DRAW_DETAIL_FOLDED_PLAN_HPP

#include <turncloth/draw/detail/folded_view.hpp>
#include <turncloth/draw/detail/words.hpp>

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace turncloth {

/// What a folded panel does not know of itself.
struct folded_labels {
    std::string name = "made up";
};

namespace detail {

/// Nearest to the middle of the region, of a net of spots and the middles of its parts.
inline std::optional<page_point> number_spot(const folded_region& region, const std::vector<page_segment>& lines,
                                             double wide, double high) {
    constexpr int meshes = 24;
    const page_area all = region.around();
    const double area = region.area();
    std::vector<page_point> spots;
    page_point middle{0, 0};
    for (const trapezoid& t : region.parts) {
        const double x = (t.left + t.right) / 2;
        spots.push_back({x, t.top(x) + t.height(x) / 2});
        middle = {middle.x + spots.back().x * t.area() / area, middle.y + spots.back().y * t.area() / area};
    }
    spots.push_back(middle);
    for (int i = 1; i < meshes; ++i)
        for (int j = 1; j < meshes; ++j)
            spots.push_back({all.x + all.width * i / meshes, all.y + all.height * j / meshes});
    const auto far = [&](page_point p) { return distance(p, middle); };
    std::sort(spots.begin(), spots.end(), [&](const page_point& p, const page_point& q) { return far(p) < far(q); });
    for (const page_point& p : spots) {
        const page_area room{p.x - wide / 2, p.y - high / 2, wide, high};
        if (region.holds(p) &&
            std::none_of(lines.begin(), lines.end(), [&](const page_segment& s) { return meets(s, room); }))
            return p;
    }
    return std::nullopt;
}

/// A corner of the folded piece as seen from the back.
struct folded_corner {
    corner which{};
    page_area where{};    ///< as far as cloth of both edges is turned; empty where one is not
    std::size_t kind = 0; ///< corners that are alike, or each other's mirror image, have the same
    std::size_t most = 0; ///< layers
    bool right = false, bottom = false;
};

struct corner_kind {
    std::string first, alike, way;
};

struct folded_plan {
    frame_words words{};
    folded_view view{0, 0, {}};
    std::string width_words{}, height_words{};
    seen_edges seen{};                          ///< without the mitres
    std::vector<page_segment> mitres{}, rows{}; ///< rows of stitching
    std::array<folded_corner, 4> corners{};
    std::vector<corner_kind> kinds{}; ///< of corners, in words
    page_area middle{};               ///< inward of all turned cloth

    double width() const { return view.width(); }
    double height() const { return view.height(); }
    page_area outline() const { return {0, 0, width(), height()}; }
    /// All along which the number of layers may change, and the stitching.
    std::vector<page_segment> lines() const {
        std::vector<page_segment> all = seen.visible;
        for (const auto* more : {&seen.hidden, &mitres, &rows})
            all.insert(all.end(), more->begin(), more->end());
        return all;
    }
};

template <length_unit Unit, coordinate Number>
class folded_planner {
public:
    folded_planner(const folded_panel<Unit, Number>& f, const ruler& by) : from_(f), by_(by) {}

    folded_plan make(const std::string& project, const folded_labels& labels) {
        made_.view = view_of(from_);
        require_drawable(made_.width());
        require_drawable(made_.height());
        made_.words.project = project;
        made_.words.title = labels.name;
        say();
        add_rows();
        find_middle();
        for (const corner c : every_corner)
            add_corner(c);
        part_mitres();
        return std::move(made_);
    }

private:
    std::string written(length<Unit> l) const { return to_text(l, by_); }

    void say() {
        const panel<Unit>& shape = from_.piece();
        const cut_size<Unit> cut = shape.cut();
        const finished_size<Unit>& f = shape.finished();
        const length<Unit> width = cut.width() - from_.outer_line(edge::left) - from_.outer_line(edge::right),
                           height = cut.height() - from_.outer_line(edge::top) - from_.outer_line(edge::bottom);
        made_.words.facts_size = body_size;
        made_.words.facts = {"as it lies folded, seen from the back",
                             "cut " + unbroken(size_text(cut.width(), cut.height(), by_)),
                             "finishes " + unbroken(size_text(f.width(), f.height(), by_))};
        // A fold here has no thickness: a turn of cloth that is taken up shows, half of it at each such edge.
        made_.width_words = (width == f.width() ? "finished " : "folded flat ") + written(width);
        made_.height_words = (height == f.height() ? "finished " : "folded flat ") + written(height);
        made_.words.sentences = edge_sentences(shape, by_);
        made_.words.small_print.push_back("A number says how many layers lie there. Figures are rounded to " +
                                          graduation_text(by_) + ", each from the exact length.");
    }

    /// Each from side to side of the folded piece.
    void add_rows() {
        for (const edge e : all_edges)
            for (const auto& row : from_.piece().finish_of(e).stitching()) {
                const double in = in_mm(row.from_datum() - from_.outer_line(e)), w = made_.width(), h = made_.height();
                const double x = e == edge::right ? in : w - in, y = e == edge::top ? in : h - in;
                made_.rows.push_back(is_level(e) ? page_segment{{0, y}, {w, y}} : page_segment{{x, 0}, {x, h}});
            }
    }

    /// A layer's corners tell how far turned cloth lies inward; which edge a corner belongs to, the middle between what
    /// the hems of opposite edges reach.
    void find_middle() {
        const auto reach = [&](edge e) { return in_mm(from_.piece().finish_of(e).reach()); };
        const double w = made_.width(), h = made_.height(), across = (reach(edge::right) + w - reach(edge::left)) / 2,
                     down = (reach(edge::top) + h - reach(edge::bottom)) / 2;
        double left = 0, top = 0, right = w, bottom = h;
        for (std::size_t i = 0; i < made_.view.layer_count(); ++i)
            for (const auto& p : made_.view.layer(i).corners) {
                const double x = p.x.value(), y = p.y.value();
                (x <= across ? left : right) = x <= across ? std::max(left, x) : std::min(right, x);
                (y <= down ? top : bottom) = y <= down ? std::max(top, y) : std::min(bottom, y);
            }
        made_.middle = {left, top, right - left, bottom - top};
    }

    void add_corner(corner c) {
        const page_area& m = made_.middle;
        const double w = made_.width(), h = made_.height();
        const bool right = c == corner::top_left || c == corner::bottom_left,
                   bottom = c == corner::bottom_left || c == corner::bottom_right;
        folded_corner& made = made_.corners[static_cast<std::size_t>(c)];
        made = {c,
                {right ? m.right() : 0, bottom ? m.bottom() : 0, right ? w - m.right() : m.x,
                 bottom ? h - m.bottom() : m.y},
                kind_of(c),
                0,
                right,
                bottom};
        for (const folded_region& r : made_.view.within(made.where).regions())
            made.most = std::max(made.most, r.layers);
        if (!from_.ways()[c].is_mitred)
            return;
        // From where the outer creases cross to the corner of the hems' inner edges, as deep as they are turned.
        const finish<Unit>&upright = upright_of(c), &level = level_of(c);
        const double in_x = in_mm(turned_part_of(upright, "upright").depth()),
                     in_y = in_mm(turned_part_of(level, "level").depth());
        mitre_lines_.add({right ? w : 0, bottom ? h : 0}, {right ? w - in_x : in_x, bottom ? h - in_y : in_y});
    }

    /// What shows along a mitre's line is the mitre: where the folding should leave a gap, it would be missing.
    void part_mitres() {
        const seen_edges all = made_.view.edges();
        straight_lines visible;
        for (const page_segment& s : all.visible)
            visible.add(s);
        made_.seen = {visible.without(mitre_lines_), all.hidden};
        straight_lines others;
        for (const page_segment& s : made_.seen.visible)
            others.add(s);
        made_.mitres = visible.without(others);
    }

    const finish<Unit>& upright_of(corner c) const {
        const bool left = c == corner::top_left || c == corner::bottom_left;
        return from_.piece().finish_of(left ? edge::left : edge::right);
    }
    const finish<Unit>& level_of(corner c) const {
        const bool top = c == corner::top_left || c == corner::top_right;
        return from_.piece().finish_of(top ? edge::top : edge::bottom);
    }
    bool alike(corner a, corner b) const {
        const corner_way<Unit>&one = from_.ways()[a], &other = from_.ways()[b];
        return upright_of(a) == upright_of(b) && level_of(a) == level_of(b) && one.is_mitred == other.is_mitred &&
               one.allowance == other.allowance && (!one.allowance || one.step == other.step);
    }
    static const char* name_of(corner c) {
        constexpr const char* names[] = {"top left", "top right", "bottom right", "bottom left"};
        return names[static_cast<std::size_t>(c)];
    }

    /// Its name is added to that of the corners before it that are alike.
    std::size_t kind_of(corner c) {
        for (const corner before : every_corner) {
            if (before == c)
                break;
            if (const std::size_t kind = made_.corners[static_cast<std::size_t>(before)].kind; alike(before, c)) {
                made_.kinds[kind].alike.append(made_.kinds[kind].alike.empty() ? "" : ", ").append(name_of(c));
                return kind;
            }
        }
        made_.kinds.push_back({name_of(c), "", from_.ways()[c].is_mitred ? "mitred" : "stacked"});
        return made_.kinds.size() - 1;
    }

    const folded_panel<Unit, Number>& from_;
    const ruler by_;
    folded_plan made_;
    straight_lines mitre_lines_;
};

} // namespace detail

} // namespace turncloth

#endif
