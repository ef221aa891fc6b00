// The steps of a design, one after another: of what waits for nothing the first by its rank, and a circle refused.
//
//   step_maker<Unit>(design, model, boxed).steps()
//
//   const flat_model<inch> model(roll);
//   step_maker<inch>(roll, model, box_model<inch>(roll, model)).steps();
#ifndef TURNCLOTH_MAKING_DETAIL_STEP_MAKER_HPP
#define TURNCLOTH_MAKING_DETAIL_STEP_MAKER_HPP

#include <turncloth/making/design.hpp>
#include <turncloth/making/detail/described.hpp>
#include <turncloth/making/detail/model.hpp>
#include <turncloth/making/detail/needs.hpp>
#include <turncloth/making/detail/seam_order.hpp>
#include <turncloth/making/making_step.hpp>

#include <algorithm>
#include <array>
#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <tuple>
#include <utility>
#include <vector>

namespace turncloth::detail {

template <length_unit Unit>
class step_maker {
public:
    step_maker(const making<Unit>& design, const flat_model<Unit>& model, const box_model<Unit>& boxed)
        : design_(design), model_(model), boxed_(boxed) {
        gather();
        const flat_work::lazy_needs<for_any<Unit>> found(model.flat(), flat_);
        before_.resize(all_.size());
        for (const before& b : design.befores())
            if (number_of(b.first) < all_.size() && number_of(b.then) < all_.size())
                before_[number_of(b.then)].push_back({number_of(b.first), number_of(b.then), order_reason::asked});
        for (const flat_work::arrow& a : found.arrows())
            if (!gives_way(a))
                before_[a.then].push_back(a);
        for (std::size_t i = 0; i < all_.size(); ++i)
            phases_.push_back(i < flat_.size()                       ? found.phase_of(i)
                              : all_[i].kind == operation_kind::seam ? making_phase::seaming
                                                                     : making_phase::rest);
        rank();
        if (flat_.size() < all_.size())
            seam_order<Unit>(design, model, boxed, all_).add_to(before_, by_rank_);
        sort_needs();
    }

    std::vector<making_step> steps() {
        state_.assign(all_.size(), not_met);
        find_handwork();
        for (const std::size_t i : by_rank_)
            take(i);
        open_up(design_, model_, boxed_, steps_);
        return std::move(steps_);
    }

private:
    enum state : unsigned char { not_met, waiting, done };

    /// By where they lie folds come from the edge inward, rows before or after them, and what is not gone through after a
    /// row that it may cover. A strip that is brought back over an edge goes the other way about, which the designer says
    /// of these two; what a row then goes through is looked at when it is sewn.
    bool gives_way(const flat_work::arrow& a) const {
        if (a.why != order_reason::outer_first && a.why != order_reason::turned_first &&
            a.why != order_reason::sewn_flat && a.why != order_reason::before_covered)
            return false;
        return std::any_of(before_[a.first].begin(), before_[a.first].end(), [&](const flat_work::arrow& asked) {
            return asked.first == a.then && asked.why == order_reason::asked;
        });
    }

    /// Layings on the table need no step: a piece lies so from the start.
    void gather() {
        for (std::size_t i = 0; i < design_.layings().size(); ++i)
            if (design_.layings()[i].on.is_given())
                add({operation_kind::laying, i}, flat_work::flat_kind::laying,
                    {model_.number_of(design_.layings()[i].piece), 0});
        for (std::size_t i = 0; i < design_.creases().size(); ++i)
            if (design_.creases()[i].turn != turning::quarter) // which stands up by itself once its seams are sewn
                add({operation_kind::crease, i}, flat_work::flat_kind::crease, {i, 0});
        for (std::size_t i = 0; i < design_.rows().size(); ++i)
            add({operation_kind::stitching, i}, flat_work::flat_kind::row, model_.rows_of(i));
        for (std::size_t i = 0; i < design_.snips().size(); ++i)
            add({operation_kind::snip, i}, flat_work::flat_kind::snip, {i, i + 1});
        for (std::size_t i = 0; i < design_.spots().size(); ++i)
            if (model_.spots_of(i).first < model_.spots_of(i).second)
                add({operation_kind::spot, i}, flat_work::flat_kind::spot, model_.spots_of(i));
        for (const operation_kind kind : {operation_kind::seam, operation_kind::handwork, operation_kind::moment})
            for (std::size_t i = 0; i < design_.count_of(kind); ++i)
                all_.push_back({kind, i});
    }
    void add(const operation& o, flat_work::flat_kind kind, std::pair<std::size_t, std::size_t> range) {
        all_.push_back(o);
        flat_.push_back({kind, range.first, range.second});
    }
    std::size_t number_of(const operation& o) const {
        return static_cast<std::size_t>(std::find(all_.begin(), all_.end(), o) - all_.begin());
    }

