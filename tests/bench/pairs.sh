#!/usr/bin/env bash
# pairs.sh : the index of 4,000 pairs and of 40,000, in libraries made for it: the first wall, a
# change of the filter with its counts, a search for words, more like this; the median and the 95th
# percentile of thirty each, and how many times as long the larger takes.
set -Eeuo pipefail
cd "$(dirname "$0")/../.."

folder=${BENCH_FOLDER:-${TMPDIR:-/tmp}/quarterturn-bench}
build=${BENCH_BUILD:-build/bench}
few=4000
many=40000
# Each record written has SQLite make and drop small tables in memory; giving that memory back to the
# system each time took longer than the work itself. Nothing is measured under this.
keep_memory=glibc.malloc.trim_threshold=268435456:glibc.malloc.top_pad=16777216
results=$(mktemp -d)
trap 'rm -rf "$results" "$folder/pairs"' EXIT

if [ -z "${BENCH_BUILT:-}" ]; then
  cmake -G Ninja -S . -B "$build" -DCMAKE_BUILD_TYPE=Release -DQUARTERTURN_BUILD_TESTS=ON \
    --log-level=WARNING
  ninja -C "$build" --quiet bench_pairs
fi
mkdir -p "$folder"
for count in "$few" "$many"; do
  rm -rf "$folder/pairs"
  GLIBC_TUNABLES=$keep_memory "$build/tests/bench/bench_pairs" make "$folder/pairs" "$count" \
    >"$results/$count"
  "$build/tests/bench/bench_pairs" measure "$folder/pairs" >>"$results/$count"
done
paste "$results/$few" "$results/$many" | awk -F'\t' -v few="$few" -v many="$many" '{
  printf "%s: %.1f ms with %d pairs, %.1f ms with %d", $1, $2, few, $5, many
  if ($3 != "") printf " (95th percentile %.1f and %.1f)", $3, $6
  printf ", %.1f times as long\n", $5 / $2
}'
