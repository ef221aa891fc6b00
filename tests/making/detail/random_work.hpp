// Random flat work done twice: by the library's plies and by grains, and compared triangle by triangle.
#ifndef TURNCLOTH_TESTS_MAKING_RANDOM_WORK_HPP
#define TURNCLOTH_TESTS_MAKING_RANDOM_WORK_HPP

#include "making/detail/flood.hpp"
#include "measure/against_gmp.hpp"
#include <turncloth/making/detail/gaps.hpp>
#include <turncloth/making/detail/needs.hpp>

#include <string>

namespace random_work {

namespace flat = turncloth::detail::flat_work;

struct counts {
    int projects = 0, creases = 0, corners = 0, rows = 0, slits = 0, layings = 0, torn = 0, hollows = 0, closed = 0;
    int over_another = 0,
        large = 0;     ///< creases that turn other parts too; four parts, such a crease, a slit, 3 hollows
    std::string wrong; ///< the first difference
};

class random_project {
public:
    /// Seven of eight are meant to be large, so that more than half are.
    random_project(std::uint64_t seed, counts& seen) : any_(seed), seen_(seen), meant_large_(seed % 8 != 0) {
        const auto n = static_cast<std::size_t>(any_.between(meant_large_ ? 4 : 1, 6));
        for (std::size_t p = 0; p < n; ++p)
            add_part(p);
        design_.creases.reserve(100);
        flat::workbench bench(design_);
        grains::world world(parts_);
        const std::int64_t steps = meant_large_ ? any_.between(18, 34) : any_.between(4, 16);
        for (std::int64_t i = 0; i < steps && seen_.wrong.empty(); ++i)
            step(bench, world);
        for (std::size_t p = 0; p < n && seen_.wrong.empty(); ++p)
            if (bench.is_root(p) && world.is_root(p))
                compare(bench, world, p);
        ++seen_.projects;
        seen_.large += n >= 4 && folded_over_ && slit_ && hollows_ >= 3;
    }

private:
    std::int64_t even(std::int64_t least, std::int64_t most) { return 2 * any_.between(least, most); }

    void add_part(std::size_t p) {
        flat::flat_part f;
        f.width = even(meant_large_ ? 4 : 2, 7); // 8 by 6 takes a slit
        f.height = even(meant_large_ ? 3 : 2, 7);
        f.right_up = any_.between(0, 1) == 0;
        grains::part g{f.width, f.height, f.right_up, {}, {}, false};
        if (p > 0) {
            f.on = static_cast<std::size_t>(any_.between(0, static_cast<std::int64_t>(p) - 1));
            const flat::whole x = even(-1, 4), y = even(-1, 4);
            const bool mirrored = f.right_up != design_.parts[f.on].right_up;
            f.there = mirrored ? flat::lie{-1, 0, 0, 1, x + f.width, y} : flat::lie{1, 0, 0, 1, x, y};
            f.beneath = any_.between(0, 3) == 0;
            g.on = f.on;
            g.there = {f.there.xx, 0, 6 * f.there.dx, 0, 1, 6 * y};
            g.beneath = f.beneath;
        }
        design_.parts.push_back(f);
        parts_.push_back(g);
    }

    void step(flat::workbench& bench, grains::world& world) {
        const auto p = static_cast<std::size_t>(any_.between(0, static_cast<std::int64_t>(parts_.size()) - 1));
        switch (any_.between(0, 6)) {
        case 0:
        case 1:
            if (parts_[p].on && !world.together(p, *parts_[p].on)) {
                bench.lay(p);
                world.lay(p);
                ++seen_.layings;
            }
            return;
        case 2:
        case 3:
            return crease(bench, world, p);
        case 4:
        case 5:
            return sew(bench, world, p);
        default:
            return slit(bench, world, p);
        }
    }

