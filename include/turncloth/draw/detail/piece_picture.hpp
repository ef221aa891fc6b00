// A piece as a picture: its edges, lines and eyelets, each with its figure, and what is said of them.
//
//   piece_picture<Unit>(piece, ruler).make(project)     a picture (page/drawing.hpp)
//
//   piece_picture<inch> mat(sheet_of(p).pieces[0], ruler());
//   const picture drawn = mat.make("Mat");
#ifndef TURNCLOTH_DRAW_DETAIL_PIECE_PICTURE_HPP
#define TURNCLOTH_DRAW_DETAIL_PIECE_PICTURE_HPP

#include <turncloth/draw/detail/bearings.hpp>
#include <turncloth/draw/detail/words.hpp>
#include <turncloth/notions/caution.hpp>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <set>
#include <string>
#include <tuple>
#include <utility>
#include <vector>

namespace turncloth::detail {

// A finished edge is thin and hardly broken, so that a fold or stitching on it can be told apart from it.
inline constexpr kind_of_line cut_edge_line = {{"cut", 0.6}, "cut edge"},
                              finished_edge_line = {finished_pen, "finished edge"},
                              eyelet_line = {{"eyelet", 0.2}, "eyelet"};
inline constexpr pen brought_pen = {"brought to", 0.2};

/// Those drawn first lie below.
inline constexpr std::pair<line_kind, kind_of_line> drawn_lines[] = {
    {line_kind::fold, {fold_pen, "fold"}},
    {line_kind::stitching, {stitching_pen, "stitching"}},
    {line_kind::mark, {{"mark", 0.25, {6, 1, 1, 1}}, "mark"}},
    {line_kind::placement, {{"placement", 0.35, {0.35, 1.4}}, "placement"}},
    {line_kind::slit, {{"slit", 0.7, {0.7, 0.7}}, "slit"}}};

/// Clockwise from the upper left; twelve points where a square of `c` is cut out of each corner.
inline std::vector<page_point> cut_outline(double w, double h, double c) {
    if (c == 0)
        return {{0, 0}, {w, 0}, {w, h}, {0, h}};
    return {{c, 0},     {w - c, 0}, {w - c, c}, {w, c},     {w, h - c}, {w - c, h - c},
            {w - c, h}, {c, h},     {c, h - c}, {0, h - c}, {0, c},     {c, c}};
}

/// A circle as a polygon that no eye tells from it.
inline std::vector<page_point> circle_at(page_point centre, double diameter) {
    constexpr int corners = 48;
    std::vector<page_point> all;
    for (int i = 0; i < corners; ++i) {
        const double angle = 2 * std::numbers::pi * i / corners;
        all.push_back({centre.x + diameter / 2 * std::cos(angle), centre.y + diameter / 2 * std::sin(angle)});
    }
    return all;
}

/// Along the margin. Of labels that say the same, the one stays whose line is nearest to the margin; the end of a line
/// needs none where it meets a labelled line.
inline void put_in_order(std::vector<margin_label>& labels, bool from_right) {
    std::stable_sort(labels.begin(), labels.end(), [&](const margin_label& a, const margin_label& b) {
        const double nearer_a = from_right ? -a.start : a.start, nearer_b = from_right ? -b.start : b.start;
        return std::tie(a.at, a.what, a.from, nearer_a) < std::tie(b.at, b.what, b.from, nearer_b);
    });
    const auto same = [](const margin_label& a, const margin_label& b) {
        return std::tie(a.at, a.what, a.from) == std::tie(b.at, b.what, b.from);
    };
    labels.erase(std::unique(labels.begin(), labels.end(), same), labels.end());
    const std::vector<margin_label> all = labels;
    std::erase_if(labels, [&](const margin_label& end) { // those at one place are neighbours
        const auto [first, last] = std::equal_range(
            all.begin(), all.end(), end, [](const margin_label& a, const margin_label& b) { return a.at < b.at; });
        return end.of_end && std::any_of(first, last, [&](const margin_label& l) {
                   return !l.of_end && std::tie(l.figure, l.from) == std::tie(end.figure, end.from);
               });
    });
}

template <length_unit Unit>
class piece_picture {
public:
    piece_picture(const sheet_piece<Unit>& p, const ruler& by) : from_(p), by_(by) {}

