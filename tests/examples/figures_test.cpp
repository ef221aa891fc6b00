// The figures that the program prints, each worked out by hand from the project's own measures, which its headers list.
#include "program.hpp"

#include <doctest/doctest.h>

TEST_CASE("the organiser's figures are those worked out by hand") {
    const scratch dir;
    const run_result o = dir.run("--project organiser --size '27 x 28 in' --units inches");
    REQUIRE(o.status == 0);
    // Columns: 27 / (3 1/4 + 3/4) = 6.75, so 6. From the heading's stitching (2 1/2 - 1/8 below the finished top) to
    // 3/4 + 1/4 above the finished foot are 28 - 2 3/8 - 1 = 24 5/8; / (4 3/4 + 3/4) = 4.5 and less, so 4 rows.
    CHECK(o.says("Seed-packet organiser, 4 x 6 pockets"));
    // 27 + 2 x (3/8 + 3/4) and 28 + (1/2 + 2 1/2) + (3/8 + 3/4).
    CHECK(o.says("backing, 1 of canvas: 29 1/4 x 32 1/8 in"));
    // 24 5/8 / 4 = 6 5/32, down to quarters 6. Stitched at 1/2 + 2 x 2 1/2 - 1/8 = 5 3/8, so 6 further each time.
    CHECK(o.says("heading: fold at 1/2 in, 3 in; stitch at 5 3/8 in"));
    for (const char* row : {"11 3/8 in\n", "17 3/8 in\n", "23 3/8 in\n", "29 3/8 in\n"})
        CHECK(o.says(std::string("top edge, mark foot of a film strip: ") + row));
    CHECK_FALSE(o.says("foot of a film strip: 35 3/8 in"));
    // 27 + 6 x 7/8 = 32 1/4, and 1/2 turned at both ends; 4 3/4 - 1 = 3 3/4, with 1/2 turned and 3/8 sewn.
    CHECK(o.says("film strip, 4 of clear film: 33 1/4 x 4 5/8 in"));
    // 27 / 6 = 4 1/2 and 32 1/4 / 6 = 5 3/8; the fourth: 18 and 21 1/2.
    CHECK(o.says("5 3/8 in of film strip meets 4 1/2 in of backing"));
    CHECK(o.says("21 1/2 in of film strip meets 18 in of backing"));
    // Eyelets: rims of 3/4 in, 1 in from the edges, so the outer centres are 27 - 2 - 3/4 = 24 1/4 apart; at most 8 from
    // one to the next takes 4 steps of 6 1/16. The heading is stitched 2 3/8 below its fold.
    CHECK(o.says("eyelets: 5\n"));
    CHECK(o.says("centres, from the finished left edge: 1 3/8 in, 7 7/16 in, 13 1/2 in, 19 9/16 in, 25 5/8 in\n"));
    // 1 1/8 further from the cut edges at the sides, 3 from that of the heading.
    CHECK(o.says("eyelets, holes of 3/8 in with rims of 3/4 in: centres 4 3/16 in from the top edge, and from the left "
                 "edge 2 1/2 in, 8 9/16 in, 14 5/8 in, 20 11/16 in, 26 3/4 in\n"));
    CHECK(o.says("centres below the finished top edge: 1 3/16 in"));
    // 5 3/8 over 4 1/2: sin x / x = 36/43 at x = 1.01367, and (1 - cos x) / x x 2.6875 = 1.2498.
    CHECK(o.says("each stands open, in its middle, by: 1 1/4 in"));
    // 32 1/8 long, 29 1/4 of 53 wide; 34 1/8 with the ends, up to eighths of a yard, 4 1/2 each, 36. Four strips one
    // above the other are 4 x 4 5/8 = 18 1/2; upright they would be 33 1/4. 20 1/2 with the ends: 22 1/2.
    CHECK(o.says("36 in = 32 1/8 in laid + 2 x 1 in straightened ends + 1 7/8 in up to what is sold"));
    CHECK(o.says("22 1/2 in = 18 1/2 in laid + 2 x 1 in straightened ends + 2 in up to what is sold"));
}

