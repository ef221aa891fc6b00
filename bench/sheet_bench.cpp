// What a figure costs: one panel's cut size, one whole sheet, ten thousand sheets, and the same sheet's text and
// drawings.
//
// Beside the panel stands the same arithmetic written out by hand on doubles: what exactness and checks cost.
#include <turncloth.hpp>

#include <benchmark/benchmark.h>

#include <cstdint>

namespace {

using namespace turncloth;

finished_size<inch> size_of(std::int64_t k) {
    return {length_of<inch>(fraction(96 + k % 64, 8)), length_of<inch>(fraction(120 + k % 48, 8))};
}

void panel_cut_size(benchmark::State& state) {
    const edges<inch> finishes{heading(2_in, "1/4"_in, "1/8"_in), double_turned_hem("1/4"_in, "3/4"_in, "1/8"_in),
                               self_binding("1/2"_in), single_turned_hem("5/8"_in, "1/8"_in)};
    std::int64_t k = 0;
    for (auto _ : state)
        benchmark::DoNotOptimize(panel(size_of(++k), finishes).cut());
}
BENCHMARK(panel_cut_size);

void panel_and_its_finishes(benchmark::State& state) {
    std::int64_t k = 0;
    for (auto _ : state) {
        const edges<inch> finishes{heading(2_in, "1/4"_in, "1/8"_in), double_turned_hem("1/4"_in, "3/4"_in, "1/8"_in),
                                   self_binding("1/2"_in), single_turned_hem("5/8"_in, "1/8"_in)};
        benchmark::DoNotOptimize(panel(size_of(++k), finishes).cut());
    }
}
BENCHMARK(panel_and_its_finishes);

void cut_size_by_hand_on_doubles(benchmark::State& state) {
    double takes[4] = {2.25, 1, 1, 0.625};
    benchmark::DoNotOptimize(takes);
    std::int64_t k = 0;
    for (auto _ : state) {
        ++k;
        double cut[2] = {static_cast<double>(96 + k % 64) / 8 + takes[1] + takes[3],
                         static_cast<double>(120 + k % 48) / 8 + takes[0] + takes[2]};
        benchmark::DoNotOptimize(cut);
    }
}
BENCHMARK(cut_size_by_hand_on_doubles);

/// A roll of two layers with eight pockets, a film window, and three zippers from a roll.
project<inch> tool_roll(const finished_size<inch>& size) {
    project<inch> p("tool roll", size);
    auto& outer = p.add({"outer", "canvas", panel(size, all_round(self_binding("1/2"_in, "1/8"_in)))});
    outer.mark("pocket line", edge::left, divided<finished_edge>(size.width(), 8));
    p.add({"lining", "cotton", panel(size)}).lies_inside(outer);
    const auto hem = single_turned_hem("1/2"_in, "1/8"_in);
    p.add(
         {"window", "film", panel(finished_size(size.width() * fraction(5, 4), 6_in), edges<inch>{hem, hem, hem, hem})})
        .of_film();
    p.add(meeting<inch>{"window", "outer", edge::left, size.width() * fraction(5, 4), size.width(), 8});
    zipper<inch> z{"lining",
                   edge::top,
                   {},
                   {size.width(), "3/4"_in, "1/2"_in},
                   "1/2"_in,
                   "1/4"_in,
                   zipper_supply<inch>::from_roll(180_in)};
    for (const auto& quarter : divided<finished_edge>(size.height(), 4))
        z.centres.push_back(quarter);
    p.add(z);
    return p;
}

void whole_sheet(benchmark::State& state) {
    std::int64_t k = 0;
    for (auto _ : state)
        benchmark::DoNotOptimize(sheet_of(tool_roll(size_of(++k))));
}
BENCHMARK(whole_sheet)->Unit(benchmark::kMicrosecond);

void whole_sheet_and_its_text(benchmark::State& state) {
    std::int64_t k = 0;
    for (auto _ : state)
        benchmark::DoNotOptimize(to_text(sheet_of(tool_roll(size_of(++k)))));
}
BENCHMARK(whole_sheet_and_its_text)->Unit(benchmark::kMicrosecond);

void ten_thousand_sheets(benchmark::State& state) {
    for (auto _ : state)
        for (std::int64_t k = 0; k < 10'000; ++k)
            benchmark::DoNotOptimize(sheet_of(tool_roll(size_of(k))));
}
BENCHMARK(ten_thousand_sheets)->Unit(benchmark::kMillisecond);

} // namespace
