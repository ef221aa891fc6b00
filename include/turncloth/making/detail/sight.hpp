// From which edge a line is measured at that moment: one that the maker sees.
//
//   layers_along(stack, line, run)          the least and the most plies under a row
//   extent(stack, part)                     the upright rectangle round a part as it lies
//   struct sighted{part, side, folded, at}  an edge of a part as it lies, at x or y = at on the table
//   sighted_from(stack, parts, wanted, line, above)     of the piece wanted where it is in sight, or else the nearest
//
// Considered are the outermost edges of each part as it lies, folded or cut. One is in sight where nothing lies over it in
// the middle of its stretch beside the line; where none is, anywhere beside it. The outermost edge of the whole stack
// always is somewhere. From beneath, where a piece is laid under others, the cut edges of what is turned under are
// considered too, and the piece itself hides nothing.
#ifndef TURNCLOTH_MAKING_DETAIL_SIGHT_HPP
#define TURNCLOTH_MAKING_DETAIL_SIGHT_HPP

#include <turncloth/making/detail/workbench.hpp>
#include <turncloth/panel/panel.hpp>

#include <algorithm>
#include <cstddef>
#include <optional>
#include <vector>

namespace turncloth::detail::flat_work {

inline bounds extent(const stack& s, std::size_t part) {
    bounds all;
    bool some = false;
    for (const ply& p : s.plies)
        if (p.part == part) {
            const bounds b = bounds_of(p.area);
            all = some ? around(all, b) : b;
            some = true;
        }
    return all;
}

struct layers {
    std::size_t least = 0, most = 0;
};

/// Of all plies that the line runs inside of, stretch by stretch between their ends; where there is none it counts none.
inline layers layers_along(const stack& s, const table_line& at, const stretch& run) {
    std::vector<stretch> under;
    under.reserve(s.plies.size());
    std::vector<whole> stops;
    stops.reserve(2 * s.plies.size() + 2);
    stops.assign({run.from, run.to});
    for (const ply& p : s.plies) {
        const stretch in = within(p.area, at);
        const stretch part{std::max(in.from, run.from), std::min(in.to, run.to)};
        if (in.is_nothing() || part.is_nothing())
            continue;
        under.push_back(part);
        stops.insert(stops.end(), {part.from, part.to});
    }
    std::sort(stops.begin(), stops.end());
    layers found;
    for (std::size_t k = 0; k + 1 < stops.size(); ++k) {
        const auto here = static_cast<std::size_t>(std::count_if(
            under.begin(), under.end(), [&](const stretch& u) { return u.from <= stops[k] && stops[k + 1] <= u.to; }));
        if (here == 0 || stops[k] == stops[k + 1])
            continue;
        found.most = std::max(found.most, here);
        found.least = found.least == 0 ? here : std::min(found.least, here);
    }
    return found;
}

inline whole at_edge(const bounds& b, edge e) {
    return e == edge::left ? b.left : e == edge::right ? b.right : e == edge::top ? b.top : b.bottom;
}

/// Where on the table an edge of a part lies: its left may lie at the right.
constexpr edge on_table(edge own, const lie& how) {
    const whole x = own == edge::left    ? -1
                    : own == edge::right ? 1
                                         : 0,
                y = own == edge::top      ? -1
                    : own == edge::bottom ? 1
                                          : 0;
    const whole to_x = how.xx * x + how.xy * y, to_y = how.yx * x + how.yy * y;
    return to_x < 0 ? edge::left : to_x > 0 ? edge::right : to_y < 0 ? edge::top : edge::bottom;
}
constexpr edge own_edge(edge table, const lie& how) { return on_table(table, inverse(how)); }

struct sighted {
    std::size_t part = nowhere;
    edge side = edge::top; ///< the part's own name for it
    bool folded = false;
    whole at = 0;
};

/// A line beside which an edge is looked for: an upright one for an edge at the left or right.
struct looked_along {
    table_line at{};
    stretch run{};
    bool above = true;          ///< seen from above
    std::size_t laid = nowhere; ///< from beneath: what is being laid there
};

/// Beside a point, toward an edge that runs that way.
constexpr looked_along looked_from(const spot& at, bool level, bool above) {
    const whole along = level ? at.x : at.y;
    return {{level, level ? at.y : at.x}, {along, along}, above};
}

template <class>
class lazy_sight {
public:
    lazy_sight(const stack& lies, const flat_design& design) : stack_(lies), design_(design) {}

    /// The outermost edge of a part toward one side of the table.
    std::optional<sighted> outermost(std::size_t part, edge toward, const lie& body) const {
        std::optional<sighted> found;
        for (const ply& p : stack_.plies)
            if (p.part == part)
                note_outer(found, p, toward, body);
        return found;
    }

