// Panels: finished and cut sizes turn into each other exactly, workings add up, places are measured from where they
// say.
#include "measure/against_gmp.hpp"
#include <turncloth/measure/read.hpp>
#include <turncloth/panel/panel.hpp>

#include <doctest/doctest.h>

#include <array>
#include <concepts>

using namespace turncloth;
using namespace turncloth::literals;

namespace {

// Common practice: an outer of 12 x 18 in goes with inners of 10 x 16 in, 1 in beyond them turned as two folds of 1/2
// in.
constexpr auto bound = self_bound(finished_size(10_in, 16_in), "1/2"_in);
static_assert(bound.outer.cut() == cut_size(12_in, 18_in));
static_assert(bound.inner == cut_size(10_in, 16_in));
// The same from the pieces already cut.
static_assert(panel<inch>::from_cut(cut_size(12_in, 18_in), all_round(self_binding("1/2"_in))).finished() ==
              finished_size(10_in, 16_in));
// Common practice: any size keeps the 2 in.
static_assert(self_bound(finished_size(33_in, 7_in), "1/2"_in).outer.cut() == cut_size(35_in, 9_in));
// Each way the outer loses four times the binding's width: 4 x 3/8 in.
static_assert(self_bound(finished_size(6_in, 6_in), "3/8"_in).outer.cut() == cut_size("7 1/2"_in, "7 1/2"_in));
// And twice the turn of cloth.
static_assert(self_bound(finished_size(6_in, 6_in), "3/8"_in, 0_in, "1/8"_in).outer.cut() ==
              cut_size("7 3/4"_in, "7 3/4"_in));

// Common practice: a hanging backing cut 15 x 45 in, a heading of 4 in, the other edges pressed under 1 in.
constexpr auto backing = panel<inch>::from_cut(
    cut_size(15_in, 45_in), {heading(4_in), single_turned_hem(1_in), single_turned_hem(1_in), single_turned_hem(1_in)});
static_assert(backing.finished() == finished_size(13_in, 40_in));

// Four different allowances.
constexpr panel patch(finished_size(8_in, 5_in), edges<inch>{seam("1/4"_in), single_turned_hem("1/2"_in),
                                                             double_turned_hem("1/8"_in, "3/8"_in), finish<inch>()});
static_assert(patch.cut() == cut_size("8 1/2"_in, "5 3/4"_in));
static_assert(patch.finish_of(edge::top).allowance() == "1/4"_in);
static_assert(patch.finish_of(edge::left).allowance() == 0_in);
static_assert(panel(finished_size(8_in, 5_in)).cut() == cut_size(8_in, 5_in));

static_assert(all_edges.size() == 4);
static_assert(opposite(edge::top) == edge::bottom);
static_assert(opposite(edge::left) == edge::right);
static_assert(name_of(edge::top) == "top");
static_assert(name_of(edge::right) == "right");
static_assert(name_of(edge::bottom) == "bottom");
static_assert(name_of(edge::left) == "left");

// Places: the same spot from the cut edge, the finished edge and the stitching.
constexpr panel hung(finished_size(13_in, 40_in),
                     edges<inch>{heading(4_in, "1/2"_in, "1/8"_in), finish<inch>(), finish<inch>(), finish<inch>()});
// Folded at 4 1/2, so the heading's inner edge lies at 8 1/2 and its stitching at 8 3/8.
static_assert(hung.from_cut_edge(edge::top, at<finished_edge>(0_in)) == at<cut_edge>("4 1/2"_in));
static_assert(hung.from_cut_edge(edge::top, at<stitched_line>(7_in)) == at<cut_edge>("15 3/8"_in));
static_assert(hung.from_finished_edge(edge::top, at<cut_edge>(0_in)) == at<finished_edge>(-("4 1/2"_in)));
static_assert(hung.from_stitching(edge::top, at<cut_edge>(9_in)) == at<stitched_line>("5/8"_in));
static_assert(!std::equality_comparable_with<place<cut_edge, inch>, place<finished_edge, inch>>);
// From the row nearest to the middle of the piece, whichever was sewn first.
constexpr panel cased(finished_size(13_in, 40_in),
                      edges<inch>{casing(2_in, 1_in), finish<inch>(), finish<inch>(), finish<inch>()});
static_assert(cased.from_cut_edge(edge::top, at<stitched_line>(0_in)) == at<cut_edge>(4_in));

std::array<finish<centimetre>, 9> some_finishes(against_gmp::sampler& any) {
    const fraction d = {any.between(1, 60), 20}, t = d * fraction(any.between(1, 7), 7);
    const auto l = [](fraction x) { return length_of<centimetre>(x); };
    return {finish<centimetre>(),   seam(l(d)),         single_turned_hem(l(d)), double_turned_hem(l(t), l(d)),
            heading(l(d), l(t)),    self_binding(l(d)), separate_binding(l(d)),  french_seam(l(d / 2), l(d)),
            felled_over(l(d), l(t))};
}

} // namespace

