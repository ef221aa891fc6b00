// Laying cut pieces on cloth as it is sold: sizes with their units, exact, and everything that cloth adds.
//
//   struct lay<Unit>           places, cuts, made_ready, length, bound, use, spare, flaws; proved_best()
//   struct cloth_place<Unit>   piece, where, turned, comes_out
//   struct cloth_cut<Unit>     direction, in_hand, at, origin; taken_off(), rest(), on_cloth()
//   struct lay_progress<Unit>  share, best, bound
//   struct lay_watch<Unit>     improved, keep_going; what looks on while a lay is looked for, and may stop it
//   lay<Unit> lay_out(pieces, bolt, effort = {}, watch = {})
//
//   bolt<inch> canvas{.width = 44_in, .selvedge = "1/2"_in};
//   auto found = lay_out<inch>({{"pocket", {12_in, 9_in}, 8}, {"back", {26_in, 38_in}}}, canvas);
//   // found.length to buy at least, found.bound: no lay can be shorter
//
// Sizes become whole numbers by their exact common denominator, so nothing is rounded; the lay found is as exact as the
// sizes. What a piece and a cloth are is in cloth/bolt.hpp.
//
// Every place is told from two edges that can be seen: the left edge of the cloth (the edge of its selvedge, or the
// fold), and the end that is straightened first. A cut is told twice: from the side of the part in hand, which is all
// that is left to measure from, and from those two edges.
#ifndef TURNCLOTH_CLOTH_LAY_HPP
#define TURNCLOTH_CLOTH_LAY_HPP

#include <turncloth/cloth/bolt.hpp>
#include <turncloth/cloth/detail/common_denominator.hpp>
#include <turncloth/cloth/detail/turned_together.hpp>
#include <turncloth/cloth/lay/solve.hpp>
#include <turncloth/measure/total.hpp>

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <functional>
#include <optional>
#include <type_traits>
#include <vector>

namespace turncloth {

/// A piece laid. `comes_out` is how many pieces the place gives: 2 where folded cloth is cut through both layers.
template <length_unit Unit>
struct cloth_place {
    std::size_t piece = 0; ///< index in the list of pieces
    cloth_part<Unit> where{};
    bool turned = false;
    int comes_out = 1;

    friend bool operator==(const cloth_place&, const cloth_place&) = default;
};

/// A cut from edge to edge of the part in hand. Across it, `at` is from the side that lay nearest the straightened end;
/// along it, from its left side.
template <length_unit Unit>
struct cloth_cut {
    cut_direction direction = cut_direction::across;
    cloth_part<Unit> in_hand{};
    length<Unit> at{};
    part_origin origin{}; ///< of the part in hand; cut 0 is the making ready

    /// Between that side and the cut.
    cloth_part<Unit> taken_off() const {
        cloth_part<Unit> off = in_hand;
        (direction == cut_direction::across ? off.along : off.across) = at;
        return off;
    }
    /// Beyond the cut.
    cloth_part<Unit> rest() const {
        cloth_part<Unit> beyond = in_hand;
        (direction == cut_direction::across ? beyond.along : beyond.across) -= at;
        (direction == cut_direction::across ? beyond.from_end : beyond.from_left) += at;
        return beyond;
    }
    /// Where it lay on the cloth: from the straightened end, or from the left edge.
    length<Unit> on_cloth() const {
        return at + (direction == cut_direction::across ? in_hand.from_end : in_hand.from_left);
    }

    friend bool operator==(const cloth_cut&, const cloth_cut&) = default;
};

/// Cuts are in the order of the shears, cut 1 first; there are none where cutting is free. They start from
/// `made_ready`: the cloth with its end straightened, cut off at the length laid, and the selvedges trimmed off where
/// they are not used. `use` is the area of the pieces wanted over the area of cloth, selvedges and all. `spare` says of
/// each piece how many more come out than are wanted (an odd one cut through folded cloth). `flaws` are those of the cloth,
/// which it lies round.
template <length_unit Unit>
struct lay {
    std::vector<cloth_place<Unit>> places;
    std::vector<cloth_cut<Unit>> cuts;
    cloth_part<Unit> made_ready{};
    turncloth::length<Unit> length{};
    turncloth::length<Unit> bound{};
    fraction use;
    std::vector<std::int64_t> spare;
    std::vector<cloth_part<Unit>> flaws{};

    bool proved_best() const { return length == bound; }
};

/// How far a search has come: `best`, the length of the lay so far, only falls, and `bound` only rises.
template <length_unit Unit>
struct lay_progress {
    fraction share; ///< of the effort, spent: 0 to 1
    length<Unit> best{}, bound{};
};

/// `improved` is shown each better lay as it is found. `keep_going` is asked up to a hundred times, at even steps of the
/// effort; it is not asked where the answer is proved at once. Either ends the search by returning false, with the best lay
/// so far: the same one, wherever it is stopped at the same share.
template <length_unit Unit>
struct lay_watch {
    std::function<bool(const lay<Unit>&)> improved = {};
    std::function<bool(const lay_progress<Unit>&)> keep_going = {};
};

namespace detail {

/// From pieces and cloth with units to whole numbers, and back. Quantities on folded cloth are of places, each giving
/// two.
template <length_unit Unit>
class lay_translation {
public:
    std::vector<lay_piece> pieces;
    lay_cloth cloth;

