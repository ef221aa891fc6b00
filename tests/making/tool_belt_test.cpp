// A tool belt: a back with a row of divided pockets, and a folded strap across it, boxed and crossed at both its ends.
#include "../vectors.hpp"
#include "making/left_out.hpp"
#include "making/outcome.hpp"
#include "making/sentences.hpp"
#include <turncloth/making/laying_on.hpp>
#include <turncloth/making/straps.hpp>
#include <turncloth/making/work_words.hpp>
#include <turncloth/measure/read.hpp>

#include <doctest/doctest.h>

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <string>
#include <vector>

using namespace things;

namespace {

finished_size<inch> size(length<inch> w, length<inch> h) { return {w, h}; }

/// 4 pockets of 19 / 4 in, in a back of 20 x 9 in; a strap of 60 x 1 1/2 in.
compartment<inch> belt_pockets(cut_part back, cut_part pockets, mouth_handle top) {
    return {.name = "pocket",
            .between = {back, pockets},
            .from_left = "3 5/8"_in,
            .from_top = 6_in,
            .mouths = {top},
            .least_width = "4 5/8"_in,
            .least_height = "5 7/8"_in,
            .count = 4,
            .step = "4 3/4"_in};
}

making<inch> belt_by_shorthands() {
    making<inch> d("tool belt");
    d.lips("1/4"_in);
    const auto hem = double_turned_hem("1/4"_in, "1/2"_in, "1/8"_in);
    const auto turned = single_turned_hem("1/2"_in);
    const auto back = cut_for(d, "back", panel<inch>(size(20_in, 9_in), all_round(hem)));
    const auto pockets = cut_for(d, "pockets", panel<inch>(size(19_in, 6_in), {hem, turned, turned, turned}));
    finish_edges(d, back);
    for (const edge e : {edge::left, edge::right, edge::bottom})
        fold_edge(d, pockets, e);
    finish_edge(d, pockets, edge::top);
    lay_on(d, pockets, back, at<finished_edge>("1/2"_in), at<finished_edge>("2 1/2"_in));
    sew_on(d, pockets, back, {edge::left, edge::right, edge::bottom}, "1/8"_in);
    sew_divisions(d, pockets, back, edge::left, divided<finished_edge>(19_in, 4));
    const mouth_handle top =
        d.add(mouth<inch>{.name = "top", .at = {pockets.line(edge::top, place<finished_edge, inch>())}});
    d.add(belt_pockets(back, pockets, top));
    const auto strap = fold_strap<inch>(
        d, {.name = "strap", .finished = size(60_in, "1 1/2"_in), .turned = "1/2"_in, .inset = "1/8"_in});
    lay_strap(d, strap, back, -20_in, "1/2"_in);
    sew_box<inch>(d, strap, back, {.begins = "20 5/8"_in, .ends = "21 5/8"_in, .in = "1/4"_in});
    sew_box<inch>(d, strap, back, {.begins = "38 3/8"_in, .ends = "39 3/8"_in, .in = "1/4"_in});
    return d;
}

chalk_line<inch> line(cut_part p, edge e, length<inch> in) { return {.on = p, .from = e, .in = at<cut_edge>(in)}; }
chalk_line<inch> span(cut_part p, edge e, length<inch> in, length<inch> begins, length<inch> ends) {
    return {.on = p, .from = e, .in = at<cut_edge>(in), .begins = begins, .ends = ends};
}

/// All cut sizes and lines by hand: hems take 3/4 in, the pockets' other edges 1/2, and the strap 1/2 at its ends.
class belt_by_hand {
public:
    making<inch> make() {
        d_.lips("1/4"_in);
        hem_back();
        make_pockets();
        make_strap();
        return std::move(d_);
    }

private:
    operation fold(cut_part p, edge e, length<inch> in) { return d_.add(crease<inch>{.at = line(p, e, in)}); }
    void sew(const chalk_line<inch>& l, std::vector<cut_part> through) {
        d_.add(stitching<inch>{.along = l, .through = std::move(through)});
    }
    void hem(cut_part p, edge e) {
        fold(p, e, "1/4"_in);
        fold(p, e, "3/4"_in);
        sew(line(p, e, "1 1/8"_in), {p});
    }
    void hem_back() {
        for (const edge e : {edge::left, edge::right, edge::top, edge::bottom})
            hem(back_, e);
    }
    void make_pockets() {
        for (const edge e : {edge::left, edge::right, edge::bottom})
            fold(pockets_, e, "1/2"_in);
        hem(pockets_, edge::top);
        d_.add(laying<inch>{.piece = pockets_, .on = back_, .left = "3/4"_in, .top = "2 1/2"_in});
        for (const edge e : {edge::left, edge::right, edge::bottom})
            sew(line(pockets_, e, "5/8"_in), {pockets_, back_});
        stitching<inch> divisions{.along = line(pockets_, edge::left, "5 1/4"_in), .through = {pockets_, back_}};
        divisions.each = row<cut_edge, inch>(at<cut_edge>("5 1/4"_in), "4 3/4"_in, 3);
        d_.add(divisions);
        const mouth_handle top = d_.add(mouth<inch>{.name = "top", .at = {line(pockets_, edge::top, "3/4"_in)}});
        d_.add(belt_pockets(back_, pockets_, top));
    }
    void make_strap() {
        const cut_part strap = d_.cut({.name = "strap", .width = 61_in, .height = 6_in});
        const std::vector<operation> ends{fold(strap, edge::left, "1/2"_in), fold(strap, edge::right, "1/2"_in)},
            edges{fold(strap, edge::top, "1 1/2"_in), fold(strap, edge::bottom, "1 1/2"_in)};
        for (const operation& end : ends)
            for (const operation& e : edges)
                d_.add(before{end, e});
        const operation folded = fold(strap, edge::top, 3_in);
        for (const operation& e : edges) // or a raw edge would lie in sight beneath
            d_.add(before{e, folded});
        sew(line(strap, edge::top, "3 1/8"_in), {});
        sew(line(strap, edge::top, "4 3/8"_in), {});
        for (const edge e : {edge::left, edge::right})
            d_.add(before{folded, d_.add(stitching<inch>{.along = span(strap, e, "5/8"_in, "3 1/8"_in, "4 3/8"_in)})});
        d_.add(laying<inch>{.piece = strap, .on = back_, .left = "-19 3/4"_in, .top = "-1 3/4"_in});
        for (const length<inch>& from : {"21 1/8"_in, "38 7/8"_in}) {
            sew(span(strap, edge::top, "3 1/4"_in, from, from + 1_in), {strap, back_});
            sew(span(strap, edge::top, "4 1/4"_in, from, from + 1_in), {strap, back_});
            sew(span(strap, edge::left, from, "3 1/4"_in, "4 1/4"_in), {strap, back_});
            sew(span(strap, edge::left, from + 1_in, "3 1/4"_in, "4 1/4"_in), {strap, back_});
            d_.add(spot<inch>{.what = spot_kind::cross,
                              .along = line(strap, edge::top, "3 3/4"_in),
                              .places = row<cut_edge, inch>(at<cut_edge>(from + "1/2"_in), 0_in, 1),
                              .through = {strap, back_},
                              .width = 1_in,
                              .height = 1_in});
        }
    }

