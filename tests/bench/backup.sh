#!/usr/bin/env bash
# backup.sh : a backup of 240 JPEGs of 12 megapixels with nothing new, against `rsync -a` of the same
# library with nothing new; and a check of every file, against sha256sum in two processes with half of
# the files each. Runs alternate; the middle one counts. Everything lies in the page cache.
set -Eeuo pipefail
source "$(dirname "$0")/common.sh"
work=$folder/backup
trap 'rm -rf "$ours" "$theirs" "$work"' EXIT
qturn=$build/app/qturn

rm -rf "$work"
mkdir -p "$work"
"$build/tests/bench/bench_import" "$photos" "$work/library" >/dev/null
export QUARTERTURN_LIBRARY=$work/library
"$qturn" backup "$work/backup" >/dev/null
"$qturn" backup "$work/backup" >/dev/null
rsync -a "$work/library/" "$work/copy/"

summed() {
  local files=()
  mapfile -d '' files < <(find "$work/library/photos" -type f -print0)
  local half=$((${#files[@]} / 2))
  sha256sum "${files[@]:0:half}" >/dev/null &
  sha256sum "${files[@]:half}" >/dev/null
  wait
}

compare() { # WORDS COMMAND…, then the other in `other`
  local words=$1
  shift
  : >"$ours"
  : >"$theirs"
  for _ in $(seq "$runs"); do
    seconds "$@" >>"$ours"
    seconds "${other[@]}" >>"$theirs"
  done
  awk -v words="$words" -v o="$(middle <"$ours")" -v t="$(middle <"$theirs")" 'BEGIN {
    printf "%s: %.3f s, beside it %.3f s: %.2f times as fast.\n", words, o, t, t / o }'
}

quietly() { "$@" >/dev/null; }

other=(rsync -a "$work/library/" "$work/copy/")
compare 'Backup, nothing new, beside rsync -a' quietly "$qturn" backup "$work/backup"
other=(summed)
compare 'Verify, beside sha256sum in two processes' quietly "$qturn" verify --from-start
