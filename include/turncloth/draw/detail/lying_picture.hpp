// The work as it lies, drawn: edges, slits, rows and wrong sides in sight, and what is written among them.
//
//   draw_lying(picture, plies, seen, view, is_new)       edges, slits and rows in sight
//   draw_cross(picture, box_of_cross(spot, table, middle), as)      the rows of a spot that is a cross
//   parts_in_sight(lying, view)                          where the names of parts may stand
//   lying_notes                                          what is placed once the picture has its scale
//   page_of_lying(picture, notes, seen, note, options)         the note says how figures are rounded
//
// Names stand in what they name where they have room, or else are led to it. Hatching goes round all words.
#ifndef TURNCLOTH_DRAW_DETAIL_LYING_PICTURE_HPP
#define TURNCLOTH_DRAW_DETAIL_LYING_PICTURE_HPP

#include <turncloth/draw/detail/bearings.hpp>
#include <turncloth/draw/detail/plies_seen.hpp>

#include <algorithm>
#include <cstddef>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace turncloth::detail {

// The only heavy line is the row that is sewn at that step.
inline constexpr kind_of_line cut_side_line = {{"edge", 0.25}, "cut edge"},
                              folded_side_line = {{"folded", 0.45}, "folded edge"},
                              earlier_row_line = {{"sewn", 0.2, {1, 0.8}}, "stitching"},
                              new_row_line = {{"new", 0.9, {2.4, 0.9}}, "sewn now"},
                              cut_open_line = {{"slit", 0.5, {0.7, 0.7}}, "slit"},
                              lay_before_line = {{"before", 0.2, {2.4, 1.2}}, "where it lay before"},
                              mouth_line = {{"mouth", 0.7, {0.2, 1.4}}, "opening"},
                              wrong_side_line = {{"wrong", 0.15, {}, 0.4}, "wrong side in sight"},
                              spot_line = {{"spot", 0.35}, "set now"},
                              fastening_line = {{"spot", 0.35}, "eyelet or tie"};

inline page_area common_area(const page_area& a, const page_area& b) {
    const double x = std::max(a.x, b.x), y = std::max(a.y, b.y);
    return {x, y, std::min(a.right(), b.right()) - x, std::min(a.bottom(), b.bottom()) - y};
}

/// What is in sight of a part, as upright rectangles, the largest first.
struct name_in_sight {
    std::string words;
    std::vector<page_area> where;
    bool led = false;       ///< from outside, where it finds no room within
    std::string alike = {}; ///< that it shares with others: led to the first, where none of them finds room within
};
/// Of an edge, with the way out over it.
struct edge_in_sight {
    page_segment at;
    page_point out;
    std::string words{}; ///< beyond it; none where it is only ticked
};

struct lying_notes {
    std::vector<name_in_sight> names{};
    std::vector<edge_in_sight> datums{}, edges{};
    std::vector<page_point> spots{};
};

/// Writes them on a page on which the picture has its place.
class notes_on_page {
public:
    notes_on_page(page& on, const picture_place& at, const lying_notes& notes)
        : on_(on), at_(at), notes_(notes), room_(with_spots(on, at, notes), at.by) {}

    void write() {
        for (const edge_in_sight& e : notes_.datums)
            tick_edge(on_, room_, at_.to(e.at), e.out);
        write_names();
        for (const edge_in_sight& e : notes_.edges)
            write_beyond(e);
    }
    /// Below all else, and clear of words.
    void hatch(const plies_seen& seen) {
        std::vector<page_stroke> all;
        for (const page_segment& s : seen.hatching(1.9 * at_.to.scale)) {
            const page_segment line = at_.to(s);
            straight_lines::spans taken;
            for (const page_words& w : on_.words)
                if (const auto in = span_inside(line, grown(covered_by(w, at_.by), 0.6)); in.first < in.second)
                    taken.push_back(in);
            const page_point way{line.to.x - line.from.x, line.to.y - line.from.y};
            for (const auto& [from, to] : straight_lines::left_of({{0.0, 1.0}}, straight_lines::joined_up(taken)))
                all.push_back({wrong_side_line.with, {moved(line.from, way, from), moved(line.from, way, to)}});
        }
        on_.strokes.insert(on_.strokes.begin(), all.begin(), all.end());
    }

private:
    /// A cross and a ring of one size on every page.
    static const page& with_spots(page& on, const picture_place& at, const lying_notes& notes) {
        for (const page_point& s : notes.spots) {
            const page_point p = at.to(s);
            on.draw(spot_line.with, {{p.x - 1.6, p.y}, {p.x + 1.6, p.y}});
            on.draw(spot_line.with, {{p.x, p.y - 1.6}, {p.x, p.y + 1.6}});
            std::vector<page_point> ring;
            for (const auto& [x, y] : {page_point{1, 0}, {0.92, 0.38}, {0.71, 0.71}, {0.38, 0.92}})
                ring.push_back({p.x + x, p.y + y});
            for (std::size_t i = 0; i < 12; ++i) // each a quarter turn after the fourth before it
                ring.push_back({p.x - (ring[i].y - p.y), p.y + (ring[i].x - p.x)});
            on.draw_closed(spot_line.with, ring);
        }
        return on;
    }

