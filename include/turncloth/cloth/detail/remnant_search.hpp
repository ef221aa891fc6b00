// How pieces are shared out between remnants and new cloth.
//
//   remnant_search<Unit>(pieces, remnants, cloth or nullptr, effort).plan()        the least new cloth
//   remnant_search<Unit>(pieces, remnants, nullptr, effort).share_out()            whether the remnants hold them all
//
// Where few pieces and remnants leave few ways to share them out, every way is tried, so that the plan is as good as
// the lays in it, and a plan of proved lays is proved. Otherwise a plan is made by filling the remnants in turn, and
// mended: one or two remnants give up their pieces and are filled anew, without a piece that they might better leave to
// others. A plan that buys no more than the last is gone on from, so that the search can cross level ground.
#ifndef TURNCLOTH_CLOTH_DETAIL_REMNANT_SEARCH_HPP
#define TURNCLOTH_CLOTH_DETAIL_REMNANT_SEARCH_HPP

#include <turncloth/cloth/lay.hpp>
#include <turncloth/cloth/lay/random.hpp>

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <map>
#include <utility>
#include <vector>

namespace turncloth {

// Defined in cloth/remnants.hpp.
template <length_unit Unit>
struct remnant;
template <length_unit Unit>
struct cloth_plan;

namespace detail {

/// Of each piece, how many.
using piece_counts = std::vector<std::int64_t>;

/// Some of the pieces, so many of each, with their indices in the whole list.
template <length_unit Unit>
struct piece_selection {
    std::vector<cloth_piece<Unit>> pieces;
    std::vector<std::size_t> index;

    piece_selection(const std::vector<cloth_piece<Unit>>& all, const piece_counts& wanted) {
        for (std::size_t i = 0; i < all.size(); ++i) {
            if (wanted[i] <= 0)
                continue;
            pieces.push_back(all[i]);
            pieces.back().quantity = wanted[i];
            if (pieces.back().name.empty())
                pieces.back().name = named(all[i], i);
            index.push_back(i);
        }
    }
    lay<Unit> in_all(lay<Unit> part, std::size_t all) const {
        for (cloth_place<Unit>& place : part.places)
            place.piece = index[place.piece];
        std::vector<std::int64_t> spare(all, 0);
        for (std::size_t i = 0; i < part.spare.size(); ++i)
            spare[index[i]] = part.spare[i];
        part.spare = std::move(spare);
        return part;
    }
};

template <length_unit Unit>
bool fits_remnant(const cloth_piece<Unit>& piece, std::size_t index, const remnant<Unit>& on) {
    if ((piece.on_fold && !on.cloth.folded) || too_wide(piece, index, on.cloth))
        return false;
    const length<Unit> start = into_repeat(piece.match_along, on.cloth.repeat_along);
    if (start + piece.size.height() <= on.length && across_as_laid(piece) <= on.cloth.usable_width())
        return true;
    return may_turn(piece, on.cloth) && piece.size.width() <= on.length &&
           piece.size.height() <= on.cloth.usable_width();
}

/// The area that pieces can use: both layers of folded cloth.
template <length_unit Unit>
fraction usable_area(const remnant<Unit>& on) {
    return on.cloth.usable_width().value() * on.length.value() * (on.cloth.folded ? 2 : 1);
}
template <length_unit Unit>
fraction area_of(const cloth_piece<Unit>& piece) {
    return piece.size.width().value() * piece.size.height().value();
}

enum class shared_out : unsigned char { all, refuted, not_found };

template <length_unit Unit>
class remnant_search {
public:
    remnant_search(const std::vector<cloth_piece<Unit>>& pieces, const std::vector<remnant<Unit>>& remnants,
                   const bolt<Unit>* cloth, const lay_effort& effort)
        : pieces_(pieces),
          remnants_(remnants),
          cloth_(cloth),
          effort_(effort),
          trial_{effort.steps / 32, effort.seed},
          chance_(effort.seed),
          fits_(remnants.size(), std::vector<bool>(pieces.size())) {
        for (const cloth_piece<Unit>& piece : pieces_)
            all_.push_back(piece.quantity);
        for (std::size_t r = 0; r < remnants_.size(); ++r)
            for (std::size_t i = 0; i < pieces_.size(); ++i)
                fits_[r][i] = fits_remnant(pieces_[i], i, remnants_[r]);
        best_ = {std::vector<lay<Unit>>(remnants_.size()), all_, 0};
    }

