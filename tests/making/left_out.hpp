// A design with a fault planted in it: one of its rows or seams is left out.
//
//   things::without_row(design, row, member)     without that row, or without that member of a family
//   things::without_seam(design, seam)           without that seam
#ifndef TURNCLOTH_TESTS_MAKING_LEFT_OUT_HPP
#define TURNCLOTH_TESTS_MAKING_LEFT_OUT_HPP

#include <turncloth/making/design.hpp>

#include <cstddef>
#include <cstdint>
#include <vector>

namespace things {

using namespace turncloth;

/// All of a design but its rows and its seams.
template <length_unit Unit>
making<Unit> unsewn(const making<Unit>& d) {
    making<Unit> again(d.name());
    again.lips(d.lips());
    for (const auto& p : d.parts())
        again.cut(p);
    for (const auto& l : d.layings())
        again.add(l);
    for (const auto& c : d.creases())
        again.add(c);
    for (const auto& s : d.snips())
        again.add(s);
    for (const auto& s : d.spots())
        again.add(s);
    for (const auto& h : d.handworks())
        again.add(h);
    for (const auto& m : d.mouths())
        again.add(m);
    for (const auto& c : d.compartments())
        again.add(c);
    for (const auto& c : d.all_contents())
        again.add(c);
    for (const moment& m : d.moments())
        again.add(m);
    return again;
}

/// The design without one of its rows, or without one of a family; what comes before what else as it was asked.
template <length_unit Unit>
making<Unit> without_row(const making<Unit>& d, std::size_t left_out, std::int64_t member) {
    making<Unit> again = unsewn(d);
    for (const auto& s : d.seams())
        again.add(s);
    std::vector<std::vector<operation>> now(d.rows().size());
    for (std::size_t i = 0; i < d.rows().size(); ++i) {
        stitching<Unit> row = d.rows()[i];
        if (i != left_out) {
            now[i].push_back(again.add(row));
            continue;
        }
        for (std::int64_t k = 0; k < row.each.size(); ++k) {
            stitching<Unit> one = row;
            one.along.in = row.each[k];
            one.each = {};
            if (k != member)
                now[i].push_back(again.add(one));
        }
    }
    const auto found = [&](const operation& o) {
        return o.kind == operation_kind::stitching ? now[o.index] : std::vector<operation>{o};
    };
    for (const before& b : d.befores())
        for (const operation& first : found(b.first))
            for (const operation& then : found(b.then))
                again.add(before{first, then, b.why});
    return again;
}

template <length_unit Unit>
making<Unit> without_seam(const making<Unit>& d, std::size_t left_out) {
    making<Unit> again = unsewn(d);
    for (const auto& row : d.rows())
        again.add(row);
    for (std::size_t i = 0; i < d.seams().size(); ++i)
        if (i != left_out)
            again.add(d.seams()[i]);
    return again;
}

} // namespace things

#endif