    lay_translation(const std::vector<cloth_piece<Unit>>& given, const bolt<Unit>& from) : given_(given), from_(from) {
        for (const length<Unit>& l : {from.gap, from.repeat_across, from.repeat_along})
            scale_.include(l.value());
        for (const cloth_piece<Unit>& p : given)
            for (const length<Unit>& l : {across_as_laid(p), p.size.height(), p.match_across, p.match_along})
                scale_.include(l.value());
        include_places();
        cloth = {whole_below(from.usable_width()), whole(from.gap), from.cutting, whole(from.repeat_across),
                 whole(from.repeat_along)};
        cloth.sliver = back(cloth.width) < from.usable_width();
        for (const cloth_piece<Unit>& p : given)
            pieces.push_back({.width = whole(across_as_laid(p)),
                              .length = whole(p.size.height()),
                              .quantity = doubled(p) ? (p.quantity - 1) / 2 + 1 : p.quantity,
                              .grain = may_turn(p, from) ? grain::may_turn : grain::fixed,
                              .match_across = whole(into_repeat(p.match_across, from.repeat_across)),
                              .match_along = whole(into_repeat(p.match_along, from.repeat_along)),
                              .at_edge = p.on_fold,
                              .stays = p.stays ? std::optional(spot(*p.stays)) : std::nullopt});
        for (const cloth_part<Unit>& f : from.flaws)
            cloth.flaws.push_back(whole(f));
    }

    /// For a length to lay on: what is finer than the sizes can hold no piece.
    std::int64_t whole_below(length<Unit> l) const { return scale_.whole_below(l.value()); }

    lay<Unit> with_units(const whole_lay& found) const {
        lay<Unit> made;
        made.length = back(found.length);
        made.bound = back(found.bound);
        made.made_ready = part({0, cloth.edge(), 0, found.length});
        if (from_.cutting == cutting::free) {
            made.made_ready.across += from_.usable_from_left() + from_.selvedge;
            made.made_ready.from_left = {};
        }
        for (const lay_place& p : found.places)
            made.places.push_back({.piece = p.piece,
                                   .where = part({p.x, p.x + p.width, p.y, p.y + p.length}),
                                   .turned = p.turned,
                                   .comes_out = doubled(given_[p.piece]) ? 2 : 1});
        for (const lay_cut& c : found.cuts)
            made.cuts.push_back({c.direction, part(c.in_hand),
                                 back(c.at - (c.direction == cut_direction::across ? c.in_hand.near : c.in_hand.left)),
                                 c.origin});
        running_total area;
        for (const cloth_piece<Unit>& p : given_) {
            area += p.size.width().value() * p.size.height().value() * p.quantity;
            made.spare.push_back(doubled(p) ? p.quantity % 2 : 0);
        }
        made.flaws = from_.flaws;
        if (found.length > 0)
            made.use = area.value() / (from_.width.value() * made.length.value());
        return made;
    }

    lay_watcher watcher(const lay_watch<Unit>& watch) const {
        lay_watcher whole;
        if (watch.improved)
            whole.improved = [this, &watch](const whole_lay& better) { return watch.improved(with_units(better)); };
        if (watch.keep_going)
            whole.keep_going = [this, &watch](const lay_state& s) {
                return watch.keep_going(
                    {fraction(static_cast<std::int64_t>(s.steps), static_cast<std::int64_t>(s.effort)), back(s.best),
                     back(s.bound)});
            };
        return whole;
    }

private:
    void include_places() {
        for (const cloth_part<Unit>& f : from_.flaws)
            for (const length<Unit>& l : {across(f.from_left), f.across, f.from_end, f.along})
                scale_.include(l.value());
        for (const cloth_piece<Unit>& p : given_)
            if (p.stays) {
                scale_.include(across(p.stays->from_left).value());
                scale_.include(p.stays->from_end.value());
            }
    }
    /// From where the usable width begins.
    length<Unit> across(length<Unit> from_left) const { return from_left - from_.usable_from_left(); }
    lay_spot spot(const cloth_spot<Unit>& s) const { return {whole(across(s.from_left)), whole(s.from_end), s.turned}; }
    lay_part whole(const cloth_part<Unit>& p) const {
        return {whole(across(p.from_left)), whole(across(p.from_left) + p.across), whole(p.from_end),
                whole(p.from_end + p.along)};
    }
    std::int64_t whole(length<Unit> l) const { return scale_.whole(l.value()); }
    length<Unit> back(std::int64_t n) const { return length_of<Unit>(scale_.part(n)); }
    bool doubled(const cloth_piece<Unit>& p) const { return from_.folded && !p.on_fold; }

