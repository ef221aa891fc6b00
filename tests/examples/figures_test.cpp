// The figures that the program prints, each worked out by hand from the project's own measures, which its headers list.
#include "program.hpp"

#include <doctest/doctest.h>

TEST_CASE("The organiser's figures are those worked out by hand") {
    const scratch dir;
    const outcome o = dir.run("--project organiser --size '27 x 28 in' --units inches");
    REQUIRE(o.status == 0);
    // Columns: 27 / (3 1/4 + 3/4) = 6.75, so 6. From the heading's stitching (2 1/2 - 1/8 below the finished top) to
    // 3/4 + 1/4 above the finished foot are 28 - 2 3/8 - 1 = 24 5/8; / (4 3/4 + 3/4) = 4.5 and less, so 4 rows.
    CHECK(o.says("Seed-packet organiser, 4 x 6 pockets"));
    // 27 + 2 x (3/8 + 3/4) and 28 + (1/2 + 2 1/2) + (3/8 + 3/4).
    CHECK(o.says("backing, canvas: 29 1/4 x 32 1/8 in"));
    // 24 5/8 / 4 = 6 5/32, down to quarters 6. Stitched at 1/2 + 2 x 2 1/2 - 1/8 = 5 3/8, so 6 further each time.
    CHECK(o.says("heading: fold at 1/2 in, 3 in; stitch at 5 3/8 in"));
    for (const char* row : {"11 3/8 in\n", "17 3/8 in\n", "23 3/8 in\n", "29 3/8 in\n"})
        CHECK(o.says(std::string("top, mark foot of a film strip: ") + row));
    CHECK_FALSE(o.says("foot of a film strip: 35 3/8 in"));
    // 27 + 6 x 7/8 = 32 1/4, and 1/2 turned at both ends; 4 3/4 - 1 = 3 3/4, with 1/2 turned and 3/8 sewn.
    CHECK(o.says("4 film strip, clear film: 33 1/4 x 4 5/8 in"));
    // 27 / 6 = 4 1/2 and 32 1/4 / 6 = 5 3/8; the fourth: 18 and 21 1/2.
    CHECK(o.says("5 3/8 in of film strip meets 4 1/2 in of backing"));
    CHECK(o.says("21 1/2 in of film strip meets 18 in of backing"));
}

TEST_CASE("The tool roll's figures are those worked out by hand") {
    const scratch dir;
    const outcome o = dir.run("--project tool-roll --size '29 x 21 in' --units inches");
    REQUIRE(o.status == 0);
    // The turn of cloth: pi x (1/8 + 1/32) / 2 = 0.2454, up to sixteenths 1/4. 29 + 2 x (5/8 + 5/8 + 1/4), 21 + the
    // same.
    CHECK(o.says("outer, canvas: 32 x 24 in"));
    CHECK(o.says("lining, lining cloth: 29 x 21 in"));
    // Folded at 5/8 and in the middle of the turn, 5/8 + 5/8 + 1/8; stitched at 5/8 + 2 x 5/8 + 1/4 - 1/8.
    CHECK(o.says("self-binding: fold at 5/8 in, 1 3/8 in; stitch at 2 in"));
    // Half of 21 is 10 1/2, with 3/8 + 5/8 turned.
    CHECK(o.says("tool pockets, canvas: 29 x 11 1/2 in"));
    // 29 - 2 x 5/8 = 27 3/4; / 2 3/4 = 10.09, so 10 pockets of 2.775 in: marks at 0.625 + 2.775 k, which are 3.4, 6.175
    // and at last 25.6 in: 54.4, 98.8 and 409.6 sixteenths.
    CHECK(o.says("Hand-tool roll, 10 tool pockets"));
    for (const char* mark : {"3 3/8 in\n", "6 3/16 in\n", "25 5/8 in\n"})
        CHECK(o.says(std::string("left, mark between two tools: ") + mark));
    // A quarter of 21 is 5 1/4; rows of stitching 1/4 above and below, from 5/8 + 7/8 - 5/8 in to as far from the
    // right.
    CHECK(o.says("top, mark quarter fold: 5 1/4 in"));
    CHECK(o.says("top, stitch zipper: 5 in, from 7/8 in to 28 1/8 in off the cut left edge"));
    CHECK(o.says("top, stitch zipper: 5 1/2 in, from"));
    // The zipper near the top: 1 3/4 - 1/4.
    CHECK(o.says("top, stitch zipper: 1 1/2 in, from"));
    // 27 3/4 - 2 x 7/8 = 26; + 2 x 5/8 = 27 1/4; 180 - 2 x 27 1/4 = 125 1/2.
    CHECK(o.says("each opening: 26 in"));
    CHECK(o.says("tape to cut from the roll, each, bar-tacked at both ends first: 27 1/4 in"));
    CHECK(o.says("left on the last roll: 125 1/2 in"));
}