TEST_CASE("cut and finished sizes turn into each other for any finishes, and the difference is the allowances") {
    against_gmp::sampler any(14);
    while (any.another_of(5000)) {
        const auto finishes = some_finishes(any);
        const auto one_of = [&] { return finishes[static_cast<std::size_t>(any.between(0, 8))]; };
        const edges<centimetre> all{one_of(), one_of(), one_of(), one_of()};
        const finished_size<centimetre> size(length_of<centimetre>({any.between(200, 3000), any.between(1, 24)}),
                                             length_of<centimetre>({any.between(200, 3000), any.between(1, 24)}));
        const panel piece(size, all);
        REQUIRE(piece.finished() == size);
        REQUIRE(panel<centimetre>::from_cut(piece.cut(), all).finished() == size);
        const mpq_class width = against_gmp::exact(size.width().value()) +
                                against_gmp::exact(all.left.allowance().value()) +
                                against_gmp::exact(all.right.allowance().value());
        const mpq_class height = against_gmp::exact(size.height().value()) +
                                 against_gmp::exact(all.top.allowance().value()) +
                                 against_gmp::exact(all.bottom.allowance().value());
        REQUIRE(against_gmp::same(piece.cut().width().value(), width));
        REQUIRE(against_gmp::same(piece.cut().height().value(), height));
        REQUIRE(piece.width_working().value() == piece.cut().width());
        REQUIRE(piece.height_working().value() == piece.cut().height());
        for (const edge e : all_edges) {
            const auto p = at<cut_edge>(length_of<centimetre>({any.between(-100, 900), 16}));
            REQUIRE(piece.from_cut_edge(e, piece.from_finished_edge(e, p)) == p);
            REQUIRE(piece.way_from_cut_edge(e, piece.from_finished_edge(e, p)).value() == p.from_datum());
            REQUIRE(piece.way_from_cut_edge(e, p).value() == p.from_datum());
            if (piece.finish_of(e).stitching().empty())
                continue;
            REQUIRE(piece.from_cut_edge(e, piece.from_stitching(e, p)) == p);
            REQUIRE(piece.way_from_cut_edge(e, piece.from_stitching(e, p)).value() == p.from_datum());
        }
    }
}

TEST_CASE("a working says what the cut size is the sum of") {
    CHECK(to_text(bound.outer.width_working()) == "12 in = 10 in finished + 2 x (1/2 + 1/2) in self-binding");
    CHECK(to_text(patch.width_working()) == "8 1/2 in = 8 in finished + 1/2 in single-turned hem");
    CHECK(to_text(patch.height_working()) ==
          "5 3/4 in = 5 in finished + 1/4 in seam allowance + (1/8 + 3/8) in double-turned hem");
    CHECK(to_text(panel(finished_size(8_in, 5_in)).width_working()) == "8 in = 8 in finished");
    // Two hems alike in name and not in depth are written apart.
    const panel uneven(finished_size(8_in, 5_in),
                       edges<inch>{finish<inch>(), single_turned_hem(1_in), finish<inch>(), single_turned_hem(2_in)});
    CHECK(to_text(uneven.width_working()) == "11 in = 8 in finished + 2 in single-turned hem + 1 in single-turned hem");
}

TEST_CASE("a piece too small for its finishes is refused with its numbers") {
    const edges<inch> hems = all_round(double_turned_hem("1/4"_in, 1_in));
    CHECK_THROWS_WITH_AS(
        panel(finished_size("1 3/4"_in, 9_in), hems),
        "a piece that finishes 1 3/4 in wide has no room for the double-turned hem of its left edge and the "
        "double-turned hem of its right edge, which lie 2 in deep together",
        finish_error);
    CHECK_THROWS_WITH_AS(
        panel(finished_size(9_in, "1 3/4"_in), hems),
        "a piece that finishes 1 3/4 in high has no room for the double-turned hem of its top edge and the "
        "double-turned hem of its bottom edge, which lie 2 in deep together",
        finish_error);
    // The fold reaches further in than a row that lies 1/8 in back from it.
    const edges<inch> sewn_back = all_round(double_turned_hem("1/4"_in, 1_in, "1/8"_in));
    CHECK(panel(finished_size(2_in, 9_in), sewn_back).cut().width() == "4 1/2"_in);
    CHECK_THROWS_WITH_AS(
        panel(finished_size("1 15/16"_in, 9_in), sewn_back),
        "a piece that finishes 1 15/16 in wide has no room for the double-turned hem of its left edge and the "
        "double-turned hem of its right edge, which lie 2 in deep together",
        finish_error);
    CHECK(panel(finished_size(2_in, 2_in), hems).cut() == cut_size("4 1/2"_in, "4 1/2"_in)); // hem to hem just fits
    // A selvedge lapped as it is turns nothing under, and still its stitching must lie on the piece.
    const edges<inch> lapped{.top = {}, .right = {}, .bottom = {}, .left = lapped_over(0_in, "1/2"_in)};
    CHECK(panel(finished_size("1/2"_in, 9_in), lapped).cut() == cut_size("1/2"_in, 9_in));
    CHECK_THROWS_AS(panel(finished_size("3/8"_in, 9_in), lapped), finish_error);
    CHECK_THROWS_WITH_AS(panel<inch>::from_cut(cut_size("2 1/2"_in, 9_in), hems),
                         "a piece cut 2 1/2 in wide is too small for its finishes, which take 2 1/2 in", finish_error);
    CHECK_THROWS_WITH_AS(panel<inch>::from_cut(cut_size(9_in, 2_in), hems),
                         "a piece cut 2 in high is too small for its finishes, which take 2 1/2 in", finish_error);
    CHECK_THROWS_WITH_AS(
        static_cast<void>(panel(finished_size(9_in, 9_in)).from_cut_edge(edge::left, at<stitched_line>(1_in))),
        "the left edge has no stitching to measure from", finish_error);
    CHECK_THROWS_AS(self_bound(finished_size(9_in, 9_in), 0_in), finish_error);
    CHECK_THROWS_AS(self_bound(finished_size(1_in, 9_in), "5/8"_in), finish_error);
}

