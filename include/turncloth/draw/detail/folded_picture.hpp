// A folded panel as a picture: its edges seen and hidden, its mitres, its rows, and the words for its corners.
//
//   folded_picture<Unit, Number>(folded, ruler, project, name)     shown; make(): a picture (page/drawing.hpp)
//
//   folded_picture<inch, fraction> napkin(fold_panel(p, corners), ruler(), "", "napkin");
//   const picture drawn = napkin.make();
#ifndef TURNCLOTH_DRAW_DETAIL_FOLDED_PICTURE_HPP
#define TURNCLOTH_DRAW_DETAIL_FOLDED_PICTURE_HPP

#include <turncloth/draw/detail/folded_numbers.hpp>
#include <turncloth/draw/detail/left_out.hpp>
#include <turncloth/draw/detail/words.hpp>

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <string>
#include <utility>
#include <vector>

namespace turncloth::detail {

inline constexpr kind_of_line outline_line = {{"outline", 0.6}, "finished"},
                              edge_line = {{"edge", 0.2}, "visible edge"}, mitre_line = {{"mitre", 0.35}, "mitre"},
                              hidden_line = {{"hidden", 0.15, {1.6, 1}}, "hidden edge"},
                              row_line = {stitching_pen, "stitching"};

template <length_unit Unit, coordinate Number>
class folded_picture {
public:
    folded_shown shown{};

    folded_picture(const folded_panel<Unit, Number>& f, const ruler& by, const std::string& project,
                   const std::string& name)
        : from_(f), by_(by) {
        shown.view = view_of(from_);
        require_drawable({shown.view.width(), shown.view.height()});
        words_.project = project;
        words_.title = name;
        find_middle();
        find_corners();
        part_mitres();
        say();
    }

    picture make() const {
        picture made;
        made.words = words_;
        made.width = shown.across(shown.view.width());
        made.height = shown.down(shown.view.height());
        made.ring = layer_numbers::ring;
        made.has_note = true;
        made.may_enlarge = shown.across.is_there() || shown.down.is_there();
        made.draw(outline_line, page_area{0, 0, made.width, made.height});
        for (const auto& [kind, lines] :
             {std::pair(&edge_line, &seen_.visible), {&mitre_line, &mitres_}, {&hidden_line, &seen_.hidden}})
            for (const page_segment& s : *lines)
                if (!lies_on_outline(s))
                    made.draw(*kind, shown(s));
        draw_rows(made);
        draw_left_out(made);
        made.below = {{0, made.width, made.height, size_words(edge::left, edge::right)}};
        made.beside = {{0, made.height, 0, size_words(edge::top, edge::bottom)}};
        made.names = {
            {{{0, 0}, {made.width, 0}}, 1.2, sentence({"top edge"})},
            {{{made.width, 0}, {made.width, made.height}}, 3.1, sentence({"left edge"})}}; // as the back shows them
        return made;
    }

private:
    static constexpr bool is_right(corner c) { return c == corner::top_left || c == corner::bottom_left; }
    static constexpr bool is_low(corner c) { return c == corner::bottom_left || c == corner::bottom_right; }

    /// A layer's corners tell how far turned cloth lies inward; which edge a corner belongs to, the middle between what
    /// the hems of opposite edges reach.
    void find_middle() {
        const auto reach = [&](edge e) { return in_mm(from_.piece().finish_of(e).reach()); };
        const double w = shown.view.width(), h = shown.view.height(),
                     across = (reach(edge::right) + w - reach(edge::left)) / 2,
                     down = (reach(edge::top) + h - reach(edge::bottom)) / 2;
        double left = 0, top = 0, right = w, bottom = h;
        for (std::size_t i = 0; i < shown.view.layer_count(); ++i)
            for (const auto& p : shown.view.layer(i).corners) {
                const double x = p.x.value(), y = p.y.value();
                (x <= across ? left : right) = x <= across ? std::max(left, x) : std::min(right, x);
                (y <= down ? top : bottom) = y <= down ? std::max(top, y) : std::min(bottom, y);
            }
        shown.middle = {left, top, right - left, bottom - top};
    }

    /// Corners that are made alike and have as many layers at most share a sentence.
    void find_corners() {
        constexpr const char* names[] = {"top left", "top right", "bottom right", "bottom left"};
        for (const corner c : every_corner) {
            const page_area where = shown.part(is_right(c) ? 2 : 0, is_low(c) ? 2 : 0);
            std::size_t most = 0;
            for (const folded_region& r : shown.view.within(where).regions())
                most = std::max(most, r.layers);
            if (most == 0)
                continue;
            const std::string way = from_.ways()[c].is_mitred ? sentence({"mitred, up to ", most, " layers"})
                                                              : sentence({"stacked, up to ", most, " layers"});
            const auto same = std::find_if(corner_words_.begin(), corner_words_.end(),
                                           [&](const auto& words) { return words.second == way; });
            if (same == corner_words_.end())
                corner_words_.emplace_back(word(names[static_cast<std::size_t>(c)]), way);
            else
                same->first.append(", ").append(word(names[static_cast<std::size_t>(c)]));
        }
    }

