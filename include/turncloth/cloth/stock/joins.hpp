// Lengths from stock of which a piece may be joined of two parts: the search, in whole numbers.
//
//   class detail::end_to_end      fill(kinds): given stock filled from end to end, as far as that comes out
//   class detail::join_search     run(steps), bars(): given stock, few, searched to the end
//
//   auto bars = end_to_end(problem, {.lost = 1, .least_part = 2}).fill({0, 0});      // two pieces of the first stock
//
// A piece of length l is cut whole, or as two parts from two pieces of stock, together l and what the join takes. From
// end to end each piece of stock is filled as full as whole pieces fill it, and what is left takes the first part of the
// next piece where that wastes less.
//
// In the search a joined piece leaves open where it is divided. For given places the parts can be chosen if and only
// if no set S of pieces of stock is asked for more than it holds: whole pieces in S, both parts of a piece that lies in
// S alone, and the least part of each that lies half in S (P. Hall's condition, for the flow of parts into stock). All
// are whole numbers, and so is the division that a flow finds.
#ifndef TURNCLOTH_CLOTH_STOCK_JOINS_HPP
#define TURNCLOTH_CLOTH_STOCK_JOINS_HPP

#include <turncloth/cloth/stock/join_terms.hpp>
#include <turncloth/cloth/stock/knapsack.hpp>
#include <turncloth/cloth/stock/problem.hpp>

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <utility>
#include <vector>

namespace turncloth::detail {

/// Every piece by itself, longest first, as an index into what is wanted.
inline std::vector<std::size_t> one_by_one(const stock_problem& problem) {
    std::vector<std::size_t> all;
    for (std::size_t i = 0; i < problem.wanted.size(); ++i)
        all.insert(all.end(), static_cast<std::size_t>(problem.wanted[i].count), i);
    std::stable_sort(all.begin(), all.end(),
                     [&](std::size_t a, std::size_t b) { return problem.wanted[a].length > problem.wanted[b].length; });
    return all;
}

/// Fills given pieces of stock from end to end.
class end_to_end {
public:
    end_to_end(const stock_problem& problem, const join_terms& terms) : problem_(problem), terms_(terms) {}

    /// Empty where it does not come out.
    std::vector<joined_bar> fill(const std::vector<std::size_t>& kinds) {
        for (const stock_demand& d : problem_.wanted)
            rest_.push_back({d.length + loss(), d.length + loss(), d.count});
        std::vector<joined_bar> bars;
        std::optional<joined_part> carried;
        for (std::size_t b = 0; b < kinds.size() && (carried || !done()); ++b) {
            bars.push_back({kinds[b], {}});
            std::int64_t room = size(kinds[b]);
            if (carried) {
                room -= carried->length + loss();
                bars.back().parts.push_back(*carried);
                carried.reset();
            }
            room -= take_whole(bars.back(), room);
            if (b + 1 < kinds.size() && room - loss() >= terms_.least_part && room > terms_.lost + loss())
                carried = begin_joined(bars.back(), room - loss(), size(kinds[b + 1]) - loss());
        }
        return !carried && done() ? bars : std::vector<joined_bar>{};
    }

private:
    bool done() const {
        return std::all_of(rest_.begin(), rest_.end(), [](const worth& w) { return w.most == 0; });
    }
    std::int64_t loss() const { return problem_.loss_per_cut; }
    std::int64_t size(std::size_t kind) const { return problem_.stock[kind].length + loss(); }

    std::int64_t take_whole(joined_bar& bar, std::int64_t room) {
        const filling best = best_fill(rest_, room, 1'000'000);
        for (std::size_t i = 0; i < best.take.size(); ++i) {
            rest_[i].most -= best.take[i];
            for (std::int64_t n = 0; n < best.take[i]; ++n)
                bar.parts.push_back({i, 0, problem_.wanted[i].length, 0});
        }
        return best.value;
    }

