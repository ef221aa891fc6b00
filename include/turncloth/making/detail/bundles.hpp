// Which operations a maker does as one, once their order is known: hems, a piece laid and sewn down, edges finished alike,
// copies made alike.
//
//   struct task              an operation in its place in the order, and what it needs
//   struct bundle            strands of tasks: one for each like edge or copy, with like tasks at like places
//   bundled(tasks)           the bundles, in an order that keeps every need
//
// Joining tasks is allowed where no way leads out of them and back: then the needs of the joined tasks still go round in
// no circle. Within a bundle the strands are done one after another, so needs between them must point forward too.
#ifndef TURNCLOTH_MAKING_DETAIL_BUNDLES_HPP
#define TURNCLOTH_MAKING_DETAIL_BUNDLES_HPP

#include <turncloth/making/detail/needs.hpp>

#include <algorithm>
#include <array>
#include <cstddef>
#include <cstdint>
#include <numeric>
#include <span>
#include <utility>
#include <vector>

namespace turncloth::detail {

struct task {
    operation what{};
    flat_work::phase phase = flat_work::phase::rest;
    cut_part on{}; ///< drawn on it; of a laying, the piece
    edge from = edge::top;
    bool corner = false;
    fraction in = 0, first = 0, step = 0; ///< of the line; of a family's places
    std::int64_t members = 0;             ///< of a family; 0 for a single row
    std::array<fraction, 7> manner{};     ///< of all else in which like operations are alike
    std::vector<cut_part> walls{};
    std::size_t number = 0; ///< of the piece among all copies, and of the walls
    std::vector<std::size_t> wall_numbers{};
    std::vector<std::size_t> needs{}; ///< tasks that come before
};

using strand = std::vector<std::size_t>;

struct bundle {
    std::vector<strand> strands{};
    bool hem = false; ///< folds and the rows that hold them, along edges of one piece
};

template <class>
class lazy_bundler {
public:
    explicit lazy_bundler(const std::vector<task>& tasks) : tasks_(tasks) {
        bundles_.reserve(tasks.size());
        bundle_of_.reserve(tasks.size());
        for (std::size_t i = 0; i < tasks.size(); ++i) {
            bundles_.emplace_back().strands.emplace_back(1, i);
            bundles_.back().hem = tasks[i].what.kind == operation_kind::crease && !tasks[i].corner;
            bundle_of_.push_back(i);
        }
        find_after();
        by_edge();
        chain_hems();
        gather_layings();
        join_edges();
        join_copies();
    }

    /// Gives them away.
    std::vector<bundle> in_order() {
        std::vector<bundle> made;
        made.reserve(bundles_.size());
        std::vector<char> done(bundles_.size(), 0);
        std::vector<std::size_t> way;
        for (std::size_t i = 0; i < tasks_.size(); ++i) {
            way.push_back(bundle_of_[i]);
            while (!way.empty()) {
                const std::size_t b = way.back();
                const std::size_t first = done[b] != 0 ? none : next_need(b, done);
                if (first != none) {
                    way.push_back(first);
                    continue;
                }
                way.pop_back();
                if (done[b] == 0)
                    made.push_back(std::move(bundles_[b]));
                done[b] = 1;
            }
        }
        return made;
    }

private:
    static constexpr std::size_t none = cut_part::none;
    enum met : unsigned char { not_met, inside, outside };

    std::size_t next_need(std::size_t b, const std::vector<char>& done) const {
        for (const strand& s : bundles_[b].strands)
            for (const std::size_t t : s)
                for (const std::size_t first : tasks_[t].needs)
                    if (const std::size_t other = bundle_of_[first]; other != b && done[other] == 0)
                        return other;
        return none;
    }

