// A page larger than any paper, parted over pages that are joined again.
//
//   tiles(width, height, paper)          rows and columns, and what of the whole each of them shows
//   t.shows(whole, row, column)          whether anything lies there; pages that would be blank are left out
//   parted(whole, t, part_words, by)     the pages, row by row, with joining lines and marks
//
//   const tiles t(whole.width, whole.height, paper::a4);
//   for (const page& p : parted(whole, t, {.name = "pocket"})) ...
//
// Neighbouring pages show a strip of `overlap` twice. The joining line runs along its middle on both, with three lozenges
// across it whose halves meet: a lozenge cannot be taken for a notch, which is a single stroke. Words are written on the
// pages that hold them whole.
#ifndef TURNCLOTH_PAGE_TILES_HPP
#define TURNCLOTH_PAGE_TILES_HPP

#include <turncloth/measure/require.hpp>
#include <turncloth/page/detail/labels.hpp>
#include <turncloth/page/paper.hpp>

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <string>
#include <utility>
#include <vector>

namespace turncloth {

inline constexpr pen joining_pen = {"joining line", 0.18, {1, 1.5}, 0.3}, joining_mark_pen = {"joining mark", 0.4};

class tiles {
public:
    /// Printers leave up to 6 mm blank at the edges of a page.
    static constexpr double margin = 7, heading = 7, foot = 7, overlap = 16;
    static constexpr std::size_t most = 400; ///< pages; a slip in a unit would ask for thousands

    /// Of a whole of that size, in mm. What is left over is left at the right and at the foot: shared out, it would put
    /// the middle of a piece, where its grain line is, on a joint. Throws range_error for more than 400 pages.
    tiles(double width, double height, const paper& on)
        : shown_{margin, margin + heading, on.narrow() - 2 * margin, on.wide() - 2 * margin - heading - foot},
          rows_(count(height, shown_.height)),
          columns_(count(width, shown_.width)),
          on_(on) {
        if (rows_ * columns_ > most)
            detail::refuse<range_error>(
                {"it would take ", rows_, " x ", columns_, " pages of ", on.name(), ": at most ", most, " are printed"},
                {.kind = fault::too_large, .what = "the number of pages", .given = rows_ * columns_, .most = most});
    }

    std::size_t rows() const { return rows_; }
    std::size_t columns() const { return columns_; }
    const paper& on() const { return on_; }

    /// Rows and columns count from 0 here, and from 1 on paper.
    page_area part(std::size_t row, std::size_t column) const {
        return {(shown_.width - overlap) * static_cast<double>(column),
                (shown_.height - overlap) * static_cast<double>(row), shown_.width, shown_.height};
    }
    double joint_right(std::size_t column) const { return part(0, column).right() - overlap / 2; }
    double joint_below(std::size_t row) const { return part(row, 0).bottom() - overlap / 2; }
    /// Where on its page a part lies.
    detail::placement on_page(std::size_t row, std::size_t column) const {
        const page_area w = part(row, column);
        return {{shown_.x - w.x, shown_.y - w.y}, 1};
    }

    /// The strips that two pages show: what is cut off, or covered.
    std::vector<page_area> shared() const {
        const page_area last = part(rows_ - 1, columns_ - 1);
        std::vector<page_area> all;
        for (std::size_t c = 0; c + 1 < columns_; ++c)
            all.push_back({joint_right(c) - overlap / 2, 0, overlap, last.bottom()});
        for (std::size_t r = 0; r + 1 < rows_; ++r)
            all.push_back({0, joint_below(r) - overlap / 2, last.right(), overlap});
        return all;
    }

    /// A closed line shows where its inside is, too.
    bool shows(const page& whole, std::size_t row, std::size_t column) const {
        const page_area w = part(row, column);
        return std::any_of(whole.strokes.begin(), whole.strokes.end(), [&](const page_stroke& s) {
            return !detail::clipped(s, w).empty() || (s.closed && detail::holds(s.points, w.middle()));
        });
    }
    std::size_t pages(const page& whole) const {
        std::size_t n = 0;
        for (std::size_t r = 0; r < rows_; ++r)
            for (std::size_t c = 0; c < columns_; ++c)
                n += shows(whole, r, c) ? 1 : 0;
        return n;
    }

private:
    static std::size_t count(double size, double shown) {
        const double n = std::ceil((size - overlap) / (shown - overlap));
        return static_cast<std::size_t>(std::clamp(n, 1.0, static_cast<double>(most + 1)));
    }

    page_area shown_;
    std::size_t rows_, columns_;
    paper on_;
};

/// What every page says of the whole.
struct part_words {
    std::string name{}, about{}, foot{};
};

namespace detail {

/// One page of several.
class tile {
public:
    tile(const page& whole, const tiles& t, std::size_t row, std::size_t column)
        : whole_(whole),
          tiles_(t),
          row_(row),
          column_(column),
          part_(t.part(row, column)),
          put_(t.on_page(row, column)) {
        page_.width = t.on().narrow();
        page_.height = t.on().wide();
        page_.title = whole.title;
    }

