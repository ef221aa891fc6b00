// Straight lines on a page, of which only those nearby are looked at when it is asked whether any meets an area.
//
//   lines_near lines(width, height);   of a page so large, in mm
//   lines.add(line);
//   if (!lines.meet(area)) write_there();
//
// The page is parted into squares, each of which knows the lines that may go through it; what lies beyond the page counts
// for the squares at its edge. So room for many words among many lines is found in about the time of the words.
#ifndef TURNCLOTH_PAGE_DETAIL_LINES_NEAR_HPP
#define TURNCLOTH_PAGE_DETAIL_LINES_NEAR_HPP

#include <turncloth/page/detail/straight_lines.hpp>

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <utility>
#include <vector>

namespace turncloth::detail {

class lines_near {
public:
    lines_near(double width, double height)
        : columns_(squares(width) + 1), rows_(squares(height) + 1), through_(columns_ * rows_) {}

    void add(const page_segment& s) {
        const auto [top, bottom] = std::minmax(s.from.y, s.to.y);
        for (std::size_t j = row(top); j <= row(bottom); ++j) {
            const auto [left, right] = within_row(s, j);
            for (std::size_t i = column(left); i <= column(right); ++i)
                through_[j * columns_ + i].push_back(all_.size());
        }
        all_.push_back(s);
    }
    bool meet(const page_area& a) const {
        for (std::size_t i = column(a.x); i <= column(a.right()); ++i)
            for (std::size_t j = row(a.y); j <= row(a.bottom()); ++j)
                for (const std::size_t line : through_[j * columns_ + i])
                    if (meets(all_[line], a))
                        return true;
        return false;
    }
    const std::vector<page_segment>& all() const { return all_; }

private:
    static constexpr double side = 4;    ///< of a square, in mm: about as high as a line of words
    static constexpr double most = 1000; ///< squares each way: larger pages have larger ones at their edge

    static std::size_t squares(double length) {
        return static_cast<std::size_t>(std::clamp(std::floor(length / side), 0.0, most));
    }
    std::size_t column(double x) const { return std::min(squares(x), columns_ - 1); }
    std::size_t row(double y) const { return std::min(squares(y), rows_ - 1); }

    /// From where to where a line is in a row of squares, a little more rather than less.
    std::pair<double, double> within_row(const page_segment& s, std::size_t j) const {
        constexpr double slack = 1e-6;
        const double down = s.to.y - s.from.y, top = static_cast<double>(j) * side;
        const auto at = [&](double y) { return std::clamp((y - s.from.y) / down, 0.0, 1.0); };
        double first = 0, last = 1;
        if (down != 0 && j > 0)
            (down > 0 ? first : last) = at(top);
        if (down != 0 && j + 1 < rows_)
            (down > 0 ? last : first) = at(top + side);
        const auto [left, right] =
            std::minmax({s.from.x + first * (s.to.x - s.from.x), s.from.x + last * (s.to.x - s.from.x)});
        return {left - slack, right + slack};
    }

    std::size_t columns_, rows_;
    std::vector<std::vector<std::size_t>> through_; ///< row by row
    std::vector<page_segment> all_{};
};

} // namespace turncloth::detail

#endif