    making<inch> d_{"tool belt"};
    cut_part back_ = d_.cut({.name = "back", .width = "21 1/2"_in, .height = "10 1/2"_in});
    cut_part pockets_ = d_.cut({.name = "pockets", .width = 20_in, .height = "7 1/4"_in});
};

} // namespace

TEST_CASE("a tool belt built by shorthands is the tool belt built from the operations alone") {
    const making<inch> d = belt_by_shorthands();
    for (const making_fault& f : execute(d).faults)
        FAIL_CHECK(f.sentence);
    CHECK(execute(d).raw_edges.empty());
    CHECK(outcome_of(d) == outcome_of(belt_by_hand().make()));
}

// By hand. Hems take 3/4 in: the back is sewn along its long edges first, 21 1/2 long, then along its sides, 9. The strap
// is cut 4 x 1 1/2 wide and 1/2 longer at each end; it lies fourfold, eightfold where its ends are turned in. It begins 20 in
// beyond the back; boxes of 1 in lie 5/8 in inside the back's edges, clear of the hems, through its four layers and one.
TEST_CASE("a tool belt's steps can be followed, and every row of it is counted") {
    const making<inch> d = belt_by_shorthands();
    const auto all = sentences(d);
    const auto place = [&](const std::string& sentence) {
        const auto found = std::find(all.begin(), all.end(), sentence);
        CHECK_MESSAGE(found != all.end(), sentence);
        return found;
    };
    const auto ends =
        place("With the wrong side of the strap up, turn the left and right edges over by 1/2 in, and press.");
    const auto rows =
        place("Sew 2 rows through the strap, 1/8 and 1 3/8 in from the folded top edge of the strap, from edge "
              "to edge of the strap: each 60 in long, through 4 to 8 layers.");
    const auto laid =
        place("Lay the strap, right side up, on the right side of the back, its folded left edge 20 in beyond "
              "the folded left edge of the back and its folded top edge 1/2 in from the folded top edge of "
              "the back.");
    const auto cross =
        place("Sew a cross on the strap from corner to corner of a box 1 in wide and 1 in high, its middle "
              "3/4 in from the folded top edge of the strap and 21 1/8 in from the folded left edge of the "
              "strap, through 5 layers.");
    CHECK(ends < rows);
    CHECK(rows < laid);
    CHECK(laid < cross);
    std::vector<std::string> runs;
    for (const auto& r : stitched_in(work_plan_of(d)).runs)
        runs.push_back(std::to_string(r.count) + " x " + to_text(r.sewn));
    std::sort(runs.begin(), runs.end());
    // The diagonal of 1 in is 1.41421, so 1 7/16 among the sixteenths.
    CHECK(runs == std::vector<std::string>{"2 x 1 1/4 in", "2 x 19 in", "2 x 21 1/2 in", "2 x 60 in", "2 x 9 in",
                                           "4 x 1 7/16 in", "5 x 6 in", "8 x 1 in"});
}