    void find_after() {
        first_after_.assign(tasks_.size() + 2, 0);
        for (const task& t : tasks_)
            for (const std::size_t first : t.needs)
                ++first_after_[first + 2];
        std::partial_sum(first_after_.begin(), first_after_.end(), first_after_.begin());
        after_.resize(first_after_.back());
        for (std::size_t i = 0; i < tasks_.size(); ++i)
            for (const std::size_t first : tasks_[i].needs)
                after_[first_after_[first + 1]++] = i;
    }
    /// `joined` is what would become of the bundles `some`.
    bool may_join(std::span<const std::size_t> some, const bundle& joined) {
        met_.assign(bundles_.size(), not_met);
        for (const std::size_t b : some)
            met_[b] = inside;
        way_.assign(some.begin(), some.end());
        for (std::size_t q = 0; q < way_.size(); ++q)
            for (const strand& s : bundles_[way_[q]].strands)
                for (const std::size_t t : s)
                    for (std::size_t k = first_after_[t]; k < first_after_[t + 1]; ++k) {
                        const std::size_t b = bundle_of_[after_[k]];
                        if (met_[b] == inside && met_[way_[q]] != inside)
                            return false;
                        if (met_[b] == not_met) {
                            met_[b] = outside;
                            way_.push_back(b);
                        }
                    }
        return needs_point_forward(joined);
    }
    bool needs_point_forward(const bundle& joined) {
        position_.assign(tasks_.size(), none);
        std::size_t next = 0;
        for (const strand& s : joined.strands)
            for (const std::size_t t : s)
                position_[t] = next++;
        for (const strand& s : joined.strands)
            for (const std::size_t t : s)
                for (const std::size_t first : tasks_[t].needs)
                    if (position_[first] != none && position_[first] >= position_[t])
                        return false;
        return true;
    }
    bool join(const std::vector<std::size_t>& some, bundle joined) {
        if (!may_join(some, joined))
            return false;
        for (const strand& s : joined.strands)
            for (const std::size_t t : s)
                bundle_of_[t] = some.front();
        for (const std::size_t b : some)
            bundles_[b] = {};
        bundles_[some.front()] = std::move(joined);
        return true;
    }
    /// A task that is alone, to the end of a bundle of one strand.
    void append(std::size_t to, std::size_t t) {
        const std::size_t alone = bundle_of_[t];
        strand& longer = bundles_[to].strands[0];
        longer.push_back(t);
        if (may_join(std::array{to, alone}, bundles_[to])) {
            bundle_of_[t] = to;
            bundles_[alone] = {};
        } else {
            longer.pop_back();
        }
    }
    bool is_alone(std::size_t t) const {
        const bundle& b = bundles_[bundle_of_[t]];
        return b.strands.size() == 1 && b.strands[0].size() == 1;
    }

    /// Folds and single rows along edges, edge by edge, from the edge inward.
    void by_edge() {
        for (std::size_t t = 0; t < tasks_.size(); ++t) {
            const task& k = tasks_[t];
            const bool row = k.what.kind == operation_kind::stitching && k.members == 0;
            if ((k.what.kind == operation_kind::crease && !k.corner) || row)
                on_edge_.push_back(t);
        }
        std::sort(on_edge_.begin(), on_edge_.end(), [&](std::size_t a, std::size_t b) {
            const task &s = tasks_[a], &t = tasks_[b];
            return s.on != t.on ? s.on < t.on : s.from != t.from ? s.from < t.from : s.in != t.in ? s.in < t.in : a < b;
        });
    }
    bool on_one_edge(std::size_t a, std::size_t b) const {
        return tasks_[a].on == tasks_[b].on && tasks_[a].from == tasks_[b].from;
    }
    bool is_fold(std::size_t t) const { return tasks_[t].what.kind == operation_kind::crease; }