    cloth_plan<Unit> plan() {
        search();
        cloth_plan<Unit> made{best_.on_remnants, in_full(best_.left), {}};
        made.bound = std::min(made.bought.length, every_way_ ? length_of<Unit>(least_cost_) : least_bought());
        return made;
    }

    shared_out share_out() {
        search();
        if (nothing_left(best_.left))
            return shared_out::all;
        return every_way_ && least_cost_ > 0 ? shared_out::refuted : shared_out::not_found;
    }

private:
    /// What the remnants hold, what is left, and what that costs: a length of new cloth, or an area where none is sold.
    struct sharing {
        std::vector<lay<Unit>> on_remnants;
        piece_counts left;
        fraction cost;
    };

    /// Beyond these every way would take too long.
    static constexpr std::int64_t most_selections = 300, most_ways = 30'000;

    static bool nothing_left(const piece_counts& left) {
        return std::all_of(left.begin(), left.end(), [](std::int64_t n) { return n == 0; });
    }

    void search() {
        fill_in_turn();
        if (nothing_left(best_.left) || remnants_.empty())
            return;
        if (few_ways())
            share_every_way();
        else
            mend();
    }

    // ---- What is left, and what it costs ----

    fraction area_of_all(const piece_counts& counts) const {
        fraction area = 0;
        for (std::size_t i = 0; i < counts.size(); ++i)
            area += area_of(pieces_[i]) * counts[i];
        return area;
    }
    /// Of the pieces alone that no remnant holds, and by area. Both hold for every plan.
    length<Unit> least_bought() {
        piece_counts on_new = all_;
        for (std::size_t i = 0; i < pieces_.size(); ++i)
            for (std::size_t r = 0; r < remnants_.size(); ++r)
                if (fits_[r][i])
                    on_new[i] = 0;
        return std::max(by_area(area_of_all(all_), 0), in_full(on_new).bound);
    }
    /// Of new cloth, at least: what the remnants from `first` on cannot hold, over its whole usable width.
    length<Unit> by_area(fraction area, std::size_t first) const {
        for (std::size_t r = first; r < remnants_.size(); ++r)
            area -= usable_area(remnants_[r]);
        if (area <= 0)
            return {};
        return length_of<Unit>(area / (cloth_->usable_width().value() * (cloth_->folded ? 2 : 1)));
    }
    lay<Unit> on_new_cloth(const piece_counts& left, const lay_effort& effort) const {
        const piece_selection<Unit> some(pieces_, left);
        return some.pieces.empty() ? lay<Unit>() : some.in_all(lay_out(some.pieces, *cloth_, effort), pieces_.size());
    }
    /// At the whole effort, each once.
    const lay<Unit>& in_full(const piece_counts& left) {
        const auto known = laid_in_full_.find(left);
        return known != laid_in_full_.end() ? known->second
                                            : laid_in_full_.emplace(left, on_new_cloth(left, effort_)).first->second;
    }
    fraction cost_of(const piece_counts& left) {
        return cloth_ == nullptr ? area_of_all(left) : in_full(left).length.value();
    }
    fraction cost_on_trial(const piece_counts& left) const {
        return cloth_ == nullptr ? area_of_all(left) : on_new_cloth(left, trial_).length.value();
    }

    // ---- Filling ----

