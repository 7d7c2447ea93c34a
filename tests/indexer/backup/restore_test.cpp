#include "indexer/backup/restore.h"

#include "indexer/backup/verify.h"
#include "indexer/intake/begun_intake.h"
#include "indexer/intake/bin.h"
#include "indexer/store/lock_library.h"
#include "tests/indexer/backup/backup_fixture.h"

namespace quarterturn {
namespace {

struct RestoreTest : testing::Test, BackupTest {
    RestoreTest() { add_paper_and_picture(); }

    RestoreReport restore_to(const Path& to, const std::string& client = {},
                             const std::string& records = {}) {
        RestoreWishes wishes;
        wishes.from = drive;
        wishes.to = to;
        wishes.client = client;
        wishes.records = records;
        wishes.now = at("2026-12-01T10:00");
        return restore(real_file_system(), wishes);
    }

    // Another client with a look, a sitting and a photo of her own, and one photo of both.
    void add_another_client() {
        const ClientId runa = library.clients().add(client_called("Runa Halvorsen"));
        Sitting sitting;
        sitting.client = runa;
        sitting.starts = at("2026-11-08T10:00");
        sitting.ends = at("2026-11-08T12:00");
        add_photo("hers.jpg", library.sittings().add(sitting));
        Look plait;
        plait.client = runa;
        plait.name = "fishbone plait";
        library.looks().add(plait);
    }