TEST_CASE("the tool roll's figures are those worked out by hand") {
    const scratch dir;
    const run_result o = dir.run("--project tool-roll --size '29 x 21 in' --units inches");
    REQUIRE(o.status == 0);
    // The turn of cloth: pi x (1/8 + 1/32) / 2 = 0.2454, up to sixteenths 1/4. 29 + 2 x (5/8 + 5/8 + 1/4), 21 + the
    // same.
    CHECK(o.says("outer, 1 of canvas: 32 x 24 in"));
    CHECK(o.says("lining, 1 of lining cloth: 29 x 21 in"));
    // Folded at 5/8 and in the middle of the turn, 5/8 + 5/8 + 1/8; stitched at 5/8 + 2 x 5/8 + 1/4 - 1/8.
    CHECK(o.says("self-binding: fold at 5/8 in, 1 3/8 in; stitch at 2 in"));
    // Half of 21 is 10 1/2, with 3/8 + 5/8 turned.
    CHECK(o.says("tool pockets, 1 of canvas: 29 x 11 1/2 in"));
    // 29 - 2 x 5/8 = 27 3/4; / 2 3/4 = 10.09, so 10 pockets of 2.775 in: marks at 0.625 + 2.775 k, which are 3.4, 6.175
    // and at last 25.6 in: 54.4, 98.8 and 409.6 sixteenths.
    CHECK(o.says("Hand-tool roll, 10 tool pockets"));
    for (const char* mark : {"3 3/8 in\n", "6 3/16 in\n", "25 5/8 in\n"})
        CHECK(o.says(std::string("left edge, mark between two tools: ") + mark));
    // A quarter of 21 is 5 1/4; rows of stitching 1/4 above and below, from 5/8 + 7/8 - 5/8 in to as far from the
    // right.
    CHECK(o.says("top edge, mark quarter fold: 5 1/4 in"));
    CHECK(o.says("top edge, stitch zipper: 5 in, from 7/8 in to 28 1/8 in off the cut left edge"));
    CHECK(o.says("top edge, stitch zipper: 5 1/2 in, from"));
    // The zipper near the top: 1 3/4 - 1/4.
    CHECK(o.says("top edge, stitch zipper: 1 1/2 in, from"));
    // 27 3/4 - 2 x 7/8 = 26; + 2 x 5/8 = 27 1/4; 180 - 2 x 27 1/4 = 125 1/2.
    CHECK(o.says("each opening: 26 in"));
    CHECK(o.says("tape to cut from the roll, each, bar-tacked at both ends first: 27 1/4 in"));
    CHECK(o.says("left on the last roll: 125 1/2 in"));
    // Bound edges are the finished ones: 5/8 / 2 and 3 x 21 / 4 from them. Each row is the inset, 1/8, within the 5/8 that
    // are bound; the fold that makes them turns half of the turn of cloth besides, 1/4 / 2, which goes round the edge.
    CHECK(o.says("Sew the tie by its middle to the outer, 5/16 in from the folded left edge of the outer and 15 3/4 in "
                 "from the folded top edge of the outer"));
    CHECK(o.says("turn the folded left and right edges over by 3/4 in, and press. Of that, 1/8 in goes round the edge: "
                 "5/8 in of it lies flat."));
    CHECK(o.says("Stitch 1/2 in from each folded edge: rows of 29 in, through 6 to 13 layers."));
    CHECK(o.says("Check the outer: 29 x 21 in."));
    // The tie is sewn on half way up the half that shows: 21 / 4, and 5/8 + 5/8 + 1/4.
    CHECK(o.says("bottom edge, mark middle of the tie: 6 3/4 in, marked only along 2 in at the left edge"));
    // Rolled up double: 2 x (1/8 + 1/32) + 1/32 + 1/2 = 27/32 thick. 2 sqrt(pi x 29 x 27/32) = 17.535, up to eighths.
    CHECK(o.says("once round the roll: 17 5/8 in"));
    // And 4 x 2 1/4 + 2 x 4 + 1 + 1/2 + 2 x 1/4 = 19.
    CHECK(o.says("ribbon, cut: 36 5/8 in"));
    CHECK(o.says("width of the ribbon: 1 in"));
    CHECK(o.says("ribbon to buy, cut off the reel: 40 1/2 in")); // nine eighths of a yard, 4 1/2 each
    // Canvas: the outer, 32 x 24, with the pockets turned beside it, 11 1/2 x 29: 43 1/2 of 53 wide, 29 long. With the
    // ends 31, and 7 eighths of a yard are 31 1/2. The two of lining cloth take as much; the wadding is 21 and 2 ends.
    CHECK(o.says("31 1/2 in = 29 in laid + 2 x 1 in straightened ends + 1/2 in up to what is sold"));
    CHECK(o.says("27 in = 21 in laid + 2 x 1 in straightened ends + 4 in up to what is sold"));
}

