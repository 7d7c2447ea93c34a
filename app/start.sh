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
if [ -t 1 ]; then
  ninja -C build/release qturn quarterturn  # it counts in one line
else
  # A line for every tenth, and whatever else it has to say.
  ninja -C build/release qturn quarterturn | awk '
    /^\[[0-9]+\/[0-9]+\]/ {
      split(substr($1, 2), part, /[\/\]]/)
      tenth = int(10 * part[1] / part[2])
      if (tenth > told) { told = tenth; print "Built: " 10 * tenth " %"; fflush() }
      next
    }
    { print; fflush() }'
fi

demo=$(mktemp -d -t quarterturn-demo-XXXXXX)
bash app/demo.sh build/release/app/qturn "$demo"

if [ -n "${DISPLAY:-}${WAYLAND_DISPLAY:-}" ]; then
  printf '\nThe window opens on the same library. To open it again:\n'
  printf '  $ build/release/app/quarterturn/quarterturn --library %s/library\n' "$demo"
  exec build/release/app/quarterturn/quarterturn --library "$demo/library"
fi
printf '\nWith a display, this script opens the window on the same library.\n'
