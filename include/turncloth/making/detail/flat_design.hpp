// A design in whole numbers: its parts and the operations of flat work, each naming parts by number.
//
//   struct flat_design        parts, creases, rows, snips, spots
//   struct flat_line          along a level or upright line of a part's own spots; stretch_of(line, part) from where to where
//   nowhere                   the number of no part
#ifndef TURNCLOTH_MAKING_DETAIL_FLAT_DESIGN_HPP
#define TURNCLOTH_MAKING_DETAIL_FLAT_DESIGN_HPP

#include <turncloth/making/detail/stack.hpp>

#include <cstddef>
#include <limits>
#include <optional>
#include <vector>

namespace turncloth::detail::flat_work {

inline constexpr std::size_t nowhere = std::numeric_limits<std::size_t>::max();

struct flat_part {
    whole width = 0, height = 0;
    bool right_up = true;     ///< as it is to lie
    std::size_t on = nowhere; ///< what it is laid on, if anything
    lie there{};              ///< its own spots to those of what it is laid on
    bool beneath = false, set_into = false;
};
struct flat_crease {
    std::size_t part = 0;
    half_plane stays{}; ///< in the part's own spots
    bool over = false, begins_wall = false;
    bool along_seam = false; ///< a seam's allowance, turned once that is sewn
    bool in_hand = false;    ///< folded before its piece is laid, because the designer says so
};
/// Along a level or upright line of a part's own spots.
struct flat_line {
    std::size_t part = 0;
    table_line at{};
    std::optional<whole> begins{}, ends{};
};
/// From where to where on its part: from edge to edge where nothing is said.
constexpr stretch stretch_of(const flat_line& l, const flat_part& on) {
    return {l.begins.value_or(0), l.ends.value_or(l.at.level ? on.width : on.height)};
}
struct flat_row {
    flat_line along{};
    std::vector<std::size_t> through{};
};
struct flat_snip {
    flat_line at{};
    whole half_width = 0;
};
struct flat_spot {
    std::size_t part = 0;
    spot at{};
    std::vector<std::size_t> through{};
};
struct flat_design {
    std::vector<flat_part> parts{};
    std::vector<flat_crease> creases{};
    std::vector<flat_row> rows{};
    std::vector<flat_snip> snips{};
    std::vector<flat_spot> spots{};
};

} // namespace turncloth::detail::flat_work

#endif
