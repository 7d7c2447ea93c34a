#!/usr/bin/env bash
# run.sh : compares our speed with other programs' on the same files, and the window's with many
# photos to that with few, and prints ratios.
set -Eeuo pipefail
cd "$(dirname "$0")"
bash import.sh
bash sheet.sh
bash window.sh
bash board.sh
bash board_page.sh
bash running_order.sh
bash backup.sh
