#pragma once
// Only one program at a time moves files within a library, and none while they are backed up.

#include "indexer/disk/folder_lock.h"
#include "indexer/store/library.h"

namespace quarterturn {

inline constexpr const char* photos_are_being_moved =
    "Photos of this library are being brought in, moved or backed up by another window or command: "
    "wait until that is done, and try again.";

class MoveLock : public FolderLock {
  public:
    explicit MoveLock(Library& library) : FolderLock(library.folder()) {}
};

}  // namespace quarterturn
