// Every kind of refusal of panel/ as data: what was wrong, what was given, what is allowed and where, written down by hand.
#include "refused.hpp"
#include <turncloth/measure/read.hpp>
#include <turncloth/panel/corner.hpp>
#include <turncloth/panel/folding.hpp>
#include <turncloth/panel/made_up.hpp>
#include <turncloth/panel/outline.hpp>
#include <turncloth/panel/panel.hpp>

#include <doctest/doctest.h>

#include <string>

using namespace turncloth;
using refused::facts;

namespace {

constexpr auto hem = double_turned_hem("1/4"_in, 1_in);

/// Of a square 4 in each way with an allowance of 1/2 in, but for what is changed.
outline<inch> square_with(const std::vector<edge_allowance<inch>>& allowances,
                          const std::vector<corner_shape>& shapes = {}, double limit = 8) {
    const auto at = [](double x, double y) { return drafted_point<inch>(x, y); };
    return outline<inch>({at(0, 0), at(4, 0), at(4, 4), at(0, 4)}, allowances, shapes, limit);
}

edge_allowance<inch> in(double all, double under = 0) {
    return {drafted_length_of<inch>(all), drafted_length_of<inch>(under)};
}

edges<inch> with(edge e, const finish<inch>& made_by_hand) {
    edges<inch> all;
    (e == edge::right ? all.right : all.bottom) = made_by_hand;
    return all;
}

point<inch> at_in(fraction x, fraction y) { return point_of<inch>(x, y); }

folding<inch> strip() { return folding<inch>({at_in(0, 0), at_in(64, 0), at_in(64, 1), at_in(0, 1)}); }

} // namespace

TEST_CASE("a size that is not above zero says which side was wrong") {
    CHECK(facts<size_error>([] { return finished_size<inch>(9_in, 0_in); }) ==
          "too small: a finished size, given 0 in, least 0 in");
    CHECK(facts<size_error>([] { return cut_size<centimetre>(-2_cm, 3_cm); }) ==
          "too small: a cut size, given -2 cm, least 0 cm");
}

TEST_CASE("hems, casings and bindings that cannot be turned say which length is wrong") {
    CHECK(facts<finish_error>([] { return single_turned_hem(0_in); }) ==
          "too small: the depth of a hem, given 0 in, least 0 in");
    CHECK(facts<finish_error>([] { return double_turned_hem(2_in, 1_in); }) ==
          "too large: the first turn of a hem, given 2 in, least 0 in, most 1 in");
    CHECK(facts<finish_error>([] { return double_turned_hem(0_in, 1_in); }) ==
          "too small: the first turn of a double-turned hem, given 0 in, least 0 in");
    CHECK(facts<finish_error>([] { return single_turned_hem(1_in, "5/4"_in); }) ==
          "too large: the inset of stitching, given 5/4 in, least 0 in, most 1 in");
    CHECK(facts<finish_error>([] { return casing(1_in, 1_in, "1/4"_in, "1/8"_in); }) ==
          "too large: the channel of a casing, given 1 in, least 0 in, most 7/8 in");
    CHECK(facts<finish_error>([] { return self_binding(0_in); }) ==
          "too small: the width of a binding, given 0 in, least 0 in");
    CHECK(facts<finish_error>([] { return self_binding("1/2"_in, 0_in, -"1/16"_in); }) ==
          "too small: the turn of cloth, given -1/16 in, least 0 in");
}

TEST_CASE("seams that cannot be sewn say which length is wrong") {
    CHECK(facts<finish_error>([] { return seam(-"1/2"_in); }) ==
          "too small: a seam allowance, given -1/2 in, least 0 in");
    CHECK(facts<finish_error>([] { return french_seam(0_in, "1/4"_in, 0_in); }) ==
          "too small: the first seam of a French seam, given 0 in, least 0 in");
    CHECK(facts<finish_error>([] { return french_seam("1/4"_in, 0_in, 0_in); }) ==
          "too small: the second seam of a French seam, given 0 in, least 0 in");
    CHECK(facts<finish_error>([] { return french_seam("1/4"_in, "3/8"_in, "1/2"_in); }) ==
          "too large: the trimmed edge of a French seam, given 1/2 in, least 0 in, most 1/4 in");
    CHECK(facts<finish_error>([] { return french_seam("3/8"_in, "1/4"_in, "1/4"_in); }) ==
          "too small: the second seam of a French seam, given 1/4 in, least 1/4 in");
}

