// Pieces to lay whose shortest lay is known: a rectangle cut up again and again; and small ones solved by trying
// everything.
//
//   std::vector<lay_piece> cut_up(chance, width, length, pieces, from_edge_to_edge)
//   std::vector<lay_piece> small_pieces(chance, width, kinds, ...)
//   std::int64_t shortest_by_trial(pieces, width)
//   std::int64_t shortest_edge_to_edge(pieces, width)
//   std::int64_t shortest_in_strips(pieces, width)
//
//   CHECK(shortest_lay(cut_up(chance, 40, 60, 12, true), {.width = 40}).length >= 60);
#ifndef TURNCLOTH_TESTS_CLOTH_LAY_INSTANCES_HPP
#define TURNCLOTH_TESTS_CLOTH_LAY_INSTANCES_HPP

#include <turncloth/cloth/lay/random.hpp>
#include <turncloth/cloth/lay/types.hpp>

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <functional>
#include <utility>
#include <vector>

namespace lay_test {

using turncloth::detail::lay_piece;
using turncloth::detail::lay_random;

inline std::int64_t between(lay_random& chance, std::int64_t low, std::int64_t high) {
    return low + chance.below(static_cast<std::uint32_t>(high - low + 1));
}

inline lay_piece piece(std::int64_t width, std::int64_t length, std::int64_t quantity = 1,
                       turncloth::grain grain = turncloth::grain::fixed) {
    lay_piece made;
    made.width = width;
    made.length = length;
    made.quantity = quantity;
    made.grain = grain;
    return made;
}

/// Cuts a rectangle of width x length into so many pieces, which therefore cover it without loss. Cuts go from edge to
/// edge of the part they cut; unless from_edge_to_edge, some parts are cut into five instead, four round a fifth like
/// the slats of a closed carton, which no cut from edge to edge can part.
inline std::vector<lay_piece> cut_up(lay_random& chance, std::int64_t width, std::int64_t length, std::size_t count,
                                     bool from_edge_to_edge) {
    std::vector<std::pair<std::int64_t, std::int64_t>> parts{{width, length}};
    for (int tries = 0; parts.size() < count && tries < 10'000; ++tries) {
        const std::size_t which = chance.below(static_cast<std::uint32_t>(parts.size()));
        const auto [w, l] = parts[which];
        if (!from_edge_to_edge && w >= 3 && l >= 3 && parts.size() + 4 <= count) {
            const std::int64_t x1 = between(chance, 1, w - 2), x2 = between(chance, x1 + 1, w - 1);
            const std::int64_t y1 = between(chance, 1, l - 2), y2 = between(chance, y1 + 1, l - 1);
            parts[which] = {x2, y1};
            parts.insert(parts.end(), {{w - x2, y2}, {w - x1, l - y2}, {x1, l - y1}, {x2 - x1, y2 - y1}});
        } else if (chance.below(2) == 0 && w >= 2) {
            const std::int64_t x = between(chance, 1, w - 1);
            parts[which] = {x, l};
            parts.emplace_back(w - x, l);
        } else if (l >= 2) {
            const std::int64_t y = between(chance, 1, l - 1);
            parts[which] = {w, y};
            parts.emplace_back(w, l - y);
        }
    }
    std::vector<lay_piece> pieces;
    for (const auto& [w, l] : parts)
        pieces.push_back(piece(w, l));
    return pieces;
}

/// The shortest lay by trying every place of every piece, at whole numbers: an optimum has all pieces pushed towards
/// the near left corner, where every place is a sum of sizes, so whole. Use it for a handful of small pieces.
inline std::int64_t shortest_by_trial(const std::vector<lay_piece>& pieces, std::int64_t width) {
    struct box {
        std::int64_t w, l;
        bool turns;
    };
    std::vector<box> boxes;
    std::int64_t stacked = 0;
    for (const lay_piece& p : pieces)
        for (std::int64_t i = 0; i < p.quantity; ++i) {
            boxes.push_back({p.width, p.length, p.grain == turncloth::grain::may_turn});
            stacked += p.width <= width ? p.length : p.width;
        }
    std::sort(boxes.begin(), boxes.end(), [](const box& a, const box& b) { return a.w * a.l > b.w * b.l; });
    const auto cell = [&](std::int64_t x, std::int64_t y) { return static_cast<std::size_t>(y * width + x); };

    std::vector<char> taken;
    const std::function<bool(std::size_t, std::int64_t)> lays = [&](std::size_t next, std::int64_t length) {
        if (next == boxes.size())
            return true;
        for (const bool turned : {false, true}) {
            if (turned && (!boxes[next].turns || boxes[next].w == boxes[next].l))
                continue;
            const std::int64_t w = turned ? boxes[next].l : boxes[next].w;
            const std::int64_t l = turned ? boxes[next].w : boxes[next].l;
            for (std::int64_t y = 0; y + l <= length; ++y)
                for (std::int64_t x = 0; x + w <= width; ++x) {
                    bool clear = true;
                    for (std::int64_t j = y; clear && j < y + l; ++j)
                        for (std::int64_t i = x; clear && i < x + w; ++i)
                            clear = taken[cell(i, j)] == 0;
                    if (!clear)
                        continue;
                    const auto fill = [&](char with) {
                        for (std::int64_t j = y; j < y + l; ++j)
                            for (std::int64_t i = x; i < x + w; ++i)
                                taken[cell(i, j)] = with;
                    };
                    fill(1);
                    if (lays(next + 1, length))
                        return true;
                    fill(0);
                }
        }
        return false;
    };
    std::int64_t area = 0;
    for (const box& b : boxes)
        area += b.w * b.l;
    std::int64_t length = (area + width - 1) / width;
    for (;; ++length) {
        if (length >= stacked)
            return stacked;
        taken.assign(static_cast<std::size_t>(width * length), 0);
        if (lays(0, length))
            return length;
    }
}

/// One entry for each piece, quantities written out.
inline std::vector<lay_piece> one_by_one(const std::vector<lay_piece>& pieces) {
    std::vector<lay_piece> all;
    for (const lay_piece& p : pieces)
        for (std::int64_t i = 0; i < p.quantity; ++i)
            all.push_back(piece(p.width, p.length, 1, p.grain));
    return all;
}

constexpr std::int64_t no_lay = 1'000'000;

/// The shortest lay that cuts from edge to edge can part, for every set of the pieces on every whole width: a set that
/// is not one piece is cut in two, across or at every whole place along.
inline std::int64_t shortest_edge_to_edge(const std::vector<lay_piece>& pieces, std::int64_t width) {
    const std::vector<lay_piece> all = one_by_one(pieces);
    const auto sets = std::size_t{1} << all.size();
    std::vector<std::vector<std::int64_t>> shortest(
        sets, std::vector<std::int64_t>(static_cast<std::size_t>(width) + 1, no_lay));
    for (std::size_t i = 0; i < all.size(); ++i)
        for (std::size_t w = 0; std::cmp_less_equal(w, width); ++w) {
            if (std::cmp_greater_equal(w, all[i].width))
                shortest[std::size_t{1} << i][w] = all[i].length;
            if (all[i].grain == turncloth::grain::may_turn && std::cmp_greater_equal(w, all[i].length))
                shortest[std::size_t{1} << i][w] = std::min(shortest[std::size_t{1} << i][w], all[i].width);
        }
    for (std::size_t set = 1; set < sets; ++set)
        for (std::size_t part = (set - 1) & set; part > 0; part = (part - 1) & set)
            for (std::size_t w = 1; std::cmp_less_equal(w, width); ++w) {
                std::int64_t& best = shortest[set][w];
                best = std::min(best, shortest[part][w] + shortest[set & ~part][w]);
                for (std::size_t x = 1; x < w; ++x)
                    best = std::min(best, std::max(shortest[part][x], shortest[set & ~part][w - x]));
            }
    return shortest.back().back();
}

/// The shortest lay in strips, by every grouping of the pieces into strips and every way that each may lie there.
inline std::int64_t shortest_in_strips(const std::vector<lay_piece>& pieces, std::int64_t width) {
    const std::vector<lay_piece> all = one_by_one(pieces);
    const auto sets = std::size_t{1} << all.size();
    std::vector<std::int64_t> strip(sets, no_lay), shortest(sets, no_lay);
    for (std::size_t set = 1; set < sets; ++set)
        for (std::size_t turned = set;; turned = (turned - 1) & set) {
            std::int64_t across = 0, along = 0;
            for (std::size_t i = 0; i < all.size(); ++i) {
                if ((set >> i & 1U) == 0)
                    continue;
                const bool turns = (turned >> i & 1U) != 0;
                across += turns ? all[i].length : all[i].width;
                along = std::max(along, turns ? all[i].width : all[i].length);
                if (turns && all[i].grain == turncloth::grain::fixed)
                    across = no_lay;
            }
            if (across <= width)
                strip[set] = std::min(strip[set], along);
            if (turned == 0)
                break;
        }
    shortest[0] = 0;
    for (std::size_t set = 1; set < sets; ++set)
        for (std::size_t first = set; first > 0; first = (first - 1) & set)
            shortest[set] = std::min(shortest[set], strip[first] + shortest[set & ~first]);
    return shortest.back();
}

} // namespace lay_test

#endif
