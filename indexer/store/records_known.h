#pragma once
// Records that are older than those the library had, put there while nobody had them open, as by a
// service that copies folders. How many rows were ever numbered in them, which SQLite counts and
// nothing takes back, is noted beside them when they are closed, together with their version. Fewer
// than that are older. The note may lag behind, as after a crash, and never runs ahead: what it
// counts is on the disk before.

#include <compare>
#include <cstdint>
#include <string>

#include "indexer/disk/file_system.h"

namespace SQLite {
class Database;
}

namespace quarterturn {

class RecordsKnown {
  public:
    // Looks at the records, which are of the newest version, and at the note. What cannot be read
    // tells nothing.
    RecordsKnown(const Path& records, SQLite::Database& handle, FileSystem& disk);

    bool older() const { return found_ < noted_; }
    // What they hold now. Older ones keep their note until something was added to them, so that it
    // is said again. Throws DiskError, and what SQLite throws.
    void note(SQLite::Database& handle, FileSystem& disk) const;

  private:
    struct Known {
        int version = 0;
        std::int64_t rows = 0;

        auto operator<=>(const Known&) const = default;
    };

    static Known in_records(SQLite::Database& handle);
    Known in_note(FileSystem& disk) const;

    Path records_;
    Known noted_;
    Known found_;
};

// With the next step.
std::string older_sentence(const Path& records);

}  // namespace quarterturn
