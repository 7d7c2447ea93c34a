#!/usr/bin/env bash
# sheet.sh : an A4 sheet of 24 photos of 12 megapixels at 300 dots per inch as JPEG, by
# `qturn sheet` from start to end, against ImageMagick's montage with as many pixels for each photo
# and for the page, shrinking while it reads. Runs alternate; the middle one counts.
set -Eeuo pipefail
source "$(dirname "$0")/common.sh"
trap 'rm -rf "$ours" "$theirs" "$folder/library" "$folder/sheet.jpg" "$folder/montage.jpg"' EXIT
export QUARTERTURN_LIBRARY=$folder/library

library_of_24() {
  local files=("$photos"/*.jpg)
  rm -rf "$QUARTERTURN_LIBRARY"
  qturn init
  qturn client add 'Ada Lindqvist'
  qturn sitting add 'Ada Lindqvist' --starts 2026-11-07T10:00 --ends 2026-11-07T13:00
  qturn import "${files[@]:0:24}" || [ $? -eq 3 ]
  qturn place 1-24 --sitting 1
}
qturn() { "$build/app/qturn" "$@" >/dev/null; }
sheet() { qturn sheet --sitting 1 --replace --out "$folder/sheet.jpg"; }

# A frame is 27.7 mm wide on our sheet; six columns and four rows share the page of 2480 × 3508.
montage_24() {
  local files=("$photos"/*.jpg)
  montage -define jpeg:size=327x245 "${files[@]:0:24}" -geometry 327x245+43+316 -tile 6x4 \
    -quality 92 "$folder/montage.jpg"
}

library_of_24
for run in $(seq "$runs"); do
  seconds sheet >>"$ours"
  seconds montage_24 >>"$theirs"
  tail -qn1 "$ours" "$theirs" | paste -sd' ' |
    awk -v run="$run" '{ printf "run %d: sheet %.2f s, montage %.2f s\n", run, $1, $2 }'
done
identify -format 'Pixels of %f: %wx%h\n' "$folder/sheet.jpg" "$folder/montage.jpg"
awk -v o="$(middle <"$ours")" -v m="$(middle <"$theirs")" 'BEGIN {
  printf "A sheet of 24 photos takes %.2f s; it is made %.2f times as fast as by montage.\n", o, m / o
}'
