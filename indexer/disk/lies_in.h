#pragma once

#include "indexer/disk/file_system.h"

namespace quarterturn {

// Whether a file or folder, there already or not, is this folder or lies somewhere below it,
// whatever links lead there.
bool lies_in(const Path& file, const Path& folder);

}  // namespace quarterturn
