#pragma once
// The folders for the fronts of names that take two (locked_name.h), on the disk beneath the lock.
// `place` is where a locked file or folder lies; nothing is done where its name takes one. All
// throw DiskError.

#include <string>
#include <vector>

#include "indexer/disk/file_system.h"

namespace quarterturn {

class NameFronts {
  public:
    explicit NameFronts(FileSystem& beneath) : beneath_(&beneath) {}

    // Only where its own folder is there: else the call that follows is to fail as it would have.
    void make(const Path& place);
    void sync(const Path& place);
    void drop_if_empty(const Path& place);
    // What an interruption left.
    void drop_empty_in(const Path& folder);
    // The locked names that an entry of a folder stands for.
    std::vector<std::string> names_at(const Path& entry);

  private:
    FileSystem* beneath_;
};

}  // namespace quarterturn
