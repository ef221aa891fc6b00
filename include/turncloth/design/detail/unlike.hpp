// Where two projects are not alike.
//
//   unlike(asked, made)      a design_fault for each, at its place in a design
#ifndef TURNCLOTH_DESIGN_DETAIL_UNLIKE_HPP
#define TURNCLOTH_DESIGN_DETAIL_UNLIKE_HPP

#include <turncloth/design/design_terms.hpp>
#include <turncloth/making/design.hpp>
#include <turncloth/sheet/project.hpp>

#include <algorithm>
#include <cstddef>
#include <string>
#include <utility>
#include <vector>

namespace turncloth::detail {

class unlike_things {
public:
    template <class All>
    void compare(const All& asked, const All& made, const std::string& path) {
        const std::size_t common = std::min(asked.size(), made.size());
        for (std::size_t i = 0; i < common; ++i)
            one(asked[i] == made[i], path + "/" + std::to_string(i));
        one(asked.size() == made.size(), path);
    }
    void one(bool alike, const std::string& path) {
        if (!alike)
            found.push_back({path, "a design does not say this as the project has it", {}});
    }
    std::vector<design_fault> found;
};

template <length_unit Unit>
void compare(unlike_things& u, const making<Unit>& asked, const making<Unit>& made) {
    u.one(asked.name() == made.name(), "/making/name");
    u.one(asked.lips() == made.lips(), "/making/lips");
    u.compare(asked.parts(), made.parts(), "/making/parts");
    u.compare(asked.layings(), made.layings(), "/making/layings");
    u.compare(asked.creases(), made.creases(), "/making/creases");
    u.compare(asked.rows(), made.rows(), "/making/rows");
    u.compare(asked.seams(), made.seams(), "/making/seams");
    u.compare(asked.snips(), made.snips(), "/making/snips");
    u.compare(asked.spots(), made.spots(), "/making/spots");
    u.compare(asked.handworks(), made.handworks(), "/making/handwork");
    u.compare(asked.mouths(), made.mouths(), "/making/mouths");
    u.compare(asked.compartments(), made.compartments(), "/making/compartments");
    u.compare(asked.all_contents(), made.all_contents(), "/making/contents");
    u.compare(asked.moments(), made.moments(), "/making/moments");
    u.compare(asked.befores(), made.befores(), "/making/order");
}

template <length_unit Unit>
std::vector<design_fault> unlike(const project<Unit>& asked, const project<Unit>& made) {
    unlike_things u;
    u.one(asked.name() == made.name(), "/name");
    u.compare(asked.pieces(), made.pieces(), "/pieces");
    u.compare(asked.outlines(), made.outlines(), "/outlines");
    u.compare(asked.cloths(), made.cloths(), "/cloths");
    u.compare(asked.meetings(), made.meetings(), "/meetings");
    u.compare(asked.edge_seams(), made.edge_seams(), "/seams");
    u.compare(asked.placings(), made.placings(), "/placings");
    u.compare(asked.span_lists(), made.span_lists(), "/span_lists");
    u.compare(asked.zippers(), made.zippers(), "/zippers");
    u.compare(asked.bindings(), made.bindings(), "/bindings");
    u.compare(asked.must_reach_list(), made.must_reach_list(), "/must_reach");
    u.compare(asked.notions(), made.notions(), "/notions");
    u.compare(asked.sewings(), made.sewings(), "/sewings");
    u.compare(asked.cautions(), made.cautions(), "/cautions");
    u.compare(asked.preparations(), made.preparations(), "/preparations");
    if (asked.design() != nullptr && made.design() != nullptr)
        compare(u, *asked.design(), *made.design());
    if (u.found.empty())
        u.one(asked == made, "");
    return std::move(u.found);
}

} // namespace turncloth::detail

#endif
