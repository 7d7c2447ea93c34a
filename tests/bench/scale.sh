#!/usr/bin/env bash
# scale.sh : what she waits for with a library of 10,000 photos and with one of 250,000 (4,000
# clients, 40,000 pairs), in the same run: the median and the 95th percentile in milliseconds, and
# how many times as long the larger takes. Then the memory of the window at rest, and its start
# until it is painted beside that of an empty window of Qt's, and of one with a word, without a
# display as all the rest, and on one (Xvfb), where both wait for it as well. Both libraries
# are made in BENCH_FOLDER, which takes ten minutes, and are kept there for the next time.
set -Eeuo pipefail
cd "$(dirname "$0")/../.."

folder=${BENCH_FOLDER:-${TMPDIR:-/tmp}/quarterturn-bench}
build=$PWD/${BENCH_BUILD:-build/bench}
runs=${BENCH_RUNS:-9}
few=10000
many=250000
seconds_to_rest=8
results=$(mktemp -d)
screen=
trap 'rm -rf "$results"; [ -z "$screen" ] || kill "$screen"' EXIT
export QT_QPA_PLATFORM=offscreen XDG_RUNTIME_DIR=$results XDG_CONFIG_HOME=$results
# Each record written has SQLite make and drop small tables in memory; giving that memory back to the
# system each time took longer than the work itself. Nothing is measured under this.
keep_memory=glibc.malloc.trim_threshold=268435456:glibc.malloc.top_pad=16777216

if [ -z "${BENCH_BUILT:-}" ]; then
  cmake -G Ninja -S . -B "$build" -DCMAKE_BUILD_TYPE=Release -DQUARTERTURN_BUILD_TESTS=ON \
    --log-level=WARNING
  ninja -C "$build" --quiet bench_library bench_window bench_pairs empty_window \
    ends_when_painted quarterturn
fi

library() { echo "$folder/library-$1"; }

make_library() {
  local place
  place=$(library "$1")
  [ ! -d "$place" ] || return 0
  rm -rf "$place.part"
  GLIBC_TUNABLES=$keep_memory "$build/tests/bench/bench_library" "$place.part" "$1"
  mv "$place.part" "$place"
}

in_the_window() { "$build/tests/bench/bench_window" "$(library "$1")" 2>"$results/said"; }
in_the_index() { "$build/tests/bench/bench_pairs" "$(library "$1")"; }

libraries_of() { readelf -d "$1" | sed -n 's/.*(NEEDED).*\[\(lib.*\)\]/\1/p' | paste -sd:; }

# until_painted PROGRAM…: milliseconds from its start, the middle of the runs; `loaded` are libraries
# that it does not need.
loaded=
until_painted() {
  local begun
  for _ in $(seq "$runs"); do
    begun=$(date +%s%N)
    LD_PRELOAD=$build/tests/bench/libends_when_painted.so:$loaded "$@" 2>"$results/said"
    echo $((($(date +%s%N) - begun) / 10000))
  done | sort -n | awk '{ value[NR] = $1 / 100 } END {
    printf "%.2f\t%.2f", value[int((NR + 1) / 2)], value[int(NR * 0.95 + 0.5)] }'
}

window_on() { until_painted "$build/app/quarterturn/quarterturn" --library "$(library "$1")"; }

# Its share of what it has in common with other processes counted.
memory_at_rest() {
  local process
  "$build/app/quarterturn/quarterturn" --library "$(library "$1")" 2>"$results/said" &
  process=$!
  sleep "$seconds_to_rest"
  awk '/^Pss:/ { printf "%.1f\t", $2 / 1024 }' "/proc/$process/smaps_rollup"
  kill "$process"
  wait "$process" || true
}

mkdir -p "$folder"
for count in "$few" "$many"; do
  make_library "$count"
  {
    in_the_window "$count"
    in_the_index "$count"
    printf 'memory at rest, MiB\t%s\n' "$(memory_at_rest "$count")"
    printf 'start until painted\t%s\n' "$(window_on "$count")"
  } >"$results/$count"
done
paste "$results/$few" "$results/$many" | awk -F'\t' -v few="$few" -v many="$many" '
  function shown(middle, most) { return sprintf(most == "" ? "%.1f" : "%.1f (%.1f)", middle, most) }
  BEGIN { printf "| what | %d | %d | ratio |\n| --- | --- | --- | --- |\n", few, many }
  { printf "| %s | %s | %s | %.2f |\n", $1, shown($2, $3), shown($5, $6), $5 / $2 }'
start_a_display() {
  Xvfb -displayfd 3 -screen 0 1600x1000x24 -nolisten tcp 3>"$results/display" 2>"$results/said" &
  screen=$!
  while [ ! -s "$results/display" ]; do sleep 0.1; done
  export QT_QPA_PLATFORM=xcb DISPLAY=:$(cat "$results/display")
}

say_starts() {
  loaded=
  printf 'An empty window is painted after %s ms (95th percentile after the median).\n' \
    "$(until_painted "$build/tests/bench/empty_window")"
  loaded=$(libraries_of "$build/app/quarterturn/quarterturn")
  printf 'One that shows a word and loads the libraries that the program does, after %s ms.\n' \
    "$(until_painted "$build/tests/bench/empty_window" word)"
  loaded=
  printf 'The program, after %s ms.\n' "$(window_on "$few")"
}

echo 'Without a display:'
say_starts
start_a_display
echo 'On a display:'
say_starts
