// The gaps between grains, flooded: which belong together, and how far each hollow is open to the outside.
#ifndef TURNCLOTH_TESTS_MAKING_FLOOD_HPP
#define TURNCLOTH_TESTS_MAKING_FLOOD_HPP

#include "making/detail/grains.hpp"

namespace grains {

struct flooded {
    std::map<std::pair<at, std::size_t>, std::size_t> hollow; ///< of the i-th gap from the bottom over a triangle
    std::map<std::size_t, integer> open;                      ///< sixths of a unit of its border that lead outside
    std::map<at, std::vector<grain>> over;                    ///< from the bottom up
    bool torn = false;                                        ///< what a row held together lies apart
};

class flood {
public:
    flood(const world& w, std::size_t root, const std::vector<held>& rows) {
        for (const grain& g : w.stack_of(root))
            if (!g.gone)
                all_.over[g.where()].push_back(g);
        for (auto& [where, list] : all_.over) {
            std::sort(list.begin(), list.end(), [](const grain& a, const grain& b) { return a.height < b.height; });
            for (std::size_t i = 1; i < list.size(); ++i) {
                all_.hollow[{where, i}] = up_.size();
                up_.push_back(up_.size());
            }
        }
        close_rows(rows);
        std::set<at> done;
        for (const auto& [where, list] : all_.over)
            for (const side& s : sides_of(where))
                if (done.insert(s.middle).second)
                    cross(where, s);
        for (auto& [key, h] : all_.hollow)
            h = top(h);
        for (const auto& [h, length] : open_)
            all_.open[top(h)] += length;
    }
    const flooded& result() const { return all_; }

private:
    using interval = std::pair<double, double>;

    std::size_t top(std::size_t h) const {
        while (up_[h] != h)
            h = up_[h];
        return h;
    }
    void close_rows(const std::vector<held>& rows) {
        std::map<std::pair<std::size_t, at>, std::vector<std::pair<at, double>>> touching;
        for (const auto& [where, list] : all_.over)
            for (const grain& g : list)
                for (const side& s : sides_of(g.own))
                    touching[{g.part, s.middle}].emplace_back(go(g.how, s.middle), g.height);
        for (const held& row : rows) {
            std::optional<at> place;
            interval heights{1e300, -1e300};
            for (const auto& member : row)
                for (const auto& [where, height] : touching[member]) {
                    all_.torn |= place && *place != where;
                    place = where;
                    heights = {std::min(heights.first, height), std::max(heights.second, height)};
                }
            if (place)
                rows_[*place].push_back(heights);
        }
    }

    /// Folded: the triangle across the side in the part's own coordinates lies over this one.
    static std::vector<interval> folds(const std::vector<grain>& here, const std::set<double>& going_on,
                                       const at& beyond) {
        std::vector<interval> shut;
        for (const grain& g : here)
            for (const grain& h : here)
                if (g.part == h.part && g.height < h.height && !going_on.contains(g.height) &&
                    !going_on.contains(h.height) && go(undo(g.how), beyond) == h.own)
                    shut.emplace_back(g.height, h.height);
        return shut;
    }

    /// Whether fewer grains lie from end to end of it.
    static bool narrower(const std::vector<grain>& list, const interval& a, const interval& b) {
        const auto count = [&](const interval& i) {
            return std::count_if(list.begin(), list.end(),
                                 [&](const grain& g) { return i.first <= g.height && g.height <= i.second; });
        };
        return b.first < -1e300 || count(a) < count(b);
    }

    void cross(const at& where, const side& s) {
        static const std::vector<grain> nothing;
        const auto found = all_.over.find(s.beyond);
        const std::vector<grain>&one = all_.over[where], &other = found == all_.over.end() ? nothing : found->second;
        std::set<double> going_on;
        for (const grain& g : one)
            for (const grain& h : other)
                if (g.part == h.part && g.how == h.how)
                    going_on.insert(g.height);
        std::map<std::tuple<long, int, interval>, std::vector<std::pair<long, int>>>
            bands; // -1 is outside; of which side
        const auto sort_out = [&](const std::vector<grain>& list, const at& at_place, int which) {
            const auto folded = folds(list, going_on, at_place == where ? s.beyond : where);
            const auto& sewn = rows_[s.middle];
            for (std::size_t i = 0; i <= list.size(); ++i) {
                const double low = i == 0 ? -1e300 : list[i - 1].height,
                             high = i == list.size() ? 1e300 : list[i].height;
                const auto closes = [&](const interval& c) { return c.first <= low && high <= c.second; };
                if (std::any_of(sewn.begin(), sewn.end(), closes))
                    continue;
                // In a fold: with what lies in the same one, round the edges that end in it.
                interval narrowest{-1e301, 1e301};
                int in = 0;
                for (const interval& c : folded)
                    if (closes(c) && narrower(list, c, narrowest)) {
                        narrowest = c;
                        in = which;
                    }
                const long band = std::count_if(going_on.begin(), going_on.end(), [&](double h) { return h <= low; });
                const bool outside = i == 0 || i == list.size();
                bands[{band, in, narrowest}].emplace_back(outside ? -1 : static_cast<long>(all_.hollow[{at_place, i}]),
                                                          which);
            }
        };
        sort_out(one, where, 1);
        sort_out(other, s.beyond, 2);
        for (const auto& [band, list] : bands)
            join(list, s.length);
    }
    /// Gaps of one side that open toward cloth or air on the other are reached by that alone from a fold or tube of one wall.
    void join(const std::vector<std::pair<long, int>>& list, integer length) {
        const auto any = [&](auto is) { return std::any_of(list.begin(), list.end(), is); };
        const bool outside = any([](const auto& m) { return m.first == -1; });
        for (const auto& [a, of_a] : list) {
            if (a >= 0 && outside)
                open_[static_cast<std::size_t>(a)] += length;
            for (const auto& [b, of_b] : list) {
                if (a < 0 || b < 0 || walls(a) != walls(b))
                    continue;
                const bool across = outside || any([&, side = of_a](const auto& m) { return m.second != side; });
                if (!(of_a == of_b && across && walls(a).first == walls(a).second))
                    up_[top(static_cast<std::size_t>(a))] = top(static_cast<std::size_t>(b));
            }
        }
    }
    std::pair<std::size_t, std::size_t> walls(long gap) {
        if (walls_.empty())
            for (const auto& [key, h] : all_.hollow)
                walls_[static_cast<long>(h)] =
                    std::minmax({all_.over[key.first][key.second - 1].part, all_.over[key.first][key.second].part});
        return walls_[gap];
    }

    flooded all_;
    std::vector<std::size_t> up_;
    std::map<std::size_t, integer> open_;
    std::map<at, std::vector<interval>> rows_;
    std::map<long, std::pair<std::size_t, std::size_t>> walls_;
};

} // namespace grains

#endif
