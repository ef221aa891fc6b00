// proof_table [<projects>]
//
// Random projects of 2 to 7 kinds of pieces, half of the kinds free to turn, on cloth 43 in wide: how many of the lays
// are proved the shortest with the effort of a click and of a print, how far the others may be from it, and the
// processor time. Sizes are 2 to 24 in, on whole inches and on quarters.
#include <turncloth/cloth/lay/check.hpp>
#include <turncloth/cloth/lay/solve.hpp>

#include <algorithm>
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <string>
#include <utility>
#include <vector>

namespace {

using turncloth::detail::lay_piece;

constexpr std::int64_t quarters = 4;

/// A project of at least and at most so many pieces, its sizes multiples of `grid` quarters of an inch.
std::vector<lay_piece> project(std::uint64_t seed, std::pair<std::int64_t, std::int64_t> range, std::int64_t grid) {
    turncloth::detail::lay_random chance(seed * 7919 + static_cast<std::uint64_t>(range.first));
    const auto size = [&] { return (2 * quarters + chance.below(89)) / grid * grid; };
    for (;;) {
        std::vector<lay_piece> pieces;
        std::int64_t count = 0;
        for (std::uint32_t kinds = 2 + chance.below(6); kinds > 0; --kinds) {
            lay_piece next;
            next.width = size();
            next.length = size();
            next.quantity = 1 + chance.below(pieces.empty() ? 12 : 6);
            next.grain = chance.below(2) == 0 ? turncloth::grain::fixed : turncloth::grain::may_turn;
            count += next.quantity;
            pieces.push_back(next);
        }
        if (count >= range.first && count <= range.second)
            return pieces;
    }
}

void measure(std::pair<std::int64_t, std::int64_t> range, std::int64_t grid, std::uint64_t projects,
             turncloth::lay_effort effort) {
    turncloth::detail::lay_cloth cloth;
    cloth.width = 43 * quarters;
    std::uint64_t proved = 0;
    double gaps = 0, longest = 0, all = 0;
    for (std::uint64_t seed = 1; seed <= projects; ++seed) {
        const auto pieces = project(seed, range, grid);
        const std::clock_t start = std::clock(); // of this process: others on the machine do not count
        const auto found = turncloth::detail::shortest_lay(pieces, cloth, effort);
        const double taken = 1000.0 * static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC;
        if (!turncloth::detail::faults_of(found, pieces, cloth).empty()) {
            std::puts("NOT A LAY");
            std::exit(1);
        }
        proved += found.proved_best() ? 1U : 0U;
        gaps += 100.0 * static_cast<double>(found.length - found.bound) / static_cast<double>(found.bound);
        longest = std::max(longest, taken);
        all += taken;
    }
    const auto share = [&](double sum) { return sum / static_cast<double>(projects); };
    std::printf("%2lld to %2lld pieces, sizes on %lld/4 in, %8llu steps: %5.1f %% proved, %.2f %% from the bound, "
                "%.1f ms each, %.1f ms at most\n",
                static_cast<long long>(range.first), static_cast<long long>(range.second), static_cast<long long>(grid),
                static_cast<unsigned long long>(effort.steps), 100 * share(static_cast<double>(proved)), share(gaps),
                share(all), longest);
    std::fflush(stdout);
}

} // namespace

int main(int count, char** words) {
    const std::uint64_t projects = count > 1 ? std::stoull(words[1]) : 200;
    const auto click = turncloth::lay_effort::on_a_click(), print = turncloth::lay_effort::to_print();
    for (const auto effort : {click, print})
        for (const std::int64_t grid : {quarters, std::int64_t{1}})
            for (const std::pair<std::int64_t, std::int64_t> range : {std::pair(2, 8), {9, 16}, {17, 30}})
                measure(range, grid, projects, effort);
}
