// One search for a lay, of one way of cutting: what is tried in which order, and how the effort is shared out among it.
//
//   lay_maker<skyline_trials>(problem, cloth edge, effort, watcher).make()   the shortest lay found
//   with_maker(problem, cloth, effort, shown, use)                         by the way of cutting that the cloth asks for
//
//   with_maker(prepared(pieces, cloth), cloth, {}, {}, [](auto& maker) { return maker.make(); });
//
// It is apart from its front door (cloth/lay/solve.hpp) so that a user of turncloth::compiled reads none of the searches.
#ifndef TURNCLOTH_CLOTH_LAY_LAY_MAKER_HPP
#define TURNCLOTH_CLOTH_LAY_LAY_MAKER_HPP

#include <turncloth/cloth/lay/annealing.hpp>
#include <turncloth/cloth/lay/bound.hpp>
#include <turncloth/cloth/lay/cuts.hpp>
#include <turncloth/cloth/lay/edge_to_edge.hpp>
#include <turncloth/cloth/lay/exact.hpp>
#include <turncloth/cloth/lay/exact_cuts.hpp>
#include <turncloth/cloth/lay/pace.hpp>
#include <turncloth/cloth/lay/problem.hpp>
#include <turncloth/cloth/lay/round_blocks.hpp>
#include <turncloth/cloth/lay/search.hpp>
#include <turncloth/cloth/lay/skyline_trials.hpp>
#include <turncloth/cloth/lay/strip_values.hpp>
#include <turncloth/cloth/lay/strips.hpp>
#include <turncloth/cloth/lay/types.hpp>
#include <turncloth/cloth/lay/weighted_bound.hpp>

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <tuple>
#include <type_traits>
#include <utility>
#include <vector>

namespace turncloth::detail {

/// Hands out the caller's pieces of a kind one after another.
class piece_names {
public:
    explicit piece_names(const lay_problem& problem) : problem_(&problem), next_(problem.kinds.size()) {}

    std::size_t take(std::uint32_t kind) {
        auto& [source, taken] = next_[kind];
        const auto& sources = problem_->kinds[kind].sources;
        if (taken == sources[source].second)
            ++source, taken = 0;
        ++taken;
        return sources[source].first;
    }

private:
    const lay_problem* problem_;
    std::vector<std::pair<std::size_t, std::int64_t>> next_;
};

/// From the search's sizes back to the caller's.
inline whole_lay finished_lay(const lay_entries& entries, const std::vector<laid>& placed, std::int64_t length,
                              std::int64_t bound, std::int64_t cloth_edge) {
    const lay_problem& problem = entries.problem();
    piece_names names(problem);
    whole_lay result;
    result.places = problem.staying;
    result.places.reserve(result.places.size() + placed.size());
    for (const laid& piece : placed) {
        const lay_kind& kind = entries.kind(piece.entry);
        const std::int64_t width = (piece.turned ? kind.length : kind.width) * problem.scale_x - problem.gap;
        const std::int64_t along = (piece.turned ? kind.width : kind.length) * problem.scale_y - problem.gap;
        result.places.push_back({.piece = names.take(entries.kind_index(piece.entry)),
                                 .x = piece.x * problem.scale_x,
                                 .y = piece.y * problem.scale_y,
                                 .width = width,
                                 .length = along,
                                 .turned = piece.turned});
    }
    std::sort(result.places.begin(), result.places.end(),
              [](const lay_place& a, const lay_place& b) { return std::tuple(a.y, a.x) < std::tuple(b.y, b.x); });
    result.length = length * problem.scale_y - problem.gap;
    result.bound = bound * problem.scale_y - problem.gap;
    if (problem.cutting != cutting::free)
        result.cuts = cutting_order(result.places, cloth_edge, result.length);
    return result;
}

/// A search of one way of cutting, that shows the caller what it finds and how far it is.
template <class Pass>
class lay_maker {
public:
    lay_maker(const lay_problem& problem, std::int64_t cloth_edge, const lay_effort& effort, const lay_watcher& watcher)
        : problem_(problem),
          entries_(problem),
          cloth_edge_(cloth_edge),
          effort_(effort),
          search_(entries_, length_bound(problem), effort.seed,
                  [this, &watcher](const std::vector<laid>& placed, std::int64_t length) {
                      return !watcher.improved || watcher.improved(made(placed, length));
                  }),
          pace_(effort.steps, asking(watcher)) {}

