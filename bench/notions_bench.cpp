// The two curves of the notions, beside a general solver that finds the same figures: Boost.Math's Newton iteration, in
// doubles. Each of ours carries a proven bound besides. The counter `of_boost` is the time over Boost's for the same
// inputs.
#include <turncloth/measure/read.hpp>
#include <turncloth/notions/bow.hpp>
#include <turncloth/notions/tie.hpp>

#include <benchmark/benchmark.h>
#include <boost/math/constants/constants.hpp>
#include <boost/math/tools/roots.hpp>

#include <algorithm>
#include <chrono>
#include <cmath>
#include <random>
#include <tuple>
#include <vector>

using namespace turncloth;

namespace {

struct span_and_film {
    length<inch> arc, chord;
};

std::vector<span_and_film> films() {
    std::mt19937_64 random(1665);
    std::vector<span_and_film> all;
    for (int i = 0; i < 1'000; ++i) {
        const auto arc = length_of<inch>({static_cast<std::int64_t>(random() % 3'000 + 64), 64});
        all.push_back({arc, arc * fraction(static_cast<std::int64_t>(random() % 900 + 50), 1'000)});
    }
    return all;
}

std::vector<rolled<inch>> rolls() {
    std::mt19937_64 random(1690);
    std::vector<rolled<inch>> all;
    all.reserve(1'000);
    for (int i = 0; i < 1'000; ++i)
        all.push_back({length_of<inch>({static_cast<std::int64_t>(random() % 6'400 + 1'600), 64}),
                       length_of<inch>({static_cast<std::int64_t>(random() % 32 + 1), 64}),
                       length_of<inch>({static_cast<std::int64_t>(random() % 128), 64})});
    return all;
}

/// sin x = (chord / arc) x, from the first term of the series; 30 iterations are never needed.
double boosts_bow(double arc, double chord) {
    const double p = chord / arc;
    const auto sine = [p](double x) { return std::make_tuple(std::sin(x) - p * x, std::cos(x) - p); };
    const double start = std::min(3.1, std::sqrt(6 * (1 - p)) * (1 + 0.15 * (1 - p)));
    std::uintmax_t most = 30;
    const double x = boost::math::tools::newton_raphson_iterate(sine, start, 1e-9, 3.1415926535897931, 52, most);
    return chord / 2 * std::tan(x / 2);
}

/// The radius at which an Archimedean spiral from the core is as long as the strip.
double boosts_roll(double strip, double thickness, double core) {
    const double a = thickness / boost::math::constants::two_pi<double>(), r = core / 2;
    const auto grown = [a](double u) { return (u * std::hypot(u, a) + a * a * std::asinh(u / a)) / (2 * a); };
    const double wanted = strip + grown(r);
    const auto spiral = [&](double u) { return std::make_tuple(grown(u) - wanted, std::hypot(u, a) / a); };
    const double start = std::sqrt(r * r + strip * thickness / boost::math::constants::pi<double>());
    std::uintmax_t most = 30;
    return boost::math::tools::newton_raphson_iterate(spiral, start, r, 2 * start, 52, most);
}

/// Nanoseconds for one pass over all inputs, the best of several.
template <class Inputs, class Work>
double pass(const Inputs& inputs, Work work) {
    double best = 1e18;
    for (int k = 0; k < 40; ++k) {
        const auto since = std::chrono::steady_clock::now();
        for (const auto& in : inputs)
            benchmark::DoNotOptimize(work(in));
        const std::chrono::duration<double, std::nano> took = std::chrono::steady_clock::now() - since;
        best = std::min(best, took.count());
    }
    return best;
}

template <class Inputs, class Ours, class Theirs>
void beside_boost(benchmark::State& state, const Inputs& inputs, Ours ours, Theirs theirs) {
    std::size_t k = 0;
    for (auto _ : state)
        benchmark::DoNotOptimize(ours(inputs[k++ % inputs.size()]));
    const double boost = pass(inputs, theirs);
    state.counters["of_boost"] = pass(inputs, ours) / boost;
    state.counters["boost_ns"] = boost / static_cast<double>(inputs.size());
}

double as_double(const length<inch>& l) { return to_double(l.value()); }

void bow(benchmark::State& state) {
    beside_boost(
        state, films(), [](const span_and_film& f) { return detail::bow_height_of(f.arc, f.chord); },
        [](const span_and_film& f) { return boosts_bow(as_double(f.arc), as_double(f.chord)); });
}

void bow_on_a_ruler(benchmark::State& state) {
    beside_boost(
        state, films(),
        [](const span_and_film& f) {
            return bow_height(f.arc, f.chord, length_of<inch>({1, 8}), rounding::nearest);
        },
        [](const span_and_film& f) { return std::round(boosts_bow(as_double(f.arc), as_double(f.chord)) * 8) / 8; });
}

void roll(benchmark::State& state) {
    beside_boost(
        state, rolls(), [](const rolled<inch>& r) { return detail::roll_radius_of(r); },
        [](const rolled<inch>& r) {
            return boosts_roll(as_double(r.strip), as_double(r.thickness), as_double(r.core_diameter));
        });
}

void roll_girth_on_a_ruler(benchmark::State& state) {
    beside_boost(
        state, rolls(),
        [](const rolled<inch>& r) {
            return roll_girth(r, length_of<inch>({1, 8}), rounding::up);
        },
        [](const rolled<inch>& r) {
            const double radius = boosts_roll(as_double(r.strip), as_double(r.thickness), as_double(r.core_diameter));
            return std::ceil(boost::math::constants::two_pi<double>() * radius * 8) / 8;
        });
}

} // namespace

BENCHMARK(bow);
BENCHMARK(bow_on_a_ruler);
BENCHMARK(roll);
BENCHMARK(roll_girth_on_a_ruler);
