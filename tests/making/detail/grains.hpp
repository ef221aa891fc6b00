// Flat work simulated grain by grain: each piece of cloth is cut into little triangles, each of which knows where on its
// part it was cut, how it lies and how high. Creases, layings, rows and slits move and join grains; nothing here knows of
// plies, cells or slabs, and no code is shared with the library.
//
// A pixel is 2 units wide and is cut into four triangles by its diagonals, so that every fold along an even line, level,
// upright or at 45 degrees, carries triangles to triangles. In coordinates of sixths of a unit all centres and middles of
// sides are whole.
#ifndef TURNCLOTH_TESTS_MAKING_GRAINS_HPP
#define TURNCLOTH_TESTS_MAKING_GRAINS_HPP

#include <algorithm>
#include <array>
#include <cstdint>
#include <functional>
#include <limits>
#include <map>
#include <optional>
#include <set>
#include <tuple>
#include <utility>
#include <vector>

namespace grains {

using integer = long long;
using at = std::pair<integer, integer>; ///< in sixths

/// x' = m0 x + m1 y + m2, y' = m3 x + m4 y + m5, in sixths
using map6 = std::array<integer, 6>;
inline at go(const map6& m, const at& p) {
    return {m[0] * p.first + m[1] * p.second + m[2], m[3] * p.first + m[4] * p.second + m[5]};
}
inline map6 chain(const map6& first, const map6& then) {
    map6 r{};
    for (int row = 0; row < 2; ++row) {
        const auto* t = &then[static_cast<std::size_t>(row * 3)];
        r[static_cast<std::size_t>(row * 3)] = t[0] * first[0] + t[1] * first[3];
        r[static_cast<std::size_t>(row * 3 + 1)] = t[0] * first[1] + t[1] * first[4];
        r[static_cast<std::size_t>(row * 3 + 2)] = t[0] * first[2] + t[1] * first[5] + t[2];
    }
    return r;
}
inline map6 undo(const map6& m) {
    const integer det = m[0] * m[4] - m[1] * m[3]; // 1 or -1
    map6 r{m[4] * det, -m[1] * det, 0, -m[3] * det, m[0] * det, 0};
    r[2] = -(r[0] * m[2] + r[1] * m[5]);
    r[5] = -(r[3] * m[2] + r[4] * m[5]);
    return r;
}
inline bool is_turned_over(const map6& m) { return m[0] * m[4] - m[1] * m[3] < 0; }

struct side {
    at middle, beyond; ///< the centre of the triangle across it
    integer length;    ///< in twelfths of a pixel, along x or y
};
/// The three sides of the triangle with this centre.
inline std::array<side, 3> sides_of(const at& c) {
    const auto floored = [](integer v) { return v >= 0 ? v / 12 : -((-v + 11) / 12); };
    const integer px = floored(c.first) * 12, py = floored(c.second) * 12;
    const auto in = [&](integer x, integer y) { return at{px + x, py + y}; };
    const at local{c.first - px, c.second - py};
    if (local == at{6, 2})
        return {side{in(6, 0), in(6, -2), 12}, {in(9, 3), in(10, 6), 6}, {in(3, 3), in(2, 6), 6}};
    if (local == at{10, 6})
        return {side{in(12, 6), in(14, 6), 12}, {in(9, 3), in(6, 2), 6}, {in(9, 9), in(6, 10), 6}};
    if (local == at{6, 10})
        return {side{in(6, 12), in(6, 14), 12}, {in(9, 9), in(10, 6), 6}, {in(3, 9), in(2, 6), 6}};
    return {side{in(0, 6), in(-2, 6), 12}, {in(3, 3), in(6, 2), 6}, {in(3, 9), in(6, 10), 6}};
}

struct grain {
    std::size_t part;
    at own;
    map6 how;
    double height;
    bool gone = false; ///< cut away; it goes on to say where its part lies
    at where() const { return go(how, own); }
};

struct part {
    integer width, height; ///< in units
    bool right_up = true;
    std::optional<std::size_t> on;
    map6 there{};
    bool beneath = false;
};

/// a x + b y <= c stays, in units.
struct crease {
    std::size_t part;
    integer a, b, c;
    bool over;
};
struct line {
    std::size_t part;
    bool level;
    integer at;
};

/// What a row holds: for each of its sides, where it was on each part.
using held = std::vector<std::pair<std::size_t, at>>;

class world {
public:
    explicit world(std::vector<part> parts) : parts_(std::move(parts)) {
        for (std::size_t p = 0; p < parts_.size(); ++p) {
            const map6 how = parts_[p].right_up ? map6{1, 0, 0, 0, 1, 0} : map6{-1, 0, 6 * parts_[p].width, 0, 1, 0};
            std::vector<grain> all;
            for (integer x = 0; x < parts_[p].width / 2; ++x)
                for (integer y = 0; y < parts_[p].height / 2; ++y)
                    for (const at& c : {at{6, 2}, at{10, 6}, at{6, 10}, at{2, 6}})
                        all.push_back({p, {12 * x + c.first, 12 * y + c.second}, how, 0, false});
            stacks_.push_back(std::move(all));
            in_.push_back(p);
            body_.push_back(how);
        }
    }

