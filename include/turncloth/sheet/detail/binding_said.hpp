// What a project says of a binding, as making/binding_strips.hpp has it.
//
//   strip_of(binding)                a binding_strip<U>
//   edges_of(binding)                those that are bound: all four where none is named
//   is_bound(project, piece, edge)   whether strips bind that edge
#ifndef TURNCLOTH_SHEET_DETAIL_BINDING_SAID_HPP
#define TURNCLOTH_SHEET_DETAIL_BINDING_SAID_HPP

#include <turncloth/making/binding_strips.hpp>
#include <turncloth/sheet/project.hpp>

#include <algorithm>
#include <string_view>
#include <vector>

namespace turncloth::detail {

template <length_unit Unit>
binding_strip<Unit> strip_of(const edge_binding<Unit>& b) {
    return {.name = b.name,
            .cloth = {.name = b.material},
            .finished = b.finished,
            .allowance = b.allowance,
            .inset = b.inset,
            .turned_in = b.turned_in,
            .doubled = b.doubled,
            .by_hand = b.by_hand};
}

template <length_unit Unit>
std::vector<edge> edges_of(const edge_binding<Unit>& b) {
    return b.edges.empty() ? std::vector(all_edges.begin(), all_edges.end()) : b.edges;
}

template <length_unit Unit>
bool is_bound(const project<Unit>& p, std::string_view piece, edge e) {
    return std::any_of(p.bindings().begin(), p.bindings().end(), [&](const edge_binding<Unit>& b) {
        const std::vector<edge> bound = edges_of(b);
        return b.on == piece && std::find(bound.begin(), bound.end(), e) != bound.end();
    });
}

} // namespace turncloth::detail

#endif
