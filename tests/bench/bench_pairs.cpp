// bench_pairs make FOLDER COUNT: makes a library with COUNT pairs of before and after in FOLDER,
// four to a look, all allowed for a website, and prints how long making all pairs anew takes
// (once). bench_pairs measure FOLDER: prints a line for each of these, in milliseconds, the median
// and the 95th percentile: the first wall (the index, what is allowed, and the photos of the first
// page), a change of the filter with all counts, a search for words, and what is like a pair.

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <functional>
#include <random>

#include "indexer/disk/checksum.h"
#include "indexer/image/hair_look.h"
#include "indexer/looks/pairs.h"
#include "indexer/portfolio/more_like_this.h"
#include "indexer/store/hair_look_table.h"

namespace {

using namespace quarterturn;

const Date today = parse_date("2026-11-07").value();
constexpr int repeats = 30;
constexpr std::size_t pairs_on_a_page = 60;
constexpr std::array angles{Angle::left, Angle::front, Angle::right, Angle::back};
constexpr std::array families{"Low bun", "High bun", "Half up", "Plait", "Soft waves"};
constexpr std::array colours{"black", "dark brown", "chestnut", "copper", "blonde, highlights"};
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

class ManyPairs {
  public:
    ManyPairs(Library& library, int count) : library_(library) {
        Transaction all(library_.database());
        Client client;
        client.name = "Ada Lindqvist";
        client_ = library_.clients().add(client);
        allow_website();
        for (int left = count / static_cast<int>(angles.size()); left > 0; --left) add_look(left);
        all.commit();
    }

    // As the measure of a photo would be, and as long.
    void measure_hair() {
        Transaction all(library_.database());
        HairLookTable table(library_.database(), hair_look_version);
        for (const Photo& photo : library_.photos().these(table.still_to_measure())) {
            table.keep(photo, {shares(38), shares(288), shares(144)});
        }
        all.commit();
    }

  private:
    void allow_website() {
        ConsentEntry entry;
        entry.client = client_;
        entry.use = Use::website;
        entry.said = ConsentSaid::granted;
        entry.said_on = today;
        entry.shown = ShownAs::with_her_face;
        entry.recorded_at = parse_local_time("2026-11-07T10:00").value();
        library_.consents().add(entry);
    }

    template <class Words>
    const char* any(const Words& words) {
        return words[random_() % words.size()];
    }

    HairLook::Shares shares(std::size_t count) {
        HairLook::Shares result(count);
        for (auto& share : result) share = static_cast<std::uint8_t>(random_());
        return result;
    }

    void add_look(int number) {
        Look look;
        look.client = client_;
        look.name = std::string(any(families)) + " " + std::to_string(number);
        Sitting sitting;
        sitting.client = client_;
        sitting.kind = SittingKind::trial;
        sitting.starts =
            parse_local_time("2020-01-01T10:00").value() + std::chrono::hours(5 * number);
        sitting.ends = sitting.starts + std::chrono::hours(3);
        const SittingId at = library_.sittings().add(sitting);
        look.sittings = {at};
        const LookId id = library_.looks().add(look);
        Recipe recipe;
        recipe.hair_on_the_day.colour = any(colours);
        recipe.sections = std::string("Secure with ") + any(pieces);
        library_.recipes().save(id, recipe, sitting.ends);
        for (const Angle angle : angles) {
            add_photo(id, at, Stage::before, angle, sitting.starts);
            add_photo(id, at, Stage::after, angle, sitting.ends);
        }
    }

    void add_photo(LookId look, SittingId sitting, Stage stage, Angle angle, LocalTime taken) {
        Photo photo;
        photo.file.name = "QTB_" + std::to_string(++photos_) + ".jpg";
        photo.file.path = "photos/" + photo.file.name;
        photo.file.sha256 = sha256(photo.file.name);
        photo.file.width = 3000;
        photo.file.height = 4000;
        photo.file.taken.emplace().local = taken;
        photo.measures = {5, 0, 0.5, 0, 0};
        photo.tags.look = look;
        photo.tags.sitting = sitting;
        photo.tags.stage = stage;
        photo.tags.angle = angle;
        library_.credits().set(std::array{library_.photos().add(photo)}, Credit{});
    }

    Library& library_;
    ClientId client_;
    std::mt19937 random_{20261107};
    int photos_ = 0;
};

void first_wall(Library& library) {
    const PairWall wall(library, today);
    std::vector<Pair> page = wall.find(library, {}).pairs;
    page.resize(std::min(page.size(), pairs_on_a_page));
    std::vector<PhotoId> photos;
    for (const Pair& pair : page) photos.insert(photos.end(), {pair.made.first, pair.made.second});
    if (library.photos().these(photos).size() != photos.size()) std::abort();
}

PairFilter filter_of(int number) {
    const std::array<PairFilter, 4> filters{
        PairFilter{{{Fact::family, {"low bun"}}}},
        PairFilter{{{Fact::family, {"low bun"}}, {Fact::colour, {"brown"}}}},
        PairFilter{{{Fact::angle, {"back"}}, {Fact::use, {"website"}}}},
        PairFilter{{{Fact::colour, {"red", "black"}}, {Fact::angle, {"left"}}}}};
    return filters[static_cast<std::size_t>(number) % filters.size()];
}

void make(const Path& folder, int pairs) {
    Library library = Library::create(folder);
    ManyPairs made(library, pairs);
    std::printf("all pairs made anew\t%.2f\t\n",
                milliseconds_of([&] { bring_pairs_up_to_date(library); }));
    made.measure_hair();
}

void measure_all(const Path& folder) {
    Library library = Library::open(folder);
    measure("first wall", [&](int) { first_wall(library); });
    const PairWall wall(library, today);
    if (wall.find(library, {{{Fact::use, {"website"}}}}).pairs.size() != wall.pairs().size()) {
        std::abort();
    }
    measure("a change of the filter", [&](int i) { wall.find(library, filter_of(i)); });
    measure("a search for words", [&](int i) {
        wall.find(library, {.words = pieces[static_cast<std::size_t>(i) % pieces.size()]});
    });
    const auto& pairs = wall.pairs();
    measure("more like this", [&](int i) {
        pairs_like(library, pairs[static_cast<std::size_t>(i) * 97 % pairs.size()]);
    });
}

}  // namespace

int main(int count, char** words) {
    const std::string what = count > 1 ? words[1] : "";
    if (what == "make" && count == 4) {
        make(words[2], std::atoi(words[3]));
    } else if (what == "measure" && count == 3) {
        measure_all(words[2]);
    } else {
        return 2;
    }
}
