// The plane under a stack, cut into cells over which the same plies lie.
//
//   class cells(stack, holes, lines)      lines: stretches at which cells are to end as well (rows, slits, mouths)
//     .slabs()  .plies(slab, k)           upright slabs from left to right; cells in one from the top down
//   struct line_on_table                  a stretch of a level or upright line
//
// A slab reaches from one x at which anything begins, ends or crosses to the next; inside it no two sides cross, so they
// have an order, and a cell lies between each and the next. Beyond the first and the last lies nothing.
#ifndef TURNCLOTH_MAKING_DETAIL_CELLS_HPP
#define TURNCLOTH_MAKING_DETAIL_CELLS_HPP

#include <turncloth/making/detail/stack.hpp>

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <limits>
#include <numeric>
#include <span>
#include <utility>
#include <vector>

namespace turncloth::detail::flat_work {

struct line_on_table {
    table_line at{};
    stretch run{};
};

/// A side that crosses a slab: its y at the slab's left and at its right. Sides of one slab do not cross, so their sums
/// order them, and equal sums are one side.
struct level {
    whole left = 0, right = 0;
    constexpr whole sum() const { return left + right; }
    friend constexpr bool operator==(const level&, const level&) = default;
};

struct slab {
    whole left = 0, right = 0;
    std::vector<level> levels{};
    std::size_t cells_before = 0; ///< in the slabs to the left
    std::size_t cell_count() const { return levels.empty() ? 0 : levels.size() - 1; }
};

template <class>
class lazy_cells {
public:
    lazy_cells(const stack& s, const std::vector<std::vector<bounds>>& holes, std::span<const line_on_table> lines)
        : stack_(&s) {
        gather_sides(s, holes, lines);
        make_slabs();
        covered_.reserve(4 * cell_count()); // most cells lie under about so many plies
        for (std::size_t i = 0; i < s.plies.size(); ++i)
            cover(i);
        set_down();
    }

    /// Where all sides are level, a slab's levels are found by their heights in a table of slabs and heights. It would grow
    /// with the square of the pieces: beyond so many entries they are searched for.
    static constexpr std::size_t most_tabled = std::size_t{1} << 20;

    const stack& of() const { return *stack_; }
    const std::vector<slab>& slabs() const { return slabs_; }
    std::span<const std::uint32_t> plies(std::size_t in, std::size_t k) const {
        const std::size_t cell = slabs_[in].cells_before + k;
        return {over_.data() + first_[cell], over_.data() + first_[cell + 1]};
    }
    std::size_t cell_count() const {
        return slabs_.empty() ? 0 : slabs_.back().cells_before + slabs_.back().cell_count();
    }
    std::size_t layer_count() const { return over_.size(); } ///< plies over all cells
    /// The slab that begins at x, which is where one begins or where the last ends.
    std::size_t slab_from(whole x) const {
        const auto at =
            std::lower_bound(slabs_.begin(), slabs_.end(), x, [](const slab& s, whole left) { return s.left < left; });
        return static_cast<std::size_t>(at - slabs_.begin());
    }

private:
    /// A side that is not upright, from left to right.
    struct side {
        spot from, to;
        whole slope() const { return to.y > from.y ? 1 : to.y < from.y ? -1 : 0; }
        whole at(whole x) const { return from.y + slope() * (x - from.x); }
    };
    using range = std::pair<std::size_t, std::size_t>;
    /// A ply over a cell, by its number among those of all slabs.
    struct covered {
        std::uint32_t ply, cell;
    };

    template <class Do>
    static void each_side(const cell& area, Do todo) {
        for (std::size_t i = 0; i < area.size(); ++i) {
            const spot &p = area[i], &q = area[i + 1 == area.size() ? 0 : i + 1];
            if (p.x != q.x)
                todo(p.x < q.x ? side{p, q} : side{q, p});
        }
    }

