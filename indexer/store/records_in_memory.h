#pragma once

#include <SQLiteCpp/SQLiteCpp.h>

#include "indexer/disk/file_system.h"

namespace quarterturn {

// A file of records that is not locked, as it lies on the disk. SQLite does not open the file
// itself, so that nothing of its log and of locks on it changes.
class RecordsInMemory {
  public:
    // Throws StoreError, and what SQLite throws.
    explicit RecordsInMemory(const Path& file);

    SQLite::Database& handle() { return handle_; }

  private:
    Bytes bytes_;
    SQLite::Database handle_;
};

}  // namespace quarterturn
