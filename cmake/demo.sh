#!/bin/sh
# sh cmake/demo.sh: installs what is missing, builds the example programs and runs them.
set -eu
cd "$(dirname "$0")/.."
. cmake/packages.sh

need_packages g++ cmake ninja-build libboost-dev libcli11-dev nlohmann-json3-dev libcairo2-dev
cmake -S . -B build/demo -G Ninja -DCMAKE_BUILD_TYPE=Release -DTURNCLOTH_TESTS=OFF -DTURNCLOTH_BENCH=OFF
cmake --build build/demo --target turncloth_drafting turncloth_sheets
build/demo/turncloth_drafting examples/drafting/kneeling_pad.drafting --out build/demo/kneeling_pad.pdf --cloth "112 cm" --replace
build/demo/turncloth_sheets --project all --out build/demo/drawings --handout html,pdf --replace
