// The power goes in the middle of a job. The job runs once on a disk that records; then what the
// disk would hold at each sync, with nothing, all or some of what was not synced, is laid out and
// opened.

#include <SQLiteCpp/SQLiteCpp.h>

#include "indexer/backup/restore.h"
#include "indexer/backup/verify.h"
#include "indexer/erasure/erase.h"
#include "indexer/store/records_file.h"
#include "indexer/worker/confined.h"
#include "tests/indexer/backup/backup_fixture.h"
#include "tests/indexer/backup/power_cut_fixture.h"
#include "tests/indexer/intake/photo_files.h"
#include "tests/indexer/store/version_1.h"
#include "tests/support/seen_from_outside.h"

namespace quarterturn {
namespace {

void expect_whole(const Path& library) {
    EXPECT_EQ(wrong_from_outside(library), std::vector<std::string>{});
}

TEST_F(PowerCut, WhileALibraryIsMade) {
    record([&](FileSystem& disk) { Library::create(root / "library", disk); });
    at_every_cut([](const Cut& cut) {
        const Path made = cut.disk / "library";
        if (!std::filesystem::exists(made / "records.sqlite")) {
            EXPECT_FALSE(cut.at_the_end);
            Library::create(made);
        }
        expect_whole(made);
    });
}

TEST_F(PowerCut, WhilePhotosAreBroughtIn) {
    const Path card = folder / "card";
    for (int i = 0; i < 3; ++i) {
        write_photo(card / ("IMG_" + std::to_string(i) + ".jpg"), i,
                    {.taken = "2026:11:07 10:00:1" + std::to_string(i)});
    }
    Library::create(root / "library");
    const auto decoder = make_confined_decoder();
    const auto bring_in = [&](const Path& into, FileSystem& disk) {
        Library library = Library::open(into, disk);
        return import_photos(library, *decoder, {.sources = {card}});
    };
    record(
        [&](FileSystem& disk) { EXPECT_EQ(bring_in(root / "library", disk).imported.size(), 3U); });
    at_every_cut([&](const Cut& cut) {
        expect_whole(cut.disk / "library");
        if (cut.at_the_end) {
            EXPECT_EQ(Library::open(cut.disk / "library").photos().all().size(), 3U);
        }
        if (cut.number % 3 != 0) return;
        bring_in(cut.disk / "library", real_file_system());
        Library again = Library::open(cut.disk / "library");
        EXPECT_EQ(again.photos().all().size(), 3U);
        EXPECT_EQ(files_below(again.folder() / "photos").size(), 3U);
        EXPECT_TRUE(files_below(again.incoming_folder()).empty());
    });
}

TEST_F(PowerCut, WhilePhotosAreTagged) {
    {
        const BackupTest made;
        place(made.folder / "library");
    }
    RepeatedTagging tagging(root / "library", log);
    record([&](FileSystem& disk) { tagging.run(disk); });
    at_every_cut([&](const Cut& cut) {
        expect_whole(cut.disk / "library");
        tagging.expect_whole_changes(cut);
    });
}

TEST_F(PowerCut, WhileALibraryIsBroughtUpToDate) {
    std::filesystem::create_directories(root / "library");
    SQLite::Database((root / "library" / "records.sqlite").string(),
                     SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE)
        .exec(version_1_sql);
    record([&](FileSystem& disk) { Database(root / "library" / "records.sqlite", disk); });
    at_every_cut([](const Cut& cut) {
        Database database(cut.disk / "library" / "records.sqlite");
        EXPECT_EQ(ClientTable(database).all().at(0).name, "Mira Okonjo-Lindqvist");
        EXPECT_EQ(PhotoTable(database).all().at(0).tags.angle, Angle::left_three_quarter);
    });
}

BackupReport back_up_on(const Path& disk_folder, int day, FileSystem& disk) {
    Library library = Library::open(disk_folder / "library", disk);
    BackupWishes wishes;
    wishes.to = disk_folder / "drive";
    wishes.now = at("2026-11-08T18:00") + std::chrono::days(day);
    wishes.utc = std::chrono::sys_days(parse_date("2026-11-08").value()) + std::chrono::days(day);
    return back_up(library, wishes);
}

TEST_F(PowerCut, WhileItIsBackedUp) {
    {
        BackupTest made;
        made.add_paper_and_picture();
        place(made.folder / "library");
    }
    record([&](FileSystem& disk) {
        EXPECT_TRUE(back_up_on(root, 0, disk).problems.empty());
        Library::open(root / "library", disk).clients().add(client_called("Ada Vale"));
        EXPECT_TRUE(back_up_on(root, 1, disk).problems.empty());
    });
    at_every_cut([](const Cut& cut) {
        expect_whole(cut.disk / "library");
        const Path drive = cut.disk / "drive";
        const bool lists = names_files(drive / "checksums.sha256");
        EXPECT_TRUE(lists || !cut.at_the_end);
        if (lists) {
            EXPECT_TRUE(sha256sum_agrees(drive));
        }
        if (cut.number % 3 != 0) return;
        EXPECT_TRUE(back_up_on(cut.disk, 2, real_file_system()).problems.empty());
        EXPECT_TRUE(sha256sum_agrees(drive));
    });
}

TEST_F(PowerCut, WhileItIsRestored) {
    BackupTest made;
    made.back_up_to(made.drive);
    std::filesystem::create_directories(root);
    record([&](FileSystem& disk) { restore(disk, {.from = made.drive, .to = root / "again"}); });
    at_every_cut([&](const Cut& cut) {
        const Path again = cut.disk / "again";
        const bool whole = std::filesystem::exists(again / "records.sqlite");
        EXPECT_TRUE(whole || !cut.at_the_end);
        if (!whole) restore(real_file_system(), {.from = made.drive, .to = again});
        Library restored = Library::open(again);
        EXPECT_TRUE(verify(restored, {}).whole());
    });
}

TEST_F(PowerCut, WhileAClientIsErased) {
    ClientId mira;
    {
        BackupTest made;
        made.add_paper_and_picture();
        mira = made.mira;
        place(made.folder / "library");
    }
    record([&](FileSystem& disk) {
        Library library = Library::open(root / "library", disk);
        erase(library, plan_erasure(library, mira, SharedPhotos::go),
              parse_date("2026-11-26").value());
    });
    at_every_cut([&](const Cut& cut) {
        bool there = false;
        {
            Library library = Library::open(cut.disk / "library");
            finish_erasures(library);
            there = library.clients().find(mira).has_value();
        }
        EXPECT_FALSE(there && cut.at_the_end);
        if (there) return expect_whole(cut.disk / "library");
        for (const auto& [file, text] : files_below(cut.disk / "library")) {
            EXPECT_EQ(text.find("Okonjo"), std::string::npos) << file;
            EXPECT_EQ(text.find("photo of one.jpg"), std::string::npos) << file;
        }
    });
}

}  // namespace
}  // namespace quarterturn
