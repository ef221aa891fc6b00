# What .ci/run does in part each time and .ci/weekly in whole; sourced after .ci/stages.sh.
sanitizers="-gline-tables-only -fsanitize=address,undefined -fno-sanitize-recover=all"

# build_and_run <build folder> <targets, with blanks between> <folder of the tests> <option of ctest>...
# A test that does not compile fails; the others are built and run all the same.
build_and_run() {
    local built=0
    cmake --build "$1" --target $2 -- -k 0 || built=1
    run_tests "${@:3}" && [ "$built" -eq 0 ]
}
run_tests() { ctest --test-dir "$1" "${@:2}" -V -j "$(nproc)" --timeout 600 --no-tests=error; }

# Sources of the repository alone, not what lies about in a working copy.
sources() { git ls-files -- "$@" | sed -n '/\.[hc]pp$/p;/\.h$/p'; }

# A header that another includes before anything else has been read there with nothing before it; so those that none begins
# with are read, half of them all, and every one has stood alone.
begun_with() { # <header>...: what each includes first
    for header; do
        sed -n '/^$\|^\/\/\|^#ifndef TURNCLOTH_[A-Z_0-9]*_HPP$\|^#define TURNCLOTH_[A-Z_0-9]*_HPP$/d
            s|^#include <\(turncloth/.*\)>.*|include/\1|p; q' "$header"
    done
}
# Each time a third of them, drawn by the commit; all of them once a week.
headers_alone() {
    local headers alone
    headers=$(git ls-files "include/*.hpp") &&
        alone=$(comm -23 <(echo "$headers" | sort) <(begun_with $headers | sort -u)) &&
        echo "$alone" | sh cmake/drawn.sh "$(($(echo "$alone" | wc -l) / ${1:-3}))" |
        xargs -P "$(nproc)" -I{} g++ -std=c++20 -Wall -Wextra -Wpedantic -Wconversion -Wshadow -Werror -fsyntax-only \
            -Iinclude -include {} -x c++ /dev/null
}