    page_point along(const edge_in_sight& e, double part, double beyond) const {
        const page_segment s = at_.to(e.at);
        return {s.from.x + part * (s.to.x - s.from.x) + beyond * e.out.x,
                s.from.y + part * (s.to.y - s.from.y) + beyond * e.out.y};
    }
    void write_names() {
        std::vector<std::string> told;
        const auto is_told = [&](const name_in_sight& n) {
            return !n.alike.empty() && std::find(told.begin(), told.end(), n.alike) != told.end();
        };
        for (const name_in_sight& n : notes_.names)
            if (write_within(n) || (n.led && lead_to(n, n.words)))
                told.push_back(n.alike);
        for (const name_in_sight& n : notes_.names)
            if (!n.alike.empty() && !is_told(n) && lead_to(n, n.alike))
                told.push_back(n.alike);
    }

    bool write_within(const name_in_sight& n) {
        const double long_ = at_.by.width(n.words, small_size);
        std::size_t tried = 0;
        for (const page_area& a : n.where) {
            const page_area within = grown(at_.to(a), -0.7);
            if (++tried > 8)
                break;
            for (const std::size_t lines : {std::size_t{1}, std::size_t{2}}) {
                const std::vector<std::string> set =
                    lines == 1 ? std::vector{n.words} : at_.by.wrapped(n.words, small_size, long_ * 0.7, 2);
                if (set.size() == lines && (stand(set, within, false) || (lines == 1 && stand(set, within, true))))
                    return true;
            }
        }
        return false;
    }
    bool stand(const std::vector<std::string>& lines, const page_area& within, bool upright) {
        const double wide = at_.by.widest(lines, small_size),
                     high = static_cast<double>(lines.size()) * small_line_height;
        const double w = upright ? high : wide, h = upright ? wide : high;
        if (w > within.width || h > within.height)
            return false;
        for (const double down : places_along)
            for (const double across : places_along) {
                const page_area there{within.x + across * (within.width - w), within.y + down * (within.height - h), w,
                                      h};
                if (!room_.is_free(there))
                    continue;
                set(lines, there, upright);
                return true;
            }
        return false;
    }
    void set(const std::vector<std::string>& lines, const page_area& there, bool upright) {
        room_.take(there);
        write_lines(on_, there, lines, upright);
    }
    /// From just outside the nearest side that has room.
    bool lead_to(const name_in_sight& n, const std::string& words) {
        constexpr double reach = 16, inside = 3;
        const page_area size{0, 0, at_.by.width(words, small_size) + 0.4, small_line_height}, d = at_.drawn;
        struct way {
            page_point spot;
            page_area zone;
            double far;
        };
        for (const page_area& seen : n.where) {
            const page_area a = at_.to(seen);
            const page_point m = a.middle();
            const double x = std::min(inside, a.width / 2), y = std::min(inside, a.height / 2);
            way ways[] = {{{m.x, a.y + y}, {d.x, d.y - reach, d.width, reach - 1}, a.y - d.y},
                          {{m.x, a.bottom() - y}, {d.x, d.bottom() + 1, d.width, reach - 1}, d.bottom() - a.bottom()},
                          {{a.right() - x, m.y}, {d.right() + 1, d.y, 3 * reach, d.height}, d.right() - a.right()},
                          {{a.x + x, m.y}, {d.x - 3 * reach, d.y, 3 * reach - 1, d.height}, a.x - d.x}};
            std::stable_sort(std::begin(ways), std::end(ways),
                             [](const way& p, const way& q) { return p.far < q.far; });
            for (const way& w : ways)
                if (lead_from(w.spot, common_area(w.zone, at_.zone), size, words))
                    return true;
        }
        return false;
    }
    bool lead_from(page_point spot, const page_area& zone, const page_area& size, const std::string& words) {
        const auto led = led_from(spot, zone, size, room_, [](const page_area&) { return true; });
        if (!led)
            return false;
        on_.draw(leader_pen, {led->leader.from, led->leader.to});
        room_.take(led->leader);
        set({words}, led->where, false);
        return true;
    }
    void write_beyond(const edge_in_sight& e) {
        const bool level = e.out.x == 0;
        const double long_ = at_.by.width(e.words, small_size);
        const page_segment s = at_.to(e.at);
        if (long_ + 1 > distance(s.from, s.to))
            return;
        for (const double part : places_along) {
            const double inside = (long_ / 2 + 0.5) / distance(s.from, s.to);
            const page_point middle = along(e, std::clamp(part, inside, 1 - inside), 0.6 + small_line_height / 2);
            const page_area there =
                centred(middle, level ? long_ : small_line_height, level ? small_line_height : long_);
            if (room_.is_free(there))
                return set({e.words}, there, !level);
        }
    }

