// What must come before what, and why: the rules of order, in whole numbers.
//
//   struct arrow{first, then, why}    between operations by number
//   class needs(design, operations)   .arrows()  .phase(operation)
//
// All places are compared on the pieces as they are laid, before anything of them is turned, in the spots of the piece
// at the root of their layings. The rules:
//   A row needs every laying among its walls. It comes before anything that it does not pierce is laid where it runs: of
//   the layings on the way there, the first piece from the row that covers its place must wait; pieces beyond that one
//   then wait with it. A row over turned cloth needs that turning, and one in what is turned, or on the crease, is sewn
//   first. What encloses other pieces, as a binding does, comes after every row across those pieces that does not need
//   it. Of the creases from one edge the outer comes first, and corners come before the edges that meet there, since a
//   corner cannot be folded across once its edges are turned: they are pressed and opened again.
#ifndef TURNCLOTH_MAKING_DETAIL_NEEDS_HPP
#define TURNCLOTH_MAKING_DETAIL_NEEDS_HPP

#include <turncloth/making/detail/turning.hpp>
#include <turncloth/making/detail/workbench.hpp>
#include <turncloth/making/making_step.hpp>
#include <turncloth/making/operations.hpp>

#include <algorithm>
#include <array>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <utility>
#include <vector>

namespace turncloth::detail::flat_work {

using need = order_reason;

struct arrow {
    std::size_t first = 0, then = 0;
    need why = need::asked;
};

using phase = making_phase;

enum class flat_kind : unsigned char { laying, crease, row, snip, spot };

/// An operation by what it is and which: a laying by its piece; a family of rows or spots from `index` to `end`.
struct flat_operation {
    flat_kind kind = flat_kind::laying;
    std::size_t index = 0, end = 0;
};

template <class>
class lazy_needs {
public:
    lazy_needs(const flat_design& design, const std::vector<flat_operation>& operations)
        : design_(design), operations_(operations), phases_(operations.size(), phase::rest) {
        find_roots();
        laying_of_.assign(design.parts.size(), nowhere);
        crease_of_.assign(design.creases.size(), nowhere);
        for (std::size_t i = 0; i < operations.size(); ++i)
            if (operations[i].kind == flat_kind::laying)
                laying_of_[operations[i].index] = i;
            else if (operations[i].kind == flat_kind::crease)
                crease_of_[operations[i].index] = i;
        for (const flat_crease& c : design.creases)
            turnings_.push_back(turning_of(c));
        for (const flat_crease& c : design.creases)
            hems_.push_back(is_hem(c) ? 1 : 0);
        for (const flat_crease& c : design.creases)
            in_hand_.push_back(is_in_hand(c) ? 1 : 0);
        for (std::size_t c = 0; c < turnings_.size(); ++c) // what is held by rows of its own encloses nothing
            turnings_[c].encloses = turnings_[c].encloses && hems_[c] == 0;
        for (std::size_t p = 0; p < design.parts.size(); ++p)
            laid_.push_back(carried(as_laid(p), to_root_[p]));
        order_creases();
        for (std::size_t i = 0; i < operations.size(); ++i)
            if (operations[i].kind != flat_kind::laying && operations[i].kind != flat_kind::crease)
                order_work(i);
        for (std::size_t c = 0; c < design.creases.size(); ++c)
            if (crease_of_[c] == nowhere) // a quarter turn is no flat work
                continue;
            else if (turnings_[c].encloses)
                phases_[crease_of_[c]] = phase::enclosing;
            else if (!design.creases[c].over && design.parts[design.creases[c].part].on != nowhere)
                phases_[crease_of_[c]] = phase::hem_of_piece; // turned under, which is pressed before it is laid
    }

    const std::vector<arrow>& arrows() const { return arrows_; }
    phase phase_of(std::size_t operation) const { return phases_[operation]; }

private:
    struct reached {
        std::vector<std::size_t> parts{}; ///< that the walls and the layings among them connect
        std::size_t top = 0;              ///< the one that all the others lie on
    };

    void find_roots() {
        const std::size_t n = design_.parts.size();
        to_root_.resize(n);
        depth_.assign(n, 0);
        root_.resize(n);
        children_.resize(n);
        for (std::size_t p = 0; p < n; ++p) {
            root_[p] = p;
            for (; design_.parts[root_[p]].on != nowhere; root_[p] = design_.parts[root_[p]].on) {
                to_root_[p] = after(to_root_[p], design_.parts[root_[p]].there);
                ++depth_[p];
            }
            if (design_.parts[p].on != nowhere)
                children_[design_.parts[p].on].push_back(p);
        }
    }
    bounds whole_of(std::size_t part) const { return {0, 0, design_.parts[part].width, design_.parts[part].height}; }

