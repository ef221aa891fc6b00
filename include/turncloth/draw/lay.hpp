// A lay of cloth drawn to scale on a page to be printed.
//
//   page_of(cloth, ruler, options, keep)       a page as a value (page/page.hpp)
//   worth_keeping<U>{across, along}            from what size on what is left over is drawn; zero for none
//   worth_keeping<U>::usual()                  a hand's width: 6 in, or 15 cm, either way
//
//   const auto canvas = cloth_for<inch>(s, "canvas", {.width = 54_in, .selvedge = "1/2"_in}, rules);
//   save("canvas.svg", to_svg(page_of(canvas, {}, {.project = s.name})));
//
// The cloth lies as long as it was bought, or as it is on hand, with its end first cut at the top and its length down the
// page, as large as it has room at: what is cut off to straighten the end lies above what is laid, what is left beyond the
// lay below. A long one is drawn in parts side by side where that makes it a fifth larger. Every kind of piece has a letter,
// which the list below explains, and which is the same on all cloths of a sheet; where there is room its name and size stand
// on the piece too. Cuts from edge to edge are numbered in the order in which they are made; of a lay that is cut free the
// list gives the place of every piece. The end and the edge that all of them count from are drawn thick and named.
// Flaws are crossed out and listed.
//
// Included by itself, as sheet/purchases.hpp is.
#ifndef TURNCLOTH_DRAW_LAY_HPP
#define TURNCLOTH_DRAW_LAY_HPP

#include <turncloth/page/paper.hpp>
#include <turncloth/page/svg.hpp>
#include <turncloth/sheet/purchases.hpp>
#ifndef TURNCLOTH_COMPILED
#include <turncloth/draw/detail/lay_in_parts.hpp>
#endif

#include <type_traits>

namespace turncloth {

template <length_unit Unit>
struct worth_keeping {
    length<Unit> across = {}, along = {};

    /// Common practice: what a hand covers is enough for a pocket, a patch or a trial of the machine.
    static constexpr worth_keeping usual() {
        const length<Unit> hand =
            metric_unit<Unit> ? as<Unit>(length_of<centimetre>(15)) : as<Unit>(length_of<inch>(6));
        return {hand, hand};
    }
};

/// Throws range_error for a ruler whose graduation is not above zero, a lay over 1 km long, or over 100000 pieces. Time
/// grows with the pieces and cuts.
template <detail::compiled_unit Unit>
page page_of(const sheet_cloth<Unit>& cloth, const ruler& by = {}, const drawing_options& options = {},
             const std::type_identity_t<worth_keeping<Unit>>& keep = {});

#ifndef TURNCLOTH_COMPILED
template <detail::compiled_unit Unit>
page page_of(const sheet_cloth<Unit>& cloth, const ruler& by, const drawing_options& options,
             const std::type_identity_t<worth_keeping<Unit>>& keep) {
    const detail::speaking in(options.words);
    const ruler shown_by = detail::read_in(by, options.words);
    const detail::lay_picture<Unit> lay(cloth, shown_by, options.project, keep);
    const detail::lay_drawn shown = detail::best_parts(lay, options);
    return detail::best_page_of(shown.drawn, options).draw([&](page& on, const detail::picture_place& at) {
        detail::write_on_cloth(on, at, shown.words);
    });
}
#endif

TURNCLOTH_ONCE(page page_of<inch>(const sheet_cloth<inch>&, const ruler&, const drawing_options&,
                                  const worth_keeping<inch>&));
TURNCLOTH_ONCE(page page_of<centimetre>(const sheet_cloth<centimetre>&, const ruler&, const drawing_options&,
                                        const worth_keeping<centimetre>&));

} // namespace turncloth

#endif
