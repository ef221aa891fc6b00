// Outlines: 1,000 edges drafted outward, with an allowance each, and searched for crossings, should take under 1 ms, and ten
// times the edges about ten times that. With one allowance Boost.Geometry's mitred buffer does the same work: `ratio` is its
// time over ours.
#include <turncloth/panel/outline.hpp>

#define BOOST_ALLOW_DEPRECATED_HEADERS // Boost.Geometry includes one itself
#pragma GCC diagnostic push
#ifndef __clang__
#pragma GCC diagnostic ignored "-Wmaybe-uninitialized"
#endif
#include <boost/geometry.hpp>
#include <boost/geometry/geometries/multi_polygon.hpp>
#include <boost/geometry/geometries/point_xy.hpp>
#include <boost/geometry/geometries/polygon.hpp>
#pragma GCC diagnostic pop

#include <benchmark/benchmark.h>

#include <chrono>
#include <cmath>
#include <cstddef>
#include <numbers>
#include <random>
#include <vector>

using namespace turncloth;
namespace bg = boost::geometry;

namespace {

using bg_point = bg::model::d2::point_xy<double>;
using bg_polygon = bg::model::polygon<bg_point, false>;
using bg_pieces = bg::model::multi_polygon<bg_polygon>;

/// A round piece with an uneven edge, its edges about 1 cm long.
polygon<centimetre, double> piece_of(std::size_t edges) {
    std::mt19937 bits(7);
    std::uniform_real_distribution<double> unevenness(-0.1, 0.1);
    const double round = static_cast<double>(edges) / (2 * std::numbers::pi);
    polygon<centimetre, double> corners;
    for (std::size_t i = 0; i < edges; ++i) {
        const double angle = static_cast<double>(i) / round, reach = round + unevenness(bits);
        corners.push_back(drafted_point<centimetre>(reach * std::cos(angle), reach * std::sin(angle)));
    }
    return corners;
}

std::vector<edge_allowance<centimetre>> allowances_of(std::size_t edges) {
    std::vector<edge_allowance<centimetre>> allowances;
    for (std::size_t i = 0; i < edges; ++i)
        allowances.emplace_back(drafted_length_of<centimetre>(0.3 + 0.05 * static_cast<double>(i % 3)));
    return allowances;
}

void outline_with_an_allowance_each(benchmark::State& state) {
    const auto edges = static_cast<std::size_t>(state.range(0));
    const auto corners = piece_of(edges);
    const auto allowances = allowances_of(edges);
    std::size_t crossings = 0;
    for (auto _ : state) {
        const outline<centimetre> made(corners, allowances);
        crossings += made.crossings().size();
        benchmark::DoNotOptimize(crossings);
    }
    if (crossings != 0)
        state.SkipWithError("this outline must not cross itself");
    state.SetComplexityN(state.range(0));
}
BENCHMARK(outline_with_an_allowance_each)
    ->RangeMultiplier(10)
    ->Range(100, 100000)
    ->Unit(benchmark::kMicrosecond)
    ->Complexity();

double seconds_of_buffer(const polygon<centimetre, double>& corners, double allowance) {
    bg_polygon ring;
    for (const auto& p : corners)
        bg::append(ring.outer(), bg_point(p.x.value(), p.y.value()));
    bg::append(ring.outer(), bg_point(corners[0].x.value(), corners[0].y.value()));
    const auto begin = std::chrono::steady_clock::now();
    bg_pieces buffer;
    bg::buffer(ring, buffer, bg::strategy::buffer::distance_symmetric<double>(allowance),
               bg::strategy::buffer::side_straight(), bg::strategy::buffer::join_miter(4),
               bg::strategy::buffer::end_flat(), bg::strategy::buffer::point_square());
    benchmark::DoNotOptimize(buffer);
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - begin).count();
}

void outline_beside_boost_buffer(benchmark::State& state) {
    const auto corners = piece_of(1000);
    const std::vector<edge_allowance<centimetre>> allowance = {drafted_length_of<centimetre>(0.3)};
    double ours = 0, theirs = 0;
    for (auto _ : state) {
        const auto begin = std::chrono::steady_clock::now();
        const outline<centimetre> made(corners, allowance);
        benchmark::DoNotOptimize(made.crossings());
        ours += std::chrono::duration<double>(std::chrono::steady_clock::now() - begin).count();
        state.PauseTiming();
        theirs += seconds_of_buffer(corners, 0.3);
        state.ResumeTiming();
    }
    state.counters["ratio"] = theirs / ours;
}
BENCHMARK(outline_beside_boost_buffer)->Unit(benchmark::kMicrosecond);

} // namespace
