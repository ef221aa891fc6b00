// Gaps between plies, flooded into hollows, and the passages by which hollows open.
//
//   class gaps(cells, rows, opened)     rows: what is held together; opened: slits, zippers, mouths
//     .gap_between(slab, k, i)          in that cell, the gap between its plies i and i + 1, numbered from 1
//     .hollow_of(gap)                   gaps of one hollow have one number; outside is 0
//     .where(gap)                       the first slab and the cell in it over which it is
//     .walls_of(gap)                    the two walls, the smaller number first
//     .like()                           which cells go on from slab to slab with the same gaps (detail/like_cells.hpp)
//     .passages()                       where a hollow goes on into another or outside
//     .barriers()                       where two gaps of like walls are parted
//     .border_of(passage)               where it lies; .mouths_at(passage) the stated mouths on whose lines, in order
//
// At the border of two cells: a ply over both parts what lies below it from what lies above, unless it is opened there. A
// ply that ends there parts nothing, unless it is folded: cloth that goes on beyond the border lies back over the same
// side, and closes all heights from the one ply to the other; what lies in one fold is linked round the edges that end
// in it. A row closes all heights from the lowest to the highest ply that it holds. Between plies over both, what is left
// unclosed on either side is linked. Linked gaps of the same two walls are one hollow; linked gaps of other walls are a
// passage. Every border is met once, from its one end to its other, with the lines that run along it. Of cells that go on from
// slab to slab only the first has gaps of its own; where two such meet along a level with no line beside it nothing is done again.
#ifndef TURNCLOTH_MAKING_DETAIL_GAPS_HPP
#define TURNCLOTH_MAKING_DETAIL_GAPS_HPP

#include <turncloth/making/detail/held.hpp>
#include <turncloth/making/detail/like_cells.hpp>

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <iterator>
#include <limits>
#include <span>
#include <utility>
#include <vector>

namespace turncloth::detail::flat_work {

template <class Use>
class lazy_gaps {
public:
    using cells = lazy_cells<Use>;
    using walls = std::pair<std::uint32_t, std::uint32_t>;

    lazy_gaps(const cells& plane, std::span<const bound_row> rows, std::span<const opened_line> opened)
        : plane_(&plane), lines_(plane, rows, opened), like_(plane, lines_) {
        for (const ply& p : plane.of().plies)
            back_.push_back({p.part, static_cast<std::uint32_t>(p.wall), inverse(p.how)});
        number_gaps();
        for (std::size_t s = 0; s < plane.slabs().size(); ++s) {
            cross_upright(s);
            cross_levels(s);
        }
        if (!plane.slabs().empty())
            cross_upright(plane.slabs().size());
        hollow_ = std::move(one_).lowest_with_each();
    }

    std::size_t count() const { return gap_walls_.size(); }
    std::size_t gap_between(std::size_t in, std::size_t k, std::size_t i) const {
        return first_[like_.number(in, k)] + i;
    }
    const lazy_like_cells<Use>& like() const { return like_; }
    std::size_t hollow_of(std::size_t gap) const { return hollow_[gap]; }
    std::pair<std::size_t, std::size_t> where(std::size_t gap) const {
        const auto beyond = std::upper_bound(starts_.begin(), starts_.end(), gap,
                                             [](std::size_t g, const start& cell) { return g < cell.gap; });
        return {std::prev(beyond)->slab, std::prev(beyond)->cell};
    }
    walls walls_of(std::size_t gap) const { return gap_walls_[gap]; }
    bool is_channel(std::size_t gap) const { return gap != 0 && gap_walls_[gap].first == gap_walls_[gap].second; }
    const std::vector<passage>& passages() const { return passages_; }
    const std::vector<passage>& barriers() const { return barriers_; }
    const border& border_of(const passage& p) const { return borders_[p.at].at; }
    std::span<const std::size_t> mouths_at(const passage& p) const {
        const met_border& b = borders_[p.at];
        return lines_.mouths().subspan(b.mouths_from, b.mouths_to - b.mouths_from);
    }
    const cells& plane() const { return *plane_; }

private:
    using plies = std::span<const std::uint32_t>;
    /// A cell that does not go on from the slab before, by the lowest gap over it.
    struct start {
        std::size_t gap = 0, slab = 0, cell = 0;
    };
    struct met_border {
        border at{};
        std::size_t mouths_from = 0, mouths_to = 0;
    };
    /// The border along a level, and by how many lines; it goes on from the slab before where none of them begins in
    /// this one, and none has ended.
    struct met_level {
        std::size_t border = 0, lines = 0;
        bool is_level = false, none_begins = false;
    };
    /// A ply that ends at a border and goes on in another of the cell, by their places in it.
    struct fold_over {
        std::size_t low = 0, high = 0;
    };
    /// Of a ply, how the table lies to its part's own spots; and its wall.
    struct ply_back {
        std::size_t part = 0;
        std::uint32_t wall = 0;
        lie how{};
    };
    /// The cell on one side of a border. Gap i lies beneath ply i; the lowest and the one above all are outside.
    struct side {
        plies over{};
        std::size_t first = 0; ///< number of gap 1
        std::vector<fold_over> folds{};
        std::size_t reached = 0; ///< the first gap not yet collected
        std::size_t end = 0;     ///< of the plies between the like ones beneath and above
    };