TEST_CASE("the kneeling pad's figures are those worked out by hand") {
    const scratch dir;
    const run_result o = dir.run("--project kneeling-pad --size '17 1/2 x 10 1/2 in' --units inches");
    REQUIRE(o.status == 0);
    // 17 1/2 + 2 x 1/2 and 10 1/2 + 2 x 1/2.
    CHECK(o.says("top panel, 1 of canvas: 18 1/2 x 11 1/2 in"));
    // Half of 10 1/2 is 5 1/4, + 3/4 beside the zipper + 1/2.
    CHECK(o.says("base half, 2 of canvas: 18 1/2 x 6 1/2 in"));
    // Round the pad 2 x (17 1/2 + 10 1/2) = 56 and 1 in of seams: more than 53, so four; 1 3/4 + 1 high.
    CHECK(o.says("long side of the edging, 2 of canvas: 18 1/2 x 2 3/4 in"));
    CHECK(o.says("short side of the edging, 2 of canvas: 11 1/2 x 2 3/4 in"));
    CHECK_FALSE(o.says("mark corner"));
    // 17 1/2 - 2 x 1 1/2 = 14 1/2: the next sold is 16. A new stop there, and 5/8 of tape below it.
    CHECK(o.says("opening: 14 1/2 in"));
    CHECK(o.says("made-up length to buy, each: 16 in"));
    CHECK(o.says("new stop, from the top stop: 14 1/2 in"));
    CHECK(o.says("cut through the tape, from the top stop: 15 1/8 in"));
    // The foam is 1/4 larger than the cover. Knelt on, a layer of 1/2 is 3/8 thick: 1 3/4 takes 4 2/3 of them.
    CHECK(o.says("foam, width: 17 3/4 in"));
    CHECK(o.says("foam, height: 10 3/4 in"));
    CHECK(o.says("foam, thickness: 1 3/4 in"));
    CHECK(o.says("or instead, layers of wadding of that size: 5\n"));
}

TEST_CASE("thread is that of every row, a seam shared by two pieces once") {
    const scratch dir;
    const run_result o = dir.run("--project kneeling-pad --size '16 x 9 in' --units inches");
    // Between the halves 1 1/2 + 1/2 at each end of the zipper; beside it, right across both halves, 17 each; across the
    // tape's ends 2 x 1/4 each; six rows of 2 x 1 that stay the edging's corners; its ends, 1 3/4; round the base and
    // round the top 2 x (16 + 9). In all 4 + 34 + 1 + 12 + 1 3/4 + 100, and 15 rows sewn back over 1/2 at both ends.
    CHECK(o.says("rows of stitching, with their ends: 167 3/4 in"));
    CHECK(o.says("thread, with waste: 524 1/4 in")); // x 5/2 x 5/4 = 524.21875
    // Nothing can lie beside the edging, 51 of 53 wide: 2 3/4, and the top's 10, with the base halves beside it.
    CHECK(o.says("18 in = 12 3/4 in laid + 2 x 1 in straightened ends + 3 1/4 in up to what is sold"));
}

