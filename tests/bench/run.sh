#!/usr/bin/env bash
# run.sh : compares our speed with other programs' on the same files, and a large
# library's with a small one's, and prints ratios.
set -Eeuo pipefail
cd "$(dirname "$0")"
bash import.sh
bash import.sh heic
bash sheet.sh
bash board.sh
bash board_page.sh
bash running_order.sh
bash many.sh
bash steps.sh
bash scale.sh
