// What drawings are made with. A picture: what is drawn of one thing and what is said of it, in mm of the thing; and its
// page. The drawings of draw/ are made with it; it knows nothing of cloth.
//
//   picture p;                              width, height, words of the frame, and
//   p.draw(kind, points)                    lines, each kind with its place in the legend
//   p.arrows  p.below  p.beside  p.names    arrows; dimensions, the nearest first; names of edges
//   p.above  p.at_right                     labels on the margins (margin.hpp)
//   best_page(options, [&](double w, double h) { return picture_page(p, options, w, h); }).draw(label)
//
// The picture stands at the largest scale of the series that leaves room for its words. It has dimensions at its left and
// below it, labels of level lines at its right and of upright lines above it: no two of these meet. What else is to be
// written in or beside it is for `label` to do, which is told where it lies.
#ifndef TURNCLOTH_PAGE_DRAWING_HPP
#define TURNCLOTH_PAGE_DRAWING_HPP

#include <turncloth/page/detail/margin.hpp>

#include <algorithm>
#include <cmath>
#include <iterator>
#include <optional>
#include <string>
#include <tuple>
#include <utility>
#include <vector>

namespace turncloth::detail {

inline constexpr double dimension_row = 7; // from one dimension to the next
inline constexpr double past_end = 1.5;    // from the end of a dimension to words that it is too short for
inline constexpr pen dimension_pen = {"dimension", 0.15};

/// A dimension: from one place to another; `edge` is where across it the lines from its ends begin, at what is measured.
struct measured {
    double from, to, edge;
    std::string words;
};

/// Words along an edge, so far beyond it on paper: above one that is level, and of one that is upright at its left, or at
/// its right where that is more than 0. Where the edge is not as long, shorter ones, or none.
struct edge_name {
    page_segment edge;
    double beyond;
    std::string words, shorter{};
};

struct drawn_arrow {
    pen with;
    page_segment shaft; ///< its head is at the end
};

struct picture {
    frame_words words{};
    std::vector<std::string> warnings{}; ///< above it
    double width = 0, height = 0;        ///< of what is drawn, in mm
    double ring = 0;                     ///< mm of paper all round it that are kept for labels
    bool has_note = false;               ///< a line of words may be written below it
    bool may_enlarge = false;            ///< to twice, five or ten times
    bool fills = false; ///< its page, at a scale of a finer series: no length is to be taken from it with a rule
    std::vector<page_stroke> strokes{};
    std::vector<drawn_arrow> arrows{};
    std::vector<measured> below{}, beside{};
    std::vector<edge_name> names{};
    std::vector<margin_label> above{}, at_right{};

    /// The legend has each kind of line once.
    void draw(const kind_of_line& kind, std::vector<page_point> points, bool closed = false) {
        explain(kind);
        strokes.push_back({kind.with, std::move(points), closed});
    }
    void draw(const kind_of_line& kind, const page_segment& s) { draw(kind, std::vector{s.from, s.to}); }
    void draw(const kind_of_line& kind, const page_area& a) {
        const auto corners = a.corners();
        draw(kind, std::vector(corners.begin(), corners.end()), true);
    }
    void explain(const kind_of_line& kind) {
        if (std::none_of(words.legend.begin(), words.legend.end(),
                         [&](const kind_of_line& k) { return k.words == kind.words; }))
            words.legend.push_back(kind);
    }
};

/// The head is `size` long on the page, or all of a shorter arrow.
inline void draw_arrow(page& on, const pen& with, const page_segment& s, double size = 2) {
    const double length = distance(s.from, s.to);
    if (length == 0)
        return;
    const double head = std::min(size, length) / length, x = s.to.x - s.from.x, y = s.to.y - s.from.y;
    const auto side = [&](double turn) {
        return page_point{s.to.x - head * (x + turn * y / 3), s.to.y - head * (y - turn * x / 3)};
    };
    on.draw(with, {s.from, s.to});
    on.draw(with, {side(1), s.to, side(-1)});
}

/// Where a picture lies on its page.
struct picture_place {
    placement to;
    page_area drawn, zone; ///< the latter with all the room for labels round it
    page_point note;
    double note_width;
    const lettering& by;
};

/// A picture on a page of one size.
class picture_page {
public:
    picture_page(const picture& p, const drawing_options& options, double width, double height)
        : from_(&p), by_(options.letters), above_(p.above, by_, false), at_right_(p.at_right, by_, true) {
        do {
            choose_margins(width);
            for (int less = 0; p.words.most_list - 0.1 * less > 0.05; ++less) {
                const double most = p.words.most_list - 0.1 * less;
                take_frame(options, {0, 0, width, height}, most);
                if (fits(std::max(p.width, p.height) / small_picture))
                    break;
            }
            choose_scale(options.for_screen);
        } while (turns_to_numbers());
        spare_ = {frame_->picture.width - figure_width(to_.scale), room_high() - deepest()};
        frame_->take_only(top_ + deepest() + note_height() + 2);
        place();
    }

