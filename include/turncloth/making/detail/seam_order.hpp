// When seams are sewn, and when a thing is turned out, filled and closed: arrows between operations.
//
//   class seam_order<U>(design, flat_model, box_model, operations)
//     .add_to(before)      to each operation's list of what comes before it
//   open_up(design, flat_model, box_model, steps)
//                          openings, each before the last seam of what is turned out through it
//
// The rules. A seam that crosses the end of another comes after it. A seam comes before its allowances are turned along
// it, before the zipper is set into its mouth, and before a piece is laid flat beside the other. Everything else that is
// done to a piece, or to what lies on it, comes before its seams, and everything before it is turned out, filled, closed
// and folded, in that order: unless the designer asks that it come after.
#ifndef TURNCLOTH_MAKING_DETAIL_SEAM_ORDER_HPP
#define TURNCLOTH_MAKING_DETAIL_SEAM_ORDER_HPP

#include <turncloth/making/detail/box_model.hpp>
#include <turncloth/making/detail/needs.hpp>

#include <algorithm>
#include <cstddef>
#include <utility>
#include <vector>

namespace turncloth::detail {

template <length_unit Unit>
class seam_order {
public:
    using arrow = flat_work::arrow;
    using before_lists = std::vector<std::vector<arrow>>;

    seam_order(const making<Unit>& design, const flat_model<Unit>& model, const box_model<Unit>& work,
               const std::vector<operation>& operations)
        : design_(design), model_(model), all_(operations), work_(work), lines_(design.seams().size()) {
        for (const boxed_work::seam_pair& p : work_.pairs())
            lines_[p.seam].insert(lines_[p.seam].end(), {p.one, p.other});
    }

    /// `by_rank` is the order of operations that nothing else decides.
    void add_to(before_lists& before, const std::vector<std::size_t>& by_rank) {
        after_.assign(all_.size(), {});
        for (const auto& list : before)
            for (const arrow& a : list)
                after_[a.first].push_back(a.then);
        for (const std::size_t s : by_rank)
            if (all_[s].kind == operation_kind::seam)
                add_fixed(before, s);
        const std::vector<std::size_t> moments = in_their_order(by_rank);
        for (std::size_t i = 0; i < moments.size(); ++i) {
            if (i > 0)
                add_unless_after(before, moments[i - 1], moments[i], order_reason::work_done);
            for (const std::size_t s : by_rank)
                if (all_[s].kind == operation_kind::seam)
                    add_unless_after(before, s, moments[i], order_reason::work_done);
        }
        for (const std::size_t s : by_rank)
            if (all_[s].kind == operation_kind::seam)
                add_usual(before, by_rank, s, order_reason::piece_ready);
        for (const std::size_t m : moments)
            add_usual(before, by_rank, m, order_reason::work_done);
    }

private:
    using whole = boxed_work::whole;
    using seam_line = boxed_work::seam_line;
    using seam_pair = boxed_work::seam_pair;

    void add(before_lists& before, std::size_t first, std::size_t then, order_reason why) {
        before[then].push_back({first, then, why});
        after_[first].push_back(then);
    }
    void add_unless_after(before_lists& before, std::size_t first, std::size_t then, order_reason why) {
        if (reached_from(then)[first] == 0)
            add(before, first, then, why);
    }
    std::vector<char> reached_from(std::size_t start) const {
        std::vector<char> seen(all_.size(), 0);
        std::vector<std::size_t> queue = {start};
        for (std::size_t q = 0; q < queue.size(); ++q)
            for (const std::size_t next : after_[queue[q]])
                if (std::exchange(seen[next], char{1}) == 0)
                    queue.push_back(next);
        return seen;
    }

