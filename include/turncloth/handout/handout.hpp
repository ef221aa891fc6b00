// The handout of a sheet: one document that a maker follows from the shop to the last look, at this size.
//
//   handout_of(sheet, cloths, options)     a document as a value (page/document.hpp); to_html (page/html.hpp) writes it
//
//   const sheet<inch> s = sheet_of(roll);
//   save("roll.html", to_html(handout_of(s, {canvas}, {.by = inch_ruler(16), .date = "12 May"})));
//
// In the order in which it is read: the size, what to buy, tools, how it is measured, what to cut with its lays and
// marks, the steps with their checks and cautions, what to look at at the end, how it is used, and the workings. Every
// figure is the sheet's: nothing is said that no step, piece or notion of it asks for. Pieces have letters, in the cut
// table, on their drawings and on the lays. What is bought off a roll is rounded up to what shops cut off, in each unit
// for its own shop; all else is written as the ruler shows it.
//
// Where options have prices, the list of what to buy says what each line costs, with its working, and the sum; a line without
// a price has room to write one in, and prices of what this sheet does not ask for are passed over.
//
// `cloths` are what cloth_for (sheet/purchases.hpp) laid of this sheet; how much to buy of others is left to be written in.
#ifndef TURNCLOTH_HANDOUT_HANDOUT_HPP
#define TURNCLOTH_HANDOUT_HANDOUT_HPP

#include <turncloth/handout/options.hpp>
#include <turncloth/page/document.hpp>
#include <turncloth/sheet/purchases.hpp>
#include <turncloth/sheet/sheet.hpp>
#ifndef TURNCLOTH_COMPILED
#include <turncloth/handout/detail/writing.hpp>
#endif

#include <type_traits>
#include <vector>

namespace turncloth {

/// Throws range_error for a ruler whose graduation is not above zero, and as the drawings of pieces and lays and cost_of.
/// Time grows with the pieces, lays and marks, and as pages_of_steps's with the steps.
template <detail::compiled_unit Unit>
document handout_of(const sheet<Unit>& s, const std::type_identity_t<std::vector<sheet_cloth<Unit>>>& cloths = {},
                    const handout_options& options = {});

#ifndef TURNCLOTH_COMPILED
template <detail::compiled_unit Unit>
document handout_of(const sheet<Unit>& s, const std::type_identity_t<std::vector<sheet_cloth<Unit>>>& cloths,
                    const handout_options& options) {
    const detail::speaking in(options.words);
    return detail::handout_writer<Unit>(s, cloths, options).write();
}
#endif

TURNCLOTH_ONCE(document handout_of(const sheet<inch>&, const std::vector<sheet_cloth<inch>>&, const handout_options&));
TURNCLOTH_ONCE(document handout_of(const sheet<centimetre>&, const std::vector<sheet_cloth<centimetre>>&,
                                   const handout_options&));

} // namespace turncloth

#endif