TEST_CASE("a tool belt is found out without any one row of its pockets") {
    const making<inch> d = belt_by_shorthands();
    int left_out = 0;
    for (std::size_t i = 0; i < d.rows().size(); ++i) {
        const auto& r = d.rows()[i];
        if (r.through.size() < 2 || d.parts()[r.along.on.index].name != "pockets")
            continue;
        for (std::int64_t k = 0; k < std::max<std::int64_t>(1, r.each.size()); ++k, ++left_out) {
            const auto faults = execute(without_row(d, i, k)).faults;
            CHECK_MESSAGE(
                std::any_of(faults.begin(), faults.end(),
                            [](const making_fault& f) { return f.sentence.rfind("the compartment \"pocket", 0) == 0; }),
                i);
        }
    }
    CHECK(left_out == 6);
}

TEST_CASE("a strap that cannot be folded or sewn so is refused") {
    making<inch> d;
    const auto fold = [&](const length<inch>& turned, const length<inch>& inset) {
        fold_strap<inch>(d, {.name = "strap", .finished = size(10_in, 1_in), .turned = turned, .inset = inset});
    };
    CHECK_THROWS_AS(fold(0_in, "1/8"_in), size_error);
    CHECK_THROWS_AS(fold("1/2"_in, 0_in), size_error);
    try {
        fold("1/2"_in, "1/2"_in);
        FAIL("it was folded");
    } catch (const making_error& refused) {
        CHECK(std::string(refused.what()) == "the rows of a strap 1 in wide are to lie 1/2 in inside its edges");
        CHECK(refused.facts().kind == fault::too_large);
    }
}