TEST_CASE("an edging that the cloth holds is cut in one, and marked at the three corners that it turns") {
    const scratch dir;
    const run_result o = dir.run("--project kneeling-pad --size '16 x 9 in' --units inches");
    // 2 x (16 + 9) + 1 = 51. Corners after 16, 25 and 41, each 1/2 in further from the cut edge.
    CHECK(o.says("edging, 1 of canvas: 51 x 2 3/4 in"));
    for (const char* mark : {"16 1/2 in", "25 1/2 in", "41 1/2 in"})
        CHECK(o.says(std::string("left edge, mark corner: ") + mark +
                     ", marked only along 1/2 in at the top edge and along 1/2 in at the bottom edge\n"));
}

TEST_CASE("the metric edition uses round metric allowances, not converted ones") {
    const scratch dir;
    const run_result pad = dir.run("--project kneeling-pad --size '44 x 27 cm' --units centimetres");
    REQUIRE(pad.status == 0);
    // 44 + 2 x 1.5 and 27 + 2 x 1.5; half of 27 is 13.5, + 2 + 1.5. Half inches would give 46.54 x 29.54.
    CHECK(pad.says("top panel, 1 of canvas: 47 x 30 cm"));
    CHECK(pad.says("base half, 2 of canvas: 47 x 17 cm"));
    // 142 + 3 is more than 138: two of 44 + 3, two of 27 + 3; 4.5 + 3 high. 44 - 2 x 4 = 36: the next sold is 40.
    CHECK(pad.says("long side of the edging, 2 of canvas: 47 x 7.5 cm"));
    CHECK(pad.says("short side of the edging, 2 of canvas: 30 x 7.5 cm"));
    CHECK(pad.says("made-up length to buy, each: 40 cm"));
    CHECK(pad.says("cut through the tape, from the top stop: 37.5 cm"));

    const run_result hanging = dir.run("--project organiser --size '70 x 72 cm' --units centimetres");
    // 70 / (8.5 + 1.5) = 7. 72 - (6 - 0.3) - (2 + 0.5) = 63.8; / (12 + 2) = 4.56, so 4; 15.95, down to halves 15.5.
    CHECK(hanging.says("Seed-packet organiser, 4 x 7 pockets"));
    CHECK(hanging.says("backing, 1 of canvas: 76 x 82.5 cm"));           // 70 + 2 x 3; 72 + 1.5 + 6 + 3
    CHECK(hanging.says("top edge, mark foot of a film strip: 28.7 cm")); // 1.5 + 12 - 0.3 = 13.2; + 15.5
    CHECK(hanging.says("12 cm of film strip meets 10 cm of backing\n")); // 70 / 7, + 2
    // 70 - 2 x 3 - 1.8 = 62.2 takes 4 steps of at most 20, each 15.55, from 3.9 on: 19.45 and 50.55 go toward the middle.
    CHECK(hanging.says("centres, from the finished left edge: 3.9 cm, 19.5 cm, 35 cm, 50.5 cm, 66.1 cm\n"));
    CHECK(hanging.says("each stands open, in its middle, by: 2.8 cm")); // sin x / x = 10/12 at x = 1.0262: 2.819
    CHECK(hanging.says("90 cm = 82.5 cm laid + 2 x 2.5 cm straightened ends + 2.5 cm up to what is sold"));

    const run_result roll = dir.run("--project tool-roll --size '75 x 54 cm' --units centimetres");
    // pi x (0.3 + 0.08) / 2 = 0.597, up to 0.6. 75 + 2 x (1.5 + 1.5 + 0.6); 72 - 2 x 2 = 68, + 3.
    CHECK(roll.says("outer, 1 of canvas: 82.2 x 61.2 cm"));
    CHECK(roll.says("each opening: 68 cm"));
    CHECK(roll.says("bar-tacked at both ends first: 71 cm"));
    // 2 x (0.3 + 0.08) + 0.08 + 1.2 = 2.04; 2 sqrt(pi x 75 x 2.04) = 43.85, up to halves; + 4 x 6 + 2 x 10 + 2.5 + 1 + 1.2.
    CHECK(roll.says("once round the roll: 44 cm"));
    CHECK(roll.says("ribbon, cut: 92.7 cm"));
}

