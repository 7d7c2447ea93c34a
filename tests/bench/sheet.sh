#!/usr/bin/env bash
# sheet.sh : an A4 sheet of 24 photos of 12 megapixels at 300 dots per inch as JPEG, PDF and PNG, by
# `qturn sheet` from start to end, against ImageMagick's montage with as many pixels for each photo
# and for the page, shrinking while it reads. Debian lets montage write no PDF: ours stands against its
# JPEG, which is less work. Runs alternate; the middle one counts.
set -Eeuo pipefail
source "$(dirname "$0")/common.sh"
trap 'rm -rf "$ours" "$theirs" "$folder"/{library,sheet.*,montage.*}' EXIT
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
sheet() { qturn sheet --sitting 1 --replace --out "$folder/sheet.$1"; }

# A frame is 27.7 mm wide on our sheet; six columns and four rows share the page of 2480 × 3508.
montage_24() {
  local files=("$photos"/*.jpg)
  montage -define jpeg:size=327x245 "${files[@]:0:24}" -geometry 327x245+43+316 -tile 6x4 \
    "${@:2}" "$folder/montage.$1"
}

# compare OURS THEIRS [options of montage]: by their endings.
compare() {
  local run
  : >"$ours"
  : >"$theirs"
  for run in $(seq "$runs"); do
    seconds sheet "$1" >>"$ours"
    seconds montage_24 "${@:2}" >>"$theirs"
    tail -qn1 "$ours" "$theirs" | paste -sd' ' | awk -v run="$run" -v ours="$1" -v theirs="$2" '{
      printf "run %d: sheet as %s %.3f s, montage as %s %.2f s\n", run, ours, $1, theirs, $2 }'
  done
  awk -v o="$(middle <"$ours")" -v m="$(middle <"$theirs")" -v ours="$1" 'BEGIN {
    printf "A sheet of 24 photos as %s takes %.3f s, 1/%.1f of the time of montage.\n", ours, o, m / o
  }'
}

library_of_24
compare jpg jpg -quality 92
compare pdf jpg -quality 92
compare png png
identify -format 'Pixels of %f: %wx%h\n' "$folder"/sheet.{jpg,png} "$folder"/montage.{jpg,png}
