#!/usr/bin/env bash
# steps.sh [--keep] : how long each step of bringing in and finding takes (Google Benchmark, the
# middle of nine), beside what it took when baseline.json was made; what another computer takes may
# not be compared. --keep makes baseline.json anew.
set -Eeuo pipefail
source "$(dirname "$0")/common.sh"
now=$(mktemp)
trap 'rm -rf "$ours" "$theirs" "$now" "$folder/steps"' EXIT
baseline=tests/bench/baseline.json

ninja -C "$build" --quiet bench_steps bench_library
rm -rf "$folder/steps"
"$build/tests/bench/bench_library" "$folder/steps" 10000
"$build/tests/bench/bench_steps" "$photos" "$folder/steps" --benchmark_repetitions=9 \
  --benchmark_report_aggregates_only=true --benchmark_out="$now" --benchmark_out_format=json \
  >/dev/null
if [ "${1:-}" = --keep ]; then
  sed '/"executable"\|"host_name"/d' "$now" >"$baseline" # of this computer, nothing that names it
fi
python3 - "$baseline" "$now" <<'PYTHON'
import json
import sys


def medians(file):
    with open(file, encoding="utf-8") as text:
        runs = json.load(text)["benchmarks"]
    return {run["run_name"].split("/")[0]: run["real_time"]
            for run in runs if run["aggregate_name"] == "median"}


before, now = (medians(file) for file in sys.argv[1:])
print("| step | before, µs | now, µs | ratio |\n| --- | --- | --- | --- |")
for step, took in now.items():
    if step in before:
        print(f"| {step.replace('_', ' ')} | {before[step]:.0f} | {took:.0f} "
              f"| {took / before[step]:.2f} |")
    else:
        print(f"| {step.replace('_', ' ')} | new | {took:.0f} | |")
PYTHON
