// The steps of making drawn, each as the work lies when it is done.
//
//   pages_of_steps(design, plan, labels, ruler, options)     a page for each step that is seen, in the order of work
//   pages_of_steps(sheet, labels, ruler, options)            none for a sheet whose project does not say how it is made
//   struct step_page{group, step, page}                      of which step of the plan
//
//   for (const step_page& s : pages_of_steps(sheet_of(roll)))
//       save(std::to_string(s.group + 1) + '.' + std::to_string(s.step + 1) + ".svg", to_svg(s.page));
//
// The work is seen from the side that lies up at that step. The row that is sewn is the only heavy line; cloth that is
// turned has its former place in dashes, and an arrow. Wrong sides are hatched. The edge that is measured from is
// ticked, and distances are those of the plan, rounded to the ruler. A seam is drawn on its pieces, side by side and
// right sides up, the lines that meet with like letters. What turns nothing and sews nothing (cutting out, turning out,
// filling, closing) has no picture; handwork has one of the work as it lies, while no seam joins that to more.
#ifndef TURNCLOTH_DRAW_STEP_HPP
#define TURNCLOTH_DRAW_STEP_HPP

#include <turncloth/making/design.hpp>
#include <turncloth/making/work_step.hpp>
#include <turncloth/page/paper.hpp>
#include <turncloth/page/svg.hpp>
#include <turncloth/sheet/sheet.hpp>
#ifndef TURNCLOTH_COMPILED
#include <turncloth/draw/detail/step_drawer.hpp>
#endif

#include <cstddef>
#include <string>
#include <vector>

namespace turncloth {

/// What is written on a picture of a step besides its figures.
struct step_labels {
    bool sentences = true;    ///< what the step says; otherwise only in the page's description
    std::string figures = {}; ///< "rounded to 1/16 in": by the ruler, where nothing is said
};

struct step_page {
    std::size_t group = 0, step = 0; ///< from 0, in the plan
    turncloth::page page{};
};

/// `plan` is that of the design. Throws as steps_of, and range_error as page_of. The design is carried out once, and each
/// step drawn of the work as it lies then: time grows with the steps times what lies there.
template <detail::compiled_unit Unit>
std::vector<step_page> pages_of_steps(const making<Unit>& design, const work_plan<Unit>& plan,
                                      const step_labels& labels = {}, const ruler& by = {},
                                      const drawing_options& options = {});

template <detail::compiled_unit Unit>
std::vector<step_page> pages_of_steps(const sheet<Unit>& s, const step_labels& labels = {}, const ruler& by = {},
                                      const drawing_options& options = {});

#ifndef TURNCLOTH_COMPILED
template <detail::compiled_unit Unit>
std::vector<step_page> pages_of_steps(const making<Unit>& design, const work_plan<Unit>& plan,
                                      const step_labels& labels, const ruler& by, const drawing_options& options) {
    const detail::speaking in(options.words);
    const ruler shown_by = detail::read_in(by, options.words);
    return detail::step_drawer<Unit, step_labels, step_page>(design, plan, labels, shown_by, options).draw();
}

template <detail::compiled_unit Unit>
std::vector<step_page> pages_of_steps(const sheet<Unit>& s, const step_labels& labels, const ruler& by,
                                      const drawing_options& options) {
    if (!s.design)
        return {};
    const detail::speaking in(options.words);
    const ruler shown_by = detail::read_in(by, options.words);
    step_labels said = labels;
    if (said.figures.empty())
        said.figures = detail::figures_note(shown_by, s.graduation);
    return pages_of_steps(*s.design, s.steps, said, shown_by, options);
}
#endif

TURNCLOTH_ONCE(std::vector<step_page> pages_of_steps(const making<inch>&, const work_plan<inch>&, const step_labels&,
                                                     const ruler&, const drawing_options&));
TURNCLOTH_ONCE(std::vector<step_page> pages_of_steps(const making<centimetre>&, const work_plan<centimetre>&,
                                                     const step_labels&, const ruler&, const drawing_options&));
TURNCLOTH_ONCE(std::vector<step_page> pages_of_steps(const sheet<inch>&, const step_labels&, const ruler&,
                                                     const drawing_options&));
TURNCLOTH_ONCE(std::vector<step_page> pages_of_steps(const sheet<centimetre>&, const step_labels&, const ruler&,
                                                     const drawing_options&));

} // namespace turncloth

#endif
