// The second fold of a pleat, which is folded back after one further in.
//
//   pleat_fold(design, crease)      how far it lies from that first fold; nothing of any other crease
//
// A designer says so: the fold further in from the same edge comes before it, and it before its piece is laid.
#ifndef TURNCLOTH_MAKING_DETAIL_PLEAT_FOLD_HPP
#define TURNCLOTH_MAKING_DETAIL_PLEAT_FOLD_HPP

#include <turncloth/making/design.hpp>

#include <cstddef>
#include <optional>

namespace turncloth::detail {

template <length_unit Unit>
std::optional<length<Unit>> pleat_fold(const making<Unit>& design, std::size_t index) {
    const operation own{operation_kind::crease, index};
    const crease<Unit>& c = design.creases()[index];
    std::optional<length<Unit>> between;
    bool in_hand = false;
    for (const before& b : design.befores()) {
        in_hand |=
            b.first == own && b.then.kind == operation_kind::laying && design.layings()[b.then.index].piece == c.on();
        if (b.then != own || b.first.kind != operation_kind::crease)
            continue;
        const crease<Unit>& first = design.creases()[b.first.index];
        if (!c.across && !first.across && first.on() == c.on() && first.at.from == c.at.from && first.at.in > c.at.in)
            between = first.at.in - c.at.in;
    }
    return in_hand ? between : std::nullopt;
}

} // namespace turncloth::detail

#endif
