// The lock of a library is lost, or another library's lies in its place, while changes wait in the
// log of the records, as a killed program leaves them: nothing of them goes.

#include "indexer/store/lock_fits.h"

#include <SQLiteCpp/SQLiteCpp.h>

#include "indexer/lock/key_ring.h"
#include "indexer/lock/lock_file.h"
#include "indexer/store/lock_library.h"
#include "indexer/store/lock_mark.h"
#include "indexer/store/records_file.h"
#include "tests/support/command.h"
#include "tests/support/example_library.h"
#include "tests/support/files.h"

namespace quarterturn {
namespace {

struct LostLock : testing::Test {
    ~LostLock() override {
        for (const Path& place : {made, left, folder / "moved", folder / "other"}) {
            key_ring::forget(place);
        }
    }

    static NewLock cheap() { return new_lock("seven owls below the granary", least_guess_cost()); }

    // With a photo, so that a name is locked.
    void make(const Path& place, const NewLock* lock) {
        {
            Library library = Library::create(place);
            library.clients().add(client_called("Mira Okonjo-Lindqvist"));
            library.photos().add(example_photo("IMG_1.jpg"));
            std::filesystem::create_directories(place / "photos/2026");
            write_bytes(place / "photos/2026/IMG_1.jpg", std::as_bytes(std::span("one", 3)));
        }
        if (lock != nullptr) lock_library(real_file_system(), place, *lock, {});
    }

    // The library as a kill leaves it, with a client that stands in the log alone.
    void leave_with_changes(const NewLock* lock) {
        make(made, lock);
        {
            Library library = Library::open(made);
            library.clients().add(client_called("Wal Person"));
            output_of("cp -a " + shell_word(made) + ' ' + shell_word(left));
        }
        ASSERT_GT(std::filesystem::file_size(left / "records.sqlite-wal"), 0U);
    }

    static LockWishes until_first_file() {
        const auto stop = std::make_shared<std::stop_source>();
        return {[stop](std::int64_t, std::int64_t) { stop->request_stop(); }, stop->get_token()};
    }

    // Every file with its checksum.
    static std::string all_of(const Path& place) {
        return output_of("cd " + shell_word(place) +
                         " && find . -type f -exec sha256sum {} + | sort");
    }

    static std::string refusal(const Path& place) {
        try {
            Library::open(place);
            return "opened";
        } catch (const StoreError& error) {
            return error.what();
        }
    }

    static void expect_refused_untouched(const Path& place, const std::string& because) {
        const std::string before = all_of(place);
        for (int time = 0; time < 2; ++time) {
            const std::string sentence = refusal(place);
            EXPECT_NE(sentence.find(because), std::string::npos) << sentence;
            EXPECT_EQ(sentence.find("-wal"), std::string::npos) << "told to remove changes";
            EXPECT_EQ(all_of(place), before);
        }
    }

    static void expect_all_there(const Path& place) {
        Library library = Library::open(place);
        EXPECT_EQ(library.clients().all().size(), 2U);
        EXPECT_TRUE(library.disk().exists(place / "photos/2026/IMG_1.jpg"));
        EXPECT_TRUE(record_problems(library).empty());
    }

