// One stack as it lies at last, and the hollows in it: where each opens, and how large a rectangle goes into it.
//
//   class hollows(workbench, root, rows, mouths)    mouths: stated lines, each with its number and whether it cuts cloth
//     .torn()                      rows of which what was sewn together lies apart
//     .gap_at(part, other, spot)   the gap between the two where a spot of the part lies
//     .openings(hollow, lips)      where it opens: through channels, and over lips, as if they were outside
//     .tallest(hollow, level, w)   the greatest height of a rectangle w wide in it
#ifndef TURNCLOTH_MAKING_DETAIL_HOLLOWS_HPP
#define TURNCLOTH_MAKING_DETAIL_HOLLOWS_HPP

#include <turncloth/making/detail/gaps.hpp>

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <map>
#include <optional>
#include <tuple>
#include <utility>
#include <vector>

namespace turncloth::detail::flat_work {

struct stated_mouth {
    flat_line at{};
    std::size_t mouth = nowhere;
    bool cuts = false;
};

struct opening {
    border at{};
    std::vector<std::size_t> mouths{}; ///< stated mouths on whose lines it lies
    bool into_another = false;         ///< not outside, but another hollow
};

template <class Use>
class lazy_hollows {
public:
    using cells = lazy_cells<Use>;
    using gaps = lazy_gaps<Use>;

    lazy_hollows(const lazy_workbench<Use>& bench, const flat_design& design, std::size_t root,
                 const std::vector<sewn_row>& rows, const std::vector<stated_mouth>& mouths)
        : bench_(bench), stack_(bench.stack_of(root)) {
        lazy_final_lines<Use> at_last(stack_, bench.holes());
        for (std::size_t i = 0; i < rows.size(); ++i)
            if (!at_last.bind(rows[i], bound_))
                torn_.push_back(i);
        for (const stated_mouth& m : mouths)
            at_last.open(m.at, design.parts[m.at.part], m.mouth, m.cuts, opened_);
        for (std::size_t p = 0; p < design.parts.size(); ++p)
            for (const bounds& hole : bench.holes_of(p))
                if (hole.is_nothing()) // cut open, and no cloth taken away
                    at_last.open(line_of(p, hole), design.parts[p], nowhere, true, opened_);
        std::vector<line_on_table> lines;
        for (const bound_row& b : bound_)
            lines.push_back({b.at, b.run});
        for (const opened_line& o : opened_)
            lines.push_back({o.at, o.run});
        plane_.emplace(stack_, bench.holes(), lines);
        gaps_.emplace(*plane_, bound_, opened_);
        index();
    }
    lazy_hollows(const lazy_hollows&) = delete;
    lazy_hollows& operator=(const lazy_hollows&) = delete;
    lazy_hollows(lazy_hollows&&) = delete;
    lazy_hollows& operator=(lazy_hollows&&) = delete;
    ~lazy_hollows() = default;

    const std::vector<std::size_t>& torn() const { return torn_; }
    const cells& plane() const { return *plane_; }
    const gaps& all() const { return *gaps_; }

    std::optional<std::size_t> gap_at(std::size_t part, std::size_t other, const spot& own) const {
        const ply* body = bench_.body_of(part);
        const spot at = body->how(own);
        for (std::size_t s = 0; s < plane_->slabs().size(); ++s) {
            const slab& one = plane_->slabs()[s];
            if (at.x < one.left || at.x >= one.right)
                continue;
            for (std::size_t k = 0; k < one.cell_count(); ++k)
                if (above(one, one.levels[k], at) && !above(one, one.levels[k + 1], at))
                    return gap_between(s, k, part, other);
        }
        return {};
    }

    std::vector<opening> openings(std::size_t hollow, whole lips) const {
        std::vector<opening> found;
        std::vector<std::size_t> way = {hollow}; // the hollow itself, then channels that it goes on into
        for (std::size_t i = 0; i < way.size(); ++i)
            for (const std::size_t n : passages_of(way[i])) {
                const passage& p = gaps_->passages()[n];
                const std::size_t one = gaps_->hollow_of(p.gap), other = p.other == 0 ? 0 : gaps_->hollow_of(p.other);
                const std::size_t to = one == way[i] ? other : one;
                if (to == hollow || std::find(way.begin(), way.end(), to) != way.end())
                    continue;
                if (gaps_->is_channel(to))
                    way.push_back(to);
                else
                    found.push_back({p.at, mouths_at(p), to != 0 && !is_lip(to, lips)});
            }
        return joined(std::move(found));
    }

