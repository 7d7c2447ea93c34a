#pragma once

#include <string>

#include "indexer/disk/file_system.h"

namespace quarterturn {

// A file of records as SQLite reads its name in a URI (https://sqlite.org/uri.html), with
// "vfs=…&immutable=1" or the like after it.
std::string records_uri(const Path& file, const std::string& parameters);

}  // namespace quarterturn
