// Laying cut pieces on cloth as it is sold: sizes with their units, exact, and everything that cloth adds.
//
//   struct cloth_piece<Unit>   name, size (a cut_size), quantity, grain, on_fold, match_across, match_along
//   struct bolt<Unit>          width, selvedge, gap, cutting, one_way, folded, repeat_across, repeat_along;
//                              usable_width(), usable_from_left()
//   struct lay<Unit>           places, cuts, made_ready, length, bound, use, spare; proved_best()
//   struct cloth_part<Unit>    a rectangle of the cloth: from_left, from_end, across, along
//   struct cloth_place<Unit>   piece, where, turned, comes_out
//   struct cloth_cut<Unit>     direction, in_hand, at, origin; taken_off(), rest(), on_cloth()
//   lay<Unit> lay_out(pieces, bolt, effort = {}, improved = {})
//   lay_error  piece_too_wide_error                      and from cloth/lay/types.hpp: grain, cutting, lay_effort
//
//   bolt<inch> canvas{.width = 44_in, .selvedge = "1/2"_in};
//   auto found = lay_out<inch>({{"pocket", {12_in, 9_in}, 8}, {"back", {26_in, 38_in}}}, canvas);
//   // found.length to buy at least, found.bound: no lay can be shorter
//
// A piece's width lies across the cloth, its height along the grain. Sizes become whole numbers by their exact common
// denominator, so nothing is rounded; the lay found is as exact as the sizes.
//
// Every place is told from two edges that can be seen: the left edge of the cloth (the edge of its selvedge, or the
// fold), and the end that is straightened first. A cut is told twice: from the side of the part in hand, which is all
// that is left to measure from, and from those two edges.
//
// Folded cloth lies double, selvedge on selvedge, the fold along the left edge. A piece cut through both layers comes
// out twice; one cut on the fold is laid at half its width against the fold and comes out once. A print with a repeat
// across cannot match itself through a fold, so that is refused.
#ifndef TURNCLOTH_CLOTH_LAY_HPP
#define TURNCLOTH_CLOTH_LAY_HPP

#include <turncloth/cloth/detail/common_denominator.hpp>
#include <turncloth/cloth/lay/solve.hpp>
#include <turncloth/measure/require.hpp>
#include <turncloth/measure/total.hpp>
#include <turncloth/panel/size.hpp>

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <type_traits>
#include <utility>
#include <vector>

namespace turncloth {

/// Pieces alike. `on_fold`: cut on the fold of folded cloth. `match_across` and `match_along`: how far into the repeat
/// its near left corner must fall.
template <length_unit Unit>
struct cloth_piece {
    std::string name;
    cut_size<Unit> size;
    std::int64_t quantity = 1;
    turncloth::grain grain = turncloth::grain::fixed;
    bool on_fold = false;
    length<Unit> match_across{};
    length<Unit> match_along{};
};

/// Cloth off the roll, and how it will be cut. `width` is from edge to edge with both selvedges, `selvedge` what of
/// each is not used, `gap` the least distance between pieces. On `one_way` cloth (a nap, or a print that stands
/// upright) no piece is turned. A repeat of nothing is no repeat; it is counted from where the usable width begins.
template <length_unit Unit>
struct bolt {
    length<Unit> width{};
    length<Unit> selvedge{};
    length<Unit> gap{};
    turncloth::cutting cutting = turncloth::cutting::free;
    bool one_way = false;
    bool folded = false;
    length<Unit> repeat_across{};
    length<Unit> repeat_along{};

    /// What pieces may lie on: inside the selvedges; when folded, from the fold to the selvedge.
    length<Unit> usable_width() const { return folded ? width / 2 - selvedge : width - 2 * selvedge; }
    /// Where that begins, from the left edge.
    length<Unit> usable_from_left() const { return folded ? length<Unit>() : selvedge; }
};

/// A rectangle of the cloth, told from its left edge (the edge of the selvedge, or the fold) and from the straightened
/// end.
template <length_unit Unit>
struct cloth_part {
    length<Unit> from_left{}, from_end{};
    length<Unit> across{}, along{};

