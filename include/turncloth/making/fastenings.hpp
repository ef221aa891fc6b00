// Eyelets and tie ends, as spots that count the layers under them.
//
//   set_eyelets(design, piece, eyelet_row)            each centre at its own place from the edge
//   sew_tie(design, piece, {.from, .in, .along}, through)     the end or the middle of a tie, at one spot
#ifndef TURNCLOTH_MAKING_FASTENINGS_HPP
#define TURNCLOTH_MAKING_FASTENINGS_HPP

#include <turncloth/making/finishing.hpp>
#include <turncloth/notions/hanging.hpp>

#include <type_traits>
#include <vector>

namespace turncloth {

template <length_unit Unit>
operation set_eyelets(making<Unit>& design, const std::type_identity_t<panel_part<Unit>>& piece,
                      const eyelet_row<Unit>& eyelets) {
    return design.add(spot<Unit>{.what = spot_kind::eyelet,
                                 .along = piece.line(edge::top, eyelets.down),
                                 .places = piece.places(edge::left, eyelets.along.centres()),
                                 .through = {piece}});
}

/// `in` from one finished edge, and `along` it from the finished left or top edge.
template <length_unit Unit>
struct tie_place {
    edge from = edge::left;
    place<finished_edge, Unit> in{}, along{};
    bool by_middle = false; ///< otherwise by an end
    length<Unit> tie{};     ///< how long it is, where it is to go round what is rolled up
};

template <length_unit Unit>
operation sew_tie(making<Unit>& design, const std::type_identity_t<panel_part<Unit>>& piece,
                  const std::type_identity_t<tie_place<Unit>>& at, const std::vector<cut_part>& through) {
    const bool level = is_level(at.from);
    const row<finished_edge, Unit> once(at.along, length<Unit>(), 1);
    return design.add(spot<Unit>{.what = at.by_middle ? spot_kind::tie_middle : spot_kind::tie_end,
                                 .along = piece.line(at.from, at.in),
                                 .places = piece.places(level ? edge::left : edge::top, once),
                                 .through = through,
                                 .tie = at.tie});
}

} // namespace turncloth

#endif