    /// Everything in which two operations may differ, and nothing of when they were entered.
    struct key {
        making_phase phase;
        std::string part;
        std::int64_t copy;
        operation_kind kind;
        int edge;
        fraction in, begins, ends, more;
        std::string says{};
        auto tied() const { return std::tie(phase, part, copy, edge, in, kind, begins, ends, more, says); }
        bool operator<(const key& other) const { return tied() < other.tied(); }
    };
    key key_of(std::size_t i) const {
        const operation& o = all_[i];
        key k{phases_[i], {}, 0, o.kind, 0, 0, 0, 0, 0};
        cut_part on;
        if (o.kind == operation_kind::moment) {
            k.in = static_cast<std::int64_t>(o.index);
            return k;
        }
        if (o.kind == operation_kind::laying) {
            on = design_.layings()[o.index].piece;
        } else if (o.kind == operation_kind::handwork) {
            on = design_.handworks()[o.index].pieces.front();
            k.says = design_.handworks()[o.index].says;
            for (const cut_part& p : design_.handworks()[o.index].pieces)
                k.says.append("\n").append(name_of(design_, p));
        } else if (const auto* c = o.kind == operation_kind::crease ? &design_.creases()[o.index] : nullptr;
                   c != nullptr && c->across) {
            on = c->across->on;
            k.edge = -4 + 2 * static_cast<int>(c->across->level == edge::bottom) +
                     static_cast<int>(c->across->upright == edge::right);
            k.in = c->across->leg.value();
        } else {
            const chalk_line<Unit> l = line_of(design_, o);
            on = l.on;
            k.edge = l.from == edge::left ? 0 : l.from == edge::right ? 1 : l.from == edge::top ? 2 : 3;
            k.in = l.in.from_datum().value();
            k.begins = l.begins ? l.begins->value() : fraction(-1);
            k.ends = l.ends ? l.ends->value() : fraction(-1);
        }
        if (o.kind == operation_kind::stitching && design_.rows()[o.index].each.size() > 0)
            k.more = design_.rows()[o.index].each[0].from_datum().value();
        k.part = design_.parts()[on.index].name;
        k.copy = on.copy;
        return k;
    }
    void rank() {
        std::vector<key> keys;
        for (std::size_t i = 0; i < all_.size(); ++i)
            keys.push_back(key_of(i));
        for (std::size_t i = 0; i < all_.size(); ++i)
            by_rank_.push_back(i);
        std::stable_sort(by_rank_.begin(), by_rank_.end(),
                         [&](std::size_t a, std::size_t b) { return keys[a] < keys[b]; });
        if (design_.handworks().size() > 1)
            rank_alike(keys);
    }
    /// Handwork in the same words, by what it is to come after and before.
    void rank_alike(const std::vector<key>& keys) {
        const auto is_handwork = [&](std::size_t i) { return all_[i].kind == operation_kind::handwork; };
        std::vector<std::array<std::vector<key>, 2>> asked(all_.size()); // before it and after it
        for (const auto& list : before_)
            for (const flat_work::arrow& a : list) {
                if (is_handwork(a.then))
                    asked[a.then][0].push_back(keys[a.first]);
                if (is_handwork(a.first))
                    asked[a.first][1].push_back(keys[a.then]);
            }
        for (auto& both : asked)
            for (std::vector<key>& some : both)
                std::sort(some.begin(), some.end());
        const auto at = [&](std::size_t r) { return by_rank_.begin() + static_cast<std::ptrdiff_t>(r); };
        for (std::size_t r = 0, end = 1; r < all_.size(); r = end++) {
            while (end < all_.size() && !(keys[by_rank_[r]] < keys[by_rank_[end]]))
                ++end;
            if (is_handwork(by_rank_[r]))
                std::stable_sort(at(r), at(end), [&](std::size_t a, std::size_t b) { return asked[a] < asked[b]; });
        }
    }
    void sort_needs() {
        std::vector<std::size_t> rank(all_.size());
        for (std::size_t r = 0; r < by_rank_.size(); ++r)
            rank[by_rank_[r]] = r;
        for (auto& list : before_) {
            std::stable_sort(list.begin(), list.end(), [&](const auto& a, const auto& b) {
                return std::pair(rank[a.first], a.why) < std::pair(rank[b.first], b.why);
            });
            list.erase(std::unique(list.begin(), list.end(),
                                   [](const auto& a, const auto& b) { return a.first == b.first && a.why == b.why; }),
                       list.end());
        }
    }

