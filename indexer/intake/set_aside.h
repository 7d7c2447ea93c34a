#pragma once

#include <optional>
#include <string>

#include "indexer/disk/file_system.h"

namespace quarterturn {

// Gives a file that is not what it should be another name beside its own ("IMG_0001
// (changed).jpg"), and answers that. Throws DiskError.
Path set_aside(FileSystem& disk, const Path& changed);

// Whether set_aside gives a photo's file such a name.
bool is_set_aside_name(const std::string& name, const std::string& photo);

// "IMG_0001.jpg" of "IMG_0001 (changed) (2).jpg"; nothing of other names.
std::optional<std::string> name_before_set_aside(const std::string& name);

}  // namespace quarterturn
