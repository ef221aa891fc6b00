// A lay of cloth drawn to scale on a page to be printed.
//
//   page_of(cloth, ruler, options, keep)       a page as a value (page/page.hpp)
//   drawing_of(cloth, ruler, options, keep)    the same as an SVG document
//   worth_keeping<U>{across, along}            from what size on what is left over is drawn
//
//   const auto canvas = cloth_for<inch>(s, "canvas", {.width = 54_in, .selvedge = "1/2"_in}, rules);
//   save("canvas.svg", drawing_of(canvas, {}, {.project = s.name}));
//
// The cloth lies with its end first cut at the top and its length down the page, at the largest scale of a plain series
// that it has room at. Every kind of piece has a letter, which the list below explains; where there is room its name
// and size stand on the piece too. Cuts from edge to edge are numbered in the order in which they are made; of a lay that
// is cut free the list gives the place of every piece. The end and the edge that all of them count from are drawn thick
// and named.
//
// Included by itself, as sheet/purchases.hpp is.
#ifndef TURNCLOTH_DRAW_LAY_HPP
#define TURNCLOTH_DRAW_LAY_HPP

#include <turncloth/draw/detail/lay_plan.hpp>
#include <turncloth/page/drawing.hpp>

#include <algorithm>
#include <cstddef>
#include <string>
#include <tuple>
#include <type_traits>
#include <utility>
#include <vector>

namespace turncloth {

namespace detail {

/// A lay on a page of one size.
class lay_drawer {
public:
    lay_drawer(const lay_plan& p, const drawing_options& options, double width, double height)
        : plan_(&p), frame_(frame_words_of(p, options), options, width, height) {
        const page_area& room = frame_.picture;
        const double wide = room.width - 2 * beside, high = room.height - above - below;
        scale_ = scale_for([&](double scale) { return p.width <= wide * scale && p.length <= high * scale; });
        frame_.take_only(above + p.length / scale_ + below);
        cloth_ = {room.x + (room.width - p.width / scale_) / 2, room.y + above, p.width / scale_, p.length / scale_};
    }

    /// The larger scale, then the page that lies as the cloth.
    auto rank() const { return std::tuple(scale_, frame_.lies() != (plan_->width > plan_->length)); }

    page draw() const {
        page on = frame_.begin(description());
        draw_cloth(on);
        draw_dimensions(on);
        name_datum(on);
        if (plan_->places.size() <=
            crowd) { // of more it would be long to look for a place for each; the lists have them
            free_room room(on, frame_.by);
            for (std::size_t i = 0; i < plan_->cuts.size(); ++i)
                number_cut(on, room, i);
            for (std::size_t i = 0; i < plan_->kept.size(); ++i)
                write_in(on, room, inside(on_page(plan_->kept[i])), {"left over", plan_->kept_sizes[i]});
            for (const lay_plan::laid& p : plan_->places)
                name_piece(on, room, p);
        }
        return frame_.draw(std::move(on), scale_);
    }

private:
    static constexpr double name_row = small_line_height + 1; ///< between the end and its dimensions
    static constexpr double above = 2 * dimension_row + name_row + 2, beside = dimension_row + 2;
    static constexpr double below = line_height + page_gap; ///< a line for a length that is too short for its words
    static constexpr std::size_t crowd = 1000;

    static frame_words frame_words_of(const lay_plan& p, const drawing_options& options) {
        frame_words words = p.words;
        words.most_list = 0.2;
        if (!options.for_screen)
            words.small_print[0].insert(0, "Print at 100 %. ");
        return words;
    }

    std::string description() const {
        std::string all;
        for (const auto* words : {&plan_->words.facts, &plan_->words.lists[1]})
            for (const std::string& w : *words)
                all.append(all.empty() ? "" : " ").append(plain(w)).append(".");
        return all;
    }

    double x(double across) const { return cloth_.x + across / scale_; }
    double y(double along) const { return cloth_.y + along / scale_; }
    page_area on_page(const page_area& a) const { return {x(a.x), y(a.y), a.width / scale_, a.height / scale_}; }
    page_segment on_page(const page_segment& s) const { return {{x(s.from.x), y(s.from.y)}, {x(s.to.x), y(s.to.y)}}; }