    void add_fixed(before_lists& before, std::size_t s) {
        const std::size_t seam = all_[s].index;
        for (std::size_t i = 0; i < all_.size(); ++i) {
            const operation& o = all_[i];
            if (o.kind == operation_kind::seam && o.index != seam) {
                if (crosses(o.index, seam) && !crosses(seam, o.index))
                    add(before, s, i, order_reason::crossed);
            } else if (o.kind == operation_kind::crease && turns_along(o.index, seam)) {
                add(before, s, i, order_reason::pressed_open);
            } else if (o.kind == operation_kind::laying) {
                const laying<Unit>& l = design_.layings()[o.index];
                const bool zipper = is_set_into(l, seam);
                if (!zipper && !(design_.seams()[seam].beyond == beyond_seam::flat && joins(seam, l)))
                    continue;
                add(before, s, i, zipper ? order_reason::set_in : order_reason::pressed_open);
                add_turned(before, seam, i);
                if (zipper)
                    add_opened_out(before, seam, i);
            }
        }
    }

    /// Allowances are turned before a zipper, or the other piece, is laid there.
    void add_turned(before_lists& before, std::size_t seam, std::size_t laid) {
        for (std::size_t i = 0; i < all_.size(); ++i)
            if (all_[i].kind == operation_kind::crease && turns_along(all_[i].index, seam))
                add(before, i, laid, order_reason::turned_first);
    }
    /// Both pieces lie flat, right sides up, before a zipper is laid under their seam.
    void add_opened_out(before_lists& before, std::size_t seam, std::size_t laid) {
        for (std::size_t i = 0; i < all_.size(); ++i)
            if (all_[i].kind == operation_kind::laying && design_.seams()[seam].beyond == beyond_seam::flat &&
                joins(seam, design_.layings()[all_[i].index]))
                add(before, i, laid, order_reason::pressed_open);
    }
    static bool lies_on(const boxed_work::spot& p, const seam_line& l) {
        const whole across = l.level ? p.y : p.x, along = l.level ? p.x : p.y;
        return across == l.at && l.begins <= along && along <= l.ends;
    }
    bool has(std::size_t seam, std::size_t part, const boxed_work::spot& p) const {
        return std::any_of(lines_[seam].begin(), lines_[seam].end(),
                           [&](const seam_line& l) { return l.part == part && lies_on(p, l); });
    }
    /// Whether `over` runs over a place of `seam` on both of the pieces that meet there.
    bool crosses(std::size_t over, std::size_t seam) const {
        for (const seam_pair& p : work_.pairs()) {
            if (p.seam != seam)
                continue;
            std::vector<whole> places = {0, p.long_()};
            for (const seam_line& l : lines_[over])
                if (l.part == p.one.part && l.level != p.one.level)
                    places.push_back(p.one.clockwise() ? l.at - p.one.begins : p.one.ends - l.at);
            for (const whole t : places)
                if (t >= 0 && t <= p.long_() && has(over, p.one.part, p.on_one(t)) &&
                    has(over, p.other.part, p.on_other(t)))
                    return true;
        }
        return false;
    }
    bool turns_along(std::size_t index, std::size_t seam) const {
        const crease<Unit>& c = design_.creases()[index];
        if (c.across)
            return false;
        const seam_line l = work_.line(c.at);
        return std::any_of(lines_[seam].begin(), lines_[seam].end(),
                           [&](const seam_line& own) { return own.same_line(l); });
    }
    /// Whether it is a zipper that lies over the seam's mouth.
    bool is_set_into(const laying<Unit>& l, std::size_t seam) const {
        if (!l.set_into_one)
            return false;
        const std::size_t tape = model_.number_of(l.piece), on = model_.number_of(l.on);
        const flat_work::flat_part& p = model_.flat().parts[tape];
        const flat_work::bounds there = flat_work::carried(flat_work::bounds{0, 0, p.width, p.height}, p.there);
        return std::any_of(work_.openings().begin(), work_.openings().end(), [&](const auto& o) {
            const seam_pair& pair = work_.pairs()[o.pair];
            const seam_line& own = pair.one.part == on ? pair.one : pair.other;
            return pair.seam == seam && own.part == on &&
                   (own.level ? there.top <= own.at && own.at <= there.bottom
                              : there.left <= own.at && own.at <= there.right);
        });
    }
    bool joins(std::size_t seam, const laying<Unit>& l) const {
        return is_of(seam, model_.number_of(l.piece)) && is_of(seam, model_.number_of(l.on));
    }
    bool is_of(std::size_t seam, std::size_t part) const {
        return std::any_of(lines_[seam].begin(), lines_[seam].end(),
                           [&](const seam_line& l) { return l.part == part; });
    }