    /// As much of these as the effort finds room for; what is laid is taken from `from`.
    lay<Unit> filled(std::size_t r, const piece_counts& offered, piece_counts& from, const lay_effort& effort) {
        piece_counts wanted = offered;
        for (std::size_t i = 0; i < wanted.size(); ++i)
            if (!fits_[r][i])
                wanted[i] = 0;
        piece_selection<Unit> some(pieces_, wanted);
        if (some.pieces.empty())
            return {};
        const lay_translation<Unit> whole(some.pieces, remnants_[r].cloth);
        const whole_lay found = fullest_lay(whole.pieces, whole.cloth, whole.whole_below(remnants_[r].length), effort);
        piece_counts came_out(some.pieces.size(), 0);
        for (const lay_place& place : found.places)
            came_out[place.piece] += remnants_[r].cloth.folded && !some.pieces[place.piece].on_fold ? 2 : 1;
        for (std::size_t i = 0; i < came_out.size(); ++i) {
            some.pieces[i].quantity =
                std::min(came_out[i], some.pieces[i].quantity); // of which with_units makes the use
            from[some.index[i]] -= some.pieces[i].quantity;
        }
        return of_whole(r, some.in_all(whole.with_units(found), pieces_.size()));
    }
    /// Its use is of the whole remnant, not only of the length laid.
    lay<Unit> of_whole(std::size_t r, lay<Unit> made) const {
        made.use = made.use * made.length.value() / remnants_[r].length.value();
        return made;
    }
    void fill_in_turn() {
        for (std::size_t r = 0; r < remnants_.size(); ++r) {
            const piece_counts offered = best_.left;
            best_.on_remnants[r] = filled(r, offered, best_.left, effort_);
        }
        best_.cost = cost_of(best_.left);
    }

    // ---- Every way ----

    bool few_ways() const {
        std::int64_t selections = 1, ways = 1;
        for (const std::int64_t n : all_) {
            if (n >= most_selections)
                return false;
            selections *= n + 1;
            // n alike go to k remnants and the new cloth in (n + k choose k) ways.
            std::int64_t shares = 1;
            for (std::int64_t k = 1; k <= static_cast<std::int64_t>(remnants_.size()) && shares <= most_ways; ++k)
                shares = shares * (n + k) / k;
            ways *= std::min(shares, most_ways);
            if (selections > most_selections || ways > most_ways)
                return false;
        }
        return true;
    }

    void share_every_way() {
        every_way_ = true;
        held_.assign(remnants_.size(), {});
        least_cost_ = best_.cost;
        given_.assign(remnants_.size(), piece_counts(pieces_.size(), 0));
        share_from(0, all_);
        if (!better_)
            return;
        for (std::size_t r = 0; r < remnants_.size(); ++r) {
            const piece_selection<Unit> some(pieces_, best_given_[r]);
            best_.on_remnants[r] =
                some.pieces.empty()
                    ? lay<Unit>()
                    : of_whole(r, some.in_all(lay_out(some.pieces, remnants_[r].cloth, effort_), pieces_.size()));
        }
    }
    void share_from(std::size_t r, const piece_counts& left) {
        if (best_.cost == 0 || (cloth_ != nullptr && by_area(area_of_all(left), r).value() >= best_.cost))
            return;
        if (r == remnants_.size())
            return consider(left);
        piece_counts rest = left;
        choose(r, 0, left, rest);
    }
    /// How many of each piece from `i` on the remnant takes: the most first, since full remnants soon leave little.
    void choose(std::size_t r, std::size_t i, const piece_counts& left, piece_counts& rest) {
        if (i == pieces_.size()) {
            if (holds(r, given_[r]))
                share_from(r + 1, rest);
            return;
        }
        for (std::int64_t n = fits_[r][i] ? left[i] : 0; n >= 0; --n) {
            given_[r][i] = n;
            rest[i] = left[i] - n;
            choose(r, i + 1, left, rest);
        }
    }
    void consider(const piece_counts& left) {
        const fraction cost = cost_of(left);
        least_cost_ = std::min(least_cost_, cloth_ == nullptr ? cost : in_full(left).bound.value());
        if (cost < best_.cost) {
            best_.cost = cost;
            best_.left = left;
            best_given_ = given_;
            better_ = true;
        }
    }
    /// Whether so many go on the remnant. Where the effort does not decide, they do not, and nothing is proved.
    bool holds(std::size_t r, const piece_counts& counts) {
        if (nothing_left(counts))
            return true;
        if (area_of_all(counts) > usable_area(remnants_[r]))
            return false;
        const auto known = held_[r].find(counts);
        if (known != held_[r].end())
            return known->second;
        const lay<Unit> found = lay_out(piece_selection<Unit>(pieces_, counts).pieces, remnants_[r].cloth, effort_);
        if (found.length > remnants_[r].length && found.bound <= remnants_[r].length)
            least_cost_ = 0;
        return held_[r].emplace(counts, found.length <= remnants_[r].length).first->second;
    }

