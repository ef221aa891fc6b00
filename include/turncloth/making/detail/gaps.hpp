// Gaps between plies, flooded into hollows, and the passages by which hollows open.
//
//   class gaps(cells, rows, opened)     rows: what is held together; opened: slits, zippers, mouths
//     .gap_between(slab, k, i)          in that cell, the gap between its plies i and i + 1
//     .hollow_of(gap)                   gaps of one hollow have one number; outside is 0
//     .walls_of(gap)                    the two walls, the smaller number first
//     .passages()                       where a hollow goes on into another or outside
//     .barriers()                       where two gaps of like walls are parted
//
// At the border of two cells: a ply over both parts what lies below it from what lies above, unless it is opened there. A
// ply that ends there parts nothing, unless it is folded: cloth that goes on beyond the border lies back over the same
// side, and closes all heights from the one ply to the other; what lies in one fold is linked round the edges that end
// in it. A row closes all heights from the lowest to the highest
// ply that it holds. Between plies over both, what is left unclosed on either side is linked. Linked gaps of the same two
// walls are one hollow; linked gaps of other walls are a passage.
#ifndef TURNCLOTH_MAKING_DETAIL_GAPS_HPP
#define TURNCLOTH_MAKING_DETAIL_GAPS_HPP

#include <turncloth/making/detail/bound.hpp>
#include <turncloth/making/detail/cells.hpp>

#include <algorithm>
#include <array>
#include <cstddef>
#include <cstdint>
#include <map>
#include <numeric>
#include <span>
#include <utility>
#include <vector>

namespace turncloth::detail::flat_work {

struct border {
    spot from, to;
};
struct passage {
    std::size_t gap = 0, other = 0; ///< 0: outside
    border at{};
    std::size_t mouth = nowhere; ///< where a mouth is stated that ends the hollow here
};

template <class Use>
class lazy_gaps {
public:
    using cells = lazy_cells<Use>;

    lazy_gaps(const cells& plane, std::span<const bound_row> rows, std::span<const opened_line> opened)
        : plane_(&plane) {
        number_gaps();
        for (const bound_row& r : rows)
            rows_[{r.at.level, r.at.at}].push_back(&r);
        for (const opened_line& o : opened)
            opened_[{o.at.level, o.at.at}].push_back(&o);
        for (std::size_t s = 0; s < plane.slabs().size(); ++s) {
            cross_levels(s);
            if (s > 0)
                cross_upright(s);
        }
        if (!plane.slabs().empty())
            cross_ends();
    }

    std::size_t count() const { return gap_walls_.size(); }
    std::size_t gap_between(std::size_t in, std::size_t k, std::size_t i) const { return first_[in][k] + i; }
    std::size_t hollow_of(std::size_t gap) const {
        while (up_[gap] != gap)
            gap = up_[gap];
        return gap;
    }
    std::pair<std::size_t, std::size_t> walls_of(std::size_t gap) const { return gap_walls_[gap]; }
    bool is_channel(std::size_t gap) const { return gap != 0 && gap_walls_[gap].first == gap_walls_[gap].second; }
    const std::vector<passage>& passages() const { return passages_; }
    const std::vector<passage>& barriers() const { return barriers_; }
    const cells& plane() const { return *plane_; }

private:
    using plies = std::span<const std::uint32_t>;
    struct closed {
        std::uint32_t low, high;
    };
    struct side {
        plies over;
        std::size_t first; ///< number of its lowest gap
    };

    void number_gaps() {
        gap_walls_.push_back({nowhere, nowhere}); // outside
        const auto& all = plane_->of().plies;
        for (std::size_t s = 0; s < plane_->slabs().size(); ++s) {
            first_.emplace_back();
            for (std::size_t k = 0; k < plane_->slabs()[s].cell_count(); ++k) {
                first_[s].push_back(gap_walls_.size());
                const plies over = plane_->plies(s, k);
                for (std::size_t i = 0; i + 1 < over.size(); ++i)
                    gap_walls_.push_back(std::minmax({all[over[i]].wall, all[over[i + 1]].wall}));
            }
        }
        up_.resize(gap_walls_.size());
        std::iota(up_.begin(), up_.end(), std::size_t{0});
    }

