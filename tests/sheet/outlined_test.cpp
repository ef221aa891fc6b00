// Pieces that are no rectangles, as a project has them. Lengths and sizes are derived by hand: an arc over a chord of 8 in
// that rises by 4 in is half of a circle of 4 in, 4 pi in long; an edge inside a circle is never longer than its arc.
#include "../vectors.hpp"
#include <turncloth.hpp>
#include <turncloth/draw/outlined.hpp>
#include <turncloth/handout/handout.hpp>
#include <turncloth/page/html.hpp>
#include <turncloth/page/svg.hpp>
#include <turncloth/sheet/made_as.hpp>
#include <turncloth/sheet/making_of.hpp>
#include <turncloth/sheet/outlined.hpp>
#include <turncloth/sheet/purchases.hpp>

#include <doctest/doctest.h>
#include <refused.hpp>

#include <numbers>
#include <string>
#include <vector>

using namespace turncloth;

namespace {

using corners = std::vector<drafted_corner<inch>>;

/// 12 x 10 in, with a half circle of 4 in scooped out of its top, between shoulders of 2 in.
drafted_piece<inch> scooped() {
    const auto all = seam("1/2"_in);
    drafted_piece<inch> front{.name = "front", .material = "canvas", .count = 2};
    front.corners = {{0_in, 0_in, all},   {12_in, 0_in, all}, {12_in, 10_in, all},
                     {10_in, 10_in, all}, {2_in, 10_in, all}, {0_in, 10_in, all}};
    front.corners[0].notches = {6_in};
    front.corners[3].curve = hollow(4_in);
    return front;
}
project<inch> bag() {
    project<inch> p("Peg bag", finished_size(12_in, 10_in));
    p.add(outlined(scooped()));
    return p;
}
drafted_piece<inch> drafted_of(const corners& all) { return {.name = "pad", .material = "felt", .corners = all}; }

bool holds(const std::string& text, const std::string& part) { return text.find(part) != std::string::npos; }

} // namespace

TEST_CASE("an edge that is an arc has the length of its circle's part, and the piece its rectangles") {
    const outlined_piece<inch> p = outlined(scooped());
    REQUIRE(p.edges.size() == 6);
    CHECK(p.edges[2].size == 2_in);
    const double half_circle = 4 * std::numbers::pi, size = to_double(p.edges[3].size.value());
    CHECK(size <= half_circle + 1.0 / 2048);
    CHECK(size > half_circle * (1 - 1.0 / 500)); // edges within 0.1 mm of it turn by at most 0.09 each
    CHECK(p.edges[3].count > 20);
    CHECK(p.edges[4].first == p.edges[3].first + p.edges[3].count);
    CHECK(p.cut == cut_size(13_in, 11_in));
    CHECK(p.finished == finished_size(12_in, 10_in));
    CHECK_FALSE(p.edges[3].trimmed);
    // Either way round it is the same piece.
    drafted_piece<inch> other = scooped();
    other.corners = {{0_in, 0_in}, {0_in, 10_in}, {2_in, 10_in}, {10_in, 10_in}, {12_in, 10_in}, {12_in, 0_in}};
    other.corners[2].curve = hollow(4_in);
    const outlined_piece<inch> mirrored = outlined(other);
    CHECK(mirrored.edges[2].size == p.edges[3].size);
    CHECK(mirrored.cut == cut_size(12_in, 10_in)); // raw
}

TEST_CASE("two arcs make a round piece, and a cubic curve stays between its ends and pulls") {
    drafted_piece<inch> round = drafted_of({{0_in, 0_in}, {8_in, 0_in}});
    round.corners[0].curve = round.corners[1].curve = rounded(4_in);
    CHECK(outlined(round).finished == finished_size(8_in, 8_in));
    // At its middle a cubic curve lies at (p + 3 q + 3 r + s) / 8: here 3/4 of the pulls' height beyond.
    drafted_piece<inch> bulged = drafted_of({{0_in, 0_in}, {8_in, 0_in}, {8_in, 4_in}, {0_in, 4_in}});
    bulged.corners[2].curve = {curve_kind::cubic, {}, {8_in, 8_in}, {0_in, 8_in}};
    CHECK(outlined(bulged).finished == finished_size(8_in, 7_in));
}

TEST_CASE("the rectangle of a piece has its grain along the height, whichever way that was drafted") {
    drafted_piece<inch> strap = drafted_of({{0_in, 0_in}, {6_in, 0_in}, {6_in, 2_in}, {0_in, 2_in}});
    CHECK(outlined(strap).cut == cut_size(6_in, 2_in));
    strap.grain = {{{1_in, 1_in}, {5_in, 1_in}}};
    CHECK(outlined(strap).cut == cut_size(2_in, 6_in));
}

