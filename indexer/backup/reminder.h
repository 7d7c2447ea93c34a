#pragma once

#include <optional>
#include <string>

#include "indexer/store/library.h"

namespace quarterturn {

// A sentence when photos are in no backup and the last one was made longer ago than she wants to be
// told (setting "backup days"), or none ever was. Cheap: asks the records alone. Throws StoreError.
std::optional<std::string> backup_reminder(Library& library, Date today);

}  // namespace quarterturn