TEST_CASE("a wide pad opens as far as the longest zipper sold") {
    const scratch dir;
    const run_result o = dir.run("--project kneeling-pad --size '48 x 12 in' --units inches");
    // (48 - 36) / 2 = 6 in stay closed at each end, marked 1/2 in further from the cut edge.
    CHECK(o.says("opening: 36 in"));
    CHECK(o.says("left edge, mark end of the zipper's opening: 6 1/2 in"));
    CHECK(o.says("made-up length to buy, each: 36 in"));
    CHECK_FALSE(o.says("new stop"));
}

TEST_CASE("the thickness of the pad is the edging's height") {
    const scratch dir;
    CHECK(dir.run("--project kneeling-pad --size 16x9 --thickness '2 1/4' --units inches").says("51 x 3 1/4 in"));
    CHECK(dir.run("--project kneeling-pad --size '40 x 25 cm' --thickness 6 --units centimetres").says("133 x 9 cm"));
    CHECK(
        dir.run("--project kneeling-pad --size '40 x 25 cm' --thickness 40mm --units centimetres").says("133 x 7 cm"));
}

TEST_CASE("the width of the cloth decides how much is bought and how the edging is cut") {
    const scratch dir;
    // 44 in usable: the edging of 51 in is cut in four, 17 and 10 long.
    const run_result narrow = dir.run("--project kneeling-pad --size '16 x 9 in' --cloth-width 45 --units inches");
    CHECK(narrow.says("width of the cloth: 45 in"));
    CHECK(narrow.says("usable width: 44 in"));
    CHECK(narrow.says("long side of the edging, 2 of canvas: 17 x 2 3/4 in"));
    // 60 in usable of 61: the edging for 2 x (18 + 11 1/2) + 1.
    CHECK(dir.run("--project kneeling-pad --size '18 x 11 1/2 in' --cloth-width 61 --units inches")
              .says("edging, 1 of canvas: 60 x 2 3/4 in"));
    CHECK(dir.run("--project kneeling-pad --size '18 x 11 1/2 in' --cloth-width '60 15/16' --units inches")
              .says("long side of the edging, 2 of canvas: 19 x 2 3/4 in"));
    // A unit of its own: 1.5 m are 150 cm.
    CHECK(dir.run("--project kneeling-pad --size '40 x 25 cm' --cloth-width 1.5m --units centimetres")
              .says("usable width: 148 cm"));
}

TEST_CASE("cloth on hand is cut before any is bought") {
    const scratch dir;
    // The outer, cut 32 x 24 in, comes off the canvas on hand; the tool pockets, 29 x 11 1/2 in, off the roll: with 1 in to
    // straighten either end 13 1/2 in, which is 3 eighths of a yard.
    const run_result o =
        dir.run("--project tool-roll --size '29 x 21 in' --units inches --on-hand 'canvas: 40 x 30 in' "
                "--on-hand 'felt: 20 x 20 cm'");
    CHECK(o.status == 0);
    CHECK(o.says("For the canvas, 40 x 30 in"));
    CHECK(o.says("length to buy: 13 1/2 in"));
    CHECK(o.says("No piece is cut from the felt on hand"));
}

