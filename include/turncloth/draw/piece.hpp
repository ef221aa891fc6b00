// A piece drawn to scale on a page to be printed.
//
//   page_of(piece, ruler, options)   a page as a value (page/page.hpp); A4, inches and centimetres where nothing is said
//
//   const sheet<inch> s = sheet_of(roll);
//   save("outer.svg", to_svg(page_of(s.pieces[0], {}, {.project = s.name})));
//
// The piece is drawn at the largest of 1:1, 1:2, 1:4, 1:5, 1:8, 1:10, 1:20, ... that leaves room for its words. Every
// kind of line has its own pattern and weight, in black. Figures are rounded to the ruler, each from the exact length,
// or are those of a sheet that was worked out on it; what is drawn is not rounded. A line is labelled with its distance
// from an edge, which is ticked; labels that do not fit become numbers, and a list below says what they are. An arrow
// runs from each fold of a pleat to the placement line that it is brought to. An eyelet is a cross at its centre, its
// hole and its rim, true to scale. Where there is room, the top and the left are named, and an arrow runs up the grain.
#ifndef TURNCLOTH_DRAW_PIECE_HPP
#define TURNCLOTH_DRAW_PIECE_HPP

#include <turncloth/page/paper.hpp>
#include <turncloth/page/svg.hpp>
#include <turncloth/sheet/sheet.hpp>
#ifndef TURNCLOTH_COMPILED
#include <turncloth/draw/detail/left_out.hpp>
#include <turncloth/draw/detail/piece_picture.hpp>
#endif

namespace turncloth {

/// Throws range_error for a ruler whose graduation is not above zero, and for a piece over 1 km long or wide. Time grows
/// with the marks and lines drawn.
template <detail::compiled_unit Unit>
page page_of(const sheet_piece<Unit>& piece, const ruler& by = {}, const drawing_options& options = {});

#ifndef TURNCLOTH_COMPILED
template <detail::compiled_unit Unit>
page page_of(const sheet_piece<Unit>& piece, const ruler& by, const drawing_options& options) {
    const detail::speaking in(options.words);
    const ruler shown_by = detail::read_in(by, options.words);
    detail::piece_picture<Unit> made(piece, shown_by);
    const detail::picture drawn = detail::at_its_largest(made.make(options.project), options);
    return detail::best_page_of(drawn, options).draw([&](page& on, const detail::picture_place& at) {
        detail::write_bearings(on, at, made.measured_from(), made.has_grain());
    });
}
#endif

TURNCLOTH_ONCE(page page_of(const sheet_piece<inch>&, const ruler&, const drawing_options&));
TURNCLOTH_ONCE(page page_of(const sheet_piece<centimetre>&, const ruler&, const drawing_options&));

} // namespace turncloth

#endif
