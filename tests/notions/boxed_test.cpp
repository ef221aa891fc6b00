// Boxed shapes: both ways of making a corner, and an edging, at compile time; the box computed back from what was cut,
// for thousands of sizes; the opened corner laid out in coordinates; and what is refused.
#include "reference.hpp"
#include <turncloth/measure/read.hpp>
#include <turncloth/notions/boxed.hpp>

#include <doctest/doctest.h>

using namespace turncloth;
using reference::exact;
using reference::facts;
using reference::message;

namespace {

constexpr boxed_size<inch> pad(16_in, 9_in, 2_in); // a kneeling pad
static_assert(boxed_panel(pad, "1/2"_in) == cut_size(19_in, 12_in));
static_assert(corner_cut(2_in, {.seam = "1/2"_in, .across = "1/2"_in}) ==
              1_in); // one allowance throughout: half the depth
static_assert(corner_cut(2_in, {.seam = "1/2"_in, .across = "1/4"_in}) == "1 1/4"_in);
static_assert(box_from_cut(cut_size(19_in, 12_in), 1_in, {.seam = "1/2"_in, .across = "1/2"_in}) == pad);
static_assert(box_from_stitched(cut_size(19_in, 12_in), 2_in, "1/2"_in) == pad);
// Squares of 2 in and one allowance make a base 4 in deep (derived).
static_assert(box_from_cut(cut_size(20_in, 20_in), 2_in, {.seam = "1/2"_in, .across = "1/2"_in}).depth() == 4_in);
static_assert(corner_stitched(2_in, "1/2"_in).from_point == 1_in);
static_assert(corner_stitched(2_in, "1/2"_in).line == 2_in);
static_assert(corner_stitched(2_in, "1/2"_in).from_edges == "1 1/2"_in);

// Derived: a face of 12 x 12 in with allowances of 1/2 in has plates of 13 x 13 in and a ring of 48 in at the seam
// line.
constexpr boxed_size<inch> square_pad(12_in, 12_in, 3_in);
static_assert(plate(square_pad, "1/2"_in) == cut_size(13_in, 13_in));
static_assert(square_pad.round() == 48_in);
static_assert(edging(square_pad, "1/2"_in, 1).total == 49_in);
static_assert(edging(square_pad, "1/2"_in, 1).width == 4_in);
static_assert(edging(square_pad, "1/2"_in, 4).total == 52_in);
static_assert(edging(square_pad, "1/2"_in, 4).pieces[3] == 13_in);
// Around a zipper whose folds meet: each half is half the depth, a seam, and what is turned beside the zipper.
constexpr auto zipped = split_edging(square_pad, "1/2"_in, edging_zipper<inch>{14_in, "3/4"_in, {}});
static_assert(zipped.half_width.value() == "2 3/4"_in);
static_assert(zipped.half_length == 15_in);
static_assert(zipped.rest_width == 4_in);
static_assert(zipped.rest_length == 35_in);

// A bag with a flat bottom (derived): across, face + depth + 2 seams; down, face + half the depth + seam + top.
static_assert(boxed_bag<inch>({12_in, 14_in, 4_in}, {.seam = "1/2"_in, .top = 1_in}).width.value() == 17_in);
static_assert(boxed_bag<inch>({12_in, 14_in, 4_in}, {.seam = "1/2"_in, .top = 1_in}).height.value() == "17 1/2"_in);

static_assert(covering(pad, {.around = "1/4"_in, .in_depth = {}}) == boxed_size("16 1/4"_in, "9 1/4"_in, 2_in));
static_assert(filling_for(pad, {.around = "-1/2"_in, .in_depth = {}}) ==
              boxed_size("16 1/2"_in, "9 1/2"_in, 2_in)); // foam squeezed by 1/2 in
static_assert(wadding_layers(2_in, "1/2"_in, 1) == 4);
static_assert(wadding_layers(2_in, "1/2"_in, {3, 5}) == 7);
static_assert(as<centimetre>(pad) == boxed_size("40.64"_cm, "22.86"_cm, "5.08"_cm));

/// The line that closes a corner, from where the cloth lies. On each panel, with the raw corner at the origin, the
/// seams are x = a and y = a and meet in the tip (a, a). Bringing one seam onto the other folds each panel along y = x.
/// A square of side c is cut out, and the line is sewn b further in, at x = c + b: on one panel it runs from the seam,
/// at y = a, to the fold, at y = c + b, and on the other panel back the same way.
constexpr length<inch> closing_line(length<inch> c, length<inch> a, length<inch> b) {
    const length<inch> at_seam = a, at_fold = c + b;
    return (at_fold - at_seam) * 2;
}

} // namespace

