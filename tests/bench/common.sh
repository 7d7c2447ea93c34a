# Sourced by the benchmarks: builds the programs for release and makes the photos that both sides
# work on, kept in BENCH_FOLDER for the next time. `ours` and `theirs` take a line for each run.
cd "$(dirname "$0")/../.."

folder=${BENCH_FOLDER:-${TMPDIR:-/tmp}/quarterturn-bench}
build=${BENCH_BUILD:-build/bench}
runs=${BENCH_RUNS:-5}
count=240
photos=$folder/photos-$count

build_programs() {
  cmake -G Ninja -S . -B "$build" -DCMAKE_BUILD_TYPE=Release -DQUARTERTURN_BUILD_TESTS=ON \
    --log-level=WARNING
  ninja -C "$build" --quiet bench_import bench_photos qturn
}

# Leaves them in the page cache, so that neither side waits for the disk.
make_photos() {
  mkdir -p "$folder"
  if [ ! -d "$photos" ]; then
    echo "Making $count photos of 12 megapixels in $photos."
    rm -rf "$photos.part"
    "$build/tests/bench/bench_photos" "$photos.part" "$count"
    mv "$photos.part" "$photos"
  fi
  cat "$photos"/*.jpg >/dev/null
}

# seconds COMMAND…: how long it takes.
seconds() {
  local begun
  begun=$(date +%s.%N)
  "$@"
  echo "$begun $(date +%s.%N)" | awk '{ print $2 - $1 }'
}

middle() { sort -n | awk '{ value[NR] = $1 } END { print value[int((NR + 1) / 2)] }'; }

build_programs
make_photos
ours=$(mktemp) theirs=$(mktemp)

qturn() { "$build/app/qturn" "$@" >/dev/null; }

# library_of_a_wedding DAY ANGLES: in QUARTERTURN_LIBRARY, six clients with a look each, photographed
# from each of the angles.
library_of_a_wedding() {
  local day=$1 party=() number=0 client angle
  shift
  local files=("$photos"/*.jpg)
  rm -rf "$QUARTERTURN_LIBRARY"
  qturn init
  for client in 1 2 3 4 5 6; do
    qturn client add "Client $client"
    party+=(--party "Client $client=bridesmaid")
  done
  qturn wedding add Wedding --date "$day" --ready-by 12:00 "${party[@]}"
  qturn import "${files[@]:0:6 * $#}" || [ $? -eq 3 ]
  for client in 1 2 3 4 5 6; do
    qturn sitting add "Client $client" --starts "2027-04-0${client}T10:00" \
      --ends "2027-04-0${client}T12:00" --wedding Wedding
    qturn look add "Client $client" "Look $client" --sitting "$client" --wedding Wedding
    for angle in "$@"; do
      number=$((number + 1))
      qturn place "$number" --sitting "$client"
      qturn tag "$number" --look "Look $client" --stage after --angle "$angle"
      qturn accept "$number" --because 'drawn for this measure'
    done
  done
}
