#!/usr/bin/env bash
# start.sh : from nothing to a printed contact sheet. Installs what is needed, builds, and does the
# whole job on the demo photos in a fresh library, showing every command that it runs.
set -euo pipefail
cd "$(dirname "$0")/.."

bash app/install_packages.sh app/packages.txt

echo "Building qturn in build/release."
cmake -G Ninja -S . -B build/release -DCMAKE_BUILD_TYPE=Release --log-level=WARNING
ninja -C build/release --quiet qturn

exec bash app/demo.sh build/release/app/qturn