    side side_of(std::size_t s, std::size_t k) const {
        if (s >= plane_->slabs().size() || k >= plane_->slabs()[s].cell_count())
            return {{}, 0};
        return {plane_->plies(s, k), first_[s][k]};
    }

    /// Borders within a slab, and above its first cell and below its last.
    void cross_levels(std::size_t s) {
        const slab& one = plane_->slabs()[s];
        for (std::size_t k = 0; k < one.levels.size(); ++k) {
            const level& l = one.levels[k];
            const side above = k == 0 ? side{{}, 0} : side_of(s, k - 1), below = side_of(s, k);
            if (above.over.empty() && below.over.empty())
                continue;
            const border at{{one.left, l.left}, {one.right, l.right}};
            if (l.left == l.right)
                gather({true, l.left}, {one.left, one.right});
            else
                clear();
            meet(above, below, at);
        }
    }

    /// The border between slab s - 1 and slab s: stretches between all the levels that end there, and all ends of rows
    /// and slits.
    void cross_upright(std::size_t s) {
        const slab &a = plane_->slabs()[s - 1], &b = plane_->slabs()[s];
        std::vector<whole> stops;
        for (const level& l : a.levels)
            stops.push_back(l.right);
        for (const level& l : b.levels)
            stops.push_back(l.left);
        add_stops({false, b.left}, stops);
        std::sort(stops.begin(), stops.end());
        stops.erase(std::unique(stops.begin(), stops.end()), stops.end());
        std::size_t in_a = 0, in_b = 0;
        for (std::size_t i = 0; i + 1 < stops.size(); ++i) {
            while (in_a < a.levels.size() && a.levels[in_a].right <= stops[i])
                ++in_a;
            while (in_b < b.levels.size() && b.levels[in_b].left <= stops[i])
                ++in_b;
            across_upright(s, in_a, in_b, {stops[i], stops[i + 1]});
        }
    }
    /// `in_a` and `in_b` are how many levels of each slab lie above the stretch.
    void across_upright(std::size_t s, std::size_t in_a, std::size_t in_b, const stretch& run) {
        const side left = in_a == 0 ? side{{}, 0} : side_of(s - 1, in_a - 1),
                   right = in_b == 0 || s == plane_->slabs().size() ? side{{}, 0} : side_of(s, in_b - 1);
        if (left.over.empty() && right.over.empty())
            return;
        const whole x = s == plane_->slabs().size() ? plane_->slabs().back().right : plane_->slabs()[s].left;
        gather({false, x}, run);
        meet(left, right, {{x, run.from}, {x, run.to}});
    }
    /// Left of the first slab and right of the last.
    void cross_ends() {
        const auto each = [&](whole x, auto y_of, const slab& one, auto across) {
            std::vector<whole> stops;
            for (const level& l : one.levels)
                stops.push_back(y_of(l));
            add_stops({false, x}, stops);
            std::sort(stops.begin(), stops.end());
            stops.erase(std::unique(stops.begin(), stops.end()), stops.end());
            std::size_t in = 0;
            for (std::size_t i = 0; i + 1 < stops.size(); ++i) {
                while (in < one.levels.size() && y_of(one.levels[in]) <= stops[i])
                    ++in;
                across(in, stretch{stops[i], stops[i + 1]});
            }
        };
        const auto& all = plane_->slabs();
        each(
            all.front().left, [](const level& l) { return l.left; }, all.front(),
            [&](std::size_t in, stretch run) {
                if (in == 0)
                    return;
                gather({false, all.front().left}, run);
                meet({{}, 0}, side_of(0, in - 1), {{all.front().left, run.from}, {all.front().left, run.to}});
            });
        each(
            all.back().right, [](const level& l) { return l.right; }, all.back(),
            [&](std::size_t in, stretch run) { across_upright(all.size(), in, 0, run); });
    }

