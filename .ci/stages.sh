# What .ci/run and .ci/weekly share: stages and tests counted and timed, each with a log of its own. Sourced from the
# project's top folder by bash, after `work` is set; the last line that it prints is "N passed, N failed".
exec </dev/null
export CI=true LC_ALL=C.UTF-8
export LSAN_OPTIONS="suppressions=$PWD/cmake/leaks.txt:print_suppressions=0"
. cmake/packages.sh

logs=$work/logs
rm -rf "$logs" && mkdir -p "$logs"
scratch=$(mktemp -d) # far from the sources
counts=$logs/counts  # a line for each stage: passed, failed
: >"$counts"

finish() {
    wait
    rm -rf "$scratch"
    read -r passed failed < <(awk '{ passed += $1; failed += $2 } END { print passed + 0, NR ? failed : 1 }' "$counts")
    echo "$passed passed, $failed failed"
    [ "$failed" -eq 0 ] || exit 1
}
trap finish EXIT

# stage <name> <command>...: one check. A failure is shown with its log, and the next stage runs all the same. One that keeps
# a single processor at work may stand beside others: `stage ... &`, and `wait` before what needs it done.
stage() {
    local name=$1 log="$logs/${1//[^a-z0-9]/_}.log" since=$SECONDS
    shift
    if "$@" >"$log" 2>&1; then
        echo 1 0 >>"$counts"
        echo "ok      $name ($((SECONDS - since)) s)"
    else
        echo 0 1 >>"$counts"
        echo "FAILED  $name ($((SECONDS - since)) s), from $log:"
        cat "$log"
    fi
}

# tests <name> <command>...: a command that ends in a verbose ctest. A doctest program counts its test cases, another
# test counts once; a command that fails before any test does, or that runs no test, is one failure.
tests() {
    local name=$1 log="$logs/${1//[^a-z0-9]/_}.log" since=$SECONDS code=0 good bad
    shift
    "$@" >"$log" 2>&1 || code=$?
    read -r good bad < <(awk '
        /^[0-9]+: \[doctest\] test cases:/ { split($0, n, /[^0-9]+/); cases_good[n[1]] = n[3]; cases_bad[n[1]] = n[4] }
        /^ *[0-9]+\/[0-9]+ +Test +#[0-9]+:/ {
            id = $0; sub(/^[^#]*#/, "", id); id += 0
            counted = id in cases_good
            if (/ Passed +[0-9.]+ sec/) good += counted ? cases_good[id] : 1
            else { good += cases_good[id]; bad += cases_bad[id] ? cases_bad[id] : 1 }
        }
        END { print good + 0, bad + 0 }' "$log")
    if [ "$bad" -eq 0 ] && { [ "$code" -ne 0 ] || [ "$good" -eq 0 ]; }; then
        bad=1
    fi
    echo "$good" "$bad" >>"$counts"
    if [ "$bad" -eq 0 ]; then
        echo "ok      $name: $good ($((SECONDS - since)) s)"
    else
        echo "FAILED  $name: $good passed, $bad failed ($((SECONDS - since)) s), from $log:"
        cat "$log"
    fi
}
