#include "pages.hpp"
#include <turncloth/notions/caution.hpp>

#include <algorithm>
#include <cmath>

namespace drafting {

namespace {

std::string whole(double x) { return std::to_string(std::llround(x)); }

/// Sets one thing below the other, and begins a page where there is no more room.
class setter {
public:
    setter(const page_orders& orders, const text_measure& measure) : orders_(orders), measure_(measure) { new_page(); }

    std::vector<page> all() { return std::move(pages_); }

    double left() const { return margin; }
    double right() const { return orders_.on.narrow() - margin; }
    double top() const { return y_; }
    const page_orders& orders() const { return orders_; }

    void keep(double height) {
        if (y_ + height > bottom())
            new_page();
    }
    double room() const { return bottom() - y_; }
    void down(double height) { y_ += height; }

    void words(const std::string& text, double size = 3.2, bool bold = false, double indent = 0, double narrower = 0) {
        const auto lines = lines_of(text, size, bold, right() - left() - indent - narrower, measure_);
        keep(static_cast<double>(lines.size()) * size * 1.4); // a paragraph stays together where a page can hold it
        for (const std::string& line : lines) {
            keep(size * 1.4);
            say({left() + indent, y_ + size}, line, size, set_from::start, bold);
            down(size * 1.4);
        }
    }
    void say(const page_point& at, const std::string& text, double size, set_from anchor, bool bold = false) {
        pages_.back().write(at, text, size, anchor).bold = bold;
    }
    void line(const pen& with, std::vector<page_point> points, bool closed = false) {
        pages_.back().strokes.push_back({with, std::move(points), closed});
    }
    void box(const pen& with, double x, double y, double width, double height) {
        line(with, {{x, y}, {x + width, y}, {x + width, y + height}, {x, y + height}}, true);
    }
    double width_of(const std::string& text, double size) const { return measure_.width_of(text, size, false); }

private:
    double bottom() const { return orders_.on.wide() - margin - foot_height; }
    void new_page() {
        pages_.push_back({.width = orders_.on.narrow(), .height = orders_.on.wide()});
        y_ = margin;
    }