TEST_CASE("two pieces of two units make the same thing") {
    // 1 in = 2.54 cm, so both are exact.
    const panel in(finished_size(10_in, 16_in), all_round(self_binding("1/2"_in)));
    const panel cm(finished_size(25.4_cm, 40.64_cm), all_round(self_binding(1.27_cm)));
    CHECK(as<centimetre>(in.cut()) == cm.cut());
}

TEST_CASE("a piece that is gathered is cut fuller, and its working says so") {
    // A frill gathered twice into 180 cm, 30 cm deep, hems of 2.5 cm all round: 2 x 180 + 2 x 2.5 = 365 cm of cloth.
    const panel frill(finished_size(180_cm, 30_cm), all_round(single_turned_hem(2.5_cm)));
    const auto along_the_top = frill.gathered_along(edge::top, 2);
    CHECK(along_the_top.cut() == cut_size(365_cm, 35_cm));
    CHECK(to_text(along_the_top.width_working()) == "365 cm = 2 x 180 cm gathered + 2 x 2.5 cm single-turned hem");
    CHECK(to_text(along_the_top.height_working()) == "35 cm = 30 cm finished + 2 x 2.5 cm single-turned hem");
    CHECK(along_the_top.finished() == finished_size(360_cm, 30_cm)); // before it is gathered
    CHECK(to_text(frill.gathered_along(edge::left, {3, 2}).height_working()) ==
          "50 cm = 1 1/2 x 30 cm gathered + 2 x 2.5 cm single-turned hem");
    CHECK(to_text(frill.gathered_along(edge::bottom, 1).width_working()) == to_text(frill.width_working()));
    try {
        static_cast<void>(frill.gathered_along(edge::top, {9, 10}));
        FAIL("less cloth than is filled was not refused");
    } catch (const finish_error& refused) {
        CHECK(refused.facts().kind == fault::too_small);
        CHECK(refused.facts().given->numerator == 9);
        CHECK(refused.facts().least->numerator == 1);
    }
}

TEST_CASE("a finish made by hand is held to the piece, whoever made it") {
    const auto with = [](const finish<inch>& f) {
        return panel(finished_size(6_in, 6_in), edges<inch>{{}, {}, {}, f});
    };
    CHECK_THROWS_WITH_AS(
        with(finish<inch>("far fold").allows(1_in).folds_at(50_in)),
        "a fold of the far fold of its left edge must lie on the piece, which is cut 7 in across: it was "
        "50 in",
        finish_error);
    CHECK_THROWS_WITH_AS(with(finish<inch>("odd").allows(-(1_in))),
                         "a part of an allowance of the odd of its left edge must be zero or more: it was -1 in",
                         finish_error);
    CHECK_THROWS_WITH_AS(with(finish<inch>("odd").allows(1_in).stitched_at(-("1/8"_in))),
                         "a row of stitching of the odd of its left edge must be zero or more: it was -1/8 in",
                         finish_error);
    CHECK_THROWS_AS(with(finish<inch>("odd").reaches(-(1_in))), finish_error);
    CHECK_THROWS_AS(with(finish<inch>("odd").allows(2_in).allows(-(1_in))), finish_error); // though 1 in all told
    try {
        static_cast<void>(with(finish<inch>("far fold").allows(1_in).folds_at(50_in)));
    } catch (const finish_error& refused) {
        CHECK(refused.facts().where == "left");
        CHECK(refused.facts().kind == fault::too_large);
        CHECK(refused.facts().most->numerator == 7);
    }
    CHECK(with(finish<inch>("to the far edge").allows(1_in).folds_at(1_in)).cut().width() == 7_in);
}

TEST_CASE("a line on the cut edge itself lies on the piece") {
    const auto on_the_edge = finish<inch>("stitched on the edge").stitched_at(length<inch>()).folds_at(length<inch>());
    const length<inch> six = length_of<inch>(6);
    CHECK_NOTHROW(panel<inch>(finished_size<inch>(six, six), all_round(on_the_edge)));
}