    whole_lay make() {
        search_.run(0); // a first lay, whatever the effort
        const lay_lengths lengths(problem_, search_.length());
        search_.raise_bound(lengths.at_least(search_.bound()));
        if (problem_.cutting == cutting::strips)
            search_.raise_bound(std::max(search_.bound(), lengths.at_least(strips_bound(problem_))));
        const std::uint64_t eighth = effort_.steps / 8;
        weigh(lengths, eighth);
        if (problem_.cutting != cutting::free && exact_cuts::suits(problem_)) {
            search_until(eighth);
            cut_exactly(eighth * 5);
        }
        if (problem_.pieces <= exact_lay::most_pieces) {
            search_until(eighth);
            prove(lengths, eighth * (problem_.cutting == cutting::free ? 6 : 1));
        }
        if (problem_.cutting == cutting::strips && strip_values::suits(problem_))
            learn(effort_.steps / 4 * 3 - std::min(by_others_, effort_.steps / 4 * 3));
        const std::uint64_t rest = effort_.steps - std::min(by_others_, effort_.steps);
        search_until(anneals ? std::min(rest, exchanges_alone) : rest);
        if (anneals)
            anneal(rest - std::min(rest, search_.steps()));
        return made(search_.best(), search_.length());
    }

    whole_lay fill(std::int64_t length) {
        search_.fill(length, effort_.steps);
        std::int64_t reached = 0;
        for (const laid& piece : search_.best()) {
            const lay_kind& kind = entries_.kind(piece.entry);
            reached = std::max(reached, piece.y + (piece.turned ? kind.width : kind.length));
        }
        whole_lay result = made(search_.best(), reached);
        result.bound = 0;
        return result;
    }

private:
    whole_lay made(const std::vector<laid>& placed, std::int64_t length) const {
        return finished_lay(entries_, placed, length, search_.bound(), cloth_edge_);
    }

    lay_pace::asking asking(const lay_watcher& watcher) const {
        if (!watcher.keep_going)
            return {};
        return [this, &watcher](std::uint64_t spent) {
            const auto in_caller_s = [&](std::int64_t length) { return length * problem_.scale_y - problem_.gap; };
            return watcher.keep_going(
                {spent, effort_.steps, in_caller_s(search_.length()), in_caller_s(search_.bound())});
        };
    }

    /// Whether there is still something to look for.
    bool open() const noexcept { return !pace_.stopped() && !search_.stopped() && search_.bound() < search_.length(); }

    /// The exchanges go on until so many steps of their own are spent in all.
    void search_until(std::uint64_t steps) { search_.run({steps, pace_, by_others_}); }

    /// So many steps for another part.
    lay_allowance allowed(std::uint64_t steps) { return {steps, pace_, by_others_ + search_.steps()}; }

    /// Halves what is between the bound and the lay known by lengths that weights refute: so no lay, however it is cut,
    /// is so short.
    void weigh(const lay_lengths& lengths, std::uint64_t steps) {
        if (!open() || !weighted_bound::suits(problem_))
            return;
        weighted_bound weighted(problem_);
        for (std::int64_t last = search_.length() - 1; search_.bound() <= last && weighted.steps() < steps;) {
            const std::int64_t middle = search_.bound() + (last - search_.bound()) / 2;
            if (weighted.refutes(middle, allowed(steps - weighted.steps())))
                search_.raise_bound(lengths.at_least(middle + 1));
            else
                last = middle - 1;
        }
        by_others_ += weighted.steps();
    }