TEST_CASE("what cannot be drafted is refused by its corner") {
    drafted_piece<inch> p = scooped();
    p.corners[4].notches = {3_in};
    CHECK(refused::facts<outline_error>([&] { static_cast<void>(outlined(p)); }) ==
          "too large: a notch, given 3, least 0, most 2, index 4");
    p = scooped();
    p.corners[3].curve = hollow(0_in);
    CHECK(refused::message<outline_error>([&] { static_cast<void>(outlined(p)); }) ==
          "front: the rise of a curve must be more than zero: it was 0 in");
    const auto refused_for = [](const drafted_piece<inch>& piece) {
        return refused::facts<outline_error>([&] { static_cast<void>(outlined(piece)); });
    };
    CHECK(refused_for(drafted_of({{0_in, 0_in}, {9_in, 9_in}, {9_in, 0_in}, {0_in, 9_in}})) ==
          "disagree: a seam line, index 0");
    CHECK(refused_for(drafted_of({{0_in, 0_in}})) == "too small: the number of corners of a piece, given 1, least 2");
    p = scooped();
    p.corners[1].across = 0_in;
    CHECK(refused_for(p) == "unsuitable: an edge of an outline, given 0, index 0");
    p.count = 0;
    CHECK(refused_for(p) == "too small: the number of front to cut, given 0, least 1, most 100000");
}

TEST_CASE("a sheet cuts, buys for and draws an outline as it does a rectangle") {
    project<inch> p = bag();
    p.add(piece<inch>("sleeve", "canvas", {12_in, 2_in}, all_round(seam("1/2"_in))));
    const sheet<inch> s = sheet_of(p);
    const std::string text = to_text(s, inch_ruler(16));
    CHECK(holds(text, "  front, 2 of canvas: as drawn, within 13 x 11 in\n"));
    CHECK(holds(
        text, "      edge 3, 2 in: seam allowance, 1/2 in; stitch at 1/2 in\n      edge 4, hollow, 12 9/16 in: seam"));
    CHECK(holds(text, "          notch at 6 in\n"));
    CHECK(s.warnings.empty());
    // Both, 13 in wide, lie beside each other on 27 in; the sleeve, 13 x 3 in, below: 11 + 3 in.
    const auto canvas = cloth_for<inch>(s, "canvas", {.width = 27_in}, {.sold = {1_in}});
    CHECK(canvas.lay.length == 14_in);
    CHECK(canvas.on_sheet == std::vector<std::size_t>{0, 1});
    const std::string handout = to_html(handout_of(s, {canvas}, {.by = inch_ruler(16)}));
    for (const char* part : {">front<", "within 13\u00A0x\u00A011\u00A0in", "B: front, to be drawn and cut",
                             "Edges of B: front", "hollow, 12\u00A09/16\u00A0in"})
        CHECK_MESSAGE(holds(handout, part), part);
    const std::string drawn = to_svg(page_of(s.outlines[0], inch_ruler(16)));
    CHECK(holds(drawn, "4: 12 9/16 in along its curve, seam allowance, 1/2 in"));
    CHECK(holds(drawn, "notch on edge 1, 6 in from its corner with edge 6"));
    CHECK_FALSE(holds(drawn, "7: "));
}

TEST_CASE("a piece is turned on the cloth only where it says so") {
    drafted_piece<inch> wide = drafted_of({{0_in, 0_in}, {30_in, 0_in}, {30_in, 8_in}, {0_in, 8_in}});
    const auto laid = [&] {
        project<inch> p("Pad", finished_size(30_in, 8_in));
        p.add(outlined(wide));
        return cloth_for<inch>(sheet_of(p), "felt", {.width = 10_in}, {.sold = {1_in}}, {.lies = grain::may_turn});
    };
    CHECK(refused::facts<piece_too_wide_error>([&] { static_cast<void>(laid()); }).starts_with("no room"));
    wide.may_turn = true;
    CHECK(laid().lay.length == 30_in);
}

TEST_CASE("a sheet says where allowances overlap, which hems to turn, and refuses a name that stands twice") {
    drafted_piece<inch> slot = drafted_of({{0_in, 0_in},
                                           {12_in, 0_in},
                                           {12_in, 8_in},
                                           {7_in, 8_in},
                                           {7_in, 4_in},
                                           {6_in, 4_in},
                                           {6_in, 8_in},
                                           {0_in, 8_in}});
    for (drafted_corner<inch>& c : slot.corners)
        c.edge = seam("5/8"_in); // twice that is more than the slot's width of 1 in
    slot.corners[0].edge = single_turned_hem(1_in);
    project<inch> p("Pad", finished_size(12_in, 8_in));
    p.add(outlined(slot));
    const sheet<inch> s = sheet_of(p);
    REQUIRE(s.warnings.size() == 1);
    CHECK(s.warnings[0] == "the allowances of pad overlap: its cut line is trimmed on edges 4, 5, 6 and 7");
    CHECK(holds(to_text(s), "Turn and stitch edge 1 of pad, single-turned hem, as drawn."));
    p.add(outlined(slot));
    CHECK(refused::facts<sheet_error>([&] { static_cast<void>(sheet_of(p)); }) ==
          "repeated: the name of a piece, where pad");
    CHECK(p == p);
    CHECK_FALSE(p == bag());
}

