// A project that is made as its designer says.
//
//   project.made_as(design)        its sheet carries the design out, and refuses what that finds wrong
//   carried_out(design)            the same as a value, which made_as calls
//
//   making<inch> how(p.name());    // or what the project says of it: making_of.hpp
//   return p.made_as(how);
//
// Included by itself: what carries a design out is more to compile than all the rest of a sheet.
#ifndef TURNCLOTH_SHEET_MADE_AS_HPP
#define TURNCLOTH_SHEET_MADE_AS_HPP

#include <turncloth/making/design.hpp>
#include <turncloth/sheet/project.hpp>
#ifndef TURNCLOTH_COMPILED
#include <turncloth/sheet/detail/designed.hpp>
#endif

#include <memory>
#include <utility>

namespace turncloth {

template <detail::compiled_unit Unit>
way_of_making<Unit> carried_out(making<Unit> design);

#ifndef TURNCLOTH_COMPILED
template <detail::compiled_unit Unit>
way_of_making<Unit> carried_out(making<Unit> design) {
    return {
        std::make_shared<const making<Unit>>(std::move(design)),
        [](detail::sheet_draft<Unit>& draft, const making<Unit>& d) { detail::designed<Unit>(draft, d).add_steps(); },
        [](const making<Unit>& a, const making<Unit>& b) { return a == b; }};
}
#endif

TURNCLOTH_ONCE(way_of_making<inch> carried_out(making<inch>));
TURNCLOTH_ONCE(way_of_making<centimetre> carried_out(making<centimetre>));

} // namespace turncloth

#endif
