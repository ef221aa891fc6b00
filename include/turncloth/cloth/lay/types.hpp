// A lay in whole numbers: what is laid, on what, and where every piece comes to lie.
//
//   enum class grain   { fixed, may_turn }
//   enum class cutting { free, edge_to_edge, strips }
//   struct lay_piece   width, length, quantity, grain, match_across, match_along, at_edge
//   struct lay_cloth   width, gap, ways, repeat_across, repeat_along
//   struct lay_effort  steps, seed, improved
//   struct lay_place   piece, x, y, width, length, turned
//   struct lay_cut     runs, at, from, to
//   struct lay         places, cuts, length, bound, proved_best()
//
//   lay_cloth cloth{.width = 44};
//   std::vector<lay_piece> pieces{{.width = 12, .length = 18, .quantity = 2}};
//
// All sizes are whole numbers of one unit of the caller's. x runs across the cloth from its left usable edge, y along
// it from the end first cut. `width` is always across, `length` always along.
#ifndef TURNCLOTH_CLOTH_LAY_TYPES_HPP
#define TURNCLOTH_CLOTH_LAY_TYPES_HPP

#include <cstddef>
#include <cstdint>
#include <functional>
#include <vector>

namespace turncloth {

/// Whether a piece must lie with its length along the cloth, or may be given a quarter turn.
enum class grain : unsigned char { fixed, may_turn };

/// How the pieces will be parted from the cloth.
enum class cutting : unsigned char {
    free,         ///< with shears, round each piece
    edge_to_edge, ///< every cut goes right across what is left in hand, to any depth
    strips        ///< strips right across the width, crosscut, each piece then trimmed to its own length
};

/// One kind of piece. `match_across` and `match_along` say where in the repeat the piece's corner must fall; `at_edge`
/// that it must lie against the left edge, as half a piece does on the fold of folded cloth.
struct lay_piece {
    std::int64_t width = 0;
    std::int64_t length = 0;
    std::int64_t quantity = 1;
    turncloth::grain grain = turncloth::grain::fixed;
    std::int64_t match_across = 0;
    std::int64_t match_along = 0;
    bool at_edge = false;
};

/// The cloth: usable width (inside the selvedges), the least gap between neighbours, the way of cutting,
/// and the repeat to match across and along (0: nothing to match).
struct lay_cloth {
    std::int64_t width = 0;
    std::int64_t gap = 0;
    cutting ways = cutting::free;
    std::int64_t repeat_across = 0;
    std::int64_t repeat_along = 0;
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

/// The way a cut runs: across the cloth (at one y, between two x) or along it (at one x, between two y).
enum class runs : unsigned char { across, along };

struct lay_cut {
    turncloth::runs runs = turncloth::runs::across;
    std::int64_t at = 0;
    std::int64_t from = 0;
    std::int64_t to = 0;

    friend bool operator==(const lay_cut&, const lay_cut&) = default;
};

/// A finished lay. `bound` is a length that no lay of these pieces, cut in these ways, can be shorter than.
struct lay {
    std::vector<lay_place> places;
    std::vector<lay_cut> cuts; ///< in the order to make them; empty when cutting is free
    std::int64_t length = 0;
    std::int64_t bound = 0;

    [[nodiscard]] bool proved_best() const noexcept { return length == bound; }
};

/// How hard to look. A step is about the work of placing one piece once; the count, not the clock, ends the search, so
/// the same seed and steps give the same lay everywhere. `improved` is shown every better lay as it is found and
/// stops the search by returning false.
struct lay_effort {
    std::uint64_t steps = 120'000;
    std::uint64_t seed = 1;
    std::function<bool(const lay&)> improved{};
};

} // namespace turncloth

#endif
