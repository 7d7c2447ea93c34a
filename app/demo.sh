#!/usr/bin/env bash
# demo.sh QTURN [FOLDER] : does the whole job on the demo photos with the program QTURN, in a new
# folder, and shows every command.
set -euo pipefail

qturn=$(realpath "$1")
demo=$(realpath "$(dirname "$0")/../demo_photos")
folder=${2:-$(mktemp -d -t quarterturn-demo-XXXXXX)}
mkdir -p "$folder"
export QUARTERTURN_LIBRARY=$folder/library

# step WORDS qturn's arguments… : exit code 3 says that something needs attention, which is no
# failure.
step() {
  local words=$1 code=0
  shift
  printf '\n%s\n  $ qturn' "$words"
  printf ' %q' "$@"
  printf '\n'
  "$qturn" "$@" | sed 's/^/  /' || code=$?
  [ "$code" -eq 0 ] || [ "$code" -eq 3 ] || exit "$code"
}

echo
echo "A hair trial, from the photos to the printed sheet. The library of this demo is"
echo "  QUARTERTURN_LIBRARY=$QUARTERTURN_LIBRARY"

step "A new library." init
step "Clients, weddings, sittings and looks; usually typed in one by one." \
  scenario "$demo/scenario.json"
step "The photos of a phone and a camera; the originals are only read." import "$demo/photos"
step "Each photo falls to the sitting whose hours it lies in." sort
step "Some fit no sitting: is a clock off?" clock propose
step "It is. The shift is applied to that device; the files' own times are kept." \
  clock apply 'Larkmoor'
step "What the stylist saw: angle, stage and look of each photo." \
  scenario "$demo/tags.json" --tags
step "Where tag and picture disagree, she is asked." check
step "Is every shot there? For the ceremony look, yes." coverage 'Low twisted bun, leaf comb'
step "For the evening look, one is not." coverage 'Let down in waves, leaf comb'
step "The ceremony look is complete and can be repeated: sealed." \
  sign-off 'Low twisted bun, leaf comb'
step "The contact sheet, to print." \
  sheet 'Low twisted bun, leaf comb' --out "$folder/contact-sheet.pdf"
step "The same as a picture." \
  sheet 'Low twisted bun, leaf comb' --out "$folder/contact-sheet.png"
step "The record, as a folder that carries its own checksums." \
  export-record 'Low twisted bun, leaf comb' --to "$folder/record"

echo
echo "Everything of this demo lies in $folder; delete the folder and nothing is left."
echo "To go on with it:"
echo "  export QUARTERTURN_LIBRARY=$QUARTERTURN_LIBRARY"
echo "  $qturn --help"