    picture make(const std::string& project) {
        require_few_enough(from_.lines.size(), "the number of lines of a piece that is drawn");
        made_.words.project = project;
        made_.words.most_list = 0.6;
        made_.words.sentences = edge_sentences(from_.made_from.shape(), by_);
        made_.words.small_print.push_back(
            sentence({"Distances are from the cut edge named, ", figures_note(by_, from_.graduation)}));
        if (from_.made_from.is_film())
            made_.words.small_print.emplace_back(word(caution::film_and_iron));
        name_sizes();
        add_edges();
        for (const auto& [kind, drawn] : drawn_lines)
            for (const sheet_line<Unit>& l : from_.lines)
                if (l.kind == kind)
                    add(l, drawn);
        if (!made_.arrows.empty())
            say(sentence({"pleats: each arrow runs from a fold to the placement line that it is brought to"}));
        add_corner();
        for (const sheet_eyelets<Unit>& row : from_.eyelets)
            add(row);
        put_in_order(made_.at_right, true);
        put_in_order(made_.above, false);
        for (const edge e : all_edges)
            for (const auto* side : {&made_.at_right, &made_.above})
                if (std::any_of(side->begin(), side->end(),
                                [&](const margin_label& l) { return l.from == name_of(e); }))
                    measured_from_.insert(e);
        if (!measured_from_.empty())
            made_.explain(from_here_line);
        if (has_grain())
            made_.words.small_print.emplace_back(word("The grain runs up the piece, unless its lay turns it."));
        return std::move(made_);
    }
    /// Film has none.
    bool has_grain() const { return !from_.made_from.is_film(); }
    const std::set<edge>& measured_from() const { return measured_from_; }

private:
    std::string written(length<Unit> l) const { return to_text(l, by_); }
    void say(std::string sentence) { made_.words.sentences.push_back(std::move(sentence)); }

    void name_sizes() {
        const piece<Unit>& p = from_.made_from;
        made_.words.title = p.name();
        made_.words.facts_size = body_size;
        made_.words.facts = {
            sentence({"cut ", p.count(), " of ", p.material()}),
            sentence({"cut ", unbroken(size_text(from_.cut.width(), from_.cut.height(), by_))}),
            sentence({"finishes ", unbroken(size_text(from_.finished.width(), from_.finished.height(), by_))})};
        if (from_.corner.value() > 0)
            made_.words.facts[2] =
                sentence({made_.words.facts[2], ", ", unbroken(written(from_.depth)), " deep, with its pair"});
    }

    /// The cut edge, and the finished one on the flat cloth; where corners are cut out, that is the face of the box. The
    /// finished size is told next to the piece, the cut size outside it.
    void add_edges() {
        const panel<Unit>& shape = from_.made_from.shape();
        const finished_size<Unit>& flat = shape.finished();
        const length<Unit> side = from_.depth / 2;
        const double width = made_.width = in_mm(from_.cut.width()), height = made_.height = in_mm(from_.cut.height());
        require_drawable({width, height});
        const page_area finished{in_mm(shape.finish_of(edge::left).allowance() + side),
                                 in_mm(shape.finish_of(edge::top).allowance() + side),
                                 in_mm(flat.width() - from_.depth), in_mm(flat.height() - from_.depth)};
        made_.draw(cut_edge_line, cut_outline(width, height, in_mm(from_.corner)), true);
        const bool differ = finished.width != width || finished.height != height;
        if (differ) {
            made_.draw(finished_edge_line, finished);
            const auto words = [&](length<Unit> laid, length<Unit> made) {
                const bool pleated = from_.corner.value() == 0 && made != laid;
                return pleated ? sentence({"before pleating ", written(laid)}) : sentence({"finished ", written(made)});
            };
            made_.below.push_back(
                {finished.x, finished.right(), finished.bottom(), words(flat.width(), from_.finished.width())});
            made_.beside.push_back(
                {finished.y, finished.bottom(), finished.x, words(flat.height(), from_.finished.height())});
        }
        const auto cut = [&](const length<Unit>& l) {
            return differ ? sentence({"cut ", written(l)}) : sentence({"cut and finished ", written(l)});
        };
        made_.below.push_back({0, width, height, cut(from_.cut.width())});
        made_.beside.push_back({0, height, 0, cut(from_.cut.height())});
    }