    /// Folds from one edge and the rows that hold what they turn; not rows that join it to another piece. A turning that
    /// encloses what was laid meanwhile begins anew.
    void chain_hems() {
        strand folds;
        fraction last = 0, before = 0;
        const auto end_edge = [&] {
            if (folds.size() > 1 && is_fold(folds.back()))
                chain(folds);
            folds.clear();
            last = before = 0;
        };
        for (std::size_t i = 0; i < on_edge_.size(); ++i) {
            const std::size_t t = on_edge_[i];
            if (i > 0 && !on_one_edge(on_edge_[i - 1], t))
                end_edge();
            if (is_fold(t)) {
                before = last;
                last = tasks_[t].in;
                if (!folds.empty() && !is_fold(folds.back()))
                    folds.clear();
                folds.push_back(t);
            } else if (!folds.empty() && tasks_[t].phase != flat_work::phase::joining &&
                       tasks_[t].in <= last * 2 - before) {
                folds.push_back(t);
                if (!is_fold(folds[folds.size() - 2]) || !chain(folds))
                    extend(folds);
            }
        }
        end_edge();
    }
    bool chain(const strand& all) {
        const auto encloses = [&](std::size_t t) {
            return is_fold(t) && tasks_[t].phase == flat_work::phase::enclosing;
        };
        const auto middle = std::find_if(all.begin(), all.end(), encloses);
        const auto joined = [&](auto from, auto end) {
            return end - from < 2 || join(part_bundles(from, end), {{strand(from, end)}, true});
        };
        const bool before = joined(all.begin(), middle);
        return joined(middle, all.end()) && before;
    }
    std::vector<std::size_t> part_bundles(strand::const_iterator from, strand::const_iterator end) const {
        std::vector<std::size_t> some;
        for (; from != end; ++from)
            if (some.empty() || bundle_of_[*from] != some.back())
                some.push_back(bundle_of_[*from]);
        return some;
    }
    /// A further row, to the hem before it.
    void extend(const strand& all) {
        const std::size_t hem = bundle_of_[all[all.size() - 2]], row = all.back();
        if (bundles_[hem].strands.size() == 1 && is_alone(row) && bundle_of_[row] != hem)
            append(hem, row);
    }

    /// To each laying, what is done with the piece once it lies there, and before the next piece is laid on it.
    void gather_layings() {
        std::vector<std::size_t> laid(parts(), none); // by number of the piece
        for (std::size_t t = 0; t < tasks_.size(); ++t) {
            const task& k = tasks_[t];
            if (k.what.kind == operation_kind::laying) {
                laid[k.number] = t;
                continue;
            }
            if (k.what.kind == operation_kind::snip || k.what.kind >= operation_kind::handwork ||
                k.what.kind == operation_kind::seam || !is_alone(t))
                continue;
            std::size_t last = laid[k.number];
            for (const std::size_t wall : k.wall_numbers)
                if (laid[wall] != none && (last == none || laid[wall] > last))
                    last = laid[wall];
            if (last != none && bundles_[bundle_of_[last]].strands.size() == 1)
                append(bundle_of_[last], t);
        }
    }
    std::size_t parts() const {
        std::size_t most = 0;
        for (const task& t : tasks_) {
            most = std::max(most, t.number + 1);
            for (const std::size_t wall : t.wall_numbers)
                most = std::max(most, wall + 1);
        }
        return most;
    }

