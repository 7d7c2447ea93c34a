#pragma once

#include "indexer/disk/file_system.h"

namespace quarterturn {

// Among programs that ask for it, only one at a time holds a folder. The system gives it back when
// the program ends, however it ends.
class FolderLock {
  public:
    explicit FolderLock(const Path& folder);
    ~FolderLock();
    FolderLock(const FolderLock&) = delete;
    FolderLock& operator=(const FolderLock&) = delete;

    // False while another holds it. Disks that know no locks are taken to be hers alone.
    bool held() const { return held_; }

  private:
    int folder_;
    bool held_;
};

}  // namespace quarterturn
