#pragma once
// SQLite's errors as sentences.

#include <SQLiteCpp/SQLiteCpp.h>

#include <string>

#include "indexer/store/database.h"

namespace quarterturn {

StoreError store_error(const SQLite::Exception& error);

// Does `work`, and turns what SQLite throws into a StoreError.
template <class Work>
decltype(auto) in_words(Work work) {
    try {
        return work();
    } catch (const SQLite::Exception& error) {
        throw store_error(error);
    }
}

}  // namespace quarterturn
