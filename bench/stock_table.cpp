// Prints how lengths from stock do on a folder of published instances: one line for each, then the totals.
//
//   stock_table <folder> [effort]
//   stock_table made [effort]        200 sets made here: 500 pieces of 100 to 300 lengths, 2 to 9 of them a bar
//
// The folder holds binpack1.txt, binpack2.txt, ... in the format of the OR-Library (J. E. Beasley, OR-Library:
// distributing test problems by electronic mail, 1990): the number of instances; for each its name, the length of
// stock, the number of pieces, the best number of pieces of stock known to the file, and the lengths, with one decimal
// at most. The instances meant are those of E. Falkenauer, A hybrid grouping genetic algorithm for bin packing, Journal
// of Heuristics 2 (1996).
//
// The number in the file is the best that was known when it was written: for four of the instances one piece of stock
// fewer does.
#include <turncloth/cloth/stock/check.hpp>
#include <turncloth/cloth/stock/search.hpp>
#include <turncloth/cloth/stock/solve.hpp>

#include <algorithm>
#include <cctype>
#include <cmath>
#include <cstdint>
#include <cstdio>
#include <ctime>
#include <exception>
#include <filesystem>
#include <fstream>
#include <functional>
#include <map>
#include <random>
#include <stdexcept>
#include <string>
#include <vector>

namespace {

using namespace turncloth;
using namespace turncloth::detail;

struct instance {
    std::string name;
    stock_problem problem;
    std::int64_t listed = 0;
};

instance read_instance(std::istream& in) {
    instance i;
    double stock = 0;
    int pieces = 0;
    in >> i.name >> stock >> pieces >> i.listed;
    const auto tenths = [](double length) { return static_cast<std::int64_t>(std::llround(length * 10)); };
    std::map<std::int64_t, std::int64_t, std::greater<>> counts;
    for (double length = 0; pieces > 0 && in >> length; --pieces)
        ++counts[tenths(length)];
    if (!in || pieces > 0)
        throw std::runtime_error("the instance " + i.name + " ends too soon");
    for (const auto& [length, count] : counts)
        i.problem.wanted.push_back({length, count});
    i.problem.stock.push_back({tenths(stock), {}});
    return i;
}

std::vector<instance> read_folder(const std::filesystem::path& folder) {
    std::vector<std::filesystem::path> files;
    for (const auto& entry : std::filesystem::directory_iterator(folder))
        if (const std::string name = entry.path().filename().string();
            name.starts_with("binpack") && std::isdigit(static_cast<unsigned char>(name[7])))
            files.push_back(entry.path());
    std::sort(files.begin(), files.end());
    std::vector<instance> all;
    for (const auto& file : files) {
        std::ifstream in(file);
        int instances = 0;
        for (in >> instances; instances > 0; --instances)
            all.push_back(read_instance(in));
    }
    return all;
}

// A person's plan: the longest piece that still goes in, again and again.
std::int64_t first_fit(const stock_problem& p) {
    detail::stock_task task;
    detail::stock_rest rest;
    for (const stock_demand& d : p.wanted) {
        task.size.push_back(d.length);
        rest.wanted.push_back(d.count);
    }
    task.kinds.push_back({p.stock.front().length, 1});
    rest.on_hand.push_back(detail::no_limit);
    return detail::cost_of(task, detail::first_fit_decreasing(task, rest, detail::first_choice::longest));
}

struct totals {
    int instances = 0, proved = 0, over_bound = 0, over_listed = 0, faulty = 0;
    double seconds = 0, longest = 0, ratio = 0;

