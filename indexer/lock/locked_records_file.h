#pragma once
// Open files as locked_vfs gives them to SQLite.

#include <sqlite3.h>

#include <cstddef>
#include <memory>
#include <string>

#include "indexer/lock/locked_page.h"

namespace quarterturn {

// The records or their log, sealed over a file of SQLite's usual kind.
struct SealedFile : sqlite3_file {
    SealedFile(PageOf kind_of_file, KeysInHand keys_of_file, int bytes_of_real);

    sqlite3_file* real() { return reinterpret_cast<sqlite3_file*>(room.get()); }

    PageOf kind;
    KeysInHand keys;
    std::unique_ptr<std::max_align_t[]> room;
};

// A journal or a temporary file.
struct MemoryFile : sqlite3_file {
    std::string bytes;
};

const sqlite3_io_methods* sealed_file_methods();
const sqlite3_io_methods* memory_file_methods();

}  // namespace quarterturn
