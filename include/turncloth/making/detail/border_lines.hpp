// Rows, slits and mouths by the borders of cells that they run along, met from one end of each border to the other.
//
//   struct border  passage                       where two cells meet; two gaps that meet there
//   class border_lines(cells, rows, opened)
//     .begin_upright(slab)  .begin_level(slab)     the border left of a slab, or right of the last; levels within one
//     .go_to(y)  .leave()                          on along the border; to where no line runs
//     .runs_between(slab, stretch)                 whether any runs along that stretch of the border left of a slab
//     .next_end()                                  where the lines beside the border change next
//     .count()  .any_begins()                      so many lines beside it, and whether one begins in this slab
//     .any()  .any_cuts()  .cut(ply)  .hold(low, high)  .end_hollow(walls)     of the lines beside it there
//     .mouths()  .mouths_from()                    all mouths met so far, those stated there last
#ifndef TURNCLOTH_MAKING_DETAIL_BORDER_LINES_HPP
#define TURNCLOTH_MAKING_DETAIL_BORDER_LINES_HPP

#include <turncloth/making/detail/bound.hpp>
#include <turncloth/making/detail/cells.hpp>

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <limits>
#include <span>
#include <utility>
#include <vector>

namespace turncloth::detail::flat_work {

struct border {
    spot from, to;
};
/// Two gaps that meet at a border, by their numbers and its own.
struct passage {
    std::uint32_t gap = 0, other = 0; ///< 0: outside
    std::uint32_t at = 0;             ///< the border
};

template <class Use>
class lazy_border_lines {
public:
    /// Every end of a line is one of the cells too.
    lazy_border_lines(const lazy_cells<Use>& plane, std::span<const bound_row> rows,
                      std::span<const opened_line> opened)
        : plane_(&plane), upright_(plane.slabs().size() + 1), level_(plane.slabs().size()) {
        std::vector<placed> all;
        all.reserve(rows.size() + opened.size());
        for (const bound_row& r : rows)
            all.push_back({r.at, r.run, &r, nullptr});
        for (const opened_line& o : opened)
            all.push_back({o.at, o.run, nullptr, &o});
        std::sort(all.begin(), all.end(), [](const placed& a, const placed& b) { return a.begins() < b.begins(); });
        for (std::vector<line>& list : level_)
            list.reserve(std::min<std::size_t>(all.size(), 64)); // level lines cross most slabs
        for (const placed& l : all)
            put(l);
    }

    bool runs_between(std::size_t slab, const stretch& there) const {
        return std::any_of(upright_[slab].begin(), upright_[slab].end(),
                           [&](const line& l) { return l.run.from < there.to && there.from < l.run.to; });
    }
    void begin_upright(std::size_t slab) { begin(upright_[slab]); }
    void begin_level(std::size_t slab) { begin(level_[slab]); }
    void go_to(whole y) {
        if (beside_.empty() && (to_come_.empty() || to_come_[0].run.from > y)) {
            mouths_from_ = mouths_.size();
            return;
        }
        const auto passed = [&](const line& l) { return l.run.to <= y; };
        beside_.erase(std::remove_if(beside_.begin(), beside_.end(), passed), beside_.end());
        for (; !to_come_.empty() && to_come_[0].run.from <= y; to_come_ = to_come_.subspan(1))
            if (!passed(to_come_[0]))
                beside_.push_back(to_come_[0]);
        note_mouths();
    }
    void leave() {
        beside_.clear();
        mouths_from_ = mouths_.size();
    }
    whole next_end() const {
        whole end = to_come_.empty() ? std::numeric_limits<whole>::max() : to_come_[0].run.from;
        for (const line& l : beside_)
            end = std::min(end, l.run.to);
        return end;
    }

    bool any() const { return !beside_.empty(); }
    std::size_t count() const { return beside_.size(); }
    bool any_begins() const {
        return std::any_of(beside_.begin(), beside_.end(), [](const line& l) { return l.begins; });
    }
    bool any_cuts() const {
        return std::any_of(beside_.begin(), beside_.end(), [](const line& l) { return l.cuts(); });
    }
    bool cut(std::uint32_t ply) const {
        return std::any_of(beside_.begin(), beside_.end(),
                           [&](const line& l) { return l.cuts() && l.opened->ply == ply; });
    }
    /// Whether a row holds together all that lies from the one ply to the other.
    bool hold(std::uint32_t low, std::uint32_t high) const {
        for (const line& l : beside_)
            if (l.row != nullptr && l.row->low <= low && high <= l.row->high)
                return true;
        return false;
    }
    /// Whether a mouth that cuts nothing is stated on one of the two walls.
    bool end_hollow(const std::pair<std::uint32_t, std::uint32_t>& walls) const {
        return std::any_of(beside_.begin(), beside_.end(), [&](const line& l) {
            if (l.opened == nullptr || l.opened->cuts)
                return false;
            const std::size_t wall = plane_->of().plies[l.opened->ply].wall;
            return wall == walls.first || wall == walls.second;
        });
    }
    std::span<const std::size_t> mouths() const { return mouths_; }
    std::size_t mouths_from() const { return mouths_from_; }

private:
    /// A row, or else what is opened.
    struct line {
        stretch run{};
        const bound_row* row = nullptr;
        const opened_line* opened = nullptr;
        bool begins = true; ///< there, and not in a slab before
        bool cuts() const { return opened != nullptr && opened->cuts; }
    };

    /// A line before it is put into the lists that it runs through.
    struct placed {
        table_line at{};
        stretch run{};
        const bound_row* row = nullptr;
        const opened_line* opened = nullptr;
        whole begins() const { return at.level ? at.at : run.from; }
    };
    /// A level line goes with each slab that it crosses, and is met there at its y alone.
    void put(const placed& l) {
        std::size_t s = plane_->slab_from(l.at.level ? l.run.from : l.at.at);
        if (!l.at.level)
            return upright_[s].push_back({l.run, l.row, l.opened, true});
        for (bool begins = true; s < level_.size() && plane_->slabs()[s].right <= l.run.to; ++s) {
            level_[s].push_back({{l.at.at, l.at.at + 1}, l.row, l.opened, begins});
            begins = false;
        }
    }
    void begin(const std::vector<line>& list) {
        to_come_ = list;
        beside_.clear();
    }
    void note_mouths() {
        mouths_from_ = mouths_.size();
        for (const line& l : beside_)
            if (l.opened != nullptr && l.opened->mouth != nowhere)
                mouths_.push_back(l.opened->mouth);
        if (mouths_.size() - mouths_from_ < 2)
            return;
        const auto from = mouths_.begin() + static_cast<std::ptrdiff_t>(mouths_from_);
        std::sort(from, mouths_.end());
        mouths_.erase(std::unique(from, mouths_.end()), mouths_.end());
    }

    const lazy_cells<Use>* plane_;
    std::vector<std::vector<line>> upright_, level_;
    std::span<const line> to_come_{}; ///< of the border that is met now
    std::vector<line> beside_{};
    std::vector<std::size_t> mouths_{};
    std::size_t mouths_from_ = 0;
};
using border_lines = lazy_border_lines<void>;

} // namespace turncloth::detail::flat_work

#endif