    /// What reaches beyond the whole numbers ends where the usable width does.
    cloth_part<Unit> part(const lay_part& p) const {
        return {from_.usable_from_left() + back(p.left), back(p.near),
                p.right > cloth.width ? from_.usable_width() - back(p.left) : back(p.right - p.left),
                back(p.far - p.near)};
    }

    const std::vector<cloth_piece<Unit>>& given_;
    const bolt<Unit>& from_;
    common_denominator scale_;
};

/// No piece turns together with others.
template <length_unit Unit>
lay<Unit> lay_one_way(const std::vector<cloth_piece<Unit>>& pieces, const bolt<Unit>& cloth, const lay_effort& effort,
                      const lay_watch<Unit>& watch = {}) {
    check_pieces(pieces, cloth);
    const lay_translation<Unit> whole(pieces, cloth);
    return whole.with_units(shortest_lay(whole.pieces, whole.cloth, effort, whole.watcher(watch)));
}

/// Looks for a lay with all that turn together upright, and for one with all of them turned.
template <length_unit Unit>
class lay_of_ways {
public:
    lay_of_ways(const std::vector<cloth_piece<Unit>>& pieces, const bolt<Unit>& cloth, const lay_effort& effort,
                const lay_watch<Unit>& watch)
        : pieces_(pieces), cloth_(cloth), effort_(effort), watch_(watch) {
        for (const bool t : ways_that_fit(pieces, cloth)) // a first lay, and a bound
            ways_.push_back({t, told_turned(lay_one_way(laid_so(pieces, t), cloth, {0, effort.seed}), pieces, t)});
        const length<Unit> longest = best().length;
        std::erase_if(ways_, [&](const way& w) { return w.found.bound > longest; });
    }

    /// Each has as much of the effort.
    lay<Unit> make() {
        effort_.steps /= ways_.size();
        for (way& w : ways_) {
            if (stopped_)
                break;
            const lay<Unit> found =
                told_turned(lay_one_way(laid_so(pieces_, w.turned), cloth_, effort_, watched(w)), pieces_, w.turned);
            w.found.bound = found.bound;
            if (w.found.length > found.length)
                w.found = found;
            ++done_;
        }
        lay<Unit> made = best();
        made.bound = bound();
        return made;
    }

private:
    struct way {
        bool turned;
        lay<Unit> found;
    };

    const lay<Unit>& best() const {
        return std::min_element(ways_.begin(), ways_.end(),
                                [](const way& a, const way& b) { return b.found.length > a.found.length; })
            ->found;
    }
    length<Unit> bound() const {
        return std::min_element(ways_.begin(), ways_.end(),
                                [](const way& a, const way& b) { return b.found.bound > a.found.bound; })
            ->found.bound;
    }

    lay_watch<Unit> watched(way& w) {
        lay_watch<Unit> one;
        if (watch_.improved)
            one.improved = [this, &w](const lay<Unit>& better) {
                w.found.bound = better.bound;
                if (better.length >= best().length)
                    return true;
                w.found = told_turned(better, pieces_, w.turned);
                lay<Unit> shown = w.found;
                shown.bound = bound();
                stopped_ = !watch_.improved(shown);
                return !stopped_;
            };
        if (watch_.keep_going)
            one.keep_going = [this, &w](const lay_progress<Unit>& now) {
                w.found.bound = now.bound;
                stopped_ = !watch_.keep_going({(done_ + now.share) / static_cast<std::int64_t>(ways_.size()),
                                               std::min(now.best, best().length), bound()});
                return !stopped_;
            };
        return one;
    }

    const std::vector<cloth_piece<Unit>>& pieces_;
    const bolt<Unit>& cloth_;
    lay_effort effort_;
    const lay_watch<Unit>& watch_;
    std::vector<way> ways_;
    std::int64_t done_ = 0;
    bool stopped_ = false;
};

} // namespace detail

/// Lays the pieces on the cloth with the least length that the effort finds; who watches may end it. At most 100,000 pieces
/// in all are laid; time grows with them and with the effort. Throws lay_error, or piece_too_wide_error, which names the
/// piece, says by how much and whether a turn would do; overflow_error where the common denominator or an area leaves 64
/// bits.
template <length_unit Unit>
lay<Unit> lay_out(const std::vector<cloth_piece<Unit>>& pieces, const std::type_identity_t<bolt<Unit>>& cloth,
                  const lay_effort& effort = {}, const std::type_identity_t<lay_watch<Unit>>& watch = {}) {
    detail::check_bolt(cloth);
    if (detail::any_together(pieces))
        return detail::lay_of_ways<Unit>(pieces, cloth, effort, watch).make();
    return detail::lay_one_way<Unit>(pieces, cloth, effort, watch);
}

TURNCLOTH_ONCE(lay<inch> lay_out<inch>(const std::vector<cloth_piece<inch>>&, const bolt<inch>&, const lay_effort&,
                                       const lay_watch<inch>&));
TURNCLOTH_ONCE(lay<centimetre> lay_out<centimetre>(const std::vector<cloth_piece<centimetre>>&, const bolt<centimetre>&,
                                                   const lay_effort&, const lay_watch<centimetre>&));

} // namespace turncloth

#endif
