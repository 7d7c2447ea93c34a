#!/usr/bin/env bash
# demo.sh QTURN [FOLDER] : does the whole job on the demo photos with the program QTURN, in a new
# folder, and shows every command.
set -euo pipefail

qturn=$(realpath "$1")
folder=$(realpath "${2:-$(mktemp -d -t quarterturn-demo-XXXXXX)}")
cd "$(dirname "$0")/.."
export QUARTERTURN_LIBRARY=$folder/library

shown() {
  local word
  for word in "$@"; do
    case "$word" in
      *[!A-Za-z0-9/._-]*) printf " '%s'" "$word" ;;
      *) printf ' %s' "$word" ;;
    esac
  done
}

# step WORDS qturn's arguments… : exit code 3 says that something needs attention, which is no
# failure.
step() {
  local words=$1 code=0
  shift
  printf '\n%s\n  $ qturn%s\n' "$words" "$(shown "$@")"
  "$qturn" "$@" | sed 's/^/  /' || code=$?
  [ "$code" -eq 0 ] || [ "$code" -eq 3 ] || exit "$code"
}

ceremony='Low twisted bun, leaf comb'
boathouse='Vašnovič at the boathouse'
evening='Let down in waves, leaf comb'

printf '\nA hair trial, from the photos to the printed sheet. The library of this demo:\n'
printf '  $ export QUARTERTURN_LIBRARY=%s\n' "$QUARTERTURN_LIBRARY"

step 'A new library.' init
step 'Clients, weddings, sittings and looks; she would type them in as they come.' \
  scenario demo_photos/scenario.json
step 'The photos of a phone and a camera. The originals are only read.' import demo_photos/photos
step 'Each photo falls to the sitting whose hours it lies in.' sort
step 'Some fit no sitting. Is a clock off?' clock propose
step "About so much. The camera's photos are shifted; the files' own times are kept beside." \
  clock apply 'QTC Field 2'
step 'What she saw in each photo: angle, stage and look.' scenario demo_photos/tags.json --tags
step 'Where a tag and the picture disagree, she is asked.' check
step 'Is every shot of the ceremony look there?' coverage "$ceremony"
step 'And of the evening look?' coverage "$evening"
step 'The ceremony look is complete and can be made again: she signs it off.' sign-off "$ceremony"
step 'The contact sheet, to print.' sheet "$ceremony" --out "$folder/contact-sheet.pdf"
step 'The same as a picture.' sheet "$ceremony" --out "$folder/contact-sheet.png"
step 'The record, as a folder that carries its own checksums.' \
  export-record "$ceremony" --to "$folder/record"

step 'What hangs by the mirror on the wedding morning, and how steps are ticked there.' \
  board "$boathouse" --client 'Séraphine Vašnovič' --tick "$ceremony=1" \
  --out "$folder/board.pdf"
step "The same for a helper's phone." board "$boathouse" --out "$folder/board.html"
step 'How a bridesmaid lets the hair down for the evening.' \
  take-down "$evening" --out "$folder/take-down.pdf"

printf '\nEverything lies in %s; delete that folder and nothing is left.\n' "$folder"
printf 'To go on:\n  $ export QUARTERTURN_LIBRARY=%s\n  $ alias qturn=%s\n  $ qturn --help\n' \
  "$QUARTERTURN_LIBRARY" "$qturn"
