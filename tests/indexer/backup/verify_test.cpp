// What verify finds: each kind of damage is done by hand, and looked for.

#include "indexer/backup/verify.h"

#include "indexer/intake/bin.h"
#include "indexer/lock/locked_contents.h"
#include "indexer/lock/locked_name.h"
#include "indexer/looks/sign_off.h"
#include "indexer/store/erasure_table.h"
#include "tests/indexer/backup/backup_fixture.h"
#include "tests/support/child.h"
#include "tests/support/failing_disk.h"
#include "tests/support/fill_disk.h"

namespace quarterturn {
namespace {

struct VerifyTest : testing::Test, BackupTest {
    VerifyTest() { add_paper_and_picture(); }

    VerifyReport look(bool heal = true) {
        VerifyWishes wishes;
        wishes.now = at("2026-11-20T09:00");
        wishes.heal = heal;
        return verify(library, wishes);
    }

    Path file_of(const std::string& name) { return library.photo_file(photo_named(name)); }

    // One bit, and nothing else.
    static void flip_a_bit(const Path& file) {
        auto bytes = read_bytes(file);
        bytes.at(bytes.size() / 2) ^= std::byte{16};
        write_bytes(file, bytes);
    }
};

TEST_F(VerifyTest, SaysThatAllIsWhole) {
    const VerifyReport report = look();
    EXPECT_TRUE(report.whole());
    EXPECT_EQ(report.files, 5);
    EXPECT_EQ(library.verification().reached()->finished_at, at("2026-11-20T09:00"));
    EXPECT_EQ(library.verification().reached()->problems, 0);
}

TEST_F(VerifyTest, FindsAFlippedBitAMissingFileAndOneWithoutARecord) {
    flip_a_bit(file_of("one.jpg"));
    std::filesystem::remove(file_of("two.jpg"));
    write_text(library.folder() / "photos/2026/stranger.jpg", "whose is it");
    const VerifyReport report = look();
    ASSERT_EQ(report.troubles.size(), 2U);
    EXPECT_EQ(report.troubles[0].path, photo_named("one.jpg").file.path);
    EXPECT_EQ(report.troubles[0].trouble, Trouble::changed);
    EXPECT_FALSE(report.troubles[0].healed());
    EXPECT_EQ(report.troubles[1].path, photo_named("two.jpg").file.path);
    EXPECT_EQ(report.troubles[1].trouble, Trouble::missing);
    EXPECT_EQ(report.without_record, std::vector<std::string>{"photos/2026/stranger.jpg"});
    EXPECT_EQ(library.verification().reached()->problems, 3);
}

TEST_F(VerifyTest, NeverOffersFilesOfAnErasureToBeBroughtIn) {
    const std::string hers = "photos/2026/of her who went.jpg";
    write_text(library.folder() / hers, "hers");
    ErasureTable(library.database()).let_go({}, {hers});
    const VerifyReport report = look();
    EXPECT_TRUE(report.without_record.empty());
    ASSERT_EQ(report.to_be_erased.size(), 1U);
    EXPECT_TRUE(report.to_be_erased[0].starts_with(hers + " is of an erasure"));
    EXPECT_FALSE(report.whole());
}

// As locking that was interrupted leaves them: they may be photos of hers.
TEST_F(VerifyTest, AdvisesNobodyToRemoveWhatSomeLockHolds) {
    const KeysInHand keys = new_library_keys();
    const std::string locked = "photos/2026/" + lock_name(*keys, "photos", "IMG_1.jpg");
    write_text(library.folder() / locked, "");
    write_bytes(library.folder() / locked, locked_contents(*keys, bytes_in("sealed")));
    const VerifyReport report = look();
    EXPECT_TRUE(report.without_record.empty());
    ASSERT_EQ(report.lock.size(), 1U);
    EXPECT_NE(report.lock[0].find(locked + " is in no record"), std::string::npos);
    EXPECT_NE(report.lock[0].find("Keep it"), std::string::npos);
    EXPECT_FALSE(report.whole());
}

TEST_F(VerifyTest, FindsTheSameInALibraryThatCanOnlyBeLookedAt) {
    flip_a_bit(file_of("one.jpg"));
    const Path place = library.folder();
    library = Library::create(folder / "elsewhere");
    library = Library::open_to_look(place);
    const VerifyReport report = look();
    ASSERT_EQ(report.troubles.size(), 1U);
    EXPECT_EQ(report.troubles[0].trouble, Trouble::changed);
    EXPECT_FALSE(report.troubles[0].healed());
    EXPECT_FALSE(library.verification().reached());
}

// It was open when the disk filled up.
TEST(VerifyOnAFullDisk, GoesOnWithoutKeepingItsPlace) {
    const TemporaryFolder folder;
    const auto answer = on_small_disk(folder.path(), 8'000'000, [&]() -> std::string {
        Library library = Library::create(folder / "library");
        fill_disk_of(folder.path());
        VerifyWishes wishes;
        wishes.now = at("2026-11-09T18:00");
        const bool whole = verify(library, wishes).whole();
        return whole && !library.verification().reached() ? "whole" : "not";
    });
    if (!answer) GTEST_SKIP() << "The system lets us have no disk of our own.";
    EXPECT_EQ(*answer, "whole");
}

TEST_F(VerifyTest, NamesAFolderThatCannotBeListedAndChecksTheRest) {
    struct ShutFolder : FailingDisk {
        Path shut;
        std::vector<Path> list(const Path& folder) override {
            if (folder == shut) throw disk_error(EACCES, folder, Doing::reading);
            return FailingDisk::list(folder);
        }
    };
    const Path place = library.folder();
    ShutFolder disk;
    disk.shut = place / "photos/2026/shut";
    write_text(disk.shut / "IMG_9.jpg", "of nobody knows whom");
    write_text(place / "photos/2026/stranger.jpg", "whose is it");
    library = Library::create(folder / "elsewhere");
    library = Library::open(place, disk);
    const VerifyReport report = look();
    ASSERT_EQ(report.troubles.size(), 1U);
    EXPECT_EQ(report.troubles[0].path, "photos/2026/shut");
    EXPECT_EQ(report.troubles[0].trouble, Trouble::unreadable);
    EXPECT_EQ(report.without_record, std::vector<std::string>{"photos/2026/stranger.jpg"});
    EXPECT_EQ(library.verification().reached()->problems, 2);
    library = Library::create(folder / "elsewhere still");
}

TEST_F(VerifyTest, FindsDamagedPapersAndPictures) {
    flip_a_bit(library.folder() / library.consents().papers().at(0).path);
    flip_a_bit(library.folder() / "inspiration/torn out.jpg");
    EXPECT_EQ(look().troubles.size(), 2U);
}

TEST_F(VerifyTest, TellsOfRecordsThatAnotherComputerLeft) {
    for (const char* ours : {"records.sqlite-journal", "records.sqlite.version-3.copy"}) {
        write_text(library.folder() / ours, "");
    }
    EXPECT_TRUE(look().whole());
    const std::array left{"records (Mira's copy 2026-11-19).sqlite", "records-2.sqlite-wal"};
    for (const char* name : left) write_text(library.folder() / name, "");
    const VerifyReport report = look();
    ASSERT_EQ(report.records.size(), left.size());
    EXPECT_TRUE(report.records[0].starts_with(left[0])) << report.records[0];
    EXPECT_TRUE(report.records[1].starts_with(left[1])) << report.records[1];
    EXPECT_TRUE(std::filesystem::exists(library.folder() / left[0]));
}

TEST_F(VerifyTest, HealsFromABackupAndKeepsTheChangedFile) {
    back_up_to(drive);
    const auto before = files_below(library.folder() / "photos");
    flip_a_bit(file_of("one.jpg"));
    std::filesystem::remove(file_of("two.jpg"));
    flip_a_bit(library.folder() / "inspiration/torn out.jpg");
    const std::string changed = text_of(file_of("one.jpg"));
    const VerifyReport report = look();
    ASSERT_EQ(report.troubles.size(), 3U);
    for (const FileTrouble& trouble : report.troubles) EXPECT_EQ(trouble.healed_from, drive);
    EXPECT_EQ(text_of(report.troubles[0].set_aside), changed);
    for (const FileTrouble& trouble : report.troubles) {
        std::filesystem::remove(trouble.set_aside);
    }
    EXPECT_EQ(files_below(library.folder() / "photos"), before);
    EXPECT_EQ(text_of(library.folder() / "inspiration/torn out.jpg"), "torn out of a magazine");
    EXPECT_TRUE(look().whole());
}

TEST_F(VerifyTest, HealsWhatLiesInTheBinToo) {
    const Photo binned = photo_named("one.jpg");
    put_into_bin(library, std::array{binned.id}, parse_date("2026-11-08").value());
    back_up_to(drive);
    std::filesystem::remove(library.photo_file(binned));
    const VerifyReport report = look();
    ASSERT_EQ(report.troubles.size(), 1U);
    EXPECT_TRUE(report.troubles[0].healed());
    EXPECT_TRUE(std::filesystem::exists(library.photo_file(binned)));
}

TEST_F(VerifyTest, TakesNoDamagedFileFromABackup) {
    back_up_to(drive);
    flip_a_bit(drive / photo_named("one.jpg").file.path);
    flip_a_bit(file_of("one.jpg"));
    const std::string changed = text_of(file_of("one.jpg"));
    const VerifyReport report = look();
    ASSERT_EQ(report.troubles.size(), 1U);
    EXPECT_FALSE(report.troubles[0].healed());
    EXPECT_EQ(text_of(file_of("one.jpg")), changed);
}

TEST_F(VerifyTest, OnlyLooksWhereSheWantsItSo) {
    back_up_to(drive);
    flip_a_bit(file_of("one.jpg"));
    const auto before = files_below(library.folder() / "photos");
    EXPECT_FALSE(look(false).troubles.at(0).healed());
    EXPECT_EQ(files_below(library.folder() / "photos"), before);
}

TEST_F(VerifyTest, GoesOnWhereItWasStoppedAndForgetsNoTrouble) {
    flip_a_bit(file_of("one.jpg"));
    std::stop_source stop;
    VerifyWishes wishes;
    wishes.stop = stop.get_token();
    wishes.progress = [&](const ImportProgress& progress) {
        if (progress.done == 1) stop.request_stop();
    };
    const VerifyReport first = verify(library, wishes);
    EXPECT_GE(first.files, 1);
    EXPECT_EQ(first.troubles.size(), 1U);
    const VerifyReport second = look();
    EXPECT_EQ(second.troubles.size(), 1U);
    EXPECT_FALSE(second.stopped);
    EXPECT_EQ(library.verification().reached()->problems, 1);
}

TEST_F(VerifyTest, SaysWhichSignedOffLookLacksAPhoto) {
    SignOff sign_off;
    sign_off.look = BackupTest::look;
    sign_off.signed_at = at("2026-11-07T12:30");
    for (const char* name : {"one.jpg", "two.jpg"}) {
        const Photo photo = photo_named(name);
        sign_off.seal.photos.push_back({photo.id, name, photo.file.sha256, "after, left"});
    }
    library.sign_offs().add(sign_off);
    EXPECT_TRUE(look().whole());
    flip_a_bit(file_of("one.jpg"));
    const VerifyReport report = look();
    ASSERT_EQ(report.seals.size(), 1U);
    EXPECT_NE(report.seals[0].find("low twisted bun"), std::string::npos);
    EXPECT_NE(report.seals[0].find("one.jpg"), std::string::npos);
}

}  // namespace
}  // namespace quarterturn
