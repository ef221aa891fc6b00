// Boxes found by walking the seams from one piece to the next, and what does not close.
//
//   class lazy_walk(parts, pairs)      .cells()  .cells_of(part)  .boxes()  .shells()  .gaps()
//
// A piece is cut into cells by its seams and creases. What lies between a seam, or a crease that turns back, and its edge
// is an allowance, and no part of the box. Each box is placed from its largest cell on, breadth first; a seam or a crease
// between two cells that are placed already must find both where it wants them. A lining of another size is a shell of its own
// in its box: it is placed by one stretch of the seam that lets it in, middle to middle, and held by the others to nothing.
#ifndef TURNCLOTH_MAKING_DETAIL_BOX_WALK_HPP
#define TURNCLOTH_MAKING_DETAIL_BOX_WALK_HPP

#include <turncloth/making/detail/box_parts.hpp>

#include <algorithm>
#include <cstddef>
#include <span>
#include <utility>
#include <vector>

namespace turncloth::detail::boxed_work {

struct box_cell {
    std::size_t part = 0;
    bounds own{};
    bool allowance = false, placed = false;
    standing stands{};
    std::size_t box = nowhere, by = nowhere; ///< by: the pair through which its piece was reached
    std::size_t shell = nowhere;             ///< what is joined without letting in a lining
};

/// A pair whose sides do not come together.
struct box_gap {
    std::size_t pair = 0, by = nowhere; ///< by: the pair through which the piece was placed
    std::size_t part = 0;               ///< the piece that was placed
    bool otherwise = false;             ///< it is turned otherwise
    point apart{}, at_pair{}, at_by{};  ///< from where the pair wants it to where it is; where its two lines are
};

struct box_extent {
    point low{}, high{};
    bool begun = false;
    bool open = false;               ///< some edge is sewn to nothing
    std::size_t open_part = nowhere; ///< the first that has one
};

/// Compiled where it is used.
template <class>
class lazy_walk {
public:
    lazy_walk(const std::vector<box_part>& parts, const std::vector<seam_pair>& pairs) : parts_(parts), pairs_(pairs) {
        for (std::size_t p = 0; p < parts.size(); ++p)
            cut(p);
        of_.resize(cells_.size());
        for (std::size_t p = 0; p < parts.size(); ++p)
            join_cells(p);
        for (std::size_t k = 0; k < pairs.size(); ++k)
            join_pair(k);
        looked_.assign(joints_.size(), 0);
        place_all();
    }

    const std::vector<box_cell>& cells() const { return cells_; }
    std::span<const box_cell> cells_of(std::size_t part) const {
        return std::span(cells_).subspan(first_[part], first_[part + 1] - first_[part]);
    }
    const std::vector<box_extent>& boxes() const { return boxes_; }
    const std::vector<box_extent>& shells() const { return shells_; }
    const std::vector<box_gap>& gaps() const { return gaps_; }

private:
    struct joint {
        std::size_t one = 0, other = 0;
        joint_side at_one{}, at_other{};
        turned turn = turned::not_at_all;
        std::size_t pair = nowhere;
        whole long_ = 0; ///< of a pair
        bool lets_in = false;
    };

    static bool spans(const seam_line& l, bool level, whole at, whole from, whole to) {
        return l.level == level && l.at == at && l.begins <= from && to <= l.ends;
    }
    void cut(std::size_t p) {
        const box_part& part = parts_[p];
        const part_stops stops = stops_of(part);
        const auto& [xs, ys] = stops;
        columns_.push_back(stops.columns());
        for (std::size_t j = 0; j + 1 < ys.size(); ++j)
            for (std::size_t i = 0; i + 1 < xs.size(); ++i) {
                box_cell c{p, {xs[i], ys[j], xs[i + 1], ys[j + 1]}};
                c.allowance = std::any_of(part.ends.begin(), part.ends.end(),
                                          [&](const seam_line& l) { return lies_beyond(c.own, l); });
                cells_.push_back(c);
            }
        first_.push_back(cells_.size());
    }
    static bool lies_beyond(const bounds& b, const seam_line& l) {
        const whole from = l.level ? b.left : b.top, to = l.level ? b.right : b.bottom;
        const whole low = l.level ? b.top : b.left, high = l.level ? b.bottom : b.right;
        return l.begins <= from && to <= l.ends && (l.toward < 0 ? high <= l.at : l.at <= low);
    }

