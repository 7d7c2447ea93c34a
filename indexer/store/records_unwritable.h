#pragma once

#include <string>

#include "indexer/store/database.h"

namespace quarterturn {

// SQLite would make the files beside unchangeable records as unchangeable as they are, and they
// would stay so. Empty when the records and their folder may be changed.
std::string reason_against_writing(const Path& records);
// For a library whose disk is full.
std::string no_room_sentence(const Path& library);
// Throws RecordsUnwritable.
void refuse_unless_writable(const Path& records);

}  // namespace quarterturn
