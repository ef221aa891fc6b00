// What is laid and what it is laid on: pieces alike, cloth as it is sold, and why a piece does not go on it.
//
//   struct cloth_part<Unit>    a rectangle of the cloth: from_left, from_end, across, along
//   struct cloth_spot<Unit>    where a piece stays: from_left, from_end, turned
//   struct cloth_piece<Unit>   name, size (a cut_size), quantity, grain, on_fold, match_across, match_along, stays
//   struct bolt<Unit>          width, selvedge, gap, cutting, one_way, folded, repeat_across, repeat_along, flaws;
//                              usable_width(), usable_from_left()
//   lay_error  piece_too_wide_error                      and from cloth/lay/types.hpp: grain, cutting, lay_effort
//
//   bolt<inch> canvas{.width = 44_in, .selvedge = "1/2"_in};
//   canvas.usable_width();                               // 43 in
//
// A piece's width lies across the cloth, its height along the grain.
//
// Folded cloth lies double, selvedge on selvedge, the fold along the left edge. A piece cut through both layers comes
// out twice; one cut on the fold is laid at half its width against the fold and comes out once. A print with a repeat
// across cannot match itself through a fold, so that is refused.
//
// Pieces lie round flaws and round what is laid already. On folded cloth a flaw in either layer is told from the fold.
#ifndef TURNCLOTH_CLOTH_BOLT_HPP
#define TURNCLOTH_CLOTH_BOLT_HPP

#include <turncloth/cloth/lay/types.hpp>
#include <turncloth/measure/require.hpp>
#include <turncloth/panel/size.hpp>

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace turncloth {

/// A rectangle of the cloth, told from its left edge (the edge of the selvedge, or the fold) and from the straightened
/// end.
template <length_unit Unit>
struct cloth_part {
    length<Unit> from_left{}, from_end{};
    length<Unit> across{}, along{};

    friend bool operator==(const cloth_part&, const cloth_part&) = default;
};

/// The near left corner of a piece that is laid already, and whether it lies turned.
template <length_unit Unit>
struct cloth_spot {
    length<Unit> from_left{}, from_end{};
    bool turned = false;

    friend bool operator==(const cloth_spot&, const cloth_spot&) = default;
};

/// Pieces alike. `on_fold`: cut on the fold of folded cloth. `match_across` and `match_along`: how far into the repeat
/// its near left corner must fall. `stays`: chalked already, say, and the others are laid round it; of one piece, or of two
/// cut through folded cloth.
template <length_unit Unit>
struct cloth_piece {
    std::string name;
    cut_size<Unit> size;
    std::int64_t quantity = 1;
    turncloth::grain grain = turncloth::grain::fixed;
    bool on_fold = false;
    length<Unit> match_across{};
    length<Unit> match_along{};
    std::optional<cloth_spot<Unit>> stays{};
};

/// Cloth off the roll, and how it will be cut. `width` is from edge to edge with both selvedges, `selvedge` what of
/// each is not used, `gap` the least distance between pieces. On `one_way` cloth (a nap, or a print that stands
/// upright) no piece is turned. A repeat of nothing is no repeat; it is counted from where the usable width begins. Pieces
/// lie off the `flaws` (a stain, a hole, a border to leave out) by the gap, and are then cut free.
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
    std::vector<cloth_part<Unit>> flaws{};

    /// What pieces may lie on: inside the selvedges; when folded, from the fold to the selvedge.
    length<Unit> usable_width() const { return folded ? width / 2 - selvedge : width - 2 * selvedge; }
    /// Where that begins, from the left edge.
    length<Unit> usable_from_left() const { return folded ? length<Unit>() : selvedge; }
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
/// Every piece is looked at beside every flaw.
inline constexpr std::size_t most_flaws_of_a_cloth = 1'000;

template <length_unit Unit>
void check_flaws(const bolt<Unit>& cloth) {
    require_at_most<lay_error>(cloth.flaws.size(), most_flaws_of_a_cloth, "the number of flaws of a cloth");
    for (const cloth_part<Unit>& f : cloth.flaws) {
        require_not_negative<lay_error>(f.from_left, "how far a flaw is from the left edge");
        require_not_negative<lay_error>(f.from_end, "how far a flaw is from the end");
        require_more_than_zero<lay_error>(f.across, "the width of a flaw");
        require_more_than_zero<lay_error>(f.along, "the length of a flaw");
    }
    if (!cloth.flaws.empty() && cloth.cutting != cutting::free)
        refuse<lay_error>(
            "cloth with flaws is cut free, round each piece: cuts from edge to edge would run through them",
            refusal{.kind = fault::unsuitable, .what = "the cutting of cloth with flaws"});
}

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
    check_flaws(cloth);
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
    return piece.grain != grain::fixed && !cloth.one_way && !piece.on_fold && !matched;
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
    const std::string_view takes = piece.on_fold ? " takes " : " is ",
                           wide = piece.on_fold ? " from the fold, " : " wide, ",
                           turned = fits_turned ? "; given a quarter turn it would fit" : "; turning it does not help";
    return piece_too_wide_error(
        start.value() > 0
            ? sentence({name, takes, across, wide, "starts ", start, " into the repeat and so ends ", end - usable,
                        " beyond the usable width of ", usable, turned})
            : sentence({name, takes, across, wide, end - usable, " more than the usable width of ", usable, turned}),
        refusal_on({.kind = fault::no_room,
                    .what = sentence({"the width that ", name, " takes"}),
                    .given = end,
                    .most = usable,
                    .index = index,
                    .where = piece.name}),
        fits_turned);
}