    /// What leaves fewest entries out, then fewest to look up, then the larger scale, then the page that lies as the
    /// picture.
    auto rank() const {
        return std::tuple(frame_->left_out, above_.is_numbered() + at_right_.is_numbered(), to_.scale,
                          frame_->lies() != (from_->width > from_->height));
    }

    template <class Label>
    page draw(Label label) const {
        std::vector<std::string> labels;
        for (const auto* side : {&from_->at_right, &from_->above})
            for (const margin_label& l : *side)
                labels.push_back(sentence({l.what, ", ", l.distance()}));
        page on = frame_->begin(to_.scale, from_->warnings, labels);
        warnings_.draw(on, {frame_->picture.x, frame_->picture.y - 1});
        for (const page_stroke& s : from_->strokes)
            on.strokes.push_back(to_(s));
        for (const drawn_arrow& a : from_->arrows)
            draw_arrow(on, a.with, to_(a.shaft));
        draw_dimensions(on);
        draw_names(on);
        const page_area& room = frame_->picture;
        at_right_.draw(on, {to_, core_right_, margin_top_, room.bottom()});
        above_.draw(on, {to_, to_.origin.y, room.x, room.right()});
        label(on, picture_place{to_, drawn(), zone(), {room.x, room.bottom() - 1}, room.width, by_});
        return frame_->draw(std::move(on), to_.scale);
    }
    page draw() const {
        return draw([](page&, const picture_place&) {});
    }

    /// How much larger the thing could be at that scale, in mm of it.
    page_point spare() const { return {to_.scale * std::max(0.0, spare_.x), to_.scale * std::max(0.0, spare_.y)}; }

private:
    static constexpr double least_picture = 8, small_picture = 30;
    static constexpr double vanishing = 1e30; // a scale at which only the words are left

    // How much room there must be.

