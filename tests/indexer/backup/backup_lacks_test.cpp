// What a backup says of photos that are gone from the library, or cannot be written there.

#include <gtest/gtest.h>

#include "tests/indexer/backup/backup_fixture.h"
#include "tests/support/failing_disk.h"

namespace quarterturn {
namespace {

class LookCounter : public FailingDisk {
  public:
    std::map<Path, int> looks;

    FileState state(const Path& file) override {
        ++looks[file];
        return FailingDisk::state(file);
    }
    bool exists(const Path& file) override {
        ++looks[file];
        return FailingDisk::exists(file);
    }
};

struct LackingBackup : testing::Test, BackupTest {};

TEST_F(LackingBackup, SaysWhichPhotoIsGoneFromTheLibrary) {
    back_up_to(drive);
    const Photo photo = photo_named("one.jpg");
    std::filesystem::remove(library.photo_file(photo));
    const BackupReport report = back_up_to(drive);
    EXPECT_EQ(report.gone, std::vector<Path>{library.photo_file(photo)});
    EXPECT_TRUE(report.problems.empty());
    EXPECT_EQ(report.backup.photos, 3);
}

// A hundred thousand photos on a slow disk are looked at in each backup.
TEST_F(LackingBackup, LooksAtEachFileOfTheLibraryOnce) {
    const BackupWishes wishes{.to = drive, .now = at("2026-11-08T10:00")};
    back_up(library, wishes);
    LookCounter disk;
    Library again = Library::open(library.folder(), disk);
    back_up(again, wishes);
    EXPECT_EQ(disk.looks[again.photo_file(photo_named("one.jpg"))], 1);
}

// Of the right size, and the last that is left of the photo: it counts as no copy, and stays.
TEST_F(LackingBackup, CallsNoPhotoSafeThatIsGoneAndNotWholeThere) {
    back_up_to(drive);
    const Photo photo = photo_named("one.jpg");
    std::filesystem::remove(library.photo_file(photo));
    write_text(drive / photo.file.path, "PHOTO of one.jpg");
    for (int time = 0; time < 2; ++time) {
        const BackupReport report = back_up_to(drive);
        ASSERT_EQ(report.problems.size(), 1U);
        EXPECT_NE(report.problems[0].find("one.jpg is not there"), std::string::npos);
        EXPECT_EQ(report.lacking, std::vector<Path>{library.photo_file(photo)});
        EXPECT_EQ(report.backup.photos, 2);
        EXPECT_EQ(text_of(drive / photo.file.path), "PHOTO of one.jpg");
        EXPECT_TRUE(sha256sum_agrees(drive));
    }
    write_text(library.photo_file(photo), "photo of one.jpg");
    EXPECT_EQ(back_up_to(drive).backup.photos, 3);
    EXPECT_TRUE(sha256sum_agrees(drive));
}

TEST_F(LackingBackup, NamesAFolderInAPhotosPlaceAndGoesOn) {
    back_up_to(drive);
    const Photo photo = photo_named("one.jpg");
    std::filesystem::remove(drive / photo.file.path);
    std::filesystem::create_directory(drive / photo.file.path);
    add_photo("four.jpg", trial);
    for (int time = 0; time < 2; ++time) {
        const BackupReport report = back_up_to(drive);
        ASSERT_EQ(report.problems.size(), 1U);
        EXPECT_NE(report.problems[0].find("move it out of the backup"), std::string::npos);
        EXPECT_EQ(report.backup.photos, 3);
        EXPECT_TRUE(sha256sum_agrees(drive));
    }
    std::filesystem::remove(drive / photo.file.path);
    EXPECT_TRUE(back_up_to(drive).problems.empty());
    EXPECT_EQ(text_of(drive / photo.file.path), "photo of one.jpg");
    EXPECT_TRUE(sha256sum_agrees(drive));
}

}  // namespace
}  // namespace quarterturn
