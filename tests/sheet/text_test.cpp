// sheet/text.hpp: a sheet is written whole, in the units of a ruler.
#include <turncloth.hpp>

#include <doctest/doctest.h>

#include <string>

using namespace turncloth;

namespace {

project<inch> pad() {
    project<inch> p("Kneeling pad cover", finished_size("15 1/2"_in, 9_in));
    auto& top = p.add({"top", "canvas",
                       panel(p.finished(), {seam("1/2"_in), seam("1/2"_in), double_turned_hem("1/4"_in, 1_in, "1/8"_in),
                                            seam("1/2"_in)})});
    top.mark("handle", edge::left, divided<finished_edge>("15 1/2"_in, 2)).count(2);
    p.add({"lining", "cotton", panel(p.finished())}).lies_inside(top);
    p.add(zipper<inch>{"top",
                       edge::top,
                       {at<finished_edge>(3_in)},
                       {14_in, 1_in, "1/2"_in},
                       "1/2"_in,
                       {},
                       zipper_supply<inch>::from_roll(90_in)});
    return p;
}

} // namespace

TEST_CASE("a sheet in both units") {
    // By hand: the cut width is 15 1/2 + 2 x 1/2 = 16 1/2 in = 41.91 cm; the height 9 + 1/2 + 1 1/4 = 10 3/4 in
    // = 27.305 cm, which lies 0.005 above 27.3. The hem is stitched at 1/4 + 2 x 1 - 1/8 = 2 1/8 in = 5.3975 cm. The
    // middle of the finished width, 7 3/4 in, is 8 1/4 in = 20.955 cm from the cut edge. The opening is 14 - 2 x 1 = 12
    // in = 30.48 cm; the tape 13 in = 33.02 cm; it begins (15 1/2 - 14)/2 + 1/2 + 1 = 2 1/4 in from the cut edge. The
    // roll keeps 90 - 2 x 13 = 64 in.
    CHECK(to_text(sheet_of(pad())) == R"(Kneeling pad cover
finishes 15 1/2 x 9 in (39.4 x 22.9 cm)
Figures are rounded to 1/16 in and 0.1 cm, each from the exact length; workings are exact.

Cut
  "top", 2 of canvas: 16 1/2 x 10 3/4 in (41.9 x 27.3 cm)
      width: 16 1/2 in = 15 1/2 in finished + 2 x 1/2 in seam allowance
      height: 10 3/4 in = 9 in finished + 1/2 in seam allowance + (1/4 + 1) in double-turned hem
  lining, 1 of cotton: 15 1/2 x 9 in (39.4 x 22.9 cm)

Fold, stitch and mark: distances are from the cut edge named
  "top"
      top, left and right edges, seam allowance: stitch at 1/2 in (1.3 cm)
      bottom edge, double-turned hem: fold at 1/4 in (0.6 cm), 1 1/4 in (3.2 cm); stitch at 2 1/8 in (5.4 cm)
      left edge, mark handle: 8 1/4 in (21 cm)
          8 1/4 in = 1/2 in seam allowance + 7 3/4 in from the finished edge
      top edge, stitch zipper: 3 1/4 in (8.3 cm), from 1 3/4 in (4.4 cm) to 14 3/4 in (37.5 cm) off the cut left edge
          3 1/4 in = 1/2 in seam allowance + 2 3/4 in from the finished edge
      top edge, stitch zipper: 3 3/4 in (9.5 cm), from 1 3/4 in (4.4 cm) to 14 3/4 in (37.5 cm) off the cut left edge
          3 3/4 in = 1/2 in seam allowance + 3 1/4 in from the finished edge
      top edge, slit behind the zipper: 3 1/2 in (8.9 cm), from 2 1/4 in (5.7 cm) to 14 1/4 in (36.2 cm) off the cut left edge
          3 1/2 in = 1/2 in seam allowance + 3 in from the finished edge

For the zipper on the "top"
  openings: 2
  each opening: 12 in (30.5 cm)
      12 in = 14 in across - 2 x 1 in margin
  tape to cut from the roll, each, bar-tacked at both ends first: 13 in (33 cm)
      13 in = 12 in opening + 2 x 1/2 in beyond it
  sliders: 2
  rolls: 1
  length of a roll: 90 in (228.6 cm)
  left on the last roll: 64 in (162.6 cm)

In this order
  Edges are named as seen from the right side. Where the wrong side lies up and the top edge is away from you, a left edge is at your right.
  1. Cut every piece, and mark it while it is flat: folds, stitching and marks.
  2. Sew the zipper to each "top", then open the slit behind it.
  3. Lay the lining, right side up, on the wrong side of each "top", its cut right edge 1/2 in (1.3 cm) from the cut left edge of each "top" and its cut top edge 1/2 in (1.3 cm) from the cut top edge of each "top".
  4. With the wrong side of each "top" up, turn the bottom edge over by 1/4 in (0.6 cm), and press.
     Turn the folded bottom edge over by 1 in (2.5 cm), and press.
     Stitch 7/8 in (2.2 cm) from the folded edge: a row of 16 1/2 in (41.9 cm), through 3 to 4 layers.
     Check each "top": 16 1/2 x 9 1/2 in (41.9 x 24.1 cm).
  5. Sew the remaining seams of each "top".

Safety
  - cutting: Cut away from the hand that holds the rule, close a rotary cutter's guard at every pause, and follow its maker's instructions.
  - pinning: Count pins and needles before and after: one that is left in the work wounds. Put none into film, where every hole stays; clip it.
  - pressing: An iron and its steam burn: stand it on its heel, keep the other hand out of the steam, and never leave it on where children or animals are.
  - stitching: Many layers break a light needle, and its pieces fly: use a needle and a machine meant for them, turn the handwheel by hand over the thickest, and wear eye protection.
  - zippers: Turn the handwheel by hand where stitching crosses a zipper or meets metal: a needle that strikes it breaks and flies. Wear eye protection.
  - zippers: Teeth that are cut off fly: wear eye protection. A tape end that is melted to seal it burns: let it cool before you touch it, and keep out of its fumes.
  - in use: Sliders, eyelets and other small parts choke toddlers: see that none can come off, and keep the thing from children under three (USA: 16 CFR 1501).
  Local codes, the makers' instructions and licensed practice go before this sheet.
)");
}

