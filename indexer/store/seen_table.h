#pragma once
// Source files that were taken in before, so that bringing in the same card again need not read
// them: path, size and time of change as they were, and what the bytes hashed to.

#include <memory>
#include <optional>
#include <string>

#include "indexer/disk/file_system.h"
#include "indexer/store/database.h"

namespace quarterturn {

class Statement;

class SeenTable {
  public:
    explicit SeenTable(Database& database) : database_(&database) {}

    void remember(const Path& source, const FileState& state, std::string_view sha256);
    // The checksum, when path, size and time of change are just as they were.
    std::optional<std::string> recall(const Path& source, const FileState& state);

  private:
    Database* database_;
    std::shared_ptr<Statement> recalled_;  // prepared once for the thousands of files of a card
};

}  // namespace quarterturn