    void add(const instance& i, const stock_plan& plan, std::int64_t plain, double took) {
        ++instances;
        proved += plan.proved_best ? 1 : 0;
        over_bound += plan.value > plan.bound + 1 ? 1 : 0;
        over_listed += plan.value > i.listed ? 1 : 0;
        faulty += faults_of(plan, i.problem).empty() ? 0 : 1;
        seconds += took;
        longest = std::max(longest, took);
        ratio += static_cast<double>(plain) / static_cast<double>(plan.value);
    }
};

// Set number `seed`, the same on every machine.
stock_problem made_set(unsigned seed) {
    std::mt19937 dice(seed + 1000);
    const auto roll = [&dice](std::int64_t low, std::int64_t high) {
        return low + static_cast<std::int64_t>(dice() % static_cast<std::uint32_t>(high - low + 1));
    };
    constexpr std::int64_t stock = 10'000, pieces = 500;
    const std::int64_t lengths = roll(100, 300), in_one = roll(2, 9);
    stock_problem p;
    p.stock.push_back({stock, {}});
    for (std::int64_t i = 0; i < lengths; ++i) {
        const std::int64_t length = roll(stock / (in_one + 4) + 1, std::min(stock, 2 * stock / in_one));
        p.wanted.push_back({length, 1});
    }
    for (std::int64_t more = lengths; more < pieces; ++more)
        ++p.wanted[static_cast<std::size_t>(roll(0, lengths - 1))].count;
    return p;
}

int print_made(std::int64_t effort) {
    int proved = 0, over = 0, faulty = 0;
    double seconds = 0, longest = 0;
    constexpr unsigned sets = 200;
    for (unsigned seed = 0; seed < sets; ++seed) {
        const stock_problem p = made_set(seed);
        const std::clock_t start = std::clock();
        const stock_plan plan = plan_stock(p, effort);
        const double took = static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC;
        seconds += took;
        longest = std::max(longest, took);
        proved += plan.proved_best ? 1 : 0;
        over += plan.value > plan.bound + 1 ? 1 : 0;
        faulty += faults_of(plan, p).empty() ? 0 : 1;
    }
    std::printf("%u sets: %d proved best, %d more than one over the bound, %d faulty plans\n", sets, proved, over,
                faulty);
    std::printf("%.3f s of processor time each, %.3f s at most\n", seconds / sets, longest);
    return faulty == 0 && over == 0 ? 0 : 1;
}

int print_table(const std::filesystem::path& folder, std::int64_t effort) {
    std::printf("%-10s %6s %6s %6s %10s %7s %9s\n", "instance", "stock", "bound", "listed", "first fit", "proved",
                "seconds");
    totals sum;
    for (const instance& i : read_folder(folder)) {
        const std::clock_t start = std::clock();
        const stock_plan plan = plan_stock(i.problem, effort);
        const double took = static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC;
        const std::int64_t plain = first_fit(i.problem);
        sum.add(i, plan, plain, took);
        std::printf("%-10s %6lld %6lld %6lld %10lld %7s %9.4f\n", i.name.c_str(), static_cast<long long>(plan.value),
                    static_cast<long long>(plan.bound), static_cast<long long>(i.listed), static_cast<long long>(plain),
                    plan.proved_best ? "yes" : "no", took);
    }
    if (sum.instances == 0)
        throw std::runtime_error("no binpack1.txt, binpack2.txt, ... in " + folder.string());
    std::printf("\n%d instances: %d proved best (%.1f %%), %d more than one over the bound, %d over the listed number, "
                "%d faulty plans\n",
                sum.instances, sum.proved, 100.0 * sum.proved / sum.instances, sum.over_bound, sum.over_listed,
                sum.faulty);
    std::printf(
        "first fit decreasing takes %.4f times the stock on average; %.3f s of processor time each, %.3f s at most\n",
        sum.ratio / sum.instances, sum.seconds / sum.instances, sum.longest);
    return sum.faulty == 0 ? 0 : 1;
}

} // namespace

int main(int argc, char** argv) {
    if (argc < 2 || argc > 3) {
        std::fputs("usage: stock_table <folder with binpack1.txt, binpack2.txt, ..., or made> [effort]\n", stderr);
        return 2;
    }
    try {
        const std::int64_t effort = argc > 2 ? std::stoll(argv[2]) : turncloth::default_stock_effort;
        return std::string(argv[1]) == "made" ? print_made(effort) : print_table(argv[1], effort);
    } catch (const std::exception& e) {
        std::fprintf(stderr, "stock_table: %s\n", e.what());
        return 2;
    }
}
