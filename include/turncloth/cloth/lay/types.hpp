// A lay in whole numbers: what is laid, on what, and where every piece comes to lie. What has units is in
// cloth/lay.hpp.
//
//   enum class grain   { fixed, may_turn, turn_together }       the first five are words of the front too
//   enum class cutting { free, edge_to_edge, strips }
//   enum class cut_direction { across, along }
//   struct part_origin cut, taken_off
//   struct lay_effort  steps, seed; while_typing(), on_a_click(), to_print()
//   struct detail::lay_part    left, right, near, far
//   struct detail::lay_spot    x, y, turned: where a piece stays
//   struct detail::lay_piece   width, length, quantity, grain, match_across, match_along, at_edge, stays
//   struct detail::lay_cloth   width, gap, cutting, repeat_across, repeat_along, flaws
//   struct detail::lay_place   piece, x, y, width, length, turned
//   struct detail::lay_cut     direction, at, in_hand, origin
//   struct detail::whole_lay   places, cuts, length, bound, proved_best()
//
//   detail::lay_cloth cloth{.width = 44};
//   std::vector<detail::lay_piece> pieces{{.width = 12, .length = 18, .quantity = 2}};
//
// All sizes are whole numbers of one unit. x runs across the cloth from its left usable edge, y along it from the end
// first cut. `width` is always across, `length` always along.
#ifndef TURNCLOTH_CLOTH_LAY_TYPES_HPP
#define TURNCLOTH_CLOTH_LAY_TYPES_HPP

#include <compare>
#include <cstddef>
#include <cstdint>
#include <functional>
#include <optional>
#include <vector>

namespace turncloth {

/// Whether a piece must lie with its length along the cloth, or may be given a quarter turn: by itself, or where all that
/// turn together with it are given one, as panels of one cover are, whose threads are seen to run alike. A search knows of
/// the first two.
enum class grain : unsigned char { fixed, may_turn, turn_together };

/// How the pieces will be parted from the cloth.
enum class cutting : unsigned char {
    free,         ///< with shears, round each piece
    edge_to_edge, ///< every cut goes right across what is left in hand, to any depth
    strips        ///< strips right across the width, crosscut, each piece then trimmed to its own length
};

/// The way a cut runs: across the cloth from side to side, or along it.
enum class cut_direction : unsigned char { across, along };

/// Where a part in hand comes from: cut number `cut`, counted from 1, took it off, or left it; of cut 0 it is the
/// whole.
struct part_origin {
    std::size_t cut = 0;
    bool taken_off = false;

    friend bool operator==(const part_origin&, const part_origin&) = default;
};

/// How hard to look. A step is about the work of placing one piece once; the count, not the clock, ends the search, so
/// the same seed and steps give the same lay everywhere. The three named are for what a person waits for: about a
/// thousandth, a hundredth and a whole second where nothing is proved before.
struct lay_effort {
    std::uint64_t steps = 120'000;
    std::uint64_t seed = 1;

    static constexpr lay_effort while_typing() { return {12'000, 1}; }
    static constexpr lay_effort on_a_click() { return {}; }
    static constexpr lay_effort to_print() { return {12'000'000, 1}; }
};

namespace detail {

/// A rectangle of cloth.
struct lay_part {
    std::int64_t left = 0, right = 0, near = 0, far = 0;

    friend auto operator<=>(const lay_part&,
                            const lay_part&) = default; // NOLINT(modernize-use-nullptr): no pointer here
};

/// Where a piece has been laid already.
struct lay_spot {
    std::int64_t x = 0, y = 0;
    bool turned = false;
};

/// Pieces alike, the sizes and the quantity above zero. `match_across` and `match_along` say where in the repeat the
/// piece's corner must fall; `at_edge` that it must lie against the left edge, as half a piece does on the fold of
/// folded cloth. Where there is a repeat, or `at_edge`, the grain is fixed. What stays where it is, is one piece.
struct lay_piece {
    std::int64_t width = 0;
    std::int64_t length = 0;
    std::int64_t quantity = 1;
    turncloth::grain grain = turncloth::grain::fixed;
    std::int64_t match_across = 0;
    std::int64_t match_along = 0;
    bool at_edge = false;
    std::optional<lay_spot> stays{};
};

/// The cloth: usable width (inside the selvedges), the least gap between neighbours, the way of cutting, and the repeat
/// to match across and along (0: nothing to match). A `sliver` is less than 1 of cloth beyond the width, where no piece
/// can lie: it is cut off all the same. Pieces lie off the flaws by the gap; where there are any, or pieces that stay,
/// cloth is cut free.
struct lay_cloth {
    std::int64_t width = 0;
    std::int64_t gap = 0;
    turncloth::cutting cutting = turncloth::cutting::free;
    std::int64_t repeat_across = 0;
    std::int64_t repeat_along = 0;
    bool sliver = false;
    std::vector<lay_part> flaws{};

    /// Where the cloth in hand ends; the sliver counts as 1.
    constexpr std::int64_t edge() const { return width + sliver; }
};

/// One piece laid; `piece` is the index in the list of pieces, `width` and `length` are as laid (after any turn).
struct lay_place {
    std::size_t piece = 0;
    std::int64_t x = 0;
    std::int64_t y = 0;
    std::int64_t width = 0;
    std::int64_t length = 0;
    bool turned = false;

    friend bool operator==(const lay_place&, const lay_place&) = default;
};

/// From edge to edge of the part in hand, at one y or one x. It takes off what is nearer the end first cut, or to the
/// left, and leaves the rest.
struct lay_cut {
    cut_direction direction = cut_direction::across;
    std::int64_t at = 0;
    lay_part in_hand;
    part_origin origin{};

    friend bool operator==(const lay_cut&, const lay_cut&) = default;
};

/// A finished lay. `bound` is a length that no lay of these pieces, cut in these ways, can be shorter than.
struct whole_lay {
    std::vector<lay_place> places;
    std::vector<lay_cut> cuts; ///< in the order to make them; empty when cutting is free
    std::int64_t length = 0;
    std::int64_t bound = 0;

    [[nodiscard]] bool proved_best() const noexcept { return length == bound; }
};

/// How far a search is: the steps spent of its effort, the length of the best lay so far, and the bound proved so far.
struct lay_state {
    std::uint64_t steps = 0, effort = 0;
    std::int64_t best = 0, bound = 0;
};

/// `improved` is shown every better lay as it is found, `keep_going` is asked a hundred times at even steps of the effort;
/// each stops the search by returning false.
struct lay_watcher {
    std::function<bool(const whole_lay&)> improved = {};
    std::function<bool(const lay_state&)> keep_going = {};
};

} // namespace detail

} // namespace turncloth

#endif
