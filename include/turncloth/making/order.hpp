// The order of making, as a consequence of what is laid, turned and sewn where.
//
//   steps_of(design)       every operation once, in the order of work, each with what it had to wait for
//   struct making_step     the operation, its phase, and its needs (making_step.hpp)
//   described(design, operation)      "the row on tools, 3 in from its left edge", for sentences
//
//   for (const making_step& s : steps_of(roll)) std::puts(described(roll, s.what).c_str());
//
// The rules are in detail/needs.hpp. Where they leave a choice the phase decides (rows on one piece and zippers; slits;
// hems of what goes onto another; what joins; hems of the base; what encloses; spots), then the piece's name, then left,
// right, top, bottom, then the distance from the edge. So the same operations, entered in whatever order, give the same
// steps. A laying or a crease is done when the next piece of work needs it. Where needs go round in a circle, the
// shortest is refused with the reason of each.
#ifndef TURNCLOTH_MAKING_ORDER_HPP
#define TURNCLOTH_MAKING_ORDER_HPP

#include <turncloth/making/design.hpp>
#include <turncloth/making/detail/described.hpp>
#include <turncloth/making/making_step.hpp>
#ifndef TURNCLOTH_COMPILED
#include <turncloth/making/detail/step_maker.hpp>
#endif

#include <vector>

namespace turncloth {

/// Throws making_error with every fault of the design, or with each arrow of the shortest circle. Time grows with the square
/// of the operations on one part, at most `most_turned` of each kind (design.hpp).
template <detail::compiled_unit Unit>
std::vector<making_step> steps_of(const making<Unit>& design);

#ifndef TURNCLOTH_COMPILED
template <detail::compiled_unit Unit>
std::vector<making_step> steps_of(const making<Unit>& design) {
    design.require_sound();
    const detail::flat_model<Unit> model(design);
    const detail::box_model<Unit> boxed(design, model);
    return detail::step_maker<Unit>(design, model, boxed).steps();
}
#endif

TURNCLOTH_ONCE(std::vector<making_step> steps_of(const making<inch>&));
TURNCLOTH_ONCE(std::vector<making_step> steps_of(const making<centimetre>&));

} // namespace turncloth

#endif