TEST_CASE("cloth on hand is laid round its flaws") {
    const scratch dir;
    // The outer, cut 32 x 24 in, goes on 40 x 30 in, but not beside a hole of 9 in at either side of the 24 in of its length
    // that the hole leaves of no end.
    const std::string flawed = "--project tool-roll --size '29 x 21 in' --units inches --on-hand 'canvas: 40 x 30 in; ";
    const run_result beside = dir.run(flawed + "2 x 2 in at 38 x 0 in'"),
                     middle = dir.run(flawed + "2 x 2 in at 20 x 14 in'");
    CHECK(beside.status == 0);
    CHECK(beside.says("For the canvas, 40 x 30 in"));
    CHECK(beside.says("length laid: 24 in"));
    CHECK(beside.says("length to buy: 13 1/2 in"));
    // With the hole in the middle the outer is bought: 24 in, with 1 in at either end 26 in, which is 6 eighths of a yard. The
    // tool pockets, 29 x 11 1/2 in, go before the hole.
    CHECK(middle.status == 0);
    CHECK(middle.says("length laid: 11 1/2 in"));
    CHECK(middle.says("length to buy: 27 in"));
}

TEST_CASE("what is wider than the cloth is made up of parts, and film that is too wide is said to be") {
    const scratch dir;
    const run_result o = dir.run("--project organiser --size '60 x 30 in' --units inches");
    CHECK(o.status == 0);
    // 60 + 2 x (3/8 + 3/4) = 62 1/4; what hangs keeps its grain upright. With two joins of 1/2 in at each edge the sides are
    // (62 1/4 + 2 - 53) / 2.
    CHECK(o.says("For the canvas"));
    CHECK(o.says("parts that make up the backing: 3"));
    CHECK(o.says("backing (1), cut width: 5 5/8 in"));
    CHECK(o.says("backing (2), cut width: 53 in"));
    CHECK(o.says("2. Make up each backing of 3 parts"));
    // Of film alone, which takes no seam, the width of one cloth is another's no more.
    const run_result film =
        dir.run("--project organiser --size '20 x 24 in' --units inches --cloth-width 'clear film: 4 in'");
    CHECK(film.says("How much clear film to buy is left open: film strip is"));
    CHECK(film.says("width of the cloth: 54 in"));
    CHECK(dir.run("--project organiser --size '20 x 24 in' --cloth-width 'felt: 36 in'")
              .says("No piece is cut from the felt that a width is given for"));
}

TEST_CASE("a wide roll takes a longer ribbon, which is bought as it is cut off the reel") {
    const scratch dir;
    // 2 sqrt(pi x 120 x 27/32) = 35.67, up to eighths 35 3/4, and 19 as above; 13 eighths of a yard.
    const run_result o = dir.run("--project tool-roll --size '120 x 40 in' --units inches");
    CHECK(o.status == 0);
    CHECK(o.says("ribbon, cut: 54 3/4 in"));
    CHECK(o.says("ribbon to buy, cut off the reel: 58 1/2 in"));
}

TEST_CASE("stitching through more layers than the machine takes is said") {
    const scratch dir;
    // The outer's binding lies threefold, and nine-fold where two edges cross; wadding and two linings lie within, at the
    // foot the tool pockets too. The sides are sewn while the other edges are turned once, and go through the pockets'
    // threefold hem.
    const run_result at_corners = dir.run("--project tool-roll --most-layers 11");
    CHECK(at_corners.says(
        "rows of stitching on the outer go through more than the 11 layers that a machine is taken to "
        "sew, along the top edge (6 to 12 layers) and the bottom edge (6 to 13 layers): mitre the corners"));
    CHECK(dir.run("--project tool-roll --most-layers 5")
              .says("along the left and right edges (3 to 9 layers), the top edge"));
    CHECK(dir.run("--project tool-roll").says("more than the 8 layers that a machine is taken to sew"));
    CHECK_FALSE(dir.run("--project all --most-layers 13").says("\nCheck\n"));
}
