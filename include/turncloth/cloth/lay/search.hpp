// The search for a short lay: an order of the pieces, improved by exchanges, at a target length that falls.
//
//   class detail::lay_search<Pass>   run(steps), fill(length, steps), offer(placed, length),
//                                    best(), best_order(), best_twists(), length(), bound()
//
//   detail::lay_search<detail::skyline> search{entries, bound, seed, show};
//   search.run(100'000);
//
// A pass lays the pieces in an order as well as it can and says what area it left over within the target length.
// Exchanges in the order are kept as long as no more is left over than before. The target is bisected between the bound
// and the best length; each time that is through, twice the effort goes into every target.
#ifndef TURNCLOTH_CLOTH_LAY_SEARCH_HPP
#define TURNCLOTH_CLOTH_LAY_SEARCH_HPP

#include <turncloth/cloth/lay/order.hpp>
#include <turncloth/cloth/lay/pace.hpp>
#include <turncloth/cloth/lay/random.hpp>

#include <algorithm>
#include <array>
#include <cstddef>
#include <cstdint>
#include <functional>
#include <numeric>
#include <utility>
#include <vector>

namespace turncloth::detail {

/// Orders that do well by themselves, by falling size: length, width, area, girth, longer side.
inline std::vector<std::vector<std::uint32_t>> first_orders(const lay_entries& entries) {
    using measure = std::int64_t (*)(const lay_kind&);
    static constexpr std::array<measure, 5> measures{
        [](const lay_kind& k) { return k.length; }, [](const lay_kind& k) { return k.width; },
        [](const lay_kind& k) { return k.width * k.length; }, [](const lay_kind& k) { return k.width + k.length; },
        [](const lay_kind& k) { return std::max(k.width, k.length); }};
    std::vector<std::vector<std::uint32_t>> orders;
    for (const measure size : measures) {
        std::vector<std::uint32_t> order(entries.size());
        std::iota(order.begin(), order.end(), 0U);
        std::stable_sort(order.begin(), order.end(), [&](std::uint32_t a, std::uint32_t b) {
            return std::pair(size(entries.kind(a)), entries.kind(a).area()) >
                   std::pair(size(entries.kind(b)), entries.kind(b).area());
        });
        orders.push_back(std::move(order));
    }
    return orders;
}

template <class Pass>
class lay_search {
public:
    using report = std::function<bool(const std::vector<laid>&, std::int64_t)>;

    lay_search(const lay_entries& entries, std::int64_t bound, std::uint64_t seed, report show)
        : entries_(&entries), pass_(entries), bound_(bound), chance_(seed), show_(std::move(show)) {}

    /// Searches until so many steps have been spent in all, the bound is met, or whoever is shown the lays says stop.
    void run(lay_allowance steps) {
        steps_ = steps;
        if (orders_.empty())
            begin();
        while (!done()) {
            fall(effort_);
            effort_ *= 2;
        }
    }

    /// Lays as much as it finds how to on a cloth of this length; best() is then what was laid. Returns the area left
    /// over.
    std::int64_t fill(std::int64_t length, lay_allowance steps) {
        steps_ = steps;
        length_ = length + 1;
        bound_ = 0;
        orders_ = first_orders(*entries_);
        std::int64_t least = entries_->problem().area + 1;
        for (std::uint64_t effort = 64; least > 0; effort *= 2) {
            for (const auto& order : orders_) {
                if (!improve(order, {}, length, effort)) {
                    const std::int64_t left = pass_.run(length, entries_->problem().area);
                    if (left < least) {
                        least = left;
                        best_ = pass_.placed();
                    }
                } else {
                    least = 0;
                }
                if (least == 0)
                    break;
            }
            if (stopped_ || !steps_.allows(pass_.steps()))
                break;
        }
        return least;
    }

    const std::vector<laid>& best() const noexcept { return best_; }
    /// Of the best lay found by exchanges; before any, of the first that was tried.
    const std::vector<std::uint32_t>& best_order() const noexcept {
        return best_order_.empty() ? orders_.front() : best_order_;
    }
    const std::vector<unsigned char>& best_twists() const noexcept { return best_twists_; }
    std::int64_t length() const noexcept { return length_; }
    std::int64_t bound() const noexcept { return bound_; }
    std::uint64_t steps() const noexcept { return pass_.steps(); }
    bool stopped() const noexcept { return stopped_; }

