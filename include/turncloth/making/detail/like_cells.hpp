// Cells that go on from one slab to the next: between the same levels, under the same plies, and no line between.
//
//   class like_cells(cells, border_lines)
//     .before(slab, k)  .then(slab, k)     the cell of the slab before or after that is one with it, or nowhere
//     .number(slab, k)                     of a cell among those of all slabs
//
// Slabs end wherever anything does, so most of a slab is as the one before it: what is found of a cell is found once.
#ifndef TURNCLOTH_MAKING_DETAIL_LIKE_CELLS_HPP
#define TURNCLOTH_MAKING_DETAIL_LIKE_CELLS_HPP

#include <turncloth/making/detail/border_lines.hpp>

#include <algorithm>
#include <cstddef>
#include <vector>

namespace turncloth::detail::flat_work {

template <class Use>
class lazy_like_cells {
public:
    lazy_like_cells(const lazy_cells<Use>& plane, const lazy_border_lines<Use>& lines) : plane_(&plane) {
        before_.assign(plane.cell_count(), nowhere);
        then_ = before_;
        for (std::size_t s = 1; s < plane.slabs().size(); ++s)
            for (std::size_t k = 0, j = 0; k < plane.slabs()[s].cell_count(); ++k)
                if (are_one(plane, lines, s, k, j)) {
                    before_[number(s, k)] = j;
                    then_[number(s - 1, j)] = k;
                }
    }

    std::size_t number(std::size_t slab, std::size_t k) const { return plane_->slabs()[slab].cells_before + k; }
    std::size_t before(std::size_t slab, std::size_t k) const { return before_[number(slab, k)]; }
    std::size_t then(std::size_t slab, std::size_t k) const { return then_[number(slab, k)]; }

private:
    /// Cell k of slab s and cell j of the slab before, which is looked for from the j given on.
    static bool are_one(const lazy_cells<Use>& plane, const lazy_border_lines<Use>& lines, std::size_t s, std::size_t k,
                        std::size_t& j) {
        const slab &here = plane.slabs()[s], &last = plane.slabs()[s - 1];
        const level &above = here.levels[k], &below = here.levels[k + 1];
        while (j < last.cell_count() && last.levels[j].sum() < above.sum())
            ++j;
        if (j >= last.cell_count() || above.left != above.right || below.left != below.right ||
            last.levels[j] != above || last.levels[j + 1] != below)
            return false;
        const auto now = plane.plies(s, k), then = plane.plies(s - 1, j);
        return !now.empty() && std::equal(now.begin(), now.end(), then.begin(), then.end()) &&
               !lines.runs_between(s, {above.left, below.left});
    }

    const lazy_cells<Use>* plane_;
    std::vector<std::size_t> before_{}, then_{}; ///< each cell
};
using like_cells = lazy_like_cells<void>;

} // namespace turncloth::detail::flat_work

#endif
