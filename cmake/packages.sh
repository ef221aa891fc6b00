# Sourced by the scripts that build. need_packages <package>...: installs the Debian packages that are missing,
# and says so first; when all are there it touches nothing and says nothing.

need_packages() {
    if ! command -v dpkg-query >/dev/null 2>&1; then
        echo "This is not a Debian system, so nothing is installed. It must offer what these packages hold: $*"
        return 0
    fi
    missing=
    for package in "$@"; do
        [ "$(dpkg-query -W -f='${db:Status-Status}\n' "$package" 2>/dev/null | sort -u)" = installed ] ||
            missing="$missing $package"
    done
    [ -n "$missing" ] || return 0

    if [ "$(id -u)" -eq 0 ]; then
        as_root=
    elif command -v sudo >/dev/null 2>&1; then
        as_root=sudo
    else
        echo "Missing packages:$missing. Install them as root: apt-get install$missing" >&2
        return 1
    fi
    echo "Missing packages, about to be installed with apt-get:$missing"
    # Word splitting is wanted: a list of packages, and a prefix that may be empty.
    # shellcheck disable=SC2086
    $as_root env DEBIAN_FRONTEND=noninteractive apt-get update -q </dev/null &&
        $as_root env DEBIAN_FRONTEND=noninteractive apt-get install -q -y --no-install-recommends $missing </dev/null
}
