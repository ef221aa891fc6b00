// Whether pieces can be laid within a length at all, by weights of their sizes across and along together.
//
//   class detail::weighted_bound   suits(problem), refutes(length, steps), steps()
//
//   detail::weighted_bound weighted(problem);
//   if (weighted.refutes(length, 100'000)) bound = length + 1;
//
// Give every size across a weight so that pieces side by side never weigh more than F together, and every size along
// one so that pieces one beyond another never weigh more than G. Then no lay has pieces whose products of both weights
// add to more than F G. For of any two pieces of a lay one lies wholly left of the other, or wholly nearer. Move every
// piece to the greatest weight across of any pieces each left of the next and the last left of it, and likewise along.
// Pieces each left of the next fit side by side, so all of it stays within F by G; and which of two was left, or
// nearer, still is. So the products are the areas of a lay on F by G.
//
// With the weights of one direction given, the best in the other are a linear program (lay/size_prices.hpp); going to
// and fro between the directions the sum of the products only grows, until it is more than F G or stands still. It
// stands still elsewhere from another start: the sizes themselves, and every function of lay/bound.hpp. A piece that
// may lie either way counts by whichever way counts less.
#ifndef TURNCLOTH_CLOTH_LAY_WEIGHTED_BOUND_HPP
#define TURNCLOTH_CLOTH_LAY_WEIGHTED_BOUND_HPP

#include <turncloth/cloth/lay/bound.hpp>
#include <turncloth/cloth/lay/pace.hpp>
#include <turncloth/cloth/lay/size_prices.hpp>

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <utility>
#include <vector>

namespace turncloth::detail {

class weighted_bound {
public:
    /// More kinds than this make the programs long, and the bound of many small pieces is near enough.
    static bool suits(const lay_problem& problem) { return problem.kinds.size() <= 24; }

    explicit weighted_bound(const lay_problem& problem)
        : problem_(&problem), across_(problem, true), along_(problem, false) {}

    /// True only if no lay of the length is there; gives up after so many steps of work.
    bool refutes(std::int64_t length, lay_allowance steps) {
        length_ = length;
        allowance_ = steps.after(this->steps());
        if (length < longest_piece_bound(*problem_) || (!last_.of_size.empty() && refutes_from(last_)))
            return true;
        const size_weights as_they_are = weighed(problem_->width, [](std::int64_t size) { return size; });
        if (refutes_from(as_they_are))
            return true;
        bool refuted = false;
        each_dual_feasible(*problem_, [&](std::int64_t whole, const auto& counted) {
            refuted = refuted || (within_steps() && refutes_from(weighed(whole, counted)));
        });
        return refuted;
    }

    std::uint64_t steps() const noexcept { return across_.steps() + along_.steps(); }

private:
    template <class Counted>
    size_weights weighed(std::int64_t whole, Counted counted) const {
        size_weights weights{{}, whole};
        for (const std::int64_t size : across_.sizes())
            weights.of_size.push_back(size > problem_->width ? 0 : counted(size));
        return weights;
    }

    bool within_steps() const { return allowance_.allows(steps()); }

    bool refutes_from(size_weights across) {
        double before = 0;
        for (int rounds = 0; rounds < most_rounds && within_steps(); ++rounds) {
            const size_weights along = along_.best(length_, across_, across);
            if (too_heavy(across, along))
                return remember(std::move(across));
            across = across_.best(problem_->width, along_, along);
            if (too_heavy(across, along))
                return remember(std::move(across));
            if (heaviness_ < before + least_gain)
                break;
            before = heaviness_;
        }
        return false;
    }

    bool remember(size_weights across) {
        last_ = std::move(across);
        return true;
    }

    /// The products are sums of whole numbers: below 2^30 each, of at most 2^17 pieces.
    bool too_heavy(const size_weights& across, const size_weights& along) {
        int128 total = 0;
        for (std::size_t k = 0; k < problem_->kinds.size(); ++k) {
            const lay_kind& kind = problem_->kinds[k];
            int128 least = -1;
            for (const bool sideways : {false, true}) {
                if (!(sideways ? kind.sideways && kind.width <= length_ : kind.upright && kind.length <= length_))
                    continue;
                const int128 product = static_cast<int128>(across.of_size[across_.of_kind(k, sideways)]) *
                                       along.of_size[along_.of_kind(k, sideways)];
                least = least < 0 ? product : std::min(least, product);
            }
            total += least * kind.count;
        }
        const int128 whole = static_cast<int128>(across.whole) * along.whole;
        heaviness_ = static_cast<double>(total) / static_cast<double>(whole);
        return total > whole;
    }

    static constexpr int most_rounds = 12;
    static constexpr double least_gain = 1e-6;

    const lay_problem* problem_;
    size_prices across_, along_;
    size_weights last_; // across, of the last length refuted
    std::int64_t length_ = 0;
    lay_allowance allowance_;
    double heaviness_ = 0;
};

} // namespace turncloth::detail

#endif
