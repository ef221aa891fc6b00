#!/bin/sh
# sh cmake/calculator.sh: installs what is missing and builds the blog's calculator as one static folder,
# build/calculator, that a browser opens as it is: index.html and calculator.js with the WebAssembly inside.
set -eu
cd "$(dirname "$0")/.."
. cmake/packages.sh

need_packages emscripten libboost-dev nlohmann-json3-dev
mkdir -p build/calculator/packages
# The system's headers must not be seen by a compiler for another machine, so the two packages stand in a folder alone.
ln -sfn /usr/include/boost build/calculator/packages/boost
ln -sfn /usr/include/nlohmann build/calculator/packages/nlohmann
NODE_PATH=/usr/share/nodejs em++ -std=c++20 -O2 -fexceptions -Wall -Wextra -Iinclude -isystem build/calculator/packages \
    examples/calculator/answer.cpp examples/calculator/page.cpp -o build/calculator/calculator.js \
    -sMODULARIZE -sEXPORT_NAME=turncloth_calculator -sSINGLE_FILE -sALLOW_MEMORY_GROWTH -sENVIRONMENT=web \
    -sEXPORTED_RUNTIME_METHODS=cwrap
cp examples/calculator/index.html build/calculator/
rm -r build/calculator/packages
echo "The calculator is in build/calculator: open index.html."