    using key = std::pair<bool, whole>;
    void add_stops(const table_line& at, std::vector<whole>& stops) const {
        const auto add = [&](const auto& map) {
            if (const auto found = map.find(key{at.level, at.at}); found != map.end())
                for (const auto* r : found->second)
                    stops.insert(stops.end(), {r->run.from, r->run.to});
        };
        add(rows_);
        add(opened_);
    }
    void clear() {
        closed_.clear();
        cut_.clear();
        cut_mouth_ = nowhere;
        mouths_.clear();
    }
    /// What closes and what opens all along the stretch.
    void gather(const table_line& at, const stretch& run) {
        clear();
        if (const auto found = rows_.find(key{at.level, at.at}); found != rows_.end())
            for (const bound_row* r : found->second)
                if (r->run.from <= run.from && run.to <= r->run.to)
                    closed_.push_back({r->low, r->high});
        if (const auto found = opened_.find(key{at.level, at.at}); found != opened_.end())
            for (const opened_line* o : found->second)
                if (o->run.from <= run.from && run.to <= o->run.to) {
                    if (o->cuts) {
                        cut_.push_back(o->ply);
                        cut_mouth_ = o->mouth != nowhere ? o->mouth : cut_mouth_;
                    } else
                        mouths_.push_back(o);
                }
    }

    bool is_cut(std::uint32_t p) const { return std::find(cut_.begin(), cut_.end(), p) != cut_.end(); }
    static bool has(plies over, std::uint32_t p) { return std::binary_search(over.begin(), over.end(), p); }

    void meet(const side& a, const side& b, const border& at) {
        folds_a_.clear();
        close_folds(a.over, b.over, at, folds_a_);
        folds_b_.clear();
        close_folds(b.over, a.over, at, folds_b_);
        std::size_t i = 0, j = 0;
        for (;;) { // one band after another, from the bottom up
            band_.clear();
            shut_.clear();
            const bool more_a = collect(a, b.over, folds_a_, i, at), more_b = collect(b, a.over, folds_b_, j, at);
            link(band_, at);
            part(at);
            if (!more_a || !more_b)
                return;
        }
    }
    /// A ply that ends here and goes on in another of the same side, which ends here too.
    void close_folds(plies here, plies there, const border& at, std::vector<closed>& out) const {
        const auto& all = plane_->of().plies;
        for (std::size_t i = 0; i < here.size(); ++i) {
            if (has(there, here[i]) || is_cut(here[i]))
                continue;
            const lie back = inverse(all[here[i]].how);
            for (std::size_t k = i + 1; k < here.size(); ++k) {
                if (all[here[k]].part != all[here[i]].part || has(there, here[k]))
                    continue;
                const lie other = inverse(all[here[k]].how);
                if (back(at.from) == other(at.from) && back(at.to) == other(at.to))
                    out.push_back({here[i], here[k]});
            }
        }
    }
    /// The gaps of a side from its gap `i` up to the next ply that is over both; returns whether there is one. Those in
    /// a fold of this side are linked with what lies in the same fold alone: the narrowest that holds them.
    bool collect(const side& s, plies there, const std::vector<closed>& folds, std::size_t& i, const border& at) {
        folded_.clear();
        for (;; ++i) {
            const bool inner = i > 0 && i < s.over.size();
            const std::size_t gap = inner ? s.first + i - 1 : 0;
            const auto closes = [&](const closed& c) { return inner && c.low <= s.over[i - 1] && s.over[i] <= c.high; };
            const closed* narrowest = nullptr;
            for (const closed& c : folds)
                if (closes(c) && (narrowest == nullptr || here(s, c) < here(s, *narrowest)))
                    narrowest = &c;
            if (narrowest != nullptr || std::any_of(closed_.begin(), closed_.end(), closes))
                shut_.push_back(gap);
            else
                band_.push_back(gap);
            if (narrowest != nullptr && std::none_of(closed_.begin(), closed_.end(), closes))
                folded_.emplace_back(narrowest, gap);
            const bool ends = i >= s.over.size();
            if (ends || (has(there, s.over[i]) && !is_cut(s.over[i]))) {
                link_folded(at);
                i += ends ? 0 : 1;
                return !ends;
            }
        }
    }
    /// How many plies lie here from end to end of it.
    static std::ptrdiff_t here(const side& s, const closed& c) {
        return std::upper_bound(s.over.begin(), s.over.end(), c.high) -
               std::lower_bound(s.over.begin(), s.over.end(), c.low);
    }
    void link_folded(const border& at) {
        for (const auto& [fold, gap] : folded_) {
            in_fold_.clear();
            for (const auto& [other, another] : folded_)
                if (other == fold)
                    in_fold_.push_back(another);
            if (in_fold_.front() == gap) // each fold once
                link(in_fold_, at);
        }
    }