    void gather_sides(const stack& s, const std::vector<std::vector<bounds>>& holes,
                      std::span<const line_on_table> lines) {
        holes_.resize(s.plies.size());
        for (std::size_t i = 0; i < s.plies.size(); ++i) {
            each_side(s.plies[i].area, [&](const side& one) { note(one); });
            const bounds round = bounds_of(s.plies[i].area);
            for (const bounds& own : holes[s.plies[i].part])
                if (const bounds h = carried(own, s.plies[i].how); !h.is_nothing() && overlap(h, round)) {
                    holes_[i].push_back(h);
                    note({{h.left, h.top}, {h.right, h.top}});
                    note({{h.left, h.bottom}, {h.right, h.bottom}});
                }
        }
        for (const line_on_table& l : lines)
            if (l.at.level)
                note({{l.run.from, l.at.at}, {l.run.to, l.at.at}});
            else
                stops_.push_back(l.at.at);
    }
    void note(const side& s) {
        stops_.insert(stops_.end(), {s.from.x, s.to.x});
        (s.slope() == 0 ? level_sides_ : slanting_sides_).push_back(s);
    }

    /// Where slanting sides meet level ones and each other.
    void stop_at_crossings() {
        for (std::size_t i = 0; i < slanting_sides_.size(); ++i) {
            const side& s = slanting_sides_[i];
            for (const side& l : level_sides_)
                stop_between(s, l, s.from.x + s.slope() * (l.from.y - s.from.y));
            for (std::size_t j = i + 1; j < slanting_sides_.size(); ++j)
                if (const side& o = slanting_sides_[j]; o.slope() != s.slope())
                    stop_between(s, o, (s.from.x + o.from.x + s.slope() * (o.from.y - s.from.y)) / 2);
        }
    }
    void make_slabs() {
        stop_at_crossings();
        const auto once = [](auto& list, auto less) {
            std::sort(list.begin(), list.end(), less);
            const auto same = [&](const auto& a, const auto& b) { return !less(a, b) && !less(b, a); };
            list.erase(std::unique(list.begin(), list.end(), same), list.end());
        };
        once(stops_, [](whole a, whole b) { return a < b; });
        // Taken from the top down, level sides come into each slab in order, and each once; slanting ones do not.
        std::sort(level_sides_.begin(), level_sides_.end(),
                  [](const side& a, const side& b) { return a.from.y < b.from.y; });
        for (const side& s : level_sides_)
            if (heights_.empty() || heights_.back() != s.from.y)
                heights_.push_back(s.from.y);
        for (std::size_t i = 0; i + 1 < stops_.size(); ++i) {
            slabs_.push_back({stops_[i], stops_[i + 1], {}, 0});
            slabs_.back().levels.reserve(std::min<std::size_t>(heights_.size(), 64)); // most slabs have most of them
        }
        if (slanting_sides_.empty() && slabs_.size() * heights_.size() <= most_tabled)
            at_height_.resize(slabs_.size() * heights_.size());
        std::size_t height = 0;
        for (const side& s : level_sides_) {
            height += heights_[height] != s.from.y ? 1 : 0;
            for (std::size_t k = slab_from(s.from.x); k < slabs_.size() && slabs_[k].right <= s.to.x; ++k)
                if (auto& levels = slabs_[k].levels; levels.empty() || levels.back().left != s.from.y) {
                    if (!at_height_.empty())
                        at_height_[k * heights_.size() + height] = static_cast<std::uint32_t>(levels.size());
                    levels.push_back({s.from.y, s.from.y});
                }
        }
        for (const side& s : slanting_sides_)
            for (std::size_t k = slab_from(s.from.x); k < slabs_.size() && slabs_[k].right <= s.to.x; ++k)
                slabs_[k].levels.push_back({s.at(slabs_[k].left), s.at(slabs_[k].right)});
        if (!slanting_sides_.empty())
            for (slab& s : slabs_)
                once(s.levels, [](const level& a, const level& b) { return a.sum() < b.sum(); });
        for (std::size_t k = 1; k < slabs_.size(); ++k)
            slabs_[k].cells_before = slabs_[k - 1].cells_before + slabs_[k - 1].cell_count();
    }
    void stop_between(const side& a, const side& b, whole x) {
        if (x > a.from.x && x < a.to.x && x > b.from.x && x < b.to.x)
            stops_.push_back(x);
    }
    void cover(std::size_t ply) {
        const cell& area = stack_->plies[ply].area;
        const bounds round = bounds_of(area);
        const bool by_height = !at_height_.empty() && area.is_upright();
        const std::size_t top = by_height ? height_of(round.top) : 0, bottom = by_height ? height_of(round.bottom) : 0;
        const bool without_holes = holes_[ply].empty();
        sides_.clear();
        if (!by_height)
            each_side(area, [&](const side& one) { sides_.push_back(one); });
        for (std::size_t k = slab_from(round.left); k < slabs_.size() && slabs_[k].right <= round.right; ++k) {
            const std::uint32_t* levels = at_height_.data() + k * heights_.size();
            const auto [first, end] = by_height ? range(levels[top], levels[bottom]) : across(slabs_[k]);
            for (std::size_t i = first; i < end; ++i)
                if (without_holes || !in_hole(ply, slabs_[k], i))
                    covered_.push_back(
                        {static_cast<std::uint32_t>(ply), static_cast<std::uint32_t>(slabs_[k].cells_before + i)});
        }
    }
    std::size_t height_of(whole y) const {
        return static_cast<std::size_t>(std::lower_bound(heights_.begin(), heights_.end(), y) - heights_.begin());
    }
    /// The cells of a slab that lie in the ply: between two of its sides, as it is convex. The first, and past the last.
    range across(const slab& s) const {
        whole upper = std::numeric_limits<whole>::max(), lower = std::numeric_limits<whole>::min();
        for (const side& e : sides_)
            if (e.from.x <= s.left && s.right <= e.to.x) {
                const whole sum = e.at(s.left) + e.at(s.right);
                upper = std::min(upper, sum);
                lower = std::max(lower, sum);
            }
        const auto index_of = [&](whole sum) {
            return std::lower_bound(s.levels.begin(), s.levels.end(), sum,
                                    [](const level& l, whole wanted) { return l.sum() < wanted; }) -
                   s.levels.begin();
        };
        return {static_cast<std::size_t>(index_of(upper)), static_cast<std::size_t>(index_of(lower))};
    }
    bool in_hole(std::size_t ply, const slab& s, std::size_t i) const {
        return std::any_of(holes_[ply].begin(), holes_[ply].end(), [&](const bounds& hole) {
            return hole.left <= s.left && s.right <= hole.right && 2 * hole.top <= s.levels[i].sum() &&
                   s.levels[i + 1].sum() <= 2 * hole.bottom;
        });
    }

