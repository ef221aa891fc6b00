// A design and a finished size give a project.
//
//   project_of(design, size)           a project<U>; throws refused_size where the design refuses that size in its own
//   project_of(design, size, ruled)    words, and design_error with every fault found; on a ruler as making/ruled.hpp has it
//   try_project_of(design, size)       the project, or the faults as a value
//
//   const sheet<inch> s = sheet_of(project_of(bag, finished_size(12_in, 10_in)));
//   sheet_on_ruler(size, "1/16"_in, [&](const auto& asked, const auto& by) { return project_of(bag, asked, by); });
#ifndef TURNCLOTH_DESIGN_PROJECT_OF_HPP
#define TURNCLOTH_DESIGN_PROJECT_OF_HPP

#include <turncloth/design/project_design.hpp>
#include <turncloth/making/ruled.hpp>
#include <turncloth/measure/outcome.hpp>
#include <turncloth/panel/size.hpp>
#include <turncloth/sheet/project.hpp>
#ifndef TURNCLOTH_COMPILED
#include <turncloth/design/detail/project_from_design.hpp>

#include <utility>
#include <vector>
#endif

namespace turncloth {

/// Throws refused_size, and design_error with every fault found. Time grows with the design, and with the square of its
/// pieces; its lists have at most `most_in_a_design` items.
template <detail::compiled_unit Unit>
project<Unit> project_of(const project_design& d, const finished_size<Unit>& asked, const ruled<Unit>& by = {});

/// Throws nothing of turncloth's. A size that the design refuses is one fault, whose place is that refusal: "/refuse/0".
/// Without exceptions, what an expression, a finish or another part refuses by itself goes to the program's own
/// boost::throw_exception, as elsewhere.
template <detail::compiled_unit Unit>
outcome<project<Unit>, design_error> try_project_of(const project_design& d, const finished_size<Unit>& asked,
                                                    const ruled<Unit>& by = {});

#ifndef TURNCLOTH_COMPILED
template <detail::compiled_unit Unit>
project<Unit> project_of(const project_design& d, const finished_size<Unit>& asked, const ruled<Unit>& by) {
    detail::project_from_design<Unit> maker(d, asked, by);
    outcome<project<Unit>, design_error> made = maker.made();
    if (!maker.said().empty())
        detail::refuse<refused_size>(maker.said(), refusal{.kind = fault::unsuitable, .what = "the finished size"});
    if (!made)
        detail::refuse<design_error>(made.refused());
    return *std::move(made);
}

template <detail::compiled_unit Unit>
outcome<project<Unit>, design_error> try_project_of(const project_design& d, const finished_size<Unit>& asked,
                                                    const ruled<Unit>& by) {
#ifdef BOOST_NO_EXCEPTIONS
    return detail::project_from_design<Unit>(d, asked, by).made();
#else
    try {
        return detail::project_from_design<Unit>(d, asked, by).made();
    } catch (const design_error& refused) {
        return refused;
    } catch (const error& refused) { // a sum that does not fit, say
        return design_error(std::vector<design_fault>{{"", refused.what(), {}}});
    }
#endif
}
#endif

TURNCLOTH_ONCE(project<inch> project_of(const project_design&, const finished_size<inch>&, const ruled<inch>&));
TURNCLOTH_ONCE(project<centimetre> project_of(const project_design&, const finished_size<centimetre>&,
                                              const ruled<centimetre>&));
TURNCLOTH_ONCE(outcome<project<inch>, design_error> try_project_of(const project_design&, const finished_size<inch>&,
                                                                   const ruled<inch>&));
TURNCLOTH_ONCE(outcome<project<centimetre>, design_error> try_project_of(const project_design&,
                                                                         const finished_size<centimetre>&,
                                                                         const ruled<centimetre>&));

} // namespace turncloth

#endif
