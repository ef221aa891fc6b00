// What a sheet tells of pieces that are cut to an outline, since no making holds them: words for what is not worked out.
//
//   edges_to_turn(piece)          a sentence for each of its finishes that is folded
//   names_of_outlines(project)    "front and back"; nothing where there are none
#ifndef TURNCLOTH_SHEET_DETAIL_OUTLINES_TOLD_HPP
#define TURNCLOTH_SHEET_DETAIL_OUTLINES_TOLD_HPP

#include <turncloth/panel/names.hpp>
#include <turncloth/sheet/detail/kinds.hpp>
#include <turncloth/sheet/project.hpp>

#include <algorithm>
#include <cstddef>
#include <string>
#include <vector>

namespace turncloth::detail {

/// Where its edges lie in the making is not known: what each of its finishes has is one sentence.
template <length_unit Unit>
std::vector<std::string> edges_to_turn(const outlined_piece<Unit>& p) {
    std::vector<std::string> all;
    const auto& corners = p.made_from.corners;
    for (std::size_t i = 0; i < corners.size(); ++i) {
        const finish<Unit>& f = corners[i].edge;
        const auto alike = [&](const drafted_corner<Unit>& c) { return c.edge == f; };
        if (f.folds().empty() ||
            std::find_if(corners.begin(), corners.end(), alike) != corners.begin() + static_cast<std::ptrdiff_t>(i))
            continue;
        const std::string edges = numbered_edges(corners.size(), [&](std::size_t k) { return alike(corners[k]); });
        all.push_back(sentence({"Turn and stitch ", edges, " of ", named(p.name()), ", ", f.name(), ", as drawn."}));
    }
    return all;
}

template <length_unit Unit>
std::string names_of_outlines(const project<Unit>& p) {
    std::vector<std::string> names;
    for (const outlined_piece<Unit>& o : p.outlines())
        names.push_back(named(o.name()));
    return enumerated(names);
}

} // namespace turncloth::detail

#endif
