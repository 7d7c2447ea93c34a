// A photo that was moved by hand while the library was locked: its name opens in its own folder
// alone, so the lock does not see it any longer, and its key is all that gives it back.

#include <gtest/gtest.h>

#include "indexer/backup/verify.h"
#include "indexer/lock/key_ring.h"
#include "indexer/store/erasure_table.h"
#include "indexer/store/listed_past_lock.h"
#include "indexer/store/lock_library.h"
#include "tests/indexer/backup/backup_fixture.h"

namespace quarterturn {
namespace {

struct MovedUnderLock : testing::Test, BackupTest {
    MovedUnderLock() {
        words = text_of(one);
        library = Library::create(folder / "elsewhere");
        lock_library(real_file_system(), place, lock, {});
        sealed = LockedFileSystem(real_file_system(), place, lock.keys).place_of(one);
        bytes = text_of(sealed);
        library = Library::open(place);
    }
    ~MovedUnderLock() override { key_ring::forget(place); }

    VerifyReport check(bool heal = true) {
        VerifyWishes wishes;
        wishes.heal = heal;
        wishes.from_start = true;
        return verify(library, wishes);
    }

    void move_to(const Path& to) const {
        std::filesystem::create_directories(to.parent_path());
        std::filesystem::rename(sealed, to);
    }

    LockReport unlock() {
        library = Library::open(folder / "elsewhere");
        LockReport report = unlock_for_good(real_file_system(), place, lock.keys, {});
        library = Library::open(place);
        return report;
    }

    bool key_is_kept() const { return std::filesystem::exists(place / left_lock_name); }

    Path place = library.folder();
    Path one = library.photo_file(photo_named("one.jpg"));
    std::string words;  // of that photo
    std::string bytes;  // the same, locked
    Path sealed;
    NewLock lock = new_lock("seven owls below the granary", least_guess_cost());
};

TEST_F(MovedUnderLock, IsKnownByItsChecksumAndPutBack) {
    for (const Path& to :
         {place / "edited" / sealed.filename(), place / "photos" / sealed.filename(),
          place / "photos/by hand/bride", sealed.parent_path() / "renamed"}) {
        SCOPED_TRACE(to);
        move_to(to);
        const VerifyReport looked = check(false);
        ASSERT_EQ(looked.troubles.size(), 1U);
        EXPECT_EQ(looked.troubles[0].moved_to, to.lexically_relative(place).string());
        EXPECT_EQ(text_of(to), bytes);
        const VerifyReport report = check();
        ASSERT_EQ(report.troubles.size(), 1U);
        EXPECT_TRUE(report.troubles[0].moved_back);
        EXPECT_EQ(text_of(sealed), bytes);
        EXPECT_TRUE(check().whole());
    }
}

TEST_F(MovedUnderLock, IsNamedAndNotLockedASecondTimeWhereNoRecordMissesIt) {
    const Path copy = place / "edited" / sealed.filename();
    write_text(copy, bytes);
    for (int time = 0; time < 2; ++time) {
        const VerifyReport report = check();
        ASSERT_EQ(report.lock.size(), 1U);
        EXPECT_TRUE(report.lock[0].starts_with("edited/")) << report.lock[0];
        EXPECT_FALSE(report.whole());
        EXPECT_EQ(text_of(copy), bytes);
    }
}

TEST_F(MovedUnderLock, IsToBeErasedAndNotToBeKeptWhereAnErasureHasStillToRemoveIt) {
    const Path copy = place / "edited" / sealed.filename();
    write_text(copy, bytes);
    const std::string listed = listed_past_lock(copy.lexically_relative(place));
    ErasureTable(library.database()).let_go({}, {listed});
    const VerifyReport report = check();
    EXPECT_TRUE(report.lock.empty());
    ASSERT_EQ(report.to_be_erased.size(), 1U);
    EXPECT_TRUE(report.to_be_erased[0].starts_with(listed + " is of an erasure"));
}

TEST_F(MovedUnderLock, IsUnlockedWithTheRest) {
    const Path to = place / "edited" / sealed.filename();
    move_to(to);
    const LockReport report = unlock();
    ASSERT_FALSE(report.problems.empty());
    EXPECT_TRUE(report.problems[0].reason.starts_with(to.string() + " had been moved"))
        << report.problems[0].reason;
    EXPECT_EQ(text_of(to), words);
    EXPECT_EQ(text_of(library.photo_file(photo_named("two.jpg"))), "photo of two.jpg");
    const VerifyReport checked = check();
    ASSERT_EQ(checked.troubles.size(), 1U);
    EXPECT_TRUE(checked.troubles[0].moved_back);
    EXPECT_EQ(text_of(one), words);
    EXPECT_TRUE(unlock().problems.empty());
    EXPECT_FALSE(key_is_kept());
}

TEST_F(MovedUnderLock, OutOfTheLibraryItsKeyIsKeptUntilItIsBack) {
    const Path outside = folder / "outside";
    move_to(outside);
    for (int time = 0; time < 2; ++time) {
        const LockReport report = unlock();
        ASSERT_EQ(report.problems.size(), 1U);
        EXPECT_NE(report.problems[0].reason.find("one.jpg is in the records and not"),
                  std::string::npos)
            << report.problems[0].reason;
        EXPECT_TRUE(key_is_kept());
    }
    std::filesystem::create_directories(sealed.parent_path());
    std::filesystem::rename(outside, sealed);
    EXPECT_TRUE(unlock().problems.empty());
    EXPECT_EQ(text_of(one), words);
    EXPECT_FALSE(key_is_kept());
    EXPECT_TRUE(check().whole());
}

// As a folder of a locked backup, copied into the library of somebody else.
TEST_F(MovedUnderLock, OfAnotherLibraryBlocksNothing) {
    const Path stray = folder / "elsewhere/photos" / sealed.parent_path().filename();
    std::filesystem::create_directories(stray.parent_path());
    std::filesystem::copy(sealed.parent_path(), stray, std::filesystem::copy_options::recursive);
    library = Library::open(folder / "elsewhere");
    const VerifyReport report = check();
    ASSERT_EQ(report.lock.size(), 3U);
    EXPECT_NE(report.lock[0].find("Keep it"), std::string::npos);
    const NewLock second = new_lock("nine herons over the weir", least_guess_cost());
    library = Library::open(place);
    lock_library(real_file_system(), folder / "elsewhere", second, {});
    unlock_for_good(real_file_system(), folder / "elsewhere", second.keys, {});
    EXPECT_EQ(text_of(stray / sealed.filename()), bytes);
    key_ring::forget(folder / "elsewhere");
}

TEST_F(MovedUnderLock, WhatLiesAmongLockedFilesStaysInTheirFolder) {
    write_text(sealed.parent_path() / ".DS_Store", "of the desktop");
    std::filesystem::create_directories(sealed.parent_path() / "empty");
    const LockReport report = unlock();
    EXPECT_EQ(text_of(one.parent_path() / ".DS_Store"), "of the desktop");
    EXPECT_EQ(text_of(one), words);
    ASSERT_EQ(report.problems.size(), 1U);
    EXPECT_TRUE(report.problems[0].reason.starts_with(sealed.parent_path().string()))
        << report.problems[0].reason;
    EXPECT_NE(report.problems[0].reason.find("/empty lies in it"), std::string::npos);
    EXPECT_FALSE(key_is_kept());
    EXPECT_FALSE(std::filesystem::exists(place / lock_file_name));
}

}  // namespace
}  // namespace quarterturn