    whole depth_of(const flat_crease& c) const { return flat_work::depth_of(c, design_.parts[c.part]); }

    /// Of a crease f from its edge, after one g from it: what lies between is turned, and covers as much beyond.
    turning turning_of(const flat_crease& c) const {
        turning made;
        if (!straight(c.stays)) {
            made.corner = true;
            return made;
        }
        whole before = 0;
        const whole f = depth_of(c);
        for (const flat_crease& other : design_.creases)
            if (same_edge(c, other) && depth_of(other) < f)
                before = std::max(before, depth_of(other));
        const flat_part& p = design_.parts[c.part];
        const auto band = [&](whole from, whole to) {
            const bounds own = c.stays.b < 0   ? bounds{0, from, p.width, to}
                               : c.stays.b > 0 ? bounds{0, p.height - to, p.width, p.height - from}
                               : c.stays.a < 0 ? bounds{from, 0, to, p.height}
                                               : bounds{p.width - to, 0, p.width - from, p.height};
            return carried(own, to_root_[c.part]);
        };
        made.turned = band(0, f);
        made.covers = band(f, 2 * f - before);
        // What lies on what lies there is enclosed too: of a front joined of pieces one alone lies on its back.
        for (const std::size_t inside : inside_of(c.part))
            made.encloses |= c.over && lies_over(inside, c.part) &&
                             overlap(made.covers, carried(whole_of(inside), to_root_[inside]));
        return made;
    }
    /// Neither it nor what it lies on was laid beneath.
    bool lies_over(std::size_t p, std::size_t part) const {
        for (; p != part; p = design_.parts[p].on)
            if (design_.parts[p].beneath)
                return false;
        return true;
    }

    void add(std::size_t first, std::size_t then, need why) {
        if (first != nowhere && then != nowhere && first != then)
            arrows_.push_back({first, then, why});
    }

    void order_creases() {
        const auto& all = design_.creases;
        for (std::size_t i = 0; i < all.size(); ++i)
            for (std::size_t j = 0; j < all.size(); ++j) {
                if (all[i].part != all[j].part || i == j)
                    continue;
                if (same_edge(all[i], all[j]) && depth_of(all[i]) < depth_of(all[j]))
                    add(crease_of_[i], crease_of_[j], need::outer_first);
                const half_plane &corner = all[i].stays, &edge = all[j].stays;
                if (!straight(corner) && straight(edge) && (corner.a == edge.a || corner.b == edge.b) &&
                    corner.a * edge.a + corner.b * edge.b > 0)
                    add(crease_of_[i], crease_of_[j], need::corner_first);
            }
        for (std::size_t c = 0; c < all.size(); ++c)
            if (turnings_[c].encloses)
                for (const std::size_t inside : inside_of(all[c].part))
                    add(laying_of_[inside], crease_of_[c], need::enclosed);
    }
    /// All that lies on a part, and on that.
    std::vector<std::size_t> inside_of(std::size_t part) const {
        std::vector<std::size_t> all = children_[part];
        for (std::size_t i = 0; i < all.size(); ++i)
            all.insert(all.end(), children_[all[i]].begin(), children_[all[i]].end());
        return all;
    }