    /// Left and right alike, top and bottom alike; all four where they are folded only.
    void join_edges() {
        std::vector<std::size_t> hems;
        for (std::size_t b = 0; b < bundles_.size(); ++b)
            if (bundles_[b].hem)
                hems.push_back(b);
        const auto piece = [&](std::size_t b) { return tasks_[bundles_[b].strands[0][0]].number; };
        std::sort(hems.begin(), hems.end(),
                  [&](std::size_t a, std::size_t b) { return piece(a) != piece(b) ? piece(a) < piece(b) : a < b; });
        for (std::size_t i = 0; i < hems.size();) {
            std::size_t end = i + 1;
            while (end < hems.size() && piece(hems[i]) == piece(hems[end]))
                ++end;
            join_edges_of(
                {hems.begin() + static_cast<std::ptrdiff_t>(i), hems.begin() + static_cast<std::ptrdiff_t>(end)});
            i = end;
        }
    }
    void join_edges_of(const std::vector<std::size_t>& hems) {
        for (std::size_t i = 0; i < hems.size(); ++i) {
            if (bundles_[hems[i]].strands.size() != 1)
                continue;
            const strand& one = bundles_[hems[i]].strands[0];
            const bool folds_only = std::all_of(one.begin(), one.end(), [&](std::size_t t) { return is_fold(t); });
            std::vector<std::size_t> alike = {hems[i]};
            for (std::size_t j = i + 1; j < hems.size(); ++j)
                if (const bundle& other = bundles_[hems[j]];
                    other.strands.size() == 1 && same_hem(one, other.strands[0]) &&
                    (folds_only || is_level(tasks_[one[0]].from) == is_level(tasks_[other.strands[0][0]].from)))
                    alike.push_back(hems[j]);
            join_alike(alike);
        }
    }
    bool same_hem(const strand& a, const strand& b) const {
        return a.size() == b.size() && std::equal(a.begin(), a.end(), b.begin(), [&](std::size_t s, std::size_t t) {
                   return tasks_[s].what.kind == tasks_[t].what.kind && tasks_[s].in == tasks_[t].in &&
                          tasks_[s].phase == tasks_[t].phase && tasks_[s].manner == tasks_[t].manner;
               });
    }
    /// All at once, or one after another to the first as far as that goes.
    void join_alike(const std::vector<std::size_t>& alike) {
        const auto all_of = [&](const std::vector<std::size_t>& some) {
            bundle joined = bundles_[some.front()];
            for (std::size_t i = 1; i < some.size(); ++i)
                joined.strands.insert(joined.strands.end(), bundles_[some[i]].strands.begin(),
                                      bundles_[some[i]].strands.end());
            return joined;
        };
        if (alike.size() < 2 || join(alike, all_of(alike)))
            return;
        for (std::size_t i = 1; i < alike.size(); ++i)
            join({alike[0], alike[i]}, all_of({alike[0], alike[i]}));
    }

    void join_copies() {
        std::vector<std::pair<likeness, std::size_t>> keys;
        keys.reserve(bundles_.size());
        for (std::size_t b = 0; b < bundles_.size(); ++b)
            if (!bundles_[b].strands.empty())
                keys.emplace_back(key_of(bundles_[b]), b);
        std::sort(keys.begin(), keys.end());
        std::vector<std::size_t> alike;
        for (std::size_t i = 0; i < keys.size();) {
            alike.clear();
            const std::size_t first = i;
            for (; i < keys.size() && keys[i].first == keys[first].first; ++i)
                alike.push_back(keys[i].second);
            join_alike(alike);
        }
    }
    /// The same for bundles whose tasks differ in the copy alone, or in places on another piece.
    using likeness = std::vector<std::int64_t>;
    likeness key_of(const bundle& b) const {
        const cut_part piece = tasks_[b.strands[0][0]].on;
        likeness key;
        key.reserve(32 * b.strands.size() * b.strands[0].size()); // more than most tasks say
        key.push_back(static_cast<std::int64_t>(piece.index));
        const auto add = [&](std::int64_t n) { key.push_back(n); };
        const auto add_fraction = [&](const fraction& x) { add(numerator(x)), add(denominator(x)); };
        for (const strand& s : b.strands)
            for (const std::size_t t : s) {
                const task& k = tasks_[t];
                const bool snip = k.what.kind == operation_kind::snip;
                add(static_cast<std::int64_t>(k.what.kind)), add(static_cast<std::int64_t>(k.from));
                add(static_cast<std::int64_t>(k.on.index)), add(k.members), add(k.corner ? 1 : 0);
                if (k.on == piece && !snip)
                    add_fraction(k.in), add_fraction(k.first), add_fraction(k.step);
                for (const fraction& x : k.manner)
                    add_fraction(x);
                for (const cut_part& w : k.walls)
                    add(static_cast<std::int64_t>(w.index));
            }
        return key;
    }

    const std::vector<task>& tasks_;
    std::vector<std::size_t> after_{}, first_after_{}; ///< tasks that need each task, task by task
    std::vector<bundle> bundles_{};
    std::vector<std::size_t> bundle_of_{};
    std::vector<std::size_t> on_edge_{};
    // While one joining is judged.
    std::vector<met> met_{};
    std::vector<std::size_t> way_{}, position_{};
};
using bundler = lazy_bundler<void>;

} // namespace turncloth::detail

#endif