    const std::vector<grain>& stack_of(std::size_t p) const { return stacks_[in_[p]]; }
    bool is_root(std::size_t p) const { return in_[p] == p; }
    bool together(std::size_t p, std::size_t q) const { return in_[p] == in_[q]; }
    const map6& body(std::size_t p) const { return body_[p]; }

    void lay(std::size_t p) {
        auto& on = stacks_[in_[*parts_[p].on]];
        auto piece = std::move(stacks_[in_[p]]);
        const map6 carry = chain(undo(body_[p]), chain(parts_[p].there, body_[*parts_[p].on]));
        double low = 1e300, high = -1e300, on_low = 1e300, on_high = -1e300;
        for (grain& g : piece) {
            g.how = chain(g.how, carry);
            g.height = is_turned_over(carry) ? -g.height : g.height;
            low = std::min(low, g.height);
            high = std::max(high, g.height);
        }
        for (const grain& g : on) {
            on_low = std::min(on_low, g.height);
            on_high = std::max(on_high, g.height);
        }
        const double shift = parts_[p].beneath ? on_low - 1 - high : on_high + 1 - low;
        for (grain& g : piece) {
            g.height += shift;
            on.push_back(g);
        }
        const std::size_t from = in_[p], to = in_[*parts_[p].on];
        for (std::size_t q = 0; q < in_.size(); ++q)
            if (in_[q] == from) {
                in_[q] = to;
                body_[q] = chain(body_[q], carry);
            }
        stacks_[from].clear();
    }

    /// Which sheet of a part a line across it is drawn on: the one where `measure` is greatest, if just one is.
    std::optional<map6> sheet(std::size_t p,
                              const std::function<integer(const map6&, const std::vector<at>&)>& measure) {
        std::map<map6, std::vector<at>> sheets;
        for (const grain& g : stack_of(p))
            if (g.part == p)
                sheets[g.how].push_back(g.own);
        std::optional<map6> best;
        integer most = 0;
        bool tie = false;
        for (const auto& [how, owns] : sheets) {
            const integer m = measure(how, owns);
            if (m > most) {
                best = how;
                most = m;
                tie = false;
            } else if (m == most && m > 0) {
                tie = true;
            }
        }
        return tie ? std::nullopt : best;
    }

    /// Returns false where it cannot be told which sheet is meant, or nothing would be turned.
    bool fold(const crease& c) {
        const auto past = [&](const at& own) { return c.a * own.first + c.b * own.second - 6 * c.c; };
        const auto chosen = sheet(c.part, [&](const map6&, const std::vector<at>& owns) {
            integer beyond = 0, within = 0;
            for (const at& o : owns)
                (past(o) > 0 ? beyond : within)++;
            return std::min(beyond, within);
        });
        if (!chosen)
            return false;
        // The line on the table: two of its points carried, and the side on which cloth stays.
        const map6 back = undo(*chosen);
        const auto stays = [&](const at& on_table) { return past(go(back, on_table)) < 0; };
        const integer n = c.a * c.a + c.b * c.b, k = 2 / n; // mirrored in the part's own spots
        const map6 own_mirror{1 - k * c.a * c.a, -k * c.a * c.b,    k * 6 * c.c * c.a,
                              -k * c.a * c.b,    1 - k * c.b * c.b, k * 6 * c.c * c.b};
        const map6 mirror = chain(chain(back, own_mirror), *chosen);
        turn(c, stays, mirror);
        return true;
    }

