#!/bin/sh
# sh cmake/drawn.sh <number>: so many of the lines it reads, drawn by the commit, so that each is drawn in time and the same
# commit is always tried alike.
seed=$(git rev-parse HEAD)
random=$(mktemp)
trap 'rm -f "$random"' EXIT
yes "$seed" | head -c 65536 >"$random"
shuf -n "$1" --random-source="$random"
