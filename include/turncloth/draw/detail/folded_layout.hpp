// Where everything goes on the page of a folded panel's drawing.
//
//   detail::folded_arranger(plan, options, width, height).make()    the scale of the whole, and the corners that are drawn larger beside it
//
// The whole is drawn at the largest scale of the series that leaves room for its dimensions and, all round it, for the
// numbers that find no room in their region. Where a number does so at a corner, each kind of corner is drawn again in
// a frame of its own: below the whole on an upright page, beside it on one that lies.
#ifndef TURNCLOTH_DRAW_DETAIL_FOLDED_LAYOUT_HPP
#define TURNCLOTH_DRAW_DETAIL_FOLDED_LAYOUT_HPP

#include <turncloth/draw/detail/folded_plan.hpp>

#include <algorithm>
#include <cstddef>
#include <string>
#include <utility>
#include <vector>

namespace turncloth::detail {

inline constexpr pen outline_pen = {"outline", 0.6}, edge_pen = {"edge", 0.2}, mitre_pen = {"mitre", 0.35},
                     hidden_pen = {"hidden", 0.15, {1.6, 1}}, enlarged_pen = {"enlarged", 0.25, {0.4, 1}};

// In mm on paper.
inline constexpr double ring = 9;          // round the whole, for numbers that stand outside it
inline constexpr double number_room = 1.2; // a number's room beyond its own width
inline constexpr double words_above = 2 * small_line_height + 2;

/// A part of the folded piece as it lies on the page.
struct placed_part {
    page_area cloth{};  ///< in mm of cloth from the finished corner
    page_point start{}; ///< on the page, of the finished corner at the top left
    double scale = 1;
    page_area outside{}; ///< where on the page numbers may stand beside it

    double x(double at) const { return start.x + at / scale; }
    double y(double at) const { return start.y + at / scale; }
    page_point on_page(page_point p) const { return {x(p.x), y(p.y)}; }
    page_area on_page(const page_area& b) const { return {x(b.x), y(b.y), b.width / scale, b.height / scale}; }
    page_segment on_page(const page_segment& s) const { return {on_page(s.from), on_page(s.to)}; }
};

struct corner_frame {
    placed_part part;
    page_area frame{};
    std::size_t kind = 0;
    std::vector<std::string> words; ///< above it
};

struct folded_page {
    page_frame frame;
    page_area note{};
    placed_part whole{};
    std::vector<corner_frame> frames{};

    /// The scale of the whole times that of the corners: less is larger. Then the page that lies as the piece.
    std::pair<double, bool> rank() const {
        double corners = frames.empty() ? whole.scale : 0;
        for (const corner_frame& f : frames)
            corners = std::max(corners, f.part.scale);
        return {whole.scale * corners, frame.lies() != (whole.cloth.width > whole.cloth.height)};
    }
};

/// "1:4", "1:1", "2:1".
inline std::string ratio_text(double scale) { return scale < 1 ? number(1 / scale) + ":1" : "1:" + number(scale); }

/// The size of a number as it is looked up for room.
inline double number_width_of(const lettering& by, std::size_t layers) {
    return by.width(std::to_string(layers), body_size) + number_room;
}
inline constexpr double number_height_of = body_size + 0.6;

class folded_arranger {
public:
    folded_arranger(const folded_plan& p, const drawing_options& options, double width, double height)
        : plan_(p), made_{page_frame(frame_words_of(p), options, width, height)}, rest_(made_.frame.picture) {}

    /// What makes both the whole and the corners largest: without frames the corners are as large as the whole.
    folded_page make() {
        made_.note = lowest(rest_, small_line_height + 1);
        const folded_page bare = made_;
        const page_area room = rest_;
        made_.whole.scale = scale_of_whole();
        place_whole();
        if (corners_have_room())
            return given_back(std::move(made_));
        folded_page best = std::move(made_);
        for (std::size_t columns = 1; columns <= kinds().size(); ++columns)
            for (const double share : {0.35, 0.45, 0.55, 0.65}) {
                made_ = bare;
                rest_ = room;
                if (!take_frames(columns, share))
                    continue;
                made_.whole.scale = scale_of_whole();
                place_whole();
                if (made_.rank() < best.rank())
                    best = std::move(made_);
            }
        return given_back(std::move(best));
    }

private:
    static frame_words frame_words_of(const folded_plan& p) {
        frame_words words = p.words;
        words.legend = {{outline_pen, "finished"}};
        const auto add = [&](bool is_there, const pen& with, std::string_view what) {
            if (is_there)
                words.legend.push_back({with, what});
        };
        add(!p.seen.visible.empty(), edge_pen, "visible edge");
        add(!p.mitres.empty(), mitre_pen, "mitre");
        add(!p.seen.hidden.empty(), hidden_pen, "hidden edge");
        add(!p.rows.empty(), stitching_pen, "stitching");
        add(std::any_of(p.corners.begin(), p.corners.end(), [](const folded_corner& c) { return c.most > 0; }),
            enlarged_pen, "enlarged");
        return words;
    }
    const lettering& by() const { return made_.frame.by; }

    // The whole: its ring, names of two edges above and at the right, dimensions at the left and below.
    static constexpr double named = ring + line_height + 1, measured = ring + dimension_row;

    double right_of(double scale) const {
        return std::max(named, overhang(by(), plan_.width_words, plan_.width() / scale));
    }
    double below(double scale) const {
        return std::max(measured, overhang(by(), plan_.height_words, plan_.height() / scale));
    }

    bool whole_fits(double scale) const {
        return measured + plan_.width() / scale + right_of(scale) <= rest_.width &&
               named + plan_.height() / scale + below(scale) <= rest_.height;
    }
    bool words_fit() const { return whole_fits(std::max(plan_.width(), plan_.height())); } // 1 mm on paper
    double scale_of_whole() const {
        return scale_for([&](double scale) { return whole_fits(scale); });
    }

