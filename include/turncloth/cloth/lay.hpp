// Laying cut pieces on cloth as it is sold: sizes with their units, exact, and everything that cloth adds.
//
//   struct cloth_piece<U>    name, size (a cut_size), quantity, grain, on_fold, match_across, match_along
//   struct bolt<U>           width, selvedge, gap, ways, one_way, folded, repeat_across, repeat_along; usable_width()
//   struct cloth_lay<U>      places, cuts, length, bound, use; proved_best()
//   cloth_lay<U> lay_out(pieces, bolt, effort = {}, improved = {})
//
//   bolt<inch> canvas{.width = 44_in, .selvedge = length_of<inch>({1, 2})};
//   auto found = lay_out<inch>({{"pocket", {12_in, 9_in}, 8}, {"back", {26_in, 38_in}}}, canvas);
//   // found.length to buy at least, found.bound: no lay can be shorter
//
// A piece's width lies across the cloth, its height along the grain. Sizes become whole numbers by their exact common
// denominator, so nothing is rounded; the lay found is as exact as the sizes.
//
// Folded cloth lies double, selvedge on selvedge, the fold along the left edge. A piece cut through both layers comes
// out twice; one cut on the fold is laid at half its width against the fold and comes out once. A print with a repeat
// across cannot match itself through a fold, so that is refused.
#ifndef TURNCLOTH_CLOTH_LAY_HPP
#define TURNCLOTH_CLOTH_LAY_HPP

#include <turncloth/cloth/lay/solve.hpp>
#include <turncloth/measure/length.hpp>
#include <turncloth/measure/write.hpp>
#include <turncloth/panel/size.hpp>

#include <cstddef>
#include <cstdint>
#include <functional>
#include <numeric>
#include <string>
#include <type_traits>
#include <utility>
#include <vector>

namespace turncloth {

/// Pieces alike. `on_fold`: cut on the fold of folded cloth. `match_across` and `match_along`: how far into the repeat
/// its near left corner must fall.
template <length_unit U>
struct cloth_piece {
    std::string name;
    cut_size<U> size;
    std::int64_t quantity = 1;
    turncloth::grain grain = turncloth::grain::fixed;
    bool on_fold = false;
    length<U> match_across{};
    length<U> match_along{};
};

/// Cloth off the roll, and how it will be cut. `width` is from edge to edge with both selvedges, `selvedge` what of
/// each is not used, `gap` the least distance between pieces. On `one_way` cloth (a nap, or a print that stands
/// upright) no piece is turned. A repeat of nothing is no repeat.
template <length_unit U>
struct bolt {
    length<U> width{};
    length<U> selvedge{};
    length<U> gap{};
    cutting ways = cutting::free;
    bool one_way = false;
    bool folded = false;
    length<U> repeat_across{};
    length<U> repeat_along{};

    /// What pieces may lie on: inside the selvedges; when folded, from the fold to the selvedge.
    length<U> usable_width() const { return folded ? width / 2 - selvedge : width - 2 * selvedge; }
};

/// A piece laid: its near left corner from the usable edge (or the fold) and from the end first cut, and its size as it
/// lies. `comes_out` is how many pieces the place gives: 2 where folded cloth is cut through both layers.
template <length_unit U>
struct cloth_place {
    std::size_t piece = 0;
    length<U> x{}, y{};
    length<U> across{}, along{};
    bool turned = false;
    int comes_out = 1;

    friend bool operator==(const cloth_place&, const cloth_place&) = default;
};

template <length_unit U>
struct cloth_cut {
    turncloth::runs runs = turncloth::runs::across;
    length<U> at{}, from{}, to{};

    friend bool operator==(const cloth_cut&, const cloth_cut&) = default;
};

/// `use` is the area of the pieces wanted over the area of cloth, selvedges and all. `spare` says of each piece how
/// many more come out than are wanted (an odd one cut through folded cloth).
template <length_unit U>
struct cloth_lay {
    std::vector<cloth_place<U>> places;
    std::vector<cloth_cut<U>> cuts;
    turncloth::length<U> length{};
    turncloth::length<U> bound{};
    fraction use;
    std::vector<std::int64_t> spare;

    bool proved_best() const { return length == bound; }
};

/// A piece that does not fit the usable width, in the caller's own unit and by name.
template <length_unit U>
class cloth_piece_too_wide_error : public unlayable_error {
public:
    cloth_piece_too_wide_error(const std::string& said, std::size_t piece, length<U> over, bool would_turn)
        : unlayable_error(said), piece_(piece), over_(over), would_turn_(would_turn) {}

