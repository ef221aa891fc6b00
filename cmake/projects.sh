#!/bin/sh
# sh cmake/projects.sh: what cmake/calculator.sh builds, and an add-on of it, under build/calculator,
#   turncloth-projects-<version>.tgz   projects as files, as an npm package of its own: their sheets and their handouts
#   page/projects                      the page that opens such a file, which the page of sums then links
# Both have an engine of their own, which holds all that makes a sheet and draws a handout; so it is built apart.
set -eu
cd "$(dirname "$0")/.."
sh cmake/calculator.sh
built=build/calculator package=$built/projects
rm -rf "$package" "$built"/turncloth-projects-*.tgz "$built/page/projects"
mkdir -p "$built/packages" "$built/objects" "$package" "$built/page/projects"
ln -sfn /usr/include/boost "$built/packages/boost"
ln -sfn /usr/include/nlohmann "$built/packages/nlohmann"
export NODE_PATH=/usr/share/nodejs

# What takes longest comes first.
printf 'examples/calculator/%s.cpp\n' projects/made_in_inches projects/made_in_centimetres projects/project_answer \
    projects/page calculation told |
    xargs -P "$(nproc)" -I{} sh -c 'em++ -std=c++20 -Oz -fwasm-exceptions -Wall -Wextra -Iinclude \
        -isystem "$1/packages" -c "$2" -o "$1/objects/$(basename "$2" .cpp).o"' compile "$built" {}
em++ -Oz -fwasm-exceptions -sMODULARIZE -sEXPORT_ES6 -sALLOW_MEMORY_GROWTH -sENVIRONMENT=web -sFILESYSTEM=0 \
    -sEXPORTED_RUNTIME_METHODS=cwrap "$built"/objects/*.o -o "$package/engine.js"
rm -r "$built/packages" "$built/objects"

version=$(sed -n 's/^#define TURNCLOTH_VERSION_[MP][AIJNORTCH]* //p' include/turncloth/version.hpp | paste -sd.)
cp examples/calculator/projects/package/* examples/calculator/package/load.js LICENSE "$package"
cp include/turncloth/design/project_design.schema.json include/turncloth/sheet/sheet.schema.json "$package"
sed "s/@version@/$version/" examples/calculator/projects/package/package.json >"$package/package.json"
(cd "$built" && npm pack --silent ./projects >/dev/null)
cp "$package"/*.js "$package/engine.wasm" examples/calculator/projects/index.html examples/designs/*.json "$built/page/projects"
link='<p><a href="projects/index.html">A project from a file: its handout at your size</a></p>'
sed -i "s|<!-- projects -->|$link|" "$built/page/index.html"
echo "The add-on is $built/turncloth-projects-$version.tgz; its page is in $built/page/projects."
