#pragma once

#include <vector>

#include "indexer/disk/file_system.h"

namespace quarterturn {

// Those of these folders that a camera or phone takes photos into: each holds a folder DCIM, as the
// Design rule for Camera File system (JEITA CP-3461) asks for, whatever the case of its letters.
// Folders that cannot be read are passed over.
std::vector<Path> camera_cards(FileSystem& disk, const std::vector<Path>& folders);

}  // namespace quarterturn
