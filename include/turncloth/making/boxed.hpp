// Boxed work carried out: where each piece comes to stand, whether the seams close, and what the box measures inside.
//
//   boxed_of(design)      a boxed<U>: boxes, sewn, openings, marks, passages, faults
//
//   for (const making_fault& f : boxed_of(pad).faults)
//       std::puts(f.sentence.c_str());      // "base half 1 does not close the box: from the seam along ..."
//
// What it finds is in box_found.hpp, how pieces are placed in detail/boxes.hpp.
#ifndef TURNCLOTH_MAKING_BOXED_HPP
#define TURNCLOTH_MAKING_BOXED_HPP

#include <turncloth/making/box_found.hpp>
#include <turncloth/making/detail/boxer.hpp>

namespace turncloth {

/// Throws making_error with every fault that can be told before it is made; what does not close is in faults.
/// Time grows with the square of the seams, and with their number on one piece times the areas that seams and creases part
/// it into: seconds for the most of both (`most_turned`, `most_box_areas` of making).
template <length_unit Unit>
boxed<Unit> boxed_of(const making<Unit>& design) {
    design.require_sound();
    const detail::flat_model<Unit> model(design);
    const detail::box_model<Unit> work(design, model);
    return detail::boxer<Unit>(design, model, work).run();
}

TURNCLOTH_ONCE(boxed<inch> boxed_of(const making<inch>&));
TURNCLOTH_ONCE(boxed<centimetre> boxed_of(const making<centimetre>&));

} // namespace turncloth

#endif
