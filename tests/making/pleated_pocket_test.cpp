// Pleats folded in the hand: two pockets side by side, wider than their places until they are folded, against plies, rows and insides
// worked out by hand; the order of what is folded, laid and sewn; and bar-tacks, whose thread is counted by their stitches.
#include "making/in_order.hpp"
#include "making/things.hpp"
#include "refused.hpp"
#include <turncloth/making/lying.hpp>
#include <turncloth/making/stitched.hpp>
#include <turncloth/making/work_plan.hpp>

#include <doctest/doctest.h>

#include <array>
#include <string>

using namespace things;

namespace {

// Each pocket is 6 in wide and 5 in high, with folds of 1 in, 3/4 in clear of its sides: cut 10 in wide. Their sides lie 3 and 9 1/2 in
// from the left of the back, their mouths 2 in from its top; unfolded the first would reach from 1 to 11 in, and over the second.
struct two_pockets {
    making<inch> d{"apron"};
    cut_part back, pockets;
    std::array<operation, 2> laid{}, hem{}, sides{}, foot{}, bars{};
    std::array<std::array<operation, 4>, 2> pleats{};

    explicit two_pockets(bool in_hand, std::int64_t stitches = 28) {
        const cloth<inch> felt{.name = "felt", .frays = false};
        back = d.cut({.name = "back", .cloth = felt, .width = 18_in, .height = 8_in});
        pockets = d.cut({.name = "pocket", .cloth = felt, .width = 10_in, .height = 5_in, .count = 2});
        for (std::int64_t k = 0; k < 2; ++k)
            add(k, k == 0 ? 3_in : "9 1/2"_in, in_hand, stitches);
    }

private:
    void add(std::int64_t k, length<inch> side, bool in_hand, std::int64_t stitches) {
        const auto i = static_cast<std::size_t>(k);
        const cut_part p = pockets[k];
        laid[i] = d.add(laying<inch>{.piece = p, .on = back, .left = side - 2_in, .top = 2_in});
        hem[i] = d.add(sewn(p, edge::top, "1/4"_in, {p})); // across its pleats, and through it alone
        for (std::size_t e = 0; e < 2; ++e) {
            const edge from = e == 0 ? edge::left : edge::right;
            pleats[i][2 * e] = d.add(crease<inch>{.at = things::line(p, from, "2 3/4"_in)});
            pleats[i][2 * e + 1] = d.add(crease<inch>{.at = things::line(p, from, "1 3/4"_in)});
            d.add(before{pleats[i][2 * e], pleats[i][2 * e + 1], "a pleat goes back, and then forward"});
            for (std::size_t fold = 0; in_hand && fold < 2; ++fold)
                d.add(before{pleats[i][2 * e + fold], laid[i], "it is folded in the hand"});
        }
        chalk_line<inch> down = things::line(back, edge::left, 0_in),
                         across = things::line(back, edge::bottom, "1 1/8"_in);
        down.begins = 2_in, down.ends = "6 7/8"_in;
        across.begins = side + "1/8"_in, across.ends = side + "5 7/8"_in;
        sides[i] = d.add(stitching<inch>{
            .along = down, .through = {p, back}, .each = {at<cut_edge>(side + "1/8"_in), "5 3/4"_in, 2}});
        foot[i] = d.add(stitching<inch>{.along = across, .through = {p, back}});
        bars[i] = d.add(spot<inch>{.what = spot_kind::bar_tack,
                                   .along = things::line(back, edge::top, "2 1/4"_in),
                                   .places = {at<cut_edge>(side + "3/8"_in), "5 1/4"_in, 2},
                                   .through = {p, back},
                                   .width = "1/8"_in,
                                   .height = "1/2"_in,
                                   .stitches = stitches});
        const mouth_handle top =
            d.add(mouth<inch>{.name = "mouth " + std::to_string(k + 1), .at = {things::line(p, edge::top, 0_in)}});
        d.add(compartment<inch>{.name = "pocket " + std::to_string(k + 1),
                                .between = {back, p},
                                .from_left = side + 3_in,
                                .from_top = 4_in,
                                .mouths = {top},
                                .least_width = "5 3/4"_in,
                                .least_height = "4 7/8"_in});
    }
};

} // namespace

TEST_CASE("pleats folded in the hand are plies of the pocket that is laid, beside one that they would cover unfolded") {
    const two_pockets made(true);
    const auto found = execute(made.d);
    for (const making_fault& f : found.faults)
        CHECK_MESSAGE(f.sentence.empty(), f.sentence);
    // Over each fold lie three thicknesses of the pocket: 1 x 5 in at either side; over the rest of it one.
    const auto lies = lying_after(made.d, found.steps, found.steps.size(), made.back);
    CHECK(lies.width == 18_in);
    CHECK(lies.covered(4) == 4_in * 5_in);
    CHECK(lies.covered(2) == 8_in * 5_in);
    CHECK(lies.covered(1) == 18_in * 8_in - 12_in * 5_in);
    // The sides are sewn clear of the pleats, the foot through them.
    for (const auto& r : found.rows) {
        if (r.what == made.sides[0] || r.what == made.sides[1]) {
            CHECK((r.least == 2 && r.most == 2));
            CHECK(r.sewn == "4 7/8"_in);
        }
        if (r.what == made.foot[0] || r.what == made.foot[1]) {
            CHECK((r.least == 2 && r.most == 4));
            CHECK(r.sewn == "5 3/4"_in);
        }
    }
    REQUIRE(found.spaces.size() == 2);
    CHECK(found.spaces[0].hollow != found.spaces[1].hollow);
    for (const auto& s : found.spaces) {
        REQUIRE(s.openings.size() == 1);
        CHECK(s.openings[0].wide == "5 3/4"_in);
        CHECK(s.tallest == "4 7/8"_in);
    }
}

TEST_CASE(
    "a pocket is hemmed across its pleats, then folded, laid and sewn; folded where it lies it cannot be ordered") {
    const two_pockets made(true);
    const things::order steps(made.d);
    for (std::size_t i = 0; i < 2; ++i)
        for (std::size_t e = 0; e < 2; ++e)
            for (const operation& row : {made.sides[i], made.foot[i], made.bars[i]})
                CHECK(steps.comes({made.hem[i], made.pleats[i][2 * e], made.pleats[i][2 * e + 1], made.laid[i], row}));
    CHECK_THROWS_AS(steps_of(two_pockets(false).d), making_error);
}

TEST_CASE("a bar-tack's thread is counted by its stitches, and one without a size is refused") {
    const auto sewn_in = [](std::int64_t stitches) {
        return stitched_in(work_plan_of(two_pockets(true, stitches).d)).by_machine();
    };
    // Four bars: 28 x 1/8 and 1/2, the root of 12 1/2, up to a sixteenth. Where nothing is said of their stitches none is counted.
    CHECK(sewn_in(28) - sewn_in(0) == "3 9/16"_in * 4);
    making<inch> d("mat");
    const cut_part mat = d.cut({.name = "mat", .width = 4_in, .height = 4_in});
    d.add(spot<inch>{
        .along = things::line(mat, edge::top, 1_in), .places = {at<cut_edge>(1_in), 1_in, 1}, .stitches = 28});
    CHECK(refused::message<making_error>([&] { steps_of(d); }) ==
          "a bar-tack has a width, a height and 1 to 1000 stitches: it had 28");
}
