// Random flat designs for tests: pieces laid on one another in a tree, hemmed, sewn through and cut; and any design with
// its operations entered in another order.
#ifndef TURNCLOTH_TESTS_MAKING_RANDOM_DESIGN_HPP
#define TURNCLOTH_TESTS_MAKING_RANDOM_DESIGN_HPP

#include "making/things.hpp"
#include "measure/against_gmp.hpp"

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <numeric>
#include <string>
#include <utility>
#include <vector>

namespace things {

using sampler = against_gmp::sampler;

/// 0, 1, ... in another order.
inline std::vector<std::size_t> shuffled(std::size_t count, sampler& any) {
    std::vector<std::size_t> list(count);
    for (std::size_t i = 0; i < count; ++i)
        list[i] = i;
    for (std::size_t i = count; i > 1; --i)
        std::swap(list[i - 1], list[static_cast<std::size_t>(any.between(0, static_cast<std::int64_t>(i) - 1))]);
    return list;
}

/// The same parts and operations, the operations entered in another order.
inline making<inch> entered_anew(const making<inch>& d, sampler& any) {
    making<inch> again(d.name());
    for (const auto& p : d.parts())
        again.cut(p);
    std::vector<std::pair<operation, operation>> now; // each as it was, and as it is entered
    const auto entered = [&](operation_kind kind, const auto& list, const std::vector<std::size_t>& order) {
        for (const std::size_t i : order)
            now.emplace_back(operation{kind, i}, again.add(list[i]));
    };
    const auto add_all = [&](operation_kind kind, const auto& list) {
        entered(kind, list, shuffled(list.size(), any));
    };
    add_all(operation_kind::stitching, d.rows());
    add_all(operation_kind::snip, d.snips());
    add_all(operation_kind::spot, d.spots());
    add_all(operation_kind::crease, d.creases());
    add_all(operation_kind::laying, d.layings());
    add_all(operation_kind::seam, d.seams());
    add_all(operation_kind::handwork, d.handworks());
    for (const auto& m : d.mouths())
        again.add(m);
    std::vector<std::size_t> as_added(d.moments().size()); // of one kind they come as they were added
    std::iota(as_added.begin(), as_added.end(), std::size_t{0});
    entered(operation_kind::moment, d.moments(), as_added);
    const auto found = [&](const operation& o) {
        return std::find_if(now.begin(), now.end(), [&](const auto& n) { return n.first == o; })->second;
    };
    for (const std::size_t i : shuffled(d.befores().size(), any))
        again.add(before{found(d.befores()[i].first), found(d.befores()[i].then), d.befores()[i].why});
    return again;
}

/// Pieces laid on one another in a tree, hemmed on some edges, and rows through a piece and what it lies on.
inline making<inch> random_design(sampler& any) {
    making<inch> d("random");
    std::vector<cut_part> parts;
    const auto l = [](std::int64_t n) { return length_of<inch>(fraction(n, 4)); };
    for (std::int64_t p = any.between(2, 6); p > 0; --p) {
        parts.push_back(d.cut({.name = std::string(1, static_cast<char>('a' + p)),
                               .width = l(any.between(20, 60)),
                               .height = l(any.between(20, 60))}));
        const cut_part piece = parts.back();
        for (const edge e : all_edges)
            if (any.between(0, 3) == 0) {
                d.add(crease<inch>{.at = line(piece, e, l(2)), .over = any.between(0, 3) == 0});
                d.add(sewn(piece, e, l(3), {piece}));
            }
        if (parts.size() == 1)
            continue;
        const cut_part on =
            parts[static_cast<std::size_t>(any.between(0, static_cast<std::int64_t>(parts.size()) - 2))];
        d.add(laying<inch>{.piece = piece, .on = on, .left = l(any.between(0, 20)), .top = l(any.between(0, 20))});
        for (std::int64_t k = any.between(0, 3); k > 0; --k)
            d.add(sewn(piece, all_edges[static_cast<std::size_t>(any.between(0, 3))], l(any.between(1, 19)),
                       {piece, on}));
        if (any.between(0, 2) == 0)
            d.add(snip<inch>{.at = line(on, edge::top, l(any.between(5, 15)))});
    }
    return d;
}

} // namespace things

#endif
