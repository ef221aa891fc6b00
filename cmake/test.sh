#!/bin/sh
# sh cmake/test.sh: installs what is missing, builds the tests and runs the fast ones.
set -eu
cd "$(dirname "$0")/.."
. cmake/packages.sh

need_packages g++ cmake ninja-build libboost-dev doctest-dev libgmp-dev libglpk-dev libcli11-dev nlohmann-json3-dev libpugixml-dev \
    libcairo2-dev poppler-utils parallel
cmake -S . -B build/turncloth -G Ninja -DCMAKE_CXX_FLAGS=-O1 -DTURNCLOTH_TESTS=ON -DTURNCLOTH_BENCH=OFF
cmake --build build/turncloth
ctest --test-dir build/turncloth -LE slow -j "$(nproc)" --no-tests=error --output-on-failure "$@"
