#include "pages.hpp"
#include <turncloth/notions/caution.hpp>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace drafting {

namespace {

using points = std::vector<page_point>;

page_point between(const page_point& a, const page_point& b, double t) {
    return {a.x + (b.x - a.x) * t, a.y + (b.y - a.y) * t};
}
double distance(const page_point& a, const page_point& b) { return std::hypot(b.x - a.x, b.y - a.y); }

/// Of p from the straight piece from a to b, where what lies sideways counts `squeeze` times.
double distance_to(const page_point& a, const page_point& b, const page_point& p, double squeeze) {
    const double ux = (b.x - a.x) * squeeze, uy = b.y - a.y, px = (p.x - a.x) * squeeze, py = p.y - a.y,
                 t = std::clamp((ux * px + uy * py) / (ux * ux + uy * uy), 0.0, 1.0);
    return std::hypot(px - ux * t, py - uy * t);
}

/// Words along a line read from the left, or from the right side of the page where the line runs straight up.
double readable_turn(const page_point& a, const page_point& b) {
    double turned = std::atan2(a.y - b.y, b.x - a.x) * 180 / std::numbers::pi;
    if (turned > 90 + 1e-6)
        turned -= 180;
    else if (turned <= -90 + 1e-6)
        turned += 180;
    return turned;
}

/// Off the line, base line and all, on the side that `inward` points to.
page_point beside_line(const page_point& on, const page_point& inward, double turned, double size) {
    const double angle = turned * std::numbers::pi / 180;
    const bool stands_inward = -std::sin(angle) * inward.x - std::cos(angle) * inward.y > 0;
    const double off = stands_inward ? 1.6 : 2 + size * 0.75;
    return {on.x + inward.x * off, on.y + inward.y * off};
}

/// Draws what one page shows of a piece.
class part_of_piece {
public:
    part_of_piece(const placed_piece& piece, std::size_t row, std::size_t column, const page_orders& orders,
                  const text_measure& measure)
        : piece_(piece),
          row_(row),
          column_(column),
          part_(piece.parts.part(row, column)),
          orders_(orders),
          measure_(measure),
          page_{.width = orders.on.narrow(), .height = orders.on.wide()} {
        // Nothing need be read in what is cut off or covered.
        kept_ = part_;
        if (column > 0)
            kept_.x += overlap, kept_.width -= overlap;
        if (column + 1 < piece.parts.columns())
            kept_.width -= overlap;
        if (row > 0)
            kept_.y += overlap, kept_.height -= overlap;
        if (row + 1 < piece.parts.rows())
            kept_.height -= overlap;
    }

    page drawn() {
        joints();
        draw(seam_pen, piece_.seam, true);
        draw(cut_pen, piece_.cut, true);
        notches();
        grain_arrow();
        edge_labels();
        piece_label();
        heading();
        foot();
        return std::move(page_);
    }

private:
    page_point put(const page_point& p) const { return piece_.parts.on_page(row_, column_, p); }

    void draw(const pen& with, const points& line, bool closed = false) {
        for (run& r : clipped(line, closed, part_)) {
            for (page_point& p : r.points)
                p = put(p);
            page_.strokes.push_back({with, std::move(r.points), false, r.from_start});
        }
    }

    void say(const page_point& at, std::string text, double size, set_from anchor, double turned = 0,
             bool bold = false) {
        page_.words.push_back({at, std::move(text), size, anchor, turned, bold});
    }

    /// Unit length, into the piece, square to an edge.
    page_point inward(const made_edge& edge) const {
        const double way = signed_area_of(piece_.piece->seam).value() > 0 ? 1 : -1;
        const double dx = (edge.to.x - edge.from.x).value(), dy = (edge.to.y - edge.from.y).value(),
                     size = std::hypot(dx, dy);
        return placed_piece::on_plane(drafted_point<millimetre>(-dy * way / size, dx * way / size), piece_.turned);
    }

