// One file or folder that the disk does not give keeps nobody out of the library: it is left as it
// is, named, and gone on with later.

#include "tests/indexer/store/left_by_lock_fixture.h"

namespace quarterturn {
namespace {

TEST_F(LeftByLock, WhatMayNotBeRemovedKeepsNobodyOut) {
    disk.may_not_go = file_called("IMG_2.jpg");
    const LockReport locked = lock_library(disk, place, lock, {});
    EXPECT_EQ(locked.files, 2);
    expect_named(locked, "IMG_2.jpg");
    EXPECT_NE(locked.problems[0].reason.find("qturn verify locks it then"), std::string::npos);
    for (const char* name : {"IMG_1.jpg", "IMG_2.jpg", "IMG_3.jpg"}) {
        EXPECT_EQ(read_in_library(name), name);
    }
    disk.may_not_go.clear();
    EXPECT_TRUE(lock_what_is_left(disk, place, lock.keys, {}).problems.empty());
    EXPECT_FALSE(std::filesystem::exists(file_called("IMG_2.jpg")));

    disk.may_not_go =
        LockedFileSystem(real_file_system(), place, lock.keys).place_of(file_called("IMG_2.jpg"));
    const LockReport unlocked = unlock_for_good(disk, place, lock.keys, {});
    ASSERT_GE(unlocked.problems.size(), 1U);
    EXPECT_NE(unlocked.problems[0].reason.find("its key is kept in lock.left.json"),
              std::string::npos)
        << unlocked.problems[0].reason;
    for (const char* name : {"IMG_1.jpg", "IMG_2.jpg", "IMG_3.jpg"}) {
        EXPECT_EQ(text_of(file_called(name)), name);
    }
    disk.may_not_go.clear();
    EXPECT_TRUE(unlock_for_good(disk, place, lock.keys, {}).problems.empty());
    EXPECT_FALSE(std::filesystem::exists(place / left_lock_name));
}

TEST_F(LeftByLock, IsRefusedWhereItHasNoRoomAndNothingIsBegun) {
    struct FullDisk : FailingDisk {
        std::int64_t free_bytes(const Path&) override { return 4096; }
    } full;
    EXPECT_THROW(lock_library(full, place, lock, {}), StoreError);
    EXPECT_FALSE(std::filesystem::exists(place / lock_file_name));
    EXPECT_EQ(text_of(file_called("IMG_1.jpg")), "IMG_1.jpg");
    EXPECT_NO_THROW(Library::open(place));
}

TEST_F(LeftByLock, WhatCannotBeReadIsLockedWhenItCan) {
    for (const int error : {EIO, EACCES}) {
        disk.bad = file_called("IMG_2.jpg");
        disk.error = error;
        const LockReport report = lock_library(disk, place, lock, {});
        EXPECT_EQ(report.files, 2);
        expect_named(report, "IMG_2.jpg");
        EXPECT_NE(report.problems[0].reason.find("It is not locked"), std::string::npos);
        EXPECT_EQ(read_in_library("IMG_1.jpg"), "IMG_1.jpg");
        EXPECT_TRUE(std::filesystem::exists(file_called("IMG_2.jpg")));
        EXPECT_EQ(left_unlocked(disk, place, lock.keys),
                  std::vector<Path>{file_called("IMG_2.jpg")});
        expect_named(lock_what_is_left(disk, place, lock.keys, {}), "IMG_2.jpg");
        disk.bad.clear();
        EXPECT_TRUE(lock_what_is_left(disk, place, lock.keys, {}).problems.empty());
        EXPECT_FALSE(std::filesystem::exists(file_called("IMG_2.jpg")));
        EXPECT_EQ(read_in_library("IMG_2.jpg"), "IMG_2.jpg");
        EXPECT_TRUE(left_unlocked(disk, place, lock.keys).empty());
        EXPECT_TRUE(unlock_for_good(disk, place, lock.keys, {}).problems.empty());
    }
}

TEST_F(LeftByLock, AFolderThatCannotBeListedIsLockedWhenItCan) {
    const Path shut = place / "photos/2026/shut";
    put("shut/IMG_4.jpg", "IMG_4.jpg");
    std::filesystem::create_directories(shut / "empty Mira");
    for (const int error : {EIO, EACCES}) {
        disk.bad = shut;
        disk.error = error;
        const LockReport report = lock_library(disk, place, lock, {});
        EXPECT_EQ(report.files, 3);
        expect_named(report, "shut");
        EXPECT_NE(report.problems[0].reason.find("It is not locked"), std::string::npos);
        EXPECT_EQ(read_in_library("IMG_3.jpg"), "IMG_3.jpg");
        EXPECT_EQ(left_unlocked(disk, place, lock.keys), std::vector<Path>{shut});
        expect_named(lock_what_is_left(disk, place, lock.keys, {}), "shut");
        disk.bad.clear();
        EXPECT_TRUE(lock_what_is_left(disk, place, lock.keys, {}).problems.empty());
        EXPECT_FALSE(std::filesystem::exists(shut));
        EXPECT_EQ(read_in_library("shut/IMG_4.jpg"), "IMG_4.jpg");
        EXPECT_TRUE(unlock_for_good(disk, place, lock.keys, {}).problems.empty());
        std::filesystem::create_directories(shut / "empty Mira");
    }
}

TEST_F(LeftByLock, AnEmptyFolderLeftOpenIsGoneTheNextTime) {
    const Path shut = place / "photos/2026/empty Mira";
    std::filesystem::create_directories(shut);
    disk.bad = shut;
    expect_named(lock_library(disk, place, lock, {}), "empty Mira");
    disk.bad.clear();
    EXPECT_TRUE(lock_what_is_left(disk, place, lock.keys, {}).problems.empty());
    EXPECT_FALSE(std::filesystem::exists(place / "photos/2026"));
}

TEST_F(LeftByLock, TheKeyOfAFolderThatCannotBeListedIsKept) {
    put("shut/IMG_4.jpg", "IMG_4.jpg");
    lock_library(disk, place, lock, {});
    disk.bad = LockedFileSystem(real_file_system(), place, lock.keys).place_of(file_called("shut"));
    const LockReport report = unlock_for_good(disk, place, lock.keys, {});
    EXPECT_EQ(report.files, 3);
    expect_named(report, "shut");
    EXPECT_NE(report.problems[0].reason.find("lock.left.json"), std::string::npos);
    EXPECT_EQ(read_in_library("IMG_3.jpg"), "IMG_3.jpg");
    disk.bad.clear();
    EXPECT_TRUE(unlock_for_good(disk, place, lock.keys, {}).problems.empty());
    EXPECT_EQ(read_in_library("shut/IMG_4.jpg"), "IMG_4.jpg");
    EXPECT_FALSE(read_left_lock(disk, place));
}

TEST_F(LeftByLock, AnOpenFileThatIsTheLockedOneGoes) {
    lock_library(disk, place, lock, {});
    put("IMG_2.jpg", "IMG_2.jpg");  // out of reach meanwhile, and put back from a backup
    EXPECT_TRUE(lock_what_is_left(disk, place, lock.keys, {}).problems.empty());
    EXPECT_FALSE(std::filesystem::exists(file_called("IMG_2.jpg")));
    EXPECT_EQ(read_in_library("IMG_2.jpg"), "IMG_2.jpg");
}

TEST_F(LeftByLock, AnOpenFileBesideTheLockedOneReplacesNothing) {
    lock_library(disk, place, lock, {});
    put("IMG_2.jpg", "an older state, by a service that copies folders");
    expect_named(lock_what_is_left(disk, place, lock.keys, {}), "IMG_2.jpg");
    EXPECT_EQ(read_in_library("IMG_2.jpg"), "IMG_2.jpg");
    EXPECT_TRUE(std::filesystem::exists(file_called("IMG_2.jpg")));
}

TEST_F(LeftByLock, ALinkThatLeadsNowhereHoldsNothingUp) {
    std::filesystem::create_symlink("nowhere", file_called("link.jpg"));
    expect_named(lock_library(disk, place, lock, {}), "link.jpg");
    EXPECT_EQ(read_in_library("IMG_3.jpg"), "IMG_3.jpg");
}

TEST_F(LeftByLock, TheKeyOfWhatCannotBeUnlockedIsKept) {
    lock_library(disk, place, lock, {});
    disk.bad =
        LockedFileSystem(real_file_system(), place, lock.keys).place_of(file_called("IMG_2.jpg"));
    const LockReport report = unlock_for_good(disk, place, lock.keys, {});
    expect_named(report, "IMG_2.jpg");
    EXPECT_NE(report.problems[0].reason.find("lock.left.json"), std::string::npos);
    EXPECT_FALSE(std::filesystem::exists(place / lock_file_name));
    EXPECT_EQ(read_in_library("IMG_3.jpg"), "IMG_3.jpg");
    EXPECT_THROW(
        lock_library(disk, place, new_lock("nine herons over the weir", least_guess_cost()), {}),
        StoreError)
        << "locked twice, under two keys";
    disk.bad.clear();
    const auto left = read_left_lock(disk, place);
    ASSERT_TRUE(left);
    const KeysInHand keys = keys_from(*left, "seven owls below the granary");
    EXPECT_TRUE(unlock_for_good(disk, place, keys, {}).problems.empty());
    EXPECT_EQ(read_in_library("IMG_2.jpg"), "IMG_2.jpg");
    EXPECT_FALSE(read_left_lock(disk, place));
    EXPECT_NO_THROW(lock_library(disk, place, lock, {}));
}

TEST_F(LeftByLock, WhereAPhotoIsLostForGoodItIsSaidHowToLockAgain) {
    Library::open(place).photos().add(example_photo("lost.jpg"));
    lock_library(disk, place, lock, {});
    ASSERT_EQ(unlock_for_good(disk, place, lock.keys, {}).problems.size(), 1U);
    try {
        lock_library(disk, place, new_lock("nine herons over the weir", least_guess_cost()), {});
        FAIL() << "locked while the key of one before is needed";
    } catch (const StoreError& error) {
        const std::string words = error.what();
        EXPECT_EQ(words.find("still holds files"), std::string::npos) << words;
        EXPECT_NE(words.find("photos/2026/lost.jpg is in the records and not in the library"),
                  std::string::npos)
            << words;
        EXPECT_NE(words.find("lost for good, move lock.left.json out of the folder"),
                  std::string::npos)
            << words;
    }
    std::filesystem::remove(place / left_lock_name);
    EXPECT_NO_THROW(lock_library(disk, place, lock, {}));
}

TEST_F(LeftByLock, TheKeyOfAnotherLibraryIsLeftWhereItLies) {
    const NewLock other = new_lock("nine herons over the weir", least_guess_cost());
    write_lock(disk, place, other.file);
    std::filesystem::rename(place / lock_file_name, place / left_lock_name);
    const Bytes key = read_bytes(place / left_lock_name);
    EXPECT_THROW(unlock_for_good(disk, place, other.keys, {}), StoreError);
    EXPECT_FALSE(std::filesystem::exists(place / lock_file_name));
    std::filesystem::rename(place / left_lock_name, folder / "key");
    lock_library(disk, place, lock, {});
    std::filesystem::rename(folder / "key", place / left_lock_name);
    EXPECT_THROW(unlock_for_good(disk, place, lock.keys, {}), StoreError);
    EXPECT_EQ(read_bytes(place / left_lock_name), key);
    EXPECT_EQ(read_in_library("IMG_2.jpg"), "IMG_2.jpg");
}

TEST_F(LeftByLock, TheKeyThatUnlockingAnotherLibraryLeftIsNotUsedUp) {
    LockFile other = new_lock("nine herons over the weir", least_guess_cost()).file;
    other.state = LockState::unlocking;
    write_lock(disk, place, other);
    std::filesystem::rename(place / lock_file_name, place / left_lock_name);
    const Bytes key = read_bytes(place / left_lock_name);
    const KeysInHand keys = keys_from(other, "nine herons over the weir");
    EXPECT_THROW(unlock_for_good(disk, place, keys, {}), StoreError);
    EXPECT_EQ(read_bytes(place / left_lock_name), key);
}

}  // namespace
}  // namespace quarterturn
