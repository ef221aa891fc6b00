// Pictures of steps and of finished things at sizes that are tiny, narrow, huge and full of pockets: every word can be
// read, nothing leaves the page, and each dimension is as long as its figure.
#include "../../examples/sheets/projects.hpp"
#include "at_random.hpp"
#include "draw/dimensions.hpp"
#include "draw/picture.hpp"
#include "making/random_design.hpp"
#include <turncloth/design/json.hpp>
#include <turncloth/design/project_of.hpp>
#include <turncloth/draw/finished.hpp>
#include <turncloth/draw/step.hpp>
#include <turncloth/making/finishing.hpp>
#include <turncloth/making/laying_on.hpp>
#include <turncloth/making/straps.hpp>
#include <turncloth/making/work_plan.hpp>
#include <turncloth/sheet/on_ruler.hpp>

#include <doctest/doctest.h>

#include <cstdint>
#include <fstream>
#include <iterator>
#include <string>

using namespace turncloth;
using namespace turncloth::drawn;

namespace {

void check_all(const sheet<inch>& s) {
    CAPTURE(s.name);
    CAPTURE(s.finished.width().value());
    drawn::check_measured(pages_of_steps(s, {.sentences = false}), s.steps);
    for (const bool sentences : {true, false})
        for (const paper on : {paper::a4, paper::letter})
            for (const step_page& p : pages_of_steps(s, {.sentences = sentences}, {}, {.on = on})) {
                INFO(p.page.title);
                check_legible(picture(p.page));
            }
    for (const page& p : pages_of_finished(s))
        check_legible(picture(p));
}

/// As the guide makes it: a hemmed back, a pocket on it in four, and a strap folded three times, held by boxes.
making<inch> tool_belt() {
    const auto hem = double_turned_hem("1/4"_in, "1/2"_in, "1/8"_in);
    const auto turned = single_turned_hem("1/2"_in);
    making<inch> belt("Tool belt");
    const auto back = cut_for(belt, "back", panel(finished_size(20_in, 9_in), all_round(hem)));
    const auto pockets = cut_for(belt, "pockets", panel(finished_size(19_in, 6_in), {hem, turned, turned, turned}));
    finish_edges(belt, back);
    for (const edge e : {edge::left, edge::right, edge::bottom})
        fold_edge(belt, pockets, e);
    finish_edge(belt, pockets, edge::top);
    lay_on(belt, pockets, back, at<finished_edge>("1/2"_in), at<finished_edge>("2 1/2"_in));
    sew_on(belt, pockets, back, {edge::left, edge::right, edge::bottom}, "1/8"_in);
    sew_divisions(belt, pockets, back, edge::left, divided<finished_edge>(19_in, 4));
    const auto strap = fold_strap<inch>(
        belt, {.name = "strap", .finished = {60_in, "1 1/2"_in}, .turned = "1/2"_in, .inset = "1/8"_in});
    lay_strap(belt, strap, back, -20_in, "1/2"_in);
    sew_box<inch>(belt, strap, back, {.begins = "20 5/8"_in, .ends = "21 5/8"_in, .in = "1/4"_in});
    sew_box<inch>(belt, strap, back, {.begins = "38 3/8"_in, .ends = "39 3/8"_in, .in = "1/4"_in});
    return belt;
}

/// A strip that is hemmed, turned up and sewn at both sides.
making<inch> peg_pouch() {
    making<inch> d("Peg pouch");
    const cut_part strip = d.cut({.name = "strip", .width = 9_in, .height = 14_in});
    d.add(laying<inch>{.piece = strip, .up = face::wrong});
    d.add(crease<inch>{.at = {.on = strip, .from = edge::bottom, .in = at<cut_edge>(1_in)}, .over = true});
    d.add(stitching<inch>{.along = {.on = strip, .from = edge::bottom, .in = at<cut_edge>("1 3/4"_in)}});
    const operation up = d.add(crease<inch>{
        .at = {.on = strip, .from = edge::bottom, .in = at<cut_edge>(6_in)}, .over = true, .begins_wall = true});
    for (const edge side : {edge::left, edge::right})
        d.add(before{
            up,
            d.add(stitching<inch>{
                .along = {.on = strip, .from = side, .in = at<cut_edge>("1/4"_in), .begins = 3_in, .ends = 8_in}})});
    return d;
}

std::size_t check_measured(const making<inch>& d) {
    CAPTURE(d.name());
    const work_plan<inch> plan = work_plan_of(d);
    return drawn::check_measured(pages_of_steps(d, plan, {.sentences = false}), plan);
}

} // namespace

