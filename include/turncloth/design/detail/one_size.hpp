// A design that is of one size alone.
//
//   for_size_alone(design, size)      its units and sizes are that size's, and it refuses every other
#ifndef TURNCLOTH_DESIGN_DETAIL_ONE_SIZE_HPP
#define TURNCLOTH_DESIGN_DETAIL_ONE_SIZE_HPP

#include <turncloth/design/project_design.hpp>
#include <turncloth/panel/size.hpp>

namespace turncloth::detail {

template <length_unit Unit>
void for_size_alone(project_design& d, const finished_size<Unit>& size) {
    d.units = metric_unit<Unit> ? design_units::centimetres : design_units::inches;
    d.sizes = {to_text(size)};
    d.refusals = {{condition_expression("finished width is not " + to_text(size.width()) +
                                        " or finished height is not " + to_text(size.height())),
                   {"These are the numbers of " + to_text(size) + " alone."}}};
}

} // namespace turncloth::detail

#endif
