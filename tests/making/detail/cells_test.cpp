// The plane under squares that lie one step down and to the right of each other: every cell against the squares that hold it,
// where its levels are in a table, and where there are too many slabs for one.
#include <turncloth/making/detail/cells.hpp>

#include <doctest/doctest.h>

#include <cstddef>
#include <vector>

using namespace turncloth::detail::flat_work;

namespace {

bounds square(std::size_t i) {
    const whole from = 2 * static_cast<whole>(i);
    return {from, from, from + 3, from + 3};
}

/// Each lies over a corner of the next.
stack steps_down(std::size_t count) {
    stack s;
    for (std::size_t i = 0; i < count; ++i) {
        const bounds b = square(i);
        s.plies.push_back(
            {i, i, {}, {{b.left, b.top}, {b.right, b.top}, {b.right, b.bottom}, {b.left, b.bottom}}, true});
    }
    return s;
}

void check_cells(std::size_t count) {
    const stack s = steps_down(count);
    const lazy_cells<void> plane(s, std::vector<std::vector<bounds>>(count), {});
    bool all_there = true;
    whole covered = 0;
    for (std::size_t k = 0; k < plane.slabs().size(); ++k) {
        const slab& one = plane.slabs()[k];
        for (std::size_t c = 0; c < one.cell_count(); ++c) {
            const whole top = one.levels[c].left, bottom = one.levels[c + 1].left;
            std::vector<std::size_t> over;
            for (std::size_t i = 0; i < count; ++i)
                if (const bounds b = square(i);
                    b.left <= one.left && one.right <= b.right && b.top <= top && bottom <= b.bottom)
                    over.push_back(i);
            const auto found = plane.plies(k, c);
            all_there = all_there && std::vector<std::size_t>(found.begin(), found.end()) == over;
            covered += static_cast<whole>(found.size()) * (one.right - one.left) * (bottom - top);
        }
    }
    CHECK(all_there);
    CHECK(covered == 9 * static_cast<whole>(count)); // 3 x 3 each
}

} // namespace

TEST_CASE("cells lie under the plies that cover them, by a table of levels and by searching for them") {
    check_cells(1);
    check_cells(20);
    constexpr std::size_t too_many = 600; // each begins and ends a slab, and is at two heights
    static_assert(4 * too_many * too_many > lazy_cells<void>::most_tabled);
    check_cells(too_many);
}