// A row on the flat piece runs on over the allowance beside it to the cut edge, as those of a panel do. By hand, of what is
// scooped: 12 + 2 x 1/2 = 13, 11, 2 + 2 x 1/2 = 3, 4 pi + 2 x 1/2, 3 and 11 in. A round of 8 in with a hem of 1 in whose row
// lies 1/8 in from its inner edge: 4 - 7/8 in from its middle all the way, 2 pi x 3 1/8 in, half of it to each arc.
TEST_CASE("a row along an outline is as long as the shape is where it runs") {
    const auto near = [](const length<inch>& l, double exact) { // edges stand for a curve within 0.1 mm
        const double sewn = to_double(l.value());
        return sewn <= exact + 1.0 / 2048 && sewn > exact * (1 - 1.0 / 500);
    };
    const outlined_piece<inch> p = outlined(scooped());
    const std::vector<length<inch>> straight = {13_in, 11_in, 3_in, {}, 3_in, 11_in};
    for (std::size_t i = 0; i < 6; ++i) {
        REQUIRE(p.edges[i].sewn.size() == 1);
        CHECK((i == 3 ? near(p.edges[i].sewn[0], 4 * std::numbers::pi + 1) : p.edges[i].sewn[0] == straight[i]));
    }
    drafted_piece<inch> round = drafted_of({{0_in, 0_in}, {8_in, 0_in}});
    CHECK(outlined(drafted_of({{0_in, 0_in}, {8_in, 0_in}, {0_in, 8_in}})).edges[1].sewn.empty()); // raw
    for (drafted_corner<inch>& c : round.corners) {
        c.curve = rounded(4_in);
        c.edge = single_turned_hem(1_in, "1/8"_in);
    }
    for (const outlined_edge<inch>& e : outlined(round).edges) {
        REQUIRE(e.sewn.size() == 1);
        CHECK(near(e.sewn[0], std::numbers::pi * 3.125));
    }
}

// Two fronts as above, each edge half of a seam, are 13 + 11 + 3 + 3 + 11 in and 4 pi + 1 in; with 1/2 in over at both ends of
// six rows. A sleeve whose rows are 13, 13, 3 and 3 in meets them; a strap of 9 x 1 in beside that leaves halves over.
TEST_CASE("thread holds the rows of an outline, half of each seam, and names what meets no edge as long") {
    project<inch> p = bag();
    p.add(piece<inch>("sleeve", "canvas", {12_in, 2_in}, all_round(seam("1/2"_in))));
    p.add(sewing<inch>{stitch(301), "1/2"_in, 0, 500_in});
    const sheet<inch> s = sheet_of(p);
    CHECK(s.warnings.empty());
    REQUIRE(s.notions.size() == 1);
    const double sewn = to_double(s.notions[0].details()[0].amount.value().value());
    const double exact = 41 + 4 * std::numbers::pi + 1 + 6 + (13 + 13 + 3 + 3) / 2 + 2;
    CHECK(sewn <= exact + 1.0 / 1024);
    CHECK(sewn > exact - 4 * std::numbers::pi / 500);

    drafted_piece<inch> strap = drafted_of({{0_in, 0_in}, {9_in, 0_in}, {9_in, 1_in}, {0_in, 1_in}});
    strap.corners[0].edge = seam("1/2"_in); // its row is 9 in long, as the other edges are raw
    p.add(outlined(strap));
    const std::vector<std::string> warnings = sheet_of(p).warnings;
    REQUIRE(warnings.size() == 1);
    CHECK(warnings[0] == "the thread holds half a row for edge 1 of pad, which joins no other edge of its length");
}

// A mat, with a pad cut to an outline whose one edge is hemmed: the making holds none of that.
TEST_CASE("what the making leaves out of a piece that is cut to an outline is said") {
    drafted_piece<inch> pad = drafted_of({{0_in, 0_in}, {12_in, 0_in}, {8_in, 8_in}});
    project<inch> p("Mat", finished_size(12_in, 8_in));
    p.add(piece<inch>("mat", "felt", panel<inch>(p.finished(), all_round(single_turned_hem("1/2"_in, "1/8"_in)))))
        .does_not_fray();
    p.add(sewing<inch>{stitch(301), {}, 0, 500_in});
    const std::string turn = "Turn and stitch edge 1 of pad, single-turned hem, as drawn.",
                      proof = "the making holds no piece that is cut to an outline: what joins pad to the rest, and "
                              "what holds the edges there, is not proved";
    const auto with = [&](bool hemmed, bool made) {
        project<inch> q = p;
        drafted_piece<inch> own = pad;
        if (hemmed)
            own.corners[0].edge = single_turned_hem(1_in);
        q.add(outlined(own));
        return sheet_of(made ? q.made_as(making_of(q).design) : q);
    };
    using warnings = std::vector<std::string>;
    CHECK(with(false, false).warnings == warnings{});
    CHECK(with(false, true).warnings == warnings{proof});
    CHECK(with(true, false).warnings == warnings{});
    CHECK(with(true, true).warnings == warnings{proof});
    for (const bool made : {false, true}) {
        CHECK(holds(to_text(with(true, made)), turn));
        CHECK_FALSE(holds(to_text(with(false, made)), turn));
    }
    p.made_as(making_of(p).design);
    CHECK(sheet_of(p).warnings == warnings{});
}
