// A sheet's files written together, beside one after the other: `ratio` is the second's time over the first's, at the wall, as
// it is the disk that is waited for. On a disk that has none to wait for both take as long.
#include "../examples/command/files.hpp"

#include <benchmark/benchmark.h>

#include <chrono>
#include <string>
#include <vector>

namespace {

using namespace allotment;

double seconds(const std::chrono::steady_clock::time_point& since) {
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - since).count();
}

void files_of_a_sheet(benchmark::State& state) {
    std::string name = (fs::temp_directory_path() / "turncloth-bench-XXXXXX").string();
    if (::mkdtemp(name.data()) == nullptr)
        return state.SkipWithError("no folder could be made");
    const std::string content(6000, 'x');
    double together = 0, apart = 0;
    for (auto _ : state) {
        const std::string run = "/" + std::to_string(state.iterations()) + "-";
        std::vector<file_to_write> files, others;
        for (int i = 0; i < 7; ++i) {
            files.push_back({name + run + "together." + std::to_string(i), content});
            others.push_back({name + run + "apart." + std::to_string(i), content});
        }
        const auto begun = std::chrono::steady_clock::now();
        write_files(files);
        const double once = seconds(begun);
        for (const file_to_write& f : others)
            write_file(f.path, f.content);
        together += once;
        apart += seconds(begun) - once;
        state.SetIterationTime(once);
        for (const fs::directory_entry& written : fs::directory_iterator(name))
            fs::remove(written.path());
    }
    fs::remove_all(name);
    state.counters["ratio"] = apart / together;
}
BENCHMARK(files_of_a_sheet)->UseManualTime()->Unit(benchmark::kMillisecond);

} // namespace
