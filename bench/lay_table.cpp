// lay_table <folder> [free|edge_to_edge|strips] [turning] [seed=<n>] [<steps>...]
//
// Lays every published instance in the folder with each number of steps, checks every lay, and prints its length, gap
// to the known or least possible length, and processor time; then the averages. Instances are text, in one of these
// forms, told apart by how many numbers are on their lines (w across, l along):
//   n / W L / n lines of w l          n / W L / n lines of number w l       L the known best length
//   n / W / n lines of number w l     the gap is to the bound               W L / n / n lines of w l   L a bound
#include <turncloth/cloth/lay/check.hpp>
#include <turncloth/cloth/lay/solve.hpp>

#include <algorithm>
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <sstream>
#include <string>
#include <vector>

namespace {

struct instance {
    std::string name;
    std::int64_t width = 0;
    std::int64_t known = 0; // 0: take the bound
    std::vector<turncloth::detail::lay_piece> pieces;
};

std::vector<std::vector<std::int64_t>> numbers_by_line(const std::filesystem::path& file) {
    std::vector<std::vector<std::int64_t>> lines;
    std::ifstream in(file);
    for (std::string text; std::getline(in, text);) {
        std::istringstream line(text);
        std::vector<std::int64_t> numbers{std::istream_iterator<std::int64_t>(line), {}};
        if (!numbers.empty() && line.eof())
            lines.push_back(std::move(numbers));
    }
    return lines;
}

/// An instance without pieces if the file is none.
instance read(const std::filesystem::path& file) {
    instance read;
    read.name = file.stem().string();
    const auto lines = numbers_by_line(file);
    if (lines.size() < 3)
        return read;
    const bool size_first = lines[0].size() == 2;
    const auto& size = size_first ? lines[0] : lines[1];
    const std::int64_t count = (size_first ? lines[1] : lines[0]).front();
    if (count + 2 > static_cast<std::int64_t>(lines.size()))
        return read;
    read.width = size.front();
    read.known = size.size() > 1 ? size[1] : 0;
    for (std::size_t i = 2; i < static_cast<std::size_t>(count) + 2; ++i) {
        const auto& line = lines[i];
        if (line.size() < 2)
            continue;
        turncloth::detail::lay_piece piece;
        piece.width = line[line.size() - 2];
        piece.length = line[line.size() - 1];
        read.pieces.push_back(piece);
    }
    return read;
}

struct options {
    std::string folder;
    turncloth::cutting cutting = turncloth::cutting::free;
    bool turning = false;
    std::uint64_t seed = 1;
    std::vector<std::uint64_t> steps;
};

options parsed(int count, char** words) {
    options chosen;
    for (int i = 1; i < count; ++i) {
        const std::string word = words[i];
        if (word == "free")
            chosen.cutting = turncloth::cutting::free;
        else if (word == "edge_to_edge")
            chosen.cutting = turncloth::cutting::edge_to_edge;
        else if (word == "strips")
            chosen.cutting = turncloth::cutting::strips;
        else if (word == "turning")
            chosen.turning = true;
        else if (word.starts_with("seed="))
            chosen.seed = std::stoull(word.substr(5));
        else if (chosen.folder.empty())
            chosen.folder = word;
        else
            chosen.steps.push_back(std::stoull(word));
    }
    if (chosen.steps.empty())
        chosen.steps.push_back(turncloth::lay_effort{}.steps);
    return chosen;
}

struct result {
    double gap = 0;
    double milliseconds = 0;
};

result measured(const instance& given, const options& chosen, std::uint64_t steps) {
    turncloth::detail::lay_cloth cloth;
    cloth.width = given.width;
    cloth.cutting = chosen.cutting;
    turncloth::lay_effort effort;
    effort.steps = steps;
    effort.seed = chosen.seed;
    const std::clock_t start = std::clock(); // of this process: others on the machine do not count
    const turncloth::detail::whole_lay found = turncloth::detail::shortest_lay(given.pieces, cloth, effort);
    const std::clock_t taken = std::clock() - start;
    const auto faults = turncloth::detail::faults_of(found, given.pieces, cloth);
    for (const auto& fault : faults)
        std::printf("NOT A LAY: %s\n", fault.what().c_str());
    if (!faults.empty())
        std::exit(1);
    const std::int64_t least = given.known > 0 ? given.known : found.bound;
    result r;
    r.gap = 100.0 * static_cast<double>(found.length - least) / static_cast<double>(least);
    r.milliseconds = 1000.0 * static_cast<double>(taken) / CLOCKS_PER_SEC;
    std::printf(" | %7lld %6.2f %9.1f%s", static_cast<long long>(found.length), r.gap, r.milliseconds,
                found.proved_best() ? " best" : "     ");
    std::fflush(stdout);
    return r;
}

} // namespace

int main(int count, char** words) {
    const options chosen = parsed(count, words);
    if (chosen.folder.empty()) {
        std::puts("lay_table <folder> [free|edge_to_edge|strips] [turning] [seed=<n>] [<steps>...]");
        return 2;
    }
    std::vector<instance> instances;
    for (const auto& file : std::filesystem::directory_iterator(chosen.folder))
        if (instance next = read(file.path()); !next.pieces.empty())
            instances.push_back(std::move(next));
    std::sort(instances.begin(), instances.end(), [](const instance& a, const instance& b) {
        return a.name.size() != b.name.size() ? a.name.size() < b.name.size() : a.name < b.name;
    });
    std::printf("%-12s %6s %6s %6s", "instance", "pieces", "width", "known");
    for (const std::uint64_t steps : chosen.steps)
        std::printf(" | %10llu steps: gap %%, ms", static_cast<unsigned long long>(steps));
    std::vector<result> sums(chosen.steps.size());
    for (instance& next : instances) {
        for (auto& piece : next.pieces)
            if (chosen.turning)
                piece.grain = turncloth::grain::may_turn;
        std::printf("\n%-12s %6zu %6lld %6lld", next.name.c_str(), next.pieces.size(),
                    static_cast<long long>(next.width), static_cast<long long>(next.known));
        for (std::size_t i = 0; i < chosen.steps.size(); ++i) {
            const result r = measured(next, chosen, chosen.steps[i]);
            sums[i].gap += r.gap;
            sums[i].milliseconds = std::max(sums[i].milliseconds, r.milliseconds);
        }
    }
    std::puts("\naverage gap, longest time:");
    for (std::size_t i = 0; i < chosen.steps.size(); ++i)
        std::printf("%12llu steps: %.3f %%, %.1f ms\n", static_cast<unsigned long long>(chosen.steps[i]),
                    sums[i].gap / static_cast<double>(instances.size()), sums[i].milliseconds);
}
