// How long lays take, how near the bound they come, and how much shorter they are than lays made without a search.
// Counters: over_bound and over_best in %, of_shelves and of_bottom_left as ratios of length.
#include "lay_baselines.hpp"
#include <turncloth/cloth/lay/solve.hpp>

#include <benchmark/benchmark.h>

#include <cstdint>
#include <vector>

namespace {

using turncloth::cutting;
using turncloth::detail::lay_piece;

lay_piece piece(std::int64_t width, std::int64_t length, std::int64_t quantity = 1) {
    lay_piece made;
    made.width = width;
    made.length = length;
    made.quantity = quantity;
    return made;
}

/// A rectangle of width x length cut up from edge to edge at random: the best lay is as long as the rectangle.
std::vector<lay_piece> cut_up(std::int64_t width, std::int64_t length, std::size_t count) {
    turncloth::detail::lay_random chance(count);
    std::vector<lay_piece> parts{piece(width, length)};
    while (parts.size() < count) {
        lay_piece& part = parts[chance.below(static_cast<std::uint32_t>(parts.size()))];
        lay_piece other = part;
        std::int64_t lay_piece::*const side = part.width > part.length ? &lay_piece::width : &lay_piece::length;
        if (part.*side < 2)
            continue;
        const std::int64_t cut = 1 + chance.below(static_cast<std::uint32_t>(part.*side - 1));
        other.*side -= cut;
        part.*side = cut;
        parts.push_back(other);
    }
    return parts;
}

std::vector<lay_piece> at_random(std::size_t count, std::int64_t largest) {
    turncloth::detail::lay_random chance(count);
    std::vector<lay_piece> pieces;
    for (std::size_t i = 0; i < count; ++i)
        pieces.push_back(piece(3 + chance.below(static_cast<std::uint32_t>(largest)),
                               3 + chance.below(static_cast<std::uint32_t>(largest))));
    return pieces;
}

void lay_of(benchmark::State& state, const std::vector<lay_piece>& pieces, std::int64_t width, std::uint64_t steps,
            cutting ways = cutting::free) {
    turncloth::detail::lay_cloth cloth;
    cloth.width = width;
    cloth.cutting = ways;
    turncloth::lay_effort effort;
    effort.steps = steps;
    turncloth::detail::whole_lay found;
    for (auto _ : state)
        benchmark::DoNotOptimize(found = turncloth::detail::shortest_lay(pieces, cloth, effort));
    const auto length = static_cast<double>(found.length);
    state.counters["over_bound"] = 100.0 * (length / static_cast<double>(found.bound) - 1.0);
    state.counters["of_shelves"] = length / static_cast<double>(baselines::shelf_length(pieces, width));
    state.counters["of_bottom_left"] = length / static_cast<double>(baselines::bottom_left_length(pieces, width));
}

/// Pieces of a seed-packet organiser, a tool roll and a kneeling pad, in eighths of an inch, on cloth 44 in wide.
std::vector<lay_piece> society_pieces() {
    constexpr std::int64_t inch = 8;
    return {piece(12 * inch + 4, 24 * inch, 2), piece(4 * inch + 3, 6 * inch + 1, 24),
            piece(20 * inch, 14 * inch, 2),     piece(7 * inch, 9 * inch + 4, 6),
            piece(16 * inch, 10 * inch, 4),     piece(3 * inch + 2, 52 * inch, 1),
            piece(2 * inch + 4, 30 * inch, 3)};
}

void projects(benchmark::State& state) {
    lay_of(state, society_pieces(), std::int64_t{44} * 8, static_cast<std::uint64_t>(state.range(0)),
           static_cast<cutting>(state.range(1)));
}
BENCHMARK(projects)->ArgsProduct({{0, 100'000, 1'000'000}, {0, 1, 2}})->Unit(benchmark::kMillisecond);

void cut_up_rectangle(benchmark::State& state) {
    lay_of(state, cut_up(200, 300, static_cast<std::size_t>(state.range(0))), 200,
           static_cast<std::uint64_t>(state.range(1)));
}
BENCHMARK(cut_up_rectangle)->ArgsProduct({{16, 50, 200, 1000}, {100'000, 1'000'000}})->Unit(benchmark::kMillisecond);

void many_different_pieces(benchmark::State& state) {
    lay_of(state, at_random(static_cast<std::size_t>(state.range(0)), 90), 600, 0);
}
BENCHMARK(many_different_pieces)->Arg(1000)->Arg(15'000)->Unit(benchmark::kMillisecond);

void many_equal_pieces(benchmark::State& state) {
    lay_of(state, {piece(7, 9, state.range(0)), piece(11, 4, state.range(0))}, 110, 0);
}
BENCHMARK(many_equal_pieces)->Arg(100)->Arg(10'000)->Unit(benchmark::kMillisecond);

} // namespace
