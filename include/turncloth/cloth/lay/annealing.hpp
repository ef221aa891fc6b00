// A lay improved by exchanges that may also make it worse for a while: the less so the longer it goes on.
//
//   class detail::lay_annealing<Pass>   run(start, steps, keep)
//   struct detail::anneal_start         order, twists, length, bound
//
//   detail::lay_annealing<detail::edge_to_edge> annealing{entries, seed};
//   annealing.run({order, twists, length, bound}, 1'000'000, keep);   // keep(placed, length) is shown each better lay
//
// An order that no single exchange betters need not be good. So at each target length an exchange that leaves a little
// more area over is kept too: by chance as rarely as it is large, measured against a heat that falls to nothing. The
// target is one step below the best length; where it is not met, the next try from the same order begins hotter, and the
// one after that cools half as fast. A sixth of the changes move a piece to another place nearby in the order and leave
// the order of the others as it is.
//
// The chance is drawn from the bits of a random number alone, in whole numbers: the zeros it begins with, and the bits
// after the first one for what lies between, are its logarithm to base 2 within a tenth.
#ifndef TURNCLOTH_CLOTH_LAY_ANNEALING_HPP
#define TURNCLOTH_CLOTH_LAY_ANNEALING_HPP

#include <turncloth/cloth/lay/order.hpp>
#include <turncloth/cloth/lay/pace.hpp>
#include <turncloth/cloth/lay/random.hpp>

#include <algorithm>
#include <bit>
#include <cstdint>
#include <utility>
#include <vector>

namespace turncloth::detail {

/// The best lay known: its order and twists (by entry; empty for none), its length, and a bound that ends the search.
struct anneal_start {
    std::vector<std::uint32_t> order{};
    std::vector<unsigned char> twists{};
    std::int64_t length = 0;
    std::int64_t bound = 0;
};

template <class Pass>
class lay_annealing {
public:
    lay_annealing(const lay_entries& entries, std::uint64_t seed) : entries_(&entries), pass_(entries), chance_(seed) {}

    /// Looks for shorter lays until so many steps are spent, the bound is met, or `keep` says stop.
    template <class Keep>
    void run(anneal_start best, lay_allowance steps, Keep keep) {
        allowance_ = steps.after(pass_.steps());
        const std::uint32_t size = entries_->size();
        std::uint64_t tries = std::uint64_t{64} * size;
        for (bool hot = false; best.length > best.bound && within_steps(); hot = !hot) {
            begin(best);
            if (!cool(best.length - 1, tries, hot ? hotter : heated)) {
                tries *= hot ? 2 : 1;
                continue;
            }
            best.order = pass_.order();
            best.twists = pass_.twists();
            best.length = pass_.reached();
            if (!keep(pass_.placed(), best.length))
                return;
        }
    }

    std::uint64_t steps() const noexcept { return pass_.steps(); }

private:
    bool within_steps() const { return allowance_.allows(pass_.steps()); }

    void begin(const anneal_start& from) {
        pass_.order(from.order);
        for (std::uint32_t p = 0; p < entries_->size(); ++p)
            pass_.twist(p, from.twists.empty() ? 0U : from.twists[from.order[p]]);
    }

    /// Whether all pieces were laid within the target, in so many tries from hot to cold; at first the heat is one in so
    /// many parts of a piece of middling area.
    bool cool(std::int64_t target, std::uint64_t tries, std::int64_t parts) {
        const lay_problem& problem = entries_->problem();
        const std::int64_t hottest = problem.area / std::max<std::int64_t>(1, problem.pieces) / parts;
        std::int64_t now = pass_.run(target, problem.area);
        for (std::uint64_t left = tries; left > 0 && now > 0 && within_steps(); --left) {
            const auto heat = static_cast<std::int64_t>(int128{hottest} * static_cast<std::int64_t>(left) /
                                                        static_cast<std::int64_t>(tries));
            now = change(target, now, now + worse_by(heat));
        }
        return now == 0;
    }

    /// So much worse a change may be this time: heat times the logarithm of one over a random number in 0 .. 1.
    std::int64_t worse_by(std::int64_t heat) noexcept {
        const std::uint64_t drawn = chance_() | 1U;
        const int zeros = std::countl_zero(drawn);
        constexpr int fine = 1024;
        const auto after = static_cast<int>((drawn << zeros << 1U) >> 54U);
        return static_cast<std::int64_t>(int128{heat} * (fine * (zeros + 1) - after) / fine);
    }

    /// One change, taken back where more than `allowed` would be left over; what is left over then.
    std::int64_t change(std::int64_t target, std::int64_t now, std::int64_t allowed) {
        const std::uint32_t size = entries_->size();
        const std::uint32_t p = chance_.below(size);
        if (size < 2 || chance_.below(100) < Pass::twists_in_100) {
            const unsigned before = pass_.twist(p, chance_.below(4));
            return kept(target, now, allowed, [&] { pass_.twist(p, before); });
        }
        if (chance_.below(4) == 0) {
            const std::uint32_t q = std::min(size - 1, p + 1 + chance_.below(nearby));
            move(p, q);
            return kept(target, now, allowed, [&] { move(q, p); });
        }
        const std::uint32_t other = chance_.below(size - 1);
        const std::uint32_t q = other + (other >= p ? 1 : 0);
        pass_.exchange(p, q);
        return kept(target, now, allowed, [&] { pass_.exchange(p, q); });
    }

    template <class TakeBack>
    std::int64_t kept(std::int64_t target, std::int64_t now, std::int64_t allowed, TakeBack take_back) {
        const std::int64_t next = pass_.run(target, allowed);
        if (next <= allowed)
            return next;
        take_back();
        return now;
    }

    void move(std::uint32_t from, std::uint32_t to) noexcept {
        for (; from < to; ++from)
            pass_.exchange(from, from + 1);
        for (; from > to; --from)
            pass_.exchange(from, from - 1);
    }

    static constexpr std::uint32_t nearby = 16;
    static constexpr std::int64_t heated = 14, hotter = 5; // found by trial, as the shares of the changes are

    const lay_entries* entries_;
    Pass pass_;
    lay_random chance_;
    lay_allowance allowance_;
};

} // namespace turncloth::detail

#endif