    void join_cells(std::size_t p) {
        const std::size_t end = first_[p + 1], across = columns_[p];
        for (std::size_t c = first_[p]; c < end; ++c) {
            if ((c - first_[p]) % across + 1 < across)
                join_neighbours(c, c + 1, false);
            if (c + across < end)
                join_neighbours(c, c + across, true);
        }
    }
    void join_neighbours(std::size_t a, std::size_t b, bool level) {
        if (cells_[a].allowance || cells_[b].allowance)
            return;
        const bounds& own = cells_[a].own;
        const whole at = level ? own.bottom : own.right, from = level ? own.left : own.top,
                    to = level ? own.right : own.bottom;
        const box_part& part = parts_[cells_[a].part];
        if (std::any_of(part.ends.begin(), part.ends.end(),
                        [&](const seam_line& l) { return spans(l, level, at, from, to); }))
            return;
        joint j{a, b};
        for (const quarter_crease& c : part.creases)
            if (spans(c.at, level, at, from, to))
                j.turn = c.outward ? turned::outward : turned::inward;
        const spot on = level ? spot{from, at} : spot{at, from};
        j.at_one = {level ? spot{0, 1} : spot{1, 0}, level ? spot{1, 0} : spot{0, 1}, on};
        j.at_other = {level ? spot{0, -1} : spot{-1, 0}, j.at_one.along, on};
        add(j);
    }
    void add(const joint& j) {
        of_[j.one].push_back(joints_.size());
        of_[j.other].push_back(joints_.size());
        joints_.push_back(j);
    }

    /// A cell along a seam, with the stretch of the seam that it has.
    struct along_seam {
        std::size_t cell;
        whole from, to;
    };
    std::vector<along_seam> cells_along(const seam_line& l, bool from_begin) const {
        std::vector<along_seam> found;
        for (std::size_t c = first_[l.part]; c < first_[l.part + 1]; ++c) {
            const bounds& b = cells_[c].own;
            const whole near = l.toward < 0 ? (l.level ? b.top : b.left) : (l.level ? b.bottom : b.right);
            const whole from = std::max(l.begins, l.level ? b.left : b.top),
                        to = std::min(l.ends, l.level ? b.right : b.bottom);
            if (cells_[c].allowance || near != l.at || from >= to)
                continue;
            if (from_begin)
                found.push_back({c, from - l.begins, to - l.begins});
            else
                found.push_back({c, l.ends - to, l.ends - from});
        }
        return found;
    }
    static spot along(const seam_line& l, bool forward) {
        const whole way = forward ? 1 : -1;
        return l.level ? spot{way, 0} : spot{0, way};
    }
    joint joint_of(std::size_t k, std::size_t one, std::size_t other, whole on_one, whole on_other) const {
        const seam_pair& p = pairs_[k];
        return {one,
                other,
                {p.one.across(), along(p.one, p.one.clockwise()), p.on_one(on_one)},
                {p.other.across(), along(p.other, !p.other.clockwise()), p.on_other(on_other)},
                p.turn,
                k,
                0,
                p.lets_in};
    }
    /// Each stretch of `one` with the one of `other` that lies beside most of it, where the middles of the two sides meet.
    void let_in(std::size_t k) {
        const seam_pair& p = pairs_[k];
        const whole shift = (p.one.long_() - p.other.long_()) / 2;
        for (const along_seam& a : cells_along(p.one, p.one.clockwise())) {
            along_seam best{};
            whole most = 0;
            for (const along_seam& b : cells_along(p.other, !p.other.clockwise())) {
                const whole common = std::min(a.to, b.to + shift) - std::max(a.from, b.from + shift);
                best = common > most ? b : best;
                most = std::max(most, common);
            }
            if (most > 0)
                add(joint_of(k, a.cell, best.cell, (a.from + a.to) / 2, (best.from + best.to) / 2));
        }
    }
    void join_pair(std::size_t k) {
        const seam_pair& p = pairs_[k];
        if (p.lets_in)
            return let_in(k);
        for (const along_seam& a : cells_along(p.one, p.one.clockwise()))
            for (const along_seam& b : cells_along(p.other, !p.other.clockwise())) {
                const whole from = std::max(a.from, b.from), to = std::min(a.to, b.to);
                if (from >= to)
                    continue;
                joint j = joint_of(k, a.cell, b.cell, from, from);
                j.long_ = to - from;
                add(j);
            }
    }

