// A length below which no lay of the pieces can go, whatever the way of cutting.
//
//   std::int64_t detail::length_bound(problem)
//   class detail::lay_lengths    the lengths that a lay can have: at_least(length)
//
//   auto least = detail::length_bound(detail::prepared(pieces, cloth));
//
// Every bound here comes from one inequality. Let f map widths to numbers such that whenever pieces of widths w1, w2,
// ... lie side by side on the cloth (w1 + w2 + ... <= W), f(w1) + f(w2) + ... <= f(W): a dual feasible function. Cut
// the lay at any y: the pieces met there lie side by side, so their f add to at most f(W). Adding up over all y, each
// piece counts for its length times f of its width: the lay is at least as long as the sum of length x f(width) over
// f(W).
// - f(w) = w: the area.
// - For a threshold t <= W/2: widths above W - t count as W (nothing of t or more fits beside them), below t as 0,
//   others as themselves. At t = W/2 this is "pieces wider than half the cloth lie one after another".
// - For a threshold t: count in units of t, but round what is left over by the wide ones up: with m = floor(W/t),
//   w < W/2 -> 2 floor(w/t), w = W/2 -> m, w > W/2 -> 2 (m - floor((W - w)/t)), f(W) = 2m. Two pieces above W/2
//   never meet; one above W/2 leaves W - w, where the others take at most 2 floor((W - w)/t); without one above W/2,
//   2 sum floor(w/t) <= 2m, where at most two pieces are of W/2 exactly.
// - For k = 1, 2, ...: w (k + 1)/W if whole, else its floor, times W/k: f(w) = W/k floor((k + 1) w / W), and w where
//   whole.
// A piece that may lie either way counts by whichever way counts less.
#ifndef TURNCLOTH_CLOTH_LAY_BOUND_HPP
#define TURNCLOTH_CLOTH_LAY_BOUND_HPP

#include <turncloth/cloth/lay/problem.hpp>

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <utility>
#include <vector>