    void raise_bound(std::int64_t bound) noexcept { bound_ = bound; }

    /// Takes over a lay found elsewhere, if it is better.
    void offer(const std::vector<laid>& placed, std::int64_t length) {
        if (length >= length_)
            return;
        length_ = length;
        best_ = placed;
        if (!show_(best_, length_))
            stopped_ = true;
    }

private:
    bool done() const { return stopped_ || length_ <= bound_ || !steps_.allows(pass_.steps()); }

    void begin() {
        orders_ = first_orders(*entries_);
        length_ = entries_->problem().stacked + 1;
        for (const auto& order : orders_) {
            pass_.order(order);
            attempt(entries_->problem().stacked);
            if (stopped_ || length_ <= bound_)
                return;
        }
    }

    bool attempt(std::int64_t target) {
        if (pass_.run(target, 0) != 0)
            return false;
        keep();
        return true;
    }

    void keep() { offer(pass_.placed(), pass_.reached()); }

    /// Bisects the length between the bound and the best, with the same effort at each target: from the order that gave
    /// the best, then from the first orders anew.
    void fall(std::uint64_t effort) {
        std::int64_t low = bound_;
        while (!done() && low < length_) {
            const std::int64_t target = low + (length_ - 1 - low) / 2;
            bool found = !best_order_.empty() && improve(best_order_, best_twists_, target, effort);
            for (std::size_t i = 0; i < orders_.size() && !found && !done(); ++i)
                found = improve(orders_[i], {}, target, effort);
            if (found) {
                best_order_ = pass_.order();
                best_twists_ = pass_.twists();
            } else {
                low = target + 1;
            }
        }
    }

    /// Exchanges pieces in the order, and twists some, as long as no more area is left over than before; so that it
    /// also wanders among orders that are equally good. Whether all pieces were laid within the target.
    bool improve(const std::vector<std::uint32_t>& order, const std::vector<unsigned char>& twists, std::int64_t target,
                 std::uint64_t effort) {
        const std::uint32_t size = entries_->size();
        pass_.order(order);
        for (std::uint32_t p = 0; p < size; ++p)
            pass_.twist(p, twists.empty() ? 0U : twists[order[p]]);
        std::int64_t now = pass_.run(target, entries_->problem().area);
        for (std::uint64_t i = 0; i < effort && now > 0 && !done(); ++i)
            now = chance_.below(100) < Pass::twists_in_100 || size < 2 ? try_twist(target, now)
                                                                       : try_exchange(target, now);
        if (now > 0)
            return false;
        keep();
        return true;
    }

    std::int64_t try_exchange(std::int64_t target, std::int64_t now) {
        const std::uint32_t size = entries_->size();
        const std::uint32_t p = chance_.below(size);
        std::uint32_t q = chance_.below(size - 1);
        if (q >= p)
            ++q;
        if constexpr (makes_trials)
            return pass_.try_exchange(p, q, now);
        pass_.exchange(p, q);
        const std::int64_t next = pass_.run(target, now);
        if (next <= now)
            return next;
        pass_.exchange(p, q);
        return now;
    }

    std::int64_t try_twist(std::int64_t target, std::int64_t now) {
        const std::uint32_t p = chance_.below(entries_->size());
        const unsigned how = chance_.below(4);
        if constexpr (makes_trials)
            return pass_.try_twist(p, how, now);
        const unsigned before = pass_.twist(p, how);
        const std::int64_t next = pass_.run(target, now);
        if (next <= now)
            return next;
        pass_.twist(p, before);
        return now;
    }

    /// A pass may know better than to run anew for every change.
    static constexpr bool makes_trials = requires(Pass pass, std::int64_t allowed) { pass.try_twist(0U, 0U, allowed); };

    const lay_entries* entries_;
    Pass pass_;
    std::int64_t bound_;
    lay_allowance steps_;
    std::uint64_t effort_ = 64;
    lay_random chance_;
    report show_;
    std::vector<std::vector<std::uint32_t>> orders_;
    std::vector<laid> best_;
    std::vector<std::uint32_t> best_order_;
    std::vector<unsigned char> best_twists_;
    std::int64_t length_ = 0;
    bool stopped_ = false;
};

} // namespace turncloth::detail

#endif
