#!/usr/bin/env bash
# bash cmake/compile_cost.sh [<option for g++>...]: what the library costs g++, as ratios to a file of what any program that
# has quantities, texts and lists includes anyway: boost/units/quantity.hpp, <string>, <vector> and <iostream>.
#
# The single include alone, README's first program, its sheet, and the guide's program, which uses every feature; the programs as they
# are by default, header-only, and as they are with turncloth::compiled. Beside each program stands how many functions its
# object file holds. Fails where a ratio is above the one allowed. Processor time, the least of several runs by turns: what
# else the machine does can only add to a run.
set -euo pipefail
cd "$(dirname "$0")/.."
. cmake/packages.sh

need_packages g++ libboost-dev binutils
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
printf '#include <%s>\n' boost/units/quantity.hpp string vector iostream >"$work/base.cpp"
echo '#include <turncloth.hpp>' >"$work/include.cpp"
# The first two programs that README shows.
awk -v to="$work" '
    /^```/ { if (!inside && $0 == "```cpp") { ++n; file = to "/" (n == 1 ? "first" : "sheet") ".cpp" } else file = ""
             inside = !inside; next }
    inside && file != "" && n <= 2 { print > file }' README.md
cp examples/guide/main.cpp "$work/everything.cpp"

# What is allowed: file, most header-only, most compiled.
allowed='include 3.4 2.4
first 6.6 3.8
sheet 58 4.9
everything 120 25'

TIMEFORMAT=%U
compile() { # <name> <variant> <option>...
    local name=$1 variant=$2
    shift 2
    { time g++ -std=c++20 -O2 -c "$@" -Iinclude "$work/$name.cpp" -o "$work/$name.$variant.o" 2>"$work/errors"; } \
        2>>"$work/$name.$variant.times" || { cat "$work/errors"; return 1; }
}
least() { sort -n "$work/$1.times" | head -n 1; }
functions() { nm "$work/$1.o" | grep -c ' [TtWw] ' || true; }

for run in 1 2 3; do
    compile base plain "$@"
    while read -r name _ _; do
        # What takes longest is the least disturbed, so once will do.
        case $name in sheet | everything) [ "$run" -eq 1 ] || continue ;; esac
        compile "$name" plain "$@"
        compile "$name" compiled -DTURNCLOTH_COMPILED "$@"
    done <<<"$allowed"
done
failed=0
base=$(least base.plain)
echo "base: $base s"
while read -r name plain compiled; do
    for variant in plain compiled; do
        awk -v name="$name" -v variant="$variant" -v time="$(least "$name.$variant")" -v base="$base" -v most="${!variant}" \
            -v functions="$(functions "$name.$variant")" 'BEGIN {
            ratio = time / base
            printf "%-11s %-9s %6.2f, at most %5.2f; %5d functions%s\n", name, variant, ratio, most, functions,
                (ratio > most ? "  TOO MUCH" : "")
            exit ratio > most
        }' || failed=1
    done
done <<<"$allowed"
exit "$failed"
