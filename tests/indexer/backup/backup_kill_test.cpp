// Backups and restores that are killed at any moment: what the list of files names is whole, and
// the next run goes on. KILLS says how often; a few times are enough to notice what was broken.

#include <random>

#include "indexer/backup/restore.h"
#include "indexer/backup/verify.h"
#include "tests/indexer/backup/backup_fixture.h"
#include "tests/support/killed.h"
#include "tests/support/seen_from_outside.h"

namespace quarterturn {
namespace {

constexpr int usual_kills = 12;

void back_up_library(const Path& folder, int day) {
    Library library = Library::open(folder / "library");
    BackupWishes wishes;
    wishes.to = folder / "drive" / "backup";
    wishes.now = at("2026-11-08T18:00") + std::chrono::days(day);
    wishes.utc = std::chrono::sys_days(parse_date("2026-11-08").value()) + std::chrono::days(day);
    back_up(library, wishes);
}

TEST(BackupKill, WhatTheListNamesIsWholeAndTheNextRunGoesOn) {
    auto made = std::make_unique<BackupTest>();
    for (int i = 0; i < 40; ++i) made->add_photo("IMG_" + std::to_string(i) + ".jpg", {});
    const Path folder = made->folder.path();
    std::minstd_rand random{7};
    for (int i = 0; i < kills(usual_kills); ++i) {
        const std::string name = "IMG_" + std::to_string(i % 40) + ".jpg";
        const Photo photo = made->photo_named(name);
        const std::string place = "photos/" + std::to_string(3000 + i) + '/' + name;
        std::filesystem::create_directories((made->library.folder() / place).parent_path());
        std::filesystem::rename(made->library.photo_file(photo), made->library.folder() / place);
        made->library.photos().set_path(photo.id, place);
        made->add_photo("new " + std::to_string(i) + ".jpg", {});
        kill_after(std::chrono::microseconds{random() % 120'000},
                   [&] { back_up_library(folder, i); });
        if (names_files(made->drive / "checksums.sha256")) {
            EXPECT_TRUE(sha256sum_agrees(made->drive)) << i;
        }
    }
    back_up_library(folder, kills(usual_kills));
    EXPECT_TRUE(sha256sum_agrees(made->drive));
    EXPECT_EQ(files_below(made->drive / "photos"), files_below(made->library.folder() / "photos"));
}

TEST(RestoreKill, IsNoLibraryUntilItIsWholeAndTheNextRunGoesOn) {
    BackupTest made;
    for (int i = 0; i < 40; ++i) made.add_photo("IMG_" + std::to_string(i) + ".jpg", {});
    made.back_up_to(made.drive);
    const RestoreWishes wishes{.from = made.drive, .to = made.folder / "again"};
    std::minstd_rand random{11};
    for (int i = 0; i < kills(usual_kills); ++i) {
        if (i % 4 == 0) std::filesystem::remove_all(wishes.to);
        const bool whole_before = std::filesystem::exists(wishes.to / "records.sqlite") &&
                                  !std::filesystem::exists(wishes.to / "restoring");
        if (whole_before) std::filesystem::remove_all(wishes.to);
        kill_after(std::chrono::microseconds{random() % 80'000},
                   [&] { restore(real_file_system(), wishes); });
        if (!std::filesystem::exists(wishes.to / "records.sqlite")) continue;
        Library restored = Library::open(wishes.to);
        const VerifyReport report = verify(restored, {});
        EXPECT_TRUE(report.troubles.empty() && report.without_record.empty()) << i;
        EXPECT_EQ(wrong_from_outside(wishes.to), std::vector<std::string>{}) << i;
    }
    std::filesystem::remove_all(made.folder / "third");
    restore(real_file_system(), {.from = made.drive, .to = made.folder / "third"});
    Library restored = Library::open(made.folder / "third");
    EXPECT_TRUE(verify(restored, {}).whole());
    EXPECT_TRUE(sha256sum_agrees(made.drive));
}

}  // namespace
}  // namespace quarterturn
