// turncloth_guide <folder>: draws the pictures of GUIDE.md and README.md into a folder, each with the library that the
// page explains.
#include "projects.hpp"
#include <turncloth.hpp>
#include <turncloth/draw/finished.hpp>
#include <turncloth/draw/folded.hpp>
#include <turncloth/draw/lay.hpp>
#include <turncloth/draw/outline.hpp>
#include <turncloth/draw/piece.hpp>
#include <turncloth/draw/step.hpp>
#include <turncloth/draw/stock.hpp>
#include <turncloth/making/work_plan.hpp>
#include <turncloth/sheet/made_as.hpp>
#include <turncloth/sheet/making_of.hpp>
#include <turncloth/sheet/purchases.hpp>

#include <cstdio>
#include <fstream>
#include <string>

using namespace turncloth;
using namespace guide;

namespace {

bool save(const std::string& folder, const char* name, const std::string& picture) {
    std::ofstream out(folder + "/" + name + ".svg", std::ios::binary);
    out << picture;
    return static_cast<bool>(out.flush());
}

/// The first piece of a project.
std::string drawn(const project<inch>& p) {
    return to_svg(page_of(sheet_of(p).pieces.front(), {}, {.project = p.name()}));
}

std::string folded_napkin() {
    const panel napkin(finished_size(15_in, 15_in), all_round(double_turned_hem("1/4"_in, 1_in)));
    return to_svg(page_of(fold_panel(napkin, all_corners(mitred("1/4"_in, "1/16"_in))), {.name = "napkin"}));
}

std::string slanting_end() {
    const auto at = [](double x, double y) { return drafted_point<inch>(x, y); };
    const auto in = [](double x) { return drafted_length_of<inch>(x); };
    using enum corner_shape;
    const outline<inch> end({at(1.5, 0), at(9.5, 0), at(11, 8), at(0, 8)},
                            {in(0.5), in(0.5), {in(1.5), in(0.5)}, in(0.5)},
                            {mitred, mitred, reflected_in_edge_after, reflected_in_edge_before});
    return to_svg(page_of(end,
                          {.name = "end",
                           .material = "canvas",
                           .count = 2,
                           .notches = {{0, in(4)}},
                           .grain = line<inch, double>{at(5.5, 0), at(5.5, 8)}},
                          {}, {.project = "trug liner"}));
}

std::string laid_cloth() {
    project<inch> p("tool roll", finished_size(22_in, 14_in));
    p.add({"outer", "canvas", panel(p.finished(), all_round(self_binding("1/2"_in)))});
    p.add({"pocket", "canvas", panel(finished_size(11_in, 7_in), all_round(double_turned_hem("1/4"_in, "1/2"_in)))})
        .count(4);
    const auto s = sheet_of(p);
    return to_svg(page_of(cloth_for<inch>(s, "canvas", {.width = 44_in, .selvedge = "1/2"_in},
                                          {.straightening = 1_in, .sold = eighths_of_a_yard<inch>}),
                          {}, {.project = p.name()}));
}

std::string cut_ribbon() {
    const auto ties = stock_for<inch>("ribbon", {{"tie", "22 1/2"_in, 8}, {"loop", "4 3/4"_in, 12}}, {{108_in}});
    return to_svg(pages_of(ties, {}, {.project = "tool roll"}).front());
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

std::string turned_up() {
    const auto pouch = peg_pouch();
    return to_svg(pages_of_steps(pouch, work_plan_of(pouch), {}, {}, {.project = pouch.name()})[2].page);
}

/// The roll of README's sheet: what is marked on its lining, and how it looks when it is done.
bool save_readme(const std::string& folder) {
    project<inch> roll = tool_roll();
    roll.made_as(making_of(roll).design);
    const auto s = sheet_of(roll);
    const drawing_options fitted{.project = s.name, .on = paper::a4.fitted()};
    return save(folder, "roll-lining", to_svg(page_of(s.pieces.back(), {}, fitted))) &&
           save(folder, "roll-finished", to_svg(pages_of_finished(s, {}, fitted).front()));
}

} // namespace

int main(int count, char** words) {
    if (count != 2) {
        std::fputs("usage: turncloth_guide <folder>\n", stderr);
        return 2;
    }
    const std::string folder = words[1];
    const bool done =
        save(folder, "self-bound", drawn(self_bound_mat())) && save(folder, "heading", drawn(hung_backing())) &&
        save(folder, "eyelets", drawn(heading_with_eyelets())) && save(folder, "meeting", drawn(film_that_meets())) &&
        save(folder, "zipper", drawn(zipped_pocket())) && save(folder, "pleats", drawn(pleated_flounce())) &&
        save(folder, "boxed", drawn(boxed_plate())) && save(folder, "folded", folded_napkin()) &&
        save(folder, "outline", slanting_end()) && save(folder, "lay", laid_cloth()) &&
        save(folder, "stock", cut_ribbon()) && save(folder, "step", turned_up()) &&
        save(folder, "finished", to_svg(pages_of_finished(peg_pouch(), steps_of(peg_pouch())).front())) &&
        save_readme(folder);
    if (!done)
        std::fprintf(stderr, "turncloth_guide: cannot write the pictures into %s\n", folder.c_str());
    return done ? 0 : 3;
}