    std::size_t piece() const noexcept { return piece_; }
    length<U> over() const noexcept { return over_; }
    bool would_turn() const noexcept { return would_turn_; }

private:
    std::size_t piece_;
    length<U> over_;
    bool would_turn_;
};

namespace detail {

/// Lengths as whole numbers of one over a common denominator.
class lay_scale {
public:
    void include(fraction x) {
        const std::int64_t other = denominator(x) / std::gcd(denominator(x), denominator_);
        if (__builtin_mul_overflow(denominator_, other, &denominator_))
            refuse<overflow_error>(
                "the sizes have no common denominator that fits 64-bit integers: use one graduation");
    }
    std::int64_t whole(fraction x) const { return numerator(x * denominator_); }
    /// For a width to lay on: what is finer than the sizes can hold no piece.
    std::int64_t whole_below(fraction x) const { return floor(x * denominator_); }
    template <length_unit U>
    length<U> back(std::int64_t n) const {
        return length_of<U>({n, denominator_});
    }

private:
    std::int64_t denominator_ = 1;
};

template <length_unit U>
void check_bolt(const bolt<U>& cloth) {
    const std::string width = to_text(cloth.width);
    if (cloth.width.value() <= 0)
        refuse<unlayable_error>("cloth " + width + " wide: the width must be above 0");
    if (cloth.selvedge.value() < 0 || cloth.gap.value() < 0)
        refuse<unlayable_error>("selvedges of " + to_text(cloth.selvedge) + " and a gap of " + to_text(cloth.gap) +
                                ": each must be 0 or more");
    if (cloth.usable_width().value() <= 0)
        refuse<unlayable_error>("cloth " + width + " wide with selvedges of " + to_text(cloth.selvedge) +
                                " leaves nothing to lay on");
    if (cloth.repeat_across.value() < 0 || cloth.repeat_along.value() < 0)
        refuse<unlayable_error>("a repeat of " + to_text(cloth.repeat_across) + " across and " +
                                to_text(cloth.repeat_along) + " along: each must be 0, for none, or more");
    if (cloth.repeat_across > cloth.usable_width())
        refuse<unlayable_error>("a repeat of " + to_text(cloth.repeat_across) +
                                " across is longer than the usable width of " + to_text(cloth.usable_width()));
    if (cloth.folded && cloth.repeat_across.value() > 0)
        refuse<unlayable_error>("a repeat of " + to_text(cloth.repeat_across) +
                                " across does not match itself through a fold: lay the cloth out single");
}

template <length_unit U>
std::string named(const cloth_piece<U>& piece, std::size_t index) {
    return piece.name.empty() ? "piece " + std::to_string(index + 1) : piece.name;
}

/// The size across as laid: half of it, on the fold.
template <length_unit U>
length<U> across_as_laid(const cloth_piece<U>& piece) {
    return piece.on_fold ? piece.size.width() / 2 : piece.size.width();
}

template <length_unit U>
bool may_turn(const cloth_piece<U>& piece, const bolt<U>& cloth) {
    const bool matched = cloth.repeat_across.value() > 0 || cloth.repeat_along.value() > 0;
    return piece.grain == grain::may_turn && !cloth.one_way && !piece.on_fold && !matched;
}

template <length_unit U>
void check_quantity(const cloth_piece<U>& piece, std::size_t index) {
    if (piece.quantity <= 0)
        refuse<unlayable_error>(named(piece, index) + " is wanted " + std::to_string(piece.quantity) +
                                " times: the quantity must be 1 or more");
}

template <length_unit U>
bool would_turn(const cloth_piece<U>& piece, const bolt<U>& cloth) {
    return piece.size.height() <= cloth.usable_width() && !piece.on_fold;
}

/// Why the piece does not go on the width; empty if it does.
template <length_unit U>
std::string why_too_wide(const cloth_piece<U>& piece, std::size_t index, const bolt<U>& cloth) {
    const length<U> across = across_as_laid(piece);
    const length<U> usable = cloth.usable_width();
    if (across <= usable || (may_turn(piece, cloth) && would_turn(piece, cloth)))
        return {};
    return named(piece, index) +
           (piece.on_fold ? " takes " + to_text(across) + " from the fold, " : " is " + to_text(across) + " wide, ") +
           to_text(across - usable) + " more than the usable width of " + to_text(usable) +
           (would_turn(piece, cloth) ? "; given a quarter turn it would fit" : "; turning it does not help");
}

template <length_unit U>
void check_cloth_piece(const cloth_piece<U>& piece, std::size_t index, const bolt<U>& cloth) {
    check_quantity(piece, index);
    if (piece.on_fold && !cloth.folded)
        refuse<unlayable_error>(named(piece, index) + " is to be cut on the fold, but the cloth is not folded");
    const std::string why = why_too_wide(piece, index, cloth);
    if (!why.empty())
        refuse<cloth_piece_too_wide_error<U>>(why, index, across_as_laid(piece) - cloth.usable_width(),
                                              would_turn(piece, cloth));
}

/// The pieces and cloth in whole numbers. Quantities on folded cloth are of places, each giving two.
template <length_unit U>
struct whole_lay {
    lay_scale scale;
    std::vector<lay_piece> pieces;
    lay_cloth cloth;

