// bench_steps PHOTOS LIBRARY [Google Benchmark's options]: the steps that bringing photos in and
// finding them again are made of, each by itself: on the first photo of the folder PHOTOS, and in
// the library LIBRARY. steps.sh compares them with how long they took before.

#include <benchmark/benchmark.h>

#include <memory>

#include "indexer/disk/checksum.h"
#include "indexer/disk/clock.h"
#include "indexer/image/measure.h"
#include "indexer/intake/thumbnails.h"
#include "indexer/looks/pairs.h"
#include "indexer/store/search_table.h"
#include "indexer/worker/confined.h"

namespace {

using namespace quarterturn;
using benchmark::State;

struct Given {
    Bytes photo;
    cv::Mat measured;  // at the measuring edge
    cv::Mat small;
    std::unique_ptr<Library> library;
    std::unique_ptr<Decoder> here = make_local_decoder();
    std::unique_ptr<Decoder> confined = make_confined_decoder();
};

Given& given() {
    static Given all;
    return all;
}

void set_up(const Path& photos, const Path& library) {
    FileSystem& disk = real_file_system();
    Given& all = given();
    all.photo = disk.read(disk.list(photos).at(0), any_size);
    all.measured = all.here->decode({all.photo, 1, measuring_edge}).bgr;
    all.small = shrink_to(all.measured, thumbnail_long_edge);
    all.library = std::make_unique<Library>(Library::open(library));
    cv::setNumThreads(1);
}

template <class Step>
void repeat(State& state, Step step) {
    for (auto _ : state) benchmark::DoNotOptimize(step());
}

void photo_checksum(State& state) {
    repeat(state, [] { return sha256(given().photo); });
}
void photo_metadata(State& state) {
    repeat(state, [] { return read_metadata(given().photo); });
}
void photo_opened(State& state) {
    repeat(state, [] { return given().here->decode({given().photo, 1, measuring_edge}); });
}
void photo_opened_in_a_worker(State& state) {
    repeat(state, [] { return given().confined->decode({given().photo, 1, measuring_edge}); });
}
void photo_measured(State& state) {
    repeat(state, [] { return measure(given().measured); });
}
void photo_fingerprint(State& state) {
    repeat(state, [] { return fingerprint(given().small); });
}
void photo_small_picture(State& state) {
    repeat(state, [] { return as_jpeg(shrink_to(given().measured, thumbnail_long_edge)); });
}
void search_for_a_word(State& state) {
    repeat(state, [] { return SearchTable{given().library->database()}.find({.words = "pearl"}); });
}
void pairs_of_the_index(State& state) {
    repeat(state, [] { return PairWall{*given().library, date_of(local_now())}.pairs().size(); });
}
void pairs_counted_by_what_they_show(State& state) {
    const PairWall wall{*given().library, date_of(local_now())};
    const PairFilter filter{{{Fact::family, {"low bun"}}}};
    repeat(state, [&] { return wall.find(*given().library, filter); });
}

BENCHMARK(photo_checksum)->Unit(benchmark::kMicrosecond);
BENCHMARK(photo_metadata)->Unit(benchmark::kMicrosecond);
BENCHMARK(photo_opened)->Unit(benchmark::kMicrosecond);
BENCHMARK(photo_opened_in_a_worker)->Unit(benchmark::kMicrosecond)->UseRealTime();
BENCHMARK(photo_measured)->Unit(benchmark::kMicrosecond);
BENCHMARK(photo_fingerprint)->Unit(benchmark::kMicrosecond);
BENCHMARK(photo_small_picture)->Unit(benchmark::kMicrosecond);
BENCHMARK(search_for_a_word)->Unit(benchmark::kMicrosecond);
BENCHMARK(pairs_of_the_index)->Unit(benchmark::kMicrosecond);
BENCHMARK(pairs_counted_by_what_they_show)->Unit(benchmark::kMicrosecond);

}  // namespace

int main(int count, char** words) {
    benchmark::Initialize(&count, words);
    if (count != 3) return 2;
    set_up(words[1], words[2]);
    benchmark::RunSpecifiedBenchmarks();
}
