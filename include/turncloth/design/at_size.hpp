// A design at one finished size: the same records with numbers in the place of expressions, and what is there alone.
//
//   at_size(design, size)     a design without measures and conditions, which is made at that size and refuses every other
//
//   const project_design numbers = at_size(bag, finished_size(14_in, 12_in));
//   project_of(numbers, finished_size(14_in, 12_in)) == project_of(bag, finished_size(14_in, 12_in));
//
// So a project is written as a file, read back equal, and looked at number by number. All numbers are exact.
#ifndef TURNCLOTH_DESIGN_AT_SIZE_HPP
#define TURNCLOTH_DESIGN_AT_SIZE_HPP

#include <turncloth/design/project_design.hpp>
#include <turncloth/panel/size.hpp>
#ifndef TURNCLOTH_COMPILED
#include <turncloth/design/detail/design_numbers.hpp>
#include <turncloth/design/project_of.hpp>
#endif

#include <cstddef>
#include <string>
#include <vector>

namespace turncloth {

/// Throws as project_of, refused_size or design_error with every fault found, and costs as much.
template <detail::compiled_unit Unit>
project_design at_size(const project_design& d, const finished_size<Unit>& size);

#ifndef TURNCLOTH_COMPILED
template <detail::compiled_unit Unit>
project_design at_size(const project_design& d, const finished_size<Unit>& size) {
    static_cast<void>(project_of(d, size));
    detail::design_values<Unit> values(size, {});
    std::vector<design_fault> faults;
    for (std::size_t i = 0; i < d.measures.size(); ++i)
        values.add(d.measures[i], "/measures/" + std::to_string(i), faults);
    project_design made = d;
    made.measures.clear();
    made.shorter_side_parts = {};
    detail::design_numbers<Unit> numbers(values);
    detail::members(numbers, made);
    detail::for_size_alone(made, size);
    return made;
}
#endif

TURNCLOTH_ONCE(project_design at_size(const project_design&, const finished_size<inch>&));
TURNCLOTH_ONCE(project_design at_size(const project_design&, const finished_size<centimetre>&));

} // namespace turncloth

#endif
