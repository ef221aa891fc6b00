#!/bin/sh
# sh cmake/wasm_tests.sh: installs what is missing and runs measure/, page/ and draw/ as WebAssembly under Node.js, where
# std::size_t and pointers have 32 bits and the standard library is another one. Two thousand pairs of fractions, and the
# drawings and pages of sizes from 1 to 10^18, must come out as natively, where the tests hold them against references;
# and the tests that need no other library than doctest pass there too.
set -eu
cd "$(dirname "$0")/.."
. cmake/packages.sh

need_packages g++ emscripten libboost-dev doctest-dev
work=build/wasm
mkdir -p "$work/packages"
# The system's headers must not be seen by a compiler for another machine, so the two packages stand in a folder alone.
ln -sfn /usr/include/boost "$work/packages/boost"
ln -sfn /usr/include/doctest "$work/packages/doctest"
em() {
    NODE_PATH=/usr/share/nodejs em++ -std=c++20 -O2 -fexceptions -Iinclude -Itests -isystem "$work/packages" "$@" \
        -sALLOW_MEMORY_GROWTH -sSINGLE_FILE
}

g++ -std=c++20 -O1 -Iinclude tests/wasm/figures.cpp -o "$work/figures"
em tests/wasm/figures.cpp -o "$work/figures.js"
"$work/figures" >"$work/figures.native.txt"
node "$work/figures.js" >"$work/figures.wasm.txt"
cmp "$work/figures.native.txt" "$work/figures.wasm.txt"
echo "$(wc -l <"$work/figures.native.txt") figures, drawings and refusals are the same"

em tests/main.cpp tests/measure/require_test.cpp tests/measure/format_test.cpp -o "$work/tests.js"
node "$work/tests.js" --no-colors
