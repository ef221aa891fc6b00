// One stack as it lies at last, and the hollows in it: where each opens, and how large a rectangle goes into it.
//
//   class hollows(workbench, root, rows, mouths, lips)
//                                mouths: stated lines, each with its number and whether it cuts cloth; a hollow that is
//                                open and nowhere deeper than its lips counts as outside
//     .torn()                      rows of which what was sewn together lies apart
//     .gap_at(part, other, spot)   the gap between the two where a spot of the part lies
//     .openings(hollow)            where it opens: through channels, and over lips
//     .tallest(hollow, level, w)   the greatest height of a rectangle w wide in it
#ifndef TURNCLOTH_MAKING_DETAIL_HOLLOWS_HPP
#define TURNCLOTH_MAKING_DETAIL_HOLLOWS_HPP

#include <turncloth/making/detail/gaps.hpp>

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <iterator>
#include <limits>
#include <optional>
#include <span>
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

/// Numbered things, each in one of many groups: a list for each group, without storage of its own.
class chains {
public:
    chains() = default;
    chains(std::size_t groups, std::size_t things) : first_(groups, none), next_(things, none) {}

    void put_first(std::size_t thing, std::size_t group) {
        next_[thing] = first_[group];
        first_[group] = static_cast<std::uint32_t>(thing);
    }
    std::size_t first_in(std::size_t group) const { return there(first_[group]); }
    std::size_t after(std::size_t thing) const { return there(next_[thing]); } ///< nowhere after the last

private:
    static constexpr std::uint32_t none = std::numeric_limits<std::uint32_t>::max();
    static std::size_t there(std::uint32_t thing) { return thing == none ? nowhere : thing; }

    std::vector<std::uint32_t> first_{}, next_{};
};

template <class Use>
class lazy_hollows {
public:
    using cells = lazy_cells<Use>;
    using gaps = lazy_gaps<Use>;

    lazy_hollows(const lazy_workbench<Use>& bench, std::size_t root, const std::vector<sewn_row>& rows,
                 const std::vector<stated_mouth>& mouths, whole lips)
        : bench_(bench), stack_(bench.stack_of(root)), lips_(lips) {
        const flat_design& design = bench.design();
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
        const spot at = bench_.body_of(part)->how(own);
        const auto& slabs = plane_->slabs();
        const auto beyond =
            std::upper_bound(slabs.begin(), slabs.end(), at.x, [](whole x, const slab& s) { return x < s.left; });
        if (beyond == slabs.begin() || at.x >= std::prev(beyond)->right)
            return {};
        const slab& one = *std::prev(beyond);
        const auto below = std::partition_point(one.levels.begin(), one.levels.end(),
                                                [&](const level& l) { return above(one, l, at); });
        if (below == one.levels.begin() || below == one.levels.end())
            return {};
        return gap_between(static_cast<std::size_t>(&one - slabs.data()),
                           static_cast<std::size_t>(below - one.levels.begin()) - 1, part, other);
    }

    std::vector<opening> openings(std::size_t hollow) {
        std::vector<opening> found;
        std::vector<std::size_t> way = {hollow}; // the hollow itself, then channels that it goes on into
        for (std::size_t i = 0; i < way.size(); ++i)
            for (std::size_t n = ends_.first_in(way[i]); n != nowhere; n = ends_.after(n)) {
                const passage& p = gaps_->passages()[n / 2];
                const std::size_t to = gaps_->hollow_of(n % 2 == 0 ? p.other : p.gap);
                if (to == hollow || std::find(way.begin(), way.end(), to) != way.end())
                    continue;
                const std::span<const std::size_t> mouths = gaps_->mouths_at(p);
                if (gaps_->is_channel(to))
                    way.push_back(to);
                else
                    found.push_back({gaps_->border_of(p), {mouths.begin(), mouths.end()}, to != 0 && !is_lip(to)});
            }
        return joined(std::move(found));
    }

    /// `w` along x where `level`, else along y; nothing where no such rectangle is w wide.
    whole tallest(std::size_t hollow, bool level, whole w) const {
        // Rectangles are looked for over runs of slabs. Where the width runs along x a run must be w wide and the height
        // is as far as all its slabs are open; where it runs along y, openings must be w high, and the run is the height.
        whole best = 0;
        const std::vector<border> parted = barriers_of(hollow);
        const std::vector<column> all = columns_of(hollow, parted);
        for (std::size_t first = 0; first < all.size(); ++first) {
            std::vector<stretch> open = all[first].open;
            for (std::size_t last = first; !open.empty(); ++last) {
                const whole right = all[last].right, run = right - all[first].left;
                for (const stretch& o : open)
                    if (const whole far = o.to - o.from; level ? run >= w : far >= w)
                        best = std::max(best, level ? far : run);
                if (last + 1 == all.size() || all[last + 1].left != right || (level && run >= w))
                    break;
                open = both(without(std::move(open), parted, right), all[last + 1].open);
            }
        }
        return best;
    }

private:
    /// What of a hollow lies in one slab: stretches that are open all across it.
    struct column {
        whole left = 0, right = 0;
        std::vector<stretch> open{};
    };

