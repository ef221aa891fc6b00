// Projects, sheets and designs are values: equal when made alike, and edited on a copy.
#include <turncloth/measure/read.hpp>
#include <turncloth/panel/outline.hpp>
#include <turncloth/sheet/made_as.hpp>
#include <turncloth/sheet/making.hpp>

#include <doctest/doctest.h>

#include <string>

using namespace turncloth;
using namespace turncloth::literals;

namespace {

project<inch> seed_roll(const length<inch>& binding) {
    project<inch> p("Seed roll", finished_size(20_in, 12_in));
    piece<inch>& outer = p.add(piece<inch>("outer", "canvas", panel(p.finished(), all_round(self_binding(binding)))));
    outer.mark("pocket line", edge::top, divided<finished_edge>(12_in, 3));
    p.add(piece<inch>("lining", "cotton", panel(p.finished()))).lies_inside(outer);
    p.add(must_reach<inch>{.what = "the tie", .has = 30_in, .needs = 24_in});
    return p;
}

making<inch> mat(const length<inch>& width) {
    making<inch> m("Mat");
    m.cut({.name = "top", .width = width, .height = 9_in});
    return m;
}

} // namespace

TEST_CASE("what is made alike is equal, and what differs anywhere is not") {
    const project<inch> p = seed_roll("1/2"_in);
    CHECK(p == seed_roll("1/2"_in));
    CHECK(p != seed_roll("3/4"_in));
    CHECK(sheet_of(p) == sheet_of(seed_roll("1/2"_in)));
    CHECK(sheet_of(p) != sheet_of(seed_roll("3/4"_in)));
    project<inch> q = p;
    q.caution("Mind the needle.", caution::work::stitching);
    CHECK(q != p);
}

TEST_CASE("designs are compared by value") {
    const auto made = [](const length<inch>& width) {
        project<inch> p("Mat", finished_size(12_in, 9_in));
        p.made_as(mat(width));
        return p;
    };
    CHECK(made(12_in) == made(12_in));
    CHECK(made(12_in) != made(11_in));
    CHECK(made(12_in) != project<inch>("Mat", finished_size(12_in, 9_in)));
}

TEST_CASE("a piece is changed or taken away, and a copy undoes it") {
    project<inch> p = seed_roll("1/2"_in);
    const project<inch> before = p;
    REQUIRE(p.find("lining") != nullptr);
    p.find("lining")->count(2);
    CHECK(p.pieces()[1].count() == 2);
    CHECK(p.remove("lining"));
    CHECK(p.pieces().size() == 1);
    CHECK(!p.remove("lining"));
    CHECK(p.find("lining") == nullptr);
    CHECK(p != before);
    p = before;
    CHECK(p == seed_roll("1/2"_in));
    CHECK(p.remove("outer"));
    CHECK_THROWS_AS(sheet_of(p), sheet_error); // the lining lies inside a piece that is gone
}

TEST_CASE("outlines are equal where they were drafted alike") {
    const auto drafted = [](double allowance) {
        return outline<centimetre>(
            {drafted_point<centimetre>(0, 0), drafted_point<centimetre>(30, 0), drafted_point<centimetre>(0, 20)},
            {drafted_length_of<centimetre>(allowance)});
    };
    CHECK(drafted(1.5) == drafted(1.5));
    CHECK(drafted(1.5) != drafted(1));
}

TEST_CASE("a sheet is had without an exception, or every reason why there is none") {
    const project<inch> p = seed_roll("1/2"_in);
    CHECK(*try_sheet_of(p) == sheet_of(p));
    project<inch> q = p;
    q.add(must_reach<inch>{.what = "the flap", .has = 1_in, .needs = 2_in});
    q.remove("outer");
    const auto none = try_sheet_of(q);
    REQUIRE_FALSE(none);
    CHECK(none.refused().reasons().size() >= 2);
    CHECK_THROWS_WITH_AS(sheet_of(q), none.refused().what(), sheet_error);
}