    /// The edge where it was cut, which may be turned under its part; of several stretches, the longest.
    struct cut_lying {
        edge toward = edge::top;
        whole at = 0;
        stretch run{};
    };
    cut_lying as_cut(std::size_t part, edge side) const {
        cut_lying found;
        for (const ply& p : stack_.plies) {
            const edge toward = on_table(side, p.how);
            if (p.part != part || !is_cut_edge(p, toward))
                continue;
            const whole at = at_edge(bounds_of(p.area), toward);
            const stretch run = side_of(p, toward, at).value_or(stretch{});
            if (run.to - run.from > found.run.to - found.run.from)
                found = {toward, at, run};
        }
        return found;
    }

    /// How much of it is to be in sight: what lies in the middle of the line's stretch; anything beside the line;
    /// anything at all, as of the outermost edge of the stack something always is.
    enum class much : unsigned char { middle, beside, any };

    bool sees(const sighted& e, edge toward, const looked_along& from, much wanted = much::middle) const {
        const bounds whole_part = extent(stack_, e.part);
        const bool level = is_level(toward);
        stretch beside =
            level ? stretch{whole_part.left, whole_part.right} : stretch{whole_part.top, whole_part.bottom};
        if (wanted != much::any)
            beside = {std::max(beside.from, from.run.from), std::min(beside.to, from.run.to)};
        if (beside.from > beside.to)
            return false;
        if (wanted == much::middle)
            return shows(e, toward, (beside.from + beside.to) / 2, from.above);
        const std::vector<whole> stops = stops_along(beside, {level, e.at});
        for (std::size_t k = 0; k + 1 < stops.size(); ++k)
            if (shows(e, toward, (stops[k] + stops[k + 1]) / 2, from.above))
                return true;
        return false;
    }

    /// The edge of `part` that it calls `side`, where that is in sight; or else the nearest that is.
    sighted measured_from(std::size_t part, edge side, const looked_along& from) const {
        const lie& how = body_of(part)->how;
        const edge toward = on_table(side, how);
        const std::optional<sighted> own = outermost(part, toward, how);
        if (own && sees(*own, toward, from, much::middle))
            return *own;
        const std::vector<outer_edges> all = all_outermost(toward);
        for (const much wanted : {much::middle, much::beside, much::any}) {
            if (wanted != much::middle && own && sees(*own, toward, from, wanted))
                return *own;
            if (const std::optional<sighted> nearest = nearest_seen(toward, from, wanted, all))
                return *nearest;
        }
        return *own;
    }

    /// A folded edge of any part that lies toward that side exactly there, where a line runs up to it.
    std::optional<sighted> folded_at(edge toward, whole at, const table_line& line) const {
        for (const ply& p : stack_.plies) {
            if (at_edge(bounds_of(p.area), toward) != at)
                continue;
            if (const auto e = outermost(p.part, toward, body_of(p.part)->how);
                e && e->folded && e->at == at && runs_along(p, toward, *e, line.at))
                return e;
        }
        return std::nullopt;
    }

    const ply* body_of(std::size_t part) const {
        for (const ply& p : stack_.plies)
            if (p.part == part && p.body)
                return &p;
        return nullptr;
    }

private:
    /// The outermost edges of each part toward two opposite sides, all found in one walk through the stack.
    struct outer_edges {
        const ply* body = nullptr;
        std::optional<sighted> toward{}, away{};
    };
    std::vector<outer_edges> all_outermost(edge toward) const {
        std::vector<outer_edges> all(design_.parts.size());
        for (const ply& p : stack_.plies)
            if (p.body)
                all[p.part].body = &p;
        for (const ply& p : stack_.plies)
            if (outer_edges& of = all[p.part]; of.body != nullptr) {
                note_outer(of.toward, p, toward, of.body->how);
                note_outer(of.away, p, opposite(toward), of.body->how);
            }
        return all;
    }
    std::optional<sighted> nearest_seen(edge toward, const looked_along& from, much wanted,
                                        const std::vector<outer_edges>& all) const {
        std::optional<sighted> nearest;
        const auto far = [&](const sighted& e) { return e.at < from.at.at ? from.at.at - e.at : e.at - from.at.at; };
        for (std::size_t p = 0; p < all.size(); ++p) {
            if (p == from.laid)
                continue;
            if (const auto& e = all[p].toward;
                e && (!nearest || far(*e) < far(*nearest)) && sees(*e, toward, from, wanted))
                nearest = e;
            if (const auto& e = all[p].away;
                e && (!nearest || far(*e) < far(*nearest)) && sees(*e, opposite(toward), from, wanted))
                nearest = e;
        }
        if (!from.above)
            for (const sighted& e : turned_under(toward, from))
                if (!nearest || far(e) < far(*nearest))
                    nearest = e;
        return nearest;
    }