    void place_whole() {
        placed_part& w = made_.whole;
        const double width = plan_.width() / w.scale, height = plan_.height() / w.scale;
        w.cloth = plan_.outline();
        w.start = {rest_.x + measured + (rest_.width - measured - width - right_of(w.scale)) / 2,
                   rest_.y + named + (rest_.height - named - height - below(w.scale)) / 2};
        w.outside = {w.start.x - ring, w.start.y - ring, width + 2 * ring, height + 2 * ring};
    }

    /// A page that is fitted to its content is lower by what the whole, and frames beside it, leave above and below.
    static folded_page given_back(folded_page p) {
        double spare = p.whole.start.y - named - p.frame.picture.y;
        for (const corner_frame& f : p.frames)
            if (p.frame.lies())
                spare = std::min(spare, f.frame.y - words_above - p.frame.picture.y);
        const double before = p.frame.picture.height;
        p.frame.take_only(before - 2 * spare);
        const double less = before - p.frame.picture.height;
        const auto raise = [](placed_part& part, double by) { part.start.y -= by, part.outside.y -= by; };
        raise(p.whole, less / 2);
        for (corner_frame& f : p.frames) {
            const double by = p.frame.lies() ? less / 2 : less;
            raise(f.part, by);
            f.frame.y -= by;
        }
        p.note.y -= less;
        return p;
    }

    bool corners_have_room() const {
        const double scale = made_.whole.scale;
        const std::vector<page_segment> lines = plan_.lines();
        for (const folded_corner& c : plan_.corners)
            for (const folded_region& r : plan_.view.within(c.where).regions())
                if (!number_spot(r, lines, number_width_of(by(), r.layers) * scale, number_height_of * scale))
                    return false;
        return true;
    }

    /// Of each kind the corner that is named first.
    std::vector<const folded_corner*> kinds() const {
        std::vector<const folded_corner*> first;
        for (const folded_corner& c : plan_.corners)
            if (c.most > 0 && std::none_of(first.begin(), first.end(), [&](auto* f) { return f->kind == c.kind; }))
                first.push_back(&c);
        return first;
    }

    /// In rows and columns, on that share of what is left of the page; false where that is too little, or leaves too
    /// little for the whole.
    bool take_frames(std::size_t columns, double share) {
        const std::vector<const folded_corner*> all = kinds();
        const bool lies = made_.frame.lies();
        const std::size_t rows = (all.size() + columns - 1) / columns;
        const auto across = static_cast<double>(columns), down = static_cast<double>(rows);
        const double wide = std::min(largest_frame, (rest_.width * (lies ? share : 1) + page_gap) / across - page_gap),
                     high = std::min(largest_frame,
                                     (rest_.height * (lies ? 1 : share) + page_gap) / down - page_gap - words_above),
                     step_x = wide + page_gap, step_y = high + words_above + page_gap;
        if (wide < least_frame || high < least_frame)
            return false;
        const double left = lies ? rest_.right() + page_gap - across * step_x
                                 : rest_.x + (rest_.width + page_gap - across * step_x) / 2,
                     top = lies ? rest_.y + (rest_.height + page_gap - down * step_y) / 2
                                : rest_.bottom() + page_gap - down * step_y;
        for (std::size_t i = 0; i < all.size(); ++i) {
            const std::size_t column = i % columns, row = i / columns;
            add_frame(*all[i], {left + static_cast<double>(column) * step_x,
                                top + static_cast<double>(row) * step_y + words_above, wide, high});
        }
        (lies ? rest_.width : rest_.height) -= lies ? across * step_x : down * step_y;
        return words_fit();
    }

    /// The corner, a third more of the piece inward of it, and outward room for numbers.
    void add_frame(const folded_corner& c, const page_area& frame) {
        const double more = std::min(c.where.width, c.where.height) / 3;
        const double width = std::min(c.where.width + more, plan_.width()),
                     height = std::min(c.where.height + more, plan_.height());
        const double wide = frame.width - ring, high = frame.height - ring;
        const auto fits = [&](double scale) { return width <= wide * scale && height <= high * scale; };
        corner_frame f;
        f.frame = frame;
        f.kind = c.kind;
        placed_part& p = f.part;
        p.scale = fits(0.1) ? 0.1 : fits(0.2) ? 0.2 : fits(0.5) ? 0.5 : scale_for(fits);
        // What the frame has room for beyond the least is piece too.
        const double across = std::min(wide * p.scale, plan_.width()), down = std::min(high * p.scale, plan_.height());
        p.cloth = {c.right ? plan_.width() - across : 0, c.bottom ? plan_.height() - down : 0, across, down};
        p.outside = frame;
        p.start = {c.right ? frame.right() - ring - plan_.width() / p.scale : frame.x + ring,
                   c.bottom ? frame.bottom() - ring - plan_.height() / p.scale : frame.y + ring};
        const corner_kind& kind = plan_.kinds[c.kind];
        f.words = {letter_of(c.kind) + ": " + kind.first + ", " + ratio_text(p.scale),
                   kind.way + (kind.alike.empty() ? "" : "; alike: " + kind.alike)};
        for (std::string& line : f.words)
            line = by().shortened(line, small_size, frame.width);
        made_.frames.push_back(std::move(f));
    }

    static std::string letter_of(std::size_t kind) { return std::string(1, static_cast<char>('A' + kind)); }

    static constexpr double least_frame = 36, largest_frame = 80;

    const folded_plan& plan_;
    folded_page made_;
    page_area rest_;
};

} // namespace turncloth::detail

#endif
