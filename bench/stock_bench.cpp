// Lengths from stock: time per plan on instances made here, and the stock that first fit decreasing takes beside it.
//
// `uniform` has pieces of 1/8 to 2/3 of the stock at random; `triplets` are pieces of which three always fill a piece
// of stock exactly, which is the hardest kind for its size; `ties` is one organiser's list many times over. Counters:
// stock used, the proved bound, and how many times as much stock first fit decreasing takes.
#include <turncloth/cloth/stock/solve.hpp>

#include <benchmark/benchmark.h>

#include <cstdint>
#include <map>
#include <random>
#include <vector>

namespace {

using namespace turncloth;
using namespace turncloth::detail;

std::int64_t between(std::mt19937& dice, std::int64_t low, std::int64_t high) {
    return low + static_cast<std::int64_t>(dice() % static_cast<std::uint32_t>(high - low + 1));
}

stock_problem counted(const std::vector<std::int64_t>& lengths, std::int64_t stock) {
    std::map<std::int64_t, std::int64_t> counts;
    for (std::int64_t length : lengths)
        ++counts[length];
    stock_problem p{.wanted = {}, .stock = {{stock, {}}}};
    for (const auto& [length, count] : counts)
        p.wanted.push_back({length, count});
    return p;
}

stock_problem uniform(std::int64_t pieces) {
    std::mt19937 dice(61);
    std::vector<std::int64_t> lengths;
    while (static_cast<std::int64_t>(lengths.size()) < pieces)
        lengths.push_back(between(dice, 20, 100));
    return counted(lengths, 150);
}

stock_problem triplets(std::int64_t pieces) {
    std::mt19937 dice(62);
    std::vector<std::int64_t> lengths;
    while (static_cast<std::int64_t>(lengths.size()) < pieces) {
        const std::int64_t first = between(dice, 380, 490), second = between(dice, 250, (1000 - first) / 2);
        for (std::int64_t length : {first, second, 1000 - first - second})
            lengths.push_back(length);
    }
    return counted(lengths, 1000);
}

stock_problem ties(std::int64_t organisers) {
    return {.wanted = {{180, 4 * organisers}, {76, 6 * organisers}, {268, 2 * organisers}, {43, 9 * organisers}},
            .stock = {{864, {}}, {1440, {}}},
            .loss_per_cut = 1,
            .aim = stock_aim::least_length};
}

// First fit alone is what the search gives when it may take no step beyond it.
template <stock_problem (*make)(std::int64_t)>
void plan(benchmark::State& state) {
    const stock_problem problem = make(state.range(0));
    stock_plan found;
    for (auto _ : state)
        benchmark::DoNotOptimize(found = plan_stock(problem));
    state.counters["stock"] = static_cast<double>(found.value);
    state.counters["bound"] = static_cast<double>(found.bound);
    state.counters["first_fit_ratio"] =
        static_cast<double>(plan_stock(problem, 0).value) / static_cast<double>(found.value);
}

BENCHMARK(plan<uniform>)->Name("stock/uniform")->Arg(120)->Arg(1000)->Arg(10'000)->Unit(benchmark::kMillisecond);
BENCHMARK(plan<triplets>)->Name("stock/triplets")->Arg(60)->Arg(249)->Arg(501)->Unit(benchmark::kMillisecond);
BENCHMARK(plan<ties>)->Name("stock/ties")->Arg(1)->Arg(100)->Arg(5000)->Unit(benchmark::kMillisecond);

} // namespace