    void order_work(std::size_t op) {
        const flat_operation& o = operations_[op];
        const reached among = reach(walls_of(o));
        for (const std::size_t p : among.parts)
            if (p != among.top)
                add(laying_of_[p], op, need::walls_laid);
        std::vector<place> places;
        for (std::size_t i = o.index; i < o.end; ++i)
            places.push_back(place_of(o.kind, i));
        bool hem = false, encloses = false;
        std::vector<std::size_t> others;
        for (std::size_t c = 0; c < design_.creases.size(); ++c)
            if (ordered_in_hand(op, c, among, places)) {
                continue;
            } else if (turns_for(c, among, places)) {
                add(crease_of_[c], op, need::turned_first);
                hem |= among.parts.size() == 1;
                encloses |= turnings_[c].encloses;
            } else {
                others.push_back(c);
            }
        for (const std::size_t c : others)
            order_with(op, c, among, places, encloses);
        wait_beyond(op, among, places);
        phases_[op] = phase_of(o.kind, among, hem, encloses);
    }
    std::vector<std::size_t> walls_of(const flat_operation& o) const {
        if (o.kind == flat_kind::row)
            return design_.rows[o.index].through;
        if (o.kind == flat_kind::spot) {
            std::vector<std::size_t> walls = design_.spots[o.index].through;
            walls.push_back(design_.spots[o.index].part);
            return walls;
        }
        std::vector<std::size_t> walls = {design_.snips[o.index].at.part};
        for (const std::size_t child : children_[walls[0]])
            if (design_.parts[child].set_into) // a zipper lies there already: the slit is cut from behind
                walls.push_back(child);
        return walls;
    }
    /// Climbing always from the deepest, all walls meet in the part that the others lie on.
    reached reach(std::vector<std::size_t> walls) const {
        reached made;
        std::sort(walls.begin(), walls.end());
        walls.erase(std::unique(walls.begin(), walls.end()), walls.end());
        while (walls.size() > 1) {
            const auto deepest = std::max_element(walls.begin(), walls.end(),
                                                  [&](std::size_t a, std::size_t b) { return depth_[a] < depth_[b]; });
            const std::size_t p = *deepest, on = design_.parts[p].on;
            made.parts.push_back(p);
            walls.erase(deepest);
            if (on != nowhere && std::find(walls.begin(), walls.end(), on) == walls.end())
                walls.push_back(on);
        }
        made.top = walls.front();
        made.parts.push_back(made.top);
        return made;
    }

    place place_of(flat_kind kind, std::size_t i) const {
        if (kind == flat_kind::spot) {
            const flat_spot& s = design_.spots[i];
            return {s.part, carried(bounds{s.at.x, s.at.y, s.at.x, s.at.y}, to_root_[s.part]), true, false};
        }
        const flat_line& l = kind == flat_kind::row ? design_.rows[i].along : design_.snips[i].at;
        const auto [from, to] = stretch_of(l, design_.parts[l.part]);
        const bounds own = l.at.level ? bounds{from, l.at.at, to, l.at.at} : bounds{l.at.at, from, l.at.at, to};
        const bounds there = carried(own, to_root_[l.part]);
        return {l.part, there, there.top == there.bottom, true};
    }
    bool is_among(std::size_t part, const reached& among) const {
        return std::find(among.parts.begin(), among.parts.end(), part) != among.parts.end();
    }
    /// Whether the row runs along, or the spot lies, over what the crease turns on one of the walls.
    bool turns_for(std::size_t c, const reached& among, const std::vector<place>& places) const {
        const turning& t = turnings_[c];
        return !t.corner && is_among(design_.creases[c].part, among) &&
               std::any_of(places.begin(), places.end(),
                           [&](const place& p) { return holds(t, p) && (along(t, p) || !p.is_line); });
    }
    /// `binds`: the operation itself holds something that encloses.
    void order_with(std::size_t op, std::size_t c, const reached& among, const std::vector<place>& places, bool binds) {
        const turning& t = turnings_[c];
        const std::size_t part = design_.creases[c].part;
        if (t.corner || root_[part] != root_[among.top])
            return;
        const bool pierced = is_among(part, among);
        const auto any = [&](auto is) { return std::any_of(places.begin(), places.end(), is); };
        if (pierced && any([&](const place& p) { return in_turned(t, p); })) {
            if (design_.creases[c].along_seam)
                add(crease_of_[c], op, need::turned_first);
            else
                add(op, crease_of_[c], need::sewn_flat);
        } else if (t.encloses && !binds && lies_on(among.top, part))
            add(op, crease_of_[c], need::enclosed);
        else if (pierced && among.parts.size() > 1 && !t.encloses && any([&](const place& p) { return holds(t, p); }))
            add(crease_of_[c], op, need::turned_first);
        else if (!pierced && hems_[c] == 0 && lies_on(part, among.top) &&
                 any([&](const place& p) { return covers(t.covers, p); }))
            add(op, crease_of_[c], need::before_covered);
    }
    /// What is folded in the hand is folded wherever it then lies; a row of its piece alone that crosses it is sewn first.
    bool ordered_in_hand(std::size_t op, std::size_t c, const reached& among, const std::vector<place>& places) {
        if (in_hand_[c] == 0)
            return false;
        const bool own = is_among(design_.creases[c].part, among), alone = own && among.parts.size() == 1;
        if (alone && std::any_of(places.begin(), places.end(), [&](const place& p) { return along(turnings_[c], p); }))
            return false;
        if (own)
            alone ? add(op, crease_of_[c], need::sewn_flat) : add(crease_of_[c], op, need::turned_first);
        return true;
    }
    bool lies_on(std::size_t p, std::size_t below) const {
        while (p != below && design_.parts[p].on != nowhere)
            p = design_.parts[p].on;
        return p == below;
    }

