// Finished sizes as they are typed, and what is said of a text that is none; and sizes asked for without an exception.
#include <turncloth/measure/read.hpp>
#include <turncloth/panel/typed_size.hpp>

#include <doctest/doctest.h>

#include <string>

using namespace turncloth;

TEST_CASE("a size is read in the units that stand with it") {
    const typed_size inches(finished_size(24_in, "15 1/2"_in));
    for (const char* text : {"24 x 15 1/2 in", "24 X 15.5", "24\u00D715 ½\"", "2 ft by 15-1/2 in", "24 in x 15,5 in"})
        CHECK(read_size(text) == inches);
    const typed_size metric(finished_size(60_cm, "37.5"_cm));
    for (const char* text : {"60 cm x 37,5 cm", "60 x 37.5 cm", "600 mm by 375 mm", "0.6 m x 37 1/2 cm"})
        CHECK(read_size(text) == metric);
    CHECK(read_sides("24", "15 1/2 in") == inches);
    CHECK(try_read_size("24 x 15 1/2 in").value_or(metric) == inches);
}

TEST_CASE("a size that is none is refused, thrown or not, in the same words") {
    struct refused {
        const char *text, *why, *where;
    };
    for (const refused& r : {
             refused{"24", "cannot read it as a size: write width x height, as in 24 x 15 in", ""},
             refused{"1 x 2 x 3", "cannot read it as a size: write width x height, as in 24 x 15 in", ""},
             refused{"24 in x 15", "the height: it needs a unit, as the width has one", "height"},
             refused{"24 x 1 ft 3 in", "the width: it needs a unit, as the height is in more than one", "width"},
             refused{"0 x 15", "the width: it must be more than zero: it was 0 in", "width"},
             refused{"24 x -15 cm", "the height: it must be more than zero: it was -15 cm", "height"},
         }) {
        const outcome<typed_size> tried = try_read_size(r.text);
        REQUIRE_FALSE(tried);
        CHECK(tried.refused().what() == std::string(r.why));
        CHECK(tried.refused().facts().where == r.where);
        try {
            read_size(r.text);
            FAIL("must be refused");
        } catch (const error& thrown) {
            CHECK(thrown.what() == std::string(r.why));
            CHECK(thrown.facts() == tried.refused().facts());
        }
    }
    CHECK_THROWS_AS(read_size("24"), size_text_error);
    CHECK_THROWS_AS(read_size("24 x 1/"), side_error);
    CHECK(try_read_sides("24", "1/").refused().which() == side_of_size::height);
    CHECK(try_read_sides("24", "1/").refused().facts().kind == fault::unreadable);
}

TEST_CASE("a size is had, or the error that its constructor throws") {
    CHECK(*try_finished_size(9_in, 4_in) == finished_size(9_in, 4_in));
    CHECK(*try_cut_size(9_cm, 4_cm) == cut_size(9_cm, 4_cm));
    CHECK(try_cut_size(9_cm, 4_cm)->height() == 4_cm);
    const auto none = try_cut_size(9_cm, -(1_cm));
    REQUIRE_FALSE(none.has_value());
    CHECK_THROWS_WITH_AS(cut_size(9_cm, -(1_cm)), none.refused().what(), size_error);
    CHECK(try_finished_size(0_in, 1_in).refused().facts().given == amount_of(0_in));
}
