// Where everything goes on the page of a lay's drawing.
//
//   detail::lay_arranger(plan, width, height).make()    the scale, and a box for each part of the page
//
// From the foot upward: small print, the foot (legend, scale, title), the list; the cloth has the rest, at the largest
// scale of the series that drawings of pieces use too.
#ifndef TURNCLOTH_SHEET_LAY_DRAWING_LAYOUT_HPP
#define TURNCLOTH_SHEET_LAY_DRAWING_LAYOUT_HPP

#include <turncloth/sheet/drawing_layout.hpp>
#include <turncloth/sheet/lay_drawing_plan.hpp>

#include <algorithm>
#include <cstddef>
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
    lay_arranger(const lay_plan& p, double width, double height)
        : plan_(p), rest_{page_margin, page_margin, width - 2 * page_margin, height - 2 * page_margin} {
        made_.width = width;
        made_.height = height;
    }

    lay_page make() {
        for (const std::string& sentence : plan_.small_print)
            for (std::string& line : wrapped(sentence, small, rest_.width, 3))
                made_.print_lines.push_back(std::move(line));
        made_.print = take(static_cast<double>(made_.print_lines.size()) * small_line_height + 1);
        made_.foot = take(foot_height);
        made_.cuts = take_list(plan_.cut_list);
        made_.pieces = take_list(plan_.list);
        place_cloth();
        return std::move(made_);
    }

private:
    static constexpr double above = 2 * dimension_row + 2, beside = dimension_row + 2;
    static constexpr double below = line_height + gap; ///< a line for a length that is too short for its words

    box take(double height) {
        rest_.height -= height;
        return {rest_.x, rest_.bottom(), rest_.width, height};
    }

    /// At most a fifth of the page.
    page_list take_list(const std::vector<std::string>& all) {
        page_list made = list_in_columns(all, rest_.width, made_.height / 5);
        made.where = take(made.height());
        return made;
    }

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