TEST_CASE("the units and the graduation are the ruler's") {
    const auto s = sheet_of(pad());
    const std::string metric =
        to_text(s, {.shows = units_shown::centimetres, .centimetres = length_of<centimetre>({1, 2})});
    CHECK(metric.find("finishes 39.5 x 23 cm\n") != std::string::npos); // 39.37 and 22.86 cm, to the half
    CHECK(metric.find("Figures are rounded to 0.5 cm, each") != std::string::npos);
    CHECK(metric.find(" in (") == std::string::npos);
    const std::string inches = to_text(s, inch_ruler(4));
    CHECK(inches.find("stitch at 2 in\n") != std::string::npos); // 2 1/8 in is halfway; the even quarter below it is 2
    CHECK(inches.find(" cm") == std::string::npos);
    CHECK_THROWS_AS(to_text(s, {.inches = length<inch>()}), range_error);
}

TEST_CASE("warnings and meetings have a place of their own") {
    project<inch> p("hanging", finished_size(13_in, 35_in));
    p.add({"film", "film", panel(finished_size(13_in, 50_in))}).of_film();
    auto& backing = p.add({"backing", "canvas", panel(p.finished(), all_round(single_turned_hem(1_in)))});
    backing.mark("low", edge::top, at<cut_edge>("1/2"_in));
    p.add(meeting<inch>{"film", "backing", edge::top, 50_in, 35_in, 5});
    const std::string text = to_text(sheet_of(p), inch_ruler(16));
    CHECK(text.find("\nCheck\n  - the mark \"low\" of backing, 1/2 in from the cut top edge, lies in") !=
          std::string::npos);
    CHECK(text.find("\nWhere the film meets the backing: distances are from the finished top edge\n"
                    "  10 in of film meets 7 in of backing\n  20 in of film meets 14 in of backing\n") !=
          std::string::npos);
    CHECK(text.find("\n  fullness 1 3/7 (about 1.43), extra in each span: 3 in\n") != std::string::npos);
    CHECK(text.find("every edge, single-turned hem: fold at 1 in; stitch at 2 in\n") != std::string::npos);
}

TEST_CASE("no name makes a line of its own, or drives a terminal") {
    const std::string bad = "x\n  outer, 1 of gold: 5 x 5 in\r\x1B[2J\xE9";
    project<inch> p(bad, finished_size(9_in, 6_in));
    auto& back = p.add({"outer", bad + "cloth", panel(p.finished(), all_round(seam("1/2"_in)))});
    back.mark(bad, edge::left, at<finished_edge>(3_in));
    p.add({"lining", "cotton", panel(p.finished())}).lies_inside(back);
    p.add(notion<inch>(bad).number(bad, 2));
    p.prepare(bad).caution(bad, caution::work::cutting);
    auto named = p;
    named.add({bad, "cotton", panel(p.finished())});
    try {
        static_cast<void>(sheet_of(named));
        FAIL("a piece of that name is refused");
    } catch (const error& refused) {
        CHECK(std::string(refused.what()).find("the name of a piece is one line of plain text: \"x   outer") !=
              std::string::npos);
    }
    auto plain = sheet_of(p);
    plain.warnings.push_back(bad);
    const std::string text = to_text(plain);
    for (std::size_t at = 0, end = 0; at < text.size(); at = end + 1) {
        end = text.find('\n', at);
        const std::string line = text.substr(at, end - at);
        CHECK_MESSAGE(!unfit_at(line), line);
        CHECK(line.find("  outer, 1 of gold") != 0);
    }
}