    page& on_;
    const picture_place& at_;
    const lying_notes& notes_;
    free_room room_;
};

/// Of what lies on the table, in mm from the upper left of all that is drawn.
template <length_unit Unit>
table_view view_of(const plies_lying<Unit>& lies, bool from_above, const plies_lying<Unit>& with = {}) {
    table_view v{.across = to_double(lies.across), .down = to_double(lies.down), .from_above = from_above};
    bool first = true;
    for (const auto* stack : {&lies, &with})
        for (const ply_lying<Unit>& p : stack->plies)
            for (const table_point<Unit>& c : p.corners) {
                const double x = in_mm(c.x), y = in_mm(c.y);
                v.left = first ? x : std::min(v.left, x);
                v.right = first ? x : std::max(v.right, x);
                v.top = first ? y : std::min(v.top, y);
                first = false;
            }
    return v;
}

/// The upright rectangle round all of it.
template <length_unit Unit>
table_area<Unit> extent_of(const plies_lying<Unit>& lies) {
    table_area<Unit> all;
    bool first = true;
    for (const ply_lying<Unit>& p : lies.plies)
        for (const table_point<Unit>& c : p.corners) {
            all = first ? table_area<Unit>{c.x, c.y, c.x, c.y}
                        : table_area<Unit>{std::min(all.left, c.x), std::min(all.top, c.y), std::max(all.right, c.x),
                                           std::max(all.bottom, c.y)};
            first = false;
        }
    return all;
}

/// Of all of it, as long as it is by itself.
template <length_unit Unit>
std::pair<length<Unit>, length<Unit>> size_of(const plies_lying<Unit>& lies) {
    const table_area<Unit> all = extent_of(lies);
    return {(all.right - all.left) * lies.across, (all.bottom - all.top) * lies.down};
}

/// Edges, slits and rows in sight; `is_new` tells of a thread whether it is sewn at this step.
template <length_unit Unit, class IsNew>
void draw_lying(picture& to, const plies_lying<Unit>& lies, const plies_seen& seen, const table_view& view,
                const IsNew& is_new) {
    for (const bool folded : {false, true})
        for (const page_segment& s : seen.edges(folded))
            to.draw(folded ? folded_side_line : cut_side_line, s);
    for (const page_segment& s : seen.slits())
        to.draw(cut_open_line, s);
    straight_lines sewn, now;
    for (const thread_lying<Unit>& t : lies.threads)
        for (const page_segment& s : seen.visible(view(t.at), t.ply))
            (is_new(t.what) ? now : sewn).add(s);
    for (const page_segment& s : sewn.without(now))
        to.draw(earlier_row_line, s);
    for (const page_segment& s : now.without({}))
        to.draw(new_row_line, s);
}