TEST_CASE("pictures of the making can be read at any size") {
    const length<inch> ruler = "1/16"_in;
    for (const auto& size : {finished_size(6_in, 9_in), finished_size(60_in, 9_in), finished_size(27_in, 28_in),
                             finished_size(12_in, 200_in), finished_size(120_in, 90_in)})
        check_all(allotment::organiser::make(size, ruler));
    for (const auto& size : {finished_size(7_in, 11_in), finished_size(60_in, 11_in), finished_size(29_in, 21_in),
                             finished_size(120_in, 90_in)})
        check_all(allotment::tool_roll::make(size, ruler));
    for (const auto& size :
         {finished_size("17 1/2"_in, "10 1/2"_in), finished_size(60_in, 14_in), finished_size(70_in, 70_in)})
        check_all(allotment::kneeling_pad::make(size, 2_in, {}, ruler));
    check_all(allotment::kneeling_pad::make(finished_size(8_in, 6_in), 1_in, {}, ruler));
}

TEST_CASE("dimensions of the projects' pictures are as long as their figures at random sizes, in both units") {
    at_random::sampler any(72);
    std::size_t made = 0;
    const auto check = [&](const auto& make) {
        try {
            const auto s = make();
            CAPTURE(s.name);
            drawn::check_measured(pages_of_steps(s, {.sentences = false}), s.steps);
            ++made;
        } catch (const error&) { // of a size that cannot be made
        }
    };
    const auto one = [&]<length_unit Unit>(length<Unit> ruler, std::int64_t steps) {
        const auto size = [&](std::int64_t least, std::int64_t most) {
            return ruler * any.between(least * steps, most * steps);
        };
        const length<Unit> width = size(6, 40), height = size(6, 40), thick = size(1, 3);
        check([&] { return allotment::organiser::make(finished_size(width, height), ruler); });
        check([&] { return allotment::tool_roll::make(finished_size(width, height), ruler); });
        check([&] { return allotment::kneeling_pad::make(finished_size(width, height), thick, {}, ruler); });
    };
    while (any.another_of(12)) {
        one("1/16"_in, 16);
        one("0.1"_cm, 25);
    }
    CHECK(made > 40);
}

TEST_CASE("dimensions of a project that is a file, and of made-up work, are as long as their figures") {
    std::ifstream in("examples/designs/peg_bag.json", std::ios::binary);
    const project_design bag = read_design(std::string(std::istreambuf_iterator<char>(in), {}));
    for (const auto& size : {finished_size(13_in, 15_in), finished_size(9_in, 30_in)}) {
        const auto s = sheet_on_ruler(size, "1/16"_in, [&](const finished_size<inch>& asked, const ruled<inch>& by) {
            return project_of(bag, asked, by);
        });
        CHECK(drawn::check_measured(pages_of_steps(s, {.sentences = false}), s.steps) > 5);
    }
    const things::tool_roll roll(true);
    CHECK(check_measured(roll.design) > 20);
    CHECK(check_measured(tool_belt()) > 30);
    CHECK(check_measured(peg_pouch()) > 5);
}

TEST_CASE("dimensions of much random work are as long as their figures") {
    things::sampler any(73);
    while (any.another_of(400)) {
        const making<inch> d = things::random_design(any);
        try {
            check_measured(d);
        } catch (const making_error&) {
            continue;
        }
    }
}
