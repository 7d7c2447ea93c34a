#!/usr/bin/env bash
# install_packages.sh FILE… : installs the Debian packages listed in the files, one a line.
# Installs nothing when all of them are there.
set -euo pipefail

if ! command -v apt-get >/dev/null || ! command -v dpkg-query >/dev/null; then
  echo "This script installs packages with apt, on Debian 12 or a system like it." >&2
  echo "On another system, install what these files name, then build with cmake: $*" >&2
  exit 1
fi

is_installed() {
  [ "$(dpkg-query -W -f='${db:Status-Status}' "$1" 2>/dev/null)" = installed ]
}

missing=()
for package in $(cat "$@" | sed 's/#.*//'); do
  is_installed "$package" || missing+=("$package")
done
[ "${#missing[@]}" -gt 0 ] || exit 0

echo "Installing ${#missing[@]} Debian packages with apt: ${missing[*]}"
as_root=()
if [ "$(id -u)" -ne 0 ]; then
  if ! command -v sudo >/dev/null; then
    echo "Installing needs the rights of root, and sudo is not there." >&2
    echo "As root, run: apt-get install ${missing[*]}" >&2
    exit 1
  fi
  as_root=(sudo)
fi

apt() {
  "${as_root[@]}" env DEBIAN_FRONTEND=noninteractive apt-get -qq "$@"
}

log=$(mktemp)
trap 'rm -f "$log"' EXIT
if ! { apt update && apt install -y --no-install-recommends "${missing[@]}"; } >"$log" 2>&1; then
  tail -n 20 "$log" >&2
  echo "apt could not install the packages; what it said stands above." >&2
  echo "Look whether this computer is online and the names are known to apt, then start again." >&2
  exit 1
fi
