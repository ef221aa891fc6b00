// Room for words on a page: where nothing is drawn or written yet.
//
//   free_room(page, lettering)            all that is on a page, to be kept clear of
//   .is_free(area)  .leads(from, to)      whether words may stand there, and a line lead to them
//   write_in(page, room, area, lines)     lines of words in an area, where they have room in it
//   led_from(spot, zone, size, room, may_stand)    where words stand that a line leads to
//   spread(labels, from, to)              labels moved apart along a margin, each as near to its line as may be
//
//   free_room room(p, by);
//   if (room.is_free(there)) { p.write(there.middle(), "3", 3); room.take(there); }
#ifndef TURNCLOTH_PAGE_DETAIL_LABELS_HPP
#define TURNCLOTH_PAGE_DETAIL_LABELS_HPP

#include <turncloth/page/detail/lettering.hpp>
#include <turncloth/page/detail/lines_near.hpp>

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <iterator>
#include <limits>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace turncloth::detail {

inline constexpr pen scale_pen = {"scale", 0.25};

/// Where a point of what is drawn, in mm from its upper left corner, comes to lie on the page.
struct placement {
    page_point origin{};
    double scale = 1; ///< mm of what is drawn to one on the page

    double x(double at) const { return origin.x + at / scale; }
    double y(double at) const { return origin.y + at / scale; }
    page_point operator()(page_point p) const { return {x(p.x), y(p.y)}; }
    page_segment operator()(const page_segment& s) const { return {(*this)(s.from), (*this)(s.to)}; }
    page_area operator()(const page_area& a) const { return {x(a.x), y(a.y), a.width / scale, a.height / scale}; }
    page_stroke operator()(page_stroke s) const {
        for (page_point& p : s.points)
            p = (*this)(p);
        return s;
    }
    page_words operator()(page_words w) const {
        w.at = (*this)(w.at);
        return w;
    }
};

/// What words cover, level or turned to run upward.
inline page_area covered_by(const page_words& w, const lettering& by) {
    const double length = by.width(w.text, w.size, w.bold),
                 before = w.anchor == set_from::start ? 0 : (w.anchor == set_from::end ? length : length / 2);
    return w.turned == 0 ? page_area{w.at.x - before, w.at.y - 0.8 * w.size, length, 1.1 * w.size}
                         : page_area{w.at.x - 0.8 * w.size, w.at.y + before - length, 1.1 * w.size, length};
}

class free_room {
public:
    free_room(const page& p, const lettering& by) : by_(by), lines_(p.width, p.height) {
        for (const page_stroke& s : p.strokes)
            for (const page_segment& side : sides_of(s))
                lines_.add(side);
        for (const page_words& w : p.words)
            taken_.push_back(covered_by(w, by));
    }

    const lettering& by() const { return by_; }
    void take(const page_area& a) { taken_.push_back(a); }
    void take(const page_segment& leader) { lines_.add(leader), leaders_.push_back(leader); }
    void give_back(const page_area& a) {
        std::erase_if(taken_, [&](const page_area& b) { return b.x == a.x && b.y == a.y; });
    }

    bool is_free(const page_area& a) const {
        return !lines_.meet(a) &&
               std::all_of(taken_.begin(), taken_.end(), [&](const page_area& b) { return apart(a, b); });
    }
    /// Through no words and over no other leader.
    bool leads(const page_segment& s) const {
        return std::none_of(taken_.begin(), taken_.end(), [&](const page_area& b) { return meets(s, b); }) &&
               std::none_of(leaders_.begin(), leaders_.end(), [&](const page_segment& l) { return crossing(s, l); });
    }
    std::size_t lines_crossed(const page_segment& s) const {
        return static_cast<std::size_t>(std::count_if(lines_.all().begin(), lines_.all().end(),
                                                      [&](const page_segment& l) { return crossing(s, l); }));
    }

private:
    lettering by_;
    lines_near lines_;
    std::vector<page_segment> leaders_;
    std::vector<page_area> taken_;
};

/// Words in an area of what is drawn: the first of these that has room there.
struct words_inside {
    page_area where;
    std::vector<std::vector<std::string>> choice;
};

/// One below the other in an area as large as they are, or side by side where they stand upright.
inline void write_lines(page& on, const page_area& there, const std::vector<std::string>& lines, bool upright) {
    for (std::size_t i = 0; i < lines.size(); ++i) {
        const double baseline = (static_cast<double>(i) + 0.8) * small_line_height;
        on.write(upright ? page_point{there.x + baseline, there.middle().y}
                         : page_point{there.middle().x, there.y + baseline},
                 lines[i], small_size, set_from::middle)
            .turned = upright ? 90 : 0;
    }
}

