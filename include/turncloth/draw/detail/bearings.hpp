// Where a maker finds her bearings on what is drawn: the edges that are measured from, their names, and the grain.
//
//   tick_edge(page, room, edge, out)              three oblique strokes out of an edge, where there is room
//   write_bearings(page, place, edges, grain)     of a piece: edges ticked, "top" and "left" inside, an arrow upward
//
// Each stands where it is clear of all words and lines, and is left out where there is no such place.
#ifndef TURNCLOTH_DRAW_DETAIL_BEARINGS_HPP
#define TURNCLOTH_DRAW_DETAIL_BEARINGS_HPP

#include <turncloth/page/drawing.hpp>
#include <turncloth/panel/names.hpp>

#include <algorithm>
#include <set>
#include <string>

namespace turncloth::detail {

inline constexpr kind_of_line from_here_line = {{"datum", 0.45}, "measured from", true};

/// Along an edge or a side of what is drawn, the middle first.
inline constexpr double places_along[] = {0.5, 0.3, 0.7, 0.15, 0.85, 0.4, 0.6, 0.05, 0.95, 0.22, 0.78};

/// `edge` is on the page; `out` leads over it, and is level or upright.
inline void tick_edge(page& on, free_room& room, const page_segment& edge, page_point out) {
    const bool level = out.x == 0;
    for (const double part : places_along) {
        const page_point foot{edge.from.x + part * (edge.to.x - edge.from.x),
                              edge.from.y + part * (edge.to.y - edge.from.y)};
        const page_area there =
            centred({foot.x + 0.9 * out.x, foot.y + 0.9 * out.y}, level ? 5.4 : 1.5, level ? 1.5 : 5.4);
        if (!room.is_free(there))
            continue;
        for (const double off : {-1.8, 0.0, 1.8}) {
            const page_segment s =
                level ? page_segment{{foot.x + off, foot.y}, {foot.x + off + 0.9, foot.y + 1.6 * out.y}}
                      : page_segment{{foot.x, foot.y + off}, {foot.x + 1.6 * out.x, foot.y + off + 0.9}};
            on.draw(from_here_line.with, {s.from, s.to});
        }
        return room.take(there);
    }
}

class bearings {
public:
    bearings(page& on, const picture_place& at) : on_(on), at_(at), room_(on, at.by) {}

    void tick(edge e) {
        const page_area& a = at_.drawn;
        const double x = e == edge::right ? a.right() : a.x, y = e == edge::bottom ? a.bottom() : a.y;
        if (is_level(e))
            tick_edge(on_, room_, {{a.x, y}, {a.right(), y}}, {0, e == edge::top ? -1.0 : 1.0});
        else
            tick_edge(on_, room_, {{x, a.y}, {x, a.bottom()}}, {e == edge::left ? -1.0 : 1.0, 0});
    }
    /// Inside it, as near to it as there is room.
    void name(edge e) {
        const std::string words(word(name_of(e)));
        const double long_ = at_.by.width(words, small_size) + 1;
        const bool level = is_level(e);
        const page_area& a = at_.drawn;
        const double along = level ? a.width : a.height, deepest = std::min(25.0, (level ? a.height : a.width) / 3);
        if (along < long_ + 2)
            return;
        constexpr double nearest = 0.8; // and a millimetre further each time
        for (int tried = 0; nearest + tried < deepest; ++tried)
            for (const double part : places_along) {
                const double middle = std::clamp(part * along, long_ / 2 + 1, along - long_ / 2 - 1),
                             off = nearest + tried + small_line_height / 2;
                const page_point spot =
                    level ? page_point{a.x + middle, a.y + off} : page_point{a.x + off, a.y + middle};
                if (set(words, spot, long_, !level))
                    return;
            }
    }
    /// Up the piece, as long as there is room, with its name beside it.
    void draw_grain() {
        for (const double long_ : {30.0, 20.0, 12.0})
            if (long_ <= at_.drawn.height / 2 && draw_grain(long_))
                return;
    }

private:
    bool draw_grain(double long_) {
        constexpr double wide = 6;
        const page_area& a = at_.drawn;
        for (const double down : places_along)
            for (const double across : places_along) {
                const page_area there{a.x + across * (a.width - wide), a.y + down * (a.height - long_), wide, long_};
                if (!within(there, a) || !room_.is_free(there))
                    continue;
                const double x = there.right() - 1;
                draw_arrow(on_, grain_pen, {{x, there.bottom() - 0.5}, {x, there.y + 0.5}});
                write_lines(on_, {there.x + 0.6, there.y, small_line_height, long_}, {sentence({"grain"})}, true);
                room_.take(there);
                return true;
            }
        return false;
    }
    bool set(const std::string& words, page_point middle, double long_, bool upright) {
        const page_area there =
            centred(middle, upright ? small_line_height : long_, upright ? long_ : small_line_height);
        if (!within(there, at_.drawn) || !room_.is_free(there))
            return false;
        room_.take(there);
        write_lines(on_, there, {words}, upright);
        return true;
    }

    page& on_;
    const picture_place& at_;
    free_room room_;
};

/// `from` are the edges that distances are told from.
inline void write_bearings(page& on, const picture_place& at, const std::set<edge>& from, bool grain) {
    bearings all(on, at);
    for (const edge e : from)
        all.tick(e);
    for (const edge e : {edge::top, edge::left})
        all.name(e);
    if (grain)
        all.draw_grain();
}

} // namespace turncloth::detail

#endif