    TemporaryFolder folder;
    Path made = folder / "made";
    Path left = folder / "left";
};

TEST_F(LostLock, TakesNoChangesWithIt) {
    const NewLock lock = cheap();
    leave_with_changes(&lock);
    std::filesystem::rename(left / lock_file_name, folder / lock_file_name);
    expect_refused_untouched(left, "its lock.json is gone");
    const NewLock second = cheap();
    EXPECT_THROW(lock_library(real_file_system(), left, second, {}), StoreError);
    EXPECT_FALSE(std::filesystem::exists(left / lock_file_name));
    std::filesystem::rename(folder / lock_file_name, left / lock_file_name);
    expect_all_there(left);
}

// Its folder is another than the one that was opened, which the guard of records asks about.
TEST_F(LostLock, IsToldOfBeforeAnyDoubtOfCopiedRecords) {
    const NewLock lock = cheap();
    leave_with_changes(&lock);
    const Path moved = folder / "moved";
    output_of("cp -a " + shell_word(left) + ' ' + shell_word(moved));
    std::filesystem::rename(moved / lock_file_name, folder / lock_file_name);
    expect_refused_untouched(moved, "its lock.json is gone");
    std::filesystem::rename(folder / lock_file_name, moved / lock_file_name);
    expect_all_there(moved);
}

TEST_F(LostLock, IsToldOfWhereNoPhotoIs) {
    const NewLock lock = cheap();
    leave_with_changes(&lock);
    std::filesystem::remove_all(left / "photos");
    std::filesystem::remove(left / lock_file_name);
    expect_refused_untouched(left, "its lock.json is gone");
}

TEST_F(LostLock, AnotherLibrarysInItsPlaceIsToldOf) {
    const NewLock lock = cheap();
    const NewLock of_other = cheap();
    leave_with_changes(&lock);
    make(folder / "other", &of_other);
    key_ring::forget(left);
    std::filesystem::rename(left / lock_file_name, folder / lock_file_name);
    std::filesystem::copy_file(folder / "other" / lock_file_name, left / lock_file_name);
    expect_refused_untouched(left, "lock.json belongs to another library");
    EXPECT_THROW(unlock_for_good(real_file_system(), left, of_other.keys, {}), StoreError);
    LockFile going_on = *read_lock(real_file_system(), left);
    going_on.state = LockState::unlocking;
    write_lock(real_file_system(), left, going_on);
    EXPECT_THROW(finish_locking(real_file_system(), left, of_other.keys, {}), StoreError);
    std::filesystem::rename(folder / lock_file_name, left / lock_file_name);
    expect_all_there(left);
}

TEST_F(LostLock, AnotherLibrarysBesideOneThatIsNotLockedIsToldOf) {
    const NewLock of_other = cheap();
    leave_with_changes(nullptr);
    make(folder / "other", &of_other);
    std::filesystem::copy_file(folder / "other" / lock_file_name, left / lock_file_name);
    expect_refused_untouched(left, "this one is not locked");
    key_ring::forget(folder / "other");
    key_ring::forget(left);
    expect_refused_untouched(left, "this one is not locked");  // without its passphrase, too
    std::filesystem::remove(left / lock_file_name);
    expect_all_there(left);
}

// Half put on or taken off elsewhere, it would be used up here, or lock this library's photos.
TEST_F(LostLock, AnotherLibrarysThatIsHalfDoneBesideOneThatIsNotLockedIsToldOf) {
    const NewLock of_other = cheap();
    leave_with_changes(nullptr);
    for (const LockState state : {LockState::locking, LockState::unlocking}) {
        LockFile other = of_other.file;
        other.state = state;
        write_lock(real_file_system(), left, other);
        expect_refused_untouched(left, "this one is not locked");  // without its passphrase, too
        key_ring::add(left, of_other.keys);
        expect_refused_untouched(left, "this one is not locked");
        const std::string before = all_of(left);
        EXPECT_THROW(finish_locking(real_file_system(), left, of_other.keys, {}), StoreError);
        EXPECT_THROW(unlock_for_good(real_file_system(), left, of_other.keys, {}), StoreError);
        EXPECT_EQ(all_of(left), before);
        key_ring::forget(left);
    }
    std::filesystem::remove(left / lock_file_name);
    expect_all_there(left);
}

TEST_F(LostLock, RecordsOfOthersUnderTheRightLockAreToldOf) {
    const NewLock lock = cheap();
    const NewLock of_other = cheap();
    leave_with_changes(&lock);
    make(folder / "other", &of_other);
    output_of("cp " + shell_word(folder / "other/records.sqlite") + ' ' +
              shell_word(left / "records.sqlite"));
    expect_refused_untouched(left, "was put there from elsewhere");
}

TEST_F(LostLock, AFileThatIsEmptyTakesNoChangesWithIt) {
    leave_with_changes(nullptr);
    std::filesystem::resize_file(left / "records.sqlite", 0);
    expect_refused_untouched(left, "is no library file of this program");
}

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

TEST_F(LostLock, AnotherLibrarysLockIsNotChanged) {
    const NewLock lock = cheap();
    const NewLock of_other = cheap();
    make(made, &lock);
    make(folder / "other", &of_other);
    std::filesystem::copy_file(folder / "other" / lock_file_name, made / lock_file_name,
                               std::filesystem::copy_options::overwrite_existing);
    const std::string before = all_of(made);
    const auto refused = [&](const auto& change) -> std::string {
        try {
            change();
            return "done";
        } catch (const StoreError& error) {
            return error.what();
        }
    };
    bool printed = false;
    for (const std::string& sentence :
         {refused([&] {
              change_passphrase(real_file_system(), made, of_other.keys,
                                "nine herons over the weir", least_guess_cost());
          }),
          refused([&] {
              renew_recovery_key(real_file_system(), made, of_other.keys,
                                 [&](const std::string&) { printed = true; });
          })}) {
        EXPECT_NE(sentence.find("lock.json belongs to another library"), std::string::npos)
            << sentence;
    }
    EXPECT_FALSE(printed);
    EXPECT_EQ(all_of(made), before);
}

// The power tore it while the log was carried over: the log holds it whole.
TEST_F(LostLock, AFirstPageThatIsTornIsNone) {
    const NewLock lock = cheap();
    leave_with_changes(&lock);
    Bytes records = read_bytes(left / "records.sqlite");
    std::fill_n(records.begin() + 512, 1024, std::byte{7});
    write_bytes(left / "records.sqlite", records);
    EXPECT_NO_THROW(refuse_lock_that_does_not_fit(real_file_system(), left, lock.keys));
}

}  // namespace
}  // namespace quarterturn
