#!/bin/sh
# sh cmake/reference.sh: installs what is missing and writes the reference, build/reference/index.html.
set -eu
cd "$(dirname "$0")/.."
. cmake/packages.sh

need_packages doxygen
rm -rf build/reference
mkdir -p build/reference
TURNCLOTH_VERSION=$(awk '/^#define TURNCLOTH_VERSION_(MAJOR|MINOR|PATCH)/ { printf "%s%s", dot, $3; dot = "." }' include/turncloth/version.hpp)
export TURNCLOTH_VERSION
doxygen cmake/Doxyfile
echo "The reference is in build/reference: open index.html."
