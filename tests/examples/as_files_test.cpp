// Projects that are files too: the same sheets as from the C++ that shares nothing with them, byte for byte, at any size,
// exactly and on a ruler; and refused at the same sizes. And each project of one size, written as a file and read back
// equal.
#include "../../examples/guide/projects.hpp"
#include "../../examples/sheets/kneeling_pad.hpp"
#include "../../examples/sheets/organiser.hpp"
#include "../../examples/sheets/tool_roll.hpp"
#include "at_random.hpp"
#include "refused.hpp"
#include <turncloth/design/design_of.hpp>
#include <turncloth/design/json.hpp>
#include <turncloth/design/project_of.hpp>
#include <turncloth/sheet/json.hpp>
#include <turncloth/sheet/on_ruler.hpp>
#include <turncloth/sheet/text.hpp>

#include <doctest/doctest.h>

#include <cstdint>
#include <fstream>
#include <iterator>
#include <string>

using namespace turncloth;

namespace {

project_design design_in(const std::string& path) {
    std::ifstream in(path, std::ios::binary);
    return read_design(std::string(std::istreambuf_iterator<char>(in), {}));
}

/// As thick as it usually is, of cloth as it is usually sold.
struct kneeling_pad {
    template <length_unit Unit>
    static project<Unit> design(const finished_size<Unit>& asked, const ruled<Unit>& by) {
        return allotment::kneeling_pad::design(asked, allotment::usual_kneeling_pad<Unit>.thickness, {}, by);
    }
    template <length_unit Unit>
    static sheet<Unit> make(const finished_size<Unit>& size, length<Unit> graduation) {
        return allotment::kneeling_pad::make(size, allotment::usual_kneeling_pad<Unit>.thickness, {}, graduation);
    }
};

/// Written as a file of numbers and read back, it is equal, and so is all that is written of its sheet.
template <length_unit Unit>
void check_read_back(const project<Unit>& p) {
    CAPTURE(p.name());
    CAPTURE(to_text(p.finished()));
    const std::string file = to_json(design_of(p)).dump();
    const project<Unit> back = project_of(read_design(file), p.finished());
    REQUIRE(back == p);
    const auto text = [](const project<Unit>& made) {
        const outcome<sheet<Unit>, sheet_error> s = try_sheet_of(made);
        return s ? to_text(*s) + to_json(*s).dump() : std::string(s.refused().what());
    };
    REQUIRE(text(back) == text(p));
}

/// All that is written of a sheet, or that there is none.
template <class Make>
std::string written(const Make& make) {
    try {
        const auto sheet = make();
        return to_text(sheet) + to_json(sheet).dump(1);
    } catch (const error&) {
        return "refused";
    }
}

template <class Twin, length_unit Unit>
bool same(const project_design& d, const finished_size<Unit>& size, length<Unit> graduation) {
    const std::string twin = written([&] { return Twin::make(size, graduation); });
    const std::string file = written([&] {
        return sheet_on_ruler(size, graduation, [&](const finished_size<Unit>& asked, const ruled<Unit>& by) {
            return project_of(d, asked, by);
        });
    });
    CHECK_MESSAGE(file == twin, to_text(size), ", ruler ", to_text(graduation));
    if (twin == "refused")
        return false;
    const ruled<Unit> by = graduation.value() == 0 ? ruled<Unit>() : ruled<Unit>(graduation);
    const project<Unit> made = Twin::design(size, by);
    CHECK_MESSAGE(project_of(d, size, by) == made, to_text(size), ", ruler ", to_text(graduation));
    check_read_back(made);
    return true;
}

/// Sizes from a sixth of `most` to that, in inches, exactly and on a ruler, and about as large ones in centimetres.
template <class Twin>
void check_alike(const std::string& path, std::int64_t most, int sizes) {
    const project_design d = design_in(path);
    at_random::sampler random(29);
    int made = 0, all = 0;
    for (const int i : random.cases(sizes)) {
        const auto inches = [&] { return random.inches(most) + length_of<inch>(most / 6); };
        const auto centimetres = [&] { return random.centimetres(most * 5 / 2) + length_of<centimetre>(most / 2); };
        ++all;
        if (i % 2 == 0)
            made += same<Twin>(d, finished_size<inch>(inches(), inches()), i % 4 == 0 ? 0_in : "1/16"_in);
        else
            made +=
                same<Twin>(d, finished_size<centimetre>(centimetres(), centimetres()), i % 4 == 1 ? 0_cm : "0.1"_cm);
    }
    CHECK(made > all / 3);
    CHECK(made < all);
}

} // namespace

