#pragma once
// Files whose records are gone: which there are, and removing them.

#include "indexer/erasure/stray_files.h"
#include "indexer/intake/move_lock.h"

namespace quarterturn {

// The photos' own files, what else is theirs (stray_files.h), and what is kept of them in cache/
// and incoming/. Throws StoreError and DiskError.
FilesToGo files_of_photos(Library& library, const std::vector<Photo>& photos,
                          const FilesWithoutRecord& strays, OtherStrays others);

// Throws StoreError when another program holds the lock.
void refuse_unless_alone(const MoveLock& lock);

inline constexpr const char* goes_on_by_itself =
    "Removing goes on by itself each time the library is opened: see to what is said, and leave "
    "those files where they are.";

// Whether a file that stands on the list of those to remove is there still, also past the lock.
// Throws DiskError.
bool listed_lies_there(Library& library, const std::string& listed);
// A sentence for each of those: brought in, they would be back.
std::vector<std::string> words_of_still_listed(Library& library);

// Removes the files that stand on the list, but for what is recorded again, and those of others go
// into their folders. The move lock must be held. Sentences: what the disk did not do; such files
// stay on the list. Throws StoreError.
std::vector<std::string> remove_listed(Library& library);

}  // namespace quarterturn
