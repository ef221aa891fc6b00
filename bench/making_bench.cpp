// What carrying a design out costs, and that it grows with the gaps between its layers: n x n pockets, each with its own
// hollow judged, by n. `gaps` is counted in each run, so that time over gaps can be read off.
#include <turncloth.hpp>
#include <turncloth/making/executed.hpp>
#include <turncloth/making/fastenings.hpp>
#include <turncloth/sheet/made_as.hpp>
#include <turncloth/sheet/making_of.hpp>

#include <benchmark/benchmark.h>

#include <cstdint>
#include <string>
#include <utility>

using namespace turncloth;
using namespace turncloth::literals;

namespace {

chalk_line<inch> line(cut_part on, edge from, const length<inch>& in) {
    return {.on = on, .from = from, .in = at<cut_edge>(in)};
}

/// n strips, each sewn at its foot and n + 1 times across: n (n + 2) rows.
making<inch> pockets(std::int64_t n, bool judged) {
    making<inch> d("pockets");
    const length<inch> across = 4_in * n + 2_in, down = 6_in * n + 2_in;
    const cut_part backing = d.cut({.name = "backing", .width = across, .height = down});
    const cut_part strip = d.cut({.name = "strip", .width = across, .height = 5_in, .count = n});
    for (std::int64_t k = 0; k < n; ++k) {
        d.add(laying<inch>{.piece = strip[k], .on = backing, .top = 6_in * k + 1_in});
        d.add(stitching<inch>{.along = line(strip[k], edge::bottom, "1/4"_in), .through = {strip[k], backing}});
        stitching<inch> sides{.along = line(strip[k], edge::left, 1_in), .through = {strip[k], backing}};
        sides.each = row<cut_edge, inch>(at<cut_edge>(1_in), 4_in, n + 1);
        d.add(sides);
        const mouth_handle top = d.add(mouth<inch>{.name = "top", .at = {line(strip[k], edge::top, length<inch>())}});
        if (judged)
            d.add(compartment<inch>{.name = std::to_string(k),
                                    .between = {backing, strip[k]},
                                    .from_left = 3_in,
                                    .from_top = 6_in * k + 4_in,
                                    .mouths = {top},
                                    .least_width = 3_in,
                                    .least_height = 4_in,
                                    .count = n,
                                    .step = 4_in});
    }
    return d;
}

void pockets_carried_out(benchmark::State& state) {
    const making<inch> design = pockets(state.range(0), state.range(1) != 0);
    double gaps = 0, rows = 0, faults = 0;
    for (auto _ : state) {
        const auto made = execute(design);
        gaps = static_cast<double>(made.gaps);
        rows = static_cast<double>(made.rows.size());
        faults = static_cast<double>(made.faults.size());
        benchmark::DoNotOptimize(made);
    }
    state.counters["gaps"] = gaps;
    state.counters["rows"] = rows;
    state.counters["faults"] = faults;
}
BENCHMARK(pockets_carried_out)
    ->Args({10, 1})
    ->Args({20, 1})
    ->Args({40, 1})
    ->Args({100, 1})
    ->Args({100, 0})
    ->Unit(benchmark::kMillisecond);

/// A roll that its outer binds, zipped across its upper half, with a canvas of eight pockets over the lower.
project<inch> roll(bool designed) {
    project<inch> p("tool roll", {28_in, 20_in});
    const panel<inch> inner(p.finished(), {});
    const auto bound = self_binding("5/8"_in, "1/8"_in);
    auto& outer = p.add({"outer", "canvas", panel(p.finished(), all_round(bound))});
    p.add({"wadding", "thin wadding", inner}).lies_inside(outer);
    p.add({"back", "lining cloth", inner}).lies_inside(outer);
    p.add({"lining", "lining cloth", inner}).lies_inside(outer);
    p.add(
        {"pockets", "canvas", panel(finished_size(28_in, 10_in), {double_turned_hem("3/8"_in, "5/8"_in), {}, {}, {}})});
    p.add(placing<inch>{"pockets", "lining", at<finished_edge>(0_in), at<finished_edge>(10_in)});
    p.add(zipper<inch>{"lining",
                       edge::top,
                       {at<finished_edge>(5_in)},
                       {"26 3/4"_in, "7/8"_in, "5/8"_in},
                       "1/2"_in,
                       "1/4"_in,
                       zipper_supply<inch>::from_roll(180_in)});
    p.add(sewing<inch>{stitch(301), "1/2"_in, {1, 10}, 1000_in});
    if (!designed)
        return p;
    auto made = making_of(p);
    sew_divisions<inch>(made.design, made.part("pockets"), made.part("lining"), edge::left,
                        {at<finished_edge>(4_in), "3 1/4"_in, 7});
    const mouth_handle top = made.design.add(mouth<inch>{
        .name = "top of the pockets", .at = {made.part("pockets").line(edge::top, place<finished_edge, inch>())}});
    made.design.add(compartment<inch>{.name = "pocket",
                                      .between = {made.part("lining"), made.part("pockets")},
                                      .from_left = "2 1/4"_in,
                                      .from_top = 15_in,
                                      .mouths = {top},
                                      .count = 8,
                                      .step = "3 1/4"_in});
    p.made_as(std::move(made.design));
    return p;
}

/// As beside the same project without a design: a sheet with its making carried out is to cost at most 4 times as much.
void sheet_and_its_text(benchmark::State& state) {
    const project<inch> p = roll(state.range(0) != 0);
    double steps = 0;
    for (auto _ : state) {
        const sheet<inch> made = sheet_of(p);
        steps = static_cast<double>(made.steps.groups.size());
        benchmark::DoNotOptimize(to_text(made));
    }
    state.counters["steps"] = steps;
}
BENCHMARK(sheet_and_its_text)->Arg(0)->Arg(1)->Unit(benchmark::kMicrosecond);

} // namespace