    // ---- Mending ----

    void mend() {
        sharing now = best_;
        now.cost = cost_on_trial(now.left);
        const fraction least = cloth_ != nullptr ? least_bought().value() : 0;
        const std::size_t tries = 192 + 8 * remnants_.size();
        for (std::size_t t = 0; t < tries && best_.cost > least; ++t) {
            sharing next = now;
            if (!refill(next))
                return;
            next.cost = cost_on_trial(next.left);
            if (next.cost > now.cost)
                continue;
            now = std::move(next);
            if (now.cost < best_.cost)
                if (const fraction cost = cost_of(now.left); cost < best_.cost) {
                    best_ = now;
                    best_.cost = cost;
                }
        }
    }
    /// False where no remnant could take any of what is left.
    bool refill(sharing& next) {
        std::vector<std::size_t> useful;
        for (std::size_t r = 0; r < remnants_.size(); ++r)
            for (std::size_t i = 0; i < pieces_.size(); ++i)
                if (next.left[i] > 0 && fits_[r][i]) {
                    useful.push_back(r);
                    break;
                }
        if (useful.empty())
            return false;
        std::vector<std::size_t> again = {useful[chance_.below(static_cast<std::uint32_t>(useful.size()))]};
        const std::size_t other = chance_.below(static_cast<std::uint32_t>(remnants_.size()));
        if (other != again.front() && chance_.below(2) == 0)
            again.insert(again.begin() + chance_.below(2), other);
        for (const std::size_t r : again)
            take_up(next, r);
        for (const std::size_t r : again)
            next.on_remnants[r] = filled(r, without_some(next.left), next.left, trial_);
        return true;
    }
    void take_up(sharing& of, std::size_t r) const {
        for (const cloth_place<Unit>& place : of.on_remnants[r].places)
            of.left[place.piece] += place.comes_out;
        for (std::size_t i = 0; i < of.on_remnants[r].spare.size(); ++i)
            of.left[i] -= of.on_remnants[r].spare[i];
        of.on_remnants[r] = {};
    }
    /// Each kind of piece stays away from this filling once in four times, then half the time altogether.
    piece_counts without_some(piece_counts counts) {
        for (std::int64_t& n : counts)
            if (n > 0 && chance_.below(4) == 0)
                n = chance_.below(2) == 0 ? 0 : chance_.below(static_cast<std::uint32_t>(n)); // of 100,000 at most
        return counts;
    }

    const std::vector<cloth_piece<Unit>>& pieces_;
    const std::vector<remnant<Unit>>& remnants_;
    const bolt<Unit>* cloth_;
    lay_effort effort_, trial_;
    lay_random chance_;
    piece_counts all_;
    std::vector<std::vector<bool>> fits_; ///< a piece by itself, by remnant and piece
    sharing best_;
    std::map<piece_counts, lay<Unit>> laid_in_full_; ///< on new cloth

    bool every_way_ = false, better_ = false;
    fraction least_cost_ = 0;                        ///< of every way: none costs less
    std::vector<std::map<piece_counts, bool>> held_; ///< whether a remnant holds so many
    std::vector<piece_counts> given_, best_given_;
};

} // namespace detail

} // namespace turncloth

#endif
