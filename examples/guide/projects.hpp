// The projects of the guide's pictures.
//
//   guide::self_bound_mat()  hung_backing()  heading_with_eyelets()  film_that_meets()  zipped_pocket()  pleated_flounce()
//   boxed_plate()  tool_roll()    a project<inch> each
#ifndef TURNCLOTH_EXAMPLES_GUIDE_PROJECTS_HPP
#define TURNCLOTH_EXAMPLES_GUIDE_PROJECTS_HPP

#include <turncloth.hpp>

namespace guide {

using namespace turncloth;

inline project<inch> self_bound_mat() {
    const finished_size size(17_in, 13_in);
    project<inch> p("potting mat", size);
    p.add({"outer layer", "canvas", self_bound(size, "1/2"_in, "1/8"_in).outer});
    return p;
}

inline project<inch> hung_backing() {
    const auto hem = double_turned_hem("1/4"_in, "3/4"_in, "1/8"_in);
    project<inch> p("glove rack", finished_size(18_in, 22_in));
    p.add({"backing", "canvas", panel(p.finished(), {heading(3_in, "1/2"_in, "1/8"_in), hem, hem, hem})})
        .mark("pocket", edge::top, every<stitched_line>(6_in, 18_in).marks);
    return p;
}

inline project<inch> heading_with_eyelets() {
    const auto hem = double_turned_hem("1/4"_in, "3/4"_in, "1/8"_in);
    project<inch> p("glove rack", finished_size(18_in, 22_in));
    auto& backing =
        p.add({"backing", "canvas", panel(p.finished(), {heading(3_in, "1/2"_in, "1/8"_in), hem, hem, hem})});
    const eyelet<inch> brass{"3/8"_in, "5/8"_in};
    const auto row = eyelets(backing.shape(), 4, brass, {.margin = "1 3/16"_in, .clear = "1/8"_in});
    backing.eyelets(row);
    p.add(listed("eyelets", row));
    return p;
}

inline project<inch> film_that_meets() {
    project<inch> p("seed pockets", finished_size(24_in, 5_in));
    p.add({"film", "clear film", panel(finished_size(30_in, 5_in), all_round(single_turned_hem("1/2"_in)))}).of_film();
    p.add({"strip", "canvas", panel(p.finished())});
    p.add(meeting<inch>{"film", "strip", edge::left, 30_in, 24_in, 6});
    return p;
}

inline project<inch> zipped_pocket() {
    project<inch> p("label pouch", finished_size(13_in, 8_in));
    p.add({"front", "canvas", panel(p.finished(), all_round(seam("1/2"_in)))});
    p.add(zipper<inch>{"front",
                       edge::top,
                       {at<finished_edge>("2 1/4"_in)},
                       {13_in, 1_in, "3/4"_in},
                       "1/2"_in,
                       "1/4"_in,
                       zipper_supply<inch>::from_roll(as<inch>(3_yd))});
    return p;
}

inline project<inch> pleated_flounce() {
    const auto pleats = pleats_near(pleat::box, 24_in, {.width = 4_in, .depth = 1_in});
    project<inch> p("barrow cover", finished_size(24_in, 6_in));
    edges<inch> ends;
    ends.left = ends.right = seam("1/2"_in);
    p.add({"flounce", "canvas", panel(finished_size(pleats.cut().value(), 6_in), ends)}).pleated(edge::left, pleats);
    return p;
}

inline project<inch> boxed_plate() {
    const boxed_size pad(16_in, 10_in, 2_in);
    const auto shape = panel<inch>::from_cut(boxed_panel(pad, "1/2"_in), all_round(seam("1/2"_in)));
    project<inch> p("kneeling pad", finished_size(16_in, 10_in));
    p.add({"panel", "canvas", shape})
        .count(2)
        .corners_cut_out(corner_cut(2_in, {.seam = "1/2"_in, .across = "1/2"_in}), "1/2"_in);
    return p;
}

/// The roll of README's sheet, at its size.
inline project<inch> tool_roll() {
    const finished_size size(21_in, 13_in);
    project<inch> p("Hand-tool roll", size);
    auto& outer = p.add({"outer", "canvas", panel(size, all_round(self_binding("3/8"_in, "1/8"_in)))});
    auto& lining = p.add({"lining", "cotton", panel(size)}).lies_inside(outer);
    lining.mark("pocket", edge::left, divided<finished_edge>(size.width(), 3));
    p.add(zipper<inch>{.on = "lining",
                       .from = edge::top,
                       .centres = {at<finished_edge>("2 1/2"_in)},
                       .opening = {.across = size.width(), .margin = 1_in, .beyond = "3/4"_in},
                       .rows = "1/2"_in,
                       .slit = "1/4"_in,
                       .supply = zipper_supply<inch>::from_roll(as<inch>(5_yd))});
    return p;
}

} // namespace guide

#endif
