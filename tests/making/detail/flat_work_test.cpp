// Flat work: states derived by hand, and random projects against grains of cloth moved one by one.
#include "making/detail/random_work.hpp"

#include <doctest/doctest.h>

using namespace turncloth::detail::flat_work;

namespace {

static_assert(mirror_in({1, 0, 5})({2, 3}) == spot{8, 3});
static_assert(mirror_in({1, 1, 6})({2, 3}) == spot{3, 4});
static_assert(mirror_in({1, -1, 2})({7, 1}) == spot{3, 5});
static_assert(after(lie{0, -1, 1, 0, 3, 4}, inverse(lie{0, -1, 1, 0, 3, 4})) == lie{});

} // namespace

TEST_CASE("layers, outlines and hollows are those of grains moved one by one") {
    const random_work::counts seen = random_work::compared(1, 800);
    CHECK_MESSAGE(seen.wrong.empty(), seen.wrong);
    CHECK(seen.projects == 800);
    MESSAGE("projects ", seen.projects, ", layings ", seen.layings, ", creases ", seen.creases, " (", seen.corners,
            " across corners, ", seen.over_another, " with other parts), rows ", seen.rows, ", slits ", seen.slits,
            ", torn ", seen.torn, ", hollows ", seen.hollows, " (", seen.closed, " closed), large ", seen.large);
}