    /// Outward from what it pierces, along the layings.
    void wait_beyond(std::size_t op, const reached& among, const std::vector<place>& places) {
        struct way {
            std::size_t to, from, laying;
        };
        std::vector<way> ways;
        const auto outward = [&](std::size_t from, std::size_t came) {
            for (const std::size_t child : children_[from])
                if (child != came)
                    ways.push_back({child, from, laying_of_[child]});
            if (design_.parts[from].on != nowhere && design_.parts[from].on != came)
                ways.push_back({design_.parts[from].on, from, laying_of_[from]});
        };
        for (const std::size_t p : among.parts)
            outward(p, nowhere);
        for (std::size_t i = 0; i < ways.size(); ++i) {
            const way w = ways[i];
            if (is_among(w.to, among))
                continue;
            const bounds& cloth = laid_[w.to];
            if (std::any_of(places.begin(), places.end(), [&](const place& p) { return covers(cloth, p); }))
                add(op, w.laying, need::before_covered);
            else
                outward(w.to, w.from);
        }
    }
    /// A piece as it is laid: once turned at the hems that hold on it alone, and folded in the hand.
    bounds as_laid(std::size_t part) const {
        const bounds whole_piece = whole_of(part);
        if (design_.parts[part].on == nowhere)
            return whole_piece;
        std::array<std::vector<whole>, 4> folds; // from the left, right, top and bottom
        for (std::size_t i = 0; i < design_.creases.size(); ++i) {
            const half_plane& s = design_.creases[i].stays;
            if (design_.creases[i].part == part && straight(s) && (hems_[i] != 0 || in_hand_[i] != 0))
                folds[(s.a != 0 ? 0 : 2) + (s.a + s.b > 0 ? 1 : 0)].push_back(depth_of(design_.creases[i]));
        }
        return {whole_piece.left + folded_in(folds[0]), whole_piece.top + folded_in(folds[2]),
                whole_piece.right - folded_in(folds[1]), whole_piece.bottom - folded_in(folds[3])};
    }
    /// The designer has it folded before its piece is laid, or one further in from the same edge.
    bool is_in_hand(const flat_crease& c) const {
        return std::any_of(design_.creases.begin(), design_.creases.end(), [&](const flat_crease& other) {
            return other.in_hand && straight(c.stays) && same_edge(c, other) && depth_of(c) <= depth_of(other);
        });
    }
    /// Whether some row through that piece alone runs along it in what it, or a later crease from its edge, turns over; or a
    /// seam along it.
    bool is_hem(const flat_crease& c) const {
        if (c.along_seam)
            return true;
        for (const flat_operation& o : operations_) {
            if (o.kind != flat_kind::row || design_.rows[o.index].through.size() != 1 ||
                design_.rows[o.index].through[0] != c.part)
                continue;
            for (std::size_t i = o.index; i < o.end; ++i)
                for (std::size_t d = 0; d < turnings_.size(); ++d) {
                    if (!same_edge(c, design_.creases[d]) || depth_of(c) > depth_of(design_.creases[d]))
                        continue;
                    if (const place p = place_of(flat_kind::row, i); along(turnings_[d], p) && holds(turnings_[d], p))
                        return true;
                }
        }
        return false;
    }

    phase phase_of(flat_kind kind, const reached& among, bool hem, bool encloses) const {
        if (kind == flat_kind::snip)
            return phase::slit;
        if (kind == flat_kind::spot)
            return phase::spot;
        if (encloses)
            return phase::enclosing;
        const bool base = design_.parts[among.top].on == nowhere;
        if (hem)
            return base ? phase::hem_of_base : phase::hem_of_piece;
        const bool one_wall = std::all_of(among.parts.begin(), among.parts.end(),
                                          [&](std::size_t p) { return p == among.top || design_.parts[p].set_into; });
        return one_wall ? phase::alone : phase::joining;
    }

    const flat_design& design_;
    const std::vector<flat_operation>& operations_;
    std::vector<phase> phases_;
    std::vector<arrow> arrows_{};
    std::vector<lie> to_root_{};
    std::vector<std::size_t> depth_{}, root_{};
    std::vector<std::vector<std::size_t>> children_{};
    std::vector<std::size_t> laying_of_{}, crease_of_{};
    std::vector<turning> turnings_{};
    std::vector<char> hems_{}, in_hand_{}; ///< each crease
    std::vector<bounds> laid_{};           ///< each piece as it is laid, in the root's spots
};
using needs = lazy_needs<void>;

} // namespace turncloth::detail::flat_work

#endif