    static flat_line line_of(std::size_t part, const bounds& cut) {
        const bool level = cut.top == cut.bottom;
        return {part, {level, level ? cut.top : cut.left}, level ? cut.left : cut.top, level ? cut.right : cut.bottom};
    }
    static bool above(const slab& s, const level& l, const spot& at) {
        return int128{l.left} * (s.right - s.left) + int128{l.right - l.left} * (at.x - s.left) <=
               int128{at.y} * (s.right - s.left);
    }

    void index() {
        members_ = chains(gaps_->count(), gaps_->count());
        for (std::size_t gap = gaps_->count(); gap-- > 1;)
            members_.put_first(gap, gaps_->hollow_of(gap));
        const auto& ways = gaps_->passages();
        ends_ = chains(gaps_->count(), 2 * ways.size());
        for (std::size_t n = 0; n < ways.size(); ++n) {
            ends_.put_first(2 * n, gaps_->hollow_of(ways[n].gap));
            ends_.put_first(2 * n + 1, gaps_->hollow_of(ways[n].other));
        }
        const auto& parted = gaps_->barriers();
        barriers_ = chains(gaps_->count(), parted.size());
        for (std::size_t n = 0; n < parted.size(); ++n)
            if (const std::size_t h = gaps_->hollow_of(parted[n].gap); h == gaps_->hollow_of(parted[n].other))
                barriers_.put_first(n, h);
    }

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

    /// Open to the outside, and nowhere deeper than lips are from where it is. Found once for each hollow.
    bool is_lip(std::size_t hollow) {
        if (lip_.empty())
            lip_.resize(gaps_->count());
        if (!lip_[hollow])
            lip_[hollow] = is_near_outside(hollow);
        return *lip_[hollow];
    }
    bool is_near_outside(std::size_t hollow) const {
        std::vector<border> open;
        for (std::size_t n = ends_.first_in(hollow); n != nowhere; n = ends_.after(n))
            if (gaps_->passages()[n / 2].other == 0)
                open.push_back(gaps_->border_of(gaps_->passages()[n / 2]));
        const auto near_one = [&](const spot& p) {
            return std::any_of(open.begin(), open.end(), [&](const border& b) {
                const whole dx =
                    std::max({std::min(b.from.x, b.to.x) - p.x, p.x - std::max(b.from.x, b.to.x), whole{0}});
                const whole dy =
                    std::max({std::min(b.from.y, b.to.y) - p.y, p.y - std::max(b.from.y, b.to.y), whole{0}});
                return dx <= lips_ && dy <= lips_;
            });
        };
        for (std::size_t gap = members_.first_in(hollow); gap != nowhere; gap = members_.after(gap)) {
            for (auto [s, k] = gaps_->where(gap); k != nowhere; k = gaps_->like().then(s++, k)) {
                const slab& one = plane_->slabs()[s];
                for (const level& l : {one.levels[k], one.levels[k + 1]})
                    if (!near_one({one.left, l.left}) || !near_one({one.right, l.right}))
                        return false;
            }
        }
        return true;
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

    std::vector<border> barriers_of(std::size_t hollow) const {
        std::vector<border> found;
        for (std::size_t n = barriers_.first_in(hollow); n != nowhere; n = barriers_.after(n))
            found.push_back(gaps_->border_of(gaps_->barriers()[n]));
        return found;
    }
    /// Neighbouring cells of one slab that nothing parts, each as far as it is open all across.
    std::vector<column> columns_of(std::size_t hollow, const std::vector<border>& blocked) const {
        std::vector<std::pair<std::size_t, std::size_t>>
            there; // slabs and cells, from left to right and from the top down
        for (std::size_t gap = members_.first_in(hollow); gap != nowhere; gap = members_.after(gap))
            for (auto [s, k] = gaps_->where(gap); k != nowhere; k = gaps_->like().then(s++, k))
                there.emplace_back(s, k);
        std::sort(there.begin(), there.end());
        std::vector<column> all;
        for (const auto& [s, k] : there) {
            const slab& one = plane_->slabs()[s];
            if (all.empty() || all.back().left != one.left)
                all.push_back({one.left, one.right, {}});
            std::vector<stretch>& open = all.back().open;
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
        return all;
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
    whole lips_;
    std::vector<std::optional<bool>> lip_{}; ///< each hollow, where it was asked for
    std::vector<bound_row> bound_{};
    std::vector<opened_line> opened_{};
    std::vector<std::size_t> torn_{};
    std::optional<cells> plane_{};
    std::optional<gaps> gaps_{};
    chains members_{};  ///< gaps of each hollow, the lowest first
    chains ends_{};     ///< of passages, in each hollow: 2 n and 2 n + 1 are those of passage n
    chains barriers_{}; ///< within each hollow
};
using hollows = lazy_hollows<void>;

} // namespace turncloth::detail::flat_work

#endif