    friend bool operator==(const cloth_part&, const cloth_part&) = default;
};

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
/// each piece how many more come out than are wanted (an odd one cut through folded cloth).
template <length_unit Unit>
struct lay {
    std::vector<cloth_place<Unit>> places;
    std::vector<cloth_cut<Unit>> cuts;
    cloth_part<Unit> made_ready{};
    turncloth::length<Unit> length{};
    turncloth::length<Unit> bound{};
    fraction use;
    std::vector<std::int64_t> spare;

    bool proved_best() const { return length == bound; }
};

/// A cloth, a piece or a quantity that admits no lay.
class lay_error : public error {
public:
    using error::error;
};

/// A piece that does not go on the usable width. Its facts have the piece's index and name, the width it takes (from
/// where the repeat lets it start), and the usable width.
class piece_too_wide_error : public lay_error {
public:
    piece_too_wide_error(const std::string& sentence, refusal facts, bool would_turn)
        : lay_error(sentence, std::move(facts)), would_turn_(would_turn) {}

    /// Whether a quarter turn, not allowed for it now, would make it fit.
    bool would_turn() const noexcept { return would_turn_; }

private:
    bool would_turn_;
};

namespace detail {

/// More would take more memory than a page in a browser has.
inline constexpr std::int64_t most_pieces_of_a_lay = 100'000;

template <length_unit Unit>
void check_bolt(const bolt<Unit>& cloth) {
    require_more_than_zero<lay_error>(cloth.width, "the width of the cloth");
    require_not_negative<lay_error>(cloth.selvedge, "a selvedge");
    require_not_negative<lay_error>(cloth.gap, "the gap between pieces");
    require_not_negative<lay_error>(cloth.repeat_across, "the repeat across the cloth");
    require_not_negative<lay_error>(cloth.repeat_along, "the repeat along the cloth");
    if (cloth.usable_width().value() <= 0)
        refuse<lay_error>(
            {"cloth ", cloth.width, " wide", cloth.folded ? ", folded," : "", " with selvedges of ", cloth.selvedge,
             " leaves nothing to lay on"},
            {.kind = fault::no_room, .what = "a selvedge", .given = cloth.selvedge, .most = cloth.width / 2});
    require_at_most<lay_error>(cloth.repeat_across, cloth.usable_width(), "the repeat across the usable width");
    if (cloth.folded && cloth.repeat_across.value() > 0)
        refuse<lay_error>(
            {"a repeat of ", cloth.repeat_across,
             " across does not match itself through a fold: lay the cloth out single"},
            {.kind = fault::unsuitable, .what = "the repeat across folded cloth", .given = cloth.repeat_across});
}

template <length_unit Unit>
std::string named(const cloth_piece<Unit>& piece, std::size_t index) {
    return piece.name.empty() ? sentence({"piece ", index + 1}) : piece.name;
}

/// The size across as laid: half of it, on the fold.
template <length_unit Unit>
length<Unit> across_as_laid(const cloth_piece<Unit>& piece) {
    return piece.on_fold ? piece.size.width() / 2 : piece.size.width();
}

/// How far into the repeat a match falls: from nothing up to the repeat.
template <length_unit Unit>
length<Unit> into_repeat(length<Unit> match, length<Unit> repeat) {
    if (repeat.value() == 0)
        return {};
    return match - repeat * floor(ratio_of(match, repeat));
}

template <length_unit Unit>
bool may_turn(const cloth_piece<Unit>& piece, const bolt<Unit>& cloth) {
    const bool matched = cloth.repeat_across.value() > 0 || cloth.repeat_along.value() > 0;
    return piece.grain == grain::may_turn && !cloth.one_way && !piece.on_fold && !matched;
}

template <length_unit Unit>
void check_quantities(const std::vector<cloth_piece<Unit>>& pieces) {
    std::int64_t all = 0;
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        const cloth_piece<Unit>& piece = pieces[i];
        if (piece.quantity < 1)
            refuse_value<lay_error>({.kind = fault::too_small,
                                     .what = sentence({"the quantity of ", named(piece, i)}),
                                     .given = piece.quantity,
                                     .least = 1,
                                     .index = i,
                                     .where = piece.name},
                                    {"at least 1"});
        all += std::min(piece.quantity, most_pieces_of_a_lay + 1);
        if (all > most_pieces_of_a_lay)
            refuse<lay_error>({"a lay must be of at most ", most_pieces_of_a_lay, " pieces in all: with ",
                               named(piece, i), " it has more"},
                              {.kind = fault::does_not_fit,
                               .what = "the number of pieces in a lay",
                               .given = piece.quantity,
                               .most = most_pieces_of_a_lay,
                               .index = i,
                               .where = piece.name});
    }
}

/// Why the piece does not go on the width; nothing if it does.
template <length_unit Unit>
std::optional<piece_too_wide_error> too_wide(const cloth_piece<Unit>& piece, std::size_t index,
                                             const bolt<Unit>& cloth) {
    const length<Unit> across = across_as_laid(piece), usable = cloth.usable_width();
    const length<Unit> start = into_repeat(piece.match_across, cloth.repeat_across), end = start + across;
    const bool fits_turned = piece.size.height() <= usable && !piece.on_fold && start.value() == 0;
    if (end <= usable || (may_turn(piece, cloth) && fits_turned))
        return std::nullopt;
    const std::string name = named(piece, index);
    const std::string matched =
        start.value() > 0 ? sentence({"starts ", start, " into the repeat and so ends ", end - usable, " beyond"})
                          : sentence({end - usable, " more than"});
    return piece_too_wide_error(
        sentence({name, piece.on_fold ? " takes " : " is ", across, piece.on_fold ? " from the fold, " : " wide, ",
                  matched, " the usable width of ", usable,
                  fits_turned ? "; given a quarter turn it would fit" : "; turning it does not help"}),
        refusal_on({.kind = fault::no_room,
                    .what = sentence({"the width that ", name, " takes"}),
                    .given = end,
                    .most = usable,
                    .index = index,
                    .where = piece.name}),
        fits_turned);
}

template <length_unit Unit>
void check_pieces(const std::vector<cloth_piece<Unit>>& pieces, const bolt<Unit>& cloth) {
    check_quantities(pieces);
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        if (pieces[i].on_fold && !cloth.folded)
            refuse<lay_error>(
                named(pieces[i], i) + " is to be cut on the fold, but the cloth is not folded",
                refusal{.kind = fault::unsuitable, .what = "cloth laid single", .index = i, .where = pieces[i].name});
        if (const auto why = too_wide(pieces[i], i, cloth))
            refuse<piece_too_wide_error>(*why);
    }
}

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
                              .at_edge = p.on_fold});
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
        if (found.length > 0)
            made.use = area.value() / (from_.width.value() * made.length.value());
        return made;
    }

