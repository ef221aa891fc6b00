// Sizes, finishes, panels and corners allocate nothing, but for the errors that are thrown.
#include "../allocations.hpp"
#include <turncloth/measure/read.hpp>
#include <turncloth/panel/corner.hpp>
#include <turncloth/panel/panel.hpp>

#include <doctest/doctest.h>

#include <cstddef>
#include <string>

using namespace turncloth;
using namespace turncloth::literals;

TEST_CASE("the count sees an allocation") {
    const std::size_t before = allocations;
    const std::string long_text = to_text(unforeseen(1_in)) + " and more than a short string holds";
    CHECK(allocations > before);
}

TEST_CASE("a panel, its lines, its working and its mitre allocate nothing") {
    const auto width = unforeseen(10_in);
    const std::size_t before = allocations;
    const auto bound = self_bound(finished_size(width, 16_in), "1/2"_in, "1/16"_in, "1/8"_in);
    const panel hung(finished_size(width, width * 4),
                     edges<inch>{heading(4_in, "1/2"_in), finish<inch>(), french_seam("1/8"_in, "1/4"_in),
                                 felled_over("1/4"_in, "1/8"_in)});
    const auto working = hung.height_working();
    const auto back = panel<inch>::from_cut(hung.cut(), hung.finishes());
    const auto place = hung.from_cut_edge(edge::top, at<stitched_line>(width));
    const mitre<inch> corner(bound.outer.finish_of(edge::left), bound.outer.finish_of(edge::top));
    const auto trim = corner.trim("1/4"_in, "1/16"_in);
    const std::size_t after = allocations;
    CHECK(after == before);
    CHECK(working.value() == hung.cut().height());
    CHECK(back.finished() == hung.finished());
    CHECK(place.from_datum() > width);
    CHECK(trim.along_level < corner.crease_legs().along_level);
}
