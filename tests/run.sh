#!/usr/bin/env bash
# run.sh [--release | --threads] : installs what is needed, builds with the address and
# undefined-behaviour sanitizers, and runs every test; --release builds as the program is shipped
# instead, which is faster, and --threads with the thread sanitizer, which is slower. Real camera files are looked for in the folder that REAL_PHOTOS names, else in
# shared/real_photos beside the checkout; without them their tests say that they skip.
set -Eeuo pipefail
cd "$(dirname "$0")/.."
trap 'echo "The tests did not pass; what went wrong stands above." >&2' ERR

folder=build/tests
# Clang compiles what the sanitizers watch in less than half of GCC's time; --release is GCC's.
options=(-DCMAKE_BUILD_TYPE=Debug -DQUARTERTURN_SANITIZE=ON -DCMAKE_CXX_COMPILER=clang++-16)
case "${1:-}" in
  '') ;;
  --release)
    folder=build/tests-release
    options=(-DCMAKE_BUILD_TYPE=Release)
    ;;
  --threads)
    folder=build/tests-threads
    options=(-DCMAKE_BUILD_TYPE=Debug -DQUARTERTURN_SANITIZE_THREADS=ON
      -DCMAKE_CXX_COMPILER=clang++-16)
    ;;
  *)
    echo "Usage: bash tests/run.sh [--release | --threads]" >&2
    exit 2
    ;;
esac

real_photos=${REAL_PHOTOS:-$PWD/../shared/real_photos}
if [ -f "$real_photos/expected.csv" ]; then
  REAL_PHOTOS=$(realpath "$real_photos")
  export REAL_PHOTOS
fi
export QT_QPA_PLATFORM=offscreen
export LSAN_OPTIONS=suppressions=$PWD/tests/support/leaks_of_others.txt:print_suppressions=0
export ASAN_SYMBOLIZER_PATH=/usr/bin/llvm-symbolizer-16 # names the functions of a report
# Memory that was let go is watched until 1 MB more of it is; the usual 256 MB take a third of the
# time of a test with pictures, and what does not fit in the processor's memory a tenth of all.
# Eight functions of who took it tell enough; all of them would take as much time again.
export ASAN_OPTIONS=quarantine_size_mb=1:thread_local_quarantine_size_kb=16:malloc_context_size=8
# A test that forks goes on in the child, as the program does when it starts a worker.
export TSAN_OPTIONS=suppressions=$PWD/tests/support/races_of_others.txt:die_after_fork=0
TSAN_OPTIONS+=:external_symbolizer_path=/usr/bin/llvm-symbolizer-16
# Qt and others are built without it, and lock in ways that it does not see.
TSAN_OPTIONS+=:ignore_noninstrumented_modules=1
# Properties are tried on the same cases in every run; RC_PARAMS=seed=N tries others.
export RC_PARAMS=${RC_PARAMS:-seed=20261107}

# Tests sync what they write, many thousand times; memory does at once what a disk takes minutes for.
if [ "$(df --output=avail -k /dev/shm 2>/dev/null | tail -n 1)" -gt 4000000 ] 2>/dev/null; then
  TMPDIR=$(mktemp -d -p /dev/shm quarterturn.XXXXXX)
  export TMPDIR
  chmod 755 "$TMPDIR" # Some tests become somebody else.
  trap 'rm -rf "$TMPDIR"' EXIT
fi

bash app/install_packages.sh app/packages.txt tests/packages.txt

# Debian has no axe-core. Where it cannot be fetched, the test that needs it says that it skips.
outside=$PWD/build/outside
axe=axe-core-4.10.3.tgz
axe_sha256=0f2b4d7dcdf7d1219df8d1959ad68e565f51d14c3f0d88bb71cd59abeb956292
mkdir -p "$outside"
if [ ! -f "$outside/package/axe.min.js" ]; then
  (cd "$outside" && curl -fsS -m 60 -O "https://registry.npmjs.org/axe-core/-/$axe" &&
    echo "$axe_sha256  $axe" | sha256sum --check --quiet && tar xf "$axe") ||
    echo "axe-core could not be fetched." >&2
fi
if [ -f "$outside/package/axe.min.js" ]; then export AXE_CORE=$outside/package/axe.min.js; fi

# A portrait in the public domain, which Debian carries; its test skips where it cannot be fetched.
portrait=usr/lib/python3/dist-packages/skimage/data/astronaut.png
if [ ! -f "$outside/$portrait" ]; then
  (cd "$outside" && apt-get download -q python3-skimage &&
    dpkg-deb --fsys-tarfile python3-skimage_*.deb | tar x "./$portrait") ||
    echo "The portrait could not be fetched." >&2
fi
if [ -f "$outside/$portrait" ]; then export PORTRAIT=$outside/$portrait; fi

echo "Building in $folder."
cmake -G Ninja -S . -B "$folder" -DQUARTERTURN_BUILD_TESTS=ON -DCMAKE_UNITY_BUILD=ON \
  --log-level=WARNING "${options[@]}"
ninja -C "$folder" --quiet
ctest --test-dir "$folder" -j2 --output-on-failure --progress
echo "All tests passed."
