// Things that tests make: the tool roll and the organiser of the demonstration, from the public operations alone.
#ifndef TURNCLOTH_TESTS_MAKING_THINGS_HPP
#define TURNCLOTH_TESTS_MAKING_THINGS_HPP

#include <turncloth/making/executed.hpp>
#include <turncloth/measure/read.hpp>

#include <vector>

namespace things {

using namespace turncloth;
using namespace turncloth::literals;

inline chalk_line<inch> line(cut_part on, edge from, length<inch> in) {
    return {.on = on, .from = from, .in = at<cut_edge>(in)};
}

/// A row along an edge through these walls.
inline stitching<inch> sewn(cut_part on, edge from, length<inch> in, std::vector<cut_part> through) {
    return {.along = line(on, from, in), .through = std::move(through)};
}

/// What the roll's six tool pockets are to hold, in the 19 in between its bindings.
inline compartment<inch> tool_pockets(cut_part lining, cut_part tools, mouth_handle top) {
    return {.name = "tool",
            .between = {lining, tools},
            .from_left = 2_in,
            .from_top = 12_in,
            .mouths = {top},
            .least_width = 2_in,
            .least_height = 7_in,
            .count = 6,
            .step = 19_in / 6};
}

/// Finishes 20 x 16 in, bound by its outer, 1/2 in wide and stitched 1/8 in from the binding's inner edge. Two zippers,
/// 1 3/4 and 4 in from the top of the lining; tool pockets over its lower half.
struct tool_roll {
    making<inch> design{"tool roll"};
    cut_part outer, wadding, back, lining, tools, tape;
    mouth_handle zip[2], top;

    explicit tool_roll(bool with_closing_rows) {
        outer = design.cut({.name = "outer", .width = 22_in, .height = 18_in});
        wadding = design.cut({.name = "wadding", .width = 20_in, .height = 16_in});
        back = design.cut({.name = "back", .width = 20_in, .height = 16_in});
        lining = design.cut({.name = "lining", .width = 20_in, .height = 16_in});
        tools = design.cut({.name = "tools", .width = 20_in, .height = 9_in});
        tape = design.cut({.name = "zipper", .width = 18_in, .height = 1_in, .count = 2});
        design.lips("1/4"_in);
        add_layers();
        add_zippers(with_closing_rows);
        add_tools();
        add_binding();
        if (with_closing_rows) {
            design.add(sewn(lining, edge::top, "7 3/4"_in, {lining, back}));
            design.add(sewn(lining, edge::top, 3_in, {lining, back}));
        }
    }

private:
    void add_layers() {
        design.add(laying<inch>{.piece = outer, .up = face::wrong});
        design.add(laying<inch>{.piece = wadding, .on = outer, .left = 1_in, .top = 1_in});
        design.add(laying<inch>{.piece = back, .on = wadding});
        design.add(laying<inch>{.piece = lining, .on = back});
        design.add(laying<inch>{.piece = tools, .on = lining, .top = 7_in});
    }
    /// Openings of 17 in; the tape goes on by 1/2 in at each end.
    void add_zippers(bool ends) {
        const length<inch> centres[] = {"1 3/4"_in, 4_in};
        for (const std::int64_t k : {0, 1}) {
            const cut_part z = tape[k];
            const length<inch> centre = centres[k];
            design.add(
                laying<inch>{.piece = z, .on = lining, .left = 1_in, .top = centre - "1/2"_in, .set_into_one = true});
            design.add(sewn(z, edge::top, "1/4"_in, {z, lining}));
            design.add(sewn(z, edge::top, "3/4"_in, {z, lining}));
            if (ends)
                for (const edge e : {edge::left, edge::right})
                    design.add(sewn(z, e, "1/4"_in, {z, lining}));
            auto slit = line(lining, edge::top, centre);
            slit.begins = "1 1/2"_in;
            slit.ends = "18 1/2"_in;
            design.add(snip<inch>{.at = slit, .width = "1/4"_in});
            auto chain = line(z, edge::top, "1/2"_in);
            chain.begins = "1/2"_in;
            chain.ends = "17 1/2"_in;
            zip[k] = design.add(mouth<inch>{.name = "zipper", .at = {chain}, .by = closed_by::zipper});
        }
    }
    /// Hemmed 3/8 and 5/8 in, stitched 1/8 in from the inner fold; six pockets in the 19 in between the bindings.
    void add_tools() {
        design.add(crease<inch>{.at = line(tools, edge::top, "3/8"_in)});
        design.add(crease<inch>{.at = line(tools, edge::top, 1_in)});
        design.add(sewn(tools, edge::top, "1 1/2"_in, {tools}));
        stitching<inch> dividers = sewn(tools, edge::left, 1_in, {tools, lining});
        const length<inch> step = 19_in / 6;
        dividers.each = row<cut_edge, inch>(at<cut_edge>("1/2"_in + step), step, 5);
        design.add(dividers);
        top = design.add(mouth<inch>{.name = "top of the tools", .at = {line(tools, edge::top, 1_in)}});
        design.add(tool_pockets(lining, tools, top));
    }
    void add_binding() {
        for (const edge e : {edge::left, edge::right, edge::top, edge::bottom}) {
            for (const auto& in : {"1/2"_in, 1_in})
                design.add(crease<inch>{.at = line(outer, e, in), .over = true});
            std::vector<cut_part> through = {outer, wadding, back, lining};
            if (e != edge::top)
                through.push_back(tools);
            design.add(sewn(outer, e, "1 3/8"_in, through));
        }
    }
};

/// Finishes 20 x 18 in: strips of film, 4 in high when sewn, that are longer than the backing is wide by 7/8 in for each
/// of three columns, taken up in tucks. Feet 8 and 16 in below the top edge.
struct organiser {
    making<inch> design{"organiser"};
    cut_part backing, film;
    std::vector<mouth_handle> tops{};
    std::int64_t rows;