    void notches() {
        for (const made_notch& mark : piece_.piece->notches) {
            const page_point cut = piece_.placed(mark.on_cut), in = inward(piece_.piece->edges[mark.edge]);
            page_point seam = piece_.placed(mark.on_seam);
            if (distance(cut, seam) < 3) // too little to be seen: go on into the piece
                seam = {seam.x + in.x * 4, seam.y + in.y * 4};
            draw(notch_pen, {cut, seam});
        }
    }

    void grain_arrow() {
        const page_point a = piece_.placed(piece_.piece->grain_line.from),
                         b = piece_.placed(piece_.piece->grain_line.to);
        draw(grain_pen, {a, b});
        const double size = distance(a, b), head = std::min(5.0, size / 4);
        const page_point d = {(b.x - a.x) / size * head, (b.y - a.y) / size * head};
        for (const double side : {-0.35, 0.35}) {
            draw(grain_pen, {a, {a.x + d.x - d.y * side, a.y + d.y + d.x * side}});
            draw(grain_pen, {b, {b.x - d.x - d.y * side, b.y - d.y + d.x * side}});
        }
        along(a, b, {-d.y / head, d.x / head}, {"grain"}, true);
    }

    /// The first of the texts that fits along the line: on the page that shows most of it, or on each.
    void along(const page_point& a, const page_point& b, const page_point& in, const std::vector<std::string>& texts,
               bool on_each_page = false) {
        const auto [first, last] = detail::inside(a, b, kept_);
        const double room = (last - first) * distance(a, b) - 4;
        for (std::size_t r = 0; r < piece_.parts.rows() && !on_each_page; ++r) // another page may show more of it
            for (std::size_t c = 0; c < piece_.parts.columns(); ++c) {
                const auto [from, to] = detail::inside(a, b, piece_.parts.part(r, c));
                const auto [own_from, own_to] = detail::inside(a, b, part_);
                if (to - from > own_to - own_from + 1e-9)
                    return;
            }
        for (const std::string& text : texts)
            if (measure_.width_of(text, caption, false) <= room) {
                const double turned = readable_turn(a, b);
                const page_point at = beside_line(between(a, b, (first + last) / 2), in, turned, caption);
                return say(put(at), text, caption, set_from::middle, turned);
            }
    }

    void edge_labels() {
        for (const made_edge& edge : piece_.piece->edges) {
            const std::string allowance = to_text(edge.allowance, orders_.shown);
            const bool none = edge.allowance.value() == 0;
            along(piece_.placed(edge.from), piece_.placed(edge.to), inward(edge),
                  {none ? edge.finish : edge.finish + ", " + allowance, none ? edge.finish : allowance});
        }
    }

    /// How far the words may reach from a spot before they touch a line; sideways counts as much as the words are wide.
    double room_round(const page_point& at, double squeeze) const {
        double room = std::min(
            {(at.x - kept_.x) * squeeze, (kept_.right() - at.x) * squeeze, at.y - kept_.y, kept_.bottom() - at.y});
        const auto keep_off = [&](const page_point& a, const page_point& b) {
            room = std::min(room, distance_to(a, b, at, squeeze));
        };
        for (std::size_t i = 0; i < piece_.seam.size(); ++i)
            keep_off(piece_.seam[i], piece_.seam[(i + 1) % piece_.seam.size()]);
        keep_off(piece_.placed(piece_.piece->grain_line.from), piece_.placed(piece_.piece->grain_line.to));
        return room;
    }

