// The two sizes: finished and cut do not mix, and a size has a unit and is above zero.
#include <turncloth/measure/read.hpp>
#include <turncloth/panel/panel.hpp>

#include <doctest/doctest.h>

#include <compare>
#include <concepts>
#include <sstream>
#include <type_traits>
#include <unordered_set>

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

// A size is a value: it is taken apart, hashed and compared.
static_assert([] {
    const auto [width, height] = tray;
    return width == 9_in && height == "4 1/2"_in;
}());
static_assert(std::same_as<std::tuple_element_t<1, cut_size<centimetre>>, length<centimetre>>);
static_assert(std::three_way_comparable<length<inch>, std::strong_ordering>);
static_assert((1_in <=> 2_in) < 0 && (2_in <=> 2_in) == 0 && ("1/2"_in <=> "1/3"_in) > 0);
static_assert(!std::three_way_comparable_with<length<inch>, length<centimetre>>);
static_assert(all_round(seam(1_in)) == all_round(seam(1_in)) && all_round(seam(1_in)) != all_round(seam(2_in)));
static_assert(panel(tray) == panel(tray) && panel(tray) != panel(tray, all_round(seam(1_in))));
static_assert(panel(tray).gathered_along(edge::top, 2) != panel(finished_size(18_in, "4 1/2"_in))); // it says so

} // namespace

TEST_CASE("sizes and places are keys") {
    std::unordered_set<cut_size<inch>> cut{cut_size(9_in, 4_in), cut_size(4_in, 9_in), cut_size(9_in, 9_in),
                                           cut_size(4_in, 4_in), cut_size("18/2"_in, 4_in)};
    CHECK(cut.size() == 4);
    CHECK(std::hash<cut_size<inch>>{}(cut_size(9_in, 4_in)) != std::hash<cut_size<inch>>{}(cut_size(4_in, 9_in)));
    CHECK(std::hash<cut_size<inch>>{}(cut_size(9_in, 9_in)) != std::hash<cut_size<inch>>{}(cut_size(4_in, 4_in)));
    CHECK(std::unordered_set<finished_size<inch>>{tray, finished_size(9_in, 4.5_in)}.size() == 1);
    std::unordered_set<place<finished_edge, inch>> pins{at<finished_edge>(1_in), at<finished_edge>("2/2"_in),
                                                        at<finished_edge>(2_in)};
    CHECK(pins.size() == 2);
}

TEST_CASE("a figure is its terms, not its sum alone") {
    const panel<inch> pocket(tray, all_round(seam("1/2"_in)));
    CHECK(pocket.width_working() == panel(pocket).width_working());
    CHECK(pocket.width_working() != figure<inch>().plus(10_in, "finished"));
    CHECK(figure<inch>().plus(10_in, "finished") != figure<inch>().plus(10_in, "cut"));
}

TEST_CASE("a size that is not above zero is refused with its numbers") {
    CHECK_THROWS_WITH_AS(finished_size(0_in, 4_in),
                         "a finished size must be more than zero each way: it was 0 in wide and 4 in high", size_error);
    CHECK_THROWS_WITH_AS(cut_size(9_cm, -(1_cm)),
                         "a cut size must be more than zero each way: it was 9 cm wide and -1 cm high", size_error);
    CHECK_THROWS_AS(cut_size(0_in, 0_in), turncloth::error);
}

TEST_CASE("a size is written with its unit once") {
    std::ostringstream out;
    out << tray << ", " << cut_size(22.9_cm, 11_cm) << ", " << edge::bottom;
    CHECK(out.str() == "9 x 4 1/2 in, 22.9 x 11 cm, bottom");
    CHECK(to_text(tray) == "9 x 4 1/2 in");
    CHECK(to_text(cut_size(22.9_cm, 11_cm)) == "22.9 x 11 cm");
}
