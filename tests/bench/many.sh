#!/usr/bin/env bash
# many.sh : 5,000 photos with EXIF, of two megapixels and about 900 KB each. Looking at what a card
# holds, against exiftool; bringing in again with nothing new, and reading every file of the library,
# against sha256sum; a backup with nothing new, against `rsync -a` of the same library. Runs
# alternate; the middle one counts. All files are read before, and lie in the page cache where it
# is large enough.
set -Eeuo pipefail
source "$(dirname "$0")/common.sh"
many=$folder/many-5000
work=$folder/many
qturn=$build/app/qturn
trap 'rm -rf "$ours" "$theirs" "$work"' EXIT
export QUARTERTURN_LIBRARY=$work/library

# Twelve pictures with a time of their own for each file, and some bytes behind the picture's end.
make_many() {
  [ ! -d "$many" ] || return 0
  echo "Making 5,000 photos in $many."
  rm -rf "$many.part"
  mkdir -p "$many.part/drawn"
  local files=("$photos"/*.jpg)
  vipsthumbnail --size 1632 -o "$many.part/drawn/%s.jpg[Q=90]" "${files[@]:0:12}"
  vipsthumbnail --size 160 -o "$many.part/small.jpg" "${files[0]}"
  exiftool -q -overwrite_original -Make=Invented -Model='Alder 5' -SerialNumber=1234567 \
    -DateTimeOriginal='2027:05:15 10:11:12' -SubSecTimeOriginal=34 -OffsetTimeOriginal=+01:00 \
    -FNumber=2.8 -ISO=400 -ExposureTime=1/125 -FocalLength=50 \
    "-ThumbnailImage<=$many.part/small.jpg" "$many.part/drawn"/*.jpg
  python3 - "$many.part" <<'PYTHON'
import pathlib
import sys

folder = pathlib.Path(sys.argv[1])
drawn = [file.read_bytes() for file in sorted((folder / "drawn").iterdir())]
for number in range(5000):
    minutes = number % 600
    taken = f"2027:05:{1 + number // 600:02} {8 + minutes // 60:02}:{minutes % 60:02}:12".encode()
    photo = drawn[number % len(drawn)].replace(b"2027:05:15 10:11:12", taken)
    (folder / f"IMG_{number:04}.jpg").write_bytes(photo + bytes(number // len(drawn)))
PYTHON
  rm -r "$many.part/drawn" "$many.part/small.jpg"
  mv "$many.part" "$many"
}

summed() { # in two processes
  local files=()
  mapfile -d '' files < <(find "$1" -type f -print0)
  local half=$((${#files[@]} / 2))
  sha256sum "${files[@]:0:half}" >/dev/null &
  sha256sum "${files[@]:half}" >/dev/null
  wait
}

quietly() { "$@" >/dev/null 2>&1 || [ $? -eq 3 ]; }

compare() { # WORDS COMMAND…, then the other in `other`
  local words=$1
  shift
  : >"$ours"
  : >"$theirs"
  for _ in $(seq "$runs"); do
    seconds quietly "$@" >>"$ours"
    seconds quietly "${other[@]}" >>"$theirs"
  done
  awk -v words="$words" -v o="$(middle <"$ours")" -v t="$(middle <"$theirs")" 'BEGIN {
    printf "%s: %.3f s, beside it %.3f s: %.2f times as fast.\n", words, o, t, t / o }'
}

make_many
rm -rf "$work"
mkdir -p "$work"
cat "$many"/*.jpg >/dev/null
"$qturn" init >/dev/null
other=(exiftool -fast2 -csv "$many")
compare 'What a card holds, beside exiftool -fast2 -csv' "$qturn" import --preview "$many"
quietly "$qturn" import "$many"
other=(sha256sum "$many"/*.jpg)
compare 'Import again, nothing new, beside sha256sum' "$qturn" import "$many"
other=(summed "$QUARTERTURN_LIBRARY/photos")
compare 'Verify, beside sha256sum in two processes' "$qturn" verify --from-start
quietly "$qturn" backup "$work/backup"
rsync -a "$QUARTERTURN_LIBRARY/" "$work/copy/"
other=(rsync -a "$QUARTERTURN_LIBRARY/" "$work/copy/")
compare 'Backup, nothing new, beside rsync -a' "$qturn" backup "$work/backup"
