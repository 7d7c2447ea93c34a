#pragma once
// The file of the records while it is open. SQLite writes into it only to carry changes over from
// its log, which the log's index counts (https://sqlite.org/walformat.html#the_wal_index_header);
// when the file has changed and that count has not, somebody else wrote it. It is looked at by its
// path and through SQLite alone: whoever opens and closes it otherwise lets go of all locks that
// this process has on it.
//
// What another program writes over it is not told from SQLite's own when both happen between two
// looks. So it is looked at before each change, and every second by a window.

#include <array>
#include <cstdint>

#include "indexer/disk/file_system.h"

namespace SQLite {
class Database;
}

namespace quarterturn {

class RecordsWatch {
  public:
    enum class Found { as_left, replaced, overwritten };

    // The records have been read from, so that their log is open; they must outlive this.
    RecordsWatch(Path file, SQLite::Database& records);

    // Replaced: another file has its name now. Overwritten: other bytes were put into it; it stays
    // so. A file that is gone counts as left as it was.
    Found look();

  private:
    struct OnDisk {
        std::uint64_t number = 0;
        std::int64_t bytes = 0;
        std::int64_t modified_ns = 0;

        bool operator==(const OnDisk&) const = default;
    };
    // The two salts of the log, and how much of it was begun and was done to be carried over.
    using Carried = std::array<std::uint32_t, 4>;

    OnDisk on_disk() const;
    Carried carried() const;
    Found look_closely();

    Path file_;
    SQLite::Database& records_;
    bool has_log_;
    Carried carried_;  // asked before the file: what is carried over in between is noticed then
    OnDisk left_;
    bool overwritten_ = false;
};

// The bytes of a file of records as they lie on the disk, also while it is open in this process.
// Throws StoreError.
Bytes raw_records(const Path& file);
Bytes raw_front(const Path& file, std::int64_t most_bytes);  // the first of them

}  // namespace quarterturn
