#include "tests/indexer/backup/backup_fixture.h"

#include "indexer/disk/write_once.h"
#include "indexer/erasure/erase.h"
#include "tests/support/failing_disk.h"

namespace quarterturn {
namespace {

struct Backups : testing::Test, BackupTest {
    // What the library's records name lies there under the same names, whole, and nothing else.
    void expect_mirrors_library() {
        EXPECT_TRUE(sha256sum_agrees(drive));
        auto there = files_below(drive);
        for (const std::string top : {"photos", "consents", "inspiration"}) {
            if (!std::filesystem::exists(library.folder() / top)) continue;
            for (const auto& [path, text] : files_below(library.folder() / top)) {
                const std::string place = top + '/' + path;
                EXPECT_EQ(there[place], text) << place;
                there.erase(place);
            }
        }
        for (const auto& [path, text] : there) {
            EXPECT_TRUE(path.starts_with("records/records-") || path == "checksums.sha256" ||
                        path == "READ ME.txt" || path == "consent-form.txt")
                << path << " lies there too";
        }
    }

    std::vector<std::string> records() {
        return records_in(BackupFolder(real_file_system(), drive).manifest().value());
    }
};

// Takes one file less.
class ShutFolder : public FailingDisk {
  public:
    void write_new(const Path& file, std::span<const std::byte> bytes) override {
        if (file == unseen_name(shut)) throw disk_error(EACCES, file, Doing::writing);
        FailingDisk::write_new(file, bytes);
    }
    Path shut;
};

TEST_F(Backups, AFileThatMayNotBeWrittenThereKeepsNoOther) {
    ShutFolder disk;
    disk.heal();
    disk.shut = drive / photo_named("two.jpg").file.path;
    {
        Library on_it = Library::open(library.folder(), disk);
        const BackupReport report = back_up(on_it, {.to = drive});
        ASSERT_EQ(report.problems.size(), 1U);
        EXPECT_NE(report.problems[0].find("allow it in its folder's permissions"),
                  std::string::npos);
        EXPECT_EQ(report.copied, 2);
        EXPECT_EQ(report.backup.photos, 2);
    }
    EXPECT_EQ(back_up_to(drive).copied, 1);
    expect_mirrors_library();
}

TEST_F(Backups, HoldAllFilesUnderTheirOwnNames) {
    add_paper_and_picture();
    const BackupReport report = back_up_to(drive);
    EXPECT_TRUE(report.problems.empty());
    EXPECT_EQ(report.copied, 6);
    EXPECT_EQ(report.backup.photos, 3);
    expect_mirrors_library();
    EXPECT_EQ(text_of(drive / "consent-form.txt"), "May I show your hair?");
    EXPECT_EQ(records().size(), 1U);
    const std::string read_me = text_of(drive / "READ ME.txt");
    for (const auto& entry : std::filesystem::directory_iterator(drive)) {
        const std::string name = entry.path().filename().string();
        if (name == "READ ME.txt") continue;
        EXPECT_NE(read_me.find(name), std::string::npos) << name;
    }
    EXPECT_NE(read_me.find("What lies here, as far as the library has it"), std::string::npos);
}

TEST_F(Backups, CopyOnlyWhatIsNew) {
    back_up_to(drive);
    add_photo("four.jpg", trial);
    const BackupReport report = back_up_to(drive);
    EXPECT_EQ(report.copied, 1);
    EXPECT_EQ(records().size(), 2U);
    expect_mirrors_library();
}

TEST_F(Backups, WriteNothingWhenNothingIsNew) {
    back_up_to(drive);
    const auto before = files_below(drive);
    const BackupReport report = back_up_to(drive);
    EXPECT_EQ(report.copied, 0);
    EXPECT_TRUE(report.records.empty());
    EXPECT_EQ(files_below(drive), before);
    EXPECT_EQ(library.backups().all().at(0).at, report.backup.at);
}

TEST_F(Backups, KeepTheRecordsWhenOnlyTheyHaveChanged) {
    back_up_to(drive);
    Tags tags = photo_named("one.jpg").tags;
    tags.note = "the pin on the left";
    library.history().apply({"noted", {{photo_named("one.jpg").id, tags}}, {}});
    const BackupReport report = back_up_to(drive);
    EXPECT_EQ(report.copied, 0);
    EXPECT_FALSE(report.records.empty());
    EXPECT_EQ(records().size(), 2U);
}

TEST_F(Backups, FollowAFileThatWasMoved) {
    back_up_to(drive);
    const Photo photo = photo_named("one.jpg");
    const std::string place = "photos/2026/a sitting/one.jpg";
    std::filesystem::create_directories((library.folder() / place).parent_path());
    std::filesystem::rename(library.photo_file(photo), library.folder() / place);
    library.photos().set_path(photo.id, place);
    const BackupReport report = back_up_to(drive);
    EXPECT_EQ(report.copied, 0);
    EXPECT_EQ(report.renamed, 1);
    expect_mirrors_library();
}

TEST_F(Backups, FollowTwoFilesThatChangedPlaces) {
    back_up_to(drive);
    const Photo one = photo_named("one.jpg");
    const Photo two = photo_named("two.jpg");
    std::filesystem::rename(library.photo_file(one), library.folder() / "aside");
    std::filesystem::rename(library.photo_file(two), library.photo_file(one));
    std::filesystem::rename(library.folder() / "aside", library.photo_file(two));
    library.photos().set_path(one.id, "photos/2026/between");
    library.photos().set_path(two.id, one.file.path);
    library.photos().set_path(one.id, two.file.path);
    const BackupReport report = back_up_to(drive);
    EXPECT_EQ(report.renamed, 2);
    expect_mirrors_library();
}

TEST_F(Backups, TakeATextThatSheChanged) {
    add_paper_and_picture();
    back_up_to(drive);
    write_text(library.folder() / "consent-form.txt", "May I show your plait?");
    back_up_to(drive);
    EXPECT_EQ(text_of(drive / "consent-form.txt"), "May I show your plait?");
    expect_mirrors_library();
}

TEST_F(Backups, NeverPutADamagedPhotoInThePlaceOfAGoodOne) {
    back_up_to(drive);
    const Photo photo = photo_named("one.jpg");
    write_text(library.photo_file(photo), "PHOTO of one.jpg");
    back_up_to(drive);
    EXPECT_EQ(text_of(drive / photo.file.path), "photo of one.jpg");
    EXPECT_TRUE(sha256sum_agrees(drive));
}

TEST_F(Backups, SayWhichPhotoIsNotInThem) {
    const Photo photo = photo_named("one.jpg");
    write_text(library.photo_file(photo), "PHOTO of one.jpg");
    const BackupReport report = back_up_to(drive);
    ASSERT_EQ(report.problems.size(), 1U);
    EXPECT_NE(report.problems[0].find("one.jpg"), std::string::npos);
    EXPECT_FALSE(std::filesystem::exists(drive / photo.file.path));
    EXPECT_EQ(report.backup.photos, 2);
    const Backup known = library.backups().all().at(0);
    EXPECT_FALSE(library.backups().photos_in(known).contains(photo.id));
    EXPECT_TRUE(library.backups().photos_in(known).contains(photo_named("two.jpg").id));
}

TEST_F(Backups, MendWhatWasCutOffThere) {
    back_up_to(drive);
    write_text(drive / photo_named("one.jpg").file.path, "pho");
    EXPECT_EQ(back_up_to(drive).copied, 1);
    expect_mirrors_library();
}

// A drive that forgets: size and name are as they were.
TEST_F(Backups, MendWhatHasRottedThereWhenAllIsRead) {
    back_up_to(drive);
    const Path photo = drive / photo_named("one.jpg").file.path;
    const Path copied_records = drive / records().back();
    std::string records_text = text_of(copied_records);
    records_text[records_text.size() / 2] ^= 1;
    write_text(copied_records, records_text);
    write_text(photo, "PHOTO of one.jpg");
    EXPECT_EQ(back_up_to(drive).copied, 0) << "it is not read by itself";
    BackupWishes wishes;
    wishes.to = drive;
    wishes.now = at("2026-11-09T18:00");
    wishes.utc = std::chrono::sys_days(parse_date("2026-11-09").value());
    wishes.read_all = true;
    const BackupReport report = back_up(library, wishes);
    EXPECT_EQ(report.copied, 1);
    EXPECT_EQ(report.lost_there.size(), 2U) << "and she is told that the drive loses files";
    EXPECT_FALSE(report.records.empty());
    expect_mirrors_library();
    EXPECT_EQ(back_up(library, wishes).copied, 0);
}

TEST_F(Backups, LoseWhoWasErasedAndOlderRecordsOfHer) {
    add_paper_and_picture();
    back_up_to(drive);
    add_photo("four.jpg", trial);
    back_up_to(drive);
    erase(library, plan_erasure(library, mira, SharedPhotos::stay),
          parse_date("2026-11-09").value());
    const BackupReport report = back_up_to(drive);
    EXPECT_EQ(report.records_erased, 2);
    EXPECT_EQ(report.removed, 5);
    EXPECT_EQ(records().size(), 1U);
    expect_mirrors_library();
    for (const auto& [path, text] : files_below(drive)) {
        EXPECT_EQ(text.find("Okonjo"), std::string::npos) << path;
        EXPECT_EQ((path + text).find("one.jpg"), std::string::npos) << path;
    }
}

TEST_F(Backups, AreNamedByAnErasureUntilTheyAreMadeAgain) {
    back_up_to(drive);
    const ErasurePlan plan = plan_erasure(library, mira, SharedPhotos::stay);
    ASSERT_EQ(plan.backups.size(), 1U);
    EXPECT_EQ(plan.backups[0].folder, drive);
    const Erased erased = erase(library, plan, parse_date("2026-11-09").value());
    EXPECT_EQ(library.backups().before_erasure(erased.erasure.id).size(), 1U);
    back_up_to(drive);
    EXPECT_TRUE(library.backups().before_erasure(erased.erasure.id).empty());
}

TEST_F(Backups, AreRefusedWhereTheyWouldBeLostOrDestroySomething) {
    const auto reason = [&](const Path& to) {
        try {
            back_up_to(to);
            return std::string("taken");
        } catch (const StoreError& error) {
            return std::string(error.what());
        }
    };
    EXPECT_NE(reason(library.folder() / "backup").find("lies in the library"), std::string::npos);
    EXPECT_NE(reason(folder.path()).find("The library lies in"), std::string::npos);
    write_text(folder / "letters/to mother.txt", "dear");
    EXPECT_NE(reason(folder / "letters").find("holds other things"), std::string::npos);
    EXPECT_EQ(files_below(folder / "letters").size(), 1U);

    ExampleLibrary other;
    BackupWishes wishes;
    wishes.to = folder / "theirs";
    back_up(other.library, wishes);
    EXPECT_NE(reason(folder / "theirs").find("another library"), std::string::npos);
}

// As after a library was put back to what it was: a backup from it would lose what is newer.
TEST_F(Backups, WithNewerRecordsAreLeftAlone) {
    back_up_to(drive);
    const Backup known = library.backups().all().at(0);
    add_photo("four.jpg", trial);
    back_up_to(drive);
    library.backups().begin(known);
    const auto before = files_below(drive);
    EXPECT_THROW(back_up_to(drive), StoreError);
    EXPECT_EQ(files_below(drive), before);
}

TEST_F(Backups, GoOnWhereTheyWereStopped) {
    std::stop_source stop;
    BackupWishes wishes;
    wishes.to = drive;
    wishes.stop = stop.get_token();
    stop.request_stop();
    EXPECT_TRUE(back_up(library, wishes).stopped);
    EXPECT_TRUE(sha256sum_agrees(drive) || files_below(drive / "photos").empty());
    back_up_to(drive);
    expect_mirrors_library();
}

// Stopped, and then the photo is moved in the library before it goes on: nothing is left double.
TEST_F(Backups, ClearAwayWhatAStoppedOneLeft) {
    back_up_to(drive);
    const BackupFolder there(real_file_system(), drive);
    write_text(drive / "photos/2026/old place/four.jpg", "photo of four.jpg");
    there.note_unfinished({"photos/2026/old place/four.jpg"});
    add_photo("four.jpg", trial);
    back_up_to(drive);
    expect_mirrors_library();
}

TEST_F(Backups, RemoveNothingOutsideOfThem) {
    back_up_to(drive);
    write_text(folder / "drive/letters.txt", "dear");
    BackupFolder(real_file_system(), drive)
        .note_unfinished({"../letters.txt", (folder / "drive/letters.txt").string()});
    add_photo("four.jpg", trial);
    back_up_to(drive);
    EXPECT_EQ(text_of(folder / "drive/letters.txt"), "dear");
}

TEST_F(Backups, AreInOrderAlsoWhenTheClockWasPutBack) {
    backups_ = 20'000;  // days: a clock that was wrong
    back_up_to(drive);
    add_photo("four.jpg", trial);
    backups_ = 0;
    const BackupReport report = back_up_to(drive);
    EXPECT_EQ(records().back(), report.records);
    EXPECT_EQ(records().size(), 2U);
}

}  // namespace
}  // namespace quarterturn