    void note_outer(std::optional<sighted>& found, const ply& p, edge toward, const lie& body) const {
        const bool least = toward == edge::left || toward == edge::top;
        const whole at = at_edge(bounds_of(p.area), toward);
        if (!found || (least ? at < found->at : found->at < at))
            found = {p.part, own_edge(toward, body), !is_cut_edge(p, toward), at};
        else if (at == found->at)
            found->folded = found->folded || !is_cut_edge(p, toward);
    }

    /// Whether the ply has that edge of its part, and it goes on past `along`.
    static bool runs_along(const ply& p, edge toward, const sighted& e, whole along) {
        if (p.part != e.part || at_edge(bounds_of(p.area), toward) != e.at)
            return false;
        const std::optional<stretch> side = side_of(p, toward, e.at);
        return side && !side->is_nothing() && side->from <= along && along <= side->to;
    }
    /// From where to where it lies exactly there.
    static std::optional<stretch> side_of(const ply& p, edge toward, whole at) {
        const bool level = is_level(toward);
        std::optional<stretch> side;
        for (const spot& corner : p.area)
            if ((level ? corner.y : corner.x) == at) {
                const whole v = level ? corner.x : corner.y;
                side = side ? stretch{std::min(side->from, v), std::max(side->to, v)} : stretch{v, v};
            }
        return side;
    }

    /// Whether nothing lies over the edge at that place along it. Of two that meet there one may.
    bool shows(const sighted& e, edge toward, whole along, bool above) const {
        const auto shown = [&](auto ply, auto end) {
            for (; ply != end; ++ply) {
                if (runs_along(*ply, toward, e, along))
                    return true;
                const stretch there = within(ply->area, {is_level(toward), e.at});
                if (there.from <= along && along < there.to)
                    return false;
            }
            return false;
        };
        return above ? shown(stack_.plies.rbegin(), stack_.plies.rend())
                     : shown(stack_.plies.begin(), stack_.plies.end());
    }

    /// Where plies begin and end along it.
    std::vector<whole> stops_along(const stretch& beside, const table_line& at) const {
        std::vector<whole> stops = {beside.from, beside.to};
        for (const ply& p : stack_.plies) {
            const bounds b = bounds_of(p.area);
            const stretch there = within(p.area, at);
            for (const whole v : {at.level ? b.left : b.top, at.level ? b.right : b.bottom, there.from, there.to})
                stops.push_back(std::clamp(v, beside.from, beside.to));
        }
        std::sort(stops.begin(), stops.end());
        return stops;
    }

    /// Cut edges within their part that lie bare toward the table, but for what is being laid.
    std::vector<sighted> turned_under(edge toward, const looked_along& from) const {
        std::vector<sighted> all;
        for (const ply& p : stack_.plies) // from the table up
            for (const edge t : {toward, opposite(toward)}) {
                if (p.body || p.part == from.laid || !is_cut_edge(p, t))
                    continue;
                const whole at = at_edge(bounds_of(p.area), t);
                const stretch run = side_of(p, t, at).value_or(stretch{});
                const stretch beside = {std::max(run.from, from.run.from), std::min(run.to, from.run.to)};
                const whole middle = (beside.from + beside.to) / 2;
                const bool hidden = std::any_of(stack_.plies.data(), &p, [&](const ply& below) {
                    return below.part != from.laid && covers(below, t, at, middle);
                });
                if (beside.from < beside.to && !hidden)
                    all.push_back({p.part, own_edge(t, p.how), false, at});
            }
        return all;
    }

    /// Whether the ply lies over that place of an edge: within it, or with an edge or a fold of its own just there.
    static bool covers(const ply& p, edge toward, whole at, whole along) {
        const bool ends_there = at_edge(bounds_of(p.area), toward) == at;
        const stretch there =
            ends_there ? side_of(p, toward, at).value_or(stretch{}) : within(p.area, {is_level(toward), at});
        return there.from <= along && along < there.to;
    }

    bool is_cut_edge(const ply& p, edge toward) const {
        const flat_part& part = design_.parts[p.part];
        const bounds b = carried(bounds_of(p.area), inverse(p.how));
        switch (own_edge(toward, p.how)) {
        case edge::left:
            return b.left == 0;
        case edge::right:
            return b.right == part.width;
        case edge::top:
            return b.top == 0;
        case edge::bottom:
            break;
        }
        return b.bottom == part.height;
    }

    const stack& stack_;
    const flat_design& design_;
};
using sight = lazy_sight<void>;

} // namespace turncloth::detail::flat_work

#endif
