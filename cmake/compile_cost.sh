#!/usr/bin/env bash
# bash cmake/compile_cost.sh [<option for g++>...]: what the library costs g++, as ratios to a file of what any program that
# has quantities, texts and lists includes anyway: boost/units/quantity.hpp, <string>, <vector> and <iostream>.
#
# The single include alone, README's first program, its sheet, and the guide's program, which uses every feature; the programs as they
# are by default, header-only, and as they are with turncloth::compiled.
#
# Two counts are held to what is allowed, as they are the same on every run and machine: the memory that the compiler takes
# for what it reads and writes, and the functions in the object file. The time beside them is shown only: a processor that
# others use too makes twice of it.
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
cp examples/guide/*.hpp "$work"

# The most that is allowed: file, variant, memory as a ratio, functions.
allowed='include plain 2.55 0
include compiled 1.9 0
first plain 3.3 105
first compiled 2.2 68
sheet plain 14.9 1110
sheet compiled 2.75 70
everything plain 37 2890
everything compiled 5.9 210'

# measure <name> <variant> <option>...: the compiler's own report, as "<seconds> <megabytes> <functions>".
measure() {
    local name=$1 variant=$2 object=$work/$1.$2.o
    shift 2
    LC_ALL=C g++ -std=c++20 -O2 -ftime-report -c "$@" -Iinclude "$work/$name.cpp" -o "$object" 2>"$work/report" ||
        { cat "$work/report" >&2; return 1; }
    awk -v functions="$(nm "$object" | grep -c ' [TtWw] ' || true)" '
        $1 == "TOTAL" {
            memory = $NF; size = memory + 0
            print $3, (memory ~ /k$/ ? size / 1024 : memory ~ /G$/ ? size * 1024 : size), functions
        }' "$work/report"
}

measured=$(measure base plain "$@")
read -r base_time base_memory _ <<<"$measured"
echo "base: $base_time s, $base_memory MB"
failed=0
while read -r name variant most_memory most_functions; do
    options=("$@")
    [ "$variant" = plain ] || options+=(-DTURNCLOTH_COMPILED)
    measured=$(measure "$name" "$variant" "${options[@]}")
    read -r time memory functions <<<"$measured"
    awk -v name="$name" -v variant="$variant" -v memory="$memory" -v base_memory="$base_memory" -v most_memory="$most_memory" \
        -v functions="$functions" -v most_functions="$most_functions" -v time="$time" -v base_time="$base_time" 'BEGIN {
        ratio = memory / base_memory
        too_much = ratio > most_memory || functions > most_functions
        printf "%-11s %-9s memory %6.2f, at most %6.2f; %5d functions, at most %5d; time %6.2f%s\n", name, variant, ratio,
            most_memory, functions, most_functions, time / base_time, (too_much ? "  TOO MUCH" : "")
        exit too_much
    }' || failed=1
done <<<"$allowed"
exit "$failed"
