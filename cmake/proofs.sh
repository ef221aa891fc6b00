#!/bin/sh
# sh cmake/proofs.sh [<file>...]: proves the bounds of the arithmetic at its full width, tests/proofs/*.smt2, with the solver
# z3. Each query says beforehand what its answer must be: "unsat" where no integers break the bound, "sat" where the
# assumptions of the next query must be possible. An answer that is another, is missing or takes ten minutes fails.
set -eu
cd "$(dirname "$0")/.."
. cmake/packages.sh

need_packages z3
[ $# -gt 0 ] || set -- tests/proofs/*.smt2
failed=0
for file in "$@"; do
    wanted=$(sed -n 's/^(set-info :status \(sat\|unsat\))$/\1/p' "$file")
    found=$(z3 -smt2 -T:600 "$file" 2>&1) || true
    if [ -n "$wanted" ] && [ "$found" = "$wanted" ] && [ "$(grep -c '^(check-sat)$' "$file")" -eq "$(echo "$wanted" | wc -l)" ]; then
        echo "proved  $file: $(echo "$wanted" | grep -c '^unsat$') bounds"
    else
        printf 'FAILED  %s: wanted\n%s\nfound\n%s\n' "$file" "$wanted" "$found"
        failed=1
    fi
done
exit "$failed"
