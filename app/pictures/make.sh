#!/usr/bin/env bash
# make.sh BUILD : makes the README's pictures again, from the demo photos and the real window. BUILD
# is a folder built with QUARTERTURN_BUILD_TESTS=ON. Needs ImageMagick.
set -euo pipefail
pictures=$(realpath "$(dirname "$0")")
build=$(realpath "$1")
folder=$(mktemp -d)
trap 'rm -r "$folder"' EXIT

# framed FROM TO WIDTH
framed() {
  convert "$1" -resize "$3x" -quality 84 -strip -bordercolor '#cfc8c0' -border 1 "$pictures/$2"
  echo "Made $pictures/$2."
}

bash "$pictures/../demo.sh" "$build/app/qturn" "$folder" >/dev/null
framed "$folder/contact-sheet.png" contact-sheet.jpg 1000

"$build/tests/quarterturn_shots" --library "$folder/library" --today 2026-11-07 --out "$folder" \
  --size 1280x800 >/dev/null
framed "$folder"/*-whats-coming-up.png coming-up.jpg 1100
framed "$folder"/*-going-round-the-head.png round-the-head.jpg 1100
framed "$folder"/*-the-recipe.png recipe.jpg 1100
