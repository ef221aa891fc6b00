// A panel drawn as it lies folded, seen from the back where the turned cloth shows.
//
//   folded_labels{name}                          what a folded panel does not know of itself
//   page_of(folded, labels, ruler, options)      a page as a value (page/page.hpp)
//
//   const auto napkin = fold_panel(panel(finished_size(16_in, 16_in), all_round(double_turned_hem("1/4"_in, 1_in))),
//                                  all_corners(mitred("1/4"_in, "1/16"_in)));
//   save("napkin.svg", to_svg(page_of(napkin, {.name = "napkin"})));
//
// A number says how many layers lie in a region: at each corner, along each hem, in the middle. Where the regions of a
// corner are too small for that, the view is interrupted, as drawings of long parts are (ISO 128-3): of the middle, in
// which nothing changes, most is left out between two zigzag lines, and all that is left is drawn larger. A number that
// still finds no room in its region stands outside the piece and is led to it. Lines come from the folding: an edge is
// visible where no layer nearer to the eye covers it.
//
// Included by itself: folding is not part of turncloth.hpp.
#ifndef TURNCLOTH_DRAW_FOLDED_HPP
#define TURNCLOTH_DRAW_FOLDED_HPP

#include <turncloth/page/paper.hpp>
#include <turncloth/page/svg.hpp>
#include <turncloth/panel/made_up.hpp>
#ifndef TURNCLOTH_COMPILED
#include <turncloth/draw/detail/folded_picture.hpp>
#endif

#include <string>

namespace turncloth {

struct folded_labels {
    std::string name = "made up";
};

/// Throws range_error for a ruler whose graduation is not above zero, and for a panel over 1 km long or wide.
template <detail::compiled_unit Unit, coordinate Number>
page page_of(const folded_panel<Unit, Number>& folded, const folded_labels& labels = {}, const ruler& by = {},
             const drawing_options& options = {});

#ifndef TURNCLOTH_COMPILED
template <detail::compiled_unit Unit, coordinate Number>
page page_of(const folded_panel<Unit, Number>& folded, const folded_labels& labels, const ruler& by,
             const drawing_options& options) {
    const detail::speaking in(options.words);
    const ruler shown_by = detail::read_in(by, options.words);
    detail::folded_picture<Unit, Number> made(folded, shown_by, options.project, labels.name);
    page on;
    bool has_room = false;
    const auto draw = [&] {
        const detail::picture drawn = made.make();
        const detail::picture_page best = detail::best_page_of(drawn, options);
        on = best.draw([&](page& p, const detail::picture_place& at) {
            has_room = detail::layer_numbers(p, at, made.shown).write();
        });
        return best.spare();
    };
    draw();
    if (!has_room) {
        made.shown.interrupt();
        made.shown.show_more(draw());
        draw();
    }
    on.title = detail::sentence({on.title, ", folded"});
    return on;
}
#endif

TURNCLOTH_ONCE(page page_of(const folded_panel<inch, fraction>&, const folded_labels&, const ruler&,
                            const drawing_options&));
TURNCLOTH_ONCE(page page_of(const folded_panel<centimetre, fraction>&, const folded_labels&, const ruler&,
                            const drawing_options&));
TURNCLOTH_ONCE(page page_of(const folded_panel<inch, double>&, const folded_labels&, const ruler&,
                            const drawing_options&));
TURNCLOTH_ONCE(page page_of(const folded_panel<centimetre, double>&, const folded_labels&, const ruler&,
                            const drawing_options&));

} // namespace turncloth

#endif
