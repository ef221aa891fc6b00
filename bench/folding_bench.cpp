// Folding: the whole proof of a panel with four mitred self-bound corners should take under 50 us. Wanted: a page that
// proves every piece as somebody drags its size.
#include <turncloth/measure/read.hpp>
#include <turncloth/panel/made_up.hpp>

#include <benchmark/benchmark.h>

using namespace turncloth;

namespace {

void prove(benchmark::State& state, const panel<inch>& piece, const corners<inch>& ways) {
    bool holds = true;
    for (auto _ : state) {
        holds = holds && static_cast<bool>(fold_panel(piece, ways).proof());
        benchmark::DoNotOptimize(holds);
    }
    if (!holds)
        state.SkipWithError("the proof does not hold");
}

void self_bound_mitred(benchmark::State& state) {
    prove(state, self_bound(finished_size(10_in, 16_in), "1/2"_in, "1/16"_in).outer,
          all_corners(mitred("1/4"_in, "1/16"_in)));
}
BENCHMARK(self_bound_mitred)->Unit(benchmark::kMicrosecond);

void self_bound_stacked(benchmark::State& state) {
    prove(state, self_bound(finished_size(10_in, 16_in), "1/2"_in, "1/16"_in).outer, all_corners(stacked<inch>()));
}
BENCHMARK(self_bound_stacked)->Unit(benchmark::kMicrosecond);

void unequal_hems_mitred(benchmark::State& state) {
    const edges<inch> hems{double_turned_hem("1/2"_in, 2_in), double_turned_hem("1/4"_in, 1_in),
                           double_turned_hem("1/4"_in, "3/4"_in), single_turned_hem("1/2"_in)};
    prove(state, panel(finished_size(18_in, 24_in), hems), all_corners(mitred("1/4"_in, "1/16"_in)));
}
BENCHMARK(unequal_hems_mitred)->Unit(benchmark::kMicrosecond);

/// Decimals have no powers of two for denominators, so their fractions are reduced the long way.
void centimetres_mitred(benchmark::State& state) {
    const panel piece(finished_size(25.3_cm, 40.7_cm), all_round(self_binding(1.3_cm)));
    const auto ways = all_corners(mitred(0.6_cm, 0.1_cm));
    bool holds = true;
    for (auto _ : state) {
        holds = holds && static_cast<bool>(fold_panel(piece, ways).proof());
        benchmark::DoNotOptimize(holds);
    }
    if (!holds)
        state.SkipWithError("the proof does not hold");
}
BENCHMARK(centimetres_mitred)->Unit(benchmark::kMicrosecond);

void most_layers_of_a_self_bound_panel(benchmark::State& state) {
    const auto folded =
        fold_panel(self_bound(finished_size(10_in, 16_in), "1/2"_in).outer, all_corners(mitred("1/4"_in, "1/16"_in)));
    for (auto _ : state)
        benchmark::DoNotOptimize(folded.stack().most_layers());
}
BENCHMARK(most_layers_of_a_self_bound_panel)->Unit(benchmark::kMicrosecond);

void layers_at_one_spot(benchmark::State& state) {
    const auto folded =
        fold_panel(self_bound(finished_size(10_in, 16_in), "1/2"_in).outer, all_corners(mitred("1/4"_in, "1/16"_in)));
    for (auto _ : state)
        benchmark::DoNotOptimize(folded.layers_at(at<finished_edge>("3/8"_in), at<finished_edge>("1/4"_in)));
}
BENCHMARK(layers_at_one_spot);

} // namespace
