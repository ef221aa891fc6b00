// A straight-edged piece of any shape drawn to scale on a page to be printed.
//
//   outline_labels<U>{name, material, count, notches, grain}     what an outline does not know of itself
//   page_of(outline, labels, ruler, options)       a page as a value (page/page.hpp)
//   drawing_of(outline, labels, ruler, options)    the same as an SVG document
//
//   const outline<inch> gusset({drafted_point<inch>(0, 0), drafted_point<inch>(12, 0), drafted_point<inch>(0, 8)},
//                              {drafted_length_of<inch>(0.5)});
//   save("gusset.svg", drawing_of(gusset, {.name = "gusset", .material = "canvas", .count = 2}));
//
// The outline lies as it was drafted, y upward. Edge i of it is number i + 1 on the page, as a page counts from 1. The
// grain's arrow lies on the grain line where that meets the piece, else beside it. Lengths and areas are rounded from
// the doubles drafted; what is drawn is not rounded.
//
// A cut line that crosses itself is drawn too, each crossing marked and a sentence above it: whoever drafted it must
// see where. Included by itself, as outline.hpp is.
#ifndef TURNCLOTH_DRAW_OUTLINE_HPP
#define TURNCLOTH_DRAW_OUTLINE_HPP

#include <turncloth/draw/detail/outline_labels.hpp>
#include <turncloth/draw/detail/outline_plan.hpp>

#include <algorithm>
#include <cstddef>
#include <optional>
#include <string>
#include <tuple>
#include <type_traits>
#include <utility>
#include <vector>

namespace turncloth {

namespace detail {

inline constexpr pen cut_line_pen = {"cut", 0.6}, seam_pen = stitching_pen.meaning("seam"), notch_pen = {"notch", 0.35},
                     crossing_pen = {"crossing", 0.45};

/// An outline on a page of one size.
class outline_drawer {
public:
    outline_drawer(const outline_plan& p, const drawing_options& options, double width, double height)
        : plan_(&p), stated_(!options.for_screen), frame_(frame_words_of(p, options), options, width, height) {
        page_area& room = frame_.picture;
        for (const std::string& warning : p.warnings)
            for (std::string& line : frame_.by.wrapped(warning, body_size, room.width, 3, true))
                warnings_.push_back(std::move(line));
        const double above = static_cast<double>(warnings_.size()) * line_height, beyond = 2 * round_piece;
        const double wide = room.width - beyond, high = room.height - above - note_height - beyond;
        scale_ = scale_for([&](double scale) { return p.width <= wide * scale && p.height <= high * scale; });
        frame_.take_only(above + note_height + beyond + p.height / scale_);
        picture_ = {room.x, room.y + above, room.width, room.height - above - note_height};
        piece_ = centred(picture_.middle(), p.width / scale_, p.height / scale_);
    }

    /// What fewest entries are left out of the list for, then the larger scale, then the page that lies as the piece.
    auto rank() const { return std::tuple(frame_.left_out, scale_, frame_.lies() != (plan_->width > plan_->height)); }

    page draw() const {
        page on = frame_.begin(description());
        double y = page_margin - 1;
        for (const std::string& line : warnings_)
            on.write({picture_.x, y += line_height}, line, body_size).bold = true;
        on.draw_closed(seam_pen, on_page(plan_->seam));
        on.draw_closed(cut_line_pen, on_page(plan_->cut));
        draw_notches(on);
        draw_grain(on);
        draw_crossings(on);
        number_edges(on);
        return frame_.draw(std::move(on), scale_);
    }

private:
    static constexpr double round_piece = 10;              ///< for numbers outside the piece, on each side, in mm
    static constexpr double note_height = line_height + 1; ///< for a note below it

    static frame_words frame_words_of(const outline_plan& p, const drawing_options& options) {
        frame_words words = p.words;
        words.legend = {{cut_line_pen, "cut line"}, {seam_pen, "seam line"}};
        if (!p.notches.empty())
            words.legend.push_back({notch_pen, "notch"});
        if (p.grain)
            words.legend.push_back({grain_pen, "grain, an arrow"});
        if (!p.crossings.empty())
            words.legend.push_back({crossing_pen, "crossing, a diamond"});
        if (!options.for_screen)
            words.small_print[0].insert(0, "Print at 100 %. ");
        return words;
    }

    std::string description() const {
        std::string all = stated_ ? scale_text(scale_) + '.' : "";
        for (const auto* words : {&plan_->warnings, &plan_->words.facts, &plan_->words.lists[0]})
            for (const std::string& w : *words)
                all += joined({all.empty() ? "" : " ", plain(w), w.back() == '.' || w.back() == ':' ? "" : "."});
        return all;
    }

    page_point on_page(page_point p) const { return {piece_.x + p.x / scale_, piece_.y + p.y / scale_}; }
    std::vector<page_point> on_page(std::vector<page_point> points) const {
        for (page_point& p : points)
            p = on_page(p);
        return points;
    }

    /// From seam to cut line. Where these lie close or on each other the notch shows as a stroke inward.
    void draw_notches(page& on) const {
        for (const page_segment& n : plan_->notches)
            on.draw(notch_pen, {on_page(n.from), on_page(n.to)});
        for (std::size_t i = 0; i < plan_->notches.size(); ++i) {
            const page_point on_seam = on_page(plan_->notches[i].from);
            if (distance(on_seam, on_page(plan_->notches[i].to)) < 1.5)
                on.draw(notch_pen.meaning("notch-inward"), {on_seam, moved(on_seam, plan_->notches_inward[i], 2)});
        }
    }