    void draw_cloth(page& on) const {
        for (const double edge : {plan_->usable_from, plan_->usable_to})
            if (edge > 0 && edge < plan_->width)
                on.draw(selvedge_pen, {{x(edge), cloth_.y}, {x(edge), cloth_.bottom()}});
        for (const lay_plan::laid& p : plan_->places)
            on.draw_closed(laid_pen, on_page(p.where));
        on.draw_closed(cloth_pen, cloth_);
        on.draw(datum_pen, {{cloth_.x, cloth_.bottom()}, {cloth_.x, cloth_.y}, {cloth_.right(), cloth_.y}});
        for (const page_segment& c : plan_->cuts)
            on.draw(cutting_pen, {on_page(c).from, on_page(c).to});
        for (const page_area& k : plan_->kept)
            on.draw_closed(kept_pen, inside(on_page(k)));
    }
    /// Apart from the lines of its neighbours.
    static page_area inside(const page_area& a) {
        const double in = std::min({0.8, a.width / 4, a.height / 4});
        return {a.x + in, a.y + in, a.width - 2 * in, a.height - 2 * in};
    }

    /// The width, and under it what is usable, above the cloth; the length at its left.
    void draw_dimensions(page& on) const {
        const double right = cloth_.right(), left = cloth_.x - dimension_row / 2;
        const auto level = [&](double from, double to, const std::string& words, double row) {
            const double at = cloth_.y - name_row - row * dimension_row + 2;
            draw_dimension(on, frame_.by, {{x(from), at}, {x(to), at}, cloth_.y, right, words});
        };
        level(0, plan_->width, plan_->width_words, 2);
        level(plan_->usable_from, plan_->usable_to, plan_->usable_words, 1);
        const bool over = stands_over(frame_.by, plan_->length_words, cloth_.height);
        draw_dimension(on, frame_.by,
                       {{left, cloth_.y}, {left, cloth_.bottom()}, cloth_.x, 0, over ? plan_->length_words : ""});
        if (!over)
            on.write({cloth_.x, cloth_.bottom() + line_height + 0.5}, plan_->length_words, body_size);
    }

    /// Outside the edges that all is counted from, where they are as long as their names.
    void name_datum(page& on) const {
        constexpr double apart = 1.2;
        const std::string end = "straightened end";
        const double from = x(plan_->usable_from), to = x(plan_->usable_to);
        if (frame_.by.width(end, small_size) + 2 * apart <= to - from)
            on.write({(from + to) / 2, cloth_.y - apart}, end, small_size, set_from::middle);
        if (frame_.by.width(plan_->edge_words, small_size) + 2 * apart <= cloth_.height)
            on.write({cloth_.x - apart, cloth_.y + cloth_.height / 2}, plan_->edge_words, small_size, set_from::middle)
                .turned = 90;
    }

    /// The number stands beside its cut, within one piece or one left-over, as near its beginning as it may be.
    void number_cut(page& on, free_room& room, std::size_t i) const {
        const page_segment c = on_page(plan_->cuts[i]);
        const std::string number = std::to_string(i + 1);
        page_area there{0, 0, frame_.by.width(number, small_size) + 0.8, small_size + 0.8};
        const bool level = c.from.y == c.to.y;
        for (const double part : {0.0, 0.5, 0.25, 0.75, 1.0})
            for (const bool after : {false, true}) {
                there.x = level ? c.from.x + part * (c.to.x - c.from.x - there.width)
                                : (after ? c.from.x : c.from.x - there.width);
                there.y = level ? (after ? c.from.y : c.from.y - there.height)
                                : c.from.y + part * (c.to.y - c.from.y - there.height);
                if (!within(there, cloth_) || !room.is_free(there))
                    continue;
                room.take(there);
                on.write({there.x + 0.4, there.y + 0.3 + 0.85 * small_size}, number, small_size);
                return;
            }
    }

    /// As much as the piece has room for: its letter, name, size and whether it is turned, with an arrow; or its letter.
    void name_piece(page& on, free_room& room, const lay_plan::laid& p) const {
        const page_area a = on_page(p.where);
        const std::string letter = letter_of(p.kind);
        std::vector<std::string> words = {joined({letter, ": ", plan_->kinds[p.kind]}), plan_->sizes[p.kind]};
        if (p.turned)
            words.emplace_back("turned");
        write_in(on, room, a, words) || write_in(on, room, a, {words[0]}) || write_in(on, room, a, {letter});
        add_arrow(on, room, a, p.turned);
    }