    /// Counts each cell's plies, then sets them down; they come in the order of the stack.
    void set_down() {
        first_.assign(cell_count() + 2, 0);
        for (const covered& c : covered_)
            ++first_[c.cell + 2];
        std::partial_sum(first_.begin(), first_.end(), first_.begin());
        over_.resize(covered_.size());
        for (const covered& c : covered_)
            over_[first_[c.cell + 1]++] = c.ply;
        covered_ = {};
    }

    const stack* stack_;
    std::vector<std::vector<bounds>> holes_{}; ///< in each ply
    std::vector<side> level_sides_{}, slanting_sides_{};
    std::vector<side> sides_{}; ///< of the ply that is looked at
    std::vector<whole> stops_{};
    std::vector<slab> slabs_{};
    std::vector<whole> heights_{};           ///< of level sides, each once
    std::vector<std::uint32_t> at_height_{}; ///< slab by slab, the level at each height where it has one; or nothing
    std::vector<std::size_t> first_{};       ///< of each cell's plies, slab by slab, and the end
    std::vector<std::uint32_t> over_{};      ///< plies by their place in the stack, cell by cell, from the bottom up
    std::vector<covered> covered_{};         ///< while they are gathered
};
using cells = lazy_cells<void>;

} // namespace turncloth::detail::flat_work

#endif