    const page_orders& orders_;
    const text_measure& measure_;
    std::vector<page> pages_;
    double y_ = margin;
};

void test_squares(setter& to) {
    to.words("Print at 100 % (actual size), on " + std::string(to.orders().on.name()) +
             ". Measure both squares before anything is cut: if a side is off by as much as a line is wide, set the "
             "printer to 100 % and print again.");
    to.down(2);
    to.keep(54);
    const double y = to.top(), second = to.left() + 70;
    to.box(test_square_pen, to.left(), y, 50, 50);
    to.say({to.left() + 25, y + 24}, "50 mm", 4.5, set_from::middle, true);
    to.say({to.left() + 25, y + 29}, "each way", 3, set_from::middle);
    to.box(test_square_pen, second, y, 50.8, 50.8);
    to.say({second + 25.4, y + 24}, "2 in", 4.5, set_from::middle, true);
    to.say({second + 25.4, y + 29}, "each way", 3, set_from::middle);
    to.down(55);
}

void legend(setter& to) {
    struct sample {
        pen with;
        const char* means;
    };
    constexpr sample samples[] = {
        {cut_pen, "cut here; allowances and hems are included"},
        {seam_pen, "seam line, or the finished edge of what is hemmed or bound"},
        {grain_pen, "grain: lay this along the selvedge"},
        {notch_pen, "notch: mark or snip it, no deeper than halfway to the seam line"},
        {joining_pen, "joining line of two pages, and one of the lozenges across it"},
    };
    to.keep(28);
    for (const sample& s : samples) {
        const double y = to.top() + 2.2, x = to.left();
        if (s.with == notch_pen) {
            to.line(cut_pen, {{x, y - 1.6}, {x + 22, y - 1.6}});
            to.line(s.with, {{x + 11, y - 1.6}, {x + 11, y + 1.6}});
        } else {
            to.line(s.with, {{x, y}, {x + 22, y}});
        }
        if (s.with == joining_pen)
            to.line(joining_mark_pen, {{x + 9, y}, {x + 11, y - 1.8}, {x + 13, y}, {x + 11, y + 1.8}}, true);
        if (s.with == grain_pen)
            for (const double side : {-1.2, 1.2}) {
                to.line(s.with, {{x, y}, {x + 3, y + side}});
                to.line(s.with, {{x + 22, y}, {x + 19, y + side}});
            }
        to.say({x + 26, y + 1.1}, s.means, 3, set_from::start);
        to.down(5);
    }
    to.down(1);
    to.words("To join pages: cut a page along its joining lines at the right and at the foot. Lay that edge on the "
             "joining line of the next page, so that the halves of its three lozenges meet, and tape it. Join the "
             "pages of a row first, then the rows. Row 1 is the uppermost.");
}

/// A small picture of the pages of a piece, in a box of this size; returns its height.
double map_of(setter& to, const placed_piece& p, double x, double y, double width, double height) {
    const tiling& t = p.parts;
    const page_area last = t.part(t.rows() - 1, t.columns() - 1), first = t.part(0, 0);
    const double scale = std::min({width / (last.right() - first.x), height / (last.bottom() - first.y), 0.18});
    const auto put = [&](const page_point& at) {
        return page_point{x + (at.x - first.x) * scale, y + (at.y - first.y) * scale};
    };
    for (std::size_t r = 0; r < t.rows(); ++r)
        for (std::size_t c = 0; c < t.columns(); ++c) {
            if (!p.shown(r, c))
                continue;
            // From joint to joint, as the pages lie when they are joined.
            const page_area w = t.part(r, c);
            const page_point from = put({c == 0 ? w.x : t.joint_right(c - 1), r == 0 ? w.y : t.joint_below(r - 1)}),
                             to_corner = put({c + 1 == t.columns() ? w.right() : t.joint_right(c),
                                              r + 1 == t.rows() ? w.bottom() : t.joint_below(r)});
            to.box(faint_pen, from.x, from.y, to_corner.x - from.x, to_corner.y - from.y);
            to.say({from.x + 0.8, from.y + 2.8}, std::to_string(r + 1) + ", " + std::to_string(c + 1), caption,
                   set_from::start);
        }
    std::vector<page_point> figure;
    for (const page_point& at : p.cut)
        figure.push_back(put(at));
    to.line(plain_pen, figure, true);
    return (last.bottom() - first.y) * scale;
}

/// Edges that are alike are told once; those on the bias are pointed out.
std::string edges_text(const made_piece& piece, const ruler& shown) {
    std::vector<std::pair<std::string, int>> kinds;
    int slanting = 0;
    for (const made_edge& e : piece.edges) {
        const std::string text = e.finish + (e.allowance.value() == 0 ? "" : ", " + to_text(e.allowance, shown));
        const auto found = std::ranges::find(kinds, text, &std::pair<std::string, int>::first);
        if (found == kinds.end())
            kinds.emplace_back(text, 1);
        else
            ++found->second;
        slanting += e.to_grain > 15 && e.to_grain < 75;
    }
    std::string all = "Edges: ";
    for (std::size_t i = 0; i < kinds.size(); ++i)
        all += (i == 0 ? "" : "; ") + std::to_string(kinds[i].second) + " with " + kinds[i].first;
    if (slanting > 0)
        all += ". " + std::to_string(slanting) + (slanting == 1 ? " edge lies" : " edges lie") +
               " across the grain at a slant and will stretch: handle it little until it is sewn";
    return all + ".";
}

void piece_list(setter& to, const std::vector<placed_piece>& pieces) {
    constexpr double map_width = 52, map_height = 46;
    to.down(3);
    to.words("Pieces", 5, true);
    for (const placed_piece& p : pieces) {
        to.keep(map_height + 4);
        const double y = to.top();
        const made_piece& piece = *p.piece;
        const cut_size<millimetre> size = bounding_size(piece);
        const ruler& shown = to.orders().shown;
        const double map = map_of(to, p, to.right() - map_width, y + 1, map_width, map_height);
        const double narrower = map_width + 4;
        to.words(piece.name, 4, true, 0, narrower);
        to.words("Cut " + std::to_string(piece.quantity) + " in " + piece.material + ".", 3.2, false, 0, narrower);
        to.words("Cut shape: " + to_text(size.width(), shown) + " across the grain, " + to_text(size.height(), shown) +
                     " along it; " + area_text(area_of(piece.cut).value(), shown) + ".",
                 3.2, false, 0, narrower);
        to.words(edges_text(piece, shown), 3.2, false, 0, narrower);
        const std::size_t n = p.pages();
        to.words(std::string(n == 1 ? "On 1 page" : "On " + std::to_string(n) + " pages") +
                     (p.turned ? ", lying on its side." : "."),
                 3.2, false, 0, narrower);
        to.down(std::max(3.0, y + map + 4 - to.top()));
    }
}

void lay_picture(setter& to, const made_drafting& drafting, const material_lay& lay) {
    const double cloth_width = to_double(to.orders().cloth->cloth.width.value()),
                 selvedge = to_double(to.orders().cloth->cloth.selvedge.value()),
                 length_ = to_double(lay.laid.length.value());
    double scale = std::min((to.right() - to.left()) / cloth_width, 0.2);
    to.keep(std::min(length_ * scale, 150.0) + 4);
    scale = std::min(scale, (to.room() - 4) / length_);
    const double x0 = to.left(), y0 = to.top() + 1;
    to.box(plain_pen, x0, y0, cloth_width * scale, length_ * scale);
    if (selvedge > 0)
        for (const double x : {selvedge, cloth_width - selvedge})
            to.line(faint_pen, {{x0 + x * scale, y0}, {x0 + x * scale, y0 + length_ * scale}});
    for (const cloth_place<millimetre>& at : lay.laid.places) {
        const double x = x0 + to_double(at.where.from_left.value()) * scale,
                     y = y0 + to_double(at.where.from_end.value()) * scale,
                     across = to_double(at.where.across.value()) * scale,
                     along = to_double(at.where.along.value()) * scale;
        to.box(faint_pen, x, y, across, along);
        const made_piece& piece = drafting.pieces[lay.pieces[at.piece]];
        std::vector<page_point> figure;
        for (const spot& p : along_grain(piece)) {
            const double px = p.x.value() * scale, py = p.y.value() * scale;
            figure.push_back(at.turned ? page_point{x + py, y + px} : page_point{x + px, y + along - py});
        }
        to.line(plain_pen, figure, true);
        if (to.width_of(piece.name, caption) <= across - 1) // else the picture of its pages says which it is
            to.say({x + across / 2, y + along / 2 + 1}, piece.name, caption, set_from::middle);
    }
    to.down(length_ * scale + 4);
}

void cloth_pages(setter& to, const made_drafting& drafting) {
    const ruler& shown = to.orders().shown;
    for (const material_lay& lay : to.orders().cloth->lays) {
        to.down(2);
        to.keep(60);
        to.words("Cloth: " + lay.material, 5, true);
        to.words("At least " + to_text(up_to(as<millimetre>(lay.laid.length), length_of<millimetre>(1)), shown) +
                 " of " + to_text(to.orders().cloth->cloth.width, shown) + " wide cloth; " +
                 whole(100 * to_double(lay.laid.use)) + " % of it is within the rectangles. " +
                 (lay.laid.proved_best()
                      ? "No lay of these rectangles is shorter."
                      : "No lay of these rectangles can be shorter than " + to_text(lay.laid.bound, shown) + "."));
        lay_picture(to, drafting, lay);
    }
    to.words(
        "What is laid here is the bounding rectangle of each piece, its grain along the cloth; only a piece that "
        "says so is turned. Pieces with slanting sides may lie closer by hand. Shrinkage is not included: "
        "where the maker of the cloth says that it shrinks, wash it before cutting, or buy more. Do not wash waxed or "
        "coated cloth, and keep irons and steam off it.",
        2.8);
}

void cautions(setter& to) {
    to.down(2);
    to.words(std::string(caution::cutting) + " " + std::string(caution::needles_and_metal), caption);
    to.words("These pages print lengths; they certify nothing. Local codes, the makers' instructions and licensed "
             "practice go before them.",
             caption);
}

} // namespace

std::vector<page> first_pages(const made_drafting& drafting, const std::vector<placed_piece>& pieces,
                              const page_orders& orders, const text_measure& measure) {
    setter to(orders, measure);
    to.words(drafting.title, 7, true);
    to.down(1);
    test_squares(to);
    legend(to);
    piece_list(to, pieces);
    if (orders.cloth)
        cloth_pages(to, drafting);
    cautions(to);
    return to.all();
}

} // namespace drafting
