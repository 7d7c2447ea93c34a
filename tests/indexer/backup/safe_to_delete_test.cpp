#include "indexer/backup/safe_to_delete.h"

#include "indexer/backup/reminder.h"
#include "indexer/intake/bin.h"
#include "tests/indexer/backup/backup_fixture.h"

namespace quarterturn {
namespace {

struct SafeTest : testing::Test, DriveOnAnotherDisk {
    SafeTest() {
        for (const char* name : {"one.jpg", "two.jpg"}) {
            write_text(card / name, std::string("photo of ") + name);
        }
    }

    std::map<std::string, Lacks> to_keep() {
        std::map<std::string, Lacks> keep;
        for (const FileToKeep& file : safe_to_delete(library, {.sources = {card}}).to_keep) {
            keep[file.file.filename()] = file.lacks;
        }
        return keep;
    }

    using Keep = std::map<std::string, Lacks>;
    Path card = folder / "card";
};

TEST_F(SafeTest, OnlyWhatIsInTheLibraryAndInABackupIsSafe) {
    EXPECT_EQ(to_keep(), (Keep{{"one.jpg", Lacks::backup}, {"two.jpg", Lacks::backup}}));
    back_up_to(drive);
    EXPECT_EQ(to_keep(), Keep{});
    EXPECT_EQ(safe_to_delete(library, {.sources = {card}}).safe.size(), 2U);
    add_photo("four.jpg", trial);
    write_text(card / "four.jpg", "photo of four.jpg");
    write_text(card / "five.jpg", "photo of five.jpg");
    write_text(card / "clip.mp4", "a film");
    EXPECT_EQ(to_keep(), (Keep{{"four.jpg", Lacks::backup},
                               {"five.jpg", Lacks::library},
                               {"clip.mp4", Lacks::photo}}));
}

TEST_F(SafeTest, ABackupOnTheLibrarysOwnDiskIsNotEnough) {
    back_up_to(folder / "beside");
    EXPECT_EQ(to_keep(), (Keep{{"one.jpg", Lacks::backup_on_other_disk},
                               {"two.jpg", Lacks::backup_on_other_disk}}));
    const SafeToDelete found = safe_to_delete(library, {.sources = {card}});
    EXPECT_TRUE(found.safe.empty());
    EXPECT_FALSE(found.all_safe());
    EXPECT_TRUE(sentence(found.to_keep.at(0)).ends_with("make one on another drive."));
    back_up_to(drive);
    EXPECT_EQ(to_keep(), Keep{}) << "whichever is asked first";
}

TEST_F(SafeTest, WhatIsDamagedInTheLibraryIsNot) {
    back_up_to(drive);
    write_text(library.photo_file(photo_named("one.jpg")), "PHOTO of one.jpg");
    EXPECT_EQ(to_keep(), (Keep{{"one.jpg", Lacks::whole_file_in_library}}));
}

TEST_F(SafeTest, WhatIsGoneFromAConnectedBackupIsNot) {
    back_up_to(drive);
    std::filesystem::remove(drive / photo_named("one.jpg").file.path);
    EXPECT_EQ(to_keep(), (Keep{{"one.jpg", Lacks::whole_file_in_backup}}));
}

TEST_F(SafeTest, WhatIsDamagedInAConnectedBackupIsNot) {
    back_up_to(drive);
    write_text(drive / photo_named("one.jpg").file.path, "PHOTO of one.jpg");
    EXPECT_EQ(to_keep(), (Keep{{"one.jpg", Lacks::whole_file_in_backup}}));
}

TEST_F(SafeTest, WhatIsDamagedOnADriveIsSaidWhateverAnotherBackupHolds) {
    for (const Path& backup : {folder / "beside", drive, folder / "beside too"}) back_up_to(backup);
    write_text(drive / photo_named("one.jpg").file.path, "PHOTO of one.jpg");
    EXPECT_EQ(to_keep(), (Keep{{"one.jpg", Lacks::whole_file_in_backup}}));
}

TEST_F(SafeTest, ALinkInABackupIsNoFurtherCopy) {
    back_up_to(drive);
    const Path one = photo_named("one.jpg").file.path;
    const Path two = photo_named("two.jpg").file.path;
    std::filesystem::remove(drive / one);
    std::filesystem::create_hard_link(library.folder() / one, drive / one);
    std::filesystem::remove(drive / two);
    std::filesystem::create_symlink(card / "two.jpg", drive / two);
    EXPECT_EQ(to_keep(), (Keep{{"one.jpg", Lacks::whole_file_in_backup},
                               {"two.jpg", Lacks::whole_file_in_backup}}));
}

TEST_F(SafeTest, ABackupWhoseDriveIsAwayIsNotBelieved) {
    back_up_to(drive);
    std::filesystem::rename(folder / "drive", folder / "in the drawer");
    EXPECT_EQ(to_keep(), (Keep{{"one.jpg", Lacks::backup_not_connected},
                               {"two.jpg", Lacks::backup_not_connected}}));
}

TEST_F(SafeTest, NothingInALibraryOrABackupIsEverSafe) {
    back_up_to(drive);
    for (const Path& kept : {drive, drive / "photos", library.folder(), folder / "drive"}) {
        EXPECT_THROW(safe_to_delete(library, {.sources = {kept}}), StoreError) << kept;
    }
    const Path link = folder / "link";
    std::filesystem::create_directory_symlink(drive / "photos", link);
    EXPECT_THROW(safe_to_delete(library, {.sources = {link}}), StoreError);
}

TEST_F(SafeTest, WhatLiesInTheBinIsNot) {
    put_into_bin(library, std::array{photo_named("one.jpg").id}, parse_date("2026-11-08").value());
    back_up_to(drive);
    EXPECT_EQ(to_keep(), (Keep{{"one.jpg", Lacks::in_bin}}));
}

TEST_F(SafeTest, WhatCouldNotBeBackedUpIsNot) {
    const Path file = library.photo_file(photo_named("one.jpg"));
    const std::string whole = text_of(file);
    write_text(file, "PHOTO of one.jpg");
    back_up_to(drive);
    write_text(file, whole);
    EXPECT_EQ(to_keep(), (Keep{{"one.jpg", Lacks::backup}}));
}

TEST_F(SafeTest, NothingIsChangedByLooking) {
    const auto before = files_below(card);
    to_keep();
    EXPECT_EQ(files_below(card), before);
}

std::optional<std::string> reminder_on(Library& library, const char* day) {
    return backup_reminder(library, parse_date(day).value());
}

TEST_F(SafeTest, SheIsRemindedOfPhotosThatAreInNoBackup) {
    EXPECT_TRUE(reminder_on(library, "2026-11-08"));
    back_up_to(drive);  // on 2026-11-08
    EXPECT_FALSE(reminder_on(library, "2027-11-08"));
    add_photo("four.jpg", trial);
    EXPECT_FALSE(reminder_on(library, "2026-12-07"));
    EXPECT_TRUE(reminder_on(library, "2026-11-01"))
        << "the clock was ahead when it was made, or is behind";
    EXPECT_TRUE(reminder_on(library, "2026-12-08"));
    library.settings().set("backup days", "60");
    EXPECT_FALSE(reminder_on(library, "2026-12-08"));
}

TEST(Reminder, IsSilentWhileThereIsNothingToLose) {
    ExampleLibrary empty;
    EXPECT_FALSE(reminder_on(empty.library, "2026-11-08"));
}

}  // namespace
}  // namespace quarterturn
