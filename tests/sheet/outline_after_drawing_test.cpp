// A program may include drawings and sheets before outlines: no name of the one hides a name of the other. The other
// order is that of outline_drawing_test.cpp.
// clang-format off
#include <turncloth/sheet/lay_drawing.hpp>
#include <turncloth/panel/outline.hpp>
#include <turncloth/panel/folding.hpp>
// clang-format on

#include <doctest/doctest.h>

using namespace turncloth;

TEST_CASE("An outline is drafted in a program that included drawings first") {
    const auto at = [](double x, double y) { return drafted_point<centimetre>(x, y); };
    const outline<centimetre> square({at(0, 0), at(4, 0), at(4, 4), at(0, 4)}, {drafted_length_of<centimetre>(1)});
    CHECK(area_of(square.cut_line()).value() == doctest::Approx(36)); // 1 cm on every side: 6 x 6 cm
    CHECK(square.take_of(2).take.value() == 1);
    CHECK_THROWS_AS(square.take_of(4), outline_error);
}
