#!/bin/sh
# sh cmake/demo.sh: installs what is missing, builds the example programs and runs them. The tests, if they are asked for
# (test.sh), go on from what it built.
set -eu
cd "$(dirname "$0")/.."
. cmake/packages.sh

need_packages g++ cmake ninja-build libboost-dev libcli11-dev nlohmann-json3-dev libcairo2-dev
built=build/turncloth
cmake -S . -B "$built" -G Ninja -DCMAKE_CXX_FLAGS=-O1 -DTURNCLOTH_TESTS=OFF -DTURNCLOTH_BENCH=OFF
cmake --build "$built" --target turncloth_drafting turncloth_sheets
"$built"/turncloth_drafting examples/drafting/kneeling_pad.json --out "$built"/kneeling_pad.pdf --cloth "112 cm" --replace
"$built"/turncloth_sheets --project all --out "$built"/drawings --handout html,pdf --replace