TEST_CASE("the organiser as a file is the organiser in C++") {
    check_alike<allotment::organiser>("examples/designs/organiser.json", 28, 12);
}

TEST_CASE("the tool roll as a file is the tool roll in C++") {
    check_alike<allotment::tool_roll>("examples/designs/tool_roll.json", 28, 12);
}

TEST_CASE("the kneeling pad as a file is the kneeling pad in C++") {
    check_alike<kneeling_pad>("examples/designs/kneeling_pad.json", 32, 6);
    // Its edging in one, in four alike, and in two long and two short ones that begin with either.
    const project_design d = design_in("examples/designs/kneeling_pad.json");
    for (const finished_size<inch>& size :
         {finished_size(16_in, 10_in), finished_size(10_in, 16_in), finished_size(18_in, 18_in),
          finished_size(20_in, 12_in), finished_size(12_in, 20_in), finished_size("17 1/16"_in, "17 1/16"_in)})
        for (const length<inch>& graduation : {0_in, "1/8"_in})
            CHECK(same<kneeling_pad>(d, size, graduation));
}

namespace {

/// As the guide has it.
project<inch> glove_cloth() {
    const auto hem = double_turned_hem("1/4"_in, "3/4"_in, "1/8"_in);
    const auto turned = single_turned_hem("1/2"_in, "1/8"_in);
    project<inch> p("Glove cloth", {12_in, 16_in});
    auto& cloth = p.add({"cloth", "canvas", panel(p.finished(), all_round(hem))});
    auto& pocket = p.add({"pocket", "canvas", panel(finished_size(8_in, 9_in), {hem, turned, turned, turned})});
    making<inch> how(p.name());
    const auto below = cut_for(how, "cloth", cloth.shape()), above = cut_for(how, "pocket", pocket.shape());
    finish_edges(how, below);
    finish_edge(how, above, edge::top);
    for (const edge e : {edge::left, edge::right, edge::bottom})
        fold_edge(how, above, e);
    lay_on(how, above, below, at<finished_edge>(2_in), at<finished_edge>(5_in));
    sew_on(how, above, below, {edge::bottom, edge::left, edge::right}, "1/8"_in);
    const auto top = how.add(mouth<inch>{.name = "top", .at = {above.line(edge::top, at<finished_edge>(0_in))}});
    how.add(compartment<inch>{
        .name = "gloves", .between = {below, above}, .from_left = 7_in, .from_top = 10_in, .mouths = {top}});
    return p.made_as(how);
}

/// What no form of a design has: a finish of one's own, a working, two mouths of one name, rows sewn otherwise, and so on.
project<inch> of_its_own_kind() {
    project<inch> p("Odd bag", {12_in, 9_in});
    finish<inch> held(p.keep("held twice"));
    held.allows(1_in).folds_at(1_in).stitched_at("1 3/4"_in).stitched_at("1 1/2"_in).reaches(1_in);
    auto& front = p.add({"front", "canvas",
                         panel(p.finished(), {held, french_seam("3/8"_in, "1/4"_in, "1/8"_in), held, finish<inch>()})});
    front.mark("line", edge::top, at<cut_edge>(3_in)).mark("line", edge::top, at<stitched_line>("1/3"_in));
    front.eyelets({spaced_centred<finished_edge>(3, "1/2"_in, 12_in, 1_in).on_ruler("1/8"_in), at<finished_edge>(2_in),
                   eyelet<inch>{"1/4"_in, "1/2"_in}});
    p.add(notion<inch>("cord")
              .figure("cut", figure<inch>().plus(9_in, "height").plus_times(-2, {1_in, "1/2"_in}, p.keep("knots")))
              .places("beads", {1_in, 2_in})
              .number("ends", 2)
              .sold(sold_as::as_told));
    p.add(sewing<inch>{stitch(401), "1/2"_in, {1, 4}, 3600_in});
    making<inch> how("Odd bag, sewn");
    const cut_part tape =
        how.cut({.name = "tape",
                 .cloth = {.name = "twill", .thickness = "1/32"_in, .two_sided = true, .one_way = true},
                 .width = 9_in,
                 .height = 1_in,
                 .count = 2});
    const chalk_line<inch> middle{.on = tape[1], .from = edge::left, .in = at<cut_edge>(3_in), .ends = "1/2"_in};
    const operation row = how.add(stitching<inch>{.along = middle, .stitch = stitch(301), .overrun = 1_in});
    const operation laid = how.add(laying<inch>{.piece = tape[1], .on = tape, .left = -1_in});
    how.add(mouth<inch>{.name = "end", .at = {middle}});
    const mouth_handle end = how.add(mouth<inch>{.name = "end", .at = {middle}, .by = closed_by::tie});
    how.add(compartment<inch>{.name = "channel", .between = {tape, tape[1]}, .from_left = 1_in, .mouths = {end}});
    how.add(moment{moment_kind::close, end.index});
    how.add(before{laid, row, "it lies there first"});
    return p.made_as(how.lips("1/4"_in));
}

} // namespace