    void number_gaps() {
        gap_walls_.push_back({}); // outside
        gap_walls_.reserve(plane_->layer_count() + 1);
        first_.resize(plane_->cell_count());
        std::size_t cell = 0;
        for (std::size_t s = 0; s < plane_->slabs().size(); ++s)
            for (std::size_t k = 0; k < plane_->slabs()[s].cell_count(); ++k, ++cell) {
                const std::size_t j = like_.before(s, k);
                first_[cell] =
                    j == nowhere ? static_cast<std::uint32_t>(gap_walls_.size()) : first_[like_.number(s - 1, j)];
                const plies over = plane_->plies(s, k);
                if (j != nowhere || over.size() < 2)
                    continue;
                starts_.push_back({gap_walls_.size(), s, k});
                for (std::size_t i = 0; i + 1 < over.size(); ++i) {
                    const std::uint32_t low = back_[over[i]].wall, high = back_[over[i + 1]].wall;
                    gap_walls_.emplace_back(std::min(low, high), std::max(low, high));
                }
            }
        one_ = held(gap_walls_.size());
        borders_.reserve(2 * plane_->cell_count()); // about so many of each
        passages_.reserve(gap_walls_.size());
        barriers_.reserve(gap_walls_.size());
    }

    /// The border between slab s - 1 and slab s, or beside the first or the last: stretch by stretch between all the
    /// levels that end there, and all ends of lines.
    void cross_upright(std::size_t s) {
        const auto& slabs = plane_->slabs();
        const std::span<const level> a = s == 0 ? std::span<const level>() : slabs[s - 1].levels,
                                     b = s == slabs.size() ? std::span<const level>() : slabs[s].levels;
        const whole x = s == 0 ? slabs[0].left : slabs[s - 1].right;
        std::size_t in_a = 0, in_b = 0; // so many levels of each slab lie above the stretch
        lines_.begin_upright(s);
        for (whole y = std::numeric_limits<whole>::min();;) {
            while (in_a < a.size() && a[in_a].right <= y)
                ++in_a;
            while (in_b < b.size() && b[in_b].left <= y)
                ++in_b;
            if (in_a == a.size() && in_b == b.size())
                return;
            lines_.go_to(y);
            whole end = lines_.next_end();
            end = in_a < a.size() ? std::min(end, a[in_a].right) : end;
            end = in_b < b.size() ? std::min(end, b[in_b].left) : end;
            set(a_, s - 1, in_a);
            set(b_, s, in_b);
            if (a_.over.empty() || b_.over.empty() || like_.before(s, in_b - 1) != in_a - 1)
                meet({{x, y}, {x, end}});
            y = end;
        }
    }
    /// Borders within a slab, and above its first cell and below its last.
    void cross_levels(std::size_t s) {
        const slab& one = plane_->slabs()[s];
        lines_.begin_level(s);
        last_levels_.swap(levels_);
        levels_.resize(one.levels.size());
        for (std::size_t k = 0; k < one.levels.size(); ++k) {
            const level& l = one.levels[k];
            if (l.left == l.right)
                lines_.go_to(l.left);
            else
                lines_.leave();
            levels_[k] = {0, lines_.count(), l.left == l.right, !lines_.any_begins()};
            if (s > 0 && levels_[k].is_level && levels_[k].none_begins && is_met_already(s, k))
                continue;
            set(a_, s, k);
            set(b_, s, k + 1);
            levels_[k].border = borders_.size();
            meet({{one.left, l.left}, {one.right, l.right}});
        }
    }
    /// Whether the two cells beside a level go on from the slab before, where they met along it: that border goes on.
    bool is_met_already(std::size_t s, std::size_t k) {
        const bool lies_above = lies(s, k), lies_below = lies(s, k + 1);
        if (!lies_above && !lies_below)
            return false;
        const std::size_t above = lies_above ? like_.before(s, k - 1) : nowhere,
                          below = lies_below ? like_.before(s, k) : nowhere;
        if (lies_above ? above == nowhere : below == nowhere)
            return false;
        const std::size_t was = lies_above ? above + 1 : below; // the level in the slab before
        const met_level& last = last_levels_[was];
        if (!last.is_level || last.lines != levels_[k].lines ||
            (lies_above ? lies_below && below != was : lies(s - 1, was)) || (!lies_below && lies(s - 1, was + 1)))
            return false;
        levels_[k].border = last.border;
        borders_[levels_[k].border].at.to = {plane_->slabs()[s].right, plane_->slabs()[s].levels[k].right};
        return true;
    }
    /// Whether any ply lies below so many levels of a slab and above the next.
    bool lies(std::size_t s, std::size_t levels_above) const {
        return levels_above > 0 && levels_above < plane_->slabs()[s].levels.size() &&
               !plane_->plies(s, levels_above - 1).empty();
    }
    /// The cell of a slab below so many of its levels: none above the first level, and below the last.
    void set(side& one, std::size_t s, std::size_t levels_above) {
        one.over = {};
        if (levels_above > 0 && levels_above < plane_->slabs()[s].levels.size()) {
            one.over = plane_->plies(s, levels_above - 1);
            one.first = gap_between(s, levels_above - 1, 0);
        }
    }