namespace turncloth::detail {

/// The bound that the function `counted` of a width gives, `counted(W)` being `whole`.
template <class Counted>
std::int64_t bound_by(const lay_problem& problem, std::int64_t whole, Counted counted) {
    int128 total = 0;
    for (const lay_kind& kind : problem.kinds) {
        int128 least = 0;
        if (kind.upright)
            least = static_cast<int128>(counted(kind.width)) * kind.length;
        if (kind.sideways) {
            const int128 turned = static_cast<int128>(counted(kind.length)) * kind.width;
            least = kind.upright ? std::min(least, turned) : turned;
        }
        total += least * kind.count;
    }
    return static_cast<std::int64_t>((total + whole - 1) / whole);
}

/// Thresholds worth trying: the widths on hand and what they leave of the cloth, up to half of it; evenly thinned if
/// many.
inline std::vector<std::int64_t> bound_thresholds(const lay_problem& problem) {
    std::vector<std::int64_t> all;
    const auto add = [&](std::int64_t width) {
        const std::int64_t other = problem.width - width;
        if (width > 0 && 2 * width <= problem.width)
            all.push_back(width);
        if (other > 0 && 2 * other <= problem.width)
            all.push_back(other), all.push_back(other + 1);
    };
    for (const lay_kind& kind : problem.kinds) {
        if (kind.upright)
            add(kind.width);
        if (kind.sideways)
            add(kind.length);
    }
    std::sort(all.begin(), all.end());
    all.erase(std::unique(all.begin(), all.end()), all.end());
    constexpr std::size_t most = 200;
    if (all.size() <= most)
        return all;
    std::vector<std::int64_t> thinned;
    for (std::size_t i = 0; i < most; ++i)
        thinned.push_back(all[i * (all.size() - 1) / (most - 1)]);
    return thinned;
}

/// Blocks take some of the length too: the more, the longer it is.
inline std::int64_t area_bound(const lay_problem& problem) {
    std::int64_t length = 0, longer = (problem.area + problem.width - 1) / problem.width;
    while (longer > length) {
        length = longer;
        longer = (problem.area + area_within(problem.blocks, length) + problem.width - 1) / problem.width;
    }
    return length;
}

inline std::int64_t longest_piece_bound(const lay_problem& problem) {
    std::int64_t longest = 0;
    std::int64_t at_edge = 0; // pieces that must lie against the edge lie one after another
    for (const lay_kind& kind : problem.kinds) {
        longest = std::max(longest, kind.least_length());
        if (kind.at_edge)
            at_edge += kind.length * kind.count;
    }
    return std::max({longest, at_edge, problem.reach_of_staying});
}

/// Calls use(whole, counted) for each function named above that is worth trying; `whole` is what it makes of the width.
template <class Use>
void each_dual_feasible(const lay_problem& problem, Use use) {
    const std::int64_t W = problem.width;
    for (const std::int64_t t : bound_thresholds(problem)) {
        if (2 * t <= W)
            use(W, [=](std::int64_t w) { return w > W - t ? W : w < t ? 0 : w; });
        const std::int64_t m = W / t;
        use(2 * m, [=](std::int64_t w) {
            if (2 * w == W)
                return m;
            return 2 * w < W ? 2 * (w / t) : 2 * (m - (W - w) / t);
        });
    }
    for (std::int64_t k = 1; k <= 12; ++k)
        use(W * k, [=](std::int64_t w) { return (k + 1) * w % W == 0 ? k * w : W * ((k + 1) * w / W); });
}

/// The best of the bounds that take no account of a repeat.
inline std::int64_t plain_bound(const lay_problem& problem) {
    std::int64_t best = std::max(area_bound(problem), longest_piece_bound(problem));
    each_dual_feasible(problem, [&](std::int64_t whole, const auto& counted) {
        best = std::max(best, bound_by(problem, whole, counted));
    });
    return best;
}

/// Where all pieces start at one place of the repeat, two that share a column start whole repeats apart, so each takes
/// its length rounded up to whole repeats, but for the last in the column; and likewise across. A lay of length L is
/// then a lay of rounded pieces of length L + what the rounding added at most, less what is passed over before the
/// first.
inline std::int64_t matched_bound(const lay_problem& problem) {
    lay_problem rounded = problem;
    const lay_kind& first = problem.kinds.front();
    const auto up = [](std::int64_t size, std::int64_t repeat) {
        return repeat <= 1 ? size : (size + repeat - 1) / repeat * repeat;
    };
    std::int64_t added_across = 0;
    std::int64_t added_along = 0;
    rounded.area = 0;
    rounded.blocks.clear(); // what is rounded up may reach over them
    rounded.reach_of_staying = 0;
    for (lay_kind& kind : rounded.kinds) {
        if (kind.match_across != first.match_across || kind.match_along != first.match_along)
            return 0;
        const std::int64_t width = up(kind.width, problem.repeat_across);
        const std::int64_t length = up(kind.length, problem.repeat_along);
        added_across = std::max(added_across, width - kind.width);
        added_along = std::max(added_along, length - kind.length);
        kind.width = width;
        kind.length = length;
        rounded.area = lay_sum(rounded.area, lay_product(kind.area(), kind.count));
    }
    rounded.width = problem.width - first.match_across + added_across;
    return plain_bound(rounded) - added_along + first.match_along;
}

/// The best of all bounds on the length, in the problem's own units, grown pieces and all.
inline std::int64_t length_bound(const lay_problem& problem) {
    const std::int64_t plain = plain_bound(problem);
    return problem.matching() ? std::max(plain, matched_bound(problem)) : plain;
}

/// A best lay can be pushed together until every piece touches another or the near end, so its length is a sum of
/// lengths of pieces, each used as often as there are such pieces at most. Where that is quickly worked out, and no blocks
/// are touched, it lifts bounds.
class lay_lengths {
public:
    lay_lengths(const lay_problem& problem, std::int64_t longest) {
        const auto work = int128{longest} * static_cast<std::int64_t>(problem.kinds.size());
        if (problem.matching() || !problem.blocks.empty() || work > most_work)
            return;
        std::vector<std::int64_t> used;
        sum_.assign(static_cast<std::size_t>(longest) + 1, 0);
        sum_[0] = 1;
        for (const lay_kind& kind : problem.kinds) {
            // With both ways allowed each may be used as often as there are pieces: more sums than there are, none
            // missing.
            if (kind.upright)
                add(kind.length, kind.count, used);
            if (kind.sideways)
                add(kind.width, kind.count, used);
        }
    }

    /// The least length from `length` on that a lay can have.
    std::int64_t at_least(std::int64_t length) const {
        while (std::cmp_less(length, sum_.size()) && sum_[static_cast<std::size_t>(length)] == 0)
            ++length;
        return length;
    }

private:
    static constexpr std::int64_t most_work = 1'000'000;

    void add(std::int64_t size, std::int64_t count, std::vector<std::int64_t>& used) {
        used.assign(sum_.size(), 0);
        const auto step = static_cast<std::size_t>(size);
        for (std::size_t at = step; at < sum_.size(); ++at) {
            if (sum_[at] != 0 || sum_[at - step] == 0 || used[at - step] >= count)
                continue;
            sum_[at] = 1;
            used[at] = used[at - step] + 1;
        }
    }

    std::vector<char> sum_; // by length: whether it is a sum
};

} // namespace turncloth::detail

#endif
