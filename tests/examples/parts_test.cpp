// A table done by several threads, or in parts by several processes, gives byte for byte what one run gives.
#include "../../examples/command/in_order.hpp"
#include "../../examples/sheets/part.hpp"
#include "program.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <atomic>
#include <chrono>
#include <map>
#include <stdexcept>
#include <thread>

namespace {

/// Of every project, with names that many rows share, and rows of every kind that cannot be made, the first among them.
std::string mixed_table() {
    std::string table = "project,width,height,name\nhammock,1,1,\n";
    for (int i = 0; i < 41; ++i) {
        const char* const projects[] = {"organiser", "tool-roll", "kneeling-pad"};
        const std::string width = i % 10 == 7 ? "nothing" : i % 10 == 8 ? "1" : std::to_string(18 + i % 4);
        table += std::string(projects[i % 3]) + "," + width + ",14," + (i % 2 == 0 ? "shed" : "") + "\n";
    }
    return table;
}

std::map<std::string, std::string> contents(const scratch& dir, const std::string& folder) {
    std::map<std::string, std::string> all;
    for (const std::string& name : dir.files(folder))
        all[name] = dir.read(folder + "/" + name);
    return all;
}

/// How eight commands are run at once and their outputs joined: by GNU parallel (Debian: parallel) or by POSIX's shell.
std::string eight_parts(const std::string& rest) {
    const std::string command = "'" TURNCLOTH_SHEETS_PROGRAM "' --table t.csv --units inches --part ";
    const bool parallel = std::system("parallel --version 2>/dev/null | grep -q '^GNU parallel'") == 0;
    if (parallel)
        return "parallel --will-cite -k -j 4 \"" + command + "{}/8 " + rest +
               "\" ::: 1 2 3 4 5 6 7 8 >.joined 2>.errors";
    return "echo 1 2 3 4 5 6 7 8 | xargs -n 1 -P 4 sh -c \"" + command + "\\$0/8 " + rest +
           " >.part-\\$0 2>.error-\\$0\"; cat .part-? >.joined; cat .error-? >.errors";
}

} // namespace

TEST_CASE("by many threads as by one") {
    const scratch dir;
    dir.write("t.csv", mixed_table());
    const run_result one = dir.run("--table t.csv --json --out one --jobs 1");
    REQUIRE(one.status == 1);
    const std::string told = "\nIn one: ";
    for (const char* jobs : {"2", "7", "1000"}) {
        const std::string folder = "by-" + std::string(jobs);
        const run_result many = dir.run("--table t.csv --json --out " + folder + " --jobs " + jobs);
        CHECK(many.status == 1);
        CHECK(many.out.substr(0, many.out.rfind("\nIn ")) == one.out.substr(0, one.out.rfind(told)));
        CHECK(many.err == one.err);
        CHECK(contents(dir, folder) == contents(dir, "one"));
    }
    CHECK(one.out.find(told) != std::string::npos);
}

TEST_CASE("eight parts joined are the whole: what is printed, what is refused, and every file by its name") {
    const scratch dir;
    dir.write("t.csv", mixed_table());
    const run_result whole = dir.run("--table t.csv --units inches --out whole --jobs 2");
    const std::string in_folder = "cd '" + (dir / "").string() + "' && ";
    std::system((in_folder + eight_parts("")).c_str());
    CHECK(dir.read(".joined") == whole.out.substr(0, whole.out.rfind("\nIn whole")));
    CHECK(dir.read(".errors") == whole.err);
    std::system((in_folder + eight_parts("--quiet --out parts")).c_str());
    CHECK(dir.read(".joined").empty());
    CHECK(contents(dir, "parts") == contents(dir, "whole"));
    CHECK(contents(dir, "parts").size() > 100);
    // More parts than rows: some have none, and end well.
    dir.write("t.csv", "project,width,height\nkneeling-pad,16,9\n");
    CHECK(dir.run("--table t.csv --part 1/3").status == 0);
    CHECK(dir.run("--table t.csv --part 1/3").out.empty());
    CHECK(dir.run("--table t.csv --part 3/3").says("finishes 16 x 9 in"));
}

TEST_CASE("parts follow each other without gap or overlap, and differ by one row at most") {
    for (const std::uint64_t of : {1U, 2U, 3U, 7U, 8U, 999'999U, 1'000'000U})
        for (const std::size_t rows : {0U, 1U, 7U, 8U, 9U, 1000U, 4'000'000'000U}) {
            CHECK(allotment::part{1, of}.first(rows) == 0);
            CHECK(allotment::part{of, of}.end(rows) == rows);
            for (std::uint64_t k = 1; k <= std::min<std::uint64_t>(of, 1000); ++k) {
                const allotment::part p{k, of}, next{k + 1, of};
                const std::size_t size = p.end(rows) - p.first(rows);
                CHECK((size == rows / of || size == rows / of + 1));
                CHECK((k == of || next.first(rows) == p.end(rows)));
            }
        }
}

TEST_CASE("results are taken in order, no thread is too far ahead, and what is thrown comes out") {
    using namespace std::chrono_literals;
    std::vector<std::size_t> taken;
    std::atomic<std::size_t> most_ahead = 0, done = 0;
    allotment::in_order(
        200, 4,
        [&](std::size_t i) {
            const std::size_t ahead = i - std::min<std::size_t>(i, done);
            for (std::size_t seen = most_ahead; seen < ahead && !most_ahead.compare_exchange_weak(seen, ahead);) {
            }
            std::this_thread::sleep_for(i % 7 == 0 ? 1ms : 0ms);
            return i * i;
        },
        [&](std::size_t i, std::size_t square) {
            CHECK(square == i * i);
            taken.push_back(i);
            ++done;
        });
    CHECK(taken.size() == 200);
    CHECK(std::is_sorted(taken.begin(), taken.end()));
    CHECK(most_ahead <= 17); // four for each thread, and one that is taken but not yet counted
    const auto fails = [](std::size_t i) { return i == 30 ? throw std::runtime_error("thirty") : i; };
    const auto nothing = [](std::size_t, std::size_t) {};
    const auto refuses = [](std::size_t, std::size_t i) { i == 5 ? throw std::logic_error("five") : void(); };
    for (const std::size_t jobs : {1U, 4U}) {
        CHECK_THROWS_WITH_AS(allotment::in_order(100, jobs, fails, nothing), "thirty", std::runtime_error);
        CHECK_THROWS_WITH_AS(allotment::in_order(100, jobs, fails, refuses), "five", std::logic_error);
        allotment::in_order(0, jobs, fails, refuses);
    }
}
