#!/bin/sh
# sh cmake/fuzz.sh [<target>|all [<times>]]: builds the fuzz targets of tests/fuzz and runs one, or each, on a number of
# inputs, or on so many times that number: those of its corpus and changes of them, the same every time.
# New inputs of interest are kept under build/fuzz/found; one that makes a target fail is build/fuzz/fail-<target>-...
set -eu
cd "$(dirname "$0")/.."
. cmake/packages.sh

need_packages clang-14 libclang-rt-14-dev cmake ninja-build libboost-dev libgmp-dev doctest-dev nlohmann-json3-dev libpugixml-dev
cmake -S tests/fuzz -B build/fuzz -G Ninja -DCMAKE_CXX_COMPILER=clang++-14
target=${1:-all}
times=${2:-1}
cmake --build build/fuzz --target "$target"

inputs_of() {
    case $1 in
    reading) echo 40000 ;;
    marks | finishes | notions | outlines) echo 10000 ;;
    lays | stock) echo 1500 ;; # each input is searched, more than once
    *) echo 4000 ;;
    esac
}
fuzz() {
    inputs=$(($(inputs_of "$1") * times))
    mkdir -p "build/fuzz/found/$1"
    echo "$1: $inputs inputs"
    "build/fuzz/$1" -seed=1 -runs="$inputs" -max_len=400 -len_control=0 -timeout=120 -rss_limit_mb=2048 -verbosity=0 \
        -print_final_stats=1 -artifact_prefix="build/fuzz/fail-$1-" "build/fuzz/found/$1" "tests/fuzz/corpus/$1"
}

if [ "$target" != all ]; then
    fuzz "$target"
    exit
fi
# All at once, as most of them are done in seconds; each runs to its end, and one that fails is a failure.
running=
for source in tests/fuzz/*.cpp; do
    name=$(basename "$source" .cpp)
    fuzz "$name" >"build/fuzz/$name.log" 2>&1 &
    running="$running $!:$name"
done
failed=0
for each in $running; do
    wait "${each%%:*}" || failed=1
    cat "build/fuzz/${each#*:}.log"
done
exit "$failed"