    /// `w` along x where `level`, else along y; nothing where no such rectangle is w wide.
    whole tallest(std::size_t hollow, bool level, whole w) const {
        // Rectangles are looked for over runs of slabs. Where the width runs along x a run must be w wide and the height
        // is as far as all its slabs are open; where it runs along y, openings must be w high, and the run is the height.
        whole best = 0;
        const auto& slabs = plane_->slabs();
        const auto mine = cells_of(hollow);
        const auto blocked = barriers_of(hollow);
        for (auto first = mine.begin(); first != mine.end(); ++first) {
            std::vector<stretch> open = open_in(first->second, first->first, blocked);
            whole right = slabs[first->first].right;
            for (auto next = first;;) {
                for (const stretch& o : open) {
                    const whole far = o.to - o.from, run = right - slabs[first->first].left;
                    if (level ? run >= w : far >= w)
                        best = std::max(best, level ? far : run);
                }
                if (++next == mine.end() || slabs[next->first].left != right || open.empty())
                    break;
                open = both(without(std::move(open), blocked, right), open_in(next->second, next->first, blocked));
                right = slabs[next->first].right;
            }
        }
        return best;
    }

private:
    static flat_line line_of(std::size_t part, const bounds& cut) {
        const bool level = cut.top == cut.bottom;
        return {part, {level, level ? cut.top : cut.left}, level ? cut.left : cut.top, level ? cut.right : cut.bottom};
    }
    static bool above(const slab& s, const level& l, const spot& at) {
        return int128{l.left} * (s.right - s.left) + int128{l.right - l.left} * (at.x - s.left) <=
               int128{at.y} * (s.right - s.left);
    }

    void index() {
        where_.resize(gaps_->count());
        for (std::size_t s = 0; s < plane_->slabs().size(); ++s)
            for (std::size_t k = 0; k < plane_->slabs()[s].cell_count(); ++k)
                for (std::size_t i = 0; i + 1 < plane_->plies(s, k).size(); ++i) {
                    const std::size_t gap = gaps_->gap_between(s, k, i);
                    where_[gap] = {s, k};
                    members_[gaps_->hollow_of(gap)].push_back(gap);
                }
        for (std::size_t n = 0; n < gaps_->passages().size(); ++n) {
            const passage& p = gaps_->passages()[n];
            passages_[gaps_->hollow_of(p.gap)].push_back(n);
            if (p.other != 0)
                passages_[gaps_->hollow_of(p.other)].push_back(n);
        }
        for (std::size_t n = 0; n < gaps_->barriers().size(); ++n) {
            const passage& b = gaps_->barriers()[n];
            if (const std::size_t h = gaps_->hollow_of(b.gap); h == gaps_->hollow_of(b.other))
                barriers_[h].push_back(b.at);
        }
    }
    static const std::vector<std::size_t>& list_in(const std::map<std::size_t, std::vector<std::size_t>>& map,
                                                   std::size_t key) {
        static const std::vector<std::size_t> nothing;
        const auto found = map.find(key);
        return found == map.end() ? nothing : found->second;
    }
    const std::vector<std::size_t>& passages_of(std::size_t h) const { return list_in(passages_, h); }

    std::optional<std::size_t> gap_between(std::size_t s, std::size_t k, std::size_t part, std::size_t other) const {
        const auto is_of = [&](std::uint32_t p, std::size_t wanted) {
            const ply& one = stack_.plies[p];
            const ply* body = bench_.body_of(wanted);
            return one.part == wanted || (body != nullptr && one.wall == body->wall);
        };
        const auto over = plane_->plies(s, k);
        for (std::size_t i = 0; i + 1 < over.size(); ++i) {
            const std::uint32_t a = over[i], b = over[i + 1];
            if (stack_.plies[a].wall != stack_.plies[b].wall &&
                ((is_of(a, part) && is_of(b, other)) || (is_of(b, part) && is_of(a, other))))
                return gaps_->gap_between(s, k, i);
        }
        return {};
    }

    std::vector<std::size_t> mouths_at(const passage& p) const {
        std::vector<std::size_t> found;
        const bool level = p.at.from.y == p.at.to.y;
        const whole at = level ? p.at.from.y : p.at.from.x;
        const whole a = level ? p.at.from.x : p.at.from.y, b = level ? p.at.to.x : p.at.to.y;
        for (const opened_line& o : opened_)
            if (o.mouth != nowhere && o.at.level == level && o.at.at == at && o.run.from <= std::min(a, b) &&
                std::max(a, b) <= o.run.to && (level || p.at.from.x == p.at.to.x) &&
                std::find(found.begin(), found.end(), o.mouth) == found.end())
                found.push_back(o.mouth);
        return found;
    }

    /// Open to the outside, and nowhere deeper than `depth` from where it is.
    bool is_lip(std::size_t hollow, whole depth) const {
        std::vector<border> open;
        for (const std::size_t n : passages_of(hollow))
            if (gaps_->passages()[n].other == 0)
                open.push_back(gaps_->passages()[n].at);
        const auto near_one = [&](const spot& p) {
            return std::any_of(open.begin(), open.end(), [&](const border& b) {
                const whole dx =
                    std::max({std::min(b.from.x, b.to.x) - p.x, p.x - std::max(b.from.x, b.to.x), whole{0}});
                const whole dy =
                    std::max({std::min(b.from.y, b.to.y) - p.y, p.y - std::max(b.from.y, b.to.y), whole{0}});
                return dx <= depth && dy <= depth;
            });
        };
        const auto& members = list_in(members_, hollow);
        return std::all_of(members.begin(), members.end(), [&](std::size_t gap) {
            const auto [s, k] = where_[gap];
            const slab& one = plane_->slabs()[s];
            return near_one({one.left, one.levels[k].left}) && near_one({one.right, one.levels[k].right}) &&
                   near_one({one.left, one.levels[k + 1].left}) && near_one({one.right, one.levels[k + 1].right});
        });
    }

