#pragma once

#include <string>
#include <vector>

#include "indexer/disk/file_system.h"

namespace quarterturn {

// The files that a library's records name, which are not locked, and that do not lie there under
// their names. Relative to the folder; SQLite does not open the file itself, so that nothing of its
// log and of locks on it changes. Where they cannot be read, that file is what is missing.
std::vector<std::string> recorded_and_missing(FileSystem& disk, const Path& folder);

}  // namespace quarterturn
