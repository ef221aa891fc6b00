// A project as a design of numbers, for the one size that it is of: so a project is a file too.
//
//   design_of(project)      a project_design of which project_of makes a project that is equal to this one
//
//   const project_design numbers = design_of(roll);
//   project_of(numbers, roll.finished()) == roll;
//   std::puts(to_json(numbers).dump(2).c_str());          // design/json.hpp
//
// All numbers are exact. Its making is told operation by operation, with every place from a cut edge.
#ifndef TURNCLOTH_DESIGN_DESIGN_OF_HPP
#define TURNCLOTH_DESIGN_DESIGN_OF_HPP

#include <turncloth/design/project_design.hpp>
#include <turncloth/sheet/project.hpp>
#ifndef TURNCLOTH_COMPILED
#include <turncloth/design/detail/project_told.hpp>
#include <turncloth/design/detail/unlike.hpp>
#include <turncloth/design/faults.hpp>
#include <turncloth/design/project_of.hpp>
#endif

#include <utility>
#include <vector>

namespace turncloth {

/// Throws design_error for what a design cannot say, each with its place: a text of nothing, or with a brace in it, two
/// pieces of one name, a term of nothing. Nothing is left out in silence: the project is made again, and compared, which
/// costs as faults_of and project_of.
template <detail::compiled_unit Unit>
project_design design_of(const project<Unit>& p);

#ifndef TURNCLOTH_COMPILED
template <detail::compiled_unit Unit>
project_design design_of(const project<Unit>& p) {
    project_design told = detail::project_told<Unit>(p).say();
    std::vector<design_fault> faults = faults_of(told);
    if (faults.empty())
        faults = detail::unlike(p, project_of(told, p.finished()));
    if (!faults.empty())
        detail::refuse<design_error>(std::move(faults));
    return told;
}
#endif

TURNCLOTH_ONCE(project_design design_of(const project<inch>&));
TURNCLOTH_ONCE(project_design design_of(const project<centimetre>&));

} // namespace turncloth

#endif