    void add_usual(before_lists& before, const std::vector<std::size_t>& by_rank, std::size_t then, order_reason why) {
        const std::vector<char> later = reached_from(then);
        for (const std::size_t i : by_rank) {
            if (i == then || later[i] != 0 || all_[i].kind == operation_kind::moment ||
                (all_[i].kind == operation_kind::handwork && !before[i].empty())) // which comes as soon as that is done
                continue;
            if (all_[i].kind != operation_kind::seam &&
                (all_[then].kind == operation_kind::moment || touches(all_[i], all_[then].index)))
                add(before, i, then, why);
        }
    }
    /// Whether it works on a piece of the seam, or on what lies on one.
    bool touches(const operation& o, std::size_t seam) const {
        if (o.kind == operation_kind::handwork) {
            const std::vector<cut_part>& pieces = design_.handworks()[o.index].pieces;
            return std::any_of(pieces.begin(), pieces.end(), [&](const cut_part& p) { return is_on(p, seam); });
        }
        const cut_part on = o.kind == operation_kind::laying   ? design_.layings()[o.index].piece
                            : o.kind == operation_kind::crease ? design_.creases()[o.index].on()
                                                               : line_of(design_, o).on;
        return is_on(on, seam);
    }
    bool is_on(const cut_part& on, std::size_t seam) const {
        for (std::size_t p = model_.number_of(on); p != flat_work::nowhere; p = model_.flat().parts[p].on)
            if (is_of(seam, p))
                return true;
        return false;
    }

    /// Turned out, filled, closed, used; of one kind, as they were added.
    std::vector<std::size_t> in_their_order(const std::vector<std::size_t>& by_rank) const {
        std::vector<std::size_t> moments;
        for (const std::size_t i : by_rank)
            if (all_[i].kind == operation_kind::moment)
                moments.push_back(i);
        std::sort(moments.begin(), moments.end(), [&](std::size_t a, std::size_t b) {
            const auto key = [&](std::size_t i) {
                return std::pair(design_.moments()[all_[i].index].what, all_[i].index);
            };
            return key(a) < key(b);
        });
        return moments;
    }

    const making<Unit>& design_;
    const flat_model<Unit>& model_;
    const std::vector<operation>& all_;
    const box_model<Unit>& work_;
    std::vector<std::vector<seam_line>> lines_; ///< of each seam
    std::vector<std::vector<std::size_t>> after_{};
};

/// For each mouth that something is turned out through and that can be opened: before the last seam of its box, unless
/// it is made only after that.
template <length_unit Unit, class Steps>
void open_up(const making<Unit>& design, const flat_model<Unit>& model, const box_model<Unit>& work, Steps& steps) {
    if (design.seams().empty())
        return;
    const auto box_of = [&](const cut_part& p) {
        for (const boxed_work::box_cell& c : work.walked().cells())
            if (c.placed && model.part_of(c.part) == p)
                return c.box;
        return boxed_work::nowhere;
    };
    for (const moment& m : design.moments()) {
        if (m.what != moment_kind::turn_out)
            continue;
        const mouth<Unit>& way = design.mouths()[m.index];
        const std::size_t box = box_of(way.at.front().on);
        if (way.by != closed_by::zipper && way.by != closed_by::fastening && way.by != closed_by::tie)
            continue;
        const auto last = std::find_if(steps.rbegin(), steps.rend(), [&](const auto& s) {
            return s.what.kind == operation_kind::seam && box_of(design.seams()[s.what.index].one.front().on) == box &&
                   box != boxed_work::nowhere;
        });
        if (last == steps.rend())
            continue;
        last->needs.push_back({{operation_kind::opening, m.index}, order_reason::opened});
        steps.insert(last.base() - 1, {{operation_kind::opening, m.index}, flat_work::phase::rest, {}});
    }
}

} // namespace turncloth::detail

#endif
