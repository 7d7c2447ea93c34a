#!/usr/bin/env bash
# start.sh : from nothing to a printed contact sheet. Installs what is needed, builds, and does the
# whole job on the demo photos in a fresh library, showing every command that it runs. Where there is
# a display, it then opens the window on that library.
set -euo pipefail
cd "$(dirname "$0")/.."

bash app/install_packages.sh app/packages.txt

echo "Building qturn and the window in build/release; the first time this takes some minutes."
cmake -G Ninja -S . -B build/release -DCMAKE_BUILD_TYPE=Release -DCMAKE_UNITY_BUILD=ON \
  --log-level=WARNING
quiet=(--quiet)
if [ -t 1 ]; then quiet=(); fi  # on a terminal it counts in one line
ninja -C build/release "${quiet[@]}" qturn quarterturn

demo=$(mktemp -d -t quarterturn-demo-XXXXXX)
bash app/demo.sh build/release/app/qturn "$demo"

if [ -n "${DISPLAY:-}${WAYLAND_DISPLAY:-}" ]; then
  printf '\nThe window opens on the same library. To open it again:\n'
  printf '  $ build/release/app/quarterturn/quarterturn --library %s/library\n' "$demo"
  exec build/release/app/quarterturn/quarterturn --library "$demo/library"
fi
printf '\nWith a display, this script opens the window on the same library.\n'