    void crease(flat::workbench& bench, grains::world& world, std::size_t p) {
        flat::flat_crease c{p, {}, any_.between(0, 1) == 0, false};
        const bool corner = any_.between(0, 4) == 0;
        const std::int64_t w = parts_[p].width, h = parts_[p].height;
        if (corner) {
            const std::int64_t leg = even(1, std::min(w, h) / 2);
            const std::int64_t a = any_.between(0, 1) == 0 ? 1 : -1, b = any_.between(0, 1) == 0 ? 1 : -1;
            c.stays = {a, b, (a > 0 ? w : 0) + (b > 0 ? h : 0) - leg};
        } else if (any_.between(0, 1) == 0) {
            c.stays = {any_.between(0, 1) == 0 ? 1 : -1, 0, 0};
            c.stays.c = c.stays.a * even(1, w / 2 - 1);
        } else {
            c.stays = {0, any_.between(0, 1) == 0 ? 1 : -1, 0};
            c.stays.c = c.stays.b * even(1, h / 2 - 1);
        }
        const auto before = world;
        if (!world.fold({p, c.stays.a, c.stays.b, c.stays.c, c.over})) {
            world = before;
            return;
        }
        design_.creases.push_back(c);
        const auto refused = bench.crease(design_.creases.size() - 1);
        if (refused.what != flat::work_fault::none)
            seen_.wrong = "a crease was refused";
        ++seen_.creases;
        seen_.corners += corner;
        const auto moves = bench.moving_with(p);
        if (std::count(moves.begin(), moves.end(), char{1}) > 1) {
            ++seen_.over_another;
            folded_over_ = true;
        }
    }

    void sew(const flat::workbench& bench, grains::world& world, std::size_t p) {
        const bool level = any_.between(0, 1) == 0;
        const std::int64_t place = even(1, (level ? parts_[p].height : parts_[p].width) / 2 - 1);
        const auto row = world.sew({p, level, place});
        if (row.empty())
            return;
        design_.rows.push_back({{p, {level, place}, {}, {}}, {p}});
        const auto [met, wrong] = bench.sew(design_.rows.size() - 1);
        sewn_.push_back(met);
        std::size_t most = 0, most_grains = 0;
        for (const auto& span : met.spans)
            most = std::max(most, span.plies.size());
        for (const auto& one : row)
            most_grains = std::max(most_grains, one.size());
        if (most != most_grains)
            seen_.wrong =
                "a row met " + std::to_string(most) + " layers and " + std::to_string(most_grains) + " of grains";
        rows_.insert(rows_.end(), row.begin(), row.end());
        ++seen_.rows;
    }

    void slit(flat::workbench& bench, grains::world& world, std::size_t p) {
        if (parts_[p].width < 8 || parts_[p].height < 6)
            return;
        const std::int64_t y = even(1, parts_[p].height / 2 - 2);
        design_.snips.push_back({{p, {true, y + 1}, 2, parts_[p].width - 4}, 1});
        bench.snip(design_.snips.size() - 1);
        world.slit(p, 2, y, parts_[p].width - 4, y + 2);
        ++seen_.slits;
        slit_ = true;
    }

    void compare(const flat::workbench& bench, const grains::world& world, std::size_t root) {
        const flat::stack& s = bench.stack_of(root);
        flat::final_lines at_last(s, bench.holes());
        std::vector<flat::bound_row> bound;
        bool whole = true;
        for (const flat::sewn_row& r : sewn_)
            whole &= at_last.bind(r, bound);
        std::vector<flat::line_on_table> lines;
        for (const auto& b : bound)
            lines.push_back({b.at, b.run});
        const flat::cells plane(s, bench.holes(), lines);
        const flat::gaps found(plane, bound, {});
        const grains::flood flood(world, root, rows_);
        const grains::flooded& dry = flood.result();
        same_layers(plane, dry);
        if (whole == dry.torn)
            seen_.wrong = "only one of the two finds a row torn";
        seen_.torn += dry.torn;
        if (seen_.wrong.empty() && !dry.torn)
            same_hollows(found, dry);
    }

