// What is seen of a folded panel on a page, and how many layers lie where.
//
//   folded_shown                          the view, its corners, and what is left out of it
//   layer_numbers(page, place, shown).write()     false where a corner has no room for its numbers
#ifndef TURNCLOTH_DRAW_DETAIL_FOLDED_NUMBERS_HPP
#define TURNCLOTH_DRAW_DETAIL_FOLDED_NUMBERS_HPP

#include <turncloth/draw/detail/folded_view.hpp>

#include <algorithm>
#include <cstddef>
#include <initializer_list>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace turncloth::detail {

/// The stretch of one axis of which only so much is shown, in mm of cloth.
struct interruption {
    double from = 0, to = 0, shown = 0;

    bool is_there() const { return shown > 0; }
    double operator()(double at) const {
        if (!is_there() || at <= from)
            return at;
        return at >= to ? at - (to - from) + shown : from + (at - from) * shown / (to - from);
    }
};

/// A folded panel as it is seen from the back, in mm of cloth, and how much of it is left out of the view.
struct folded_shown {
    folded_view view{0, 0, {}};
    page_area middle{}; ///< inward of all turned cloth
    interruption across{}, down{};

    /// One of nine, numbered from 0 rightward and down: a corner, as far as cloth of both edges is turned, a hem between
    /// two corners, or the middle.
    page_area part(int column, int row) const {
        const double x[] = {0, middle.x, middle.right(), view.width()},
                     y[] = {0, middle.y, middle.bottom(), view.height()};
        return {x[column], y[row], x[column + 1] - x[column], y[row + 1] - y[row]};
    }
    page_point operator()(page_point p) const { return {across(p.x), down(p.y)}; }
    page_segment operator()(const page_segment& s) const { return {(*this)(s.from), (*this)(s.to)}; }

    /// Where the corners have no room: a fifth more of each hem inward is left, and `more` of the middle; and between
    /// these three fifths.
    void interrupt(page_point more = {0, 0}) {
        const double w = view.width(), h = view.height(),
                     most = std::max({middle.x, middle.y, w - middle.right(), h - middle.bottom()});
        const auto axis = [&](double near, double far, double size, double inward) {
            const interruption made{1.2 * std::max(near, most / 2) + inward / 2,
                                    size - 1.2 * std::max(far, most / 2) - inward / 2, 0.6 * most};
            return made.to - made.from > made.shown ? made : interruption{};
        };
        across = axis(middle.x, w - middle.right(), w, more.x);
        down = axis(middle.y, h - middle.bottom(), h, more.y);
    }
    /// As much more of the middle as the page has room for, without making the piece look longer than it is.
    void show_more(page_point spare) {
        const double wide = across(view.width()), high = down(view.height()), slope = view.height() / view.width();
        interrupt({std::clamp((high + spare.y) / slope - wide, 0.0, spare.x),
                   std::clamp((wide + spare.x) * slope - high, 0.0, spare.y)});
    }

    std::vector<folded_region> regions_in(const page_area& a) const {
        std::vector<folded_region> all = view.within(a).regions();
        for (folded_region& r : all)
            for (trapezoid& t : r.parts)
                t = {across(t.left),    across(t.right),     down(t.top_left),
                     down(t.top_right), down(t.bottom_left), down(t.bottom_right)};
        return all;
    }
};

/// Numbers of layers: first those that stand in their regions, then the others around the piece.
class layer_numbers {
public:
    static constexpr double ring = 9; ///< round the piece, for numbers that stand outside it

    layer_numbers(page& on, const picture_place& at, const folded_shown& shown)
        : on_(on), at_(at), shown_(shown), room_(on, at.by) {}

