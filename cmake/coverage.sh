#!/bin/sh
# sh cmake/coverage.sh [<least percent> [<tree>]]: installs what is missing, runs the fast tests with every line counted, and
# says which lines of include/ none of them ran. Fails below the percentage, 95 where none is given. A tree that was built
# with --coverage, and whose tests have run, is only counted. The counts are run-time ones: a line that only a
# static_assert reaches counts as not run.
set -eu
cd "$(dirname "$0")/.."
. cmake/packages.sh

tree=${2:-build/coverage}
if [ $# -lt 2 ]; then
    need_packages g++ cmake ninja-build libboost-dev doctest-dev libgmp-dev libglpk-dev libcli11-dev nlohmann-json3-dev \
        libpugixml-dev
    cmake -S . -B "$tree" -G Ninja -DCMAKE_CXX_FLAGS="-O0 --coverage" -DTURNCLOTH_BENCH=OFF -DTURNCLOTH_EXAMPLES=OFF
    cmake --build "$tree"
    find "$tree" -name '*.gcda' -delete # of runs before
    ctest --test-dir "$tree" -L fast -j "$(nproc)" --timeout 600 --no-tests=error --output-on-failure
fi
need_packages gcovr
counter=gcov
if grep -q 'CMAKE_CXX_COMPILER:.*clang' "$tree/CMakeCache.txt"; then
    counter="llvm-cov-14 gcov"
fi
# Branches that only an exception takes, and lines that cannot be reached, are not worth a test for their own sake.
gcovr --root . --gcov-executable "$counter" -j "$(nproc)" --filter include/ --exclude-unreachable-branches --print-summary \
    --txt "$tree/lines.txt" --fail-under-line "${1:-95}" "$tree"
cat "$tree/lines.txt"