    static joint reversed(joint j) {
        std::swap(j.one, j.other);
        std::swap(j.at_one, j.at_other);
        return j;
    }
    static int128 area_of(const bounds& b) { return int128{b.right - b.left} * (b.bottom - b.top); }

    /// From the largest cell of each box, which is then as it lies before you.
    void place_all() {
        std::vector<std::size_t> largest(cells_.size());
        for (std::size_t c = 0; c < cells_.size(); ++c)
            largest[c] = c;
        std::stable_sort(largest.begin(), largest.end(),
                         [&](std::size_t a, std::size_t b) { return area_of(cells_[a].own) > area_of(cells_[b].own); });
        const std::vector<char> is_sewn = sewn();
        for (const std::size_t c : largest)
            if (!cells_[c].placed && !cells_[c].allowance && is_sewn[c] != 0)
                place_from(c);
        for (std::size_t c = 0; c < cells_.size(); ++c)
            if (cells_[c].placed) {
                note_extent(c, boxes_[cells_[c].box]);
                note_extent(c, shells_[cells_[c].shell]);
            }
    }
    /// Of each cell, whether a seam is reached from it.
    std::vector<char> sewn() const {
        std::vector<char> all(cells_.size(), 0);
        std::vector<std::size_t> queue;
        const auto reach = [&](const joint& j) {
            for (const std::size_t c : {j.one, j.other})
                if (std::exchange(all[c], char{1}) == 0)
                    queue.push_back(c);
        };
        for (const joint& j : joints_)
            if (j.pair != nowhere)
                reach(j);
        for (std::size_t q = 0; q < queue.size(); ++q)
            for (const std::size_t i : of_[queue[q]])
                reach(joints_[i]);
        return all;
    }

    void place_from(std::size_t root) {
        cells_[root].placed = true;
        cells_[root].box = boxes_.size();
        boxes_.push_back({});
        std::vector<joint> linings;
        place_shell(root, linings);
        for (std::size_t i = 0; i < linings.size(); ++i)
            if (const joint j = linings[i]; !cells_[j.other].placed) {
                place(j);
                place_shell(j.other, linings);
            }
    }
    standing wanted_by(const joint& j) const { return joined(cells_[j.one].stands, j.at_one, j.at_other, j.turn); }
    void place(const joint& j) {
        box_cell &next = cells_[j.other], &from = cells_[j.one];
        next.placed = true;
        next.stands = wanted_by(j);
        next.box = from.box;
        next.by = j.pair != nowhere ? j.pair : from.by;
    }
    void place_shell(std::size_t root, std::vector<joint>& linings) {
        std::vector<std::size_t> queue = {root};
        for (std::size_t q = 0; q < queue.size(); ++q) {
            cells_[queue[q]].shell = shells_.size();
            for (const std::size_t i : of_[queue[q]]) {
                if (std::exchange(looked_[i], char{1}) != 0)
                    continue;
                const joint j = joints_[i].one == queue[q] ? joints_[i] : reversed(joints_[i]);
                if (j.lets_in) {
                    linings.push_back(j);
                } else if (!cells_[j.other].placed) {
                    place(j);
                    queue.push_back(j.other);
                } else if (const box_cell& next = cells_[j.other]; !(next.stands.how == wanted_by(j).how)) {
                    note_gap(next.by != nowhere ? j : reversed(j));
                }
            }
        }
        shells_.push_back({});
    }
    /// Once for each seam. Creases of one piece that cross are told by the seams that they spoil.
    void note_gap(const joint& j) {
        if (j.pair == nowhere || std::any_of(gaps_.begin(), gaps_.end(), [&](const box_gap& g) {
                return pairs_[g.pair].seam == pairs_[j.pair].seam;
            }))
            return;
        const box_cell& late = cells_[j.other];
        const frame wanted = wanted_by(j).how;
        box_gap g{j.pair, late.by, late.part};
        g.otherwise = !wanted.turned_as(late.stands.how);
        g.apart = late.stands.how.at - wanted.at;
        if (late.by != nowhere) {
            const seam_line& l = line_on(late.by, late.part);
            const frame& f = late.stands.how;
            const spot end{j.at_other.on.x + j.at_other.along.x * j.long_,
                           j.at_other.on.y + j.at_other.along.y * j.long_};
            for (const spot& by : {l.spot_at(l.begins), l.spot_at(l.ends)})
                for (const spot& on : {j.at_other.on, end})
                    if (whole_way(f(by), f(on)) > whole_way(g.at_by, g.at_pair)) {
                        g.at_by = f(by);
                        g.at_pair = f(on);
                    }
        }
        gaps_.push_back(g);
    }

