#!/usr/bin/env bash
# board_page.sh : the board of six clients with 30 photos of 12 megapixels as a page for a phone, by
# `qturn board` from start to end, heads found and all. Against vipsthumbnail making pictures of the
# same sizes of the same photos and nothing else, in two processes with half of them each. Runs
# alternate; the middle one counts.
set -Eeuo pipefail
source "$(dirname "$0")/common.sh"
trap 'rm -rf "$ours" "$theirs" "$folder/library" "$folder/vips" "$folder/board.html"' EXIT
export QUARTERTURN_LIBRARY=$folder/library
day=2027-05-15
files=("$photos"/*.jpg)
files=("${files[@]:0:30}")

board() { qturn board Wedding --replace --out "$folder/board.html" || [ $? -eq 3 ]; }

vips() {
  rm -rf "$folder/vips"
  mkdir "$folder/vips"
  vipsthumbnail --size "$size" -o "$folder/vips/%s.jpg[Q=82]" "${files[@]:0:15}" &
  vipsthumbnail --size "$size" -o "$folder/vips/%s.jpg[Q=82]" "${files[@]:15}"
  wait
}

library_of_a_wedding "$day" left front right back crown
board
sizes() { grep -o '<img[^>]*width="[0-9]*" height="[0-9]*"' "$folder/board.html"; }
size=$(sizes | sed 's/.*width="\([0-9]*\)" height="\([0-9]*\)"/\1x\2/' | sort -n | tail -1)
for run in $(seq "$runs"); do
  seconds board >>"$ours"
  seconds vips >>"$theirs"
  tail -qn1 "$ours" "$theirs" | paste -sd' ' |
    awk -v run="$run" '{ printf "run %d: board %.2f s, vipsthumbnail %.2f s\n", run, $1, $2 }'
done
echo "Photos on the page: $(sizes | wc -l), at most $size pixels."
awk -v o="$(middle <"$ours")" -v v="$(middle <"$theirs")" 'BEGIN {
  printf "The page takes %.2f s, the pictures alone by vipsthumbnail, two processes, %.2f s: ", o, v
  printf "ratio %.2f.\n", o / v
}'
