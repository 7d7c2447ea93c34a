#pragma once

#include <string>

#include "indexer/disk/file_system.h"

namespace quarterturn {

// The label of the drive that a folder lies on, as it was given when the drive was formatted
// (/dev/disk/by-label, kept by udev). Empty where there is none or it cannot be told.
std::string volume_label(const Path& folder);

// Whether both lie on one drive or partition, as far as that can be told.
bool on_one_volume(FileSystem& disk, const Path& one, const Path& other);

}  // namespace quarterturn