    explicit organiser(std::int64_t strips = 2) : rows(strips) {
        backing =
            design.cut({.name = "backing", .width = "22 1/4"_in, .height = below(8_in * strips + 2_in) + "1 1/8"_in});
        film = design.cut({.name = "film",
                           .cloth = {.name = "clear film", .frays = false, .film = true},
                           .width = long_ + 1_in,
                           .height = "4 7/8"_in,
                           .count = strips});
        design.lips("1/4"_in);
        hem(backing, edge::left, {"3/8"_in, "1 1/8"_in}, "1 3/4"_in, false);
        hem(backing, edge::right, {"3/8"_in, "1 1/8"_in}, "1 3/4"_in, false);
        hem(backing, edge::bottom, {"3/8"_in, "1 1/8"_in}, "1 3/4"_in, false);
        hem(backing, edge::top, {"1/2"_in, 3_in}, "5 3/8"_in, false);
        for (std::int64_t k = 0; k < strips; ++k)
            add_strip(k);
        spot<inch> eyelets{.what = spot_kind::eyelet, .along = line(backing, edge::top, 4_in), .through = {backing}};
        eyelets.places = row<cut_edge, inch>(at<cut_edge>(4_in), 7_in, 3);
        design.add(eyelets);
    }

    /// From the cut top edge: the heading takes 3 in.
    static length<inch> below(length<inch> finished) { return finished + 3_in; }

private:
    static constexpr length<inch> long_ = "22 5/8"_in;

    void hem(cut_part p, edge e, std::vector<length<inch>> folds, length<inch> row, bool over) {
        for (const auto& f : folds)
            design.add(crease<inch>{.at = line(p, e, f), .over = over});
        design.add(sewn(p, e, row, {p}));
    }

    void add_strip(std::int64_t k) {
        const cut_part f = film[k];
        const length<inch> foot = below(8_in * (k + 1));
        // It lies wrong side up, so what is turned to its wrong side is turned over.
        for (const edge e : {edge::left, edge::right, edge::top})
            hem(f, e, {"1/2"_in}, "7/8"_in, true);
        design.add(laying<inch>{
            .piece = f,
            .on = backing,
            .up = face::wrong,
            .left = "1 1/8"_in,
            .top = foot - "3/8"_in,
            .fit = {.taken_up = surplus::tuck, .spans = 3, .begins = "1/2"_in, .of_piece = long_, .on = 20_in},
            .upside_down = true});
        design.add(sewn(f, edge::bottom, "3/8"_in, {f, backing}));
        design.add(crease<inch>{.at = line(f, edge::top, "4 1/2"_in), .over = true});
        auto sides = sewn(backing, edge::left, "1 1/4"_in, {backing, f});
        sides.along.begins = foot - 4_in;
        sides.along.ends = foot;
        sides.each = row<cut_edge, inch>(at<cut_edge>("1 1/4"_in), "19 3/4"_in / 3, 4);
        design.add(sides);
        tops.push_back(design.add(mouth<inch>{.name = "top", .at = {line(f, edge::top, "1/2"_in)}}));
        design.add(compartment<inch>{.name = "packets " + std::to_string(k + 1),
                                     .between = {backing, f},
                                     .from_left = 4_in,
                                     .from_top = foot - 1_in,
                                     .mouths = {tops.back()},
                                     .least_width = 6_in,
                                     .least_height = 4_in,
                                     .count = 3,
                                     .step = "19 3/4"_in / 3});
    }
};

} // namespace things

#endif
