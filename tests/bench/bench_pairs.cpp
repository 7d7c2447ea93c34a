// bench_pairs FOLDER: prints a line for each of these about the pairs of the library in FOLDER, in
// milliseconds, the median and the 95th percentile: the first wall (the index, what is allowed, and
// the photos of the first page), the wall after a change of a pair, a change of the filter with all
// counts, a search for words, and what is like a pair. A pair is refused, and taken back at last.

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <functional>

#include "indexer/disk/clock.h"
#include "indexer/looks/pairs.h"
#include "indexer/portfolio/more_like_this.h"

namespace {

using namespace quarterturn;

const Date today = date_of(local_now());
constexpr int repeats = 30;
constexpr std::size_t pairs_on_a_page = 60;
constexpr std::array pieces{"comb", "pearl pins", "flowers", "veil"};

double milliseconds_of(const std::function<void()>& work) {
    const auto begun = std::chrono::steady_clock::now();
    work();
    return std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - begun)
        .count();
}

void measure(const char* what, const std::function<void(int)>& work) {
    std::vector<double> took;
    for (int i = 0; i < repeats; ++i) took.push_back(milliseconds_of([&] { work(i); }));
    std::ranges::sort(took);
    std::printf("%s\t%.2f\t%.2f\n", what, took[took.size() / 2], took[took.size() * 95 / 100]);
    std::fflush(stdout);
}

void read_first_page(Library& library, const PairWall& wall) {
    std::vector<Pair> page = wall.find(library, {}).pairs;
    page.resize(std::min(page.size(), pairs_on_a_page));
    std::vector<PhotoId> photos;
    for (const Pair& pair : page) photos.insert(photos.end(), {pair.made.first, pair.made.second});
    if (library.photos().these(photos).size() != photos.size()) std::abort();
}

void first_wall(Library& library) {
    read_first_page(library, PairWall(library, today));
}

PairFilter filter_of(int number) {
    const std::array<PairFilter, 4> filters{
        PairFilter{{{Fact::family, {"low bun"}}}},
        PairFilter{{{Fact::family, {"low bun"}}, {Fact::colour, {"brown"}}}},
        PairFilter{{{Fact::angle, {"back"}}, {Fact::use, {"website"}}}},
        PairFilter{{{Fact::colour, {"red", "black"}}, {Fact::angle, {"left"}}}}};
    return filters[static_cast<std::size_t>(number) % filters.size()];
}

void measure_all(const Path& folder) {
    Library library = Library::open(folder);
    measure("the index of pairs, made and its first page", [&](int) { first_wall(library); });
    PairWall wall(library, today);
    const PairId changed = wall.pairs().front().id;
    measure("the index after a change, and its first page", [&](int i) {
        refuse(library, changed, i % 2 == 0);
        wall.bring_up_to_date(library);
        read_first_page(library, wall);
    });
    measure("the index: a filter with its counts",
            [&](int i) { wall.find(library, filter_of(i)); });
    measure("the index: a word", [&](int i) {
        wall.find(library, {.words = pieces[static_cast<std::size_t>(i) % pieces.size()]});
    });
    const auto& pairs = wall.pairs();
    measure("the index: more like this", [&](int i) {
        pairs_like(library, pairs[static_cast<std::size_t>(i) * 97 % pairs.size()],
                   pairs_on_a_page);
    });
}

}  // namespace

int main(int count, char** words) {
    if (count != 2) return 2;
    measure_all(words[1]);
}
