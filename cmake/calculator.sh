#!/bin/sh
# sh cmake/calculator.sh [<source>...]: installs what is missing and builds, under build/calculator,
#   turncloth-<version>.tgz   the calculations as an npm package: functions and a custom element, their WebAssembly apart
#   page                      the blog's page of sums, to be put on any web server
# Both have the same engine, compiled once. Sources named add calculations to it (examples/calculator/GUIDE.md).
set -eu
cd "$(dirname "$0")/.."
. cmake/packages.sh

need_packages emscripten libboost-dev nlohmann-json3-dev
command -v npm >/dev/null || need_packages nodejs npm
built=build/calculator
rm -rf "$built/package" "$built/page" "$built/objects" "$built"/turncloth-*.tgz
mkdir -p "$built/packages" "$built/objects" "$built/package" "$built/page"
# The system's headers must not be seen by a compiler for another machine, so the two packages stand in a folder alone.
ln -sfn /usr/include/boost "$built/packages/boost"
ln -sfn /usr/include/nlohmann "$built/packages/nlohmann"
export NODE_PATH=/usr/share/nodejs

# Exceptions of WebAssembly itself, which browsers have had since 2022: no call that may throw goes by way of JavaScript.
printf '%s\n' examples/calculator/*.cpp "$@" | grep -v '/main\.cpp$' |
    xargs -P "$(nproc)" -I{} sh -c 'em++ -std=c++20 -Oz -fwasm-exceptions -Wall -Wextra -Iinclude -Iexamples/calculator \
        -isystem "$1/packages" -c "$2" -o "$1/objects/$(basename "$2" .cpp).o"' compile "$built" {}
em++ -Oz -fwasm-exceptions -sMODULARIZE -sEXPORT_ES6 -sALLOW_MEMORY_GROWTH -sENVIRONMENT=web -sFILESYSTEM=0 \
    -sEXPORTED_RUNTIME_METHODS=cwrap "$built"/objects/*.o -o "$built/package/engine.js"
rm -r "$built/packages" "$built/objects"

version=$(sed -n 's/^#define TURNCLOTH_VERSION_[MP][AIJNORTCH]* //p' include/turncloth/version.hpp | paste -sd.)
cp examples/calculator/package/* LICENSE "$built/package"
sed "s/@version@/$version/" examples/calculator/package/package.json >"$built/package/package.json"
(cd "$built" && npm pack --silent ./package >/dev/null)
cp "$built/package/turncloth.js" "$built/package/load.js" "$built/package/form.js" "$built"/package/engine.* "$built/page"
node examples/calculator/known.mjs "$built/package" examples/calculator/index.html >"$built/page/index.html"
echo "The package is $built/turncloth-$version.tgz; the page is in $built/page, for a web server."
