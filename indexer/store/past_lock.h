#pragma once
// What somebody moved or put into a locked library's folder by hand. The lock sees what its names
// tell, and a name is tied to its folder, so such a file lies past it, also one of the library's.

#include <vector>

#include "indexer/lock/locked_file_system.h"

namespace quarterturn {

struct PastLock {
    Path lies;            // on the disk
    Path belongs;         // under its own name in the folder, whose name is in plain words
    bool sealed = false;  // with the library's key
};

struct FoundPastLock {
    std::vector<PastLock> files;
    std::vector<DiskError> out_of_reach;  // folders that the lock does not see either
};

// Not what lies at the top of the folder, where names stay.
FoundPastLock files_past_lock(LockedFileSystem& locked, const Path& folder);
std::vector<Path> sealed_past_lock(LockedFileSystem& locked, const Path& folder);

// By its first bytes, whatever its name; what cannot be read is none.
bool is_sealed(LockedFileSystem& locked, const Path& lies);
bool is_sealed(const LibraryKeys& keys, const Bytes& file);
// What it holds. Throws DiskError, with EBADMSG where it was damaged.
Bytes bytes_sealed(LockedFileSystem& locked, const Path& lies);
// Gives such a file its place in the library again: `plain`, where nothing may lie.
void give_name(LockedFileSystem& locked, const Path& folder, const Path& lies, const Path& plain);

}  // namespace quarterturn
