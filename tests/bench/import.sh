#!/usr/bin/env bash
# import.sh : import of 240 generated JPEGs of 12 megapixels into a fresh library (hashed, copied,
# synced, read back, measured, small pictures kept), against vipsthumbnail making small pictures
# alone, in two processes with half of the files each. Runs alternate; the middle one counts.
set -Eeuo pipefail
source "$(dirname "$0")/common.sh"
trap 'rm -rf "$ours" "$theirs" "$folder/library" "$folder/vips"' EXIT

vips() {
  local files=("$photos"/*.jpg)
  local half=$((${#files[@]} / 2))
  vipsthumbnail --size 512 -o "$folder/vips/%s.jpg[Q=85]" "${files[@]:0:half}" &
  vipsthumbnail --size 512 -o "$folder/vips/%s.jpg[Q=85]" "${files[@]:half}"
  wait
}

for run in $(seq "$runs"); do
  rm -rf "$folder/library" "$folder/vips"
  mkdir "$folder/vips"
  "$build/tests/bench/bench_import" "$photos" "$folder/library" >>"$ours"
  seconds vips >>"$theirs"
  tail -qn1 "$ours" "$theirs" | paste -sd' ' | awk -v run="$run" '{
    printf "run %d: import %.2f s (at most %d MB), vipsthumbnail %.2f s\n", run, $2, $3, $4 }'
done

awk -v n="$count" -v o="$(awk '{ print $2 }' "$ours" | middle)" -v v="$(middle <"$theirs")" \
  -v m="$(awk '{ print $3 }' "$ours" | sort -n | tail -1)" 'BEGIN {
  printf "Import: %.1f photos a second, at most %d MB of memory.\n", n / o, m
  printf "vipsthumbnail, two processes: %.1f photos a second.\n", n / v
  printf "Import is %.2f times as fast as vipsthumbnail.\n", v / o
}'
