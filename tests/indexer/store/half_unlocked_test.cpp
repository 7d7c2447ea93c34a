#include "tests/indexer/store/lost_lock.h"

namespace quarterturn {
namespace {

// As a kill leaves it while it is being unlocked for good, and then lock.json goes.
struct HalfUnlocked : LostLock {
    HalfUnlocked() {
        make(made, nullptr);
        Library::open(made).photos().add(example_photo("IMG_2.jpg"));
        write_bytes(made / "photos/2026/IMG_2.jpg", std::as_bytes(std::span("two", 3)));
        lock_library(real_file_system(), made, lock, {});
        whole_lock = read_bytes(made / lock_file_name);
        EXPECT_TRUE(
            unlock_for_good(real_file_system(), made, lock.keys, until_first_file()).stopped);
        std::filesystem::remove(made / lock_file_name);
        key_ring::forget(made);
    }

    NewLock lock = cheap();
    Bytes whole_lock;  // as a backup holds it
};

TEST_F(HalfUnlocked, WithoutItsLockIsToldOfAndIsNotLockedAgain) {
    expect_refused_untouched(made, "its lock.json is gone");
    EXPECT_NE(refusal(made).find("qturn lock remove"), std::string::npos);
    EXPECT_THROW(refuse_lost_lock_of_library(real_file_system(), made), StoreError);
    const std::string before = all_of(made);
    EXPECT_THROW(lock_library(real_file_system(), made, cheap(), {}), StoreError);
    EXPECT_EQ(all_of(made), before);
}

TEST_F(HalfUnlocked, GoesOnWithTheLockOfABackup) {
    write_bytes(made / lock_file_name, whole_lock);
    key_ring::add(made, lock.keys);
    expect_refused_untouched(made, "goes on with qturn lock remove");
    EXPECT_TRUE(unlock_for_good(real_file_system(), made, lock.keys, {}).problems.empty());
    EXPECT_FALSE(std::filesystem::exists(made / lock_file_name));
    EXPECT_NO_THROW(Library::open(made));
    for (const char* name : {"IMG_1.jpg", "IMG_2.jpg"}) {
        EXPECT_EQ(std::filesystem::file_size(made / "photos/2026" / name), 3U) << name;
    }
}

TEST_F(HalfUnlocked, TheRecordsKnowTheirLockUntilItIsTakenOff) {
    EXPECT_EQ(noted_lock_mark(made), lock.file.mark);
    write_bytes(made / lock_file_name, whole_lock);
    unlock_for_good(real_file_system(), made, lock.keys, {});
    EXPECT_EQ(noted_lock_mark(made), std::nullopt);
}

// Of a version before, the records know no lock.
TEST_F(HalfUnlocked, GoesOnWithItsOwnLockThatAVersionBeforeBegan) {
    SQLite::Database(made / "records.sqlite", SQLite::OPEN_READWRITE).exec("DELETE FROM setting");
    LockFile going_on = lock.file;
    going_on.state = LockState::unlocking;
    write_lock(real_file_system(), made, going_on);
    EXPECT_THROW(Library::open(made), LibraryLocked);
    EXPECT_TRUE(finish_locking(real_file_system(), made, lock.keys, {}).problems.empty());
    EXPECT_FALSE(std::filesystem::exists(made / lock_file_name));
    EXPECT_EQ(Library::open(made).photos().all().size(), 2U);
}

TEST_F(HalfUnlocked, AnotherLibrarysLockThatIsHalfDoneItselfIsRefused) {
    const NewLock of_other = cheap();
    for (const LockState state : {LockState::locking, LockState::unlocking}) {
        LockFile other = of_other.file;
        other.state = state;
        write_lock(real_file_system(), made, other);
        const std::string before = all_of(made);
        try {
            finish_locking(real_file_system(), made, of_other.keys, {});
            ADD_FAILURE() << "half of it has another key now";
        } catch (const StoreError& error) {
            EXPECT_NE(std::string(error.what()).find("belongs to another library"),
                      std::string::npos)
                << error.what();
        }
        EXPECT_EQ(all_of(made), before);
    }
}

// What a disk did not give when the lock was taken off is told of by lock.left.json.
TEST_F(HalfUnlocked, OpensWhileTheKeyOfTheRestIsKept) {
    write_bytes(made / left_lock_name, whole_lock);
    EXPECT_NO_THROW(Library::open(made));
}

}  // namespace
}  // namespace quarterturn
