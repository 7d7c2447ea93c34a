#!/usr/bin/env bash
# instructions.sh COUNTED BENCH_PHOTOS BENCH_LIBRARY [--keep] : counts the instructions of opening, bringing in and
# searching (valgrind's callgrind), which are nearly the same in every run and on every day, and
# fails where a job takes a tenth more of them than instructions.txt says. --keep writes that anew.
set -Eeuo pipefail
counted=$1
bench_photos=$2
bench_library=$3
baseline=$(dirname "$(readlink -f "$0")")/instructions.txt
most_percent=110
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

instructions() { # JOB…
  valgrind --tool=callgrind --callgrind-out-file=/dev/null "$counted" "$@" 2>"$work/said" ||
    { cat "$work/said" >&2 && return 1; }
  awk '/Collected/ { print $NF }' "$work/said"
}

"$bench_photos" "$work/photos" 4
"$bench_library" "$work/filled" 2500
{
  echo "open $(instructions open "$work/photos")"
  echo "import $(instructions import "$work/photos" "$work/library")"
  echo "search $(instructions search "$work/filled")"
} >"$work/now"

if [ "${4:-}" = --keep ]; then
  cp "$work/now" "$baseline"
fi
join "$baseline" "$work/now" | awk -v most="$most_percent" '
  { percent = 100 * $3 / $2
    printf "%s: %.0f million instructions, %.1f %% of what instructions.txt says\n", $1, $3 / 1e6, percent
    more = more || percent > most }
  END { if (NR != 3) print "instructions.txt does not name all three jobs."
        if (more) print "Find out why, or write it anew with --keep and say why in the commit."
        exit more || NR != 3 }'
