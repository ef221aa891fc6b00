// Zippers sewn over a piece: tape that becomes one wall with it, rows beside the chain and across the tape's ends, a
// slit behind, and a mouth.
//
//   zippers_over<U>{on, from, centres, begins, opening, beyond, rows, slit}
//   zipper_mouths sew_zippers(design, zippers)      the tapes cut, and one mouth for each zipper
//
//   const auto z = sew_zippers<inch>(design, {.on = lining, .centres = {at<cut_edge>(4_in)}, .begins = 2_in, ...});
//   design.add(compartment<inch>{.name = "upper pocket", .between = {back, lining}, .mouths = {z.mouths[0]}, ...});
//
// Without the rows across its ends a tunnel leads out under the tape, past both ends of the chain: leave them out only
// where a seam catches the ends.
#ifndef TURNCLOTH_MAKING_ZIPPERS_OVER_HPP
#define TURNCLOTH_MAKING_ZIPPERS_OVER_HPP

#include <turncloth/making/design.hpp>

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace turncloth {

/// Level zippers of one length. `rows` is from the row above the chain to the row below it; the tape is twice as wide.
/// Nothing is slit open where `slit` is nothing.
template <length_unit Unit>
struct zippers_over {
    cut_part on{};
    edge from = edge::top;
    std::vector<place<cut_edge, Unit>> centres{};
    length<Unit> begins{}; ///< of the opening, from the cut left edge
    length<Unit> opening{}, beyond{}, rows{}, slit{};
    bool ends_sewn = true;
    std::optional<length<Unit>> ends_in{}; ///< rows across the ends, from the end of the tape; half way, if not given
    std::string name = "zipper";
};

struct zipper_mouths {
    cut_part tape{};
    std::vector<mouth_handle> mouths{};
};

namespace detail {

template <length_unit Unit>
mouth_handle sew_zipper(making<Unit>& design, const zippers_over<Unit>& z, const place<cut_edge, Unit>& centre,
                        cut_part tape) {
    const length<Unit> ends = z.begins + z.opening;
    const auto row_on_tape = [&](edge e, length<Unit> in) {
        design.add(stitching<Unit>{.along = {.on = tape, .from = e, .in = at<cut_edge>(in)}, .through = {tape, z.on}});
    };
    const length<Unit> above = centre.from_datum() - z.rows;
    const bool from_top = z.from == edge::top;
    design.add(laying<Unit>{.piece = tape,
                            .on = z.on,
                            .left = z.begins - z.beyond,
                            .top = from_top ? above : design.parts()[z.on.index].height - centre.from_datum() - z.rows,
                            .set_into_one = true});
    row_on_tape(edge::top, z.rows / 2);
    row_on_tape(edge::top, z.rows * 3 / 2);
    if (z.ends_sewn)
        for (const edge e : {edge::left, edge::right})
            row_on_tape(e, z.ends_in.value_or(z.beyond / 2));
    design.add(snip<Unit>{.at = {.on = z.on, .from = z.from, .in = centre, .begins = z.begins, .ends = ends},
                          .width = z.slit});
    const chalk_line<Unit> chain{
        .on = tape, .from = edge::top, .in = at<cut_edge>(z.rows), .begins = z.beyond, .ends = z.beyond + z.opening};
    return design.add(mouth<Unit>{.name = z.name, .at = {chain}, .by = closed_by::zipper});
}

} // namespace detail

/// Throws size_error for a row distance, an opening or an end that is nothing.
template <length_unit Unit>
zipper_mouths sew_zippers(making<Unit>& design, const zippers_over<Unit>& z) {
    require_more_than_zero<size_error>(z.opening, "the opening of a zipper");
    require_more_than_zero<size_error>(z.rows, "the distance between a zipper's rows");
    require_more_than_zero<size_error>(z.beyond, "the tape beyond an opening");
    zipper_mouths made;
    const length<Unit> end_to_end = z.opening + z.beyond * 2, wide = z.rows * 2;
    made.tape = design.cut({.name = z.name,
                            .cloth = {.name = "zipper tape", .frays = false},
                            .width = end_to_end,
                            .height = wide,
                            .count = static_cast<std::int64_t>(z.centres.size())});
    for (std::size_t k = 0; k < z.centres.size(); ++k)
        made.mouths.push_back(detail::sew_zipper(design, z, z.centres[k], made.tape[static_cast<std::int64_t>(k)]));
    return made;
}

TURNCLOTH_ONCE(zipper_mouths sew_zippers(making<inch>&, const zippers_over<inch>&));
TURNCLOTH_ONCE(zipper_mouths sew_zippers(making<centimetre>&, const zippers_over<centimetre>&));

} // namespace turncloth

#endif
