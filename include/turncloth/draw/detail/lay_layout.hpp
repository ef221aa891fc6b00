// Where everything goes on the page of a lay's drawing.
//
//   detail::lay_arranger(plan, width, height).make()    the scale, and a box for each part of the page
//
// From the foot upward: small print, the foot (legend, scale, title), the list; the cloth has the rest, at the largest
// scale of the series that drawings of pieces use too.
#ifndef TURNCLOTH_DRAW_DETAIL_LAY_LAYOUT_HPP
#define TURNCLOTH_DRAW_DETAIL_LAY_LAYOUT_HPP

#include <turncloth/draw/detail/lay_plan.hpp>
#include <turncloth/draw/detail/page_parts.hpp>

#include <string>
#include <utility>
#include <vector>

namespace turncloth {

namespace detail {

struct lay_page {
    double width = 0, height = 0, scale = 1;
    box cloth{}, foot{}, print{};
    page_list pieces, cuts;
    std::vector<std::string> print_lines;
};

class lay_arranger {
public:
    lay_arranger(const lay_plan& p, double width, double height) : plan_(p), rest_(inside_margins(width, height)) {
        made_.width = width;
        made_.height = height;
    }

    lay_page make() {
        made_.print_lines = print_lines_of(plan_.small_print, rest_.width);
        made_.print = lowest(rest_, print_height(made_.print_lines));
        made_.foot = lowest(rest_, foot_height);
        made_.cuts = list_at_foot(rest_, plan_.cut_list, made_.height / 5);
        made_.pieces = list_at_foot(rest_, plan_.list, made_.height / 5);
        place_cloth();
        return std::move(made_);
    }

private:
    static constexpr double above = 2 * dimension_row + 2, beside = dimension_row + 2;
    static constexpr double below = line_height + gap; ///< a line for a length that is too short for its words

    void place_cloth() {
        const double wide = rest_.width - 2 * beside, high = rest_.height - above - below;
        made_.scale = first_in_series<double>(
            {1, 2, 4, 5, 8}, [&](double scale) { return plan_.width <= wide * scale && plan_.length <= high * scale; });
        const double width = plan_.width / made_.scale;
        made_.cloth = {rest_.x + (rest_.width - width) / 2, rest_.y + above, width, plan_.length / made_.scale};
    }

    const lay_plan& plan_;
    lay_page made_;
    box rest_{};
};

} // namespace detail

} // namespace turncloth

#endif
