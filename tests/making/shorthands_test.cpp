// What a designer names expands into the public operations: the same things built both ways come out the same.
#include "at_random.hpp"
#include "making/outcome.hpp"
#include "making/things.hpp"
#include <turncloth/making/fastenings.hpp>
#include <turncloth/making/laying_on.hpp>
#include <turncloth/making/lying.hpp>
#include <turncloth/making/strip_pockets.hpp>
#include <turncloth/making/zippers_over.hpp>

#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <vector>

using namespace things;

namespace {

finished_size<inch> size(length<inch> w, length<inch> h) { return {w, h}; }

/// things::tool_roll by shorthands.
making<inch> roll_by_shorthands() {
    making<inch> d("tool roll");
    d.lips("1/4"_in);
    const panel<inch> inside(size(20_in, 16_in), {});
    const auto outer = cut_for(d, "outer", panel<inch>(size(20_in, 16_in), all_round(self_binding("1/2"_in, "1/8"_in))),
                               {.up = face::wrong});
    const auto wadding = cut_for(d, "wadding", inside), back = cut_for(d, "back", inside),
               lining = cut_for(d, "lining", inside);
    const auto tools = cut_for(
        d, "tools", panel<inch>(size(20_in, 8_in), {double_turned_hem("3/8"_in, "5/8"_in, "1/8"_in), {}, {}, {}}));

    lay_inside(d, outer, {wadding, back, lining});
    lay_on(d, tools, lining, {}, at<finished_edge>(8_in));
    finish_edge(d, tools, edge::top);
    const auto z = sew_zippers<inch>(d, {.on = lining,
                                         .centres = {at<cut_edge>("1 3/4"_in), at<cut_edge>(4_in)},
                                         .begins = "1 1/2"_in,
                                         .opening = 17_in,
                                         .beyond = "1/2"_in,
                                         .rows = "1/2"_in,
                                         .slit = "1/4"_in});
    const length<inch> step = 19_in / 6;
    stitching<inch> dividers{.along = tools.line(edge::left, at<cut_edge>(1_in)), .through = {tools, lining}};
    dividers.each = row<cut_edge, inch>(at<cut_edge>("1/2"_in + step), step, 5);
    d.add(dividers);
    const mouth_handle top =
        d.add(mouth<inch>{.name = "top of the tools", .at = {tools.line(edge::top, at<finished_edge>(0_in))}});
    d.add(tool_pockets(lining, tools, top));
    finish_edge(d, outer, edge::top, {wadding, back, lining});
    for (const edge e : {edge::left, edge::right, edge::bottom})
        finish_edge(d, outer, e, {wadding, back, lining, tools});
    for (const length<inch>& down : {"7 3/4"_in, 3_in})
        d.add(stitching<inch>{.along = lining.line(edge::top, at<finished_edge>(down)), .through = {lining, back}});
    return d;
}

/// things::organiser by shorthands.
making<inch> organiser_by_shorthands(std::int64_t strips) {
    making<inch> d("organiser");
    d.lips("1/4"_in);
    const auto hem = double_turned_hem("3/8"_in, "3/4"_in, "1/8"_in);
    const auto backing = cut_for(
        d, "backing",
        panel<inch>(size(20_in, 8_in * strips + 2_in), {heading("2 1/2"_in, "1/2"_in, "1/8"_in), hem, hem, hem}));
    const auto turned = single_turned_hem("1/2"_in, "1/8"_in);
    const auto film = cut_for(d, "film", panel<inch>(size("22 5/8"_in, 4_in), {turned, turned, seam("3/8"_in), turned}),
                              {.cloth = {.name = "clear film", .frays = false, .film = true}, .count = strips});
    finish_edges(d, backing);
    std::vector<place<finished_edge, inch>> feet;
    for (std::int64_t k = 1; k <= strips; ++k)
        feet.push_back(at<finished_edge>(8_in * k));
    const length<inch> step = "19 3/4"_in / 3;
    const auto tops = sew_strips<inch>(d, {.strip = film,
                                           .on = backing,
                                           .feet = feet,
                                           .span = 20_in,
                                           .columns = 3,
                                           .sides = {{at<finished_edge>("1/8"_in), step, 4}}});
    for (std::int64_t k = 0; k < strips; ++k)
        d.add(compartment<inch>{.name = "packets " + std::to_string(k + 1),
                                .between = {backing, film[k]},
                                .from_left = 4_in,
                                .from_top = organiser::below(8_in * (k + 1)) - 1_in,
                                .mouths = {tops[static_cast<std::size_t>(k)]},
                                .least_width = 6_in,
                                .least_height = 4_in,
                                .count = 3,
                                .step = step});
    set_eyelets<inch>(
        d, backing, {.along = {3, 1_in, "2 3/8"_in, 6_in}, .down = at<finished_edge>(1_in), .each = {"3/8"_in, 1_in}});
    return d;
}

} // namespace

TEST_CASE("the tool roll by shorthands is the tool roll from the operations alone") {
    CHECK(outcome_of(roll_by_shorthands()) == outcome_of(tool_roll(true).design));
}

