// What carrying a design out costs, and that it grows with the gaps between its layers: n x n pockets, each with its own
// hollow judged, by n. `gaps` is counted in each run, so that time over gaps can be read off.
#include <turncloth/making/stitched.hpp>
#include <turncloth/measure/read.hpp>

#include <benchmark/benchmark.h>

#include <cstdint>
#include <string>

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

void carried_out(benchmark::State& state) {
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
BENCHMARK(carried_out)
    ->Args({10, 1})
    ->Args({20, 1})
    ->Args({40, 1})
    ->Args({100, 1})
    ->Args({100, 0})
    ->Unit(benchmark::kMillisecond);

} // namespace
