#!/bin/sh
# sh cmake/wasm_tests.sh: installs what is missing and runs the tests of measure/, page/ and draw/ once as WebAssembly under
# Node.js, where std::size_t and pointers have 32 bits and the standard library is another one. Then the drawings of sizes
# from 1 to 10^18 inches are compared with those of the native program, byte for byte.
#
# Tests that need a library beside doctest, a file or another program are run natively alone.
set -eu
cd "$(dirname "$0")/.."
. cmake/packages.sh

need_packages g++ emscripten libboost-dev doctest-dev
work=build/wasm
mkdir -p "$work/packages"
# The system's headers must not be seen by a compiler for another machine, so the two packages stand in a folder alone.
ln -sfn /usr/include/boost "$work/packages/boost"
ln -sfn /usr/include/doctest "$work/packages/doctest"

# Each to an object, as one program at once needs too much memory.
em() { NODE_PATH=/usr/share/nodejs em++ -std=c++20 -O1 -fexceptions -Iinclude -Itests -isystem "$work/packages" "$@"; }
objects=
for source in tests/main.cpp $(grep -L -E 'gmp|pugixml|nlohmann|tests/draw/picture|picture\.hpp|<fstream>|popen|glpk|reference\.hpp' \
    $(find tests/measure tests/page tests/draw -name '*_test.cpp' ! -name '*_slow_test.cpp' | sort)); do
    object=$work/$(echo "$source" | tr / _).o
    echo "$source"
    em -c "$source" -o "$object"
    objects="$objects $object"
done
# shellcheck disable=SC2086
em $objects -o "$work/tests.js" -sALLOW_MEMORY_GROWTH -sSTACK_SIZE=1MB 2>/dev/null || em $objects -o "$work/tests.js" -sALLOW_MEMORY_GROWTH
node "$work/tests.js" --no-colors

em tests/draw/sizes.cpp -o "$work/sizes.js" -sALLOW_MEMORY_GROWTH
g++ -std=c++20 -O1 -Iinclude tests/draw/sizes.cpp -o "$work/sizes"
node "$work/sizes.js" >"$work/sizes.wasm.txt"
"$work/sizes" >"$work/sizes.native.txt"
cmp "$work/sizes.wasm.txt" "$work/sizes.native.txt"
echo "$(wc -l <"$work/sizes.native.txt") drawings and refusals are the same"