    /// Over most of the room that there is, and never so short that it cannot be seen.
    void draw_grain(page& on) const {
        if (!plan_->grain)
            return;
        constexpr double least = 6, head = 2, splay = 0.35;
        const page_segment room = longest_chord(plan_->seam, *plan_->grain);
        const page_point a = on_page(room.from), b = on_page(room.to), middle = middle_of({a, b});
        const double size = distance(plan_->grain->from, plan_->grain->to);
        const page_point way{(plan_->grain->to.x - plan_->grain->from.x) / size,
                             (plan_->grain->to.y - plan_->grain->from.y) / size},
            across{-way.y, way.x};
        const double half = std::max(least, 0.7 * distance(a, b)) / 2;
        const page_point tip = moved(middle, way, half), back = moved(tip, way, -head);
        on.draw(grain_pen, {moved(middle, way, -half), tip});
        for (const double side : {head * splay, -head * splay})
            on.draw(grain_pen, {tip, moved(back, across, side)});
    }

    void draw_crossings(page& on) const {
        constexpr double size = 2.2;
        for (const page_point& c : on_page(plan_->crossings))
            on.draw_closed(crossing_pen, {{c.x, c.y - size}, {c.x + size, c.y}, {c.x, c.y + size}, {c.x - size, c.y}});
    }

    // Every edge has its number, with its length where there is room. Of very many edges every n-th is numbered.

    edge_on_page edge(std::size_t i) const {
        const std::size_t n = plan_->seam.size();
        return {{on_page(plan_->seam[i]), on_page(plan_->seam[(i + 1) % n])},
                plan_->outward[i],
                plan_->allowances[i] / scale_};
    }

    void number_edges(page& on) const {
        constexpr std::size_t most = 100;
        const std::size_t n = plan_->seam.size(), every = round_number([&](std::size_t k) { return n / k <= most; });
        std::vector<page_segment> seam;
        for (std::size_t i = 0; i < n; ++i)
            seam.push_back(edge(i).seam);
        number_placer place(on, frame_.by, std::move(seam), picture_);
        std::vector<std::optional<placed_words>> found(n);
        const auto try_all = [&](auto how) {
            for (std::size_t i = every - 1; i < n; i += every)
                if (!found[i] && (found[i] = how(edge(i), std::to_string(i + 1))))
                    place.take(*found[i]);
        };
        try_all([&](const edge_on_page& e, const std::string& words) { return place.beside(e, words); });
        try_all([&](const edge_on_page& e, const std::string& words) { return place.led(e, words); });
        lengthen(place, found);
        std::size_t without = 0;
        for (std::size_t i = every - 1; i < n; i += every)
            if (found[i])
                write(on, *found[i]);
            else
                ++without;
        write_note(on, every, without);
    }

    void lengthen(number_placer& place, std::vector<std::optional<placed_words>>& found) const {
        for (std::size_t i = 0; i < found.size(); ++i) {
            if (!found[i] || found[i]->leader)
                continue;
            place.give_back(*found[i]);
            if (auto longer = place.beside(edge(i), plan_->edge_words[i]))
                found[i] = std::move(longer);
            place.take(*found[i]);
        }
    }

    static void write(page& on, const placed_words& p) {
        if (p.leader)
            on.draw(leader_pen, {p.leader->from, p.leader->to});
        const page_point middle = p.where.middle();
        on.write({middle.x, middle.y + 0.26 * body_size}, p.words, body_size, set_from::middle);
    }

    void write_note(page& on, std::size_t every, std::size_t without) const {
        std::string note;
        if (every > 1)
            note = joined({"Of every ", std::to_string(every), " edges one has its number here. "});
        if (without > 0)
            note += joined(
                {"No room was found for the number of ", std::to_string(without), without == 1 ? " edge." : " edges."});
        if (!note.empty())
            on.write({picture_.x, picture_.bottom() + body_size}, frame_.by.shortened(note, small_size, picture_.width),
                     small_size);
    }

    const outline_plan* plan_;
    bool stated_;
    page_frame frame_;
    double scale_ = 1;
    std::vector<std::string> warnings_{};
    page_area picture_{}, piece_{};
};

} // namespace detail

/// Throws outline_error for a notch that is not on its edge or that a corner has taken away, or a grain line without
/// direction; range_error for fewer than one piece, a ruler whose graduation is not above zero, or a piece over 1 km
/// long or wide; overflow_error where 64 bits do not hold a figure.
template <length_unit Unit>
page page_of(const outline<Unit>& piece, const std::type_identity_t<outline_labels<Unit>>& labels, const ruler& by = {},
             const drawing_options& options = {}) {
    const detail::outline_plan plan = detail::outline_planner<Unit>(piece, labels, by).make(options.project);
    return detail::best_page(
               options,
               [&](double width, double height) { return detail::outline_drawer(plan, options, width, height); })
        .draw();
}

/// Throws as page_of.
template <length_unit Unit>
std::string drawing_of(const outline<Unit>& piece, const std::type_identity_t<outline_labels<Unit>>& labels,
                       const ruler& by = {}, const drawing_options& options = {}) {
    return to_svg(page_of(piece, labels, by, options));
}

TURNCLOTH_ONCE(std::string drawing_of<inch>(const outline<inch>&, const outline_labels<inch>&, const ruler&,
                                            const drawing_options&));
TURNCLOTH_ONCE(std::string drawing_of<centimetre>(const outline<centimetre>&, const outline_labels<centimetre>&,
                                                  const ruler&, const drawing_options&));

} // namespace turncloth

#endif
