// Ten thousand random projects against grains of cloth moved one by one.
#include "making/detail/random_work.hpp"

#include <doctest/doctest.h>

TEST_CASE("layers, outlines and hollows of ten thousand projects are those of grains moved one by one") {
    const random_work::counts seen = random_work::compared(1'000'000, 10'000);
    CHECK_MESSAGE(seen.wrong.empty(), seen.wrong);
    CHECK(seen.projects == 10'000);
    CHECK(seen.large >= 5'000); // four parts, a crease over another, a slit and three hollows
    MESSAGE("projects ", seen.projects, ", layings ", seen.layings, ", creases ", seen.creases, " (", seen.corners,
            " across corners, ", seen.over_another, " with other parts), rows ", seen.rows, ", slits ", seen.slits,
            ", torn ", seen.torn, ", hollows ", seen.hollows, " (", seen.closed, " closed), large ", seen.large);
}
