// A photo that was moved within the library by hand, and one that a lock left open, are found by
// the check of the library and see their place again.

#include <gtest/gtest.h>

#include "indexer/backup/verify.h"
#include "indexer/lock/key_ring.h"
#include "indexer/store/lock_library.h"
#include "tests/indexer/backup/backup_fixture.h"
#include "tests/support/failing_disk.h"

namespace quarterturn {
namespace {

struct MovedByHand : testing::Test, BackupTest {
    Path file_of(const std::string& name) { return library.photo_file(photo_named(name)); }

    VerifyReport check(bool heal = true) {
        VerifyWishes wishes;
        wishes.heal = heal;
        wishes.from_start = true;
        return verify(library, wishes);
    }

    void move_by_hand(const std::string& name, const Path& to) {
        std::filesystem::create_directories(to.parent_path());
        std::filesystem::rename(file_of(name), to);
    }
};

TEST_F(MovedByHand, IntoAFolderOfTheProgramItIsFoundToo) {
    for (const char* top : {"incoming", "cache"}) {
        move_by_hand("one.jpg", library.folder() / top / "bride.jpg");
        const VerifyReport report = check();
        ASSERT_EQ(report.troubles.size(), 1U) << top;
        EXPECT_TRUE(report.troubles[0].moved_back) << top;
    }
}

TEST_F(MovedByHand, OneThatMayNotBePutBackKeepsNoOtherOut) {
    struct ShutPlace : FailingDisk {
        Path shut;
        void rename_new(const Path& from, const Path& to) override {
            if (to == shut) throw disk_error(EACCES, to, Doing::moving);
            FailingDisk::rename_new(from, to);
        }
    } disk;
    back_up_to(drive);
    for (const char* name : {"one.jpg", "two.jpg"}) std::filesystem::remove(file_of(name));
    disk.shut = file_of("one.jpg");
    library = Library::open(library.folder(), disk);
    const VerifyReport report = check();
    ASSERT_EQ(report.troubles.size(), 2U);
    EXPECT_NE(sentence(report.troubles[0]).find("could not be put back"), std::string::npos);
    EXPECT_NE(sentence(report.troubles[0]).find(disk.shut.string()), std::string::npos);
    EXPECT_TRUE(report.troubles[1].healed());
    disk.shut.clear();
    EXPECT_TRUE(check().troubles.at(0).healed());
    library = Library::open(library.folder());
}

TEST_F(MovedByHand, AFileIsKnownByItsChecksumAndPutBack) {
    const auto before = files_below(library.folder() / "photos");
    const Path elsewhere = library.folder() / "photos/2027/sorted by hand/bride.jpg";
    write_text(library.folder() / "photos/2027/of the same size", "photo OF one.jpg");
    move_by_hand("one.jpg", elsewhere);
    const VerifyReport looked = check(false);
    ASSERT_EQ(looked.troubles.size(), 1U);
    EXPECT_EQ(looked.troubles[0].moved_to, "photos/2027/sorted by hand/bride.jpg");
    EXPECT_FALSE(looked.troubles[0].healed());
    EXPECT_EQ(looked.without_record, std::vector<std::string>{"photos/2027/of the same size"})
        << "told to remove the only copy";
    EXPECT_TRUE(std::filesystem::exists(elsewhere));
    const VerifyReport report = check();
    ASSERT_EQ(report.troubles.size(), 1U);
    EXPECT_TRUE(report.troubles[0].moved_back);
    EXPECT_NE(sentence(report.troubles[0]).find("was put back"), std::string::npos);
    EXPECT_FALSE(std::filesystem::exists(elsewhere.parent_path()));
    std::filesystem::remove_all(library.folder() / "photos/2027");
    EXPECT_EQ(files_below(library.folder() / "photos"), before);
    EXPECT_TRUE(check().whole());
}

TEST_F(MovedByHand, AChangedFileIsPutBackFromACopyThatLiesInTheLibrary) {
    const std::string words = text_of(file_of("one.jpg"));
    const Path copy = library.folder() / "photos/2027/copied by hand.jpg";
    write_text(copy, words);
    write_text(file_of("one.jpg"), "photo OF one.jpg");
    const VerifyReport looked = check(false);
    ASSERT_EQ(looked.troubles.size(), 1U);
    EXPECT_EQ(looked.troubles[0].trouble, Trouble::changed);
    EXPECT_NE(sentence(looked.troubles[0]).find("lies in photos/2027/copied by hand.jpg. Leave it"),
              std::string::npos)
        << sentence(looked.troubles[0]);
    EXPECT_EQ(looked.without_record, std::vector<std::string>{}) << "told to remove the only copy";
    EXPECT_EQ(text_of(file_of("one.jpg")), "photo OF one.jpg");
    const VerifyReport report = check();
    ASSERT_EQ(report.troubles.size(), 1U);
    EXPECT_TRUE(report.troubles[0].healed_by_copy);
    EXPECT_EQ(text_of(file_of("one.jpg")), words);
    EXPECT_EQ(text_of(report.troubles[0].set_aside), "photo OF one.jpg");
    EXPECT_EQ(text_of(copy), words);
    const auto aside = check().without_record;
    ASSERT_EQ(aside.size(), 2U);
    for (const std::string& path : aside) {
        const bool is_copy = library.folder() / path == copy;
        EXPECT_EQ(words_without_record(path, path, false).find("bring it in") != std::string::npos,
                  is_copy)
            << "what was found changed is damaged, and importing refuses it";
    }
    std::filesystem::remove(report.troubles[0].set_aside);
    EXPECT_EQ(check().without_record, std::vector<std::string>{"photos/2027/copied by hand.jpg"});
}

// The copy is looked at before the changed file gives way.
TEST_F(MovedByHand, ACopyThatIsNoneHealsNothing) {
    write_text(library.folder() / "photos/2027/of the same size.jpg", "pHoto of one.jpg");
    write_text(file_of("one.jpg"), "photo OF one.jpg");
    const VerifyReport report = check();
    ASSERT_EQ(report.troubles.size(), 1U);
    EXPECT_FALSE(report.troubles[0].healed());
    EXPECT_EQ(text_of(file_of("one.jpg")), "photo OF one.jpg");
}

TEST_F(MovedByHand, ALinkToItsBytesIsNotPutInItsPlace) {
    move_by_hand("one.jpg", folder / "outside.jpg");
    std::filesystem::create_symlink(folder / "outside.jpg",
                                    library.folder() / "photos/2026/link.jpg");
    const VerifyReport report = check();
    ASSERT_EQ(report.troubles.size(), 1U);
    EXPECT_FALSE(report.troubles[0].healed());
    EXPECT_TRUE(std::filesystem::is_symlink(library.folder() / "photos/2026/link.jpg"));
}

TEST_F(MovedByHand, ALookSaysWhichBackupHoldsAPhoto) {
    back_up_to(drive);
    std::filesystem::remove(file_of("one.jpg"));
    const VerifyReport report = check(false);
    ASSERT_EQ(report.troubles.size(), 1U);
    EXPECT_EQ(report.troubles[0].held_by, drive);
    EXPECT_EQ(sentence(report.troubles[0]).find("connect a drive"), std::string::npos);
    EXPECT_FALSE(std::filesystem::exists(file_of("one.jpg")));
}

TEST_F(MovedByHand, WhatALockLeftOpenIsSaidAndLocked) {
    const Path place = library.folder();
    const Path one = file_of("one.jpg");
    const std::string words = text_of(one);
    library = Library::create(folder / "elsewhere");
    const NewLock lock = new_lock("seven owls below the granary", least_guess_cost());
    lock_library(real_file_system(), place, lock, {});
    const Path sealed = LockedFileSystem(real_file_system(), place, lock.keys).place_of(one);
    std::filesystem::remove(sealed);
    write_text(one, words);  // as if the disk had not given it when the lock was put on
    library = Library::open(place);
    const VerifyReport looked = check(false);
    ASSERT_EQ(looked.lock.size(), 1U);
    EXPECT_NE(looked.lock[0].find(one.string() + " is not locked"), std::string::npos);
    EXPECT_FALSE(looked.whole());
    const VerifyReport locked = check();
    ASSERT_EQ(locked.lock.size(), 1U);
    EXPECT_NE(locked.lock[0].find(one.string() + " was not locked"), std::string::npos);
    EXPECT_TRUE(check().whole());
    EXPECT_FALSE(std::filesystem::exists(one));
    EXPECT_TRUE(std::filesystem::exists(sealed));
    key_ring::forget(place);
}

}  // namespace
}  // namespace quarterturn
