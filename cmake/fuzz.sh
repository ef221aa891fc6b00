#!/bin/sh
# sh cmake/fuzz.sh [<target> [<inputs>]]: builds the fuzz targets of tests/fuzz and runs one, or each, on a number of inputs:
# those of its corpus and changes of them, the same every time. Without a number it takes some seconds for each.
# New inputs of interest are kept under build/fuzz/found; one that makes a target fail is build/fuzz/fail-<target>-...
set -eu
cd "$(dirname "$0")/.."
. cmake/packages.sh

need_packages clang-14 libclang-rt-14-dev cmake ninja-build libboost-dev libgmp-dev nlohmann-json3-dev libpugixml-dev
cmake -S tests/fuzz -B build/fuzz -G Ninja -DCMAKE_CXX_COMPILER=clang++-14
cmake --build build/fuzz ${1:+--target "$1"}

inputs_of() {
    case $1 in
    reading) echo 40000 ;;
    marks | finishes | notions | tables) echo 10000 ;;
    lays | stock) echo 1500 ;; # each input is searched, more than once
    *) echo 4000 ;;
    esac
}
fuzz() {
    mkdir -p "build/fuzz/found/$1"
    echo "$1: $2 inputs"
    "build/fuzz/$1" -seed=1 -runs="$2" -max_len=400 -len_control=0 -timeout=60 -rss_limit_mb=2048 -verbosity=0 -print_final_stats=1 \
        -artifact_prefix="build/fuzz/fail-$1-" "build/fuzz/found/$1" "tests/fuzz/corpus/$1"
}

if [ $# -gt 0 ]; then
    fuzz "$1" "${2:-$(inputs_of "$1")}"
    exit
fi
for source in tests/fuzz/*.cpp; do
    target=$(basename "$source" .cpp)
    fuzz "$target" "$(inputs_of "$target")"
done
