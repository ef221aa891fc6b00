#!/bin/sh
# sh cmake/elsewhere.sh [<number>]: installs what is missing, and builds tests/elsewhere/figures.cpp for other machines and in
# other ways, or in so many of them, drawn by the commit; each must print what the machine at hand prints, where the tests hold
# the library against references. Machines that are not there are emulated. The tests that need no other library than doctest
# pass as WebAssembly too.
set -eu
cd "$(dirname "$0")/.."
. cmake/packages.sh

need_packages g++ g++-aarch64-linux-gnu g++-s390x-linux-gnu g++-i686-linux-gnu qemu-user clang-19 libc++-19-dev \
    libc++abi-19-dev emscripten libboost-dev doctest-dev libgmp-dev
work=$PWD/build/elsewhere
mkdir -p "$work/packages"
# The system's headers must not be seen by a compiler for another machine, so the two packages stand in a folder alone.
ln -sfn /usr/include/boost "$work/packages/boost"
ln -sfn /usr/include/doctest "$work/packages/doctest"
figures=tests/elsewhere/figures.cpp
common="-std=c++20 -Wall -Wextra -Iinclude -Itests -isystem $work/packages"
export NODE_PATH=/usr/share/nodejs

# built <name> <run by> <compiler> <option>...: its figures, to compare with those of the machine at hand.
built() {
    name=$1 run_by=$2
    shift 2
    [ "$run_by" != - ] || run_by=
    # The names of compilers, options and runners hold no blanks.
    # shellcheck disable=SC2086
    "$@" $common $figures -o "$work/$name" && $run_by "$work/$name" >"$work/$name.txt"
}
# Each line: name, what runs it (- for nothing), compiler and options; what takes longest first.
always="wasm.js node em++ -O2 -fexceptions -sALLOW_MEMORY_GROWTH -sSINGLE_FILE
here - g++ -O1"
others="portable - g++ -O0 -DTURNCLOTH_PORTABLE
fast_math - g++ -O3 -ffast-math
other_library - clang++-19 -O0 -stdlib=libc++ -Wno-enum-constexpr-conversion
aarch64 qemu-aarch64 aarch64-linux-gnu-g++ -O1 -static
s390x qemu-s390x s390x-linux-gnu-g++ -O1 -static
i686 qemu-i386 i686-linux-gnu-g++ -O1 -static"

if [ $# -gt 1 ]; then
    built "$@"
    exit
fi
ways=$(echo "$always" && echo "$others" | sh cmake/drawn.sh "${1:-100}")
rm -f "$work"/*.txt
echo "$ways" | xargs -P "$(nproc)" -L 1 sh cmake/elsewhere.sh
failed=0
for figures in "$work"/*.txt; do
    cmp "$work/here.txt" "$figures" || failed=1
done
echo "$(wc -l <"$work/here.txt") lines of figures, lays, sheets, drawings and refusals, $(echo "$ways" | wc -l) ways to build"

in_wasm() {
    # shellcheck disable=SC2086
    em++ $common -O2 -fexceptions -sALLOW_MEMORY_GROWTH -sSINGLE_FILE tests/main.cpp tests/measure/require_test.cpp \
        tests/measure/format_test.cpp tests/measure/two_words_test.cpp -o "$work/tests.js" &&
        node "$work/tests.js" --no-colors
}
in_wasm >"$work/tests.log" 2>&1 &
wasm=$!

# Without the compiler's 128-bit numbers the arithmetic is held against GMP again.
set -- fraction total rounding irrational estimate
for name; do set -- "$@" "tests/measure/${name}_test.cpp" && shift; done
# shellcheck disable=SC2086
g++ $common -O1 -DTURNCLOTH_PORTABLE tests/main.cpp "$@" -lgmpxx -lgmp -o "$work/portable_tests"
"$work/portable_tests" --no-colors
wait "$wasm" || failed=1
cat "$work/tests.log"
exit "$failed"
