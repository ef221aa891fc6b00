// Laying rectangles on a width of cloth: the shortest lay to be found with a given effort, and how far from best it may
// be.
//
//   whole_lay detail::shortest_lay(pieces, cloth, effort = {}, watcher = {})
//   whole_lay detail::fullest_lay(pieces, cloth, length, effort = {})   as many of the pieces as go on so much cloth
//
//   const auto found = detail::shortest_lay({{.width = 12, .length = 18, .quantity = 3}}, {.width = 44});
//   // found.length == 18, found.proved_best()
//
// Sizes are whole numbers of one unit; cloth/lay.hpp takes lengths with their units, and refuses what cannot be laid.
// The result depends on the arguments alone: the effort is counted in steps of work, not in time.
#ifndef TURNCLOTH_CLOTH_LAY_SOLVE_HPP
#define TURNCLOTH_CLOTH_LAY_SOLVE_HPP

#include <turncloth/cloth/lay/types.hpp>
#include <turncloth/measure/require.hpp>
#ifndef TURNCLOTH_COMPILED
#include <turncloth/cloth/lay/lay_maker.hpp>
#endif

#include <cstdint>
#include <vector>

namespace turncloth::detail {

/// Lays all pieces on the cloth. Throws overflow_error where areas leave 64 bits.
TURNCLOTH_INLINE whole_lay shortest_lay(const std::vector<lay_piece>& pieces, const lay_cloth& cloth,
                                        const lay_effort& effort = {}, const lay_watcher& watcher = {});

/// Lays as many of the pieces, by area, as it finds room for on a cloth of this length, which each must fit by itself.
/// The lay holds what was laid, with the length it takes and no bound. Throws as shortest_lay does.
TURNCLOTH_INLINE whole_lay fullest_lay(const std::vector<lay_piece>& pieces, const lay_cloth& cloth,
                                       std::int64_t length, const lay_effort& effort = {});

#ifndef TURNCLOTH_COMPILED
TURNCLOTH_INLINE whole_lay shortest_lay(const std::vector<lay_piece>& pieces, const lay_cloth& cloth,
                                        const lay_effort& effort, const lay_watcher& watcher) {
    const lay_problem problem = prepared(pieces, cloth);
    if (problem.pieces == 0)
        return only_staying(problem);
    return with_maker(problem, cloth, effort, watcher, [](auto& maker) { return maker.make(); });
}

TURNCLOTH_INLINE whole_lay fullest_lay(const std::vector<lay_piece>& pieces, const lay_cloth& cloth,
                                       std::int64_t length, const lay_effort& effort) {
    const lay_problem problem = prepared(pieces, cloth);
    if (problem.pieces == 0)
        return {};
    const std::int64_t in_problem = lay_sum(length, cloth.gap) / problem.scale_y;
    return with_maker(problem, cloth, effort, {}, [&](auto& maker) { return maker.fill(in_problem); });
}
#endif

} // namespace turncloth::detail

#endif
