#!/usr/bin/env bash
# import.sh [heic] : import of 240 generated JPEGs of 12 megapixels, or of 24 such HEICs, into a fresh
# library (hashed, copied, synced, read back, measured, small pictures kept), against vipsthumbnail
# making small pictures alone, in two processes with half of the files each. Runs alternate; the
# middle one counts.
set -Eeuo pipefail
source "$(dirname "$0")/common.sh"
trap 'rm -rf "$ours" "$theirs" "$folder/library" "$folder/vips"' EXIT
kind=jpg

make_heics() {
  local heics=$folder/photos-24-heic file
  if [ ! -d "$heics" ]; then
    rm -rf "$heics.part"
    mkdir -p "$heics.part"
    for file in $(printf '%s\n' "$photos"/*.jpg | head -24); do
      heif-enc -q 45 -p preset=ultrafast -o "$heics.part/$(basename "$file" .jpg).heic" "$file" >/dev/null
    done
    mv "$heics.part" "$heics"
  fi
  photos=$heics
  count=24
  kind=heic
}

vips() {
  local files=("$photos"/*."$kind")
  local half=$((${#files[@]} / 2))
  vipsthumbnail --size 512 -o "$folder/vips/%s.jpg[Q=85]" "${files[@]:0:half}" &
  vipsthumbnail --size 512 -o "$folder/vips/%s.jpg[Q=85]" "${files[@]:half}"
  wait
}

if [ "${1:-}" = heic ]; then make_heics; fi
cat "$photos"/* >/dev/null
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
