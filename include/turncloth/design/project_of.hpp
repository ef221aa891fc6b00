// A design and a finished size give a project.
//
//   project_of(design, size)           a project<U>; throws refused_size where the design refuses that size in its own
//   project_of(design, size, ruled)    words, and design_error with every fault found; on a ruler as making/ruled.hpp has it
//
//   const sheet<inch> s = sheet_of(project_of(bag, finished_size(12_in, 10_in)));
//   sheet_on_ruler(size, "1/16"_in, [&](const auto& asked, const auto& by) { return project_of(bag, asked, by); });
#ifndef TURNCLOTH_DESIGN_PROJECT_OF_HPP
#define TURNCLOTH_DESIGN_PROJECT_OF_HPP

#include <turncloth/design/project_design.hpp>
#include <turncloth/making/ruled.hpp>
#include <turncloth/panel/size.hpp>
#include <turncloth/sheet/project.hpp>
#ifndef TURNCLOTH_COMPILED
#include <turncloth/design/detail/project_from_design.hpp>
#endif

namespace turncloth {

/// Throws refused_size, and design_error with every fault found. Time grows with the design, and with the square of its
/// pieces; its lists have at most `most_in_a_design` items.
template <detail::compiled_unit Unit>
project<Unit> project_of(const project_design& d, const finished_size<Unit>& asked, const ruled<Unit>& by = {});

#ifndef TURNCLOTH_COMPILED
template <detail::compiled_unit Unit>
project<Unit> project_of(const project_design& d, const finished_size<Unit>& asked, const ruled<Unit>& by) {
    return detail::project_from_design<Unit>(d, asked, by).make();
}
#endif

TURNCLOTH_ONCE(project<inch> project_of(const project_design&, const finished_size<inch>&, const ruled<inch>&));
TURNCLOTH_ONCE(project<centimetre> project_of(const project_design&, const finished_size<centimetre>&,
                                              const ruled<centimetre>&));

} // namespace turncloth

#endif
