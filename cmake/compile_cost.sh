#!/usr/bin/env bash
# bash cmake/compile_cost.sh [<most>]: what #include <turncloth.hpp> costs g++, over what boost/units/quantity.hpp, <string>
# and <vector> cost, which any program that has quantities and texts pays anyway. Fails above 1.6, or the ratio given.
# Processor time, the least of several runs of each by turns: what else the machine does can only add to a run.
set -euo pipefail
cd "$(dirname "$0")/.."
. cmake/packages.sh

need_packages g++ libboost-dev
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
echo '#include <turncloth.hpp>' >"$work/ours.cpp"
printf '#include <%s>\n' boost/units/quantity.hpp string vector >"$work/base.cpp"

least() { sort -n "$work/$1.times" | head -n 1; }
TIMEFORMAT=%U
for _ in 1 2 3 4 5 6 7 8 9; do
    for name in ours base; do
        { time g++ -std=c++20 -fsyntax-only -Iinclude "$work/$name.cpp"; } 2>>"$work/$name.times"
    done
done
awk -v ours="$(least ours)" -v base="$(least base)" -v most="${1:-1.6}" 'BEGIN {
    printf "%.3f s over %.3f s: %.2f times, where at most %.2f is allowed\n", ours, base, ours / base, most
    exit ours / base > most
}'
