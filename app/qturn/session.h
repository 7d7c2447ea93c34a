#pragma once
// What every command is given: the library, and whether a program is listening.

#include <memory>
#include <optional>
#include <string>

#include "indexer/lock/lock_file.h"
#include "indexer/store/library.h"

namespace quarterturn {

struct GlobalWishes {
    std::string library;  // empty: QUARTERTURN_LIBRARY, else Quarterturn in the home folder
    // Its first line opens a locked library; empty: QUARTERTURN_PASSPHRASE_FILE, else the terminal.
    std::string passphrase_file;
    bool json = false;
};

class Session {
  public:
    explicit Session(GlobalWishes wishes) : wishes_(std::move(wishes)) {}

    bool json() const { return wishes_.json; }
    Path folder() const;
    // Opened when first asked for. Throws StoreError when there is none.
    Library& library();
    // What an erasure left, once it has been said.
    void note_what_was_said();
    // A sentence where it can only be looked at; else empty.
    std::string why_only_to_look() const;
    // Asks for the passphrase or the recovery key where the folder is a locked library or backup,
    // unless that key is in hand already. Throws LockError when it is neither.
    void unlock(const Path& place);
    // Of the library. Throws StoreError when it has no lock.
    KeysInHand unlocked_keys();
    // The same, or of the lock that it had before and that still holds files of it.
    KeysInHand keys_of_left_lock();
    // Those of its lock; null where no file with its passphrase is named.
    KeysInHand keys_without_asking();

  private:
    void unlock(const Path& place, const LockFile& lock);
    void go_on_locking(const Path& place);

    GlobalWishes wishes_;
    std::optional<Library> library_;
};

}  // namespace quarterturn
