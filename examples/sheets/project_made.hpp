// A project for any size, made at one: for whatever has read it, and from wherever.
//
//   size_to_make(design, asked, in_centimetres)     the size in a unit that the design is made in; its own where none is asked
//   in_unit_of(design, size)                        the same size in a unit that the design is made in
//   sheet_for(design, finished, graduation)
//   hangs(design)                                   whether it hangs by eyelets, so that its cloth lies along the grain
//
//   const sheet<inch> s = sheet_for(bag, finished_size<inch>(14_in, 12_in), "1/16"_in);
#ifndef TURNCLOTH_EXAMPLES_SHEETS_PROJECT_MADE_HPP
#define TURNCLOTH_EXAMPLES_SHEETS_PROJECT_MADE_HPP

#include <turncloth/design/project_of.hpp>
#include <turncloth/panel/typed_size.hpp>
#include <turncloth/sheet/on_ruler.hpp>

#include <algorithm>
#include <string>
#include <variant>
#include <vector>

namespace allotment {

using namespace turncloth;

/// Exactly the same size.
template <length_unit Unit>
typed_size in_unit(const typed_size& size) {
    return std::visit(
        [](const auto& s) { return typed_size(finished_size<Unit>(as<Unit>(s.width()), as<Unit>(s.height()))); }, size);
}

inline typed_size in_unit_of(const project_design& d, const typed_size& size) {
    if (d.units == design_units::inches)
        return in_unit<inch>(size);
    return d.units == design_units::centimetres ? in_unit<centimetre>(size) : size;
}

/// Exactly the size asked for, whichever unit it is in. Throws range_error where none is asked for, and its file names none.
inline typed_size size_to_make(const project_design& d, const std::string& asked, bool in_centimetres) {
    std::vector<typed_size> usual;
    for (const std::string& own : d.sizes)
        usual.push_back(read_size(own));
    if (asked.empty() && usual.empty())
        throw range_error("no size is given, and its file names none to begin with",
                          {.kind = fault::missing, .what = "a size"});
    const auto fits = [&](const typed_size& s) {
        return std::holds_alternative<finished_size<centimetre>>(s) == in_centimetres;
    };
    const auto found = std::find_if(usual.begin(), usual.end(), fits);
    return in_unit_of(d, !asked.empty() ? read_size(asked) : found == usual.end() ? usual[0] : *found);
}

template <length_unit Unit>
sheet<Unit> sheet_for(const project_design& d, const finished_size<Unit>& finished, length<Unit> graduation) {
    return sheet_on_ruler(finished, graduation, [&](const finished_size<Unit>& asked, const ruled<Unit>& by) {
        return project_of(d, asked, by);
    });
}

inline bool hangs(const project_design& d) {
    return std::any_of(d.pieces.begin(), d.pieces.end(), [](const design_piece& p) { return p.eyelets.has_value(); });
}

} // namespace allotment

#endif