    /// Whether every region of a corner holds its number.
    bool write() {
        std::vector<folded_region> all = regions({{1, 1}, {1, 0}, {2, 1}, {1, 2}, {0, 1}});
        // A hem ends where the piece alone begins, which the middle's number tells.
        const page_area& m = shown_.middle;
        if (m.width > too_thin && m.height > too_thin)
            std::erase_if(all, [&](const folded_region& r) { return r.layers == 1 && !r.holds(shown_(m.middle())); });
        const std::size_t outside_corners = all.size();
        for (folded_region& r : regions({{2, 0}, {0, 0}, {0, 2}, {2, 2}}))
            all.push_back(std::move(r));
        bool room_in_corners = true;
        std::vector<const folded_region*> waiting;
        for (std::size_t i = 0; i < all.size(); ++i)
            if (!stands_inside(all[i])) {
                waiting.push_back(&all[i]);
                room_in_corners &= i < outside_corners;
            }
        const auto left_out =
            std::count_if(waiting.begin(), waiting.end(), [&](const folded_region* r) { return !is_led_to(*r); });
        if (left_out > 0)
            on_.write(at_.note,
                      left_out == 1 ? sentence({left_out, " region is too narrow here for a number."})
                                    : sentence({left_out, " regions are too narrow here for a number."}),
                      small_size);
        return room_in_corners;
    }

private:
    static constexpr double high = body_size + 0.6; ///< the room of a number

    double width_of(const folded_region& r) const { return at_.by.width(std::to_string(r.layers), body_size) + 1.2; }

    std::vector<folded_region> regions(std::initializer_list<std::pair<int, int>> parts) const {
        std::vector<folded_region> all;
        for (const auto& [column, row] : parts)
            for (folded_region& r : shown_.regions_in(shown_.part(column, row)))
                all.push_back(std::move(r));
        return all;
    }

    /// Nearest to the middle of the region, of a net of spots and the middles of its parts.
    std::optional<page_point> spot_in(folded_region region, double wide, double tall) const {
        for (trapezoid& t : region.parts)
            t = {at_.to.x(t.left),      at_.to.x(t.right),       at_.to.y(t.top_left),
                 at_.to.y(t.top_right), at_.to.y(t.bottom_left), at_.to.y(t.bottom_right)};
        constexpr int meshes = 24;
        const page_area all = region.around();
        const double area = region.area();
        std::vector<page_point> spots;
        page_point middle{0, 0};
        for (const trapezoid& t : region.parts) {
            const double x = (t.left + t.right) / 2;
            spots.push_back({x, t.top(x) + t.height(x) / 2});
            middle = {middle.x + spots.back().x * t.area() / area, middle.y + spots.back().y * t.area() / area};
        }
        spots.push_back(middle);
        for (int i = 1; i < meshes; ++i)
            for (int j = 1; j < meshes; ++j)
                spots.push_back({all.x + all.width * i / meshes, all.y + all.height * j / meshes});
        std::sort(spots.begin(), spots.end(),
                  [&](page_point p, page_point q) { return distance(p, middle) < distance(q, middle); });
        const auto found = std::find_if(spots.begin(), spots.end(), [&](page_point p) {
            return region.holds(p) && room_.is_free(centred(p, wide, tall));
        });
        return found == spots.end() ? std::nullopt : std::optional(*found);
    }

    bool stands_inside(const folded_region& r) {
        const auto spot = spot_in(r, width_of(r), high);
        if (spot)
            write(r, centred(*spot, width_of(r), high));
        return spot.has_value();
    }
    /// From outside the piece, by a line that ends in a dot, as it does within what it tells of (ISO 128-22).
    bool is_led_to(const folded_region& r) {
        const auto spot = spot_in(r, 0.7, 0.7);
        const page_area off = grown(at_.drawn, 0.8);
        const auto led = spot ? led_from(*spot, grown(at_.drawn, ring), {0, 0, width_of(r), high}, room_,
                                         [&](const page_area& a) { return apart(a, off); })
                              : std::nullopt;
        if (!led)
            return false;
        room_.take(grown(led->where, 0.5)); // so that the leader is plainly its own
        room_.take(led->leader);
        on_.draw(leader_pen, {led->leader.from, led->leader.to});
        on_.draw({"leader", 0.7}, {*spot});
        write(r, led->where);
        return true;
    }
    void write(const folded_region& r, const page_area& where) {
        const page_point middle = where.middle();
        on_.write({middle.x, middle.y + 0.36 * body_size}, std::to_string(r.layers), body_size, set_from::middle);
        room_.take(where);
    }

    page& on_;
    const picture_place& at_;
    const folded_shown& shown_;
    free_room room_;
};

} // namespace turncloth::detail

#endif
