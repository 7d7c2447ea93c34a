// One file or folder that the disk does not give keeps nobody out of the library: it is left as it
// is, named, and gone on with later.

#include <gtest/gtest.h>

#include "indexer/lock/key_ring.h"
#include "indexer/store/lock_library.h"
#include "tests/support/example_library.h"
#include "tests/support/failing_disk.h"
#include "tests/support/files.h"

namespace quarterturn {
namespace {

class DiskWithABadSector : public FailingDisk {
  public:
    Path bad;
    Path may_not_go;
    int error = EIO;

    Bytes read(const Path& file, std::int64_t most_bytes) override {
        if (file == bad) throw disk_error(error, file, Doing::reading);
        return FailingDisk::read(file, most_bytes);
    }
    void remove(const Path& file) override {
        if (file == may_not_go) throw disk_error(EACCES, file, Doing::removing);
        FailingDisk::remove(file);
    }
    std::vector<Path> list(const Path& folder) override {
        if (folder == bad) throw disk_error(error, folder, Doing::reading);
        return FailingDisk::list(folder);
    }
};

struct LeftByLock : testing::Test {
    LeftByLock() {
        Library library = Library::create(place);
        for (const char* name : {"IMG_1.jpg", "IMG_2.jpg", "IMG_3.jpg"}) put(name, name);
    }
    ~LeftByLock() override { key_ring::forget(place); }

    Path file_called(const std::string& name) const { return place / "photos/2026" / name; }
    void put(const std::string& name, std::string_view text) const {
        std::filesystem::create_directories(file_called(name).parent_path());
        write_bytes(file_called(name), std::as_bytes(std::span(text)));
    }

    std::string read_in_library(const std::string& name) const {
        Library library = Library::open(place);
        const Bytes bytes = library.disk().read(file_called(name), any_size);
        return {reinterpret_cast<const char*>(bytes.data()), bytes.size()};
    }

    void expect_named(const LockReport& report, const std::string& name) {
        ASSERT_EQ(report.problems.size(), 1U);
        EXPECT_NE(report.problems[0].reason.find(file_called(name).string()), std::string::npos)
            << report.problems[0].reason;
    }

