#!/usr/bin/env bash
# make.sh QTURN : makes the README's picture again, from the demo photos (needs ImageMagick).
set -euo pipefail
pictures=$(realpath "$(dirname "$0")")
folder=$(mktemp -d)
trap 'rm -r "$folder"' EXIT
bash "$pictures/../demo.sh" "$1" "$folder" >/dev/null
convert "$folder/contact-sheet.png" -resize 1000x -quality 84 -strip -bordercolor '#cfc8c0' \
  -border 1 "$pictures/contact-sheet.jpg"
echo "Made $pictures/contact-sheet.jpg."
