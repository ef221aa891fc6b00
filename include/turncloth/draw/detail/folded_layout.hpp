// Where everything goes on the page of a folded panel's drawing.
//
//   detail::folded_page_of(plan, paper)    the scale of the whole, and the corners that are drawn larger beside it
//
// The whole is drawn at the largest scale of the series that leaves room for its dimensions and, all round it, for the
// numbers that find no room in their region. Where a number does so at a corner, each kind of corner is drawn again in
// a frame of its own: below the whole on an upright page, beside it on one that lies.
#ifndef TURNCLOTH_DRAW_DETAIL_FOLDED_LAYOUT_HPP
#define TURNCLOTH_DRAW_DETAIL_FOLDED_LAYOUT_HPP

#include <turncloth/draw/detail/drawing_foot.hpp>
#include <turncloth/draw/detail/folded_plan.hpp>

#include <algorithm>
#include <cstddef>
#include <string>
#include <utility>
#include <vector>

namespace turncloth::detail {

// In mm on paper.
inline constexpr double ring = 9;          // round the whole, for numbers that stand outside it
inline constexpr double number_room = 1.2; // a number's room beyond its own width
inline constexpr double frame_words = 2 * small_line_height + 2;

/// A part of the folded piece as it lies on the page.
struct placed_part {
    box cloth{};        ///< in mm of cloth from the finished corner
    page_point start{}; ///< on the page, of the finished corner at the top left
    double scale = 1;
    box outside{}; ///< where on the page numbers may stand beside it

    double x(double at) const { return start.x + at / scale; }
    double y(double at) const { return start.y + at / scale; }
    page_point on_page(page_point p) const { return {x(p.x), y(p.y)}; }
    box on_page(const box& b) const { return {x(b.x), y(b.y), b.width / scale, b.height / scale}; }
    straight on_page(const straight& s) const { return {on_page(s.from), on_page(s.to)}; }
};

struct corner_frame {
    placed_part part;
    box frame{};
    std::size_t kind = 0;
    std::vector<std::string> words; ///< above it
};

struct folded_page : page_foot {
    box page{}, note{};
    placed_part whole;
    std::vector<corner_frame> frames;

    /// The scale of the whole times that of the corners: less is larger.
    double rank() const {
        double corners = frames.empty() ? whole.scale : 0;
        for (const corner_frame& f : frames)
            corners = std::max(corners, f.part.scale);
        return whole.scale * corners;
    }
};

/// "1:4", "1:1", "2:1".
inline std::string ratio_text(double scale) { return scale < 1 ? number(1 / scale) + ":1" : "1:" + number(scale); }

/// The size of a number as it is looked up for room.
inline double number_width_of(std::size_t layers) { return text_width(std::to_string(layers), body) + number_room; }
inline constexpr double number_height_of = body + 0.6;

class folded_arranger {
public:
    folded_arranger(const folded_plan& p, double width, double height)
        : plan_(p), rest_{page_margin, page_margin, width - 2 * page_margin, height - 2 * page_margin} {
        made_.page = {0, 0, width, height};
    }

    /// What makes both the whole and the corners largest: without frames the corners are as large as the whole.
    folded_page make() {
        static_cast<page_foot&>(made_) = take_foot(plan_, rest_);
        made_.note = lowest(rest_, small_line_height + 1);
        const folded_page bare = made_;
        const box room = rest_;
        made_.whole.scale = scale_of_whole();
        place_whole();
        if (corners_have_room())
            return std::move(made_);
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
        return best;
    }

private:
    // The whole: its ring, names of two edges above and at the right, dimensions at the left and below.
    static constexpr double named = ring + line_height + 1, measured = ring + dimension_row;

    static double past(const std::string& words, double length) {
        return stands_over(words, length) ? 0 : past_end + text_width(words, body);
    }
    double right_of(double scale) const { return std::max(named, past(plan_.width_words, plan_.width() / scale)); }
    double below(double scale) const { return std::max(measured, past(plan_.height_words, plan_.height() / scale)); }

