// A shop audits its workbook: each exported formula of examples/workbook against the library over a range of sizes. One
// of them is wrong on purpose, as a workbook's formulas are by accident, and must be caught with the working of the
// right figure: the hem's stitching is given from the finished edge's side of the first turn, one depth short.
#include "../../examples/workbook/tool_roll.hpp"
#include <turncloth.hpp>
#include <turncloth/testing/audit.hpp>

#include <doctest/doctest.h>

using namespace turncloth;
namespace wb = tool_roll_workbook;

namespace {

constexpr sizes<inch> usual = {6_in, 60_in, "1/16"_in};
constexpr length<inch> graduation = "1/64"_in;

/// A formula of the workbook as a function of one of its inputs.
auto of_width(double formula(const wb::inputs&)) {
    return [formula](double w) { return formula({.finished_width = w}); };
}
auto of_height(double formula(const wb::inputs&)) {
    return [formula](double h) { return formula({.finished_height = h}); };
}

constexpr auto binding = self_binding("3/8"_in);
constexpr auto pocket_hem = double_turned_hem("1/4"_in, "5/8"_in, "1/8"_in);
constexpr zipped_opening<inch> across(length<inch> width) { return {width, "7/8"_in, "5/8"_in}; }

} // namespace

TEST_CASE("the outer layer's cut size agrees at every usual size") {
    const auto width = audit(usual, graduation, of_width(wb::outer_cut_width), [](length<inch> w) {
        return panel(finished_size(w, 9_in), all_round(binding)).width_working();
    });
    CHECK_MESSAGE(width.agrees(), to_text(width));
    const auto height = audit(usual, graduation, of_height(wb::outer_cut_height), [](length<inch> h) {
        return panel(finished_size(9_in, h), all_round(binding)).height_working();
    });
    CHECK_MESSAGE(height.agrees(), to_text(height));
}

TEST_CASE("the pockets' cut height agrees") {
    const auto found = audit(usual, graduation, of_height(wb::pockets_cut_height), [](length<inch> h) {
        edges<inch> only_the_top;
        only_the_top.top = pocket_hem;
        return panel(finished_size(9_in, h / 2), only_the_top).height_working();
    });
    CHECK_MESSAGE(found.agrees(), to_text(found));
}

TEST_CASE("the marks between tools agree") {
    const auto found = audit(usual, graduation, of_width(wb::third_pocket_mark),
                             [](length<inch> w) { return divided<cut_edge>(w, 8)[2].from_datum(); });
    CHECK_MESSAGE(found.agrees(), to_text(found));
}

TEST_CASE("the zipper's opening, its tape and what is left of a roll agree") {
    const auto opens = audit(usual, graduation, of_width(wb::zipper_opening),
                             [](length<inch> w) { return opening_working(across(w)); });
    CHECK_MESSAGE(opens.agrees(), to_text(opens));
    const auto cut =
        audit(usual, graduation, of_width(wb::zipper_tape), [](length<inch> w) { return tape_working(across(w)); });
    CHECK_MESSAGE(cut.agrees(), to_text(cut));
    // As many as one roll gives, so that what is left is that of one full roll.
    const auto left = audit(usual, graduation, of_width(wb::left_on_the_roll), [](length<inch> w) {
        const auto one = from_roll(across(w), 1, 144_in);
        return from_roll(across(w), one.from_one_roll, 144_in).left;
    });
    CHECK_MESSAGE(left.agrees(), to_text(left));
}

TEST_CASE("the wrong formula is caught at the first size, with the right figure's working") {
    const auto found = audit(
        sizes<inch>{"1/4"_in, "5/8"_in, "1/16"_in}, graduation,
        [](double first) { return wb::hem_stitched_at({.hem_first_turn = first}); },
        [](length<inch> first) {
            return figure<inch>()
                .plus(first, "first turn")
                .plus_times(2, {"5/8"_in}, "depth")
                .plus_times(-1, {"1/8"_in}, "inset");
        });
    REQUIRE(found.first());
    CHECK(found.first()->at() == "1/4"_in);
    CHECK(to_text(found) == "7 of 7 cases part: at 1/4 in they say 0.75, but 1 3/8 in = 1/4 in first turn + 2 x 5/8 in "
                            "depth - 1/8 in inset");
    // The library's own finish says the same.
    CHECK(pocket_hem.stitching()[0].from_datum() == found.first()->ours.value());
}