/// Round the middle of a cross, as it lies on the table; none round a spot that is no cross.
template <length_unit Unit>
std::optional<page_area> box_of_cross(const spot<Unit>& s, const table_work<Unit>& table, page_point middle) {
    if (s.what != spot_kind::cross)
        return std::nullopt;
    const edge top = table.on_table(s.along.on, edge::top);
    const bool turned = top == edge::left || top == edge::right;
    return centred(middle, in_mm(turned ? s.height : s.width), in_mm(turned ? s.width : s.height));
}

/// Its rows, from corner to corner: once for all its layers. False where there is no box.
inline bool draw_cross(picture& to, const std::optional<page_area>& box, const kind_of_line& as) {
    if (!box)
        return false;
    const auto corners = box->corners();
    if (std::none_of(to.strokes.begin(), to.strokes.end(), [&](const page_stroke& drawn) {
            return drawn.with == as.with && distance(drawn.points[0], corners[0]) < 0.01;
        })) {
        to.draw(as, page_segment{corners[0], corners[2]});
        to.draw(as, page_segment{corners[3], corners[1]});
    }
    return true;
}

/// On whichever side of the paper it is best seen; nothing is hatched where no `seen` is given.
inline page page_of_lying(picture& drawn, const lying_notes& notes, const plies_seen* seen, const std::string& note,
                          const drawing_options& options) {
    drawn.ring = 5;
    drawn.words.small_print.push_back(sentence({"Figures are ", note}));
    require_drawable({drawn.width, drawn.height});
    return best_page_of(drawn, options).draw([&](page& on, const picture_place& at) {
        notes_on_page written(on, at, notes);
        written.write();
        if (seen != nullptr)
            written.hatch(*seen);
    });
}

template <length_unit Unit>
bool shows_a_wrong_side(const lying<Unit>& lies, const table_view& view) {
    return std::any_of(lies.patches.begin(), lies.patches.end(),
                       [&](const patch<Unit>& p) { return (view.from_above ? p.above : p.below).side == face::wrong; });
}

/// Where each part is in sight: level rectangles of its patches, put together one above the other, the largest first.
template <length_unit Unit>
std::vector<std::pair<cut_part, std::vector<page_area>>> parts_in_sight(const lying<Unit>& lies,
                                                                        const table_view& view) {
    std::vector<std::pair<cut_part, std::vector<page_area>>> all;
    for (const patch<Unit>& p : lies.patches) {
        const cut_part of = (view.from_above ? p.above : p.below).of;
        const page_area here =
            view(table_area<Unit>{p.left, std::max(p.upper[0], p.upper[1]), p.right, std::min(p.lower[0], p.lower[1])});
        if (here.height <= too_thin)
            continue;
        auto found = std::find_if(all.begin(), all.end(), [&](const auto& a) { return a.first == of; });
        if (found == all.end())
            found = all.insert(all.end(), {of, {}});
        std::vector<page_area>& areas = found->second;
        const auto above = std::find_if(areas.begin(), areas.end(), [&](const page_area& a) {
            return std::abs(a.x - here.x) < too_thin && std::abs(a.width - here.width) < too_thin &&
                   std::abs(a.bottom() - here.y) < too_thin;
        });
        if (above != areas.end())
            above->height += here.height;
        else
            areas.push_back(here);
    }
    for (auto& [of, areas] : all) {
        std::vector<page_area> joined;
        for (const page_area& a : areas) {
            const auto beside = std::find_if(joined.begin(), joined.end(), [&](const page_area& j) {
                return std::abs(j.y - a.y) < too_thin && std::abs(j.height - a.height) < too_thin &&
                       (std::abs(j.right() - a.x) < too_thin || std::abs(a.right() - j.x) < too_thin);
            });
            if (beside == joined.end()) {
                joined.push_back(a);
            } else {
                beside->x = std::min(beside->x, a.x);
                beside->width += a.width;
            }
        }
        std::sort(joined.begin(), joined.end(),
                  [](const page_area& a, const page_area& b) { return a.width * a.height > b.width * b.height; });
        areas = std::move(joined);
    }
    return all;
}

} // namespace turncloth::detail

#endif