    void meet(const border& at) {
        if (a_.over.empty() && b_.over.empty())
            return;
        borders_.push_back({at, lines_.mouths_from(), lines_.mouths().size()});
        // Most borders are the edge of one ply or two: what lies between the like plies beneath and above is looked at closely.
        const std::size_t a = a_.over.size(), b = b_.over.size(), most = std::min(a, b);
        const bool cuts = lines_.any_cuts();
        const auto goes_on = [&](std::uint32_t p, std::uint32_t q) { return p == q && !(cuts && lines_.cut(p)); };
        std::size_t beneath = 0, above = 0;
        while (beneath < most && goes_on(a_.over[beneath], b_.over[beneath]))
            ++beneath;
        while (above < most - beneath && goes_on(a_.over[a - 1 - above], b_.over[b - 1 - above]))
            ++above;
        if (beneath > 1)
            go_on(0, 0, beneath);
        if (beneath == a && beneath == b)
            return;
        a_.reached = b_.reached = beneath;
        a_.end = a - above;
        b_.end = b - above;
        meet_between(at);
        if (above > 1)
            go_on(a_.end, b_.end, above);
    }
    /// So many plies lie on both sides: each gap between them meets its like, and is one with it where no line runs.
    void go_on(std::size_t from_a, std::size_t from_b, std::size_t plies_on) {
        const bool plain = !lines_.any();
        for (std::size_t i = 1; i < plies_on; ++i) {
            const std::size_t one = a_.first + from_a + i - 1, other = b_.first + from_b + i - 1;
            if (plain)
                one_.join(one, other);
            else if (lines_.hold(a_.over[from_a + i - 1], a_.over[from_a + i]))
                barriers_.push_back(here(one, other));
            else
                link(one, other);
        }
    }
    /// One band after another, from the bottom up.
    void meet_between(const border& at) {
        a_.folds.clear();
        b_.folds.clear();
        if (a_.end - a_.reached > 1)
            find_folds(a_, b_, at);
        if (b_.end - b_.reached > 1)
            find_folds(b_, a_, at);
        for (bool more = true; more;) {
            const auto [to_a, to_b] = next_going_on();
            more = to_a < a_.end;
            open_.clear();
            shut_.clear();
            outside_ = is_outside(a_, to_a) || is_outside(b_, to_b);
            collect(a_, to_a);
            of_a_ = open_.size();
            collect(b_, to_b);
            link_open();
            part();
        }
    }
    /// A ply that ends here and goes on in another that does, with the border in the same own spots for both.
    void find_folds(side& s, const side& other, const border& at) {
        const auto ends = [&](std::uint32_t p) {
            const plies beyond = other.over.subspan(other.reached, other.end - other.reached);
            return std::find(beyond.begin(), beyond.end(), p) == beyond.end();
        };
        for (std::size_t i = s.reached; i + 1 < s.end; ++i) {
            const ply_back& low = back_[s.over[i]];
            for (std::size_t k = i + 1; k < s.end; ++k)
                if (const ply_back& high = back_[s.over[k]];
                    high.part == low.part && are_one_spot(low.how, high.how, at.from) &&
                    are_one_spot(low.how, high.how, at.to) && ends(s.over[i]) && ends(s.over[k]) &&
                    !lines_.cut(s.over[i]))
                    s.folds.push_back({i, k});
        }
    }
    /// The next ply that goes on, by its place on either side; their ends where none does.
    std::pair<std::size_t, std::size_t> next_going_on() const {
        for (std::size_t i = a_.reached, j = b_.reached; i < a_.end && j < b_.end;) {
            const std::uint32_t p = a_.over[i], q = b_.over[j];
            if (p == q && !lines_.cut(p))
                return {i, j};
            i += p <= q ? 1 : 0;
            j += q <= p ? 1 : 0;
        }
        return {a_.end, b_.end};
    }
    static bool is_outside(const side& s, std::size_t to) { return s.reached == 0 || to == s.over.size(); }
    /// The gaps of a side up to that ply. Those in a fold of this side are linked with what lies in the same fold alone:
    /// the narrowest that holds them.
    void collect(side& s, std::size_t to) {
        const std::size_t first = std::max<std::size_t>(s.reached, 1), end = std::min(to + 1, s.over.size());
        s.reached = to + 1;
        if (s.folds.empty() && !lines_.any()) {
            for (std::size_t i = first; i < end; ++i)
                open_.push_back(s.first + i - 1);
            return;
        }
        folded_.clear();
        for (std::size_t i = first; i < end; ++i)
            sort_out(s, i);
        for (std::size_t i = 0; i < folded_.size(); ++i)
            for (std::size_t j = 0; j < i; ++j)
                if (folded_[j].first == folded_[i].first)
                    link(folded_[j].second, folded_[i].second);
    }
    void sort_out(const side& s, std::size_t i) {
        const std::size_t gap = s.first + i - 1;
        const bool sewn = lines_.hold(s.over[i - 1], s.over[i]);
        const fold_over* narrowest = nullptr;
        for (const fold_over& f : s.folds)
            if (f.low < i && i <= f.high && (narrowest == nullptr || f.high - f.low < narrowest->high - narrowest->low))
                narrowest = &f;
        (sewn || narrowest != nullptr ? shut_ : open_).push_back(gap);
        if (narrowest != nullptr && !sewn)
            folded_.emplace_back(narrowest, gap);
    }

