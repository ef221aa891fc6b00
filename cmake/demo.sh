#!/bin/sh
# sh cmake/demo.sh: installs what is missing, builds the example program and runs it.
set -eu
cd "$(dirname "$0")/.."
. cmake/packages.sh

need_packages g++ cmake ninja-build libboost-dev libcli11-dev nlohmann-json3-dev
cmake -S . -B build/demo -G Ninja -DCMAKE_BUILD_TYPE=Release -DTURNCLOTH_TESTS=OFF -DTURNCLOTH_BENCH=OFF
cmake --build build/demo
build/demo/turncloth_sheets --project all --out build/demo/drawings
