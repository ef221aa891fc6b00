// Lengths from stock of which a piece may be joined of two parts, in whole numbers: what is asked and what is answered.
//
//   struct detail::join_terms     lost, least_part                   what a join takes; no part is shorter
//   struct detail::joined_part    piece, part, length, join
//   struct detail::joined_bar     kind, parts                        a piece of stock and what is cut from it
//   struct detail::joined_answer  bars, value, bound, found, refuted, plain
//
//   join_terms seam{.lost = 1, .least_part = 2};
//   joined_bar half_used{.kind = 0, .parts = {{.piece = 0, .part = 1, .length = 40}}};
#ifndef TURNCLOTH_CLOTH_STOCK_JOIN_TERMS_HPP
#define TURNCLOTH_CLOTH_STOCK_JOIN_TERMS_HPP

#include <turncloth/cloth/stock/problem.hpp>

#include <cstddef>
#include <cstdint>
#include <optional>
#include <vector>

namespace turncloth::detail {

struct join_terms {
    std::int64_t lost;
    std::int64_t least_part;
};

/// `part` 0 is the whole piece, 1 and 2 are its parts, which have the same number of a join.
struct joined_part {
    std::size_t piece;
    std::size_t part;
    std::int64_t length;
    std::size_t join = 0;
};

struct joined_bar {
    std::size_t kind;
    std::vector<joined_part> parts;
};

/// The bars, or the plain plan where no join makes one cheaper; neither if nothing was found.
struct joined_answer {
    std::vector<joined_bar> bars{};
    std::int64_t value = 0;
    std::int64_t bound = 0;
    bool found = false;
    bool refuted = false; ///< not found, and there is none
    std::optional<stock_plan> plain{};
};

} // namespace turncloth::detail

#endif
