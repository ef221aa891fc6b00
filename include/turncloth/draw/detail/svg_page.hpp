// A page that is drawn on group by group.
#ifndef TURNCLOTH_DRAW_DETAIL_SVG_PAGE_HPP
#define TURNCLOTH_DRAW_DETAIL_SVG_PAGE_HPP

#include <turncloth/page/svg.hpp>

#include <initializer_list>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace turncloth::detail {

using box = page_area;
using anchor = set_from;

inline double text_width(std::string_view text, double size) { return estimated_width(text, size); }
inline std::string shortened(std::string_view text, double size, double width) {
    return lettering().shortened(text, size, width);
}
inline std::vector<std::string> wrapped(std::string_view text, double size, double width, std::size_t most = 99) {
    return lettering().wrapped(text, size, width, most);
}

class svg_page {
public:
    svg_page(double width, double height, std::string_view title, std::string_view description)
        : made_{width, height, std::string(title), std::string(description)} {}

    void open(stroke_name name, const pen& p) { open_ = p.meaning(name); }
    void close() {}
    void line(page_point a, page_point b) { made_.draw(open_, {a, b}); }
    void path(std::initializer_list<page_point> points) { made_.draw(open_, points); }
    void closed(const std::vector<page_point>& corners) { made_.draw_closed(open_, corners); }
    void rectangle(const box& b) { made_.draw_closed(open_, b); }
    void dot(page_point centre, double radius) { made_.draw({open_.means, 2 * radius}, {centre}); }
    void text(page_point at, std::string_view words, double size, anchor from = anchor::start, bool turned = false,
              bool bold = false) {
        page_words& w = made_.write(at, std::string(words), size, from);
        w.turned = turned ? 90 : 0;
        w.bold = bold;
    }
    std::string done() { return to_svg(made_); }

private:
    page made_;
    pen open_{"", 0};
};

} // namespace turncloth::detail

#endif
