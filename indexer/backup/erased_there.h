#pragma once
// Whether what was erased in the library is gone from a backup, too.

#include <string>

#include "indexer/store/library.h"

namespace quarterturn {

// What was erased up to this one is in no file of the library, nor sought in it any longer.
ErasureId last_finished_erasure(Library& library);

// A sentence where the backup may still hold what was erased; else empty.
std::string erased_there_words(Library& library, const Backup& backup);

}  // namespace quarterturn
