#!/usr/bin/env bash
# run.sh [--quick] : installs what is needed, builds, and runs every test; then builds with the
# address and undefined-behaviour sanitizers and runs them again. --quick leaves the second round
# out. Real camera files are looked for in the folder that REAL_PHOTOS names, else in
# shared/real_photos beside the checkout; without them their tests say that they skip.
set -Eeuo pipefail
cd "$(dirname "$0")/.."
trap 'echo "The tests did not pass; what went wrong stands above." >&2' ERR

quick=no
case "${1:-}" in
  '') ;;
  --quick) quick=yes ;;
  *)
    echo "Usage: bash tests/run.sh [--quick]" >&2
    exit 2
    ;;
esac

real_photos=${REAL_PHOTOS:-$PWD/../shared/real_photos}
if [ -f "$real_photos/expected.csv" ]; then
  REAL_PHOTOS=$(realpath "$real_photos")
  export REAL_PHOTOS
fi
export QT_QPA_PLATFORM=offscreen

# build_and_test FOLDER cmake options…
build_and_test() {
  local folder=$1
  shift
  cmake -G Ninja -S . -B "$folder" -DQUARTERTURN_BUILD_TESTS=ON --log-level=WARNING "$@"
  ninja -C "$folder" --quiet
  ctest --test-dir "$folder" -j2 --output-on-failure --progress
}

bash app/install_packages.sh app/packages.txt tests/packages.txt

echo "Building and testing the release build in build/tests."
build_and_test build/tests -DCMAKE_BUILD_TYPE=Release
if [ "$quick" = yes ]; then
  echo "All tests passed; the round with sanitizers was left out."
  exit 0
fi

echo "Building and testing with sanitizers in build/sanitized."
build_and_test build/sanitized -DCMAKE_BUILD_TYPE=Debug -DQUARTERTURN_SANITIZE=ON
echo "All tests passed, also with sanitizers."
