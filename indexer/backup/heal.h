#pragma once
// Putting a file of the library back from a backup, or from another copy of it.

#include "indexer/backup/backups_at_hand.h"

namespace quarterturn {

struct Healed {
    Path from{};       // the backup's folder, or the copy; empty: none holds the right bytes
    Path set_aside{};  // where the changed file lies now; empty: there was none
};

// Writes the right bytes into the file's place; what lies there is kept beside it. Does nothing
// when no backup has them, and while another program moves files of the library. Throws DiskError
// when they cannot be written: the file is then as it was, or beside its place.
Healed heal(Library& library, const LibraryFile& file, const std::vector<BackupSource>& sources);
// The same from a copy that lies in the library, and stays there.
Healed heal_by_copy(Library& library, const LibraryFile& file, const Path& copy);

}  // namespace quarterturn