    TemporaryFolder folder;
    Path place = folder / "library";
    DiskWithABadSector disk;
    NewLock lock = new_lock("seven owls below the granary", least_guess_cost());
};

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

TEST_F(LeftByLock, WhatIsDamagedKeepsItsKeyUntilItWasPutBack) {
    {
        Library library = Library::open(place);
        Photo photo = example_photo("IMG_2.jpg");
        photo.file.path = "photos/2026/IMG_2.jpg";
        photo.file.sha256 = sha256(std::string("IMG_2.jpg"));
        library.photos().add(photo);
    }
    lock_library(disk, place, lock, {});
    const Path sealed =
        LockedFileSystem(real_file_system(), place, lock.keys).place_of(file_called("IMG_2.jpg"));
    Bytes bytes = read_bytes(sealed);
    bytes.back() ^= std::byte{1};
    write_bytes(sealed, bytes);
    const LockReport report = unlock_for_good(disk, place, lock.keys, {});
    EXPECT_EQ(report.files, 2);
    ASSERT_EQ(report.problems.size(), 1U);
    EXPECT_NE(report.problems[0].reason.find("IMG_2.jpg is damaged. It stays locked, and its key"),
              std::string::npos);
    put("IMG_2.jpg", "IMG_x.jpg");  // as long, and something else
    EXPECT_EQ(unlock_for_good(disk, place, lock.keys, {}).problems.size(), 1U);
    EXPECT_EQ(read_bytes(sealed), bytes) << "nothing of it is thrown away";
    EXPECT_TRUE(std::filesystem::exists(place / left_lock_name));
    put("IMG_2.jpg", "IMG_2.jpg");  // as when it is brought in again
    EXPECT_TRUE(unlock_for_good(disk, place, lock.keys, {}).problems.empty());
    EXPECT_FALSE(std::filesystem::exists(sealed));
    EXPECT_FALSE(std::filesystem::exists(place / left_lock_name));
    EXPECT_EQ(text_of(file_called("IMG_2.jpg")), "IMG_2.jpg");
}

TEST_F(LeftByLock, WhatLiesInALockedFilesPlaceIsKeptBesideIt) {
    lock_library(disk, place, lock, {});
    put("IMG_2.jpg", "words of mine");
    const LockReport report = unlock_for_good(disk, place, lock.keys, {});
    ASSERT_EQ(report.problems.size(), 1U);
    EXPECT_NE(report.problems[0].reason.find("lay in the place of IMG_2.jpg while that was locked"),
              std::string::npos);
    EXPECT_EQ(text_of(file_called("IMG_2.jpg")), "IMG_2.jpg");
    EXPECT_EQ(text_of(file_called("IMG_2 (2).jpg")), "words of mine");
    EXPECT_FALSE(std::filesystem::exists(place / left_lock_name));
}

TEST_F(LeftByLock, LinksAndFoldersInALockedFilesPlaceAreKeptBesideIt) {
    write_bytes(folder / "card.jpg", std::as_bytes(std::span("IMG_2.jpg", 9)));
    lock_library(disk, place, lock, {});
    std::filesystem::create_directories(file_called("IMG_1.jpg"));
    std::filesystem::create_symlink(folder / "card.jpg", file_called("IMG_2.jpg"));
    std::filesystem::create_symlink(folder / "nowhere", file_called("IMG_3.jpg"));
    EXPECT_EQ(unlock_for_good(disk, place, lock.keys, {}).problems.size(), 3U);
    for (const char* name : {"IMG_1.jpg", "IMG_2.jpg", "IMG_3.jpg"}) {
        EXPECT_FALSE(std::filesystem::is_symlink(file_called(name))) << name;
        EXPECT_EQ(text_of(file_called(name)), name);
    }
    EXPECT_TRUE(std::filesystem::is_symlink(file_called("IMG_3 (2).jpg")));
}

TEST_F(LeftByLock, AFileInAFoldersPlaceIsKeptBesideIt) {
    lock_library(disk, place, lock, {});
    std::filesystem::remove_all(place / "photos/2026");
    write_bytes(place / "photos/2026", {});
    EXPECT_EQ(unlock_for_good(disk, place, lock.keys, {}).problems.size(), 1U);
    EXPECT_TRUE(std::filesystem::is_regular_file(place / "photos/2026 (2)"));
    EXPECT_EQ(text_of(file_called("IMG_1.jpg")), "IMG_1.jpg");
}

TEST_F(LeftByLock, ATextOfWhichOnlyTheFirstBytesAreWrongIsNoPlainOne) {
    const Path text = place / "consent-form.txt";
    write_bytes(text, std::as_bytes(std::span("May I?", 6)));
    lock_library(disk, place, lock, {});
    Bytes bytes = read_bytes(text);
    bytes.front() ^= std::byte{1};
    write_bytes(text, bytes);
    EXPECT_TRUE(left_unlocked(disk, place, lock.keys).empty());
    lock_what_is_left(disk, place, lock.keys, {});
    EXPECT_EQ(read_bytes(text), bytes) << "not locked a second time";
    EXPECT_TRUE(unlock_for_good(disk, place, lock.keys, {}).problems.empty());
    EXPECT_EQ(text_of(text), "May I?");
}

TEST_F(LeftByLock, LockingThatWasInterruptedIsFinishedBeforeTheLockIsTakenOff) {
    lock_library(disk, place, lock, {});
    LockFile half_done = read_lock(disk, place).value();
    half_done.state = LockState::locking;
    write_lock(disk, place, half_done);
    unlock_for_good(disk, place, lock.keys, {});
    EXPECT_FALSE(read_lock(disk, place));
    EXPECT_EQ(text_of(file_called("IMG_1.jpg")), "IMG_1.jpg");
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
