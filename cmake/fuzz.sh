#!/bin/sh
# sh cmake/fuzz.sh [<target> [<runs>]]: builds the fuzz targets and runs one, or each for a fixed number of inputs.
# New inputs are kept under build/fuzz, and one that makes a target fail is named there fail-...
set -eu
cd "$(dirname "$0")/.."
. cmake/packages.sh

need_packages clang-14 libclang-rt-14-dev cmake ninja-build libboost-dev nlohmann-json3-dev libpugixml-dev
cmake -S tests/fuzz -B build/fuzz -G Ninja -DCMAKE_CXX_COMPILER=clang++-14
cmake --build build/fuzz

fuzz() {
    mkdir -p "build/fuzz/found/$1"
    echo "$1: $2 inputs"
    "build/fuzz/$1" -seed=1 -runs="$2" -max_len=400 -timeout=20 -rss_limit_mb=2048 -print_final_stats=1 -verbosity=0 \
        -artifact_prefix="build/fuzz/fail-$1-" "build/fuzz/found/$1" "tests/fuzz/corpus/$1"
}

if [ $# -gt 0 ]; then
    fuzz "$1" "${2:-1000000}"
    exit
fi
# A few seconds each on one core.
fuzz reading 20000