    /// Tries the lengths a free lay can have from the bound up: refuting one raises the bound, filling one ends the
    /// search, or is as far as the bound can be raised where the lay is not to be cut free.
    void prove(const lay_lengths& lengths, std::uint64_t steps) {
        exact_lay exact(problem_);
        while (open()) {
            const proof shown = exact.prove(search_.bound(), allowed(steps - exact.steps()));
            if (shown == proof::refuted)
                search_.raise_bound(lengths.at_least(search_.bound() + 1));
            if (shown == proof::found && problem_.cutting == cutting::free)
                search_.offer(as_entries(exact.placed()), search_.bound());
            if (shown == proof::given_up || shown == proof::found)
                break;
        }
        by_others_ += exact.steps();
    }

    /// Tries every way to cut: a shorter lay is the shortest, and without one the best known is.
    void cut_exactly(std::uint64_t steps) {
        if (!open())
            return;
        exact_cuts exact(problem_);
        const proof shown = exact.solve(search_.length(), allowed(steps));
        if (shown == proof::refuted)
            search_.raise_bound(search_.length());
        if (shown == proof::found) {
            search_.raise_bound(exact.length());
            search_.offer(as_entries(exact.placed()), exact.length());
        }
        by_others_ += exact.steps();
    }

    void learn(std::uint64_t steps) {
        if (!open())
            return;
        strip_values values(problem_, effort_.seed);
        values.run(allowed(steps), search_.length(), [this](const std::vector<laid>& placed, std::int64_t length) {
            search_.offer(as_entries(placed), length);
            return open();
        });
        by_others_ += values.steps();
    }

    void anneal(std::uint64_t steps) {
        if (!open())
            return;
        lay_annealing<Pass> annealing(entries_, effort_.seed);
        annealing.run({search_.best_order(), search_.best_twists(), search_.length(), search_.bound()}, allowed(steps),
                      [this](const std::vector<laid>& placed, std::int64_t length) {
                          search_.offer(placed, length);
                          return open();
                      });
    }

    std::vector<laid> as_entries(std::vector<laid> of_kinds) const {
        std::uint32_t entry = 0;
        for (laid& piece : of_kinds) {
            for (entry = 0; entries_.kind_index(entry) != piece.entry;)
                ++entry;
            piece.entry = entry;
        }
        return of_kinds;
    }

    /// Cuts to any depth depend on all that was cut before, and a search of better exchanges alone is soon stuck.
    static constexpr bool anneals = std::is_same_v<Pass, edge_to_edge>;
    static constexpr std::uint64_t exchanges_alone = lay_effort{}.steps;

    const lay_problem& problem_;
    lay_entries entries_;
    std::int64_t cloth_edge_;
    const lay_effort& effort_;
    lay_search<Pass> search_;
    std::uint64_t by_others_ = 0; // steps spent by all but the exchanges
    lay_pace pace_;
};

/// Makes the lay by the way of cutting that the cloth asks for.
template <class Use>
whole_lay with_maker(const lay_problem& problem, const lay_cloth& cloth, const lay_effort& effort,
                     const lay_watcher& watcher, Use use) {
    const std::int64_t edge = lay_sum(cloth.width, cloth.sliver ? 1 : 0);
    switch (cloth.cutting) {
    case cutting::edge_to_edge: {
        lay_maker<edge_to_edge> maker(problem, edge, effort, watcher);
        return use(maker);
    }
    case cutting::strips: {
        lay_maker<strips> maker(problem, edge, effort, watcher);
        return use(maker);
    }
    case cutting::free:
        break;
    }
    if (!problem.blocks.empty()) {
        lay_maker<round_blocks> maker(problem, edge, effort, watcher);
        return use(maker);
    }
    lay_maker<skyline_trials> maker(problem, edge, effort, watcher);
    return use(maker);
}

} // namespace turncloth::detail

#endif
