// How the work lies after so many steps: its outline, its layers, and what is in sight from above and from below.
//
//   lying_after(design, steps, n, part)     the stack that holds the part, after the first n of the steps
//   struct lying<U>{width, height, patches, most_layers}
//   struct patch<U>                          a place over which the same layers lie: its corners, their number, what
//                                            is uppermost and lowest, and which face of it is seen
//
//   const auto hemmed = lying_after(mat, steps_of(mat), 2, top);      // after two steps
//   hemmed.width == 11_in;
#ifndef TURNCLOTH_MAKING_LYING_HPP
#define TURNCLOTH_MAKING_LYING_HPP

#include <turncloth/making/detail/cells.hpp>
#include <turncloth/making/detail/model.hpp>
#include <turncloth/making/order.hpp>

#include <algorithm>
#include <array>
#include <cstddef>
#include <vector>

namespace turncloth {

/// What is seen of a patch from one side.
struct in_sight {
    cut_part of{};
    face side = face::right;
};

/// A trapezium with upright sides, in the coordinates of the table: x to the right, y down.
template <length_unit Unit>
struct patch {
    length<Unit> left{}, right{};
    std::array<length<Unit>, 2> upper{}, lower{}; ///< y of its upper and lower side, at the left and at the right
    std::size_t layers = 0;
    in_sight above{}, below{};
};

template <length_unit Unit>
struct lying {
    length<Unit> width{}, height{};
    std::size_t most_layers = 0;
    std::vector<patch<Unit>> patches{};

    /// Of all patches of `layers` layers; of all that have any for zero.
    area<Unit> covered(std::size_t layers = 0) const {
        area<Unit> sum;
        for (const patch<Unit>& p : patches)
            if (layers == 0 || p.layers == layers)
                sum += (p.right - p.left) * (p.lower[0] - p.upper[0] + p.lower[1] - p.upper[1]) / fraction(2);
        return sum;
    }
};

namespace detail {

template <class Use>
void carry_out(flat_work::lazy_workbench<Use>& bench, const operation& o, std::size_t piece) {
    switch (o.kind) {
    case operation_kind::laying:
        bench.lay(piece);
        return;
    case operation_kind::crease:
        bench.crease(o.index);
        return;
    case operation_kind::snip:
        bench.snip(o.index);
        return;
    case operation_kind::stitching:
    case operation_kind::seam:
    case operation_kind::spot:
    case operation_kind::handwork:
    case operation_kind::moment:
    case operation_kind::opening:
        return; // needles move nothing
    }
}

template <length_unit Unit>
lying<Unit> lying_of(const flat_model<Unit>& model, const flat_work::lazy_cells<for_any<Unit>>& plane) {
    lying<Unit> made;
    const auto l = [&](flat_work::whole w) { return model.length_of_whole(w); };
    const auto seen = [&](std::uint32_t ply, bool from_above) {
        const flat_work::ply& p = plane.of().plies[ply];
        return in_sight{model.part_of(p.part), p.how.right_up() == from_above ? face::right : face::wrong};
    };
    flat_work::bounds round;
    for (std::size_t s = 0; s < plane.slabs().size(); ++s)
        for (std::size_t k = 0; k < plane.slabs()[s].cell_count(); ++k) {
            const auto over = plane.plies(s, k);
            if (over.empty())
                continue;
            const flat_work::slab& one = plane.slabs()[s];
            const flat_work::level &up = one.levels[k], &down = one.levels[k + 1];
            const flat_work::bounds here{one.left, std::min(up.left, up.right), one.right,
                                         std::max(down.left, down.right)};
            round = made.patches.empty() ? here : around(round, here);
            made.patches.push_back({l(one.left),
                                    l(one.right),
                                    {l(up.left), l(up.right)},
                                    {l(down.left), l(down.right)},
                                    over.size(),
                                    seen(over.back(), true),
                                    seen(over.front(), false)});
            made.most_layers = std::max(made.most_layers, over.size());
        }
    made.width = l(round.right - round.left);
    made.height = l(round.bottom - round.top);
    return made;
}

} // namespace detail

/// `steps` is what steps_of gives for the design; n beyond their number means all of them. Throws as steps_of, and
/// making_error (missing) for a part that the design does not have. Costs what carrying out so many steps does (design.hpp),
/// and then grows with the plies and with the patches.
template <length_unit Unit>
lying<Unit> lying_after(const making<Unit>& design, const std::vector<making_step>& steps, std::size_t n,
                        const cut_part& part) {
    design.require_sound();
    if (!design.has(part))
        detail::refuse<making_error>("how a part lies that was not added cannot be said",
                                     refusal{.kind = fault::missing, .what = "a part"});
    const detail::flat_model<Unit> model(design);
    detail::flat_work::lazy_workbench<detail::for_any<Unit>> bench(model.flat());
    for (std::size_t i = 0; i < std::min(n, steps.size()); ++i) {
        const operation& o = steps[i].what;
        const bool lays = o.kind == operation_kind::laying;
        detail::carry_out(bench, o, lays ? model.number_of(design.layings()[o.index].piece) : 0);
    }
    const detail::flat_work::lazy_cells<detail::for_any<Unit>> plane(bench.stack_of(model.number_of(part)),
                                                                     bench.holes(), {});
    return detail::lying_of(model, plane);
}

} // namespace turncloth

#endif
