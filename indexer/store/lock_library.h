#pragma once
// Locking a library in place, and unlocking it for good. lock.json says "locking" or "unlocking"
// until all is done; meanwhile nobody else opens the library, and whatever happens, the job goes on
// from there. Of each file the new one is on the disk, and reads back equal, before the old one
// goes. What the disk held before may still be read from its free blocks, and backups that were
// made before stay as they are.

#include <functional>
#include <optional>
#include <stop_token>
#include <string>
#include <vector>

#include "indexer/disk/refused_file.h"
#include "indexer/lock/lock_file.h"
#include "indexer/store/database.h"

namespace quarterturn {

struct LockWishes {
    // How many files are done, of how many. Called from the calling thread.
    std::function<void(std::int64_t done, std::int64_t of)> progress{};
    std::stop_token stop{};
    // For unlocking: what a backup holds of a file that is damaged, or nothing.
    std::function<std::optional<Bytes>(const Path& file)> whole_copy{};
};

struct LockReport {
    std::int64_t files = 0;  // that were locked or unlocked now
    // Files that were left as they are; each sentence names its file, and what can be done.
    std::vector<RefusedFile> problems{};
    bool stopped = false;  // the library opens when it was gone on with
};

// A lock that is not put on yet, so that its recovery key can be printed first.
struct NewLock {
    LockFile file;
    KeysInHand keys;
    std::string recovery_key;
};

// Throws LockError when the passphrase will not do.
NewLock new_lock(std::string_view passphrase, const GuessCost& cost = usual_guess_cost());

// Throw StoreError when the folder is no library, has a lock already or has none, holds a path that
// is too long, and while another window or command has it open; LockError when lock.json is
// damaged; DiskError.
LockReport lock_library(FileSystem& disk, const Path& folder, const NewLock& lock,
                        const LockWishes& wishes);
// Of a library that has no lock but left files behind (lock.left.json), it goes on with those.
LockReport unlock_for_good(FileSystem& disk, const Path& folder, const KeysInHand& keys,
                           const LockWishes& wishes);
// Goes on with either where it was interrupted; does nothing where it was not.
LockReport finish_locking(FileSystem& disk, const Path& folder, const KeysInHand& keys,
                          const LockWishes& wishes);

// What lies unlocked in a locked library.
std::vector<Path> left_unlocked(FileSystem& disk, const Path& folder, const KeysInHand& keys);
// Locks what lies unlocked in a locked library, as what the disk did not give when it was locked.
// Does nothing while another program moves files of the library.
LockReport lock_what_is_left(FileSystem& disk, const Path& folder, const KeysInHand& keys,
                             const LockWishes& wishes);

// The passphrase before opens it no longer; backups keep it until they are made again. Throws
// StoreError while another window or command is at work on the lock, and when the library was
// locked anew since the keys were had; LockError when the passphrase will not do.
void change_passphrase(FileSystem& disk, const Path& folder, const KeysInHand& keys,
                       std::string_view passphrase, const GuessCost& cost = usual_guess_cost());
// The same for the recovery key, which is given to `print` before it counts: what that throws
// leaves the one before in force.
void renew_recovery_key(FileSystem& disk, const Path& folder, const KeysInHand& keys,
                        const std::function<void(const std::string& key)>& print);

}  // namespace quarterturn