    void piece_label() {
        const made_piece& p = *piece_.piece;
        const std::vector<std::string> lines = {p.name, "cut " + std::to_string(p.quantity) + ", " + p.material};
        const double tall = 5.5, small = 3.6,
                     width =
                         std::max(measure_.width_of(lines[0], tall, true), measure_.width_of(lines[1], small, false)) +
                         6,
                     height = tall + small + 10;
        page_point best{};
        double room = 0;
        for (int i = 1; i < 40; ++i)
            for (int j = 1; j < 40; ++j) {
                const page_point at = {kept_.x + kept_.width * i / 40, kept_.y + kept_.height * j / 40};
                if (!lies_in(at))
                    continue;
                const double found = room_round(at, height / width);
                if (found > room + 1e-9)
                    room = found, best = at;
            }
        const double scale = std::min(1.0, room / (height * 0.6));
        if (small * scale < caption) // too small to read: the heading says it
            return;
        best = put(best);
        say({best.x, best.y - 0.5 * scale}, lines[0], tall * scale, set_from::middle, 0, true);
        say({best.x, best.y + (small + 1.5) * scale}, lines[1], small * scale, set_from::middle);
    }

    bool lies_in(const page_point& at) const {
        const spot p = piece_.turned ? drafted_point<millimetre>(at.y, at.x) : drafted_point<millimetre>(at.x, -at.y);
        return locate(piece_.piece->seam, p) == position::inside;
    }

    std::string name_of(std::size_t row, std::size_t column) const {
        return "row " + std::to_string(row + 1) + ", column " + std::to_string(column + 1);
    }

    void joints() {
        const tiling& t = piece_.parts;
        if (column_ > 0 && piece_.shown(row_, column_ - 1))
            upright_joint(t.joint_right(column_ - 1), "lay " + name_of(row_, column_ - 1) + " on this line", -1);
        if (column_ + 1 < t.columns() && piece_.shown(row_, column_ + 1))
            upright_joint(t.joint_right(column_), "cut here: " + name_of(row_, column_ + 1) + " goes on", 1);
        if (row_ > 0 && piece_.shown(row_ - 1, column_))
            level_joint(t.joint_below(row_ - 1), "lay " + name_of(row_ - 1, column_) + " on this line", -1);
        if (row_ + 1 < t.rows() && piece_.shown(row_ + 1, column_))
            level_joint(t.joint_below(row_), "cut here: " + name_of(row_ + 1, column_) + " goes on", 1);
    }

    // Neighbours draw the same lozenges: half of each is left on either side of the cut, and the halves meet. A lozenge
    // cannot be taken for a notch, which is a single stroke.
    static constexpr double mark_places[] = {0.2, 0.5, 0.8}, half_mark = 5;

    void lozenge(const page_point& at, double across, double down) {
        draw(joining_mark_pen, {{at.x - across, at.y}, {at.x, at.y - down}, {at.x + across, at.y}, {at.x, at.y + down}},
             true);
    }

    void upright_joint(double x, const std::string& words, double away) {
        draw(joining_pen, {{x, part_.y}, {x, part_.bottom()}});
        for (const double t : mark_places)
            lozenge({x, part_.y + part_.height * t}, half_mark, half_mark / 2);
        const auto at = [&](double t) { return page_point{x + (away > 0 ? 3.6 : -1.4), part_.y + part_.height * t}; };
        say(put(clearest(at)), words, caption, set_from::middle, 90);
    }
    void level_joint(double y, const std::string& words, double away) {
        draw(joining_pen, {{part_.x, y}, {part_.right(), y}});
        for (const double t : mark_places)
            lozenge({part_.x + part_.width * t, y}, half_mark / 2, half_mark);
        const auto at = [&](double t) { return page_point{part_.x + part_.width * t, y + (away > 0 ? 3.6 : -1.4)}; };
        say(put(clearest(at)), words, caption, set_from::middle);
    }

    /// Of the places between the marks, the one farthest from the lines of the piece.
    template <class At>
    page_point clearest(const At& at) const {
        page_point best{};
        double most = -1;
        for (const double t : {0.35, 0.65}) {
            const made_piece& p = *piece_.piece;
            double room = distance_to(piece_.placed(p.grain_line.from), piece_.placed(p.grain_line.to), at(t), 1);
            for (const points* line : {&piece_.cut, &piece_.seam})
                for (std::size_t i = 0; i < line->size(); ++i)
                    room = std::min(room, distance_to((*line)[i], (*line)[(i + 1) % line->size()], at(t), 1));
            if (room > most)
                most = room, best = at(t);
        }
        return best;
    }

