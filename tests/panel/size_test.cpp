// The two sizes: finished and cut do not mix, and a size has a unit and is above zero.
#include <turncloth/measure/read.hpp>
#include <turncloth/panel/panel.hpp>
#include <turncloth/testing/doctest.hpp>

#include <concepts>
#include <type_traits>

using namespace turncloth;
using namespace turncloth::literals;

namespace {

constexpr finished_size tray(9_in, "4 1/2"_in);
static_assert(tray.width() == 9_in);
static_assert(tray.height() == "4 1/2"_in);
static_assert(tray == finished_size("18/2"_in, 4.5_in));
static_assert(tray != finished_size("4 1/2"_in, 9_in));
static_assert(area_of(tray) == area<inch>::from_value({81, 2}));
static_assert(as<centimetre>(tray) == finished_size(22.86_cm, 11.43_cm)); // 1 in = 2.54 cm
static_assert(as<inch>(cut_size(25.4_cm, 2.54_cm)) == cut_size(10_in, 1_in));

// Only the finishes of a panel turn one size into the other.
static_assert(!std::is_convertible_v<finished_size<inch>, cut_size<inch>>);
static_assert(!std::is_convertible_v<cut_size<inch>, finished_size<inch>>);
static_assert(!std::constructible_from<cut_size<inch>, finished_size<inch>>);
static_assert(!std::constructible_from<finished_size<inch>, cut_size<inch>>);
static_assert(!std::is_assignable_v<cut_size<inch>&, finished_size<inch>>);
static_assert(!std::equality_comparable_with<cut_size<inch>, finished_size<inch>>);

// A unit is another type, and a number is no size.
static_assert(!std::constructible_from<finished_size<inch>, length<centimetre>, length<centimetre>>);
static_assert(!std::constructible_from<finished_size<inch>, length<inch>, length<centimetre>>);
static_assert(!std::constructible_from<finished_size<inch>, finished_size<centimetre>>);
static_assert(!std::constructible_from<finished_size<inch>, int, int>);
static_assert(!std::constructible_from<cut_size<inch>, double, double>);
static_assert(!std::constructible_from<cut_size<inch>, fraction, fraction>);
static_assert(!std::constructible_from<cut_size<inch>, length<inch>, int>);
static_assert(!std::is_default_constructible_v<cut_size<inch>>);

template <class Panel, class Size>
concept finishes_from = requires(Size s, edges<inch> e) {
    Panel(s, e);
};
static_assert(finishes_from<panel<inch>, finished_size<inch>> && !finishes_from<panel<inch>, cut_size<inch>>);

} // namespace

TEST_CASE("a size that is not above zero is refused with its numbers") {
    CHECK_THROWS_WITH_AS(finished_size(0_in, 4_in),
                         "a finished size must be more than zero each way: it was 0 in wide and 4 in high", size_error);
    CHECK_THROWS_WITH_AS(cut_size(9_cm, -(1_cm)),
                         "a cut size must be more than zero each way: it was 9 cm wide and -1 cm high", size_error);
    CHECK_THROWS_AS(cut_size(0_in, 0_in), turncloth::error);
}

TEST_CASE("a size is written with its unit once") {
    CHECK(to_text(tray) == "9 x 4 1/2 in");
    CHECK(to_text(cut_size(22.9_cm, 11_cm)) == "22.9 x 11 cm");
}
