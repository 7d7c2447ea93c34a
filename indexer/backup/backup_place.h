#pragma once

#include "indexer/backup/backup_folder.h"
#include "indexer/store/library.h"

namespace quarterturn {

struct BackupPlace {
    BackupFolder folder;
    Manifest listed;  // empty but for its mark where there is no backup yet
    Backup backup;    // as the library knows it
    bool first = false;
};

// A folder as a place for backups of this library; it is made, and nothing is written into it that
// stays. Throws as back_up does.
BackupPlace backup_place(Library& library, const Path& to);

// Whether a backup there takes no more, since it was made before the library was locked with these
// keys, or, where there are none, before it was unlocked. False where that cannot be told.
bool was_locked_otherwise(FileSystem& disk, const Path& backup, const KeysInHand& keys);

}  // namespace quarterturn
