#pragma once
// SQLite's errors as sentences.

#include <SQLiteCpp/SQLiteCpp.h>

#include <string>

#include "indexer/store/database.h"

namespace quarterturn {

inline constexpr const char* restore_elsewhere =
    "make the library again from a backup in a new place, with qturn restore or on the window's "
    "first page";

// A StoreError, or NoRoomForRecords. What the system said against it is asked of the connection,
// where one is given.
[[noreturn]] void throw_in_words(const SQLite::Exception& error, sqlite3* connection);

// Does `work`, and turns what SQLite throws into a StoreError.
template <class Work>
decltype(auto) in_words(Work work, sqlite3* connection = nullptr) {
    try {
        return work();
    } catch (const SQLite::Exception& error) {
        throw_in_words(error, connection);
    }
}

}  // namespace quarterturn