TEST_CASE("a finish with more lines than there is room for says how many it may have") {
    CHECK(facts<finish_error>([] {
              finish<inch> pleated("pleated");
              for (int k = 1; k <= 5; ++k)
                  pleated.folds_at(length_of<inch>(k));
              return pleated;
          }) == "does not fit: a finish, given 5, most 4");
}

TEST_CASE("a panel that cannot be made says at which edge") {
    const finished_size<inch> flap(9_in, "1 1/2"_in);
    // Two hems of 1 in need 2 in.
    CHECK(facts<finish_error>([&] { return panel(flap, all_round(hem)); }) ==
          "no room: the finishes of opposite edges, given 2 in, most 3/2 in, where top");
    // 2 x (1/4 + 1) in are 2 1/2 in.
    CHECK(facts<finish_error>([] { return panel<inch>::from_cut(cut_size(9_in, 2_in), all_round(hem)); }) ==
          "no room: the finishes of opposite edges, given 5/2 in, most 2 in");
    CHECK(facts<finish_error>([&] {
              return panel(flap, {}).gathered_along(edge::top, {1, 2});
          }) == "too small: the fullness of a gathered edge, given 1/2, least 1");
    CHECK(facts<finish_error>([&] { return panel(flap, {}).from_stitching(edge::left, at<cut_edge>(1_in)); }) ==
          "missing: stitching, where left");
    CHECK(facts<finish_error>([&] { return panel(flap, with(edge::right, finish<inch>("torn").allows(-1_in))); }) ==
          "too small: a part of an allowance, given -1 in, least 0 in, where right");
    CHECK(facts<finish_error>([&] { return panel(flap, with(edge::bottom, finish<inch>("scored").folds_at(2_in))); }) ==
          "too large: a fold, given 2 in, least 0 in, most 3/2 in, where bottom");
    CHECK(facts<finish_error>([&] {
              return panel(flap, with(edge::bottom, finish<inch>("topped").stitched_at(-1_in)));
          }) == "too small: a row of stitching, given -1 in, least 0 in, where bottom");
}

TEST_CASE("a corner that cannot be mitred or stacked says which edge or length is wrong") {
    CHECK(facts<corner_error>([] { return mitre<inch>(seam("1/2"_in), hem); }) ==
          "unsuitable: a finish, where upright");
    CHECK(facts<corner_error>([] { return stacked_corner<inch>(hem, finish<inch>()); }) ==
          "unsuitable: a finish, where level");
    CHECK(facts<corner_error>([] { return mitre<inch>(hem, hem).trim(-1_in, "1/8"_in); }) ==
          "too small: the allowance of a mitre, given -1 in, least 0 in");
    CHECK(facts<corner_error>([] { return mitre<inch>(hem, hem).trim(2_in, "1/8"_in); }) ==
          "too large: the allowance of a mitre, given 2 in");
    CHECK(facts<corner_error>([] { return stacked_corner<inch>(hem, hem).underlay("5/4"_in); }) ==
          "too large: the margin of an underlay, given 5/4 in, least 0 in, most 5/4 in");
    CHECK(facts<corner_error>([] { return mitred_border<inch>(9_in, 0_in, 0_in); }) ==
          "too small: the width of a border, given 0 in, least 0 in");
    CHECK(facts<corner_error>([] { return mitred_border<inch>(9_in, 2_in, -1_in); }) ==
          "too small: the allowance of a border, given -1 in, least 0 in");
    CHECK(facts<corner_error>([] { return mitred_border<inch>(3_in, 2_in, 0_in); }) ==
          "too small: the outer side of a mitred border, given 3 in, least 4 in");
    // The creases of equal hems leave the edge 2 x 1 1/4 in from the corner: 5 in of a cut 4 1/2 in.
    const panel<inch> scrap(finished_size(2_in, 9_in), all_round(hem));
    CHECK(facts<corner_error>([&] { return fold_panel(scrap, all_corners(mitred<inch>())); }) ==
          "no room: the mitres of an edge, given 5 in, most 9/2 in, where top");
    const edges<inch> uneven{single_turned_hem("1/4"_in), single_turned_hem("1/2"_in), single_turned_hem(3_in),
                             single_turned_hem(3_in)};
    CHECK(facts<corner_error>([&] {
              return fold_panel(panel(finished_size(4_in, 7_in), uneven), all_corners(mitred<inch>()));
          }) == "disagree: the corners of a piece");
}

