#!/usr/bin/env bash
# run.sh [COUNT] : compares our speed with other programs' on the same files, and prints ratios.
# Import: COUNT (240) generated JPEGs of 12 megapixels into a fresh library (hashed, copied, synced,
# read back, measured, small pictures kept), against vipsthumbnail making small pictures alone, in
# two processes with half of the files each. Runs alternate, files lie in the page cache for both,
# and the middle one of the runs counts. Files are kept in BENCH_FOLDER for the next time.
set -Eeuo pipefail
cd "$(dirname "$0")/../.."

count=${1:-240}
runs=${BENCH_RUNS:-5}
folder=${BENCH_FOLDER:-${TMPDIR:-/tmp}/quarterturn-bench}
build=${BENCH_BUILD:-build/tests}
photos=$folder/photos-$count
mkdir -p "$folder"

if [ ! -x "$build/tests/bench/bench_import" ]; then
  cmake -G Ninja -S . -B "$build" -DQUARTERTURN_BUILD_TESTS=ON --log-level=WARNING
  ninja -C "$build" --quiet bench_import bench_photos
fi

if [ ! -d "$photos" ]; then
  echo "Making $count photos of 12 megapixels in $photos."
  rm -rf "$photos.part"
  "$build/tests/bench/bench_photos" "$photos.part" "$count"
  mv "$photos.part" "$photos"
fi

now() { date +%s.%N; }
middle() { sort -n | awk '{ value[NR] = $1 } END { print value[int((NR + 1) / 2)] }'; }

# Seconds that vipsthumbnail takes, in two processes at once. Small pictures of the size we keep.
vips_seconds() {
  rm -rf "$folder/vips" && mkdir "$folder/vips"
  local files=("$photos"/*.jpg) begun
  local half=$((${#files[@]} / 2))
  begun=$(now)
  vipsthumbnail --size 512 -o "$folder/vips/%s.jpg[Q=85]" "${files[@]:0:half}" &
  vipsthumbnail --size 512 -o "$folder/vips/%s.jpg[Q=85]" "${files[@]:half}"
  wait
  echo "$begun $(now)" | awk '{ print $2 - $1 }'
}

cat "$photos"/*.jpg >/dev/null  # into the page cache
for run in $(seq "$runs"); do
  rm -rf "$folder/library"
  "$build/tests/bench/bench_import" "$photos" "$folder/library" >>"$folder/ours.$$"
  vips_seconds >>"$folder/vips.$$"
  tail -qn1 "$folder/ours.$$" "$folder/vips.$$" | paste -sd' ' |
    awk -v run="$run" '{ printf "run %d: import %.2f s (peak %d MB), vipsthumbnail %.2f s\n", run, $2, $3, $4 }'
done
ours=$(awk '{ print $2 }' "$folder/ours.$$" | middle)
vips=$(middle <"$folder/vips.$$")
memory=$(awk '{ print $3 }' "$folder/ours.$$" | sort -n | tail -1)
rm -rf "$folder/ours.$$" "$folder/vips.$$" "$folder/library" "$folder/vips"
awk -v n="$count" -v o="$ours" -v v="$vips" -v m="$memory" 'BEGIN {
  printf "Import of %d photos: %.1f photos/s, peak %d MB.\n", n, n / o, m
  printf "vipsthumbnail, two processes: %.1f photos/s.\n", n / v
  printf "Import is %.2f times as fast as vipsthumbnail.\n", v / o
}'
