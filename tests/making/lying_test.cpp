// How work lies after each step, against states derived by hand and against the folding of a single panel.
#include "making/things.hpp"
#include <turncloth/making/lying.hpp>
#include <turncloth/panel/made_up.hpp>

#include <doctest/doctest.h>

using namespace things;

namespace {

bool shows(const in_sight& seen, cut_part of, face side) { return seen.of == of && seen.side == side; }

} // namespace

// By hand. A mat 12 x 9 in, right side up. Step 1 turns 1 in of its left edge under: 11 x 9 in; along the fold 1 in is two
// layers, and from below that strip shows its right side, the rest the wrong side. Step 2 sews and moves nothing. Step 3
// turns 1 in of the right edge over: 10 x 9 in, and from above that strip shows the wrong side.
TEST_CASE("a mat hemmed under on its left and over on its right") {
    making<inch> d("mat");
    const cut_part top = d.cut({.name = "mat", .width = 12_in, .height = 9_in});
    d.add(crease<inch>{.at = things::line(top, edge::left, 1_in)});
    d.add(sewn(top, edge::left, "1 7/8"_in, {top}));
    d.add(crease<inch>{.at = things::line(top, edge::right, 1_in), .over = true});
    d.add(sewn(top, edge::right, "1 7/8"_in, {top}));
    const auto steps = steps_of(d);
    REQUIRE(steps.size() == 4);
    const auto flat = lying_after(d, steps, 0, top), one = lying_after(d, steps, 1, top),
               two = lying_after(d, steps, 2, top), three = lying_after(d, steps, 3, top);
    CHECK(flat.width == 12_in);
    CHECK(flat.most_layers == 1);
    CHECK(one.width == 11_in);
    CHECK(one.height == 9_in);
    CHECK(one.covered(2) == 1_in * 9_in);
    REQUIRE(one.patches.size() == 2);
    CHECK(shows(one.patches[0].below, top, face::right));
    CHECK(shows(one.patches[0].above, top, face::right));
    CHECK(shows(one.patches[1].below, top, face::wrong));
    CHECK(two.covered() == one.covered());
    CHECK(three.width == 10_in);
    CHECK(shows(three.patches.back().above, top, face::wrong));
    CHECK_THROWS_AS(lying_after(d, steps, 1, cut_part{4}), making_error);
}

TEST_CASE("the roll finishes as it was asked, its lining and tools framed by the binding") {
    const tool_roll roll(true);
    const auto steps = steps_of(roll.design);
    const auto made = lying_after(roll.design, steps, steps.size(), roll.outer);
    CHECK(made.width == 20_in);
    CHECK(made.height == 16_in);
    CHECK(made.covered() == 20_in * 16_in);
    for (const auto& p : made.patches)
        CHECK(shows(p.below, roll.outer, face::right)); // the outer lies wrong side up, and goes all round
    CHECK(shows(made.patches.front().above, roll.outer, face::right));
}

// The engine of panel/folding.hpp folds one panel by its finishes: the same layers must lie over as much.
TEST_CASE("a panel hemmed all round has the layers of its own folding") {
    const finished_size<inch> size(20_in, 15_in);
    const panel<inch> piece(size, all_round(double_turned_hem("1/2"_in, 1_in)));
    making<inch> d("panel");
    const cut_part p = d.cut({.name = "panel", .width = piece.cut().width(), .height = piece.cut().height()});
    for (const edge e : {edge::top, edge::bottom, edge::left, edge::right})
        for (const auto& fold : piece.finish_of(e).folds())
            d.add(crease<inch>{.at = {.on = p, .from = e, .in = fold}});
    const auto steps = steps_of(d);
    const auto made = lying_after(d, steps, steps.size(), p);
    const auto folded = fold_panel(piece, all_corners(stacked<inch>()));
    CHECK(made.width == 20_in);
    CHECK(made.height == 15_in);
    CHECK(made.most_layers == folded.stack().most_layers().layers);
    area<inch> cloth;
    for (const auto& patch : made.patches)
        cloth += (patch.right - patch.left) * (patch.lower[0] - patch.upper[0]) * fraction(patch.layers);
    CHECK(cloth == piece.cut().width() * piece.cut().height());
}