    page draw(const part_words& words, const lettering& by) {
        draw_joints(by);
        for (const page_stroke& s : whole_.strokes)
            for (page_stroke& run : clipped(s, part_))
                page_.strokes.push_back(put_(std::move(run)));
        for (const page_words& w : whole_.words)
            if (within(covered_by(w, by), part_))
                page_.words.push_back(put_(w));
        write_heading(words, by);
        const double y = page_.height - tiles::margin - 2.5, left = tiles::margin;
        page_.draw(scale_pen, {{left, y - 2}, {left, y}, {left + 50, y}, {left + 50, y - 2}});
        page_.write({left + 25, y - 0.8}, "50 mm on paper", small_size, set_from::middle);
        page_.write({left + 54, y - 0.8}, words.foot, small_size);
        return std::move(page_);
    }

private:
    static std::string name_of(std::size_t row, std::size_t column) {
        return sentence({"row ", row + 1, ", column ", column + 1});
    }

    void draw_joints(const lettering& by) {
        for (const bool upright : {true, false})
            for (const bool before : {true, false}) {
                const std::size_t step = before ? std::size_t(-1)
                                                : 1, // before the first there is none, nor so large a one
                    row = upright ? row_ : row_ + step, column = upright ? column_ + step : column_;
                if (row >= tiles_.rows() || column >= tiles_.columns() || !tiles_.shows(whole_, row, column))
                    continue;
                const double at =
                    upright ? tiles_.joint_right(std::min(column, column_)) : tiles_.joint_below(std::min(row, row_));
                const std::string name = name_of(row, column);
                draw_joint(upright, at,
                           before ? sentence({"lay ", name, " on this line"})
                                  : sentence({"cut here: ", name, " goes on"}),
                           before ? -1.4 : 3.6, by);
            }
    }

    void draw_joint(bool upright, double at, const std::string& words, double off, const lettering& by) {
        constexpr double half_mark = 5;
        const double start = upright ? part_.y : part_.x, size = upright ? part_.height : part_.width;
        const auto spot = [&](double along, double beyond) {
            return upright ? page_point{at + beyond, start + size * along}
                           : page_point{start + size * along, at + beyond};
        };
        page_.draw(joining_pen, {put_(spot(0, 0)), put_(spot(1, 0))});
        const double x = upright ? half_mark : half_mark / 2, y = upright ? half_mark / 2 : half_mark;
        for (const double along : {0.2, 0.5, 0.8}) {
            const page_point p = put_(spot(along, 0));
            page_.draw_closed(joining_mark_pen, {{p.x - x, p.y}, {p.x, p.y - y}, {p.x + x, p.y}, {p.x, p.y + y}});
        }
        // Between the marks, farther from the lines of the piece.
        page_words best{};
        double most = -1;
        for (const double along : {0.35, 0.65}) {
            page_words here{spot(along, off), words, small_size, set_from::middle, upright ? 90.0 : 0.0};
            const double room = distance_to_lines(covered_by(here, by));
            if (room > most)
                most = room, best = std::move(here);
        }
        page_.words.push_back(put_(std::move(best)));
    }
    double distance_to_lines(const page_area& a) const {
        double least = 1e9;
        for (const page_stroke& s : whole_.strokes)
            for (const page_segment& side : sides_of(s))
                least = meets(side, a) ? 0 : std::min(least, distance(a, side));
        return least;
    }

    void write_heading(const part_words& words, const lettering& by) {
        const double right = page_.width - tiles::margin, y = tiles::margin + 4, left = tiles::margin;
        const std::string place = sentence(
            {name_of(row_, column_), " of ", std::to_string(tiles_.rows()), " x ", std::to_string(tiles_.columns())});
        page_.write({right, y}, place, 4, set_from::end).bold = true;
        const double room = right - left - by.width(place, 4, true) - 6;
        const std::string name = by.shortened(words.name, 4, room, true);
        page_.write({left, y}, name, 4).bold = true;
        const double after = by.width(name, 4, true) + 4;
        if (after + by.width(words.about, 2.8) < room)
            page_.write({left + after, y}, words.about, 2.8);
    }

    const page& whole_;
    const tiles& tiles_;
    std::size_t row_, column_;
    page_area part_;
    placement put_;
    page page_{};
};

} // namespace detail

/// Row by row. Every part looks at all strokes and words of the whole: time grows with them times the rows and columns.
inline std::vector<page> parted(const page& whole, const tiles& t, const part_words& words,
                                const text_measure* letters = nullptr) {
    std::vector<page> all;
    for (std::size_t r = 0; r < t.rows(); ++r)
        for (std::size_t c = 0; c < t.columns(); ++c)
            if (t.shows(whole, r, c))
                all.push_back(detail::tile(whole, t, r, c).draw(words, detail::lettering(letters)));
    return all;
}

} // namespace turncloth

#endif