    whole_lay(const std::vector<cloth_piece<U>>& given, const bolt<U>& from) {
        for (const length<U>& l : {from.gap, from.repeat_across, from.repeat_along})
            scale.include(l.value());
        for (const cloth_piece<U>& piece : given)
            for (const length<U>& l :
                 {across_as_laid(piece), piece.size.height(), piece.match_across, piece.match_along})
                scale.include(l.value());
        cloth.width = scale.whole_below(from.usable_width().value());
        cloth.gap = scale.whole(from.gap.value());
        cloth.ways = from.ways;
        cloth.repeat_across = scale.whole(from.repeat_across.value());
        cloth.repeat_along = scale.whole(from.repeat_along.value());
        for (const cloth_piece<U>& piece : given)
            pieces.push_back(whole_piece(piece, from));
    }

private:
    lay_piece whole_piece(const cloth_piece<U>& piece, const bolt<U>& from) const {
        lay_piece made;
        made.width = scale.whole(across_as_laid(piece).value());
        made.length = scale.whole(piece.size.height().value());
        made.quantity = from.folded && !piece.on_fold ? (piece.quantity - 1) / 2 + 1 : piece.quantity;
        made.grain = may_turn(piece, from) ? grain::may_turn : grain::fixed;
        made.match_across = scale.whole(piece.match_across.value());
        made.match_along = scale.whole(piece.match_along.value());
        made.at_edge = piece.on_fold;
        return made;
    }
};

template <length_unit U>
cloth_lay<U> with_units(const lay& found, const whole_lay<U>& whole, const std::vector<cloth_piece<U>>& pieces,
                        const bolt<U>& cloth) {
    const auto back = [&](std::int64_t n) { return whole.scale.template back<U>(n); };
    cloth_lay<U> result;
    result.length = back(found.length);
    result.bound = back(found.bound);
    for (const lay_place& p : found.places) {
        const bool doubled = cloth.folded && !pieces[p.piece].on_fold;
        result.places.push_back({.piece = p.piece,
                                 .x = back(p.x),
                                 .y = back(p.y),
                                 .across = back(p.width),
                                 .along = back(p.length),
                                 .turned = p.turned,
                                 .comes_out = doubled ? 2 : 1});
    }
    for (const lay_cut& c : found.cuts)
        result.cuts.push_back({.runs = c.runs, .at = back(c.at), .from = back(c.from), .to = back(c.to)});
    fraction area = 0;
    for (const cloth_piece<U>& piece : pieces) {
        area += piece.size.width().value() * piece.size.height().value() * fraction(piece.quantity);
        result.spare.push_back(cloth.folded && !piece.on_fold ? piece.quantity % 2 : 0);
    }
    if (found.length > 0)
        result.use = area / (cloth.width.value() * result.length.value());
    return result;
}

} // namespace detail

/// Lays the pieces on the cloth with the least length that the effort finds. `improved`, if given, is shown each better
/// lay and stops the search by returning false. Throws unlayable_error, or cloth_piece_too_wide_error, which names
/// the piece, says by how much and whether a turn would do; overflow_error where the common denominator or an area
/// leaves 64 bits.
template <length_unit U>
cloth_lay<U> lay_out(const std::vector<cloth_piece<U>>& pieces, const std::type_identity_t<bolt<U>>& cloth,
                     const lay_effort& effort = {},
                     const std::type_identity_t<std::function<bool(const cloth_lay<U>&)>>& improved = {}) {
    detail::check_bolt(cloth);
    for (std::size_t i = 0; i < pieces.size(); ++i)
        detail::check_cloth_piece(pieces[i], i, cloth);
    const detail::whole_lay<U> whole(pieces, cloth);
    lay_effort whole_effort = effort;
    if (improved)
        whole_effort.improved = [&](const lay& better) {
            return improved(detail::with_units(better, whole, pieces, cloth));
        };
    return detail::with_units(lay_out(whole.pieces, whole.cloth, whole_effort), whole, pieces, cloth);
}

} // namespace turncloth

#endif