    Path again = folder / "again";
};

TEST_F(RestoreTest, MakesTheSameLibraryAgain) {
    back_up_to(drive);
    const auto photos = library.photos().all();
    const RestoreReport report = restore_to(again);
    EXPECT_TRUE(report.problems.empty());
    EXPECT_EQ(report.files, 6);
    Library restored = Library::open(again);
    EXPECT_EQ(restored.photos().all(), photos);
    EXPECT_EQ(restored.consents().all(), library.consents().all());
    for (const char* name : {"photos", "consents", "inspiration"}) {
        EXPECT_EQ(files_below(again / name), files_below(library.folder() / name)) << name;
    }
    EXPECT_EQ(text_of(again / "consent-form.txt"), "May I show your hair?");
    EXPECT_FALSE(std::filesystem::exists(again / "restoring"));
    EXPECT_TRUE(verify(restored, {}).whole());
}

TEST_F(RestoreTest, TakesTheRecordsOfADayWithThePhotosOfThen) {
    back_up_to(drive);  // 2026-11-08
    const std::string before = photo_named("one.jpg").file.path;
    std::filesystem::create_directories(library.folder() / "photos/2027");
    std::filesystem::rename(library.folder() / before, library.folder() / "photos/2027/one.jpg");
    library.photos().set_path(photo_named("one.jpg").id, "photos/2027/one.jpg");
    add_photo("four.jpg", trial);
    back_up_to(drive);  // 2026-11-09
    EXPECT_EQ(times_of_records(real_file_system(), drive).size(), 2U);
    restore_to(again, {}, "2026-11-08");
    Library restored = Library::open(again);
    EXPECT_EQ(restored.photos().all().size(), 3U);
    EXPECT_EQ(text_of(again / before), "photo of one.jpg");
    EXPECT_TRUE(verify(restored, {}).whole());
    EXPECT_THROW(restore_to(folder / "third", {}, "2026-10-01"), StoreError);
    EXPECT_THROW(restore_to(folder / "fourth", {}, "yesterday"), StoreError);
}

TEST_F(RestoreTest, GoesOnWithTheSameBackup) {
    back_up_to(drive);
    restore_to(again);
    Library restored = Library::open(again);
    BackupWishes wishes;
    wishes.to = drive;
    wishes.utc = std::chrono::sys_days(parse_date("2026-12-02").value());
    const BackupReport report = back_up(restored, wishes);
    EXPECT_EQ(report.copied, 0);
    EXPECT_EQ(report.backup.photos, 3);
    EXPECT_TRUE(sha256sum_agrees(drive));
}

TEST_F(RestoreTest, FromOlderRecordsLeavesTheBackupAlone) {
    back_up_to(drive);
    add_photo("four.jpg", trial);
    back_up_to(drive);
    restore_to(again, {}, "2026-11-08");
    Library restored = Library::open(again);
    const auto before = files_below(drive);
    BackupWishes wishes;
    wishes.to = drive;
    EXPECT_THROW(back_up(restored, wishes), StoreError);
    EXPECT_EQ(files_below(drive), before);
}

TEST_F(RestoreTest, OfOneClientHoldsNothingOfOthers) {
    add_another_client();
    BegunIntake::once(library).keep({"/media/Runa Halvorsen"});
    back_up_to(drive);
    const RestoreReport report = restore_to(again, "mira okonjo-lindqvist");
    EXPECT_TRUE(report.problems.empty());
    Library restored = Library::open(again);
    EXPECT_TRUE(BegunIntake::once(restored).sources().empty());
    ASSERT_EQ(restored.clients().all().size(), 1U);
    EXPECT_EQ(restored.photos().all().size(), 2U);
    EXPECT_EQ(restored.looks().all().size(), 1U);
    EXPECT_EQ(restored.weddings().all().size(), 1U);
    EXPECT_EQ(restored.consents().papers().size(), 1U);
    EXPECT_TRUE(verify(restored, {}).whole());
    for (const auto& [path, text] : files_below(again)) {
        for (const char* words : {"Runa", "fishbone", "hers.jpg", "three.jpg"}) {
            EXPECT_EQ((path + text).find(words), std::string::npos) << path << ": " << words;
        }
    }
    EXPECT_THROW(restore_to(folder / "third", "Nobody"), StoreError);
}

TEST_F(RestoreTest, IsNeverWrittenOverAnything) {
    back_up_to(drive);
    write_text(again / "letters.txt", "dear");
    EXPECT_THROW(restore_to(again), StoreError);
    EXPECT_EQ(files_below(again).size(), 1U);
    EXPECT_THROW(restore_to(library.folder()), StoreError);
    EXPECT_THROW(restore_to(drive / "again"), StoreError);
    EXPECT_THROW(restore_to(folder.path()), StoreError);
    EXPECT_TRUE(verify(library, {}).whole());
    EXPECT_TRUE(sha256sum_agrees(drive));
}

// The library would not open, and whose lock it is would lose it.
TEST_F(RestoreTest, IsNotMadeBesideALock) {
    back_up_to(drive);
    std::filesystem::create_directories(again);
    write_lock(real_file_system(), again,
               new_lock("seven owls below the granary", least_guess_cost()).file);
    const auto before = files_below(again);
    EXPECT_THROW(restore_to(again), StoreError);
    EXPECT_EQ(files_below(again), before);
}

TEST_F(RestoreTest, SaysWhatTheBackupDoesNotHoldWhole) {
    back_up_to(drive);
    write_text(drive / photo_named("one.jpg").file.path, "PHOTO of one.jpg");
    std::filesystem::remove(drive / photo_named("two.jpg").file.path);
    const RestoreReport report = restore_to(again);
    EXPECT_EQ(report.problems.size(), 2U);
    EXPECT_EQ(report.files, 4);
    EXPECT_EQ(verify(*std::make_unique<Library>(Library::open(again)), {}).troubles.size(), 2U);
}

TEST_F(RestoreTest, RefusesDamagedRecordsAndAFolderThatIsNoBackup) {
    back_up_to(drive);
    const Path records = drive / records_in(*BackupFolder(real_file_system(), drive).manifest())[0];
    auto bytes = read_bytes(records);
    bytes.at(bytes.size() / 2) ^= std::byte{1};
    write_bytes(records, bytes);
    EXPECT_THROW(restore_to(again), StoreError);
    RestoreWishes wishes;
    wishes.from = library.folder();
    wishes.to = folder / "third";
    EXPECT_THROW(restore(real_file_system(), wishes), StoreError);
}

TEST_F(RestoreTest, TakesTheNewestRecordsOfADayOrBefore) {
    back_up_to(drive);  // 2026-11-08
    add_photo("four.jpg", trial);
    back_up_to(drive);  // 2026-11-09
    restore_to(again, {}, "2026-12-20");
    EXPECT_EQ(Library::open(again).photos().all().size(), 4U);
    restore_to(folder / "third", {}, "2026-11-08 23:00");
    EXPECT_EQ(Library::open(folder / "third").photos().all().size(), 3U);
}

// The newest records are damaged: what was begun of them is in nobody's way.
TEST_F(RestoreTest, BeginsAnewWhereItFailedAndAfterTheNextBackup) {
    back_up_to(drive);
    add_photo("four.jpg", trial);
    back_up_to(drive);
    const Path newest =
        drive / records_in(*BackupFolder(real_file_system(), drive).manifest()).back();
    const auto whole = read_bytes(newest);
    write_text(newest, "damaged");
    EXPECT_THROW(restore_to(again), StoreError);
    const std::string sentence = [&] {
        try {
            Library::open(again);
        } catch (const StoreError& error) {
            return std::string(error.what());
        }
        return std::string("opened");
    }();
    EXPECT_NE(sentence.find("was interrupted: restore it into this folder"), std::string::npos)
        << sentence;
    restore_to(again, {}, "2026-11-08");
    EXPECT_EQ(Library::open(again).photos().all().size(), 3U);
    write_bytes(newest, whole);
}

TEST_F(RestoreTest, OfOneClientHoldsHerPhotosOfTheBin) {
    add_another_client();
    const auto day = parse_date("2026-11-07").value();
    put_into_bin(library, {{photo_named("one.jpg").id, photo_named("hers.jpg").id}}, day);
    back_up_to(drive);
    restore_to(again, "Mira Okonjo-Lindqvist");
    Library restored = Library::open(again);
    const auto binned = restored.bin().all();
    ASSERT_EQ(binned.size(), 1U) << "hers, and not the other's";
    EXPECT_EQ(binned[0].photo.file.name, "one.jpg");
    EXPECT_EQ(binned[0].since, day);
    EXPECT_EQ(text_of(again / binned[0].photo.file.path), "photo of one.jpg");
}

TEST_F(RestoreTest, OfOneClientLeavesNothingOfWhatWasBegunOfAll) {
    add_another_client();
    back_up_to(drive);
    RestoreWishes all;
    all.from = drive;
    all.to = again;
    all.progress = [](const ImportProgress& progress) {
        if (progress.done > 0) throw std::runtime_error("interrupted");
    };
    ASSERT_THROW(restore(real_file_system(), all), std::runtime_error);
    ASSERT_TRUE(std::filesystem::exists(again / "photos/2026"));
    ASSERT_FALSE(std::filesystem::exists(again / "records.sqlite"));
    write_text(again / "photos/2026/letters.txt", "dear");
    EXPECT_THROW(restore_to(again, "Mira Okonjo-Lindqvist"), StoreError) << "not from the backup";
    EXPECT_EQ(text_of(again / "photos/2026/letters.txt"), "dear");
    std::filesystem::remove(again / "photos/2026/letters.txt");
    restore_to(again, "Mira Okonjo-Lindqvist");
    Library restored = Library::open(again);
    EXPECT_EQ(restored.photos().all().size(), 2U);
    EXPECT_TRUE(verify(restored, {}).whole());
    EXPECT_FALSE(std::filesystem::exists(again / "consent-form.txt"));
}

TEST_F(RestoreTest, LeavesAFolderOfHersThatIsCalledAsItsOwn) {
    back_up_to(drive);
    write_text(again / "restoring/notes.txt", "hers");
    EXPECT_THROW(restore_to(again), StoreError);
    EXPECT_EQ(text_of(again / "restoring/notes.txt"), "hers");
    EXPECT_FALSE(std::filesystem::exists(again / "records.sqlite"));
    std::filesystem::remove(again / "restoring/notes.txt");
    EXPECT_TRUE(restore_to(again).problems.empty()) << "as when it had only begun";
}

}  // namespace
}  // namespace quarterturn