TEST_CASE("the organiser by shorthands is the organiser from the operations alone") {
    CHECK(outcome_of(organiser_by_shorthands(1)) == outcome_of(organiser(1).design));
    CHECK(outcome_of(organiser_by_shorthands(3)) == outcome_of(organiser(3).design));
}

// By paper: a panel turned by its own finishes lies as large as it was to finish, whichever face lies up.
TEST_CASE("a piece that is finished measures what its panel is to finish at") {
    at_random::sampler random(61);
    while (random.another_of(200)) {
        const auto any_finish = [&]() -> finish<inch> {
            const length<inch> depth = random.inches(1) + "1/2"_in;
            switch (random.between(0, 3)) {
            case 0:
                return single_turned_hem(depth, depth / 4);
            case 1:
                return double_turned_hem(depth / 2, depth, depth / 4);
            case 2:
                return self_binding(depth, depth / 4);
            default:
                return {};
            }
        };
        const panel<inch> shape(size(random.inches(30) + 10_in, random.inches(30) + 10_in),
                                {any_finish(), any_finish(), any_finish(), any_finish()});
        making<inch> d("piece");
        const auto piece = cut_for(d, "piece", shape, {.up = random.between(0, 1) == 0 ? face::right : face::wrong});
        if (piece.up == face::wrong)
            d.add(laying<inch>{.piece = piece, .up = face::wrong});
        finish_edges(d, piece);
        const auto made = execute(d);
        CHECK(made.faults.empty());
        const auto lies = lying_after(d, made.steps, made.steps.size(), piece);
        CHECK(lies.width == shape.finished().width());
        CHECK(lies.height == shape.finished().height());
        std::size_t rows = 0;
        for (const edge e : {edge::left, edge::right, edge::top, edge::bottom}) {
            const finish<inch>& f = shape.finish_of(e);
            rows += f.stitching().size();
        }
        CHECK(made.rows.size() == rows);
        for (const auto& r : made.rows)
            CHECK(r.least >= 2); // the piece and what is turned of it
    }
}

TEST_CASE("a piece laid by its finished edges lies where they say, face to face too") {
    for (const face up : {face::right, face::wrong}) {
        making<inch> d("mat");
        const auto mat =
            cut_for(d, "mat", panel<inch>(size(20_in, 10_in), all_round(single_turned_hem(1_in, "1/4"_in))));
        const auto pocket =
            cut_for(d, "pocket",
                    panel<inch>(size(6_in, 4_in),
                                {{}, single_turned_hem("1/2"_in, "1/8"_in), {}, single_turned_hem(1_in, "1/8"_in)}),
                    {.up = up});
        lay_on(d, pocket, mat, at<finished_edge>(3_in), at<finished_edge>(2_in));
        // Its right edge is turned 1/2 in and its left edge 1 in: panels list top, right, bottom, left.
        const length<inch> beside = up == face::right ? 1_in : "1/2"_in;
        CHECK(d.layings()[0].left == 1_in + 3_in - beside);
        CHECK(d.layings()[0].top == 1_in + 2_in);
    }
}

// Common practice: the edges of a pocket are turned under and pressed before it is laid on.
TEST_CASE("edges that a pocket is sewn on by are folded before it is laid on") {
    const auto turned = single_turned_hem("1/2"_in, "1/8"_in);
    making<inch> d("cloth");
    const auto cloth = cut_for(d, "cloth", panel<inch>(size(12_in, 16_in)));
    const auto pocket = cut_for(d, "pocket", panel<inch>(size(8_in, 9_in), all_round(turned)));
    const operation laid = lay_on(d, pocket, cloth, at<finished_edge>(2_in), at<finished_edge>(5_in));
    sew_on(d, pocket, cloth, {edge::left, edge::right, edge::bottom}, "1/8"_in);
    finish_edge(d, pocket, edge::top);
    for (const edge e : {edge::left, edge::right, edge::bottom})
        fold_edge(d, pocket, e);
    std::size_t folds = 0;
    for (const making_step& s : steps_of(d)) {
        if (s.what == laid)
            break;
        folds += s.what.kind == operation_kind::crease ? 1 : 0;
    }
    CHECK(folds == 4);
}

TEST_CASE("strips and feet that are not of one number are refused, and a zipper that opens nowhere") {
    making<inch> d("organiser");
    const auto backing = cut_for(d, "backing", panel<inch>(size(20_in, 20_in), {}));
    const auto film = cut_for(d, "film", panel<inch>(size(24_in, 4_in), {{}, {}, seam("1/2"_in), {}}), {.count = 2});
    try {
        sew_strips<inch>(d, {.strip = film, .on = backing, .feet = {at<finished_edge>(8_in)}, .span = 20_in});
        FAIL("one foot was taken for two strips");
    } catch (const making_error& e) {
        CHECK(e.facts().kind == fault::disagree);
        CHECK(e.facts().given->numerator == 1);
        CHECK(e.facts().least->numerator == 2);
    }
    CHECK_THROWS_AS(sew_zippers<inch>(d, {.on = backing, .centres = {at<cut_edge>(4_in)}}), size_error);
}