    bool whole_fits(double scale) const {
        return measured + plan_.width() / scale + right_of(scale) <= rest_.width &&
               named + plan_.height() / scale + below(scale) <= rest_.height;
    }
    bool words_fit() const { return whole_fits(std::max(plan_.width(), plan_.height())); } // 1 mm on paper
    double scale_of_whole() const {
        return first_in_series<double>({1, 2, 4, 5, 8}, [&](double scale) { return whole_fits(scale); });
    }

    void place_whole() {
        placed_part& w = made_.whole;
        const double width = plan_.width() / w.scale, height = plan_.height() / w.scale;
        w.cloth = plan_.outline();
        w.start = {rest_.x + measured + (rest_.width - measured - width - right_of(w.scale)) / 2,
                   rest_.y + named + (rest_.height - named - height - below(w.scale)) / 2};
        w.outside = {w.start.x - ring, w.start.y - ring, width + 2 * ring, height + 2 * ring};
    }

    bool corners_have_room() const {
        const double scale = made_.whole.scale;
        const std::vector<straight> lines = plan_.lines();
        for (const folded_corner& c : plan_.corners)
            for (const folded_region& r : plan_.view.within(c.where).regions())
                if (!number_spot(r, lines, number_width_of(r.layers) * scale, number_height_of * scale))
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
        const bool lies = made_.page.width > made_.page.height;
        const std::size_t rows = (all.size() + columns - 1) / columns;
        const auto across = static_cast<double>(columns), down = static_cast<double>(rows);
        const double wide = std::min(largest_frame, (rest_.width * (lies ? share : 1) + gap) / across - gap),
                     high =
                         std::min(largest_frame, (rest_.height * (lies ? 1 : share) + gap) / down - gap - frame_words),
                     step_x = wide + gap, step_y = high + frame_words + gap;
        if (wide < least_frame || high < least_frame)
            return false;
        const double left = lies ? rest_.right() + gap - across * step_x
                                 : rest_.x + (rest_.width + gap - across * step_x) / 2,
                     top = lies ? rest_.y + (rest_.height + gap - down * step_y) / 2
                                : rest_.bottom() + gap - down * step_y;
        for (std::size_t i = 0; i < all.size(); ++i) {
            const std::size_t column = i % columns, row = i / columns;
            add_frame(*all[i], {left + static_cast<double>(column) * step_x,
                                top + static_cast<double>(row) * step_y + frame_words, wide, high});
        }
        (lies ? rest_.width : rest_.height) -= lies ? across * step_x : down * step_y;
        return words_fit();
    }

    /// The corner, a third more of the piece inward of it, and outward room for numbers.
    void add_frame(const folded_corner& c, const box& frame) {
        const double more = std::min(c.where.width, c.where.height) / 3;
        const double width = std::min(c.where.width + more, plan_.width()),
                     height = std::min(c.where.height + more, plan_.height());
        const double wide = frame.width - ring, high = frame.height - ring;
        const auto fits = [&](double scale) { return width <= wide * scale && height <= high * scale; };
        corner_frame f;
        f.frame = frame;
        f.kind = c.kind;
        placed_part& p = f.part;
        p.scale = fits(0.1) ? 0.1 : fits(0.2) ? 0.2 : fits(0.5) ? 0.5 : first_in_series<double>({1, 2, 4, 5, 8}, fits);
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
            line = shortened(line, small, frame.width);
        made_.frames.push_back(std::move(f));
    }

    static std::string letter_of(std::size_t kind) { return std::string(1, static_cast<char>('A' + kind)); }

    static constexpr double least_frame = 36, largest_frame = 80;

    const folded_plan& plan_;
    folded_page made_;
    box rest_;
};

/// Upright or on its side: the larger of both, then the page that lies as the piece does.
inline folded_page folded_page_of(const folded_plan& p, paper on) {
    const auto [narrow, wide] = sides_of(on);
    folded_page upright = folded_arranger(p, narrow, wide).make(), sideways = folded_arranger(p, wide, narrow).make();
    if (upright.rank() == sideways.rank())
        return p.width() > p.height() ? sideways : upright;
    return upright.rank() < sideways.rank() ? upright : sideways;
}

} // namespace turncloth::detail

#endif