    // The longest piece whose first part may be so long (or shorter, if its second would be too short).
    std::optional<joined_part> begin_joined(joined_bar& bar, std::int64_t first, std::int64_t most_second) {
        std::size_t longest = rest_.size();
        for (std::size_t i = 0; i < rest_.size(); ++i)
            if (const std::int64_t second = problem_.wanted[i].length + terms_.lost - first;
                rest_[i].most > 0 && second >= terms_.least_part && second <= most_second &&
                (longest == rest_.size() || rest_[i].length > rest_[longest].length))
                longest = i;
        if (longest == rest_.size())
            return std::nullopt;
        --rest_[longest].most;
        bar.parts.push_back({longest, 1, first, joins_});
        return joined_part{longest, 2, problem_.wanted[longest].length + terms_.lost - first, joins_++};
    }

    const stock_problem& problem_;
    const join_terms& terms_;
    std::vector<worth> rest_;
    std::size_t joins_ = 0;
};

/// Searches given pieces of stock, few of them, to the end.
class join_search {
public:
    enum class outcome : unsigned char { found, refuted, unknown };
    static constexpr std::size_t most_bars = 8;

    join_search(const stock_problem& problem, const join_terms& terms, std::vector<std::size_t> kinds)
        : problem_(problem), terms_(terms), kinds_(std::move(kinds)), pieces_(one_by_one(problem)) {
        for (std::size_t b = 0; b < kinds_.size(); ++b)
            places_.push_back({b, b});
        for (std::size_t b = 0; b < kinds_.size(); ++b)
            for (std::size_t c = b + 1; c < kinds_.size(); ++c)
                places_.push_back({b, c});
        left_.assign(std::size_t{1} << kinds_.size(), 0);
        for (std::size_t set = 0; set < left_.size(); ++set)
            for (std::size_t b = 0; b < kinds_.size(); ++b)
                if ((set >> b & 1) != 0)
                    left_[set] += problem.stock[kinds_[b]].length + problem.loss_per_cut;
        used_.assign(kinds_.size(), 0);
        for (const std::size_t p : pieces_)
            still_ += problem.wanted[p].length + problem.loss_per_cut;
    }

    outcome run(std::int64_t& steps) {
        if (place(0, 0, steps))
            return outcome::found;
        return steps > 0 ? outcome::refuted : outcome::unknown;
    }

    std::vector<joined_bar> bars() const {
        std::vector<joined_bar> all;
        for (const std::size_t kind : kinds_)
            all.push_back({kind, {}});
        const std::vector<std::int64_t> first = divided();
        for (std::size_t i = 0; i < pieces_.size(); ++i) {
            const auto [b, c] = taken_[i];
            const std::int64_t length = problem_.wanted[pieces_[i]].length;
            if (b == c) {
                all[b].parts.push_back({pieces_[i], 0, length, 0});
                continue;
            }
            all[b].parts.push_back({pieces_[i], 1, first[i], i});
            all[c].parts.push_back({pieces_[i], 2, length + terms_.lost - first[i], i});
        }
        return all;
    }

private:
    using ends = std::pair<std::size_t, std::size_t>; // the pieces of stock of both parts, or twice that of the whole

    // What this piece there asks of a set; it asks nothing of a set that it does not touch.
    std::int64_t asked(std::size_t piece, ends at, std::size_t set) const {
        const bool b = (set >> at.first & 1) != 0, c = (set >> at.second & 1) != 0;
        const std::int64_t length = problem_.wanted[piece].length, loss = problem_.loss_per_cut;
        if (at.first == at.second)
            return b ? length + loss : 0;
        return b && c ? length + terms_.lost + 2 * loss : (b || c ? terms_.least_part + loss : 0);
    }

    bool put(std::size_t piece, ends at, std::int64_t times) {
        bool fits = true;
        for (std::size_t set = 1; set < left_.size(); ++set)
            fits = (left_[set] -= times * asked(piece, at, set)) >= 0 && fits;
        used_[at.first] += times;
        used_[at.second] += times;
        return fits;
    }

    // Another of its kind that is empty too comes before it.
    bool later_of_equals(std::size_t b) const {
        for (std::size_t a = 0; a < b; ++a)
            if (used_[a] == 0 && used_[b] == 0 && kinds_[a] == kinds_[b])
                return true;
        return false;
    }

    bool useless(std::size_t piece, ends at) const {
        if (at.first == at.second)
            return later_of_equals(at.first);
        if (problem_.wanted[piece].length + terms_.lost < 2 * terms_.least_part || later_of_equals(at.first))
            return true;
        for (std::size_t a = 0; a < at.second; ++a)
            if (a != at.first && used_[a] == 0 && used_[at.second] == 0 && kinds_[a] == kinds_[at.second])
                return true;
        return false;
    }

