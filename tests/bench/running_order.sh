#!/usr/bin/env bash
# running_order.sh : the running order of twelve clients for one to four stylists.
set -Eeuo pipefail
cd "$(dirname "$0")/../.."

build=${BENCH_BUILD:-build/bench}
cmake -G Ninja -S . -B "$build" -DCMAKE_BUILD_TYPE=Release -DQUARTERTURN_BUILD_TESTS=ON \
  --log-level=WARNING
ninja -C "$build" --quiet bench_running_order
"$build/tests/bench/bench_running_order"