    /// What shows along a mitre's line, from where the outer creases cross to the corner of the hems' inner edges, is the
    /// mitre: where the folding should leave a gap, it would be missing.
    void part_mitres() {
        straight_lines mitres, visible, others;
        for (const corner c : every_corner) {
            if (!from_.ways()[c].is_mitred)
                continue;
            const panel<Unit>& shape = from_.piece();
            const double w = shown.view.width(), h = shown.view.height(),
                         in_x = in_mm(turned_part_of(shape.finish_of(is_right(c) ? edge::left : edge::right), "upright")
                                          .depth()),
                         in_y = in_mm(
                             turned_part_of(shape.finish_of(is_low(c) ? edge::bottom : edge::top), "level").depth());
            mitres.add({{is_right(c) ? w : 0, is_low(c) ? h : 0},
                        {is_right(c) ? w - in_x : in_x, is_low(c) ? h - in_y : in_y}});
        }
        const seen_edges all = shown.view.edges();
        for (const page_segment& s : all.visible)
            visible.add(s);
        seen_ = {visible.without(mitres), all.hidden};
        for (const page_segment& s : seen_.visible)
            others.add(s);
        mitres_ = visible.without(others);
    }

    void say() {
        const panel<Unit>& shape = from_.piece();
        const finished_size<Unit>& f = shape.finished();
        words_.facts_size = body_size;
        words_.facts = {sentence({"as it lies folded, seen from the back"}),
                        sentence({"cut ", unbroken(size_text(shape.cut().width(), shape.cut().height(), by_))}),
                        sentence({"finishes ", unbroken(size_text(f.width(), f.height(), by_))})};
        words_.sentences = edge_sentences(shape, by_);
        for (const auto& [names, way] : corner_words_)
            words_.sentences.push_back(names.find(',') == std::string::npos ? sentence({names, " corner: ", way})
                                                                            : sentence({names, " corners: ", way}));
        words_.small_print.push_back(
            sentence({"A number says how many layers lie there. Figures are ", rounded_note(by_)}));
    }

    /// A fold here has no thickness: a turn of cloth that is taken up shows, half of it at each such edge.
    std::string size_words(edge one, edge other) const {
        const length<Unit> cut = across(from_.piece().cut(), one),
                           flat = cut - from_.outer_line(one) - from_.outer_line(other);
        const auto& f = from_.piece().finished();
        const std::string text = to_text(flat, by_);
        return flat == (one == edge::left ? f.width() : f.height()) ? sentence({"finished ", text})
                                                                    : sentence({"folded flat ", text});
    }

    bool lies_on_outline(const page_segment& s) const {
        const auto on = [](double a, double b, double at) {
            return std::abs(a - at) <= too_thin && std::abs(b - at) <= too_thin;
        };
        return on(s.from.x, s.to.x, 0) || on(s.from.x, s.to.x, shown.view.width()) || on(s.from.y, s.to.y, 0) ||
               on(s.from.y, s.to.y, shown.view.height());
    }

    /// Each from side to side of the folded piece.
    void draw_rows(picture& made) const {
        const double w = shown.view.width(), h = shown.view.height();
        for (const edge e : all_edges)
            for (const auto& row : from_.piece().finish_of(e).stitching()) {
                const double in = in_mm(row.from_datum() - from_.outer_line(e));
                const double x = e == edge::right ? in : w - in, y = e == edge::top ? in : h - in;
                made.draw(row_line, shown(is_level(e) ? page_segment{{0, y}, {w, y}} : page_segment{{x, 0}, {x, h}}));
            }
    }

    void draw_left_out(picture& made) const {
        if (shown.across.is_there())
            draw_zigzag(made, {shown.across.from, shown.across.shown}, made.height, true);
        if (shown.down.is_there())
            draw_zigzag(made, {shown.down.from, shown.down.shown}, made.width, false);
    }

    const folded_panel<Unit, Number>& from_;
    const ruler by_;
    frame_words words_{};
    std::vector<std::pair<std::string, std::string>> corner_words_{}; ///< which, and how they are made
    seen_edges seen_{};                                               ///< without the mitres
    std::vector<page_segment> mitres_{};
};

} // namespace turncloth::detail

#endif