    double rows(const std::vector<measured>& all) const {
        return from_->ring + (all.empty() ? 0 : static_cast<double>(all.size()) * dimension_row + 1);
    }
    /// Where along their row words stand that are longer than their line, in mm of paper from the picture's corner.
    struct beside_line {
        double from, to;
        bool is_far = false; ///< the line is led on to them
    };
    /// Behind the end of their line, or before its beginning, wherever no line from the end of a farther dimension is in
    /// the way; past all that is drawn where it is at both.
    beside_line words_beside(const std::vector<measured>& all, std::size_t i, double whole, double scale) const {
        const double width = by_.width(all[i].words, body_size), behind = all[i].to / scale + past_end,
                     before = all[i].from / scale - past_end - width;
        const auto is_clear = [&](double from) {
            constexpr double near = 0.8;
            return std::none_of(all.begin() + static_cast<std::ptrdiff_t>(i) + 1, all.end(), [&](const measured& m) {
                return std::abs(m.from / scale - from - width / 2) < width / 2 + near ||
                       std::abs(m.to / scale - from - width / 2) < width / 2 + near;
            });
        };
        if (is_clear(behind))
            return {behind, behind + width};
        if (before >= 0 && is_clear(before))
            return {before, before + width};
        return {whole / scale + past_end, whole / scale + past_end + width, true};
    }
    /// How far the words of dimensions reach past what is drawn, as do the labels round it.
    double past(const std::vector<measured>& all, double whole, double scale) const {
        double most = from_->ring;
        for (std::size_t i = 0; i < all.size(); ++i)
            if (!stands_over(all[i], (all[i].to - all[i].from) / scale))
                most = std::max(most, words_beside(all, i, whole, scale).to - whole / scale);
        return most;
    }
    bool stands_over(const measured& m, double length) const { return by_.width(m.words, body_size) + 2 <= length; }
    double left() const { return rows(from_->beside); }
    double over() const { return std::max(from_->ring, above_.depth()); }
    double core_width(double scale) const { return from_->width / scale + past(from_->below, from_->width, scale); }
    double below(double scale) const { return std::max(rows(from_->below), past(from_->beside, from_->height, scale)); }
    double note_height() const { return from_->has_note ? small_line_height + 1 : 0; }
    double figure_width(double scale) const { return left() + core_width(scale) + at_right_.depth(); }
    double figure_height(double scale) const { return over() + from_->height / scale + below(scale); }
    /// With the labels beside it, which begin where the picture does if there are labels above it.
    double deepest() const {
        const double labels = at_right_.is_numbered() ? from_->height / to_.scale + 20 : at_right_.extent();
        return std::max(figure_height(to_.scale), over() + (at_right_.count() > 0 ? labels : 0));
    }
    double room_high() const { return frame_->picture.height - top_ - note_height(); }
    /// With room for what is rounded: a thing that is cut short to fit its page fits it exactly.
    bool fits(double scale) const {
        constexpr double slack = 1e-9;
        return figure_width(scale) <= frame_->picture.width + slack && figure_height(scale) <= room_high() + slack;
    }

    // Where everything goes.

    void choose_margins(double page_width) {
        above_.choose(page_width - 2 * page_margin);
        at_right_.choose(0);
    }

    void take_frame(const drawing_options& options, const page_area& paper, double most_list) {
        frame_words words = from_->words;
        words.most_list = most_list;
        std::vector<std::string> numbers;
        for (const margin* m : {&at_right_, &above_})
            if (m->is_numbered())
                m->list(numbers);
        words.lists.push_back(std::move(numbers)); // which the labels tell
        words.told = words.lists.size() == 1 ? 1 : words.told;
        frame_.emplace(words, options, paper.width, paper.height);
        warnings_ = {};
        for (const std::string& warning : from_->warnings)
            warnings_.add(by_, warning, bold_text, frame_->picture.width, 3);
        top_ = warnings_.height();
    }

    /// A thing whose words alone are too much for the page is drawn all the same, small.
    void choose_scale(bool for_screen) {
        const double most = std::max(from_->width, from_->height);
        const bool words_fit = fits(vanishing);
        const auto enough = [&](double scale) { return words_fit ? fits(scale) : most <= least_picture * scale; };
        const double larger[] = {0.1, 0.2, 0.5}, *const first =
                                                     std::find_if(std::begin(larger), std::end(larger), enough);
        to_.scale = from_->may_enlarge && first != std::end(larger) ? *first
                    : from_->fills                                  ? finer_scale_for(enough)
                                                                    : scale_for(enough);
        // One that is not stated need not be of the series, whose steps are at most of two and a half to one.
        if (for_screen && words_fit) {
            double finer = to_.scale / 2.5;
            while (finer < to_.scale && !fits(finer))
                finer *= 1.02;
            to_.scale = std::min(to_.scale, finer);
        }
    }

    /// Labels that find no room, or would stray far, become numbers, for which all is arranged anew.
    bool turns_to_numbers() {
        const double width = from_->width / to_.scale, height = from_->height / to_.scale;
        const page_area& room = frame_->picture;
        const bool tiny = to_.scale > 1 && std::max(width, height) < small_picture; // for the sake of its labels
        const auto crowded = [&](const margin& m, double along, double there, bool no_room) {
            return m.count() > 0 && !m.is_numbered() && (m.extent() > there || m.strays(along) || tiny || no_room);
        };
        const bool above = crowded(above_, width, room.width, figure_height(vanishing) + least_picture > room_high()),
                   right = crowded(at_right_, height, room_high() - above_.depth(),
                                   figure_width(vanishing) + least_picture > room.width);
        if (right)
            at_right_.number_from(1);
        if (above || (right && above_.is_numbered()))
            above_.number_from(at_right_.is_numbered() ? at_right_.count() + 1 : 1);
        return above || right;
    }