    /// A corner cut out is as wide as it is high.
    void add_corner() {
        if (from_.corner.value() == 0)
            return;
        const double c = in_mm(from_.corner);
        made_.above.push_back({c, c, written(from_.corner), "left", sentence({"corner cut out"})});
        made_.at_right.push_back({c, made_.width - c, written(from_.corner), "top", sentence({"corner cut out"})});
        say(sentence({"corners: cut a square of ", unbroken(written(from_.corner)), " out of each"}));
    }

    /// Those of a row share their distance from the top. The cross reaches beyond the rim.
    void add(const sheet_eyelets<Unit>& row) {
        const double down = in_mm(row.from_top.value()), arm = 0.75 * in_mm(row.size.rim);
        for (const length<Unit>& centre : row.from_left) {
            const double x = in_mm(centre);
            made_.draw(eyelet_line, page_segment{{x - arm, down}, {x + arm, down}});
            made_.draw(eyelet_line, page_segment{{x, down - arm}, {x, down + arm}});
            for (const length<Unit>& diameter : {row.size.hole, row.size.rim})
                made_.draw(eyelet_line, circle_at({x, down}, in_mm(diameter)), true);
            made_.above.push_back({x, down, written(centre), "left", sentence({"eyelet"})});
        }
        made_.at_right.push_back(
            {down, in_mm(row.from_left.back()), written(row.from_top.value()), "top", sentence({"eyelets"})});
        say(sentence(
            {"eyelets: holes of ", unbroken(written(row.size.hole)), ", rims of ", unbroken(written(row.size.rim))}));
    }

    void add(const sheet_line<Unit>& l, const kind_of_line& drawn) {
        const bool level = is_level(l.parallel_to);
        const double at = from_near_edge(l, l.from_cut_edge.value()), begins = in_mm(l.begins), ends = in_mm(l.ends);
        const auto stretch = [&](double from, double to) {
            made_.draw(drawn, level ? page_segment{{from, at}, {to, at}} : page_segment{{at, from}, {at, to}});
        };
        for (const short_mark<Unit>& t : l.only)
            if (t.at == edge::top || t.at == edge::left)
                stretch(begins, begins + in_mm(t.size));
            else
                stretch(ends - in_mm(t.size), ends);
        if (l.only.empty())
            stretch(begins, ends);
        if (l.brought_to) { // at a third of the line's length: clear of the words of a dimension
            const double third = in_mm(along(from_.cut, l.parallel_to)) / 3, to = from_near_edge(l, *l.brought_to);
            made_.arrows.push_back(
                {brought_pen, level ? page_segment{{third, at}, {third, to}} : page_segment{{at, third}, {to, third}}});
        }
        if (!l.of_finish) // else the list of edges says it
            label(l, at);
    }
    /// From the top or the left.
    double from_near_edge(const sheet_line<Unit>& l, length<Unit> off) const {
        const bool from_far = l.parallel_to == edge::bottom || l.parallel_to == edge::right;
        return in_mm(from_far ? across(from_.cut, l.parallel_to) - off : off);
    }

    /// A line that stops short of the piece's edges has its ends labelled on the other margin.
    void label(const sheet_line<Unit>& l, double at) {
        const bool level = is_level(l.parallel_to), worked = l.kind != line_kind::mark && l.kind != line_kind::slit;
        const std::string own_name = said_again(l.what),
                          what = worked ? sentence({word(verb_of(l.kind)), " ", own_name}) : own_name;
        auto &own = level ? made_.at_right : made_.above, &other = level ? made_.above : made_.at_right;
        own.push_back({at, in_mm(level ? l.ends : l.begins), written(l.from_cut_edge.value()),
                       std::string(name_of(l.parallel_to)), what});
        if (l.begins.value() == 0 && l.ends == along(from_.cut, l.parallel_to))
            return;
        const std::string from = level ? "left" : "top";
        other.push_back({in_mm(l.begins), at, written(l.begins), from, sentence({what, ", begins"}), true});
        other.push_back({in_mm(l.ends), at, written(l.ends), from, sentence({what, ", ends"}), true});
    }

    const sheet_piece<Unit>& from_;
    const ruler by_;
    picture made_;
    std::set<edge> measured_from_{};
};

} // namespace turncloth::detail

#endif