    const seam_line& line_on(std::size_t pair, std::size_t part) const {
        return pairs_[pair].other.part == part ? pairs_[pair].other : pairs_[pair].one;
    }
    static whole whole_way(const point& a, const point& b) {
        const auto size = [](whole w) { return w < 0 ? -w : w; };
        return size(a.x - b.x) + size(a.y - b.y) + size(a.z - b.z);
    }

    void note_extent(std::size_t c, box_extent& all) const {
        const box_cell& one = cells_[c];
        const box_part& part = parts_[one.part];
        for (const spot& s : {spot{one.own.left, one.own.top}, spot{one.own.right, one.own.bottom}}) {
            const point p = one.stands.how(s);
            if (!std::exchange(all.begun, true))
                all.low = all.high = p;
            all.low = {std::min(all.low.x, p.x), std::min(all.low.y, p.y), std::min(all.low.z, p.z)};
            all.high = {std::max(all.high.x, p.x), std::max(all.high.y, p.y), std::max(all.high.z, p.z)};
        }
        if (!all.open && (one.own.left == 0 || one.own.top == 0 || one.own.right == part.width ||
                          one.own.bottom == part.height || ends_unsewn(one))) {
            all.open = true;
            all.open_part = one.part;
        }
    }
    /// Whether it ends at a crease that turns back, along which no seam runs.
    bool ends_unsewn(const box_cell& c) const {
        for (const seam_line& l : parts_[c.part].ends) {
            const whole near =
                l.toward < 0 ? (l.level ? c.own.top : c.own.left) : (l.level ? c.own.bottom : c.own.right);
            const whole from = l.level ? c.own.left : c.own.top, to = l.level ? c.own.right : c.own.bottom;
            if (near != l.at || !(l.begins <= from && to <= l.ends))
                continue;
            const auto sews = [&](const seam_line& s) { return s.same_line(l) && s.begins <= from && to <= s.ends; };
            if (std::none_of(pairs_.begin(), pairs_.end(),
                             [&](const seam_pair& p) { return sews(p.one) || sews(p.other); }))
                return true;
        }
        return false;
    }

    const std::vector<box_part>& parts_;
    const std::vector<seam_pair>& pairs_;
    std::vector<std::size_t> first_ = {0}, columns_{}; ///< of each piece, and of what would follow the last
    std::vector<box_cell> cells_{};
    std::vector<joint> joints_{};
    std::vector<std::vector<std::size_t>> of_{}; ///< the joints of each cell
    std::vector<char> looked_{};
    std::vector<box_extent> boxes_{}, shells_{};
    std::vector<box_gap> gaps_{};
};

} // namespace turncloth::detail::boxed_work

#endif
