#!/bin/sh
# sh cmake/coverage.sh [<least percent>]: installs what is missing, runs the fast tests with every line counted, and says
# which lines of include/ none of them ran. Fails below the percentage, 95 where none is given. The counts are run-time
# ones: a line that only a static_assert reaches counts as not run.
set -eu
cd "$(dirname "$0")/.."
. cmake/packages.sh

need_packages g++ cmake ninja-build libboost-dev doctest-dev libgmp-dev libglpk-dev libcli11-dev nlohmann-json3-dev \
    libpugixml-dev gcovr
cmake -S . -B build/coverage -G Ninja -DCMAKE_CXX_FLAGS="-O0 --coverage" -DTURNCLOTH_BENCH=OFF -DTURNCLOTH_EXAMPLES=OFF
cmake --build build/coverage
find build/coverage -name '*.gcda' -delete # of runs before
ctest --test-dir build/coverage -L fast -j "$(nproc)" --timeout 600 --no-tests=error --output-on-failure
# Branches that only an exception takes, and lines that cannot be reached, are not worth a test for their own sake.
gcovr --root . --filter include/ --exclude-unreachable-branches --print-summary --txt build/coverage/lines.txt \
    --fail-under-line "${1:-95}" build/coverage
cat build/coverage/lines.txt