    /// Level, or upright in a narrow area, in the middle or below or above it; false where nowhere is room.
    bool write_in(page& on, free_room& room, const page_area& a, const std::vector<std::string>& lines) const {
        constexpr double inset = 0.6;
        const double wide = frame_.by.widest(lines, small_size),
                     high = static_cast<double>(lines.size()) * small_line_height;
        const page_area inner{a.x + inset, a.y + inset, a.width - 2 * inset, a.height - 2 * inset};
        for (const double part : {0.5, 1.0, 0.0})
            for (const bool upright : {false, true}) {
                page_area there{0, 0, upright ? high : wide, upright ? wide : high};
                there.x = inner.x + (upright ? part : 0.5) * (inner.width - there.width);
                there.y = inner.y + (upright ? 0.5 : part) * (inner.height - there.height);
                if (!within(there, inner) || !room.is_free(there))
                    continue;
                room.take(there);
                for (std::size_t i = 0; i < lines.size(); ++i) {
                    const double baseline = (static_cast<double>(i) + 0.8) * small_line_height;
                    on.write(upright ? page_point{there.x + baseline, there.middle().y}
                                     : page_point{there.middle().x, there.y + baseline},
                             lines[i], small_size, set_from::middle)
                        .turned = upright ? 90 : 0;
                }
                return true;
            }
        return false;
    }

    /// Beside the words, on the side that is free; a small piece goes without.
    static void add_arrow(page& on, free_room& room, const page_area& a, bool turned) {
        constexpr double head = 1.2, deep = 3;
        const double size = turned ? a.width : a.height, from = size * 0.2, to = size * 0.8;
        if (size < 8)
            return;
        for (const double part : {1.0, 0.0}) {
            const page_area strip = turned ? page_area{a.x + from, a.y + part * (a.height - deep), to - from, deep}
                                           : page_area{a.x + part * (a.width - deep), a.y + from, deep, to - from};
            if (!within(strip, a) || !room.is_free(strip))
                continue;
            room.take(strip);
            const page_point middle = strip.middle(),
                             tip = turned ? page_point{strip.right(), middle.y} : page_point{middle.x, strip.y},
                             tail = turned ? page_point{strip.x, middle.y} : page_point{middle.x, strip.bottom()};
            on.draw(grain_pen, {tail, tip});
            for (const double side : {-head / 2, head / 2})
                on.draw(grain_pen, {tip, turned ? page_point{tip.x - head, tip.y + side}
                                                : page_point{tip.x + side, tip.y + head}});
            return;
        }
    }

    const lay_plan* plan_;
    page_frame frame_;
    double scale_ = 1;
    page_area cloth_{};
};

} // namespace detail

/// Throws range_error for a ruler whose graduation is not above zero, a lay over 1 km long, or over 100000 pieces.
template <length_unit Unit>
page page_of(const sheet_cloth<Unit>& cloth, const ruler& by = {}, const drawing_options& options = {},
             const std::type_identity_t<worth_keeping<Unit>>& keep = {}) {
    const detail::lay_plan plan = detail::lay_planner<Unit>(cloth, by).make(options.project, keep);
    return detail::best_page(
               options, [&](double width, double height) { return detail::lay_drawer(plan, options, width, height); })
        .draw();
}

/// Throws as page_of.
template <length_unit Unit>
std::string drawing_of(const sheet_cloth<Unit>& cloth, const ruler& by = {}, const drawing_options& options = {},
                       const std::type_identity_t<worth_keeping<Unit>>& keep = {}) {
    return to_svg(page_of(cloth, by, options, keep));
}

TURNCLOTH_ONCE(std::string drawing_of<inch>(const sheet_cloth<inch>&, const ruler&, const drawing_options&,
                                            const worth_keeping<inch>&));
TURNCLOTH_ONCE(std::string drawing_of<centimetre>(const sheet_cloth<centimetre>&, const ruler&, const drawing_options&,
                                                  const worth_keeping<centimetre>&));

} // namespace turncloth

#endif