    /// In the middle of its room, with its dimensions and labels.
    void place() {
        const page_area& room = frame_->picture;
        const double down = room_high() - deepest();
        to_.origin = {std::round(room.x + left() + std::max(0.0, spare_.x) / 2),
                      std::round(room.y + top_ + over() + std::max(0.0, down) / 2)};
        core_right_ = to_.origin.x + core_width(to_.scale);
        margin_top_ = above_.count() > 0 ? to_.origin.y : room.y;
    }
    page_area drawn() const { return to_(page_area{0, 0, from_->width, from_->height}); }
    page_area zone() const {
        const page_area& room = frame_->picture;
        return {room.x, room.y + top_, room.width, room_high()};
    }

    // Drawing it.

    void draw_dimensions(page& on) const {
        for (const bool upright : {false, true})
            for (std::size_t i = 0; i < (upright ? from_->beside : from_->below).size(); ++i)
                draw_dimension(on, i, upright);
    }
    /// The strokes across the ends are oblique: they need no room along the line as arrows do.
    void draw_dimension(page& on, std::size_t i, bool upright) const {
        const std::vector<measured>& all = upright ? from_->beside : from_->below;
        const measured& m = all[i];
        const double row = static_cast<double>(i) * dimension_row,
                     at = upright ? drawn().x - from_->ring - dimension_row / 2 - row
                                  : drawn().bottom() + from_->ring + dimension_row + row;
        const auto spot = [&](double along, double across) {
            return upright ? page_point{across, along} : page_point{along, across};
        };
        const double from = upright ? to_.y(m.from) : to_.x(m.from), to = upright ? to_.y(m.to) : to_.x(m.to),
                     edge = upright ? to_.x(m.edge) : to_.y(m.edge);
        on.draw(dimension_pen, {spot(from, at), spot(to, at)});
        for (const double end : {from, to}) {
            const page_point p = spot(end, at);
            on.draw(dimension_pen, {spot(end, edge), spot(end, at + (edge < at ? 1 : -1))});
            on.draw(dimension_pen, {{p.x - 0.9, p.y + 0.9}, {p.x + 0.9, p.y - 0.9}});
        }
        if (stands_over(m, to - from)) {
            on.write(spot((from + to) / 2, at - 1), m.words, body_size, set_from::middle);
        } else {
            const beside_line words = words_beside(all, i, upright ? from_->height : from_->width, to_.scale);
            const double begin = (upright ? to_.origin.y : to_.origin.x) + words.from;
            if (words.is_far)
                on.draw(leader_pen, {spot(to, at), spot(begin - past_end / 2, at)});
            on.write(spot(begin, at + 0.35 * body_size), m.words, body_size, upright ? set_from::end : set_from::start);
        }
        on.words.back().turned = upright ? 90 : 0;
    }

    void draw_names(page& on) const {
        for (const edge_name& n : from_->names) {
            const page_segment edge = to_(n.edge);
            const page_point middle = middle_of(edge);
            const auto fits = [&](const std::string& words) {
                return by_.width(words, small_size) + 2 <= distance(edge.from, edge.to);
            };
            const std::string& words = fits(n.words) ? n.words : n.shorter;
            if (words.empty() || !fits(words))
                continue;
            if (edge.from.y == edge.to.y)
                on.write({middle.x, middle.y - n.beyond}, words, small_size, set_from::middle);
            else
                on.write({middle.x + n.beyond, middle.y}, words, small_size, set_from::middle).turned = 90;
        }
    }

    const picture* from_;
    lettering by_;
    margin above_, at_right_;
    std::optional<page_frame> frame_{};
    text_block warnings_{};
    placement to_{};
    page_point spare_{};
    double top_ = 0, core_right_ = 0, margin_top_ = 0;
};

/// On whichever side of the paper it is best seen.
inline picture_page best_page_of(const picture& p, const drawing_options& options) {
    return best_page(options, [&](double width, double height) { return picture_page(p, options, width, height); });
}

} // namespace turncloth::detail

#endif