    void heading() {
        const double right = orders_.on.narrow() - margin, y = margin + 4;
        const made_piece& p = *piece_.piece;
        const std::string place = name_of(row_, column_) + " of " + std::to_string(piece_.parts.rows()) + " x " +
                                  std::to_string(piece_.parts.columns());
        say({right, y}, place, 4, set_from::end, 0, true);
        const double room = right - margin - measure_.width_of(place, 4, true) - 6,
                     size = std::min(4.0, 4.0 * room / measure_.width_of(p.name, 4, true));
        say({margin, y}, p.name, size, set_from::start, 0, true);
        const double left = margin + measure_.width_of(p.name, size, true) + 4;
        const std::string more = "cut " + std::to_string(p.quantity) + ", " + p.material;
        if (left + measure_.width_of(more, 2.8, false) < right - measure_.width_of(place, 4, true) - 4)
            say({left, y}, more, 2.8, set_from::start);
    }

    void foot() {
        const double y = orders_.on.wide() - margin - 2.5;
        page_.draw(plain_pen, {{margin, y - 2}, {margin, y}, {margin + 50, y}, {margin + 50, y - 2}});
        say({margin + 25, y - 0.8}, "50 mm on paper", caption, set_from::middle);
        say({margin + 54, y - 0.8}, "Close a rotary cutter's guard at every pause. All cautions: first pages.", caption,
            set_from::start);
    }

    const placed_piece& piece_;
    std::size_t row_, column_;
    page_area part_, kept_{};
    const page_orders& orders_;
    const text_measure& measure_;
    page page_;
};

} // namespace

std::size_t placed_piece::pages() const {
    std::size_t n = 0;
    for (std::size_t r = 0; r < parts.rows(); ++r)
        for (std::size_t c = 0; c < parts.columns(); ++c)
            n += shown(r, c);
    return n;
}

placed_piece placed(const made_piece& piece, const paper& on) {
    const auto lying = [&](bool turned) {
        points cut, seam;
        for (const spot& p : piece.cut)
            cut.push_back(placed_piece::on_plane(p, turned));
        for (const spot& p : piece.seam)
            seam.push_back(placed_piece::on_plane(p, turned));
        // Room for half the line's weight.
        const page_area bare = extent_of(cut);
        const tiling parts({bare.x - 1, bare.y - 1, bare.width + 2, bare.height + 2}, on);
        if (parts.rows() > most_pages || parts.columns() > most_pages || parts.rows() * parts.columns() > most_pages)
            throw range_error("piece \"" + piece.name + "\" would take " + std::to_string(parts.rows()) + " x " +
                                  std::to_string(parts.columns()) + " pages of " + std::string(on.name()) +
                                  ": at most " + std::to_string(most_pages) + " are printed",
                              {.kind = fault::too_large,
                               .what = "the number of pages",
                               .given = amount_of(parts.rows()),
                               .most = amount_of(most_pages),
                               .where = piece.name});
        return placed_piece{&piece, turned, parts, std::move(cut), std::move(seam)};
    };
    placed_piece upright = lying(false), turned = lying(true);
    return turned.pages() < upright.pages() ? turned : upright;
}

std::vector<page> pages_of(const placed_piece& piece, const page_orders& orders, const text_measure& measure) {
    std::vector<page> all;
    for (std::size_t r = 0; r < piece.parts.rows(); ++r)
        for (std::size_t c = 0; c < piece.parts.columns(); ++c)
            if (piece.shown(r, c))
                all.push_back(part_of_piece(piece, r, c, orders, measure).drawn());
    return all;
}

} // namespace drafting