TEST_CASE("both corners give the same box, and give back the one that was asked for") {
    reference::sampler random(1903);
    while (random.another_of(5'000)) {
        const boxed_size<inch> box(random.inches(40), random.inches(40), random.inches(8) + "1/8"_in);
        const length<inch> seam = random.inches(1);
        const length<inch> across = box.depth() / 2 * fraction(random.between(1, 99), 100);
        const cut_size<inch> panel = boxed_panel(box, seam);
        const length<inch> corner = corner_cut(box.depth(), {.seam = seam, .across = across});
        CHECK(box_from_cut(panel, corner, {.seam = seam, .across = across}) == box);
        CHECK(box_from_stitched(panel, corner_stitched(box.depth(), seam).line, seam) == box);
        CHECK(closing_line(corner, seam, across) == box.depth());
        // The corner's cut lies outside the closing line, which lies where a stitched corner's does.
        CHECK(corner + across == corner_stitched(box.depth(), seam).from_edges);
        // The metric edition is the same box.
        CHECK(boxed_panel(as<centimetre>(box), as<centimetre>(seam)) == as<centimetre>(panel));
    }
}

TEST_CASE("a panel's working shows the face, the sides and the seams, each way") {
    CHECK(to_text(boxed_width_working(pad, "1/2"_in)) == "19 in = 16 in face + 2 x 1 in sides + 2 x 1/2 in seam");
    CHECK(to_text(boxed_height_working(pad, "1/2"_in)) == "12 in = 9 in face + 2 x 1 in sides + 2 x 1/2 in seam");
    CHECK(to_text(pad) == "16 x 9 x 2 in");
    CHECK(to_text(zipped.half_width) == "2 3/4 in = 1/2 x 3 in depth + 1/2 in seam + 3/4 in beside the zipper");
}

TEST_CASE("the cloth of two panels is that of the box, its seams, and what lies folded or cut away in the corners") {
    reference::sampler random(1905);
    while (random.another_of(2'000)) {
        const boxed_size<inch> box(random.inches(40), random.inches(40), random.inches(8) + "1/8"_in);
        const length<inch> d = box.depth();
        // With no seams: two panels (w + d)(h + d) less eight squares of half the depth are the box's six faces.
        const auto panels = (box.width() + d) * (box.height() + d) * 2 - d / 2 * (d / 2) * 8;
        const auto faces = (box.width() * box.height() + (box.width() + box.height()) * d) * 2;
        CHECK(panels == faces);
    }
}

TEST_CASE("an edging goes round its plates, in one strip, in four, and with a zipper") {
    reference::sampler random(1907);
    while (random.another_of(5'000)) {
        const boxed_size<inch> box(random.inches(40) + 2_in, random.inches(40) + 2_in, random.inches(8) + "1/8"_in);
        const length<inch> a = random.inches(1);
        const box_edging<inch> one = edging(box, a, 1), four = edging(box, a, 4);
        CHECK(box_from_plates(plate(box, a), {.width = one.width, .round = one.total - a * 2}, a) == box);
        CHECK(box_from_plates(plate(box, a), {.width = four.width, .round = four.total - a * 8}, a) ==
              box); // four seams, two allowances each
        CHECK(four.pieces[0] + four.pieces[1] + four.pieces[2] + four.pieces[3] == four.total);
        CHECK(four.pieces[0] == plate(box, a).width());
        const edging_zipper<inch> z{box.round() * fraction(random.between(1, 99), 100), random.inches(1),
                                    box.depth() * fraction(random.between(0, 99), 100)};
        const edging_with_zipper<inch> e = split_edging(box, a, z);
        CHECK(e.half_length + e.rest_length - a * 4 == box.round()); // two seams
        CHECK((e.half_width.value() - z.allowance) * 2 + z.shows == e.rest_width);
        CHECK(e.rest_width == one.width);
    }
}

TEST_CASE("ease and squeeze come off again") {
    reference::sampler random(1909);
    while (random.another_of(1'000)) {
        const boxed_size<inch> box(random.inches(40) + 4_in, random.inches(40) + 4_in, random.inches(8) + 4_in);
        const length<inch> ease = random.inches(4) - 2_in, in_depth = random.inches(4) - 2_in;
        CHECK(filling_for(covering(box, {.around = ease, .in_depth = in_depth}),
                          {.around = ease, .in_depth = in_depth}) == box);
        const std::int64_t layers = wadding_layers(box.depth(), "3/8"_in, {2, 3});
        CHECK("1/4"_in * layers >= box.depth());
        CHECK("1/4"_in * (layers - 1) < box.depth());
    }
}

TEST_CASE("what makes no box says why") {
    CHECK(message<boxed_error>([] { return boxed_size(9_in, 4_in, 0_in); }) ==
          "the depth of a box must be more than zero: it was 0 in");
    CHECK(facts<boxed_error>([&] { return boxed_size(0_in, 4_in, 1_in); }) ==
          "too small: the width of a box, given 0 in, least 0 in");
    CHECK(facts<boxed_error>([&] { return boxed_size(4_in, "-1"_in, 1_in); }) ==
          "too small: the height of a box, given -1 in, least 0 in");
    CHECK(message<boxed_error>([] { return corner_cut(1_in, {.seam = "1/2"_in, .across = "1/2"_in}); }) ==
          "a box 1 in deep leaves no corner to cut out with an allowance of 1/2 in across it, which must be less than "
          "half "
          "the depth");
    CHECK(facts<boxed_error>([&] { return corner_cut(0_in, {.seam = "1/2"_in, .across = "1/2"_in}); }) ==
          "too small: the depth of a box, given 0 in, least 0 in");
    CHECK(facts<boxed_error>([&] { return corner_cut(2_in, {.seam = 0_in, .across = "1/2"_in}); }) ==
          "too small: the seam of a box, given 0 in, least 0 in");
    CHECK(facts<boxed_error>([&] { return corner_cut(2_in, {.seam = "1/2"_in, .across = 0_in}); }) ==
          "too small: the allowance across a corner, given 0 in, least 0 in");
    CHECK(facts<boxed_error>([&] { return corner_stitched(0_in, "1/2"_in); }) ==
          "too small: the depth of a box, given 0 in, least 0 in");
    CHECK(facts<boxed_error>([&] { return corner_stitched(2_in, 0_in); }) ==
          "too small: the seam of a box, given 0 in, least 0 in");
    CHECK(facts<boxed_error>([&] { return boxed_panel(pad, 0_in); }) ==
          "too small: the seam of a box, given 0 in, least 0 in");
    CHECK(message<boxed_error>([] { return box_from_stitched(cut_size(3_in, 9_in), 2_in, "1/2"_in); }) ==
          "panels cut 3 x 9 in with corners that make a depth of 2 in and seams of 1/2 in do not make a box");
    CHECK(facts<boxed_error>([&] { return box_from_stitched(cut_size(9_in, 9_in), 0_in, "1/2"_in); }) ==
          "too small: the depth that the corners make, given 0 in");
    CHECK(facts<boxed_error>([&] { return box_from_stitched(cut_size(9_in, 9_in), 2_in, 0_in); }) ==
          "too small: the seam of a box, given 0 in, least 0 in");
    CHECK(facts<boxed_error>([&] {
              return box_from_cut(cut_size(9_in, 9_in), "1/4"_in, {.seam = "1/2"_in, .across = "1/8"_in});
          }) == "too small: the depth that the corners make, given -1/4 in");
    CHECK(facts<boxed_error>([&] {
              return box_from_cut(cut_size(9_in, 9_in), 1_in, {.seam = 0_in, .across = "1/8"_in});
          }) == "too small: the seam of a box, given 0 in, least 0 in");
    CHECK(facts<boxed_error>([&] {
              return box_from_cut(cut_size(9_in, 9_in), 1_in, {.seam = "1/2"_in, .across = 0_in});
          }) == "too small: the allowance across a corner, given 0 in, least 0 in");
    CHECK(message<boxed_error>([] { return edging(pad, "1/2"_in, 3); }) ==
          "the edging of a box is cut in 1 strip or in 4: it was 3");
    CHECK(facts<boxed_error>([&] { return edging(pad, 0_in, 1); }) ==
          "too small: the allowance of a box, given 0 in, least 0 in");
    CHECK(facts<boxed_error>([&] { return plate(pad, 0_in); }) ==
          "too small: the allowance of a box, given 0 in, least 0 in");
    CHECK(message<boxed_error>([] {
              return split_edging(pad, "1/2"_in, edging_zipper<inch>{60_in, "1/2"_in, {}});
          }) == "a zipper that shows 0 in in a part 60 in long must be less than the edging, 2 in by 50 in");
    CHECK(facts<boxed_error>([&] {
              return split_edging(pad, "1/2"_in, edging_zipper<inch>{12_in, "1/2"_in, 2_in});
          }) == "no room: what shows of a zipper, given 2 in, most 2 in");
    CHECK(facts<boxed_error>([&] {
              return split_edging(pad, 0_in, edging_zipper<inch>{12_in, "1/2"_in, {}});
          }) == "too small: the allowance of a box, given 0 in, least 0 in");
    CHECK(facts<boxed_error>([&] {
              return split_edging(pad, "1/2"_in, edging_zipper<inch>{0_in, "1/2"_in, {}});
          }) == "too small: the part of an edging with the zipper, given 0 in, least 0 in");
    CHECK(facts<boxed_error>([&] {
              return split_edging(pad, "1/2"_in, edging_zipper<inch>{12_in, 0_in, {}});
          }) == "too small: the allowance beside a zipper, given 0 in, least 0 in");
    CHECK(facts<boxed_error>([&] {
              return split_edging(pad, "1/2"_in, edging_zipper<inch>{12_in, "1/2"_in, "-1"_in});
          }) == "too small: what shows of a zipper, given -1 in, least 0 in");
    CHECK(message<boxed_error>([] {
              return box_from_plates(cut_size(13_in, 13_in), {.width = 4_in, .round = 47_in}, "1/2"_in);
          }) == "an edging 47 in round does not fit plates that are 48 in round");
    CHECK(facts<boxed_error>([&] {
              return box_from_plates(cut_size(1_in, 13_in), {.width = 4_in, .round = 48_in}, "1/2"_in);
          }) == "no room: the allowance of a box, given 1/2 in");
    CHECK(facts<boxed_error>([&] {
              return box_from_plates(cut_size(13_in, 1_in), {.width = 4_in, .round = 48_in}, "1/2"_in);
          }) == "no room: the allowance of a box, given 1/2 in");
    CHECK(facts<boxed_error>([&] {
              return box_from_plates(cut_size(13_in, 13_in), {.width = 1_in, .round = 48_in}, "1/2"_in);
          }) == "no room: the allowance of a box, given 1/2 in");
    CHECK(facts<boxed_error>([&] {
              return box_from_plates(cut_size(13_in, 13_in), {.width = 4_in, .round = 48_in}, 0_in);
          }) == "too small: the allowance of a box, given 0 in, least 0 in");
    CHECK(facts<boxed_error>([&] {
              return boxed_bag<inch>({0_in, 1_in, 1_in}, {.seam = 1_in, .top = 1_in});
          }) == "too small: the width of a box, given 0 in, least 0 in");
    CHECK(facts<boxed_error>([&] {
              return boxed_bag<inch>({1_in, 0_in, 1_in}, {.seam = 1_in, .top = 1_in});
          }) == "too small: the height of a box, given 0 in, least 0 in");
    CHECK(facts<boxed_error>([&] {
              return boxed_bag<inch>({1_in, 1_in, 0_in}, {.seam = 1_in, .top = 1_in});
          }) == "too small: the depth of a box, given 0 in, least 0 in");
    CHECK(facts<boxed_error>([&] {
              return boxed_bag<inch>({1_in, 1_in, 1_in}, {.seam = 0_in, .top = 1_in});
          }) == "too small: the seam of a box, given 0 in, least 0 in");
    CHECK(facts<boxed_error>([&] {
              return boxed_bag<inch>({1_in, 1_in, 1_in}, {.seam = 1_in, .top = "-1"_in});
          }) == "too small: the allowance of a bag's top edge, given -1 in, least 0 in");
    CHECK(facts<boxed_error>([&] { return filling_for(pad, {.around = 9_in, .in_depth = {}}); }) ==
          "too small: the height of a box, given 0 in, least 0 in");
    CHECK(message<boxed_error>([] {
              return wadding_layers(2_in, 1_in, {3, 2});
          }) == "what wadding keeps of its loft must be at most 1: it was 1 1/2");
    CHECK(facts<boxed_error>([&] { return wadding_layers(2_in, 1_in, 0); }) ==
          "too small: what wadding keeps of its loft, given 0, least 0");
    CHECK(facts<boxed_error>([&] { return wadding_layers(2_in, 0_in, 1); }) ==
          "too small: the loft of wadding, given 0 in, least 0 in");
    CHECK(facts<boxed_error>([&] { return wadding_layers(0_in, 1_in, 1); }) ==
          "too small: the depth to fill, given 0 in, least 0 in");
}