TEST_CASE("an outline that cannot be drawn says which edge or corner is wrong") {
    using enum corner_shape;
    const outline<inch> square = square_with({in(0.5)});
    CHECK(facts<outline_error>([] { return outline<inch>({drafted_point<inch>(0, 0)}, {in(0.5)}); }) ==
          "too small: the number of corners of an outline, given 1, least 3");
    CHECK(facts<outline_error>([] {
              return square_with({in(0.5), in(0.5)});
          }) == "disagree: the number of allowances, given 2, most 4");
    CHECK(facts<outline_error>([] {
              return square_with({in(0.5)}, {mitred, mitred, mitred});
          }) == "disagree: the number of corner shapes, given 3, most 4");
    CHECK(facts<outline_error>([] { return square_with({in(0.5)}, {}, 0.5); }) ==
          "too small: the limit of a mitre, given 0.5, least 1, most 1e+06");
    CHECK(facts<outline_error>([] {
              return square_with({in(0.5), in(0.5), in(0.25, 0.5), in(0.5)});
          }) == "too small: an allowance, given 0.25, least 0.5, most 1e+06, index 2");
    const auto at = [](double x, double y) { return drafted_point<inch>(x, y); };
    CHECK(facts<outline_error>([&] {
              return outline<inch>({at(0, 0), at(4, 0), at(4, 0)}, {in(0.5)});
          }) == "unsuitable: an edge of an outline, given 0, index 1");
    CHECK(facts<outline_error>([&] {
              return outline<inch>({at(0, 0), at(4, 4), at(4, 0), at(0, 4)}, {in(0.5)});
          }) == "disagree: a seam line, index 0");
    CHECK(facts<outline_error>([&] { return square.cut_edge(4); }) ==
          "too large: the number of an edge, given 5, most 4, index 4");
    CHECK(facts<outline_error>([&] {
              return square.carried({1, drafted_length_of<inch>(5)});
          }) == "too large: a notch, given 5, least 0, most 4, index 1");
    CHECK(facts<outline_error>([&] {
              return square.angle_to_grain(0, {at(1, 1), at(1, 1)});
          }) == "unsuitable: a grain line");
    CHECK(facts<outline_error>([&] {
              return outline<inch>({at(0, 0), at(4, -0.04), at(8, 0), at(4, 4)}, {in(0.5)},
                                   {mitred, reflected_in_edge_before, mitred, mitred});
          }) == "unsuitable: the shape of a corner, index 1");
    // Beside an inward corner the cut edge begins later than the seam.
    const outline<inch> notched({at(0, 0), at(10, 0), at(10, 10), at(5, 3), at(0, 10)}, {in(1)});
    CHECK(facts<outline_error>([&] {
              return notched.carried({3, drafted_length_of<inch>(0.125)});
          }) == "unsuitable: a notch, given 0.125, index 3");
}

TEST_CASE("a folding that cannot be made says how far it may go") {
    CHECK(facts<folding_error>([] {
              return folding<inch>({at_in(0, 0), at_in(4, 0), at_in(1, 1), at_in(0, 4)});
          }) == "unsuitable: a piece to fold");
    CHECK(facts<folding_error>([] { return strip().fold({at_in(1, 0), at_in(1, 0)}); }) == "unsuitable: a crease");
    CHECK(facts<folding_error>([] {
              auto paper = strip();
              for (int k = 0; k <= 64; ++k) // beside the strip, where nothing is turned
                  paper.fold({at_in(-1, 0), at_in(-1, 1)});
              return paper.layer_count();
          }) == "does not fit: the number of folds, given 65, most 64");
}