/// Where a piece that stays lies; nothing of others.
template <length_unit Unit>
std::optional<cloth_part<Unit>> where_it_stays(const cloth_piece<Unit>& piece) {
    if (!piece.stays)
        return std::nullopt;
    const length<Unit> across = across_as_laid(piece), along = piece.size.height();
    return cloth_part<Unit>{piece.stays->from_left, piece.stays->from_end, piece.stays->turned ? along : across,
                            piece.stays->turned ? across : along};
}

/// Whether they are nearer than so much.
template <length_unit Unit>
bool nearer_than(length<Unit> gap, const cloth_part<Unit>& a, const cloth_part<Unit>& b) {
    return a.from_left < b.from_left + b.across + gap && b.from_left < a.from_left + a.across + gap &&
           a.from_end < b.from_end + b.along + gap && b.from_end < a.from_end + a.along + gap;
}

/// Why the piece cannot stay there, for the end of a sentence; nothing if it can.
template <length_unit Unit>
std::string why_not_there(const cloth_piece<Unit>& piece, const cloth_part<Unit>& where, const bolt<Unit>& cloth) {
    const length<Unit> left = cloth.usable_from_left();
    if (where.from_left < left || where.from_end.value() < 0 ||
        where.from_left + where.across > left + cloth.usable_width())
        return "beyond the usable width, or the end";
    if (piece.stays->turned && !may_turn(piece, cloth))
        return "turned against its grain";
    if (piece.on_fold && where.from_left.value() > 0)
        return "off the fold";
    if (into_repeat(where.from_left - left - piece.match_across, cloth.repeat_across).value() != 0 ||
        into_repeat(where.from_end - piece.match_along, cloth.repeat_along).value() != 0)
        return "off the repeat";
    for (const cloth_part<Unit>& f : cloth.flaws)
        if (nearer_than(cloth.gap, where, f))
            return cloth.gap.value() > 0 ? "nearer to a flaw than the gap" : "on a flaw";
    return {};
}

template <length_unit Unit>
void check_staying(const std::vector<cloth_piece<Unit>>& pieces, const bolt<Unit>& cloth) {
    std::vector<std::pair<std::size_t, cloth_part<Unit>>> known;
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        const cloth_piece<Unit>& piece = pieces[i];
        const auto where = where_it_stays(piece);
        if (!where)
            continue;
        const auto refuse_it = [&](text_parts why) {
            refuse<lay_error>(why, {.kind = fault::unsuitable,
                                    .what = sentence({"where ", named(piece, i), " stays"}),
                                    .index = i,
                                    .where = piece.name});
        };
        if (cloth.cutting != cutting::free)
            refuse_it({named(piece, i), " stays where it lies, so all is cut free: a cut from edge to edge might run "
                                        "through it"});
        if (piece.quantity > (cloth.folded && !piece.on_fold ? 2 : 1))
            refuse_it({named(piece, i), " stays in one place, and ", piece.quantity, " are wanted"});
        if (const std::string why = why_not_there(piece, *where, cloth); !why.empty())
            refuse_it({named(piece, i), " cannot stay where it would lie ", why});
        for (const auto& [other, there] : known)
            if (nearer_than(cloth.gap, *where, there))
                refuse_it({named(piece, i), " cannot stay so near to ", named(pieces[other], other)});
        known.emplace_back(i, *where);
    }
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
    check_staying(pieces, cloth);
}

} // namespace detail

} // namespace turncloth

#endif
