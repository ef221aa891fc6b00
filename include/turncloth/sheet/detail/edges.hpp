// Edges as a sheet speaks of them: in the order of work, those finished alike together, and which way each runs.
//
//   edges_in_order(panel)  finished_alike(panel, edges)  across(cut, e)  along(cut, e)
#ifndef TURNCLOTH_SHEET_DETAIL_EDGES_HPP
#define TURNCLOTH_SHEET_DETAIL_EDGES_HPP

#include <turncloth/panel/names.hpp>
#include <turncloth/panel/panel.hpp>

#include <array>
#include <string>
#include <vector>

namespace turncloth {

namespace detail {

/// Common practice: the long edges are finished first, so that the short ones lie over them at the corners.
template <length_unit Unit>
std::array<edge, 4> edges_in_order(const panel<Unit>& p) {
    if (p.finished().width() > p.finished().height())
        return {edge::top, edge::bottom, edge::left, edge::right};
    return {edge::left, edge::right, edge::top, edge::bottom};
}

/// Edges finished alike, by name.
struct edges_alike {
    std::string names; ///< "left, right"; "every edge" for all four
    edge first;
    std::vector<edge> all;

    /// "left and right edges", "every edge"
    std::string in_words() const {
        std::vector<std::string> words;
        for (const edge e : all)
            words.emplace_back(word(name_of(e)));
        return all.size() == all_edges.size() ? sentence({"every edge"})
               : all.size() == 1              ? sentence({words[0], " edge"})
                                              : sentence({enumerated(words), " edges"});
    }
};

template <length_unit Unit>
std::vector<edges_alike> finished_alike(const panel<Unit>& p, std::vector<edge> edges) {
    std::vector<edges_alike> all;
    const bool may_be_every = edges.size() == all_edges.size();
    while (!edges.empty()) {
        const finish<Unit>& f = p.finish_of(edges.front());
        edges_alike alike{{}, edges.front(), {}};
        std::vector<edge> others;
        for (const edge e : edges)
            (p.finish_of(e) == f ? alike.all : others).push_back(e);
        for (const edge e : alike.all)
            alike.names.append(alike.names.empty() ? "" : ", ").append(word(name_of(e)));
        if (may_be_every && others.empty() && all.empty())
            alike.names = word("every edge");
        all.push_back(alike);
        edges = others;
    }
    return all;
}

template <length_unit Unit>
length<Unit> across(const cut_size<Unit>& cut, edge e) {
    return is_level(e) ? cut.height() : cut.width();
}
template <length_unit Unit>
length<Unit> along(const cut_size<Unit>& cut, edge e) {
    return is_level(e) ? cut.width() : cut.height();
}

} // namespace detail

} // namespace turncloth

#endif