    /// What waits for nothing else is done at once: the list of each operation runs backwards, as a way is gone.
    void find_handwork() {
        handwork_after_.assign(all_.size(), {});
        for (auto h = by_rank_.rbegin(); h != by_rank_.rend(); ++h)
            if (all_[*h].kind == operation_kind::handwork)
                for (const flat_work::arrow& a : before_[*h])
                    handwork_after_[a.first].push_back(*h);
    }
    bool is_ready(std::size_t i) const {
        return std::all_of(before_[i].begin(), before_[i].end(),
                           [&](const flat_work::arrow& a) { return state_[a.first] == done; });
    }
    /// What it needs, then itself. Without recursion, since needs may be as many as operations.
    void take(std::size_t target) {
        std::vector<std::pair<std::size_t, std::size_t>> way = {{target, 0}}; // and how many of its needs are done
        while (!way.empty()) {
            auto& [i, next] = way.back();
            if (state_[i] == done) {
                way.pop_back();
            } else if (next < before_[i].size()) {
                state_[i] = waiting;
                const std::size_t first = before_[i][next++].first;
                if (state_[first] == waiting)
                    refuse_circle(first);
                if (state_[first] == not_met)
                    way.emplace_back(first, 0);
            } else {
                state_[i] = done;
                making_step made{all_[i], phases_[i], {}};
                for (const flat_work::arrow& a : before_[i])
                    made.needs.push_back({all_[a.first], a.why});
                steps_.push_back(std::move(made));
                const std::size_t just_done = i;
                way.pop_back();
                for (const std::size_t h : handwork_after_[just_done])
                    if (state_[h] == not_met && is_ready(h))
                        way.emplace_back(h, 0);
            }
        }
    }

    /// The shortest way from what is waited for back to itself: breadth first, from each operation on the circle found.
    [[noreturn]] void refuse_circle(std::size_t) const {
        std::vector<flat_work::arrow> shortest;
        for (const std::size_t i : by_rank_)
            if (state_[i] == waiting)
                if (auto circle = circle_through(i);
                    !circle.empty() && (shortest.empty() || circle.size() < shortest.size()))
                    shortest = std::move(circle);
        std::vector<making_fault> faults;
        faults.reserve(shortest.size());
        for (const flat_work::arrow& a : shortest)
            faults.push_back({described(design_, all_[a.first]) + " comes before " + described(design_, all_[a.then]) +
                                  ", since " + std::string(text_of(a.why)),
                              {.kind = fault::disagree,
                               .what = "the order of making",
                               .index = all_[a.then].index,
                               .where = described(design_, all_[a.then])}});
        refuse<making_error>(std::move(faults));
    }
    std::vector<flat_work::arrow> circle_through(std::size_t start) const {
        std::vector<const flat_work::arrow*> by(all_.size(), nullptr);
        std::vector<std::size_t> queue = {start};
        for (std::size_t q = 0; q < queue.size(); ++q)
            for (const flat_work::arrow& a : before_[queue[q]]) {
                if (a.first == start) {
                    std::vector<flat_work::arrow> circle = {a};
                    for (std::size_t at = a.then; at != start; at = by[at]->then)
                        circle.push_back(*by[at]);
                    return circle;
                }
                if (by[a.first] == nullptr) {
                    by[a.first] = &a;
                    queue.push_back(a.first);
                }
            }
        return {};
    }

    const making<Unit>& design_;
    const flat_model<Unit>& model_;
    const box_model<Unit>& boxed_;
    std::vector<operation> all_{};
    std::vector<flat_work::flat_operation> flat_{};
    std::vector<std::vector<flat_work::arrow>> before_{};
    std::vector<making_phase> phases_{};
    std::vector<std::size_t> by_rank_{};
    std::vector<state> state_{};
    std::vector<std::vector<std::size_t>> handwork_after_{}; ///< of each operation
    std::vector<making_step> steps_{};
};

} // namespace turncloth::detail

#endif