    /// The row's sides on the table, met from end to end of the sheet that it is drawn on; empty where it cannot be told.
    std::vector<held> sew(const line& l) {
        const auto on_line = [&](const at& middle) { return (l.level ? middle.second : middle.first) == 6 * l.at; };
        const auto sides_on = [&](const std::vector<at>& owns) {
            std::set<at> here(owns.begin(), owns.end());
            std::vector<at> found;
            for (const at& o : owns)
                for (const side& s : sides_of(o))
                    if (on_line(s.middle) && here.contains(s.beyond) && o < s.beyond)
                        found.push_back(s.middle);
            return found;
        };
        const auto chosen = sheet(l.part, [&](const map6&, const std::vector<at>& owns) {
            return static_cast<integer>(sides_on(owns).size());
        });
        std::vector<held> row;
        if (!chosen)
            return row;
        std::vector<at> owns;
        for (const grain& g : stack_of(l.part))
            if (g.part == l.part && g.how == *chosen)
                owns.push_back(g.own);
        for (const at& middle : sides_on(owns))
            row.push_back(met(l.part, go(*chosen, middle)));
        return row;
    }

    void slit(std::size_t p, integer left, integer top, integer right, integer bottom) {
        for (grain& g : stacks_[in_[p]])
            g.gone |= g.part == p && g.own.first > 6 * left && g.own.first < 6 * right && g.own.second > 6 * top &&
                      g.own.second < 6 * bottom;
    }

private:
    void turn(const crease& c, const std::function<bool(const at&)>& stays, const map6& mirror) {
        std::vector<grain>& s = stacks_[in_[c.part]];
        const auto moves = [&](std::size_t p) {
            for (std::optional<std::size_t> up = p; up && together(*up, c.part); up = parts_[*up].on)
                if (*up == c.part)
                    return true;
            return false;
        };
        std::map<std::size_t, std::pair<integer, integer>> bodies; // grains of the body that stay and that turn
        std::vector<grain*> turned;
        double top = -1e300, lowest_kept = 1e300, low = 1e300, high = -1e300;
        for (grain& g : s) {
            const bool turns = moves(g.part) && !stays(g.where());
            if (moves(g.part) && g.how == body_[g.part])
                (turns ? bodies[g.part].second : bodies[g.part].first)++;
            if (turns) {
                turned.push_back(&g);
                low = std::min(low, g.height);
                high = std::max(high, g.height);
            } else {
                top = std::max(top, g.height);
                if (moves(g.part))
                    lowest_kept = std::min(lowest_kept, g.height);
            }
        }
        double below = -1e300;
        const std::set<grain*> gone(turned.begin(), turned.end());
        for (grain& g : s)
            if (!gone.contains(&g) && g.height < lowest_kept)
                below = std::max(below, g.height);
        below = below == -1e300 ? lowest_kept - 1 : below;
        for (grain* g : turned) {
            g->how = chain(g->how, mirror);
            const double t = (high - g->height + 1) / (high - low + 2);
            g->height = c.over ? top + 1 + (high - g->height) : below + (lowest_kept - below) * t;
        }
        for (const auto& [p, counts] : bodies)
            if (counts.second > counts.first)
                body_[p] = chain(body_[p], mirror);
    }

    /// The cloth that goes on across a side of the table.
    held met(std::size_t p, const at& middle) const {
        std::map<std::pair<std::size_t, map6>, int> across;
        for (const grain& g : stack_of(p))
            for (const side& sd : sides_of(g.own))
                if (!g.gone && go(g.how, sd.middle) == middle)
                    across[{g.part, g.how}]++;
        held found;
        for (const auto& [key, count] : across)
            if (count == 2)
                found.emplace_back(key.first, go(undo(key.second), middle));
        return found;
    }

    std::vector<part> parts_;
    std::vector<std::vector<grain>> stacks_;
    std::vector<std::size_t> in_;
    std::vector<map6> body_;
};

} // namespace grains

#endif