private:
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

} // namespace detail

/// Lays the pieces on the cloth with the least length that the effort finds. `improved`, if given, is shown each better
/// lay and stops the search by returning false. At most 100,000 pieces in all are laid; time grows with them and with the
/// effort. Throws lay_error, or piece_too_wide_error, which names the piece, says
/// by how much and whether a turn would do; overflow_error where the common denominator or an area leaves 64 bits.
template <length_unit Unit>
lay<Unit> lay_out(const std::vector<cloth_piece<Unit>>& pieces, const std::type_identity_t<bolt<Unit>>& cloth,
                  const lay_effort& effort = {},
                  const std::type_identity_t<std::function<bool(const lay<Unit>&)>>& improved = {}) {
    detail::check_bolt(cloth);
    detail::check_pieces(pieces, cloth);
    const detail::lay_translation<Unit> whole(pieces, cloth);
    detail::lay_watcher shown;
    if (improved)
        shown = [&](const detail::whole_lay& better) { return improved(whole.with_units(better)); };
    return whole.with_units(detail::shortest_lay(whole.pieces, whole.cloth, effort, shown));
}

TURNCLOTH_ONCE(lay<inch> lay_out<inch>(const std::vector<cloth_piece<inch>>&, const bolt<inch>&, const lay_effort&,
                                       const std::function<bool(const lay<inch>&)>&));
TURNCLOTH_ONCE(lay<centimetre> lay_out<centimetre>(const std::vector<cloth_piece<centimetre>>&, const bolt<centimetre>&,
                                                   const lay_effort&,
                                                   const std::function<bool(const lay<centimetre>&)>&));

} // namespace turncloth

#endif
