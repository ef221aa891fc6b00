// The largest rectangles that rectangles leave free.
//
//   struct detail::free_rectangle<Number>   left, near, right, far
//   std::vector<free_rectangle<Number>> detail::free_rectangles(taken, whole, least_across, least_along)
//
//   auto kept = detail::free_rectangles<int>({{0, 0, 4, 3}}, {0, 0, 10, 3}, 2, 2);   // {4, 0, 10, 3}
//
// The edges of what is taken divide the cloth into a grid whose cells are wholly free or wholly taken, and a largest
// free rectangle has its sides on the grid's lines. Row by row, with the free rows that end in each column known, every
// rectangle that ends in the row and can grow neither way is met once, when a column free for fewer rows closes it: the
// work is the number of cells for each rectangle found.
#ifndef TURNCLOTH_CLOTH_LAY_FREE_RECTANGLES_HPP
#define TURNCLOTH_CLOTH_LAY_FREE_RECTANGLES_HPP

#include <algorithm>
#include <cstddef>
#include <vector>

namespace turncloth::detail {

template <class Number>
struct free_rectangle {
    Number left{}, near{}, right{}, far{};

    friend bool operator==(const free_rectangle&, const free_rectangle&) = default;
};

/// The cells between the edges of what is taken, and which of them are full.
template <class Number>
class cell_grid {
public:
    cell_grid(const std::vector<free_rectangle<Number>>& taken, const free_rectangle<Number>& whole)
        : x_{whole.left, whole.right}, y_{whole.near, whole.far} {
        for (const auto& t : taken) {
            x_.insert(x_.end(), {t.left, t.right});
            y_.insert(y_.end(), {t.near, t.far});
        }
        for (std::vector<Number>* lines : {&x_, &y_}) {
            std::sort(lines->begin(), lines->end());
            lines->erase(std::unique(lines->begin(), lines->end()), lines->end());
        }
        full_.assign((x_.size() - 1) * (y_.size() - 1), 0);
        for (const auto& t : taken)
            take(t);
    }

    /// A rectangle whose sides are on the lines.
    void take(const free_rectangle<Number>& t) {
        const auto at = [](const std::vector<Number>& lines, const Number& value) {
            return static_cast<std::size_t>(std::lower_bound(lines.begin(), lines.end(), value) - lines.begin());
        };
        for (std::size_t row = at(y_, t.near); row < at(y_, t.far); ++row)
            std::fill_n(full_.begin() + static_cast<std::ptrdiff_t>(row * (x_.size() - 1) + at(x_, t.left)),
                        at(x_, t.right) - at(x_, t.left), 1);
    }

    /// The largest free rectangle at least so big; its `right` is its `left` where there is none.
    free_rectangle<Number> largest(const Number& least_across, const Number& least_along) const {
        const std::size_t columns = x_.size() - 1;
        free_rectangle<Number> best{};
        Number best_area(0);
        std::vector<run> open;                     // each further to the right and free for fewer rows than the last
        std::vector<std::size_t> from(columns, 0); // the first row of the free run of rows that ends here
        for (std::size_t row = 0; row + 1 < y_.size(); ++row)
            for (std::size_t column = 0; column <= columns; ++column) {
                if (column < columns && full_[row * columns + column] != 0)
                    from[column] = row + 1;
                const std::size_t first = column < columns ? from[column] : row + 1;
                std::size_t left = column;
                for (; !open.empty() && open.back().first < first; open.pop_back()) {
                    left = open.back().left;
                    const Number across = x_[column] - x_[left], along = y_[row + 1] - y_[open.back().first];
                    if (across < least_across || along < least_along || across * along <= best_area)
                        continue;
                    best_area = across * along;
                    best = {x_[left], y_[open.back().first], x_[column], y_[row + 1]};
                }
                if (first <= row && (open.empty() || open.back().first > first))
                    open.push_back({left, first});
            }
        return best;
    }

private:
    struct run {
        std::size_t left, first; // from this column on, free from this row on
    };

    std::vector<Number> x_, y_;
    std::vector<char> full_;
};

/// Free rectangles at least so big of the whole, none overlapping another: the largest, then the largest of what is
/// left, and so on. What is taken lies within the whole; the sizes asked for must be more than zero.
template <class Number>
std::vector<free_rectangle<Number>> free_rectangles(const std::vector<free_rectangle<Number>>& taken,
                                                    const free_rectangle<Number>& whole, Number least_across,
                                                    Number least_along) {
    cell_grid<Number> grid(taken, whole);
    std::vector<free_rectangle<Number>> found;
    while (true) {
        const auto next = grid.largest(least_across, least_along);
        if (!(next.left < next.right))
            return found;
        found.push_back(next);
        grid.take(next);
    }
}

} // namespace turncloth::detail

#endif
