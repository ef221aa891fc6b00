// Every fault that a design has at any size, found without one.
//
//   faults_of(design)        names that nothing bears or that are given twice, expressions that cannot be read or are of
//                            another kind than is wanted, units that do not agree, forms that lack a part, ...
//
//   for (const design_fault& f : faults_of(bag))
//       std::puts(to_text(f).c_str());
#ifndef TURNCLOTH_DESIGN_FAULTS_HPP
#define TURNCLOTH_DESIGN_FAULTS_HPP

#include <turncloth/design/project_design.hpp>
#ifndef TURNCLOTH_COMPILED
#include <turncloth/design/detail/design_checker.hpp>
#include <turncloth/design/detail/fault_places.hpp>
#endif

#include <vector>

namespace turncloth {

/// In the order in which the design is read; a fault that it has in both units is named once. Time grows with
/// the design and its faults.
TURNCLOTH_INLINE std::vector<design_fault> faults_of(const project_design& d);

#ifndef TURNCLOTH_COMPILED
TURNCLOTH_INLINE std::vector<design_fault> faults_of(const project_design& d) {
    std::vector<design_fault> all;
    detail::faults_once once;
    for (const value_kind unit : {value_kind::inches, value_kind::centimetres}) {
        const bool metric = unit == value_kind::centimetres;
        if (d.units == (metric ? design_units::inches : design_units::centimetres))
            continue;
        for (const design_fault& f : detail::design_checker(d, unit).faults)
            if (!once.told(f))
                all.push_back(f);
    }
    return all;
}
#endif

} // namespace turncloth

#endif