TEST_CASE("The kneeling pad's figures are those worked out by hand") {
    const scratch dir;
    const outcome o = dir.run("--project kneeling-pad --size '17 1/2 x 10 1/2 in' --units inches");
    REQUIRE(o.status == 0);
    // 17 1/2 + 2 x 1/2 and 10 1/2 + 2 x 1/2.
    CHECK(o.says("1 top, canvas: 18 1/2 x 11 1/2 in"));
    // Half of 10 1/2 is 5 1/4, + 3/4 beside the zipper + 1/2.
    CHECK(o.says("2 base half, canvas: 18 1/2 x 6 1/2 in"));
    // Round the pad 2 x (17 1/2 + 10 1/2) = 56 and 1 in of seams: more than 54, so two of 28 + 1; 1 3/4 + 1 high.
    CHECK(o.says("2 boxing strip, canvas, joined at two opposite corners: 29 x 2 3/4 in"));
    CHECK(o.says("left, mark corner: 18 in\n"));
    CHECK_FALSE(o.says("left, mark corner: 28 1/2 in")); // the end of the strip, where it is joined
    // 17 1/2 - 2 x 1 1/2 = 14 1/2: the next sold is 16. A new stop there, and 3/4 of tape below it.
    CHECK(o.says("opening: 14 1/2 in"));
    CHECK(o.says("made-up length to buy, each: 16 in"));
    CHECK(o.says("new stop, from the top stop: 14 1/2 in"));
    CHECK(o.says("cut through the tape, from the top stop: 15 1/4 in"));
}

TEST_CASE("A boxing strip that the cloth holds is cut in one, and marked at the three corners that it turns") {
    const scratch dir;
    const outcome o = dir.run("--project kneeling-pad --size '16 x 9 in' --units inches");
    // 2 x (16 + 9) + 1 = 51. Corners after 16, 25 and 41, each 1/2 in further from the cut edge.
    CHECK(o.says("1 boxing strip, canvas, joined at a corner: 51 x 2 3/4 in"));
    for (const char* mark : {"16 1/2 in\n", "25 1/2 in\n", "41 1/2 in\n"})
        CHECK(o.says(std::string("left, mark corner: ") + mark));
}

TEST_CASE("The metric edition uses round metric allowances, not converted ones") {
    const scratch dir;
    const outcome pad = dir.run("--project kneeling-pad --size '44 x 27 cm' --units centimetres");
    REQUIRE(pad.status == 0);
    // 44 + 2 x 1.5 and 27 + 2 x 1.5; half of 27 is 13.5, + 2 + 1.5. Half inches would give 46.54 x 29.54.
    CHECK(pad.says("1 top, canvas: 47 x 30 cm"));
    CHECK(pad.says("2 base half, canvas: 47 x 17 cm"));
    // 142 + 3 is more than 140: two of 71 + 3; 4.5 + 3 high. 44 - 2 x 4 = 36: the next sold is 40; cut 2 cm on.
    CHECK(pad.says("2 boxing strip, canvas, joined at two opposite corners: 74 x 7.5 cm"));
    CHECK(pad.says("made-up length to buy, each: 40 cm"));
    CHECK(pad.says("cut through the tape, from the top stop: 38 cm"));

    const outcome hanging = dir.run("--project organiser --size '70 x 72 cm' --units centimetres");
    // 70 / (8.5 + 1.5) = 7. 72 - (6 - 0.3) - (2 + 0.5) = 63.8; / (12 + 2) = 4.56, so 4; 15.95, down to halves 15.5.
    CHECK(hanging.says("Seed-packet organiser, 4 x 7 pockets"));
    CHECK(hanging.says("backing, canvas: 76 x 82.5 cm"));                // 70 + 2 x 3; 72 + 1.5 + 6 + 3
    CHECK(hanging.says("top, mark foot of a film strip: 28.7 cm"));      // 1.5 + 12 - 0.3 = 13.2; + 15.5
    CHECK(hanging.says("12 cm of film strip meets 10 cm of backing\n")); // 70 / 7, + 2

    const outcome roll = dir.run("--project tool-roll --size '75 x 54 cm' --units centimetres");
    // pi x (0.3 + 0.08) / 2 = 0.597, up to 0.6. 75 + 2 x (1.5 + 1.5 + 0.6); 72 - 2 x 2 = 68, + 3.
    CHECK(roll.says("outer, canvas: 82.2 x 61.2 cm"));
    CHECK(roll.says("each opening: 68 cm"));
    CHECK(roll.says("bar-tacked at both ends first: 71 cm"));
}

TEST_CASE("A wide pad opens as far as the longest zipper sold") {
    const scratch dir;
    const outcome o = dir.run("--project kneeling-pad --size '48 x 12 in' --units inches");
    // (48 - 36) / 2 = 6 in stay closed at each end, marked 1/2 in further from the cut edge.
    CHECK(o.says("opening: 36 in"));
    CHECK(o.says("left, mark end of the zipper's opening: 6 1/2 in"));
    CHECK(o.says("made-up length to buy, each: 36 in"));
    CHECK_FALSE(o.says("new stop"));
}

TEST_CASE("The thickness of the pad is the boxing strip's height") {
    const scratch dir;
    CHECK(dir.run("--project kneeling-pad --size 16x9 --thickness '2 1/4' --units inches").says("51 x 3 1/4 in"));
    CHECK(dir.run("--project kneeling-pad --size '40 x 25 cm' --thickness 6 --units centimetres").says("133 x 9 cm"));
    CHECK(
        dir.run("--project kneeling-pad --size '40 x 25 cm' --thickness 40mm --units centimetres").says("133 x 7 cm"));
}