    /// Pieces of one line that touch, and open alike, are one opening.
    static std::vector<opening> joined(std::vector<opening> all) {
        for (opening& o : all)
            if (std::tie(o.at.to.x, o.at.to.y) < std::tie(o.at.from.x, o.at.from.y))
                std::swap(o.at.from, o.at.to);
        std::sort(all.begin(), all.end(), [](const opening& a, const opening& b) {
            const auto key = [](const opening& o) {
                const bool level = o.at.from.y == o.at.to.y;
                return std::tuple(o.mouths, o.into_another, level, level ? o.at.from.y : o.at.from.x,
                                  level ? o.at.from.x : o.at.from.y);
            };
            return key(a) < key(b);
        });
        std::vector<opening> made;
        for (opening& o : all) {
            if (!made.empty() && made.back().mouths == o.mouths && made.back().into_another == o.into_another) {
                border& last = made.back().at;
                const bool level = o.at.from.y == o.at.to.y && last.from.y == last.to.y && last.from.y == o.at.from.y;
                const bool upright = o.at.from.x == o.at.to.x && last.from.x == last.to.x && last.from.x == o.at.from.x;
                if (level && o.at.from.x <= last.to.x) {
                    last.to.x = std::max(last.to.x, o.at.to.x);
                    continue;
                }
                if (upright && o.at.from.y <= last.to.y) {
                    last.to.y = std::max(last.to.y, o.at.to.y);
                    continue;
                }
            }
            made.push_back(std::move(o));
        }
        return made;
    }

    std::map<std::size_t, std::vector<std::size_t>> cells_of(std::size_t hollow) const {
        std::map<std::size_t, std::vector<std::size_t>> mine; // cells by slab, in order
        for (const std::size_t gap : list_in(members_, hollow))
            mine[where_[gap].first].push_back(where_[gap].second);
        return mine;
    }
    std::vector<border> barriers_of(std::size_t hollow) const {
        const auto found = barriers_.find(hollow);
        return found == barriers_.end() ? std::vector<border>() : found->second;
    }
    /// Neighbouring cells of one slab that nothing parts, each as far as it is open all across.
    std::vector<stretch> open_in(const std::vector<std::size_t>& mine, std::size_t s,
                                 const std::vector<border>& blocked) const {
        const slab& one = plane_->slabs()[s];
        std::vector<stretch> open;
        for (const std::size_t k : mine) {
            const stretch run{std::max(one.levels[k].left, one.levels[k].right),
                              std::min(one.levels[k + 1].left, one.levels[k + 1].right)};
            const bool parted = std::any_of(blocked.begin(), blocked.end(), [&](const border& b) {
                return b.from.y == run.from && b.to.y == run.from && b.from.x < one.right && one.left < b.to.x;
            });
            if (!open.empty() && open.back().to == run.from && !parted)
                open.back().to = run.to;
            else if (!run.is_nothing())
                open.push_back(run);
        }
        return open;
    }
    static std::vector<stretch> without(std::vector<stretch> open, const std::vector<border>& blocked, whole x) {
        for (const border& b : blocked) {
            if (b.from.x != x || b.to.x != x)
                continue;
            std::vector<stretch> left;
            for (const stretch& o : open)
                for (const stretch& kept :
                     {stretch{o.from, std::min(o.to, b.from.y)}, {std::max(o.from, b.to.y), o.to}})
                    if (!kept.is_nothing())
                        left.push_back(kept);
            open = std::move(left);
        }
        return open;
    }
    static std::vector<stretch> both(const std::vector<stretch>& a, const std::vector<stretch>& b) {
        std::vector<stretch> made;
        for (const stretch& s : a)
            for (const stretch& t : b)
                if (const stretch m{std::max(s.from, t.from), std::min(s.to, t.to)}; !m.is_nothing())
                    made.push_back(m);
        return made;
    }

    const lazy_workbench<Use>& bench_;
    const stack& stack_;
    std::vector<bound_row> bound_{};
    std::vector<opened_line> opened_{};
    std::vector<std::size_t> torn_{};
    std::optional<cells> plane_{};
    std::optional<gaps> gaps_{};
    std::vector<std::pair<std::size_t, std::size_t>> where_{}; ///< slab and cell of each gap
    std::map<std::size_t, std::vector<std::size_t>> members_{}, passages_{};
    std::map<std::size_t, std::vector<border>> barriers_{};
};
using hollows = lazy_hollows<void>;

} // namespace turncloth::detail::flat_work

#endif
