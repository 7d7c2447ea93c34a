#!/usr/bin/env bash
# board.sh : from program start to the board of a wedding readable, all photos of its first client
# as sharp as their boxes on a screen of 1920 × 1080, from originals of 12 megapixels: with an empty
# cache, and again with the small pictures kept. Against vipsthumbnail making pictures of that size
# of the same photos, in two processes with half of them each. Runs alternate; the middle one counts.
set -Eeuo pipefail
source "$(dirname "$0")/common.sh"
ninja -C "$build" --quiet bench_board
warm=$(mktemp)
trap 'rm -rf "$ours" "$theirs" "$warm" "$folder/library" "$folder/vips"' EXIT
export QUARTERTURN_LIBRARY=$folder/library
day=2027-05-15

board() { "$build/tests/bench/bench_board" "$QUARTERTURN_LIBRARY" "$day" 1920x1080 >"$folder/board"; }

vips() {
  local files=("$photos"/*.jpg) edge
  edge=$(cut -d' ' -f2 "$folder/board")
  rm -rf "$folder/vips"
  mkdir "$folder/vips"
  vipsthumbnail --size "$edge" -o "$folder/vips/%s.jpg[Q=85]" "${files[@]:0:2}" &
  vipsthumbnail --size "$edge" -o "$folder/vips/%s.jpg[Q=85]" "${files[@]:2:2}"
  wait
}

library_of_a_wedding "$day" left front right back
for run in $(seq "$runs"); do
  rm -rf "$QUARTERTURN_LIBRARY/cache"
  seconds board >>"$ours"
  seconds board >>"$warm"
  seconds vips >>"$theirs"
  tail -qn1 "$ours" "$warm" "$theirs" | paste -sd' ' | awk -v run="$run" '{
    printf "run %d: board %.2f s, again %.2f s, vipsthumbnail %.2f s\n", run, $1, $2, $3 }'
done
awk '{ printf "Photos on the board: %d, at most %d pixels long.\n", $1, $2 }' "$folder/board"
awk -v o="$(middle <"$ours")" -v w="$(middle <"$warm")" -v v="$(middle <"$theirs")" 'BEGIN {
  printf "The board is readable after %.2f s with an empty cache, %.2f s again.\n", o, w
  printf "vipsthumbnail, two processes: %.2f s; ratios %.2f and %.2f.\n", v, o / v, w / v
}'
