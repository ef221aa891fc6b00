// The largest rectangles that rectangles leave free.
//
//   struct detail::free_rectangle<Number>   left, near, right, far
//   std::vector<free_rectangle<Number>> detail::free_rectangles(taken, whole, least_across, least_along)
//
//   auto kept = detail::free_rectangles<int>({{0, 0, 4, 3}}, {0, 0, 10, 3}, 2, 2);   // {4, 0, 10, 3}
//
// The edges of what is taken divide the cloth into a grid whose cells are wholly free or wholly taken, and a largest
// free rectangle has its sides on the grid's lines. Row by row, with the free height above each cell known, the largest
// rectangle that ends in the row is found by growing leftmost from every column: columns x columns for each row.
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

/// The lines of the grid in one direction.
template <class Number>
std::vector<Number> grid_lines(std::vector<Number> lines) {
    std::sort(lines.begin(), lines.end());
    lines.erase(std::unique(lines.begin(), lines.end()), lines.end());
    return lines;
}

/// The largest free rectangle at least so big; its `right` is its `left` where there is none.
template <class Number>
free_rectangle<Number> largest_free(const std::vector<free_rectangle<Number>>& taken,
                                    const free_rectangle<Number>& whole, Number least_across, Number least_along) {
    std::vector<Number> x{whole.left, whole.right}, y{whole.near, whole.far};
    for (const auto& t : taken) {
        x.insert(x.end(), {t.left, t.right});
        y.insert(y.end(), {t.near, t.far});
    }
    x = grid_lines(std::move(x));
    y = grid_lines(std::move(y));
    const auto at = [](const std::vector<Number>& lines, const Number& value) {
        return static_cast<std::size_t>(std::lower_bound(lines.begin(), lines.end(), value) - lines.begin());
    };
    const std::size_t columns = x.size() - 1;
    std::vector<char> full(columns * (y.size() - 1), 0);
    for (const auto& t : taken)
        for (std::size_t r = at(y, t.near); r < at(y, t.far); ++r)
            std::fill_n(full.begin() + static_cast<std::ptrdiff_t>(r * columns + at(x, t.left)),
                        at(x, t.right) - at(x, t.left), 1);

    free_rectangle<Number> best{};
    Number best_area(0);
    std::vector<std::size_t> from(columns, 0); // the first row of the free run of rows that ends here
    for (std::size_t row = 0; row + 1 < y.size(); ++row)
        for (std::size_t right = 0; right < columns; ++right) {
            if (full[row * columns + right] != 0)
                from[right] = row + 1;
            std::size_t first = from[right];
            for (std::size_t left = right + 1; left-- > 0;) {
                first = std::max(first, from[left]);
                if (first > row)
                    break;
                const Number across = x[right + 1] - x[left];
                const Number along = y[row + 1] - y[first];
                if (across < least_across || along < least_along || across * along <= best_area)
                    continue;
                best_area = across * along;
                best = {x[left], y[first], x[right + 1], y[row + 1]};
            }
        }
    return best;
}

/// Free rectangles at least so big of the whole, none overlapping another: the largest, then the largest of what is
/// left, and so on. What is taken lies within the whole; the sizes asked for must be more than zero.
template <class Number>
std::vector<free_rectangle<Number>> free_rectangles(std::vector<free_rectangle<Number>> taken,
                                                    const free_rectangle<Number>& whole, Number least_across,
                                                    Number least_along) {
    std::vector<free_rectangle<Number>> found;
    while (true) {
        const auto next = largest_free(taken, whole, least_across, least_along);
        if (!(next.left < next.right))
            return found;
        found.push_back(next);
        taken.push_back(next);
    }
}

} // namespace turncloth::detail

#endif
