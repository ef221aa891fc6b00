// What a row of stitching met when it was sewn, span by span.
//
//   struct sewn_span     a stretch of a row, and the plies under it
//   struct sewn_row      all of them, and how each ply lay; .how(pierced)
//   struct row_layers    of a row no more than how many lay under it
//   struct row_room      room for what is noted of a row while it is met, kept from one row to the next
//
//   for (const sewn_span& s : row.spans) for (const auto& p : s.plies) through(p.part, row.how(p));
#ifndef TURNCLOTH_MAKING_DETAIL_SEWN_ROW_HPP
#define TURNCLOTH_MAKING_DETAIL_SEWN_ROW_HPP

#include <turncloth/making/detail/flat_design.hpp>
#include <turncloth/making/detail/stack.hpp>

#include <cstddef>
#include <vector>

namespace turncloth::detail::flat_work {

/// A stretch of a row through the same plies all along.
struct sewn_span {
    whole from = 0, to = 0;
    struct pierced {
        std::size_t part = 0, as_sewn = 0; ///< how it lay then: its row tells it once for all spans
    };
    std::vector<pierced> plies{}; ///< from the bottom up
};

/// What a row met. Spans where the needle met nothing (a slit) are left out.
struct sewn_row {
    table_line at{};
    stretch run{};
    std::vector<sewn_span> spans{};
    struct ply_sewn {
        std::size_t part = 0;
        lie how{}; ///< as it lay when it was sewn
    };
    std::vector<ply_sewn> as_sewn{};
    std::vector<std::size_t> touched{}; ///< parts whose cloth ends or folds exactly on the row: it does not hold them

    const lie& how(const sewn_span::pierced& p) const { return as_sewn[p.as_sewn].how; }
};

/// Of a row no more than how many layers lie under it, and whether one part's is the lowest all along.
struct row_layers {
    table_line at{};
    stretch run{};
    std::size_t least = 0, most = 0;
    std::size_t lowest = nowhere;
    bool one_lowest = true;
    bool touches = false;
};

/// Room for what is noted of a row while it is met, kept from one row to the next.
struct row_room {
    struct under {
        std::size_t ply;
        stretch run;
    };
    std::vector<under> cloth{};
    std::vector<whole> stops{};
    std::vector<std::size_t> here{};
};

} // namespace turncloth::detail::flat_work

#endif
