// An import that is killed at any moment: what is recorded is there, and the next run goes on.

#include <unistd.h>

#include <random>

#include "indexer/disk/folder_lock.h"
#include "indexer/worker/confined.h"
#include "tests/indexer/intake/import_fixture.h"
#include "tests/support/killed.h"
#include "tests/support/seen_from_outside.h"

namespace quarterturn {
namespace {

constexpr int killed_photos = 60;

// A process that the killed one was just starting has its lock for a moment longer.
void wait_for_lock(const Path& library) {
    while (!FolderLock(library).held()) ::usleep(1000);
}

void import_card(const Path& folder) {
    wait_for_lock(folder / "library");
    Library library = Library::open(folder / "library");
    const auto decoder = make_confined_decoder();
    import_photos(library, *decoder, {.sources = {folder / "card"}});
}

TEST(ImportKill, WhatIsRecordedIsWholeAndTheNextRunGoesOn) {
    TemporaryFolder folder;
    for (int i = 0; i < killed_photos; ++i) {
        write_photo(folder / "card" / ("IMG_" + std::to_string(i) + ".jpg"), i,
                    {.taken = "2026:11:07 10:00:" + std::to_string(10 + i % 50)});
    }
    const auto original = all_files(folder / "card");
    std::minstd_rand random{7};
    for (int i = 0; i < kills(30); ++i) {
        if (i % 6 == 0) {
            std::filesystem::remove_all(folder / "library");
            Library::create(folder / "library");
        }
        kill_after(std::chrono::microseconds{random() % 150'000},
                   [&] { import_card(folder.path()); });
        EXPECT_EQ(wrong_from_outside(folder / "library"), std::vector<std::string>{}) << i;
    }
    import_card(folder.path());
    Library library = Library::open(folder / "library");
    EXPECT_EQ(library.photos().all().size(), killed_photos);
    expect_files_match_records(library);
    EXPECT_EQ(without_record_from_outside(folder / "library"), std::vector<std::string>{});
    EXPECT_EQ(all_files(folder / "card"), original);
}

// The worst moment: files stand in their places, and the record was not written.
TEST(ImportKill, PhotosWithoutARecordAreTakenInEvenWhenTheCardIsGone) {
    TemporaryFolder folder;
    write_photo(folder / "card" / "a.jpg", 1, {.taken = "2026:11:07 10:10:00"});
    Library library = Library::create(folder / "library");
    const std::string path = "photos/2026/2026-11-07 some other name/a.jpg";
    std::filesystem::create_directories((library.folder() / path).parent_path());
    std::filesystem::rename(folder / "card" / "a.jpg", library.folder() / path);
    write_file(library.incoming_folder() / "unfinished", path + '\0');
    write_file(library.incoming_folder() / "0123.part", "half a ph");

    const ImportReport report = import_photos(library, *make_confined_decoder(), {.sources = {}});
    EXPECT_EQ(report.imported.size(), 1U);
    EXPECT_TRUE(report.refused.empty());
    EXPECT_EQ(library.photos().all().at(0).file.path,
              "photos/2026/2026-11-07 not yet placed/a.jpg");
    expect_files_match_records(library);
}

}  // namespace
}  // namespace quarterturn