TEST_CASE("every project of the guide is written as a file and read back equal") {
    for (const auto& make :
         {guide::self_bound_mat, guide::hung_backing, guide::heading_with_eyelets, guide::film_that_meets,
          guide::zipped_pocket, guide::pleated_flounce, guide::boxed_plate, glove_cloth})
        check_read_back(make());
    project<centimetre> tray("Seed tray liner", {30_cm, 22.5_cm});
    tray.add(piece<centimetre>("liner", "canvas", panel(tray.finished(), all_round(seam(1.5_cm)))));
    tray.add(must_reach<centimetre>{.what = "the tie", .has = 76_cm, .needs = 60_cm});
    check_read_back(tray);
    const ruled<inch> by("1/8"_in);
    project<inch> mat("Seat mat", by.given(finished_size("14 11/16"_in, 12_in)));
    mat.add({"cover", "canvas", panel(mat.finished())})
        .mark("quilting", edge::left, by.parts(divided<finished_edge>(mat.finished().width(), 7)));
    check_read_back(mat);
}

TEST_CASE("what no form has is written too, and what a file cannot say is refused by its place") {
    check_read_back(of_its_own_kind());
    project<inch> p("Bag {small}", {12_in, 9_in});
    p.add({"front", "canvas", panel(p.finished())});
    p.add({"front", "canvas", panel(p.finished())});
    p.add(notion<inch>("cord").figure("nothing", figure<inch>()));
    CHECK(refused::message<design_error>([&] { design_of(p); }) ==
          "/pieces/1/name: there is a piece of that name before it; /notions/0/details/0: give either a figure, its "
          "terms, a number or places; /name, character 6: nothing here is named \"small\"");
    project<inch> q("Bag", {12_in, 9_in});
    q.add({"front", "canvas", panel(q.finished())});
    q.add(sewing<inch>{stitch_type{301, "slow stitch", 3}, "1/2"_in, {1, 4}, 3600_in});
    making<inch> how("Bag");
    how.add(moment{moment_kind::roll, 3});
    CHECK(refused::message<design_error>([&] { design_of(q.made_as(how)); }) ==
          "/sewings/0: a design does not say this as the project has it; /making/moments/0: a design does not say this "
          "as the project has it");
}
