// What is laid and what it is laid on: pieces alike, cloth as it is sold, and why a piece does not go on it.
//
//   struct cloth_piece<Unit>   name, size (a cut_size), quantity, grain, on_fold, match_across, match_along
//   struct bolt<Unit>          width, selvedge, gap, cutting, one_way, folded, repeat_across, repeat_along;
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

} // namespace detail

} // namespace turncloth

#endif
