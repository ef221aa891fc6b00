// The finished thing, front and back, as the last step leaves it.
//
//   pages_of_finished(design, steps, labels, ruler, options)   two pages: as it lies, and turned over left to right
//   pages_of_finished(sheet, ruler, options)                   none for a sheet whose project does not say how it is made
//
//   for (const page& p : pages_of_finished(sheet_of(roll)))
//       save(p.title + ".svg", to_svg(p));
//
// What is in sight is named, with its rows, slits and eyelets; mouths are dotted. What is sewn up in space is drawn as its
// front and its back look, and its depth is told.
#ifndef TURNCLOTH_DRAW_FINISHED_HPP
#define TURNCLOTH_DRAW_FINISHED_HPP

#include <turncloth/making/order.hpp>
#include <turncloth/page/paper.hpp>
#include <turncloth/page/svg.hpp>
#include <turncloth/sheet/sheet.hpp>
#ifndef TURNCLOTH_COMPILED
#include <turncloth/draw/detail/finished_drawer.hpp>
#endif

#include <string>
#include <vector>

namespace turncloth {

struct finished_labels {
    std::string figures = {}; ///< "rounded to 1/16 in": by the ruler, where nothing is said
};

/// `steps` is what steps_of, or execute, gives. Throws as steps_of, and range_error as page_of. The design is carried out
/// once more, and what lies there at last is looked at from both sides: time grows as execute's does.
template <detail::compiled_unit Unit>
std::vector<page> pages_of_finished(const making<Unit>& design, const std::vector<making_step>& steps,
                                    const finished_labels& labels = {}, const ruler& by = {},
                                    const drawing_options& options = {});

template <detail::compiled_unit Unit>
std::vector<page> pages_of_finished(const sheet<Unit>& s, const ruler& by = {}, const drawing_options& options = {});

#ifndef TURNCLOTH_COMPILED
template <detail::compiled_unit Unit>
std::vector<page> pages_of_finished(const making<Unit>& design, const std::vector<making_step>& steps,
                                    const finished_labels& labels, const ruler& by, const drawing_options& options) {
    const detail::speaking in(options.words);
    const ruler shown_by = detail::read_in(by, options.words);
    return detail::finished_drawer<Unit>(design, steps, shown_by, labels.figures, options).draw();
}

template <detail::compiled_unit Unit>
std::vector<page> pages_of_finished(const sheet<Unit>& s, const ruler& by, const drawing_options& options) {
    if (!s.design)
        return {};
    const detail::speaking in(options.words);
    const ruler shown_by = detail::read_in(by, options.words);
    detail::finished_drawer<Unit> drawer(*s.design, steps_of(*s.design), shown_by,
                                         detail::figures_note(shown_by, s.graduation), options);
    drawer.note_turns(s.steps);
    return drawer.draw();
}
#endif

TURNCLOTH_ONCE(std::vector<page> pages_of_finished(const making<inch>&, const std::vector<making_step>&,
                                                   const finished_labels&, const ruler&, const drawing_options&));
TURNCLOTH_ONCE(std::vector<page> pages_of_finished(const making<centimetre>&, const std::vector<making_step>&,
                                                   const finished_labels&, const ruler&, const drawing_options&));
TURNCLOTH_ONCE(std::vector<page> pages_of_finished(const sheet<inch>&, const ruler&, const drawing_options&));
TURNCLOTH_ONCE(std::vector<page> pages_of_finished(const sheet<centimetre>&, const ruler&, const drawing_options&));

} // namespace turncloth

#endif