    void link_open() {
        for (std::size_t i = 0; i < open_.size(); ++i)
            for (std::size_t j = i + 1; j < open_.size(); ++j)
                if (!around(i, j))
                    link(open_[i], open_[j]);
        if (outside_)
            for (const std::size_t gap : open_)
                passages_.push_back(here(gap, 0));
    }
    /// A fold or a tube that opens beside another gap is reached from that round the ply between, by what lies beyond.
    bool around(std::size_t i, std::size_t j) const {
        const bool beyond = outside_ || (j < of_a_ ? of_a_ < open_.size() : of_a_ > 0);
        return (i < of_a_) == (j < of_a_) && beyond && (is_channel(open_[i]) || is_channel(open_[j]));
    }
    void link(std::size_t one, std::size_t other) {
        if (gap_walls_[one] != gap_walls_[other]) {
            passages_.push_back(here(one, other));
        } else if (lines_.any() && lines_.end_hollow(gap_walls_[one])) {
            passages_.push_back(here(one, 0));
            passages_.push_back(here(other, 0));
        } else {
            one_.join(one, other);
        }
    }
    passage here(std::size_t one, std::size_t other) const {
        return {static_cast<std::uint32_t>(one), static_cast<std::uint32_t>(other),
                static_cast<std::uint32_t>(borders_.size() - 1)};
    }
    /// What is shut is parted from all that it would be one hollow with.
    void part() {
        for (std::size_t i = 0; i < shut_.size(); ++i) {
            for (std::size_t j = i + 1; j < shut_.size(); ++j)
                part(shut_[i], shut_[j]);
            for (const std::size_t other : open_)
                part(shut_[i], other);
        }
    }
    void part(std::size_t one, std::size_t other) {
        if (gap_walls_[one] == gap_walls_[other])
            barriers_.push_back(here(one, other));
    }

    const cells* plane_;
    lazy_border_lines<Use> lines_;
    lazy_like_cells<Use> like_;
    std::vector<std::uint32_t> first_{}; ///< number of the lowest gap of each cell, slab by slab
    std::vector<start> starts_{};        ///< of cells that have any gap
    std::vector<walls> gap_walls_{};
    held one_{0};                       ///< while borders are met
    std::vector<std::size_t> hollow_{}; ///< each by its lowest gap
    std::vector<ply_back> back_{};
    std::vector<met_border> borders_{};
    std::vector<met_level> levels_{}, last_levels_{}; ///< of this slab, and of the one before
    std::vector<passage> passages_{}, barriers_{};
    // While one border is looked at.
    side a_{}, b_{};
    std::vector<std::size_t> open_{}, shut_{};
    std::size_t of_a_ = 0; ///< so many of what is open lie on the one side
    bool outside_ = false;
    std::vector<std::pair<const fold_over*, std::size_t>> folded_{};
};
using gaps = lazy_gaps<void>;

} // namespace turncloth::detail::flat_work

#endif
