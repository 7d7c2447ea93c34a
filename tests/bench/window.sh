#!/usr/bin/env bash
# window.sh : the window with a library of 10 photos and with one of 100,000, in the same run: first
# paint of all photos, frames while scrolling, a key to the next photo going round the head, and
# looking for a word. Offscreen; runs alternate, the middle one counts.
set -Eeuo pipefail
cd "$(dirname "$0")/../.."

folder=${BENCH_FOLDER:-${TMPDIR:-/tmp}/quarterturn-bench}
build=${BENCH_BUILD:-build/bench}
runs=${BENCH_RUNS:-5}
few=10
many=100000
results=$(mktemp -d)
trap 'rm -rf "$results" "$folder/window"' EXIT

cmake -G Ninja -S . -B "$build" -DCMAKE_BUILD_TYPE=Release -DQUARTERTURN_BUILD_TESTS=ON \
  --log-level=WARNING
ninja -C "$build" --quiet bench_window
mkdir -p "$folder"

for run in $(seq "$runs"); do
  for count in "$few" "$many"; do
    rm -rf "$folder/window"
    "$build/tests/bench/bench_window" "$folder/window" "$count" >>"$results/$count"
  done
done

middle() { awk -v column="$2" '{ print $column }' "$results/$1" | sort -n |
  awk '{ value[NR] = $1 } END { print value[int((NR + 1) / 2)] }'; }

column=0
for what in 'First paint of all photos' 'A frame while scrolling, median' \
  'A frame while scrolling, 95th percentile' 'Round the head, key to next photo' \
  'Looking for a word'; do
  column=$((column + 1))
  awk -v what="$what" -v one="$(middle "$few" "$column")" -v other="$(middle "$many" "$column")" \
    -v few="$few" -v many="$many" 'BEGIN {
    printf "%s: %.2f ms with %d photos, %.2f ms with %d; ratio %.2f.\n", what, one, few, other, many,
      other / one }'
done
