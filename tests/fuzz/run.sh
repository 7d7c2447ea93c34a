#!/usr/bin/env bash
# run.sh [RUNS] : builds a libFuzzer target of everything that reads bytes or words of others, and
# gives each of them RUNS inputs (20,000 unless named), grown from tests/fuzz/corpus. An input that
# brings one down is kept in build/fuzz/found, and the script fails. RUNS of 0 only builds.
set -Eeuo pipefail
cd "$(dirname "$0")/../.."
runs=${1:-20000}
folder=build/fuzz
targets=(metadata jpeg png tiff webp heif shorthand recipe scenario html)

bash app/install_packages.sh app/packages.txt tests/packages.txt
cmake -G Ninja -S . -B "$folder" -DQUARTERTURN_FUZZ=ON -DCMAKE_UNITY_BUILD=ON \
  -DCMAKE_CXX_COMPILER=clang++-16 --log-level=WARNING
ninja -C "$folder" --quiet "${targets[@]/#/fuzz_}"
if [ "$runs" -eq 0 ]; then exit; fi

# A photo's decoder may take memory for 250 megapixels; libraries of others keep some for good.
export ASAN_OPTIONS=allocator_may_return_null=1
mkdir -p "$folder/found" "$folder/grown"
failed=()
for target in "${targets[@]}"; do
  mkdir -p "$folder/grown/$target"
  echo "$target: $runs inputs."
  "$folder/tests/fuzz/targets/fuzz_$target" -runs="$runs" -seed=20261107 -rss_limit_mb=4096 \
    -malloc_limit_mb=2048 -timeout=30 -max_len=65536 -detect_leaks=0 -verbosity=0 \
    -print_final_stats=1 -artifact_prefix="$folder/found/$target-" \
    "$folder/grown/$target" "tests/fuzz/corpus/$target" 2>"$folder/$target.log" ||
    failed+=("$target")
  grep 'number_of_executed_units' "$folder/$target.log" || true
done
if [ ${#failed[@]} -gt 0 ]; then
  echo "Brought down: ${failed[*]}. See $folder/NAME.log and $folder/found." >&2
  exit 1
fi
echo "No input brought anything down."
