#pragma once
// Where the page with the recovery key may be written: the key opens the backups too.

#include <string>

#include "indexer/store/library.h"

namespace quarterturn {

// A sentence where the file would lie in the folder of a backup that the library knows; else empty.
// Throws StoreError.
std::string reason_against_recovery_key_in(Library& library, const Path& file);

}  // namespace quarterturn