/// Level, or upright in a narrow area, in the middle or below or above it; false where nowhere is room.
inline bool write_in(page& on, free_room& room, const page_area& a, const std::vector<std::string>& lines) {
    constexpr double inset = 0.6;
    const double wide = room.by().widest(lines, small_size),
                 high = static_cast<double>(lines.size()) * small_line_height;
    const page_area inner{a.x + inset, a.y + inset, a.width - 2 * inset, a.height - 2 * inset};
    for (const double part : {0.5, 1.0, 0.0})
        for (const bool upright : {false, true}) {
            page_area there{0, 0, upright ? high : wide, upright ? wide : high};
            there.x = inner.x + (upright ? part : 0.5) * (inner.width - there.width);
            there.y = inner.y + (upright ? 0.5 : part) * (inner.height - there.height);
            if (!within(there, inner) || !room.is_free(there))
                continue;
            room.take(there);
            write_lines(on, there, lines, upright);
            return true;
        }
    return false;
}
inline bool write_in(page& on, free_room& room, const page_area& a,
                     const std::vector<std::vector<std::string>>& choice) {
    return std::any_of(choice.begin(), choice.end(),
                       [&](const std::vector<std::string>& lines) { return write_in(on, room, a, lines); });
}

/// Words off a spot, and the line that leads from it to them.
struct led_words {
    page_area where;
    page_segment leader;
};

/// All that stand on a mesh in a zone, of the size given, with a leader no longer than `reach`: the nearest first.
inline std::vector<led_words> led_within(double reach, page_point spot, const page_area& zone, const page_area& size) {
    constexpr double mesh = 0.75, least = 1;
    std::vector<std::pair<double, led_words>> all;
    const auto last = [&](double left, double furthest) {
        return static_cast<int>(std::floor(std::min(left, furthest) / mesh));
    };
    const auto first = [&](double nearest) { return static_cast<int>(std::max(0.0, std::floor(nearest / mesh))); };
    const int right = last(zone.width - size.width, spot.x + reach - zone.x),
              down = last(zone.height - size.height, spot.y + reach - zone.y),
              left = first(spot.x - reach - size.width - zone.x), up = first(spot.y - reach - size.height - zone.y);
    for (int i = left; i <= right; ++i)
        for (int j = up; j <= down; ++j) {
            const page_area a{zone.x + i * mesh, zone.y + j * mesh, size.width, size.height};
            const page_point m = a.middle(), sides[] = {{a.x, m.y}, {a.right(), m.y}, {m.x, a.y}, {m.x, a.bottom()}};
            const page_point end =
                *std::min_element(std::begin(sides), std::end(sides),
                                  [&](page_point p, page_point q) { return distance(p, spot) < distance(q, spot); });
            if (const double far = distance(end, spot); far >= least && far <= reach)
                all.push_back({far, {a, {spot, end}}});
        }
    std::sort(all.begin(), all.end(), [](const auto& a, const auto& b) { return a.first < b.first; });
    std::vector<led_words> ordered;
    ordered.reserve(all.size());
    for (const auto& c : all)
        ordered.push_back(c.second);
    return ordered;
}

/// As near as may be in a zone, of the size given and where `may_stand`, their leader across as few lines as may be. It
/// ends in the middle of a side of theirs. What is found within reach is nearer than all that is not.
template <class May>
std::optional<led_words> led_from(page_point spot, const page_area& zone, const page_area& size, const free_room& room,
                                  May may_stand) {
    constexpr double crossing_costs = 12, near = 25;
    std::optional<led_words> best;
    double cost = std::numeric_limits<double>::infinity();
    const auto look_within = [&](double reach) {
        for (const led_words& c : led_within(reach, spot, zone, size)) {
            const double far = distance(c.leader.to, spot);
            if (far >= cost)
                break;
            const page_area& a = c.where;
            const page_segment& leader = c.leader;
            if (!may_stand(a) || meets(leader, {a.x + 0.1, a.y + 0.1, a.width - 0.2, a.height - 0.2}) ||
                !room.is_free(a) || !room.leads(leader))
                continue;
            const page_point off = moved(spot, {leader.to.x - spot.x, leader.to.y - spot.y}, 0.02 / far);
            const double all_in = far + crossing_costs * static_cast<double>(room.lines_crossed({off, leader.to}));
            if (all_in < cost)
                cost = all_in, best = c;
        }
    };
    for (const double reach : {near, 4 * near, 16 * near, std::numeric_limits<double>::infinity()}) {
        look_within(reach);
        if (cost <= reach)
            break;
    }
    return best;
}

/// A label on a margin: where along it that is wanted, how much of it that takes, and where its centre comes to stand.
struct on_margin {
    double wanted, size, centre = 0;
};

/// Labels in order and without overlap within from..to, nearest to where they are wanted in least squares: with the room
/// before each label taken off, that is a regression to a sequence that never falls, found by pooling neighbours that
/// would cross. False where there is no room for all.
template <class Label>
bool spread(std::vector<Label>& labels, double from, double to) {
    struct pool {
        double sum;
        std::size_t count;
        double mean() const { return sum / static_cast<double>(count); }
    };
    std::vector<pool> pools;
    double total = 0;
    for (Label& l : labels) {
        l.centre = total + l.size / 2; // were they to begin at 0
        total += l.size;
        pools.push_back({l.wanted - l.centre, 1});
        while (pools.size() > 1 && pools[pools.size() - 2].mean() > pools.back().mean()) {
            const pool last = pools.back();
            pools.pop_back();
            pools.back().sum += last.sum;
            pools.back().count += last.count;
        }
    }
    auto next = labels.begin();
    for (const pool& p : pools)
        for (std::size_t i = 0; i < p.count; ++i)
            (next++)->centre += std::max(from, std::min(p.mean(), to - total));
    return total <= to - from;
}

} // namespace turncloth::detail

#endif