    bool place(std::size_t i, std::size_t from, std::int64_t& steps) {
        if (i == pieces_.size())
            return true;
        const std::size_t piece = pieces_[i];
        if (still_ > left_.back())
            return false;
        const std::int64_t whole = problem_.wanted[piece].length + problem_.loss_per_cut;
        for (std::size_t at = from; at < places_.size() && steps > 0; ++at) {
            if (useless(piece, places_[at]))
                continue;
            steps -= static_cast<std::int64_t>(left_.size());
            const bool fits = put(piece, places_[at], 1);
            still_ -= whole;
            taken_.push_back(places_[at]);
            const bool same_next = i + 1 < pieces_.size() && pieces_[i + 1] == piece;
            if (fits && place(i + 1, same_next ? at : 0, steps))
                return true;
            taken_.pop_back();
            still_ += whole;
            put(piece, places_[at], -1);
        }
        return false;
    }

    // The length of each first part. All begin with the least, and the second parts give way along a path from a piece of
    // stock that is asked for too much to one with room.
    std::vector<std::int64_t> divided() const {
        std::vector<std::int64_t> first(pieces_.size(), terms_.least_part), room;
        for (const std::size_t kind : kinds_)
            room.push_back(problem_.stock[kind].length + problem_.loss_per_cut);
        for (std::size_t i = 0; i < pieces_.size(); ++i) {
            const auto [b, c] = taken_[i];
            const std::int64_t length = problem_.wanted[pieces_[i]].length, loss = problem_.loss_per_cut;
            room[b] -= (b == c ? length : first[i]) + loss;
            if (b != c)
                room[c] -= length + terms_.lost - first[i] + loss;
        }
        for (std::size_t b = 0; b < room.size(); ++b)
            while (room[b] < 0)
                if (!relieve(b, room, first))
                    return first;
        return first;
    }

    // What may move along piece i away from stock b.
    std::int64_t movable(std::size_t i, std::size_t b, const std::vector<std::int64_t>& first) const {
        const std::int64_t total = problem_.wanted[pieces_[i]].length + terms_.lost;
        const std::int64_t here = taken_[i].first == b ? first[i] : total - first[i];
        return here - terms_.least_part;
    }

    bool relieve(std::size_t from, std::vector<std::int64_t>& room, std::vector<std::int64_t>& first) const {
        std::vector<std::size_t> by(room.size(), pieces_.size()), line{from};
        for (std::size_t n = 0; n < line.size(); ++n) {
            const std::size_t b = line[n];
            if (room[b] > 0)
                return shift(from, b, by, room, first);
            for (std::size_t i = 0; i < pieces_.size(); ++i) {
                const auto [p, q] = taken_[i];
                if (p == q || (p != b && q != b) || movable(i, b, first) <= 0)
                    continue;
                if (const std::size_t to = p == b ? q : p; to != from && by[to] == pieces_.size()) {
                    by[to] = i;
                    line.push_back(to);
                }
            }
        }
        return false;
    }

    bool shift(std::size_t from, std::size_t to, const std::vector<std::size_t>& by, std::vector<std::int64_t>& room,
               std::vector<std::int64_t>& first) const {
        const auto other = [&](std::size_t i, std::size_t b) {
            return taken_[i].first == b ? taken_[i].second : taken_[i].first;
        };
        std::int64_t much = std::min(room[to], -room[from]);
        for (std::size_t b = to; b != from; b = other(by[b], b))
            much = std::min(much, movable(by[b], other(by[b], b), first));
        for (std::size_t b = to; b != from; b = other(by[b], b))
            first[by[b]] += taken_[by[b]].first == b ? much : -much;
        room[to] -= much;
        room[from] += much;
        return true;
    }

    const stock_problem& problem_;
    const join_terms& terms_;
    std::vector<std::size_t> kinds_, pieces_;
    std::vector<ends> places_, taken_;
    std::vector<std::int64_t> left_, used_;
    std::int64_t still_ = 0;
};

} // namespace turncloth::detail

#endif
