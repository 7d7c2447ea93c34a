// Another passphrase or recovery key on a locked library: one at a time, and never a lock that
// nothing opens.

#include <gtest/gtest.h>

#include "indexer/disk/folder_lock.h"
#include "indexer/lock/key_ring.h"
#include "indexer/store/library.h"
#include "indexer/store/lock_library.h"
#include "tests/support/files.h"
#include "tests/support/temporary_folder.h"

namespace quarterturn {
namespace {

constexpr auto first_words = "seven owls below the granary";

struct LockedLibrary {
    LockedLibrary() {
        Library::create(library);
        lock_library(real_file_system(), library, lock, {});
    }
    ~LockedLibrary() { key_ring::forget(library); }

    TemporaryFolder folder;
    Path library = folder / "library";
    NewLock lock = new_lock(first_words, least_guess_cost());
};

TEST(ChangeLock, APassphraseLeavesTheOldOneBehind) {
    const LockedLibrary made;
    EXPECT_THROW(change_passphrase(real_file_system(), made.library, made.lock.keys, "short"),
                 LockError);
    change_passphrase(real_file_system(), made.library, made.lock.keys, "nine herons over the weir",
                      least_guess_cost());
    const auto now = read_lock(real_file_system(), made.library);
    EXPECT_THROW(keys_from(*now, first_words), LockError);
    EXPECT_EQ(keys_from(*now, "nine herons over the weir")->mark(), made.lock.keys->mark());
    EXPECT_EQ(keys_from(*now, made.lock.recovery_key)->mark(), made.lock.keys->mark());
}

// Where the link leads, the lock would open with the passphrase before.
TEST(ChangeLock, ThroughALinkNothingIsChanged) {
    const LockedLibrary made;
    const Path elsewhere = made.folder / "elsewhere.json";
    std::filesystem::rename(made.library / lock_file_name, elsewhere);
    std::filesystem::create_symlink(elsewhere, made.library / lock_file_name);
    EXPECT_NO_THROW(Library::open(made.library));
    try {
        change_passphrase(real_file_system(), made.library, made.lock.keys,
                          "nine herons over the weir", least_guess_cost());
        FAIL() << "changed one of two";
    } catch (const StoreError& error) {
        EXPECT_NE(std::string(error.what()).find("is a link to " + elsewhere.string()),
                  std::string::npos)
            << error.what();
    }
    EXPECT_TRUE(std::filesystem::is_symlink(made.library / lock_file_name));
}

TEST(ChangeLock, OfTwoAtOnceOneIsRefused) {
    const LockedLibrary made;
    const Bytes before = read_bytes(made.library / lock_file_name);
    {
        const FolderLock other(made.library);
        EXPECT_THROW(change_passphrase(real_file_system(), made.library, made.lock.keys,
                                       "nine herons over the weir", least_guess_cost()),
                     StoreError);
        EXPECT_THROW(renew_recovery_key(real_file_system(), made.library, made.lock.keys,
                                        [](const std::string&) {}),
                     StoreError);
    }
    EXPECT_EQ(read_bytes(made.library / lock_file_name), before);
}

TEST(ChangeLock, KeysFromBeforeALibraryWasLockedAnewChangeNothing) {
    const LockedLibrary made;
    const NewLock& before = made.lock;
    unlock_for_good(real_file_system(), made.library, before.keys, {});
    const NewLock now = new_lock(first_words, least_guess_cost());
    lock_library(real_file_system(), made.library, now, {});
    EXPECT_THROW(change_passphrase(real_file_system(), made.library, before.keys,
                                   "nine herons over the weir", least_guess_cost()),
                 StoreError);
    const auto file = read_lock(real_file_system(), made.library);
    EXPECT_EQ(keys_from(*file, first_words)->mark(), now.keys->mark());
}

TEST(ChangeLock, ARecoveryKeyCountsOnceItsPageIsThere) {
    const LockedLibrary made;
    const auto no_page = [](const std::string&) { throw StoreError("The disk is full."); };
    EXPECT_THROW(renew_recovery_key(real_file_system(), made.library, made.lock.keys, no_page),
                 StoreError);
    EXPECT_TRUE(keys_from(*read_lock(real_file_system(), made.library), made.lock.recovery_key));
    std::string printed;
    renew_recovery_key(real_file_system(), made.library, made.lock.keys,
                       [&](const std::string& key) { printed = key; });
    const auto now = read_lock(real_file_system(), made.library);
    EXPECT_TRUE(keys_from(*now, printed));
    EXPECT_TRUE(keys_from(*now, first_words));
    EXPECT_THROW(keys_from(*now, made.lock.recovery_key), LockError);
}

}  // namespace
}  // namespace quarterturn