    /// The cell over a spot given in sixths, if any.
    static std::optional<std::pair<std::size_t, std::size_t>> cell_at(const flat::cells& plane, const grains::at& p) {
        for (std::size_t i = 0; i < plane.slabs().size(); ++i) {
            const flat::slab& s = plane.slabs()[i];
            if (p.first < 6 * s.left || p.first > 6 * s.right)
                continue;
            for (std::size_t k = 0; k < s.cell_count(); ++k) {
                const auto above = [&](const flat::level& l) { // its y there, times the width, less the spot's
                    return 6 * l.left * (s.right - s.left) + (l.right - l.left) * (p.first - 6 * s.left) -
                           p.second * (s.right - s.left);
                };
                if (above(s.levels[k]) < 0 && above(s.levels[k + 1]) > 0)
                    return std::pair(i, k);
            }
        }
        return {};
    }

    void same_layers(const flat::cells& plane, const grains::flooded& dry) {
        flat::whole area = 0;
        for (std::size_t i = 0; i < plane.slabs().size(); ++i)
            for (std::size_t k = 0; k < plane.slabs()[i].cell_count(); ++k) {
                const flat::slab& s = plane.slabs()[i];
                if (!plane.plies(i, k).empty())
                    area += (s.levels[k + 1].sum() - s.levels[k].sum()) * (s.right - s.left);
            }
        if (area != static_cast<flat::whole>(dry.over.size()) * 2) // a triangle is one square unit
            seen_.wrong = "the outlines differ";
        for (const auto& [where, list] : dry.over) {
            const auto at = cell_at(plane, where);
            if (!at)
                return void(seen_.wrong = "no cell where there is cloth");
            const auto over = plane.plies(at->first, at->second);
            bool same = over.size() == list.size();
            for (std::size_t i = 0; same && i < list.size(); ++i) {
                const flat::ply& p = plane.of().plies[over[i]];
                const grains::map6 how{p.how.xx, p.how.xy, 6 * p.how.dx, p.how.yx, p.how.yy, 6 * p.how.dy};
                same = p.part == list[i].part && how == list[i].how;
            }
            if (!same)
                return void(seen_.wrong = "other layers");
        }
    }

    void same_hollows(const flat::gaps& found, const grains::flooded& dry) {
        std::map<std::size_t, std::size_t> there, back;
        for (const auto& [key, hollow] : dry.hollow) {
            const auto at = cell_at(found.plane(), key.first);
            const std::size_t mine = found.hollow_of(found.gap_between(at->first, at->second, key.second - 1));
            if (!there.try_emplace(mine, hollow).second && there[mine] != hollow)
                return void(seen_.wrong = "two hollows are taken for one");
            if (!back.try_emplace(hollow, mine).second && back[hollow] != mine)
                return void(seen_.wrong = "one hollow is taken for two");
        }
        std::map<std::size_t, grains::integer> open;
        for (const flat::passage& p : found.passages())
            if (p.other == 0) {
                const flat::border& at = found.border_of(p);
                open[found.hollow_of(p.gap)] +=
                    6 * std::max(std::abs(at.to.x - at.from.x), std::abs(at.to.y - at.from.y));
            }
        for (const auto& [hollow, mine] : back) {
            const auto o = dry.open.find(hollow);
            if (open[mine] != (o == dry.open.end() ? 0 : o->second))
                return void(seen_.wrong = "a hollow opens elsewhere");
            seen_.closed += open[mine] == 0;
        }
        hollows_ += static_cast<int>(back.size());
        seen_.hollows += static_cast<int>(back.size());
    }

    against_gmp::sampler any_;
    counts& seen_;
    bool meant_large_;
    flat::flat_design design_;
    std::vector<grains::part> parts_;
    std::vector<flat::sewn_row> sewn_;
    std::vector<grains::held> rows_;
    bool folded_over_ = false, slit_ = false;
    int hollows_ = 0;
};

/// As many random projects, one seed after another, until something differs.
inline counts compared(std::uint64_t first_seed, int projects) {
    counts seen;
    for (int i = 0; i < projects && seen.wrong.empty(); ++i) {
        random_project(first_seed + static_cast<std::uint64_t>(i), seen);
        if (!seen.wrong.empty())
            seen.wrong += ", seed " + std::to_string(first_seed + static_cast<std::uint64_t>(i));
    }
    return seen;
}

} // namespace random_work

#endif
