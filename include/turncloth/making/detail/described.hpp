// Operations in words, for sentences: "the row on tools, 3 in from its left edge".
//
//   line_of(design, operation)      the line that it is done along, if any
//   described(design, operation)    public, and offered by making/order.hpp and making/boxed.hpp
#ifndef TURNCLOTH_MAKING_DETAIL_DESCRIBED_HPP
#define TURNCLOTH_MAKING_DETAIL_DESCRIBED_HPP

#include <turncloth/making/design.hpp>
#include <turncloth/measure/printable.hpp>

#include <cstddef>
#include <string>
#include <string_view>

namespace turncloth {

namespace detail {

template <length_unit Unit>
chalk_line<Unit> line_of(const making<Unit>& design, const operation& o) {
    switch (o.kind) {
    case operation_kind::crease:
        return design.creases()[o.index].at;
    case operation_kind::stitching:
        return design.rows()[o.index].along;
    case operation_kind::snip:
        return design.snips()[o.index].at;
    case operation_kind::spot:
        return design.spots()[o.index].along;
    case operation_kind::seam:
        return design.seams()[o.index].one.front();
    case operation_kind::laying:
    case operation_kind::handwork:
    case operation_kind::moment:
    case operation_kind::opening:
        break;
    }
    return {};
}

template <length_unit Unit>
std::string described(const making<Unit>& design, const moment& m) {
    switch (m.what) {
    case moment_kind::turn_out:
        return "the turning out through \"" + design.mouths()[m.index].name + "\"";
    case moment_kind::put_in:
        return "the putting in of " + design.all_contents()[m.index].what;
    case moment_kind::close:
        return "the closing of \"" + design.mouths()[m.index].name + "\"";
    case moment_kind::fold:
        return "the folding";
    case moment_kind::roll:
        break;
    }
    return "the rolling";
}

} // namespace detail

template <length_unit Unit>
std::string described(const making<Unit>& design, const operation& o) {
    constexpr std::string_view verbs[] = {"the laying of ", "the crease on ", "the row on ", "the seam on ",
                                          "the snip in ",   "the spots on ",  "the step ",   "",
                                          "the opening of "};
    std::string text(verbs[static_cast<std::size_t>(o.kind)]);
    if (o.kind == operation_kind::opening)
        return text + "\"" + design.mouths()[o.index].name + "\"";
    if (o.kind == operation_kind::handwork)
        return text + "\"" + fit_to_print(design.handworks()[o.index].says) + "\"";
    if (o.kind == operation_kind::moment)
        return detail::described(design, design.moments()[o.index]);
    if (o.kind == operation_kind::laying)
        return text + name_of(design, design.layings()[o.index].piece);
    if (o.kind == operation_kind::crease && design.creases()[o.index].across) {
        const corner_line<Unit>& c = *design.creases()[o.index].across;
        return text + name_of(design, c.on) + ", across its " + std::string(name_of(c.level)) + " " +
               std::string(name_of(c.upright)) + " corner";
    }
    const chalk_line<Unit> l = detail::line_of(design, o);
    return text + name_of(design, l.on) + ", " + to_text(l.in.from_datum()) + " from its " +
           std::string(name_of(l.from)) + " edge";
}

} // namespace turncloth

#endif