    void link(std::vector<std::size_t>& list, const border& at) {
        std::sort(list.begin(), list.end());
        list.erase(std::unique(list.begin(), list.end()), list.end());
        for (std::size_t i = 0; i < list.size(); ++i)
            for (std::size_t j = i + 1; j < list.size(); ++j)
                link(list[j], list[i], at); // outside, which is 0, comes first in order, so second here
    }
    void part(const border& at) {
        for (const std::size_t one : shut_)
            for (const std::vector<std::size_t>* list : {&shut_, &band_})
                for (const std::size_t other : *list)
                    if (one != other && other != 0 && gap_walls_[one] == gap_walls_[other] &&
                        (one < other || list == &band_))
                        barriers_.push_back({std::min(one, other), std::max(one, other), at, nowhere});
    }
    void link(std::size_t one, std::size_t other, const border& at) {
        const std::size_t mouth = mouth_of(one);
        if (gap_walls_[one] != gap_walls_[other])
            passages_.push_back({one, other, at, mouth != nowhere ? mouth : cut_mouth_});
        else if (mouth != nowhere) {
            passages_.push_back({one, 0, at, mouth});
            passages_.push_back({other, 0, at, mouth});
        } else
            join(one, other);
    }
    /// A stated mouth, if it is on one of the two walls of the gap.
    std::size_t mouth_of(std::size_t gap) const {
        const auto& all = plane_->of().plies;
        for (const opened_line* o : mouths_)
            if (const std::size_t wall = all[o->ply].wall;
                wall == gap_walls_[gap].first || wall == gap_walls_[gap].second)
                return o->mouth;
        return nowhere;
    }
    void join(std::size_t one, std::size_t other) {
        const auto top = [&](std::size_t g) {
            while (up_[g] != g)
                g = up_[g] = up_[up_[g]];
            return g;
        };
        one = top(one);
        other = top(other);
        up_[std::max(one, other)] = std::min(one, other);
    }

    const cells* plane_;
    std::vector<std::vector<std::size_t>> first_{}; ///< number of the lowest gap of each cell
    std::vector<std::pair<std::size_t, std::size_t>> gap_walls_{};
    std::vector<std::size_t> up_{};
    std::map<key, std::vector<const bound_row*>> rows_{};
    std::map<key, std::vector<const opened_line*>> opened_{};
    std::vector<passage> passages_{}, barriers_{};
    // While one border is looked at.
    std::vector<closed> closed_{}, folds_a_{}, folds_b_{};
    std::vector<std::uint32_t> cut_{};
    std::size_t cut_mouth_ = nowhere;
    std::vector<const opened_line*> mouths_{};
    std::vector<std::size_t> band_{}, shut_{}, in_fold_{};
    std::vector<std::pair<const closed*, std::size_t>> folded_{};
};
using gaps = lazy_gaps<void>;

} // namespace turncloth::detail::flat_work

#endif
